package call

import (
	"strings"
	"testing"
)

// What is good is not heard as bad, nor as another thing, and what is bad still is;
// common practice.
func TestGoodIsNotHeardAsBad(t *testing.T) {
	heater, oil, furnace, pump := "unit gas water heater; fault pilot wont stay lit", "unit oil furnace; fault locks out on reset", "unit gas furnace; fault no heat, inducer runs", "unit sump pump; fault does not come on, pit full; did new float switch"
	washer, disposer, oven := "unit washer; fault wont drain, water stays in", "unit garbage disposer; fault jammed, hums; did freed it", "unit microwave; fault dead; ohm primary-switch 0.1 closed; ohm primary-switch OL open"
	for _, row := range []struct{ call, saw, codes string }{
		{heater, "gas leak test with soap, no bubbles", "no-gas-leak"},
		{heater, "gas leaks searched at each joint, none", "no-gas-leak"},
		{heater, "Gas leak retest after repair: all dry", "no-gas-leak"},
		{heater, "new flex fitted, gas leak check with bubbles, tight", "no-gas-leak"},
		{heater, "gas leak test at the union ok, valve leaks", "gas-leak"},
		{heater, "gas leak soap test clean, but a bubble at the cock", "gas-leak"},
		{heater, "gas leak test failed", "gas-leak"},
		{heater, "gas leak tested, not tight", "gas-leak"},
		{oil, "smoke spot 0, draft ok", "no-smoke no-spill"},
		{oil, "no smoke, draft and CO2 tested, smoke number: zero", "no-smoke"},
		{oil, "smoke test came out 0", "no-smoke"},
		{oil, "smoke spot 5", "smoke"},
		{oil, "smoke number 0.5 at the flue", "smoke"},
		{oil, "oil gauge at 1/4", ""},
		{oil, "oil pressure 140 psi", ""},
		{"unit fridge; fault no cool", "oil at joint", "oil-stain"},
		{furnace, "inducer hose torn and wet", "draft-poor"},
		{furnace, "hose at the pressure switch has a hole", "draft-poor"},
		{furnace, "split rubber inducer tube", "draft-poor"},
		{furnace, "brittle pressure switch tubing", "draft-poor"},
		{furnace, "inducer housing cracked", "co"},
		{furnace, "cracked inducer", "co"},
		{pump, "empties the basin, shuts off", "drains"},
		{pump, "pump pumps the pit right down and stops", "drains"},
		{pump, "pumps the pit half empty", ""},
		{washer, "hums, no water leaves", "hums does-not-drain"},
		{washer, "no water comes in", "does-not-fill"},
		{"unit fridge; fault no water at the door", "no water comes out", "does-not-fill"},
		{disposer, "grinds food", "starts-and-runs"},
		{disposer, "grinds", "noisy"},
		{oven, "door latch worn, primary switch sticks", ""},
		{oven, "door switch broken", "switch-open"},
	} {
		c := applyAll(t, strings.Split(row.call+"; saw "+row.saw, "; ")...)
		var got []string
		for i := range c.findings {
			if f := &c.findings[i]; f.entry == c.entry && f.code != "" {
				got = append(got, f.code)
			}
		}
		if strings.Join(got, " ") != row.codes {
			t.Errorf("%s: saw %s: %v, want %s", row.call, row.saw, got, row.codes)
		}
		if len(c.relapsed) > 0 {
			t.Errorf("%s: saw %s: taken as not mended", row.call, row.saw)
		}
	}
}

// A sign that is denied is no complaint.
func TestDeniedSignIsNoComplaint(t *testing.T) {
	for fault, want := range map[string]string{"not heating, no buzz no smell": "no-heat", "no heat, no hum": "no-heat", "no heat, hums": "motor-dead"} {
		if got := applyAll(t, "unit electric oven", "fault "+fault).complaint(); got != want {
			t.Errorf("%s: %s, want %s", fault, got, want)
		}
	}
}
