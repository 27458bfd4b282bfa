package call

import (
	"math"
	"slices"
	"strings"
	"testing"

	"ohmcall/calc/cause"
	"ohmcall/notebook/record"
)

// What a technician types of fans, joints, leaks and starts, and what must not be
// taken for it: common practice.
func TestHeardFindings(t *testing.T) {
	const (
		freezer = "unit upright freezer; fault not cold"
		dryer   = "unit electric dryer; fault no heat"
		washer  = "unit front load washer; fault leaks"
		split   = "unit heat pump split; fault no cool"
		damp    = "unit dehumidifier; fault no water in bucket"
		stands  = "unit washer; fault does not drain"
		burner  = "unit gas oven; fault does not light"
		oven    = "unit electric oven; fault too hot"
		ice     = "unit fridge; fault ice maker makes no ice"
		brazed  = freezer + "; did brazed new drier"
		evap    = freezer + "; did replaced evap fan motor"
	)
	for _, x := range []struct{ call, saw, want string }{
		{dryer, "vent plugged with lint", "airflow-blocked"}, {dryer, "cord plugged in", ""}, {dryer, "vent clear", "airflow-clear"},
		{washer, "hose clamp off at drain pump", "water-line-leaks"}, {washer, "leak at drain hose", "water-line-leaks"}, {washer, "pump seal leaking", "seal-leaks"}, {washer, "tub seal leaking", "seal-leaks"},
		{washer, "outer tub cracked", "seal-leaks"}, {washer, "bellow torn at 6 oclock", "gasket-leaks"}, {washer, "pump and tub dry", "seal-dry"}, {washer, "pump seal not leaking", ""}, {washer, "no leaks", "water-line-dry"}, {"unit dishwasher; fault dishes dirty", "filter clogged", "arms-blocked"}, {"unit dishwasher; fault dishes dirty", "dishes clean", "cleans"}, {washer, "washes", "agitates"},
		{freezer, "evap fan wont spin", "evap-fan-stopped"}, {freezer, "both fans off", "cond-fan-stopped evap-fan-stopped"}, {freezer, "both fans running", "cond-fan-runs evap-fan-runs"},
		{freezer, "cond fan off", "cond-fan-stopped"}, {freezer, "evap fan quit", "evap-fan-stopped"}, {freezer, "evap fan blowing", "evap-fan-runs"}, {freezer, "evap fan blowing weakly", ""},
		{freezer, "one evap fan of 2 not turning", "evap-fan-stopped"}, {freezer, "condensing unit running", "starts-and-runs"}, {freezer, "condensing unit dirty", ""},
		{freezer, "fan dead", ""}, {freezer, "fan runs", ""}, {evap, "fan runs", "evap-fan-runs"}, {evap, "fan dead", "evap-fan-stopped"}, {"unit window ac; fault not cooling", "fan dead", "blower-stopped"},
		{freezer, "no fan noise in freezer", ""}, {"unit fridge; fault noisy, rattles", "no fan noise", "fans-quiet"},
		{freezer, "started and running", "starts-and-runs"}, {freezer, "started and running but trips", "cuts-out"}, {freezer, "started then tripped", ""},
		{freezer, "leak check, all joints no bubbles", "leak-not-found"}, {freezer, "bubbles", "leak-found"}, {brazed, "no leaks", "leak-not-found"}, {freezer, "no leaks", ""},
		{freezer, "conn tight", "connections-sound"}, {freezer, "conn loose", "connection-loose"}, {freezer, "wiring ok per diagram", "wiring-matches"},
		{ice, "first batch dropped", "makes-ice"}, {ice, "made ice", "makes-ice"}, {ice, "made ice on walls", ""}, {ice, "valve fills, mold full", "fills"}, {ice, "fill tube not frozen", "fill-tube-clear"}, {ice, "fill tube frozen", "fill-tube-frozen"},
		{freezer, "hard start kit tried, still hums and trips", "no-start-with-kit hums cuts-out"}, {freezer, "tried start kit, no go", "no-start-with-kit"}, {freezer, "start kit no help", "no-start-with-kit"},
		{freezer, "3 in 1 start kit, still locked", "no-start-with-kit"}, {freezer, "hard start kit fitted, no start", "no-start-with-kit does-not-start"}, {freezer, "3-in-1 didn't help", "no-start-with-kit"},
		{freezer, "no start kit fitted, no start", "does-not-start"}, {freezer, "needs hard start kit, still hums", "hums"}, {freezer, "starts with hard start kit", "starts-with-kit"}, {freezer, "drill kit in van, nothing works", "all-dead"},
		{freezer, "start kit fitted, no change in noise, runs", "starts-and-runs"},
		{burner, "flame lights in 35 sec, blue", "flame-lights"}, {burner, "burner lites", "flame-lights"}, {burner, "lights in 40s", "flame-lights"}, {burner, "lites ok", "flame-lights"}, {burner, "flame lights for 3 sec", ""},
		{burner, "lights on panel", ""}, {burner, "lights then goes out", "flame-drops-out"}, {burner, "no lights", "all-dead"}, {dryer, "lights ok", ""}, {"unit water heater; fault no hot water", "burner lights", "flame-lights"}, {"unit range; fault oven wont light", "burner lights", "flame-lights"}, {"unit furnace; fault no heat", "burner lights", "flame-lights"},
		{"unit microwave; fault no heat", "lights ok", ""}, {freezer, "lights in 3 sec", ""}, {burner, "hsi glows", "igniter-glows"},
		{oven, "holds 350", "heat-right"}, {oven, "held 350F", "heat-right"}, {oven, "temp ok at 350", "heat-right"}, {oven, "oven holds set temp", "heat-right"}, {oven, "holds 350 only", ""}, {freezer, "holds 350 microns", ""}, {oven, "temp not ok", ""}, {oven, "holds 20 min", ""},
		{stands, "drained in 45 s twice", "drains"}, {stands, "pump drains fast", "drains"}, {stands, "water out in 40 s", "drains"}, {stands, "tub empties fast", "drains"}, {stands, "drained ok", "drains"}, {stands, "drains in 45 sec", "drains"},
		{stands, "tub empties slow", ""}, {stands, "drained tub by hand", ""}, {stands, "drained in bucket", ""}, {stands, "water out in base", ""}, {stands, "pump drains sometimes", ""}, {stands, "pump drains 3 sec then stops", ""},
		{damp, "water drips in bucket", "dries"}, {damp, "1.5 pint in 2 hr", "dries"}, {damp, "2 pints in an hour", "dries"}, {damp, "0 pints in 2 hr", ""}, {damp, "0.0 pint in 2 hr", ""}, {damp, "pint not in", ""}, {damp, "bucket fills slowly", ""},
		{split, "od fan runs", "cond-fan-runs"}, {split, "od fan dead", "cond-fan-stopped"}, {split, "outdoor fan runs", "cond-fan-runs"}, {split, "id fan runs", ""},
		{ice, "water fills", "fills"}, {ice, "water fills slowly", "fills-slowly"}, {burner, "bubble tst good", "no-gas-leak"}, {freezer, "bubble test good", "leak-not-found"}, {burner, "bubble tst not good", ""},
		{freezer, "starts hard", ""}, {freezer, "starts every other try", ""}, {freezer, "starts 2 out of 5 times", ""},
	} {
		c := New()
		for _, l := range strings.Split(x.call, "; ") {
			if _, err := c.Apply(testDay(), l); err != nil {
				t.Fatal(err)
			}
		}
		got, want := c.sighted(x.saw), strings.Fields(x.want)
		slices.Sort(got)
		slices.Sort(want)
		if !slices.Equal(got, want) {
			t.Errorf("%s: saw %s is %q, want %q", x.call, x.saw, got, want)
		}
	}
}

