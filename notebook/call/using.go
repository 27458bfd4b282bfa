package call

import (
	"strings"

	"ohmcall/calc/sum"
	"ohmcall/notebook/script"
)

// Stands reports whether a line of a file defines what the call has already, in
// the same words, and would come to the same again.
func (c *Call) Stands(line string) bool {
	name, ok := Defines(line)
	d, have := c.defined(name)
	if !ok || !have || d.line != strings.TrimSpace(line) {
		return false
	}
	if d.isFunc {
		return true
	}
	for _, expr := range c.expressions(line) {
		q, err := sum.Quantity(expr, &scope{c: c})
		if err != nil || q.SI() != d.value.SI() || q.U() != d.value.U() {
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
