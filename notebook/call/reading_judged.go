package call

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"ohmcall/calc/judge"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
	"ohmcall/calc/winding"
	"ohmcall/notebook/said"
)

// subject says which judgement a reading bears on: its kind and name.
func (c *Call) subject(r *reading) (kind, name string) {
	if c.ofHighVolts(r) {
		return "", ""
	}
	switch r.quality.word {
	case "ohm":
		switch {
		case heaterOf(r) != "":
			return "sheath", heaterOf(r)
		case r.b == caseName && c.isRod(r.a): // its burner is at the metal: a path tells of it alone
			return "part", strings.ToLower(r.a)
		case r.b == caseName:
			return "case", r.of + "\x00" + r.a
		case r.b != "" && partOf(r.of) != nil:
			return "part", r.of
		case r.b != "":
			return "wind", r.of
		case isMotor(r.a) && (!r.over || among(twoLeads, strings.ToLower(r.a))):
			return motorKind, strings.ToLower(r.a)
		case partOf(r.a) != nil:
			return "part", strings.ToLower(r.a)
		}
	case "mfd":
		return "mfd", r.a
	case "volt":
		if r.cond.is(directWord) {
			if isMotor(r.a) || isPilotPower(r.a) || strings.EqualFold(r.a, thermoModule) {
				return "volt", r.a
			}
			return "", ""
		}
		if r.onMetal() {
			return "metal", strings.ToLower(r.a)
		}
		if r.ofNeutral() {
			return "neutral", ""
		}
		if r.toEarth() {
			return earthedKind, r.a
		}
		if r.b == "" && c.isCapacitor(r.a) {
			return "capload", r.a
		}
		if p := c.legPair(r); p != "" {
			return phasesKind, p[:1]
		}
		if c.toNeutral(r) != "" {
			return starKind, c.toNeutral(r)
		}
		if c.isLeg(r) {
			return "leg", r.where()
		}
		if isLine(r) {
			return "supply", "line"
		}
		return "volt", r.where()
	case "amp":
		if c.isCapacitor(r.a) {
			return "capload", r.a
		}
		if starting(r) {
			return surgeKind, r.a
		}
		if legs := c.legOfMotor(r.a); legs != "" {
			return legAmpsKind, legs
		}
		if startsWithAny(strings.ToLower(r.a), earthed) {
			return "amp", earthed[0]
		}
		return "amp", r.a
	case "trip":
		return "trip", r.a
	case "psi":
		switch {
		case sideOf(r.a) == "":
		case r.cond.is("standing"):
			return "psi", "standing"
		default:
			return "psi", "running"
		}
	case "temp":
		if c.ofAir(r) {
			return splitKind, "air"
		}
		if c.spaceOf(r.a) != "" {
			return "temp", r.a
		}
	}
	return "", ""
}

// isLine tells the volts of the supply: `volt line`, `volt L N` and the like.
func isLine(r *reading) bool {
	a := strings.ToLower(r.a)
	if r.b == "" {
		return a == "line" || a == "supply" || a == "outlet" || a == "mains"
	}
	b := strings.ToLower(r.b)
	return strings.HasPrefix(a, "l") && len(a) <= 2 && (b == "n" || strings.HasPrefix(b, "l") && len(b) <= 2)
}

// spaceOf says which published target a place's temperature has. The one space of
// a walk-in, a display case or a cooler is a freezer's where the unit is one.
func (c *Call) spaceOf(place string) judge.Space {
	p := strings.ToLower(place)
	switch {
	case c.keepsWine():
		if startsWithAny(p, onlySpaces) || startsWithAny(p, []string{"wine", "fridge", "cabinet", "zone", "upper", "lower"}) {
			return judge.Wine
		}
	case strings.HasPrefix(p, "freezer"):
		return judge.Freezer
	case strings.HasPrefix(p, "fridge"), strings.HasPrefix(p, "fresh"), strings.HasPrefix(p, "cabinet"):
		return judge.FreshFood
	case startsWithAny(p, onlySpaces) && !c.appliance().Unsealed && !c.appliance().Air:
		if said.Has(c.last("unit"), []string{"freez"}) {
			return judge.Freezer
		}
		return judge.FreshFood
	}
	return ""
}

// onlySpaces are names of the one cold space of an appliance.
var onlySpaces = []string{"box", "cooler", "walk-in", "walkin", "display", caseName, "compartment"}

//go:noinline
func startsWithAny(s string, starts []string) bool {
	return slices.ContainsFunc(starts, func(w string) bool { return strings.HasPrefix(s, w) })
}

// last2 gives the last two readings under a key that still count.
//
//go:noinline
func (c *Call) last2(key string) (prev, now *reading) {
	list := c.byKey[key]
	for i := len(list) - 1; i >= 0; i-- {
		if !c.alive(list[i].entry) {
			continue
		}
		if now == nil {
			now = list[i]
		} else {
			return list[i], now
		}
	}
	return nil, now
}

