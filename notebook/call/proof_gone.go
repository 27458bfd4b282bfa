package call

import (
	"slices"
	"strings"

	"ohmcall/notebook/said"
)

// proofGone is what proves the repair of what no reading of the part tells of: a
// complaint that is none of the weighed ones, or of another load than was worked on.
var proofGone = proofWanted{"that the complaint is gone (saw complaint gone)", goneSeen}

// loads tell one heater of an appliance from the others, by synonyms; broiled, burner and
// baked are rows of it (common practice).
const loads = "broil grill,burner ring hob surface,bake bottom lower,front,rear back,left,right"

const broiled, burner, baked = 1 << 0, 1 << 1, 1 << 2 // common practice

//go:noinline
func loadsOf(text string) (rows int) { return rowsOf(loads, strings.ToLower(text)) }

// goneAsked reports whether the complaint has to be seen gone.
func (c *Call) goneAsked() bool {
	fault := c.last("fault")
	if fault == "" {
		return false
	}
	if c.complaint() == "" {
		return c.kindFound() == ""
	}
	if !c.cooks() {
		return false
	}
	of := loadsOf(said.Troubled(fault))
	if of&(broiled|burner) == broiled {
		return true // the oven grows hot by its other heater too
	}
	for _, w := range c.doneNow() {
		if on := loadsOf(w.text); of&^on == 0 || on&^of == 0 && (on != 0 || of&burner == 0 || !c.appliance().Gas) {
			return false
		}
	}
	return true
}

// goneSeen is that: told as gone, or its opposite seen of what was complained of.
func goneSeen(c *Call, since int) shown {
	words, heard := c.complained(), c.appliance().Heard
	if c.complaint() != "" {
		heard = nil // of another load the opposite tells nothing
	}
	for i := len(c.findings) - 1; i >= 0 && c.findings[i].entry > since; i-- {
		f := &c.findings[i]
		c.spend(20 * (1 + len(heard)))
		if !c.alive(f.entry) {
			continue
		}
		opposite := func(code string) bool { return f.code != "" && excludes(f.code, code) }
		if f.code == "complaint-gone" || slices.ContainsFunc(heard, opposite) || f.code == "quiet-now" && said.Has(c.last("fault"), []string{"nois", "loud"}) ||
			said.Has(strings.ToLower(f.text), words) && (among(doesIt, f.code) || c.doesWell(f.text)) {
			return shown{held: true, text: f.text + atEntry(f.entry)}
		}
	}
	return shown{}
}

// doesIt are the findings that what they are seen of works.
var doesIt = []string{"flame-lights", "drum-turns", "spins", "fills", "drains", "pump-runs", "starts-and-runs", "heats-up", "cools-down"}

// doesWell reports whether a text says that something does as it should.
func (c *Call) doesWell(text string) bool {
	c.spend(1600 * min(len(text), said.MostBytes))
	return said.Has(text, doing) && !said.Denied(text) || said.Has(text, []string{"gone"}) && !said.Has(text, []string{"not", "n't"}) || c.kept().Fares(text) == said.Well
}

var doing = []string{"glows", "heats", "turns", "spins", "works"}

// complained are the beginnings of the words for what is complained of: neither the unit
// nor that it fails.
func (c *Call) complained() (out []string) {
	unit, fault := strings.ToLower(c.last("unit")), strings.ToLower(said.Troubled(c.last("fault")))
	if loadsOf(fault)&burner != 0 {
		unit += " light lights" // which it is to do
	}
	for _, w := range strings.Fields(fault) {
		if len(w) > 3 && !strings.Contains(unit, w) && !said.Has(w, failing) {
			out = append(out, w[:min(len(w), 5)])
		}
	}
	return out
}

var failing = []string{"dead", "wont", "does", "didn", "cold", "stay", "brok", "blank", "gone", "isnt", "cant", "with", "when", "only", "from", "work", "left", "right", "front", "back", "rear", "time", "nothing"}
