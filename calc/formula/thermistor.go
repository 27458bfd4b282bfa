package formula

import (
	"errors"
	"fmt"
	"math"

	"ohmcall/calc/quantity"
)

const (
	zeroC    = quantity.ZeroC
	ntcTopic = "thermistors"
)

var (
	ntcRange = Range{Lo: -80, Hi: 300}
	ntcTemp  = Param{Name: "temp", Unit: "degC", Help: "of the sensor", In: ntcRange}
	ntcOhms  = ohmParam("ohms", "as read, lead resistance taken off")
	r25      = ohmParam("rated", "resistance at the reference temperature, mostly 25 degC")
	beta     = Param{Name: "beta", Unit: "K", Help: "B value in kelvin, from the sensor's sheet", In: Range{Lo: 100, Hi: 20000}}
	ntcRef   = withDefault(Param{Name: "ref", Unit: "degC", Help: "reference temperature", In: ntcRange}, 25)
)

const (
	betaValid  = "one B value fits between the two temperatures it was taken at; warns outside 0 to 100 degC, where a real sensor is off by 1 K and more; refuses temperatures outside -80 to 300 degC"
	betaSource = "IEC 60539-1, definition of the B value"
)

// BetaOhms is the resistance of a thermistor of rated ohms at ref °C and a B value
// in kelvin at t °C (IEC 60539-1).
func BetaOhms(rated, beta, ref, t float64) float64 {
	return rated * math.Exp(beta*(1/(t+zeroC)-1/(ref+zeroC)))
}

func betaTemp(ohms, rated, beta, ref float64) (float64, error) {
	return celsius(1/(ref+zeroC) + math.Log(ohms/rated)/beta)
}

// celsius turns an inverse absolute temperature into degrees, within the
// range of thermistors.
func celsius(inverse float64) (float64, error) {
	t := 1/inverse - zeroC
	if inverse <= 0 || t > ntcRange.Hi {
		return 0, fmt.Errorf("a resistance so low would mean more than %g degC: the sensor is shorted or another type", ntcRange.Hi)
	}
	if t < ntcRange.Lo {
		return 0, fmt.Errorf("a resistance so high would mean less than %g degC: the sensor is open or another type", ntcRange.Lo)
	}
	return t, nil
}

func betaWarn(t float64) string {
	if t < 0 || t > 100 {
		return "outside 0 to 100 degC one B value is not enough: use three points or the maker's table"
	}
	return ""
}

// points are three (temperature, resistance) parameters; three are needed to
// fit Steinhart and Hart's curve.
var points = []Param{
	ntcNamed("t1"), ohmParam("r1", "resistance at t1"),
	ntcNamed("t2"), ohmParam("r2", "resistance at t2"),
	ntcNamed("t3"), ohmParam("r3", "resistance at t3"),
}

func ntcNamed(name string) Param {
	return Param{Name: name, Unit: "degC", Help: "temperature of a point, from the maker's table", In: ntcRange}
}

// steinhart is the curve 1/T = A + B ln R + C (ln R)³, T in kelvin and R in
// ohm, and the span of ln R that its three points cover.
type steinhart struct{ a, b, c, least, most float64 }

func fitSteinhart(p []float64) (steinhart, error) {
	var l, y [3]float64
	for i := range l {
		y[i], l[i] = 1/(p[2*i]+zeroC), math.Log(p[2*i+1])
	}
	for i := range l {
		for j := range i {
			if (l[i]-l[j])*(y[i]-y[j]) <= 0 {
				return steinhart{}, fmt.Errorf("points %d and %d do not fit a thermistor: of two points the warmer must have the lower resistance", j+1, i+1)
			}
		}
	}
	g2 := (y[1] - y[0]) / (l[1] - l[0])
	g3 := (y[2] - y[0]) / (l[2] - l[0])
	s := steinhart{least: min(l[0], l[1], l[2]), most: max(l[0], l[1], l[2])}
	s.c = (g3 - g2) / ((l[2] - l[1]) * (l[0] + l[1] + l[2]))
	s.b = g2 - s.c*(l[0]*l[0]+l[0]*l[1]+l[1]*l[1])
	s.a = y[0] - l[0]*(s.b+l[0]*l[0]*s.c)
	if !s.rising(s.least) || !s.rising(s.most) {
		return steinhart{}, errors.New("no thermistor's curve goes through these three points: check them")
	}
	return s, nil
}

func (s steinhart) inverse(l float64) float64 { return s.a + l*(s.b+l*l*s.c) }

// rising reports whether the curve still falls in temperature with rising
// resistance at ln R = l.
func (s steinhart) rising(l float64) bool { return s.b+3*s.c*l*l > 0 }

func (s steinhart) temp(ohms float64) (float64, error) {
	l := math.Log(ohms)
	if !s.rising(l) {
		return 0, errors.New("the curve through these points turns before this resistance: use points nearer to it")
	}
	return celsius(s.inverse(l))
}

// ohms inverts the curve by Newton's method, which converges because the
// curve is nearly straight in ln R.
func (s steinhart) ohms(t float64) (float64, error) {
	want := 1 / (t + zeroC)
	l := (s.least + s.most) / 2
	for range 50 {
		if !s.rising(l) {
			break
		}
		step := (want - s.inverse(l)) / (s.b + 3*s.c*l*l)
		l += step
		if math.Abs(step) < 1e-13*(1+math.Abs(l)) {
			return math.Exp(l), nil
		}
	}
	return 0, errors.New("the curve through these points does not reach this temperature: use points nearer to it")
}

