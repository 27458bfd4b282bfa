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

// Pins called by the letters of a cover that come out otherwise by the ohms are told,
// and a second pin is not marked with a role that another has. Common practice.
func TestLettersAndMarks(t *testing.T) {
	const start, against = "unit refrigerator; fault clicks; ", "against the letters"
	checkTrade(t, []tradeCase{
		{"start and run exchanged", start + "ohm C R 6.5, C S 3.4, R S 9.8", []string{"By the ohms R as start and S as run, against the letters"}, nil, nil, "", "common practice"},
		{"all three", start + "ohm S R 3.4, S C 6.5, R C 9.8", []string{against}, nil, nil, "", "common practice"},
		{"as the letters say", start + "ohm C R 3.4, C S 6.5, R S 9.8", nil, []string{against}, nil, "", "common practice"},
		{"other names", start + "ohm A B 6.5, A C 3.4, B C 9.8", nil, []string{against}, nil, "", "common practice"},
	})
	for lines, want := range map[string]bool{
		"ohm C R 6.5, C S 3.4, R S 9.8": true, "mark S start; ohm C R 6.5, C S 3.4, R S 9.8": false, "ohm C R 3.4, C S 6.5, R S 9.8": false,
	} {
		if got := strings.Join(applyAll(t, strings.Split(start+lines, "; ")...).Record().Alerts, "\n"); strings.Contains(got, against) != want {
			t.Errorf("%s: %s", lines, got)
		}
	}
	c := applyAll(t, "unit refrigerator", "mark A common")
	if _, err := c.Apply(testDay(), "mark B common"); err == nil || !strings.Contains(err.Error(), "A is marked common already, entry 2") {
		t.Errorf("a second common: %v", err)
	}
	for _, l := range []string{"mark B start", `strike 2 "wrong pin"`, "mark C common"} {
		must(t, c, l)
	}
}

// Line voltage on a compressor that a drive runs is told, and stays in the record.
// Common practice.
func TestLineVoltageOnADrive(t *testing.T) {
	for line, want := range map[string]bool{
		"did ran compressor on test cord": true, "did put 120 V on U and V": true, "note ran it direct on 115V mains for a second": true,
		"saw direct-tested compressor with line voltage": true, "note hot-shotted the windings": true,
		"note measured 120 V on the drive's supply": false, "did put the panel back directly": false, "note never put line voltage on it": false, "note 115 V at the outlet": false,
	} {
		for unit, driven := range map[string]bool{"plate type inverter": true, "ohm U V 9.1, U W 9.1, V W 9.1": true, "ohm U V 3.4, U W 6.5, V W 9.8": false} {
			c := applyAll(t, "unit refrigerator", "fault does not start", unit)
			reply := must(t, c, line).Reply.Plain()
			alerts := strings.Join(c.Record().Alerts, "\n")
			const told = "ine voltage on a compressor that a drive runs"
			if strings.Contains(reply, told) != (want && driven) || strings.Contains(alerts, told) != (want && driven) {
				t.Errorf("%s, %s: %s; %s", unit, line, reply, alerts)
			}
		}
	}
}
