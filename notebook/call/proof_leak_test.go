package call

import (
	"slices"
	"strings"
	"testing"
)

// A leak that was seen and neither mended nor shown to be gone stays, however cold it
// grows: common practice.
func TestLeakLeft(t *testing.T) {
	const (
		fridge = "unit refrigerator, freezer on top; fault does not cool; plate gas R-134a; "
		cold   = "; temp freezer 50F; +30min temp freezer 30F; +30min temp freezer 10F; +30min temp freezer 0F; +30min temp freezer -4F"
	)
	for lines, want := range map[string]bool{
		fridge + "saw leak found; did replaced evap fan motor" + cold:                             true,
		fridge + "saw bubbles at the flare; did replaced evap fan motor" + cold:                   true,
		fridge + "did replaced evap fan motor" + cold + "; saw leak in evap":                      true,
		fridge + "saw leak found; did repaired the leak, recharged" + cold:                        false,
		fridge + "saw leak found; did replaced evap fan motor; saw no leak found" + cold:          false,
		fridge + "saw leak found; did replaced evap fan motor" + cold + "; strike 4 wrong fridge": false,
		fridge + "saw no leak found; did replaced evap fan motor" + cold:                          false,
	} {
		c := New()
		for _, l := range strings.Split(lines, "; ") {
			if _, err := c.Apply(c.Clock(l, testDay), l); err != nil {
				t.Fatal(l, err)
			}
		}
		told := slices.ContainsFunc(c.Record().Alerts, func(s string) bool { return strings.HasPrefix(s, "Not mended: "+leakSeen) })
		held := strings.Contains(strings.Join(c.proofMissing(), "; "), "the leak mended")
		if told != want || held != want {
			t.Errorf("%s: told %t, held %t, want %t: %q", lines, told, held, want, c.proofMissing())
		}
	}
}
