package call

import (
	"strings"
	"testing"
)

// A smell of gas is of the refrigerant where that alone burns, whether the plate was told
// before or after, and of fuel gas elsewhere; what is asked for takes it off in each
// (common practice).
func TestSmellOfGas(t *testing.T) {
	tight := []string{"saw gas leak test good", "saw no gas leak"}
	both := append([]string{"saw no leak found"}, tight...)
	for lines, x := range map[string]struct {
		alarm string
		off   []string // what takes it off
		stays []string
	}{
		"unit chest freezer; plate gas R-600a; saw gas smell near comp":              {"leak-found", both, []string{"saw no gas smell"}},
		"unit chest freezer; saw gas smell near comp; plate gas R-290":               {"leak-found", both, []string{"saw no gas smell"}},
		"unit chest freezer; plate gas R-600a; saw gas leak at joint":                {"leak-found", both, nil},
		"unit fridge; fault smells of gas; plate gas R-600a":                         {"leak-found", both, nil},
		"plate gas R-600a; note smells of gas at the back":                           {"leak-found", both, nil},
		"unit fridge; plate gas R-600a; saw smell of isobutane at comp":              {"leak-found", both, nil},
		"unit fridge; plate gas R-600a; note smelled refrigerant near comp":          {"leak-found", both, nil},
		"unit fridge; plate gas R-134a; saw gas smell in kitchen":                    {"gas-smell", tight, []string{"saw no leak found"}},
		"unit fridge; fault smells of gas":                                           {"gas-smell", tight, []string{"saw no leak found"}},
		"unit mini split; plate gas R-32; saw gas smell":                             {"gas-smell", tight, []string{"saw no leak found"}},
		"unit gas range; plate gas R-600a; saw gas smell":                            {"gas-smell", both, []string{"saw no gas smell"}},
		"unit electric dryer; saw gas smell":                                         {"gas-smell", tight, nil},
		"unit gas furnace; note smells of gas":                                       {"gas-smell", both, nil},
		"unit fridge; plate gas R-134a; note smelled refrigerant near comp":          {"", nil, nil},
		"unit fridge; plate gas R-600a; note no smell of refrigerant near the coils": {"", nil, nil},
	} {
		list := strings.Split(lines, "; ")
		standing := func(more ...string) string {
			out := ""
			for _, a := range applyAll(t, append(list[:len(list):len(list)], more...)...).alarms() {
				out += a.code
			}
			return out
		}
		if got := standing(); got != x.alarm {
			t.Errorf("%s: %q, want %q", lines, got, x.alarm)
		}
		for _, line := range x.off {
			if got := standing(line); got != "" {
				t.Errorf("%s; %s: %q stands", lines, line, got)
			}
		}
		for _, line := range x.stays {
			if got := standing(line); got != x.alarm {
				t.Errorf("%s; %s: %q", lines, line, got)
			}
		}
	}
}
