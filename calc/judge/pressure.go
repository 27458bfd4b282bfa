package judge

import (
	"fmt"
	"math"

	"ohmcall/calc/caution"
	"ohmcall/calc/formula"
	"ohmcall/calc/measure"
	units "ohmcall/calc/quantity"
	"ohmcall/calc/verdict"
)

// airPSI is the standard atmosphere in psi: gauge pressures become absolute ones
// by it, at sea level.
const airPSI = units.Atmosphere / units.PSI

const (
	// leastRatio is the ratio of the absolute pressures that a compressor
	// which pumps stays above: sound systems that cool food run at 5 to 12, those
	// of rooms at 1.8 to 3.5, less when a drive turns them slowly (common practice).
	leastRatio, leastRooms = 2, 1.4
	// saturationTolerance is how far, in percent of the absolute pressure, a
	// standing pressure may lie from a published saturation line: printed
	// tables of service manuals differ by up to 2.5 % (common practice).
	saturationTolerance = 5
	// goneShare is the share of the saturation's gauge pressure below which no
	// charge to speak of is left (common practice).
	goneShare = 0.1
	// hottestCondensing is what a sound condenser stays below, in °C: 20 K above air of
	// 46 °C (115 °F); high-pressure controls open near it (common practice).
	hottestCondensing = 66
)

// zone parts what a temperature is: low under low, usual from from to to, high
// over high. Between them it cannot be told.
type zone struct{ low, from, to, high float64 }

// Where a sound system condenses, in kelvin above the air round its condenser,
// and boils, in °C: an air conditioner above freezing, a household freezer some
// kelvin below its compartment (common practice).
var (
	condensesAbove = zone{3, 6, 20, 23}
	boilsCooling   = zone{0, 2, 10, 13}
	boilsFreezing  = zone{-33, -30, -12, -5}
)

// place is 0 for low, 1 for usual, 2 for high, and -1 where it cannot be told.
func (z zone) place(v measure.Value) int {
	switch {
	case v.Hi < z.low:
		return 0
	case v.Lo > z.high:
		return 2
	case v.Lo >= z.from && v.Hi <= z.to:
		return 1
	}
	return -1
}

// leads are what both sides lead to, by the place of the suction and of the
// discharge (common practice).
var leads = [3][3]string{
	{"little charge or a restriction", "a restriction, little charge, or little air over the evaporator", "a restriction beside a condenser short of air"},
	{"a light load, little charge or a weak pump", "", "a condenser short of air, too much charge, or another gas in it"},
	{"a weak pump, or it has just started", "a large load or too much charge", "a condenser short of air, too much charge, another gas in it, or a large load"},
}

var sideWords = []string{"low", "as usual", "high"}

const handleGas = "taken by a person certified for the refrigerant"

// Evaporator is what a machine cools with its evaporator.
type Evaporator string

// The evaporators that Pumping knows; the empty one is of another use.
const (
	CoolsAir Evaporator = "air of rooms"
	Freezes  Evaporator = "food"
)

// PumpingIn is the gauge pressure in psi on both sides of a compressor, read
// while it runs.
type PumpingIn struct {
	Suction, Discharge measure.Value
	Gas                string        // refrigerant of the plate, "" when not known
	Air                measure.Value // round the condenser, °C
	AirName            string        // of the place where it is read
	For                Evaporator
	Rooms              bool // it cools, dries or warms the air of rooms
	Hot                bool // it condenses hotter by design, as what dries or heats water does
}

// Pumping judges the pressures of a running compressor. Their ratio says that it
// pumps and no more; where the gas condenses and boils says whether charge, flow
// and air are what they should be.
func Pumping(in PumpingIn) verdict.Verdict {
	const subject = "pressures while it runs"
	if v, ok := in.oneSide(subject); ok {
		return v
	}
	if in.Suction.Over || in.Discharge.Over || in.Suction.Lo <= -airPSI {
		return cannot(subject, "suction and discharge in psi, above a full vacuum, are needed", in.Suction, in.Discharge)
	}
	s, d := in.Suction, in.Discharge
	ratio := measure.Value{X: (d.X + airPSI) / (s.X + airPSI), Lo: (d.Lo + airPSI) / (s.Hi + airPSI), Hi: (d.Hi + airPSI) / (s.Lo + airPSI)}
	least, usual := float64(leastRatio), "5 to 12"
	if in.Rooms {
		least, usual = leastRooms, "1.8 to 3.5"
	}
	w := atLeast(least)
	out := begin(subject, ratio, w, "", "common practice (sound ones run at "+usual+"), "+handleGas)
	out.Limit = "absolute pressures at least 1 to " + num(least)
	out.Entries = entries(s, d)
	out.Caution = []string{caution.SealedSystem, caution.HotMoving}
	says := fmt.Sprintf("%s and %s, absolute 1 to %s", quantity(s.X, "psi"), quantity(d.X, "psi"), num(math.Round(ratio.X*10)/10))
	switch w.place(ratio) {
	case inside:
		return in.sides(out, says+": it pumps; ")
	case below:
		out.Word, out.Text, out.Fact = verdict.Suspect, says+": it does not pump, or had run too short a time, or is not running", []string{"pressures-level"}
	default:
		near := says + ": too near to say; let it run ten minutes and read again on finer gauges"
		// Where it would be suspect if it pumped too, it is.
		if it := in.sides(out, ""); it.Word == verdict.Suspect {
			it.Text, it.Fact = near, it.Fact[1:]
			return it
		}
		out.Word, out.Text = verdict.CannotTell, near
	}
	return out
}

