package call

import (
	"math"
	"slices"
	"strings"
	"testing"

	"ohmcall/calc/cause"
)

// What words of a complaint mean in a machine that has neither compressor nor gasket:
// common practice.
func TestComplaintOfMachines(t *testing.T) {
	for _, x := range []struct{ unit, fault, want string }{
		{"electric dryer", "blew its second thermal cutoff in a month, pops again", "too-hot"},
		{"dryer", "keeps popping thermal fuses", "too-hot"},
		{"electric dryer", "no heat, thermal fuse is open", "no-heat"},
		{"dryer", "trips the breaker", "trips-breaker"},
		{"electric dryer", "the element stays on when the drum has stopped", "too-hot"},
		{"electric range", "rear burner stuck on", "too-hot"},
		{"dishwasher", "heating element stays on", "too-hot"},
		{"electric dryer", "stays cold", "no-heat"},
		{"gas furnace", "blower never comes on and it goes off on limit", "no-blower"},
		{"electric furnace", "fan motor won't run", "no-blower"},
		{"gas furnace", "blower will not stop", "fan-on"},
		{"gas furnace", "inducer blower not running", "furnace-no-heat"},
		{"washer", "cold side does not fill", "no-fill"},
		{"washer", "no cold water", "no-fill"},
		{"electric water heater", "only cold water", "no-heat"},
		{"sump pump", "runs constantly", "pump-on"},
		{"sump pump", "pit is full, pump does nothing", "no-drain"},
		{"dishwasher", "runs all the time", "never-ends"},
		{"disposer", "drips under the sink", "leaks-disposer"},
		{"gas water heater", "puddle around the tank", "leaks-tank"},
		{"gas water heater", "water only tepid", "pilot-out"},
		{"condensing gas furnace", "puddle under it", "leaks-condensate"},
		{"top load washer", "oil spots on clothes", "leaks-oil"},
		{"front load washer", "leaks from the door", "leaks-water"},
		{"electric water heater", "hot water stinks of sulfur", "smelly-water"},
		{"bathroom exhaust fan", "grinding noise", "noisy-fan"},
		{"upright vacuum", "has no suction", "draws-poorly"},
		{"range hood", "low speed doesn't work", "motor-dead"},
		{"electric dryer", "needs two hours per load", "slow-dry"},
	} {
		if got := applyAll(t, "unit "+x.unit, "fault "+x.fault).complaint(); got != x.want {
			t.Errorf("unit %q, fault %q is %q, want %q", x.unit, x.fault, got, x.want)
		}
	}
}

// What a finding shows, and what it must not, in the machine at hand: common practice.
func TestFindingOfMachines(t *testing.T) {
	for _, x := range []struct{ unit, fault, lines, supported string }{
		{"sump pump", "never shuts off", "saw float switch stuck up", "level-says-full"},
		{"dishwasher", "runs all the time", "saw float stuck", "level-says-full"},
		{"front load washer", "won't shut off", "saw pressure switch says full", "level-says-full"},
		{"dishwasher", "overfills", "saw float stuck", "level-says-empty"},
		{"dishwasher", "overfills", "saw float stuck up", ""},
		{"sump pump", "does not pump", "saw float switch stuck", "level-says-empty"},
		{"gas furnace", "short cycles on limit", "saw blower stopped", "blower-unfed blower-failed"},
		{"gas furnace", "blower doesn't run", "mfd blower-cap 3.1; plate mfd blower-cap 5 6%", "run-cap-failed"},
		{"gas dryer", "heat goes off after ten minutes", "saw airflow clear", ""},
		{"electric dryer", "too hot", "ohm thermostat 0.1 hot", "thermostat-stuck"},
		{"electric water heater", "too hot", "ohm upper-thermostat 0.1 at 180F", "thermostat-stuck"},
		{"electric water heater", "no hot water", "ohm thermostat 0.1 at 110F", ""},
		{"electric oven", "too hot", "ohm thermostat 0.1 at 200F", ""},
		{"electric range", "burner stays on with the knob off", "saw infinite switch welded", "heat-relay-stuck"},
		{"electric oven", "too hot", "saw relay welded", "heat-relay-stuck"},
		{"electric water heater", "too hot", "saw upper thermostat stuck closed", "thermostat-stuck"},
		{"disposer", "hums and does not turn", "saw flywheel locked", "load-jammed"},
		{"disposer", "hums and does not turn", "saw won't turn with the hex wrench", "load-jammed"},
		{"heat pump dryer", "does not dry", "saw evaporator clogged with lint", "airflow-blocked"},
		{"heat pump dryer", "does not dry", "saw condenser dirty", "airflow-blocked"},
		{"vacuum", "no suction", "saw hose blocked", "airflow-blocked"},
		{"dryer", "squeals", "saw drum roller seized", "bearings-worn"},
		{"dishwasher", "won't start", "saw delay start on", "set-waiting"},
		{"washer", "won't start", "saw child lock on", "set-waiting"},
		{"three-phase motor", "runs hot", "saw voltage unbalanced", "phases-unequal"},
		{"electric water heater", "leaks", "saw tank leaking", "tank-leaks"},
		{"electric water heater", "leaks", "saw relief valve drips", "relief-leaks"},
		{"garbage disposer", "leaks", "saw dishwasher hose leaking", "joints-leak"},
	} {
		c := applyAll(t, "unit "+x.unit, "fault "+x.fault)
		for _, l := range strings.Split(x.lines, "; ") {
			must(t, c, c.Expand(l))
		}
		r := c.weigh(math.MaxInt)
		if got := strings.Join(r.Codes(cause.Supported), " "); got != x.supported {
			t.Errorf("%s, %s, %s: supported %q, want %q", x.unit, x.fault, x.lines, got, x.supported)
		}
	}
}

