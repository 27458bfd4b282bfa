package judge

import (
	"strings"
	"testing"

	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// What a lost leg reads: common practice. 240 V ± range A: ANSI C84.1-2011
// Table 1 (from memory).
func TestLegs(t *testing.T) {
	v := func(x float64) *measure.Value { m := within(x, 1.5); return &m }
	for _, c := range []struct {
		name    string
		pair    float64
		l1, l2  *measure.Value
		nominal float64
		word    verdict.Word
		facts   []string
		text    string
	}{
		{"sound", 240, v(120), v(120), 240, verdict.Sound, []string{"supply-sound"}, "is within"},
		{"sound at 208", 206, v(119), v(119), 208, verdict.Sound, []string{"supply-sound"}, "is within"},
		{"half and a dead leg", 118, v(119), v(0), 240, verdict.Failed, []string{"leg-missing"}, "lost"},
		{"half of 208 and a dead leg", 119, v(0), v(119), 208, verdict.Failed, []string{"leg-missing"}, "lost"},
		{"half, legs not read", 118, nil, nil, 240, verdict.Failed, []string{"supply-undecided"}, "read each leg"},
		{"half, one leg read", 118, v(119), nil, 240, verdict.Failed, []string{"supply-undecided"}, "read each leg"},
		{"none, one leg read", 1, v(119), nil, 240, verdict.Failed, []string{"supply-undecided"}, "read it to neutral too"},
		{"none, a dead leg read", 1, v(0), nil, 240, verdict.Failed, []string{"supply-absent"}, "no supply"},
		{"none and a dead leg", 1, v(119), v(0), 240, verdict.Failed, []string{"leg-missing"}, "lost"},
		{"none though both read", 1, v(119), v(118), 240, verdict.Failed, []string{"leg-missing"}, "fed back"},
		{"none at all", 1, v(0), v(0), 240, verdict.Failed, []string{"supply-absent"}, "no supply"},
		{"low", 205, v(102), v(103), 240, verdict.Failed, []string{"supply-low", "supply-usable"}, "low"},
		{"of another supply than the plate's", 208, v(120), v(120), 240, verdict.Failed, []string{"supply-low", "supply-usable"}, "low for 240"},
	} {
		got := Legs(LegsIn{Pair: within(c.pair, 1.5), L1: c.l1, L2: c.l2, Nominal: c.nominal})
		check(t, c.name, got, c.word, c.facts...)
		if !strings.Contains(got.Text, c.text) {
			t.Errorf("%s: %q does not say %q", c.name, got.Text, c.text)
		}
	}
}

// Without a plate 208 V are those of a 208Y/120 V supply when each leg gives 120 V:
// the sides of a star are the root of three times its legs, those of a split phase
// twice (arithmetic).
// What is low for the plate may be two legs of a 208Y/120 V service: said only when
// it fits that. ANSI C84.1, from memory.
func TestLegsOfAWye(t *testing.T) {
	for _, tt := range []struct {
		volts, nominal float64
		fits           bool
	}{{208, 240, true}, {200, 240, true}, {180, 240, false}, {236, 240, false}, {190, 208, false}, {120, 240, false}} {
		got := strings.Join(Legs(LegsIn{Pair: within(tt.volts, 1), Nominal: tt.nominal}).Also, "\n")
		if strings.Contains(got, "208Y/120 V") != tt.fits {
			t.Errorf("%v V of %v V: %q", tt.volts, tt.nominal, got)
		}
	}
}

func TestLegsOfNoPlate(t *testing.T) {
	v := func(x float64) *measure.Value { w := within(x, 1.5); return &w }
	for _, c := range []struct {
		name   string
		pair   float64
		l1, l2 *measure.Value
		word   verdict.Word
		facts  []string
		text   string
	}{
		{"the pair alone", 208, nil, nil, verdict.CannotTell, []string{"supply-undecided"}, "low for 240 V and may be right for 208 V"},
		{"one leg too", 208, v(120), nil, verdict.CannotTell, []string{"supply-undecided"}, "or each leg to neutral"},
		{"both legs", 208, v(120), v(121), verdict.Sound, []string{"supply-sound"}, "each leg gives its 120 V"},
		{"both legs low", 208, v(104), v(104), verdict.Failed, []string{"supply-low", "supply-usable"}, "low for 240 V"},
		{"240 V", 240, v(120), v(120), verdict.Sound, []string{"supply-sound"}, "is within"},
		{"too low for either", 180, v(90), v(90), verdict.Failed, []string{"supply-low", "supply-usable"}, "low for 240 V"},
		{"half", 118, nil, nil, verdict.Failed, []string{"supply-undecided"}, "read each leg"},
	} {
		got := Legs(LegsIn{Pair: within(c.pair, 1.5), L1: c.l1, L2: c.l2, Nominal: 240, Assumed: true})
		check(t, c.name, got, c.word, c.facts...)
		if !strings.Contains(got.Text, c.text) {
			t.Errorf("%s: %q does not say %q", c.name, got.Text, c.text)
		}
	}
}

func TestNeutralPoor(t *testing.T) {
	for _, c := range []struct {
		a, b float64
		poor bool
	}{{165, 75, true}, {75, 165, true}, {131, 109, true}, {120, 120, false}, {126.5, 113.5, false}, {104, 104, false}, {119, 0, false}, {130, 128, false}, {165, 119, false}, {165, 20, false}} {
		if got := NeutralPoor(within(c.a, 1), within(c.b, 1)); got != c.poor {
			t.Errorf("%g and %g V: %t", c.a, c.b, got)
		}
	}
}
