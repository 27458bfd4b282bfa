package call

import (
	"slices"
	"strings"
	"testing"
)

// The proof is of the part that was worked on: common practice.
func TestProofOfTheFan(t *testing.T) {
	start := []string{"unit refrigerator", "fault fridge warm", "plate volts 115, amps 1.2", "saw evap-fan stopped", "safe", "on evap-fan", "plate amps 0.1", "ohm 1 2 OL"}
	wanted := func(lines ...string) string {
		return strings.Join(applyAll(t, append(slices.Clone(start), lines...)...).proofMissing(), "\n")
	}
	got := wanted("did replaced evaporator fan motor")
	for _, w := range []string{"saw evap-fan runs", "amp evap-fan … run", "temp fridge"} {
		if !strings.Contains(got, w) {
			t.Errorf("%q is not wanted: %s", w, got)
		}
	}
	for _, w := range []string{"amp comp", "ohm A case", "cond-fan"} {
		if strings.Contains(got, w) {
			t.Errorf("%q is wanted: %s", w, got)
		}
	}
	if got := wanted("did replaced evaporator fan motor", "saw evap-fan runs", "amp evap-fan 0.085 run"); strings.Contains(got, "evap-fan") {
		t.Errorf("shown and still wanted: %s", got)
	}
	if got := wanted("did replaced evaporator fan motor", "amp comp 1.15 run"); !strings.Contains(got, "amp evap-fan") {
		t.Errorf("the compressor's amps prove the fan: %s", got)
	}
	if got := wanted("did replaced evaporator fan motor", "did cleaned the condenser"); !strings.Contains(got, "amp comp") || !strings.Contains(got, "amp evap-fan") {
		t.Errorf("work on the condenser as well: %s", got)
	}
	if got := wanted("did replaced compressor, by a certified person"); !strings.Contains(got, "amp comp") {
		t.Errorf("work on the compressor: %s", got)
	}
}

// What a verdict cannot tell proves nothing, and what would settle it is said;
// where a temperature is the proof, being seen to heat is none.
func TestCheapProof(t *testing.T) {
	dryer := []string{"unit dryer", "fault does not heat", "safe", "ohm limit OL", "did replaced limit", "ohm earth 0.05 test 10A"}
	plated := append([]string{"plate volts 240, watts 5300"}, dryer...)
	for _, x := range []struct {
		start, lines []string
		missing      []string
		result       string
	}{
		{dryer, []string{"amp heater 2.0", "saw heats up"}, []string{"cannot tell", "plate watts …, volts …", "the temperature it reaches"}, "not proved"},
		{dryer, []string{"amp heater 22.0", "temp dryer 148F"}, []string{"plate watts …, volts …"}, "not proved"},
		{plated, []string{"amp heater 22.0", "saw heats up"}, []string{"the temperature it reaches"}, "not proved"},
		{plated, []string{"amp heater 20.2", "temp dryer 148F"}, []string{"read the volts beside it"}, "not proved"},
		{plated, []string{"amp heater 22.1", "temp dryer 90F"}, []string{"the temperature it reaches"}, "not proved"},
		{plated, []string{"amp heater 22.1", "temp dryer 148F"}, nil, "proved"},
		{plated, []string{"amp heater 20.2", "temp dryer 148F", "volt L1 L2 228 run"}, nil, "proved"}, // 5300 W at 240 V are 20.98 A at 228 V
	} {
		c := applyAll(t, append(slices.Clone(x.start), x.lines...)...)
		all := strings.Join(c.proofMissing(), "\n")
		for _, w := range x.missing {
			if !strings.Contains(all, w) {
				t.Errorf("%v: %q is not in %s", x.lines, w, all)
			}
		}
		told := ""
		for _, f := range c.Record().Outcome {
			told += f.Text
		}
		if got := c.result(); got != x.result || strings.Contains(told, "without its verdict") {
			t.Errorf("%v: %s, want %s: %s; %s", x.lines, got, x.result, all, told)
		}
	}
}
