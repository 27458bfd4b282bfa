package call

import (
	"strings"
	"testing"
)

// What a technician brings of a hot plate, a fan or a jam proves it: common practice.
func TestProofPlain(t *testing.T) {
	const (
		plate = "unit electric range; fault right rear burner dead; did replaced right rear surface element; ohm heater case OL; ohm earth 0.08; "
		hood  = "unit range hood; fault fan dead, light works; did replaced fan motor; ohm earth 0.08; "
		jam   = "unit disposer; fault hums, jammed; plate amps 4.5; did freed it; ohm earth 0.08; "
	)
	for lines, want := range map[string]string{
		plate + "amp heater 8.6 run; saw element glows":                      "",
		plate + "amp heater 8.6 run; saw burner boils water":                 "",
		plate + "amp heater 8.6 run":                                         "that it heats",
		plate + "saw element glows":                                          "its amps or ohms",
		plate + "ohm heater OL; saw element glows":                           "its amps or ohms",
		hood + "amp fan 1.6 run; saw fan runs, all speeds":                   "",
		hood + "amp fan 1.6 run; saw fan runs on all speeds":                 "",
		hood + "amp fan 1.6 run":                                             "the fan seen to run",
		hood + "saw fan runs":                                                "running amps of the fan",
		hood + "amp fan 1.6 run; saw fan does not run":                       "the fan seen to run",
		jam + "amp motor 4.1 run; saw turns freely by hand; saw runs":        "",
		jam + "amp motor 9.9 run; saw turns freely by hand; saw runs":        "running amps",
		"unit electric oven; fault no heat; did new element; temp oven 350F": "running amps",
	} {
		c := applyAll(t, strings.Split(lines, "; ")...)
		got := strings.Join(c.proofMissing(), "; ")
		if want == "" && got != "" || !strings.Contains(got, want) {
			t.Errorf("%s: %q, want %q", lines, got, want)
		}
		if m := strings.Join(c.missing(), "; "); want == "" && (strings.Contains(m, "windings") || strings.Contains(m, "limit") || strings.Contains(m, "to case")) {
			t.Errorf("%s: asks besides: %q", lines, m)
		}
	}
	c := applyAll(t, "unit disposer", "fault hums, jammed", "did freed it")
	if m := strings.Join(c.missing(), "; "); !strings.Contains(m, "windings") {
		t.Errorf("freed and not seen to turn: %q", m)
	}
	for _, left := range []string{"ready", "ok", "with customer", "good to go"} {
		c := applyAll(t, "unit washer")
		must(t, c, "left "+left)
	}
}
