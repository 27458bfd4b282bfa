package call

import (
	"math"
	"slices"
	"testing"

	"ohmcall/calc/cause"
	"ohmcall/notebook/said"
)

// The watts of a plate with two volts are those at the upper one, never at their
// middle; what would be right at the lower one is asked about. A range as narrow as
// 220-240 is one rating. IEC 60335-1 cl. 10.1, from memory; common practice.
func TestTwoVoltsOfAHeater(t *testing.T) {
	const oven, dryer = "unit electric oven; fault not heating; plate volts 208/240, watts bake 2500; ", "unit electric dryer; fault squeals; plate volts 208-240, watts heater 5600; "
	checkTrade(t, []tradeCase{
		{"right at the upper", oven + "ohm bake 23.0", []string{"sound", "23.04 Ω at 240 V"}, []string{"supported"}, nil, "", "common practice"},
		{"right at the lower", oven + "ohm bake 17.3 hot", []string{"cannot tell", "plate volts 208, or plate volts 240"}, []string{"failed"}, nil, "", "common practice"},
		{"between them", oven + "ohm bake 20.0 hot", []string{"cannot tell"}, []string{"sound", "failed"}, nil, "", "common practice"},
		{"too low for both", oven + "ohm bake 12.0 hot", []string{"failed"}, nil, nil, "", "common practice"},
		{"too high for both", oven + "ohm bake 40.0", []string{"failed"}, nil, nil, "", "common practice"},
		{"amps right", dryer + "volt L1 L2 240.5 run; amp heater 23.3 run", []string{"sound"}, nil, nil, "", "common practice"},
		{"amps right at the lower", dryer + "volt L1 L2 240.5 run; amp heater 30.9 run", []string{"cannot tell", "at which are they printed"}, []string{"suspect"}, nil, "", "common practice"},
		{"amps of half a coil", dryer + "volt L1 L2 240.5 run; amp heater 15.0 run", []string{"suspect"}, nil, nil, "", "common practice"},
		{"amps without volts", dryer + "amp heater 18.0 run", []string{"cannot tell", "read the volts beside it"}, []string{"suspect"}, nil, "", "common practice"},
		{"one range", "unit electric oven; fault not heating; plate volts 220-240, watts bake 2500; ohm bake 21.2", []string{"sound, 21.2 Ω agrees with the plate's 21.16 Ω hot"}, nil, nil, "", "IEC 60335-1 cl. 10.1, from memory"},
	})
}

// An air conditioner pumps at pressures that lie nearer each other than those of a
// refrigerator: the hotter the coil, the nearer. Common practice.
func TestPressuresOfAirConditioning(t *testing.T) {
	const ac = "unit central air conditioner; fault thermostat cover broken; plate volts 240, hz 60, amps 14.5, gas R-410A; temp outdoor 72F; "
	const level = "it does not pump, or had run too short"
	checkTrade(t, []tradeCase{
		{"a mild day", ac + "psi suction 132 run; psi discharge 258 run", []string{"it pumps"}, []string{"suspect", level}, nil, "", "common practice"},
		{"nearly level", ac + "psi suction 180 run; psi discharge 200 run", []string{"suspect", level, "1.8 to 3.5"}, nil, nil, "", "common practice"},
		{"a heat pump by a drive", "unit mini split, inverter heat pump; fault remote does not work; plate volts 230, amps 8, gas R-410A, type inverter; psi suction 140 run; psi discharge 260 run", nil, []string{"suspect", "near"}, nil, "", "common practice"},
		{"R-32", "unit mini split; fault remote does not work; plate volts 230, amps 8, gas R-32; temp outdoor 72F; psi suction 150 run; psi discharge 285 run", []string{"it pumps"}, []string{level}, nil, "", "common practice"},
		{"R-22", "unit window air conditioner; fault knob broken; plate volts 115, amps 8, gas R-22; temp outdoor 72F; psi suction 75 run; psi discharge 160 run", nil, []string{"too near to say"}, nil, "", "common practice"},
		{"a refrigerator", "unit refrigerator; fault warm; plate volts 115, amps 1.2, gas R-134a; psi suction 35 run; psi discharge 70 run", []string{"suspect", level}, nil, nil, "", "common practice"},
	})
}

