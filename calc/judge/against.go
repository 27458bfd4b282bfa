package judge

import (
	"fmt"
	"math"

	"ohmcall/calc/formula"
	"ohmcall/calc/measure"
)

// apartFactor is how far a row of a sensor's table may lie from what R25 and
// beta give: beta misses a real curve by some percent in an appliance's range
// (common practice).
const apartFactor = 1.5

// Against names the rows of a sensor's table that R25 and beta contradict, with
// the likeliest slip; nil when there is nothing to compare.
func Against(t Table, r25, beta float64) []string {
	if r25 <= 0 || beta <= 0 {
		return nil
	}
	var out []string
	for _, p := range t.points {
		due := BetaOhms(r25, beta, p.Celsius)
		if !apart(p.Ohms, due) {
			continue
		}
		text := fmt.Sprintf("the table has %s at %s °C, where R25 and beta give %s: one of them is wrong", ohms(p.Ohms), num(p.Celsius), ohms(due))
		if !apart(p.Ohms, BetaOhms(r25, beta, celsiusOf(p.Celsius))) {
			text += "; is the row meant as " + num(p.Celsius) + " °F?"
		}
		out = append(out, text)
	}
	return out
}

// fahrenheitZero and fahrenheitStep make °C of °F (NIST SP 811, from memory).
const fahrenheitZero, fahrenheitStep = 32, 1.8

func celsiusOf(fahrenheit float64) float64 { return (fahrenheit - fahrenheitZero) / fahrenheitStep }

// platinumSizes are the usual ohms at 0 °C (common practice).
var platinumSizes = []float64{100, 500, 1000}

// platinumNear is the share within which a reading looks like one of them
// (common practice).
const platinumNear = 0.05

func apart(a, b float64) bool { return math.Abs(math.Log(a/b)) > math.Log(apartFactor) }

// likelyPlatinum is the R0 of the usual platinum sensors that a reading comes
// within 5 % of, 0 when it is near none.
func likelyPlatinum(v, celsius measure.Value) float64 {
	if v.Over || celsius.Over || celsius.X < formula.PlatinumRange.Lo || celsius.X > formula.PlatinumRange.Hi {
		return 0
	}
	for _, r0 := range platinumSizes {
		if math.Abs(v.X/formula.PlatinumOhms(r0, celsius.X)-1) < platinumNear {
			return r0
		}
	}
	return 0
}
