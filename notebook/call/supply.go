package call

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/calc/caution"
	"ohmcall/calc/judge"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
	"ohmcall/notebook/said"
)

// A plate names the volts of use, up to a tenth below those of the system: 110 or
// 115 V, and the 127 V of some, stand for 120 V, 220 V for 230 V (ANSI C84.1 and
// IEC 60038, from memory). A plate of 208-230 V fits both systems, and the reading
// tells which, half way between them.
var (
	systems  = [][2]float64{{110, 120}, {115, 120}, {127, 120}, {220, 230}} // ANSI C84.1, IEC 60038, from memory
	twoFit   = [2]float64{208, 230}                                         // ANSI C84.1, from memory
	oneOfTwo = [2]float64{208, 240}                                         // ANSI C84.1, from memory
)

// Without a plate volts of householdLeast to householdMost are those of a 120 V
// system, and a place is judged by householdPlate: what plates of such machines
// say (common practice).
const (
	household      = 120 // ANSI C84.1, from memory
	householdLeast = 100 // common practice
	householdMost  = 135 // common practice
	householdPlate = 115 // common practice
)

// nominalVolts is the nominal voltage of the supply that a plate speaks of;
// without a plate, 120 V is taken when the reading v speaks for it.
func (c *Call) nominalVolts(v float64) float64 {
	if volts := c.ratedVolts(); volts > 0 && c.last("edition") == "plate" {
		return volts
	}
	nominal := c.ratedVolts()
	for _, s := range systems {
		if s[0] == nominal {
			return s[1]
		}
	}
	switch {
	case nominal == 0 && v >= householdLeast && v <= householdMost:
		return household
	case nominal > twoFit[0] && nominal < twoFit[1]:
		if v < (oneOfTwo[0]+oneOfTwo[1])/2 {
			return oneOfTwo[0]
		}
		return oneOfTwo[1]
	default:
		return nominal
	}
}

// noHeatAtAll reports whether the complaint is of a heater that gives no heat, and
// not too little of it.
func (c *Call) noHeatAtAll() bool {
	return c.complaint() == "no-heat" && len(c.seenAt["heats-slowly"]) == 0 && !among(c.appliance().Heard, "heats-slowly") && !said.Has(c.last("fault"), tooLittle)
}

// tooLittle are words of a heater that heats, and not enough.
var tooLittle = []string{"slow", "long", "forever", "lukewarm", "luke warm", "not hot enough", "weak", "tepid"}

// heatsLess says what a low supply leaves of a heater's watts, "" for what is no heater.
func (c *Call) heatsLess(v measure.Value, nominal float64) string {
	if k := c.complaint(); k != "no-heat" && k != "slow-dry" {
		return ""
	}
	nominal = cmp.Or(c.ratedVolts(), nominal)
	return "a heater made for " + number(nominal) + " V gives " + number(math.Round(100*v.X*v.X/nominal/nominal)) + " % of its watts on it: slow, not none"
}

// sag judges the fall from the volts at rest to those under load.
func (c *Call) sag(rest, load *reading, place string) verdict.Verdict {
	in := judge.SagIn{Place: place, NoLoad: c.value(rest), Loaded: c.value(load), Starting: !load.cond.is("run")}
	if rest.res == load.res {
		in.CountsHalf = c.meterFor("volt").Counts * rest.res
	}
	return judge.Sag(in)
}

// restAndLoad are the last volts of the supply at rest, and the last under load
// with those at rest before it: what was read at rest later may be another
// outlet's. Of a load from before a repair nothing is said beside a later rest.
func (c *Call) restAndLoad(rs []*reading) (rest, before, load *reading) {
	var last *reading
	for _, r := range rs {
		if starting(r) || r.cond.is("run") {
			before, load = last, r
			if last != nil && c.supplyWorked(last.entry, r.entry) {
				before = nil
			}
		} else {
			last = r
		}
	}
	if last != nil && load != nil && phase(c.repairs(), last.entry) > phase(c.repairs(), load.entry) {
		return last, nil, nil
	}
	return last, before, load
}

