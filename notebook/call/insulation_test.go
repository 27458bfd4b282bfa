package call

import (
	"math"
	"slices"
	"strings"
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

// The windings, the verdict, the cause and the record say one thing of a
// reading to the case: bulletin AE4-1294, 1000 Ω per rated volt.
func TestOneRuleForAGround(t *testing.T) {
	for _, x := range []struct {
		lines    []string
		grounded bool
	}{
		{[]string{"plate volts 115", "safe", "ohm A case 220k"}, false},
		{[]string{"safe", "ohm A case 220k", "plate volts 115"}, false},
		{[]string{"plate volts 230", "safe", "ohm A case 220k"}, true},
		{[]string{"safe", "ohm A case 220k", "plate volts 230"}, true},
		{[]string{"plate volts 115", "safe", "ohm A case 90k"}, true},
	} {
		c := applyAll(t, append([]string{"fault clicks"}, x.lines...)...)
		r := c.weigh(math.MaxInt)
		all := strings.Join(append(c.alerts(c.Record()), c.stateWords(defaultMachine), c.nextStep(&r)), "\n")
		for word, want := range map[string]bool{"rounded": x.grounded, "in doubt": !x.grounded, "until an insulation tester": !x.grounded} {
			if strings.Contains(all, word) != want {
				t.Errorf("%v: %q in the record is %v:\n%s", x.lines, word, !want, all)
			}
		}
		if got := slices.Contains(r.Codes(cause.Supported), "winding-grounded"); got != x.grounded {
			t.Errorf("%v: winding-grounded supported %v", x.lines, got)
		}
	}
}
