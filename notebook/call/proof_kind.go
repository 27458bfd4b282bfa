package call

import (
	"math"
	"slices"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/calc/verdict"
	"ohmcall/notebook/said"
)

var (
	proofFlame   = proofWanted{"a flame seen (saw flame lights)", seen("flame-lights")}
	proofCooks   = proofWanted{"that it heats (saw heats)", cooks}
	proofWorks   = proofWanted{"that it works (saw heats, or saw runs)", seen("heats-up", "starts-and-runs")}
	proofLeakage = proofWanted{"the leakage of microwaves measured (saw leakage test good)", seen("no-radiates")}
)

// offSet is by how many kelvin what holds its heat may be off the set point: 25 °F
// (common practice).
const offSet = 13.9

// holdsHeat is that the set point is held: seen, or shown by the last three temperatures
// of one place.
func holdsHeat(c *Call, since int) shown {
	s := seen("heat-right")(c, since)
	set := c.setPoint()
	if s.held || set == nil {
		return s
	}
	var last *reading
	n, near := 0, true
	for i := len(c.readings) - 1; i >= 0 && c.readings[i].entry > since && n < fewestForCourse; i-- {
		c.spend(2)
		r := c.readings[i]
		if !c.alive(r.entry) || !ofHeat(r) || last != nil && (r.a != last.a || !r.at.Before(last.at)) {
			continue
		}
		last, n = r, n+1
		near = near && math.Abs(c.value(r).X-c.value(set).X) <= offSet
		s.text = r.shown() + atEntry(r.entry) + ", " + s.text
	}
	if n < fewestForCourse {
		return shown{}
	}
	s.held, s.text = near, s.text+"set "+set.shown()+atEntry(set.entry)
	return s
}

// ofHeat tells the temperature of what a heater warms.
func ofHeat(r *reading) bool {
	return r.quality.word == "temp" && !r.over && !among(unheated, strings.ToLower(r.a))
}

// ofBurners are words of work on what lights a burner, feeds it or senses its flame,
// ofGas those that only what burns gas has; ofWaves of what keeps the microwaves in.
var (
	ofBurners = []string{"ignit", "pilot", "thermocouple", "orifice", "gas valve", "gas coil", "hsi", "glow", "electrode", "spark", "flame", "injector", "burner", "safety valve", "valve coil"}
	ofGas     = []string{"ignit", "pilot", "thermocouple", "orifice", "gas valve", "gas coil"}
	ofWaves   = []string{"door", "primary", "secondary", "monitor", "latch", "hinge", "interlock", "magnetron", "waveguide"}
)

// Words of work on what brings the supply, and on what leaves a motor and its current as
// they were: after such work these prove what the heater or the motor would (common
// practice).
var (
	feeders    = []string{"breaker", "outlet", "receptacle", "leg", "house fuse", "fuse box", "terminal block", "cord", "plugged"}
	elsewhere  = []string{"lock", "latch", "door switch", "lid switch", "hose", "strike", "shock", "damper", "suspension", "spring", "valve", "coil", "screen", "igniter", "level", "breaker", "trap", "filter"}
	controls   = []string{"timer", "defrost clock", "thermostat", "cold control", "thermistor", "sensor", "damper"}
	ofBurner   = []string{"infinite", "simmerstat", "energy regulator", "burner", "hotplate", "ring "}
	heaterRead = []string{"heater-sound", "heater-insulation-sound", "limit-closed"}
	proofFed   = proofWanted{"volts of the supply (volt line …, or volt L1 L2 …)", func(c *Call, since int) shown {
		return c.shownBy(c.lastAfter(since, func(r *reading) bool { return r.quality.word == "volt" && isLine(r) }))
	}}
	proofWarms = proofWanted{proofCooks.what, seen("heats-up")}
)

