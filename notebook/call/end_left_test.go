package call

import (
	"testing"
	"time"

	"ohmcall/notebook/said"
)

// Behind a closing that lacks it, how the unit was left is taken without its command;
// before, and once it is told, it is no line.
func TestHowItIsLeftIsAnswered(t *testing.T) {
	closed := []string{"unit refrigerator", "fault does not cool", "safe plug pulled", "ohm A B 3.4", "close declined"}
	for _, x := range []struct {
		text, state string
	}{
		{"unplugged", "unplugged"}, {"Unplugged.", "unplugged"}, {"unplugged, door taped", "unplugged"}, {"off", "off"}, {"running", said.Running},
		{"customer keeps it running", said.Running}, {"tagged out", said.TaggedOut},
		{"not running", ""}, {"sideways", ""}, {"note running", ""}, {"12 + 3", ""}, {"saw unplugged", ""},
	} {
		c := applyAll(t, closed...)
		if line := c.Expand(x.text); (line != "left "+x.text) == (x.state != "") {
			t.Errorf("%q is written as %q", x.text, line)
		} else if x.state != "" {
			if c.Expand(line) != line {
				t.Errorf("%q is written as %q", line, c.Expand(line))
			}
			if _, err := c.Apply(time.Unix(0, 0), line); err != nil || !c.Closed() || c.Record().Header.Left != x.state {
				t.Errorf("%q: closed %v, left %q, %v", line, c.Closed(), c.Record().Header.Left, err)
			}
			if again := c.Expand(x.text); again != x.text {
				t.Errorf("told already, %q is written as %q", x.text, again)
			}
		}
		for _, lines := range [][]string{closed[:4], {"unit refrigerator", "fault does not cool", "close no fault found"}} {
			if line := applyAll(t, lines...).Expand(x.text); x.state != "" && line != x.text {
				t.Errorf("not asked, %q is written as %q", x.text, line)
			}
		}
	}
}
