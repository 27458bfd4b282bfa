package call

import (
	"strings"
	"testing"
)

// TestSlipIsNotCarriedOn holds that a slip in a command word is no point and begins no
// part's name, and what begins one is none.
func TestSlipIsNotCarriedOn(t *testing.T) {
	for _, r := range []struct{ before, line, shows string }{
		{"ohm ptc OL cold", "ohmm ptc OL", "ohm ptc OL"},
		{"ohm ptc OL cold", "ohmn ptc 5 cold", "ohm ptc 5 cold"},
		{"ohm ptc 5 cold", "ojm overload OL", "ohm overload OL"},
		{"ohm ptc 5 cold", "om ptc 5", "ohm ptc 5"},
		{"ohm A case OL", "ohmm ptc OL", "ohm ptc OL"},
		{"ohm A B 3.4", "omh B C 3.1", "ohm B C 3.1"},
		{"ohm A B 3.4", "ojm A C 3.1", "ohm A C 3.1"},
		{"ohm heater 30", "apm comp 1.1", "amp comp 1.1"},
		{"ohm heater 30", "tmep freezer 5", "temp freezer 5"},
		{"amp comp 1.1", "ampp fan 0.3", "amp fan 0.3"},
		{"watt unit 200", "wat comp 150", "watt comp 150"},
		{"temp freezer 5F", "temo fridge 40F", "temp fridge 40F"},
		{"ohm heater 30", "ntoe ptc 5", "note ptc 5"},
		{"ohm heater 30", "age 12", "worth age 12"},
		{"ohm A B 3", "age 12", "worth age 12"},
		{"ohm ptc 5", "oxhmm ptc OL", ""},
		{"ohm ptc 5", "foo ptc OL", "ohm foo-ptc OL"},
		{"ohm heater 30", "B 4", "ohm "},
	} {
		got := live(t, r.before, r.line)
		_, hint, _ := strings.Cut(got, "\nhint: ")
		if !strings.HasPrefix(got, "refused") || !strings.Contains(hint, r.shows) {
			t.Errorf("after %q, %q: %s\nwant %q", r.before, r.line, got, r.shows)
		}
	}
	for _, r := range []struct{ before, line, says string }{
		{"ohm broil element 22", "bake element 20", "bake-element 20"},
		{"ohm heater 30", "drip heater 20", "drip-heater 20"},
		{"ohm heater 30", "defrost thermostat OL", "defrost-thermostat OL"},
		{"ohm heater 30", "mullion heater 31", "mullion-heater 31"},
		{"ohm door switch 0.1", "lamp 25", "lamp 25"},
		{"ohm ptc 5", "comp overload 0.2", "comp-overload 0.2"},
		{"ohm ptc 5", "thermal overload 0.2", "thermal-overload 0.2"},
		{"ohm ptc 5", "old ptc 8", "old-ptc 8"},
		{"ohm ptc 5", "overload 0.2", "overload 0.2"},
		{"ohm heater 30", "ohms ptc 5", "ptc 5"},
		{"ohm A B 3.4", "C 6.5", "A–C 6.5"},
		{"ohm A B 3.4", "com C 6.5", "com–C 6.5"},
		{"ohm A B 3.4", "red blk 6.5", "red–blk 6.5"},
		{"amp comp 1.1", "cond-fan 0.3", "cond-fan 0.3"},
	} {
		if got := live(t, r.before, r.line); !strings.Contains(got, r.says) {
			t.Errorf("after %q, %q: %s\nwant %q", r.before, r.line, got, r.says)
		}
	}
}
