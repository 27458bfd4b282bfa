package call

import (
	"math"
	"slices"
	"testing"

	"ohmcall/calc/cause"
)

// One pin that is too near the limit to say keeps the others from clearing the
// machine: what it may be is open.
func TestOnePinInDoubtClearsNothing(t *testing.T) {
	start := []string{"fault clicks and does not start", "saw clicks", "plate volts 115", "ohm A B 3.4, A C 8.1, B C 11.5",
		"ohm A case 50M test 500V", "ohm C case 50M test 500V"}
	for _, x := range []struct {
		b    string
		want cause.State
	}{
		{"ohm B case 50M test 500V", cause.RuledOut},
		{"ohm B case 2.0M test 500V", cause.Open},
		{"ohm B case 0.02M test 500V", cause.Supported},
	} {
		c := linesOf(t, append(slices.Clone(start), x.b)...)
		r := c.weigh(math.MaxInt)
		for i := range r.Standings {
			if s := &r.Standings[i]; s.Cause.Code == "winding-grounded" && s.State != x.want {
				t.Errorf("%s: winding-grounded is %s, want %s", x.b, s.State, x.want)
			}
		}
	}
}
