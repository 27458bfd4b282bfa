package quantity

import (
	"math"
	"strconv"
	"strings"
)

// coverage is the factor k of the expanded uncertainty that is printed and
// compared by: about 95 of 100 (JCGM 100:2008, 6.3.1 and G.1.3, from memory).
const coverage = 2

// String prints q as people write it: the digits that were typed when it is
// a literal, else no more digits than it can support, in a prefix that suits
// its size. With uncertainty it is `34.8 ± 0.4 A (k=2)`.
func (q Q) String() string {
	u := q.shownIn()
	v, doubt := q.value(u), coverage*q.U()/u.factor
	unit := ""
	if u.symbol != "" {
		unit = " " + u.symbol
	}
	if doubt == 0 {
		return q.digits(v, u) + unit
	}
	d := decimals(doubt)
	return number(v, d) + " ± " + number(doubt, d) + unit + " (k=" + strconv.Itoa(coverage) + ")"
}

// Shown is q in the unit that String would print: the number to twelve
// digits, the UCUM code and the standard uncertainty, 0 when exact.
func (q Q) Shown() (value float64, ucum string, u float64) {
	unit := q.shownIn()
	return tidy(q.value(unit), unit), unit.ucum, q.U() / unit.factor
}

// UCUM is the code of the unit that String would print.
func (q Q) UCUM() string { return q.shownIn().ucum }

// Symbol is the unit that String would print; empty for a plain number.
func (q Q) Symbol() string { return q.shownIn().symbol }

// shownIn is the unit to print q in: its own while that leaves a number from
// 0.1 to 1000, else the one of its units().family that leaves one to three digits
// before the point.
func (q Q) shownIn() *Unit {
	u := q.Unit()
	if q.fixed || u.decl == nil || len(u.decl.auto) == 0 {
		return u
	}
	size := math.Max(math.Abs(q.v), coverage*q.U())
	// Rounding may carry 999.6 to 1000, so the limit is where it would.
	if n := size / u.factor; n == 0 || n >= 0.1 && n < 999.5 {
		return u
	}
	list := units().family[u.decl]
	best := list[0]
	for _, c := range list[1:] {
		if size*(1+4e-4) >= c.factor {
			best = c
		}
	}
	return best
}

// decimals is how many decimals an expanded uncertainty supports: one
// significant digit, or two when the first is 1 or 2 (JCGM 100:2008, 7.2.6
// allows at most two; from memory).
func decimals(doubt float64) int {
	e := int(math.Floor(math.Log10(doubt)))
	if d := doubt / math.Pow10(e); d < 2.95 {
		e--
	}
	return -e
}

// digits prints an exact value in u.
func (q Q) digits(v float64, u *Unit) string {
	if q.res > 0 {
		// A literal has as many decimals as were typed; a sum of literals as
		// many as the finest of them.
		d := int(math.Ceil(-math.Log10(q.res/u.factor) - 1e-9))
		if q.fixed || d <= 6 && math.Abs(v) < 1e9 {
			return number(v, max(0, min(d, 12)))
		}
	}
	sig := 3
	switch lead := leading(v); {
	case u.dim == (Dim{}) && u.factor == 1:
		sig = exactDigits(v)
	case lead < 2:
		sig = 4
	}
	d := sig - 1 - exponent(v)
	if u.dim == dimTemp {
		d = 1
	}
	text := number(v, d)
	if strings.Contains(text, ".") && !strings.Contains(text, "e") {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	if text == "-0" {
		text = "0"
	}
	return text
}

// mostExact is up to how many digits a plain number is taken to end in them:
// beyond, what is there is rounding or goes on for ever, as a third does.
const mostExact = 12

// exactDigits is how many digits a plain number without doubt is shown with: all
// that it has, of one that does not end six.
func exactDigits(v float64) int {
	mant, _, _ := strings.Cut(strconv.FormatFloat(v, 'e', 14, 64), "e")
	n := len(strings.Trim(strings.ReplaceAll(strings.TrimRight(mant, "0"), ".", ""), "-"))
	if n > mostExact && (v != math.Trunc(v) || math.Abs(v) >= 1e15) {
		return 6
	}
	return max(n, 6)
}

func exponent(v float64) int {
	if v == 0 {
		return 0
	}
	return int(math.Floor(math.Log10(math.Abs(v))))
}

func leading(v float64) float64 { return math.Abs(v) / math.Pow10(exponent(v)) }

// number prints v rounded to d decimals, which may be negative, without a
// minus before nothing. Sizes that would need a row of zeros take an
// exponent.
func number(v float64, d int) string {
	if e := exponent(v); v != 0 && (e >= 9 || e < -6) {
		s := strconv.FormatFloat(v, 'e', max(0, min(e+d, 15)), 64)
		mant, exp, _ := strings.Cut(s, "e")
		if strings.Contains(mant, ".") {
			mant = strings.TrimRight(strings.TrimRight(mant, "0"), ".")
		}
		n, _ := strconv.Atoi(exp)
		return mant + "e" + strconv.Itoa(n)
	}
	if d < 0 {
		p := math.Pow10(-d)
		v, d = math.Round(v/p)*p, 0
	}
	s := strconv.FormatFloat(v, 'f', min(d, 15), 64)
	if strings.Trim(s, "-0.") == "" {
		s = strings.TrimPrefix(s, "-")
	}
	return s
}
