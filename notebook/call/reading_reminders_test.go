package call

import (
	"slices"
	"strings"
	"testing"
)

// Volts on what was made safe are told, and not where they are to be expected: common
// practice.
func TestLiveAfterSafe(t *testing.T) {
	for _, r := range []struct {
		lines string
		told  bool
	}{
		{"safe breaker off; volt L1 L2 239", true},
		{"safe breaker off; volt comp 120", true},
		{"safe unplugged; volt comp 120", true},
		{"safe breaker off; volt L1 L2 2", false},
		{"safe breaker off; volt L1 L2 239 run", false},
		{"safe breaker off; did new element fitted; volt L1 L2 239", false},
		{"safe unplugged; volt line 120", false},
		{"safe unplugged; volt outlet 120", false},
		{"safe breaker off; volt L1 L2 239; volt L1 N 120", false}, // once
		{"volt L1 L2 239", false},
	} {
		lines := slices.Concat([]string{"unit electric dryer", "fault no heat"}, strings.Split(r.lines, "; "))
		c := applyAll(t, lines[:len(lines)-1]...)
		if got := must(t, c, lines[len(lines)-1]).Reply.Plain(); strings.Contains(got, "Live, though made safe in entry 3") != r.told {
			t.Errorf("%s: told %t: %q", r.lines, !r.told, got)
		}
	}
}

// Inches of water column typed as psi are told: 14 inches are half a psi.
func TestGasPressureInInches(t *testing.T) {
	for line, asked := range map[string]bool{
		"psi gas 3.5": true, "psi manifold 10": true, "psi gas 3.5inWC": false, "psi gas 14inWC": false, "psi gas 20inWC": false, "psi gas 0.25": false,
	} {
		if got := must(t, applyAll(t, "unit gas furnace", "fault no heat"), line).Reply.Plain(); strings.Contains(got, "inches are written so") != asked {
			t.Errorf("%s: asked %t: %q", line, !asked, got)
		}
	}
	if got := must(t, applyAll(t, "unit gas furnace", "fault no heat"), "psi gas 20inWC").Reply.Plain(); !strings.Contains(got, "more than the gas valve") {
		t.Errorf("too many inches: %q", got)
	}
	if got := must(t, applyAll(t, "unit fridge", "fault warm"), "psi suction 3.5 run").Reply.Plain(); strings.Contains(got, "inches") {
		t.Errorf("of refrigerant: %q", got)
	}
}

// Volts between neutral and earth are judged: common practice.
func TestNeutralToEarth(t *testing.T) {
	for line, want := range map[string]string{
		"volt N G 48":       "neutral to earth: suspect, 48 V is more than a loaded neutral makes",
		"volt N earth 1.2":  "neutral to earth: sound",
		"volt ground N 118": "line and neutral are crossed, or one is open",
		"volt N G 5":        "neutral to earth: cannot tell",
		"volt L1 N 120":     "supply",
	} {
		if got := must(t, applyAll(t, "unit electric range", "fault no heat"), line).Reply.Plain(); !strings.Contains(got, want) {
			t.Errorf("%s: %q, want %q", line, got, want)
		}
	}
}
