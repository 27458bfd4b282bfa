package formula

import (
	"math"
	"testing"
)

func TestPlatinumPublished(t *testing.T) {
	const iec = "IEC 60751:2008/2022 and ASTM E1137, table for 100 Ω"
	var rows []published
	for _, c := range []struct{ temp, ohms float64 }{
		{-200, 18.52}, {-100, 60.26}, {-50, 80.31}, {0, 100.00}, {25, 109.73}, {50, 119.40}, {100, 138.51},
		{200, 175.86}, {300, 212.05}, {400, 247.09}, {600, 313.71}, {850, 390.48},
	} {
		rows = append(rows,
			published{"pt100_ohms", []any{c.temp}, c.ohms, 0.00501, iec},
			published{"pt1000_ohms", []any{c.temp}, 10 * c.ohms, 0.0501, iec},
			published{"pt100_temp", []any{c.ohms}, c.temp, 0.016, iec},
			published{"pt1000_temp", []any{10 * c.ohms}, c.temp, 0.016, iec})
	}
	for _, c := range []struct{ ohms, temp float64 }{{109.73, 24.988}, {138.51, 100.012}, {175.86, 200.011}, {212.05, 299.996}} {
		rows = append(rows, published{"pt100_temp", []any{c.ohms}, c.temp, 0.001, "inverse of IEC 60751, computed"})
	}
	checkPublished(t, rows)
	// The older tables must not be mistaken for these.
	for temp, old := range map[float64]float64{200: 175.84, 300: 212.03} {
		if got := call(t, "pt100_ohms", temp); math.Abs(got-old) < 0.01 {
			t.Errorf("%g °C gives %.4f Ω, the value of DIN 43760", temp, got)
		}
	}
	checkRefusals(t, []refusal{
		{"pt100_ohms", []any{-201.0}, "temp must be at least -200 degC"},
		{"pt100_temp", []any{10.0}, "ohms must be at least 18.52 ohm"},
		{"pt1000_temp", []any{100.0}, "ohms must be at least 185.2 ohm"},
	})
}

func TestPlatinumRoundTripAndRise(t *testing.T) {
	for _, name := range []string{"pt100", "pt1000"} {
		before := 0.0
		for c := -200.0; c <= 850; c += 2.5 {
			ohms := call(t, name+"_ohms", c)
			if ohms <= before {
				t.Fatalf("%s: does not rise at %g °C", name, c)
			}
			before = ohms
			if got := call(t, name+"_temp", ohms); math.Abs(got-c) > 1e-8 {
				t.Errorf("%s: %g °C comes back as %.10g", name, c, got)
			}
		}
	}
}
