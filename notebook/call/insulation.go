package call

import (
	"slices"
	"strings"

	"ohmcall/calc/judge"
	"ohmcall/calc/verdict"
)

// byMethod judges insulation by the last reading. An ohm-meter and an insulation
// tester see different things, so the last reading of one does not undo what the
// last of the other found wrong: that is repeated by its own method.
func (c *Call) byMethod(rs []*reading, says func(*reading) verdict.Verdict) verdict.Verdict {
	last := latest(rs)
	out := says(last)
	rep := c.repairs()
	for i := len(rs) - 2; i >= 0 && phase(rep, rs[i].entry) == phase(rep, last.entry); i-- {
		other := rs[i]
		if (other.cond.test > 0) == (last.cond.test > 0) {
			continue
		}
		v := says(other)
		// An ordinary meter that finds nothing adds nothing to a tester.
		stands := v.Word == verdict.Failed || other.cond.test > 0 && slices.ContainsFunc(out.Fact, noGrossFault)
		if out.Word != verdict.Failed && stands {
			v.Also = append(v.Also, "entry "+itoa(last.entry)+", "+last.shown()+" by another method, does not undo it")
			return v
		}
		break
	}
	return out
}

func noGrossFault(fact string) bool { return strings.HasSuffix(fact, "-no-gross-fault") }

func (c *Call) insulation(of, pin string, r *reading) verdict.Verdict {
	if isHeater(of) {
		return judge.HeaterToCase(of, c.value(r), r.cond.test)
	}
	rule, house := c.insulationRule()
	return c.named(of, judge.Insulation(judge.InsulationIn{Pin: pin, Ohms: c.value(r), TestVolts: r.cond.test,
		RatedVolts: c.ratedVolts(), Rule: rule, HouseOhms: house}))
}
