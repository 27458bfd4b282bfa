package cause_test

import (
	"fmt"

	"ohmcall/calc/cause"
)

func ExampleWeigh() {
	complaint := cause.Hits("clicks, does not cool")[0].Complaint.Code
	r := cause.Weigh(complaint, []cause.Fact{
		{Code: "clicks", Entry: 3}, {Code: "cond-fan-runs", Entry: 4},
		{Code: "windings-sound", Entry: 7}, {Code: "insulation-no-gross-fault", Entry: 10},
		{Code: "start-device-failed", Entry: 11},
	})
	fmt.Println(r.Codes(cause.Supported))
	fmt.Println("mend:", r.Repair.Fix)
	fmt.Println(r.NextWhy)
	for _, line := range cause.Why("winding-open", r) {
		fmt.Println(line)
	}
	// Output:
	// [start-device-failed]
	// mend: replace the start device with one made for this compressor, and its overload with it
	// start device or relay failed is shown by start device failed (entry 11)
	// winding open is ruled out: it cannot stand beside what was found
	// against: windings sound (entry 7)
	// source: chiller service manual, p. 12 (overload between terminal C and motor common)
}
