package formula

import "testing"

func TestSupplyPublished(t *testing.T) {
	const ohm = "Ohm's law, computed"
	checkPublished(t, []published{
		{"source_ohms", []any{121.4, 117.8, 9.6}, 0.375, 1e-9, ohm},
		{"start_volts", []any{121.4, 117.8, 9.6, 9.6}, 117.8, 1e-9, "the measured load itself"},
		{"start_sag", []any{121.4, 117.8, 9.6, 9.6}, 2.97, 0.005, ohm},
		{"start_volts", []any{121.4, 117.8, 9.6, 323.7}, 0, 0.02, "prospective short-circuit current, Ohm's law, computed"},
	})
	checkRefusals(t, []refusal{
		{"source_ohms", []any{117.0, 118.0, 5.0}, "loaded voltage is above"},
		{"start_volts", []any{121.4, 117.8, 9.6, 400.0}, "323.7 A at most"},
		{"start_sag", []any{121.4, 117.8, 9.6, 400.0}, "323.7 A at most"},
		{"start_sag", []any{117.0, 118.0, 5.0, 20.0}, "loaded voltage is above"},
	})
}

func TestWirePublished(t *testing.T) {
	const wireTable = "wire table, copper of 100 % IACS at 20 °C"
	const table8 = "NEC Chapter 9 Table 8, 75 °C, solid uncoated copper"
	const table8Al = "NEC Chapter 9 Table 8, 75 °C, aluminium"
	rows := []published{
		{"wire_drop", []any{14.0, 50.0, 12.0}, 3.684, 0.005 * 3.684, "2 L I r with r of NEC Table 8"},
		{"wire_drop", []any{12.0, 100.0, 16.0}, 6.176, 0.005 * 6.176, "2 L I r with r of NEC Table 8"},
		{"wire_ohms", []any{14.0, 1000.0, 25.0}, 2.574, 0.005 * 2.574, "NEC Table 8 note, R2 = R1[1 + 0.00323 (T2 − 75)] (from memory)"},
	}
	for gauge, want := range map[float64]float64{18: 6.385, 16: 4.016, 14: 2.525, 12: 1.588, 10: 0.9988, 8: 0.6282} {
		rows = append(rows, published{"wire_ohms", []any{gauge, 1000.0}, want, 0.0005 * want, wireTable})
	}
	for gauge, want := range map[float64]float64{18: 7.77, 16: 4.89, 14: 3.07, 12: 1.93, 10: 1.21, 8: 0.764} {
		rows = append(rows, published{"wire_ohms", []any{gauge, 1000.0, 75.0}, want, 0.0045 * want, table8})
	}
	for gauge, want := range map[float64]float64{12: 3.18, 10: 2.00, 8: 1.26} {
		rows = append(rows, published{"wire_ohms", []any{gauge, 1000.0, 75.0, "aluminum"}, want, 0.005, table8Al})
	}
	// NEC Table 8 gives 14 gauge 2.08 mm² and 3.07 ohm in 1000 ft, 304.8 m.
	rows = append(rows,
		published{"wire_ohms_mm2", []any{2.08, 304.8, 75.0}, 3.07, 0.0045 * 3.07, table8},
		published{"wire_ohms_mm2", []any{1.0, 1.0, 20.0, "copper"}, 0.017241, 1e-9, "100 % IACS, 1/58 ohm·mm²/m (from memory)"},
		published{"wire_drop_mm2", []any{2.08, 15.24, 12.0}, 3.684, 0.005 * 3.684, "2 L I r with r of NEC Table 8"})
	checkPublished(t, rows)
	checkRefusals(t, []refusal{
		{"wire_drop_mm2", []any{0.01, 10.0, 5.0}, "mm2 must be at least 0.05"},
		{"wire_ohms", []any{14.5, 10.0}, "gauge must be a whole number"},
		{"wire_ohms", []any{41.0, 10.0}, "gauge must be at most 40"},
		{"wire_ohms", []any{14.0, 10.0, "iron"}, `metal "iron" is not known: one of copper, aluminium`},
		{"wire_drop", []any{14.0, 10.0, 5.0, 300.0}, "temp must be at most 200 degC"},
	})
	// A word may follow at once where the optional temperature is left out.
	if a, b := call(t, "wire_ohms", 12.0, 100.0, "aluminium"), call(t, "wire_ohms", 12.0, 100.0, 20.0, "aluminium"); a != b {
		t.Errorf("the default temperature gives %g, stated %g", a, b)
	}
}
