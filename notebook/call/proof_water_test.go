package call

import (
	"strings"
	"testing"
)

// 120 °F at the tap is what a water heater is set to; what does not count says why:
// common practice.
func TestTappedWater(t *testing.T) {
	for lines, want := range map[string]string{
		"unit gas water heater; fault no hot water; did new thermocouple; temp tap 120F":        "",
		"unit gas water heater; fault no hot water; did new thermocouple; temp outlet 49C":      "",
		"unit electric water heater; fault no hot water; did new element; temp tap 122F":        "",
		"unit electric water heater; fault no hot water; did new element; temp kitchen-tap 95F": "not surely",
		"unit electric water heater; fault no hot water; did new element; temp tap 95F":         "95 °F (entry 4): not surely 40 °C (104 °F), from where on it tells of heat (common practice)",
		"unit electric water heater; fault no hot water; did new element; temp tap 165F":        "it scalds",
		"unit electric oven; fault no heat; did new element; temp oven 115F":                    "not surely 50 °C (122 °F)",
		"unit electric dryer; fault no heat; did new element; temp outlet 120F":                 "not surely 50 °C (122 °F)",
	} {
		c := applyAll(t, strings.Split(lines, "; ")...)
		got := ""
		for _, p := range c.proofMissing() {
			if strings.HasPrefix(p, "the temperature it reaches") {
				got = p
			}
		}
		if !strings.Contains(got, want) || (want == "") != (got == "") {
			t.Errorf("%s: %q, want %q", lines, got, want)
		}
	}
}

// A flame rod that touches its burner tells of the rod, and of no compressor: common
// practice.
func TestRodToCase(t *testing.T) {
	for line, want := range map[string]string{
		"ohm flame-rod case 0.2": "porcelain is cracked", "ohm case flame-rod 12k": "porcelain is cracked", "ohm flame-sensor case 0.2": "porcelain is cracked",
		"ohm flame-rod case OL": "as a sound rod is", "ohm igniter case 0.2": "do not energise",
	} {
		c := applyAll(t, "unit gas furnace", "fault no heat", line)
		got := c.Entries()[2].Reply.Plain()
		if !strings.Contains(got, want) || strings.Contains(want, "rod") && (c.grounds() != "" || strings.Contains(got, "compressor")) {
			t.Errorf("%s: %q, want %q", line, got, want)
		}
	}
}