// supplyWorked reports whether work between two entries was on the cord, the outlet
// or the supply: what was read at rest before it is of another one.
func (c *Call) supplyWorked(from, to int) bool {
	rep := c.repairs()
	if phase(rep, from) == phase(rep, to) {
		return false
	}
	c.spend(10 * len(c.done))
	for _, w := range c.done {
		if w.entry > from && w.entry < to && c.alive(w.entry) {
			if c.spend(2000); cause.Mends("supply-weak", w.text) {
				return true
			}
		}
	}
	return false
}

// judgeSupply judges the volts at rest, or the sag when volts at start were
// read too.
func (c *Call) judgeSupply(rs []*reading, before int) (verdict.Verdict, bool) {
	rs = c.ofOneSupply(c.notProvingDead(rs), before)
	rest, unloaded, load := c.restAndLoad(rs)
	switch {
	case rest == nil && load == nil:
		return verdict.Verdict{}, false
	case rest == nil && starting(load): // the surge pulls down what is sound
		v := c.value(load)
		if out := judge.AtStart(judge.SupplyIn{Volts: v, Nominal: c.nominalVolts(v.X), Edition: c.last("edition")}); out.Word == verdict.Sound && !c.split() {
			return out, true
		}
		at := strings.ReplaceAll(load.where(), "–", " ")
		return verdict.Verdict{Subject: "supply at start", Word: verdict.CannotTell, Entries: []int{load.entry}, Source: "common practice",
			Fact: []string{"sag-undecided"}, Text: load.shown() + " is no fall by itself: read it at rest first, volt " + at + " …, " + at + " … start"}, true
	case rest == nil: // at work the volts have to be there
		out := c.atRest(load, before)
		if among(out.Fact, "supply-low") {
			out.Also = append(out.Also, "read under load; at rest as well, it tells a low supply from one that falls")
		}
		return out, true
	}
	out := c.atRest(rest, before)
	if load == nil || unloaded == nil {
		return out, true
	}
	sag := c.sag(unloaded, load, "")
	if c.startAtMachine(before) != nil {
		// What falls before the machine is judged there.
		sag.Fact = nil
	}
	sag.Fact = append(sag.Fact, out.Fact...)
	if out.Word.Worse(sag.Word) {
		out.Fact, out.Entries = sag.Fact, append(out.Entries, sag.Entries...)
		out.Also = append(out.Also, sag.Text)
		return out, true
	}
	sag.Also = append([]string{"at rest: " + out.Text}, sag.Also...)
	return sag, true
}

// notProvingDead leaves out the readings that prove the unit dead.
func (c *Call) notProvingDead(rs []*reading) []*reading {
	return slices.DeleteFunc(slices.Clone(rs), c.provesDead)
}

// provesDead tells volts near zero on a unit that was made safe: they prove it
// dead and say nothing of the supply.
func (c *Call) provesDead(r *reading) bool {
	if r.over || c.value(r).Hi >= deadVolts || !c.deadAt(r.entry-1) {
		return false
	}
	// One low reading after another is no proof but a supply that is not there.
	return c.entries[c.lastOf(c.dead, r.entry-1)-1].Kind != "volt"
}

// atMachine tells a place that is the machine itself: of a complaint about a
// motor also by its own name, as in `volt pump 118 run`.
func (c *Call) atMachine(r *reading) bool {
	a := strings.ToLower(r.a)
	return strings.HasPrefix(a, "comp") || strings.HasPrefix(a, "motor") ||
		(c.complaint() == said.MotorDead || c.complaint() == said.NoDrain) && strings.EqualFold(a, c.mainMachine())
}

// startAtMachine is the last reading of the volts at the machine while it
// tries to start, nil when there is none.
func (c *Call) startAtMachine(before int) *reading {
	c.spend(6 * len(c.readings))
	for i := len(c.readings) - 1; i >= 0; i-- {
		if r := c.readings[i]; r.quality.word == "volt" && r.entry < before && c.alive(r.entry) && c.atMachine(r) && !r.over && starting(r) {
			return r
		}
	}
	return nil
}

