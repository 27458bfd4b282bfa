package judge

import (
	"math"

	"ohmcall/calc/caution"
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
	// Assumed says that no plate gave Nominal: the pair may as well be two of the
	// three legs of a 208Y/120 V supply.
	Assumed bool
}

// TwoLegs is the plate voltage above which an appliance in a split-phase house is
// fed by both legs: they are 208 or 240 V apart (ANSI C84.1, from memory).
const TwoLegs = 200

// wyeNominal is between two legs of a three-phase service of 120 V to neutral
// (ANSI C84.1, from memory).
const wyeNominal = 208.0

// LegNominal is the nominal voltage of one leg to neutral, of a 240 V
// split-phase or a 208 V three-phase service (ANSI C84.1, from memory).
const LegNominal = 120.0

// oneLeg is what the pair reads when a load or the meter itself joins the lost
// leg to neutral: the volts of the other leg (common practice).
var oneLeg = window{0.75 * LegNominal, 1.15 * LegNominal}

// soundLeg is a leg to neutral as the service gives it (COMAR 20.50.07.02, the numbers
// of ANSI C84.1 range A).
var soundLeg = around(LegNominal, 5)

// sharedWithin is how far, in percent, the two together may be from what lies between
// them (common practice).
const sharedWithin = 10

// NeutralPoor reports whether two legs read as they do when the neutral that they share
// is poor or lost: what one has too much the other lacks (common practice).
func NeutralPoor(a, b measure.Value) bool {
	if a.X < b.X {
		a, b = b, a
	}
	return !a.Over && soundLeg.place(a) == above && soundLeg.place(b) == below && around(2*LegNominal, sharedWithin).holds(a.X+b.X)
}

// Legs judges the volts between the legs by what each leg alone reads. Half of
// the nominal volts is one leg lost, not a low supply; and a lost leg that is
// fed back through a load reads like a sound one to neutral. What is low for the
// volts assumed and right for a 208Y/120 V supply is that when both legs are sound
// to neutral: of a split-phase supply that is low both would be low.
func Legs(in LegsIn) (out verdict.Verdict) {
	out = Supply(SupplyIn{Place: in.Place, Volts: in.Pair, Nominal: in.Nominal, Edition: in.Edition})
	if out.Word != verdict.Sound {
		wye := Supply(SupplyIn{Place: in.Place, Volts: in.Pair, Nominal: wyeNominal, Edition: in.Edition})
		switch {
		case in.Assumed && (wye.Word == verdict.Sound || wye.Word == verdict.CannotTell):
			return in.wye(out, wye)
		case wye.Word == verdict.Sound && in.Nominal > wyeNominal:
			out.Also = append(out.Also, "it fits a 208Y/120 V service, of which it is two legs (ANSI C84.1, from memory)")
		}
	}
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
		out.Text = "nothing between the legs though both read to neutral: one is lost and fed back through a load, or both are one"
		out.Fact = []string{"leg-missing"}
	case none && live == 1:
		out.Text = x + " between the legs and one reads to neutral: the other is lost, or both are one; read it to neutral too"
		out.Fact = []string{"supply-undecided"}
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

// wye judges a pair that fits a 208Y/120 V supply better than the volts assumed.
func (in LegsIn) wye(low, wye verdict.Verdict) verdict.Verdict {
	sound := func(leg *measure.Value) bool {
		return leg != nil && Supply(SupplyIn{Volts: *leg, Nominal: LegNominal}).Word == verdict.Sound
	}
	if sound(in.L1) && sound(in.L2) {
		wye.Text += "; each leg gives its " + quantity(LegNominal, "V") + " to neutral"
		wye.Entries = entries(in.Pair, *in.L1, *in.L2)
		return wye
	}
	if in.L1 != nil && in.L2 != nil {
		return low
	}
	low.Word, low.Fact, low.Also = verdict.CannotTell, []string{"supply-undecided"}, nil
	low.Text = quantity(in.Pair.X, "V") + " is low for " + quantity(in.Nominal, "V") + " and may be right for " + quantity(wyeNominal, "V") + ": its plate tells (plate volts …), or each leg to neutral"
	return low
}

// deltaBand are the volts between three legs of which no neutral tells: those of a delta
// service, whose one leg may be high to neutral (common practice).
var deltaBand = window{215, 255}

// starWithin is how far, in percent, the volts of one leg of three to neutral may be from
// those between two, divided by the square root of three (common practice).
const starWithin = 10

// StarIn is the volts of one leg of three to neutral, and the plate's between two legs.
type StarIn struct {
	Place          string
	Volts          measure.Value
	Between        float64 // 0 when no plate gives it
	OthersAreThere bool    // another leg reads to the same neutral
}

// Star judges the volts of one leg of three to neutral: of a star-connected supply they
// are those between two legs divided by the square root of three.
func Star(in StarIn) verdict.Verdict {
	star := in.Between / math.Sqrt(3)
	w := around(star, starWithin)
	subject := named("supply", in.Place)
	dead := !in.Volts.Over && in.Volts.Hi < LegNominal*absentShare
	switch {
	case in.Volts.Over:
		return cannot(subject, "over the meter's range: take a higher one and read again", in.Volts)
	case !dead && star <= 0:
		return cannot(subject, "the plate's volts are needed to judge it: plate volts …", in.Volts)
	case !dead && deltaBand.holds(in.Between):
		return cannot(subject, "a service of these volts may be a delta, whose neutral tells nothing: read the legs to each other", in.Volts)
	}
	out := begin(subject, in.Volts, w, "V", commonPractice)
	out.Caution = []string{caution.MainsLive}
	x := quantity(in.Volts.X, "V")
	switch p := w.place(in.Volts); {
	case dead:
		out.Word, out.Text = verdict.Failed, x+" to neutral: that leg is lost, or the neutral is; read the legs to each other"
		if in.OthersAreThere {
			out.Text, out.Fact = x+" to a neutral to which another leg reads: that leg is lost", []string{"phase-lost"}
		}
	case p == inside:
		out.Word, out.Text = verdict.Sound, x+" is right to the neutral of "+quantity(in.Between, "V")+" between two legs"
	case p == straddles:
		out.Word, out.Text = verdict.CannotTell, x+" is too near the limit to say: read the legs to each other"
	default:
		out.Word, out.Text = verdict.Suspect, x+" is not right for the neutral of "+quantity(in.Between, "V")+": read the legs to each other; they and not the neutral feed it"
	}
	return out
}
