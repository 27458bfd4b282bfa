package call

import (
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/notebook/said"
)

// steady are the kinds of part that conduct by themselves or not, by their first word: what
// they failed as they still are, whatever the machine does (common practice).
var steady = []string{"heater", "limit", "fuse", "flame-sensor", "switch"}

// severalWords say that work was on more than one of a kind.
const severalWords = "both all- each kit set-of assembly elements limits fuses switches"

// which tell one of several of a kind from the others, by synonyms; the first three name
// what it is.
const which = "fuse,tco cut,roll,hi- high,upper top,lower bottom,bake,broil grill,lid,door,primary,secondary,belt,pressure level,defrost,thermostat"

// outright are the first three rows of which (common practice).
const outright = 1<<3 - 1

// whichOf are the rows of that which a text has words of.
func whichOf(text string) int { return rowsOf(which, text) }

func rowsOf(table, text string) (rows int) {
	for i, words := range strings.Split(table, ",") {
		if said.Has(text, strings.Fields(words)) {
			rows |= 1 << i
		}
	}
	return rows
}

// stillOpen reports whether a part that failed is by the record as it was: neither read
// again by any name nor what some work since is of, and not told as not mended already.
func (c *Call) stillOpen(key string, j *judged) bool {
	name, part := strings.CutPrefix(key, "part\x00")
	if !part || partOf(name) == nil || c.replacedSince(key, j) {
		return false
	}
	kind := partOf(name).words[0]
	mends := kind + "-open"
	if kind == steady[0] {
		mends = "heater-failed"
	}
	if !among(steady, kind) || kind == "switch" && !among(j.verdict.Fact, mends) {
		return false
	}
	last := lastEntry(j.verdict)
	c.spend(50 * len(c.subjects))
	for _, k := range c.subjects {
		if o := c.judged[k]; o != nil && o.part == j.part && o.family == j.family && lastEntry(o.verdict) > last {
			return false
		}
	}
	for _, w := range c.doneNow() {
		if c.workAt(w.entry) > last && (!w.fits || c.isOf(strings.ToLower(w.text), name, mends)) {
			return false
		}
	}
	for _, g := range c.untreated() {
		for _, f := range g.rests() {
			if f.Entry == last {
				return false
			}
		}
	}
	return true
}

// isOf reports whether work is of a part, by its name or by other words: work that names
// another part which was read is of that one alone.
func (c *Call) isOf(text, name, mends string) bool {
	if said.Names(text, name) {
		return true
	}
	hyphened := strings.ReplaceAll(text, " ", "-")
	of, is := whichOf(hyphened), whichOf(name)
	switch {
	case said.Has(hyphened, strings.Fields(severalWords)):
	case of&is&outright != 0:
		return true
	case of != 0 && is != 0:
		if of&is == 0 {
			return false
		}
	default:
		c.spend(100 * len(c.subjects))
		for _, k := range c.subjects {
			if o, part := strings.CutPrefix(k, "part\x00"); part && o != name && said.Names(text, o) {
				return false
			}
		}
	}
	return cause.Mends(mends, text)
}
