package call

import (
	"strings"
	"testing"
)

// TestMistypedLines types slips that would be stored as another thing than was meant:
// each is refused with the line that is likely meant, and that line is taken.
func TestMistypedLines(t *testing.T) {
	pins := threePins
	for _, r := range []struct{ before, line, shows string }{
		// A pin that is nearly the case.
		{pins, "ohm A csae 2", "perhaps: ohm A case 2"},
		{"", "volt thermopile 480", "millivolts: volt thermopile 480mV"},
		{"", "ohm A csae 2", "perhaps: ohm A case 2"},
		{pins, "ohm B cas 1.5", "perhaps: ohm B case 1.5"},
		{pins, "ohm A chasis 2 hot", "perhaps: ohm A case 2 hot"},
		{pins, "ohm A B 3.4, C grond 0.3", "perhaps: ohm A B 3.4, C case 0.3"},
		{"", "ohm A grnd 2", "perhaps: ohm A case 2"},
		{"", "ohm A chas OL", "perhaps: ohm A case OL"},
		{"", "ohm A comp-shell 2", "perhaps: ohm A case 2"},
		{"", "ohm heater csae 2", "perhaps: ohm heater case 2"},
		{"", "volt L csae 120", "perhaps: volt L case 120"},
		{pins, "ohm A copper 2", "perhaps: ohm A case 2"},
		{"", "ohm common strat 4.2", "perhaps: ohm common start 4.2"},
		{pins, "ohm A csae 2", `ohm A "csae" 2`},
		// A place.
		{"", "volt cmop 0 run", "perhaps: volt comp 0 run"},
		{"", "volt lien 118", "perhaps: volt line 118"},
		{"", "amp cmop 10.6", "perhaps: amp comp 10.6"},
		{"", "mfd strat-cap 100", "perhaps: mfd start-cap 100"},
		{"", "psi sucton 35", "perhaps: psi suction 35"},
		// A wire.
		{pins, "wire red strat", "perhaps: wire red start"},
		{pins, "wire common black", "wire black common"},
		{pins, "wire A red", "wire red A"},
		// A number in two, and volts below zero.
		{"", "volt line 118 2", "perhaps: volt line 118.2"},
		{"", "volt line 118 120", "commas part readings: volt line 118, line 120"},
		{"", "ohm heater 32 1", "perhaps: ohm heater 32.1"},
		{"", "volt line -118", "volt line 118; direct ones: volt line -118 dc"},
		{"", "volt line minus 118", "volt line 118; direct"},
		{"", "volt comp -118 run", "volt comp 118 run; direct ones: volt comp -118 dc run"},
		// Milliohms to the case.
		{"", "ohm A case 500m", "ohm A case 500M; milliohms in ohms: ohm A case 0.5"},
		{"", "ohm C case 550 mohm", "ohm C case 550M; milliohms in ohms: ohm C case 0.55"},
		{"", "ohm A case 20m test 500V", "ohm A case 20M test 500V"},
		{"", "ohm A case 500 m", "ohm A case 500M"},
		// A unit that is not known, or of another kind, is not left off.
		{"", "ohm A case 2 zigohm", "a unit stands with its number: 2G, 500M"},
		{"", "ohm A case 2 xyz", "a unit stands with its number: 2G, 500M"},
		{"", "ohm A case 2.5 zig zag", "a unit stands with its number: 2G, 500M"},
		{"", "psi suction 2 barr", "35psi, 2bar, 240kPa"},
		{"", "ohm A B 3.4 V", "volt A B 3.4V"},
		{"", "mfd C1 45 V", "volt C1 45V"},
		{"", "amp comp 5 W", "watt comp 5W"},
		// Nor a condition.
		{"", "amp comp 10.6 peek", "perhaps: amp comp 10.6 peak"},
		{"", "amp comp 10.6 pk", "perhaps: amp comp 10.6 peak"},
		{"", "amp comp 10.6 peek at 25C", "perhaps: amp comp 10.6 peak at 25C"},
		{"", "amp comp 10.6 strt", "perhaps: amp comp 10.6 start"},
		{"", "ohm ptc OL hott", "perhaps: ohm ptc OL hot"},
		{"", "volt line 104 strat", "perhaps: volt line 104 start"},
		{"", "volt line 104 startin", "perhaps: volt line 104 start"},
		{"", "volt line 104 loaded", "perhaps: volt line 104 run"},
		{"", "psi suction 60 equalized", "levelled, and all at one temperature: psi suction 60 standing"},
		{"", "psi suction 60 off", "psi suction 60 standing"},
		{"", "amp comp 10.6 wobbling", "amp comp 10.6 # wobbling"},
		// What a kind of reading is called, as the first word.
		{"client Invented", "current comp 5.2", "amp comp 5.2"},
		{"", "curent comp 5.2 run", "amp comp 5.2 run"},
		{"", "deg freezer 5", "temp freezer 5"},
		{"", "hom A B 3.4", "ohm A B 3.4"},
		{"", "res A B 3.4", "ohm A B 3.4"},
		{"", "resist heater 32", "ohm heater 32"},
		{"", "temperature freezer 5F", "temp freezer 5F"},
		{"", "pressure suction 35", "psi suction 35"},
		{"", "power 150", "watt 150"},
		{"", "vacuum 500 microns", "psi suction 500 microns"},
		{"", "cap C1 45", "mfd C1 45"},
		{"", "uf C1 45", "mfd C1 45"},
		{"", "capacitor C1 45", "mfd C1 45"},
		{"", "C1 44.8", "mfd C1 44.8"},
		{"", "C1 44.8 uF", "mfd C1 44.8 uF"},
		{pins, "C1 44.8", "mfd C1 44.8"},
		{pins, "cap C1 45", "mfd C1 45"},
		{pins, "uf C1 45", "mfd C1 45"},
		{pins, "mic C1 45", "mfd C1 45"},
		{pins, "res A B 3.4", "ohm A B 3.4"},
		{"ohm heater 32", "deg freezer 5", "temp freezer 5"},
		{"", "3.4 A B", "ohm A B 3.4"},
	} {
		got := live(t, r.before, r.line)
		if !strings.HasPrefix(got, "refused") || !strings.Contains(got, r.shows) {
			t.Errorf("after %q, %q: %s\nwant %q", r.before, r.line, got, r.shows)
			continue
		}
		_, hint, _ := strings.Cut(got, "\nhint: ")
		for _, l := range append(shownLines(hint), r.shows) {
			if word, _, _ := strings.Cut(l, " "); Find(word) != nil && !strings.Contains(l, "; ") && strings.HasPrefix(live(t, r.before, l), "refused") {
				t.Errorf("%q shows %q, which is refused", r.line, l)
			}
		}
	}
	// What is no slip is taken as it is.
	for _, r := range []struct{ before, line, says string }{
		{"", "ohm A case 2", "Grounded"},
		{"", `ohm A "csae" 2`, "A–csae 2 Ω"},
		{"", "ohm yel grn 3.4", "yel–grn"},
		{"", "ohm C end 3.4", "C–end"},
		{"", "ohm com low 12.1, com med 10.2, com high 8.3", "com–low"},
		{`ohm A "gruond" 2`, "ohm B gruond 2", "B–gruond"},
		{"", "ohm earth case 80m", "earth: sound"},
		{"", "ohm earth 80 milliohms", "earth: sound"},
		{"", "ohm A B 550m", "550 mΩ"},
		{"", "ohm A case 2 gig", "A–case 2000 MΩ"},
		{"", "ohm A case 2.5 gigohm test 500V", "sound"},
		{"", "ohm A case 500 k-ohm", "500 kΩ"},
		{"", "ohm A case 1M test500", "test 500 V"},
		{"", "ohm A case 1M 500V", "test 500 V"},
		{"", "ohm A case 500M", "500 MΩ"},
		{"", "amp comp 10.6 at start", "10.6 A (±0.41) start"},
		{"", "amp comp 10.6 startup", "10.6 A (±0.41) start"},
		{"", "psi suction 450 mTorr", "450 micron"},
		{"", "psi vacuum 500 microns", "suction 500 micron"},
		{"", "volt line -118 dc", "-118 V"},
		{"", "volt thermocouple -3mV", "-3 mV"},
		{"", "volt thermopile 0.48", "480 mV is enough"},
		{"", "volt - 12", "12 V"},
		{"", "volt link 325", "link 325 V"},
		{"", "amp conv-fan 0.3", "conv-fan 0.3 A"},
		{"", "mfd runcap 35", "runcap 35"},
		{"", "ohm heater 2 32", "heater-2 32"},
		{"", `ohm relay "12" 14`, "relay-12 14"},
		{pins, "wire red relay", "red → relay"},
		{"ohm A C1 3.4", "C1 44.8", "C1 44.8 Ω"},
	} {
		if got := live(t, r.before, r.line); !strings.Contains(got, r.says) || strings.HasPrefix(got, "refused") {
			t.Errorf("after %q, %q: %s\nwant %q", r.before, r.line, got, r.says)
		}
	}
	// A notebook that holds such a line is read as it was written.
	answers(t, [][2]string{{"ohm A csae 2", "A–csae 2 Ω"}, {"volt line 118 2", "line–118 2 V"}, {"ohm A case 500m", "Grounded"}, {"wire red strat", "red → strat"}})
}

const threePins = "ohm A B 3.45, A C 9.9, B C 6.5"

// live is what a line says that is typed behind another, with its hint when it is refused.
func live(t *testing.T, before, line string) string {
	t.Helper()
	c := New()
	if before != "" {
		must(t, c, c.Expand(before))
	}
	full := c.Expand(line)
	err := c.Doubtful(full)
	if err == nil {
		e, bad := c.Apply(nine, full)
		if bad == nil {
			return e.Reply.Plain()
		}
		err = bad
	}
	return "refused: " + err.Error() + "\nhint: " + hintOf(err)
}

// TestBareWords types each command's word alone, in a call with nothing and in one with
// readings: it is taken, or refused with what is wanted.
func TestBareWords(t *testing.T) {
	for _, before := range []string{"", threePins} {
		for _, cmd := range Commands() {
			for _, line := range []string{cmd.Word, cmd.Word + " ", cmd.Word + ",", cmd.Word + ` ""`, cmd.Word + " ,"} {
				if got := live(t, before, line); strings.HasSuffix(got, "refused: ") {
					t.Errorf("%q: %s", line, got)
				}
			}
		}
	}
}
