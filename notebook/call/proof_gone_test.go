package call

import (
	"strings"
	"testing"
)

// A complaint that is none of the weighed ones, or of another load than was mended, is
// seen gone; readings of the part do not tell of it: common practice.
func TestComplaintSeenGone(t *testing.T) {
	const oven, range4 = "unit electric oven; fault ", "unit gas range; fault "
	for lines, want := range map[string]bool{
		oven + "grill stays black, bottom ok; did replaced bake element; temp oven 350F":                   true,
		oven + "grill stays cold, bottom ok; did replaced grill element; temp oven 350F":                   true,
		oven + "grill stays cold, bottom ok; did replaced grill element; saw grill glows red":              false,
		oven + "broiler dead; did replaced broil element; saw complaint gone":                              false,
		oven + "right rear burner dead; did replaced right front element; saw heats":                       true,
		oven + "right rear burner dead; did replaced right rear element; saw heats":                        false,
		oven + "right rear burner dead; did replaced surface element; saw heats":                           false,
		oven + "does not heat; did replaced bake element; temp oven 350F":                                  false,
		oven + "display flickers; did replaced bake element; temp oven 350F":                               true,
		oven + "display flickers; did replaced board; saw display ok":                                      false,
		oven + "display flickers; did replaced board; saw display flickers":                                true,
		range4 + "back burner wont light; did replaced igniter; saw flame lights":                          true,
		range4 + "back burner wont light; did replaced igniter; saw burner lights":                         false,
		range4 + "oven wont heat; did replaced igniter; saw flame lights":                                  false,
		"unit microwave; fault carousel stands still; did replaced magnetron; saw heats":                   true,
		"unit microwave; fault carousel stands still; did replaced turntable motor; saw carousel turns ok": false,
		"unit microwave; fault loud noise; did replaced stirrer; saw runs quietly":                         false,
		"unit washer; fault code E5; did replaced drive motor; saw starts":                                 true,
		"unit washer; fault code E5; did replaced drive motor; saw code gone":                              false,
		"unit washer; fault knob broken; did replaced motor; saw complaint gone; strike 4 wrong":           true,
		"unit electric water heater; fault water smells; did replaced anode":                               true,
		"unit washer; did replaced drive motor; saw starts":                                                false,
	} {
		c := applyAll(t, strings.Split(lines, "; ")...)
		if got := strings.Contains(strings.Join(c.proofMissing(), "; "), "that the complaint is gone"); got != want {
			t.Errorf("%s: missing %t, want %t: %q", lines, got, want, c.proofMissing())
		}
	}
}
