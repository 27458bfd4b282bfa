package quantity

import (
	"math"
	"strings"
	"unicode"

	"ohmcall/calc/source"
)

// reserved words of a sum are never read as the unit after a blank.
var reserved = map[string]bool{"in": true, "to": true, "and": true, "or": true, "not": true}

// suffix reads what follows a number: a unit, a bare multiple, or nothing.
func (s *scanner) suffix(start int) (*Unit, float64, error) {
	at := s.at
	word := s.while(unitRune)
	if word == "" {
		return s.spaced(at)
	}
	if r := s.peek(); digit(r) || r == '_' {
		s.while(func(r rune) bool { return unitRune(r) || digit(r) || r == '_' })
		return nil, 0, s.fail(start, "%q is not a value", source.Short(string(s.text[start:s.at]))).
			WithHint("a number and its unit, such as 4.7kohm or 4k7")
	}
	if m, ok := s.multiple(word); ok {
		return s.bare(), m, nil
	}
	if u, ok := unitNamed(word); ok {
		return u, 1, nil
	}
	return nil, 0, s.noUnit(at, word)
}

// spaced reads a unit after one blank, and leaves the blank where it is when
// none follows.
func (s *scanner) spaced(at int) (*Unit, float64, error) {
	if s.peek() == ' ' {
		s.at++
		word := s.while(unitRune)
		next := s.peek()
		if u, ok := unitNamed(word); ok && word != "" && (!reserved[word] || s.inches(word)) && !digit(next) && next != '_' && next != '(' {
			return u, 1, nil
		}
	}
	s.at = at
	return s.bare(), 1, nil
}

// inches reports whether the in that was read is the unit of a value that is
// then converted, as in 3/8 in in mm.
func (s *scanner) inches(word string) bool {
	rest := s.text[s.at:]
	return word == "in" && len(rest) > 4 && string(rest[:4]) == " in " && unicode.IsLetter(rest[4])
}

// multiple reads a suffix that only multiplies: `3.4k`. Where a unit is
// asked for that takes the prefix, m and K multiply it too; elsewhere they
// are metres and kelvins.
func (s *scanner) multiple(word string) (float64, bool) {
	letter := word
	if word == "K" {
		letter = "k"
	}
	for _, p := range prefixes {
		for _, l := range p.letters {
			if l != letter {
				continue
			}
			if s.def != nil && s.def.dim != (Dim{}) {
				base := s.def.decl
				if base == nil || !strings.Contains(base.prefixes, p.ucum) {
					return 0, false
				}
				// The prefix stands for the one that the unit asked for has.
				return math.Pow10(int(p.exp - s.def.exp)), true
			}
			return math.Pow10(int(p.exp)), word != "m" && word != "K"
		}
	}
	return 0, false
}

func (s *scanner) noUnit(at int, word string) *source.Error {
	e := unknownUnit(word, at+1)
	low := strings.ToLower(word)
	switch {
	case low == "awg":
		return source.Errorf(at+1, s.at+1, "a wire's gauge is a number alone").WithHint("write it without AWG")
	case low == "farad" || low == "farads" || low == "mf":
		return source.Errorf(at+1, s.at+1, "a capacitance needs a prefix").
			WithHint("write uF, nF, pF or mfd")
	case len(word) > 1 && byFoldAmbiguous(low):
		return e.WithHint("capital M is mega, small m is milli: %s", strings.Join(foldedLike(low), " or "))
	}
	return e
}

// byFoldAmbiguous reports whether two units differ only in case from word.
func byFoldAmbiguous(word string) bool {
	u, seen := units().byFold[word]
	return seen && u == nil
}

func foldedLike(word string) []string {
	var list []string
	for _, s := range units().spellings {
		if strings.ToLower(s) == word {
			list = append(list, s)
		}
	}
	return list
}

// letterCode reads the letter-for-point code of IEC 60062: R, k or K, M, G
// and L (milli) stand for a resistance, p, n, u or µ for a capacitance.
func (s *scanner) letterCode(start int, whole string) (Q, error) {
	letter := s.peek()
	s.at++
	frac := s.while(digit)
	all := func() string { return source.Short(string(s.text[start:s.at])) }
	var unit string
	mult := 1.0
	switch letter {
	case 'R', 'r':
		unit = "Ω"
	case 'k', 'K':
		unit, mult = "Ω", 1e3
	case 'M':
		unit, mult = "Ω", 1e6
	case 'G':
		unit, mult = "Ω", 1e9
	case 'L':
		unit, mult = "Ω", 1e-3
	case 'p':
		unit, mult = "pF", 1
	case 'n':
		unit, mult = "nF", 1
	case 'u', 'µ', 'μ':
		unit, mult = "µF", 1
	default:
		s.while(func(r rune) bool { return unitRune(r) || digit(r) })
		return Q{}, s.fail(start, "%q is not a value", all()).
			WithHint("letters for the point are R k M G for ohms, p n u for farads, such as 4k7")
	}
	var n numeral
	if err := n.set(whole+"."+frac, len(frac)); err != nil {
		return Q{}, s.fail(start, "this number is out of range")
	}
	u := units().bySpelling[unit]
	at := s.at
	if word := s.while(unitRune); word != "" {
		if v, ok := unitNamed(word); s.peek() == '_' || digit(s.peek()) || !ok && word != "F" && word != "f" || ok && v.dim != u.dim && v.kind != Point {
			return Q{}, s.fail(at, "%q after %s is not understood", source.Short(word), source.Short(string(s.text[start:at])))
		}
	}
	return s.quantity(start, n, u, mult)
}

// fraction reads the rest of `1/6 hp` after the 1. It is one literal only in
// units that the trade writes so, or where bare says that the text is nothing
// but a value; else the slash divides and ok is false.
func (s *scanner) fraction(n numeral, bare bool) (q Q, ok bool, err error) {
	at := s.at
	s.at++
	den := s.while(digit)
	if den == "" || len(den) > 6 {
		s.at = at
		return Q{}, false, nil
	}
	unitAt := s.at
	s.blanks()
	blanks := s.at
	word := s.while(unitRune)
	u, known := unitNamed(word)
	switch {
	case word != "" && known && u.decl.fraction && (blanks == unitAt || !reserved[word] || s.inches(word)) && !digit(s.peek()) && s.peek() != '_' && s.peek() != '(':
	case bare && (word == "" || known):
		if word == "" {
			u = s.bare()
		}
	default:
		s.at = at
		return Q{}, false, nil
	}
	var d numeral
	if err := d.set(den, 0); err != nil || d.v == 0 {
		return Q{}, false, source.Errorf(at+2, unitAt+1, "division by zero")
	}
	q, err = s.quantity(at, numeral{v: n.v / d.v}, u, 1)
	return q, true, err
}
