package pulldown_test

import (
	"fmt"
	"strings"

	"ohmcall/calc/pulldown"
)

func ExampleFit() {
	r, err := pulldown.Fit([]pulldown.Point{{0, 22.0, 0.15}, {30, 15.1, 0.15}, {60, 10.7, 0.15}, {90, 7.9, 0.15}, {120, 6.2, 0.15}})
	if err != nil {
		panic(err)
	}
	j := r.Judge(pulldown.Refrigerator, nil)
	fmt.Println(j.State)
	fmt.Println(strings.ReplaceAll(j.Reason, "; ", "\n"))
	// Output:
	// on course
	// by the curve through 5 readings it settles at 3.2 °C, between 2.0 °C and 4.1 °C with 95 % confidence, which is below 4.4 °C
	// expected there 2.9 h (2.6 to 3.9 h) after the first reading
}
