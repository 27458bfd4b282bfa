package call

import (
	"iter"
	"math"
	"slices"

	"ohmcall/calc/cause"
	"ohmcall/calc/caution"
	"ohmcall/notebook/said"
)

// alarm is a danger to whoever comes near, and what shows that it is gone. Work
// alone does not: it may have been for something else, unless a guard or a relief valve
// was told of and is named as new or back. Nor does it that a danger
// which comes and goes is not there at one moment: a shock depends on who touches
// what and on what floor, and an aired room smells of no gas; what a test or a
// reading finds holds. That it smokes no more, and makes no carbon monoxide, counts
// once what did was mended (common practice).
type alarm struct {
	code    string
	caution string
	when    func(*Call) bool              // nil: always
	cleared []string                      // a finding or fact that shows it, since
	with    func(c *Call, since int) bool // what must be so since as well; nil when nothing need
	lasting []string                      // what is told so is there until it was worked on
	looked  string                        // the finding that there is no such thing
	proof   string
	renewed func(c *Call) int               // the work by which what was told of is gone, 0 when none is; nil when none can be
	next    string                          // what comes first while it stands
	safe    bool                            // next is to take the power off, and done when it is
	then    string                          // what comes when the power is off and nothing else is left
	first   func(c *Call, since int) string // what comes before anything else when it is off
}

// spillsNothing reports whether flue and burner were tested since, where something
// burns: no carbon monoxide at one moment may be for want of a fire (common practice).
func (c *Call) spillsNothing(since int) bool {
	a := c.appliance()
	return !a.Gas && !a.Furnace || c.lastShown([]string{"no-spill"}) > since
}

// shownGone takes what a line's own words tell of a test for seen, where a danger or a
// joint that was opened asks for it.
func (c *Call) shownGone(r *Reply, text string) {
	list := said.Shown(text)
	if c.madeGood(text) {
		list = append(list, "no-hazard")
	}
	if len(list) == 0 {
		return
	}
	told := []string{} // what is told of in the same line
	standing := c.alarms()
	if len(standing) == 0 && len(c.tightProofs()) == 0 {
		return
	}
	for _, s := range standing {
		if s.at == c.entry {
			told = append(told, s.cleared...)
		}
	}
	for _, code := range list {
		if code = c.testOf(c.inAppliance(code), text, nil); !among(told, code) {
			c.sight(code, text)
			f, _ := cause.Lookup(code)
			r.add(Plain, "Counts as seen: "+f.Help+".").flag(code)
		}
	}
}

// toCase are the facts of a load that has no path to the metal, of which an insulation
// tester proves the first two.
var toCase = []string{"insulation-sound", "heater-insulation-sound", "insulation-no-gross-fault", "heater-no-gross-fault"}

func (c *Call) loadsToCase(since int) bool { return c.loadToRead(since) == "" }

// anyWords are in every text.
var anyWords = []string{""}

// powerOff is how what may spark or shock is made safe.
const powerOff = "take the power off at its source (safe …)"

