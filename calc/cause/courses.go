package cause

import "slices"

// courses is the order in which the trade looks where weighing alone would take
// the cheapest test first. What energises comes in it after the insulation was
// looked at.
var courses = []Course{
	{
		// A pump is opened and turned before it is measured: what jams it is seen.
		On: []string{"no-drain"}, Tests: []string{"impeller", "case-ohms", "winding-ohms", "switch", "supply-volts", "call-volts", "hose"}, Source: commonPractice,
	},
	{
		// A drive tells its own fault; start device and capacitors there are none.
		On: []string{"no-start"}, When: []string{"driven"}, Tests: []string{"outlet-lamp", "drive-lamp", "case-ohms", "winding-ohms"}, Source: commonPractice,
	},
	{
		// What lies open and dead beside the pins is read before anything goes back
		// under power.
		On: []string{"no-start"}, When: []string{"clicks", "windings-sound"}, Tests: besidePins, Source: commonPractice,
	},
	{
		// What tripped an overload that closes again: its air first, which is only
		// looked at, then what makes it draw too much.
		On: []string{"hums-trips"}, When: []string{"overload-reset"},
		Tests: []string{"cond-fan-look", "cond-look", "case-ohms", "winding-ohms", "start-device", "run-cap", "supply-volts", "start-amps"}, Source: commonPractice,
	},
	{
		On: []string{"no-start", "hums-trips"}, When: []string{"hums", "windings-sound"}, Tests: besidePins, Source: commonPractice,
	},
	{
		// A rotor that stands draws that current whatever cools the condenser: its own
		// circuit is read first.
		On: []string{"no-start", "hums-trips"}, When: []string{"amps-locked-rotor"}, Tests: []string{"case-ohms", "winding-ohms", "start-device", "run-cap", "start-cap"}, Source: commonPractice,
	},
	{
		// Ice beyond measure comes of a fan that stands or a defrost that fails far
		// more often than of the door.
		On: []string{"no-cool", "fridge-warm", "runs-always", "leaks-ices"}, When: []string{"frost-heavy"},
		Tests:  []string{"evap-fan-look", "defrost-by-hand", "heater-ohms", "defrost-thermostat", "defrost-wait"},
		Source: commonPractice,
	},
	{
		// The brushes of a universal motor wear first.
		On: []string{"no-spin", "motor-dead"}, When: []string{"brushed"}, Tests: []string{"brushes", "tacho", "case-ohms"}, Source: commonPractice,
	},
	{
		// An ice maker is looked at from its arm back to the tap.
		On: []string{"no-ice"}, Tests: []string{"ice-arm", "ice-cold", "fill-tube", "water-filter", "tap", "ice-harvest"}, Source: commonPractice,
	},
	{
		// What rattles is held by hand before anything is opened.
		On: []string{"noisy-cold"}, Tests: []string{"tubes", "fan-noise", "level", "comp-noise", "mounts"}, Source: commonPractice,
	},
	{
		// Water comes of a blocked drain first, then of its pan and its line.
		On: []string{"leaks-ices"}, When: []string{"water-on-floor"}, Tests: []string{"drain", "pan", "water-line", "level"}, Source: commonPractice,
	},
	{
		// Nothing but the sealed system leaves both coils without work while it runs.
		On: []string{"no-cool", "fridge-warm", "runs-always"}, When: []string{"frost-none", "condenser-cold"},
		Tests:  []string{"cond-fan-look", "evap-fan-look", "running-amps", "leak-search", "restriction-look"},
		Source: commonPractice,
	},
	{
		// Cold is made, and does not come over: its fan, its way, then ice in it.
		On: []string{"fridge-warm"}, Tests: []string{"evap-fan-look", "vents", "frost-look"}, Source: commonPractice,
	},
	{
		On: []string{"no-dry"}, When: []string{"frost-none", "condenser-cold"},
		Tests: []string{"cond-fan-look", "running-amps", "leak-search", "restriction-look"}, Source: commonPractice,
	},
	{
		// One reading at the heater halves what can keep a sound one cold.
		On: []string{"no-heat"}, When: []string{"heater-sound"}, Tests: []string{"heater-case", "heater-volts"}, Source: commonPractice,
	},
	{
		On: []string{"no-heat"}, When: []string{"heater-volts-absent"},
		Tests: []string{"limit-ohms", "thermostat", "switch", "connections", "supply-volts"}, Source: commonPractice,
	},
	{
		On: []string{"no-heat"}, When: []string{"heater-sound", "heater-volts-present"}, Tests: []string{"connections", "heater-amps"}, Source: commonPractice,
	},
	{
		On: []string{"no-heat"}, When: []string{"wired-in"}, Tests: []string{"heater-ohms", "heater-case"}, Source: commonPractice,
	},
	{
		// What grinds or pumps is freed from outside first.
		On: []string{"motor-dead"}, When: []string{"cuts-out", "direct-drive"}, Tests: []string{"load", "shaft", "run-cap", "case-ohms", "winding-ohms"}, Source: commonPractice,
	},
	{
		On: []string{"motor-dead"}, When: []string{"hums", "direct-drive"}, Tests: []string{"load", "shaft", "run-cap", "case-ohms", "winding-ohms"}, Source: commonPractice,
	},
	{
		// What hums is turned before it is measured: it may only be jammed.
		On: []string{"motor-dead"}, When: []string{"hums"}, Tests: []string{"shaft", "run-cap", "case-ohms", "winding-ohms"}, Source: commonPractice,
	},
	{
		On: []string{"trips-breaker"}, Tests: []string{"unplugged", "plug-pins", "case-ohms"}, Source: commonPractice,
	},
	{
		// Legs that were worked on may be swapped.
		On: []string{"three-phase", "ac-warm"}, When: []string{"after-wiring"}, Tests: []string{"case-ohms", "rotation"}, Source: commonPractice,
	},
	{
		On: []string{"no-cool"}, When: []string{"after-wiring"}, Tests: []string{"rotation"}, Source: commonPractice,
	},
	{
		// A drive tells its own faults before anything is opened.
		On: []string{"ac-warm"}, When: []string{"driven"}, Tests: []string{"mode", "drive-lamp", "airflow", "cond-fan-look", "case-ohms", "winding-ohms"}, Source: commonPractice,
	},
	{
		// What hums or clicks is set right already, and is opened; what is silent may
		// be set wrong.
		On: []string{"ac-warm"}, When: []string{"hums"}, Tests: []string{"run-cap", "case-ohms", "winding-ohms", "supply-volts"}, Source: commonPractice,
	},
	{
		On: []string{"ac-warm"}, When: []string{"clicks"}, Tests: []string{"run-cap", "case-ohms", "winding-ohms", "overload-ohms", "supply-volts"}, Source: commonPractice,
	},
	{
		On: []string{"ac-warm"}, When: []string{"does-not-start"}, Tests: []string{"mode", "switch", "thermostat", "drive-lamp", "run-cap", "overload-ohms", "case-ohms", "winding-ohms", "supply-volts"}, Source: commonPractice,
	},
	{
		On: []string{"ac-warm"}, When: []string{"silent"}, Tests: []string{"mode", "switch", "thermostat", "drive-lamp", "run-cap", "overload-ohms", "case-ohms", "winding-ohms", "supply-volts"}, Source: commonPractice,
	},
	{
		// Setting, filter and fan are seen before anything is opened.
		On: []string{"ac-warm"}, Tests: []string{"mode", "airflow", "blower-look", "listen"}, Source: commonPractice,
	},
	{
		// From the pan and the thermostat to the contactor; only then its mains.
		On: []string{"ac-dead"}, Tests: []string{"mode", "drain", "control-volts", "contactor-coil"}, Source: commonPractice,
	},
	{
		On: []string{"ac-warm"}, When: []string{"starts-and-runs"}, Tests: []string{"air-split", "coil-look", "cond-look"}, Source: commonPractice,
	},
	{
		// The lid or door is the commonest reason, and a belt is seen; the motor
		// comes last.
		On: []string{"no-spin"}, Tests: []string{"switch", "belt", "load", "hose", "clutch", "connections", "case-ohms", "winding-ohms"}, Source: commonPractice,
	},
	{
		On: []string{"no-tumble"}, Tests: []string{"switch", "belt", "load", "limit-ohms", "connections", "case-ohms", "winding-ohms"}, Source: commonPractice,
	},
	{
		On: []string{"no-fill"}, Tests: []string{"tap", "screens", "switch", "level-sensing", "valve-coil", "connections", "valve-volts"}, Source: commonPractice,
	},
	{
		On: []string{"overfills"}, Tests: []string{"pull-plug", "level-sensing"}, Source: commonPractice,
	},
	{
		On: []string{"never-ends"}, Tests: []string{"timer", "hose", "level-sensing", "heater-ohms"}, Source: commonPractice,
	},
	{
		// A float that hangs is seen.
		On: []string{"pump-on"}, Tests: []string{"level-sensing", "check-valve", "hose", "impeller"}, Source: commonPractice,
	},
	{
		On: []string{"wont-run"}, Tests: []string{"outlet-lamp", "set-look", "switch", "fuse", "limit-ohms", "cord"}, Source: commonPractice,
	},
	{
		// A motor that has to cool drives against something or gets no air.
		On: []string{"stops-early"}, Tests: []string{"airflow", "door", "restart", "bearings", "start-amps", "winding-ohms", "connections"}, Source: commonPractice,
	},
	{
		On: []string{"slow-dry"}, Tests: []string{"airflow", "heater-ohms", "limit-ohms", "sensor-ohms"}, Source: commonPractice,
	},
	{
		On: []string{"gas-no-heat"}, When: []string{"igniter-glows"}, Tests: []string{"gas-cock", "valve-coil", "igniter-amps"}, Source: commonPractice,
	},
	{
		// Whether it glows halves what can keep a burner cold.
		On: []string{"gas-no-heat"}, Tests: []string{"igniter-look"}, Source: commonPractice,
	},
	{
		On: []string{"gas-no-heat", "furnace-no-heat"}, When: []string{"flame-drops-out"}, Tests: []string{"flame-amps", "airflow", "limit-ohms"}, Source: commonPractice,
	},
	{
		// A pilot is seen before its millivolts are read.
		On: []string{"pilot-out"}, Tests: []string{"gas-cock", "pilot-look", "airflow", "thermocouple", "limit-ohms"}, Source: commonPractice,
	},
	{
		// A vent is seen; then what is read is read hot, when the heat went.
		On: []string{"gas-quits"}, Tests: []string{"airflow", "blower-look", "after-quit", "valve-coil-hot", "limit-hot"}, Source: commonPractice,
	},
	{
		// A blower is seen and turned; its capacitor comes before its motor.
		On: []string{"no-blower"}, Tests: []string{"blower-look", "airflow", "belt", "run-cap", "blower-motor", "connections", "blower-volts"}, Source: commonPractice,
	},
	{
		// What made it so hot that its fuse opened: its air, its thermostat, a heater that burns on.
		On: []string{"too-hot"}, When: []string{"limit-open"}, Tests: []string{"airflow", "thermostat-cold", "heater-case", "heat-off", "sensor-ohms"}, Source: commonPractice,
	},
	{
		On: []string{"fan-on"}, Tests: []string{"fan-set", "airflow", "limit-ohms", "fan-uncalled"}, Source: commonPractice,
	},
	{
		// A switch that does not close is what guards the flue: what lies before it is seen.
		On: []string{"furnace-no-heat"}, When: []string{"press-open"}, Tests: []string{"inducer-look", "draft"}, Source: commonPractice,
	},
	{
		On: []string{"furnace-no-heat"}, Tests: []string{"inducer-look", "igniter-look"}, Source: commonPractice,
	},
	{
		On: []string{"gas-no-heat"}, When: []string{"igniter-dark"}, Tests: []string{"igniter-ohms", "limit-ohms", "flame-sensor", "thermostat", "connections"}, Source: commonPractice,
	},
	{
		// Heat that nothing calls for comes by the metal, a contact or a thermostat, and no sensor.
		On: []string{"too-hot"}, When: []string{"heats-when-off"}, Tests: []string{"heater-case", "thermostat-cold", "heat-off"}, Source: commonPractice,
	},
	{
		On: []string{"too-hot"}, Tests: []string{"sensor-ohms", "heat-off", "heater-case"}, Source: commonPractice,
	},
	{
		// A heat pump in heating is looked at before anything is opened: its setting, its
		// air, ice outdoors, both fans, then whether its valve shifts.
		On: []string{"hp-no-heat"}, When: []string{"starts-and-runs"}, Tests: []string{"mode-heat", "airflow", "outdoor-look", "cond-fan-look", "blower-look", "air-rise", "reversing"}, Source: commonPractice,
	},
	{
		On: []string{"hp-no-heat"}, Tests: []string{"mode-heat", "airflow", "listen", "outdoor-look", "cond-fan-look", "blower-look", "air-rise", "reversing"}, Source: commonPractice,
	},
	{
		// Supply, fuses and contactor lie before the machine.
		On: []string{"three-phase"}, Tests: []string{"case-ohms", "phases", "fuse", "contactor", "legs", "winding-ohms"}, Source: commonPractice,
	},
	{
		On: []string{"door-locked"}, Tests: []string{"water-look", "lock", "level-sensing", "connections"}, Source: commonPractice,
	},
	{
		On: []string{"oven-locked"}, Tests: []string{"lock", "sensor-ohms", "connections"}, Source: commonPractice,
	},
	{
		// What carries no high voltage is read before what does.
		On: []string{"no-waves"}, Tests: []string{"switch", "limit-ohms", "connections", "high-volts", "magnetron"}, Source: commonPractice,
	},
	{
		On: []string{"no-zone"}, Tests: []string{"zone-pan", "airflow", "sensor-ohms", "connections", "valve-coil", "zone-drive"}, Source: commonPractice,
	},
	{
		On: []string{"poor-ice"}, Tests: []string{"scale", "tap", "water-filter", "cond-look", "cond-fan-look", "slab-water", "slab", "harvest"}, Source: commonPractice,
	},
	{
		On: []string{"blows-fuse"}, Tests: []string{"interlocks", "monitor", "plug-pins"}, Source: commonPractice,
	},
	{
		On: []string{"leaks-tank"}, Tests: []string{"leak-joints", "relief-look", "tank-look"}, Source: commonPractice,
	},
	{
		On: []string{"leaks-condensate"}, Tests: []string{"hose", "drain", "leak-joints", "pan"}, Source: commonPractice,
	},
	{
		On: []string{"leaks-oil"}, Tests: []string{"gear-look", "bearings", "clutch"}, Source: commonPractice,
	},
	{
		// Cold water that smells too is none of the heater's.
		On: []string{"smelly-water"}, Tests: []string{"cold-smell", "tepid-look", "anode-look"}, Source: commonPractice,
	},
	{
		On: []string{"shocks"}, Tests: []string{"earth", "case-ohms", "heater-case"}, Source: commonPractice,
	},
}

