package call

import (
	"testing"
)

// A reading below what the leads have speaks of a wrong zero, and proves no earth:
// common practice.
func TestEarthBelowTheLeads(t *testing.T) {
	checkTrade(t, []tradeCase{
		{"hundredths", "unit fridge; probes 0.1; safe; ohm earth 0.04; show verdicts", []string{"earth: cannot tell, -0.06 Ω, 0.04 Ω less 0.1 Ω", "short the probes"}, []string{"NaN", "sound"}, nil, "", "common practice"},
		{"tenths", "fault gives shock; probes 0.4; safe; ohm ground 0.2", []string{"cannot tell, -0.2 Ω", "short the probes"}, []string{"NaN", "sound"}, nil, "", "common practice"},
		{"as much as the leads", "unit fridge; probes 0.10; safe; ohm earth 0.10", []string{"sound, 0 Ω"}, []string{"NaN"}, nil, "", "common practice"},
		{"a count less", "unit fridge; probes 0.10; safe; ohm earth 0.09", []string{"sound, -0.01 Ω"}, []string{"NaN"}, nil, "", "common practice"},
	})
}
