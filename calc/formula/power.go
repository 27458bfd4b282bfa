package formula

import "math"

func ohmParam(name, help string) Param {
	return Param{Name: name, Unit: "ohm", Help: help, In: positive}
}

func voltParam(name, help string) Param {
	return Param{Name: name, Unit: "V", Help: help, In: positive}
}

func ampParam(name, help string) Param {
	return Param{Name: name, Unit: "A", Help: help, In: positive}
}

func wattParam(name, help string) Param {
	return Param{Name: name, Unit: "W", Help: help, In: positive}
}

// signedVolts and signedAmps take either sign: a direct current has one.
func signedVolts() Param { return Param{Name: "volts", Unit: "V", Help: "across the part"} }
func signedAmps() Param  { return Param{Name: "amps", Unit: "A", Help: "through the part"} }

const anySize = "any values; refuses a divisor of zero"

var powerFactor = Param{Name: "pf", Help: "power factor", In: Range{Lo: 0, Hi: 1, Above: true}}

var power = []Formula{
	{
		Name: "volts_ir", Topic: "ohm and power", Unit: "V",
		Params:   []Param{signedAmps(), ohmParam("ohms", "resistance")},
		Help:     "volts across a resistance from its current",
		Equation: "V = I R", Valid: anySize, Source: "Ohm's law",
		Example: Example{Call: "volts_ir(3.75A, 32ohm)", Args: []any{3.75, 32.0}, Want: 120, Tol: 1e-9,
			Text: "3.75 A through 32 ohm takes 120 V"},
		Fn: func(a Args) (float64, error) { return a.Num[0] * a.Num[1], nil },
	},
	{
		Name: "amps_vr", Topic: "ohm and power", Unit: "A",
		Params:   []Param{signedVolts(), ohmParam("ohms", "resistance")},
		Help:     "amps through a resistance from its volts",
		Equation: "I = V / R", Valid: anySize, Source: "Ohm's law",
		Example: Example{Call: "amps_vr(240V, 16ohm)", Args: []any{240.0, 16.0}, Want: 15, Tol: 1e-9,
			Text: "240 V across 16 ohm drives 15 A"},
		Fn: func(a Args) (float64, error) { return a.Num[0] / a.Num[1], nil },
	},
	{
		Name: "ohms_vi", Topic: "ohm and power", Unit: "ohm",
		Params:   []Param{voltParam("volts", "across the part"), ampParam("amps", "through the part")},
		Help:     "resistance from volts and amps; for alternating current the impedance",
		Equation: "R = V / I", Valid: anySize, Source: "Ohm's law",
		Example: Example{Call: "ohms_vi(230V, 8.6957A)", Args: []any{230.0, 8.6957}, Want: 26.45, Tol: 0.001,
			Text: "230 V and 8.6957 A make 26.45 ohm"},
		Fn: func(a Args) (float64, error) { return a.Num[0] / a.Num[1], nil },
	},
	{
		Name: "watts_vi", Topic: "ohm and power", Unit: "W",
		Params:   []Param{signedVolts(), signedAmps(), withDefault(powerFactor, 1)},
		Help:     "watts from volts and amps; give the power factor for a motor",
		Equation: "P = V I pf", Valid: "single phase; refuses a power factor outside 0 to 1", Source: "Joule's law",
		Example: Example{Call: "watts_vi(115V, 1.2A, 0.6)", Args: []any{115.0, 1.2, 0.6}, Want: 82.8, Tol: 1e-9,
			Text: "a motor at 115 V, 1.2 A and power factor 0.6 takes 82.8 W"},
		Fn: func(a Args) (float64, error) { return a.Num[0] * a.Num[1] * a.Num[2], nil },
	},
	{
		Name: "watts_vr", Topic: "ohm and power", Unit: "W",
		Params:   []Param{signedVolts(), ohmParam("ohms", "resistance")},
		Help:     "watts in a resistance from its volts",
		Equation: "P = V² / R", Valid: anySize, Source: "Joule's law",
		Example: Example{Call: "watts_vr(115V, 52.9ohm)", Args: []any{115.0, 52.9}, Want: 250, Tol: 1e-9,
			Text: "115 V across 52.9 ohm makes 250 W"},
		Fn: func(a Args) (float64, error) { return a.Num[0] * a.Num[0] / a.Num[1], nil },
	},
	{
		Name: "watts_ir", Topic: "ohm and power", Unit: "W",
		Params:   []Param{signedAmps(), ohmParam("ohms", "resistance")},
		Help:     "watts in a resistance from its current",
		Equation: "P = I² R", Valid: anySize, Source: "Joule's law",
		Example: Example{Call: "watts_ir(15A, 16ohm)", Args: []any{15.0, 16.0}, Want: 3600, Tol: 1e-9,
			Text: "15 A through 16 ohm makes 3600 W"},
		Fn: func(a Args) (float64, error) { return a.Num[0] * a.Num[0] * a.Num[1], nil },
	},
	{
		Name: "amps_w", Topic: "ohm and power", Unit: "A",
		Params:   []Param{wattParam("watts", "power taken"), voltParam("volts", "supply"), withDefault(powerFactor, 1)},
		Help:     "amps that a load draws from its watts",
		Equation: "I = P / (V pf)", Valid: "single phase; refuses a power factor outside 0 to 1", Source: "Joule's law",
		Example: Example{Call: "amps_w(450W, 120V)", Args: []any{450.0, 120.0}, Want: 3.75, Tol: 1e-9,
			Text: "a 450 W heater on 120 V draws 3.75 A"},
		Fn: func(a Args) (float64, error) { return a.Num[0] / (a.Num[1] * a.Num[2]), nil },
	},
	{
		Name: "power_factor", Topic: "ohm and power",
		Params:   []Param{wattParam("watts", "true power"), voltParam("volts", "supply"), ampParam("amps", "line current")},
		Help:     "power factor from a watt reading, volts and amps",
		Equation: "pf = P / (V I)", Valid: "single phase; warns above 1, which no load can have", Source: "definition of power factor",
		Example: Example{Call: "power_factor(246.2W, 110V, 3.605A)", Args: []any{246.2, 110.0, 3.605}, Want: 0.6209, Tol: 0.0001,
			Text: "246.2 W at 110 V and 3.605 A is a power factor of 0.62"},
		Fn: func(a Args) (float64, error) { return a.Num[0] / (a.Num[1] * a.Num[2]), nil },
		Warn: func(a Args) string {
			if a.Num[0] > a.Num[1]*a.Num[2] {
				return "more watts than volts times amps: one of the three readings is off"
			}
			return ""
		},
	},
	{
		Name: "volts_peak", Topic: "ohm and power", Unit: "V",
		Params:   []Param{voltParam("volts", "as an alternating-current meter shows it")},
		Help:     "peak of a sine wave, to which a capacitor can be left charged",
		Equation: "Vpeak = √2 Vrms", Valid: "a sine wave; refuses zero and below", Source: "definition of the rms value",
		Example: Example{Call: "volts_peak(440V)", Args: []any{440.0}, Want: 622.25, Tol: 0.01,
			Text: "440 V rms peaks at 622 V"},
		Fn: func(a Args) (float64, error) { return math.Sqrt2 * a.Num[0], nil },
	},
}

func withDefault(p Param, x float64) Param {
	p.Optional, p.Default = true, x
	return p
}

func sum(xs []float64) float64 {
	t := 0.0
	for _, x := range xs {
		t += x
	}
	return t
}

// sumOfInverses is one over the sum of the inverses.
func sumOfInverses(xs []float64) float64 {
	t := 0.0
	for _, x := range xs {
		t += 1 / x
	}
	return 1 / t
}
