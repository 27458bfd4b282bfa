package call

import "testing"

// What came down and is warm again for longer than a door or a defrost explains does
// not hold, and proves nothing: common practice.
func TestRisesAgain(t *testing.T) {
	const (
		freezer = "unit upright freezer; fault not cold; did replaced start relay; temp freezer 20C; +60min temp freezer 5C; +60min temp freezer -8C; +60min temp freezer -14C; "
		fridge  = "unit fridge; fault not cold; did replaced start relay; temp fridge 20C; +60min temp fridge 9C; +60min temp fridge 3C; "
		rises   = "rises again; it came down to"
		warmer  = "again: a door, a defrost, or it does not hold; read again"
		wanted  = "Missing: proof: three timed temperatures that reach the target, or four that lead to it (temp freezer …): freezer 12 °C, rises again"
	)
	checkTrade(t, []tradeCase{
		{name: "a freezer that turns round", lines: freezer + "+60min temp freezer -4C; +60min temp freezer 6C; +60min temp freezer 12C",
			in: []string{rises + " -14 °C and is back at 12 °C: it does not hold"}, not: []string{"too early"}, source: "common practice"},
		{name: "and its proof", lines: freezer + "+60min temp freezer -4C; +60min temp freezer 6C; +60min temp freezer 12C; missing", in: []string{wanted}, source: "common practice"},
		{name: "one warm reading is none yet", lines: freezer + "+60min temp freezer -4C", in: []string{"it was at -14 °C and is at -4 °C " + warmer}, not: []string{rises}, source: "common practice"},
		{name: "two within a defrost are none", lines: freezer + "+20min temp freezer -6C; +20min temp freezer -4C", in: []string{warmer}, not: []string{rises}, source: "common practice"},
		{name: "it falls again after a defrost", lines: freezer + "+30min temp freezer -4C; +40min temp freezer -9C", not: []string{rises}, source: "common practice"},
		{name: "a degree or two is none", lines: freezer + "+60min temp freezer -13C; +60min temp freezer -12C", not: []string{rises, warmer}, source: "common practice"},
		{name: "a fridge that was proved", lines: fridge + "+60min temp fridge 9C; +60min temp fridge 14C", in: []string{rises + " 3 °C and is back at 14 °C"}, not: []string{"proved"}, source: "common practice"},
		{name: "a fridge warmer once", lines: fridge + "+60min temp fridge 9C", in: []string{"it was at 3 °C and is at 9 °C " + warmer}, not: []string{rises}, source: "common practice"},
		{name: "a fridge that holds", lines: fridge + "+60min temp fridge 2C; +60min temp fridge 3C", in: []string{"proved"}, not: []string{rises, warmer}, source: "common practice"},
		{name: "it counts as not mended", lines: freezer + "+60min temp freezer -4C; +60min temp freezer 6C; next", in: []string{"The complaint was seen again after the repair"}, source: "common practice"},
		{name: "it was never colder", lines: "unit fridge; fault warm; did replaced evap fan; temp fridge 60F; +60min temp fridge 62F; +60min temp fridge 66F; +60min temp fridge 68F",
			in: []string{"Pull-down of fridge: warms; it was at 60 °F and is at 68 °F: it grows warmer"}, not: []string{"too early"}, source: "common practice"},
		{name: "and its proof", lines: "unit fridge; fault warm; did replaced evap fan; temp fridge 60F; +60min temp fridge 62F; +60min temp fridge 66F; missing", in: []string{"fridge 66 °F, warms (entry 6)"}, source: "common practice"},
		{name: "within the doubt it does not warm", lines: "unit fridge; fault warm; did replaced evap fan; temp fridge 60F; +60min temp fridge 61F; +60min temp fridge 62F", not: []string{"warms"}, source: "common practice"},
		{name: "within the hour it may be a door", lines: "unit fridge; fault warm; did replaced evap fan; temp fridge 60F; +20min temp fridge 64F; +20min temp fridge 68F", not: []string{"warms"}, source: "common practice"},
		{name: "it fell between", lines: "unit fridge; fault warm; did replaced evap fan; temp fridge 60F; +60min temp fridge 75F; +60min temp fridge 66F", not: []string{"warms"}, source: "common practice"},
		{name: "it is cold all the same", lines: "unit fridge; fault warm; did replaced evap fan; temp fridge 31F; +60min temp fridge 34F; +60min temp fridge 37F", in: []string{"proved"}, not: []string{"warms"}, source: "common practice"},
		{name: "the room grows warmer", lines: "unit fridge; fault not cold; temp room 22C; +60min temp room 18C; +60min temp room 22C; +60min temp room 24C", not: []string{rises, warmer}, source: "common practice"},
	})
}
