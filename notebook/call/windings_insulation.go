package call

import (
	"slices"
	"strings"

	"ohmcall/calc/judge"
	"ohmcall/calc/verdict"
	"ohmcall/calc/winding"
)

// byMethod judges insulation by the readings since the last repair. An ohm-meter
// and an insulation tester see different things, so what one finds good does not
// undo what the other found wrong: that is repeated by its own method. Nor does
// a better reading by the same method undo a worse one: both are of the same
// insulation, so it is in doubt until the wrong one is struck, work is written
// down, or a tester passes what an ohm-meter doubted.
func (c *Call) byMethod(rs []*reading, says func(*reading) verdict.Verdict) verdict.Verdict {
	rep := c.repairs()
	last := latest(rs)
	now := phase(rep, last.entry)
	var tested, ordinary []*reading
	for _, r := range rs {
		switch {
		case phase(rep, r.entry) != now:
		case r.cond.test > 0:
			tested = append(tested, r)
		default:
			ordinary = append(ordinary, r)
		}
	}
	mine, other := tested, ordinary
	if last.cond.test <= 0 {
		mine, other = ordinary, tested
	}
	out := lastingly(mine, says)
	if len(other) == 0 || out.Word == verdict.Failed {
		return out
	}
	v := lastingly(other, says)
	// An ordinary meter that finds nothing adds nothing to a tester.
	if v.Word == verdict.Failed || latest(other).cond.test > 0 && (v.Word == verdict.Suspect || slices.ContainsFunc(out.Fact, noGrossFault)) {
		v.Also = append(v.Also, "entry "+itoa(last.entry)+", "+last.shown()+" by another method, does not undo it")
		return v
	}
	return out
}

// lastingly is what readings by one method say: the last, unless one before it
// was worse.
func lastingly(rs []*reading, says func(*reading) verdict.Verdict) verdict.Verdict {
	out := says(latest(rs))
	for _, r := range rs[:len(rs)-1] {
		was := says(r)
		if verdict.Suspect.Worse(was.Word) || !was.Word.Worse(out.Word) {
			continue
		}
		out.Word, out.Judged = verdict.Suspect, false
		out.Text = r.shown() + " in entry " + itoa(r.entry) + " and " + latest(rs).shown() + " now: a better reading does not undo a worse one; strike the wrong one, or settle it with an insulation tester"
		out.Fact = []string{"insulation-suspect"}
		if slices.ContainsFunc(was.Fact, func(f string) bool { return strings.HasPrefix(f, "heater") }) {
			out.Fact = []string{"heater-insulation-suspect"}
		}
		out.Entries = append(slices.Clone(was.Entries), out.Entries...)
		out.Caution = was.Caution
		return out
	}
	return out
}

func noGrossFault(fact string) bool { return strings.HasSuffix(fact, "-no-gross-fault") }

func (c *Call) insulation(of, pin string, r *reading, before int) verdict.Verdict {
	if isHeater(of) {
		return judge.HeaterToCase(of, c.value(r), r.cond.test, c.appliance().Immersed)
	}
	rule, house := c.insulationRule()
	v := judge.Insulation(judge.InsulationIn{Pin: pin, Ohms: c.value(r), Floor: r.floor, TestVolts: r.cond.test,
		RatedVolts: c.ratedVolts(), Rule: rule, HouseOhms: house})
	if v.Word == verdict.Failed && r.cond.test <= 0 {
		if o, between := c.belies(r, before); o != nil {
			v.Word, v.Fact = verdict.Suspect, []string{"insulation-suspect"}
			v.Text = r.shown() + " here and " + o.shown() + " at " + o.a + " cannot both be, " + between.shown() + " lying between: do not energise, read again"
			v.Entries = append(v.Entries, o.entry, between.entry)
			slices.Sort(v.Entries)
			v.Entries = slices.Compact(v.Entries)
		}
	}
	return c.named(of, v)
}

// belies gives the pin to the case that belies a ground, and the pair by which the two
// hang together; nil when none does.
func (c *Call) belies(r *reading, before int) (other, between *reading) {
	for at := c.renewedBefore(r.of, before); r.entry < at; at = c.renewedBefore(r.of, at) {
		before = at // of the machine that it was read of
	}
	pairs := c.pairsOf(r.of, before)
	c.spend(20 * len(pairs))
	for _, o := range pairs {
		if o.b != caseName || o.a == r.a || o.cond.test > 0 {
			continue
		}
		_, p := c.pairBefore(pairKey(r.of, r.a, o.a), before)
		if p != nil && slices.Contains(pairs, p) && winding.CannotGround(c.value(r), c.value(o), c.value(p), c.ratedVolts()) {
			return o, p
		}
	}
	return nil, nil
}

// rejudgeCases judges the pins of a machine to its case anew where one is failed or in
// doubt: what hangs together with it may belie it now, or no more.
func (c *Call) rejudgeCases(of string, reply *Reply) {
	for _, key := range c.subjects {
		name, ok := strings.CutPrefix(key, "case\x00"+of+"\x00")
		if j := c.judged[key]; ok && j != nil && j.verdict.Word.Worse(verdict.CannotTell) {
			if j, changed := c.judge("case", of+"\x00"+name); changed {
				c.tellVerdict(j, reply)
			}
		}
	}
}
