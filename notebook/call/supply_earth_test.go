package call

import (
	"strings"
	"testing"
)

// A current in the earth is a leak, two legs' volts are none of one leg, a contactor's
// pole and a heat strip are parts, and what is set is how a switch should be: common practice.
func TestJudgedByItsPlace(t *testing.T) {
	for lines, want := range map[string]string{
		"unit electric dryer; fault shocks; amp earth 3":                                   "current in the earth: failed",
		"unit electric dryer; fault shocks; amp ground 3 run":                              "current in the earth: failed",
		"unit electric dryer; fault shocks; amp earth 0.0001":                              "current in the earth: sound",
		"unit electric dryer; plate volts 240; fault no heat; volt L1 N 240":               "supply: cannot tell, 240 V is what two legs have between them",
		"unit electric dryer; plate volts 240; fault no heat; volt L N 240":                "supply: sound",
		"unit electric oven; plate volts 240, hz 50; fault no heat; volt L1 N 240":         "supply: sound",
		"unit electric oven; plate volts 230; fault no heat; volt L1 N 230":                "supply: sound",
		"unit three-phase motor; fault does not start; ohm contactor-pole-3 OL closed":     "contactor-pole-3: failed",
		"unit three-phase motor; fault does not start; ohm contactor-pole-3 OL":            "depends on the coil whether it should be",
		"unit three-phase motor; fault does not start; ohm contactor-pole-3 0.1 closed":    "contactor-pole-3: sound",
		"unit electric furnace; plate volts 240, watts 5000; fault no heat; amp heat2 0":   "heater amps heat2: failed",
		"unit electric furnace; plate volts 240, watts 5000; fault no heat; amp strip1 21": "heater amps strip1: sound",
	} {
		c := applyAll(t, strings.Split(lines, "; ")...)
		if got := c.Entries()[len(c.Entries())-1].Reply.Plain(); !strings.Contains(got, want) {
			t.Errorf("%s: %q, want %q", lines, got, want)
		}
	}
	c := applyAll(t, "unit electric dryer", "fault no heat", "amp earth 3")
	if got := strings.Join(c.unsafe(), "; "); !strings.Contains(got, "current in the earth") {
		t.Errorf("3 A in the earth leave it safe: %q", got)
	}
	c = applyAll(t, "unit three-phase motor", "fault does not start", "ohm contactor-pole-1 0.1 closed", "ohm contactor-pole-3 OL closed")
	if got := c.Entries()[3].Reply.Plain(); !strings.Contains(got, "contactor pole open or burnt") {
		t.Errorf("an open pole supports nothing: %q", got)
	}
}
