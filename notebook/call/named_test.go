package call

import (
	"strings"
	"testing"
)

// Leads that are called by their roles have them by their names, unless a
// marking says otherwise.
func TestNamedRoles(t *testing.T) {
	c := applyAll(t, "on blower", "ohm com hi 4.1, com med 6.0, com lo 8.2, hi lo 4.2, hi med 1.9")
	roles := c.machines["blower"].result.Roles
	for pin, want := range map[string]string{"com": "common", "hi": "high", "med": "medium", "lo": "low"} {
		if string(roles[pin]) != want {
			t.Errorf("%s is %q, want %s", pin, roles[pin], want)
		}
	}
	if got := must(t, c, "roles").Reply.Plain(); !strings.Contains(got, "The names com, hi, med, lo are taken") {
		t.Error(got)
	}
	// Letters count only where the ohms cannot tell.
	c = applyAll(t, "ohm C S 2.1, C R 0.6, S R 2.7")
	if roles := c.machines[defaultMachine].result.Roles; roles["C"] != "common" || roles["R"] != "run" {
		t.Errorf("too close, and the letters do not count: %v", roles)
	}
	c = applyAll(t, "ohm C S 5, C R 11.1, S R 6.1")
	if roles := c.machines[defaultMachine].result.Roles; roles["S"] != "common" {
		t.Errorf("the letters outrank the ohms: %v", roles)
	}
	c = applyAll(t, "ohm com start 2.2, com run 5.8, start run 8.0", "mark run start", "mark start run")
	if roles := c.machines[defaultMachine].result.Roles; roles["run"] != "start" || roles["start"] != "run" {
		t.Errorf("the marking does not outrank the name: %v", roles)
	}
}