var alarming = []alarm{
	{code: "co", caution: caution.Monoxide, cleared: []string{"no-co"}, with: (*Call).spillsNothing, renewed: func(c *Call) int { return c.remade("co") },
		lasting: []string{"exchanger", "flue", "chimney", "vent", "soot", "roll", "crack", "block"},
		proof:   "that no carbon monoxide is made or spilt any more, what made it mended (saw spill test good, co 0 ppm)",
		next:    "leave the burner off and air the place: flue, heat exchanger and combustion are for a licensed person with a meter for it; saw spill test good, co 0 ppm when it is gone"},
	{code: "gas-leak", caution: caution.GasSmell, when: burnsFuel, cleared: []string{"no-gas-leak"},
		lasting: []string{"union", "flex", "valve", "cock", "fitting", "connect", "hose", "pipe", "regulator", "flare", "joint", "nut"},
		proof:   "that no fuel gas leaks any more, by a leak test (saw gas leak test good)",
		next:    "leave its cock shut and air the room: a leak of fuel gas is for its supplier or a licensed person; saw gas leak test good when it is mended"},
	{code: "gas-smell", caution: caution.GasSmell, when: (*Call).smellsOfFuel, cleared: []string{"no-gas-leak"},
		proof: "that no fuel gas leaks, by a leak test (saw gas leak test good)",
		next:  "leave its cock shut and air the room: a leak of fuel gas is for its supplier or a licensed person; saw gas leak test good when it was tested"},
	{code: "leak-found", caution: caution.Flammable, when: flammableGas, cleared: []string{"leak-not-found"},
		proof: "that no flammable refrigerant leaks any more (saw no leak found)",
		next:  "air the room and let nothing spark: " + powerOff, safe: true},
	{code: "radiates", caution: caution.Radiation, cleared: []string{"no-radiates"}, with: func(c *Call, since int) bool { return c.lastShown([]string{"no-runs-open"}) > since },
		proof: "that it stops when its door opens, and its leakage measured by the trained (saw stops when door opens, saw leakage test good)",
		next:  powerOff + " and let nobody use it", safe: true, then: "the door, its latch and its switches, read dead (ohm door-switch …); their setting and the leakage are for the trained"},
	{code: stuckDoor, caution: caution.Radiation, when: func(c *Call) bool { return c.appliance().HighVolts }, cleared: []string{"interlocks-good"}, proof: proofInterlocks.what,
		next: powerOff + " and let nobody use it", safe: true, then: "fit a new one of its type for each door switch that conducts with the door open and for the monitor switch that guards them, set latch and door, and read each again (ohm primary-switch … open): for the trained"},
	{code: stuckDoor, caution: caution.HotMoving, when: opensToMoving, cleared: []string{"interlocks-good"}, proof: "its door or lid switch read open with the door open (ohm door-switch … open)",
		next: powerOff, safe: true, then: "fit a new door or lid switch of its type, or free what should let it go, and read it again (ohm door-switch … open)"},
	{code: "runs-open", caution: caution.HotMoving, when: opensToMoving, cleared: []string{"no-runs-open"}, lasting: anyWords,
		proof: "that it stops when its door or lid opens, its switch mended (saw stops when door opens)",
		next:  powerOff, safe: true, then: "its door or lid switch, read dead (ohm door-switch …)"},
	{code: "metal-live", caution: caution.Shock, cleared: []string{"metal-quiet"},
		proof: "that no volts stand on the metal any more (volt case earth …)",
		next:  powerOff, safe: true, first: (*Call).earthFirst},
	{code: "shock", caution: caution.Shock, cleared: []string{"earth-continuity-sound"}, with: (*Call).loadsToCase,
		proof: "that what gave the shock is gone (ohm earth …; each pin and heater to the case by an insulation tester, ohm heater case … test 500V, or OL with volt case earth … run; saw no heater where there is none)",
		next:  powerOff, safe: true, first: (*Call).earthFirst},
	{code: "outlet-wrong", caution: caution.Outlet, cleared: []string{"no-outlet-wrong"},
		proof: "that the outlet has its earth, and line and neutral in their places (saw outlet wired right)",
		next:  powerOff + " and leave it off that outlet, which is an electrician's", safe: true, then: "saw outlet wired right, when the electrician was there"},
	{code: "earth-off", caution: caution.EarthOff, cleared: []string{"earth-continuity-sound"}, lasting: anyWords,
		proof: "that its metal has its earth again, what held it mended (ohm earth …)",
		next:  powerOff, safe: true, then: "fit the earth wire or its screw and read its path: ohm earth … test 10A"},
	{code: "smoke", caution: caution.Smoke, cleared: []string{"no-smoke"}, lasting: anyWords, looked: "connections-sound", renewed: func(c *Call) int { return c.remade("smoke") },
		proof: "that it neither smokes nor smells burnt any more, the burnt place mended (saw no smoke)",
		next:  powerOff, safe: true, then: "find the burnt place with the power off: saw burnt wire, or saw terminals tight"},
	{code: "hazard", caution: caution.Unsafe, cleared: []string{"no-hazard"},
		proof: "that what can hurt is gone (saw hazard gone)",
		next:  powerOff + ", shut its gas if it has any, and let nobody near", safe: true, then: "mend what can hurt; saw hazard gone when it is"},
	{code: "called-unsafe", caution: caution.Unsafe, cleared: []string{"no-called-unsafe"},
		proof: "that it is safe to use (saw safe to use)",
		next:  powerOff + " and keep it off until what makes it unsafe is mended", safe: true, then: "mend what makes it unsafe; saw safe to use when it is"},
}

