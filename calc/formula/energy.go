package formula

import "fmt"

const hoursPerYear = 24 * 365

var (
	duty  = withDefault(Param{Name: "duty", Unit: "%", Help: "share of the time it is on: 30%, or 4/24 for four hours a day", In: Range{Lo: 0, Hi: 100}}, 100)
	price = Param{Name: "price", Help: "of one kWh, in your money", In: notNegative}
)

func onFor(duty float64) string { return fmt.Sprintf("on for %.3g %% of the year", duty) }

const energySource = "U.S. Department of Energy, Estimating Appliance and Home Electronic Energy Use"

var energy = []Formula{
	{
		Name: "energy_year", Topic: "energy", Unit: "kWh", Params: []Param{wattParam("watts", "while on"), duty},
		Help: "energy used in a year", Equation: "E = P · 8760 h · duty", Valid: "a year of 365 days at a steady duty; refuses a duty outside 0 to 100 %", Source: energySource,
		Example: Example{Call: "energy_year(270W, 4/24)", Args: []any{270.0, 100.0 / 6}, Want: 394.2, Tol: 0.01,
			Text: "270 W for four hours a day is 394 kWh a year"},
		Fn:  func(a Args) (float64, error) { return a.Num[0] * hoursPerYear * a.Num[1] / 1e5, nil },
		Say: func(a Args, _ float64) string { return onFor(a.Num[1]) },
	},
	{
		Name: "energy_cost", Topic: "energy", Money: true, Params: []Param{wattParam("watts", "while on"), price, duty},
		Help: "what the energy of a year costs", Equation: "cost = P · 8760 h · duty · price", Valid: "a year of 365 days at a steady duty and one price; refuses a duty outside 0 to 100 %", Source: energySource,
		Example: Example{Call: "energy_cost(270W, 0.11, 4/24)", Args: []any{270.0, 0.11, 100.0 / 6}, Want: 43.36, Tol: 0.01,
			Text: "270 W for four hours a day at 0.11 a kWh costs 43.36 a year"},
		Fn:  func(a Args) (float64, error) { return a.Num[0] * hoursPerYear * a.Num[2] / 1e5 * a.Num[1], nil },
		Say: func(a Args, _ float64) string { return onFor(a.Num[2]) },
	},
}
