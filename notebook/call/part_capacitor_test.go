package call

import (
	"strings"
	"testing"
)

// TestMarkingOfEachCompressor holds that a capacitor is judged by the plate of the
// compressor at hand, and never by that of the other.
func TestMarkingOfEachCompressor(t *testing.T) {
	const two = "unit walk-in cooler; fault not cold; on comp1; plate mfd 35; on comp2; plate mfd 50; "
	for _, r := range []struct{ lines, says string }{
		{two + "mfd run-cap 34", "failed"},
		{two + "on comp1; mfd run-cap 34", "limit 31.5 to 38.5"},
		{two + "on comp1; mfd run-cap 49", "failed"},
		{two + "mfd run-cap 49", "sound"},
		{"unit walk-in cooler; on comp1; plate mfd 35; on comp2; mfd run-cap 34", "is needed to judge it"},
		{"unit fridge; plate mfd 35; on cond-fan; mfd run-cap 34", "limit 31.5 to 38.5"},
		{"unit fridge; plate mfd 35; mfd run-cap 34", "limit 31.5 to 38.5"},
		{"unit fridge; ohm kit 5.0", "kit: cannot tell, a capacitor and what cuts it out"},
		{"unit fridge; ohm hard-start-kit OL", "hard-start-kit: cannot tell, a capacitor"},
		{"unit fridge; ohm start kit OL", "start-kit: cannot tell, a capacitor"},
	} {
		lines := strings.Split(r.lines, "; ")
		c := applyAll(t, lines[:len(lines)-1]...)
		e := must(t, c, c.Expand(lines[len(lines)-1]))
		if got := e.Reply.Plain(); !strings.Contains(got, r.says) {
			t.Errorf("%s: %s\nwant %q", r.lines, got, r.says)
		}
	}
}
