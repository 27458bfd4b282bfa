package judge

import (
	"math"
	"strings"
	"testing"

	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// COMAR 20.50.07.02 for the service; ANSI C84.1 Table 1 of 2006 and 2011
// (from memory) at the outlet; 83 Illinois Administrative Code 410.300.
func TestSupplyEditions(t *testing.T) {
	for _, c := range []struct {
		code            string
		nominal, lo, hi float64
	}{
		{"service", 120, 114, 126}, {"service", 240, 228, 252},
		{"c84-2006", 120, 110, 126}, {"c84-2006", 240, 220, 252},
		{"c84-2011", 120, 108, 126}, {"c84-2011", 240, 216, 252},
		{"c84-2011-b", 120, 104, 127}, {"illinois", 120, 113, 127}, {"iec-230", 230, 207, 253},
	} {
		e, ok := supplyEdition(SupplyIn{Nominal: c.nominal, Edition: c.code})
		if !ok {
			t.Fatalf("%s is missing", c.code)
		}
		near(t, c.code+" low", c.nominal*e.lo, c.lo, 1e-9)
		near(t, c.code+" high", c.nominal*e.hi, c.hi, 1e-9)
	}
}

func TestSupply(t *testing.T) {
	for _, c := range []struct {
		name       string
		v, half    float64
		nominal    float64
		edition    string
		word       verdict.Word
		facts      []string
		someSource string
	}{
		{"good", 118.2, 1.5, 120, "", verdict.Sound, []string{"supply-sound"}, "2011"},
		{"low", 98, 1.3, 120, "", verdict.Failed, []string{"supply-low", "supply-usable"}, "2011"},
		{"109 passes 2011", 109.6, 1.4, 120, "c84-2011", verdict.Sound, []string{"supply-sound"}, "2011"},
		{"109 straddles 2006", 109.6, 1.4, 120, "c84-2006", verdict.CannotTell, []string{"supply-undecided"}, "2006"},
		{"high", 131, 1.6, 120, "", verdict.Failed, []string{"supply-high"}, "2011"},
		{"absent", 0.4, 0.3, 120, "", verdict.Failed, []string{"supply-absent"}, "2011"},
		{"ghost", 48, 0.8, 120, "", verdict.Failed, []string{"supply-low"}, "2011"},
		{"near the limit", 108.9, 1.4, 120, "", verdict.CannotTell, []string{"supply-undecided"}, "2011"},
		{"plate of 115", 118, 1.5, 115, "", verdict.Sound, []string{"supply-sound"}, "MG 1"},
		{"230", 212, 2.4, 230, "", verdict.Sound, []string{"supply-sound"}, "60038"},
		{"0 V without a plate: dead by any (common practice)", 0, 3, 0, "", verdict.Failed, []string{"supply-absent"}, "common practice"},
		{"20 V without a plate", 20, 3, 0, "", verdict.CannotTell, nil, ""},
		{"edition of another system", 230, 2.6, 230, "illinois", verdict.CannotTell, nil, ""},
	} {
		got := Supply(SupplyIn{Place: "line", Volts: within(c.v, c.half), Nominal: c.nominal, Edition: c.edition})
		check(t, c.name, got, c.word, c.facts...)
		if !strings.Contains(got.Source, c.someSource) {
			t.Errorf("%s: source %q", c.name, got.Source)
		}
	}
	// 111 V: sound at the outlet, failed at the service and in Illinois.
	got := Supply(SupplyIn{Volts: within(111.4, 1.3), Nominal: 120})
	if got.Word != verdict.Sound || len(got.Also) != 2 || !strings.Contains(got.Also[0], "114 to 126 V") {
		t.Errorf("%s, also %q", got.Word, got.Also)
	}
}

// The share of the nominal decides, not the volts themselves.
func TestSupplyScales(t *testing.T) {
	for x := 5.0; x < 140; x += 0.7 {
		a := Supply(SupplyIn{Volts: within(x, 1), Nominal: 120})
		b := Supply(SupplyIn{Volts: within(2*x, 2), Nominal: 240, Edition: "c84-2011"})
		if a.Word != b.Word || math.Abs(a.Margin-b.Margin) > 1e-9 {
			t.Fatalf("%v V: %s %v, doubled: %s %v", x, a.Word, a.Margin, b.Word, b.Margin)
		}
	}
}

// 121.4 to 117.8 V at 9.6 A: 0.375 Ω, a drop of 2.97 % (Ohm's law). 3 % and
// 5 %: NEC 210.19(A) and 215.2(A), informational notes.
func TestSag(t *testing.T) {
	in := SagIn{NoLoad: measure.Exact(121.4), Loaded: measure.Exact(117.8), Amps: measure.Exact(9.6)}
	near(t, "drop", in.drop().X, 2.97, 0.005)
	z, _ := in.impedance()
	near(t, "impedance", z.X, 0.375, 1e-9)
	check(t, "3 %", Sag(in), verdict.Sound, "sag-sound")

	// 1 % + 3 counts of 0.1 V: the bounds alone cannot tell, one meter can.
	in = SagIn{NoLoad: within(121.4, 1.514), Loaded: within(117.8, 1.478)}
	check(t, "two meters", Sag(in), verdict.CannotTell, "sag-undecided")
	in.CountsHalf = 0.3
	check(t, "one meter", Sag(in), verdict.Sound, "sag-sound")

	in = SagIn{NoLoad: within(120, 1.5), Loaded: within(109, 1.4), CountsHalf: 0.3}
	check(t, "long cord", Sag(in), verdict.Suspect, "sag-deep", "supply-usable")
	in.Loaded = within(48, 0.8)
	check(t, "a fall that leaves too little to heat", Sag(in), verdict.Suspect, "sag-deep")
	in.Loaded, in.Starting = within(109, 1.4), true
	check(t, "same at start", Sag(in), verdict.Sound, "sag-sound")
	in.Loaded = within(92, 1.2)
	check(t, "deep at start", Sag(in), verdict.Suspect, "sag-deep")
	check(t, "nothing read", Sag(SagIn{}), verdict.CannotTell)
	// Under load the volts of a leg rise where its neutral is lost: common practice.
	check(t, "a lost neutral", Sag(SagIn{NoLoad: within(118.2, 1.5), Loaded: within(181.2, 2), Starting: true}), verdict.Suspect, "sag-undecided")
	check(t, "a rise too near to say", Sag(SagIn{NoLoad: within(118, 1.5), Loaded: within(124, 1.5)}), verdict.CannotTell, "sag-undecided")
	check(t, "the line moved a little", Sag(SagIn{NoLoad: within(118, 0.2), Loaded: within(119, 0.2)}), verdict.Sound, "sag-sound")

	got := Sag(SagIn{NoLoad: within(97, 4), Loaded: within(96, 4), CountsHalf: 3, Starting: true})
	check(t, "a fall too small for the meter", got, verdict.CannotTell, "sag-undecided")
	if !strings.Contains(got.Text, "fall by 1.0 %, less than the meter's doubt") {
		t.Errorf("97 to 96 V: %s", got.Text)
	}
	got = Sag(SagIn{NoLoad: within(120, 1.5), Loaded: within(115, 1.4), CountsHalf: 0.1})
	if got.Word != verdict.Sound || len(got.Also) != 1 || !strings.Contains(got.Also[0], "210.19(A)") {
		t.Errorf("4.2 %%: %s, also %q", got.Word, got.Also)
	}
}

// The bounds of the drop hold for every pair of true volts that one meter
// with a common gain error and independent counts can show.
func TestSagBoundsHoldForOneMeter(t *testing.T) {
	for _, gain := range []float64{-0.01, 0, 0.01} {
		for _, c1 := range []float64{-0.3, 0, 0.3} {
			for _, c2 := range []float64{-0.3, 0, 0.3} {
				trueA, trueB := 121.0, 113.0
				in := SagIn{NoLoad: within(trueA*(1+gain)+c1, 1.5), Loaded: within(trueB*(1+gain)+c2, 1.5), CountsHalf: 0.3}
				d, want := in.drop(), 100*(1-trueB/trueA)
				if want < d.Lo-1e-9 || want > d.Hi+1e-9 {
					t.Errorf("gain %v, counts %v %v: %v not in %v to %v", gain, c1, c2, want, d.Lo, d.Hi)
				}
			}
		}
	}
}
