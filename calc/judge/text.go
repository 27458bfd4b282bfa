package judge

import (
	"math"
	"strconv"
	"strings"
)

// num writes x with four significant figures and no exponent, so that a
// limit reads the same on every machine.
func num(x float64) string {
	if x == 0 || math.IsInf(x, 0) || math.IsNaN(x) {
		return strconv.FormatFloat(x, 'f', -1, 64)
	}
	digits := 3 - int(math.Floor(math.Log10(math.Abs(x))))
	s := strconv.FormatFloat(x, 'f', min(max(digits, 0), 9), 64)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	if s == "-0" {
		return "0"
	}
	return s
}

// quantity writes x with its unit; ohms take the prefix that the trade reads.
func quantity(x float64, unit string) string {
	if unit == "Ω" {
		switch a := math.Abs(x); {
		case a >= 999_950:
			return num(x/1e6) + " MΩ"
		case a >= 999.95:
			return num(x/1e3) + " kΩ"
		}
	}
	if unit == "%" {
		return num(x) + " %"
	}
	return num(x) + " " + unit
}

//go:noinline
func ohms(x float64) string { return quantity(x, "Ω") }

// text writes the limit with its unit.
func (w window) text(unit string) string {
	noLo, noHi := math.IsInf(w.lo, -1), math.IsInf(w.hi, 1)
	switch {
	case noLo && noHi:
		return ""
	case noLo:
		return "at most " + quantity(w.hi, unit)
	case noHi:
		return "at least " + quantity(w.lo, unit)
	}
	lo, hi := quantity(w.lo, unit), quantity(w.hi, unit)
	if n, u, _ := strings.Cut(lo, " "); strings.HasSuffix(hi, " "+u) {
		lo = n
	}
	return lo + " to " + hi
}
