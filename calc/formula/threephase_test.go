package formula

import "testing"

func TestUnbalancePublished(t *testing.T) {
	checkPublished(t, []published{
		{"unbalance", []any{462.0, 463.0, 455.0}, 1.1, 0.05, "NEMA's definition with this example, as quoted in a motor engineers' forum"},
		{"unbalance", []any{203.0, 210.0, 212.0}, 100 * 5.3 / 208.3, 0.02, "SymCom specification sheet, NEMA MG 1 unbalance formula: 5.3 V of 208.3 V, both rounded, printed as 2.5 %"},
		{"unbalance", []any{243.0, 236.0, 238.0}, 1.7, 0.05, "Carrier Aquasnap 30MPA manual p.39"},
		{"unbalance", []any{480.0, 476.0, 472.0}, 0.84, 0.005, "Industrial Voltage Unbalance: NEMA MG1 Limits (article)"},
		{"unbalance", []any{240.0, 240.0, 240.0}, 0, 1e-9, "definition"},
	})
}