// A compressor on a drive has three like windings, and its plate says what it draws at
// most: low amps and a small difference of the air are usual at part load, unless it is
// complained of. Common practice.
func TestOnADrive(t *testing.T) {
	const plate = "; plate volts 230, hz 60, amps 8, gas R-410A; "
	const like, odd = "The three pairs read alike", "do not add up"
	out := func(codes ...string) map[string]cause.State {
		m := map[string]cause.State{}
		for _, code := range codes {
			m[code] = cause.RuledOut
		}
		return m
	}
	const pins = "ohm U V 1.1; ohm V W 1.1; ohm U W 1.1"
	checkTrade(t, []tradeCase{
		{"a mini split", "unit mini split; fault no cooling, error code" + plate + pins, []string{like}, []string{odd}, out("run-cap-failed", "selector-open", "winding-shorted"), "", "common practice"},
		{"by its pins", "unit central air conditioner; fault no cooling" + plate + pins, []string{like}, []string{odd}, nil, "", "common practice"},
		{"unlike pins of it", "unit central air conditioner; fault no cooling" + plate + "ohm U V 1.1, V W 2.2, U W 3.3", nil, []string{like}, nil, "", "common practice"},
		{"a short of it", "unit mini split; fault no cooling" + plate + "ohm U V 1.10, V W 1.10, U W 0.30", []string{"The pairs differ"}, []string{like}, nil, "", "common practice"},
		{"its drive is a cause", "unit mini split; fault no cooling, error code" + plate + "saw set to cool", nil, nil, map[string]cause.State{"drive-fault": cause.Open}, "saw drive no fault", "common practice"},
		{"with a capacitor it has none", "unit mini split; fault no cooling" + plate + "plate mfd herm 35", nil, nil, map[string]cause.State{"run-cap-failed": cause.Open}, "", "common practice"},
		{"amps at part load", "unit mini split; fault water drips from indoor unit; plate volts 230, amps 7.5; amp comp 2.1 run", []string{"cannot tell", "a drive turns it as slowly"}, []string{"suspect"}, nil, "", "common practice"},
		{"too many amps", "unit mini split; fault water drips from indoor unit; plate volts 230, amps 7.5; amp comp 11.0 run", []string{"failed"}, nil, nil, "", "common practice"},
		{"amps without a drive", "unit window air conditioner; fault water drips; plate volts 115, amps 7.5; amp comp 2.1 run", []string{"suspect"}, nil, nil, "", "common practice"},
		{"its overload read", "unit fridge; fault comp not running; plate type inverter; " + pins + "; ohm olp 0.2", nil, []string{"contradict"}, map[string]cause.State{"drive-fault": cause.Open, "overload-failed": cause.RuledOut}, "", "common practice"},
		{"its overload open", "unit fridge inverter compressor; fault comp not running; ohm olp OL cold", nil, []string{"contradict"}, map[string]cause.State{"drive-fault": cause.Open, "overload-failed": cause.Supported}, "", "common practice"},
		{"an open disc read of it", "unit fridge inverter compressor; fault comp not running; ohm ptc OL cold", []string{"contradict"}, nil, map[string]cause.State{"drive-fault": cause.Open, "start-device-failed": cause.Open}, "", "common practice"},
		{"air at part load", "unit mini split; fault remote does not work" + plate + "temp return 72F; temp supply 60F", []string{"cannot tell", "while a drive turns it slowly"}, []string{"suspect"}, nil, "", "common practice"},
		{"air complained of", "unit mini split; fault not cooling" + plate + "temp return 72F; temp supply 66F", []string{"suspect"}, nil, nil, "", "common practice"},
	})
	if c := applyAll(t, "unit window air conditioner", "fault not cooling"); slices.Contains(weighedCodes(c), "drive-fault") {
		t.Error("an air conditioner without a drive has its fault as a cause")
	}
}

func weighedCodes(c *Call) (codes []string) {
	for _, s := range c.weigh(math.MaxInt).Standings {
		codes = append(codes, s.Cause.Code)
	}
	return codes
}

