package call

import (
	"math"
	"slices"
	"sort"
	"strings"
	"time"

	"ohmcall/calc/cause"
	"ohmcall/calc/winding"
	"ohmcall/notebook/said"
)

// goodOutlet are the findings with which a second state of the supply begins.
var goodOutlet = []string{"plugged-direct", "starts-on-other-outlet"}

// secondSupply is the entry from which on the machine is fed otherwise, straight
// from a good outlet, after its cord or circuit was found or read to be weak; 0
// when there is none. What was read before it stays true of the weak supply, what
// was read behind it proves that the machine is good without.
func (c *Call) secondSupply(before int) int {
	at := 0
	for _, code := range goodOutlet {
		list := c.seenAt[code]
		next := sort.SearchInts(list, before)
		for _, n := range list[max(0, next-mostSeen):next] {
			if c.alive(n) && (at == 0 || n < at) && c.weakBefore(n) {
				at = n
			}
		}
	}
	return at
}

// mostSeen is how many of the last sightings of one finding are looked at.
const mostSeen = 4

// weakBefore reports whether a cord or low volts were found before an entry, in
// the same phase of the call.
func (c *Call) weakBefore(entry int) bool {
	rep := c.repairs()
	now := phase(rep, entry)
	cords := c.seenAt["long-cord"]
	next := sort.SearchInts(cords, entry)
	for _, n := range cords[max(0, next-mostSeen):next] {
		if c.alive(n) && phase(rep, n) == now {
			return true
		}
	}
	rest, unloaded, load := c.restAndLoad(c.recent("supply", c.bySubject[supplyKey], entry))
	if rest == nil {
		return false
	}
	if at := c.startAtMachine(entry); at != nil {
		unloaded, load = rest, at
	}
	c.spend(2000)
	if unloaded != nil && load != nil && phase(rep, load.entry) == now && among(c.sag(unloaded, load, "").Fact, "sag-deep") {
		return true
	}
	return phase(rep, rest.entry) == now && among(c.atRest(rest, entry).Fact, "supply-low")
}

// onSecond reports whether an entry is of the second state of the supply that
// begins with another: behind it, and before the next work.
func (c *Call) onSecond(cut, entry int) bool {
	return cut > 0 && entry >= cut && phase(c.repairs(), entry) == phase(c.repairs(), cut)
}

// ofOneSupply leaves out the readings before a second state of the supply when
// the last of them is of that.
func (c *Call) ofOneSupply(rs []*reading, before int) []*reading {
	cut := c.secondSupply(before)
	if len(rs) == 0 || cut == 0 || latest(rs).entry < cut {
		return rs
	}
	return rs[sort.Search(len(rs), func(i int) bool { return rs[i].entry >= cut }):]
}

// ampsBeside is the reading of the main machine's amps before an entry that is
// of the same state as a time to trip: the last before that, else the first behind.
func (c *Call) ampsBeside(trip *reading, before int) *reading {
	c.spend(4 * len(c.readings))
	rep := c.repairs()
	var after *reading
	for i := len(c.readings) - 1; i >= 0; i-- {
		r := c.readings[i]
		if r.quality.word != "amp" || r.entry >= before || !c.alive(r.entry) || c.isCapacitor(r.a) || phase(rep, r.entry) != phase(rep, trip.entry) {
			continue
		}
		if c.machineFor(r.a) != c.mainMachine() && !strings.EqualFold(r.a, "line") {
			continue
		}
		if r.index < trip.index {
			return r
		}
		after = r
	}
	return after
}

// ofOneState leaves out the readings from before the work that came before the
// last of them: they are of another state of the machine.
func (c *Call) ofOneState(rs []*reading) []*reading {
	rep := c.repairs()
	now := phase(rep, latest(rs).entry)
	for phase(rep, rs[0].entry) != now {
		rs = rs[1:]
	}
	return rs
}

// overloadReset reports whether an outside overload that reads closed before an
// entry read open when it was hot: it opened on heat and has closed on cooling.
func (c *Call) overloadReset(name string, before int) bool {
	rs := c.recent("part", c.bySubject["part\x00"+name], before)
	if len(rs) < 2 || latest(rs).over {
		return false
	}
	return slices.ContainsFunc(c.ofOneState(rs), func(r *reading) bool {
		return r.over && !readsCold(r) && (r.cond.is("hot") || c.timePassed(r.entry, latest(rs).entry) >= coolMinutes*time.Minute)
	})
}

