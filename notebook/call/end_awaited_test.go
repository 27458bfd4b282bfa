package call

import (
	"strings"
	"testing"

	"ohmcall/notebook/record"
)

// A call that is closed to wait for its part lacks the part, and nobody told the complaint
// again; who says so too is heard.
func TestWaitingForThePartIsNoComplaint(t *testing.T) {
	for _, x := range []struct {
		close string
		again bool
	}{
		{"close waits for part condenser fan motor", false},
		{"close waiting on fan motor", false},
		{"close waits for part thermostat", false},
		{"close waits for part", false},
		{"close needs a new thermostat", false},
		{"note awaiting the fan motor", false},
		{"close still warm, waits for part", true},
		{"note customer called, not cooling again, waiting for the motor", true},
		{"note still not cooling", true},
	} {
		for _, fault := range []string{"does not cool", "warm", "not cooling again"} {
			c := applyAll(t, "unit refrigerator", "fault "+fault, "saw cond-fan stands", "part condenser fan SAMPLE-CF, 1, 32", x.close)
			list := strings.Join(c.missing(), "\n")
			if strings.Contains(list, "it was told again") != x.again || !x.again && strings.Contains(list, partAwaited) {
				t.Errorf("%s, %s: missing %q", fault, x.close, list)
			}
			if !x.again && (c.result() != record.Waits || strings.Count(list, "the part: ") != 1) {
				t.Errorf("%s, %s: %s, missing %q", fault, x.close, c.result(), list)
			}
		}
	}
}

// It is no proof either: what is proved and waits for a part then is not proved until
// that was fitted.
func TestWaitingForThePartIsNoProof(t *testing.T) {
	c := applyAll(t, "unit refrigerator", "fault does not cool", "saw cond-fan stands", "did replaced condenser fan motor", "close waits for the thermostat", "close declined")
	if list := strings.Join(c.missing(), "\n"); !strings.Contains(list, partAwaited+" (entry 5)") {
		t.Errorf("missing %q", list)
	}
	c = applyAll(t, "unit refrigerator", "fault does not cool", "saw cond-fan stands", "did replaced condenser fan motor", "close waits for the thermostat", "did replaced thermostat")
	if list := strings.Join(c.missing(), "\n"); strings.Contains(list, partAwaited) {
		t.Errorf("fitted: missing %q", list)
	}
}
