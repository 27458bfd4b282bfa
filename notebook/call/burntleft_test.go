package call

import (
	"strings"
	"testing"
)

// What was found burnt, or heating while it is off, and was not mended, is unsafe where
// the unit was left running: not before, and not when it was mended.
func TestFoundBurntAndLeft(t *testing.T) {
	dryer := []string{"unit electric dryer", "fault no heat", "safe plug pulled, 0 V", "ohm heater OL"}
	for lines, want := range map[string]bool{
		"saw wire burnt|did replaced heater|left running":                   true,
		"saw terminal burnt off|did replaced heater|left running":           true,
		"saw wire burnt|did replaced heater":                                false,
		"saw wire burnt|did replaced heater|left unplugged":                 false,
		"saw wire burnt|did replaced heater, replaced wire|left running":    false,
		"saw wire burnt|did replaced heater|did replaced wire|left running": false,
		"saw terminal loose|did replaced heater|left running":               false,
	} {
		c := applyAll(t, append(dryer[:len(dryer):len(dryer)], strings.Split(lines, "|")...)...)
		if got := strings.Join(c.unsafe(), "; "); strings.Contains(got, "not mended") != want {
			t.Errorf("%s: %q", lines, got)
		}
	}
}
