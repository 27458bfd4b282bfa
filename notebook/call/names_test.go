package call

import (
	"strings"
	"testing"
)

// What a client or a unit did does not take the place of its name, as long as it
// has one.
func TestNamesAreKept(t *testing.T) {
	for line, refused := range map[string]bool{
		"client declined repair, will buy new": true, "client says it was moved": true, "client declined": true, "unit left unplugged": true, "tech left at noon": true,
		"client Wanda Wants-None": false, "client Ned Nobody": false, "client Will Sample": false, "unit chest freezer, left side": false, "site left door": true, "fault left running": false,
	} {
		c := applyAll(t, "tech T. Tester", "client P. Placeholder", "unit chest freezer", "site 1 Example Lane")
		if err := c.Doubtful(c.Expand(line)); (err != nil) != refused {
			t.Errorf("%s: %v", line, err)
		}
		if err := New().Doubtful(line); err != nil {
			t.Errorf("%s, with no name yet: %v", line, err)
		}
	}
}

// Of an ending that is said twice the line that says more is told.
func TestEndingInFull(t *testing.T) {
	c := applyAll(t, "fault does not cool", "note client declined repair, will buy new", "close declined")
	if got := flat(c.Record().Outcome); !strings.Contains(got, "declined: “client declined repair, will buy new” (entry 2)") {
		t.Error(got)
	}
}
