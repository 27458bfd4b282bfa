package judge

import (
	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// Limits of the current that a flame carries from its rod to the burner, in
// microamperes: most controls hold a flame from leastFlame on, and a clean rod
// gives more than goodFlame (common practice; the control's sheet decides).
const (
	leastFlame = 1.0
	goodFlame  = 2.0
	micro      = 1e-6
)

// FlameAmps judges the current of a flame rod, in amperes, read in series with
// it while the burner burns.
func FlameAmps(name string, amps measure.Value) verdict.Verdict {
	v := amps
	v.X, v.Lo, v.Hi = amps.X/micro, amps.Lo/micro, amps.Hi/micro
	w := atLeast(leastFlame)
	out := begin(named("flame current", name), v, w, "µA", commonPractice+"; the control's sheet decides")
	out.Caution = []string{caution.MainsLive, caution.FuelGas, caution.HotMoving}
	x := num(tenth(v.X)) + " µA"
	switch {
	case amps.Over:
		return cannot(out.Subject, "over the meter's range: it is read on a microampere range, in series", amps)
	case w.place(v) == below:
		out.Word, out.Fact = verdict.Suspect, []string{"flame-weak"}
		out.Text = x + " is too little for most controls: clean the rod, and see its porcelain, wire and the burner's ground"
	case w.place(v) == straddles:
		out.Word, out.Text = verdict.CannotTell, x+" is too near what most controls need: read it on a finer range"
	case v.Lo >= goodFlame:
		out.Word, out.Fact, out.Text = verdict.Sound, []string{"flame-sensed"}, x+" is a flame that is sensed"
	default:
		out.Word, out.Fact, out.Text = verdict.Sound, []string{"flame-sensed"}, x+" is enough for most controls, and little for a clean rod"
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
