package call

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"ohmcall/calc/source"
)

// TestRefusalsShowTheWay types lines behind others. Each is refused, leaves the
// call as it was, says what is wanted, and shows a line that is taken in its
// place; that is tried too, and so is each other line that its hint shows.
func TestRefusalsShowTheWay(t *testing.T) {
	rows := []struct{ before, line, says, shows string }{
		// Several entries are struck one by one.
		{"note a; note b", "undo 1-2", "one entry at a time", "strike 1 probe slipped"},
		{"note a; note b", "undo 1 2", "one entry at a time", "strike 1 probe slipped"},
		{"note a; note b", "undo 1,2", "one entry at a time", "strike 1 probe slipped"},
		{"note a; note b", "oops 1-2 wrong leads", "one entry at a time", "strike 1 probe slipped"},
		{"note a; note b", "undo 1 to 2", "one entry at a time", "strike 1 probe slipped"},
		{"note a; note b; note c", "strike 1, 2 and 3", "one entry at a time", "strike 1 probe slipped"},
		{"note a; note b", "strike 1 2", "one entry at a time", "strike 1 probe slipped"},
		{"", "undo 3", "no entry is there yet", ""},
		// What the meter shows is written, with the part that it belongs to.
		{"unit refrigerator", "ohm overload closed cold", "OL when it is open: ohm overload … cold", ""},
		{"unit refrigerator", "ohm overload open hot", "no value stands before open", "ohm overload OL hot"},
		{"unit refrigerator; ohm A B 3.4, A C 6, B C 9.4", "ohm motor case OL", "each pin of it", "ohm A case OL, B case OL, C case OL"},
		{"unit refrigerator", "plate volts 115, amps 1.2, run 45", "run takes no number", "plate volts 115, amps 1.2, mfd run 45"},
		{"unit window air conditioner", "plate volts 230, run 45/5", "run takes no number", "plate volts 230, mfd herm 45, mfd fan 5"},
		{"unit window air conditioner", "plate start 88-108, volts 230", "start takes no number", "plate mfd start 88-108, volts 230"},
		{"unit window air conditioner", "psi 340/118 run", "are two pressures", "psi suction 118 run, discharge 340 run"},
		{"unit mini split", "plate type heat pump", "type is that of the motor", "unit mini split heat pump"},
		// A tank has two elements and their thermostats.
		{"unit electric water heater", "ohm lower OL", "is an element or a thermostat", "ohm lower-element OL"},
		{"unit electric water heater", "ohm upper case OL", "is an element or a thermostat", "ohm upper-element case OL"},
		// A function wants its brackets.
		{"def sag(a, b) = a - b", "sag 121V 115V", "its values stand in brackets", "sag(121V, 115V)"},
		{"def sag(a, b) = a - b", "sag 121V, 115V", "its values stand in brackets", "sag(121V, 115V)"},
		{"def sag(a, b) = a - b", "sag", "its values stand in brackets", "help sag"},
		{"", "sqrt 16", "its values stand in brackets", "sqrt(16)"},
		{"", "cap_load 4.2A 330V", "its values stand in brackets", "cap_load(4.2A, 330V)"},
		{"", "sqrt", "its values stand in brackets", "help sqrt"},
		{"", "seen clicking", "neither a command nor a sum", ""},
		// What is over the range is no number.
		{"ohm A case OL", `expect ohm(A, case) > 1Mohm "x"`, "read OL in entry 1", `has("ohm A case OL")`},
		{"ohm A case >200M", `expect ohm(A, case) > 1Mohm "x"`, "read >200 MΩ in entry 1", `has("ohm A case OL")`},
		{"ohm A B 3.45", "ohm(A B)", "a comma parts two points", "ohm(A, B)"},
		// Signs and words that sums do not have.
		{"", "120V + 10%", "V and % cannot be added", "120V * (1 + 10%)"},
		{"", "120V - 10%", "V and % cannot be subtracted", "120V * 5%"},
		{"", "24.50 + 7%", "a plain number and % cannot be added", "80 * (1 + 10%)"},
		{"", "let x = 100 - 10%", "a plain number and % cannot be added", "80 * (1 + 10%)"},
		{"", `expect 100 - 10% > 3 "x"`, "a plain number and % cannot be added", "80 * (1 + 10%)"},
		{"let price = 24.50", "price + 7%", "a plain number and % cannot be added", "80 * (1 + 10%)"},
		{"let price = 24.50", "ohm A B (price + 7%)", "a plain number and % cannot be added", "80 * (1 + 10%)"},
		{"", "5% of 120V", "missing before of", "5% * 120V"},
		{"ohm A B 3.45", "12 x 3", "missing before x", "12 * 3"},
		{"ohm A B 3.45", "x = 5", "= does not compare", ""},
		{"", "3 <> 4", "!= is unequal", "3 != 4"},
		{"", "$20 * 3", "money is a plain number", "20 * 3"},
		{"", "€20 + $3", "money is a plain number", "20 + 3"},
		{"", "12AWG", "number alone", ""},
		// A sum that begins with a word for a reading.
		{"ohm heater 32", "ohm heater / 2", "/ stands where a point is wanted", "ohm(heater) / 2"},
		{"ohm heater 32", "ohm heater * 2", "* stands where a point is wanted", "ohm(heater) * 2"},
		{"volt line 118", "volt line - 3", "- stands where a point is wanted", "volt(line) - 3V"},
		{"volt line 118", "volt line – 3V", "– stands where a point is wanted", "volt(line) – 3V"},
		{"volt line 118", "volt line - 3.5", "- stands where a point is wanted", "volt(line) - 3.5V"},
		{"volt line 118", "volt line * 1.05", "* stands where a point is wanted", "volt(line) * 1.05"},
		{"ohm A B 3.4", "ohm A / 2", "/ stands where a point is wanted", "ohm(A, B) / 2"},
		{"ohm A B 3.4", "ohm A + 2", "+ stands where a point is wanted", "ohm(A, B) + 2ohm"},
		{"ohm A B 3.4", "ohm A - 3ohm", "- stands where a point is wanted", "ohm(A, B) - 3ohm"},
		{"ohm A B 3.4; ohm A C 6.5", "ohm c / 2", "/ stands where a point is wanted", "ohm(A, C) / 2"},
		{"ohm A B 3.4", "ohm A B * 2", "* stands where a point is wanted", "ohm(A, B) * 2"},
		{"ohm heater 32", "ohm A B 3, heater / 2", "/ stands where a point is wanted", "ohm(heater) / 2"},
		{"mfd C1 35", "mfd C1 / 2", "/ stands where a point is wanted", "mfd(C1) / 2"},
		{"amp comp 1.2", "amp comp ^ 2", "^ stands where a point is wanted", "amp(comp) ^ 2"},
		{"", "ohm + 3", "+ stands where a point is wanted", "ohm A B 3.4"},
		// The gas stands before the pressure, and is a name.
		{"psi suction 35", "sat_temp(psi(suction))", "goes by the gas", ""},
		{"psi suction 35", "superheat(psi(suction), 50F)", "goes by the gas", ""},
		{"plate gas R-9999", "subcooling(300psi, 90F)", "goes by the gas", ""},
		// Two commands on one line.
		// A line is not changed, but struck and typed anew.
		{"temp freezer 33F; note hi", "edit 1 temp freezer 13F", "at its time: 09:00 temp freezer 13F", "strike 1 misread"},
		{"temp freezer 33F; note hi", "fix 1", "struck and typed anew", "strike 1 misread"},
		{"temp freezer 33F; note hi", "change 1 temp freezer 3F", "typed anew", "09:00 temp freezer 3F"},
		{"temp freezer 33F; note hi", "undo ohm", "ohm", ""},
		{"ohm A B 3.4", "fix 1", "struck and typed anew", "strike 1 misread"},
		{"ohm A B 3.4", "fix 5", "no such entry stands", ""},
		// A point is a name, which no value is.
		{"ohm A B 3.4", "def wind(p, q) = ohm(p, q) * 2", "p would be a point in ohm(p, q)", "def wind(p) = p * 2"},
		{"", "def dropv(p) = volt(p) - 110V", "used as dropv(volt(…))", "def dropv(p) = p - 110V"},
		{"", "def drop2(x, y) = x * temp(freezer, y)", "y would be a point", ""},
		{"", "watt(120V, 10ohm)", "what was read at a place", ""},
		{"", "watts(120V, 10ohm)", "did you mean watts_", ""},
		{"", "sat_temp(118psi)", "goes by the gas", ""},
		{"", `sat_temp("R-134a")`, "wants 2 to 3 values", ""},
		// A letter for a quantity is no pin.
		{"", "v line 118", "neither a command nor a sum", "volt line 118"},
		{"", "I comp 1.2", "neither a command nor a sum", "amp comp 1.2"},
		{"ohm A B 3.4", "I fan 0.4", "neither a command nor a sum", "amp fan 0.4"},
		{"", "w unit 120", "neither a command nor a sum", "watt unit 120"},
		{"ohm heater 24", "W 120", "names its kind", "watt heater 120"},
		{"ohm bake 20", "A 12.5", "names its kind", "amp bake 12.5"},
		{"ohm bake 20", "I 12.5", "names its kind", "amp bake 12.5"},
		{"ohm bake 20", "V 238", "names its kind", "volt bake 238"},
		{"ohm bake 20", "R 20.1", "names its kind", "ohm bake 20.1"},
		{"ohm A B 3.4", "I 1.2", "names its kind", "amp comp 1.2"},
		{"", "capacitor 45", "names what was read", "mfd capacitor 45"},
		{"", "run capacitor 45", "names what was read", "mfd run-cap 45"},
		{"", "plat 115V", "perhaps: ", "plate 115V"},
		{"", "mfd cap 44.1 plate 45", "a line each", "mfd cap 44.1"},
		{"", "amp comp 1.3 plate 1.2", "a line each", "amp comp 1.3"},
		{"", "ohm A B 3.4 not 3.6", "separate several readings with commas: ohm A B 3.4, A C 6.5", ""},
		{"", "ohm A B 3.4 A C 6.5", "commas part readings", "ohm A B 3.4, A C 6.5"},
		// No hint makes another value of it.
		{"", "temp freezer 5F below freezing", "words stand behind the value", "temp freezer -2F"},
		{"ohm A B 3", "ohm A B 3.4 warm", "no condition that is known", "ohm A B 3.4 hot"},
		{"", "psi suction 120, temp suction 52F", "starts a line of its own", "temp suction 52F"},
		{"", "amp comp 1.2, volt line 118", "starts a line of its own", "volt line 118"},
		// A reading without its command word.
		{"ohm A B 3.4", "C open", "names what was read", "ohm A C OL"},
		{"ohm A B 3.4", "C short", "with what the meter shows: ohm A C …", ""},
		{"", "C open", "names what was read", "ohm A C OL"},
		{"", "1 2 3.4", "name their kind", "ohm 1 2 3.4"},
		{"", "1 2 OL", "name their kind", "ohm 1 2 OL"},
		{"", "1-2 3.4 1-3 6.5 2-3 9.9", "name their kind", "ohm 1 2 3.4, 1 3 6.5, 2 3 9.9"},
		{"", "1-2 3,4 / 1-3 6,5", "name their kind", "ohm 1 2 3.4, 1 3 6.5"},
		{"", "c/r 3.1Ω", "name their kind", "ohm c r 3.1Ω"},
		{"", "CS 4.2 CR 3.1 SR 7.3", "names what was read", "ohm C S 4.2, C R 3.1, S R 7.3"},
		{"", "common to start 4.2 omhs", "names what was read", "ohm common start 4.2ohm"},
		{"", "L1-N 118", "names what was read", "volt L1 N 118"},
		{"", "l n 118", "names its kind", "volt l n 118"},
		{"", "cap 12,1 µF", "names what was read", "mfd cap 12.1 µF"},
		{"unit electric dryer", "element 10,2", "names what was read", "ohm element 10.2"},
		{"", "freezer -19,5", "names what was read", "temp freezer -19.5"},
		{"", "ff 38", "names its kind", "temp fridge 38"},
		{"", "C/S * 4.2", "C", ""},
		{"", "5 ft 3 in", "operator", ""},
		// Words for a value, and a value for a point.
		{"", "ohm 1 2 open", "no value between two pins", "ohm 1 2 OL"},
		{"", "ohm 1 2 closed", "no value between two pins (write what the meter shows: ohm 1 2 …", ""},
		{"", "ohm 1 2 short", "no value between two pins (write what the meter shows: ohm 1 2 …", ""},
		{"", "volt 118 -> 104", "where a point is wanted", "volt line 118, line 104 start"},
		{"", "amps 12 start 1.2 run", "where a point is wanted", "amp comp 12 peak, comp 1.2 run"},
		{"", "A B open", "names what was read", "ohm A B OL"},
		{"ohm A B 3.4", "C 6.5V", "names what was read", "volt C 6.5V"},
		{"ohm A B 3.4", "cap 12mfd", "names what was read", "mfd cap 12mfd"},
		{"ohm A B 3.4", "cap 12", "names what was read", "mfd cap 12"},
		{"ohm A B 3.4", "run cap 14.6", "names what was read", "mfd run-cap 14.6"},
		{"", "cap start 12", "names what was read", "mfd start-cap 12"},
		{"", "start cap 12", "names what was read", "mfd start-cap 12"},
		{"", "line 118", "names what was read", "volt line 118"},
		{"ohm A B 3.4", "A case", "names what was read", "ohm A case OL"},
		{"", "heater OL", "names what was read", "ohm heater OL"},
		{"", "earth 0.1", "names what was read", "ohm earth 0.1"},
		// AC is two pins where their ohms are read, and the mains where the value is theirs.
		{"ohm A B 3.4", "AC 118", "names its kind", "volt line 118"},
		{"", "def cap_load(a) = a", "built in", ""},
		{"", "√3", "not used in sums", "sqrt(3)"},
		{"", "10k || 15k", "a yes or no is wanted", "parallel_r(10k, 15k)"},
		{"", "parallel_r(3,4, 2,5)", "this comma can stand for a point", "parallel_r(3, 4, 2, 5)"},
		{"", "series_c(4,7uF, 10uF)", "this comma can stand for a point", "series_c(4.7uF, 10uF)"},
		{"", "75F - 65F in C", "shown in K", ""},
		// Another kind of reading behind ohms is no pin.
		{"ohm A B 5.1", "V 119", "names its kind", "volt line 119"},
		{"ohm A B 5.1", "L1 120", "names its kind", "volt L1 N 120"},
		{"ohm A B 5.1", "n 118", "names its kind", "volt L1 N 118"},
		{"ohm A B 5.1", "L1 L2 240", "names its kind", "volt L1 L2 240"},
		{"ohm A B 5.1", "uf 4.8", "names its kind", "mfd run-cap 4.8"},
		{"ohm A B 5.1", "hp 5", "names its kind", "plate hp 5"},
		{"ohm A B 5.1", "rla 5", "names its kind", "plate rla 5"},
		{"ohm A B 5.1", "kW 3", "names its kind", "watt unit 3kW"},
		{"ohm A B 5.1", "fan 1.2", "names its kind", "amp fan 1.2"},
		{"ohm A B 5.1", "A 1.4", "names its kind", "amp comp 1.4"},
		{"", "V 119", "names its kind", "volt line 119"},
		{"mfd herm 40.1", "V 119", "names its kind", "volt line 119"},
		{"mfd herm 40.1", "fan 4.8", "names what was read", "mfd fan 4.8"},
		// A part's count and price without commas.
		{"", "part relay RL-77 18.40", "commas part them", "part relay RL-77, 1, 18.40"},
		{"", "part relay RL-77 2", "commas part them", "part relay RL-77, 2"},
		{"", "part relay RL-77 1 85", "commas part them", "part relay RL-77, 1, 85"},
		{"", "part capacitor 35 18.40", "commas part them", "part capacitor 35, 1, 18.40"},
		// What no reading can meet is no need.
		{"", "need temp freezer 3", "no reading can be of this", "need temp freezer"},
		{"", "need ohm zzz qqq rrr", "no reading can be of this", "need ohm A case"},
		{"", "need amp comp fan run", "no reading can be of this", "need temp freezer"},
		// A hint shows nothing that is refused itself.
		{"", "ohm A B 3.4x hello there", "is not a unit", ""},
		{"", "omh A B 3.4", "perhaps: ", "ohm A B 3.4"},
		{"", "tmep freezer -2", "perhaps: ", "temp freezer -2"},
		{"", "tmep freezer 10C", "perhaps: ", "temp freezer 10C"},
		{"", "dis new relay", "perhaps: ", "did new relay"},
		{"", "clsoe", "perhaps close", ""},
		{"", "temps -2 38", "perhaps temp;", ""}, // which would not be taken
		{"", "temp -2 38", "where a place is wanted", "temp freezer -2, fridge 38"},
		{"", "temp 38F 35F", "where a place is wanted", "temp freezer 38F, fridge 35F"},
		{"unit fridge", "ohm relay-contact OL on its side", "upright or turned over", "ohm relay-contact OL upright"},
		{"unit fridge", "ohm relay 0.2 sideways", "upright or turned over", "ohm relay 0.2 inverted"},
		{"", "oh # read later", "neither a command nor a sum", ""},
		{"", "ohm A B OL foo", "no condition that is known here", "ohm A B OL"},
		// The kind behind its place or condition, the unit apart, and parts of several words.
		{"", "freezer temp -2", "names what was read", "temp freezer -2"},
		{"", "run amps 1.2", "names what was read", "amp comp 1.2 run"},
		{"", "comp amps 1.2 run", "names what was read", "amp comp 1.2 run"},
		{"", "evap fan amps 0.2", "names what was read", "amp evap-fan 0.2"},
		{"", "line volts 118", "names what was read", "volt line 118"},
		{"", "igniter 3.2 amps", "names what was read", "amp igniter 3.2A"},
		{"", "fan 28 ohms", "names what was read", "ohm fan 28ohm"},
		{"", "evap fan 28", "names what was read", "ohm evap fan 28"},
		{"", "defrost heater 28", "names what was read", "ohm defrost-heater 28"},
		{"", "thermal fuse OL", "names what was read", "ohm thermal-fuse OL"},
		{"", "hi limit 0.1", "names what was read", "ohm hi limit 0.1"},
		{"", "replaced fuse 2", "work done", ""},
		{"", "noise at 4", "write it down as it is", ""},
	}
	for _, r := range rows {
		typed := func(line string) error {
			c := New()
			for _, l := range strings.Split(r.before, "; ") {
				if l != "" {
					must(t, c, c.Expand(l))
				}
			}
			was := c.Len()
			full := c.Expand(line)
			err := c.Doubtful(full)
			if err == nil {
				_, err = c.Apply(nine, full)
			}
			if err != nil && c.Len() != was {
				t.Errorf("after %q, %q is refused and leaves an entry", r.before, line)
			}
			return err
		}
		err := typed(r.line)
		if err == nil {
			t.Errorf("after %q, %q is taken", r.before, r.line)
			continue
		}
		if !strings.Contains(err.Error(), r.says) || !strings.Contains(err.Error(), r.shows) {
			t.Errorf("after %q, %q is refused: %v; want %q and %q", r.before, r.line, err, r.says, r.shows)
		}
		for _, l := range append(shownLines(hintOf(err)), r.shows) {
			if l == "" || strings.HasPrefix(l, "perhaps ") {
				continue
			}
			if err := typed(l); err != nil {
				t.Errorf("after %q, %q shows %q, which is refused: %v", r.before, r.line, l, err)
			}
		}
	}
}

