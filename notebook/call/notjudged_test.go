package call

import (
	"slices"
	"strings"
	"testing"

	"ohmcall/calc/cause"
	"ohmcall/notebook/said"
)

// What no meter of the call sees, or what the appliance does not have, is not
// judged as something that it is not. Common practice throughout.
func TestNotJudgedAsWhatItIsNot(t *testing.T) {
	const (
		fridge = "unit refrigerator; fault does not start; plate volts 115, amps 1.3, gas R-134a; "
		oven   = "unit microwave oven; fault does not heat; safe; "
	)
	checkTrade(t, []tradeCase{
		{"volts of a drive by its plate", fridge + "plate type inverter; volt comp 118", []string{"cannot tell", "pulses of varying width"}, []string{"60 %", "sound"}, nil, "", "common practice"},
		{"volts of a drive by three like windings", fridge + "ohm A B 7.1, A C 7.1, B C 7.2; volt comp 60 run", []string{"cannot tell", "pulses of varying width"}, []string{"failed"}, nil, "", "common practice"},
		{"volts of any other compressor", fridge + "volt comp 118", []string{"sound", "85 % of 115 V"}, nil, nil, "", "common practice"},
		{"a drive starts softly: no surge is asked for", fridge + "ohm A B 7.1, A C 7.1, B C 7.2; did replaced the drive board", []string{"running amps"}, []string{"start surge", "volts while it starts"}, nil, "", "common practice"},
		{"a limit that does not apply", fridge + "ohm A B 7.1, A C 7.1, B C 7.2; show verdicts", []string{"windings"}, []string{"of the highest pair"}, nil, "", "common practice"},

		{"a potential relay at rest stays open", fridge + "ohm potential-coil 5.2k; ohm potential-contact 0.1", []string{"whether it picks up is not tested"}, []string{"Ruled out"},
			map[string]cause.State{"start-device-failed": cause.Open}, "", "common practice"},
		{"an open one is shown", fridge + "ohm potential-coil OL; ohm potential-contact 0.1", nil, nil, map[string]cause.State{"start-device-failed": cause.Supported}, "", "common practice"},

		{"a capacitor by its own tolerance", fridge + "plate mfd start 60 10%; mfd start 55.0", []string{"sound", "54 to 66 µF, ±10 % marked on the can"}, nil, nil, "", "common practice"},
		{"over it", fridge + "plate mfd start 60 10%; mfd start 70.0", []string{"suspect", "±10 %"}, nil, nil, "", "common practice"},
		{"by the standard", fridge + "plate mfd start 60; mfd start 55.0", []string{"failed", "EIA-463"}, nil, nil, "", "EIA-463 (from memory)"},

		{"0 V is dead by any plate", "unit refrigerator; volt line 0", []string{"failed, no supply: 0 V is dead by any plate"}, nil, map[string]cause.State{}, "", "common practice"},
		{"the only plate is that of the motor", "unit bench grinder; plate volts 120, amps 8; amp motor 6.8 run", []string{"sound, 6.8 A against a plate of 8 A"}, nil, nil, "", "common practice"},
		{"another name has its own", "unit bench grinder; plate volts 120, amps 8; amp wheel 6.8 run", []string{"on wheel, then plate amps"}, nil, nil, "", "common practice"},

		{"a monitor switch with the door shut", oven + "ohm monitor-switch OL closed", []string{"sound, open, as it must be"}, nil, map[string]cause.State{"switch-open": cause.Open}, "", "common practice"},
		{"and with it open", oven + "ohm monitor switch 0.1 open", []string{"sound, closed, as it must be"}, nil, nil, "", "common practice"},
		{"stuck", oven + "ohm monitor-switch 0.1 closed", []string{"failed, closed where it must be open"}, nil, map[string]cause.State{"switch-open": cause.Open}, "", "common practice"},
		{"its interlock", oven + "ohm door-switch OL closed", []string{"failed, open where it must be closed"}, nil, map[string]cause.State{"switch-open": cause.Supported}, "", "common practice"},
		{"a door switch of a refrigerator may be the lamp's", "unit refrigerator; fault does not cool; ohm door-switch OL closed", []string{"cannot tell", "a lamp's is open with the door shut"}, nil, nil, "", "common practice"},
		{"the secondary is bonded to the chassis", oven + "ohm secondary case 88", []string{"nothing here judges the high-voltage side"}, []string{"Grounded", "Never energise"}, nil, "", "common practice"},
		{"a filament", oven + "ohm magnetron filament 0.3", []string{"nothing here judges the high-voltage side"}, []string{"Joined"}, nil, "", "common practice"},
		{"a high-voltage capacitor", oven + "mfd hv-cap 0.98", []string{"nothing here judges the high-voltage side"}, []string{"run capacitor"}, nil, "", "common practice"},
		{"elsewhere such a name is of a winding", "unit furnace; ohm transformer-primary 20", []string{"cannot tell, not open; its sheet"}, []string{"high-voltage"}, nil, "", "common practice"},

		{"a platinum sensor whose name gives no ohms", "unit wall oven; ohm rtd 1089 at 74F", []string{"no gross fault"}, []string{"failed"}, nil, "", "IEC 60751, from memory"},
		{"the same of a hundred", "unit wall oven; ohm rtd 109 at 74F", []string{"no gross fault"}, []string{"failed"}, nil, "", "IEC 60751, from memory"},
		{"one whose name gives them", "unit wall oven; ohm pt100 1089 at 74F", []string{"failed"}, nil, nil, "", "IEC 60751, from memory"},
		{"the coil of a lock", "unit washer; ohm door-lock 55", []string{"cannot tell, 55 Ω is the coil or PTC of the lock"}, []string{"burnt"}, nil, "", "common practice"},
		{"the contact of a lock", "unit washer; ohm lid-lock 0.2 closed", []string{"sound"}, nil, nil, "", "common practice"},
		{"a PTC that starts nothing", "unit washer; ohm ptc 950", []string{"cannot tell, no PTC starts a motor here"}, nil, nil, "", "common practice"},
		{"one that its plate names", "unit washer; plate start ptc; ohm ptc OL cold", []string{"failed"}, nil, nil, "", "common practice"},
		{"a relay that a control works", "unit heat pump; ohm relay coil 300", []string{"relay coil: cannot tell, 300 Ω", "data sheet"}, []string{"current relay"}, nil, "", "common practice"},
		{"a contactor's coil before any pin", "unit heat pump; ohm contactor coil 14", []string{"coil contactor-coil"}, []string{"No pair", "Wanted next"}, nil, "", "common practice"},
	})
	if _, err := applyAll(t, "ohm C R 1.2, C S 3.4, R S 4.6").Apply(nine, "ohm C case OL"); err != nil {
		t.Error(err)
	}
	c := applyAll(t, "ohm C R 1.2, C S 3.4, R S 4.6")
	for _, l := range []string{"ohm compressor case OL", "ohm comp case 50M test 500V"} {
		if err := c.Doubtful(l); err == nil || !strings.Contains(flat(err), "ohm C case ") {
			t.Errorf("%s: %v", l, err)
		}
	}
	if err := c.Doubtful("ohm cond-fan case OL"); err == nil || !strings.Contains(flat(err), "on cond-fan, then ohm 1 case OL") {
		t.Errorf("another machine: %v", err)
	}
	relay := applyAll(t, strings.Split(fridge+"ohm relay-contact OL upright, relay-contact 0.2 inverted", "; ")...)
	if got := must(t, relay, "ohm relay-coil 0.6").Reply.Plain(); strings.Count(got, "current relay: sound") != 1 {
		t.Error(got)
	}
	if got := must(t, relay, "ohm relay OL upright").Reply.Plain(); strings.Count(got, "current relay: sound") != 1 {
		t.Error(got)
	}
	if got := flat(relay.Record().Verdicts); strings.Count(got, "current relay") != 1 {
		t.Error(got)
	}
}

