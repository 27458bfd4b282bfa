package winding

import (
	"slices"

	"ohmcall/calc/caution"
	"ohmcall/calc/judge"
	"ohmcall/calc/measure"
)

// driftShare is how many times more a path of leakage may read from one moment to the
// next (common practice).
const driftShare = 2

// CannotGround reports whether a pin that reads a ground to the case is belied by
// another that reads none by an ohm-meter, as the two hang together by the ohms between them: to a third
// point no two read further apart than they are (the triangle of resistances).
func CannotGround(pin, other, between measure.Value, ratedVolts float64) bool {
	return !between.Over && judge.Grounded(pin, ratedVolts) && !judge.Grounded(other, ratedVolts) &&
		(other.Over || other.Lo > driftShare*(pin.Hi+between.Hi))
}

// belied gives the pin that belies a ground read at another, -1 when none does. What
// breaks down under an insulation tester is not of ohms.
func (t *table) belied(i int, ratedVolts float64) int {
	for j, o := range t.toCase {
		if j != i && o.known && t.has(i, j) && !slices.Contains(t.tested, t.pins[i]) && !slices.Contains(t.tested, t.pins[j]) &&
			CannotGround(t.toCase[i].v, o.v, t.v(i, j), ratedVolts) {
			return j
		}
	}
	return -1
}

// judgeCase looks at the readings from pin to case. A ground fault outranks
// every other state, because of what happens when the machine is energised.
func judgeCase(t *table, kind Kind, ratedVolts float64, res *Result) {
	var grounded, clear []string
	unread, apart := false, ""
	for i, c := range t.toCase {
		if c.known {
			res.Proof = append(res.Proof, Reading{t.pins[i], Case, c.v})
		}
		switch {
		case !c.known:
			unread = true
		case judge.Grounded(c.v, ratedVolts):
			if j := t.belied(i, ratedVolts); j >= 0 {
				unread, apart = true, "Contradiction: "+t.pins[i]+"–case "+reads(c.v)+" and "+t.pins[j]+"–case "+reads(t.toCase[j].v)+", though "+t.says(i, j)+
					". Do not energise it: bare a clean spot of the shell, read each pin to it again."
				continue
			}
			grounded = append(grounded, t.pins[i]+"–case "+reads(c.v))
		case !judge.ClearOfGround(c.v, ratedVolts):
			unread = true // low, and not for the windings to judge
		case !slices.Contains(t.tested, t.pins[i]):
			clear = append(clear, t.pins[i])
		}
	}
	switch {
	case len(grounded) == 0 && apart != "":
		res.note(apart)
		res.caution(caution.NeverEnergise)
	case len(grounded) > 0:
		text := []string{"Grounded: " + list(grounded, "and") + ". Never energise it."}
		res.caution(caution.NeverEnergise)
		if kind == Compressor || kind == Unknown {
			text = append(text, "Do not stand in line with its terminals: they can blow out.")
			res.caution(caution.TerminalsPressed)
		}
		if res.State != Incomplete && res.State != Sound && len(res.Notes) > 0 {
			text = append(text, "Besides: "+res.Notes[0])
			res.Notes = res.Notes[1:]
		}
		res.Notes = append(text, res.Notes...)
		res.State = Grounded
		res.Facts = slices.DeleteFunc(res.Facts, func(f string) bool { return f == FactSound })
		res.fact(FactGrounded)
	case len(clear) > 0:
		res.note("No gross fault to the case at " + list(clear, "and") + "; an ohm-meter cannot prove insulation.")
		if !unread {
			res.fact(FactNoGround)
		}
	}
}

// wantCase asks for each pin to the case once the pairs are read and nothing
// else has to come first.
func wantCase(t *table, res *Result) {
	if len(res.Wanted) > 0 || res.State == Incomplete || res.State == NotAWinding || t.known == 0 {
		return
	}
	pins := make([]string, 0, len(t.pins))
	res.Wanted = make([]Pair, 0, len(t.pins))
	told := func(pin string) bool { // of a winding of which both ends come out, one tells
		j := slices.Index(t.pins, OtherEnd(pin))
		return j >= 0 && (t.toCase[j].known || slices.Contains(pins, t.pins[j]))
	}
	for i, c := range t.toCase {
		if !c.known && !told(t.pins[i]) {
			res.Wanted = append(res.Wanted, Pair{t.pins[i], Case})
			pins = append(pins, t.pins[i])
		}
	}
	if len(pins) > 0 {
		if res.Next == "" {
			res.Next = "read " + list(pins, "and") + " to case"
		}
		res.note("Still wanted: " + list(pins, "and") + " to case.")
	}
}
