package said

import (
	"slices"
	"strings"
	"testing"
)

// TestUnmended holds that each sentence of the table is taken for what it is, and that
// each row and word of the lists that it is about is shown by one: what no example shows,
// nobody can know to be right.
func TestUnmended(t *testing.T) {
	told := sentences(t, "testdata/unmended.txt")
	for section, lines := range told {
		for _, line := range lines {
			if Undone(line) != (section != "work") {
				t.Errorf("%s: %q is taken otherwise", section, line)
			}
		}
	}
	nothing := allClauses(told["mends nothing"])
	shown := func(clauses []string, how func(string) bool, what string) {
		if !slices.ContainsFunc(clauses, how) {
			t.Errorf("no sentence shows %q", what)
		}
	}
	shownBy(t, &putOff, allClauses(told["put off"]))
	shownBy(t, &idles, nothing)
	shownBy(t, &partNames, allClauses(told["work"]))
	begins := func(word string) func(string) bool {
		return func(c string) bool {
			return strings.HasPrefix(strings.TrimPrefix(c, "re"), word) || strings.HasPrefix(c, word)
		}
	}
	for _, verb := range strings.Fields(stems + regulars + plainly + clears + tidying.verbs + sweeping.verbs + trying.verbs) {
		shown(nothing, begins(verb), verb)
	}
	for _, k := range []*chore{&tidying, &sweeping, &trying} {
		for _, thing := range strings.Fields(k.things) {
			shown(nothing, func(c string) bool { w := strings.Fields(c); return k.only(w) && slices.Contains(w[1:], thing) }, thing)
		}
	}
}