//go:noinline
func starting(r *reading) bool { return r.cond.is("start") || r.cond.is("peak") }

// judgeVolt judges volts at a machine: whether it is fed, and how far they
// fall while it tries to start. Volts near zero elsewhere prove a part dead
// and are no verdict.
func (c *Call) judgeVolt(rs []*reading, before int) (verdict.Verdict, bool) {
	r := latest(rs)
	if isPilotPower(r.a) {
		return judge.Thermocouple(strings.ToLower(r.a), c.value(r)), true
	}
	if v, ok := c.judgeAcross(r); ok {
		return v, true
	}
	if v, ok := c.judgeControl(r); ok {
		return v, true
	}
	fed, unfed := c.feedFacts(r)
	if c.value(r).Over || fed == "" {
		return verdict.Verdict{}, false
	}
	if c.atMachine(r) && c.driven(c.mainMachine()) {
		return verdict.Verdict{Subject: "volts at " + r.where(), Word: verdict.CannotTell, Entries: []int{r.entry}, Source: "common practice",
			Caution: []string{caution.MainsLive, caution.InverterLine},
			Text:    r.shown() + ": a drive feeds it pulses of varying width, which an ordinary meter cannot read; the drive's own lamp tells"}, true
	}
	if said.Has(r.a, []string{"revers", "4-way", "four-way"}) {
		return verdict.Verdict{Subject: "volts at " + r.where(), Word: verdict.CannotTell, Entries: []int{r.entry}, Source: "common practice", Caution: []string{caution.MainsLive},
			Text: r.shown() + ": by its diagram it is fed in heating alone (B) or in cooling alone (O); volts in the other mode are the fault"}, true
	}
	if r.b != "" && c.ratedVolts() > judge.TwoLegs && toOneSide(r.b) {
		return verdict.Verdict{Subject: "volts at " + r.where(), Word: verdict.CannotTell, Entries: []int{r.entry}, Source: "common practice", Caution: []string{caution.MainsLive},
			Text: r.shown() + " is of one of its ends, which gets one leg; across both ends: volt " + r.a + " …"}, true
	}
	if x := c.value(r); (strings.HasSuffix(fed, "-fan-volts-present")) && !r.cond.is(directWord) && x.Lo >= leastDirect && x.Hi < lowVolts && c.plateNumber(strings.ToLower(r.a), "volts", "V") < lowVolts {
		return verdict.Verdict{Subject: "volts at " + r.where(), Word: verdict.CannotTell, Entries: []int{r.entry}, Source: "common practice", Caution: []string{caution.MainsLive},
			Text: r.shown() + " is all that a fan on direct volts needs, and nothing to one on mains: read it on direct volts (dc behind it), or its plate"}, true
	}
	out := c.feed(r, fed, unfed)
	if r.cond.is(directWord) && out.Word == verdict.Suspect {
		out.Word, out.Fact = verdict.CannotTell, nil
		out.Text = r.shown() + ": a board that sets a fan's speed gives it less than 12 V"
	}
	if !c.atMachine(r) || !starting(r) {
		return out, true
	}
	if rest, _, _ := c.restAndLoad(c.ofOneSupply(c.recent("supply", c.bySubject[supplyKey], min(before, r.entry+1)), r.entry)); rest != nil {
		sag := c.sag(rest, r, "at "+r.where())
		sag.Fact = append(sag.Fact, out.Fact...)
		sag.Entries = slices.Compact(sag.Entries)
		return sag, true
	}
	return out, true
}

