package call

import (
	"slices"
	"strings"

	"ohmcall/calc/judge"
	"ohmcall/calc/verdict"
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

func (c *Call) insulation(of, pin string, r *reading) verdict.Verdict {
	if isHeater(of) {
		return judge.HeaterToCase(of, c.value(r), r.cond.test, c.appliance().Immersed)
	}
	rule, house := c.insulationRule()
	return c.named(of, judge.Insulation(judge.InsulationIn{Pin: pin, Ohms: c.value(r), Floor: r.floor, TestVolts: r.cond.test,
		RatedVolts: c.ratedVolts(), Rule: rule, HouseOhms: house}))
}