// A machine on three phases: a lost leg, whatever the complaint, and legs that are
// swapped. Common practice.
func TestThreePhasesOfAnAirConditioner(t *testing.T) {
	const (
		unit = "unit split air conditioner; fault does not cool; plate phase 3, volts 400, amps 11.2, gas R-410A; "
		good = unit + "volt L1 L2 401, L2 L3 399, L1 L3 402; "
		lost = "volt L1 L2 401, L2 L3 228, L1 L3 174"
	)
	checkTrade(t, []tradeCase{
		{"a lost leg", unit + lost, []string{"leg L3 is lost: keep it off, on two legs it burns out", "Cause supported: a leg of the supply lost"}, nil,
			map[string]cause.State{"phase-lost": cause.Supported}, "keep it off, on two legs it burns out: ohms through the appliance's fuse", "common practice"},
		{"shown", unit + lost + "; show", []string{"a leg of the supply lost"}, nil, nil, "", "common practice"},
		{"whatever the complaint", "unit three-phase walk-in freezer; fault noisy and ices up; " + lost, []string{"Cause supported: a leg of the supply lost"}, nil, nil, "", "common practice"},
		{"each leg to the neutral of a star", unit + "volt L1 N 231, L2 N 230, L3 N 229", []string{"supply L3–N: sound, 229 V is right to the neutral of 400 V"}, []string{"failed", "cannot tell"}, nil, "", "V by the square root of three"},
		{"a leg lost to neutral", unit + "volt L1 N 231, L2 N 230, L3 N 2", []string{"failed, 2 V to a neutral to which another leg reads: that leg is lost", "Cause supported: a leg of the supply lost"}, nil, map[string]cause.State{"phase-lost": cause.Supported}, "", "common practice"},
		{"no other leg read", unit + "volt L3 N 2", []string{"that leg is lost, or the neutral is"}, []string{"Cause supported"}, nil, "", "common practice"},
		{"a delta has no such neutral", "unit three-phase pump motor; fault dead; plate volts 240, phase 3; volt L1 N 208", []string{"cannot tell, a service of these volts may be a delta"}, nil, nil, "", "common practice"},
		{"no run capacitor", good + "saw set to cool; saw filter clean", nil, nil, map[string]cause.State{"run-cap-failed": cause.RuledOut}, "", "common practice"},
		{"one that is read is there", unit + "plate mfd C1 10; mfd C1 9.9", []string{"sound"}, []string{"contradict"}, nil, "", "common practice"},
		{"far under the plate on every leg", good + "amp L1 5.1 run, L2 5.0 run, L3 5.1 run", []string{"cannot tell, 5.1 A is far under the plate of 11.2 A"}, []string{"sound"}, nil, "", "common practice"},
		{"it turns the wrong way", good + "saw runs backwards", []string{"Cause supported: two legs swapped"}, nil, map[string]cause.State{"wrong-rotation": cause.Supported}, "swap two of the three legs, by who is licensed to", "common practice"},
		{"after work on the panel the order of the legs is read", good + "saw after utility work; ohm T1 T2 1.2, T2 T3 1.2, T1 T3 1.2; ohm T1 case OL, T2 case OL, T3 case OL", nil, nil,
			map[string]cause.State{"wrong-rotation": cause.Open}, "phase rotation meter", "common practice"},
		{"in the right order", good + "saw phase rotation right", nil, nil, map[string]cause.State{"wrong-rotation": cause.RuledOut}, "", "common practice"},
		{"two legs swapped mends it", good + "saw runs backwards; did swapped two legs, power off; missing", nil, []string{"work for what was found"}, nil, "", "common practice"},
		{"on one phase nothing is said of it", "unit window air conditioner; fault does not cool; plate volts 115; causes", nil, []string{"two legs swapped"}, nil, "", "common practice"},
	})
	if c := applyAll(t, strings.Split(unit+lost, "; ")...); c.weigh(1<<30).Complaint != said.ThreePhase {
		t.Errorf("it is weighed as %s", c.weigh(1<<30).Complaint)
	}
}

