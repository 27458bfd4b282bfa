package formula

import (
	"errors"
	"math"
)

func pointParam(name, help string) Param {
	return Param{Name: name, Unit: "degC", Help: help, In: Range{Lo: -zeroC, Hi: 2000}}
}

var (
	startTemp = pointParam("start", "temperature at the start")
	finalTemp = pointParam("final", "temperature it would settle at")
	tau       = Param{Name: "tau", Unit: "min", Help: "time constant", In: positive}
)

// approach is ln((T0 − Tf)/(T − Tf)): the time constants it takes from T0 to
// T on the way to Tf.
func approach(start, t, final float64) (float64, error) {
	if (start-final)*(t-final) <= 0 {
		return 0, errors.New("this temperature is at or beyond the final one: it is never reached")
	}
	l := math.Log((start - final) / (t - final))
	if l < 0 {
		return 0, errors.New("this temperature is farther from the final one than the start")
	}
	return l, nil
}

const (
	coolTopic  = "pull-down"
	coolValid  = "one time constant: a compressor that runs without cycling and a door that stays shut; "
	coolSource = "Newton's law of cooling, any calculus text"
)

var cooling = []Formula{
	{
		Name: "cool_tau", Topic: coolTopic, Unit: "min",
		Params: []Param{startTemp, pointParam("temp", "temperature later"), {Name: "time", Unit: "min", Help: "between the two", In: positive}, finalTemp},
		Help:   "time constant of a pull-down from two readings and the final temperature", Equation: "τ = t / ln((T0 − Tf)/(T − Tf))",
		Valid: coolValid + "refuses a second reading that is not between the first and the final one", Source: coolSource,
		Example: Example{Call: "cool_tau(75F, 60F, 120min, 35F)", Args: []any{215.0 / 9, 140.0 / 9, 120.0, 15.0 / 9}, Want: 255.3, Tol: 0.1,
			Text: "75 to 60 degF in two hours on the way to 35 degF is a time constant of 255 min"},
		Fn: func(a Args) (float64, error) {
			l, err := approach(a.Num[0], a.Num[1], a.Num[3])
			if err == nil && l == 0 {
				err = errors.New("the two readings are equal: nothing cools")
			}
			if err != nil {
				return 0, err
			}
			return a.Num[2] / l, nil
		},
	},
	{
		Name: "cool_temp", Topic: coolTopic, Unit: "degC",
		Params: []Param{startTemp, finalTemp, tau, {Name: "time", Unit: "min", Help: "since the start", In: notNegative}},
		Help:   "temperature after a time of pull-down", Equation: "T = Tf + (T0 − Tf) exp(−t/τ)",
		Valid: coolValid + "refuses a time constant of zero and below", Source: coolSource,
		Example: Example{Call: "cool_temp(24C, 3C, 180min, 240min)", Args: []any{24.0, 3.0, 180.0, 240.0}, Want: 8.54, Tol: 0.01,
			Text: "from 24 degC toward 3 degC with 180 min, after 240 min it is 8.5 degC"},
		Fn: func(a Args) (float64, error) {
			return a.Num[1] + (a.Num[0]-a.Num[1])*math.Exp(-a.Num[3]/a.Num[2]), nil
		},
	},
	{
		Name: "cool_time", Topic: coolTopic, Unit: "min",
		Params: []Param{startTemp, finalTemp, tau, pointParam("target", "temperature to reach")},
		Help:   "time of a pull-down to a target", Equation: "t = τ ln((T0 − Tf)/(T − Tf))",
		Valid: coolValid + "refuses a target that is not between the start and the final temperature", Source: coolSource,
		Example: Example{Call: "cool_time(24C, 3C, 180min, 4.4C)", Args: []any{24.0, 3.0, 180.0, 4.4}, Want: 487.4, Tol: 0.2,
			Text: "from 24 degC toward 3 degC with 180 min, 4.4 degC comes after 8.1 h"},
		Fn: func(a Args) (float64, error) {
			l, err := approach(a.Num[0], a.Num[3], a.Num[1])
			return a.Num[2] * l, err
		},
	},
	{
		Name: "cool_final", Topic: coolTopic, Unit: "degC",
		Params: []Param{startTemp, pointParam("mid", "half-way in time"), pointParam("end", "as long again after it")},
		Help:   "temperature a pull-down settles at, from three readings evenly spaced in time", Equation: "Tf = (T0 T2 − T1²) / (T0 + T2 − 2 T1)",
		Valid: coolValid + "refuses readings whose second step is not smaller than the first", Source: coolSource,
		Example: Example{Call: "cool_final(24C, 13.5C, 8.25C)", Args: []any{24.0, 13.5, 8.25}, Want: 3, Tol: 1e-9,
			Text: "24, 13.5 and 8.25 degC at equal times settle at 3 degC"},
		Fn: func(a Args) (float64, error) {
			first, second := a.Num[1]-a.Num[0], a.Num[2]-a.Num[1]
			if ratio := second / first; first == 0 || ratio <= 0 || ratio >= 1 {
				return 0, errors.New("the second step must be smaller than the first and go the same way: it does not settle yet")
			}
			return a.Num[0] + first*first/(first-second), nil
		},
	},
}
