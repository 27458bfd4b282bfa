package call

import (
	"time"

	"ohmcall/calc/caution"
)

// deadAt reports whether the unit counted as dead after an entry: made safe,
// or volts near zero, on the same day, and nothing live since. What was locked
// out yesterday is proved dead again today.
func (c *Call) deadAt(entry int) bool {
	dead := c.lastOf(c.dead, entry)
	return dead > 0 && dead >= c.lastOf(c.live, entry) && c.sameDay(dead, entry)
}

func (c *Call) sameDay(a, b int) bool {
	y1, m1, d1 := c.timeOf(a).Date()
	y2, m2, d2 := c.timeOf(b).Date()
	return d1 == d2 && m1 == m2 && y1 == y2
}

func (c *Call) timeOf(entry int) time.Time {
	if entry > len(c.entries) {
		return c.at
	}
	return c.entries[entry-1].At
}

// undeadTests lists the entries of dead tests that were made without a word
// that the unit was dead.
func (c *Call) undeadTests() []int {
	var out []int
	c.spend(2 * len(c.readings))
	for _, r := range c.readings {
		if (r.quality.word == "ohm" || r.quality.word == "mfd") && c.alive(r.entry) && !c.deadAt(r.entry) &&
			(len(out) == 0 || out[len(out)-1] != r.entry) {
			out = append(out, r.entry)
		}
	}
	return out
}

// deadVolts is the voltage below which a point counts as dead: the limit of
// touchable extra-low voltage in wet surroundings is 25 to 30 V (common
// practice).
const deadVolts = 30

// warn gives a caution once in a call; the one to prove dead comes again when
// the unit was live since.
func (c *Call) warn(reply *Reply, code string) {
	switch code {
	case caution.ProveDead:
		if c.deadAt(c.entry) {
			return
		}
	case caution.HotMoving:
		if c.deadAt(c.entry) {
			return
		}
	case caution.EarthAfter:
		if len(c.mended) == 0 || c.appliance().NoMains {
			return
		}
	case caution.TerminalsPressed:
		if !c.atCompressor() {
			return
		}
	case caution.Capacitor:
		if c.noCapacitor() {
			return
		}
	}
	if at := c.warned[code]; at > 0 && (code != caution.ProveDead || at >= c.lastOf(c.live, c.entry) && c.sameDay(at, c.entry)) {
		return
	}
	t, ok := caution.Text(code)
	if !ok {
		return
	}
	c.caution = append(c.caution, cautioned{code, c.entry})
	c.warned[code] = c.entry
	reply.add(Caution, "Caution: "+t.Text).flag("caution-" + code)
}

// warnAgain gives a caution though it was given before.
//
//go:noinline
func (c *Call) warnAgain(reply *Reply, code string) {
	delete(c.warned, code)
	c.warn(reply, code)
}