// hintOf is the hint of a refusal, "" for none.
func hintOf(err error) string {
	var at *source.Error
	if errors.As(err, &at) {
		return at.Hint
	}
	return ""
}

// TestPoles holds which points are the poles of direct volts.
func TestPoles(t *testing.T) {
	answers(t, [][2]string{
		{"volt + - 12", "+–- 12 V"},
		{"volt - 12", "- 12 V"},
		{"volt + case 12", "+–case 12 V"},
		{"ohm A - B 3.4", "A–B 3.4"},
		{"volt line -3", "line -3 V"},
	})
}

// TestOwnFormula holds that a function which a record or a collection defines by
// the name that a formula got since keeps its meaning there.
func TestOwnFormula(t *testing.T) {
	answers(t, [][2]string{
		{"def superheat(line, gauge) = line - gauge; superheat(50F, 40F)", "= 10 Fdiff"},
		{`superheat("R-134a", 35.05psig, 52F)`, "= 12 Fdiff"},
	})
	if err := New().Doubtful("def superheat(a) = a"); err == nil {
		t.Error("a formula is given another meaning as if by the way")
	}
}

// TestHasOpen asks whether what was read last is open.
func TestHasOpen(t *testing.T) {
	answers(t, [][2]string{
		{`has("ohm A case OL")`, "no"},
		{`ohm A case OL; has("ohm A case OL")`, "yes"},
		{`ohm A case >200M; has("ohm case A OL")`, "yes"},
		{`ohm A case OL; ohm A case 300; has("ohm A case OL")`, "no"},
		{`ohm A case OL; expect has("ohm A case OL") "no path"; strike 1 slip`, "in doubt, entry 2"},
		{`plate volts 115; let v = plate(volts) * 2; strike 1 misread`, "in doubt, entry 2"},
		{`need ohm A case OL`, "OL is a value"},
		{"pi", "= 3.14159"},
	})
}

