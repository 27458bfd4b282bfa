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
	// which pumps stays above: sound systems run at 5 to 12 (common practice).
	leastRatio = 2
	// saturationTolerance is how far, in percent of the absolute pressure, a
	// standing pressure may lie from a published saturation line: printed
	// tables of service manuals differ by up to 2.5 % (common practice).
	saturationTolerance = 5
	// goneShare is the share of the saturation's gauge pressure below which no
	// charge to speak of is left (common practice).
	goneShare = 0.1
)

const handleGas = "taken by a person certified for the refrigerant"

// PumpingIn is the gauge pressure in psi on both sides of a compressor, read
// while it runs.
type PumpingIn struct {
	Suction, Discharge measure.Value
	Gas                string // refrigerant of the plate, "" when not known
}

// Pumping judges whether a running compressor raises the pressure. That it
// does says nothing of whether it does so enough.
func Pumping(in PumpingIn) verdict.Verdict {
	const subject = "pressures while it runs"
	if in.Suction.Over || in.Discharge.Over || in.Suction.Lo <= -airPSI {
		return cannot(subject, "suction and discharge in psi, above a full vacuum, are needed", in.Suction, in.Discharge)
	}
	s, d := in.Suction, in.Discharge
	ratio := measure.Value{X: (d.X + airPSI) / (s.X + airPSI), Lo: (d.Lo + airPSI) / (s.Hi + airPSI), Hi: (d.Hi + airPSI) / (s.Lo + airPSI)}
	w := atLeast(leastRatio)
	out := begin(subject, ratio, w, "", "common practice (sound systems run at 5 to 12), "+handleGas)
	out.Limit = "absolute pressures at least 1 to " + num(leastRatio)
	out.Entries = entries(s, d)
	out.Caution = []string{caution.SealedSystem, caution.HotMoving}
	says := fmt.Sprintf("%s and %s, absolute 1 to %s", quantity(s.X, "psi"), quantity(d.X, "psi"), num(math.Round(ratio.X*10)/10))
	switch out.Word = w.advisoryWord(ratio); out.Word {
	case verdict.Sound:
		out.Text, out.Fact = says+": it pumps; whether enough, frost and timed temperatures tell", []string{"pressures-apart"}
	case verdict.Suspect:
		out.Text, out.Fact = says+": it does not pump, or had run too short a time, or is not running", []string{"pressures-level"}
	default:
		out.Text = says + ": too near to say; let it run ten minutes and read again on finer gauges"
	}
	if t, ok := formula.SaturationCelsius(in.Gas, s.X); ok {
		out.Also = append(out.Also, fmt.Sprintf("%s boils at %s °C at this suction pressure; no space can get colder than that (%s)",
			in.Gas, num(math.Round(t*10)/10), formula.SaturationSource(in.Gas)))
	}
	return out
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
