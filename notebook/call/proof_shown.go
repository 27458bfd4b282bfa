package call

import (
	"math"
	"slices"
	"strings"
	"time"

	"ohmcall/calc/cause"
	"ohmcall/calc/verdict"
	"ohmcall/notebook/said"
)

// proofWanted is one thing that proves a repair: its words, and how far it is
// shown after the repair.
type proofWanted struct {
	what string
	held func(c *Call, since int) shown
}

// shown is how far one point of a proof is shown: only what a reading's own
// verdict finds sound proves it.
type shown struct {
	held bool
	open bool   // it was read, and cannot be told
	text string // the value with its verdict and entry, "" when nothing was taken
}

// words says it for the record.
func (s shown) words() string {
	word := "not shown"
	if s.held {
		word = "shown"
	}
	if s.text == "" {
		return word
	}
	return word + ": " + s.text
}

// point is the name of the proof without the line to type.
func (p proofWanted) point() string {
	name, _, _ := strings.Cut(p.what, " (")
	return name
}

// lastAfter is the last reading after an entry that fits and counts.
func (c *Call) lastAfter(since int, fits func(*reading) bool) *reading {
	for i := len(c.readings) - 1; i >= 0 && c.readings[i].entry > since; i-- {
		if r := c.readings[i]; c.alive(r.entry) && fits(r) {
			return r
		}
	}
	return nil
}

// shownBy asks a reading's own verdict.
func (c *Call) shownBy(r *reading) shown {
	if r == nil {
		return shown{}
	}
	kind, name := c.subject(r)
	var v verdict.Verdict
	judged := kind != ""
	switch {
	case kind == "amp":
		v = c.judgeAmp(name, r)
	case kind == surgeKind:
		v = c.judgeSurge(name, r, math.MaxInt)
	case judged:
		v, judged = c.verdictOn(kind, name, r.entry+1)
	}
	entry := " (entry " + itoa(r.entry) + ")"
	if !judged {
		return shown{held: true, text: r.shown() + entry}
	}
	out := shown{held: v.Word == verdict.Sound, text: r.shown() + ", " + string(v.Word) + entry}
	if among(v.Fact, "amps-agree") { // as much as readings with their doubts can show
		return shown{held: true, text: r.shown() + ", what the plate says, within the doubt of the reading" + entry}
	}
	if v.Word == verdict.CannotTell {
		out.open = true
		out.text += ", " + v.Text // which says what would settle it
	}
	return out
}

// read makes a proof of the last reading of a kind at a place, under one of the
// conditions when there are any.
//
//go:noinline
func read(kind, place string, conditions ...string) func(*Call, int) shown {
	return func(c *Call, since int) shown {
		return c.shownBy(c.lastAfter(since, func(r *reading) bool {
			return r.quality.word == kind && (place == "" || samePoints(r, []string{place})) && underOne(r, conditions)
		}))
	}
}

func underOne(r *reading, conditions []string) bool {
	for _, w := range conditions {
		if r.cond.is(w) {
			return true
		}
	}
	return len(conditions) == 0
}

// fans are the fans of a machine by their names.
var fans = []string{"cond-fan", "evap-fan", "blower", "fan"}

// running are the amps of a machine that has started.
func running(c *Call, since int) shown {
	return c.shownBy(c.lastAfter(since, func(r *reading) bool {
		return r.quality.word == "amp" && !r.cond.is("peak") && !r.cond.is("start") && !c.standsCold(r)
	}))
}

// machineRuns are the running amps of the machine itself: those of a heater, a fan
// or a capacitor beside it say nothing of it.
func machineRuns(c *Call, since int) shown {
	return c.shownBy(c.lastAfter(since, func(r *reading) bool {
		return r.quality.word == "amp" && !r.cond.is("peak") && !r.cond.is("start") && !ofDefroster(r.a) && !c.isCapacitor(r.a) && !among(fans, strings.ToLower(r.a)) && !c.standsCold(r)
	}))
}

// seen makes a proof of a finding. Where it is called its body would be copied.
//
//go:noinline
func seen(codes ...string) func(*Call, int) shown {
	return func(c *Call, since int) shown {
		for _, code := range codes {
			for _, n := range c.seenAt[code] {
				if n > since && c.alive(n) {
					f, _ := cause.Lookup(code)
					return shown{held: true, text: f.Help + " (entry " + itoa(n) + ")"}
				}
			}
		}
		return shown{}
	}
}

