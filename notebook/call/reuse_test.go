package call

import (
	"strings"
	"testing"
)

// What a sum of numbers stands for has the doubt of the meter that showed them;
// gases are compared by their numbers; the plate's own volts are its nominal.
func TestTypedAsSums(t *testing.T) {
	answers(t, [][2]string{
		{`plate gas R600a; is(gas, "R-600a")`, "yes"},
		{`plate gas isobutane; is(gas, "R-600a")`, "yes"},
		{`plate gas R-134a; is(gas, "R-600a")`, "no"},
		{"ohm earth (0.19ohm)", "earth: cannot tell"},
		{"plate amps 1.2, volts 115; amp comp (14.5A/10) run", "1.45 A (±0.045)"},
		{"32F in C", "= 0 °C"},
		{"plate volts 115; limit plate; volt line 130.0", "supply: failed"},
		{"plate volts 115; limit plate; volt line 124.0", "supply: sound"},
		{"limit 5M; ohm A case 4.0M test 500V", "below the rule of the house"},
		{`when seen("clickz"): need psi suction`, "is no finding that is known here"},
		{`when is(gaz, "R-600a"): need safe`, "is on no plate and no field of a call"},
		{`when seen("clicks"): need psi suction`, ""},
		{"need temp freezer -2F", "refused: a reading is needed by its place"},
		{"ohm A C 6.5 probably bad reading", "# starts a comment: ohm A C 6.5 # probably bad reading"},
		{"let drop = 5V; let drop = 9V", "It was: drop = 5 V."},
		{"def sag(a, b) = a - b; let sag = 3", "It was: sag(a, b) = a - b."},
		{`sat_press("R-134a", 40)`, "taken as 40 °C"},
		{`units F; sat_press("R-134a", 40)`, "35"},
		{"120VAC / 10ohm", "= 12 A"},
	})
}

// A pair read hot leaves the roles on the cold ones.
func TestHotPairLeavesRoles(t *testing.T) {
	c := applyAll(t, "ohm A B 5.40 cold, A C 10.55 cold, B C 5.15 cold", "ohm A B 6.48 hot")
	if roles := c.machines[defaultMachine].result.Roles; roles["B"] != "common" || roles["A"] != "start" {
		t.Errorf("%v", roles)
	}
}

// A sum that names a reading by its condition means by the bare one that without
// it; otherwise the bare one is the last, and the reply says which.
func TestBareReadingBesideItsCondition(t *testing.T) {
	const line = "volt line 121.4; volt line 117.8 run; "
	answers(t, [][2]string{
		{line + "volt(line) - volt(line, run)", "= 3.6 ± 2.4 V"},
		{line + "volt(line, run) - volt(line)", "= -3.6 ± 2.4 V"},
		{line + `(volt(line) - volt("line", run)) / volt(line) in %`, "= 3.0 ± 2.0 %"},
		{line + "source_ohms(volt(line), volt(line,run), 12A)", "= 0.30 ± 0.20 Ω"},
		{line + "let sag = volt(line) - volt(line, run)", "sag = 3.6 ± 2.4 V"},
		{line + "def sag() = volt(line) - volt(line, run); sag()", "= 3.6 ± 2.4 V"},
		{line + `expect volt(line) - volt(line, run) > 1V "it sags"`, "Met: it sags"},
		{line + "volt(line)", "= 117.8"},
		{line + "volt(line)", "volt(line) is the one read run, entry 2; entry 1 has 121.4 V."},
		{line + "volt(line) - volt(unit, run)", "no voltage of unit was read"},
		{"volt L N 121.4; volt L N 117.8 run; start_sag(volt(L,N), volt(N,L,run), 12A, 50A)", "= 12 ± 8 %"},
		{"ohm A B 3.45; ohm A B 3.60 hot; ohm(A, B, hot) - ohm(B, A)", "= 0.15"},
		{"ohm A B 3.45; ohm A B 3.60 hot; ohm(A, B)", "= 3.60"},
		{"volt line 117.8 run; volt(line) - volt(line, run)", "line was read with the word run only"},
		{"volt line 112 start; volt(line)", "take it down at rest too: volt line …; or with its word: volt(line, start)"},
		{"volt line 117.8 run; volt line 121.4; volt(line) - volt(line, run)", "= 3.6"},
		{"plate mfd cap 45; plate(mfd)", "plate(mfd, cap)"},
		{"plate mfd cap 45; plate(mfd, cap)", "= 45"},
		{"plate mfd cap 45; plate(volts)", "as in: plate volts 115"},
	})
	if got := answer(t, "volt line 117.8 run; volt line 121.4; volt(line)"); strings.Contains(got, "is the one read") {
		t.Error(got)
	}
}

// A function takes values, and readings of named points stand in it all the same.
func TestFunctionsTakeValues(t *testing.T) {
	c := applyAll(t, "ohm A B 3.4")
	for _, line := range []string{"def twice(x) = ohm(A, B) * x", "def root(p) = sqrt(p)", "def sag(a, b) = (a - b) / a", "def line2(x) = volt(line) - x"} {
		if err := c.Doubtful(line); err != nil {
			t.Errorf("%s: %v", line, err)
		}
	}
}
