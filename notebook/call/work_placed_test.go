package call

import (
	"slices"
	"strings"
	"testing"
	"time"
)

// TestWorkInItsPlace holds what was read between a part and the line that says that
// it was fitted, or behind a time typed before the work, to be the proof of it.
func TestWorkInItsPlace(t *testing.T) {
	head := []string{"unit fridge", "fault will not start", "plate amps 1.2", "safe"}
	proof := []string{"ohm earth 0.05", "saw starts", "amp comp 1.0 run"}
	const earth = "proof: earth from plug"
	for name, x := range map[string]struct {
		work, after string
		void, told  bool // the proof is void; the reply says so
	}{
		"the part again":               {"part ptc, 1, 20", "did replaced ptc", false, false},
		"of its family":                {"part start device SAMPLE-SD1, 1, 20", "did fitted the new PTC", false, false},
		"by fewer words":               {"part defrost heater SAMPLE-H1, 1, 20", "did replaced heater", false, false},
		"the part written down later":  {"did replaced ptc", "part ptc, 1, 20", false, false},
		"one of several parts":         {"did replaced ptc and run capacitor", "part ptc, 1, 20", false, false},
		"a part of another kind":       {"part ptc, 1, 20", "part evaporator fan, 1, 20", true, true},
		"more than the part":           {"part ptc, 1, 20", "did replaced ptc, cleaned condenser", true, true},
		"another thing beside it":      {"part ptc, 1, 20", "did replaced ptc and fan", true, true},
		"a device of the part":         {"part compressor, 1, 20", "did replaced compressor overload", true, true},
		"another part":                 {"part ptc, 1, 20", "did replaced evaporator fan", true, true},
		"new work":                     {"did replaced ptc", "did cleaned condenser", true, true},
		"the same work twice":          {"did replaced ptc", "did replaced ptc", true, true},
		"new work, at an earlier time": {"did replaced ptc", "08:30 did cleaned condenser", false, false},
		"no work":                      {"did replaced ptc", "did nothing more", false, false},
	} {
		c := applyAll(t, slices.Concat(head, []string{x.work}, proof)...)
		at := nine
		if strings.HasPrefix(x.after, "08:30") {
			at = nine.Add(-30 * time.Minute)
		}
		e, err := c.Apply(at, x.after)
		if err != nil {
			t.Fatal(err)
		}
		if got := strings.Contains(strings.Join(c.missing(), "; "), earth); got != x.void {
			t.Errorf("%s: void %v: %q", name, got, c.missing())
		}
		told := e.Reply.Plain()
		if got := strings.Contains(told, "earth from plug pin to metal") && slices.Contains(e.Reply.Flags, "proof-void") && strings.Contains(told, "14:05 "+x.after[:3]); got != x.told {
			t.Errorf("%s: told %v: %s", name, got, told)
		}
	}
}

// TestWorkAtItsTime puts work typed with its time behind what was read before it,
// as if it had been typed then; a struck part leaves the work that it belonged to.
func TestWorkAtItsTime(t *testing.T) {
	c := New()
	for i, l := range []string{"unit fridge", "fault will not start", "plate amps 1.2", "ohm ptc OL cold", "ohm earth 0.05", "saw starts", "meter amp 1% 1", "amp comp 1.0 run"} {
		if _, err := c.Apply(nine.Add(time.Duration(10*i)*time.Minute), l); err != nil {
			t.Fatal(err)
		}
	}
	if _, err := c.Apply(nine.Add(35*time.Minute), "09:35 did replaced ptc"); err != nil {
		t.Fatal(err)
	}
	m := strings.Join(c.missing(), "; ")
	if strings.Contains(m, "proof: earth") || strings.Contains(m, "proof: the start seen") || strings.Contains(m, "running amps") || strings.Contains(m, "OL, failed") {
		t.Errorf("read after the work by its time: %s", m)
	}
	if got := c.repairs(); len(got) != 1 || got[0] != 4 {
		t.Errorf("repairs at %v", got)
	}
	if got := c.Record().Header.Cause; !strings.Contains(got, "start device") {
		t.Errorf("cause %q, what was read right before the work shows it", got)
	}
	c = applyAll(t, "unit fridge", "fault will not start", "part ptc, 1, 20", "ohm earth 0.05", "did replaced ptc", "strike 3 not fitted")
	if got := c.repairs(); len(got) != 1 || got[0] != 5 {
		t.Errorf("repairs at %v once the part is struck", got)
	}
	c = applyAll(t, "unit fridge", "fault will not start", "part ptc, 1, 20", "ohm earth 0.05", "close waits for a part", "did replaced ptc")
	if got := c.repairs(); len(got) != 2 {
		t.Errorf("fitted at another visit: repairs at %v", got)
	}
}
