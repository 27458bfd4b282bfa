package fleet

import (
	"context"
	"path/filepath"
	"slices"
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
