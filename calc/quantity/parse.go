package quantity

import (
	"math"
	"strconv"
	"strings"
	"unicode"

	"ohmcall/calc/source"
)

// maxLiteral is the length in runes beyond which no text is a value.
const maxLiteral = 64

// Parse reads one value as typed by hand: `3.4`, `3.4k`, `118.2V`, `-2F`,
// `1/6 hp`, and the letter-for-point code of IEC 60062 (`3R4`, `4k7`, `R47`,
// `4n7`). A value without a unit takes the one named by unit; empty means a
// plain number. A value with a unit must be of the kind that unit names.
// `OL`, `~` and parentheses are not values. The error is a *source.Error
// with columns in text.
func Parse(text, unit string) (Q, error) {
	var def *Unit
	if unit != "" {
		u, err := ParseUnit(unit)
		if err != nil {
			return Q{}, err
		}
		def = u
	}
	runes := []rune(text)
	if len(runes) > maxLiteral {
		return Q{}, source.Errorf(1, len(runes)+1, "this is too long for a value")
	}
	s := scanner{text: runes, def: def}
	s.blanks()
	start := s.at
	if s.at == len(runes) {
		return Q{}, source.Errorf(1, len(runes)+1, "a value is missing").WithHint("such as %s", example(def))
	}
	negative := false
	switch s.peek() {
	case '-', '−':
		negative = true
		s.at++
	case '+':
		s.at++
	}
	q, err := s.literal(true)
	if err != nil {
		return Q{}, err
	}
	end := s.at
	s.blanks()
	if s.at < len(runes) {
		return Q{}, source.Errorf(s.at+1, len(runes)+1, "%q after the value is not understood", source.Short(string(runes[s.at:])))
	}
	if negative {
		u := q.Unit()
		q.v = u.offset + -(q.v - u.offset)
	}
	if def != nil && def.dim != (Dim{}) {
		if q.Unit().dim != def.dim || q.Unit().kind != def.kind && (q.Unit().kind == Plain || def.kind == Plain) {
			return Q{}, source.Errorf(start+1, end+1, "%s is not %s", strings.TrimSpace(string(runes[start:end])), wanted(def)).
				WithHint("such as %s", example(def))
		}
	}
	return q, nil
}

// Scan reads the literal at the start of text and says how many runes it
// takes; n is 0 when text does not start with a number. There is no sign. A
// unit may follow after one blank. The error is a *source.Error with columns
// in text.
func Scan(text []rune) (q Q, n int, err error) {
	if len(text) == 0 || !digit(text[0]) && (text[0] != '.' || len(text) < 2 || !digit(text[1])) {
		return Q{}, 0, nil
	}
	s := scanner{text: text}
	q, err = s.literal(false)
	return q, s.at, err
}

func wanted(u *Unit) string {
	w := u.Quantity()
	if w == "" {
		return "in " + u.symbol
	}
	if strings.ContainsRune("aeiou", rune(w[0])) {
		return "an " + w
	}
	return "a " + w
}

func example(u *Unit) string {
	if u == nil {
		return "3.4"
	}
	return strings.TrimSpace("3.4 " + u.symbol)
}

type scanner struct {
	text []rune
	at   int
	def  *Unit // what a value without a unit is in; nil for none
}

func digit(r rune) bool { return r >= '0' && r <= '9' }

// unitRune reports whether r may stand in a unit's symbol.
func unitRune(r rune) bool { return unicode.IsLetter(r) || r == '°' || r == '%' }

func (s *scanner) peek() rune {
	if s.at < len(s.text) {
		return s.text[s.at]
	}
	return 0
}

func (s *scanner) blanks() {
	for s.at < len(s.text) && (s.text[s.at] == ' ' || s.text[s.at] == '\t') {
		s.at++
	}
}

func (s *scanner) while(ok func(rune) bool) string {
	start := s.at
	for s.at < len(s.text) && ok(s.text[s.at]) {
		s.at++
	}
	return string(s.text[start:s.at])
}

