package call

import (
	"math"
	"slices"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/calc/judge"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// splitNominal is taken between two legs when no plate gives their volts
// (ANSI C84.1, from memory).
const splitNominal = 240

// legOf names the leg whose volts to neutral a reading gives, "" for others.
// Above notLeg it is the phase of another system.
func legOf(r *reading) string {
	a, b := strings.ToUpper(r.a), strings.ToUpper(r.b)
	if a == "N" {
		a, b = b, a
	}
	if b != "N" || a != "L1" && a != "L2" || !r.over && r.x > notLeg {
		return ""
	}
	return a
}

// notLeg is the voltage to neutral above which no leg of a split-phase supply
// lies: half way between 120 and 230 V (common practice).
const notLeg = 175

// betweenLegs tells the volts between the two legs by the names of the points.
func betweenLegs(r *reading) bool {
	a, b := strings.ToUpper(r.a), strings.ToUpper(r.b)
	return a == "L1" && b == "L2" || a == "L2" && b == "L1"
}

// split reports whether the appliance is fed by both legs of a split-phase
// supply: by its plate, or when it has none by what it is called or by a second
// leg among the points.
func (c *Call) split() bool {
	if c.plateNumber("", "hz", "Hz") == 50 {
		return false
	}
	if v := c.ratedVolts(); v > 0 {
		return v > judge.TwoLegs
	}
	return fedByBoth(c.last("unit")) || slices.ContainsFunc(c.secondLeg, func(r *reading) bool { return c.alive(r.entry) })
}

// fedByBoth tells an appliance that both legs feed by what it is called (common
// practice for electric heat in a split-phase house).
func fedByBoth(unit string) bool {
	unit = strings.ToLower(unit)
	has := func(w string) bool { return strings.Contains(unit, w) }
	return slices.ContainsFunc([]string{"dryer", "oven", "range", "cooker", "cooktop", "stove", "hob", "water heater"}, has) && !has("gas") && !has("microwave")
}

// namesSecondLeg tells volts that only a supply of two legs can have.
func namesSecondLeg(r *reading) bool {
	return r.quality.word == "volt" && (betweenLegs(r) || legOf(r) == "L2")
}

// isLeg tells the volts of one leg to neutral at an appliance that is fed by
// both legs: they are not its supply.
func (c *Call) isLeg(r *reading) bool { return legOf(r) != "" && c.split() }

// judgeLeg judges one leg to neutral. A leg that is there says nothing of the
// other, so only a missing or low one is a fact.
func (c *Call) judgeLeg(rs []*reading) (verdict.Verdict, bool) {
	rs = c.notProvingDead(rs)
	if len(rs) == 0 {
		return verdict.Verdict{}, false
	}
	r := latest(rs)
	v := judge.Supply(judge.SupplyIn{Place: r.where(), Volts: c.value(r), Nominal: judge.LegNominal})
	var facts []string
	for _, f := range v.Fact {
		switch f {
		case "supply-absent":
			facts = append(facts, "leg-missing")
		case "supply-low":
			facts = append(facts, f)
		}
	}
	v.Fact = facts
	if c.neutralPoor() != "" {
		v.Fact, v.Also = nil, append(v.Also, "with the other leg: a poor or lost neutral (common practice); what one leg feeds gets its volts wrong")
	}
	return v, true
}

// neutralPoor is the step when the legs read as without a sound neutral.
func (c *Call) neutralPoor() string {
	l1, l2 := c.leg("L1", math.MaxInt), c.leg("L2", math.MaxInt)
	if l1 == nil || l2 == nil || min(l1.Entry, l2.Entry) <= c.lastMended() || !judge.NeutralPoor(*l1, *l2) {
		return ""
	}
	return "power off at its source and kept off: by " + number(l1.X) + " and " + number(l2.X) + " V to neutral that is poor or lost; an electrician or the utility mends it"
}

// farOver are the volts of the supply that are far too high, and a current in the earth,
// which were not mended since.
func (c *Call) farOver() []*judged {
	list := c.verdictsWith("supply-far-over")
	if j := c.judged[earthKey]; j != nil && j.verdict.Word == verdict.Failed {
		list = append(list, j)
	}
	return slices.DeleteFunc(list, func(j *judged) bool { return lastEntry(j.verdict) <= c.lastMended() })
}

// earthKey is the subject of the current in the protective earth, which is called so.
const earthKey = "amp\x00earth"

var earthed = []string{"earth", "ground"}

// neutralRead is by what readings of its legs a neutral is poor.
func (c *Call) neutralRead() string {
	l1, l2 := c.leg("L1", math.MaxInt), c.leg("L2", math.MaxInt)
	return number(l1.X) + " and " + number(l2.X) + " V from the legs (" + entryList(slices.Compact([]int{min(l1.Entry, l2.Entry), max(l1.Entry, l2.Entry)})) + ")"
}

// leg is the last reading of one leg to neutral before an entry, nil when
// there is none.
func (c *Call) leg(name string, before int) *measure.Value {
	list := c.bySubjectKind["leg"]
	c.spend(2 * len(list))
	for i := len(list) - 1; i >= 0; i-- {
		r := list[i]
		if r.entry < before && c.alive(r.entry) && legOf(r) == name && !c.provesDead(r) {
			v := c.value(r)
			return &v
		}
	}
	return nil
}

// legsWanted is the line for the legs that are still to be read to neutral where the
// volts between them do not say what is lost, "" when none is.
func (c *Call) legsWanted() string {
	j := c.judged[supplyKey]
	if j == nil || !among(j.verdict.Fact, "supply-undecided") || !c.split() || c.onThreePhases() {
		return ""
	}
	line := ""
	for _, leg := range []string{"L1", "L2"} {
		if c.leg(leg, math.MaxInt) == nil {
			line += ", " + leg + " N …"
		}
	}
	if line == "" {
		return ""
	}
	return "what each leg gives to neutral, a live test: volt" + line[1:]
}

// supplyLost is the step when the supply was read to be gone, all of it or one leg, and
// the complaint counts that among no causes: without it nothing else can be told.
func (c *Call) supplyLost(r *cause.Result) string {
	for _, j := range c.verdictsWith("leg-missing", "supply-absent") {
		code := "no-supply"
		if among(j.verdict.Fact, "leg-missing") {
			code = "leg-missing"
		}
		counts := slices.ContainsFunc(r.Standings, func(s cause.Standing) bool { return s.Cause.Code == code })
		if k, ok := cause.By(code); ok && !counts && j.verdict.Word == verdict.Failed && lastEntry(j.verdict) > c.lastMended() {
			return c.mending(&k) + atEntry(lastEntry(j.verdict))
		}
	}
	return ""
}

// mostSplit is more than two legs of a household's supply read (common practice).
const mostSplit = 300

// legsToN are the points from a leg to neutral.
var legsToN = []string{"L1–N", "L2–N", "N–L1", "N–L2"}

// atRest judges the supply without load: between the legs where the appliance
// is fed by both.
func (c *Call) atRest(r *reading, before int) verdict.Verdict {
	v, edition := c.value(r), c.last("edition")
	nominal := c.nominalVolts(v.X)
	if c.ratedVolts() == 0 && v.Lo > mostSplit {
		nominal = 0 // no household's: its plate must tell
	} else if betweenLegs(r) && nominal <= judge.TwoLegs && c.split() {
		nominal = splitNominal
	}
	var out verdict.Verdict
	if !c.split() || nominal <= judge.TwoLegs {
		out = judge.Supply(judge.SupplyIn{Volts: v, Nominal: nominal, Edition: edition})
	} else {
		in := judge.LegsIn{Pair: v, Nominal: nominal, Edition: edition}
		in.L1, in.L2 = c.leg("L1", before), c.leg("L2", before)
		in.Assumed = c.ratedVolts() == 0
		out = judge.Legs(in)
		if v.Lo > notLeg && among(legsToN, strings.ToUpper(r.where())) && (c.ratedVolts() == 0 || nominal == splitNominal) {
			return judge.NotHere("supply", r.shown()+" is what two legs have between them: a leg stands on the neutral, or the points were others", v)
		}
	}
	if among(out.Fact, "supply-usable") {
		if less := c.heatsLess(v, nominal); less != "" {
			out.Also = append([]string{less}, out.Also...)
		}
	}
	return out
}

// resubject puts the volts under the subjects that they have now: a plate or a
// second leg tells that what was taken for the supply is one leg of it. It reports
// whether anything changed.
func (c *Call) resubject() bool {
	if c.split() == c.wasSplit && c.onThreePhases() == c.wasPhased {
		return false
	}
	c.wasSplit, c.wasPhased = c.split(), c.onThreePhases()
	for _, kind := range voltKinds {
		for _, r := range c.bySubjectKind[kind] {
			delete(c.bySubject, kind+"\x00"+r.where())
			delete(c.bySubject, kind+"\x00"+strings.ToUpper(r.a[:1]))
		}
		c.bySubjectKind[kind] = nil
	}
	delete(c.bySubject, supplyKey)
	for _, r := range c.readings {
		if kind, name := c.subject(r); among(voltKinds, kind) {
			c.file(r, kind, name)
		}
	}
	// What they are subjects of now is judged, and told, with all others.
	for _, kind := range append([]string{phasesKind, legAmpsKind, starKind}, "leg", "supply") {
		for _, r := range c.bySubjectKind[kind] {
			if k, name := c.subject(r); c.judged[k+"\x00"+name] == nil {
				c.judging(k + "\x00" + name)
			}
		}
	}
	return true
}

// voltKinds are the kinds of subject that a plate moves volts between.
var voltKinds = []string{"leg", starKind, "supply", "volt", phasesKind, "amp", legAmpsKind}

// supplyKey is the subject of the supply.
const supplyKey = "supply\x00line"