// What is offered for words that are no finding is never their opposite: common practice.
func TestOfferedFindings(t *testing.T) {
	checkTrade(t, []tradeCase{
		{name: "a fan, of two", lines: "unit fridge; fault not cold; saw fan dead", in: []string{"Perhaps: saw evap-fan dead, saw cond-fan dead"}, source: "common practice"},
		{name: "a fan that runs", lines: "unit fridge; fault not cold; saw fan runs", in: []string{"Perhaps: saw evap-fan runs, saw cond-fan runs"}, source: "common practice"},
		{name: "a fan not heard", lines: "unit fridge; fault not cold; saw no fan noise in freezer", not: []string{"not of a fan", "saw no fan noise,"}, source: "common practice"},
		{name: "no leaks", lines: "unit fridge; fault not cold; saw no leaks", in: []string{"saw no leak found"}, not: []string{"gas leak"}, source: "common practice"},
		{name: "a leak's cause", lines: "unit washer; fault leaks; saw tub seal leaking", in: []string{"Cause supported: seal of tub or pump leaks"}, source: "common practice"},
	})
}

// A start capacitor that nothing speaks of is not asked for, and never by the number of
// the run capacitor: a machine with a PTC has none (common practice).
func TestStartCapacitorAskedFor(t *testing.T) {
	const at = "unit fridge; fault clicks, not cold; "
	for _, x := range []struct {
		lines string
		asked bool
		line  string // what it is to read
	}{
		{at + "plate run cap, mfd 12; mfd run 11.6", false, ""}, {at + "plate mfd run 12", false, ""}, {at + "plate mfd 12; ohm ptc 8.2 cold", false, ""}, {at + "ohm ptc 8.2 cold", false, ""},
		{at + "plate mfd run 12, mfd start 88-108", true, "mfd start 88"}, {at + "plate mfd 88-108", true, "mfd start 88"}, {at + "plate start relay, mfd run 12", true, ""}, {at + "plate mfd run 12; mfd start 98", true, ""}, {at + "note nothing marked", true, ""},
	} {
		c := New()
		for _, l := range strings.Split(x.lines, "; ") {
			if _, err := c.Apply(testDay(), l); err != nil {
				t.Fatal(err)
			}
		}
		facts := c.facts(math.MaxInt)
		asked := !slices.ContainsFunc(facts, func(f cause.Fact) bool { return f.Code == "start-cap-none" || f.Code == "start-cap-unlikely" })
		if asked != x.asked || expectStartCap(c).line != x.line {
			t.Errorf("%s: a start capacitor is asked for: %v, by %q", x.lines, asked, expectStartCap(c).line)
		}
	}
}

