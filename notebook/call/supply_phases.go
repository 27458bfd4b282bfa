package call

import (
	"slices"
	"sort"
	"strings"
	"time"

	"ohmcall/calc/judge"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
	"ohmcall/notebook/said"
)

// phasesKind is the kind of subject of the volts between three legs.
const phasesKind = "phases"

// onThreePhases reports whether the machine is on three phases, by its plate, by
// what it is called, or, where its plate tells no type, because three legs were read
// against each other.
func (c *Call) onThreePhases() bool {
	m, is := &c.phased, c.appliance()
	if m.plates == len(c.plates) && m.struck == len(c.struck) && m.is == is && m.legs == c.legsRead() {
		return m.three
	}
	c.spend(1000 + len(c.plates))
	*m = phased{len(c.plates), len(c.struck), c.legsRead(), is, is.ThreePhases}
	m.three = m.three || slices.ContainsFunc(c.plates, func(p plate) bool { return p.key == "type" && p.text == said.ThreePhase && c.alive(p.entry) })
	m.three = m.three || m.legs > 2 && (c.threeLegs("L") || c.threeLegs("T")) && !slices.ContainsFunc(c.plates, func(p plate) bool { return p.key == "type" && c.alive(p.entry) })
	return m.three
}

// legsRead is of how many readings that can make three phases something was read.
func (c *Call) legsRead() (n int) {
	for _, of := range c.legReads {
		n += len(of)
	}
	return n
}

// threeLegs reports whether each pair of three legs was read.
func (c *Call) threeLegs(name string) bool {
	for _, p := range []string{"1 " + name + "2", "2 " + name + "3", "1 " + name + "3"} {
		if c.lastOf(c.legReads[name+p], c.entry) == 0 {
			return false
		}
	}
	return true
}

// phased is what onThreePhases rests on.
type phased struct {
	plates, struck, legs int
	is                   *said.Appliance
	three                bool
}

// legPairs are the pairs of three legs by what they are called, and the leg that
// each leaves out: L1 to L3 are those of the supply, the others the machine's.
var legPairs = map[string]string{"L1 L2": "L3", "L2 L3": "L1", "L1 L3": "L2", "T1 T2": "T3", "T2 T3": "T1", "T1 T3": "T2", "U V": "W", "V W": "U", "U W": "V"}

// legPair is the pair of legs that volts were read between, in order, "" when
// they are none of a machine on three phases.
func (c *Call) legPair(r *reading) string {
	if p := pairOfLegs(r); legPairs[p] != "" && c.onThreePhases() {
		return p
	}
	return ""
}

// pairOfLegs are the points of a reading in order.
func pairOfLegs(r *reading) string {
	a, b := strings.ToUpper(r.a), strings.ToUpper(r.b)
	if a > b {
		a, b = b, a
	}
	return a + " " + b
}

// judgePhases judges the volts between three legs once each pair was read.
func (c *Call) judgePhases(name string, rs []*reading) (verdict.Verdict, bool) {
	in := judge.PhasesIn{Machine: name != "L", Called: latest(rs).cond.is("run"), Place: name + "1 " + name + "2 " + name + "3"}
	if name == "U" {
		in.Place = "U V W"
	}
	var pairs []string
	for i := len(rs) - 1; i >= 0; i-- {
		p := c.legPair(rs[i])
		if p == "" || among(pairs, p) || c.provesDead(rs[i]) || phase(c.repairs(), rs[i].entry) != phase(c.repairs(), latest(rs).entry) {
			continue
		}
		in.Pairs[len(pairs)], in.Names[len(pairs)] = c.value(rs[i]), legPairs[p]
		if pairs = append(pairs, p); len(pairs) == 3 {
			in.Nominal = c.nominalVolts(in.Pairs[0].X)
			return judge.Phases(in), true
		}
	}
	return verdict.Verdict{}, false
}

// starKind is the kind of subject of one leg of three to neutral.
const starKind = "star"

// toNeutral names the leg of three that volts to neutral were read of, "" for others.
func (c *Call) toNeutral(r *reading) string {
	a, b := strings.ToUpper(r.a), strings.ToUpper(r.b)
	if a == "N" {
		a, b = b, a
	}
	if b == "N" && among([]string{"L1", "L2", "L3"}, a) && c.onThreePhases() {
		return a
	}
	return ""
}

// judgeStar judges one leg of three to neutral.
func (c *Call) judgeStar(rs []*reading) (verdict.Verdict, bool) {
	if rs = c.notProvingDead(rs); len(rs) == 0 {
		return verdict.Verdict{}, false
	}
	r, rep := latest(rs), c.repairs()
	in := judge.StarIn{Place: r.where(), Volts: c.value(r), Between: c.ratedVolts()}
	in.OthersAreThere = slices.ContainsFunc(c.bySubjectKind[starKind], func(o *reading) bool {
		c.spend(20)
		return c.alive(o.entry) && c.toNeutral(o) != c.toNeutral(r) && phase(rep, o.entry) == phase(rep, r.entry) && !o.over && c.value(o).Lo > judge.LegNominal/2
	})
	return judge.Star(in), true
}

// legAmpsKind is the kind of subject of the currents in the legs of a motor.
const legAmpsKind = "leg-amps"

