package formula

import (
	"math"
	"math/rand/v2"
	"testing"
)

func TestCoolingPublished(t *testing.T) {
	const soup = "calculus exercise \"Cooling soup\": 90 to 60 °C in 10 min in a 20 °C room; 35 °C after 17.5 min more; 13.26 min in a freezer at −15 °C"
	soupTau := call(t, "cool_tau", 90.0, 60.0, 10.0, 20.0)
	checkPublished(t, []published{
		{"cool_time", []any{90.0, 20.0, soupTau, 35.0}, 27.5, 0.05, soup},
		{"cool_time", []any{90.0, -15.0, soupTau, 35.0}, 13.26, 0.005, soup},
		{"cool_time", []any{100.0, 30.0, call(t, "cool_tau", 100.0, 70.0, 15.0, 30.0), 50.0}, 33.59, 0.015, "published solved problem on Newton's law of cooling, 33.59 min by a rounded constant (exact 33.579)"},
		{"cool_temp", []any{24.0, 3.0, 180.0, 240.0}, 8.54, 0.005, "textbook, computed"},
		{"cool_time", []any{24.0, 3.0, 180.0, 4.4}, 8.12 * 60, 0.5, "textbook, computed"},
		{"cool_tau", []any{fahrenheit(75), fahrenheit(60), 120.0, fahrenheit(35)}, 4.255 * 60, 0.05, "textbook, computed"},
		{"cool_time", []any{fahrenheit(75), fahrenheit(35), 4.255 * 60, fahrenheit(40)}, 8.85 * 60, 0.3, "textbook, computed"},
		{"cool_final", []any{90.0, 60.0, 20 + 70*math.Exp(-20/soupTau)}, 20, 1e-9, soup},
	})
	checkRefusals(t, []refusal{
		{"cool_tau", []any{24.0, 24.0, 60.0, 3.0}, "nothing cools"},
		{"cool_tau", []any{24.0, 25.0, 60.0, 3.0}, "farther from the final one"},
		{"cool_tau", []any{24.0, 2.0, 60.0, 3.0}, "never reached"},
		{"cool_time", []any{24.0, 6.0, 180.0, 4.4}, "never reached"},
		{"cool_final", []any{24.0, 18.0, 12.0}, "does not settle yet"},
		{"cool_final", []any{24.0, 24.0, 12.0}, "does not settle yet"},
	})
}

func TestCoolingRoundTrip(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 6))
	for range 200 {
		start, final, tau, time := 20+20*rng.Float64(), -25+30*rng.Float64(), 10+300*rng.Float64(), 1+300*rng.Float64()
		temp := call(t, "cool_temp", start, final, tau, time)
		if got := call(t, "cool_time", start, final, tau, temp); math.Abs(got-time) > 1e-6*time {
			t.Errorf("%g min come back as %g", time, got)
		}
		if got := call(t, "cool_tau", start, temp, time, final); math.Abs(got-tau) > 1e-6*tau {
			t.Errorf("time constant %g comes back as %g", tau, got)
		}
		if got := call(t, "cool_final", start, temp, call(t, "cool_temp", start, final, tau, 2*time)); math.Abs(got-final) > 1e-6*(1+math.Abs(final)) {
			t.Errorf("final %g comes back as %g", final, got)
		}
	}
}