// Three legs that draw too much alike, at sound volts, are an overload and no open leg;
// a coil that has its volts says nothing of the mains; a machine named so has three like
// windings: common practice.
func TestThreePhaseMotor(t *testing.T) {
	const (
		motor = "unit three phase pump motor; fault trips overload; plate volts 460, amps 14, hp 10; "
		volts = "volt L1 L2 462, L2 L3 460, L1 L3 459; "
		high  = "amp L1 17.5 run, L2 17.4 run, L3 17.6 run"
		comp  = "unit three phase compressor motor; fault wont start; plate volts 208, amps 22; "
	)
	closed := map[string]cause.State{"leg-fuse-open": cause.RuledOut, "pole-open": cause.RuledOut, "phase-lost": cause.RuledOut, "no-supply": cause.RuledOut, "wrong-rotation": cause.Open}
	with := func(code string, s cause.State) map[string]cause.State {
		m := map[string]cause.State{code: s}
		for k, v := range closed {
			m[k] = v
		}
		return m
	}
	checkTrade(t, []tradeCase{
		{name: "all legs high, volts sound", lines: motor + volts + high, in: []string{"All three are above the plate alike", "Cause supported: overloaded"}, states: with("load-drags", cause.Supported), next: "find what loads it", source: "common practice"},
		{name: "volts not read", lines: motor + high, not: []string{"Cause supported"}, states: with("load-drags", cause.Open), source: "common practice"},
		{name: "one leg high", lines: motor + volts + "amp L1 11.0 run, L2 17.4 run, L3 17.6 run", not: []string{"overloaded"}, states: map[string]cause.State{"load-drags": cause.Open}, source: "common practice"},
		{name: "one leg dead", lines: motor + "amp L1 0 run, L2 24 run, L3 24.5 run", states: map[string]cause.State{"load-drags": cause.RuledOut, "leg-fuse-open": cause.Supported}, source: "common practice"},
		{name: "within the plate", lines: motor + volts + "amp L1 13.1 run, L2 13.2 run, L3 13.0 run", states: map[string]cause.State{"load-drags": cause.RuledOut}, source: "common practice"},
		{name: "a bearing that drags", lines: motor + "saw bearing dragging", in: []string{"Cause supported: overloaded"}, states: map[string]cause.State{"load-drags": cause.Supported}, source: "common practice"},
		{name: "what turns freely", lines: motor + "saw load free", states: map[string]cause.State{"load-drags": cause.RuledOut, "load-jammed": cause.RuledOut}, source: "common practice"},
		{name: "volts at the coil", lines: "unit three phase pump motor; fault wont run; volt coil 24 run", states: map[string]cause.State{"no-supply": cause.Open, "control-not-calling": cause.RuledOut, "contactor-coil-open": cause.Open}, source: "common practice"},
		{name: "and the coil open", lines: "unit three phase pump motor; fault wont run; volt coil 24 run; ohm contactor-coil OL", states: map[string]cause.State{"no-supply": cause.Open, "contactor-coil-open": cause.Supported}, next: "replace the coil", source: "common practice"},
		{name: "of a control circuit", lines: motor + "volt coil 120 run", in: []string{"volts at coil: sound"}, states: map[string]cause.State{"no-supply": cause.Open, "control-not-calling": cause.RuledOut}, source: "common practice"},
		{name: "no volts at the coil", lines: motor + "volt coil 0 run", states: map[string]cause.State{"control-not-calling": cause.Supported}, source: "common practice"},
		{name: "and the coil sound", lines: "unit three phase pump motor; fault wont run; ohm contactor-coil 15", states: map[string]cause.State{"contactor-coil-open": cause.RuledOut}, source: "common practice"},
		{name: "three like pairs", lines: comp + "ohm T1 T2 0.8, T2 T3 0.8, T1 T3 0.8", in: []string{"The three pairs read alike, as they should"}, not: []string{"Too close", "inverter"}, states: map[string]cause.State{"winding-open": cause.RuledOut}, source: "common practice"},
		{name: "three unlike pairs", lines: comp + "ohm T1 T2 0.8, T2 T3 2.9, T1 T3 3.1", not: []string{"as they should"}, states: map[string]cause.State{"winding-shorted": cause.Open}, source: "common practice"},
		{name: "three like pairs of one that is not named so", lines: "unit fridge; fault wont start; ohm 1 2 0.8, 2 3 0.8, 1 3 0.8", in: []string{"Too close to tell"}, not: []string{"as they should"}, source: "common practice"},
	})
}

