package call

import (
	"math"
	"slices"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/calc/judge"
	"ohmcall/calc/verdict"
	"ohmcall/calc/winding"
	"ohmcall/notebook/said"
)

// standing is what the causes were when last told.
type standing struct {
	kind                      string // of complaint
	open, supported, ruledOut []string
	contradictions            []cause.Contradiction
	beside                    []string // ruled out as the reason, and yet shown
	next                      string
}

// finding is something seen.
type finding struct {
	entry      int
	code, text string
}

// facts gathers what the call has established before an entry, for the
// elimination of causes. After a repair a newer fact takes the place of an
// older one that it excludes: the machine is another one now. When the
// complaint is seen again after it, nothing of what the machine did before
// counts, nor what had shown the causes that were mended.
func (c *Call) facts(before int) []cause.Fact {
	c.spend(100*len(c.subjects) + 20*len(c.plates))
	list := factList{c: c, before: before, cut: c.secondSupply(before), air: c.complaint() == said.ACWarm || c.complaint() == said.ACDead, dries: c.complaint() == said.NoDry && c.appliance().OneFan, gas: c.lastOf(c.seenAt["gas-smell"], c.entry)+c.lastOf(c.seenAt["gas-leak"], c.entry) > 0}
	for _, code := range c.seenCodes {
		c.sightings(code, before, list.add)
	}
	list.judgements()
	for _, f := range list.out {
		if f.Code == "contactor-unfed" && (list.has("amps-sound") || list.has("amps-agree") || list.has("amps-high")) {
			list.add("contactor-welded", f.Entry) // what it switches runs
		}
		if f.Code == "legs-overloaded" && (list.has("phases-sound") || list.has("legs-sound")) {
			list.add("overloaded", f.Entry)
		}
	}
	c.iceCold(before, list.add)
	if list.dries && !c.appliance().HeatPumpDryer {
		c.spend(4 * len(c.readings))
		if r := c.lastTemp("room", 0); r != nil && r.entry < before {
			if v := c.value(r); v.Hi < warmRoom {
				list.add("room-cold", r.entry)
			} else if v.Lo >= warmRoom {
				list.add("room-normal", r.entry)
			}
		}
	}
	if n := c.lastIs(c.rooms, before, tooHot); n > 0 {
		list.add("room-hot", n)
	}
	list.doors()
	list.appliance()
	list.plates()
	list.kit()
	list.readCold()
	list.swollen()
	if list.has("winding-low") { // they add up, and one is not what it was made as
		list.out = slices.DeleteFunc(list.out, func(f cause.Fact) bool { return f.Code == "windings-sound" })
	}
	if at := c.renewedBreaker([]string{"fuse"}); at > 0 && slices.ContainsFunc(list.out, func(f cause.Fact) bool { return f.Code == "fuse-sound" && f.Entry > at }) {
		// The leg was lost before the fuse was replaced: it is read again.
		list.out = slices.DeleteFunc(list.out, func(f cause.Fact) bool { return f.Code == "phase-lost" && f.Entry < at })
	}
	byEntry(list.out)
	out := c.supersede(c.cooled(c.restored(c.rattling(list.out, before), before), before))
	if len(c.guarding) > 0 {
		out = append(out, cause.Fact{Code: cause.Bridged, Entry: said.BridgedUntil(c.guardsBefore(before), math.MaxInt)})
	}
	return out
}