// Three pairs of a machine on three phases are alike or they are not, whatever says
// that it is one; none of them is start or run. Common practice throughout.
func TestThreePairsOfThreePhases(t *testing.T) {
	const (
		unlike = "; ohm T1 T2 1.0, T2 T3 3.0, T1 T3 4.0"
		differ = "The pairs differ by more than the meter allows"
		maybe  = "this meter cannot tell"
		alike  = "The three pairs read alike"
	)
	roles := []string{"is common", "is start", "is run", alike}
	open := map[string]cause.State{"winding-shorted": cause.Open}
	out := map[string]cause.State{"winding-shorted": cause.RuledOut, "winding-open": cause.RuledOut}
	comp := "unit three-phase compressor; fault does not start"
	var rows []tradeCase
	row := func(name, lines string, in, not []string, states map[string]cause.State, next string) {
		rows = append(rows, tradeCase{name, lines, in, not, states, next, "common practice"})
	}
	row("by the unit", "unit three-phase machine; fault does not start"+unlike, []string{differ}, roles, open, "")
	row("by the name of a compressor", comp+unlike, []string{differ}, roles, open, "")
	row("by the plate of the appliance", "unit motor; fault hums; plate volts 208, phase 3; ohm A B 3.4, A C 6.5, B C 2.5", []string{differ}, roles, nil, "")
	row("by the plate typed last", "unit compressor; fault hums; ohm A B 3.4, A C 6.5, B C 2.5; plate volts 208, phase 3", []string{differ}, roles, open, "")
	row("shown", comp+unlike+"; show verdicts", []string{"windings | suspect | " + differ}, nil, nil, "")
	row("one half of the others", comp+"; ohm T1 T2 1.2, T2 T3 1.2, T1 T3 0.6", []string{maybe}, roles, open, "")
	row("a quarter apart", comp+"; ohm T1 T2 2.5, T2 T3 2.5, T1 T3 3.1", []string{maybe}, roles, open, "")
	row("on a finer range", comp+"; meter ohm 0.2% 2; ohm T1 T2 2.50, T2 T3 2.50, T1 T3 3.10", []string{differ}, roles, open, "")
	row("alike", comp+"; ohm T1 T2 1.2, T2 T3 1.2, T1 T3 1.2", []string{alike}, roles[:3], out, "")
	row("within a count", comp+"; ohm T1 T2 0.8, T2 T3 0.8, T1 T3 0.9", []string{alike}, roles[:3], out, "")
	row("a count that is the whole", comp+"; ohm T1 T2 0.1, T2 T3 0.1, T1 T3 0.2", nil, roles, nil, "")
	row("within five percent beyond the meter", comp+"; meter ohm 0.2% 2; ohm T1 T2 25.0, T2 T3 26.0, T1 T3 25.5", []string{alike}, roles[:3], out, "")
	row("ten percent beyond it", comp+"; meter ohm 0.2% 2; ohm T1 T2 25.0, T2 T3 27.5, T1 T3 25.5", []string{differ}, roles, open, "")
	row("an open one", comp+"; ohm T1 T2 OL, T2 T3 OL, T1 T3 1.2", []string{"Open at T2"}, []string{"T2 is run", alike}, nil, "")
	row("by a plate that says otherwise", comp+"; plate type split-phase; ohm A B 3.4, A C 6.5, B C 2.5", []string{"is common"}, []string{differ}, nil, "")
	row("its fan is no such machine", "unit three-phase walk-in freezer; fault does not cool; ohm T1 T2 1.2, T2 T3 1.2, T1 T3 1.2; on evap-fan; ohm A B 34, A C 65, B C 31", []string{"is common"}, nil, nil, "")
	row("on one phase", "unit compressor; fault hums; ohm A B 3.4, A C 5.9, B C 2.5", []string{"B is common, A is start, C is run"}, []string{differ}, nil, "")
	checkTrade(t, rows)
	if got := answer(t, comp+"; volt L1 L2 208, L2 L3 208, L1 L3 208; ohm T1 T2 1.2, T2 T3 1.2, T1 T3 0.6; ohm T1 case OL, T2 case OL, T3 case OL; missing"); strings.Contains(got, "markings") {
		t.Error(got)
	}
	pairs := &cause.Tests()[slices.IndexFunc(cause.Tests(), func(x cause.Test) bool { return x.Code == "winding-ohms" })]
	if got := applyAll(t, "unit three-phase compressor", "fault hums").proposed(pairs); !strings.HasSuffix(got, "ohm T1 T2 3.4, T2 T3 3.4, T1 T3 3.4") {
		t.Error(got)
	}
	if got := applyAll(t, "unit refrigerator", "fault hums").proposed(pairs); !strings.HasSuffix(got, "ohm A B 3.4, A C 6.5, B C 2.5") {
		t.Error(got)
	}
}
