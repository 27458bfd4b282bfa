package judge

import (
	"math"
	"testing"

	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// The formula of NEMA MG 1 as reprinted in a motor protector's specifications,
// p. 5: 203, 210 and 212 V are 2.5 % unbalanced; it rounds the average on the way.
func TestUnbalance(t *testing.T) {
	u := unbalance([3]measure.Value{measure.Exact(203), measure.Exact(210), measure.Exact(212)})
	if math.Abs(u.X-2.5) > 0.1 {
		t.Errorf("203, 210, 212 V are %.3f %% unbalanced, want 2.5", u.X)
	}
}

// A leg that floats, legs that are there, and legs out of balance: common
// practice for the lost leg, NEMA MG 1 (from memory) for 5 %.
func TestPhases(t *testing.T) {
	for _, c := range []struct {
		name    string
		machine bool
		a, b, c float64
		half    float64
		word    verdict.Word
		facts   []string
		text    string
	}{
		{"balanced", false, 231, 229, 232, 0.8, verdict.Sound, []string{"phases-sound"}, ""},
		{"a modest meter still sees 5 %", true, 231, 229, 232, 5.3, verdict.Sound, []string{"legs-sound"}, ""},
		{"lost at the machine", true, 231, 118, 117, 5, verdict.Failed, []string{"leg-lost"}, "leg T3 is lost: keep it off, on two legs it burns out"},
		{"lost at the supply, nothing on two pairs", false, 0.5, 0.5, 231, 1, verdict.Failed, []string{"phase-lost"}, "leg T2 is lost: keep it off, on two legs it burns out"},
		{"unbalanced", false, 240, 220, 215, 0.5, verdict.Failed, []string{"phases-unbalanced"}, ""},
		{"too near", true, 240, 225, 222, 3, verdict.CannotTell, nil, ""},
		{"all dead", true, 0.1, 0.2, 0.1, 0.1, verdict.CannotTell, []string{"control-not-calling"}, "no volts on any leg"},
		{"no supply", false, 0.1, 0.2, 0.1, 0.1, verdict.CannotTell, []string{"supply-absent"}, "no volts on any leg"},
	} {
		in := PhasesIn{Place: "T1 T2 T3", Machine: c.machine, Called: true, Names: [3]string{"T3", "T1", "T2"},
			Pairs: [3]measure.Value{within(c.a, c.half), within(c.b, c.half), within(c.c, c.half)}}
		v := Phases(in)
		check(t, c.name, v, c.word, c.facts...)
		if c.text != "" && v.Text != c.text {
			t.Errorf("%s: %q, want %q", c.name, v.Text, c.text)
		}
	}
}

// 15 to 54 °F that a heat pump in heating adds to the air: common practice.
func TestAirRise(t *testing.T) {
	for _, c := range []struct {
		name    string
		in, out float64 // °F
		word    verdict.Word
		facts   []string
	}{
		{"ducted", 68, 90, verdict.Sound, []string{"rise-sound"}},
		{"a room unit", 68, 115, verdict.Sound, []string{"rise-sound"}},
		{"it hardly heats", 68, 71, verdict.Suspect, []string{"rise-small"}},
		{"it cools", 68, 50, verdict.Suspect, []string{"rise-cooled"}},
		{"a draught", 68, 64, verdict.Suspect, []string{"rise-small"}},
		{"too little air", 68, 135, verdict.Suspect, []string{"rise-large"}},
		{"near the limit", 68, 82, verdict.CannotTell, nil},
	} {
		v := AirRise(within((c.in-32)/1.8, 0.5), within((c.out-32)/1.8, 0.5))
		check(t, c.name, v, c.word, c.facts...)
	}
	check(t, "out of range", AirRise(measure.Open(3), within(30, 0.5)), verdict.CannotTell)
}

// 14 to 25 °F between the air taken in and given out: common practice.
func TestAirSplit(t *testing.T) {
	for _, c := range []struct {
		name    string
		in, out float64 // °F
		word    verdict.Word
		facts   []string
	}{
		{"it cools", 78, 59, verdict.Sound, []string{"split-sound"}},
		{"it does not", 80, 81, verdict.Suspect, []string{"split-small"}},
		{"too little air", 78, 45, verdict.Suspect, []string{"split-large"}},
		{"near the limit", 78, 63, verdict.CannotTell, nil},
	} {
		v := AirSplit(within((c.in-32)/1.8, 0.5), within((c.out-32)/1.8, 0.5))
		check(t, c.name, v, c.word, c.facts...)
	}
}