// earthFirst is what is read first where metal was live, "" when it was since. Where
// shocks are the complaint, its own course has it.
func (c *Call) earthFirst(since int) string {
	c.spend(len(c.readings))
	toCase := c.lastAfter(since, func(r *reading) bool { return r.quality.word == "ohm" && r.b == caseName })
	switch {
	case c.complaint() == "shocks":
		return ""
	case c.lastShown([]string{"earth-continuity-sound", "earth-continuity-failed", "earth-undecided"}) <= since:
		return "the earth path: ohm earth … test 10A, unplugged"
	case toCase == nil:
		return "what can lead to the metal: each pin and heater to the case (ohm heater case …)"
	}
	return ""
}

// opensToMoving reports whether a door or lid of the appliance keeps hands from
// what turns or sprays.
func opensToMoving(c *Call) bool {
	return said.Has(c.last("unit")+" "+c.last("fault"), []string{"wash", "dryer", "drier", "tumbl", "laundry"})
}

// standingAlarm is an alarm that nothing has cleared since it was last seen, or since
// the complaint spoke of it.
type standingAlarm struct {
	*alarm
	at   int
	text string
}

// tellings are where a danger was told of last, and by which finding.
type tellings struct {
	at int
	of string
}

// toldAlarms goes through the dangers that were told of in this machine.
func (c *Call) toldAlarms() iter.Seq2[*alarm, tellings] {
	return func(yield func(*alarm, tellings) bool) {
		heard := c.heardHere()
		for i := range alarming {
			a := &alarming[i]
			if !c.toldOf(a, heard) || a.when != nil && !a.when(c) {
				continue
			}
			at, of := c.toldAt(a, heard)
			if !yield(a, tellings{at, of}) {
				return
			}
		}
	}
}

// alarms lists the dangers that were seen or that the complaint speaks of and
// that nothing shows to be gone.
func (c *Call) alarms() []standingAlarm {
	var out []standingAlarm
	for a, told := range c.toldAlarms() {
		at, of := told.at, told.of
		if a.code == "hazard" && at > 0 {
			if left := c.hazardsLeft(); len(left) > 0 {
				at = left[len(left)-1]
			}
		}
		f, _ := cause.Lookup(of)
		text := f.Help + atEntry(at)
		if at == 0 && of != "" {
			at = c.lastAt("fault")
			text = "the complaint speaks of it: " + f.Help + atEntry(at)
		}
		if at > 0 && !c.cleared(a, at) {
			out = append(out, standingAlarm{a, at, text + ", and nothing since shows that it is gone"})
		}
	}
	return out
}

// danger is the alarm of a finding, nil when it is none in this appliance.
//
//go:noinline
func (c *Call) danger(code string) *alarm {
	other := code == "gas-smell" && said.OtherGas(c.line(c.entry))
	if code == "gas-smell" && !other && c.smellsOfCharge() {
		code = "leak-found"
	}
	for i := range alarming {
		if a := &alarming[i]; a.code == code && (a.when == nil || other || a.when(c)) {
			return a
		}
	}
	return nil
}

// heard reports whether the complaint speaks of a finding.
func (c *Call) heard(code string) bool {
	return among(c.heardHere(), code)
}

// heardHere are the findings of which the complaint speaks, as they are in this
// appliance.
func (c *Call) heardHere() []string {
	var out []string
	for _, h := range c.appliance().Heard {
		out = append(out, c.inAppliance(h))
	}
	return out
}

// toldOf reports whether anything in the call tells of an alarm at all.
func (c *Call) toldOf(a *alarm, heard []string) bool {
	return len(c.seenAt[a.code]) > 0 || a.code == stuckDoor && len(c.doorOpen) > 0 || a.code == "metal-live" && len(c.bySubjectKind["metal"]) > 0 || among(heard, a.code) ||
		a.code == "leak-found" && (len(c.seenAt["gas-smell"]) > 0 || among(heard, "gas-smell"))
}

