package cause

import "testing"

// Every cause has words of work, and its own usual repair speaks of most.
func TestEveryCauseHasWorkWords(t *testing.T) {
	spoken := 0
	for _, c := range tables().causes {
		if len(c.Work) == 0 {
			t.Errorf("%s has no words of work", c.Code)
		}
		if Mends(c.Code, c.Fix) {
			spoken++
		} else {
			t.Logf("%s: %q speaks of none of %q", c.Code, c.Fix, c.Work)
		}
	}
	if n := len(tables().causes); spoken < n*9/10 {
		t.Errorf("only %d of %d usual repairs speak of their words", spoken, n)
	}
}

// What a technician would write down for a cause: common practice.
func TestMends(t *testing.T) {
	for _, c := range []struct {
		code, text string
		want       bool
	}{
		{"condenser-dirty", "cleaned condenser", true},
		{"cond-fan-failed", "cleaned condenser", false},
		{"cond-fan-failed", "fitted new condenser fan motor", true},
		{"limit-open", "hi limit kit", true},
		{"airflow-blocked", "cleaned the dryer vent", true},
		{"limit-open", "cleaned the dryer vent", false},
		{"start-device-failed", "replaced start device", true},
		{"start-device-failed", "replaced start cap", false},
		{"start-device-failed", "fitted new start capacitor", false},
		{"start-device-failed", "installed hard start capacitor", true},
		{"start-device-failed", "replaced start cap and start relay", true},
		{"start-device-failed", "new start", true},
		{"start-cap-failed", "replaced start cap", true},
		{"start-cap-failed", "replaced run cap", false},
		{"start-cap-failed", "replaced start and run caps", true},
		{"run-cap-failed", "new start cap", false},
		{"run-cap-failed", "new run capacitor", true},
		{"run-cap-failed", "replaced capacitor", true},
		{"compressor-tight", "new start capacitor", false},
		{"harvest-valve", "replaced water inlet valve", false},
		{"harvest-valve", "new inlet solenoid", false},
		{"harvest-valve", "replaced float valve", false},
		{"harvest-valve", "head pressure control valve changed", false},
		{"harvest-valve", "replaced hot gas valve", true},
		{"harvest-valve", "fitted harvest solenoid", true},
		{"harvest-valve", "replaced valve coil", true},
		{"harvest-valve", "replaced harvest valve and water valve", true},
		{"scaled", "cleaned condenser", false},
		{"scaled", "cleaned evaporator and condenser", true},
		{"scaled", "cleaned", true},
		{"heater-failed", "bake element SAMPLE-BE26", true},
	} {
		if got := Mends(c.code, c.text); got != c.want {
			t.Errorf("%q mends %s: %v", c.text, c.code, got)
		}
	}
}

// A motor that failed and one that is not fed exclude each other; a dirty
// condenser and a fan that stands do not.
func TestApart(t *testing.T) {
	by := func(code string) *Cause { c, _ := By(code); return &c }
	if !Apart(by("cond-fan-failed"), by("cond-fan-unfed")) || !Apart(by("evap-fan-unfed"), by("evap-fan-failed")) {
		t.Error("a failed and an unfed fan are not apart")
	}
	if Apart(by("condenser-dirty"), by("cond-fan-failed")) {
		t.Error("dirt and a failed fan are apart")
	}
}
