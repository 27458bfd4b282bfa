package call

import (
	"math"
	"slices"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/calc/verdict"
	"ohmcall/calc/winding"
	"ohmcall/notebook/said"
)

// newBad lists what reads bad since: what was renewed, parts, and what the machine that
// was mended lives by, but for those that the other points of the proof tell of.
func (c *Call) newBad(since int, told string) (out []string) {
	for _, key := range c.subjects {
		j := c.judged[key]
		if j == nil || len(j.verdict.Entries) == 0 {
			continue
		}
		v := &j.verdict
		last := v.Entries[len(v.Entries)-1]
		kind, name, _ := strings.Cut(key, "\x00")
		if last <= since && v.Word == verdict.Failed && c.stillOpen(key, j) {
			out = append(out, name+" renewed, or read again: "+v.Text+" ("+entryList(v.Entries)+"); if all runs, it is bypassed or was read wrong")
		}
		if last <= since || v.Word == verdict.Sound && kind != "trip" {
			continue
		}
		at, by := c.renewedAt(ownerOf(key)), "("+entryList(v.Entries)+")"
		what, failed := newSound, v.Word == verdict.Failed
		switch {
		case kind == "trip": // it opens, as it should or not
			if last < c.lastShown([]string{"starts-and-runs"}) {
				continue
			}
			what = "that its overload holds: "
		case failed && at > 0 && at < last:
		case c.readsBad(kind, name, v, last):
		case failed && among(oneParts, kind):
			what = "the part sound: "
		case c.lost(kind, name, v):
			what = "read right again: "
		default:
			continue
		}
		if !strings.Contains(told, by) {
			out = append(out, what+v.Subject+", "+v.Text+" "+by)
		}
	}
	if r := c.openUnjudged(since); r != nil {
		out = append(out, newSound+r.a+" read OL"+atEntry(r.entry)+", not by its coil or its pins")
	}
	if n := c.leakLeft(); n > 0 {
		out = append(out, "the leak mended, or not there: "+leakSeen+atEntry(n)+" (did … at it, or saw no leak found)")
	}
	for _, f := range c.foundAgain(since) {
		if !strings.Contains(told, atEntry(f.Entry)) {
			out = append(out, "what was mended seen to hold: "+c.factText(f))
		}
	}
	if c.pairsLost(since) {
		out = append(out, "the windings read again: "+c.machines[c.mainMachine()].result.Notes[0])
	}
	return append(out, c.against(since)...)
}

const newSound = "the new part sound: "

// readsBad reports whether a new part's verdict stops short of failed for want of a
// marking or of how it was set, and it is open or far off all the same.
func (c *Call) readsBad(kind, name string, v *verdict.Verdict, last int) bool {
	at, p := 0, partOf(name)
	switch {
	case kind == "mfd":
		at = c.renewedBreaker([]string{"cap"})
	case kind != "part" || p == nil:
	case p == partOf("sensor"):
		at = c.renewedBreaker(p.words)
	default:
		at = c.renewedAt(name)
	}
	if at == 0 || at >= last || v.Word == verdict.Sound {
		return false
	}
	return v.Word == verdict.Suspect || strings.Contains(v.Text, farOff) || kind == "part" && c.lastOver(name) && !strings.Contains(name, "defrost")
}

// lastOver reports whether a part last read open.
func (c *Call) lastOver(name string) bool {
	rs := c.bySubject["part\x00"+name]
	for i := len(rs) - 1; i >= 0; i-- {
		c.spend(2)
		if c.alive(rs[i].entry) {
			return rs[i].over
		}
	}
	return false
}

// openUnjudged is the last reading of a new part that is open and of none of the parts
// that are judged, nil when what it is of was read since.
func (c *Call) openUnjudged(since int) *reading {
	r := c.lastAfter(since, func(r *reading) bool { return r.quality.word == "ohm" })
	if r == nil || !r.over || r.b != "" || partOf(r.a) != nil || c.renewedAt(r.a) == 0 {
		return nil
	}
	if kind, _ := c.subject(r); kind != "" {
		return nil
	}
	return r
}

const leakSeen = "a leak of refrigerant was seen"

