package call

import (
	"slices"
	"strings"

	"ohmcall/notebook/script"
)

// Stands reports whether a line of a file defines or needs what the call has
// already, in the same words, and would come to the same again.
func (c *Call) Stands(line string) bool {
	line = strings.TrimSpace(line)
	c.spend(2 * len(c.needs))
	for i := range c.needs {
		if n := c.needs[i].entry; c.alive(n) && c.entries[n-1].Line == line {
			return true
		}
	}
	name, ok := Defines(line)
	d, have := c.defined(name)
	if !ok || !have || d.line != line {
		return false
	}
	if d.isFunc {
		return true
	}
	for _, expr := range c.expressions(line) {
		if q, err := c.evalQuantity(expr, 1); err != nil || q.SI() != d.value.SI() {
			return false
		}
	}
	return c.shaken(d.from) == ""
}

// ofOneCall are the commands that no file taken in by use may hold.
var ofOneCall = []string{"close", "date", "client", "site", "strike"}

// OfOneCall refuses a line that belongs into one call and no collection: what
// ends it, sets its clock, says whose it is, or counts its entries.
func OfOneCall(line string) error {
	l, err := script.Parse(line)
	if err != nil || l.Blank() {
		return nil
	}
	first := l.Words[0]
	what := first.Text
	if l.Stamp.Set {
		first.Col, what = 1, "a time before a line"
	} else if !among(ofOneCall, what) {
		return nil
	}
	return first.Errorf("%s is of one call, and a file that others use may not hold it", what).
		WithHint("type it in the call itself; ohmcall run plays a file that is a whole call")
}

// Uses lists the definitions of this call that another of them rests on, by
// name, its own parameters aside.
func (c *Call) Uses(name string) []string {
	d, ok := c.defined(name)
	if !ok {
		return nil
	}
	return slices.DeleteFunc(c.Known(d.line), func(n string) bool { return n == name || among(d.def.Params, n) })
}

// Lacks is a name that a definition of this call rests on and that has no
// meaning any more; "" for none.
func (c *Call) Lacks(name string) string {
	d, _ := c.defined(name)
	for _, n := range c.Unknown(d.line) {
		if !among(d.def.Params, n) {
			return n
		}
	}
	return ""
}
