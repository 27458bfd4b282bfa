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

// An insulation tester shows tenths of a megohm below some 20 MΩ, which people leave
// out; what it reads after an ohm-meter's OL is no jump (common practice).
func TestWholeMegohms(t *testing.T) {
	const at = "fault clicks; safe; "
	checkTrade(t, []tradeCase{
		{"three", at + "ohm A case 3M test 500V", []string{"insulation A to case: sound", "Whole megohms are taken as tenths shown (3.0M); write ~3M"}, nil, nil, "", "common practice"},
		{"five", at + "ohm A case 5M test 500V", []string{"insulation A to case: sound"}, nil, nil, "", "common practice"},
		{"told once", at + "ohm A case 5M test 500V; ohm B case 4M test 500V", []string{"insulation B to case: sound"}, []string{"Whole"}, nil, "", "common practice"},
		{"tenths written", at + "ohm A case 5.0M test 500V", []string{"insulation A to case: sound"}, []string{"Whole"}, nil, "", "common practice"},
		{"none shown", at + "ohm A case ~3M test 500V", nil, []string{"sound", "Whole"}, nil, "", "common practice"},
		{"an ohm-meter's", at + "ohm A case 5M", []string{"No gross fault", "Whole megohms are taken as tenths"}, []string{"too near"}, nil, "", "common practice"},
		{"a high range", at + "ohm A case 550M test 500V", []string{"insulation A to case: sound"}, []string{"Whole"}, nil, "", "common practice"},
		{"a tester after an ohm-meter", at + "ohm B case OL; ohm B case 550M test 500V", []string{"insulation B to case: sound"}, []string{"jump", "Read again"}, nil, "", "common practice"},
		{"an ohm-meter after a tester", at + "ohm B case 550M test 500V; ohm B case OL", nil, []string{"jump", "Read again"}, nil, "", "common practice"},
		{"a meter after itself", at + "ohm B case OL; ohm B case 60k", []string{"Read again"}, nil, nil, "", "common practice"},
	})
}
