package call

import (
	"slices"

	"ohmcall/notebook/said"
)

// hazardsLeft are the entries that tell of what can hurt and still stand, each thing once:
// that one is gone takes the last told of off, unless its words are of all or of another.
func (c *Call) hazardsLeft() (left []int) {
	told, gone := c.seenAt["hazard"], c.seenAt["no-hazard"]
	c.spend(20 * (len(told) + len(gone)))
	for len(told)+len(gone) > 0 {
		if len(gone) > 0 && (len(told) == 0 || gone[0] <= told[0]) {
			if n := gone[0]; c.alive(n) && len(left) > 0 {
				left = c.hazardGone(left, c.line(n))
			}
			gone = gone[1:]
			continue
		}
		n := told[0]
		told = told[1:]
		if !c.alive(n) {
			continue
		}
		line := c.line(n)
		if !slices.ContainsFunc(left, func(at int) bool { return said.SameHazard(c.line(at), line) }) {
			left = append(left[max(0, len(left)-mostSaid):], n)
		}
	}
	return left
}

// hazardGone leaves of hazards those that a line does not take off.
func (c *Call) hazardGone(left []int, line string) []int {
	if len(left) == 1 || said.AllHazards(line) {
		return nil
	}
	for i := len(left) - 1; i >= 0; i-- {
		c.spend(400)
		if said.NamesHazard(c.line(left[i]), line) {
			return slices.Delete(left, i, i+1)
		}
	}
	return left[:len(left)-1]
}

// hazardStands says which of several still stands when one is gone.
func (c *Call) hazardStands(r *Reply, codes []string) {
	if !among(codes, "no-hazard") {
		return
	}
	for _, n := range c.hazardsLeft() {
		if n != c.entry {
			r.add(Ask, "Still stands: "+quoted(clip(said.Body(c.line(n)), 60))+atEntry(n)+". If that is gone too: saw hazard gone; all at once: saw hazards gone.").flag("hazard-stands")
		}
	}
}
