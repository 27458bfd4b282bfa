package judge

import (
	"strings"
	"testing"

	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// A motor on two legs, and currents more than a tenth apart: common practice.
func TestLegAmps(t *testing.T) {
	legs := func(half float64, x ...float64) []measure.Value {
		var out []measure.Value
		for _, v := range x {
			out = append(out, within(v, half))
		}
		return out
	}
	for _, c := range []struct {
		name  string
		legs  []measure.Value
		word  verdict.Word
		say   string
		facts []string
	}{
		{"balanced", legs(0.2, 10.1, 10.3, 10.0), verdict.Sound, "", []string{"amps-sound"}},
		{"on two legs", legs(0.3, 0, 19.1, 18.7), verdict.Failed, "no current in L1", []string{"leg-lost"}},
		{"on two legs, two read", legs(0.3, 0, 19.1), verdict.Failed, "no current in L1", []string{"leg-lost"}},
		{"standing still", legs(0.3, 0, 0, 0), verdict.Failed, "no current", []string{"amps-none"}},
		{"apart", legs(0.2, 7.2, 10.9, 11.2), verdict.Suspect, "26.3 % apart", nil},
		{"apart and above the plate", legs(0.2, 7.2, 10.9, 13.8), verdict.Failed, "32.3 % apart", []string{"amps-high"}},
		{"too near to say", legs(0.3, 9, 10, 11), verdict.CannotTell, "", nil},
		{"far under the plate on every leg", legs(0.1, 5.1, 5.0, 5.1), verdict.CannotTell, "5.1 A is far under the plate of 11.2 A: little load, a weak pump, or it turns the wrong way", nil},
		{"just under half of it: too near to call it far", legs(0.2, 5.5, 5.5, 5.5), verdict.Sound, "5.5 A against a plate", []string{"amps-sound"}},
		{"above the plate alike", legs(0.2, 17.5, 17.4, 17.6), verdict.Failed, "it is overloaded (inferred)", []string{"amps-high", "legs-overloaded"}},
		{"two of them above", legs(0.2, 11.0, 13.6, 13.8), verdict.Failed, "apart", []string{"amps-high"}},
		{"two of three", legs(0.2, 10.1, 10.3), verdict.Sound, "", []string{"amps-sound"}},
		{"over the clamp", []measure.Value{within(10, 0.2), measure.Open(40)}, verdict.CannotTell, "", nil},
	} {
		in := LegAmpsIn{AmpsIn: AmpsIn{Plate: 11.2, LRA: 78, Volts: 360}, Legs: c.legs, Names: []string{"L1", "L2", "L3"}[:len(c.legs)]}
		got := LegAmps(in)
		check(t, c.name, got, c.word, c.facts...)
		if !strings.Contains(got.Text+strings.Join(got.Also, "; "), c.say) {
			t.Errorf("%s: %q does not say %q", c.name, got.Text, c.say)
		}
	}
}