// leakLeft is the entry at which a leak was seen that no work since was for and that was
// not seen to be gone, 0 when there is none, or it is among what was found: cold that
// comes all the same does not close it.
func (c *Call) leakLeft() int {
	n := c.lastShown([]string{"leak-found"})
	if n == 0 || c.appliance().Unsealed || c.lastShown([]string{"leak-not-found"}) > n || len(c.repairs()) == 0 {
		return 0
	}
	for _, w := range c.doneNow() {
		if c.spend(500); w.entry > n && cause.Mends("refrigerant-low", w.text) {
			return 0
		}
	}
	for _, g := range c.untreated() {
		if slices.ContainsFunc(g.rests(), func(f cause.Fact) bool { return f.Entry == n }) {
			return 0
		}
	}
	return n
}

// foundAgain are the findings that the work was done for which were seen again after it,
// and not their opposite since.
func (c *Call) foundAgain(since int) (out []cause.Fact) {
	for _, n := range c.mended[max(0, len(c.mended)-mostRepairs):] {
		if !c.alive(n) {
			continue
		}
		for _, code := range c.mendedWhat[n] {
			last := c.lastOf(c.seenAt[code], c.entry)
			if last <= since || slices.Contains(out, cause.Fact{Code: code, Entry: last}) {
				continue
			}
			c.spend(20 * len(c.seenCodes))
			f, _ := cause.Lookup(code)
			gone := slices.Clone(f.Excludes)
			for _, other := range c.seenCodes {
				if excludes(code, other) {
					gone = append(gone, other)
				}
			}
			if c.lastShown(gone) <= last && !said.Has(c.line(last), ofOld) {
				out = append(out, cause.Fact{Code: code, Entry: last})
			}
		}
	}
	return out
}

// against lists what contradicts a proof that was shown before it.
func (c *Call) against(since int) (out []string) {
	c.weigh(math.MaxInt)
	for i := range c.weighed.result.Contradictions {
		k := &c.weighed.result.Contradictions[i]
		proof, last := &k.A, &k.B
		if proof.Entry > last.Entry {
			proof, last = last, proof
		}
		if proof.Entry > since && last.Entry > proof.Entry && (among(energised, proof.Code) || strings.HasSuffix(proof.Code, "-sound")) {
			out = append(out, "what contradicts it settled: "+c.factText(*last))
		}
	}
	return out
}

// lost reports whether a verdict says that the machine which was mended has lost what it
// lives by: its volts, its protector, its flame.
func (c *Call) lost(kind, name string, v *verdict.Verdict) bool {
	bad := v.Word == verdict.Failed || v.Word == verdict.Suspect
	switch kind {
	case "part":
		return partOf(name) == partOf("overload") && c.ownGear(name)
	case "amp":
		return bad && strings.HasPrefix(strings.ToLower(name), "flame")
	case "psi":
		return bad && !among(v.Fact, "suction-high") // which a load makes too
	case "volt":
		return bad && c.machineFor(name) == c.mainMachine()
	}
	return v.Word == verdict.Failed && among(feeds, kind)
}

// pairsLost reports whether pairs of the machine that was mended read open or shorted
// since: of one that is open beside two that are not a probe missed its contact.
func (c *Call) pairsLost(since int) bool {
	of := c.mainMachine()
	m := c.machines[of]
	if m == nil || m.result.State == winding.Sound || len(m.result.Notes) == 0 {
		return false
	}
	open, lost := 0, false
	for _, key := range c.keysOf(of) {
		prev, now := c.last2(key)
		switch {
		case now == nil || now.entry <= since || now.b == caseName:
		case toneOf(m.result) == Bad:
			return true
		case now.over:
			open++
		case prev != nil && !prev.over:
			lost = lost || shortedTo*c.value(now).Hi < c.value(prev).Lo
		}
	}
	return lost || open > 1 && len(m.result.Pins) == 3
}

// ofOld are words of what was there before the work.
var ofOld = []string{" old", "removed", "arriv", "was "}

// shortedTo is by how many times a pair reads less than it did when that is no doubt of
// the meter or of how warm it is (common practice).
const shortedTo = 2

// feeds are the kinds of subject that are the supply.
var feeds = []string{"supply", "leg", phasesKind, starKind}

// oneParts are the kinds of subject that are one part, which reads as it does by itself.
var oneParts = []string{"part", "mfd", "sheath"}
