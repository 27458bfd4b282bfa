package judge

import (
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// LegsIn is a split-phase supply: the volts between its two legs, and those of
// each leg to neutral where they were read.
type LegsIn struct {
	Place   string
	Pair    measure.Value
	L1, L2  *measure.Value
	Nominal float64 // between the legs
	Edition string
}

// LegNominal is the nominal voltage of one leg to neutral, of a 240 V
// split-phase or a 208 V three-phase service (ANSI C84.1, from memory).
const LegNominal = 120.0

// oneLeg is what the pair reads when a load or the meter itself joins the lost
// leg to neutral: the volts of the other leg (common practice).
var oneLeg = window{0.75 * LegNominal, 1.15 * LegNominal}

// Legs judges the volts between the legs by what each leg alone reads. Half of
// the nominal volts is one leg lost, not a low supply; and a lost leg that is
// fed back through a load reads like a sound one to neutral.
func Legs(in LegsIn) (out verdict.Verdict) {
	out = Supply(SupplyIn{Place: in.Place, Volts: in.Pair, Nominal: in.Nominal, Edition: in.Edition})
	if in.Pair.Over || in.Nominal <= oneLeg.hi {
		return out
	}
	x := quantity(in.Pair.X, "V")
	half, none := oneLeg.place(in.Pair) == inside, in.Pair.Hi < in.Nominal*absentShare
	lost, live := 0, 0
	for _, leg := range []*measure.Value{in.L1, in.L2} {
		switch {
		case leg == nil || leg.Over:
		case leg.Hi < LegNominal*absentShare:
			lost++
		case leg.Lo > LegNominal*ghostShare:
			live++
		}
	}
	switch {
	case half && lost == 1, none && lost == 1 && live == 1:
		out.Text, out.Fact = x+" between the legs and none on one of them: that leg is lost", []string{"leg-missing"}
	case none && live == 2:
		out.Text = "nothing between the legs though both read to neutral: one is lost and fed back through a load"
		out.Fact = []string{"leg-missing"}
	case half:
		out.Text = x + " is half of " + quantity(in.Nominal, "V") + ", what one leg gives: read each leg to neutral"
		out.Fact = []string{"supply-undecided"}
	default:
		return out
	}
	out.Source = commonPractice
	out.Also = nil
	var legs []measure.Value
	for _, leg := range []*measure.Value{in.L1, in.L2} {
		if leg != nil {
			legs = append(legs, *leg)
		}
	}
	out.Entries = entries(append([]measure.Value{in.Pair}, legs...)...)
	return out
}
