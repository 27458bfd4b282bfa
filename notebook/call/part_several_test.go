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

// Two compartments have targets of their own: one that is warm and one that is
// sound do not contradict each other. Two names of one compartment do.
func TestTwoCompartments(t *testing.T) {
	const fridge = "unit refrigerator, bottom freezer; fault fridge warm, freezer fine; "
	for _, r := range []struct {
		lines       string
		contrary    bool
		has, hasNot string
	}{
		{fridge + "temp freezer -2F; temp fridge 55F", false, "temp-above", "temp-at-target"},
		{fridge + "temp fridge 55F; temp freezer -2F", false, "temp-above", "temp-at-target"},
		{"unit side by side refrigerator; temp fresh-food 36F; temp freezer 12F", false, "temp-above", "temp-at-target"},
		{fridge + "temp freezer -2F; temp fridge 36F", false, "temp-at-target", "temp-above"},
		{fridge + "temp fridge 55F; temp cabinet 36F", true, "temp-above", ""},
		{fridge + "temp fridge 55F; temp fridge 36F", false, "temp-at-target", "temp-above"},
		{fridge + "temp freezer -2F; +10min temp fridge 55F; +20min temp fridge 53F; +20min temp fridge 52F; +20min temp fridge 51.6F; +20min temp fridge 51.5F; +20min temp fridge 51.5F; +20min temp fridge 51.5F", false, "temp-above", "temp-at-target"},
		{fridge + "temp freezer 20F; temp fridge 55F; did freed the damper; temp freezer -2F", false, "temp-at-target", ""},
	} {
		c := New()
		for _, l := range strings.Split(r.lines, "; ") {
			if _, err := c.Apply(c.Clock(l, testDay), l); err != nil {
				t.Fatalf("%s: %v", l, err)
			}
		}
		w := c.weigh(1 << 30)
		codes := ""
		for _, f := range c.facts(1 << 30) {
			codes += f.Code + " "
		}
		if got := len(w.Contradictions) > 0; got != r.contrary || !strings.Contains(codes, r.has) || r.hasNot != "" && strings.Contains(codes, r.hasNot) {
			t.Errorf("%s: contradictions %v, facts %s", r.lines, w.Contradictions, codes)
		}
		if got := flat(c.Record()); strings.Contains(got, "Contradiction") != r.contrary {
			t.Errorf("%s: %s", r.lines, got)
		}
	}
}