// In heating a heat pump that gives the air out far colder cools: its compressor pumps,
// and the valve that turns its circuit round stands wrong or is fed in the wrong mode,
// which its volts alone do not tell. Common practice.
func TestHeatPumpThatCools(t *testing.T) {
	const blows, set = "unit heat pump; fault blows cold air in heat mode; plate volts 240, amps 13, gas R-410A; ", "saw set to heat; "
	cools := map[string]cause.State{"reversing-stuck": cause.Supported, "compressor-off": cause.RuledOut, "refrigerant-low": cause.RuledOut, "compressor-weak": cause.RuledOut}
	checkTrade(t, []tradeCase{
		{"it cools", blows + set + "temp return 68F; temp supply 52F", []string{"8.9 K (16 °F) colder than it was taken in: it cools"}, []string{"hardly heats", "warmer"}, cools, "whether its coil is fed to heat (B) or to cool (O)", "common practice"},
		{"nobody saw how it is set", blows + "temp return 68F; temp supply 52F", []string{"it cools"}, nil, map[string]cause.State{"set-not-heating": cause.Open, "reversing-stuck": cause.Open}, "", "common practice"},
		{"hardly warmer", blows + set + "temp return 68F; temp supply 71F", []string{"it hardly heats"}, []string{"it cools"}, map[string]cause.State{"reversing-stuck": cause.Open, "refrigerant-low": cause.Open}, "", "common practice"},
		{"not cooled by a draught", blows + set + "temp return 68F; temp supply 66F", []string{"it hardly heats"}, []string{"it cools"}, map[string]cause.State{"compressor-off": cause.Open}, "", "common practice"},
		{"volts at the valve", blows + set + "volt reversing-valve 24.6", []string{"cannot tell", "in heating alone (B) or in cooling alone (O)"}, []string{"sound"}, nil, "", "common practice"},
		{"volts at another valve", "unit washing machine; fault does not fill; volt inlet-valve 120 run", []string{"sound"}, nil, nil, "", "common practice"},
		{"cools fine", "unit heat pump; fault cools fine but cold air when heat is on; saw set to heat; temp return 67F; temp supply 50F", []string{"it cools"}, nil, cools, "", "common practice"},
		{"cools in heat", "unit heat pump; fault cools when in heat", nil, nil, map[string]cause.State{"reversing-stuck": cause.Open}, "saw set to heat", "common practice"},
	})
}

// A leg that is fed back through a motor reads low to both others alike; a motor that
// burns out on two legs is no matter of the utility's. What it was called for is proved
// too. Common practice.
func TestLegFedBack(t *testing.T) {
	const unit = "unit reach-in freezer, three-phase compressor; fault freezer warm, box 25F; plate volts 208, hz 60, phase 3, amps 7.2, lra 52, gas R-404A; "
	lost := map[string]cause.State{"phase-lost": cause.Supported, "phases-unequal": cause.RuledOut}
	checkTrade(t, []tradeCase{
		{"fed back", unit + "volt L1 L2 208, L2 L3 150, L1 L3 152", []string{"failed", "leg L3 is lost"}, []string{"unbalanced"}, lost, "", "common practice"},
		{"fed back well", unit + "volt L1 L2 165, L2 L3 208, L1 L3 163", []string{"leg L1 is lost"}, nil, lost, "", "common practice"},
		{"unbalanced", unit + "volt L1 L2 208, L2 L3 190, L1 L3 192", []string{"unbalanced"}, []string{"lost"}, nil, "", "common practice"},
		{"one pair low", unit + "volt L1 L2 208, L2 L3 172, L1 L3 196", []string{"unbalanced"}, []string{"is lost"}, nil, "", "common practice"},
		{"the cold is proved", unit + "volt L1 L2 208, L2 L3 150, L1 L3 152; did replaced blown fuse on L3", []string{"volts of the three legs", "temp freezer"}, nil, nil, "", "common practice"},
	})
}