// The first test is one that this machine has: common practice.
func TestFirstTestFitsTheMachine(t *testing.T) {
	for _, x := range []struct{ unit, fault, has, not string }{
		{"disposer", "hums and trips its reset", "hex key", "ohms"},
		{"top load washer", "leaks", "", "gasket"},
		{"front load washer", "leaks", "gasket", ""},
		{"electric dryer", "blows the thermal fuse every month", "vent", "sensor"},
		{"electric dryer", "heats with the motor off", "sheath", "sensor"},
		{"gas water heater", "water smells", "smell each", ""},
		{"sump pump", "won't shut off", "float", "timer"},
	} {
		c := applyAll(t, "unit "+x.unit, "fault "+x.fault)
		r := c.weigh(math.MaxInt)
		if got := c.nextStep(&r); !strings.Contains(got, x.has) || x.not != "" && strings.Contains(got, x.not) {
			t.Errorf("%s, %s: next %q", x.unit, x.fault, got)
		}
	}
}

// A blocked vent of what burns gas at a flue makes carbon monoxide; that of a dryer is
// lint: common practice.
func TestBlockedVent(t *testing.T) {
	for _, x := range []struct {
		unit, saw string
		co        bool
	}{
		{"gas water heater, natural draft", "saw vent blocked", true},
		{"gas furnace 80%", "saw vent pipe full of leaves", true},
		{"power vent gas water heater", "saw vent plugged", true},
		{"gas boiler", "saw crushed vent pipe", true},
		{"gas dryer", "saw vent blocked", false},
		{"electric dryer", "saw vent plugged with lint", false},
		{"gas furnace", "saw return vent blocked by a sofa", false},
		{"electric furnace", "saw vent blocked", false},
		{"gas furnace", "saw vent clear", false},
	} {
		c := applyAll(t, "unit "+x.unit, "fault no heat", x.saw)
		if got := slices.ContainsFunc(c.findings, func(f finding) bool { return f.code == "co" }); got != x.co {
			t.Errorf("%s, %s: carbon monoxide %v", x.unit, x.saw, got)
		}
	}
}

// Quiet after the repair of a noise is the noise gone.
func TestQuietAfterANoise(t *testing.T) {
	c := applyAll(t, "unit dryer", "fault squeals", "did replaced drum rollers", "saw quiet")
	if f := c.findings[len(c.findings)-1]; f.code != "quiet-now" {
		t.Errorf("after the repair: %s", f.code)
	}
	c = applyAll(t, "unit dryer", "fault squeals", "saw quiet")
	if f := c.findings[len(c.findings)-1]; f.code != "silent" {
		t.Errorf("before it: %s", f.code)
	}
}