// The plate of the record is that of the machine that is in it: common practice.
func TestPlateOfTheNewMachine(t *testing.T) {
	at := []string{"unit fridge", "fault no cool", "plate volts 115, amps 1.5, lra 14, mfd run 12"}
	for _, x := range []struct {
		lines []string
		want  string
	}{
		{nil, "volts 115, amps 1.5, lra 14, mfd run 12"},
		{[]string{"did swapped compressor", "plate lra 13, amps 1.4"}, "volts 115, amps 1.5 (before the repair), lra 14 (before the repair), mfd run 12, lra 13, amps 1.4"},
		{[]string{"plate amps 1.4"}, "volts 115, lra 14, mfd run 12, amps 1.4"},
		{[]string{"did swapped compressor", "plate lra 14"}, "volts 115, amps 1.5, mfd run 12, lra 14"},
		{[]string{"plate mfd start 88-108"}, "volts 115, amps 1.5, lra 14, mfd run 12, mfd start 88-108"},
	} {
		c := applyAll(t, append(slices.Clone(at), x.lines...)...)
		if want := (record.Fact{Label: "Plate of compressor", Text: x.want}); !slices.Contains(c.Record().Identity, want) {
			t.Errorf("%q: %q, want %q", x.lines, c.Record().Identity, want)
		}
	}
}
