package cause

import "testing"

// Every cause has words of work; its own usual repair speaks of it or the row
// in the table is empty.
func TestEveryCauseHasWorkWords(t *testing.T) {
	for _, c := range tables().causes {
		if len(workWords[c.Code]) == 0 {
			t.Errorf("%s has no words of work", c.Code)
		}
	}
	for code := range workWords {
		if _, ok := By(code); !ok {
			t.Errorf("words of work for %s, which is no cause", code)
		}
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
