package call

import (
	"math"
	"slices"

	"ohmcall/calc/cause"
	"ohmcall/calc/caution"
	"ohmcall/calc/repair"
	"ohmcall/notebook/said"
)

// alarm is a danger to whoever comes near, and what shows that it is gone. Work
// alone does not: it may have been for something else.
type alarm struct {
	code    string
	caution string
	when    func(*Call) bool // nil: always
	cleared []string         // a finding or fact that shows it, since
	with    []string         // one of which must be shown as well; nil when none need
	proof   string
	next    string // what comes first while it stands
	late    bool   // next comes only when nothing else is left
}

// offPower are the states in which a unit has nothing that could spark.
var offPower = []string{"unplugged", "tagged out", "taken away"}

// flammableGas reports whether the machine's refrigerant burns, and the unit was
// not left without its power.
func flammableGas(c *Call) bool {
	as, _ := c.leftAs()
	return repair.Flammable(c.gas()) && !among(offPower, said.StateLeft(as))
}

// soundToCase are the facts of which one must be shown where metal was felt live.
var soundToCase = []string{"insulation-no-gross-fault", "insulation-sound", "heater-no-gross-fault", "heater-insulation-sound"}

var alarming = []alarm{
	{code: "co", caution: caution.Monoxide, cleared: []string{"no-co"},
		proof: "that no carbon monoxide is made or spilt any more (saw no co)",
		next:  "leave the burner off and air the place: flue, heat exchanger and combustion are for a licensed person with a meter for it; saw no co when it is gone"},
	{code: "gas-leak", caution: caution.GasSmell, cleared: []string{"no-gas-leak"},
		proof: "that no fuel gas leaks any more, by a leak test (saw gas leak test good)",
		next:  "leave its cock shut and air the room: a leak of fuel gas is for its supplier or a licensed person; saw gas leak test good when it is mended"},
	{code: "gas-smell", caution: caution.GasSmell, cleared: []string{"no-gas-smell", "no-gas-leak"},
		proof: "that no gas is smelled any more (saw no gas smell)",
		next:  "leave its cock shut and air the room: a leak of fuel gas is for its supplier or a licensed person; saw no gas smell when it is gone"},
	{code: "leak-found", caution: caution.Flammable, when: flammableGas, cleared: []string{"leak-not-found"},
		proof: "that no flammable refrigerant leaks any more (saw no leak found)"},
	{code: "metal-live", caution: caution.Shock, cleared: []string{"earth-continuity-sound", "metal-quiet"}, with: append([]string{"metal-quiet"}, soundToCase...),
		proof: "that no volts stand on the metal any more (volt case earth …)",
		next:  "take the power off at its source; then the earth path, and what leads to the metal: ohm earth …, each pin and heater to the case"},
	{code: "shock", caution: caution.Shock, cleared: []string{"earth-continuity-sound"}, with: soundToCase,
		proof: "that it gives no shock any more (saw no shock; or ohm earth … and each pin to the case, sound)"},
	{code: "smoke", caution: caution.Smoke, cleared: []string{"no-smoke"},
		proof: "that it neither smokes nor smells burnt any more (saw no smoke)",
		next:  "find the burnt place with the power off: saw burnt wire, or saw terminals tight", late: true},
	{code: "called-unsafe", caution: caution.Unsafe, cleared: []string{"no-called-unsafe"},
		proof: "that it is safe to use (saw safe to use)"},
}

// standingAlarm is an alarm that nothing has cleared since it was last seen, or since
// the complaint spoke of it.
type standingAlarm struct {
	alarm
	text string
}

// alarms lists the dangers that were seen or that the complaint speaks of and
// that nothing shows to be gone.
func (c *Call) alarms() []standingAlarm {
	var out []standingAlarm
	for _, a := range alarming {
		if !c.toldOf(a) || a.when != nil && !a.when(c) {
			continue
		}
		f, _ := cause.Lookup(a.code)
		at := c.lastShown([]string{a.code})
		text := f.Help + atEntry(at)
		if at == 0 && among(c.appliance().Heard, a.code) {
			at = c.lastAt("fault")
			text = "the complaint speaks of it: " + f.Help + atEntry(at)
		}
		if at > 0 && !c.cleared(a, at) {
			out = append(out, standingAlarm{a, text + ", and nothing since shows that it is gone"})
		}
	}
	return out
}

// toldOf reports whether anything in the call tells of an alarm at all.
func (c *Call) toldOf(a alarm) bool {
	return len(c.seenAt[a.code]) > 0 || a.code == "metal-live" && len(c.bySubjectKind["metal"]) > 0 || among(c.appliance().Heard, a.code)
}

// cleared reports whether an alarm is shown to be gone since an entry.
func (c *Call) cleared(a alarm, at int) bool {
	return c.lastShown([]string{"no-" + a.code}) > at || c.lastShown(a.cleared) > at && (a.with == nil || c.lastShown(a.with) > 0)
}

// alarmStands reports whether an alarm stands.
func (c *Call) alarmStands(code string) bool {
	return slices.ContainsFunc(c.alarms(), func(s standingAlarm) bool { return s.code == code })
}

// alarmNext is the step that the first standing alarm asks for, of those that
// come before anything else or of those that come last; "" when none does.
func (c *Call) alarmNext(late bool) string {
	for _, a := range c.alarms() {
		if a.late == late && a.next != "" && !c.askedBy(a.alarm) {
			return a.next
		}
	}
	return ""
}

// askedBy reports whether the power was taken off since volts stood on the
// metal: what comes next is then a test like any other.
func (c *Call) askedBy(a alarm) bool {
	return a.code == "metal-live" && c.deadAt(c.entry)
}

// burning are the alarms of a gas that a spark sets off.
var burning = []string{"gas-leak", "gas-smell", "leak-found"}

// sparking notes a line that shows something under power while gas that can burn
// was found and not shown to be gone, and warns of it.
func (c *Call) sparking(r *Reply) {
	for _, a := range c.alarms() {
		if among(burning, a.code) && c.lastShown([]string{a.code}) < c.entry {
			c.warnAgain(r, a.caution)
			c.sparked = append(c.sparked, c.entry)
			return
		}
	}
}

// warnOfDanger gives the cautions of the dangers among findings.
func (c *Call) warnOfDanger(r *Reply, codes []string) {
	for _, a := range alarming {
		if among(codes, a.code) && (a.when == nil || a.when(c)) {
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
	for _, a := range alarming {
		if !c.toldOf(a) || a.when != nil && !a.when(c) {
			continue
		}
		if c.lastShown([]string{a.code}) == 0 && !among(c.appliance().Heard, a.code) {
			continue
		}
		out = append(out, proofWanted{a.proof, func(c *Call, since int) shown {
			held := !c.alarmStands(a.code)
			text := ""
			if n := max(c.lastShown(a.cleared), c.lastShown([]string{"no-" + a.code})); held && n > 0 {
				text = "by what was found" + atEntry(n)
			}
			return shown{held: held, text: text}
		}})
	}
	return out
}