// startSeen is that the machine starts; of a fan or pump that it is seen to run, of what
// has but its motor what that drives too.
func startSeen(c *Call, since int) shown {
	if s := seen("drum-turns", "spins", "agitates", "pump-runs")(c, since); s.held && c.appliance().Unsealed {
		return s
	}
	return seen("starts-and-runs", strings.ToLower(c.mainMachine())+"-runs")(c, since)
}

// unheated are places whose temperature is not what a heater makes of air or water:
// of what it takes in, and of what leaves by its flue.
var unheated = append([]string{"room", "outdoor", "outside", "ambient", "kitchen", "set", "flue", "stack", "inlet"}, airTaken...)

// leastRise is the least, in kelvin, by which furnaces are marked to warm the air,
// 30 °F (common practice).
const leastRise = 16.7

// hottest is the most, in °C, that what heats may give out when all is well: the air of
// a furnace, whose limits open not far above; the air out of a dryer; tapped water, which
// scalds above it (common practice).
var hottest = []struct {
	units, places []string
	celsius       float64
	says          string
}{
	{[]string{"furnace", "air handler"}, []string{"supply", "air", "plenum", "register", "outlet"}, 82.2, "too little air, or too much gas"},
	{[]string{"dryer", "drier"}, []string{"exhaust", "vent", "outlet", "air", "dryer"}, 80, "too little air, or a thermostat that does not open"},
	{[]string{"water heater", "immersion", "geyser"}, []string{"water", "tap", "outlet", "hot"}, 60, "it scalds: the thermostat is set too high or stuck"},
}

// tooHot says of a temperature that it is more than what heats may give out, "" when
// it is not.
func (c *Call) tooHot(r *reading) string {
	for _, h := range hottest {
		if c.value(r).Lo > h.celsius && said.Has(c.last("unit"), h.units) && startsWithAny(strings.ToLower(r.a), h.places) {
			unit := ""
			if r.q.UCUM() == "[degF]" {
				unit = "F"
			}
			return ": hotter than " + degrees(h.celsius, unit) + ", " + h.says + " (common practice)"
		}
	}
	return ""
}

// tapped are places of heated water wherever they are, fromTank those of what heats water.
var (
	tapped   = []string{"water", "tap", "faucet", "shower", "sink"}
	fromTank = []string{"outlet", "hot", "tank"}
)

// cooks is that it is seen to heat what stands in it or on it, else a temperature of that.
func cooks(c *Call, since int) shown {
	if s := seen("heats-up")(c, since); s.held {
		return s
	}
	return heat(c, since)
}

// heat is the temperature that a heater reaches: that it is seen to heat alone says less.
func heat(c *Call, since int) shown {
	r := c.lastAfter(since, ofHeat)
	if r == nil {
		s := seen("heats-up")(c, since)
		s.held = false
		return s
	}
	if much := c.tooHot(r); much != "" {
		return shown{text: r.shown() + " (entry " + itoa(r.entry) + ")" + much}
	}
	if in := c.lastAfter(since, func(r *reading) bool {
		return r.quality.word == "temp" && !r.over && among(airTaken, strings.ToLower(r.a))
	}); in != nil && c.appliance().Furnace {
		d := c.value(r).Lo - c.value(in).Hi
		return shown{held: c.value(r).Lo >= heatedWater || d >= leastRise,
			text: r.shown() + " from " + in.shown() + " (entries " + itoa(min(in.entry, r.entry)) + ", " + itoa(max(in.entry, r.entry)) + ")"}
	}
	least, says := float64(heated), ": not surely 50 °C (122 °F)"
	if place := strings.ToLower(r.a); c.appliance().Furnace || startsWithAny(place, tapped) || c.appliance().Immersed && startsWithAny(place, fromTank) {
		least, says = heatedWater, ": not surely 40 °C (104 °F)"
	}
	s := shown{held: c.value(r).Lo >= least, text: r.shown() + " (entry " + itoa(r.entry) + ")"}
	if !s.held {
		s.text += says + ", from where on it tells of heat (common practice)"
	}
	return s
}

// heaterRenewed is the last entry by which a heater was replaced in a call about
// heat, 0 when none was.
func (c *Call) heaterRenewed() int {
	if c.complaint() != "no-heat" && c.complaint() != "shocks" {
		return 0
	}
	return c.renewedAt("heater")
}

// newHeater is the insulation of a heater put in place of another.
func newHeater(c *Call, _ int) shown {
	return c.toCase(c.lastAfter(c.heaterRenewed(), func(r *reading) bool { return r.quality.word == "ohm" && heaterOf(r) != "" }))
}

