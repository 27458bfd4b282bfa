package formula_test

import (
	"fmt"

	"ohmcall/calc/formula"
)

func ExampleLookup() {
	f, _ := formula.Lookup("pt100_temp")
	celsius, err := f.Call(138.5055)
	fmt.Printf("%.1f %s %v\n", celsius, f.Unit, err)
	_, err = f.Call(12.0)
	fmt.Println(err)
	// Output:
	// 100.0 degC <nil>
	// ohms must be at least 18.52 ohm
}
