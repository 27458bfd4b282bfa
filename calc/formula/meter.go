package formula

import (
	"fmt"
	"math"
)

var meters = []Formula{
	{
		Name: "meter_limit", Topic: "meter", Unit: AnyUnit,
		Params: []Param{
			{Name: "reading", Unit: AnyUnit, Help: "as shown"},
			{Name: "percent", Unit: "%", Help: "of reading, from the meter's sheet, with its sign: 1%", In: Range{Lo: 0, Hi: 20}},
			{Name: "counts", Help: "of the last digit, from the meter's sheet", In: notNegative},
			{Name: "digit", Unit: AnyUnit, Help: "worth of the last digit shown", In: notNegative},
		},
		Help:     "how far off a meter within its specification may be",
		Equation: "limit = percent/100 · |reading| + counts · digit",
		Valid:    "a meter in calibration, within its stated conditions; refuses more than 20 % and negative percent, counts and digit", Source: "common form of makers' accuracy statements, ±(% of reading + counts)",
		Example: Example{Call: "meter_limit(120V, 1%, 3, 0.1V)", Args: []any{120.0, 1.0, 3.0, 0.1}, Want: 1.5, Tol: 1e-9,
			Text: "120.0 V on a meter of ±(1 % + 3) is good to 1.5 V"},
		Say: func(a Args, _ float64) string {
			return fmt.Sprintf("%.4g %% of the reading and %.4g counts", a.Num[1], a.Num[2])
		},
		Fn: func(a Args) (float64, error) { return a.Num[1]/100*math.Abs(a.Num[0]) + a.Num[2]*a.Num[3], nil },
	},
}
