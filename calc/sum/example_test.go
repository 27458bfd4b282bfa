package sum_test

import (
	"fmt"

	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
	"ohmcall/calc/sum"
)

func ExampleEval() {
	slip := sum.Formula("slip", "how far a motor runs below its field",
		[]sum.Param{{Name: "field", Unit: "rpm"}, {Name: "shaft", Unit: "rpm"}}, "%",
		func(x []float64) (float64, error) {
			if x[0] <= 0 {
				return 0, source.Errorf(0, 0, "the field turns")
			}
			return 100 * (x[0] - x[1]) / x[0], nil
		})
	supply, _ := quantity.New(118.2, "V")
	env := &sum.Scope{
		Values: map[string]quantity.Q{"supply": supply},
		Funcs:  map[string]sum.Func{"slip": slip},
	}
	for _, text := range []string{"supply / 3.45ohm", "75degF in degC", "slip(1800, 1725)", "supply + 3ohm", "supply > 104V"} {
		fmt.Println(sum.Eval(text, env))
	}
	// Output:
	// 34.3 A <nil>
	// 23.9 °C <nil>
	// 4.17 % <nil>
	// <nil> V and Ω cannot be added
	// yes <nil>
}