// judge makes the verdict on one subject anew and reports whether it changed.
func (c *Call) judge(kind, name string) (*judged, bool) {
	if kind == "" {
		return nil, false
	}
	key := kind + "\x00" + name
	v, ok := c.verdictOn(kind, name, math.MaxInt)
	old := c.judged[key]
	if !ok {
		c.unjudge(key)
		return nil, old != nil
	}
	if old == nil {
		old = c.judging(key)
	}
	changed := old.verdict.Word != v.Word || old.verdict.Text != v.Text || len(old.verdict.Entries) != len(v.Entries)
	c.settle(old, v)
	return old, changed
}

// judging begins a judgement on a subject, which keeps its place among the
// others when it had one before.
func (c *Call) judging(key string) *judged {
	if _, known := c.judged[key]; !known {
		c.subjects = append(c.subjects, key)
	}
	kind, name, _ := strings.Cut(key, "\x00")
	j := &judged{}
	j.family, j.part = whichPart(kind, name)
	c.judged[key] = j
	return j
}

// unjudge takes a judgement back.
func (c *Call) unjudge(key string) {
	if c.judged[key] != nil {
		c.judged[key] = nil
		c.settled++
	}
}

// settle puts a new verdict in the place of an old one.
func (c *Call) settle(j *judged, v verdict.Verdict) {
	last := 0
	for _, n := range v.Entries {
		last = max(last, n)
	}
	rep := c.repairs()
	if j.since == 0 || !c.alive(j.since) || !slices.Equal(j.verdict.Fact, v.Fact) || phase(rep, last) > phase(rep, j.since) {
		j.since = last
		c.settled++
	}
	j.verdict = v
}

// verdictOn judges a subject by the readings before an entry; false when
// there is nothing to judge.
func (c *Call) verdictOn(kind, name string, before int) (verdict.Verdict, bool) {
	c.spend(2000)
	of, pin, _ := strings.Cut(name, "\x00")
	if kind == windingKind {
		return c.comparePlate(of, pin)
	}
	rs := c.recent(kind, c.bySubject[kind+"\x00"+name], before)
	if len(rs) == 0 {
		return verdict.Verdict{}, false
	}
	if c.ofHighVolts(latest(rs)) {
		return verdict.Verdict{}, false // the unit was named after it
	}
	if kind == "psi" || kind == "capload" || kind == "part" {
		rs = c.ofOneState(rs)
	}
	switch kind {
	case "case":
		return c.byMethod(rs, func(r *reading) verdict.Verdict { return c.insulation(of, pin, r, before) }), true
	case "part":
		v := partOf(name).judge(c, name, rs, before)
		if v.Word == "" {
			return v, false
		}
		if _, doubt := latest(rs).wrongRange(); doubt && partOf(name).words[0] != "earth" {
			v = judge.OnWrongRange(v)
		}
		return v, true
	case "sheath":
		return c.byMethod(rs, func(r *reading) verdict.Verdict { return c.judgeSheath(name, r) }), true
	case "mfd":
		return c.judgeMfd(name, rs), true
	case "capload":
		return c.judgeCapLoad(name, rs)
	case "trip":
		of := c.mainMachine()
		in := judge.TripIn{Seconds: c.value(latest(rs)), Plate: c.plateNumber(of, "amps", "A"), LRA: c.plateNumber(of, "lra", "A"), Volts: c.voltsOf(of), Amps: measure.Open(0)}
		if a := c.ampsBeside(latest(rs), before); a != nil {
			in.Amps = c.value(a)
		}
		return judge.Trip(in), true
	case "supply":
		return c.judgeSupply(rs, before)
	case "neutral":
		return judge.Neutral(c.value(latest(rs))), true
	case motorKind:
		return c.judgeLeads(name, latest(rs))
	case earthedKind:
		return c.judgeToEarth(latest(rs))
	case "metal":
		live := slices.DeleteFunc(slices.Clone(rs), func(r *reading) bool { return !r.cond.energised() && c.provesDead(r) })
		if len(live) > 0 {
			v := judge.Metal(judge.MetalIn{To: name, Volts: c.value(latest(live))})
			if latest(live) != latest(rs) {
				v.Also = append(v.Also, latest(rs).shown()+" while it is dead proves nothing of its metal; under power: volt case "+name+" … run")
			}
			return v, true
		}
	case "leg":
		return c.judgeLeg(rs)
	case "volt":
		return c.judgeVolt(rs, before)
	case phasesKind:
		return c.judgePhases(name, rs)
	case starKind:
		return c.judgeStar(rs)
	case splitKind:
		return c.judgeSplit(rs, before)
	case "amp":
		return c.judgeAmp(name, latest(rs)), true
	case legAmpsKind:
		return c.judgeLegAmps(rs)
	case surgeKind:
		return c.judgeSurge(name, latest(rs), before), true
	case "psi":
		return c.judgePressure(rs, before), true
	case "temp":
		r := latest(rs)
		var v verdict.Verdict
		if set := c.setPoint(); c.spaceOf(name) != judge.Wine {
			v = judge.TemperatureTarget(c.spaceOf(name), c.value(r))
		} else if set != nil {
			v = judge.TemperatureAtSet(c.value(r), c.value(set))
		} else {
			v = verdict.Verdict{Word: verdict.CannotTell, Text: judge.WantsSet, Entries: []int{r.entry}}
		}
		if !strings.EqualFold(name, string(c.spaceOf(name))) {
			v.Subject = name + " temperature"
		}
		return v, true
	}
	return verdict.Verdict{}, false
}

