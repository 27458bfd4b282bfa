package call

import (
	"math"
	"slices"
	"strings"
	"time"

	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
	"ohmcall/calc/winding"
	"ohmcall/notebook/said"
)

// kindOf says what a machine is by its name.
func kindOf(of string) winding.Kind {
	switch l := strings.ToLower(of); {
	case strings.HasPrefix(l, "comp"), strings.HasSuffix(l, "-comp"), strings.HasSuffix(l, "-compressor"):
		return winding.Compressor
	case strings.Contains(l, "fan"), strings.Contains(l, "blower"):
		return winding.Fan
	}
	return winding.Motor
}

// inferWindings reads the machine's pins anew.
func (c *Call) inferWindings(of string, before int) winding.Result {
	in := winding.Input{Kind: kindOf(of), Meter: c.meterFor("ohm").Meter, Probes: c.probes(),
		Leads: c.leads(of, before), EqualByDesign: c.plateText(of, "type") == "reversing",
		Diagram: winding.Diagram(c.plateText(of, "windings")), RatedVolts: c.ratedVolts(),
		StartLead: c.plateText(of, "run") == "cap" || c.plateText(of, "start") == "cap"}
	cold, since := c.staleBefore(of, before), c.renewedBefore(of, before)
	stale := func(r *reading) bool { return r.entry <= since || cold(r) }
	mixed, open, heat, last := c.mixedHeat(of, before), false, 0, 0
	worth := func(r *reading) measure.Value {
		if mixed && readHot(r) {
			return fromHot(c.value(r), r.res)
		}
		return c.coldValue(r)
	}
	for _, key := range c.keysOf(of) {
		prev, now := c.pairBefore(key, before)
		if prev != nil && now != nil && !prev.over && !now.over && readHot(now) && !readHot(prev) && !stale(prev) {
			prev, now = nil, prev // the cold pair is what roles and sheet are held to
		}
		if prev != nil && now != nil && prev.cond.test != now.cond.test {
			prev = nil // an insulation tester sees what an ohm-meter does not
		}
		if prev != nil && !stale(prev) {
			v := worth(prev)
			if !mixed && !prev.over && c.hasCooled(prev, now, before) {
				v.Lo = min(v.Lo, winding.ToTemp(v, hotMost, coldTemperature).Lo) // copper reads lower cold
			}
			in.Readings = append(in.Readings, winding.Reading{A: prev.a, B: prev.b, V: v})
		}
		if now != nil && !stale(now) {
			if now.over && now.b != caseName {
				in.Cold = (in.Cold || !open) && (readsCold(now) || prev != nil && prev.over && c.hasCooled(prev, now, before))
				in.Again = in.Again || c.closesBetween(prev, now) && prev.over
				if prev != nil && prev.cond.is("hot") {
					heat = max(heat, prev.entry)
				}
				open, last = true, max(last, now.entry)
			}
			in.Readings = append(in.Readings, winding.Reading{A: now.a, B: now.b, V: worth(now)})
			if now.b == caseName && now.cond.test > 0 {
				in.Tested = append(in.Tested, now.a)
			}
		}
	}
	shell := 0
	if of == defaultMachine {
		shell = c.lastOf(c.seenAt["comp-hot"], last)
	}
	heat = max(heat, shell)
	if in.Cold && !c.rested(last) && (heat == 0 || c.timePassed(heat, last) < coolMinutes*time.Minute) {
		in.Cold, in.Soon = false, true // what was hot cools slowly; what was not may not have warmed yet
	}
	for _, m := range c.marks {
		if m.of == of && m.entry < before && m.entry > since && c.alive(m.entry) {
			in.Marks = append(in.Marks, winding.Mark{Pin: m.pin, Role: m.role, Entry: m.entry})
		}
	}
	named := namedRoles(in, nameRoles)
	in.Marks = append(in.Marks, named...)
	in.Sheet = c.sheet(of, mixed, before)
	c.spend(3000 + 500*len(in.Readings) + 80*len(c.marks))
	res := winding.Infer(in)
	if letters := namedRoles(in, letterRoles); res.State == winding.TooClose && len(letters) == len(letterRoles) && len(res.Pins) == len(letterRoles) {
		named = letters
		in.Marks = append(in.Marks, named...)
		res = winding.Infer(in)
	}
	if len(named) > 0 {
		res.Notes = append(res.Notes, "The names "+strings.Join(pinsOf(named), ", ")+" are taken for what the leads are marked with.")
	}
	t := c.typeOf(of)
	if t == "" && kindOf(of) == winding.Compressor && !c.onThreePhases() && slices.Equal(res.Pins, onDrives) && c.alike(of, before) == alikeAll {
		t = onDrive
	}
	if t == onDrive || t == said.ThreePhase {
		noRoles(&res, t, c.alike(of, before))
	} else if c.onThreePhases() && (res.State == winding.EqualWindings || t == "" && of == c.mainMachine() && kindOf(of) != winding.Fan) {
		noRoles(&res, said.ThreePhase, c.alike(of, before))
	}
	if res.Alike && res.State == winding.DoesNotAddUp && c.onThreePhases() {
		c.lowPair(of, before, &res)
	}
	if res.State == winding.Sound {
		c.openHot(of, before, &res)
	}
	if res.State == winding.OpenWinding && in.Leads == 2 {
		if says := c.maybeDirect(of); says != "" {
			res.State, res.Facts = winding.OpenUnplaced, nil
			res.Notes = []string{res.Proof[0].Pair().String() + " OL: " + says + "."}
		}
	}
	if in.Leads > 0 && c.plateNumber(of, "leads", "") == 0 && (res.State == winding.Sound || res.State == winding.OpenWinding) {
		res.Notes = append(res.Notes, "Taken to have two leads, as drain pumps do (common practice); if it has more: plate leads 3.")
	}
	return res
}

