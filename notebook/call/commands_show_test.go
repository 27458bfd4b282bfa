package call

import (
	"strings"
	"testing"
)

// What is unsafe stands first, in the record's own words, with how the unit was
// left.
func TestStandingBeginsWithWhatIsUnsafe(t *testing.T) {
	grounded := []string{"fault does not cool", "unit refrigerator", "ohm A case 0.5k"}
	for name, c := range map[string]struct {
		lines []string
		has   []string
	}{
		"nothing":      {[]string{"fault does not cool"}, nil},
		"not said":     {grounded, []string{"insulation A to case", "(entry 3)", "; how it was left is not written down"}},
		"left running": {append(grounded[:3:3], "left running"), []string{"left running though it is unsafe (entry 4); insulation A to case"}},
		"unplugged":    {append(grounded[:3:3], "close declined, left unplugged"), []string{"; left unplugged (entry 4)"}},
		"bridged":      {append(grounded[:1:1], "did bridged the thermal cutout with a wire"), []string{"a protective device may be out of its circuit, entry 2"}},
	} {
		got := applyAll(t, c.lines...)
		first := got.Standing().PlainLines()[0]
		if strings.HasPrefix(first, "UNSAFE: ") != (c.has != nil) {
			t.Errorf("%s: %q", name, first)
		}
		for _, s := range c.has {
			if !strings.Contains(first, s) {
				t.Errorf("%s: %q lacks %q", name, first, s)
			}
		}
		for _, s := range got.Record().Header.Unsafe {
			if !strings.Contains(first, s) {
				t.Errorf("%s: %q lacks the record's %q", name, first, s)
			}
		}
	}
}

// What is less than its doubt from a limit, and so cannot be told, is not said to be
// all of its doubt away.
func TestMarginIsNotRoundedToAll(t *testing.T) {
	for want, m := range map[string]float64{"0.9 inside": 0.97, "0.9 outside": -0.96, "1 inside": 1.02, "1 outside": -1, "0.5 inside": 0.46, ">99 outside": -400} {
		if got := marginShort(m); got != want {
			t.Errorf("%g: %q, want %q", m, got, want)
		}
	}
}
