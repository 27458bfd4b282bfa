package judge

import (
	"strings"

	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// faint is the little that a flame gives: the least that holds a burner or its valve, what
// is good, the most that can be, and what is said of it; between the first two it is sound
// where something is said.
type faint struct {
	scale, least, good, most                     float64
	unit, fact, weak                             string
	over, little, near, enough, alright, decides string
	caution                                      []string
}

var (
	// Most controls hold a flame from 1 µA on, and a clean rod gives more than 2
	// (common practice; the control's sheet decides).
	ofRod = faint{1e-6, 1, 2, 1000, "µA", "flame-sensed", "flame-weak", "over the meter's range: it is read on a microampere range, in series",
		" is too little for most controls: clean the rod, and see its porcelain, wire and the burner's ground", " is too near what most controls need: read it on a finer range",
		" is enough for most controls, and little for a clean rod", " is a flame that is sensed", "the control's sheet decides", []string{caution.MainsLive, caution.FuelGas, caution.HotMoving}}
	// A valve hardly holds on less than 12 mV of a thermocouple, of which service sheets ask
	// 10 to 13 with the valve on it; 18 are good with its lead off or on; none gives 100
	// (common practice).
	ofCouple = faint{1e-3, 12, 18, 100, "mV", "thermocouple-sound", "thermocouple-weak", overCouple, tooLittle, orLoaded, "", " is enough", decides, fuel}
	// Of a thermopile it is 200 mV, and 400; none gives 2000 (common practice).
	ofPile = faint{1e-3, 200, 400, 2000, "mV", "thermocouple-sound", "thermocouple-weak", overCouple, tooLittle, orLoaded, "", " is enough", decides, fuel}
	fuel   = []string{caution.FuelGas}
)

const (
	overCouple = "over the meter's range: it gives direct millivolts"
	tooLittle  = " is too little to hold a valve: see that a good pilot flame wraps it, else replace it"
	orLoaded   = " is enough with the valve on it, and little with its lead off"
	decides    = "the valve's sheet decides"
)

// FlameAmps judges the current of a flame rod, in amperes, read in series with
// it while the burner burns.
func FlameAmps(name string, amps measure.Value) verdict.Verdict {
	return ofRod.judge(named("flame current", name), amps)
}

// Thermocouple judges the volts of a thermocouple, or of a thermopile, in its pilot flame;
// the leads may be the other way round.
func Thermocouple(name string, v measure.Value) verdict.Verdict {
	f := &ofCouple
	if strings.HasPrefix(name, "thermopile") {
		f = &ofPile
	}
	return f.judge(name, v)
}

func (f *faint) judge(subject string, raw measure.Value) verdict.Verdict {
	v := raw
	v.X, v.Lo, v.Hi = raw.X/f.scale, raw.Lo/f.scale, raw.Hi/f.scale
	if v.X < 0 {
		v.X, v.Lo, v.Hi = -v.X, -v.Hi, -v.Lo
	}
	w := atLeast(f.least)
	out := begin(subject, v, w, f.unit, commonPractice+"; "+f.decides)
	out.Caution = f.caution
	fact, text := f.fact, f.alright
	out.Word = verdict.Sound
	switch {
	case raw.Over:
		return cannot(out.Subject, f.over, raw)
	case v.Hi > f.most:
		out.Word, fact, text = verdict.CannotTell, "", " is more than it can give: see the unit and the range"
	case w.place(v) == below:
		out.Word, fact, text = verdict.Suspect, f.weak, f.little
	case v.Lo >= f.good:
	case w.place(v) == straddles || f.enough == "":
		out.Word, fact, text = verdict.CannotTell, "", f.near
	default:
		text = f.enough
	}
	out.Text = num(tenth(v.X)) + " " + f.unit + text
	if fact != "" {
		out.Fact = []string{fact}
	}
	return out
}

// FlameRod judges the ohms of a flame rod, which is open to its burner when it
// is sound: only a path to the metal tells anything.
func FlameRod(name string, v measure.Value) verdict.Verdict {
	w := atLeast(dryRod)
	out := begin(named("flame rod", name), v, w, "Ω", commonPractice)
	out.Caution = []string{caution.ProveDead}
	switch {
	case v.Over, w.place(v) == inside:
		out.Word, out.Text = verdict.CannotTell, "open, as a sound rod is: its current says more (amp flame-rod 2.5uA run)"
	case w.place(v) == below:
		out.Word, out.Fact = verdict.Suspect, []string{"flame-weak"}
		out.Text = ohms(v.X) + " to the metal: its porcelain is cracked or dirty, or it touches the burner"
	default:
		out.Word, out.Text = verdict.CannotTell, ohms(v.X)+" is neither open nor a path: clean the porcelain and repeat"
	}
	return out
}

// dryRod is below what a dry porcelain lets through, in ohms (common practice).
const dryRod = 1e6
