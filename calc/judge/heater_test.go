package judge

import (
	"math"
	"strings"
	"testing"

	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// +5 % or 20 W, whichever is greater, and −10 % of the power: IEC 60335-1
// cl. 10.1 Table 1 (from memory); the windows are computed from V²/P.
func TestHeaterWindow(t *testing.T) {
	for _, c := range []struct{ watts, volts, lo, hi float64 }{
		{450, 120, 30.48, 35.56}, {3600, 240, 15.24, 17.78}, {2000, 230, 25.19, 29.39},
		{250, 115, 115 * 115 / 270.0, 115 * 115 / 225.0}, // 20 W governs below 400 W
		{100, 120, 144 / 1.1, 144 / 0.9},
		{20, 120, 720 / 1.2, 720 / 0.8},
	} {
		w, _ := heaterWindow(&HeaterIn{Watts: c.watts, Volts: c.volts})
		near(t, "low end", w.lo, c.lo, 0.005)
		near(t, "high end", w.hi, c.hi, 0.005)
	}
}

// R = V²/P: 32.00, 16.00, 26.45 and 52.90 Ω (Joule and Ohm).
func TestHeater(t *testing.T) {
	ol := measure.Open(7)
	for _, c := range []struct {
		name  string
		in    HeaterIn
		word  verdict.Word
		facts []string
	}{
		{"450 W hot", HeaterIn{Ohms: within(32, 0.6), Watts: 450, Volts: 120, Hot: true}, verdict.Sound, []string{"heater-sound"}},
		{"450 W, 28 Ω cold is normal", HeaterIn{Ohms: within(28, 0.6), Watts: 450, Volts: 120}, verdict.Sound, []string{"heater-sound"}},
		{"450 W, 28 Ω hot is too low", HeaterIn{Ohms: within(28, 0.6), Watts: 450, Volts: 120, Hot: true}, verdict.Failed, []string{"heater-failed"}},
		{"450 W, 20 Ω cold", HeaterIn{Ohms: within(20, 0.5), Watts: 450, Volts: 120}, verdict.Suspect, []string{"heater-suspect"}},
		{"450 W, 8 Ω cold", HeaterIn{Ohms: within(8, 0.4), Watts: 450, Volts: 120}, verdict.Failed, []string{"heater-failed"}},
		{"3600 W hot", HeaterIn{Ohms: within(16, 0.46), Watts: 3600, Volts: 240, Hot: true}, verdict.Sound, []string{"heater-sound"}},
		{"2000 W, 60 Ω alone", HeaterIn{Ohms: within(60, 0.9), Watts: 2000, Volts: 230, Series: Alone}, verdict.Failed, []string{"heater-failed"}},
		{"2000 W, 60 Ω", HeaterIn{Ohms: within(60, 0.9), Watts: 2000, Volts: 230}, verdict.Suspect, []string{"heater-suspect"}},
		{"5400 W, one of two coils", HeaterIn{Ohms: within(21.5, 0.5), Watts: 5400, Volts: 240, Series: Alone, Coils: 2}, verdict.Suspect, []string{"heater-suspect"}},
		{"5400 W, of one coil", HeaterIn{Ohms: within(21.5, 0.5), Watts: 5400, Volts: 240, Series: Alone, Coils: 1}, verdict.Failed, []string{"heater-failed"}},
		{"5400 W, neither one nor two", HeaterIn{Ohms: within(15, 0.5), Watts: 5400, Volts: 240, Series: Alone, Coils: 2}, verdict.Failed, []string{"heater-failed"}},
		{"10 kW, one of three", HeaterIn{Ohms: within(17, 0.5), Watts: 10000, Volts: 240, Series: Alone, Coils: 4}, verdict.Suspect, []string{"heater-suspect"}},
		{"10 kW, more than any of four", HeaterIn{Ohms: within(40, 0.8), Watts: 10000, Volts: 240, Series: Alone, Coils: 4}, verdict.Failed, []string{"heater-failed"}},
		{"all of its coils", HeaterIn{Ohms: within(5.6, 0.3), Watts: 10000, Volts: 240, Series: Alone, Coils: 4}, verdict.Sound, []string{"heater-sound"}},
		{"of a plate with more on it", HeaterIn{Ohms: within(29.4, 0.6), Watts: 2300, Volts: 230, Series: Alone, Whole: true}, verdict.CannotTell, []string{"heater-undecided"}},
		{"as much as the whole plate", HeaterIn{Ohms: within(22, 0.4), Watts: 2300, Volts: 230, Series: Alone, Whole: true}, verdict.Sound, []string{"heater-sound"}},
		{"more than the whole plate", HeaterIn{Ohms: within(6, 0.3), Watts: 2300, Volts: 230, Series: Alone, Whole: true}, verdict.Failed, []string{"heater-failed"}},
		{"open, of several", HeaterIn{Ohms: ol, Watts: 10000, Volts: 240, Series: Alone, Coils: 4}, verdict.Failed, []string{"heater-open"}},
		{"250 W, given 5 %", HeaterIn{Ohms: within(57, 0.9), Watts: 250, Volts: 115, Hot: true, Tolerance: 5, Series: Alone},
			verdict.Failed, []string{"heater-failed"}},
		{"near the limit", HeaterIn{Ohms: within(35.3, 0.6), Watts: 450, Volts: 120, Hot: true}, verdict.CannotTell, []string{"heater-undecided"}},
		{"near it from outside", HeaterIn{Ohms: within(35.8, 0.6), Watts: 450, Volts: 120, Hot: true}, verdict.CannotTell, []string{"heater-undecided"}},
		{"OL across the element", HeaterIn{Ohms: ol, Watts: 450, Volts: 120, Series: Alone}, verdict.Failed, []string{"heater-open"}},
		{"OL through a thermostat", HeaterIn{Ohms: ol, Watts: 450, Volts: 120, Series: WithThermostat}, verdict.CannotTell, nil},
		{"OL, nobody said", HeaterIn{Ohms: ol, Watts: 450, Volts: 120}, verdict.Suspect, []string{"heater-suspect"}},
		{"OL needs no plate", HeaterIn{Ohms: ol, Series: Alone}, verdict.Failed, []string{"heater-open"}},
		{"32 kΩ: a slip of range", HeaterIn{Ohms: within(32e3, 400), Watts: 450, Volts: 120, Series: Alone}, verdict.Suspect, []string{"heater-suspect"}},
		{"no plate", HeaterIn{Ohms: within(32, 0.6)}, verdict.CannotTell, []string{"heater-undecided"}},
	} {
		check(t, c.name, Heater(c.in), c.word, c.facts...)
	}
}

// All ohms times ten, with a plate to match, changes numbers and no words.
func TestHeaterScales(t *testing.T) {
	for x := 5.0; x < 80; x += 0.37 {
		a := Heater(HeaterIn{Ohms: within(x, 0.5), Watts: 450, Volts: 120, Tolerance: 10})
		b := Heater(HeaterIn{Ohms: within(10*x, 5), Watts: 45, Volts: 120, Tolerance: 10})
		if a.Word != b.Word {
			t.Fatalf("%v Ω: %s, ten times: %s", x, a.Word, b.Word)
		}
		near(t, "margin", b.Margin, a.Margin, 1e-9)
	}
}

// 2600 W at 240 V is 10.83 A; -10 % and +5 % by IEC 60335-1 cl. 10.1 Table 1
// (from memory).
func TestHeaterAmps(t *testing.T) {
	for _, c := range []struct {
		name  string
		in    HeaterAmpsIn
		word  verdict.Word
		facts []string
	}{
		{"as the plate says", HeaterAmpsIn{Amps: within(10.8, 0.2), Watts: 2600, Rated: 240}, verdict.Sound, []string{"amps-sound", "heater-sound"}},
		{"on 208 V, as it must be", HeaterAmpsIn{Amps: within(9.39, 0.2), Watts: 2600, Rated: 240, Volts: within(208, 1)}, verdict.Sound, []string{"amps-sound", "heater-sound"}},
		{"on 208 V, and half of it open", HeaterAmpsIn{Amps: within(4.7, 0.2), Watts: 2600, Rated: 240, Volts: within(208, 1)}, verdict.Suspect, []string{"amps-low"}},
		{"as the plate says, on 208 V", HeaterAmpsIn{Amps: within(10.8, 0.2), Watts: 2600, Rated: 240, Volts: within(208, 1)}, verdict.Suspect, []string{"amps-high"}},
		{"half of it open", HeaterAmpsIn{Amps: within(5.4, 0.2), Watts: 2600, Rated: 240}, verdict.Suspect, []string{"amps-low"}},
		{"another load", HeaterAmpsIn{Amps: within(14, 0.2), Watts: 2600, Rated: 240}, verdict.Suspect, []string{"amps-high"}},
		{"not fed", HeaterAmpsIn{Amps: within(0.1, 0.1), Watts: 2600, Rated: 240}, verdict.Failed, []string{"amps-none"}},
		{"near the limit", HeaterAmpsIn{Amps: within(9.8, 0.2), Watts: 2600, Rated: 240}, verdict.CannotTell, nil},
		{"what the plate says, within the doubt of both", HeaterAmpsIn{Amps: within(12.3, 0.42), Watts: 3000, Rated: 240, Volts: within(236, 5.4)}, verdict.CannotTell, []string{"amps-agree"}},
		{"at the limit's edge", HeaterAmpsIn{Amps: within(11.2, 0.42), Watts: 3000, Rated: 240, Volts: within(236, 5.4)}, verdict.CannotTell, nil},
		{"read roughly", HeaterAmpsIn{Amps: within(9, 5), Watts: 3000, Rated: 240, Volts: within(236, 5.4)}, verdict.CannotTell, nil},
		{"no plate", HeaterAmpsIn{Amps: within(9.8, 0.2)}, verdict.CannotTell, nil},
	} {
		check(t, c.name, HeaterAmps(c.in), c.word, c.facts...)
	}
	for amps := 8.0; amps < 14; amps += 0.05 { // too near to tell is less than its doubt from the limit
		for _, rest := range []bool{false, true} {
			in := HeaterAmpsIn{Amps: within(amps, 0.2), Watts: 2600, Rated: 240, Volts: within(240, 5), AtRest: rest}
			if got := HeaterAmps(in); got.Word == verdict.CannotTell && math.Abs(got.Margin) >= 1 || strings.Contains(got.Text, " at rest") != rest {
				t.Errorf("%g A, at rest %t: %s, %g times its doubt from the limit", amps, rest, got.Text, got.Margin)
			}
		}
	}
	in := HeaterAmpsIn{Amps: within(9.8, 0.2), Watts: 2600, Rated: 240}
	if got := HeaterAmps(in).Text; !strings.Contains(got, "read the volts beside it") {
		t.Errorf("without volts: %q", got)
	}
	in.Volts = within(218, 1)
	if got := HeaterAmps(in).Text; strings.Contains(got, "low volts") || !strings.Contains(got, "at 218 V") {
		t.Errorf("with volts: %q", got)
	}
}

// 1 MΩ: AS/NZS 3760, as quoted by a test-and-tag firm (1 MΩ at 500 V).
func TestHeaterToCase(t *testing.T) {
	for _, c := range []struct {
		name  string
		v     measure.Value
		test  float64
		word  verdict.Word
		facts []string
	}{
		{"tester", within(50e6, 2e6), 500, verdict.Sound, []string{"heater-insulation-sound"}},
		{"tester, over range", measure.Open(7), 500, verdict.Sound, []string{"heater-insulation-sound"}},
		{"ohm-meter", measure.Open(7), 0, verdict.CannotTell, nil},
		{"grounded", within(40, 1), 0, verdict.Failed, []string{"heater-grounded"}},
		{"damp", within(0.4e6, 0.01e6), 500, verdict.Suspect, []string{"heater-insulation-suspect"}},
		{"near", within(1.01e6, 0.05e6), 500, verdict.CannotTell, []string{"heater-insulation-undecided"}},
	} {
		check(t, c.name, HeaterToCase("defrost", c.v, c.test, false), c.word, c.facts...)
	}
}