// ofCharge tell of a leak where no other gas burns: a smell may be told before the plate is.
var ofCharge = []string{"leak-found", "gas-smell"}

// toldAt is the last entry that tells of an alarm, 0 when the complaint alone does, and
// the finding by which, "" when none does.
func (c *Call) toldAt(a *alarm, heard []string) (at int, of string) {
	codes := ofCharge
	if a.code != codes[0] || !c.smellsOfCharge() {
		codes = []string{a.code}
	}
	for i := range codes {
		n, is := c.lastShown(codes[i:i+1]), among(heard, codes[i])
		if codes[i] == "gas-smell" && (n > 0 || is) && c.smellsOfCharge() {
			n = c.smelt(a.code == "gas-smell")
			is = is && n == c.lastAt("fault")
			if is {
				n = 0 // the complaint alone
			}
		}
		if n > at || of == "" && is {
			at, of = n, codes[i]
		}
	}
	if a.code == stuckDoor {
		if stuck, _, _ := c.interlocks(c.entry + 1); stuck > 0 {
			return max(at, stuck), a.code
		}
	}
	return at, of
}

// cleared reports whether an alarm is shown to be gone since an entry.
func (c *Call) cleared(a *alarm, at int) bool {
	n := c.lastShown(a.cleared)
	if a.renewed != nil && a.renewed(c) > at {
		return true
	}
	if a.code == "hazard" {
		return len(c.hazardsLeft()) == 0
	}
	if a.code == stuckDoor {
		_, n, _ = c.interlocks(c.entry + 1)
	}
	if among(burning, a.code) || a.code == "smoke" {
		n = c.testedThere(a, at, n)
	}
	return n > at && (a.with == nil || a.with(c, at)) && !c.lasts(a, n)
}

// remade is the last work by which all that was told of a danger is made good in its own
// words: each burnt thing is renewed, where nothing smoked, sparked or smelled; or the
// thing is mended and tested in one line. It is 0 when something of it is not.
func (c *Call) remade(code string) int {
	last, told := 0, c.seenAt[code]
	if c.heard(code) {
		told = append([]int{c.lastAt("fault")}, told...)
	}
	c.spend(100 * len(told))
	for _, n := range told {
		if !c.alive(n) {
			continue
		}
		at := 0
		if n > 0 && n <= len(c.entries) { // not the line at hand
			at = c.remadeSince(code, n)
		}
		if at == 0 {
			return 0
		}
		last = max(last, at)
	}
	return last
}

// remadeSince is remade of what one entry tells.
func (c *Call) remadeSince(code string, told int) int {
	line, last := c.entries[told-1].Line, 0
	if code == "smoke" && len(c.renewed) > 0 {
		for _, part := range said.Burnt(line) {
			at := c.partRenewed(part, told)
			if at == 0 {
				last = 0
				break
			}
			last = max(last, at)
		}
	}
	for i := len(c.works) - 1; last == 0 && i >= 0 && c.works[i].entry > told; i-- {
		c.spend(300)
		if w := &c.works[i]; w.kind == "did" && c.alive(w.entry) && !c.saidBefore(w.entry) && said.Remade(code, line, w.text) {
			last = w.entry
		}
	}
	return last
}

// partRenewed is the first work since an entry by which a thing of several words is
// renewed, 0 when none is.
func (c *Call) partRenewed(part []string, since int) int {
	list := c.renewed[max(0, len(c.renewed)-mostRenewals):]
	for i := range list {
		c.spend(100)
		if w := &list[i]; c.alive(w.entry) && c.workAt(w.entry) > since && said.IsOf(w.text, part) {
			return c.workAt(w.entry)
		}
	}
	return 0
}

