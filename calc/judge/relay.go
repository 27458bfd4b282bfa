package judge

import (
	"math"
	"slices"

	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// RelayPart is the part of a start relay that was read.
type RelayPart string

// What a relay reading may be across. A current relay's contact is read in
// its working position and again turned over.
const (
	Coil     RelayPart = "coil"
	Contact  RelayPart = "contact"
	Inverted RelayPart = "contact inverted"
)

// RelayIn is one reading of a start relay at rest.
type RelayIn struct {
	Name string
	Part RelayPart
	Ohms measure.Value
}

// What the coils of start relays read, in ohms (common practice).
var (
	currentCoil   = atMost(5)
	potentialCoil = window{1000, 25_000}
)

const relaySource = "Equipment and Test Procedures for Electrical Circuit Components (training manual 14259), fig. 14-40"

// CurrentRelay judges a relay whose coil carries the run current: the coil
// reads near zero, the contact is open upright and closed turned over.
func CurrentRelay(in RelayIn) verdict.Verdict {
	subject := named("current relay", in.Name) + " " + string(in.Part)
	switch in.Part {
	case Coil:
		return coilOhms(subject, in.Ohms, currentCoil, commonPractice)
	case Contact:
		return contact(subject, in.Ohms, false, "the contact is welded: it would hold the start winding in")
	}
	return contact(subject, in.Ohms, true, "the contact does not close when turned over: burnt or stuck")
}

// PotentialRelay judges a relay whose coil watches the start winding's volts:
// the coil reads kilohms and the contact is closed at rest.
func PotentialRelay(in RelayIn) verdict.Verdict {
	subject := named("potential relay", in.Name) + " " + string(in.Part)
	if in.Part == Coil {
		return coilOhms(subject, in.Ohms, potentialCoil, commonPractice)
	}
	return contact(subject, in.Ohms, true, "the contact is open at rest: the start capacitor is cut off")
}

func coilOhms(subject string, v measure.Value, w window, source string) verdict.Verdict {
	out := begin(subject, v, w, "Ω", source)
	out.Caution = []string{caution.ProveDead, caution.Capacitor}
	switch {
	case v.Over:
		out.Word, out.Text = verdict.Failed, "the coil is open"
	case w.place(v) == inside:
		out.Word, out.Text = verdict.Sound, ohms(v.X)+" is typical of such a coil"
	default:
		out.Word, out.Text = w.advisoryWord(v), ohms(v.X)+" is not typical of such a coil: compare with its data sheet"
	}
	if out.Word != verdict.Sound {
		out.Fact = deviceFact(out.Word)
	}
	return out
}

// contact judges a contact that should be closed or open; wrong words what
// it means when it is certainly not.
func contact(subject string, v measure.Value, closed bool, wrong string) verdict.Verdict {
	w := atMost(contactOhms)
	out := begin(subject, v, w, "Ω", relaySource+"; 1 Ω "+commonPractice)
	out.Caution = []string{caution.ProveDead, caution.Capacitor}
	if !closed {
		out.Limit, out.Judged, out.Margin = "open", false, 0
	}
	isClosed := !v.Over && w.place(v) == inside
	switch {
	case closed && isClosed:
		out.Word, out.Text = verdict.Sound, "closed, as it must be"
	case !closed && v.Over:
		out.Word, out.Text = verdict.Sound, "open, as it must be"
	case closed && v.Over, !closed && isClosed:
		out.Word, out.Text = verdict.Failed, wrong
	case closed:
		out.Word, out.Text = w.advisoryWord(v), ohms(v.X)+" across a closed contact: short the probes, repeat, else burnt"
	default:
		out.Word, out.Text = verdict.Suspect, ohms(v.X)+" across an open contact: lift its wires and repeat"
	}
	if out.Word != verdict.Sound {
		out.Fact = deviceFact(out.Word)
	}
	return out
}

// CurrentRelayWhole joins the three readings that together prove a current
// relay; one of them alone can condemn it and cannot prove it.
func CurrentRelayWhole(name string, coil, upright, inverted measure.Value) verdict.Verdict {
	return whole(named("current relay", name),
		CurrentRelay(RelayIn{name, Coil, coil}),
		CurrentRelay(RelayIn{name, Contact, upright}),
		CurrentRelay(RelayIn{name, Inverted, inverted}))
}

// PotentialRelayWhole joins the two readings of a potential relay at rest. They
// condemn it and cannot clear it: whether it picks up, and at which volts, no
// ohm-meter sees (common practice).
func PotentialRelayWhole(name string, coil, rest measure.Value) verdict.Verdict {
	out := whole(named("potential relay", name)+" at rest",
		PotentialRelay(RelayIn{name, Coil, coil}),
		PotentialRelay(RelayIn{name, Contact, rest}))
	if out.Word == verdict.Sound {
		out.Text += "; whether it picks up is not tested"
		out.Fact = deviceFact(verdict.CannotTell)
	}
	return out
}

// whole takes the worst of the parts and is sound when every part is.
func whole(subject string, parts ...verdict.Verdict) verdict.Verdict {
	worst := parts[0]
	var seen []int
	for _, p := range parts {
		seen = append(seen, p.Entries...)
		if p.Word.Worse(worst.Word) {
			worst = p
		}
	}
	slices.Sort(seen)
	worst.Subject, worst.Entries = subject, slices.Compact(seen)
	worst.Fact = deviceFact(worst.Word)
	if worst.Word == verdict.Sound {
		worst.Text, worst.Limit = "coil and contact read as they must at rest", ""
		worst.Judged, worst.Margin = false, 0
	}
	return worst
}

// RelayCoil judges the coil of a relay of which nothing is known: only an open
// one is certainly bad.
func RelayCoil(name string, v measure.Value) verdict.Verdict {
	out := begin(named("relay coil", name), v, atMost(math.Inf(1)), "Ω", commonPractice)
	out.Limit, out.Caution = "finite", []string{caution.ProveDead}
	out.Word, out.Text = verdict.CannotTell, ohms(v.X)+"; whether that is right is on the relay's data sheet"
	if v.Over {
		out.Word, out.Text = verdict.Failed, "the coil is open"
	}
	return out
}
