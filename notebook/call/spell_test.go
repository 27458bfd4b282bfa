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

// Every page that help names is there, and what can be narrowed is.
func TestHelpPages(t *testing.T) {
	screen := answer(t, "help")
	for _, p := range topics {
		if !strings.Contains(screen, " "+p.word) {
			t.Errorf("help does not name its page %s", p.word)
		}
		if got := answer(t, "help "+p.word); strings.HasPrefix(got, "refused") || !strings.Contains(got, "\n") {
			t.Errorf("help %s: %s", p.word, got)
		}
	}
	answers(t, [][2]string{
		{"help when", `seen("FINDING")`},
		{"help when", `when is(gas, "R-600a"): need safe`},
		{"help time", "after the entry before, not after now"},
		{"help conditions", "when CONDITION"},
		{"help findings fan", "cond-fan stopped: the condenser fan stands still"},
		{"help parts heat", "heater, defrost-heater"},
		{"help parts nothing", "refused: none of the parts"},
		{"help points", "none named is line"},
		{"help formulas", "capacitors            cap_load cap_energy"},
		{"help formulas capacitors", "cap_load(amps A, volts V, freq Hz = 60)"},
		{"help formulas nothing", "refused: there is no group"},
		{"help ohm nothing", "refused: more than help ohm takes"},
	})
	for _, l := range strings.Split(answer(t, "help formulas"), "\n") {
		if strings.HasPrefix(l, " ") {
			t.Errorf("a group is not named: %q", l)
		}
	}
	if n := strings.Count(answer(t, "help findings fan"), "\n"); n > 20 {
		t.Errorf("help findings fan has %d lines", n)
	}
}
