package winding

import (
	"maps"

	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
)

// breakAt is where a machine of three pins can be open.
type breakAt int

const (
	inCommon breakAt = iota // the protector, or the wire to common
	inStart
	inRun
)

// broken pairs a naming with the place of one break.
type broken struct {
	naming
	at breakAt
}

// opens reports whether the break opens the pair i, j.
func (b broken) opens(i, j int) bool {
	pin := [3]int{b.c, b.s, b.r}[b.at]
	return i == pin || j == pin
}

// breaks lists the namings and single breaks that fit the readings so far.
func (x *three) breaks() []broken {
	var out []broken
	for _, n := range namings {
		for at := inCommon; at <= inRun; at++ {
			b := broken{n, at}
			fits := x.allowed(n)
			for i := range 3 {
				for j := i + 1; j < 3; j++ {
					fits = fits && (!x.t.has(i, j) || x.t.v(i, j).Over == b.opens(i, j))
				}
			}
			if fits {
				out = append(out, b)
			}
		}
	}
	return out
}

// wait is what to do about an open place: an open protector closes once it has
// cooled (common practice), so what is open cold is not waited for again.
func (in Input) wait(cold, hot string) string {
	switch {
	case in.Cold:
		return "Open though cold: " + cold + " (inferred); waiting again helps nothing."
	case in.Soon:
		return "Cold, and perhaps not for long: a protector opens before the outside is warm. Read again after a rest without power."
	case in.Again:
		return "Open still: if it is below " + measure.CoolWords + " by now, read it again with cold behind each pair; if not, wait on."
	}
	return hot
}

// judgeOpen judges readings with at least one open pair.
func (x *three) judgeOpen() {
	t, res := x.t, x.res
	res.Roles = maps.Clone(x.m.role)
	if n, ok := x.marked(); ok {
		res.Roles = x.roles(n)
	}
	res.Wanted = t.missing()
	open := x.others(func(i, j int) bool { return t.v(i, j).Over })
	switch {
	case t.known < 3:
		x.openSoFar(open)
		return
	case t.open == 3:
		x.allOpen()
		return
	case t.open == 1:
		res.State = DoesNotAddUp
		res.fact(FactTooHigh)
		through := x.others(func(i, j int) bool { return !t.v(i, j).Over })
		res.note("Contradiction: "+open+" although "+through+".",
			"Two pairs that read through make the third read through: a probe missed its contact. Read all again.")
		return
	}
	if x.tapped() {
		x.fanOpen(open)
		return
	}
	fits := x.breaks()
	var at [3]bool
	ns := make([]naming, 0, len(fits))
	for _, b := range fits {
		at[b.at] = true
		ns = append(ns, b.naming)
	}
	if len(ns) > 0 {
		res.Roles = x.shared(ns)
	}
	x.placed(at, open)
}

// lone is the pin that both open pairs share.
func (x *three) lone() string {
	for k := range 3 {
		if !x.t.v((k+1)%3, (k+2)%3).Over {
			return x.t.pins[k]
		}
	}
	return ""
}

// fanOpen reports a fan that may have taps: its open pairs tell less.
func (x *three) fanOpen(open string) {
	x.res.State = OpenUnplaced
	x.res.fact(FactOpenUnplaced)
	x.res.caution(caution.ProtectorStays)
	x.res.note("Open at "+x.lone()+", not placed: "+open+".",
		"The winding or the wire at "+x.lone()+" is open, or a protector there is.",
		x.in.wait("a protector failed open, or a winding or lead is open", "Let it cool below "+measure.CoolWords+" (touchable) and read again; look for markings."))
}

// placed reports two open pairs and one finite by where the break can be.
func (x *three) placed(at [3]bool, open string) {
	t, res := x.t, x.res
	finite := x.others(func(i, j int) bool { return !t.v(i, j).Over })
	lone := x.lone()
	switch at {
	case [3]bool{true, false, false}:
		res.State = OverloadOpen
		res.fact(FactProtector)
		res.caution(caution.ProtectorStays)
		res.note("The internal protector may be open: both pairs to common read open, start–run reads through.",
			x.in.wait("the protector failed open, or the lead to common is open", "Not proof of an open winding: let it cool below "+measure.CoolWords+" (touchable, can take hours) and read again."),
			"Readings: "+open+", "+finite+".")
	case [3]bool{false, true, false}, [3]bool{false, false, true}:
		w := "start"
		if at[inRun] {
			w = "run"
		}
		res.State = OpenWinding
		res.fact(FactOpen)
		res.note("The "+w+" winding is open: every pair with "+lone+" reads open, "+finite+" reads through.",
			"The protector is not the cause: it would leave start–run closed. Readings: "+open+", "+finite+".")
	default:
		res.State = OpenUnplaced
		through := !at[inCommon] && (at[inStart] || at[inRun])
		if through {
			res.fact(FactThrough)
		}
		if through && (x.in.Cold || x.in.Soon) { // what opens on heat is not in it
			res.State = OpenWinding
			res.fact(FactOpen)
			res.note("A winding is open at " + lone + ": " + open + ", " + finite + ".")
		} else {
			res.fact(FactOpenUnplaced)
			res.note("Open at " + lone + ", not placed: " + open + ", " + finite + ".")
		}
		for i, way := range [3]string{
			lone + " is common and the internal protector is open",
			lone + " is start and the start winding is open",
			lone + " is run and the run winding is open",
		} {
			if at[i] {
				res.note("Possible: " + way + ".")
			}
		}
		if through {
			res.note("A protector in common is closed: " + finite + " reads through it.")
		}
		if res.State == OpenWinding {
			res.note("A marking on start or run tells which.")
			return
		}
		res.note(x.in.wait("a protector failed open, or a winding or lead is open", "To part them: let it cool below "+measure.CoolWords+" (touchable) and read again; look for markings."))
	}
}

// allOpen reports three open pairs.
func (x *three) allOpen() {
	res := x.res
	if x.named() {
		res.State = OpenWinding
		res.fact(FactOpen)
		res.note("All three pairs read open: a winding is open; the protector alone would leave start–run closed.",
			"First make sure the probes touch bare metal and the meter is on ohms.")
		return
	}
	res.State = OpenUnplaced
	res.fact(FactOpenUnplaced)
	res.note("All three pairs read open, not placed.",
		"A single-phase machine has a winding open; a three-phase one may have its protector open (it opens all three).",
		x.in.wait("if the probes touch, windings, leads or protector", "Check the probes' contact; let it cool below "+measure.CoolWords+" (touchable) and read again; look for markings."))
}

// openSoFar answers while pairs are missing.
func (x *three) openSoFar(open string) {
	t, res := x.t, x.res
	p := res.Wanted[0]
	res.note("Open so far: " + open + ".")
	switch {
	case t.open == 2:
		res.Predictions = []Prediction{{Pair: p, Options: []Option{
			{Text: p.String() + " reads through: the pin outside it is cut off (protector, start or run open)."},
			{Text: p.String() + " reads open too: more than one place is open, or a three-phase protector."},
		}}}
	case t.known == 2:
		res.Predictions = []Prediction{{Pair: p, Certain: []string{
			p.String() + " must read open too: one of its ends is cut off, the other reads through.",
		}}}
	}
	for _, q := range res.Predictions {
		res.note(q.Certain...)
		for _, o := range q.Options {
			res.note(o.Text)
		}
	}
	res.Next = "read " + p.String()
	res.note("Wanted next: " + p.String() + ".")
}
