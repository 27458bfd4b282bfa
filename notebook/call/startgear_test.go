package call

import (
	"math"
	"strings"
	"testing"

	"ohmcall/calc/cause"
	"ohmcall/notebook/record"
)

// An overload read open when cold, or taken off by the words of the work, is proved by
// the reading of the one in its place alone: the machine starts without any. Common
// practice.
func TestOverloadLeftOut(t *testing.T) {
	const open, closed = "ohm ol OL cold; ", "ohm ol 0.2; "
	for lines, want := range map[string]bool{
		open + "did removed protector, twisted wires together":             true,
		open + "did replaced compressor relay":                             true,
		open + "did replaced overload":                                     true,
		open + "did replaced overload; ohm overload 0.3 cold":              false,
		open + "ohm ol 0.3 cold; did replaced ptc":                         false,
		"ohm ol OL hot; did cleaned condenser":                             false,
		closed + "did replaced overload":                                   false,
		closed + "did installed 3-in-1 kit, old ptc and overload removed":  true,
		"did fitted 3 in 1, threw out old overload":                        true,
		"did fitted 3 in 1, threw out old overload; ohm overload 0.3 cold": false,
		"did fitted new ptc and overload, threw out old ones":              false,
		"did replaced ptc": false,
		open + "did replaced overload; saw starts; did cleaned condenser":       true,
		open + "did replaced ol; ohm ol 0.3 cold; saw starts; did cleaned coil": false,
	} {
		c := applyAll(t, append([]string{"unit chest freezer", "fault clicks", "safe"}, strings.Split(lines, "; ")...)...)
		if got := strings.Contains(strings.Join(c.proofMissing(), "\n"), "the new overload read"); got != want {
			t.Errorf("%s: the overload is wanted: %v", lines, got)
		}
	}
}

// A start capacitor that was replaced mends no relay, nor one for running: what was found
// and has no work is not mended, and the call not proved. Common practice.
func TestRelayLeftFailed(t *testing.T) {
	const cap = "ohm potential-contact OL; mfd start-cap 41; "
	for lines, want := range map[string]bool{
		cap + "did replaced start cap; mfd start-cap 97":                                             true,
		cap + "did fitted new start capacitor":                                                       true,
		"ohm potential-coil OL; mfd start-cap 41; did fitted new start capacitor":                    true,
		cap + "did replaced start cap and potential relay":                                           false,
		cap + "did replaced start cap; mfd start-cap 97; did replaced relay":                         false,
		cap + "did installed hard start kit":                                                         false,
		"ohm potential-contact 0.2; ohm potential-coil 6k; mfd start-cap 41; did replaced start cap": false,
	} {
		c := applyAll(t, append([]string{"unit reach-in freezer", "fault clicks", "plate volts 115, amps 8, mfd start 88-108", "safe"}, strings.Split(lines, "; ")...)...)
		r := c.Record()
		if got := strings.Contains(strings.Join(r.Alerts, "\n"), "Not mended: start device"); got != want {
			t.Errorf("%s: not mended: %v, %q", lines, got, r.Alerts)
		}
		if want && r.Header.Result != record.NotProved {
			t.Errorf("%s: %s", lines, r.Header.Result)
		}
	}
}

