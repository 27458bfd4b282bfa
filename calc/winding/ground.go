package winding

import (
	"slices"

	"ohmcall/calc/caution"
	"ohmcall/calc/judge"
)

// judgeCase looks at the readings from pin to case. A ground fault outranks
// every other state, because of what happens when the machine is energised.
func judgeCase(t *table, kind Kind, ratedVolts float64, res *Result) {
	var grounded, clear []string
	unread := false
	for i, c := range t.toCase {
		switch {
		case !c.known:
			unread = true
		case judge.Grounded(c.v, ratedVolts):
			grounded = append(grounded, t.pins[i]+"–case "+reads(c.v))
		case !judge.ClearOfGround(c.v, ratedVolts):
			unread = true // low, and not for the windings to judge
		case !slices.Contains(t.tested, t.pins[i]):
			clear = append(clear, t.pins[i])
		}
		if c.known {
			res.Proof = append(res.Proof, Reading{t.pins[i], Case, c.v})
		}
	}
	switch {
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