// BeyondCutOut is the fact of a discharge above what any sound condenser asks for.
const BeyondCutOut = "discharge-beyond"

// oneSide judges what one side tells by itself: a discharge above any that a sound
// condenser has, and, while the other was not read, a suction that boils too cold.
func (in PumpingIn) oneSide(subject string) (verdict.Verdict, bool) {
	source := formula.SaturationSource(in.Gas) + "; " + commonPractice + ", " + handleGas
	if _, most, ok := formula.SaturationPSI(in.Gas, hottestCondensing); ok && !in.Hot && !in.Discharge.Over && in.Discharge.Lo > most {
		out := begin(subject, in.Discharge, atMost(most), "psi", source)
		out.Word, out.Fact, out.Caution = verdict.Suspect, []string{BeyondCutOut}, []string{caution.SealedSystem, caution.HotMoving}
		out.Text = fmt.Sprintf("discharge %s is above any high-pressure cut-out, %s at %d °C has %s: stop it", quantity(in.Discharge.X, "psi"), in.Gas, hottestCondensing, quantity(math.Round(most), "psi"))
		out.Also = []string{"that leads to a condenser without air, too much charge or another gas in it; and to a cut-out that does not open (an inference by " + commonPractice + ")"}
		return out, true
	}
	z := boilsFreezing
	if in.For == CoolsAir {
		z = boilsCooling
	}
	if boils, ok := boiling(in.Gas, in.Suction); ok && in.For != "" && in.Discharge.Over && !in.Suction.Over && z.place(boils) == 0 {
		return verdict.Verdict{Subject: subject, Word: verdict.Suspect, Entries: entries(in.Suction), Fact: []string{"suction-low"}, Source: source,
			Text: fmt.Sprintf("suction %s is low, %s boils at %s °C, a sound one at %s °C or warmer; read the other side too", quantity(in.Suction.X, "psi"), in.Gas, num(tenth(boils.X)), num(z.from))}, true
	}
	return verdict.Verdict{}, false
}

// sides judges both pressures of a compressor that pumps by where the gas
// condenses and boils.
func (in PumpingIn) sides(out verdict.Verdict, says string) verdict.Verdict {
	out.Word, out.Fact = verdict.CannotTell, []string{"pressures-apart"}
	out.Limit, out.Judged, out.Margin = "", false, 0
	out.Text = says + "whether enough, frost and timed temperatures tell"
	boils, okS := boiling(in.Gas, in.Suction)
	condenses, okD := boiling(in.Gas, in.Discharge)
	if !okS || !okD {
		return out
	}
	out.Source = formula.SaturationSource(in.Gas) + "; " + commonPractice + ", " + handleGas
	at := fmt.Sprintf("%s boils at %s °C and condenses at %s °C", in.Gas, num(tenth(boils.X)), num(tenth(condenses.X)))
	z, low, high := boilsFreezing, -1, -1
	if in.For == CoolsAir {
		z = boilsCooling
	}
	if in.Air.Over {
		out.Also = []string{at}
		if in.For != "" {
			out.Text = says + "now the air round the condenser: temp " + in.AirName + " …"
		}
	} else {
		above := measure.Value{X: condenses.X - in.Air.X, Lo: condenses.Lo - in.Air.Hi, Hi: condenses.Hi - in.Air.Lo}
		high = condensesAbove.place(above)
		beside := "above"
		if above.X < 0 {
			beside = "below"
		}
		out.Also = []string{fmt.Sprintf("%s, %s K %s the air (%s)", at, num(tenth(math.Abs(above.X))), beside, in.AirName)}
		out.Entries = entries(in.Suction, in.Discharge, in.Air)
	}
	if in.For == "" {
		return out
	}
	if low = z.place(boils); low == 0 || low == 2 {
		out.Fact = append(out.Fact, "suction-"+sideWords[low])
	}
	switch {
	case low == 1 && high == 1:
		out.Word, out.Text, out.Fact = verdict.Sound, says+"both sides as usual", append(out.Fact, "suction-normal")
	case low == 0 || low == 2 || high == 0 || high == 2:
		out.Word = verdict.Suspect
		out.Text = fmt.Sprintf("%ssuction %s, discharge %s", says, sideWord(low), sideWord(high))
		if low >= 0 && high >= 0 {
			out.Also = append(out.Also, fmt.Sprintf("that leads to %s (an inference by %s)", leads[low][high], commonPractice))
		}
	}
	return out
}

