package record

import (
	"strings"
	"testing"
)

func TestDrawingPutsCommonOnTop(t *testing.T) {
	m := Machine{
		Pins:  []Pin{{Name: "A", Role: "start"}, {Name: "B", Role: "common"}, {Name: "C", Role: "run"}},
		Pairs: []Pair{{"A", "B", "3.45 Ω"}, {"A", "C", "6.5 Ω"}, {"B", "C", "2.5 Ω"}},
	}
	want := `
        (B) common
        /        \
   3.45 Ω         2.5 Ω
 /                      \
(A) start -------- (C) run
          6.5 Ω`
	if got := "\n" + strings.Join(Drawing(m), "\n"); got != want {
		t.Errorf("got:%s\nwant:%s", got, want)
	}
}

func TestDrawingWithoutRolesOrReadings(t *testing.T) {
	m := Machine{Pins: []Pin{{Name: "1"}, {Name: "2"}, {Name: "3"}}, Pairs: []Pair{{"1", "2", "7 Ω"}}}
	got := strings.Join(Drawing(m), "\n")
	for _, part := range []string{"(1)", "(2)", "(3)", "7 Ω", "not read"} {
		if !strings.Contains(got, part) {
			t.Errorf("%q is not in:\n%s", part, got)
		}
	}
}