// onlyWorkOn reports whether work was done, and in all of its words one of some is.
//
//go:noinline
func (c *Call) onlyWorkOn(words []string) bool {
	only := false
	for _, w := range c.doneNow() {
		if only = said.Has(w.text, words); !only {
			break
		}
	}
	return only
}

// besideMotor reports whether only such work was done, and what it stops by is not in
// question.
//
//go:noinline
func (c *Call) besideMotor() bool {
	return c.onlyWorkOn(elsewhere) && !strings.HasPrefix(c.complaint(), "stops-")
}

// proofSurface are the amps or ohms of a heater under a pot, which is seen to heat: it has
// no limit, and often no plate of its own (common practice).
var proofSurface = proofWanted{"its amps or ohms (amp heater … run, or ohm heater …)", func(c *Call, since int) shown {
	s := ampsOrPlate(c, since, "heats-up")
	if r := c.lastAfter(c.beforeWork(since)-1, func(r *reading) bool { return r.quality.word == "ohm" && r.b != caseName && heaterOf(r) != "" }); !s.held && r != nil {
		s = c.shownBy(r)
	}
	return s
}}

// proofFan are the amps of the one motor of a fan, which has no plate that can be read
// (common practice).
var proofFan = proofWanted{"running amps of the fan (amp fan … run)", func(c *Call, since int) shown { return ampsOrPlate(c, since, "starts-and-runs") }}

// ampsOrPlate are running amps; for want of a plate what is seen bears them out.
func ampsOrPlate(c *Call, since int, code string) shown {
	s := running(c, since)
	s.held = s.held || s.open && seen(code)(c, since).held
	return s
}

// surface reports whether an electric heater under a pot is complained of, and no oven.
func (c *Call) surface() bool {
	if a := c.appliance(); a.Gas || a.HighVolts || a.Fault == "" {
		return false
	}
	of := loadsOf(said.Troubled(c.last("fault")))
	return of != 0 && of&(broiled|baked) == 0 && c.cooks()
}

// cooks reports whether the unit is an oven, a range or a hob.
func (c *Call) cooks() bool { return among([]string{"oven", "burner"}, c.placeOfProof()) }

// cookerMended reports whether of such a unit what was found is what was mended: it wants
// no other part read.
func (c *Call) cookerMended() bool {
	if len(c.repairs()) == 0 || !c.cooks() {
		return false
	}
	return c.surface() || c.mendedFound()
}

// mendedFound reports whether a cause that was found is one that was mended.
func (c *Call) mendedFound() bool {
	found := c.foundOnce()
	for _, g := range groupsOf(&found) {
		if c.treats(g) {
			return true
		}
	}
	return false
}

// worksAgain reports whether what the unit is there for was measured or seen to be as it
// should since: its cold, its air or its heat, or what else it was called for.
func (c *Call) worksAgain(since int) bool {
	list, _ := proofsOf(c.kindFound())
	for _, p := range []*proofWanted{&proofTemps, &proofNotFrozen, &proofAir, &proofRise, &proofHeat} {
		if slices.Contains(list, p) && p.held(c, since).held {
			return true
		}
	}
	for _, p := range seenProofs {
		if p.complaint == c.complaint() && seen(p.codes...)(c, since).held {
			return true
		}
	}
	return false
}

// closedUp reports whether all work was on the cause found, and that is reached without
// opening the unit: its earth and its current are as they were, if neither is complained
// of (common practice).
func (c *Call) closedUp() bool {
	return !among([]string{"shocks", "blows-fuse", "trips-breaker"}, c.complaint()) && c.mendedFound() && c.onlyWorkOn([]string{"gasket", "door seal", "hinge", "arm down", "arm back", "shelf"}) &&
		!slices.ContainsFunc(c.doneNow(), func(w doneWork) bool { return said.Has(w.text, wired) })
}

// wired are words of what carries current.
var wired = []string{"wir", "cord", "plug", "heater", "element", "motor", "fan", "relay", "start", "comp", "board", "control", "therm", "sensor", "probe", "switch", "valve", "cap", "timer", "lamp", "bulb", "light"}

