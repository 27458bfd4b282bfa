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
	cleared []string // findings and facts
	proof   string
}

var alarming = []alarm{
	{"shock", []string{"no-shock", "earth-continuity-sound"}, "that it gives no shock any more (saw no shock, or a sound ohm earth …)"},
	{"smoke", []string{"no-smoke"}, "that it neither smokes nor smells burnt any more (saw no smoke)"},
	{"gas-smell", []string{"no-gas-smell"}, "that no gas is smelled any more (saw no gas smell)"},
}

// standing is an alarm that nothing has cleared since it was last seen, or since
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
		at, text := 0, ""
		for _, n := range c.seenAt[a.code] {
			if c.alive(n) {
				at, text = n, f.Help+atEntry(n)
			}
		}
		if at == 0 && among(c.appliance().Heard, a.code) {
			at = c.lastAt("fault")
			text = "the complaint speaks of it: " + f.Help + atEntry(at)
		}
		if at > 0 && c.lastShown(a.cleared) <= at {
			out = append(out, standingAlarm{a, text + ", and nothing since shows that it is gone"})
		}
	}
	return out
}

// lastShown is the last entry that shows one of several facts, 0 when none does.
func (c *Call) lastShown(codes []string) int {
	last := 0
	for _, code := range codes {
		for _, n := range c.seenAt[code] {
			if c.alive(n) {
				last = max(last, n)
			}
		}
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
		stands := func(s standingAlarm) bool { return s.code == a.code }
		out = append(out, proofWanted{a.proof, func(c *Call, since int) shown {
			held := !slices.ContainsFunc(c.alarms(), stands)
			text := ""
			if n := c.lastShown(a.cleared); held && n > 0 {
				text = "by what was found" + atEntry(n)
			}
			return shown{held: held, text: text}
		}})
	}
	return out
}