// legOfMotor names the legs that one of a motor on three phases is among, by the
// first letter or leg; "" for others.
func (c *Call) legOfMotor(name string) string {
	name = strings.ToUpper(name)
	switch {
	case !c.onThreePhases():
	case among([]string{"L1", "L2", "L3", "T1", "T2", "T3"}, name):
		return name[:1]
	case among([]string{"U", "V", "W"}, name):
		return "U"
	}
	return ""
}

// judgeLegAmps judges the currents of the legs by the last reading of each, in
// the phase of the call of the last.
func (c *Call) judgeLegAmps(rs []*reading) (verdict.Verdict, bool) {
	last := latest(rs)
	var legs []*reading
	for i := len(rs) - 1; i >= 0; i-- {
		r := rs[i]
		if phase(c.repairs(), r.entry) == phase(c.repairs(), last.entry) &&
			!slices.ContainsFunc(legs, func(o *reading) bool { return strings.EqualFold(o.a, r.a) }) {
			legs = append(legs, r)
		}
	}
	if len(legs) == 1 {
		return c.judgeAmp(last.a, last), true
	}
	sort.Slice(legs, func(i, k int) bool { return strings.ToUpper(legs[i].a) < strings.ToUpper(legs[k].a) })
	in := judge.LegAmpsIn{AmpsIn: c.ampsIn(last.a, last)}
	for _, r := range legs[:min(len(legs), 3)] {
		in.Legs, in.Names = append(in.Legs, c.value(r)), append(in.Names, strings.ToUpper(r.a))
	}
	out := judge.LegAmps(in)
	if len(out.Fact) == 0 {
		out.Fact = []string{"amps-undecided"}
	}
	return out, true
}

// splitKind is the kind of subject of the air of an air conditioner.
const splitKind = "split"

// airTaken and airGiven are what its temperatures are called.
var airTaken, airGiven = []string{"return", "intake", "air-in"}, []string{"supply", "vent", "air-out"}

// ofAir tells a temperature of the air that an air conditioner takes in or gives
// out.
func (c *Call) ofAir(r *reading) bool {
	a := strings.ToLower(r.a)
	return (among(airTaken, a) || among(airGiven, a)) && c.appliance().Air
}

// airFor is how far apart in time temperatures of the air are that are told against each
// other: of a room that was read hours ago nothing follows (common practice).
const airFor = 30 * time.Minute

// airPair are the last temperatures of the air taken in and given out that belong
// together by work and time, nil when none do.
func (c *Call) airPair(rs []*reading) (in, out *reading) {
	rep := c.repairs()
	taken := func(r *reading) bool { return among(airTaken, strings.ToLower(r.a)) }
	now := phase(rep, latest(rs).entry)
	for i := len(rs) - 1; i > 0 && phase(rep, rs[i].entry) == now; i-- {
		for k := i - 1; k >= 0 && phase(rep, rs[k].entry) == now; k-- {
			c.spend(10)
			if taken(rs[i]) == taken(rs[k]) || c.timePassed(rs[k].entry, rs[i].entry) > airFor {
				continue
			}
			if taken(rs[i]) {
				return rs[i], rs[k]
			}
			return rs[k], rs[i]
		}
	}
	return nil, nil
}

// judgeSplit judges the air by that pair.
func (c *Call) judgeSplit(rs []*reading, before int) (verdict.Verdict, bool) {
	in, out := c.airPair(rs)
	if in == nil {
		return verdict.Verdict{}, false
	}
	v, by := verdict.Verdict{}, c.heating(c.byOne(in), c.byOne(out), before)
	if by == "" {
		v = judge.AirSplit(c.byOne(in), c.byOne(out))
	} else {
		v = judge.AirRise(c.byOne(in), c.byOne(out))
		v.Text += "; taken as heating by " + by
		if slices.Contains(v.Fact, "rise-cooled") && c.lastOf(c.seenAt["set-to-heat"], before-1) == 0 {
			v.Fact = []string{"rise-small"} // it may be set to cool
		}
	}
	c.partLoad(&v)
	return v, true
}

// heating says by what a machine is taken, before an entry, to heat the air, "" when it is taken to
// cool it: by what was seen of its setting last, by the complaint, else by the air
// itself.
func (c *Call) heating(in, out measure.Value, before int) string {
	heat, cool := c.lastOf(c.seenAt["set-to-heat"], before-1), c.lastOf(c.seenAt["set-to-cool"], before-1)
	switch {
	case heat > cool:
		return "entry " + itoa(heat)
	case cool > 0 || !c.appliance().HeatPump || c.complaint() == said.ACWarm:
		return ""
	case c.complaint() == said.NoHeatPump:
		return "the complaint; saw set to cool changes it"
	case out.Lo > in.Hi:
		return "the air, which a heat pump gives out warmer only when it heats (inferred); saw set to cool changes it"
	}
	return ""
}

// byOne is a temperature beside another one of the same thermometer: its own
// error falls out of their difference, what it does not show stays (common
// practice).
func (c *Call) byOne(r *reading) measure.Value {
	v := c.value(r)
	if !r.rough && !r.over && r.res > 0 {
		v.Lo, v.Hi = max(v.Lo, v.X-r.res), min(v.Hi, v.X+r.res)
	}
	return v
}