// judgeControl judges the volts of a control circuit at its transformer, and those at the
// coil of a contactor where they are too few or none.
func (c *Call) judgeControl(r *reading) (verdict.Verdict, bool) {
	a, v := controlPoint(r), c.value(r)
	coil := strings.HasPrefix(a, "contactor")
	if !coil && !strings.HasPrefix(a, "transformer-sec") || v.Over || v.X > mostControl || r.cond.is(directWord) {
		return verdict.Verdict{}, false
	}
	out := judge.Control(r.where(), v, controlVolts)
	if coil && v.X < leastControl {
		out.Word, out.Fact = verdict.CannotTell, nil
		out.Text = r.shown() + ": no call; write run behind it when it should be called"
		if c.complaint() == said.RunsOn {
			out.Fact, out.Text = []string{"contactor-unfed"}, r.shown()+": no call; if what it switches runs on it is welded or held in: amp comp … run"
		}
		return out, c.complaint() == said.RunsOn || !r.cond.is("run") && !starting(r)
	}
	return out, !coil || slices.Contains(out.Fact, "control-volts-low")
}

// controlPoint is where volts were read, two terminals of a thermostat by what lies
// between them: R and C are the transformer's, Y and C those of the contactor.
func controlPoint(r *reading) string {
	switch strings.ToLower(r.where()) {
	case "r–c", "c–r":
		return "transformer-secondary"
	case "y–c", "c–y":
		return "contactor-coil"
	}
	return strings.ToLower(r.a)
}

// toOneSide tells a point that is one side of what two legs feed, or what they are
// read to.
func toOneSide(point string) bool {
	return among([]string{"n", "neutral", "g", "l1", "l2", caseName, "earth", "ground"}, strings.ToLower(point))
}

// feedFacts are the facts that volts at a place establish, fed and not fed.
func (c *Call) feedFacts(r *reading) (fed, unfed string) {
	a := controlPoint(r)
	switch {
	case c.atMachine(r):
		return "control-calling", "control-not-calling"
	case isHeater(a):
		return "heater-volts-present", "heater-volts-absent"
	case strings.HasPrefix(a, "cond-fan"):
		return "cond-fan-volts-present", "cond-fan-volts-absent"
	case strings.HasPrefix(a, "evap-fan"):
		return "evap-fan-volts-present", "evap-fan-volts-absent"
	case a == thermoModule:
		return "module-fed", "module-unfed"
	case a == "blower":
		return "blower-volts-present", "blower-volts-absent"
	case c.complaint() == said.ACDead && strings.HasPrefix(a, "contactor"):
		return "coil-fed", "contactor-unfed"
	case c.onThreePhases() && strings.Contains(a, "coil"):
		return "coil-fed", "control-not-calling" // by a control circuit, which tells nothing of the mains
	case partOf(a) != nil && partOf(a).words[0] == "solenoid":
		return "valve-volts-present", "valve-volts-absent"
	}
	return "", ""
}

// judgeAcross judges the volts across one part that breaks a circuit, read while that
// circuit is called; of a refrigerator's door switches one feeds a lamp.
func (c *Call) judgeAcross(r *reading) (verdict.Verdict, bool) {
	if !breaksCircuit(r.a) || r.b != "" || !r.cond.is("run") || r.cond.is("open") || cools(c.last("unit")) && strings.Contains(strings.ToLower(r.a), "door") {
		return verdict.Verdict{}, false
	}
	in := judge.AcrossIn{Path: judge.Path(strings.ReplaceAll(partOf(r.a).words[0], "-", " ")), Name: r.a, Volts: c.value(r), Full: cmp.Or(c.ratedVolts(), householdPlate), Closed: r.cond.is("closed")}
	if in.Path == judge.Draft && !c.burns() {
		in.Path = judge.Switched
	} else if in.Path == judge.Draft && c.lastShown([]string{"inducer-runs"}) > 0 {
		in.Closed = true
	}
	if in.Volts.X <= mostControl {
		in.Full = controlVolts
	} else if c.split() && in.Full > judge.TwoLegs {
		in.Full /= 2 // one leg may feed it
	}
	v := judge.Across(in)
	if v.Word == verdict.Suspect && strings.Contains(strings.ToLower(r.a), "roll") {
		v.Also = []string{rolledOut}
	}
	return v, true
}

