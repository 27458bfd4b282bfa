package call

import (
	"strings"

	"ohmcall/calc/judge"
	"ohmcall/calc/verdict"
	"ohmcall/notebook/said"
)

// stuckDoor is the finding of a door or lid switch that conducts with the door open.
const stuckDoor = "interlock-closed"

// isInterlock tells the switch that ends it when a door opens: in a microwave oven each
// but those of something else, elsewhere what is named after door or lid.
func (c *Call) isInterlock(name string) bool {
	words := []string{"door", "lid", "interlock"}
	if c.appliance().HighVolts {
		words = append(words, "primary", "secondary", "latch", "upper", "lower", "top", "bottom", "middle")
	}
	if partOf(name) != partOf("switch") || !c.appliance().HighVolts && !opensToMoving(c) {
		return false
	}
	for _, w := range words {
		if strings.Contains(name, w) {
			return true
		}
	}
	return c.appliance().HighVolts && startsWithAny(name, []string{"switch"})
}

// whichInterlock leaves of the name of such a switch what tells it from the others.
var whichInterlock = strings.NewReplacer("-", "", "door", "", "interlock", "", "microswitch", "", "switch", "", "latch", "")

// interlocks looks through what was read of the switches with the door open, the last
// of each: a new one is not known to open before it was read. It gives the last entry
// of one that conducts, else the last entry at which one was open, and how many were (common practice).
func (c *Call) interlocks(before int) (stuck, opens, count int) {
	c.spend(40 * len(c.doorOpen))
	var seen []string
	for i := len(c.doorOpen) - 1; i >= 0; i-- {
		r := c.doorOpen[i]
		name := strings.ToLower(r.a)
		which := whichInterlock.Replace(name)
		if r.entry >= before || among(seen, which) || !c.alive(r.entry) || !c.isInterlock(name) {
			continue
		}
		switch judge.Switch(judge.SwitchIn{Path: judge.Switched, Ohms: c.value(r), Want: "open"}).Word {
		case verdict.Failed:
			stuck = max(stuck, r.entry)
		case verdict.Sound:
			opens, count = max(opens, r.entry), count+1
		default:
			continue
		}
		seen = append(seen, which)
	}
	if stuck > 0 {
		opens, count = 0, 0
	}
	return stuck, opens, count
}

// doors adds what the switches of a door amount to: with both of a microwave oven's open,
// none holds its supply on its monitor switch.
func (l *factList) doors() {
	if len(l.c.doorOpen) == 0 {
		return
	}
	stuck, opens, count := l.c.interlocks(l.before)
	switch {
	case stuck > 0:
		l.add(stuckDoor, stuck)
	case count > 1:
		l.add("interlocks-good", opens)
	}
}

// proofInterlocks is what work on a door of a microwave oven wants besides (common practice).
var proofInterlocks = proofWanted{"each door switch read open with the door open, plug out (ohm primary-switch … open, ohm secondary-switch … open)",
	func(c *Call, since int) shown {
		stuck, opens, _ := c.interlocks(c.entry + 1)
		if s := seen("interlocks-good")(c, since); stuck > 0 || opens == 0 || s.held {
			return s
		}
		return shown{held: opens > since, text: "read open" + atEntry(opens)}
	}}

// lineFuse tells work on the fuse of a microwave oven's supply: of one that runs and does
// not heat a fuse by no other word is that of the high voltage (common practice).
func (c *Call) lineFuse(w doneWork) bool {
	text := w.text
	return c.appliance().HighVolts && said.Has(text, theFuse) && !said.Has(text, otherPlaces) &&
		(c.complaint() != said.NoWaves || said.Has(text, ofMains))
}

var (
	theFuse = []string{"fuse"}
	ofMains = []string{"line", "main", "supply"}
)

// fuseProofs are what a new line fuse wants: its interlocks blow it, so each is to be known
// to open, and the monitor switch to change over (common practice).
var fuseProofs = []proofWanted{
	{proofInterlocks.what, func(c *Call, _ int) shown {
		_, opens, count := c.interlocks(c.entry + 1)
		told := c.lastOf(c.seenAt["interlocks-good"], c.entry)
		if count > 1 {
			told = max(told, opens)
		}
		return goodSince(told, c.renewedBreaker(ofDoor))
	}},
	{"the monitor switch read in both states (ohm monitor-switch OL closed, then ohm monitor-switch … open)", func(c *Call, _ int) shown {
		at := c.lastOf(c.seenAt["monitor-opens"], c.entry)
		if j := c.judged[monitorKey]; j != nil && j.verdict.Word == verdict.Sound && len(j.verdict.Entries) > 1 {
			at = max(at, lastEntry(j.verdict))
		}
		return goodSince(at, c.renewedBreaker(ofDoor[3:4]))
	}},
}

func goodSince(at, since int) shown {
	if at <= since {
		return shown{}
	}
	return shown{held: true, text: "good" + atEntry(at)}
}

// monitorKey is the subject of the switch that guards them: one that fails is a point of
// the proof until it is renewed, whatever else was mended.
const monitorKey = "part\x00monitor-switch"

var proofMonitor = proofWanted{"the monitor switch renewed, and read closed with the door open (ohm monitor-switch … open)",
	func(*Call, int) shown { return shown{} }}

// ofDoor are the words of work on what ends it when the door opens.
var ofDoor = []string{"interlock", "door sw", "latch", "monitor", "primary sw", "secondary sw", "microswitch"}
