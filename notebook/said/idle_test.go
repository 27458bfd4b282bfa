package said

import (
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// TestUnmended holds that each sentence of the table is taken for what it is, and that
// each row and word of the lists that it is about is shown by one: what no example shows,
// nobody can know to be right.
func TestUnmended(t *testing.T) {
	table, err := os.ReadFile("testdata/unmended.txt")
	if err != nil {
		t.Fatal(err)
	}
	var off, nothing, work []string
	section := ""
	for row := range strings.Lines(string(table)) {
		row = strings.TrimSpace(row)
		if name, ok := strings.CutPrefix(row, "== "); ok {
			section = name
			continue
		}
		switch {
		case section == "":
			continue
		case section == "put off":
			off = append(off, Clauses(row)...)
		case section == "mends nothing":
			nothing = append(nothing, Clauses(row)...)
		default:
			work = append(work, Clauses(row)...)
		}
		if Undone(row) != (section != "work") {
			t.Errorf("%s: %q is taken otherwise", section, row)
		}
	}
	shown := func(clauses []string, how func(string) bool, what string) {
		if !slices.ContainsFunc(clauses, how) {
			t.Errorf("no sentence shows %q", what)
		}
	}
	for _, p := range []struct {
		*pattern
		by []string
	}{{&putOff, off}, {&idles, nothing}, {&partNames, work}} {
		for _, row := range p.rows() {
			shown(p.by, regexp.MustCompile(row).MatchString, row)
		}
	}
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
