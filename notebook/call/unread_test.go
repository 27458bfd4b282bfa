package call

import (
	"slices"
	"strings"
	"testing"
)

// What was asked about as a danger stays to be read, whatever is done after it, until it
// is struck, answered, or plainly put right.
func TestAskedStaysToBeRead(t *testing.T) {
	for _, x := range []struct {
		asked, then string // then: parted by |
		listed      bool
	}{
		{"saw fan blade cracked", "did boss will send electrician", true},
		{"saw fan blade cracked", "did replaced heater|did cleaned duct", true},
		{"note fan blade cracked", "did replaced fan blade", false},
		{"saw wire brown and brittle at terminal", "did replaced wire", true},
		{"saw wire brown and brittle at terminal", "did replaced wire and terminal", false},
		{"saw wire brown and brittle at terminal", "did new wire and terminal ordered|did new terminal and wire tomorrow", true},
		{"saw breaker hot", "did cleaned panel|did new belt", true},
		{"note cap top is bulged", "did replaced run capacitor", false},
		{"note cap top is bulged", "did replaced contactor", true},
		{"saw breaker hot", "saw no hazard", false},
		{"saw breaker hot", "saw hazard", false},
		{"saw breaker hot", "strike 1 not so", false},
		{"saw breaker hot", "note belt guard missing|did new belt guard", true},
		{"saw fan blade cracked", "did replaced fan blade|strike 2 not so", true},
		{"did boss will send electrician, terminal melted", "did replaced belt", true},
		{"left running no ground", "did replaced belt", true},
		{"left running, cover off disco", "left running", true},
		{"close left on, wire hot", "did replaced belt", true},
	} {
		c := New()
		for _, l := range append([]string{x.asked}, strings.Split(x.then, "|")...) {
			must(t, c, l)
		}
		r := c.Record()
		got := slices.ContainsFunc(r.Alerts, func(s string) bool { return strings.HasPrefix(s, "To read: ") })
		said := slices.ContainsFunc(r.Header.Said, func(s string) bool { return strings.HasPrefix(s, "to read: ") })
		closed := strings.Contains(must(t, c, "close").Reply.Plain(), "To read: ")
		if got != x.listed || said != got || closed != got {
			t.Errorf("%s, %s: listed %v, in the header %v, at the close %v; want %v", x.asked, x.then, got, said, closed, x.listed)
		}
	}
}

// An answer to a question takes off no danger that stands beside it: that is told to stand
// until it is said to be gone.
func TestAnswerTakesNoOtherDangerOff(t *testing.T) {
	c := applyAll(t, "unit electric water heater", "fault no hot water", "saw relief valve plugged", "note L2 lug is loose")
	got := must(t, c, "saw no hazard").Reply.Plain()
	if !strings.Contains(got, "Still stands: “relief valve plugged” (entry 3)") || strings.Contains(got, "contradict") {
		t.Errorf("%s", got)
	}
	if r := c.Record(); r.Header.Unsafe == nil || slices.ContainsFunc(r.Alerts, func(s string) bool { return strings.HasPrefix(s, "To read: ") }) {
		t.Errorf("unsafe %q, alerts %q", r.Header.Unsafe, r.Alerts)
	}
	must(t, c, "saw hazard gone")
	if r := c.Record(); len(r.Header.Unsafe) > 0 {
		t.Errorf("gone: %q", r.Header.Unsafe)
	}
	c = applyAll(t, "unit electric water heater", "fault no hot water", "saw relief valve plugged")
	must(t, c, "saw no hazard") // nothing was asked
	if r := c.Record(); len(r.Header.Unsafe) > 0 {
		t.Errorf("no question: %q", r.Header.Unsafe)
	}
}

// A note that begins like work on a machine is asked about, and no other.
func TestNoteThatReadsAsWork(t *testing.T) {
	c := applyAll(t, "unit fridge", "fault warm")
	for line, want := range map[string]bool{
		"note added 2 oz R-134a": true, "note fitted a hard start kit too": true, "note replaced the fan motor last year": true,
		"note charged client 80": false, "note added this to the invoice": false, "note changed the date of the visit": false,
	} {
		if got := strings.Contains(must(t, c, line).Reply.Plain(), "A note is no work"); got != want {
			t.Errorf("%s: asked %t", line, got)
		}
	}
}
