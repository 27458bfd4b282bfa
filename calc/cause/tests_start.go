package cause

import "ohmcall/calc/measure"

// The facts that forbid energising a machine again.
var grounded = []string{"winding-grounded", "insulation-failed"}

// noDrive are facts of a machine that mains run: unlike windings, and start gear. An
// outside overload is none: compressors on a drive have one too (common practice).
var noDrive = []string{"windings-sound", "start-device-sound", "start-device-suspect", "start-device-failed",
	"starts-with-test-device", "no-start-with-test-device", "starts-with-kit", "no-start-with-kit",
	"protector-open", "protector-reset", "protector-open-cold",
	"start-cap-sound", "start-cap-failed", "start-cap-open", "start-cap-shorted"}

// startTestRows bear on a motor-compressor that does not start.
const startTestRows = "" +
	"cond-fan-look | see whether the condenser fan runs | saw cond-fan runs | 1l | cond-fan-runs cond-fan-stopped cond-fan-none | all-dead |  | no-start hums-trips no-cool fridge-warm runs-always no-dry hp-no-heat ac-warm poor-ice |  | fan-shared\n" +
	"outlet-lamp | try another appliance at the same outlet | saw outlet works | 1l | outlet-works outlet-dead |  |  |  |  | two-legs wired-in breaker-tripped\n" +
	"other-outlet | plug straight into another good outlet, without extension cord | saw no start on other outlet | 2l | starts-on-other-outlet no-start-on-other-outlet |  |  | no-start hums-trips motor-dead ac-warm |  | trips-at-once $grounded\n" +
	"rest | leave it off for ten minutes or more, then let it start once | saw no start after wait | 3l | starts-after-wait no-start-after-wait |  |  | no-start hums-trips ac-warm three-phase |  | trips-at-once $grounded\n" +
	"shell | feel the shell with the back of the hand, before touching | saw comp cold | 1l | comp-hot comp-cold |  | hot-and-moving | no-start hums-trips ac-warm three-phase\n" +
	// Not where unlike windings or start gear tell that there is no drive.
	"drive-lamp | read the inverter drive's own fault lamp or display | saw drive no fault | 1l | drive-fault-shown drive-no-fault drive-none |  |  | no-start motor-dead no-spin ac-warm hp-no-heat |  | $undriven\n" +
	"connections | look at plug, terminals and connectors | saw terminals tight | 2d | connections-sound connection-loose |  | prove-dead capacitor-discharge terminals-under-pressure\n" +
	"wiring | hold each wire against the diagram and the part's own label | saw wiring right | 2d | wiring-matches wiring-wrong |  | prove-dead capacitor-discharge\n" +
	"winding-ohms | ohms of the three pairs of pins, wires off | ohm A B 3.4, A C 6.5, B C 2.5 | 2d | windings-sound winding-open winding-shorted protector-open windings-equal | open-unplaced windings-do-not-add-up windings-too-high windings-isolated | prove-dead capacitor-discharge terminals-under-pressure hot-and-moving\n" +
	"case-ohms | ohms from each pin to bare case | ohm A case OL | 2d | insulation-no-gross-fault insulation-sound insulation-failed winding-grounded | insulation-suspect insulation-undecided | prove-dead capacitor-discharge terminals-under-pressure\n" +
	"cool-and-ohm | let it cool below " + measure.CoolWords + " and measure the pairs again | ohm A B 8.4 cold, A C 3.1 cold, B C 11.5 cold | 4d | protector-reset protector-open-cold winding-open windings-sound | open-unplaced-cold | prove-dead capacitor-discharge |  | protector-open open-unplaced |  | ice machine operation manual 80-0111-9, p. 176\n" +
	"overload-ohms | ohms through the outside overload, cold | ohm overload 0.4 cold | 2d | overload-closed overload-open-cold overload-reset |  | prove-dead\n" +
	"start-device | take the start device off, shake it and read its ohms cold | ohm ptc 8.2 cold | 2d | start-device-sound start-device-failed device-rattles device-burnt | start-device-suspect start-device-undecided windings-equal | prove-dead hot-and-moving\n" +
	"start-cap | capacitance of the start capacitor, wires off | mfd start 98 | 2d | start-cap-sound start-cap-failed start-cap-open start-cap-shorted start-cap-none | start-cap-suspect start-cap-undecided | prove-dead capacitor-discharge |  |  | start-cap-unlikely\n" +
	"run-cap | capacitance of the run capacitor, wires off | mfd C1 11.8 | 2d | run-cap-sound run-cap-failed run-cap-none | run-cap-suspect run-cap-undecided | prove-dead capacitor-discharge\n" +
	"thermostat | ohms through the thermostat at a temperature at which it should call | ohm thermostat 0.2 closed | 2d | thermostat-closed thermostat-open | thermostat-undecided | prove-dead | no-start no-heat runs-always too-cold ac-warm gas-no-heat furnace-no-heat gas-quits slow-dry wont-run\n" +
	"supply-volts | volts at the outlet, of each leg where there are two | volt line 118.2 | 1L | supply-sound supply-low supply-absent leg-missing | supply-high supply-undecided | mains-live\n" +
	"start-sag | volts at the machine while it tries to start | volt comp 112 start | 3L | sag-sound sag-deep | sag-undecided | mains-live hot-and-moving | no-start hums-trips motor-dead ac-warm stops-early |  | $grounded\n" +
	"start-amps | current at start and five seconds later, with a clamp | amp comp 14 peak, comp 1.2 run | 2L | amps-locked-rotor amps-none amps-sound | amps-high amps-low amps-agree amps-undecided | mains-live hot-and-moving | trips-breaker no-start hums-trips no-cool motor-dead ac-warm three-phase no-spin no-tumble stops-early |  | $grounded\n" +
	"call-volts | volts that the control gives to the machine | volt comp 117.5 | 2L | control-calling control-not-calling |  | mains-live |  |  | windings-equal $grounded\n" +
	"test-device | let it start once with a start device known to be good and made for this compressor | saw no start with test device | 4L | starts-with-test-device no-start-with-test-device |  | mains-live capacitor-discharge flammable-gas terminals-under-pressure hot-and-moving | no-start hums-trips |  | windings-equal winding-open winding-shorted protector-open drive-fault-shown drive-no-fault $grounded\n" +
	// What has a run capacitor alone has no device to try first.
	"test-kit | let it start once with a start kit whose label allows this compressor | saw no start with kit | 5L | starts-with-kit no-start-with-kit |  | mains-live capacitor-discharge flammable-gas terminals-under-pressure hot-and-moving | no-start hums-trips ac-warm trips-breaker | no-start-with-test-device blower-runs holds-unplugged | driven windings-equal winding-open winding-shorted protector-open drive-fault-shown drive-no-fault $grounded\n"
