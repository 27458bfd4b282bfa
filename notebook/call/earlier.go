package call

import "cmp"

// compareWithEarlier points out a value far from an earlier one of the same
// points: a factor of ten is likelier a slip than a change. Pairs of a
// machine are compared by the winding engine too, within meter limits.
func (c *Call) compareWithEarlier(r *reading, reply *Reply) {
	prev, _ := c.last2(r.key())
	if prev == nil || prev == r || prev.entry <= c.renewedAt(cmp.Or(r.of, r.a)) {
		return
	}
	if prev.over && readsCold(r) && !readsCold(prev) {
		return // it has cooled: that an open pair reads through now is no slip
	}
	if prev.cond.test != r.cond.test {
		return // an insulation tester sees what an ohm-meter does not
	}
	if prev.over != r.over {
		counts := "both stand, the last counts"
		if r.b == caseName {
			counts = "both stand"
		}
		reply.add(Warn, r.where()+" was "+prev.shown()+" in entry "+itoa(prev.entry)+" and is "+r.shown()+" now; "+counts+".").flag("jump")
		return
	}
	if r.over || r.quality.word == "temp" {
		return
	}
	was, now := c.value(prev).X, c.value(r).X
	if was <= 0 || now <= 0 {
		return
	}
	if f := now / was; f > 8 && f < 12.5 || f > 0.08 && f < 0.125 {
		reply.add(Warn, r.where()+" was "+prev.shown()+" in entry "+itoa(prev.entry)+": this is about "+tenfold(f)+". If it is a slip: strike "+itoa(r.entry)+` "slip"`).flag("tenfold")
	}
}

func tenfold(f float64) string {
	if f > 1 {
		return "ten times that"
	}
	return "a tenth of that"
}
