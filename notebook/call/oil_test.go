package call

import (
	"strings"
	"testing"
)

// Of an oil burner neither the causes of a gas burner nor those of an electric heater are
// told: it has other parts (common practice).
func TestOilBurnersHaveNoCauses(t *testing.T) {
	for line, held := range map[string]bool{
		"unit oil furnace|fault no heat":                          false,
		"unit oil fired boiler|fault burner locks out":            false,
		"unit boiler, oil|fault no hot water":                     false,
		"unit oil burner water heater|fault pilot wont light":     false,
		"unit gas furnace|fault no heat":                          true,
		"unit oil filled radiator|fault no heat":                  true,
		"unit furnace, gas, blower oiled last year|fault no heat": true,
		"unit oil furnace|fault blower doesn't come on":           true,
	} {
		c := New()
		unit, fault, _ := strings.Cut(line, "|")
		must(t, c, unit)
		got := must(t, c, fault).Reply.Plain()
		if taken := strings.Contains(got, "Taken as"); taken != held || taken == strings.Contains(got, "No causes of oil burners") {
			t.Errorf("%s: %s", line, got)
		}
	}
}
