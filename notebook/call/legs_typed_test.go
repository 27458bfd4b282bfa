package call

import (
	"slices"
	"strings"
	"testing"
)

// A call on a fan of three phases is held to the fan; its legs go by its plate;
// volts between legs go on from pair to pair; a supply beyond a household's waits
// for its plate; and what stands on a dryer's blower is no part of its heater box:
// common practice.
func TestOneMachineOfSeveral(t *testing.T) {
	fan := "unit rooftop, 3 phase; fault motor trips; on cond-fan; plate volts 460, ph 3, fla 2.1; "
	answers(t, [][2]string{
		{fan + "amp L1 2.9", "2.9 A is high for a plate of 2.1 A"},
		{fan + "amp L1 2.9", "at 1673 VA"},
		{fan + "did replaced the contactor", "amp cond-fan … run"},
		{fan + "volt L1 L2 462; L2 L3 459", "Entry 6: L2–L3 459 V"},
		{"meter volt 0.1% 1; plate volts 460, ph 3; volt L1 L2 462.0, L2 L3 459.0, L1 L3 438.0", "suspect"},
		{"meter volt 0.1% 1; plate volts 460, ph 3; volt L1 L2 462.0, L2 L3 461.0, L1 L3 460.0", "sound"},
		{"unit fridge; volt door earth 70", "failed, 70 V on bare metal"},
		{"unit fridge; volt ground handle 90", "failed, 90 V on bare metal"},
		{"unit fridge; volt door earth 0.1", "metal to earth: sound"},
		{"unit washer; volt door switch 24 run", "door-switch 24 V"},
		{"plate volts 208, ph 3; volt L1 L2 480, L2 L3 481, L1 L3 479", "failed, 480 V is far too high for 208 V"},
		{"plate volts 460, ph 3; volt L1 L2 208, L2 L3 207, L1 L3 209", "failed, 208 V is no working supply"},
		{"plate volts 208, ph 3; volt L1 L2 183, L2 L3 180, L1 L3 181", "failed, 181.3 V is low for 208 V"},
		{"plate volts 208, ph 3; volt L1 L2 196, L2 L3 197, L1 L3 196", "sound"},
		{"volt L1 L2 462", "the plate's volts are needed"},
		{"unit electric dryer; fault no heat; safe; ohm thermal-fuse 0.1; ohm tco OL", "Cause supported: thermal limit"},
		{"unit gas oven; fault no bake; on igniter; plate amps 3.2; amp igniter 2.6", "failed"},
		{"plate volts 460; ohm T1 case 500M test 500V", "test at 1000 V"},
		{"+1h10 temp freezer 3F", "freezer 3 °F"},
		{"wire black run; wire black common", "If this one corrects black to run: strike 1."},
	})
	c := applyAll(t, "ohm A B 3.45, A C 5.95, B C 2.5", "wire black run", "wire black common")
	if got := c.Record().Alerts; !slices.ContainsFunc(got, func(s string) bool { return strings.Contains(s, "2 wires are called black") }) {
		t.Errorf("%q", got)
	}
}
