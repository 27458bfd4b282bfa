package formula

import (
	"math"
	"strings"
	"testing"
)

func TestMotorPublished(t *testing.T) {
	const umans = "Umans Example 9.2, 1/4 hp 110 V 4-pole motor at s = 0.05 (inputs seen, results computed)"
	with := func(extra ...any) []any { return joined(sampleMotor, extra) }
	checkPublished(t, []published{
		{"motor_ohms", sampleMotor[1:], math.Hypot(18.943, 23.923), 0.001, umans},
		{"motor_amps", sampleMotor, 3.605, 0.0005, umans},
		{"motor_pf", sampleMotor, 0.6208, 0.00005, umans},
		{"motor_watts", sampleMotor, 246.2, 0.05, umans},
		{"motor_shaft", with(24.0, 13.0), 147.4, 0.05, umans},
		{"motor_shaft", with(0.0, 0.0), 184.4, 0.05, umans},
		{"motor_torque", with(24.0, 13.0, 60.0, 4.0), 0.823, 0.0005, umans},
		{"motor_eff", with(24.0, 13.0), 59.9, 0.05, umans},
		{"motor_rpm", []any{60.0, 4.0, 0.05}, 1710, 1e-9, umans},
		{"motor_slip", []any{1710.0, 60.0, 4.0}, 0.05, 1e-9, umans},
		{"start_amps_max", []any{110.0, 2.02}, 110 / 2.02, 1e-9, "Ohm's law"},
	})
	m := run([]float64{110, 0.05, 2.02, 2.79, 4.12, 2.12, 66.8})
	if math.Abs(m.forward-207.0) > 0.1 || math.Abs(m.backward-12.88) > 0.01 {
		t.Errorf("air-gap power %.2f and %.3f W, want 207.0 and 12.88 W (%s)", m.forward, m.backward, umans)
	}
}

// At standstill both fields are alike: no torque; and no winding with
// reactance draws as much as its resistance alone would allow.
func TestMotorAtRest(t *testing.T) {
	rest := joined([]any{110.0, 1.0}, sampleMotor[2:])
	if m := run([]float64{110, 1, 2.02, 2.79, 4.12, 2.12, 66.8}); math.Abs(m.forward-m.backward) > 1e-9 {
		t.Errorf("fields differ at rest: %g and %g W", m.forward, m.backward)
	}
	amps, most := call(t, "motor_amps", rest...), call(t, "start_amps_max", 110.0, 2.02)
	if amps >= most {
		t.Errorf("%g A at rest exceeds the upper bound %g A", amps, most)
	}
	f, _ := Lookup("start_amps_max")
	if !strings.Contains(f.Say(Args{}, most), "upper bound") {
		t.Error("the result does not say that it is an upper bound")
	}
}

func TestMotorRefusals(t *testing.T) {
	checkRefusals(t, []refusal{
		{"motor_amps", joined([]any{110.0, 1.5}, sampleMotor[2:]), "slip must be at most 1"},
		{"motor_amps", joined([]any{110.0, 0.0}, sampleMotor[2:]), "slip must be above 0"},
		{"motor_torque", joined([]any{110.0, 1.0}, sampleMotor[2:], []any{0.0, 0.0, 60.0, 4.0}), "stands still"},
		{"motor_torque", joined(sampleMotor, []any{0.0, 0.0, 60.0, 3.0}), "even whole number"},
		{"motor_eff", joined(sampleMotor, []any{200.0, 13.0}), "losses exceed"},
		{"motor_rpm", []any{60.0, 5.0}, "even whole number"},
		{"motor_slip", []any{1850.0, 60.0, 4.0}, "1800 rpm at most"},
	})
	f, _ := Lookup("motor_shaft")
	a, err := f.Lay(joined(sampleMotor, []any{200.0, 13.0})...)
	if err != nil {
		t.Fatal(err)
	}
	if f.Warn(a) == "" {
		t.Error("losses above the power pass without a warning")
	}
}
