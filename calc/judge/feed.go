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

// fullShare is the least share of its rated volts with which a machine works as it
// should: 104 V of 120 V are 0.87 (ANSI C84.1-2011 Table 1, utilization voltage,
// range B; from memory), rounded down.
const fullShare = 0.85

// Feed judges whether a machine gets its volts. Without a word that it should
// be called, none is no fault: it may well be switched off. What is called and gets
// too little shows that it is called, and that something takes the rest.
func Feed(in FeedIn) verdict.Verdict {
	if in.Volts.Over || in.Rated <= 0 {
		return cannot("volts at "+in.Place, "finite volts and the rated volts are needed", in.Volts)
	}
	w, full, share := atLeast(in.Rated*ghostShare), atLeast(in.Rated*fullShare), ghostShare
	if w.place(in.Volts) == inside {
		w, share = full, fullShare
	}
	out := begin("volts at "+in.Place, in.Volts, w, "V", commonPractice)
	out.Limit += " (" + num(share*100) + " % of " + quantity(in.Rated, "V") + ")"
	out.Caution = []string{caution.MainsLive}
	x := quantity(in.Volts.X, "V")
	switch at := w.place(in.Volts); {
	case share == fullShare && at == below:
		out.Word, out.Text = verdict.Suspect, "it is called, and "+x+" are too little: a low supply, a poor joint or a lost leg"
		if in.Rated <= TwoLegs { // above it takes two legs, of which one may be lost
			out.Fact = facts(in.Fed)
		}
	case share == fullShare && at != inside:
		out.Word, out.Text, out.Fact = verdict.CannotTell, "it is called; whether "+x+" are enough is within the meter's doubt", facts(in.Fed)
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

// Control judges the volts of a control circuit against those that its transformer is
// marked with.
func Control(place string, v measure.Value, rated float64) verdict.Verdict {
	w := atLeast(rated * fullShare)
	out := begin("volts at "+place, v, w, "V", commonPractice)
	out.Caution = []string{caution.MainsLive}
	x := quantity(v.X, "V")
	switch w.place(v) {
	case inside:
		out.Word, out.Text, out.Fact = verdict.Sound, x+" for a circuit of "+num(rated)+" V", []string{"control-volts-sound"}
	case below:
		out.Word, out.Fact = verdict.Suspect, []string{"control-volts-low"}
		out.Text = x + " are too few for " + num(rated) + " V: a load drags them down, or the transformer or its primary is low"
	default:
		out.Word, out.Text = verdict.CannotTell, x+" are too near the limit to say"
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
