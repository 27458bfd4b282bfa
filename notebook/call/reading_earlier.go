package call

import (
	"cmp"
	"math"
)

// compareWithEarlier points out a value far from an earlier one of the same
// points: a factor of ten is likelier a slip than a change. Pairs of a
// machine are compared by the winding engine too, within meter limits.
func (c *Call) compareWithEarlier(r *reading, reply *Reply) {
	prev, _ := c.last2(r.key())
	if prev == nil || prev == r || prev.entry <= c.renewedAt(cmp.Or(r.of, r.a)) {
		return
	}
	if prev.cond.state() != r.cond.state() {
		return // two positions are two states of the part
	}
	for _, b := range breakers {
		if breaks(r, b.places) && prev.entry <= c.renewedBreaker(b.words) {
			return
		}
	}
	if prev.over && readsCold(r) && !readsCold(prev) {
		return // it has cooled: that an open pair reads through now is no slip
	}
	if r.quality.word == "volt" && c.onSecond(c.secondSupply(c.entry), r.entry) && prev.entry < c.secondSupply(c.entry) {
		return // it is another supply
	}
	if r.quality.word == "ohm" && c.closesLater(prev, r) && r.entry <= c.closedSince(r.of, math.MaxInt) {
		reply.add(Ask, was(prev, r)+" and reads through "+number(math.Round(r.at.Sub(prev.at).Minutes()))+" minutes later: a protector that has cooled closes (inferred). What is still open is read again too.")
		return
	}
	if kind, name := c.subject(r); kind == "part" && partOf(name).words[0] == "overload" && c.overloadReset(name, math.MaxInt) {
		reply.add(Plain, was(prev, r)+" and closed "+number(math.Round(r.at.Sub(prev.at).Minutes()))+" minutes later: it has cooled (inferred).")
		return
	}
	if prev.cond.test != r.cond.test {
		return // an insulation tester sees what an ohm-meter does not
	}
	if prev.over != r.over {
		counts := "both stand, the last counts"
		if r.b == caseName {
			counts = "both stand"
		}
		c.jumped(prev, r)
		reply.add(Warn, was(prev, r)+" and is "+r.shown()+" now; "+counts+".").flag("jump")
		return
	}
	if r.over {
		return
	}
	if f := digitsMoved(prev, r); f != "" {
		c.jumped(prev, r)
		tellShift(prev, r, f+", the same digits", reply)
		return
	}
	if r.quality.word == "temp" {
		return // which may well be ten times as many degrees
	}
	if r.quality.word == "amp" && (prev.cond.is("run") != r.cond.is("run") || c.isLocked(prev) != c.isLocked(r)) {
		return // what a locked rotor draws is some ten times what it runs at
	}
	was, now := c.value(prev).X, c.value(r).X
	if was <= 0 || now <= 0 {
		return
	}
	if r.quality.word == "volt" && isLine(r) && prev.cond.String() == r.cond.String() && min(was, now) > deadVolts && math.Abs(now-was) > supplyJump*max(was, now) {
		c.jumped(prev, r)
	}
	if f := max(now/was, was/now); f > tenfoldLeast && f < tenfoldMost {
		c.jumped(prev, r)
		tellShift(prev, r, "about "+tenfold(now/was), reply)
	}
}

// was says what an earlier reading of the same points was.
//
//go:noinline
func was(prev, r *reading) string {
	return r.where() + " was " + prev.shown() + " in entry " + itoa(prev.entry)
}

// tellShift points out a value whose point may be in the wrong place.
//
//go:noinline
func tellShift(prev, r *reading, is string, reply *Reply) {
	reply.add(Warn, was(prev, r)+": this is "+is+". If it is a slip: strike "+itoa(r.entry)+` "slip"`).flag("tenfold")
}

// digitsMoved says of a reading with the digits of an earlier one, a hundred or a
// thousand times as much or as little, how much it is; "" of any other.
func digitsMoved(prev, r *reading) string {
	was, unit, _ := prev.q.Shown()
	now, same, _ := r.q.Shown()
	if r.quality.word != "temp" {
		was, now, same = prev.x, r.x, unit
	}
	if was*now <= 0 || unit != same {
		return ""
	}
	f := now / was
	switch {
	case near(f, 100), near(f, 1000):
		return number(math.Round(f)) + " times that"
	case near(1/f, 100), near(1/f, 1000):
		return "a " + number(math.Round(1/f)) + "th of that"
	}
	return ""
}

//go:noinline
func near(x, to float64) bool { return math.Abs(x/to-1) < smallShare }

// smallShare is what rounding makes of one value typed with its point elsewhere.
const smallShare = 1e-9 // of the arithmetic: common practice

// A slip of the decimal point is about ten times off, give or take what the value
// itself may have changed meanwhile (common practice).
const (
	tenfoldLeast = 8    // common practice
	tenfoldMost  = 12.5 // common practice
)

// jump is a reading that cannot be of the same thing as an earlier one.
type jump struct {
	was, entry int
	text       string
}

// jumped notes it for whoever reads the record.
func (c *Call) jumped(prev, r *reading) {
	c.jumps = append(c.jumps, jump{prev.entry, r.entry, r.where() + " read " + prev.shown() + atEntry(prev.entry) + " and " + r.shown() + atEntry(r.entry) + ", and neither is struck"})
}

// supplyJump is by which part of itself a supply changes between two readings at
// rest only when one of them is wrong or the supply is: more than any range of
// ANSI C84.1 is wide (from memory).
const supplyJump = 0.2

// isLocked reports whether amps are judged to be those of a locked rotor.
func (c *Call) isLocked(r *reading) bool {
	return among(c.judgeAmp(r.a, r).Fact, "amps-locked-rotor")
}

func tenfold(f float64) string {
	if f > 1 {
		return "ten times that"
	}
	return "a tenth of that"
}
