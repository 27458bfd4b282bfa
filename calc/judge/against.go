package judge

import (
	"fmt"
	"math"

	"ohmcall/calc/measure"
)

// apartFactor is how far a row of a sensor's table may lie from what R25 and
// beta give: beta misses a real curve by some percent in an appliance's range.
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
		if c := (p.Celsius - 32) / 1.8; !apart(p.Ohms, BetaOhms(r25, beta, c)) {
			text += "; is the row meant as " + num(p.Celsius) + " °F?"
		}
		out = append(out, text)
	}
	return out
}

func apart(a, b float64) bool { return math.Abs(math.Log(a/b)) > math.Log(apartFactor) }

// likelyPlatinum is the R0 of the usual platinum sensors that a reading comes
// within 5 % of, 0 when it is near none.
func likelyPlatinum(v, celsius measure.Value) float64 {
	if v.Over || celsius.Over || celsius.X < ptCold || celsius.X > ptWarm {
		return 0
	}
	for _, r0 := range []float64{100, 500, 1000} {
		if math.Abs(v.X/platinumOhms(r0, celsius.X)-1) < 0.05 {
			return r0
		}
	}
	return 0
}