// judgements adds what the readings were judged to be.
func (l *factList) judgements() {
	c, before := l.c, l.before
	var cases []cause.Fact
	var parts []partFact
	freezer := 0
	for _, key := range c.subjects {
		kind, name, _ := strings.Cut(key, "\x00")
		if kind == "wind" {
			c.windingFacts(name, before, l.add)
			continue
		}
		if kind == "temp" && c.spaceOf(name) == judge.Freezer {
			freezer = max(freezer, c.lastIs(c.bySubject[key], before, freezes))
		}
		if kind == "part" && !c.ownGear(name) {
			continue
		}
		codes, entries, word := c.codesOf(key, kind, name, before)
		if (kind == "supply" || kind == "volt") && len(entries) > 0 && c.onSecond(l.cut, entries[0]) {
			codes, entries, word = c.codesOf(key, kind, name, l.cut)
		}
		j := c.judged[key]
		if j == nil { // of a machine or part that was replaced since
			j = &judged{}
			j.family, j.part = whichPart(kind, name)
		}
		for i, code := range codes {
			if strings.HasPrefix(code, "coil-") && c.ofOtherCoil(name) {
				continue
			}
			if code == "heater-sound" && j.family == "heater" && c.appliance().Element == "" {
				if twin := twinOf(name); twin != "" && c.unreadBefore(twin, before) {
					continue // the other may be the one that failed
				}
			}
			if j.family != "" {
				parts = append(parts, partFact{cause.Fact{Code: code, Entry: entries[i]}, j.family, j.part, word})
			} else if kind == legAmpsKind && code == "leg-lost" && !c.behindOpen() && c.lastShown([]string{"phase-lost"}) > 0 {
				continue // what the supply lost is lost behind it too, and says nothing of what lies between
			} else if kind != "case" {
				l.add(code, entries[i])
			} else if of, _, _ := strings.Cut(name, "\x00"); of == c.mainMachine() {
				cases = append(cases, cause.Fact{Code: code, Entry: entries[i]})
			}
		}
	}
	if len(cases) > 0 && !c.allPinsToCase(c.mainMachine(), before) {
		// What no fault was found at says nothing of the pins not read.
		cases = slices.DeleteFunc(cases, func(f cause.Fact) bool {
			return f.Code == "insulation-sound" || f.Code == "insulation-no-gross-fault"
		})
	}
	for _, k := range c.curves(c.since(), before) {
		if code := courseFacts[k.Verdict]; code != "" {
			family, part := whichPart("temp", k.Place)
			word := verdict.Sound
			if code == "will-not-reach" || code == "does-not-cool" {
				word = verdict.Failed
			}
			parts = append(parts, partFact{cause.Fact{Code: code, Entry: k.Points[len(k.Points)-1].Entry}, family, part, word})
		}
	}
	if rep := c.repairs(); freezer > 0 && slices.ContainsFunc(parts, func(f partFact) bool {
		return f.family == coldSpace && f.part == "" && f.Code == "temp-above" && phase(rep, f.Entry) == phase(rep, freezer)
	}) {
		l.add("freezer-cold", freezer)
	}
	if c.onThreePhases() && someFuses(parts) {
		parts = slices.DeleteFunc(parts, func(f partFact) bool { return f.Code == "fuse-sound" })
	}
	for _, f := range append(c.severalParts(parts), worstCases(cases)...) {
		l.add(f.Code, f.Entry)
	}
}

// ofOtherCoil tells a coil by its name that is not the one of which a complaint's causes
// speak: the valve of a zone is not that of the gas, nor is either a contactor's.
func (c *Call) ofOtherCoil(name string) bool {
	_, own, ok := strings.Cut(coils, " "+c.complaint()+" ")
	own, _, _ = strings.Cut(own, " ")
	return ok && !strings.Contains(name, own) && said.Has(name, otherCoils)
}

// coils are complaints, each with the word for the coil that they speak of.
const coils = " ac-warm contactor ac-dead contactor three-phase contactor zone-cold zone gas-no-heat gas furnace-no-heat gas gas-quits gas poor-ice gas "

var otherCoils = []string{"zone", "contactor", "revers", "humid", "damper", "circul", "gas", "water", "inlet"}

// appliance adds what the kind of appliance tells.
func (l *factList) appliance() {
	n := l.c.kindSaid(l.before)
	if n == 0 {
		return
	}
	of := l.c.appliance()
	for _, f := range [...]struct {
		is   bool
		code string
	}{
		{l.air && of.FanShared, "fan-shared"},
		{of.Unsealed && !of.Seals, "no-gasket"},
		{of.DirectDrive, "direct-drive"},
		{of.Wired, "wired-in"},
		{of.ThreePhases && slices.Contains(of.Heard, "after-wiring"), "after-wiring"},
		{of.Still && !of.Gas, "no-air-path"},
		{of.Radiant, "no-flame-rod"},
		{of.HeatPumpDryer && !l.has("frost-"), "coil-hidden"},
		{of.Unsealed, "no-sealed-system"},
		{of.Elements && !of.Gas, "several-elements"},
		{of.Electric && !of.Gas, "no-burner"},
		{of.Gas && !of.Electric && !l.has("heater-"), "heater-none"}, // a gas oven can have an electric broiler, which is read then
	} {
		if f.is {
			l.add(f.code, n)
		}
	}
}

// has reports whether there is a fact whose code begins so.
//
//go:noinline
func (l *factList) has(code string) bool {
	return slices.ContainsFunc(l.out, func(f cause.Fact) bool { return strings.HasPrefix(f.Code, code) })
}

