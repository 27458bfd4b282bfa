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
	for name, content := range map[string]string{"old": "date 2026-01-05 09:00\nserial DEMO-7\nfault does not cool\nclose\n", "new": "date 2026-03-02 09:00\ntech Tilda Tester\nserial demo 7\nunit fridge\nfault clicks\nsaw clicks\nclose no fault found\n", "none": "date 2026-03-03 09:00\nserial not readable\nfault clicks\nclose\n"} {
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
