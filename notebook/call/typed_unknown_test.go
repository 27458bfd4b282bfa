package call

import (
	"fmt"
	"strings"
	"testing"
)

// A file of words that are not known costs their number, not what would have
// been proposed for each.
func TestHintsEnd(t *testing.T) {
	c := New()
	var err error
	for i := range mostHinted {
		if _, err = c.Apply(nine, fmt.Sprintf("zzgargle%d blah", i)); !strings.Contains(err.Error(), "(") {
			t.Fatalf("%d: %v", i, err)
		}
	}
	if _, err = c.Apply(nine, "zzgargle blah"); err == nil || strings.Contains(err.Error(), "(") {
		t.Errorf("after %d: %v", mostHinted, err)
	}
}

func BenchmarkUnknownWord(b *testing.B) {
	c := New()
	for i := range b.N {
		_, _ = c.Apply(nine, fmt.Sprintf("zzgargle%d blah blah", i))
	}
}
