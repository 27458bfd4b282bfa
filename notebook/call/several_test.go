package call

import (
	"math"
	"slices"
	"strings"
	"testing"

	"ohmcall/calc/cause"
)

// Two parts of a kind do not contradict each other: the one that failed shows
// its cause, in whichever order they were read, and the sound one rules out
// nothing for the other. Common practice.
func TestSeveralParts(t *testing.T) {
	oven := []string{"unit oven", "fault oven does not heat", "plate volts 240, watts 3600", "safe"}
	dryer := []string{"unit dryer", "fault does not heat", "safe"}
	for _, x := range []struct {
		before []string
		a, b   string
		cause  string
		named  string
	}{
		{oven, "ohm bake OL", "ohm broil 17.2", "heater-failed", "heater failed: bake"},
		{oven, "ohm heater1 OL", "ohm heater2 17.2", "heater-failed", "heater failed: heater1"},
		{oven, "ohm bake case 20k", "ohm broil case 200M test 500V", "heater-grounded", "heater leaks to its sheath: bake"},
		{oven, "volt bake 0 run", "volt broil 239 run", "", ""},
		{dryer, "ohm limit OL", "ohm thermal-fuse 0.1", "limit-open", "defrost thermostat open: limit"},
		{dryer, "ohm tco OL", "ohm hi-limit 0.1", "limit-open", "defrost thermostat open: tco"},
		{dryer, "ohm door-switch OL closed", "ohm lid-switch 0.1 closed", "switch-open", "interlock open: door-switch"},
	} {
		for _, order := range [][]string{{x.a, x.b}, {x.b, x.a}} {
			var lines []string
			for _, l := range append(slices.Clone(x.before), order...) {
				lines = append(lines, strings.Split(l, "; ")...)
			}
			c := applyAll(t, lines...)
			r := c.weigh(math.MaxInt)
			if len(r.Contradictions) > 0 {
				t.Errorf("%v: %s", order, c.contradiction(r.Contradictions[0]))
			}
			if got := r.Codes(cause.Supported); x.cause != "" && !slices.Contains(got, x.cause) {
				t.Errorf("%v: supported %v", order, got)
			}
			told := ""
			for _, f := range c.Record().Outcome {
				told += f.Text + "\n"
			}
			if !strings.Contains(told, x.named) {
				t.Errorf("%v: no %q in %s", order, x.named, told)
			}
		}
	}
}

// What one part says twice, and what the one start device of a machine says
// under two names, is not two parts'.
func TestOnePartTwice(t *testing.T) {
	c := applyAll(t, "unit dryer", "fault does not heat", "safe", "ohm limit OL", "ohm limit 0.1")
	if r := c.weigh(math.MaxInt); slices.Contains(r.Codes(cause.Supported), "limit-open") {
		t.Error("the limit read again and sound is still open")
	}
	c = applyAll(t, "unit refrigerator", "fault clicks", "safe", "ohm ptc OL", "ohm start-device 5")
	if r := c.weigh(math.MaxInt); len(r.Contradictions) == 0 {
		t.Error("the start device read open and sound is no contradiction")
	}
	c = applyAll(t, "unit dryer", "fault does not heat", "safe", "ohm hi-limit OL", "ohm high-limit 0.1")
	if r := c.weigh(math.MaxInt); len(r.Contradictions) == 0 {
		t.Error("one limit read open and closed under two names is no contradiction")
	}
}
