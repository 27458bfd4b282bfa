package formula

var (
	ratedWatts = wattParam("watts", "rated power")
	ratedVolts = voltParam("rated", "rated volts")
	otherVolts = voltParam("volts", "volts it is on")
)

const heaterValid = "an element whose resistance does not change with temperature; a cold element reads somewhat lower than hot; refuses zero and below"

var heaters = []Formula{
	{
		Name: "heater_ohms", Topic: "heaters", Unit: "ohm", Params: []Param{ratedWatts, ratedVolts},
		Help: "resistance of a heater, hot, from its rating", Equation: "R = V² / P", Valid: heaterValid, Source: "Joule's and Ohm's laws",
		Example: Example{Call: "heater_ohms(450W, 120V)", Args: []any{450.0, 120.0}, Want: 32, Tol: 1e-9, Text: "450 W on 120 V is 32 ohm"},
		Fn:      func(a Args) (float64, error) { return a.Num[1] * a.Num[1] / a.Num[0], nil },
	},
	{
		Name: "heater_watts", Topic: "heaters", Unit: "W", Params: []Param{ratedWatts, ratedVolts, otherVolts},
		Help: "watts of a heater on other volts than rated", Equation: "P2 = P1 (V2 / V1)²", Valid: heaterValid, Source: "Joule's and Ohm's laws",
		Example: Example{Call: "heater_watts(3600W, 240V, 208V)", Args: []any{3600.0, 240.0, 208.0}, Want: 2704, Tol: 1e-6, Text: "3600 W at 240 V gives 2704 W on 208 V"},
		Fn:      func(a Args) (float64, error) { v := a.Num[2] / a.Num[1]; return a.Num[0] * v * v, nil },
	},
	{
		Name: "heater_amps", Topic: "heaters", Unit: "A", Params: []Param{ratedWatts, ratedVolts, otherVolts},
		Help: "amps of a heater on other volts than rated", Equation: "I = P1 V2 / V1²", Valid: heaterValid, Source: "Joule's and Ohm's laws",
		Example: Example{Call: "heater_amps(3600W, 240V, 240V)", Args: []any{3600.0, 240.0, 240.0}, Want: 15, Tol: 1e-9, Text: "3600 W at 240 V draws 15 A"},
		Fn:      func(a Args) (float64, error) { return a.Num[0] * a.Num[2] / (a.Num[1] * a.Num[1]), nil },
	},
}
