package cause

import (
	"slices"
	"strings"
	"sync"
)

// courses is the order in which the trade looks where weighing alone would take
// the cheapest test first. What energises comes in it after the insulation was
// looked at.
// A row is: the complaints | what is known, nothing from the start | the tests, one after the
// other; common practice. It is text for what a literal costs the program.
const courseRows = "" +
	// A pump is opened and turned before it is measured: what jams it is seen.
	"no-drain |  | impeller case-ohms winding-ohms switch supply-volts call-volts hose\n" +
	// A drive tells its own fault; start device and capacitors there are none.
	"no-start | driven | outlet-lamp drive-lamp case-ohms winding-ohms\n" +
	// What lies open and dead beside the pins is read before anything goes back
	// under power.
	"no-start | clicks windings-sound | case-ohms start-device overload-ohms run-cap start-cap\n" +
	// What tripped an overload that closes again: its air first, which is only
	// looked at, then what makes it draw too much.
	"hums-trips | overload-reset | cond-fan-look cond-look case-ohms winding-ohms start-device run-cap supply-volts start-amps\n" +
	"no-start hums-trips | hums windings-sound | case-ohms start-device overload-ohms run-cap start-cap\n" +
	// A rotor that stands draws that current whatever cools the condenser: its own
	// circuit is read first.
	"no-start hums-trips | amps-locked-rotor | case-ohms winding-ohms start-device run-cap start-cap\n" +
	// Ice beyond measure comes of a fan that stands or a defrost that fails far
	// more often than of the door.
	"no-cool fridge-warm runs-always leaks-ices | frost-heavy | evap-fan-look defrost-by-hand heater-ohms defrost-thermostat defrost-wait\n" +
	// The brushes of a universal motor wear first.
	"no-spin motor-dead | brushed | brushes tacho case-ohms\n" +
	// An ice maker is looked at from its arm back to the tap.
	"no-ice |  | ice-arm ice-cold fill-tube water-filter tap ice-harvest\n" +
	// What rattles is held by hand before anything is opened.
	"noisy-cold |  | tubes fan-noise level comp-noise mounts\n" +
	// Water comes of a blocked drain first, then of its pan and its line.
	"leaks-ices | water-on-floor | drain pan water-line level\n" +
	// Nothing but the sealed system leaves both coils without work while it runs.
	"no-cool fridge-warm runs-always | frost-none condenser-cold | cond-fan-look evap-fan-look running-amps leak-search restriction-look\n" +
	// Cold is made, and does not come over: its fan, its way, then ice in it.
	"fridge-warm |  | evap-fan-look vents frost-look\n" +
	"no-dry | frost-none condenser-cold | cond-fan-look running-amps leak-search restriction-look\n" +
	// One reading at the heater halves what can keep a sound one cold.
	"no-heat | heater-sound | heater-case heater-volts\n" +
	"no-heat | heater-volts-absent | limit-ohms thermostat switch connections supply-volts\n" +
	"no-heat | heater-sound heater-volts-present | connections heater-amps\n" +
	"no-heat | wired-in | heater-ohms heater-case\n" +
	// What grinds or pumps is freed from outside first.
	"motor-dead | cuts-out direct-drive | load shaft run-cap case-ohms winding-ohms\n" +
	"motor-dead | hums direct-drive | load shaft run-cap case-ohms winding-ohms\n" +
	// What hums is turned before it is measured: it may only be jammed.
	"motor-dead | hums | shaft run-cap case-ohms winding-ohms\n" +
	"trips-breaker |  | unplugged plug-pins case-ohms\n" +
	// Legs that were worked on may be swapped.
	"three-phase ac-warm | after-wiring | case-ohms rotation\n" +
	"no-cool | after-wiring | rotation\n" +
	// A drive tells its own faults before anything is opened.
	"ac-warm | driven | mode drive-lamp airflow cond-fan-look case-ohms winding-ohms\n" +
	// What hums or clicks is set right already, and is opened; what is silent may
	// be set wrong.
	"ac-warm | hums | run-cap case-ohms winding-ohms supply-volts\n" +
	"ac-warm | clicks | run-cap case-ohms winding-ohms overload-ohms supply-volts\n" +
	"ac-warm | does-not-start | mode switch thermostat drive-lamp run-cap overload-ohms case-ohms winding-ohms supply-volts\n" +
	"ac-warm | silent | mode switch thermostat drive-lamp run-cap overload-ohms case-ohms winding-ohms supply-volts\n" +
	// Setting, filter and fan are seen before anything is opened.
	"ac-warm |  | mode airflow blower-look listen\n" +
	// From the pan and the thermostat to the contactor; only then its mains.
	"ac-dead |  | mode drain control-volts contactor-coil\n" +
	"ac-warm | starts-and-runs | air-split coil-look cond-look\n" +
	// The lid or door is the commonest reason, and a belt is seen; the motor
	// comes last.
	"no-spin |  | switch belt load hose clutch connections case-ohms winding-ohms\n" +
	"no-tumble |  | switch belt load limit-ohms connections case-ohms winding-ohms\n" +
	"no-fill |  | tap screens switch level-sensing valve-coil connections valve-volts\n" +
	"overfills |  | pull-plug level-sensing\n" +
	"never-ends |  | timer hose level-sensing heater-ohms\n" +
	// A float that hangs is seen.
	"pump-on |  | level-sensing check-valve hose impeller\n" +
	"wont-run |  | outlet-lamp set-look switch fuse limit-ohms cord\n" +
	// A motor that has to cool drives against something or gets no air.
	"stops-early |  | airflow door restart bearings start-amps winding-ohms connections\n" +
	"slow-dry |  | airflow heater-ohms limit-ohms sensor-ohms\n" +
	"gas-no-heat | igniter-glows | gas-cock valve-coil igniter-amps\n" +
	// Whether it glows halves what can keep a burner cold.
	"gas-no-heat |  | igniter-look\n" +
	"gas-no-heat furnace-no-heat | flame-drops-out | flame-amps airflow limit-ohms\n" +
	// A pilot is seen before its millivolts are read.
	"pilot-out |  | gas-cock pilot-look airflow thermocouple limit-ohms\n" +
	// A vent is seen; then what is read is read hot, when the heat went.
	"gas-quits |  | airflow blower-look after-quit valve-coil-hot limit-hot\n" +
	// A blower is seen and turned; its capacitor comes before its motor.
	"no-blower |  | blower-look airflow belt run-cap blower-motor connections blower-volts\n" +
	// What made it so hot that its fuse opened: its air, its thermostat, a heater that burns on.
	"too-hot | limit-open | airflow thermostat-cold heater-case heat-off sensor-ohms\n" +
	"fan-on |  | fan-set airflow limit-ohms fan-uncalled\n" +
	// A switch that does not close is what guards the flue: what lies before it is seen.
	"furnace-no-heat | press-open | inducer-look draft\n" +
	"furnace-no-heat |  | inducer-look igniter-look\n" +
	"gas-no-heat | igniter-dark | igniter-ohms limit-ohms flame-sensor thermostat connections\n" +
	// Heat that nothing calls for comes by the metal, a contact or a thermostat, and no sensor.
	"too-hot | heats-when-off | heater-case thermostat-cold heat-off\n" +
	"too-hot |  | sensor-ohms heat-off heater-case\n" +
	// A heat pump in heating is looked at before anything is opened: its setting, its
	// air, ice outdoors, both fans, then whether its valve shifts.
	"hp-no-heat | starts-and-runs | mode-heat airflow outdoor-look cond-fan-look blower-look air-rise reversing\n" +
	"hp-no-heat |  | mode-heat airflow listen outdoor-look cond-fan-look blower-look air-rise reversing\n" +
	// Supply, fuses and contactor lie before the machine.
	"three-phase |  | case-ohms phases fuse contactor legs winding-ohms\n" +
	"door-locked |  | water-look lock level-sensing connections\n" +
	"oven-locked |  | lock sensor-ohms connections\n" +
	// What carries no high voltage is read before what does.
	"no-waves |  | switch limit-ohms connections high-volts magnetron\n" +
	"no-zone |  | zone-pan airflow sensor-ohms connections valve-coil zone-drive\n" +
	"poor-ice |  | scale tap water-filter cond-look cond-fan-look slab-water slab harvest\n" +
	"blows-fuse |  | interlocks monitor plug-pins\n" +
	"leaks-tank |  | leak-joints relief-look tank-look\n" +
	"leaks-condensate |  | hose drain leak-joints pan\n" +
	"leaks-oil |  | gear-look bearings clutch\n" +
	// Cold water that smells too is none of the heater's.
	"smelly-water |  | cold-smell tepid-look anode-look\n" +
	"shocks |  | earth case-ohms heater-case\n"

// courses are those rows, read once.
var courses = sync.OnceValue(func() []Course {
	var out []Course
	for row := range strings.Lines(courseRows) {
		f := strings.Split(row, "|")
		out = append(out, Course{strings.Fields(f[0]), strings.Fields(f[1]), strings.Fields(f[2]), commonPractice})
	}
	return out
})

// way is a course seen from one complaint: its trials by their place.
type way struct {
	when   set
	trials []int
}

// courses gives the ways of a plan whose trials are made.
func (p *plan) courses() []way {
	var out []way
	for _, c := range courses() {
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
