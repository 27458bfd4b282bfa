package call

// Work is what applying lines has cost so far, in steps of about two
// nanoseconds of an ordinary machine. It is counted, not timed: the same lines
// come to the same on every machine, so that what one refuses as too much none
// takes.
func (c *Call) Work() int { return c.steps }

// spend counts steps. Whatever goes through facts whose number a call does not
// bound counts them; alive counts itself.
//
//go:noinline
func (c *Call) spend(steps int) { c.steps += steps }
