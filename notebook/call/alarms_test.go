package call

import (
	"strings"
	"testing"
)

// What was seen of a danger stands where a supervisor looks until something shows
// that it is gone; work alone may have been for something else: common practice.
func TestAlarms(t *testing.T) {
	const gone = ", and nothing since shows that it is gone"
	for _, x := range []struct {
		lines []string
		want  string
	}{
		{[]string{"fault shock from door"}, "the complaint speaks of it: somebody felt a shock from its metal (entry 1)" + gone},
		{[]string{"fault shock from door", "saw shock"}, "somebody felt a shock from its metal (entry 2)" + gone},
		{[]string{"fault no heat", "saw smoke", "saw gas smell"}, "smoke, sparks or a smell of burning (entry 2)" + gone + "; a smell of gas (entry 3)" + gone},
		{[]string{"fault no heat", "saw smoke", "strike 2 slip"}, ""},
		{[]string{"fault no heat", "saw smoke", "did replaced bake element"}, "smoke, sparks or a smell of burning (entry 2)" + gone},
		{[]string{"fault no heat", "saw smoke", "did replaced bake element", "saw no smoke"}, ""},
		{[]string{"fault smells of gas", "saw no gas smell"}, ""},
		{[]string{"fault shock from door", "did tightened the earth", "ohm earth 0.05"}, "the complaint speaks of it: somebody felt a shock from its metal (entry 1)" + gone},
		{[]string{"fault shock from door", "ohm A case OL", "did tightened the earth", "ohm earth 0.05"}, ""},
		{[]string{"fault shock from door", "did dried the plug", "saw no shock"}, ""},
		{[]string{"fault shock from door", "ohm earth 0.05", "saw shock"}, "somebody felt a shock from its metal (entry 3)" + gone},
		{[]string{"fault no heat", "did replaced bake element", "saw smoke"}, "smoke, sparks or a smell of burning (entry 3)" + gone},
		{[]string{"fault no heat", "saw no smoke"}, ""},
	} {
		c := applyAll(t, x.lines...)
		var texts []string
		for _, a := range c.alarms() {
			texts = append(texts, a.text)
		}
		if got := strings.Join(texts, "; "); got != x.want {
			t.Errorf("%v: %q, want %q", x.lines, got, x.want)
		}
		first, _, _ := strings.Cut(x.want, "; ")
		r := c.Record()
		if x.want != "" && (r.Alerts[0] != "Unsafe: "+first || r.Header.Result != "unsafe") {
			t.Errorf("%v: %q stands first, want %q; the result is %s", x.lines, r.Alerts[0], first, r.Header.Result)
		}
	}
}
