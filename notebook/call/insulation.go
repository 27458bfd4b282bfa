package call

import (
	"slices"

	"ohmcall/calc/judge"
	"ohmcall/calc/verdict"
)

// judgeCase judges a pin to the case. An ohm-meter and an insulation tester
// see different things, so the last reading of one does not undo what the last
// of the other found wrong: that is repeated by its own method.
func (c *Call) judgeCase(of, pin string, rs []*reading) verdict.Verdict {
	last := latest(rs)
	out := c.insulation(of, pin, last)
	rep := c.repairs()
	for i := len(rs) - 2; i >= 0 && phase(rep, rs[i].entry) == phase(rep, last.entry); i-- {
		other := rs[i]
		if (other.cond.test > 0) == (last.cond.test > 0) {
			continue
		}
		v := c.insulation(of, pin, other)
		// An ordinary meter that finds nothing adds nothing to a tester.
		stands := v.Word == verdict.Failed || other.cond.test > 0 && slices.Contains(out.Fact, "insulation-no-gross-fault")
		if out.Word != verdict.Failed && stands {
			v.Also = append(v.Also, "entry "+itoa(last.entry)+", "+last.shown()+" by another method, does not undo it")
			return v
		}
		break
	}
	return out
}

func (c *Call) insulation(of, pin string, r *reading) verdict.Verdict {
	if isHeater(of) {
		return judge.HeaterToCase(of, c.value(r), r.cond.test)
	}
	rule, house := c.insulationRule()
	return c.named(of, judge.Insulation(judge.InsulationIn{Pin: pin, Ohms: c.value(r), TestVolts: r.cond.test,
		RatedVolts: c.ratedVolts(), Rule: rule, HouseOhms: house}))
}
