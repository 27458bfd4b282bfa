package judge

import (
	"strings"
	"testing"

	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// A limit is where its source has it: a little to either side of it another thing is
// said. The sources stand beside the constants; the values here are typed anew.
func TestLimitsStandWhereTheirSourcesHaveThem(t *testing.T) {
	at := measure.Exact
	legs := func(a, b, c float64) verdict.Verdict {
		return LegAmps(LegAmpsIn{AmpsIn: AmpsIn{Plate: 10.5, Volts: 400}, Legs: []measure.Value{at(a), at(b), at(c)}, Names: []string{"T1", "T2", "T3"}})
	}
	phases := func(a, b, c float64) verdict.Verdict {
		return Phases(PhasesIn{Pairs: [3]measure.Value{at(a), at(b), at(c)}, Names: [3]string{"1", "2", "3"}})
	}
	pair := func(v float64) verdict.Verdict { return Legs(LegsIn{Pair: at(v), Nominal: 240}) }
	sag := func(loaded float64) verdict.Verdict { return Sag(SagIn{NoLoad: at(120), Loaded: at(loaded)}) }
	earth := func(ohms float64) verdict.Verdict { return Earth(EarthIn{Ohms: at(ohms)}) }
	beta := func(ohms float64) verdict.Verdict {
		return NTC(NTCIn{R25: 10000, Beta: 3435, Ohms: at(ohms), Celsius: at(25)})
	}
	// IEC 60751: 100 Ω at 0 °C, 101.17 Ω at 3 °C (ptA of the standard: 100 × (1 + 3 × 3.9083e-3 - 9 × 5.775e-7)).
	platinum := func(ohms float64) verdict.Verdict {
		return Platinum(PlatinumIn{R0: 100, Ohms: at(ohms), Celsius: at(0)})
	}

	for _, r := range []struct {
		what       string
		got        verdict.Verdict
		word       verdict.Word
		says, nots string
	}{
		// The highest of 11, 9.5, 9.5 is 1 of an average of 10 away: 10 %.
		{"legs 9.9 % apart", legs(10.4, 9.0, 9.0), verdict.Sound, "9.9 %", "dead, move"},
		{"legs 10.2 % apart", legs(10.45, 9.0, 9.0), verdict.Suspect, "10.2 %", ""},
		{"volts 0.99 % apart", phases(402.97, 397, 397.06), verdict.Sound, "1 % unbalanced round 399 V", "derated"},
		{"volts 1.03 % apart", phases(404.13, 398, 398), verdict.Suspect, "derated", ""},
		{"volts 4.97 % apart", phases(418.8, 389, 389), verdict.Suspect, "derated", ""},
		{"volts 5.03 % apart", phases(419.4, 389, 389), verdict.Failed, "derated", ""},
		{"a pair of 89 V", pair(89), verdict.Failed, "", "half of 240"},
		{"a pair of 91 V", pair(91), verdict.Failed, "half of 240", ""},
		{"a pair of 137 V", pair(137), verdict.Failed, "half of 240", ""},
		{"a pair of 139 V", pair(139), verdict.Failed, "", "half of 240"},
		{"a fall of 2.9 %", sag(120 * 0.971), verdict.Sound, "", "3 % in the branch"},
		{"a fall of 3.1 %", sag(120 * 0.969), verdict.Sound, "3 % in the branch", ""},
		{"a fall of 4.9 %", sag(120 * 0.951), verdict.Sound, "3 % in the branch", ""},
		{"a fall of 5.1 %", sag(120 * 0.949), verdict.Suspect, "", "3 % in the branch"},
		{"an earth of 0.99 Ω", earth(0.99), verdict.Suspect, "would pass it", ""},
		{"an earth of 1.01 Ω", earth(1.01), verdict.Failed, "would fail it", ""},
		{"an NTC 9.9 % high", beta(10990), verdict.Sound, "", ""},
		{"an NTC 10.1 % high", beta(11010), verdict.Failed, "", ""},
		{"a platinum sensor 2.98 K high", platinum(101.163), verdict.Sound, "", ""},
		{"a platinum sensor 3.02 K high", platinum(101.180), verdict.Failed, "", ""},
		{"a plug of 0.99 Ω", Plug(at(0.99)), verdict.Failed, "a short in the cord", ""},
		{"a plug of 1.01 Ω", Plug(at(1.01)), verdict.CannotTell, "", ""},
		{"a plug of 3.99 Ω", Plug(at(3.99)), verdict.CannotTell, "", ""},
		{"a plug of 4.01 Ω", Plug(at(4.01)), verdict.Sound, "a load", ""},
	} {
		all := r.got.Text + " " + strings.Join(r.got.Also, " ")
		if r.got.Word != r.word || !strings.Contains(all, r.says) || r.nots != "" && strings.Contains(all, r.nots) {
			t.Errorf("%s: %s, %q; want %s with %q and not %q", r.what, r.got.Word, all, r.word, r.says, r.nots)
		}
	}
}

// The impedance of a supply is its fall by the amps, reckoned by hand: 121 and 118 V,
// each to 0.1 V, at 10 A to 0.5 A: 0.3 Ω, from 2.8 V / 10.5 A to 3.2 V / 9.5 A.
func TestImpedanceOfASupplyByHand(t *testing.T) {
	in := SagIn{NoLoad: measure.Within(121, 1), Loaded: measure.Within(118, 1), Amps: measure.Within(10, 0.5), CountsHalf: 0.1}
	z, ok := in.impedance()
	near := func(what string, got, want float64) {
		if got < want-1e-9 || got > want+1e-9 {
			t.Errorf("%s is %v, want %v", what, got, want)
		}
	}
	near("on one range", z.X, 0.3)
	near("its lower end", z.Lo, 2.8/10.5)
	near("its upper end", z.Hi, 3.2/9.5)
	in.CountsHalf = 0
	if z, ok2 := in.impedance(); !ok || !ok2 {
		t.Error("there is an impedance")
	} else {
		near("with the whole bounds, lower", z.Lo, 1/10.5)
		near("with the whole bounds, upper", z.Hi, 5/9.5)
	}
}
