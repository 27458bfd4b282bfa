package judge

import (
	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// A defrost thermostat closes on cold and opens on warmth at temperatures that
// its marking gives. Every usual one has closed at the first of these, in °C,
// and opened at the second (common practice; markings run from about 15 to
// 40 °F for closing and from 40 to 60 °F for opening).
const (
	defrostClosed = -10.0
	defrostOpened = 16.0
)

// DefrostIn is a defrost thermostat read across its two wires.
type DefrostIn struct {
	Name    string
	Ohms    measure.Value
	State   State          // cold is below its marked temperature
	Celsius *measure.Value // of its body, nil when nobody said
	Want    string         // "closed" or "open" by the word of who read it
}

// Defrost judges a defrost thermostat. Open is its rest state at room
// temperature, so only one that is open although it is cold has failed.
func Defrost(in DefrostIn) verdict.Verdict {
	cold := in.State == Cold || in.Want == "closed"
	warm := in.State == Hot || in.Want == "open"
	if in.Celsius != nil {
		cold, warm = in.Celsius.Hi <= defrostClosed, in.Celsius.Lo >= defrostOpened
	}
	w := atMost(contactOhms)
	out := begin(named("defrost thermostat", in.Name), in.Ohms, w, "Ω", commonPractice)
	if in.Celsius != nil {
		out.Entries = entries(in.Ohms, *in.Celsius)
	}
	out.Caution = []string{caution.ProveDead, caution.ProtectorStays}
	undecided := []string{fact("limit", verdict.CannotTell)}
	closed := !in.Ohms.Over && w.place(in.Ohms) == inside
	switch {
	case in.Ohms.Over && cold:
		out.Word, out.Fact = verdict.Failed, []string{"limit-open"}
		out.Text = "open although it is cold: it never lets the defrost heater work"
	case in.Ohms.Over && warm:
		out.Word, out.Fact = verdict.CannotTell, undecided
		out.Text = "open, as any is when warm: read it below the temperature marked on it"
	case in.Ohms.Over:
		out.Word, out.Fact = verdict.CannotTell, undecided
		out.Text = "open, as any is when not cold: read it below the temperature marked on it, and write cold or at -15C behind the value"
	case closed && cold:
		out.Word, out.Fact, out.Text = verdict.Sound, []string{"limit-closed"}, "closed when cold, as it must be"
	case closed && warm:
		// It does conduct, so it does not keep the heater off.
		out.Word, out.Fact = verdict.Suspect, []string{"limit-closed"}
		out.Text = "closed although it is warm: likely welded; the heater goes on when the ice is gone"
	case closed:
		out.Word, out.Fact = verdict.CannotTell, []string{"limit-closed"}
		out.Text = "closed, which is right when it is cold: see that it opens when warm, above the temperature marked on it"
	default:
		out.Word, out.Text = w.advisoryWord(in.Ohms), ohms(in.Ohms.X)+" across it: short the probes and repeat, else a burnt contact"
		if out.Word == verdict.CannotTell && warm {
			out.Word = verdict.Suspect // closed or burnt, it is neither way as it must be
		}
		if out.Word == verdict.CannotTell {
			out.Fact = undecided
		}
	}
	return out
}