// tried are the findings of a machine that is called on.
var tried = []string{"clicks", "hums", "cuts-out", "starts-and-runs", "trips-at-once", "trips-later"}

// triedSince reports whether a machine was called on between two entries: a start that
// fails heats the windings, and may open their protector, before the shell is warm
// (common practice). What was cold before it then says nothing of what is open.
func (c *Call) triedSince(entry, before int) bool {
	if slices.ContainsFunc(tried, func(code string) bool { return c.lastOf(c.seenAt[code], before-1) > entry }) {
		return true
	}
	for i := len(c.readings) - 1; i >= 0 && c.readings[i].entry > entry; i-- {
		c.spend(1)
		r := c.readings[i]
		if r.entry < before && c.alive(r.entry) && (r.quality.word == "trip" || r.quality.word == "amp" && c.machineFor(r.a) == c.mainMachine()) {
			return true
		}
	}
	return false
}

// opensOnHeat reports whether what heat may have opened is open.
func opensOnHeat(facts []cause.Fact) bool {
	return slices.ContainsFunc(facts, func(f cause.Fact) bool {
		return f.Code == winding.FactProtector || f.Code == winding.FactOpenUnplaced || f.Code == "overload-open"
	})
}

// rested reports whether a machine whose shell was felt cold at an entry had been
// without power for so long that what heat opened inside had the time to close, by the
// times of the entries or by what was written. Of any other a cold shell tells
// nothing: a rotor that stands heats its winding within seconds, and the shell long
// after (common practice).
func (c *Call) rested(cold int) bool {
	long := func(n int) bool {
		c.spend(2)
		return n > 0 && n < cold && c.alive(n) && c.timePassed(n, cold) >= coolMinutes*time.Minute && !c.triedSince(n, cold)
	}
	if slices.ContainsFunc(c.dead[max(0, len(c.dead)-mostSeen):], long) || long(c.lastOf(c.seenAt["comp-hot"], cold)) {
		return true
	}
	for _, code := range tried {
		if long(c.lastOf(c.seenAt[code], cold)) {
			return true
		}
	}
	for i := len(c.readings) - 1; i >= max(0, len(c.readings)-mostJudged); i-- { // ohms are read dead
		if r := c.readings[i]; (r.quality.word == "ohm" || r.quality.word == "trip") && long(r.entry) {
			return true
		}
	}
	for i := len(c.works) - 1; i >= max(0, len(c.works)-mostRenewals); i-- {
		w := c.works[i]
		if c.spend(20); c.alive(w.entry) && w.offLong() && !c.triedSince(w.entry, c.entry) {
			return true
		}
	}
	return false
}

// offLong reports whether a line of work tells of a long rest without power.
func (w work) offLong() bool {
	return w.kind != ofTheFile && said.OffLong(w.text) && !said.Has(w.text, shortly)
}

// restTold reads the machines anew when a long rest without power is told: what is
// open on them is open though it is cold.
func (c *Call) restTold(w work) {
	if !w.offLong() {
		return
	}
	for _, of := range c.machineNames() {
		m := c.machines[of]
		m.result = c.inferWindings(of, math.MaxInt)
		c.judgeWindings(of, m.result)
	}
}

// shortly are words of a rest that is short.
var shortly = []string{" min", "0min", "5min", " sec", "just ", "a moment"}

// cooled settles what a compressor's shell that was felt hot and cold tells: what
// cooled in the meantime, or ran hot, is no contradiction. That it was hot counts:
// what had opened on heat may have closed on cooling, and only its reading tells.
func (c *Call) cooled(facts []cause.Fact, before int) []cause.Fact {
	hot, cold := c.lastOf(c.seenAt["comp-hot"], before-1), c.lastOf(c.seenAt["comp-cold"], before-1)
	if cold > 0 && (c.triedSince(cold, before) || opensOnHeat(facts) && !c.rested(cold)) {
		return slices.DeleteFunc(facts, func(f cause.Fact) bool { return f.Code == "comp-cold" })
	}
	if hot == 0 || cold == 0 || phase(c.repairs(), hot) != phase(c.repairs(), cold) {
		return facts
	}
	reset := slices.ContainsFunc(facts, func(f cause.Fact) bool { return f.Code == "protector-reset" || f.Code == "overload-reset" })
	if c.timePassed(min(hot, cold), max(hot, cold)) < coolMinutes*time.Minute && !reset {
		return facts
	}
	return slices.DeleteFunc(facts, func(f cause.Fact) bool { return f.Code == "comp-cold" })
}
