package call

import (
	"slices"
	"strings"
	"testing"
)

// Volts on what was made safe are told, and not where they are to be expected: common
// practice.
func TestLiveAfterSafe(t *testing.T) {
	for _, r := range []struct {
		lines string
		told  bool
	}{
		{"safe breaker off; volt L1 L2 239", true},
		{"safe breaker off; volt comp 120", true},
		{"safe unplugged; volt comp 120", true},
		{"safe breaker off; volt L1 L2 2", false},
		{"safe breaker off; volt L1 L2 239 run", false},
		{"safe breaker off; did new element fitted; volt L1 L2 239", false},
		{"safe unplugged; volt line 120", false},
		{"safe unplugged; volt outlet 120", false},
		{"safe breaker off; volt L1 L2 239; volt L1 N 120", false}, // once
		{"volt L1 L2 239", false},
	} {
		lines := slices.Concat([]string{"unit electric dryer", "fault no heat"}, strings.Split(r.lines, "; "))
		c := applyAll(t, lines[:len(lines)-1]...)
		if got := must(t, c, lines[len(lines)-1]).Reply.Plain(); strings.Contains(got, "Live, though made safe in entry 3") != r.told {
			t.Errorf("%s: told %t: %q", r.lines, !r.told, got)
		}
	}
}