// What is read of the new part judges no work, and what the first work did not end is
// told. Common practice.
func TestWorkIsJudgedByWhatStoodBefore(t *testing.T) {
	const again = "; saw still clicks, no start; saw starts with start kit; did fitted start kit"
	for lines, want := range map[string][2]bool{ // accused; told that it went on
		"ohm ptc OL cold; did replaced ptc; ohm ptc 5.2 cold" + again: {false, true},
		"did replaced ptc; ohm ptc 5.2 cold" + again:                  {false, true},
		"ohm ptc 5.2 cold; did replaced ptc" + again:                  {true, true},
		"ohm ptc OL cold; did replaced ptc; saw starts":               {false, false},
	} {
		c := applyAll(t, append([]string{"unit chest freezer", "fault clicks, wont start", "safe", "ohm A B 4.2, A C 12.3, B C 16.5", "ohm A case OL, B case OL, C case OL"}, strings.Split(lines, "; ")...)...)
		alerts := strings.Join(c.Record().Alerts, "\n")
		if got := strings.Contains(alerts, "Work for what was ruled out"); got != want[0] {
			t.Errorf("%s: accused: %v\n%s", lines, got, alerts)
		}
		if got := strings.Contains(alerts, "did not end the complaint: still clicks"); got != want[1] {
			t.Errorf("%s: told: %v\n%s", lines, got, alerts)
		}
	}
}

// Of two compressors each has its own start device, overload, relay and wires: those of
// the one at hand, or of the one that the name tells. Common practice.
func TestGearOfTwoCompressors(t *testing.T) {
	const device, overload = "start-device-failed", "overload-failed"
	for lines, want := range map[string]string{ // the cause supported
		"on freezer-comp; ohm ptc OL cold; on fridge-comp; ohm ptc 6.1 cold":                                                 device,
		"on freezer-comp; ohm ptc 6.1 cold; on fridge-comp; ohm ptc OL cold":                                                 "",
		"on freezer-comp; ohm ol OL cold; on fridge-comp; ohm ol 0.2; on freezer-comp":                                       overload,
		"on freezer; ohm freezer-ptc OL cold; ohm freezer-ol 0.2; on fridge; ohm fridge-ptc 6.1 cold; ohm fridge-ol OL cold": device,
		"on freezer-comp; ohm potential-coil OL; on fridge-comp; ohm potential-coil 6k, potential-contact 0.2":               device,
		"on freezer-comp; ohm relay-coil OL; on fridge-comp; ohm relay-coil 0.5, relay OL upright, relay 0.2 inverted":       device,
		"ohm ptc OL cold; on cond-fan; ohm 1 2 40":                                                                           device,
		"on freezer-comp; ohm ptc OL cold; on evap-fan; ohm 1 2 400":                                                         device,
		"ohm ptc OL cold; ohm ptc 6.1 cold":                                                                                  "",
	} {
		c := applyAll(t, append([]string{"unit side by side with two compressors", "fault freezer compressor clicks", "safe"}, strings.Split(lines, "; ")...)...)
		r := c.weigh(math.MaxInt)
		if got := strings.Join(r.Codes(cause.Supported), " "); got != want || len(r.Contradictions) > 0 {
			t.Errorf("%s: supported %q, want %q; %v", lines, got, want, r.Contradictions)
		}
	}
	c := applyAll(t, "unit side by side with two compressors", "fault freezer compressor clicks", "safe", "on freezer-comp", "ohm A B 4.2, A C 12.3, B C 16.5", "ohm ptc OL cold",
		"on fridge-comp", "ohm A B 15.6, A C 11.3, B C 4.4", "ohm ptc 6.1 cold", "let x = ohm(ptc) + 1ohm", "ohm ol OL cold", "wire black common", "on freezer-comp", "wire red start", "did replaced ptc")
	r := c.Record()
	var wires []string
	for _, w := range r.Wiring {
		wires = append(wires, w.Wire+" "+w.At)
	}
	if got := strings.Join(wires, "; "); !strings.Contains(got, "freezer-comp: red C") || !strings.Contains(got, "fridge-comp: black C") {
		t.Errorf("wires: %s", got)
	}
	if got := strings.Join(c.proofMissing(), "; "); !strings.Contains(got, "new start device read") {
		t.Errorf("the other one's reading proves it: %s", got)
	}
	if got := strings.Join(r.Alerts, "; "); strings.Contains(got, "ruled out") || !strings.Contains(got, "Not mended: overload overload-fridge-comp") {
		t.Errorf("%s", got)
	}
}
