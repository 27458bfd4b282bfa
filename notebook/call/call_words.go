package call

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/notebook/said"
)

//go:noinline
func itoa(n int) string { return strconv.Itoa(n) }

// parsePositive reads a plain number that is not below zero.
func parsePositive(s string) (float64, error) {
	x, err := strconv.ParseFloat(s, 64)
	if err == nil && (x < 0 || math.IsInf(x, 0) || math.IsNaN(x)) {
		err = fmt.Errorf("%q is out of range", s)
	}
	return x, err
}

// entryList names entries in words.
func entryList(list []int) string {
	parts := make([]string, len(list))
	for i, n := range list {
		parts[i] = itoa(n)
	}
	if len(list) == 1 {
		return "entry " + parts[0]
	}
	return "entries " + strings.Join(parts, ", ")
}

// atEntry names the entry that a text rests on.
//
//go:noinline
func atEntry(n int) string { return " (entry " + itoa(n) + ")" }

// alarmsIn are the dangers that a text speaks of; a line is asked for them more
// than once.
func (c *Call) alarmsIn(text string, work bool) []*said.Alarm {
	if in := c.appliance(); c.spokeText != text || c.spokeIn != in || c.spokeWork != work || text == "" {
		c.spokeText, c.spokeIn, c.spokeWork, c.spokeOf = text, in, work, said.Alarms(text, in, work)
	}
	return c.spokeOf
}

// alarmed gives the cautions that the words of a line call for.
func (c *Call) alarmed(r *Reply, text string) {
	for _, a := range c.alarmsIn(text, false) {
		if al := c.danger(c.inAppliance(a.Finding)); al != nil {
			c.warn(r, al.caution)
		}
	}
}

// told takes a danger that a line speaks of in passing for seen, and says so: a
// note is read less than a verdict.
func (c *Call) told(r *Reply, text string, work bool) {
	c.spend(400 * min(len(text), said.MostBytes))
	mends := work && !said.Undone(text)
	if !mends {
		c.relapse(r, text)
		if c.openedAt(tightness[1].of) > 0 && said.LosesCharge(text) {
			c.toldAgain(r)
		}
	}
	defer c.tellHeld(r, text)
	for _, a := range c.alarmsIn(text, work) {
		code := c.inAppliance(a.Finding)
		if c.lastOf(c.seenAt[code], c.entry) == c.entry {
			continue
		}
		if al := c.danger(code); al != nil {
			c.sight(code, text)
			c.warn(r, al.caution)
			f, _ := cause.Lookup(code)
			t := "Counts as seen: " + f.Help + "; what is wanted then is " + al.proof + "."
			if n := len(c.closed); n == 0 || c.closed[n-1] < c.entry {
				t += " If it never was: strike " + itoa(c.entry) + "."
			}
			r.add(Bad, t).flag("danger-told")
		} else if code == "leak-found" && !mends { // no danger, and no machine that is mended
			c.toldAgain(r)
		}
	}
}

// among reports whether a list holds a value.
//
//go:noinline
func among(list []string, s string) bool { return slices.Contains(list, s) }