// leads is how many leads a machine has by its plate, 0 when nobody said. A drain
// pump has two, unless a third was read of it (common practice).
func (c *Call) leads(of string, before int) int {
	if n := int(c.plateNumber(of, "leads", "")); n > 0 {
		return n
	}
	drains := of == "drain-pump" || of == drainPump && (c.complaint() == said.NoDrain || said.Has(c.last("unit"), []string{"wash"}) && !said.Has(c.last("unit"), []string{"dish"}))
	if !drains || len(slices.DeleteFunc(c.pairsOf(of, before), func(r *reading) bool { return r.b == caseName })) > 1 {
		return 0
	}
	return 2
}

// nameRoles are names of pins that are roles by themselves, as leads are marked.
var nameRoles = map[string]winding.Role{"com": "common", "common": "common", "start": "start", "run": "run", "hi": "high", "high": "high",
	"med": "medium", "medium": "medium", "lo": "low", "low": "low"}

// letterRoles are the letters printed beside the pins of a compressor. They count
// only where the ohms alone cannot tell: letters may be names like any others.
var letterRoles = map[string]winding.Role{"c": "common", "s": "start", "r": "run"}

// namedRoles gives the roles of pins that are called by them, unless a marking
// says otherwise.
func namedRoles(in winding.Input, nameRoles map[string]winding.Role) []winding.Mark {
	var out []winding.Mark
	for _, r := range in.Readings {
		for _, pin := range []string{r.A, r.B} {
			role := nameRoles[strings.ToLower(pin)]
			marked := func(m winding.Mark) bool { return m.Pin == pin }
			if role != "" && !slices.ContainsFunc(in.Marks, marked) && !slices.ContainsFunc(out, marked) {
				out = append(out, winding.Mark{Pin: pin, Role: role, Entry: r.V.Entry})
			}
		}
	}
	return out
}

func pinsOf(marks []winding.Mark) []string {
	var out []string
	for _, m := range marks {
		out = append(out, m.Pin)
	}
	return out
}

// sheet is what the plate or service sheet says of a machine's windings, nil
// when it says nothing. The readings stand for 25 °C unless all of them were
// read hot: then the sheet is taken to that heat, with the doubt of not
// knowing it.
func (c *Call) sheet(of string, mixed bool, before int) *winding.Sheet {
	s := winding.Sheet{Start: measure.Open(0), Run: measure.Open(0)}
	hot := false
	for _, now := range c.pairsOf(of, before) {
		hot = hot || !mixed && readHot(now)
	}
	for role, v := range map[string]*measure.Value{"start": &s.Start, "run": &s.Run} {
		p, ok := c.plateAt(of, "ohms", role)
		if !ok || !strings.EqualFold(p.name, role) {
			continue
		}
		tol := p.tol
		if tol == 0 {
			tol = plateOhmsTolerance
		}
		x, _ := p.q.In("ohm")
		*v = measure.Within(x, x*tol/100)
		if hot {
			v.Lo = winding.ToTemp(*v, coldTemperature, hotLeast).Lo
			v.Hi = winding.ToTemp(*v, coldTemperature, hotMost).Hi
		}
	}
	if s.Start.Over && s.Run.Over {
		return nil
	}
	return &s
}

