package judge

import (
	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// EarthIn is the resistance from the plug's earth pin, or the earthing
// terminal, to a metal part.
type EarthIn struct {
	Part     string
	Ohms     measure.Value
	WithCord bool    // the supply cord lies in the path
	TestAmps float64 // of an earth tester; 0 is an ordinary ohm-meter
}

// Limits of the protective earth path in ohms: EN 50106:2008 without and with
// the supply cord, at a test of 10 A or more; AS/NZS 3760 in use, as quoted by
// a test-and-tag firm.
const (
	earthNoCord   = 0.1
	earthWithCord = 0.2
	earthInUse    = 1.0
	earthAmps     = 10.0
)

// Earth judges the protective earth path. An ordinary ohm-meter finds a
// broken one; the limit of a tenth of an ohm is meant for a test at 10 A.
func Earth(in EarthIn) verdict.Verdict {
	limit := earthNoCord
	if in.WithCord {
		limit = earthWithCord
	}
	w := atMost(limit)
	out := begin(named("earth to", in.Part), in.Ohms, w, "Ω", "EN 50106:2008, routine earth continuity test at 10 A or more")
	if in.Part == "" {
		out.Subject = "earth"
	}
	out.Caution = []string{caution.ProveDead, caution.EarthAfter}
	switch {
	case in.Ohms.X < -in.Ohms.Half()/2 && !in.Ohms.Over: // more than a count of the meter below nothing
		out.Word, out.Fact, out.Judged = verdict.CannotTell, []string{"earth-undecided"}, false
		out.Text = "the leads have less than was taken off: short the probes, type anew what they read"
	case in.Ohms.Over:
		out.Word, out.Fact = verdict.Failed, []string{"earth-continuity-failed"}
		out.Text = "no earth path: do not return the power"
	case in.Ohms.Lo > earthInUse, in.TestAmps >= earthAmps && w.place(in.Ohms) == above:
		out.Word, out.Fact = verdict.Failed, []string{"earth-continuity-failed"}
		out.Text = ohms(in.Ohms.X) + " is too much for an earth path: clean and tighten it before power returns"
	case w.place(in.Ohms) == inside:
		out.Word, out.Fact = verdict.Sound, []string{"earth-continuity-sound"}
		out.Text = "the earth path is sound"
		if in.TestAmps < earthAmps {
			out.Also = append(out.Also, "a test at 10 A or more would prove that it carries a fault current")
		}
	case w.place(in.Ohms) == above:
		out.Word, out.Fact = verdict.Suspect, []string{"earth-undecided"}
		out.Text = ohms(in.Ohms.X) + " is over the limit: take off the probes' ohms, clean the points, or test at 10 A"
	default:
		out.Word, out.Fact = verdict.CannotTell, []string{"earth-undecided"}
		out.Text = "there is a path; this meter cannot prove " + ohms(limit) + ": type each digit (0.10), take off the probes, or use an earth tester"
		if in.TestAmps >= earthAmps {
			out.Text = ohms(in.Ohms.X) + " is too near the limit for what this tester can tell: clean and tighten the path, and read it again"
			if in.Ohms.Hi-in.Ohms.Lo > limit {
				out.Text = "as typed it is too coarse to prove " + ohms(limit) + ": type every digit that the tester shows"
			}
		}
	}
	if in.Ohms.Over || in.Ohms.Lo > limit {
		verdictOf := "would pass it"
		if in.Ohms.Over || in.Ohms.Lo > earthInUse {
			verdictOf = "would fail it"
		} else if in.Ohms.Hi > earthInUse {
			verdictOf = "is too near to say"
		}
		out.Also = append(out.Also, "1 Ω for equipment in use (AS/NZS 3760, as quoted by a test-and-tag firm) "+verdictOf)
	}
	return out
}
