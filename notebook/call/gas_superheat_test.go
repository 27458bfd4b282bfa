package call

import (
	"strings"
	"testing"
)

// A line against the saturation at its pressure: R-134a boils at 40 °F at 35.05 psig
// and condenses at 100 °F at 124.2 psig (Tillner-Roth & Baehr 1994, as in the worked
// examples of the formulas).
func TestSuperheatIsOffered(t *testing.T) {
	const (
		source = "Tillner-Roth & Baehr 1994"
		plate  = "unit refrigerator; fault not cooling; plate volts 115, amps 1.2, gas R134a; "
		line   = `superheat("R-134a", psi(suction), temp(suction))`
	)
	checkTrade(t, []tradeCase{
		{"pressure, then the line", plate + "psi suction 35.05 run; temp suction 50F", []string{"Superheat 10.0 ±", "by R-134a, the gas of the plate (entries 4, 5)", line}, nil, nil, "", source},
		{"the line, then pressure", plate + "temp suction-line 50F; psi suction 35.05 run", []string{"Superheat 10.0 ±", `temp("suction-line"))`}, nil, nil, "", source},
		{"subcooling", plate + "psi discharge 124.2 run; temp liquid 90F", []string{"Subcooling 10.0 ±", `subcooling("R-134a", psi(discharge), temp(liquid))`}, nil, nil, "", source},
		{"no gas, no sum", "unit refrigerator; fault not cooling; psi suction 35 run; temp suction 50F", nil, []string{"Superheat"}, nil, "", "follows from the formula"},
		{"a gas that is not in the table", "plate gas R-9999; psi suction 35 run; temp suction 50F", nil, []string{"Superheat"}, nil, "", "follows from the formula"},
		{"pressure at rest", plate + "psi suction 35 standing; temp suction 50F", nil, []string{"Superheat"}, nil, "", "common practice"},
		{"another place", plate + "psi suction 35 run; temp freezer 50F", nil, []string{"Superheat"}, nil, "", "follows from the formula"},
		{"an hour apart", plate + "psi suction 35 run; +60min temp suction 50F", nil, []string{"Superheat"}, nil, "", "common practice"},
		{"before the work", plate + "psi suction 35 run; did recharged; temp suction 50F", nil, []string{"Superheat"}, nil, "", "common practice"},
	})
	c := applyAll(t, strings.Split(plate+"psi suction 35.05 run; temp suction 50F", "; ")...)
	for typed, want := range map[string]string{
		"superheat(psi(suction), temp(suction))":          line,
		"let sh = superheat(psi(suction), temp(suction))": "let sh = " + line,
		"subcooling(124.2psig, 90F)":                      `subcooling("R-134a", 124.2psig, 90F)`,
		`superheat("R-22", 70psig, 50F)`:                  `superheat("R-22", 70psig, 50F)`,
		"superheat(R-22, 70psig, 50F)":                    "superheat(R-22, 70psig, 50F)",
		"superheat(70psig)":                               "superheat(70psig)",
		"note superheat(70psig, 50F) was asked for":       "note superheat(70psig, 50F) was asked for",
	} {
		got := c.Expand(typed)
		if got != want {
			t.Errorf("%s is stored as %s, want %s", typed, got, want)
		}
		if again := c.Expand(got); again != got {
			t.Errorf("%s, stored as %s, becomes %s", typed, got, again)
		}
	}
	lines := applyAll(t, strings.Split(plate+"psi suction 35.05 run; temp suction-line 50F", "; ")...)
	if e := must(t, lines, `superheat("R-134a", psi(suction), temp("suction-line"))`); !strings.Contains(e.Reply.Plain(), "10.0") {
		t.Errorf("the line that is shown gives %q", e.Reply.Plain())
	}
	if got := New().Expand("superheat(70psig, 50F)"); got != "superheat(70psig, 50F)" {
		t.Errorf("without a plate it is stored as %s", got)
	}
	own := applyAll(t, "plate gas R134a", "def superheat(a, b) = a - b")
	if got := own.Expand("superheat(50F, 40F)"); got != "superheat(50F, 40F)" {
		t.Errorf("a sum of the user's own is stored as %s", got)
	}
}

// A compound gauge's inches of mercury are a vacuum; it is said once.
func TestVacuumIsSaidOnce(t *testing.T) {
	c := applyAll(t, "plate gas R-600a")
	said := 0
	for _, l := range []string{"psi suction 10inHg run", "psi suction 9inHg run", "psi suction -8inHg run", "psi suction 2 run", "psi suction -2 run"} {
		said += strings.Count(must(t, c, c.Expand(l)).Reply.Plain(), "are a vacuum")
	}
	if said != 1 {
		t.Errorf("it is said %d times", said)
	}
	c = applyAll(t, "plate gas R-600a")
	must(t, c, c.Expand("psi suction 10inHg run"))
	if got := must(t, c, "temp suction 20F").Reply.Plain(); !strings.Contains(got, "Superheat 27") {
		t.Error(got)
	}
}
