package judge

import (
	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// FeedIn is the volts found at a machine.
type FeedIn struct {
	Place  string
	Volts  measure.Value
	Rated  float64 // of the plate
	Called bool    // read while the control should call, or while it tries to start
	// Fed and Unfed are the facts that it establishes.
	Fed, Unfed string
}

// Feed judges whether a machine gets its volts. Without a word that it should
// be called, none is no fault: it may well be switched off.
func Feed(in FeedIn) verdict.Verdict {
	if in.Volts.Over || in.Rated <= 0 {
		return cannot("volts at "+in.Place, "finite volts and the rated volts are needed", in.Volts)
	}
	w := atLeast(in.Rated * ghostShare)
	out := begin("volts at "+in.Place, in.Volts, w, "V", commonPractice)
	out.Limit += " (" + num(ghostShare*100) + " % of " + quantity(in.Rated, "V") + ")"
	out.Caution = []string{caution.MainsLive}
	x := quantity(in.Volts.X, "V")
	switch at := w.place(in.Volts); {
	case at == inside:
		out.Word, out.Text, out.Fact = verdict.Sound, "it is given "+x, facts(in.Fed)
	case at == below && in.Called:
		out.Word, out.Text, out.Fact = verdict.Failed, "it should be called and is given "+x, facts(in.Unfed)
	case at == below:
		out.Word, out.Text = verdict.CannotTell, x+": no call now; write run behind it when it should be called"
	default:
		out.Word, out.Text = verdict.CannotTell, x+" is neither a call nor none: a ghost reading or a poor joint"
	}
	return out
}

// facts is a list of one code, or none.
func facts(code string) []string {
	if code == "" {
		return nil
	}
	return []string{code}
}

// plugShorted is below what any load of a household appliance reads between
// the supply pins, in ohms; plugSound is what the largest cooker reads
// (common practice).
const (
	plugShorted = 1.0
	plugSound   = 4.0
)

// Plug judges the ohms between the plug's supply pins with everything
// switched on.
func Plug(v measure.Value) verdict.Verdict {
	w := atLeast(plugSound)
	out := begin("plug, between its supply pins", v, w, "Ω", commonPractice)
	out.Caution = []string{caution.ProveDead, caution.Capacitor}
	switch {
	case v.Over:
		out.Word, out.Text, out.Fact = verdict.Sound, "no short; nothing in it was switched on either", []string{"plug-to-plug-sound"}
	case v.Hi < plugShorted:
		out.Word, out.Text, out.Fact = verdict.Failed, ohms(v.X)+": a short in the cord or in what is switched on", []string{"plug-to-plug-shorted"}
	case w.place(v) == inside:
		out.Word, out.Text, out.Fact = verdict.Sound, ohms(v.X)+" is a load, not a short", []string{"plug-to-plug-sound"}
	default:
		out.Word, out.Text = verdict.CannotTell, ohms(v.X)+" may be a large load or a short: take the loads off one by one and repeat"
	}
	return out
}
