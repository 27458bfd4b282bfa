package call

import (
	"ohmcall/calc/cause"
)

// alarming are the findings of a danger to whoever comes near.
var alarming = []string{"shock", "smoke", "gas-smell"}

// alarms lists the dangers that were seen or that the complaint speaks of and
// for which no work was written down since.
func (c *Call) alarms() []string {
	var out []string
	since := c.since()
	for _, code := range alarming {
		f, _ := cause.Lookup(code)
		at := 0
		for _, n := range c.seenAt[code] {
			if c.alive(n) {
				at = n
			}
		}
		switch {
		case at > since:
			out = append(out, f.Help+", entry "+itoa(at))
		case at == 0 && since == 0 && among(c.heard(), code):
			out = append(out, "the complaint speaks of it: "+f.Help)
		}
	}
	return out
}