// newPins is the insulation of a machine put in place of another, which is
// read before it is energised.
func newPins(c *Call, since int) shown {
	of := c.mainMachine()
	at := c.renewedAt(of)
	r := c.lastAfter(at, func(r *reading) bool { return r.quality.word == "ohm" && r.of == of && r.b == caseName })
	return c.toCase(r)
}

// toCase asks a reading to the case: no gross fault is what an ordinary meter
// can say.
func (c *Call) toCase(r *reading) shown {
	s := c.shownBy(r)
	if r != nil && r.over && !s.held {
		kind, name := c.subject(r)
		v, _ := c.verdictOn(kind, name, r.entry+1)
		s.held = v.Word == verdict.CannotTell
	}
	return s
}

// whole makes a proof of what several readings amount to: the verdict that the
// last of them has.
func whole(fits func(*Call, *reading) bool) func(*Call, int) shown {
	return func(c *Call, since int) shown {
		r := c.lastAfter(since, func(r *reading) bool { return fits(c, r) })
		if r == nil {
			return shown{}
		}
		kind, name := c.subject(r)
		v, ok := c.verdictOn(kind, name, r.entry+1)
		if !ok || len(v.Entries) == 0 || v.Entries[0] <= since {
			return shown{text: r.shown() + " (entry " + itoa(r.entry) + "), the others are wanting"}
		}
		return shown{held: v.Word == verdict.Sound, text: v.Text + ", " + string(v.Word) + " (" + entryList(v.Entries) + ")"}
	}
}

// settles is how long a machine moves air before the air tells how well it works
// (common practice).
const settles = 10 * time.Minute

// airSettled is the proof by the air: by the record's clock the work lies far enough back.
func airSettled(c *Call, since int) shown {
	s := whole((*Call).ofAir)(c, since)
	late := func(r *reading) bool { return c.ofAir(r) && r.at.Sub(c.entries[since-1].At) >= settles }
	if s.held && since > 0 && c.lastAfter(since, late) == nil {
		s.held = false
		s.text += ", but by the clock of the record less than ten minutes after the work (entry " + itoa(since) + "); with its time before it: +10min temp …"
	}
	return s
}

// atLegs tells volts between legs at the machine.
func (c *Call) atLegs(r *reading) bool {
	p := c.legPair(r)
	return p != "" && p[0] != 'L'
}

// seenAgain is the entry at which the complaint was seen or told again after the last
// repair, or what fails beside it, 0 when it was not or was seen to be gone since.
func (c *Call) seenAgain() int {
	complaints, since := c.complaintsTold(), c.since()
	told := c.lastOf(c.relapsed, c.entry)
	for told > 0 && c.lastOf(c.unsupplied, told) == told && c.lastMended() > told {
		c.spend(10)
		told = c.lastOf(c.relapsed, told-1) // the part came
	}
	if told < since || slices.Contains(c.warmed, told) && c.coldAgain(told) {
		told = 0
	}
	for i := len(c.findings) - 1; i >= 0 && c.findings[i].entry > max(since, told); i-- {
		f := &c.findings[i]
		switch {
		case f.code == "" || !c.alive(f.entry):
		case f.code == "complaint-gone", cures(complaints, f.code):
			return 0
		case f.code == "complaint-back", persists(complaints, f.code), c.failsBeside(f):
			return f.entry
		}
	}
	return told
}

// failsBeside reports whether a finding is of a fan that stands, of runs that are short or
// of a part that burst, and neither of an old part nor of a stop that is due.
func (c *Call) failsBeside(f *finding) bool {
	a := c.appliance()
	return (among(stalls, f.code) && (a.Air || a.Furnace || intersects(c.complaintsTold(), coldWanted)) || among(wrecks, f.code) || f.code == "frost-partial" && intersects(c.complaintsTold(), coldWanted) && c.cameDown() && c.lastOf(c.seenAt["frost-even"], c.entry) < f.entry) && !said.Has(f.text, due) &&
		c.lastOf(c.seenAt[strings.Replace(f.code, "stopped", "runs", 1)], c.entry) <= f.entry
}

var (
	stalls = []string{"short-cycles", "cond-fan-stopped", "evap-fan-stopped", "blower-stopped"}
	wrecks = []string{"device-burnt", "cap-bulging", "run-cap-bulging", "start-cap-bulging"}
	due    = []string{"old", "removed", "arriv", "was ", "when", "door", "defrost", "after", "with it", "cycles off", "unplug"}
)
