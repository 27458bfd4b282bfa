package sum

import (
	"strings"
	"testing"
)

// TestTold holds what is said beside the value of a sum, and where nothing is.
func TestTold(t *testing.T) {
	rows := []struct{ text, want string }{
		{"120V/5K", "5K is taken as 5 kelvin; kilohms are 5kohm."},
		{"120V/5k", ""},
		{"5K", "5K is taken as 5 kelvin; kilohms are 5kohm."},
		{"20C + 5K", ""},
		{"4186J / (1kg * 5K)", ""},
		{"temp(freezer) - 5K", ""},
		{"35/5 uF", "35/5 uF divides by the unit too; so many of it are (35/5) * 1uF."},
		{"(35/5) * 1uF", ""},
		{"1/6 hp", ""},
		{"2/3ohm", "2/3 ohm divides by the unit too; so many of it are (2/3) * 1ohm."},
		{"1/60Hz", ""},
		{"sin(30)", "30 is taken in radians; degrees are 30deg."},
		{"sin(30deg)", ""},
		{"cos(pi/3)", ""},
		{"asin(0.5)", ""},
		{"120V/5 ohm", ""},
		{"1/(2*pi*60Hz*47uF)", ""},
		{"1/(ohm(A, B) - 3.4ohm)", "The doubt of a divisor takes in zero: what it comes to can be anything."},
		{"1/ohm(A, B)", ""},
		{"1/(ohm(A, B) - 3.4ohm) > 0/1ohm", "The doubt of a divisor takes in zero: what it comes to can be anything."},
		{"500micron in mbar", "That is above the air; absolute it is 0.667 mbara."}, // 133.322 Pa a mmHg
		{"14.7psia in psi", "That is above the air; absolute it is 14.7 psia."},
		{"500micron in mbara", ""},
		{"40psi in bar", ""},
		{"(5psia in psi) + 3psid", ""},
		{"40psi in psia", ""},
		{"3 KWH * 0.17", "Money by the kilowatt-hour is written 0.17/kWh."},
		{"3kWh * 0.17/kWh", ""},
		{"3kWh / 0.5", ""},
		{"150W * 24h", ""},
	}
	for _, r := range rows {
		env := scope(t)
		eval(t, r.text, env)
		if got := strings.Join(env.Notes, " "); got != r.want {
			t.Errorf("%s says %q, want %q", r.text, got, r.want)
		}
	}
}
