package formula

import "testing"

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