var besidePins = []string{"case-ohms", "start-device", "overload-ohms", "run-cap", "start-cap"}

// way is a course seen from one complaint: its trials by their place.
type way struct {
	when   set
	trials []int
}

// courses gives the ways of a plan whose trials are made.
func (p *plan) courses() []way {
	var out []way
	for i := range courses {
		c := &courses[i]
		if !slices.Contains(c.On, p.Code) {
			continue
		}
		y := way{when: vocabulary().set("a course", c.When)}
		for _, code := range c.Tests {
			if k := slices.IndexFunc(p.trials, func(t trial) bool { return t.Code == code }); k >= 0 {
				y.trials = append(y.trials, k)
			}
		}
		out = append(out, y)
	}
	return out
}

// course gives the first test of a course that is called for, by what was seen
// or by what the customer told, and still speaks for or against a cause of the
// group.
func (w *weighing) course(g group) *trial {
	for _, way := range w.ways {
		if way.when.minus(w.settled).minus(w.told) != (set{}) {
			continue
		}
		for _, k := range way.trials {
			if t := &w.trials[k]; w.may&(1<<k) != 0 && w.speaksOf(t, g) {
				return t
			}
		}
	}
	return nil
}

// speaksOf tells whether some outcome of a test that can be expected bears on a
// cause of the group.
func (w *weighing) speaksOf(t *trial, g group) bool {
	for _, n := range t.codes {
		if vocabulary().excludes[n].meets(w.settled) {
			continue
		}
		for i := range w.causes {
			if g.has(i) && (w.causes[i].fits.has(n) || w.causes[i].contradicts.has(n)) {
				return true
			}
		}
	}
	return false
}
