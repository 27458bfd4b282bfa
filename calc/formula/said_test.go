package formula

import (
	"slices"
	"strings"
	"testing"
)

// What a formula says beside its result, at its example; what it reckons for it is
// reckoned here by hand. Each formula that says something has its row.
func TestWhatIsSaidBesideAResult(t *testing.T) {
	const (
		hertz = "at 60 Hz"
		same  = "dew and bubble are the same for R-134a"
	)
	said := []struct{ name, want, how string }{
		{"bleeder_ohms", "counted from 622.3 V; a line of 622.3 V rms leaves up to 880 V, and then at most 464.9 kΩ", "60 s / (45 µF ln(880/50))"},
		{"bleeder_watts", "25.8 W", "the peak of 440 V is 622.3 V: 622.3² / 15 kΩ"},
		{"source_ohms", "2.97 %", "(121.4 - 117.8) / 121.4"},
		{"start_volts", "7.41 %", "3.6 V × 24 A / 9.6 A = 9 V of 121.4 V"},
		{"wire_drop", "copper at 75 degC; 3.07 % of 120 V, 1.54 % of 240 V", "3.07 Ω/1000 ft (NEC Chapter 9 Table 8) × 100 ft × 12 A = 3.684 V"},
		{"wire_drop_mm2", "copper at 75 degC; 1.22 % of 230 V, 0.699 % of 400 V", "0.013975 Ω/m × 20 m × 10 A = 2.795 V"},
		{"motor_ohms", "18.94 ohm resistance and 23.92 ohm reactance", "2.02 + 2.79j + (41.2 + 1.06j) ∥ 33.4j + (1.0564 + 1.06j) ∥ 33.4j"},
		{"lra_code", "code letter M, 10 to 11.19 kVA/hp", "NEC Table 430.7(B)"},
		{"ntc3_temp", "A = 1.135107e-03, B = 2.329328e-04, C = 9.409643e-08", "three linear equations in ln R"},
		{"ntc3_ohms", "A = 1.135107e-03, B = 2.329328e-04, C = 9.409643e-08", "three linear equations in ln R"},
		{"motor_slip", "5 % below 1800 rpm", ""}, {"energy_year", "on for 16.7 % of the year", ""}, {"energy_cost", "on for 16.7 % of the year", ""},
		{"cap_load", hertz, ""}, {"start_cap", hertz, ""}, {"reactance_c", hertz, ""}, {"reactance_l", hertz, ""},
		{"start_amps_max", "an upper bound", ""}, {"unbalance", "no more than 1 %", ""}, {"meter_limit", "1 % of the reading and 3 counts", ""},
		{"wire_ohms", "copper at 20 degC", ""}, {"wire_ohms_mm2", "copper at 20 degC", ""},
		{"winding_temp", "copper, k = 234.5", ""}, {"winding_rise", "copper-235, k = 235", ""}, {"winding_ohms", "at 25 degC; copper, k = 234.5", ""},
		{"sat_press", same, ""}, {"sat_temp", "dew line", ""}, {"superheat", same, ""}, {"subcooling", same, ""},
	}
	for _, f := range All() {
		if f.Say == nil {
			continue
		}
		i := slices.IndexFunc(said, func(s struct{ name, want, how string }) bool { return s.name == f.Name })
		if i < 0 {
			t.Errorf("%s says something and has no row", f.Name)
			continue
		}
		a, err := f.Lay(f.Example.Args...)
		if err != nil {
			t.Fatal(err)
		}
		y, err := f.Call(f.Example.Args...)
		if err != nil {
			t.Fatal(err)
		}
		if got := f.Say(a, y); !strings.Contains(got, said[i].want) {
			t.Errorf("%s says %q, want %q (%s)", f.Name, got, said[i].want, said[i].how)
		}
	}
}
