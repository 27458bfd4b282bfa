package record

import (
	"slices"
	"strings"
)

// Grouped puts verdicts in a row into one that say the same of several things,
// such as of each pin to the case.
func Grouped(list []Verdict) []Verdict {
	var out []Verdict
	at := -1 // the word in which the subjects of the group differ, -1 for none yet
	var first []string
	for _, v := range list {
		words := strings.Fields(v.Subject)
		if n := len(out); n > 0 && alike(&out[n-1], &v) {
			if i := differing(first, words); i > 0 && (at < 0 || at == i) {
				at = i
				group := strings.Fields(out[n-1].Subject)
				tail := len(first) - i - 1
				group = append(group[:len(group)-tail-1], append([]string{group[len(group)-tail-1] + ",", words[i]}, group[len(group)-tail:]...)...)
				out[n-1].Subject = strings.Join(group, " ")
				out[n-1].Entries = union(out[n-1].Entries, v.Entries)
				continue
			}
		}
		out, at, first = append(out, v), -1, words
	}
	return out
}

func alike(a, b *Verdict) bool {
	return a.Word == b.Word && a.Text == b.Text && a.Limit == b.Limit && a.Source == b.Source && a.Margin == b.Margin && slices.Equal(a.Also, b.Also)
}

// differing is the only word in which two texts differ, -1 when they differ in
// more or in none.
func differing(a, b []string) int {
	at := -1
	if len(a) != len(b) {
		return -1
	}
	for i := range a {
		if a[i] == b[i] {
			continue
		}
		if at >= 0 {
			return -1
		}
		at = i
	}
	return at
}

func union(a, b []int) []int {
	out := append(slices.Clone(a), b...)
	slices.Sort(out)
	return slices.Compact(out)
}
