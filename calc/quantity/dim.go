// Package quantity is a value with its unit and its doubt.
//
// A Q holds a number in SI, the unit in which people write it, and its
// standard uncertainty split by independent source, so that a reading used
// twice in a sum stays correlated with itself. Temperatures and pressures
// know whether they are points or differences, gauge or absolute.
//
// It does not judge readings (see package measure) and it does not know
// meter ranges, `OL` or `~`: whoever reads a line takes those off first.
package quantity

import "strings"

// Dim is the dimension of a quantity: exponents of metre, kilogram, second,
// ampere and kelvin.
type Dim [5]int8

var baseSymbols = [len(Dim{})]string{"m", "kg", "s", "A", "K"}

func (d Dim) plus(e Dim, sign int8) Dim {
	for i := range d {
		d[i] += sign * e[i]
	}
	return d
}

func (d Dim) bounded() bool {
	for _, e := range d {
		if e < -50 || e > 50 {
			return false
		}
	}
	return true
}

// Kind parts quantities of one dimension that must not be mixed up.
type Kind uint8

// The kinds. Plain is everything without a zero of its own choosing, and the
// difference between two points.
const (
	Plain    Kind = iota
	Point         // a temperature on a thermometer
	Gauge         // a pressure above the air around the gauge
	Absolute      // a pressure above vacuum
)

// Atmosphere is the standard atmosphere in pascals, by which gauge and
// absolute pressure are converted. Source: NIST SP 811 (from memory).
const Atmosphere = 101325

var superscripts = strings.NewReplacer("-", "⁻", "0", "⁰", "1", "¹", "2", "²", "3", "³",
	"4", "⁴", "5", "⁵", "6", "⁶", "7", "⁷", "8", "⁸", "9", "⁹")
