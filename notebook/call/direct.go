package call

import (
	"sort"
	"strings"
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
		for _, n := range c.seenAt[code] {
			if n < before && c.alive(n) && (at == 0 || n < at) && c.weakBefore(n) {
				at = n
			}
		}
	}
	return at
}

// weakBefore reports whether a cord or low volts were found before an entry, in
// the same phase of the call.
func (c *Call) weakBefore(entry int) bool {
	rep := c.repairs()
	for _, n := range c.seenAt["long-cord"] {
		if n < entry && c.alive(n) && phase(rep, n) == phase(rep, entry) {
			return true
		}
	}
	for _, key := range c.subjects {
		kind, name, _ := strings.Cut(key, "\x00")
		if kind != "supply" && kind != "volt" {
			continue
		}
		if v, ok := c.verdictOn(kind, name, entry); ok && intersects(v.Fact, []string{"sag-deep", "supply-low"}) && phase(rep, lastEntry(v)) == phase(rep, entry) {
			return true
		}
	}
	return false
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
