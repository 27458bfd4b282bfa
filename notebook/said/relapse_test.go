package said

import (
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// sentences are the lines of a file of examples by the section that they stand in.
func sentences(t *testing.T, file string) map[string][]string {
	t.Helper()
	table, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	list, section := map[string][]string{}, ""
	for row := range strings.Lines(string(table)) {
		row = strings.TrimSpace(row)
		if name, ok := strings.CutPrefix(row, "== "); ok {
			section = name
		} else if section != "" {
			list[section] = append(list[section], row)
		}
	}
	return list
}

// allClauses are the clauses of several sentences.
func allClauses(lines []string) (list []string) {
	for _, l := range lines {
		list = append(list, Clauses(l)...)
	}
	return list
}

// shownBy holds that each row of a table is shown by a clause that it takes: what no
// example shows, nobody can know to be right.
func shownBy(t *testing.T, p *pattern, clauses []string) {
	t.Helper()
	for _, row := range p.rows() {
		if !slices.ContainsFunc(clauses, regexp.MustCompile(row).MatchString) {
			t.Errorf("no sentence shows %q", row)
		}
	}
}

// TestTold holds that each sentence of the table is taken for what it is, and that each
// row of the lists of failure is shown by one.
func TestTold(t *testing.T) {
	told := sentences(t, "testdata/told.txt")
	hold := func(section string, want bool, how func(string) bool) {
		if len(told[section]) == 0 {
			t.Errorf("no sentences of %s", section)
		}
		for _, line := range told[section] {
			if slices.ContainsFunc(Clauses(line), how) != want {
				t.Errorf("%s: %q is taken otherwise", section, line)
			}
		}
	}
	for section, want := range map[string]bool{"fails": true, "does not": false} {
		for _, line := range told[section] {
			if slices.ContainsFunc(Now(line), func(x Telling) bool { return x.Fails }) != want {
				t.Errorf("%s: %q is taken otherwise", section, line)
			}
		}
	}
	hold("warm", true, Warms)
	hold("cold", true, Cools)
	hold("neither warm nor cold", false, func(c string) bool { return Warms(c) || Cools(c) })
	hold("iced", true, Iced)
	hold("not iced", false, Iced)
	hold("hums", true, Hums)
	hold("hums and more", false, Hums)
	for section, tables := range map[string][]*pattern{
		"fails": {&fail, &trouble, &onceMore, &notHeld}, "does not": {&takenBack, &past, &supposed},
		"warm": {&warms}, "cold": {&unheated}, "iced": {&iced},
	} {
		for _, p := range tables {
			shownBy(t, p, allClauses(told[section]))
		}
	}
}
