package call

import (
	"ohmcall/calc/cause"
)

// alarming are the findings of a danger to whoever comes near.
var alarming = []string{"shock", "smoke", "gas-smell"}

// alarms lists the dangers that were seen, and those that the complaint speaks
// of, for which no work was written down since.
func (c *Call) alarms() (saw, told []string) {
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
			saw = append(saw, f.Help+atEntry(at))
		case at == 0 && since == 0 && among(c.appliance().Heard, code):
			told = append(told, "the complaint speaks of it: "+f.Help+atEntry(c.lastAt("fault")))
		}
	}
	return saw, told
}