// breaksCircuit tells a part whose whole work in a circuit is to conduct or not.
//
//go:noinline
func breaksCircuit(name string) bool {
	p := partOf(name)
	return p != nil && among([]string{"limit", "thermostat", "fuse", "speed-switch", "pressure-switch", "switch"}, p.words[0])
}

// earthedKind is what is read between a line and earth.
const earthedKind = "earthed"

// toEarth tells volts between a conductor of the supply and earth.
func (r *reading) toEarth() bool {
	b := strings.ToLower(r.b)
	return isSupplyPoint(r.a) && (b == "g" || among(earths, b))
}

// judgeToEarth judges a line to earth by what it has to: half of what two legs give, on
// three phases their volts by the root of three. A meter draws next to nothing: what is
// there proves no earth (common practice).
func (c *Call) judgeToEarth(r *reading) (verdict.Verdict, bool) {
	in := judge.SupplyIn{Place: r.where(), Volts: c.value(r)}
	if in.Nominal = c.nominalVolts(in.Volts.X); c.onThreePhases() {
		in.Nominal /= math.Sqrt(3)
	} else if c.split() {
		in.Nominal = judge.LegNominal
	}
	v := judge.Supply(in)
	v.Fact, v.Also = nil, nil
	switch v.Word {
	case verdict.Sound:
		v.Word, v.Text = verdict.CannotTell, r.shown()+": the line is there; over a poor earth a meter shows as much, whose ohms tell: ohm earth …"
	case verdict.Failed:
		v.Word, v.Text = verdict.Suspect, r.shown()+" is not what the line has to earth: an open earth, or the line or its neutral lost; for an electrician"
	}
	return v, in.Volts.Hi >= deadVolts || !c.deadAt(r.entry-1)
}

// controlVolts feed the coils of air conditioners and furnaces from a transformer;
// what is read there lies between the other two (common practice).
const (
	controlVolts = 24
	leastControl = 10
	mostControl  = 30
)

// thermoModule is what cools a thermoelectric cooler, by about directVolts.
const thermoModule = "module"

// directVolts run the fans of boards; from leastDirect on one may turn (common practice).
const (
	directVolts = 12
	leastDirect = 3
)

// feed judges whether a machine gets its volts.
func (c *Call) feed(r *reading, fed, unfed string) verdict.Verdict {
	rated := c.ratedVolts()
	if rated == 0 && isHeater(strings.ToLower(r.a)) && c.complaint() == "no-heat" && !c.value(r).Over && c.value(r).Hi > deadVolts {
		// Half of what a heater of two legs needs looks like all of another's.
		return verdict.Verdict{Subject: "volts at " + r.where(), Word: verdict.CannotTell, Entries: []int{r.entry}, Source: "common practice",
			Text: "the rated volts are needed to judge " + r.shown() + ": plate volts 240, or what its plate says"}
	}
	if rated == 0 || fed == "coil-fed" && c.value(r).X < notLeg {
		rated = householdPlate // a coil has volts of its own
	}
	if x := c.value(r).X; (fed == "valve-volts-present" || fed == "coil-fed") && c.ratedVolts() == 0 && x > notLeg {
		rated *= 2 // its coil is of both legs, or it would not last
	} else if (fed == "valve-volts-present" || fed == "coil-fed") && x <= mostControl && (x >= leastControl || c.appliance().Furnace) {
		rated = controlVolts
	}
	if own := c.plateNumber(strings.ToLower(r.a), "volts", "V"); own > 0 && isMotor(r.a) {
		rated = own
	} else if r.cond.is(directWord) || fed == "module-fed" {
		rated = directVolts
	}
	return judge.Feed(judge.FeedIn{Place: r.where(), Volts: c.value(r), Rated: rated,
		Called: r.cond.is("run") || r.cond.is("start"), Fed: fed, Unfed: unfed})
}
