package judge

import (
	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// contactOhms is what a closed contact stays under, leads and all (common
// practice).
const contactOhms = 1.0

// What a PTC start device reads, in ohms: cold on 115 V 3 to 10 (refrigerator
// service manual, starting device, at 70 to 80 °F) and up to 20 (common
// practice); on higher volts up to 100 (common practice). Hot it reads a
// thousand or more, and one that reads below a hundred has not switched off
// (common practice).
var (
	ptcLow      = window{3, 20}
	ptcHigh     = window{3, 100}
	ptcHotLeast = atLeast(1000)
	ptcColdMost = 1000.0 // what a device reads hot none reads at room temperature (common practice)
	ptcStuck    = 100.0
)

// lowVolts is the plate voltage up to which a machine is of the 115 V kind
// (common practice).
const lowVolts = 150

// conducts is how many times contactOhms a protector may read and still pass
// for one that conducts, dirt and all (common practice).
const conducts = 20

// State is the condition in which a part was read.
type State string

// The conditions. The empty one means that nobody said.
const (
	Cold State = "cold"
	Hot  State = "hot"
)

// PTCIn is a solid-state start device read across its disc.
type PTCIn struct {
	Name  string
	Ohms  measure.Value
	State State
	Volts float64 // of the machine, 0 when not known
}

// PTC judges a start device whose resistance jumps when it warms. The
// typical ranges condemn nothing; an open disc that is cold does.
func PTC(in PTCIn) verdict.Verdict {
	subject := named("PTC start device", in.Name)
	if in.State == Hot {
		return ptcHot(subject, in)
	}
	w, source := ptcLow, "refrigerator service manual, starting device (3 to 10 Ω at 70 to 80 °F); to 20 Ω common practice"
	if in.Volts > lowVolts {
		w, source = ptcHigh, commonPractice+" (devices for 208 to 240 V read more)"
	}
	out := begin(subject, in.Ohms, w, "Ω", source)
	out.Caution = []string{caution.ProveDead, caution.Capacitor}
	switch {
	case in.Ohms.Over && in.State == Cold:
		out.Word, out.Text = verdict.Failed, "open when cold: the disc is broken or burnt off"
	case in.Ohms.Over:
		out.Word, out.Text = verdict.Suspect, "open: let it cool to room temperature for some minutes and repeat"
	case in.Ohms.Hi < contactOhms && in.State == Cold:
		out.Word, out.Text = verdict.Failed, "near zero ohms: shorted, it would hold the start winding in"
	case in.State == Cold && in.Ohms.Lo >= ptcColdMost:
		out.Word, out.Text = verdict.Failed, ohms(in.Ohms.X)+" is what one reads hot: at room temperature its disc is cracked or worn out, and it lets the start winding get too little; had it run within minutes, let it cool and repeat"
	default:
		out.Word = w.advisoryWord(in.Ohms)
		switch w.place(in.Ohms) {
		case inside:
			out.Text = ohms(in.Ohms.X) + " is typical of a cold device"
		case above:
			out.Text = ohms(in.Ohms.X) + " is high for a cold device: let it cool, repeat, and see its data sheet"
		case below:
			out.Text = ohms(in.Ohms.X) + " is low for a start device: see its data sheet"
		default:
			out.Text = ohms(in.Ohms.X) + " is at the edge of the typical range: see its data sheet"
		}
	}
	out.Fact = deviceFact(out.Word)
	return out
}

func ptcHot(subject string, in PTCIn) verdict.Verdict {
	w := ptcHotLeast
	out := begin(subject+" hot", in.Ohms, w, "Ω", commonPractice)
	out.Caution = []string{caution.ProveDead, caution.HotMoving}
	switch {
	case in.Ohms.Over || w.place(in.Ohms) == inside:
		out.Word, out.Text = verdict.Sound, "high while hot, as it must be; now read it cold"
	case w.place(in.Ohms) == below && in.Ohms.Hi < ptcStuck:
		out.Word, out.Text = verdict.Suspect, "low though hot: it may not switch off; make sure it was at working heat and repeat"
	default:
		out.Word, out.Text = verdict.CannotTell, "between cold and hot: it cools as you read; read it cold"
	}
	if out.Word == verdict.Suspect {
		out.Fact = deviceFact(out.Word)
	}
	return out
}

// OverloadIn is an overload protector read across its two terminals.
type OverloadIn struct {
	Name  string
	Ohms  measure.Value
	State State // of the protector and the shell it sits on
}

// Overload judges the continuity of an external overload protector. Only one
// that is open when cold is a fact against it.
func Overload(in OverloadIn) verdict.Verdict {
	w := atMost(contactOhms)
	out := begin(named("overload", in.Name), in.Ohms, w, "Ω", commonPractice)
	out.Caution = []string{caution.ProveDead, caution.ProtectorStays}
	switch {
	case in.Ohms.Over && in.State == Cold:
		out.Word, out.Fact = verdict.Failed, []string{"overload-open"}
		out.Text = "open when cold: replace it with the same part"
	case in.Ohms.Over && in.State == Hot:
		out.Word, out.Fact = verdict.CannotTell, []string{"overload-open"}
		out.Text = "open while hot is its work: let it cool below " + measure.CoolWords + ", which can take hours, and repeat"
		out.Source = measure.CoolSource
	case in.Ohms.Over:
		out.Word = verdict.Suspect
		out.Text = "open: let it cool below " + measure.CoolWords + " and repeat; open when cold is failed"
		out.Source = measure.CoolSource
	case w.place(in.Ohms) == inside:
		out.Word, out.Fact = verdict.Sound, []string{"overload-closed"}
		out.Text = "closed"
	default:
		out.Word = w.advisoryWord(in.Ohms)
		out.Text = ohms(in.Ohms.X) + " across it: short the probes and repeat; a closed one reads near zero"
		if in.Ohms.Hi < conducts*contactOhms {
			out.Fact = []string{"overload-closed"}
		}
	}
	return out
}

// deviceFact is the fact of a start device that was judged by a limit.
func deviceFact(w verdict.Word) []string { return []string{fact("start-device", w)} }