// Judgements look at so many of a subject's latest readings; those that hold
// rest against load look further back for the one that is missing.
const (
	mostJudged   = 8
	mostSearched = 128
)

// recent gives the latest readings of a subject that count, in their order.
func (c *Call) recent(kind string, all []*reading, before int) []*reading {
	var out []*reading
	rest, load := true, true
	if kind == "supply" || kind == "capload" {
		rest, load = false, false
	}
	for i := len(all) - 1; i >= max(0, len(all)-mostSearched) && (len(out) < mostJudged || !rest || !load); i-- {
		r := all[i]
		if r.entry >= before || !c.alive(r.entry) {
			continue
		}
		loaded := r.cond.is("start") || r.cond.is("peak") || r.cond.is("run") || kind == "capload" && r.quality.word == "volt"
		if len(out) < mostJudged || loaded && !load || !loaded && !rest {
			out = append(out, r)
		}
		rest, load = rest || !loaded, load || loaded
	}
	slices.Reverse(out)
	return out
}

// named puts the machine's name before a verdict's subject unless it is the
// one that a call is about.
func (c *Call) named(of string, v verdict.Verdict) verdict.Verdict {
	v.Subject = c.ofMachine(of) + v.Subject
	return v
}

func (c *Call) ofMachine(of string) string {
	if of != "" && of != defaultMachine {
		return of + ": "
	}
	return ""
}

func (c *Call) judgeAmp(name string, r *reading) verdict.Verdict {
	if strings.HasPrefix(strings.ToLower(name), "flame") {
		return judge.FlameAmps("", c.value(r))
	}
	if name == earthed[0] {
		return judge.EarthAmps(c.value(r))
	}
	if isIgniter(name) {
		p, _ := c.plateAt("", "igniter", "")
		in := judge.IgniterAmpsIn{Name: name, Amps: c.value(r)}
		if p.isQ {
			in.Low, in.High = p.q.SI(), p.hi.SI()
		} else {
			in.Low = c.plateNumber(name, "amps", "A")
		}
		return judge.IgniterAmps(in)
	}
	of := c.machineFor(name)
	out := judge.Amps(c.ampsIn(name, r))
	if out.Word != verdict.Sound && c.standsCold(r) {
		out.Word, out.Fact = verdict.CannotTell, nil
		out.Text = "no current, as while it is off on its control: what is cold does not call it on; read it while it runs: amp comp … run"
	}
	alone := c.heatAlone() && (strings.EqualFold(name, "line") || splitLeg(name)) && c.plateNumber(of, "amps", "A") == 0
	watts, whole := c.heaterWatts(name)
	if low, rated := c.heaterVolts(); (isHeater(name) || alone) && (watts > 0 && rated > 0 || !alone && c.plateNumber(of, "amps", "A") == 0) {
		volts, rest := c.voltsBeside(name, r)
		out = judge.HeaterAmps(judge.HeaterAmpsIn{Name: name, Amps: c.value(r), Watts: watts, Rated: rated, Low: low, Volts: volts, AtRest: rest, Whole: whole})
	}
	if alone && !c.appliance().Tank && slices.Contains(out.Fact, "amps-high") { // its motor draws on one of them (common practice)
		out.Word, out.Fact = verdict.CannotTell, nil
		out.Text = "more than the heater's: the motor draws its own here; clamp the heater's wire alone: amp heater … run"
	}
	if a := c.appliance(); of == defaultMachine && !a.Unsealed && !a.Air && slices.Contains(out.Fact, "amps-low") && c.plateNumber(of, "lra", "A") == 0 &&
		c.plateNumber(of, "amps", "A")*cmp.Or(c.voltsOf(of), judge.LegNominal) > cabinetFrom {
		out.Word, out.Fact = verdict.CannotTell, nil
		out.Text += "; the plate of a cabinet counts its heaters too: plate amps …, lra … of the compressor's own"
	}
	if slices.Contains(out.Fact, "amps-low") && c.typeOf(of) == onDrive {
		out.Word, out.Fact = verdict.CannotTell, nil
		out.Text = "a drive turns it as slowly as the load wants, and the plate's amps are its most: at full load, as set to its lowest or highest, they tell"
	}
	if at := c.platedElse(of); at != "" && out.Word == verdict.CannotTell && c.plateNumber(of, "amps", "A") == 0 {
		if at == defaultMachine && c.appliance().Unsealed {
			at = "the appliance"
		}
		out.Text = "the plate's amps typed are those of " + at + "; for this one: on " + name + ", then plate amps …"
	}
	if len(out.Fact) == 0 {
		out.Fact = []string{"amps-undecided"}
	}
	return out
}

