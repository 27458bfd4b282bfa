package said

import (
	"strconv"
	"strings"
)

// markedAs finds a capacitor's marking in words: 45uF, 45/5 µF, 88-108 mfd.
var markedAs = pattern{expr: `(\d+(?:\.\d+)?)(?:\s*([-–/+])\s*(\d+(?:\.\d+)?))?\s*(?:[uµμ]f|mfd)\b`}

// ratedAt finds its volts: 370V, 370/440 VAC.
var ratedAt = pattern{expr: `\b(?:\d+\s*/\s*)?(\d+)\s*v(?:ac)?\b`}

// RatedVolts reads a word that is a rated voltage: 370V, 370/440VAC of which the
// last counts.
func RatedVolts(word string) (volts float64, ok bool) {
	word = strings.ToLower(word)
	m := ratedAt.get().FindStringSubmatch(word)
	if m == nil || m[0] != word {
		return 0, false
	}
	volts, _ = strconv.ParseFloat(m[1], 64)
	return volts, true
}

// Capacitor is a capacitor that a line says was fitted, with one marking.
type Capacitor struct {
	Words []string  // of the line, in lower case
	UF    []float64 // µF, of each section; of a marked range its middle
	Volts float64   // 0 when the line gives none
}

// FittedCapacitor reads the marking of the capacitor that words say was fitted.
// Words with no marking or with several, as of the old one beside the new, tell
// none, nor do words of what was read.
func FittedCapacitor(text string) (Capacitor, bool) {
	var f Capacitor
	text = strings.ToLower(text)
	if !strings.Contains(text, "cap") || Has(text, []string{"read", "measur"}) {
		return f, false
	}
	found := markedAs.get().FindAllStringSubmatch(text, 2)
	if len(found) != 1 {
		return f, false
	}
	m := found[0]
	for i, s := range []string{m[1], m[3]} {
		switch x, err := strconv.ParseFloat(s, 64); {
		case err != nil:
		case i == 0 || m[2] == "/" || m[2] == "+":
			f.UF = append(f.UF, x)
		default:
			f.UF[0] = (f.UF[0] + x) / 2
		}
	}
	if v := ratedAt.get().FindAllStringSubmatch(text, 2); len(v) == 1 {
		f.Volts, _ = strconv.ParseFloat(v[0][1], 64)
	}
	f.Words = strings.FieldsFunc(text, func(r rune) bool { return r == ' ' || r == '-' || r == ',' })
	return f, true
}
