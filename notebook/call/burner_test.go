package call

import (
	"math"
	"slices"
	"strings"
	"testing"

	"ohmcall/calc/cause"
)

// What a call about a burner comes to after its lines: the causes that are supported and
// those that are ruled out, and others that must not be (common practice).
func TestBurnerCauses(t *testing.T) {
	const dryer = "unit gas dryer; fault heats at first then goes cold; "
	const heater = "unit gas water heater; fault pilot keeps going out; "
	const furnace = "unit gas furnace; fault no heat, pressure switch stuck open; "
	for _, x := range []struct{ lines, supported, out, not string }{
		{dryer + "saw igniter glows; saw flame lights; saw heats up", "", "", "gas-coil-hot limit-hot cut-early airflow-blocked"},
		{dryer + "saw flame lights; saw flame drops out; ohm coil-1-2 1350; ohm coil-1-3 560; ohm coil-4-5 OL", "gas-coil-hot", "flame-not-sensed", "limit-hot"},
		{dryer + "ohm valve-coil 1350", "", "", "gas-coil-hot"},
		{dryer + "ohm valve-coil 1350 hot", "", "", "gas-coil-hot"},
		{dryer + "ohm coil-1-2 1350; ohm coil-1-3 560; ohm coil-4-5 1220 hot", "", "", "gas-coil-hot"},
		{dryer + "ohm coil-1-2 1350 hot; ohm coil-1-3 560 hot; ohm coil-4-5 1220 hot", "", "gas-coil-hot", "limit-hot"},
		{dryer + "ohm valve-coil OL hot", "gas-coil-hot", "", ""},
		{dryer + "ohm hi-limit OL hot", "limit-hot", "", "gas-coil-hot"},
		{dryer + "ohm hi-limit 0.1", "", "", "limit-hot"},
		{dryer + "ohm hi-limit 0.1 hot", "", "limit-hot", ""},
		{dryer + "saw glows when hot no flame", "", "limit-hot cut-early", "gas-coil-hot"},
		{dryer + "saw igniter glows, no flame when hot", "", "limit-hot cut-early", "gas-coil-hot"},
		{dryer + "saw second cycle it glows but doesn't light", "", "limit-hot cut-early", "gas-coil-hot"},
		{dryer + "saw igniter glows", "", "", "gas-coil-hot limit-hot cut-early"},
		{"unit gas dryer; fault no heat; ohm valve-coil 1350", "", "", "gas-coil-open"},
		{"unit gas dryer; fault no heat; saw flame lights; saw flame drops out; ohm valve-coil 1350", "", "", "gas-coil-hot"},
		{"unit gas oven; fault no heat; saw igniter glows; ohm valve-coil 1350", "", "gas-coil-open", ""},
		{heater + "saw airflow blocked", "intake-blocked", "", ""},
		{heater + "saw flame arrestor screen plugged with lint", "intake-blocked", "", ""},
		{heater + "volt thermocouple 2mV", "thermocouple-weak", "pilot-valve", "pilot-weak"},
		{heater + "volt thermocouple 27mV dc; saw pilot lights", "", "thermocouple-weak pilot-weak", "pilot-valve"},
		{heater + "volt thermopile 420mV; volt thermocouple 2mV", "thermocouple-weak", "", ""},
		{"unit electric kettle; fault no heat", "", "airflow-blocked", ""},
		{furnace + "saw inducer runs; volt pressure-switch 24 run", "press-open", "inducer-failed", "draft-poor"},
		{furnace + "ohm pressure-switch OL run", "press-open", "", "inducer-failed draft-poor"},
		{furnace + "ohm pressure-switch 0.1 run", "", "press-open inducer-failed draft-poor", ""},
		{furnace + "ohm pressure-switch OL", "", "", "press-open"},
		{furnace + "saw condensate trap plugged", "draft-poor", "", ""},
		{furnace + "saw inducer dead", "inducer-failed", "", ""},
		{furnace + "saw igniter glows", "", "press-open inducer-failed draft-poor", "gas-coil-open"},
		{"unit gas furnace; fault blower runs all the time, burner lights fine; ohm hi-limit OL", "limit-hot", "", "fan-set-on"},
		{"unit gas furnace; fault blower will not stop; saw fan set to auto; ohm hi-limit 0.1", "", "fan-set-on limit-hot", "blower-relay-stuck"},
	} {
		c := applyAll(t, strings.Split(x.lines, "; ")...)
		r := c.weigh(math.MaxInt)
		for _, code := range strings.Fields(x.out) {
			if !slices.Contains(r.Codes(cause.RuledOut), code) {
				t.Errorf("%s: %s is not ruled out", x.lines, code)
			}
		}
		for _, code := range strings.Fields(x.not) {
			if slices.Contains(r.Codes(cause.RuledOut), code) || slices.Contains(r.Codes(cause.Supported), code) {
				t.Errorf("%s: %s is not open", x.lines, code)
			}
		}
		if got := strings.Join(r.Codes(cause.Supported), " "); got != x.supported {
			t.Errorf("%s: %q is supported, want %q", x.lines, got, x.supported)
		}
	}
}

// A machine on a standing pilot has no earth to prove; one with mains has.
func TestProofOfBurners(t *testing.T) {
	for _, x := range []struct {
		lines   string
		earth   bool
		missing string
	}{
		{"unit gas water heater; fault pilot won't stay lit; volt thermocouple 2mV; did replaced thermocouple; volt thermocouple 27mV; saw flame lights; temp water 120F", false, ""},
		{"unit gas dryer; fault heats then goes cold; ohm valve-coil OL; did replaced gas valve coils; saw flame lights; saw heats up", true, "keeps its heat"},
		{"unit gas dryer; fault heats then goes cold; ohm valve-coil OL; did replaced gas valve coils; saw flame lights; saw keeps heating", true, ""},
		{"unit gas furnace; fault blower won't stop; ohm hi-limit OL; did cleaned filter, replaced limit; ohm hi-limit 0.1", true, "seen to stop"},
	} {
		c := applyAll(t, strings.Split(x.lines, "; ")...)
		got := strings.Join(c.proofMissing(), "; ")
		if strings.Contains(got, "earth") != x.earth || !strings.Contains(got, x.missing) || x.missing == "" && strings.Contains(got, "saw") {
			t.Errorf("%s: proof missing: %s", x.lines, got)
		}
	}
}

// A switch that senses the heat of a flame is closed cold and open hot.
func TestRadiantSensor(t *testing.T) {
	for line, want := range map[string]string{
		"ohm radiant-sensor OL hot": "sound", "ohm flame-sensor OL hot": "sound", "ohm radiant-sensor OL at 300F": "sound", "ohm radiant-sensor OL": "failed", "ohm radiant-sensor OL cold": "failed",
		"ohm radiant-sensor OL at 70F": "failed", "ohm radiant-sensor 0.1": "sound", "ohm radiant-sensor 0.1 hot": "cannot tell", "ohm radiant-sensor OL closed": "failed",
	} {
		c := applyAll(t, "unit gas dryer", "fault drum noisy")
		r, err := c.Apply(testDay(), line)
		if err != nil || !strings.Contains(r.Reply.Plain(), "sensor: "+want) && !strings.Contains(r.Reply.Plain(), "sensor radiant-sensor: "+want) {
			t.Errorf("%s: %s %v, want %s", line, r.Reply.Plain(), err, want)
		}
	}
}
