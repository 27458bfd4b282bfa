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
		{"saw melted wirenut", "did boss will send electrician", true},
		{"saw melted wirenut", "did replaced heater|did cleaned duct", true},
		{"note melted wirenut", "did replaced wirenut", false},
		{"saw gnd pin snapped off cord", "did replaced cord", true},
		{"saw gnd pin snapped off cord", "did replaced cord and pin", false},
		{"saw gnd pin snapped off cord", "did new cord and pin ordered|did new pin and cord tomorrow", true},
		{"saw 40A brkr on #12", "did replaced 40A with new 40A|did new brkr 40A", true},
		{"saw 40A brkr on #12", "saw no hazard", false},
		{"saw 40A brkr on #12", "saw hazard", false},
		{"saw 40A brkr on #12", "strike 1 not so", false},
		{"saw 40A brkr on #12", "note belt guard missing|did new belt guard", true},
		{"saw melted wirenut", "did replaced wirenut|strike 2 not so", true},
		{"did boss will send electrician, cord lug charred", "did replaced belt", true},
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
