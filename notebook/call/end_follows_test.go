package call

import (
	"strings"
	"testing"
)

// What only follows from another cause is no cause found: the outcome says that the
// search goes on behind it, and the head of the file names none.
func TestWhatFollowsIsNoCauseFound(t *testing.T) {
	hums := []string{"unit air conditioner, split", "fault hums and does not start", "saw hums", "safe unplugged", "mfd herm fan 3.1", "ohm A B 2"}
	for _, x := range []struct {
		lines []string
		head  string
		told  string
	}{
		{hums, "", "not found yet; compressor does not run, inferred from "},
		{[]string{"unit refrigerator", "fault does not cool", "saw frost heavy"}, "", "not found yet; evaporator packed with ice, inferred from "},
		{[]string{"unit refrigerator", "fault clicks and does not cool", "ohm ptc OL cold"}, "start device", "start device"},
		{[]string{"unit refrigerator", "fault clicks and does not cool", "saw clicks", "saw compressor does not run", "ohm ptc OL cold"}, "start device", "start device"},
	} {
		r := applyAll(t, x.lines...).Record()
		told := ""
		for _, o := range r.Outcome {
			if o.Label == "Cause found" {
				told = o.Text
			}
		}
		if (x.head == "") != (r.Header.Cause == "") || !strings.HasPrefix(r.Header.Cause, x.head) || !strings.HasPrefix(told, x.told) ||
			strings.HasSuffix(told, ", follows from another cause, which is still to be found") != (x.head == "") || strings.Contains(r.Header.Cause, "does not run") {
			t.Errorf("%q: head %q, outcome %q", x.lines, r.Header.Cause, told)
		}
	}
}
