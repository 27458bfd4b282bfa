package call

import (
	"strings"
	"testing"
)

// provedLeak is a call whose leak was mended and proved.
const provedLeak = "client A; unit split air conditioner; fault not cooling; plate volts 230, amps 15, gas R-410A; saw set to cool; volt line 242; saw starts; amp comp 8.0 run; psi suction 60 run; psi discharge 230 run; " +
	"saw leak at flare nut; safe off; did reflared the flare nut, evacuated, recharged 5 lb; saw no leak found; ohm earth 0.08; saw filter clean; saw coils clean; saw starts; saw blower runs; saw cond-fan runs; amp comp 12.2 run; +20min temp return 78F; temp supply 59F; "

// wantsAfter holds, line by line typed after a call, what must be wanting of its proof,
// "" when nothing.
func wantsAfter(t *testing.T, before string, rows [][2]string) {
	t.Helper()
	for _, row := range rows {
		c := New()
		for _, l := range strings.Split(before+row[0], "; ") {
			if _, err := c.Apply(c.Clock(l, testDay), l); err != nil {
				t.Fatal(l, err)
			}
		}
		got := strings.Join(c.proofMissing(), "\n")
		if (row[1] == "") != (got == "") || !strings.Contains(got, row[1]) {
			t.Errorf("%s: wanting is %q, want %q", row[0], got, row[1])
		}
	}
}

// A leak that is seen again after its repair, its signs, and the pressures of the fault
// take the proof back; what shows that it is tight does not: common practice.
func TestLeakAgain(t *testing.T) {
	wantsAfter(t, provedLeak, [][2]string{
		{"note all good", ""},
		{"+2h saw bubbles at flare nut", "a sign of a leak again"},
		{"+2h saw service valve leaks", "a sign of a leak again"},
		{"+2h saw leak at valve core", "a sign of a leak again"},
		{"+2h saw oil at joint", "a sign of a leak again"},
		{"+2h saw bubbles at flare nut; did tightened flare nut; saw no leak found", "earth"},
		{"+2h saw oil at joint; saw no leak found", ""},
		{"saw no leak found", ""},
		{"+20h psi suction 60 run", "read right again: pressures"},
		{"+20h psi suction 60 run; psi discharge 230 run", "read right again: pressures"},
		{"+20h psi suction 60 run; psi suction 120 run", ""},
		{"+20h psi suction 120 run; psi discharge 300 run", ""},
		{"psi discharge 650 run", "above any high-pressure cut-out"},
		{"note gas is low", "told again"},
		{"note pressures dropped since yesterday", "told again"},
		{"note it lost its charge again", "told again"},
		{"note pressures hold, not low on gas", ""},
		{"note it was low on gas", ""},
		{"note charge is right, pressures steady", ""},
		{"note low side low when cold outside", ""},
	})
}

// What the work was done for and is seen again after it takes the proof back, whatever it
// is; what is told of the old part does not: common practice.
func TestFoundAgain(t *testing.T) {
	const gasket = "client A; unit fridge; fault runs all the time; plate volts 115, amps 1.2; volt line 119; saw door gasket torn; safe unplugged; did replaced door gasket; ohm earth 0.08; saw starts; amp comp 1.1 run; temp fridge 50F; +20min temp fridge 45F; +20min temp fridge 41F; +20min temp fridge 38F; +20min temp fridge 36F; "
	wantsAfter(t, gasket, [][2]string{
		{"note all good", ""},
		{"saw door gasket torn", "what was mended seen to hold: the door gasket does not seal"},
		{"saw old gasket torn", ""},
		{"saw door gasket torn; saw gasket good", ""},
	})
}
