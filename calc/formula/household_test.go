package formula

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"
)

func TestLockedRotorPublished(t *testing.T) {
	const nec = "NEC Table 430.7(B), computed"
	checkPublished(t, []published{
		{"lra_least", []any{"L", 115.0, 0.25}, 19.57, 0.005, nec},
		{"lra_most", []any{"L", 115.0, 0.25}, 21.72, 0.005, nec},
		{"lra_least", []any{"n", 115.0, 0.25}, 24.35, 0.005, nec},
		{"lra_most", []any{"N", 115.0, 0.25}, 27.15, 0.005, nec},
		{"lra_code", []any{30.0, 115.0, 1.0 / 3}, 10.35, 1e-9, nec},
		{"lra_code", []any{30.0, 115.0, 1.0 / 3, "three-phase"}, 10.35 * math.Sqrt(3), 1e-9, nec},
		{"lra_least", []any{"A", 115.0, 0.25}, 0, 1e-12, nec},
	})
	checkRefusals(t, []refusal{
		{"lra_most", []any{"V", 115.0, 0.25}, "code V has no upper end: 22.4 kVA/hp and more"},
		{"lra_least", []any{"O", 115.0, 0.25}, `code "O" is not known: one of A, B, C`},
	})
}

func TestCodeLetters(t *testing.T) {
	// NEC Table 430.7(B), every row's two ends.
	for kva, want := range map[float64]string{
		0: "A", 3.14: "A", 3.15: "B", 3.54: "B", 3.545: "B", 3.55: "C", 3.99: "C", 4: "D", 4.49: "D", 4.5: "E", 4.99: "E",
		5: "F", 5.59: "F", 5.6: "G", 6.29: "G", 6.3: "H", 7.09: "H", 7.1: "J", 7.99: "J", 8: "K", 8.99: "K", 9: "L", 9.99: "L",
		10: "M", 10.35: "M", 11.19: "M", 11.2: "N", 12.49: "N", 12.5: "P", 13.99: "P", 14: "R", 15.99: "R", 16: "S", 17.99: "S",
		18: "T", 19.99: "T", 20: "U", 22.39: "U", 22.4: "V", 100: "V",
	} {
		if got := codeOf(kva).letter; got != want {
			t.Errorf("%g kVA/hp is code %s, want %s", kva, got, want)
		}
	}
	f, _ := Lookup("lra_code")
	if got := f.Say(Args{}, 10.35); !strings.Contains(got, "code letter M, 10 to 11.19 kVA/hp") {
		t.Errorf("10.35 kVA/hp is said to be %q", got)
	}
	if got := f.Say(Args{}, 30); !strings.Contains(got, "code letter V, 22.4 kVA/hp and more") {
		t.Errorf("30 kVA/hp is said to be %q", got)
	}
}

func TestUnbalancePublished(t *testing.T) {
	checkPublished(t, []published{
		{"unbalance", []any{462.0, 463.0, 455.0}, 1.1, 0.05, "NEMA's definition with this example, as quoted in a motor engineers' forum"},
		{"unbalance", []any{203.0, 210.0, 212.0}, 100 * 5.3 / 208.3, 0.02, "SymCom specification sheet, NEMA MG 1 unbalance formula: 5.3 V of 208.3 V, both rounded, printed as 2.5 %"},
		{"unbalance", []any{243.0, 236.0, 238.0}, 1.7, 0.05, "Carrier Aquasnap 30MPA manual p.39"},
		{"unbalance", []any{480.0, 476.0, 472.0}, 0.84, 0.005, "Industrial Voltage Unbalance: NEMA MG1 Limits (article)"},
		{"unbalance", []any{240.0, 240.0, 240.0}, 0, 1e-9, "definition"},
	})
}

func TestEnergyPublished(t *testing.T) {
	const doe = "U.S. DOE, Estimating Appliance and Home Electronic Energy Use, as reprinted with local prices; it rounds to whole kWh"
	checkPublished(t, []published{
		{"energy_year", []any{270.0, 100.0 * 4 / 24}, 394, 0.5, doe},
		{"energy_year", []any{200.0, 100.0 * 4 * 120 / 8760}, 96, 1e-9, doe},
		{"energy_cost", []any{270.0, 0.11, 100.0 * 4 / 24}, 43.34, 0.03, doe},
		{"energy_cost", []any{270.0, 0.085, 100.0 * 4 / 24}, 33.51, 0.01, doe},
		{"energy_cost", []any{200.0, 0.085, 100.0 * 4 * 120 / 8760}, 8.16, 1e-9, doe},
		{"energy_year", []any{1200.0, 20.0}, 2100, 5, "determining kWh use (training text): 1200 W at 20 % is about 2100 kWh a year"},
	})
	checkRefusals(t, []refusal{{"energy_year", []any{100.0, 120.0}, "duty must be at most 100 %"}})
}

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

func TestMeterLimitPublished(t *testing.T) {
	checkPublished(t, []published{
		{"meter_limit", []any{120.0, 1.0, 3.0, 0.1}, 1.5, 1e-9, "Fluke knowledge article KA-03135, ±(1 % + 3)"},
		{"meter_limit", []any{100.0, 2.0, 2.0, 0.1}, 2.2, 1e-9, "Fluke, digital multimeter accuracy and precision, 97.8 to 102.2 V"},
		{"meter_limit", []any{120.0, 0.7, 2.0, 0.1}, 1.04, 1e-9, "electrical-contractor forum, 118.96 to 121.04 V"},
		{"meter_limit", []any{32.0, 2.5, 3.0, 0.01}, 0.83, 1e-9, "KPU physics laboratory sheet"},
		{"meter_limit", []any{4.7, 0.9, 2.0, 0.1}, 0.242, 0.0005, "computed"},
		{"meter_limit", []any{-120.0, 1.0, 3.0, 0.1}, 1.5, 1e-9, "the limit has no sign"},
	})
}