// plates adds what the plates tell.
func (l *factList) plates() {
	c, ptc, run, relay := l.c, 0, 0, false
	if rs := append(c.bySubject["part\x00ptc-"+c.gearMachine()], c.bySubject["part\x00ptc"]...); len(rs) > 0 && rs[0].entry < l.before && c.alive(rs[0].entry) {
		ptc = rs[0].entry
	}
	for _, p := range c.plates {
		if p.entry >= l.before || !c.alive(p.entry) {
			continue
		}
		switch {
		case p.key == "start" && p.text == "ptc":
			ptc = p.entry
		case p.key == "start" && p.text == "none":
			l.add("start-cap-none", p.entry)
		case p.key == "start":
			relay = true
		case p.key == "mfd" && !p.ranged && !isStartCap(p.name):
			run = p.entry
		case p.key == "type" && p.text == "universal":
			l.add("brushed", p.entry)
		case p.key == "type" && p.text == said.ThreePhase && len(c.bySubjectKind["mfd"]) == 0 && !c.marked(false):
			l.add("run-cap-none", p.entry)
		case p.key == "run" && p.text == "none":
			l.add("run-cap-none", p.entry)
		case p.key == "volts":
			if v, err := p.q.In("V"); err == nil && v > judge.TwoLegs {
				l.add("two-legs", p.entry)
			}
		}
	}
	if of := c.mainMachine(); c.typeOf(of) == onDrive {
		if p, ok := c.plateAt(of, "type", ""); ok && p.entry < l.before {
			l.add("driven", p.entry)
		} else if n := c.kindSaid(l.before); n > 0 && !ok {
			l.add("driven", n)
		}
	}
	switch {
	case ptc == 0 && (run == 0 || relay) || c.hasStartCap():
	case ptc > 0 && !l.has("start-cap-none"):
		l.add("start-cap-none", ptc)
	case run > 0 && ptc == 0:
		l.add("start-cap-unlikely", run)
	}
}

// swollen takes a can of which nobody said whose it is for the only one that the
// machine has: what moves air has one for running (common practice).
func (l *factList) swollen() {
	at := slices.IndexFunc(l.out, func(f cause.Fact) bool { return f.Code == "cap-bulging" })
	if at < 0 {
		return
	}
	c, of := l.c, l.c.mainMachine()
	kind, _ := cause.ComplaintBy(c.complaint())
	start := c.hasStartCap() || c.plateText(of, "start") == "cap"
	run := c.mayHave("run-cap") || l.has("run-cap-") || c.appliance().Air || c.complaint() != "" && !slices.Contains(kind.Causes, "start-cap-failed")
	noStart, noRun := l.has("start-cap-none"), l.has("run-cap-none")
	switch {
	case l.has("start-cap-bulging") || l.has("run-cap-bulging"):
		l.out = slices.Delete(l.out, at, at+1) // it was said which
	case noRun && !noStart, start && !run:
		l.out[at].Code = "start-cap-bulging"
	case noStart && !noRun, run && !start:
		l.out[at].Code = "run-cap-bulging"
	}
}

// tellSwollen asks whose can it is while nothing tells.
func (c *Call) tellSwollen(codes []string, r *Reply) {
	if among(codes, "cap-bulging") && slices.ContainsFunc(c.facts(math.MaxInt), func(f cause.Fact) bool { return f.Code == "cap-bulging" }) {
		r.add(Ask, "Which capacitor? saw start cap bulging, or saw run cap bulging.")
	}
}

// kit takes a start with a kit for what it is: the kit stands for the device, and brings
// a capacitor. That the machine wants more torque shows only once its own were sound.
func (l *factList) kit() {
	if (l.has("start-device-sound") || l.has("no-start-with-test-device") || l.c.appliance().Air && l.has("run-cap-sound")) && (!l.c.hasStartCap() || l.has("start-cap-sound")) {
		return
	}
	for i := range l.out {
		if l.out[i].Code == "starts-with-kit" {
			l.out[i].Code = "kit-or-gear"
		}
	}
}

// factList gathers facts under the codes that they have in this call.
type factList struct {
	c        *Call
	before   int
	cut      int  // where a second state of the supply begins
	air, gas bool // of an air conditioner; gas was smelled
	dries    bool // a dehumidifier or heat-pump dryer, with one fan
	out      []cause.Fact
}

