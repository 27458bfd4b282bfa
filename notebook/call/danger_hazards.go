package call

import (
	"strings"

	"ohmcall/notebook/said"
)

// hazardsLeft are the entries that tell of what can hurt and still stand, each thing once:
// that one is gone takes off what its words name, else what was made good, else the last.
func (c *Call) hazardsLeft() (left []int) {
	told, gone := c.seenAt["hazard"], c.seenAt["no-hazard"]
	if c.heard("hazard") {
		told = append([]int{c.lastAt("fault")}, told...)
	}
	c.spend(20 * (len(told) + len(gone)))
	for len(told)+len(gone) > 0 {
		if len(gone) > 0 && (len(told) == 0 || gone[0] <= told[0]) {
			if n := gone[0]; c.alive(n) && len(left) > 0 {
				left = c.hazardGone(left, n)
			}
			gone = gone[1:]
			continue
		}
		n := told[0]
		told = told[1:]
		again := !c.alive(n)
		for _, at := range left {
			again = again || said.SameHazard(c.line(at), c.line(n))
		}
		if !again {
			left = append(left[max(0, len(left)-mostSaid):], n)
		}
	}
	return left
}

// hazardGone leaves of hazards those that an entry does not take off.
func (c *Call) hazardGone(left []int, gone int) []int {
	line := c.line(gone)
	if len(left) == 1 || said.AllHazards(line) {
		return nil
	}
	for i := len(left) - 1; i >= 0; i-- {
		c.spend(400)
		if said.NamesHazard(c.line(left[i]), line) {
			return append(left[:i], left[i+1:]...)
		}
	}
	for k := len(c.works) - 1; k >= max(0, len(c.works)-mostSaid); k-- {
		w := &c.works[k]
		for i, at := range left {
			if c.spend(400); w.kind == "did" && w.entry > at && w.entry < gone && c.alive(w.entry) && said.MadeGood(c.line(at), w.text) {
				return append(left[:i], left[i+1:]...)
			}
		}
	}
	return left[:len(left)-1]
}

// stillHazard are the words for which of several still stands when one is gone, "" when
// none does.
func (c *Call) stillHazard() string {
	left := c.hazardsLeft()
	if len(left) == 0 || left[0] == c.entry {
		return ""
	}
	_, text, _ := strings.Cut(c.line(left[0]), " ")
	return "Still stands: " + quoted(clip(text, 60)) + atEntry(left[0]) + ". If that is gone too: saw hazard gone; all at once: saw hazards gone."
}

// madeGood reports whether the line at hand is of work on the one thing that was told of
// as what can hurt, a guard or a relief valve, and says that it is new or back.
func (c *Call) madeGood(text string) bool {
	n := len(c.works)
	if len(c.seenAt["hazard"]) == 0 || n == 0 || c.works[n-1] != (work{c.entry, c.at, "did", text}) {
		return false
	}
	left := c.hazardsLeft()
	return len(left) == 1 && left[0] != c.entry && said.MadeGood(c.line(left[0]), text)
}
