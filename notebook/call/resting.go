package call

import (
	"math"
	"slices"
)

// basis is an entry that a sum rests on, and the entry whose sum took what it
// was worth then.
type basis struct{ entry, asOf int }

// rest notes that the sum rests on entries; the oldest use of one counts.
func (s *scope) rest(on ...basis) {
	for _, b := range on {
		i := slices.IndexFunc(s.used, func(u basis) bool { return u.entry == b.entry })
		if i < 0 {
			s.used = append(s.used, b)
		} else {
			s.used[i].asOf = min(s.used[i].asOf, b.asOf)
		}
	}
}

// restOnReading notes that the sum rests on a reading, and on what was declared
// of meter and probes.
func (s *scope) restOnReading(r *reading) {
	if r.derived { // it has a doubt of its own, whatever is declared
		s.rest(basis{r.entry, math.MaxInt})
		return
	}
	s.rest(basis{r.entry, s.c.entry})
	if n := s.c.meterFor(r.quality.word).entry; n > 0 {
		s.rest(basis{n, s.c.entry})
	}
	if n := s.c.lastAt("probes"); n > 0 && r.quality.word == "ohm" {
		s.rest(basis{n, s.c.entry})
	}
}

// revalue notes since which entry the readings of a kind are worth what they
// are now, by their meter and the probes.
func (c *Call) revalue() {
	c.revalued = map[string]int{}
	was := map[string]meter{}
	for _, m := range c.meters {
		if !c.alive(m.entry) {
			continue
		}
		old, ok := was[m.word]
		if !ok {
			old = undeclared(m.word)
		}
		if m.Percent != old.Percent || m.Counts != old.Counts || m.fixed != old.fixed {
			c.revalued[m.word] = m.entry
		}
		was[m.word] = m
	}
	probes := 0.0
	for _, f := range c.fields {
		if f.key != "probes" || !c.alive(f.entry) {
			continue
		}
		if x := ohmsOf(f.value); x != probes {
			c.revalued["ohm"], probes = max(c.revalued["ohm"], f.entry), x
		}
	}
	c.spend(2 * (len(c.meters) + len(c.fields)))
}

// otherwise is the entry since which what a sum rests on is worth something
// else than it took, 0 when it is worth the same.
func (c *Call) otherwise(b basis) int {
	if n := c.revalued[c.entries[b.entry-1].Kind]; n > b.asOf {
		return n
	}
	return 0
}

// shaken says what of that on which a sum rests no longer counts as it did, ""
// for nothing.
func (c *Call) shaken(from []basis) string {
	c.spend(2 * len(from))
	for _, b := range from {
		if !c.alive(b.entry) {
			return "rests on entry " + itoa(b.entry) + ", which was struck"
		}
	}
	for _, b := range from {
		if n := c.otherwise(b); n > 0 {
			return "rests on entry " + itoa(b.entry) + ", which counts otherwise since the " + c.entries[n-1].Kind + " of entry " + itoa(n)
		}
	}
	return ""
}

// shake tells the sums that are in doubt by an entry: one that was struck, or
// what was declared of meter or probes.
func (c *Call) shake(r *Reply, n int) {
	c.revalue()
	var list []int
	add := func(entry int, from []basis) {
		c.spend(len(from))
		if c.alive(entry) && slices.ContainsFunc(from, func(b basis) bool { return b.entry == n || c.otherwise(b) == n }) {
			list = append(list, entry)
		}
	}
	for _, s := range c.sums {
		add(s.entry, s.from)
	}
	for _, d := range c.defs {
		add(d.entry, d.from)
	}
	for _, e := range c.expects {
		add(e.entry, e.from)
	}
	if slices.Sort(list); len(list) > 0 {
		r.add(Warn, "Sums that rest on it are in doubt, "+entryList(slices.Compact(list))+"; write them again.")
	}
}
