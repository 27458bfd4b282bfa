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

// With two compressors a current is that of the one at hand, and held to its own plate;
// an open winding of the other stays in the record. Common practice.
func TestTwoCompressors(t *testing.T) {
	const two = "unit fridge with two compressors; fault freezer warm; plate volts 115, amps 1.2, lra 12; ohm A B 3.4, A C 6.5, B C 9.8; on freezer-compressor; plate volts 115, amps 0.9, lra 9; "
	checkTrade(t, []tradeCase{
		{"without a place", two + "amp 1.30 run", []string{"freezer-compressor 1.30 A", "failed, 1.3 A is high for a plate of 0.9 A"}, nil, nil, "", "common practice"},
		{"called comp", two + "amp comp 0.85 run", []string{"running amps freezer-compressor: sound, 0.85 A against a plate of 0.9 A"}, nil, nil, "", "common practice"},
		{"the first one again", two + "on compressor; amp comp 1.1 run", []string{"running amps comp: sound, 1.1 A against a plate of 1.2 A"}, nil, nil, "", "common practice"},
		{"a fan at hand is no compressor", strings.Replace(two, "on freezer-compressor", "on evap-fan", 1) + "amp comp 1.1 run", []string{"running amps comp"}, nil, nil, "", "common practice"},
	})
	c := applyAll(t, strings.Split(two+"ohm A case 2.0k; close", "; ")...)
	if got := strings.Join(c.Record().Alerts, "\n"); !strings.Contains(got, "freezer-compressor") {
		t.Error(got)
	}
}