// likeness is what three pairs of a machine are to each other.
type likeness int

const (
	unlike     likeness = iota // or not all of them were read
	alikeMaybe                 // they differ by less than the meter's doubt, and by more than like windings do
	alikeAll
)

// Three like windings read within alikeShare of each other; up to countShare where
// less than counts digits of the meter part them (common practice).
const alikeShare, countShare, counts = 0.05, 0.25, 1.5

// alike compares the three pairs of a machine.
func (c *Call) alike(of string, before int) likeness {
	n, low, high := 0, math.Inf(1), math.Inf(-1)
	least, most, count := math.Inf(1), 0.0, 0.0
	for _, r := range c.pairsOf(of, before) {
		if r.b == caseName {
			continue
		}
		v := c.coldValue(r)
		if v.Over {
			return unlike
		}
		n, low, high = n+1, min(low, v.Hi), max(high, v.Lo)
		least, most, count = min(least, v.X), max(most, v.X), max(count, r.res)
	}
	apart := most - least
	switch {
	case n != 3:
		return unlike
	case apart <= alikeShare*least, high <= low && apart <= countShare*least && apart < counts*count:
		return alikeAll
	case high <= low:
		return alikeMaybe
	}
	return unlike
}

// noRoles takes the roles away from a machine whose plate says that it has
// none: an inverter or three-phase machine has three like windings.
func noRoles(res *winding.Result, kind string, like likeness) {
	on, never := "a drive", "Never connect mains or a start kit."
	if kind == said.ThreePhase {
		on, never = "three phases", "Never connect a start kit, a capacitor or a single phase."
		res.Cautions = slices.DeleteFunc(slices.Clone(res.Cautions), func(code string) bool { return code == caution.InverterLine })
	}
	notes := []string{"By its plate or name it runs on " + on + ": no common, start or run; the three pairs should read alike. " + never}
	facts := slices.DeleteFunc(slices.Clone(res.Facts), func(f string) bool {
		return f == winding.FactSound || f == winding.FactDoNotAddUp || f == winding.FactTooHigh || f == winding.FactEqual
	})
	switch state := res.State; {
	case !slices.Contains([]winding.State{winding.EqualWindings, winding.Sound, winding.DoesNotAddUp, winding.TooClose}, state):
		notes = append(notes, slices.DeleteFunc(slices.Clone(res.Notes), func(n string) bool {
			return strings.Contains(n, " is common") || strings.Contains(n, " is start") || strings.Contains(n, " is run")
		})...)
	case like == alikeAll:
		res.State = winding.EqualWindings
		notes = append([]string{"The three pairs read alike, as they should."}, notes...)
		if kind == said.ThreePhase {
			res.State, facts = winding.Sound, append(facts, winding.FactSound)
		} else {
			facts = append(facts, winding.FactEqual)
		}
	case among(res.Facts, winding.FactTooHigh):
		notes = append([]string{"One pair reads more than the two others together, which no windings do: a probe missed its contact. Read all three again."}, notes...)
		facts = append(facts, winding.FactTooHigh)
	case like == alikeMaybe:
		res.State = winding.TooClose
		notes = append([]string{"Whether the three pairs are alike this meter cannot tell: read them on a finer range, the leads zeroed (probes 0.2)."}, notes...)
	default:
		res.State = winding.DoesNotAddUp
		notes = append([]string{"The pairs differ by more than the meter allows: suspect a winding, a joint or the readings; the service sheet has the ohms."}, notes...)
		facts = append(facts, winding.FactDoNotAddUp)
	}
	res.Alike = true
	res.Notes, res.Facts, res.Roles, res.Settled, res.Windings, res.Gap = notes, facts, map[string]winding.Role{}, false, nil, nil
}

// lowPair says of a machine on three phases which pair reads far below what its plate
// gives, as no cold explains.
func (c *Call) lowPair(of string, before int, res *winding.Result) {
	ohms := c.plateNumber(of, "ohms", "ohm")
	for _, r := range c.pairsOf(of, before) {
		if v := c.coldValue(r); r.b != caseName && v.Hi < farBelowSheet*ohms {
			res.Notes[0] = (winding.Pair{r.a, r.b}).String() + " reads far below the " + number(ohms) + " Ω of the plate: a winding is shorted, or the plate is not its own."
			res.Facts = append(res.Facts, "winding-low")
			return
		}
	}
}

