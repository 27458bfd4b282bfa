package quantity_test

import (
	"fmt"

	"ohmcall/calc/quantity"
)

func Example() {
	start, _ := quantity.Parse("3R45", "ohm")
	run, _ := quantity.Parse("2.5", "ohm")
	// Each reading is a source of its own: here entries 1 and 2.
	both, _ := quantity.Add(start.WithU(0.03, 1), run.WithU(0.06, 2))
	fmt.Println(start, run)
	fmt.Println(both)
	_, err := quantity.Parse("118V", "ohm")
	fmt.Println(err)
	// Output:
	// 3.45 Ω 2.5 Ω
	// 5.95 ± 0.13 Ω (k=2)
	// 118V is not a resistance (such as 3.4 Ω)
}
