package judge

import (
	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// AcrossIn is the volts across a part whose work is to conduct, read while its
// circuit is called.
type AcrossIn struct {
	Path   Path
	Name   string
	Volts  measure.Value
	Full   float64 // of the circuit that it is in
	Closed bool    // it was said that it should be closed
}

// acrossClosed is below what stands across any contact that is open in a circuit under
// power, as a share of its volts (common practice).
const acrossClosed = 0.1

// Across infers whether a part is open from the volts that stand on it: all of them on
// an open one, next to none on one that conducts, or on any when the circuit is open
// elsewhere. It is no more than an inference: the probes may have stood elsewhere.
func Across(in AcrossIn) verdict.Verdict {
	w := atMost(in.Full * ghostShare)
	out := begin("volts across "+in.Name, in.Volts, w, "V", commonPractice)
	out.Caution = []string{caution.MainsLive, caution.ProtectorStays}
	closed, says := in.Closed || in.Path == Fuse || in.Path == Limit, ": open, if both probes stood on it; write closed before run when it should be closed"
	out.Word = verdict.CannotTell
	switch {
	case in.Volts.Over || w.place(in.Volts) != above && in.Volts.Hi >= in.Full*acrossClosed:
		says = " are neither all of its circuit nor none: a poor contact, a ghost reading or a load beside it"
	case w.place(in.Volts) != above:
		says = ": closed if current flows through it; none is there either when the circuit is open elsewhere"
	case closed:
		says = ": open, if both probes stood on it; its ohms, dead, settle it"
		out.Word, out.Fact = verdict.Suspect, facts(switchFact(in.Path, 1))
	}
	out.Text = quantity(in.Volts.X, "V") + says
	return out
}