// A cold room that is warm and short cycles is short of charge or air rather than of
// volts: its low-pressure control takes it off. Common practice.
func TestShortCyclingAndWarm(t *testing.T) {
	const leak, drier = "refrigerant-low", "restriction"
	open := map[string]cause.State{leak: cause.Open, drier: cause.Open}
	checkTrade(t, []tradeCase{
		{"by the box", "unit walk-in cooler; fault box at 52F, compressor short cycling", []string{"runs but does not cool"}, nil, open, "", "common practice"},
		{"by its control", "unit walk-in freezer; fault box warm 30F, unit short cycles on low pressure", []string{"runs but does not cool"}, nil, open, "", "common practice"},
		{"on three phases", "unit walk-in cooler; fault short cycling on low pressure, box at 52F; plate volts 208, phase 3, amps 14", nil, nil, open, "", "common practice"},
		{"on its overload", "unit refrigerator; fault warm, compressor short cycling on overload", []string{"hums and trips"}, nil, nil, "", "common practice"},
		{"nothing else said", "unit refrigerator; fault short cycling", []string{"hums and trips"}, nil, nil, "", "common practice"},
		{"it hums", "unit walk-in cooler; fault box warm, compressor hums and trips", []string{"hums and trips"}, nil, nil, "", "common practice"},
		{"proved by the box", "unit walk-in cooler; fault box at 52F, compressor short cycling; did repaired leak at schrader, charged by weight", []string{"timed temperatures"}, nil, nil, "", "common practice"},
		{"bubbles", "unit walk-in cooler; fault box at 52F, compressor short cycling; saw bubbles in sight glass", []string{"bubbles in the sight glass"}, []string{"not taken"}, open, "", "common practice"},
	})
}

// What is beside the machine does not make it stand, on three phases either. Common
// practice.
func TestFittingsOnThreePhases(t *testing.T) {
	for fault, want := range map[string]string{"door light out": "", "light switch broken": "", "gasket torn": "", "makes a noise": "",
		"compressor does not run, light out": said.ThreePhase, "motor dead": said.ThreePhase, "trips": said.ThreePhase, "smells burnt": said.ThreePhase} {
		if got := applyAll(t, "unit freezer, reach-in, three-phase", "fault "+fault).complaint(); got != want && !(want == "" && got != said.ThreePhase) {
			t.Errorf("%s: %q, want %q", fault, got, want)
		}
	}
}

// A contactor that chatters on too few control volts, and one that stays in with none.
// Common practice.
func TestContactors(t *testing.T) {
	const ac, plate = "unit central air conditioner; fault ", "; plate volts 240, hz 60, amps 14.5, gas R-410A; "
	supported := func(code string) map[string]cause.State { return map[string]cause.State{code: cause.Supported} }
	const low, welded = "control-volts-low", "contactor-welded"
	checkTrade(t, []tradeCase{
		{"at its coil", ac + "contactor chatters, outdoor unit won't start" + plate + "volt contactor-coil 17.1", []string{"suspect", "too few for 24 V"}, []string{"lost leg"}, supported(low), "take the loads off the secondary", "common practice"},
		{"at the transformer", ac + "contactor chatters" + plate + "volt transformer-secondary 17.2; volt transformer-primary 241.0", nil, nil, supported(low), "take the loads off the secondary", "common practice"},
		{"enough", ac + "contactor chatters" + plate + "volt transformer-secondary 25.6", []string{"sound"}, nil, map[string]cause.State{low: cause.RuledOut}, "", "common practice"},
		{"on three phases", "unit rooftop unit, package, three phase; fault compressor hums, contactor chatters; plate volts 460, phase 3, amps 12; volt transformer-secondary 19.0", nil, nil, supported(low), "", "common practice"},
		{"a line-voltage coil", ac + "contactor chatters" + plate + "volt contactor-coil 238", []string{"sound"}, nil, nil, "", "common practice"},
		{"none, and no call", ac + "not cooling" + plate + "volt contactor-coil 0.0", []string{"no call"}, []string{"failed", "144"}, nil, "", "common practice"},
		{"none in a call", ac + "not cooling" + plate + "volt contactor-coil 0.0 run", []string{"failed"}, nil, nil, "", "common practice"},
		{"welded, seen", ac + "outdoor unit won't shut off" + plate + "volt contactor-coil 0.0; saw contactor welded", nil, nil, supported(welded), "replace the contactor", "common practice"},
		{"welded, by its amps", ac + "condenser keeps running with thermostat off" + plate + "volt contactor-coil 0.0 run; amp comp 11.2 run", nil, nil, supported(welded), "replace the contactor", "common practice"},
		{"it drops out", ac + "outdoor unit won't shut off; saw contactor drops out", nil, nil, map[string]cause.State{welded: cause.RuledOut}, "", "common practice"},
		{"stuck closed", ac + "outdoor unit won't shut off; saw contactor stuck closed", nil, []string{"Caution"}, supported(welded), "", "common practice"},
		{"a fridge", "unit refrigerator; fault won't shut off", []string{"runs all the time"}, nil, nil, "", "common practice"},
	})
}