// cabinetFrom is more, in volt-amperes, than the compressor of a household refrigerator
// takes: a plate of more counts the heaters and fans of the cabinet (common practice).
const cabinetFrom = 320

// heatAlone reports whether a heater is about all that the supply's wires feed: one
// element at a time of an electric water heater, and that of an electric dryer beside
// its motor (common practice).
func (c *Call) heatAlone() bool {
	a := c.appliance()
	return !a.Gas && (a.Tank || (a.Electric || c.ratedVolts() > judge.TwoLegs) && a.Dries() && !a.HeatPumpDryer)
}

// splitLeg tells the name of one leg of a split-phase supply.
func splitLeg(name string) bool {
	return strings.EqualFold(name, "L1") || strings.EqualFold(name, "L2")
}

// ampsIn is a current and what the plate says of the machine that draws it.
func (c *Call) ampsIn(name string, r *reading) judge.AmpsIn {
	of := c.machineFor(name)
	volts := c.voltsOf(of)
	if c.onThreePhases() {
		volts *= math.Sqrt(3)
	}
	return judge.AmpsIn{Name: name, Run: c.value(r), Plate: c.plateNumber(of, "amps", "A"), LRA: c.plateNumber(of, "lra", "A"), Volts: volts}
}

// voltsBeside are the volts read last at a heater or its supply while it was on,
// else at rest, in the same phase of the call as a reading of its amps and about when
// that was made; the zero value when there are none. One leg of two is not its supply.
func (c *Call) voltsBeside(name string, r *reading) (volts measure.Value, atRest bool) {
	rep := c.repairs()
	at := phase(rep, r.entry)
	for i := len(c.readings) - 1; i >= 0 && phase(rep, c.readings[i].entry) >= at; i-- {
		c.spend(20)
		if v := c.readings[i]; phase(rep, v.entry) == at && v.quality.word == "volt" && !starting(v) && !v.over && c.alive(v.entry) && r.at.Sub(v.at).Abs() <= besideFor && (isLine(v) && !c.isLeg(v) || strings.EqualFold(v.where(), name)) {
			if x := c.value(v); v.cond.is("run") {
				return x, false
			} else if !atRest && x.Lo > deadVolts {
				volts, atRest = x, true
			}
		}
	}
	return volts, atRest
}

// machineFor is the machine that a short name in a reading means.
func (c *Call) machineFor(name string) string {
	n := strings.ToLower(name)
	switch of := c.machineNamed(name); {
	case of != defaultMachine && kindOf(of) == winding.Compressor && slices.ContainsFunc(c.atHand, func(t text) bool { return t.value == of && c.alive(t.entry) }):
		return of // one of several
	case strings.HasPrefix(n, "comp"), n == "line":
		return defaultMachine
	case len(n) == 2 && (n[0] == 'l' || n[0] == 't') && n[1] >= '1' && n[1] <= '3', c.legOfMotor(name) != "":
		// One of its legs; of the only one of which a plate was typed when that at
		// hand has none.
		of := c.machineAtHand()
		if c.plateNumber(of, "amps", "A") == 0 {
			of = cmp.Or(c.platedElse(of), of)
		}
		return of
	case among([]string{"motor", "machine", "unit"}, n) && c.platedElse(name) != "":
		return c.platedElse(name) // the only one of which a plate was typed
	}
	return name
}

// isCapacitor tells the name of a capacitor: one that a plate marks, or one
// that is written as the trade writes it.
func (c *Call) isCapacitor(name string) bool {
	n := strings.ToLower(name)
	if n == "c1" || n == "c2" || n == "c3" || strings.HasSuffix(n, "cap") {
		return true
	}
	c.spend(2 * len(c.plates))
	for _, p := range c.plates {
		if p.key == "mfd" && p.name != "" && strings.EqualFold(p.name, name) && c.alive(p.entry) {
			return true
		}
	}
	return false
}
