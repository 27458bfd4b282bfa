package judge

import (
	"math"
	"slices"
	"strings"
	"testing"

	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// Published limits: AE4-1294 (0.5 MΩ and 1000 Ω per volt), IEEE 43 as
// reprinted in a chiller manual p. 143 (1 MΩ + kV), Hermetic Compressor
// Service Handbook p. 40-41 (2 MΩ), IEEE 43-2000 (5 MΩ).
func TestInsulationLimits(t *testing.T) {
	for _, c := range []struct {
		code        string
		volts, want float64
	}{
		{"1000/V", 115, 0.115e6}, {"1000/V", 208, 0.208e6}, {"1000/V", 230, 0.230e6}, {"1000/V", 460, 0.460e6},
		{"0.5M", 115, 0.5e6},
		{"1M+kV", 115, 1.115e6}, {"1M+kV", 230, 1.230e6}, {"1M+kV", 460, 1.460e6},
		{"2M", 115, 2e6}, {"5M", 115, 5e6},
	} {
		r, ok := InsulationRuleFor(c.code)
		got, known := r.Ohms(c.volts)
		if !ok || !known {
			t.Fatalf("rule %s is missing", c.code)
		}
		near(t, c.code, got, c.want, 1e-6)
		if r.Source == "" || r.Scope == "" {
			t.Errorf("rule %s has no source or scope", c.code)
		}
	}
	if _, known := insulationRules[0].Ohms(0); known {
		t.Error("1000 Ω per volt was applied without volts")
	}
}

func TestInsulation(t *testing.T) {
	for _, c := range []struct {
		name  string
		in    InsulationIn
		word  verdict.Word
		facts []string
		never bool // the caution never to energise
	}{
		{"tester, far above", InsulationIn{Ohms: within(200e6, 10e6), TestVolts: 500, RatedVolts: 115},
			verdict.Sound, []string{"insulation-sound"}, false},
		{"tester, over its range", InsulationIn{Ohms: measure.Open(7), TestVolts: 500, RatedVolts: 115},
			verdict.Sound, []string{"insulation-sound"}, false},
		{"tester, over a range that is below the house limit", InsulationIn{Ohms: measure.Open(7), Floor: 200e6, TestVolts: 500, RatedVolts: 115, HouseOhms: 500e6},
			verdict.CannotTell, []string{"insulation-undecided"}, false},
		{"tester, over a range that reaches the house limit", InsulationIn{Ohms: measure.Open(7), Floor: 500e6, TestVolts: 500, RatedVolts: 115, HouseOhms: 500e6},
			verdict.Sound, []string{"insulation-sound"}, false},
		{"ohm-meter, OL", InsulationIn{Ohms: measure.Open(7), RatedVolts: 115},
			verdict.CannotTell, []string{"insulation-no-gross-fault"}, false},
		{"ohm-meter, 20 MΩ", InsulationIn{Ohms: within(20e6, 1e6), RatedVolts: 115},
			verdict.CannotTell, []string{"insulation-no-gross-fault"}, false},
		{"ohm-meter, 3.4 Ω", InsulationIn{Ohms: within(3.4, 0.4), RatedVolts: 115},
			verdict.Failed, []string{"insulation-failed"}, true},
		{"ohm-meter, 1 MΩ", InsulationIn{Ohms: within(1e6, 0.02e6), RatedVolts: 115}, verdict.Suspect, []string{"insulation-suspect"}, true},
		{"tester, 1 MΩ, limits differ", InsulationIn{Ohms: within(1e6, 0.02e6), TestVolts: 500, RatedVolts: 115},
			verdict.Suspect, []string{"insulation-suspect"}, true},
		{"tester, 1 MΩ, house took 2 MΩ", InsulationIn{Ohms: within(1e6, 0.02e6), TestVolts: 500, RatedVolts: 115, Rule: "2M"},
			verdict.Failed, []string{"insulation-failed"}, true},
		{"tester, 1 MΩ, house took 0.5 MΩ", InsulationIn{Ohms: within(1e6, 0.02e6), TestVolts: 500, RatedVolts: 115, Rule: "0.5M"},
			verdict.Sound, []string{"insulation-sound"}, false},
		{"tester, house number", InsulationIn{Ohms: within(9e6, 0.2e6), TestVolts: 500, RatedVolts: 115, HouseOhms: 10e6},
			verdict.Failed, []string{"insulation-failed"}, true},
		{"tester, below every limit", InsulationIn{Ohms: within(0.05e6, 0.002e6), TestVolts: 500, RatedVolts: 115},
			verdict.Failed, []string{"insulation-failed"}, true},
		{"straddles from inside", InsulationIn{Ohms: within(2.02e6, 0.05e6), TestVolts: 500, RatedVolts: 115},
			verdict.CannotTell, []string{"insulation-undecided"}, true},
		{"straddles from outside", InsulationIn{Ohms: within(1.98e6, 0.05e6), TestVolts: 500, RatedVolts: 115},
			verdict.CannotTell, []string{"insulation-undecided"}, true},
		{"too little test voltage", InsulationIn{Ohms: within(50e6, 1e6), TestVolts: 100, RatedVolts: 115},
			verdict.CannotTell, []string{"insulation-no-gross-fault"}, false},
		{"rule without plate volts", InsulationIn{Ohms: within(50e6, 1e6), TestVolts: 500, Rule: "1000/V"},
			verdict.CannotTell, nil, false},
		{"unknown rule", InsulationIn{Ohms: within(50e6, 1e6), TestVolts: 500, Rule: "7M"},
			verdict.CannotTell, nil, false},
	} {
		got := Insulation(c.in)
		check(t, c.name, got, c.word, c.facts...)
		if slices.Contains(got.Caution, caution.NeverEnergise) != c.never {
			t.Errorf("%s: cautions %v", c.name, got.Caution)
		}
		if !slices.Equal(got.Entries, []int{7}) {
			t.Errorf("%s: entries %v", c.name, got.Entries)
		}
	}
}

func TestInsulationNamesTheRuleAndTheOthers(t *testing.T) {
	got := Insulation(InsulationIn{Pin: "A", Ohms: within(3e6, 0.06e6), TestVolts: 500, RatedVolts: 115})
	if !strings.Contains(got.Limit, "2 MΩ flat") || !strings.Contains(got.Source, "p. 40-41") {
		t.Errorf("limit %q, source %q", got.Limit, got.Source)
	}
	if len(got.Also) != 4 || !strings.Contains(got.Also[3], "5 MΩ flat") || !strings.Contains(got.Also[3], "would fail it") ||
		!strings.Contains(got.Also[0], "would pass it") {
		t.Errorf("also %q", got.Also)
	}
	near(t, "margin", got.Margin, 1e6/0.06e6, 1e-9)
}

func TestInsulationIgnoresPinNames(t *testing.T) {
	in := InsulationIn{Pin: "A", Ohms: within(1.4e6, 0.1e6), TestVolts: 500, RatedVolts: 230}
	a := Insulation(in)
	in.Pin = "terminal 3"
	b := Insulation(in)
	b.Subject = a.Subject
	if a.Word != b.Word || a.Text != b.Text || a.Margin != b.Margin || !slices.Equal(a.Also, b.Also) {
		t.Errorf("%v and %v differ", a, b)
	}
}

// A higher reading is never judged worse.
func TestInsulationIsMonotone(t *testing.T) {
	rank := map[verdict.Word]int{verdict.Failed: 0, verdict.Suspect: 1, verdict.CannotTell: 2, verdict.Sound: 3}
	for _, rule := range []string{"", "1000/V", "0.5M", "1M+kV", "2M", "5M"} {
		for _, test := range []float64{0, 500} {
			last := 0
			for e := 0.0; e < 8.5; e += 0.01 {
				x := math.Pow(10, e)
				got := Insulation(InsulationIn{Ohms: within(x, x*0.05), TestVolts: test, RatedVolts: 115, Rule: rule})
				if rank[got.Word] < last {
					t.Fatalf("rule %q, %v V: %s at %v after a better word", rule, test, got.Word, x)
				}
				last = rank[got.Word]
			}
		}
	}
}

// What an ordinary meter condemns is what no published limit passes: AE4-1294,
// 1000 Ω per rated volt; 100 V is the least mains (common practice). Between it
// and the rule applied a reading is in doubt, and both bar power.
func TestGrounded(t *testing.T) {
	for _, x := range []struct {
		ohms, volts float64
		want        bool
	}{
		{220e3, 115, false}, {220e3, 230, true}, {110e3, 115, true}, {470e3, 230, false}, {470e3, 0, false}, {90e3, 0, true}, {110e3, 0, false},
	} {
		v := within(x.ohms, x.ohms*0.01)
		if got := Grounded(v, x.volts); got != x.want {
			t.Errorf("%g Ω at %g V: grounded %v", x.ohms, x.volts, got)
		}
		out := Insulation(InsulationIn{Ohms: v, RatedVolts: x.volts})
		if (out.Word == verdict.Failed) != x.want || strings.Contains(out.Text, "in doubt") == x.want || !slices.Contains(out.Caution, caution.NeverEnergise) {
			t.Errorf("%g Ω at %g V: %s, %s, cautions %v", x.ohms, x.volts, out.Word, out.Text, out.Caution)
		}
	}
}
