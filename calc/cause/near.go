package cause

import (
	"slices"
	"strings"

	"ohmcall/calc/source"
)

// nearEnough is the share of words that a text and a finding's wording must
// have in common for the finding to be offered.
const nearEnough = 0.3

// Near gives the findings whose wording comes nearest to a text that is none of
// them, at most so many, the nearest first, in the form preferred.
func Near(text string, most int) []string {
	words := fold(text)
	type near struct {
		share float64
		words string
	}
	var found []near
	for _, f := range seen {
		best := 0.0
		for _, w := range f.Words {
			best = max(best, share(words, fold(w)))
		}
		if best >= nearEnough {
			found = append(found, near{best, f.Words[0]})
		}
	}
	slices.SortStableFunc(found, func(a, b near) int {
		switch {
		case a.share > b.share:
			return -1
		case a.share < b.share:
			return 1
		}
		return 0
	})
	var out []string
	for _, n := range found[:min(most, len(found))] {
		out = append(out, n.words)
	}
	return out
}

// share is how many of the words of two texts are in both.
func share(a, b []string) float64 {
	common := 0
	for _, w := range a {
		if slices.ContainsFunc(b, func(v string) bool { return akin(w, v) }) {
			common++
		}
	}
	return float64(common) / float64(len(a)+len(b)-common)
}

// akin tells two forms of a word, or a slip of the fingers in a longer one.
func akin(a, b string) bool {
	if a == b {
		return true
	}
	short := min(len(a), len(b))
	if short < 4 {
		return false
	}
	return strings.HasPrefix(a, b) || strings.HasPrefix(b, a) || short > 4 && source.Nearest(a, []string{b}) != ""
}
