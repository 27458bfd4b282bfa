package fleet

import (
	"context"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"ohmcall/notebook/page"
	"ohmcall/notebook/record"
)

// Of files of one log the one is counted that is as it was closed and whose name
// tells of no copy, wherever it stands.
func TestOriginalOfACopy(t *testing.T) {
	for _, c := range []struct{ counted, other string }{
		{"06.md", "06 copy.md"},
		{"06.md", "06 (1).md"},
		{"06.md", "Copy of 06.md"},
		{"washer at the mill.md", "06 (2).md"},
		{"2026-03-02-0900-call.md", "06-copy.md"},
		{"06.md", "06 - again.md"},
		{"a/06.md", "b/06.md"},
		{"b/06.md", "a/06 copy.md"},
	} {
		for _, items := range [][]Item{{typed(c.counted, "saw clicks"), typed(c.other, "saw clicks")}, {typed(c.other, "saw clicks"), typed(c.counted, "saw clicks")}} {
			d := NewDigest(slices.Values(items), Filter{})
			if len(d.Rows) != 1 || d.Rows[0].Path != c.counted || d.Problems[0] != (Problem{c.other, Copy, "the same log as " + c.counted}) || d.Seen != 1 {
				t.Errorf("%+v: %+v, left out %+v", c, d.Rows, d.Problems)
			}
		}
	}
	whole, changed := typed("06 copy.md", "saw clicks"), closedAs(typed("06.md", "saw clicks"), Changed)
	if d := NewDigest(slices.Values([]Item{whole, changed}), Filter{}); len(d.Rows) != 1 || d.Rows[0].Path != whole.Path {
		t.Errorf("the one that is as it was closed is left out: %+v", d.Problems)
	}
	// What the prompt tells of earlier calls names the same file, and they teach once.
	dir := t.TempDir()
	rec := &record.Record{Outcome: []record.Fact{{Label: "Complaint", Text: "clicks"}}, Header: record.Header{State: "closed", Serial: "DEMO-1", Started: "2026-03-02T09:00:00+01:00"},
		Log: []record.Entry{{N: 1, At: time.Date(2026, 3, 2, 9, 0, 0, 0, time.UTC), Line: "saw clicks"}}}
	for _, name := range []string{"06 copy.md", "06.md", "07 copy.md"} {
		write(t, dir, name, page.Render(rec, nil))
	}
	k, err := Learn(context.Background(), dir)
	if v := k.VisitOf(&record.Header{Serial: "demo 1"}); err != nil || k.Calls != 1 || v == nil || filepath.Base(v.Path) != "06.md" {
		t.Errorf("learned %d calls, %+v, %v", k.Calls, v, err)
	}
}

// A copy in which the client's name or the site was put right is the same call: by
// its lines, or by whom, when and on which unit; another at the same time is not.
func TestCorrectedCopies(t *testing.T) {
	right := []string{"tech Max Muster", "client Petra Placeholder", "unit refrigerator", "saw clicks"}
	wrong := []string{"tech Max Muster", "client Petra Plaecholder", "unit refrigerator", "saw clicks"}
	more := []string{"tech Max Muster", "client Petra Placeholder", "unit refrigerator", "saw clicks", "note more"}
	call := func(path, client, tech, serial string, s State, lines ...string) Item {
		it := typed(path, lines...)
		it.State, it.Header.Client, it.Header.Technician, it.Header.Serial = s, client, tech, serial
		return it
	}
	for name, c := range map[string]struct {
		a, b  Item
		calls int
	}{
		"closed anew":                 {call("a", "P", "M", "", Trusted, wrong...), call("b", "Q", "M", "", Trusted, right...), 1},
		"by an editor":                {call("a", "P", "M", "", Trusted, wrong...), call("b", "Q", "M", "", Changed, right...), 1},
		"open":                        {call("a", "P", "M", "", Open, wrong...), call("b", "Q", "M", "", Open, right...), 1},
		"by an editor, and more":      {call("a", "P", "M", "DEMO-1", Trusted, wrong...), call("b", "Q", "M", "DEMO-1", Changed, more...), 1},
		"another unit":                {call("a", "P", "M", "DEMO-1", Trusted, wrong...), call("b", "Q", "M", "DEMO-2", Changed, more...), 2},
		"another technician":          {call("a", "P", "M", "DEMO-1", Trusted, wrong...), call("b", "Q", "N", "DEMO-1", Changed, more...), 2},
		"few lines, and nobody named": {call("a", "P", "", "", Trusted, "client P", "close cancelled"), call("b", "Q", "", "", Trusted, "client Q", "close cancelled"), 2},
	} {
		for _, items := range [][]Item{{c.a, c.b}, {c.b, c.a}} {
			d := NewDigest(slices.Values(items), Filter{})
			if d.Totals.Calls != c.calls || d.Totals.CallBacks != 0 && c.calls == 1 {
				t.Errorf("%s: %+v, left out %+v", name, d.Totals, d.Problems)
			}
		}
	}
}

// The digest's line on a file that was changed has the first digits of a SHA-256,
// its faults have all of them.
func TestSumsAreShort(t *testing.T) {
	sum := strings.Repeat("0123456789abcdef", 4)
	w := worker{o: &Options{Replay: func([]byte) (*record.Record, []Fault, error) {
		return &record.Record{}, []Fault{{Row: 7, Col: 1, Text: "its SHA-256 is " + sum}}, nil
	}}}
	it := Item{State: Changed, Reason: "the log is not what was closed"}
	w.replay(&it, nil, nil)
	if it.Reason != "the log is not what was closed; line 7: its SHA-256 is 0123456789ab…" || it.Faults[0].Text != "its SHA-256 is "+sum {
		t.Errorf("%q, faults %+v", it.Reason, it.Faults)
	}
}