//go:noinline
func (l *factList) add(code string, entry int) {
	switch {
	case code == "supply-usable" && !l.c.noHeatAtAll():
		return // what is weak is a reason for anything else
	case code == "gas-off" && (l.gas || l.c.shutForWork(entry)):
		return // it was shut for safety, and says nothing of why there was no flame
	case code == "phase-lost" && l.c.behindOpen():
		code = "leg-lost" // read behind what was found open
	case code == "plugged-direct" && l.c.onSecond(l.cut, entry):
		return
	case code == "starts-and-runs" && l.c.onSecond(l.cut, entry):
		code = "starts-on-other-outlet"
	case code == "flame-drops-out" && l.c.appliance().Radiant:
		code = "heat-lost"
	case code == "bake-heats" || code == "broil-heats":
		if element, _, _ := strings.Cut(code, "-"); l.c.appliance().Element == element {
			code = "heats-up" // the one that the complaint is about
		} else {
			code = "other-heats"
		}
	case l.air && airCodes[code] != "" && (l.c.appliance().FanShared || !strings.HasPrefix(code, "cond-fan")):
		code = airCodes[code]
	case l.dries && code == "frost-heavy":
		code = "coil-iced" // as little as in an air conditioner does it tell of the charge
	}
	if _, known := cause.Lookup(code); known {
		l.out = append(l.out, cause.Fact{Code: code, Entry: entry})
	}
}

// behindOpen reports whether a pole or a fuse was found open.
func (c *Call) behindOpen() bool { return c.lastShown([]string{"pole-open", "fuse-open"}) > 0 }

// sightings gives a finding at its first entry that counts and, when it was
// seen again after a repair, at its last.
func (c *Call) sightings(code string, before int, add func(string, int)) {
	first, last := 0, 0
	at := c.seenAt[code]
	for _, n := range at {
		if n < before && c.alive(n) {
			first = n
			break
		}
	}
	if first == 0 {
		return
	}
	add(code, first)
	for i := len(at) - 1; at[i] > first; i-- {
		if at[i] < before && c.alive(at[i]) {
			last = at[i]
			break
		}
	}
	if rep := c.repairs(); last > 0 && phase(rep, last) != phase(rep, first) {
		add(code, last)
	}
}

// allPinsToCase reports whether every pin known before an entry was read to the
// case.
func (c *Call) allPinsToCase(of string, before int) bool {
	return c.machines[of] != nil && len(c.notToCase(of, before)) == 0
}

// notToCase lists the pins known before an entry that were not read to the case.
func (c *Call) notToCase(of string, before int) []string {
	m := c.machines[of]
	if m == nil {
		return nil
	}
	pins := m.result.Pins
	if before != math.MaxInt {
		pins = c.inferWindings(of, before).Pins
	}
	since := c.renewedBefore(of, before)
	var out []string
	for _, p := range pins {
		// Of a winding of which both ends come out, one tells.
		if other := winding.OtherEnd(p); !c.readToCase(of, p, before, since) && (other == "" || !among(out, other) && !c.readToCase(of, other, before, since)) {
			out = append(out, p)
		}
	}
	return out
}

func (c *Call) readToCase(of, pin string, before, since int) bool {
	_, now := c.pairBefore(pairKey(of, pin, caseName), before)
	return now != nil && now.entry > since
}

// worstCases keeps, of what several pins say of one machine's insulation, the
// worst: one bad pin condemns it, whatever the others read.
func worstCases(facts []cause.Fact) []cause.Fact {
	for _, code := range []string{"insulation-failed", "insulation-suspect", "insulation-undecided"} {
		for _, f := range facts {
			if f.Code == code {
				return []cause.Fact{f}
			}
		}
	}
	return facts
}

// codesOf gives the facts of a subject's verdict as of an entry, and its word.
func (c *Call) codesOf(key, kind, name string, before int) (codes []string, entries []int, word verdict.Word) {
	j := c.judged[key]
	if j == nil && before == math.MaxInt {
		return nil, nil, ""
	}
	var v verdict.Verdict
	at := math.MaxInt
	if j != nil {
		v, at = j.verdict, j.since
	}
	if before != math.MaxInt && at >= before {
		w, ok := c.verdictOn(kind, name, before)
		if !ok {
			return nil, nil, ""
		}
		v, at = w, 0
		for _, n := range v.Entries {
			at = max(at, n)
		}
	}
	for _, code := range v.Fact {
		switch {
		case code == "overload-open" && v.Word == verdict.Failed: // so only when read cold
			code = "overload-open-cold"
		case code == "overload-closed" && c.overloadReset(name, before):
			code = "overload-reset"
		}
		codes, entries = append(codes, code), append(entries, at)
	}
	return codes, entries, v.Word
}