// TestPlateTypedAnew: what a sum took from a plate is in doubt once the plate
// reads otherwise there, and that of no other value or machine.
func TestPlateTypedAnew(t *testing.T) {
	const before = "plate volts 115, amps 1.2; plate(volts) * 2; plate(amps) * 2; "
	for _, tt := range []struct {
		lines string
		doubt []string
	}{
		{before + "plate volts 230", []string{"rests on entry 1, which counts otherwise since the plate of entry 4", ""}},
		{before + "plate amps 2", []string{"", "rests on entry 1, which counts otherwise since the plate of entry 4"}},
		{before + "plate volts 115", []string{"", ""}},
		{before + "plate volts 230; plate(volts) * 3; strike 4 slip; strike 5 slip", []string{"", "", "rests on entry 4, which was struck"}},
		{before + "plate lra 12", []string{"", ""}},
		{before + "on heater; plate volts 230", []string{"", ""}},
		{before + "did replaced compressor; plate volts 230, amps 2", []string{"", ""}},
	} {
		var got []string
		for _, s := range applyAll(t, strings.Split(tt.lines, "; ")...).Record().Sums {
			got = append(got, s.Meaning)
		}
		if !slices.Equal(got, tt.doubt) {
			t.Errorf("%s: in doubt %q, want %q", tt.lines, got, tt.doubt)
		}
	}
}

// TestReasonsOfAStrike holds that numbers among the words of a reason stay part
// of it.
func TestReasonsOfAStrike(t *testing.T) {
	answers(t, [][2]string{
		{"note a; undo 1 118 V was of another outlet", "Struck entry 1 (note a): 118 V was of another outlet."},
		{"note a; strike 1 -2F was wrong", "-2F was wrong."},
		{"note a; strike 1 40", "Struck entry 1 (note a): 40."},
		{"note a; undo 1", "taken back"},
	})
}
