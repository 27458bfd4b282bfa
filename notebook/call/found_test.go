package call

import (
	"strings"
	"testing"
)

// The outcome says what a cause was inferred from, so that nobody has to look
// it up, and counts what is wanting without saying it again.
func TestOutcomeSaysWhatWasFound(t *testing.T) {
	c := New()
	for _, l := range []string{"fault clicks and does not cool", "safe", "saw clicks", "09:10 ohm ptc OL cold  # as read", "saw device rattles", "did replaced start device"} {
		must(t, c, l)
	}
	r := c.Record()
	got := map[string]string{}
	for _, f := range r.Outcome {
		got[f.Label] = f.Text
	}
	for _, want := range []string{"ptc OL cold (4)", "device rattles (5)"} {
		if !strings.Contains(got["Cause found"], want) {
			t.Errorf("cause found: %s, want %q in it", got["Cause found"], want)
		}
	}
	if w := got["Work and result"]; !strings.Contains(w, "points of proof are wanting") || strings.Contains(w, "saw starts") {
		t.Errorf("work and result: %s", w)
	}
	if !strings.Contains(strings.Join(r.Alerts, "\n"), "saw starts") {
		t.Error("what is wanting is not among what needs attention")
	}
}
