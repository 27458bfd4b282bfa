package call

import (
	"math"
	"slices"
	"sort"

	"ohmcall/calc/cause"
	"ohmcall/notebook/said"
)

// repairs lists the entries at which a phase of repair began: the first
// did or part after readings or findings. They are asked for with every entry
// and change with work and strikes only.
func (c *Call) repairs() []int {
	m := &c.phases
	if m.mended == len(c.mended) && m.struck == len(c.struck) {
		return m.at
	}
	last := 0
	var phases, at []int
	for _, n := range c.mended {
		if c.alive(n) {
			at = append(at, c.workAt(n))
		}
	}
	if len(c.placed) > 0 {
		c.spend(20 * len(at))
		slices.Sort(at)
	}
	for _, n := range at {
		if len(phases) == 0 || c.establishedBetween(last, c.beforeWork(n)) {
			phases = append(phases, n)
		}
		last = n
	}
	*m = phasesMemo{len(c.mended), len(c.struck), phases}
	return phases
}

type phasesMemo struct {
	mended, struck int // how many there were
	at             []int
}

// establishedBetween reports whether a reading or finding lies between two
// entries.
func (c *Call) establishedBetween(a, b int) bool {
	c.spend(16)
	i := sort.Search(len(c.readings), func(i int) bool { return c.readings[i].entry > a })
	if i < len(c.readings) && c.readings[i].entry < b {
		return true
	}
	i = sort.Search(len(c.findings), func(i int) bool { return c.findings[i].entry > a })
	return i < len(c.findings) && c.findings[i].entry < b
}

// phase is how many repairs came before an entry.
//
//go:noinline
func phase(repairs []int, entry int) int {
	return sort.SearchInts(repairs, entry)
}

func excludes(a, b string) bool {
	if f, ok := cause.Lookup(a); ok && among(f.Excludes, b) {
		return true
	}
	f, ok := cause.Lookup(b)
	return ok && among(f.Excludes, a)
}

// supersede drops facts that one of a later phase excludes.
func (c *Call) supersede(facts []cause.Fact) []cause.Fact {
	repairs := c.repairs()
	if len(repairs) == 0 {
		return facts
	}
	out := facts[:0:0]
	c.spend(15 * len(facts) * len(facts))
	for _, f := range facts {
		gone := false
		for _, g := range facts {
			// What a line of work tells of a test is of after it.
			if (phase(repairs, g.Entry) > phase(repairs, f.Entry) || f.Entry < g.Entry && slices.Contains(repairs, g.Entry)) && excludes(f.Code, g.Code) {
				gone = true
				break
			}
		}
		if !gone {
			out = append(out, f)
		}
	}
	at := c.persistsIn(out, repairs)
	if at == 0 {
		return out
	}
	return slices.DeleteFunc(out, func(f cause.Fact) bool {
		return phase(repairs, f.Entry) < at && (cause.Passing(f.Code) || c.mendedFor(f, repairs, at))
	})
}

// persistsIn is the last phase in which a fact says that the complaint is
// still there after a repair, 0 when none does or the last word is a cure.
func (c *Call) persistsIn(facts []cause.Fact, repairs []int) int {
	at, complaint := 0, c.complaint()
	for _, f := range facts {
		if cause.Persists(complaint, f.Code) {
			at = max(at, phase(repairs, f.Entry))
		}
	}
	return at
}

// persists reports whether the complaint was seen again after the last repair.
func (c *Call) persists() bool {
	rep := c.repairs()
	return len(rep) > 0 && c.persistsIn(c.facts(math.MaxInt), rep) == len(rep)
}

// mendedFor reports whether a fact had shown a cause that was supported when a
// repair up to phase at was made after it.
func (c *Call) mendedFor(f cause.Fact, repairs []int, at int) bool {
	for _, n := range c.mended {
		if c.beforeWork(c.workAt(n)) > f.Entry && phase(repairs, c.workAt(n)) < at && among(c.mendedWhat[n], f.Code) {
			return true
		}
	}
	return false
}

// mend notes work done, and what it was done for. What is set or levelled once a repair
// was made is none, where that mends no cause of the complaint.
func (c *Call) mend() {
	if w := c.works[max(0, len(c.works)-1):]; len(w) > 0 && w[0].entry == c.entry && w[0].kind == "did" && len(c.mended) > 0 && said.Adjusts(w[0].text) && !c.adjusting(w[0].text) {
		return
	}
	c.mended = append(c.mended, c.entry)
	c.mendWhat(c.entry, math.MaxInt)
}

// adjusting reports whether work that sets or levels mends a cause of a complaint.
func (c *Call) adjusting(text string) bool {
	return slices.ContainsFunc(c.complaintsTold(), func(code string) bool {
		k, _ := cause.ComplaintBy(code)
		return k.Code == "" || slices.ContainsFunc(k.Causes, func(of string) bool { return cause.Mends(of, text) })
	})
}

// remend finds anew what work was done for, once an entry was struck.
func (c *Call) remend() {
	for _, n := range c.mended[max(0, len(c.mended)-mostRepairs):] {
		if c.alive(n) {
			c.mendWhat(n, n)
		}
	}
}

// mendWhat notes the facts that show the causes supported before an entry of
// work: they are what it was done for. before is that entry, or the end when it
// is the last.
func (c *Call) mendWhat(n, before int) {
	c.mendedWhat[n] = nil
	switch at := c.workAt(n); {
	case c.saidBefore(n):
		return
	case at != n:
		before = c.beforeWork(at)
	}
	r := c.weigh(before)
	for i := range r.Standings {
		s := &r.Standings[i]
		if s.State != cause.Supported || s.Last {
			continue
		}
		for _, f := range s.For {
			if among(s.Cause.ShownBy, f.Code) {
				c.mendedWhat[n] = append(c.mendedWhat[n], f.Code)
			}
		}
	}
}
