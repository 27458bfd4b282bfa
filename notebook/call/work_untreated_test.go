package call

import (
	"strings"
	"testing"
)

// Work on another motor than the machine that the call is about is no work for
// what is ruled out of it, and mends nothing of it: common practice.
func TestWorkOnAnotherMachine(t *testing.T) {
	sound := []string{"unit refrigerator", "fault clicks", "plate start none, run none", "saw cond-fan stopped", "safe",
		"ohm A B 3, A C 12, B C 9", "ohm A case OL, B case OL, C case OL"}
	for _, x := range []struct {
		did, want string
	}{
		{"replaced the condenser fan", ""},
		{"replaced evaporator fan motor", ""},
		{"replaced damper motor", ""},
		{"replaced motor", "winding grounded to the case is ruled out"},
	} {
		c := applyAll(t, append(sound, "did "+x.did)...)
		got := strings.Join(c.idle(), "\n")
		if x.want == "" && got != "" || !strings.Contains(got, x.want) {
			t.Errorf("%s: work for what was ruled out %q, want %q", x.did, got, x.want)
		}
	}
	grounded := []string{"unit refrigerator", "fault clicks", "safe", "ohm A case 12", "saw cond-fan stopped"}
	for did, treated := range map[string]bool{"replaced condenser fan": false, "replaced compressor": true} {
		c := applyAll(t, append(grounded, "did "+did)...)
		left := ""
		for _, g := range c.untreated() {
			left += g.name()
		}
		if strings.Contains(left, "winding grounded") == treated {
			t.Errorf("%s: not treated are %q", did, left)
		}
	}
	for _, x := range []struct {
		on, did string
		another bool
	}{
		{"cond-fan", "replaced condenser fan", false}, {"cond-fan", "replaced evaporator fan", true}, {"evap-fan", "new fan motor", false},
		{"drain-pump", "replaced drain pump", false}, {"drum-motor", "replaced drum motor", false}, {"drum-motor", "replaced pump", true},
	} {
		c := applyAll(t, "on "+x.on, "ohm 1 2 30")
		if got := c.onAnother(x.did); got != x.another {
			t.Errorf("on %s, %s: another %v", x.on, x.did, got)
		}
	}
}
