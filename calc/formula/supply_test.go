package formula

import (
	"math"
	"testing"
)

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
	checkPublished(t, rows)
	checkRefusals(t, []refusal{
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

func TestHeaterPublished(t *testing.T) {
	const joule = "Joule's and Ohm's laws, computed"
	rows := []published{{"heater_watts", []any{3600.0, 240.0, 208.0}, 2704, 1e-9, joule}}
	for _, h := range []struct{ volts, watts, ohms, amps float64 }{
		{120, 450, 32.00, 3.750}, {240, 3600, 16.00, 15.00}, {230, 2000, 26.45, 8.696}, {115, 250, 52.90, 2.174},
	} {
		rows = append(rows,
			published{"heater_ohms", []any{h.watts, h.volts}, h.ohms, 0.005, joule},
			published{"heater_amps", []any{h.watts, h.volts, h.volts}, h.amps, 0.0005, joule},
			published{"heater_watts", []any{h.watts, h.volts, h.volts}, h.watts, 1e-9, joule})
	}
	checkPublished(t, rows)
}
