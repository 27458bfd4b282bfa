package call

import (
	"strings"
	"testing"

	"ohmcall/notebook/record"
)

// TestRenewedMachine holds a machine that took the place of another to its own
// readings: neither the roles nor the insulation of the old one are its own.
func TestRenewedMachine(t *testing.T) {
	c := applyAll(t, "unit refrigerator", "fault clicks", "safe", "ohm A B 3, A C 12, B C 9", "ohm A case 100", "mark A common",
		"did replaced compressor", "wire black common")
	if got := rolesOf(c); got != "incomplete " {
		t.Errorf("a new machine has %q", got)
	}
	if g := c.grounds(); g != "" {
		t.Errorf("a new machine is condemned by the old one's reading: %s", g)
	}
	must(t, c, "ohm A case OL, B case OL, C case OL")
	must(t, c, "ohm A B 12.0, A C 15, B C 3")
	if got := rolesOf(c); got != "sound A=start B=common C=run" {
		t.Errorf("a new machine read anew has %q", got)
	}
	r := c.Record()
	var names, verdicts []string
	for _, m := range r.Machines {
		names = append(names, m.Name+": "+m.State)
	}
	for _, v := range r.Verdicts {
		verdicts = append(verdicts, v.Subject+" "+v.Word)
	}
	if got := strings.Join(names, "; "); got != "compressor, before entry 7: grounded; compressor: windings sound" {
		t.Errorf("machines drawn: %s", got)
	}
	if got := strings.Join(verdicts, "; "); !strings.Contains(got, "windings (before the repair) failed; windings sound") ||
		!strings.Contains(got, "insulation A to case (before the repair) failed") {
		t.Errorf("verdicts: %s", got)
	}
	c = applyAll(t, "fault clicks", "ohm A case 100", "did replaced compressor", `strike 3 "it was not"`)
	if c.grounds() == "" {
		t.Error("a struck replacement still lifts what was condemned")
	}
}

// A part that was replaced though it read sound is told to the supervisor, and costs
// no proof.
func TestReplacedThoughSound(t *testing.T) {
	const told = "Note: bake was replaced (entry 4), and had read sound (entry 3)"
	for lines, want := range map[string]bool{
		"ohm bake 20.6; did new bake element; ohm bake 20.5":  true,
		"ohm bake OL; did new bake element; ohm bake 20.5":    false,
		"ohm bake 20.6; did new broil element; ohm bake 20.5": false,
		"ohm bake 20.6; did did not replace bake element":     false,
		"ohm bake 20.6; did cleaned bake element":             false,
	} {
		c := applyAll(t, append([]string{"unit electric oven", "plate watts bake 2800, volts 240"}, strings.Split(lines, "; ")...)...)
		if got := strings.Join(c.Record().Alerts, "\n"); strings.Contains(got, told) != want {
			t.Errorf("%s: %s", lines, got)
		}
	}
	fuses := applyAll(t, "unit three-phase motor", "ohm fuse-L1 0.1", "ohm fuse-L2 0.1", "ohm fuse-A 0.1", "ohm fuse-L3 OL", "did replaced a fuse, L3")
	if got := strings.Join(fuses.Record().Alerts, "\n"); strings.Contains(got, "had read sound") {
		t.Errorf("of three fuses one was replaced: %s", got)
	}
	c := applyAll(t, "unit electric oven", "plate watts bake 2800, volts 240", "ohm bake 20.6", "ohm bake case 2k", "did new bake element")
	if got := strings.Join(c.Record().Alerts, "\n"); strings.Contains(got, "had read sound") {
		t.Errorf("its sheath had failed: %s", got)
	}
}

