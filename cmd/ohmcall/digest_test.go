package main

import (
	"bytes"
	"fmt"
	"slices"
	"strings"
	"testing"

	"ohmcall/notebook/fleet"
	"ohmcall/notebook/page"
	"ohmcall/notebook/record"
	"ohmcall/repl/term"
)

// TestDigestOnAScreen holds what a digest says on screens of any width: each
// call has its client, model and file, few lines, and no word is cut.
func TestDigestOnAScreen(t *testing.T) {
	var items []fleet.Item
	words := map[string]bool{}
	for i := range 6 {
		h := record.Header{Started: fmt.Sprintf("2026-10-0%dT08:00:00+00:00", i+1), Client: fmt.Sprintf("Client%d Placeholder", i), Unit: "refrigerator, bottom freezer",
			Model: fmt.Sprintf("INVENTED-%d", 300+i), Serial: "DEMO-7", Complaint: "clicks every few minutes and does not cool", Kind: "no-start",
			Cause: "start device or relay failed", Result: []string{"proved", "not proved", "unsafe"}[i%3], Minutes: 70, Cost: 24.5, Parts: []string{"1 x start device"}}
		for k := range i * 3 {
			h.Missing = append(h.Missing, fmt.Sprintf("proof number %d of what a complete record of this call would still hold", k))
		}
		if h.Result == "unsafe" {
			h.Unsafe = []string{"winding to case: grounded, never energise it"}
		}
		items = append(items, fleet.Item{Path: fmt.Sprintf("n/2026-10-0%d.md", i+1), State: fleet.Trusted, Header: h})
	}
	items = append(items, fleet.Item{Path: "n/bad.md", State: fleet.Bad, Reason: "cut off inside its front matter"})
	d := fleet.NewDigest(slices.Values(items), fleet.Filter{})
	layOut := func(width int) string {
		var b bytes.Buffer
		layOut(&term.Printer{Out: &b, Err: &b, Width: width}, d)
		return b.String()
	}
	for _, width := range []int{0, 1000} {
		for _, w := range strings.Fields(layOut(width)) {
			words[w] = true
		}
	}
	for i := range d.Rows {
		for _, w := range strings.Fields(strings.Join(d.Rows[i].Brief(), " ")) {
			words[w] = true
		}
	}
	_, rest := d.Screen()
	for _, tt := range rest {
		for _, row := range tt.Rows {
			for i, cell := range row { // in a table, and in a list
				for _, w := range strings.Fields(cell + " " + strings.ToLower(tt.Head[i]) + " " + cell + "; " + cell + ":") {
					words[w] = true
				}
			}
		}
	}
	for _, width := range []int{40, 60, 80, 100, 130, 160, 200} {
		text := layOut(width)
		for _, line := range strings.Split(text, "\n") {
			if page.Width(line) > width {
				t.Errorf("%d columns: a line of %d: %s", width, page.Width(line), line)
			}
			for _, w := range strings.Fields(line) {
				if !words[w] && strings.Trim(w, "-") != "" {
					t.Errorf("%d columns: %q is no whole word: %s", width, w, line)
				}
			}
		}
		calls, _, _ := strings.Cut(text, "\nTotals\n")
		for i := range items[:6] {
			for _, want := range []string{fmt.Sprintf("Client%d", i), items[i].Header.Model, items[i].Path} {
				if strings.Count(calls, want) != 1 {
					t.Errorf("%d columns: %q stands %d times", width, want, strings.Count(calls, want))
				}
			}
		}
		if n := strings.Count(calls, "\n"); width >= 60 && n > 6*10 {
			t.Errorf("%d columns: %d lines for 6 calls", width, n)
		}
		if strings.Index(calls, "unsafe") > strings.Index(calls, "not proved") || !strings.Contains(calls, " more") {
			t.Errorf("%d columns: unsafe calls do not stand first, or all that is missing is told:\n%s", width, calls)
		}
		if table := strings.HasPrefix(calls, "Date "); table != (width >= wideTable) {
			t.Errorf("%d columns: a table is %v", width, table)
		}
	}
}
