package winding

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"ohmcall/calc/measure"
)

// val makes a reading of a 1 % + 3 counts meter from what it shows.
func val(s string) measure.Value {
	if s == "OL" {
		return measure.Open(0)
	}
	digits := strings.TrimPrefix(s, "~")
	x, err := strconv.ParseFloat(digits, 64)
	if err != nil {
		panic(err)
	}
	decimals := 0
	if i := strings.IndexByte(digits, '.'); i >= 0 {
		decimals = len(digits) - i - 1
	}
	rough := digits != s
	v := measure.Within(x, measure.Default.Limit(x, math.Pow(10, -float64(decimals)), rough))
	v.Rough = rough
	return v
}

// pairs makes readings from triples: pin, pin, what the meter shows.
func pairs(s ...string) []Reading {
	var out []Reading
	for i := 0; i < len(s); i += 3 {
		out = append(out, Reading{s[i], s[i+1], val(s[i+2])})
	}
	return out
}

func near(a, b float64) bool { return math.Abs(a-b) < 1e-9*(1+math.Abs(b)) }

func sortReadings(rs []Reading) {
	slices.SortFunc(rs, func(a, b Reading) int { return strings.Compare(a.A+" "+a.B, b.A+" "+b.B) })
}