// lastCold is the last entry before another at which a pair of a machine was
// read cold, 0 when none was.
func (c *Call) lastCold(of string, before int) int {
	c.spend(2 * len(c.readings))
	for i := len(c.readings) - 1; i >= 0; i-- {
		r := c.readings[i]
		if r.of == of && r.b != "" && r.b != caseName && r.entry < before && readsCold(r) && c.alive(r.entry) {
			return r.entry
		}
	}
	return 0
}

// staleBefore tells an open pair that was read before the machine had cooled:
// a protector that was open then may have closed, so it says nothing of now.
func (c *Call) staleBefore(of string, before int) func(*reading) bool {
	cold := -1 // not looked up yet: open pairs are rare
	return func(r *reading) bool {
		if !r.over || r.b == caseName || readsCold(r) {
			return false
		}
		if cold < 0 {
			cold = max(c.lastCold(of, before), c.closedSince(of, before))
		}
		return r.entry < cold
	}
}

// coolMinutes is the least in which an inside protector cools and closes again:
// they take from some ten minutes to hours (common practice).
const coolMinutes = 15

// closesLater tells a pair that read open, and reads through after a protector
// had the time to cool and close.
func (c *Call) closesLater(prev, now *reading) bool {
	return prev != nil && prev.over && now != nil && !now.over && c.closesBetween(prev, now)
}

// closesBetween reports whether a protector had the time to cool and close between
// two readings of a pair.
func (c *Call) closesBetween(prev, now *reading) bool {
	return prev != nil && now != nil && now.b != caseName && c.timePassed(prev.entry, now.entry) >= coolMinutes*time.Minute
}

// timePassed is the time between two entries, the later one typed behind others
// that stand later still: what follows a line of later is no earlier than that.
func (c *Call) timePassed(from, to int) time.Duration {
	late := c.timeOf(to)
	for n := to - 1; n > max(from, to-mostJudged); n-- {
		if at := c.timeOf(n); at.After(late) && c.alive(n) {
			late = at
		}
	}
	return late.Sub(c.timeOf(from))
}

// hasCooled reports whether a machine was cold when one of its pairs was read
// again: by the word behind it, or the compressor's shell was felt cold about then.
// What it was before may have been hot.
func (c *Call) hasCooled(prev, now *reading, before int) bool {
	if now == nil || readsCold(prev) || prev.b == caseName || prev.cond.hasAt {
		return false
	}
	if readHot(prev) && !readHot(now) || c.closesBetween(prev, now) && readsCold(now) {
		return true
	}
	cold := c.lastOf(c.seenAt["comp-cold"], before-1)
	return c.closesBetween(prev, now) && now.of == defaultMachine && cold > prev.entry && cold > c.lastOf(c.seenAt["comp-hot"], before-1) &&
		c.timePassed(min(cold, now.entry), max(cold, now.entry)) <= besideFor
}

// factOpenHot is that a winding was open when hot and reads through now.
const factOpenHot = "winding-open-hot"

// openHot says of windings that are whole which of them was open when it was hot,
// or some time ago: both pairs to a pin that is not common. No protector lies
// there, so a winding or its joint parts when it warms.
func (c *Call) openHot(of string, before int, res *winding.Result) {
	since := c.renewedBefore(of, before)
	open := map[string]int{}
	at := 0
	for _, key := range c.keysOf(of) {
		prev, now := c.pairBefore(key, before)
		if prev == nil || prev.entry <= since || !prev.over || now.over || now.b == caseName || readsCold(prev) {
			continue
		}
		if prev.cond.is("hot") || c.closesLater(prev, now) {
			open[now.a]++
			open[now.b]++
			at = prev.entry
		}
	}
	for _, pin := range res.Pins {
		if role := res.Roles[pin]; open[pin] >= 2 && (role == winding.Start || role == winding.Run) {
			res.Facts = slices.DeleteFunc(res.Facts, func(f string) bool { return f == winding.FactSound })
			res.Facts = append(res.Facts, factOpenHot)
			res.Notes = append([]string{pin + ", " + string(role) + ", was open in entry " + itoa(at) + " and reads through now: a joint that parts when it warms (inferred)."}, res.Notes...)
			return
		}
	}
}

// closedSince is the last entry before another at which one of two pairs that
// were open read through after such a time, 0 when none did: what was open before
// says nothing of now.
func (c *Call) closedSince(of string, before int) int {
	at, open := 0, 0
	for _, key := range c.keysOf(of) {
		prev, now := c.pairBefore(key, before)
		switch {
		case now == nil || now.b == caseName:
		case c.closesLater(prev, now):
			at, open = max(at, now.entry), open+1
		case now.over:
			open++
		}
	}
	if open < 2 {
		return 0
	}
	return at
}
