package record

import (
	"fmt"
	"testing"
)

func TestGrouped(t *testing.T) {
	v := func(subject, text string, entries ...int) Verdict {
		return Verdict{Subject: subject, Word: "cannot tell", Text: text, Entries: entries}
	}
	got := Grouped([]Verdict{
		v("supply", "in range", 1),
		v("insulation A to case", "no gross fault", 2), v("insulation B to case", "no gross fault", 2), v("insulation C to case", "no gross fault", 5),
		v("insulation D to case", "low", 6),
		v("insulation E to case", "no gross fault", 7), v("earth E to case", "no gross fault", 8), v("earth F to cord", "no gross fault", 9),
	})
	var texts []string
	for _, g := range got {
		texts = append(texts, fmt.Sprint(g.Subject, g.Entries))
	}
	want := []string{"supply[1]", "insulation A, B, C to case[2 5]", "insulation D to case[6]", "insulation E to case[7]", "earth E to case[8]", "earth F to cord[9]"}
	if fmt.Sprint(texts) != fmt.Sprint(want) {
		t.Errorf("got  %q\nwant %q", texts, want)
	}
}
