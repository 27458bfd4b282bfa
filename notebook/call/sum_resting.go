package call

import (
	"cmp"
	"slices"
)

// basis is an entry that a sum rests on, and the entry whose sum took what it
// was worth then; of a line of plate which of its values, of one of readings which.
type basis struct {
	entry, asOf int
	plate       string
	read        *reading
}

// rest notes that the sum rests on entries; the oldest use of one counts.
//
//go:noinline
func (s *scope) rest(on ...basis) {
next:
	for _, b := range on {
		for i := range s.used {
			if u := &s.used[i]; u.entry == b.entry && u.plate == b.plate && u.read == b.read {
				u.asOf = min(u.asOf, b.asOf)
				continue next
			}
		}
		s.used = append(s.used, b)
	}
}

// restOnReading notes that the sum rests on a reading, and on what was declared
// of meter and probes.
func (s *scope) restOnReading(r *reading) {
	c := s.c
	s.rest(basis{entry: r.entry, asOf: c.entry, read: r})
	if r.derived { // it has a doubt of its own, whatever is declared
		return
	}
	if n := c.meterFor(r.quality.word).entry; n > 0 {
		s.rest(basis{entry: n, asOf: c.entry})
	}
	if n := c.lastAt("probes"); n > 0 && r.quality.word == "ohm" {
		s.rest(basis{entry: n, asOf: c.entry})
	}
}

// revalue notes since which entry the readings of a kind are worth what they
// are now, by their meter and the probes, and since which a plate reads as it does.
func (c *Call) revalue() {
	c.revalued = map[string]int{}
	was := map[string]*meter{}
	for i := range c.meters {
		m := &c.meters[i]
		if !c.alive(m.entry) {
			continue
		}
		old := was[m.word]
		if old == nil {
			old = new(meter)
			*old = undeclared(m.word)
		}
		if m.Percent != old.Percent || m.Counts != old.Counts || m.fixed != old.fixed {
			c.revalued[m.word] = m.entry
		}
		was[m.word] = m
	}
	probes, as := 0.0, ""
	for i := range c.fields {
		if f := &c.fields[i]; f.key == "probes" && f.value != as && c.alive(f.entry) {
			c.spend(200)
			as = f.value
			if x := ohmsOf(as); x != probes {
				c.revalued["ohm"], probes = max(c.revalued["ohm"], f.entry), x
			}
		}
	}
	c.spend(16*len(c.meters) + 2*len(c.fields) + 32*len(c.plates))
	plates := map[string]*plate{}
	for i := range c.plates {
		p := &c.plates[i]
		if !c.alive(p.entry) {
			continue
		}
		// A machine that was replaced has a plate of its own.
		if old := plates[p.id()]; old != nil && (old.text != p.text || old.tol != p.tol) && c.renewedBefore(p.of, p.entry) < old.entry {
			c.revalued[p.id()] = p.entry
		}
		plates[p.id()] = p
	}
}

// id is what a plate's value is told from its others by.
func (v *plate) id() string { return v.of + "\x00" + v.key + "\x00" + v.name }

// otherwise is the entry since which what a sum rests on is worth something
// else than it took, 0 when it is worth the same.
//
//go:noinline
func (c *Call) otherwise(b basis) int {
	if b.read != nil && b.read.derived {
		return 0
	}
	if n := c.revalued[cmp.Or(b.plate, c.entries[b.entry-1].Kind)]; n > b.asOf {
		return n
	}
	return 0
}

// shaken says what of that on which a sum rests no longer counts as it did, ""
// for nothing.
func (c *Call) shaken(from []basis) string {
	c.spend(2 * len(from))
	why := ""
	for _, b := range from {
		on := "rests on entry " + itoa(b.entry) + ", which "
		if !c.alive(b.entry) {
			return on + "was struck"
		}
		if n := c.otherwise(b); n > 0 && why == "" {
			why = on + "counts otherwise since the " + c.entries[n-1].Kind + " of entry " + itoa(n)
		}
	}
	return why
}

// readSince says which reading that a sum rests on had been read again by an entry, ""
// for none. What rests on the later one too compares the two.
func (c *Call) readSince(from, all []basis, by int) string {
	for _, b := range from {
		if b.read == nil {
			continue
		}
		at := c.byKey[b.read.key()]
		c.spend(8 + len(at))
		for i := len(at) - 1; i >= 0; i-- {
			r := at[i]
			if r.entry <= max(b.asOf, b.entry) {
				break
			}
			if r.entry > by || !c.alive(r.entry) || r.cond.String() != b.read.cond.String() {
				continue
			}
			if r.shown() != b.read.shown() && !slices.ContainsFunc(all, func(o basis) bool { return o.read == r }) {
				return "rests on " + b.read.where() + " " + b.read.shown() + atEntry(b.entry) + ", read again as " + r.shown() + atEntry(r.entry)
			}
			break
		}
	}
	return ""
}

// inDoubt says why a sum of an entry is in doubt, "" when it is not.
func (c *Call) inDoubt(from []basis, entry int) string {
	return cmp.Or(c.shaken(from), c.readSince(from, from, entry))
}

// doubts are those of the own names that the sum used.
func (s *scope) doubts() []string {
	var out []string
	for i := range s.asked {
		d := &s.asked[i]
		if why := cmp.Or(s.c.shaken(d.from), s.c.readSince(d.from, s.used, s.c.entry)); why != "" {
			out = append(out, d.name+" "+why+".")
		}
	}
	return out
}

// shake tells the sums that are in doubt by an entry: one that was struck, or
// what was declared of meter or probes.
func (c *Call) shake(r *Reply, n int) {
	c.revalue()
	var list []int
	for i := range c.sums {
		list = c.restingOn(n, c.sums[i].entry, c.sums[i].from, list)
	}
	for i := range c.defs {
		list = c.restingOn(n, c.defs[i].entry, c.defs[i].from, list)
	}
	for _, e := range c.expects {
		list = c.restingOn(n, e.entry, e.from, list)
	}
	if slices.Sort(list); len(list) > 0 {
		r.add(Warn, "Sums that rest on it are in doubt, "+entryList(list)+"; write them again.")
	}
}

// restingOn adds the entry of a sum to a list when it rests on entry n, or on
// what that changed.
func (c *Call) restingOn(n, entry int, from []basis, list []int) []int {
	c.spend(len(from))
	for _, b := range from {
		if (b.entry == n || c.otherwise(b) == n) && c.alive(entry) {
			return append(list, entry)
		}
	}
	return list
}