// lasts reports whether a danger was told of before an entry by what does not go by
// itself, and nothing was mended in between.
func (c *Call) lasts(a *alarm, until int) bool {
	if a.lasting == nil || a.looked != "" && c.lastShown([]string{a.looked}) > c.lastShown([]string{a.code}) {
		return false
	}
	told := c.seenAt[a.code]
	if c.heard(a.code) {
		told = append([]int{c.lastAt("fault")}, told...)
	}
	c.spend(len(told) + len(c.mended))
	var out []said.Guard
	if a.code == "co" && len(c.guarding) > 0 {
		out = c.defeated()
	}
	for _, n := range told {
		if n >= until || !c.alive(n) || !said.Has(c.entries[n-1].Line, a.lasting) || c.mendsDanger(a, n, until) {
			continue
		}
		// What was told of as a device that was bridged is mended with its bridge.
		if a.code != "co" || slices.ContainsFunc(out, func(g said.Guard) bool { return g.Entry == n }) || said.LastsBut(c.entries[n-1].Line, a.lasting) {
			return true
		}
	}
	return false
}

// alarmStands reports whether an alarm stands.
func (c *Call) alarmStands(code string) bool {
	return slices.ContainsFunc(c.alarms(), func(s standingAlarm) bool { return s.code == code })
}

// alarmNext is the step that the first standing alarm asks for, of those that
// come before anything else or of those that come last; "" when none does.
func (c *Call) alarmNext(late bool) string {
	dead := c.deadAt(c.entry)
	for _, a := range c.alarms() {
		first := ""
		if a.first != nil {
			first = a.first(c, a.at)
		}
		switch off := a.safe && (dead || a.first == nil && c.lastMended() > a.at); {
		case late && off && a.then != "":
			return a.then
		case late || off && first == "":
		case off:
			return first
		case first != "":
			return a.next + ", then " + first
		default:
			return a.next
		}
	}
	return ""
}

// stands says of findings by which a danger is not taken off what does it.
func (c *Call) stands(r *Reply, codes []string) {
	for _, a := range c.alarms() {
		if !among(codes, "no-"+a.code) {
			continue
		}
		if still := c.stillHazard(); a.code == "hazard" && still != "" {
			r.add(Ask, still)
			continue
		}
		first := ""
		if c.lasts(a.alarm, c.entry) {
			first = ", after the work that mends it (did …); if there was none, strike " + itoa(a.at)
		}
		r.add(Ask, "That does not take the danger off: what is wanted is "+c.proofOf(a.alarm, a.at)+first+".")
	}
}

// burning are the alarms of a gas that a spark sets off.
var burning = []string{"gas-leak", "gas-smell", "leak-found"}

// sparking notes a line that shows something under power while gas that can burn
// was found and not shown to be gone, and warns of it.
func (c *Call) sparking(r *Reply) {
	for _, a := range c.alarms() {
		if !among(burning, a.code) {
			continue
		} else if at, _ := c.toldAt(a.alarm, nil); at < c.entry {
			c.warnAgain(r, a.caution)
			c.sparked = append(c.sparked, c.entry)
			return
		}
	}
}

// warnOfDanger gives the cautions of the dangers among findings.
func (c *Call) warnOfDanger(r *Reply, codes []string) {
	for _, code := range codes {
		if a := c.danger(code); a != nil {
			c.warnAgain(r, a.caution)
		}
	}
}

// lastShown is the last entry that shows one of several facts, 0 when none does.
func (c *Call) lastShown(codes []string) int {
	last := 0
	for _, code := range codes {
		last = max(last, c.lastOf(c.seenAt[code], c.entry))
	}
	for _, j := range c.verdictsWith(codes...) {
		if n := lastEntry(j.verdict); n != math.MaxInt {
			last = max(last, n)
		}
	}
	return last
}

// alarmProofs are what shows that the dangers of a call are gone.
func (c *Call) alarmProofs() []proofWanted {
	var out []proofWanted
	var last []string
	for a, told := range c.toldAlarms() {
		at, of := told.at, told.of
		if of == "" || slices.Equal(last, a.cleared) && a.with == nil {
			continue // or the danger before it is gone by the same
		}
		last = a.cleared
		out = append(out, proofWanted{c.proofOf(a, max(at, c.lastAt("fault"))), func(c *Call, since int) shown {
			held := !c.alarmStands(a.code)
			text := ""
			n := c.lastShown(a.cleared)
			if held && n == 0 && a.renewed != nil {
				n = a.renewed(c)
				text = "what was told of was renewed or mended" + atEntry(n)
			} else if held && n > 0 {
				text = "by what was found" + atEntry(n)
			}
			return shown{held: held, text: text}
		}})
	}
	return out
}
