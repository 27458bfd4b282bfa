package said

import (
	"os"
	"regexp"
	"strings"
	"testing"

	"ohmcall/calc/cause"
)

// TestEachWordingIsUsed finds for each row a sentence of the table that it tells of, or
// that it keeps quiet: what no example shows, nobody can know to be right. That the
// sentences are heard as they should is held where calls are tested.
func TestEachWordingIsUsed(t *testing.T) {
	table, err := os.ReadFile("testdata/dangers.txt")
	if err != nil {
		t.Fatal(err)
	}
	var clauses []string
	for row := range strings.Lines(string(table)) {
		_, line, ok := strings.Cut(row, "|")
		_, text, typed := strings.Cut(line, " ")
		if !ok || !typed {
			continue
		}
		for _, c := range Clauses(cause.Calmed(text)) {
			clauses = append(clauses, plain(c))
		}
	}
	for i := range alarms {
		a := &alarms[i]
		var told []string
		for _, c := range clauses {
			if own := wordings()[i]; Has(c, wordings()[len(alarms)+i]) && (a.said.match(c) || a.acts.match(c) || Has(c, own)) {
				told = append(told, c)
			}
		}
		for _, r := range []*rows{&a.said, &a.acts, &a.harmless} {
			for _, row := range r.list() {
				shown := false
				for _, c := range told {
					shown = shown || regexp.MustCompile(row).MatchString(c)
				}
				if !shown {
					t.Errorf("%s: no sentence shows %s", a.Finding, row)
				}
			}
		}
	}
}