// fail is a fault from rune start up to where the scanner is.
func (s *scanner) fail(start int, format string, args ...any) *source.Error {
	return source.Errorf(start+1, max(s.at, start+1)+1, format, args...)
}

// numeral is a number as typed, with what its last digit is worth.
type numeral struct {
	text  string
	v     float64
	res   float64
	whole bool // digits only
}

func (n *numeral) set(text string, decimals int) (err error) {
	n.text = text
	n.res = math.Pow10(-decimals)
	n.v, err = strconv.ParseFloat(text, 64)
	return err
}

// literal reads a number and its unit. lead lets the letter code start with
// its letter (`R47`), and a fraction stand without a unit.
func (s *scanner) literal(lead bool) (Q, error) {
	start := s.at
	if lead && s.at+1 < len(s.text) && digit(s.text[s.at+1]) && unicode.IsLetter(s.peek()) {
		return s.letterCode(start, "0")
	}
	n, err := s.numeral()
	if err != nil {
		return Q{}, err
	}
	if n.whole && s.at+1 < len(s.text) && digit(s.text[s.at+1]) && unicode.IsLetter(s.peek()) {
		return s.letterCode(start, n.text)
	}
	if n.whole && s.peek() == '/' {
		if q, ok, err := s.fraction(n, lead); ok || err != nil {
			return q, err
		}
	}
	return s.suffixed(start, n)
}

func (s *scanner) numeral() (numeral, error) {
	start := s.at
	whole := s.while(digit)
	n := numeral{whole: true}
	decimals := 0
	if s.peek() == '.' {
		n.whole = false
		s.at++
		frac := s.while(digit)
		decimals = len(frac)
		if whole == "" && frac == "" {
			return n, s.fail(start, "a number is missing here")
		}
	} else if whole == "" {
		s.while(func(r rune) bool { return r != ' ' })
		return n, s.fail(start, "%q is not a number", source.Short(string(s.text[start:s.at]))).WithHint("such as %s", example(s.def))
	}
	if r := s.peek(); r == 'e' || r == 'E' {
		i := s.at + 1
		if i < len(s.text) && (s.text[i] == '+' || s.text[i] == '-') {
			i++
		}
		if i < len(s.text) && digit(s.text[i]) {
			from := s.at + 1
			s.at = i
			s.while(digit)
			e, err := strconv.Atoi(string(s.text[from:s.at]))
			if err != nil || e < -300 || e > 300 {
				return n, s.fail(start, "this number is out of range")
			}
			n.whole = false
			decimals -= e
		}
	}
	if err := n.set(string(s.text[start:s.at]), decimals); err != nil || s.at-start > maxLiteral {
		return n, s.fail(start, "this number is out of range")
	}
	return n, nil
}

// suffixed reads the unit or multiple after n, and makes the quantity.
func (s *scanner) suffixed(start int, n numeral) (Q, error) {
	u, mult, err := s.suffix(start)
	if err != nil {
		return Q{}, err
	}
	return s.quantity(start, n, u, mult)
}

func (s *scanner) quantity(start int, n numeral, u *Unit, mult float64) (Q, error) {
	q := Q{unit: u, res: n.res * mult * u.factor, fixed: true}
	if mult != 1 && u.dim != (Dim{}) {
		q.fixed = false // `3.4k` for ohms is printed as 3.4 kΩ
		for _, f := range units().family[u.decl] {
			if ratio := f.factor / (u.factor * mult); math.Abs(ratio-1) < 1e-9 {
				q.unit, q.fixed = f, true
			}
		}
	}
	q, err := q.finite(n.v*mult*u.factor + u.offset)
	if err != nil {
		return Q{}, s.fail(start, "this number is out of range")
	}
	return q, nil
}

// bare is the unit of a value written without one.
func (s *scanner) bare() *Unit {
	if s.def != nil {
		return s.def
	}
	return plain
}
