package call

import (
	"strings"
	"testing"
)

// answer is the reply to the last of several lines, as typed live, or why it
// was refused.
func answer(t testing.TB, lines string) string {
	t.Helper()
	c := New()
	got := ""
	for _, l := range strings.Split(lines, "; ") {
		e, err := c.Apply(nine, c.Expand(l))
		if err != nil {
			got = "refused: " + err.Error()
			continue
		}
		got = e.Reply.Plain()
	}
	return got
}

func answers(t *testing.T, rows [][2]string) {
	t.Helper()
	for _, r := range rows {
		if got := answer(t, r[0]); !strings.Contains(got, r[1]) {
			t.Errorf("%s:\n%s\nwant %q", r[0], got, r[1])
		}
	}
}

// A plate's slash is two values except in horsepower, and its dash a range;
// that 208/230 and 220-240 are one connection and 115/230 two is common
// practice, 230 V for 220-240 is IEC 60038 (from memory).
func TestTwoValuesOnThePlate(t *testing.T) {
	answers(t, [][2]string{
		{"plate hp 1/6; plate(hp) in W", "= 124.3 W"},
		{"plate mfd 45/5", "name each: plate mfd herm 45, mfd fan 5"},
		{"plate mfd C1 45/5 6%", "name each: plate mfd herm 45 6%, mfd fan 5 6%"},
		{"plate mfd herm 45, mfd fan 5; mfd fan 4.9", "run capacitor fan: sound"},
		{"plate mfd start 88-108; mfd start 97", "sound"},
		{"plate volts 115/230", "plate volts 115, or: plate volts 230"},
		{"plate volts 120-240", "plate volts 120, or: plate volts 240"},
		{"plate volts 220-240; volt line 231", "limit 207 to 253 V"},
		{"plate volts 240/220; plate(volts)", "= 230 V"},
		{"plate volts 208/230; volt line 241", "limit 216 to 252 V"},
		{"plate volts 208-230; volt line 205", "limit 187.2 to 218.4 V"},
		{"plate hz 50/60", "plate hz 50, or: plate hz 60"},
		{"plate amps 12/6", "plate amps 12"},
		{"plate lra 1/6", "lra takes one value"},
		{"mfd C1 45/5", "mfd herm 44.6, fan 4.9"},
		{"ohm A B 7/2", "(7/2)"},
		{"ohm A B (7/2); ohm(A, B)", "3.5"},
	})
}

// A marking judges the can that it was typed for.
func TestMarkingOfItsOwn(t *testing.T) {
	answers(t, [][2]string{
		{"plate mfd 12; mfd C1 11.8", "sound"},
		{"plate mfd 45; mfd C1 4.8", "cannot tell, 4.8 µF is far from the one marking typed, 45; name the can that is marked so: plate mfd C1 …"},
		{"plate mfd 45; mfd C1 44.8; mfd C2 4.8", "plate mfd C2 …"},
		{"plate mfd 45; mfd C1 44.8; mfd C2 4.98; plate mfd C2 5 10%", "C2: cannot tell, -0.4 % off"},
		{"plate mfd 45; mfd C1 0.3", "failed"},
		{"plate mfd C2 45; mfd C1 44.8", "plate mfd C1 …"},
		{"plate mfd run 12; mfd run-cap 11.9", "sound"},
		{"mfd C1 4.8", "needed to judge it: plate mfd C1 …"},
	})
}
