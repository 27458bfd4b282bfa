package formula

// Unbalance is the largest deviation of three from their average, in percent of
// it, 0 of none (NEMA MG 1, definition of voltage unbalance).
func Unbalance(a, b, c float64) float64 {
	mean := a/3 + b/3 + c/3
	if mean == 0 {
		return 0
	}
	return 100 * max(max(a, b, c)-mean, mean-min(a, b, c)) / mean
}

func pairParam(name string) Param {
	return Param{Name: name, Unit: AnyUnit, Help: "line to line, or the amps of a leg", In: positive}
}

var threePhase = []Formula{
	{
		Name: "unbalance", Topic: "three-phase", Unit: "%",
		Params:   []Param{pairParam("ab"), pairParam("bc"), pairParam("ca")},
		Help:     "unbalance of three-phase volts, or amps",
		Equation: "largest deviation from the average / average",
		Valid:    "line-to-line volts, or the amps of the legs; refuses zero and below", Source: "NEMA MG 1, definition of voltage unbalance",
		Example: Example{Call: "unbalance(462V, 463V, 455V)", Args: []any{462.0, 463.0, 455.0}, Want: 1.087, Tol: 0.001,
			Text: "462, 463 and 455 V are 1.1 % out of balance"},
		Fn: func(a Args) (float64, error) {
			return Unbalance(a.Num[0], a.Num[1], a.Num[2]), nil
		},
		Say: func(Args, float64) string {
			return "NEMA MG 1 recommends no more than 1 % of the volts at a motor's terminals"
		},
	},
}
