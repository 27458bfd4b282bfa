package formula

import (
	"math"
	"testing"
)

func TestWindingPublished(t *testing.T) {
	const ieee = "IEEE 112 / UL text: K is 234.5 for copper, 225.0 for EC aluminium; computed"
	const iec = "IEC 60034-1 cl. 8.6.2 (from memory), computed"
	const eep = "EEP knowledge base, aluminium 228; computed"
	checkPublished(t, []published{
		{"winding_temp", []any{5.0, 25.0, 6.0}, 76.90, 0.005, ieee},
		{"winding_temp", []any{5.0, 25.0, 6.0, "copper-235"}, 77.00, 0.005, iec},
		{"winding_temp", []any{5.0, 25.0, 6.0, "aluminium"}, 75.00, 0.005, ieee},
		{"winding_temp", []any{5.0, 25.0, 6.0, "aluminum-228"}, 75.60, 0.005, eep},
		{"winding_rise", []any{5.0, 25.0, 6.0, 25.0}, 51.90, 0.005, ieee},
		{"winding_rise", []any{4.0, 22.0, 5.2, 26.0, "copper-235"}, 73.10, 0.005, iec},
		{"winding_rise", []any{4.0, 22.0, 5.2, 26.0, "copper"}, 72.95, 0.005, iec},
		{"winding_rise", []any{4.0, 22.0, 5.2, 26.0, "aluminium"}, 70.10, 0.005, iec},
		{"winding_ohms", []any{4.2, 40.0}, 3.9705, 0.00005, ieee},
		{"winding_ohms", []any{4.0, 20.0, 40.0}, 4.3143, 0.00005, ieee},
		{"winding_ohms", []any{4.0, 20.0, 40.0, "aluminium"}, 4.3265, 0.00005, ieee},
		{"winding_ohms", []any{1.0, 20.0, 21.0}, 1.00393, 0.000005, "EEP knowledge base, copper 0.00393 per kelvin at 20 °C"},
		{"winding_ohms", []any{1.0, 20.0, 21.0, "aluminium-228"}, 1.00403, 0.000005, "EEP knowledge base, aluminium 0.00403 per kelvin at 20 °C"},
	})
}

// What one formula corrects, the other finds again.
func TestWindingRoundTrip(t *testing.T) {
	for _, metal := range windingMetal.Words {
		for hot := -20.0; hot <= 180; hot += 10 {
			ohms := call(t, "winding_ohms", 4.2, 21.0, hot, metal)
			if got := call(t, "winding_temp", 4.2, 21.0, ohms, metal); math.Abs(got-hot) > 1e-9 {
				t.Errorf("%s: %g °C comes back as %g", metal, hot, got)
			}
		}
	}
}

func TestWindingWarns(t *testing.T) {
	for _, name := range []string{"winding_temp", "winding_rise"} {
		f, _ := Lookup(name)
		args := []any{4.0, 22.0, 11.0}
		if name == "winding_rise" {
			args = append(args, 22.0)
		}
		a, err := f.Lay(args...)
		if err != nil {
			t.Fatal(err)
		}
		if f.Warn(a) == "" {
			t.Errorf("%s: a winding at more than 400 °C passes without a warning", name)
		}
	}
}
