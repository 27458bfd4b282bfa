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
// (saturation at -25 °C and 47 °C, Bücker & Wagner 2006). R-134a at 60 psi
// saturates at 62 °F and at -8 psi at -43 °C (Tillner-Roth & Baehr 1994); R-410A at
// 55 and 210 psi at -15 and 22 °C, at 118 and 365 at 4.5 and 43 °C (Lemmon 2003).
// What is usual of condensing and boiling is common practice.
func TestPumping(t *testing.T) {
	room, hot, none := measure.Within(23.9, 1), measure.Within(35, 1), measure.Open(0)
	of := func(s, d measure.Value, gas string, air measure.Value, use Evaporator) PumpingIn {
		return PumpingIn{Suction: s, Discharge: d, Gas: gas, Air: air, AirName: "room", For: use}
	}
	for _, c := range []struct {
		name  string
		in    PumpingIn
		word  verdict.Word
		facts []string
		says  string
	}{
		{"at work", of(within(-6, 0.4), within(70, 1), "R-600a", measure.Within(30, 1), Freezes), verdict.Sound, []string{"pressures-apart", "suction-normal"}, "as usual"},
		{"at work, the gas not known", of(within(-6, 0.4), within(70, 1), "", room, Freezes), verdict.CannotTell, []string{"pressures-apart"}, "it pumps"},
		{"at work, the room not known", of(within(-6, 0.4), within(70, 1), "R-600a", none, Freezes), verdict.CannotTell, []string{"pressures-apart"}, "temp room"},
		{"starved", of(within(-8, 3.1), within(60, 3.6), "R-134a", room, Freezes), verdict.Suspect, []string{"pressures-apart", "suction-low"}, "7.2 K below the air (room); that leads to little charge or a restriction"},
		{"an air conditioner starved", of(within(55, 3.6), within(210, 5), "R-410A", hot, CoolsAir), verdict.Suspect, []string{"pressures-apart", "suction-low"}, "suction low, discharge low"},
		{"an air conditioner, both high", of(within(170, 4.7), within(560, 8.6), "R-410A", hot, CoolsAir), verdict.Suspect, []string{"pressures-apart", "suction-high"}, "suction high, discharge high; R-410A"},
		{"an air conditioner at work", of(within(118, 2), within(365, 5), "R-410A", hot, CoolsAir), verdict.Sound, []string{"pressures-apart", "suction-normal"}, "both sides as usual"},
		{"of another use", of(within(55, 3.6), within(210, 5), "R-410A", hot, ""), verdict.CannotTell, []string{"pressures-apart"}, "12.4 K below the air"},
		{"suction alone is low", of(within(-10, 1), within(110, 2), "R-134a", room, Freezes), verdict.Suspect, []string{"pressures-apart", "suction-low"}, "that leads to a restriction"},
		{"suction alone, boils at -50 °C", of(within(-10, 1), none, "R-134a", none, Freezes), verdict.Suspect, []string{"suction-low"}, "read the other side"},
		{"suction alone, as usual", of(within(118, 2), none, "R-410A", none, CoolsAir), verdict.CannotTell, nil, ""},
		{"suction alone, of another use", of(within(60, 2), none, "R-410A", none, ""), verdict.CannotTell, nil, ""},
		{"above any cut-out", of(within(120, 2), within(650, 9), "R-410A", none, CoolsAir), verdict.Suspect, []string{BeyondCutOut}, "stop it"},
		{"above any cut-out, alone", of(none, within(430, 5), "R-22", none, ""), verdict.Suspect, []string{BeyondCutOut}, "cut-out that does not open"},
		{"hot, not above a cut-out", of(within(130, 2), within(480, 5), "R-410A", none, CoolsAir), verdict.CannotTell, []string{"pressures-apart"}, "temp room"},
		{"level", of(within(30, 1), within(31, 1), "R-600a", room, Freezes), verdict.Suspect, []string{"pressures-level"}, "does not pump"},
		{"near the limit", of(within(10, 1), within(35, 2), "", none, ""), verdict.CannotTell, nil, ""},
		{"one side only", of(within(10, 1), measure.Open(0), "", none, ""), verdict.CannotTell, nil, ""},
		{"deeper than a vacuum", of(within(-15, 1), within(35, 2), "", none, ""), verdict.CannotTell, nil, ""},
	} {
		got := Pumping(c.in)
		check(t, c.name, got, c.word, c.facts...)
		if says := got.Text + "; " + strings.Join(got.Also, "; "); !strings.Contains(says, c.says) {
			t.Errorf("%s: %s", c.name, says)
		}
	}
}
