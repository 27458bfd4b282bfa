package call

import (
	"strings"
	"testing"

	"ohmcall/notebook/record"
)

// An overload read open when cold, or taken off by the words of the work, is proved by
// the reading of the one in its place alone: the machine starts without any. Common
// practice.
func TestOverloadLeftOut(t *testing.T) {
	const open, closed = "ohm ol OL cold; ", "ohm ol 0.2; "
	for lines, want := range map[string]bool{
		open + "did removed klixon, twisted wires together":                true,
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
