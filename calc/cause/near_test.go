package cause

import (
	"slices"
	"testing"
)

// What people type for a finding that has another name here: common practice.
func TestNear(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"frost", "frost heavy"},
		{"brushes are worn down", "brushes worn"},
		{"cond-fan sticks", "cond-fan stiff"},
		{"breaker reset", "breaker tripped"},
		{"gaskett torn", "gasket leaks"},
		{"on floor", "water on floor"},
		{"heater heats", "heats up"},
		{"condensor dirty", "condenser dirty"},
	} {
		if got := Near(c.text, 5); !slices.Contains(got, c.want) {
			t.Errorf("near %q are %q, not %q", c.text, got, c.want)
		}
	}
	for text, not := range map[string]string{"started and running": "hums", "fill tube is not frozen": "fill tube frozen", "evap fan blowing air": "evap-fan stiff", "cond-fan free": "cond-fan stiff",
		"igniter is working": "igniter dark", "gasket not torn": "gasket leaks", "fan dead": "evap-fan free"} {
		if got := Near(text, 9); slices.Contains(got, not) {
			t.Errorf("near %q is its opposite, %q", text, not)
		}
	}
	for _, text := range []string{"customer offered tea", "burnt bulb", "limit bypassed", "fridge warm", "on it", "short story"} {
		if got := Near(text, 5); len(got) > 0 {
			t.Errorf("near %q, which is nothing: %q", text, got)
		}
	}
}

// Words of the trade for what the table knows.
func TestTradeNamesOfFindings(t *testing.T) {
	for text, want := range map[string]string{
		"gasket torn": "gasket-leaks", "brush worn": "brushes-worn", "heater heats": "heats-up", "element glows": "heats-up",
		"seal torn": "gasket-leaks", "fan seized": "", "coil dirty": "condenser-dirty",
	} {
		if code, _, _ := FindFinding(text); code != want {
			t.Errorf("%q is %q, want %q", text, code, want)
		}
	}
}
