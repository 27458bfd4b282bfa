package call

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"ohmcall/notebook/script"
)

// rathers are words that stand in a hurry for another kind of reading, though
// three letters could name a pin, with the line that is meant. A word is a pin all
// the same where the machine has it, or has the pin that comes before it.
var rathers = []struct{ words, beside, line string }{
	{" v w ", " u v w ", ""},
	{" l1 l2 l3 n ", " l1 l2 l3 t1 t2 t3 ", ""},
	{" v vac vdc ac dc ", "", "volt line %s"},
	{" l1 l2 l3 l ", "", "volt %[2]s N %[1]s"},
	{" n ", "", "volt L1 N %s"},
	{" a i ", "", "amp comp %s"},
	{" w ", "", "watt unit %s"},
	{" kw ", "", "watt unit %skW"},
	{" uf µf μf mf ", "", "mfd run-cap %s"},
	{" c1 c2 ", "", "mfd %[2]s %[1]s"},
	{" fan ", "", "amp fan %s"},
	{" rh ", "", "note rh %s"},
	{" age ", "", "worth age %s"},
	{" ff ", "", "temp fridge %s"},
	{" meg ", "", "ohm A case %s"},
}

// kindLetter is the reading that the letter of a quantity stands for, "" for any
// other word.
//
//go:noinline
func kindLetter(word string) string {
	switch word {
	case "v", "e":
		return "volt"
	case "i", "a":
		return "amp"
	case "w", "p":
		return "watt"
	case "r":
		return "ohm"
	}
	return ""
}

// isPlace reports whether a kind of reading is taken at a place by its name.
//
//go:noinline
func (c *Call) isPlace(kind, name string) bool {
	return name == "fan" || among(placeWords(kind), name) || kind == "volt" && among(atMains, name) || kind != "ohm" && partOf(name) != nil
}

// rather is the full line that points and what is read there stand for when they
// are hardly a pin's ohms, "" when they are.
func (c *Call) rather(last *reading, points []script.Word, value string) string {
	first := points[0].Text
	low := strings.ToLower(first)
	pins := " " + strings.ToLower(strings.Join(c.pins(), " ")) + " "
	known := strings.Contains(pins, " "+low+" ")
	if len(points) == 2 {
		second := strings.ToLower(points[1].Text)
		if kind := kindLetter(low); !known && kind != "" && c.isPlace(kind, second) {
			return kind + " " + points[1].Text + " " + value
		}
		if legs := " l1 l2 l3 l n "; known || strings.Contains(pins, " "+second+" ") || !strings.Contains(legs, " "+low+" ") || !strings.Contains(legs, " "+second+" ") {
			return ""
		}
		return "volt " + first + " " + points[1].Text + " " + value
	}
	// The probe on A stays there: A 1.4 behind A B is no other pair.
	if known && (low != "a" || last == nil || last.b == "" || last.b == caseName || !strings.EqualFold(last.a, first)) {
		return ""
	}
	if kind := kindLetter(low); kind != "" && last != nil && last.quality.word == "ohm" && last.b == "" && partOf(last.a) != nil {
		return kind + " " + last.a + " " + value // of what was read last
	}
	for _, r := range rathers {
		if !strings.Contains(r.words, " "+low+" ") {
			continue
		}
		if low == "a" && !known && last != nil && last.b != "" {
			return ""
		}
		if r.line == "" {
			for _, p := range strings.Fields(r.beside) {
				if strings.Contains(pins, " "+p+" ") {
					return ""
				}
			}
			continue
		}
		return fmt.Sprintf(r.line+"%.0[2]s", value, first)
	}
	if plateKeyOf(low) != nil && partOf(low) == nil {
		return "plate " + low + " " + value
	}
	return ""
}

// glued reports whether a word of two letters is rather another kind of reading
// than two pins that no blank parts: HP, but not AC beside a pin A.
func (c *Call) glued(last *reading, w script.Word) bool {
	if len(w.Text) != 2 || c.rather(last, []script.Word{w}, "") == "" {
		return false
	}
	pins := strings.ToUpper(strings.Join(c.pins(), " ") + " ")
	return !strings.Contains(pins, strings.ToUpper(w.Text[:1])+" ") && !strings.Contains(pins, strings.ToUpper(w.Text[1:])+" ")
}

// mains reports whether AC before volts as the mains have them is those rather than
// a pair of pins, the second of which was not read yet.
func (c *Call) mains(l *script.Line) bool {
	if len(l.Words) != 2 || !strings.EqualFold(l.Words[0].Text, "ac") || slices.ContainsFunc(c.pins(), func(p string) bool { return strings.EqualFold(p, "c") }) {
		return false
	}
	v, err := strconv.ParseFloat(l.Words[1].Text, 64)
	return err == nil && v >= leastMains
}

// leastMains is about the lowest mains that a meter shows, in volts (common practice).
const leastMains = 90
