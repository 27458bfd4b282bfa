package notebook

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"ohmcall/notebook/journal"
)

// One place is no places.
func TestWarningCounts(t *testing.T) {
	r, err := Check(nil)
	if err != nil || !strings.Contains(r.Warning(), "differs in 1 place from") {
		t.Errorf("%q, %v", r.Warning(), err)
	}
}

// What takes the place of an open file is put aside, and that is said once: with
// the next line, or when the call is left.
func TestReplacedFileIsTold(t *testing.T) {
	for _, next := range []bool{true, false} {
		name := filepath.Join(t.TempDir(), "call.md")
		n, err := Create(Host{FS: journal.Disk{}, Now: wall}, name)
		if err != nil {
			t.Fatal(err)
		}
		if _, err := n.Do("note one"); err != nil || n.News() != nil {
			t.Fatal(err, "something is told of a file that nobody touched")
		}
		if err := os.WriteFile(name, []byte("# Shopping\n"), 0o600); err != nil {
			t.Fatal(err)
		}
		if next {
			if _, err := n.Do("note two"); err != nil {
				t.Fatal(err)
			}
		} else if err := n.Close(); err != nil {
			t.Fatal(err)
		}
		if got := strings.Join(n.News(), "|"); got != "Another program had put a file in this one's place; it is kept as call-replaced.md." || n.News() != nil {
			t.Errorf("next line %v: %q", next, got)
		}
		n.Close()
	}
}
