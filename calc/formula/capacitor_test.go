package formula

import (
	"math"
	"math/rand/v2"
	"testing"
)

func TestPowerPublished(t *testing.T) {
	const joule = "Ohm's and Joule's laws, computed"
	checkPublished(t, []published{
		{"ohms_vi", []any{120.0, 3.75}, 32, 1e-9, joule},
		{"volts_ir", []any{9.6, 0.375}, 3.6, 1e-9, joule},
		{"amps_vr", []any{121.4, 0.375}, 323.7, 0.05, "prospective short-circuit current, Ohm's law, computed"},
		{"watts_vr", []any{240.0, 16.0}, 3600, 1e-9, joule},
		{"watts_ir", []any{3.75, 32.0}, 450, 1e-9, joule},
		{"watts_vi", []any{115.0, 4.4}, 506, 1e-9, "NEC Table 430.248, 1/6 hp at 115 V: 4.4 A; product computed"},
		{"amps_w", []any{2000.0, 230.0}, 8.696, 0.0005, joule},
		{"power_factor", []any{246.2, 110.0, 3.605}, 0.6208, 0.0002, "Umans Example 9.2, computed"},
		{"volts_peak", []any{370.0}, 523.3, 0.05, "35 µF at 370 V rms: peak 523.3 V, computed"},
		{"volts_peak", []any{230.0}, 325.3, 0.05, "IEC 60335-1 cl. 22.5 check at 230 V, computed"},
	})
}

func TestCapacitorsPublished(t *testing.T) {
	const load = "I = 2π f C V, computed; the trade's 2652 gives the same within 0.03 %"
	const rc = "t = R C ln(V0/V), computed; 20 kΩ discharge resistor in Tecumseh Handbook p.69"
	checkPublished(t, []published{
		{"cap_load", []any{1.0, 1.0}, 2652, 0.6, "trade rounding 2652 at 60 Hz (from memory)"},
		{"cap_load", []any{1.0, 1.0, 50.0}, 3183.10, 0.005, "constant at 50 Hz, computed"},
		{"cap_load", []any{4.2, 330.0, 50.0}, 40.512, 0.001, load},
		{"cap_load", []any{2.9, 370.0, 60.0}, 20.791, 0.001, load},
		{"cap_load", []any{2.9, 370.0, 50.0}, 24.949, 0.001, load},
		{"cap_load", []any{6.5, 440.0, 60.0}, 39.186, 0.001, load},
		{"parallel_c", []any{35.0, 5.0}, 40, 1e-9, "any circuits text"},
		{"series_c", []any{88.0, 88.0}, 44, 1e-9, "any circuits text"},
		{"series_r", []any{11.0, 4.0}, 15, 1e-9, "distributor technician bulletin \"Compressor Common–Run–Start\" (2020)"},
		{"parallel_r", []any{16.0, 16.0, 8.0}, 4, 1e-9, "any circuits text"},
		{"cap_energy", []any{35.0, 370 * math.Sqrt2}, 4.7915, 0.0001, "½ C V², computed"},
		{"cap_energy", []any{45.0, 440 * math.Sqrt2}, 8.712, 0.0005, "½ C V², computed"},
		{"discharge_time", []any{20e3, 35.0, 370 * math.Sqrt2, 75.0}, 1.360, 0.0005, rc},
		{"discharge_time", []any{20e3, 35.0, 370 * math.Sqrt2, 50.0}, 1.644, 0.0005, rc},
		{"discharge_time", []any{15e3, 45.0, 440 * math.Sqrt2, 75.0}, 1.428, 0.0005, rc},
		{"discharge_time", []any{15e3, 45.0, 440 * math.Sqrt2, 34.0}, 1.962, 0.0005, rc},
		{"discharge_time", []any{1e6, 0.47, 230 * math.Sqrt2, 34.0}, 1.061, 0.0005, "IEC 60335-1 cl. 22.5, 34 V after 1 s: 0.47 µF with 1 MΩ fails"},
		{"bleeder_ohms", []any{45.0, 440 * math.Sqrt2, 75.0, 180.0}, 1.8905e6, 100, "ELECTRONICON catalogue p.47 formula"},
		{"bleeder_ohms", []any{0.47, 240 * math.Sqrt2, 34.0, 1.0}, 924.7e3, 60, "IEC 60335-1 cl. 22.5, computed"},
		{"watts_vr", []any{440 * math.Sqrt2, 15e3}, 25.8, 0.05, "initial resistor power, computed"},
		{"bleeder_watts", []any{440.0, 15e3}, 25.8 / 2, 0.03, "half the initial power from the peak, computed"},
		{"start_cap", []any{3.5, 2.5, 8.6, 2.5, 60.0}, 182.43, 0.005, "published solved problem, 1 hp 220 V motor"},
		{"start_cap", []any{4.5, 3.7, 9.5, 3.5, 60.0}, 177, 177 * 0.005, "Fitzgerald, Kingsley & Umans, Electric Machinery, 6th ed., Example 9.1 (from memory; the book rounds an angle, exact 176.20)"},
		{"start_cap", []any{4.82, 7.25, 7.95, 9.21, 60.0}, 182.995, 0.001, "Umans problem 9.1, computed"},
		{"reactance_c", []any{182.43, 60.0}, 14.540, 0.0005, "published solved problem, Xc of the start capacitor"},
		{"reactance_l", []any{1000 / (2 * math.Pi), 60.0}, 60, 1e-9, "XL = 2π f L"},
	})
	checkRefusals(t, []refusal{
		{"discharge_time", []any{1e3, 1.0, 30.0, 50.0}, "above the voltage at the start"},
		{"bleeder_ohms", []any{1.0, 50.0, 50.0, 1.0}, "at the safe voltage from the start"},
		{"bleeder_ohms", []any{1.0, 40.0, 50.0, 1.0}, "above the voltage at the start"},
		{"cap_load", []any{4.2, 330.0, 0.0}, "freq must be above 0 Hz"},
	})
}

// The start capacitor makes the two currents stand at a right angle.
func TestStartCapacitorIsAtRightAngle(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	for range 200 {
		r, x, rs, xs := 1+9*rng.Float64(), 1+9*rng.Float64(), 2+18*rng.Float64(), 1+9*rng.Float64()
		c := call(t, "start_cap", r, x, rs, xs, 60.0)
		reactance := xs - call(t, "reactance_c", c, 60.0)
		if angle := math.Atan2(x, r) - math.Atan2(reactance, rs); math.Abs(angle-math.Pi/2) > 1e-9 {
			t.Fatalf("%g %g %g %g: the currents are %.6f° apart", r, x, rs, xs, angle*180/math.Pi)
		}
	}
}

// The bleeder found for a time discharges in just that time.
func TestBleederAndDischargeAgree(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 4))
	for range 200 {
		c, v, time := 1+99*rng.Float64(), 100+900*rng.Float64(), 0.1+100*rng.Float64()
		safe := v * (0.01 + 0.9*rng.Float64())
		r := call(t, "bleeder_ohms", c, v, safe, time)
		if got := call(t, "discharge_time", r, c, v, safe); math.Abs(got-time) > 1e-9*time {
			t.Fatalf("%g µF from %g to %g V: %g s, want %g", c, v, safe, got, time)
		}
	}
}

func TestPowerFactorWarns(t *testing.T) {
	f, _ := Lookup("power_factor")
	a, err := f.Lay(300.0, 100.0, 2.0)
	if err != nil {
		t.Fatal(err)
	}
	if f.Warn(a) == "" {
		t.Error("more watts than volt-amperes pass without a warning")
	}
}
