package call

import (
	"strings"
	"testing"
)

// The outcome says what a cause was inferred from, so that nobody has to look
// it up, and counts what is wanting without saying it again.
func TestOutcomeSaysWhatWasFound(t *testing.T) {
	c := New()
	for _, l := range []string{"fault clicks and does not cool", "safe", "saw clicks", "09:10 ohm ptc OL cold  # as read", "saw device rattles", "did replaced start device"} {
		must(t, c, l)
	}
	r := c.Record()
	got := map[string]string{}
	for _, f := range r.Outcome {
		got[f.Label] = f.Text
	}
	for _, want := range []string{"ptc OL cold (4)", "device rattles (5)"} {
		if !strings.Contains(got["Cause found"], want) {
			t.Errorf("cause found: %s, want %q in it", got["Cause found"], want)
		}
	}
	if w := got["Work and result"]; !strings.Contains(w, "points of proof are wanting") || strings.Contains(w, "saw starts") {
		t.Errorf("work and result: %s", w)
	}
	if !strings.Contains(strings.Join(r.Alerts, "\n"), "saw starts") {
		t.Error("what is wanting is not among what needs attention")
	}
}

// What is seen is what it is in the appliance at hand: common practice.
func TestSeenInAppliance(t *testing.T) {
	for lines, want := range map[string]string{
		"unit walk-in cooler; fault not cooling; saw evap coil iced up solid":      "frost-heavy",
		"unit fridge; fault warm; saw coil frozen":                                 "frost-heavy",
		"unit freezer; fault no cool; saw evap coil iced":                          "frost-heavy",
		"unit window ac; fault not cold; saw evap coil iced up solid":              "coil-iced",
		"unit heat pump; fault no heat; saw coil frozen":                           "coil-iced",
		"fault ac blows warm; saw coil frozen":                                     "coil-iced",
		"unit fridge; fault warm; saw no fan noise in freezer":                     "",
		"unit fridge; fault noisy; saw no fan noise":                               "fans-quiet",
		"unit fridge; fault noisy; saw noise not from fans":                        "fans-quiet",
		"unit washer; fault no fill; saw water on the control board":               "hazard",
		"unit washer; fault no fill; saw water on":                                 "tap-open",
		"unit electric range; fault no heat; saw bake element on with control off": "heats-when-off hazard",
		"unit gas range; fault no heat; saw burner stays on when knob is off":      "heats-when-off gas-leak",
		"unit electric range; fault no heat; saw burner stays on when knob is off": "heats-when-off hazard",
	} {
		c := applyAll(t, strings.Split(lines, "; ")...)
		if got := strings.Join(c.seenCodes, " "); got != want {
			t.Errorf("%s: %q, want %q", lines, got, want)
		}
	}
}
