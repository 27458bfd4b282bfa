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
		{[]string{"fault shock from door"}, "the complaint speaks of it: somebody felt a shock from its metal (entry 1)"},
		{[]string{"fault shock from door", "saw shock"}, "somebody felt a shock from its metal (entry 2)"},
		{[]string{"fault no heat", "saw smoke", "saw gas smell"}, "smoke, sparks or a smell of burning (entry 2); a smell of gas (entry 3)"},
		{[]string{"fault no heat", "saw smoke", "strike 2 slip"}, ""},
		{[]string{"fault no heat", "saw smoke", "did replaced bake element"}, ""},
		{[]string{"fault no heat", "did replaced bake element", "saw smoke"}, "smoke, sparks or a smell of burning (entry 3)"},
		{[]string{"fault no heat", "saw no smoke"}, ""},
	} {
		c := applyAll(t, x.lines...)
		saw, told := c.alarms()
		if got := strings.Join(append(saw, told...), "; "); got != x.want {
			t.Errorf("%v: %q, want %q", x.lines, got, x.want)
		}
		first, _, _ := strings.Cut(x.want, "; ")
		if got := c.Record().Alerts; x.want != "" && got[0] != map[bool]string{true: "Unsafe: ", false: "Danger: "}[len(saw) > 0]+first {
			t.Errorf("%v: %q stands first, want %q", x.lines, got[0], first)
		}
	}
}
