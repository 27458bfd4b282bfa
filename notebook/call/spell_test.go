package call

import (
	"strings"
	"testing"
)

// What is stored is the full line in its one form, whatever was typed.
func TestSpelling(t *testing.T) {
	rows := []struct{ before, typed, stored string }{
		{"", "Ohm A B 3.4", "ohm A B 3.4"},
		{"", "CLOSE", "close"},
		{"", "Client Petra Placeholder", "client Petra Placeholder"},
		{"", "Note Ohm: as read", "note Ohm: as read"},
		{"", "ohms A B 3.4", "ohm A B 3.4"},
		{"", "Amps comp 1.2 run", "amp comp 1.2 run"},
		{"", "amps 1.2", "amps 1.2"},
		{"", "ohms in kohm", "ohms in kohm"},
		{"let volts = 3V", "volts line 118", "volts line 118"},
		{"", "ohm A B: 3.4", "ohm A B 3.4"},
		{"", "ohm A B = 3.4, A C: 6.5", "ohm A B 3.4, A C 6.5"},
		{"", "?", "help"},
		{"", "? ohm", "help ohm"},
		{"", "9:15 temp freezer 3F", "09:15 temp freezer 3F"},
		{"", "9:15pm temp freezer 3F", "21:15 temp freezer 3F"},
		{"", "12:05 AM Temp freezer 3F", "00:05 temp freezer 3F"},
		{"", "12:05pm temp freezer 3F", "12:05 temp freezer 3F"},
		{"", "13:05pm temp freezer 3F", "13:05pm temp freezer 3F"},
		{"", "09:15:30 safe", "09:15:30 safe"},
		{"ohm A B 3.4", "C 6.5", "ohm A C 6.5"},
		{"ohm A B 3.4; ohm B C 126; strike 2 slip", "B C 12.6", "ohm B C 12.6"},
		{"ohm A B 3.4; strike 1 slip", "C 6.5", "C 6.5"},
		{"ohm ptc 52; strike 1 slip", "ptc 5.2", "ohm ptc 5.2"},
	}
	for _, r := range rows {
		c := New()
		for _, l := range strings.Split(r.before, "; ") {
			if l != "" {
				must(t, c, l)
			}
		}
		got := c.Expand(r.typed)
		if got != r.stored {
			t.Errorf("after %q, %q is stored as %q, want %q", r.before, r.typed, got, r.stored)
		}
		if again := c.Expand(got); again != got {
			t.Errorf("%q is spelled again: %q", got, again)
		}
	}
}

func TestLeaving(t *testing.T) {
	answers(t, [][2]string{
		{"quit", "close ends the call; Ctrl-D stops and leaves it open"},
		{"Exit", "Ctrl-D"},
		{"done", "Ctrl-D"},
		{"done replaced relay", "perhaps did"},
		{"?", "mending and ending"},
		{"ohm A B open", "ohm A B OL"},
		{"amps 1.2", "amp comp …; from the plate: plate amps …"},
	})
}