const (
	steinhartValid  = "between the outer two points; warns outside them; refuses points of which the warmer has not the lower resistance, and temperatures outside -80 to 300 degC"
	steinhartSource = "Steinhart & Hart, Deep-Sea Res. 15 (1968) 497"
	pointsCall      = "0C, 32554ohm, 25C, 10kohm, 50C, 3605ohm)"
)

var samplePoints = []any{0.0, 32554.0, 25.0, 10000.0, 50.0, 3605.0}

const outsidePoints = "outside the points given: the curve is a guess there"

var thermistors = []Formula{
	{
		Name: "ntc_ohms", Topic: ntcTopic, Unit: "ohm", Params: []Param{ntcTemp, r25, beta, ntcRef},
		Help: "resistance of a thermistor (NTC) at a temperature, from its B value", Equation: "R = R25 exp(B (1/T − 1/T25)), T in kelvin",
		Valid: betaValid, Source: betaSource,
		Example: Example{Call: "ntc_ohms(50C, 10kohm, 3977)", Args: []any{50.0, 10e3, 3977.0}, Want: 3563, Tol: 0.5,
			Text: "10 kohm with B 3977 has 3563 ohm at 50 degC"},
		Fn: func(a Args) (float64, error) {
			return BetaOhms(a.Num[1], a.Num[2], a.Num[3], a.Num[0]), nil
		},
		Warn: func(a Args) string { return betaWarn(a.Num[0]) },
	},
	{
		Name: "ntc_temp", Topic: ntcTopic, Unit: "degC", Params: []Param{ntcOhms, r25, beta, ntcRef},
		Help: "temperature of a thermistor (NTC) from its resistance and B value", Equation: "1/T = 1/T25 + ln(R/R25)/B, T in kelvin",
		Valid: betaValid, Source: betaSource,
		Example: Example{Call: "ntc_temp(3563ohm, 10kohm, 3977)", Args: []any{3563.0, 10e3, 3977.0}, Want: 50, Tol: 0.01,
			Text: "10 kohm with B 3977 that reads 3563 ohm is at 50 degC"},
		Fn: func(a Args) (float64, error) { return betaTemp(a.Num[0], a.Num[1], a.Num[2], a.Num[3]) },
		Warn: func(a Args) string {
			t, err := betaTemp(a.Num[0], a.Num[1], a.Num[2], a.Num[3])
			if err != nil {
				return ""
			}
			return betaWarn(t)
		},
	},
	{
		Name: "ntc3_temp", Topic: ntcTopic, Unit: "degC", Params: joined([]Param{ntcOhms}, points),
		Help: "temperature of a thermistor (NTC) from its resistance and three points of its table", Equation: "1/T = A + B ln R + C (ln R)³ through the three points, T in kelvin",
		Valid: steinhartValid, Source: steinhartSource,
		Example: Example{Call: "ntc3_temp(12488ohm, " + pointsCall, Args: joined([]any{12488.0}, samplePoints), Want: 20, Tol: 0.005,
			Text: "the sensor of these three points is at 20 degC when it reads 12 488 ohm"},
		Fn: func(a Args) (float64, error) {
			s, err := fitSteinhart(a.Num[1:])
			if err != nil {
				return 0, err
			}
			return s.temp(a.Num[0])
		},
		Warn: func(a Args) string {
			s, err := fitSteinhart(a.Num[1:])
			if l := math.Log(a.Num[0]); err == nil && (l < s.least || l > s.most) {
				return outsidePoints
			}
			return ""
		},
		Say: func(a Args, _ float64) string { return sayCoefficients(a.Num[1:]) },
	},
	{
		Name: "ntc3_ohms", Topic: ntcTopic, Unit: "ohm", Params: joined([]Param{ntcTemp}, points),
		Help: "resistance of a thermistor (NTC) at a temperature from three points of its table", Equation: "1/T = A + B ln R + C (ln R)³ through the three points, T in kelvin",
		Valid: steinhartValid, Source: steinhartSource,
		Example: Example{Call: "ntc3_ohms(40C, " + pointsCall, Args: joined([]any{40.0}, samplePoints), Want: 5330, Tol: 1,
			Text: "the sensor of these three points reads 5330 ohm at 40 degC"},
		Fn: func(a Args) (float64, error) {
			s, err := fitSteinhart(a.Num[1:])
			if err != nil {
				return 0, err
			}
			return s.ohms(a.Num[0])
		},
		Warn: func(a Args) string {
			if t := a.Num; t[0] < min(t[1], t[3], t[5]) || t[0] > max(t[1], t[3], t[5]) {
				return outsidePoints
			}
			return ""
		},
		Say: func(a Args, _ float64) string { return sayCoefficients(a.Num[1:]) },
	},
}

func sayCoefficients(p []float64) string {
	s, err := fitSteinhart(p)
	if err != nil {
		return ""
	}
	return fmt.Sprintf("A = %.6e, B = %.6e, C = %.6e", s.a, s.b, s.c)
}
