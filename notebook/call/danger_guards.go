package call

import (
	"slices"
	"strings"

	"ohmcall/calc/caution"
	"ohmcall/notebook/said"
)

// guards takes what a line that is no work says of protective devices down, and
// warns of it.
func (c *Call) guards(r *Reply, text string) {
	c.spend(400 * min(len(text), said.MostBytes))
	c.guarding = append(c.guarding, said.Guards(c.entry, text, false, c.makesIce())...)
	c.warnOfGuards(r)
}

// makesIce tells a machine whose cubes a bridge of ice joins.
func (c *Call) makesIce() bool {
	return said.Has(strings.ToLower(c.last("unit")), []string{"ice m", "ice-m", "icem", "cuber", "ice cube", "cube ice"})
}

// warnOfGuards warns of a device that the line at hand takes out of its circuit,
// and says which words take it for back.
func (c *Call) warnOfGuards(r *Reply) {
	i := len(c.guarding)
	for i > 0 && c.guarding[i-1].Entry == c.entry {
		i--
	}
	if out := said.Out(c.guarding[i:]); len(out) > 0 {
		why := "a protective device may be out of its circuit; put it back before power returns"
		if said.Overrated(out) {
			why = "a fuse or breaker may pass more than what it feeds can carry; fit one of the right size before power returns"
		}
		r.add(Caution, "Caution: by these words "+why+backBy(c.defeated(), c.entry)+".").flag("protection-in-doubt")
		c.warn(r, caution.ProtectorStays)
	}
}

// backBy names the words by which what an entry took out of its circuit counts as
// being back.
func backBy(list []said.Guard, entry int) string {
	var ways []string
	for _, g := range list {
		if how := "did " + g.Clears(list); g.Entry == entry && !among(ways, how) {
			ways = append(ways, how)
		}
	}
	if len(ways) == 0 && len(list) > 0 { // it speaks again of what is out already
		ways = []string{"did " + list[len(list)-1].Clears(list)}
	}
	return "; when it is: " + strings.Join(ways, ", ")
}

// overloadOut reports whether an overload is out of its circuit by what was told.
func (c *Call) overloadOut() bool {
	return slices.ContainsFunc(c.defeated(), func(g said.Guard) bool {
		return said.Has(" "+g.Text+" ", []string{"overload", " olp ", " ol ", "protector"})
	})
}
