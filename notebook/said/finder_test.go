package said

import (
	"math/rand/v2"
	"testing"
)

// TestFinderFindsWhatHasDoes holds a finder of many words against a look for each.
func TestFinderFindsWhatHasDoes(t *testing.T) {
	words := []string{" wire", "gas", "#", "é", " ol ", "ab", "abc", "zz", "%"}
	f := newFinder(words[:4], words[4:])
	r := rand.New(rand.NewPCG(3, 4))
	found := 0
	for range 50_000 {
		text := make([]rune, r.IntN(9))
		for i := range text {
			text[i] = []rune(" abcgaswirezol#é%")[r.IntN(17)]
		}
		if got, want := f.in(string(text)), Has(string(text), words); got != want {
			t.Fatalf("%q: %v, want %v", string(text), got, want)
		} else if got {
			found++
		}
	}
	if found < 1000 {
		t.Errorf("only %d texts hold a word", found)
	}
}
