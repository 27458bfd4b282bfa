package call

import (
	"slices"
	"strings"

	"ohmcall/calc/cause"
)

// ofSupply are the facts of a supply. It can change while a call lasts: a
// breaker is set, a plug pushed in, so the last word on it counts.
var ofSupply = []string{"outlet-dead", "outlet-works", "supply-absent", "supply-low", "supply-high", "supply-sound", "leg-missing"}

// fed are the facts that only an appliance with a supply can give.
var fed = []string{"light-works", "starts-and-runs", "clicks", "hums", "cond-fan-runs", "evap-fan-runs"}

// restored leaves out what was said of the supply before something that it
// cannot stand beside was read or seen, and that the appliance was dead before
// its supply came back.
func (c *Call) restored(facts []cause.Fact, before int) []cause.Fact {
	had := slices.ContainsFunc(facts, func(f cause.Fact) bool { return among(ofSupply, f.Code) })
	if !had {
		return facts
	}
	off := slices.ContainsFunc(facts, func(f cause.Fact) bool {
		return f.Code == "outlet-dead" || f.Code == "supply-absent" || f.Code == "breaker-tripped"
	})
	gone := func(f cause.Fact) bool {
		changes := among(ofSupply, f.Code) || f.Code == "all-dead" && off
		return changes && slices.ContainsFunc(facts, func(g cause.Fact) bool {
			later := among(fed, g.Code) || among(ofSupply, g.Code) && g.Code != "leg-missing"
			return later && excludes(f.Code, g.Code) && c.lastSaid(g, before) > c.lastSaid(f, before)
		})
	}
	return slices.DeleteFunc(slices.Clone(facts), gone)
}

// lastSaid is the last entry before another that says a fact of the supply.
func (c *Call) lastSaid(f cause.Fact, before int) int {
	at := f.Entry
	if strings.HasPrefix(f.Code, "supply-") {
		for _, r := range c.bySubject[supplyKey] {
			if r.entry < before && c.alive(r.entry) {
				at = max(at, r.entry)
			}
		}
	}
	for _, n := range c.seenAt[f.Code] {
		if n < before && c.alive(n) {
			at = max(at, n)
		}
	}
	return at
}
