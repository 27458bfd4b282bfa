package formula

import "math"

// Coefficients of R/R0 = 1 + A t + B t² + C (t − 100) t³, C only below 0 °C
// (IEC 60751).
const (
	ptA = 3.9083e-3
	ptB = -5.775e-7
	ptC = -4.183e-12
)

// PlatinumOhms is the resistance of a platinum sensor of r0 ohm at 0 °C at t °C,
// -200 to 850 °C (IEC 60751).
func PlatinumOhms(r0, t float64) float64 {
	ratio, _ := ptRatio(t)
	return r0 * ratio
}

// PlatinumRange is where the curve holds, in °C (IEC 60751).
var PlatinumRange = Range{Lo: -200, Hi: 850}

// ptRatio is R/R0 at t °C, and its slope per kelvin.
func ptRatio(t float64) (ratio, slope float64) {
	ratio, slope = 1+t*(ptA+t*ptB), ptA+2*ptB*t
	if t < 0 {
		ratio += ptC * (t - 100) * t * t * t
		slope += ptC * t * t * (4*t - 300)
	}
	return ratio, slope
}

// ptTemp inverts ptRatio: above 0 °C by the quadratic's root, below it by
// Newton's method from that root.
func ptTemp(ratio float64) float64 {
	t := (-ptA + math.Sqrt(ptA*ptA-4*ptB*(1-ratio))) / (2 * ptB)
	if t >= 0 {
		return t
	}
	for range 20 {
		r, slope := ptRatio(t)
		step := (ratio - r) / slope
		t += step
		if math.Abs(step) < 1e-11 {
			break
		}
	}
	return t
}

const (
	ptTopic    = "platinum sensors"
	ptEquation = "R = R0 (1 + A t + B t² [+ C (t − 100) t³ below 0]), A 3.9083e-3, B −5.775e-7, C −4.183e-12"
	ptSource   = "IEC 60751:2008/2022, ASTM E1137; older tables (DIN 43760) differ by up to 0.02 ohm at 300 degC"
)

// platinumPair makes the two formulas of a sensor of r0 ohm at 0 °C.
func platinumPair(name string, r0, at100 float64, typed string) []Formula {
	low, _ := ptRatio(PlatinumRange.Lo)
	high, _ := ptRatio(PlatinumRange.Hi)
	const valid = "industrial platinum sensors of 3.851e-3 per kelvin; refuses temperatures outside -200 to 850 degC"
	return []Formula{
		{
			Name: name + "_ohms", Topic: ptTopic, Unit: "ohm",
			Params: []Param{{Name: "temp", Unit: "degC", Help: "of the sensor", In: PlatinumRange}},
			Help:   "resistance of a platinum sensor at a temperature", Equation: ptEquation, Valid: valid, Source: ptSource,
			Example: Example{Call: name + "_ohms(100C)", Args: []any{100.0}, Want: at100, Tol: at100 * 1e-6, Text: "at 100 degC it reads " + typed},
			Fn:      func(a Args) (float64, error) { return PlatinumOhms(r0, a.Num[0]), nil },
		},
		{
			Name: name + "_temp", Topic: ptTopic, Unit: "degC",
			Params: []Param{{Name: "ohms", Unit: "ohm", Help: "as read, lead resistance taken off",
				In: Range{Lo: math.Floor(low*r0*100) / 100, Hi: math.Ceil(high*r0*100) / 100}}},
			Help: "temperature of a platinum sensor from its resistance", Equation: ptEquation, Valid: valid, Source: ptSource,
			Example: Example{Call: name + "_temp(" + typed + ")", Args: []any{at100}, Want: 100, Tol: 0.001, Text: typed + " is 100 degC"},
			Fn:      func(a Args) (float64, error) { return ptTemp(a.Num[0] / r0), nil },
		},
	}
}

var platinum = joined(platinumPair("pt100", 100, 138.5055, "138.5055ohm"), platinumPair("pt1000", 1000, 1385.055, "1385.055ohm"))
