package main

import (
	"strings"
	"testing"

	"ohmcall/notebook/fleet"
	"ohmcall/notebook/record"
)

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
