package judge

import (
	"strings"
	"testing"

	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// R-134a at 70 °F stands at 71 psi, at 100 °F at 124 psi (Pressure-Temperature
// Relationship, vehicle service manual, 1998); R-600a at 70 °F at 30.6 psi
// (computed from Bücker & Wagner 2006).
func TestAtRest(t *testing.T) {
	f := func(x float64) measure.Value { return measure.Exact((x - 32) / 1.8) }
	for _, c := range []struct {
		name  string
		in    AtRestIn
		word  verdict.Word
		facts []string
	}{
		{"R-134a as printed, 70 °F", AtRestIn{within(71, 1), f(70), "R-134a"}, verdict.Sound, []string{"standing-pressure-sound"}},
		{"R-134a as printed, 100 °F", AtRestIn{within(124, 1), f(100), "R134a"}, verdict.Sound, []string{"standing-pressure-sound"}},
		{"R-600a, 70 °F", AtRestIn{within(30.6, 0.6), f(70), "R-600a"}, verdict.Sound, []string{"standing-pressure-sound"}},
		{"air in it", AtRestIn{within(95, 1.5), f(70), "R-134a"}, verdict.Suspect, []string{"standing-pressure-high"}},
		{"empty", AtRestIn{within(0, 1), f(70), "R-134a"}, verdict.Suspect, []string{"standing-pressure-none"}},
		{"small charge, all vapour", AtRestIn{within(20, 1), f(70), "R-600a"}, verdict.CannotTell, nil},
		{"a coarse gauge", AtRestIn{within(36, 4), f(77), "R-600a"}, verdict.CannotTell, nil},
		{"a coarse thermometer", AtRestIn{within(71, 1), measure.Within(21.1, 3), "R-134a"}, verdict.CannotTell, nil},
		{"a gas without a table", AtRestIn{within(71, 1), f(70), "R-999"}, verdict.CannotTell, nil},
		{"no thermometer", AtRestIn{within(71, 1), measure.Open(0), "R-134a"}, verdict.CannotTell, nil},
	} {
		check(t, c.name, AtRest(c.in), c.word, c.facts...)
	}
}

// Suction -6 and discharge 70 psi gauge are of an R-600a system at work
// (saturation at -25 °C and 47 °C, Bücker & Wagner 2006).
func TestPumping(t *testing.T) {
	for _, c := range []struct {
		name  string
		in    PumpingIn
		word  verdict.Word
		facts []string
	}{
		{"at work", PumpingIn{within(-6, 0.4), within(70, 1), "R-600a"}, verdict.Sound, []string{"pressures-apart"}},
		{"level", PumpingIn{within(30, 1), within(31, 1), "R-600a"}, verdict.Suspect, []string{"pressures-level"}},
		{"near the limit", PumpingIn{within(10, 1), within(35, 2), ""}, verdict.CannotTell, nil},
		{"one side only", PumpingIn{within(10, 1), measure.Open(0), ""}, verdict.CannotTell, nil},
		{"deeper than a vacuum", PumpingIn{within(-15, 1), within(35, 2), ""}, verdict.CannotTell, nil},
	} {
		check(t, c.name, Pumping(c.in), c.word, c.facts...)
	}
	got := Pumping(PumpingIn{within(2, 0.4), within(70, 1), "R-600a"})
	if len(got.Also) != 1 || !strings.Contains(got.Also[0], "R-600a boils at -8.") { // 115 kPa: -8.2 °C
		t.Errorf("also %q", got.Also)
	}
}
