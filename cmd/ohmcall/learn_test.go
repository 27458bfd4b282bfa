package main

import (
	"path/filepath"
	"strings"
	"testing"
	"time"

	"ohmcall/notebook"
	"ohmcall/notebook/fleet"
	"ohmcall/notebook/journal"
	"ohmcall/notebook/record"
)

func TestVisitedBefore(t *testing.T) {
	dir := t.TempDir()
	for name, content := range map[string]string{"old": "date 2026-01-05 09:00\nserial DEMO-7\nunit fridge\nfault does not cool\nclose\n", "new": "date 2026-03-02 09:00\ntech Tilda Tester\nserial demo 7\nunit fridge\nfault clicks\nsaw clicks\nclose no fault found\n", "waits": "date 2026-04-01 09:00\nserial DEMO-9\nfault clicks\nclose waits for a part, relay ordered\n", "none": "date 2026-03-03 09:00\nserial not readable\nfault clicks\nclose\n"} {
		n, err := notebook.Create(notebook.Host{FS: journal.Disk{}, Now: time.Now}, filepath.Join(dir, name+".md"))
		if err != nil {
			t.Fatal(err)
		}
		for _, l := range strings.Split(strings.TrimSpace(content), "\n") {
			if _, err := n.Do(l); err != nil {
				t.Fatal(err)
			}
		}
		if err := n.Close(); err != nil {
			t.Fatal(err)
		}
	}
	k, err := fleet.Learn(t.Context(), dir)
	if err != nil {
		t.Fatal(err)
	}
	got := strings.Join(visited(k, &record.Header{Serial: "Demo-7", Unit: "fridge"}), "")
	for _, want := range []string{"2026-03-02: clicks; cause not found; no fault found; by Tilda Tester", "new.md"} {
		if !strings.Contains(got, want) {
			t.Errorf("%q is not in %q", want, got)
		}
	}
	// What a call is to the one before it is told as the digest tells it, and no
	// call is told of itself or of a later one.
	for started, want := range map[string]string{
		"2026-03-04T09:00:00+00:00": "no fault found; by Tilda Tester. This one is a call-back after 2 days. ",
		"2026-06-04T09:00:00+00:00": "no fault found; by Tilda Tester. It is kept",
		"2026-03-02T09:00:00+00:00": "2026-01-05: does not cool; cause not found; no repair. It is kept",
		"2026-01-20T09:00:00+00:00": "This one is a call-back after 15 days. ",
		"2026-01-05T09:00:00+00:00": "",
	} {
		got := strings.Join(visited(k, &record.Header{Serial: "Demo-7", Unit: "fridge", Started: started}), "")
		if !strings.Contains(got, want) || want == "" && got != "" {
			t.Errorf("%s: %q is not in %q", started, want, got)
		}
	}
	if got := strings.Join(visited(k, &record.Header{Serial: "DEMO 9", Started: "2026-06-04T09:00:00+00:00"}), ""); !strings.Contains(got, "This one is a return after 64 days. ") {
		t.Errorf("a return tells %q", got)
	}
	for _, other := range []record.Header{{Serial: "DEMO-8"}, {Serial: "DEMO-7", Unit: "dryer"}, {Serial: "not readable"}, {}} {
		if got := visited(k, &other); got != nil {
			t.Errorf("%+v tells %q", other, got)
		}
	}
}

func TestFoundBefore(t *testing.T) {
	k := &fleet.Known{}
	for _, cause := range []string{"start device failed", "winding open", "start device failed", ""} {
		k.Add(&record.Header{Kind: "no-start", Cause: cause})
	}
	if got := found(k, "no-start"); got != nil {
		t.Errorf("four calls tell %q", got)
	}
	k.Add(&record.Header{Kind: "no-start", Cause: "start device failed"})
	got := strings.Join(found(k, "no-start"), "\n")
	if want := "hold 5 calls of this kind, as they were closed; found was: start device failed (3); winding open (1)."; !strings.Contains(got, want) {
		t.Errorf("got %q, want %q in it", got, want)
	}
	if got := found(k, "no-heat"); got != nil {
		t.Errorf("another kind tells %q", got)
	}
}