// A part that reads bad after the repair is no proof of it, whatever it was called when
// it was fitted.
func TestBadAfterRepair(t *testing.T) {
	for lines, bad := range map[string]bool{
		"unit window air conditioner; plate mfd herm 35; mfd herm 20; did replaced dual cap; mfd herm 19.5":            true,
		"unit window air conditioner; plate mfd herm 35; mfd herm 20; did replaced dual cap; mfd herm 34.6":            false,
		"unit refrigerator; plate mfd run 12; did replaced run capacitor; mfd run 6.0":                                 true,
		"unit freezer; ohm defrost-thermostat OL cold; did replaced defrost stat; ohm defrost-thermostat OL cold":      true,
		"unit freezer; ohm defrost-thermostat OL cold; did replaced defrost stat; ohm defrost-thermostat 0.1 cold":     false,
		"unit electric dryer; plate watts 5200, volts 240; did replaced belt; ohm heater OL":                           true,
		"unit electric dryer; plate watts 5200, volts 240; did replaced heater; ohm heater 10.6; ohm heater case 2k":   true,
		"unit electric dryer; plate watts 5200, volts 240; ohm heater OL; did replaced heater; ohm heater 10.6 before": false,
	} {
		c := applyAll(t, strings.Split(lines, "; ")...)
		missing := flat(c.missing())
		if strings.Contains(missing, "part sound:") != bad && !(bad && c.result() == record.Unsafe) || c.result() == record.Proved {
			t.Errorf("%s: %s, %s", lines, c.result(), missing)
		}
	}
}

// TestRenewedByWords takes only a replacement that was done for one.
func TestRenewedByWords(t *testing.T) {
	for line, want := range map[string]bool{
		"did replaced compressor": false, "part compressor SAMPLE-C1, 1, 10": false,
		"did customer does not want the compressor replaced": true, "part new compressor quoted, 1, 310": true, "did new start device": true,
	} {
		c := applyAll(t, "unit refrigerator", "fault clicks", "safe", "ohm A case 100", line)
		if got := c.grounds() != ""; got != want {
			t.Errorf("%s: condemned %v", line, got)
		}
	}
}

// What mends nothing wants no proof, leaves what is unsafe as it is, and takes
// neither the ending nor the state of the unit back: common practice.
func TestWorkThatMendsNothing(t *testing.T) {
	for line, mends := range map[string]bool{
		"did ran 20 min": false, "did took panel off": false, "did moved it back": false, "did diagnosed bad compressor": false, "did checked wiring": false,
		"did explained to client": false, "did photographed plate": false, "did swapped compressor to compare": false, "did removed cover, ran test cycle and checked amps": false,
		"did took panel off and cleaned coil": true, "did thawed the ice": true,
	} {
		c := applyAll(t, "client Petra Placeholder", "unit refrigerator", "fault clicks", "note client declined the repair", "left unplugged", line)
		if got := len(c.proofMissing()) > 0; got != mends {
			t.Errorf("%s: a proof is wanted: %v", line, got)
		}
		if h := c.Record().Header; (h.Result == record.NotProved) != mends || (h.Left == "") != mends {
			t.Errorf("%s: %s, left %q", line, h.Result, h.Left)
		}
		if c = applyAll(t, "unit refrigerator", "fault clicks", "safe", "ohm A case 100", line); c.result() != record.Unsafe {
			t.Errorf("%s: a machine with a pin to its case is %s", line, c.result())
		}
	}
}

// TestAtRest keeps a sum from taking the sagged volts for those at rest.
func TestAtRest(t *testing.T) {
	c := applyAll(t, "volt line 120.0", "volt line 110.0 start", "let rest = volt(line)", "let fell = volt(line, start)")
	if got := c.defs[0].value.String() + "; " + c.defs[1].value.String(); !strings.HasPrefix(got, "120.0") || !strings.Contains(got, "; 110.0") {
		t.Errorf("at rest and at start: %s", got)
	}
	must(t, c, "amp comp 12 peak")
	if _, err := c.Apply(nine, "amp(comp)"); err == nil || !strings.Contains(err.Error(), "with the word peak only") {
		t.Errorf("amps that were read at the start only: %v", err)
	}
}