func sideWord(place int) string {
	if place < 0 {
		return "not to be told"
	}
	return sideWords[place]
}

// boiling is the temperature in °C at which a gas boils or condenses at a gauge
// pressure, false outside its table.
func boiling(gas string, psi measure.Value) (measure.Value, bool) {
	x, ok := formula.SaturationCelsius(gas, psi.X)
	if psi.Lo == psi.Hi {
		return measure.Exact(x), ok
	}
	lo, okLo := formula.SaturationCelsius(gas, psi.Lo)
	hi, okHi := formula.SaturationCelsius(gas, psi.Hi)
	return measure.Value{X: x, Lo: lo, Hi: hi}, ok && okLo && okHi
}

// AtRestIn is the gauge pressure in psi of a system that has stood until it
// was levelled and at one temperature.
type AtRestIn struct {
	PSI     measure.Value
	Celsius measure.Value // of the room and of all parts
	Gas     string        // refrigerant of the plate
}

// AtRest judges a standing pressure against the saturation of the gas at the
// room's temperature. Above it there is something else than the gas; near zero
// there is none. In between it cannot be told: a small charge may all be
// vapour by design.
func AtRest(in AtRestIn) verdict.Verdict {
	const subject = "standing pressure"
	if in.PSI.Over || in.Celsius.Over {
		return cannot(subject, "read the room's temperature beside it (temp room 22C), all parts having stood in it", in.PSI, in.Celsius)
	}
	dew, bubble, ok := formula.SaturationPSI(in.Gas, in.Celsius.X)
	_, hot, okHot := formula.SaturationPSI(in.Gas, in.Celsius.Hi)
	cold, _, okCold := formula.SaturationPSI(in.Gas, in.Celsius.Lo)
	if !ok || !okHot || !okCold {
		return cannot(subject, "no published table for this gas and temperature is at hand; plate gas names the gas", in.PSI, in.Celsius)
	}
	// What the thermometer may be off counts as doubt of the gauge: the absolute
	// pressure is taken to the temperature read from each end of that doubt.
	p := in.PSI
	p.Lo = (p.Lo+airPSI)*(bubble+airPSI)/(hot+airPSI) - airPSI
	p.Hi = (p.Hi+airPSI)*(dew+airPSI)/(cold+airPSI) - airPSI
	slack := saturationTolerance / 100.0
	w := window{(dew+airPSI)*(1-slack) - airPSI, (bubble+airPSI)*(1+slack) - airPSI}
	out := begin(subject, p, w, "psi", fmt.Sprintf("%s; ±%s %% %s, %s", formula.SaturationSource(in.Gas), num(saturationTolerance), commonPractice, handleGas))
	out.Entries = entries(in.PSI, in.Celsius)
	out.Caution = []string{caution.SealedSystem}
	says := fmt.Sprintf("%s, %s saturates at %s at %s °C", quantity(p.X, "psi"), in.Gas, quantity(math.Round(dew*10)/10, "psi"), num(in.Celsius.X))
	switch at := w.place(p); {
	case at == inside:
		out.Word, out.Text, out.Fact = verdict.Sound, says+": liquid is there; how much only the scale tells", []string{"standing-pressure-sound"}
	case at == above:
		out.Word, out.Text, out.Fact = verdict.Suspect, says+": air or another gas, or a part is warmer", []string{"standing-pressure-high"}
	case p.Hi < dew*goneShare:
		out.Word, out.Text, out.Fact = verdict.Suspect, says+": the charge is gone, or the port is not open", []string{"standing-pressure-none"}
	case at == below:
		out.Word, out.Text = verdict.CannotTell, says+": all vapour; a small charge may be so by design, weigh it"
	default:
		out.Word, out.Text = verdict.CannotTell, says+": too near the limit to say; use finer gauges"
	}
	return out
}
