package call

import (
	"math"
	"slices"
	"testing"

	"ohmcall/calc/cause"
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
		{"a mini split", "unit mini split; fault no cooling, error code" + plate + pins, []string{like}, []string{odd}, out("run-cap-failed", "overload-hot", "selector-open", "winding-shorted"), "", "common practice"},
		{"by its pins", "unit central air conditioner; fault no cooling" + plate + pins, []string{like}, []string{odd}, nil, "", "common practice"},
		{"unlike pins of it", "unit central air conditioner; fault no cooling" + plate + "ohm U V 1.1, V W 2.2, U W 3.3", nil, []string{like}, nil, "", "common practice"},
		{"a short of it", "unit mini split; fault no cooling" + plate + "ohm U V 1.10, V W 1.10, U W 0.30", []string{"The pairs differ"}, []string{like}, nil, "", "common practice"},
		{"its drive is a cause", "unit mini split; fault no cooling, error code" + plate + "saw set to cool", nil, nil, map[string]cause.State{"drive-fault": cause.Open}, "saw drive no fault", "common practice"},
		{"with a capacitor it has none", "unit mini split; fault no cooling" + plate + "plate mfd herm 35", nil, nil, map[string]cause.State{"run-cap-failed": cause.Open}, "", "common practice"},
		{"amps at part load", "unit mini split; fault water drips from indoor unit; plate volts 230, amps 7.5; amp comp 2.1 run", []string{"cannot tell", "a drive turns it as slowly"}, []string{"suspect"}, nil, "", "common practice"},
		{"too many amps", "unit mini split; fault water drips from indoor unit; plate volts 230, amps 7.5; amp comp 11.0 run", []string{"failed"}, nil, nil, "", "common practice"},
		{"amps without a drive", "unit window air conditioner; fault water drips; plate volts 115, amps 7.5; amp comp 2.1 run", []string{"suspect"}, nil, nil, "", "common practice"},
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
