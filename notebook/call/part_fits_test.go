package call

import (
	"slices"
	"strings"
	"testing"
)

// What may stand in for a marked capacitor: the sources of calc/repair. The
// part lines are invented.
func TestFittedCapacitorIsHeldAgainstTheOldMarking(t *testing.T) {
	for _, c := range []struct {
		name  string
		lines []string
		want  string // "" when it suits or cannot be told
	}{
		{"the same", []string{"plate mfd run 35 6% 370V", "part run cap 35uF 440V, 1, 12"}, ""},
		{"too much", []string{"plate mfd run 35 6% 370V", "part run cap 45uF 370V"}, "45 µF is above 37.1 µF"},
		{"too little", []string{"plate mfd run 35", "did replaced run capacitor with 30 µF"}, "30 µF is below 33.25 µF"},
		{"rated too low", []string{"plate mfd run 35 370V", "did fitted new run cap 35uF 330 VAC"}, "330 V is below the 370 V"},
		{"two sections", []string{"plate mfd herm 35, mfd fan 5", "did replaced dual capacitor 35/7.5 mfd 370/440V"}, "7.5 µF is above 5.25 µF"},
		{"start, 20 % more", []string{"plate mfd start 88-108 250V", "part start cap 100uF 250V"}, ""},
		{"start, the same", []string{"plate mfd start 88-108 250V", "part start cap 88-108uF 250V"}, ""},
		{"start, the next range up", []string{"plate mfd start 88-108 250V", "part start cap 108-130uF 250V"}, "119 µF is above 117.6 µF"},
		{"start, less", []string{"plate mfd start 88-108 250V", "part start cap 64-77uF 250V"}, "70.5 µF is below 88 µF"},
		{"start and run on the plate", []string{"plate mfd run 35", "plate mfd start 88-108 300V", "part start cap 88-108uF 250V"}, "250 V is below the 300 V"},
		{"of two on the plate, the one named", []string{"plate mfd C1 40, mfd C2 7", "part capacitor C2 12uF"}, "12 µF is above 7.35 µF"},
		{"of two on the plate, none named", []string{"plate mfd C1 40, mfd C2 7", "part capacitor 12uF"}, ""},
		{"no marking of the old one", []string{"part run cap 45uF 370V"}, ""},
		{"what was read is no marking", []string{"plate mfd run 35", "did replaced run cap, old one read 12uF"}, ""},
		{"both named", []string{"plate mfd run 35", "did replaced 35uF run cap with 45uF"}, ""},
		{"not fitted yet", []string{"plate mfd run 35", "did ordered run cap 45uF"}, ""},
		{"a right one in its place", []string{"plate mfd run 35", "part run cap 45uF", "part run cap 35uF"}, ""},
		{"struck", []string{"plate mfd run 35", "part run cap 45uF", "strike 2 wrong can"}, ""},
	} {
		call := New()
		var flagged bool
		for _, l := range c.lines {
			if slices.Contains(must(t, call, l).Reply.Flags, "part-does-not-fit") {
				flagged = true
			}
		}
		told := strings.Join(call.misfits(0), "\n")
		if c.want == "" && told != "" || !strings.Contains(told, c.want) {
			t.Errorf("%s: %q, want %q", c.name, told, c.want)
		}
		if c.want != "" && !flagged {
			t.Errorf("%s: the reply did not tell", c.name)
		}
	}
}

// A gas charged that is not the plate's is told, and listed; one that is, or whose plate
// names none, is not (common practice).
func TestWrongGas(t *testing.T) {
	for lines, want := range map[string]string{
		"plate gas R-600a; did charged r134a 100g":                   "the gas charged, r134a",
		"did charged propane; plate gas R-600a":                      "the gas charged, propane",
		"plate gas R-134a; did used r290 to top up":                  "the gas charged, r290",
		"plate gas R-600a; did charged isobutane 60g":                "",
		"plate gas R-600a; did charged 60g":                          "",
		"did charged r134a 100g":                                     "",
		"plate gas R-600a; did charged r134a; did charged r600a 60g": "",
		"plate gas R-600a; did recovered r134a":                      "",
	} {
		c := applyAll(t, append([]string{"unit fridge", "fault no cool"}, strings.Split(lines, "; ")...)...)
		got := strings.Join(c.Record().Alerts, "; ")
		if strings.Contains(got, "the gas charged") != (want != "") || !strings.Contains(got, want) {
			t.Errorf("%s: %s", lines, got)
		}
	}
	c := applyAll(t, "unit fridge", "plate gas R-134a", "did charged propane 40g")
	if r := c.entries[len(c.entries)-1].Reply; !slices.Contains(r.Flags, "caution-flammable-gas") || !slices.Contains(r.Flags, "part-does-not-fit") {
		t.Errorf("propane for R-134a: %v", r.Flags)
	}
}