// onlyFreed reports whether all work was to free what the motor turns, and it was seen to
// turn since: its windings are as they were. A fan that blows shows those of its motor.
func (c *Call) onlyFreed() bool {
	done := c.doneNow()
	if c.appliance().Fan() && !c.onThreePhases() {
		return len(done) > 0 && startSeen(c, c.since()).held
	}
	for _, w := range done {
		if !said.Has(w.text, []string{"freed", "jam"}) && (!cause.Mends("load-jammed", w.text) || !said.Has(w.text, []string{"clear", "remov", "took"})) {
			return false
		}
	}
	return len(done) > 0 && (startSeen(c, c.since()).held || seen("shaft-free", "load-free", "drains")(c, c.since()).held)
}

// openBurner reports whether the heat complained of is that of an open burner, which is
// set by no temperature.
//
//go:noinline
func (c *Call) openBurner() bool {
	a := c.appliance()
	return a.Elements && !a.Gas && (c.workOn(ofBurner) || said.Has(a.Fault, ofBurner))
}

// alsoProved is a list of proofs with what the kind of work and, where no complaint
// is weighed, the kind of appliance want besides (common practice).
func (c *Call) alsoProved(list []*proofWanted, weighed bool) []*proofWanted {
	a := c.appliance()
	burns := c.burns() || a.Unsealed && !a.Electric && c.workOn(ofGas)
	lit := burns && c.complaint() != said.ZoneCold && (c.workOn(ofBurners) || c.openedAt(tightness[0].of) > 0)
	heats := a.Elements || burns && (a.Still || lit)
	var also []*proofWanted
	if lit || burns && heats && !weighed {
		also = append(also, &proofFlame)
	}
	if a.HighVolts && c.workOn(ofWaves) {
		also = append(also, &proofLeakage)
	}
	ofFuse := a.HighVolts && slices.ContainsFunc(c.doneNow(), c.lineFuse)
	if stuck, _, _ := c.interlocks(c.entry + 1); a.HighVolts && stuck == 0 && len(c.seenAt[stuckDoor]) == 0 && !ofFuse && c.workOn(ofDoor) {
		also = append(also, &proofInterlocks)
	}
	if j := c.judged[monitorKey]; j != nil && j.verdict.Word == verdict.Failed && !c.replacedSince(monitorKey, j) {
		also = append(also, &proofMonitor)
	}
	if ofFuse {
		also = append(also, &fuseProofs[0], &fuseProofs[1])
	}
	switch {
	case a.HighVolts && !wants(list, &proofHeat) && !said.Has(a.Fault, []string{"heat", "warm", "cook", "cold"}):
		also = append(also, &proofWorks)
	case a.HighVolts, heats && !weighed:
		also = append(also, &proofHeat)
	}
	if c.rotationAsked() {
		also = append(also, &proofRotation)
	}
	if c.goneAsked() {
		also = append(also, &proofGone)
	}
	list = slices.Clip(list)
	for _, p := range also {
		if !wants(list, p) {
			list = append(list, p)
		}
	}
	return list
}

//go:noinline
func wants(list []*proofWanted, p *proofWanted) bool {
	for _, o := range list {
		if o.what == p.what {
			return true
		}
	}
	return false
}

// workOn reports whether work was done in whose words one of some is.
//
//go:noinline
func (c *Call) workOn(words []string) bool {
	for _, w := range c.doneNow() {
		if said.Has(w.text, words) {
			return true
		}
	}
	return false
}

// inMicrowaves is a point of proof as a microwave oven has it, false when it has none:
// its amps are those of what is not measured here.
func inMicrowaves(p proofWanted) (proofWanted, bool) {
	if p.what == proofHeat.what {
		return proofCooks, true
	}
	return p, !strings.HasPrefix(p.what, "running amps")
}
