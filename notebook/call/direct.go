package call

import "sort"

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
