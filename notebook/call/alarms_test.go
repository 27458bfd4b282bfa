package call

import (
	"strings"
	"testing"
)

// What was seen of a danger stands where a supervisor looks until work is
// written down for it: common practice.
func TestAlarms(t *testing.T) {
	for _, x := range []struct {
		lines []string
		want  string
	}{
		{[]string{"fault shock from door"}, "the complaint speaks of it: somebody felt a shock from its metal"},
		{[]string{"fault shock from door", "saw shock"}, "somebody felt a shock from its metal, entry 2"},
		{[]string{"fault no heat", "saw smoke", "saw gas smell"}, "smoke, sparks or a smell of burning, entry 2; a smell of gas, entry 3"},
		{[]string{"fault no heat", "saw smoke", "strike 2 slip"}, ""},
		{[]string{"fault no heat", "saw smoke", "did replaced bake element"}, ""},
		{[]string{"fault no heat", "did replaced bake element", "saw smoke"}, "smoke, sparks or a smell of burning, entry 3"},
		{[]string{"fault no heat", "saw no smoke"}, ""},
	} {
		c := applyAll(t, x.lines...)
		if got := strings.Join(c.alarms(), "; "); got != x.want {
			t.Errorf("%v: %q, want %q", x.lines, got, x.want)
		}
		if got := strings.Join(c.unproved(), "; "); !strings.HasPrefix(got, x.want) {
			t.Errorf("%v: unproved %q lacks %q", x.lines, got, x.want)
		}
	}
}
