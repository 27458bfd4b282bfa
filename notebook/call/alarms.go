package call

import (
	"math"
	"slices"

	"ohmcall/calc/cause"
)

// alarm is a danger to whoever comes near, and what shows that it is gone. Work
// alone does not: it may have been for something else.
type alarm struct {
	code    string
	cleared []string // a finding or fact that shows it, since
	with    []string // one of which must be shown as well; nil when none need
	proof   string
	next    string // what comes first while it stands
}

var alarming = []alarm{
	{"shock", []string{"earth-continuity-sound"}, []string{"insulation-no-gross-fault", "insulation-sound", "heater-no-gross-fault", "heater-insulation-sound"},
		"that it gives no shock any more (saw no shock; or ohm earth … and each pin to the case, sound)", ""},
	{"smoke", []string{"no-smoke"}, nil, "that it neither smokes nor smells burnt any more (saw no smoke)", "find the burnt place with the power off: saw burnt wire, or saw terminals tight"},
	{"gas-smell", []string{"no-gas-smell"}, nil, "that no gas is smelled any more (saw no gas smell)",
		"leave its cock shut and air the room: a leak of fuel gas is for its supplier or a licensed person; saw no gas smell when it is gone"},
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
		f, _ := cause.Lookup(a.code)
		at := c.lastOf(c.seenAt[a.code], c.entry)
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

// cleared reports whether an alarm is shown to be gone since an entry.
func (c *Call) cleared(a alarm, at int) bool {
	return c.lastShown([]string{"no-" + a.code}) > at || c.lastShown(a.cleared) > at && (a.with == nil || c.lastShown(a.with) > 0)
}

// alarmStands reports whether an alarm stands.
func (c *Call) alarmStands(code string) bool {
	return slices.ContainsFunc(c.alarms(), func(s standingAlarm) bool { return s.code == code })
}

// alarmNext is the step that an alarm asks for, "" when none stands.
func (c *Call) alarmNext(code string) string {
	if !c.alarmStands(code) {
		return ""
	}
	i := slices.IndexFunc(alarming, func(a alarm) bool { return a.code == code })
	return alarming[i].next
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
		if len(c.seenAt[a.code]) == 0 && !among(c.appliance().Heard, a.code) {
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
