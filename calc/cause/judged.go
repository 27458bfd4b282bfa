package cause

import "ohmcall/calc/measure"

// judged is the part of the vocabulary that judged readings establish.
var judged = []Finding{
	// Windings of the machine at hand.
	{"windings-sound", nil, "start and run windings are whole and fit each other", []string{"winding-open", "winding-shorted", "protector-open", "protector-open-cold", "windings-equal"}},
	{"windings-equal", nil, "all three pairs are equal: a three-phase or inverter-driven machine", []string{"winding-open", "winding-shorted", "protector-open"}},
	{"windings-isolated", nil, "groups of leads open to each other, each whole by itself; by the wiring diagram a winding may be open between them", nil},
	{"windings-do-not-add-up", nil, "the two lower readings do not add up to the highest: suspect the readings first", nil},
	{"open-unplaced", nil, "two open pairs on unmarked pins: protector, start or run winding open", []string{"windings-sound", "windings-equal"}},
	{"not-a-winding", nil, "the readings are not those of a winding", []string{"windings-sound", "windings-equal"}},
	{"winding-open", nil, "a winding is open", []string{"protector-open"}},
	{"winding-shorted", nil, "a winding is far below its sound value", nil},
	{"winding-grounded", nil, "a winding has a path to the case", []string{"insulation-sound", "insulation-no-gross-fault"}},
	{"insulation-sound", nil, "an insulation tester found the winding sound to the case", []string{"insulation-failed", "insulation-suspect"}},
	{"insulation-no-gross-fault", nil, "an ohmmeter found no path to the case; it cannot prove the insulation", nil},
	{"insulation-suspect", nil, "insulation below a stricter limit, above the failing one", nil},
	{"insulation-failed", nil, "insulation to the case below the failing limit", nil},
	{"protector-open", nil, "both pairs to common open, start to run whole: the protector is open", []string{"protector-closed"}},
	{"protector-closed", nil, "the protector conducts", []string{"protector-open-cold"}},
	{"protector-open-cold", nil, "the protector stays open below " + measure.CoolWords + ", " + measure.CoolSource, []string{"protector-reset"}},
	{"protector-reset", nil, "the protector was open when hot and closed again on cooling", nil},
	{"overload-open", nil, "the outside overload does not conduct", []string{"overload-closed"}},
	{"overload-open-cold", nil, "the outside overload does not conduct although it is cold", []string{"overload-closed"}},
	{"overload-closed", nil, "the outside overload conducts", nil},

	// Start gear and capacitors.
	{"start-device-sound", nil, "the start device reads as it should", []string{"start-device-failed", "start-device-suspect", "windings-equal", "drive-fault-shown", "drive-no-fault"}},
	{"start-device-suspect", nil, "the start device reads at the edge", []string{"start-device-failed", "windings-equal", "drive-fault-shown", "drive-no-fault"}},
	{"start-device-failed", nil, "the start device is open, shorted or worn out", []string{"windings-equal", "drive-fault-shown", "drive-no-fault"}},
	{"start-cap-sound", nil, "the start capacitor is within its marking", []string{"start-cap-suspect", "start-cap-failed", "start-cap-open", "start-cap-shorted"}},
	{"start-cap-suspect", nil, "the start capacitor is at the edge of its marking", []string{"start-cap-failed", "start-cap-open", "start-cap-shorted"}},
	{"start-cap-failed", nil, "the start capacitor is outside its marking", nil},
	{"start-cap-open", nil, "the start capacitor is open", []string{"start-cap-shorted"}},
	{"start-cap-shorted", nil, "the start capacitor is shorted", nil},
	{"run-cap-sound", nil, "the run capacitor is within the tolerance on its can", []string{"run-cap-suspect", "run-cap-failed"}},
	{"run-cap-suspect", nil, "the run capacitor is at the edge of its tolerance", []string{"run-cap-failed"}},
	{"run-cap-failed", nil, "the run capacitor is outside the tolerance on its can", nil},

	// Supply, control, current.
	{"supply-sound", nil, "the supply at rest is within limits", []string{"supply-low", "supply-absent", "leg-missing"}},
	{"supply-low", nil, "the supply at rest is below its limit", []string{"supply-absent"}},
	{"supply-high", nil, "the supply at rest is above its limit", []string{"supply-sound", "supply-low", "supply-absent"}},
	{"supply-absent", nil, "no volts at the appliance's supply", []string{"sag-sound", "sag-deep", "starts-and-runs", "light-works", "outlet-works", "clicks", "hums", "cond-fan-runs", "evap-fan-runs", "amps-locked-rotor"}},
	{"leg-missing", nil, "one of two supply legs is missing", []string{"supply-absent"}},
	{"sag-sound", nil, "the volts at the machine fall little while it tries to start", []string{"sag-deep"}},
	{"sag-deep", nil, "the volts at the machine fall too far while it tries to start", nil},
	{"control-calling", nil, "the control gives volts to the machine", []string{"control-not-calling"}},
	{"control-not-calling", nil, "the control gives no volts although it should call", []string{"clicks", "hums", "starts-and-runs"}},
	{"amps-none", nil, "no current flows although the machine is called on", []string{"amps-low", "amps-sound", "amps-high", "amps-locked-rotor", "starts-and-runs", "hums"}},
	{"amps-undecided", nil, "current read, but no plate or too near a limit to say", nil},
	{"amps-low", nil, "running current well below the nameplate's", []string{"amps-sound", "amps-high", "amps-locked-rotor"}},
	{"amps-sound", nil, "running current agrees with the nameplate", []string{"amps-high", "amps-locked-rotor"}},
	{"amps-high", nil, "running current above the nameplate's", []string{"amps-locked-rotor"}},
	{"amps-locked-rotor", nil, "current near locked rotor, and it stays there", []string{"starts-and-runs", "silent"}},
	{"surge-sound", nil, "start surge falls to running current within a second or so", []string{"amps-locked-rotor"}},
	{"earth-sound", nil, "earth pin to case conducts", []string{"earth-failed"}},
	{"earth-failed", nil, "earth pin to case does not conduct as it must", nil},
	{"cord-sound", nil, "the cord conducts from end to end", []string{"cord-open", "cord-shorted"}},
	{"cord-open", nil, "a conductor of the cord is open", nil},
	{"fuse-sound", nil, "the appliance's fuse conducts", []string{"fuse-open"}},
	{"fuse-open", nil, "the appliance's fuse is open", nil},
	{"switch-closed", nil, "the switch or door interlock conducts when it should", []string{"switch-open"}},
	{"switch-open", nil, "the switch or door interlock does not conduct when it should", nil},
	{"speed-switch-closed", nil, "the speed switch conducts at each speed", []string{"speed-switch-open"}},
	{"speed-switch-open", nil, "the speed switch does not conduct at a speed", nil},
	{"plug-to-plug-sound", nil, "no short between the plug's supply pins with everything switched on", []string{"plug-to-plug-shorted"}},
	{"plug-to-plug-shorted", nil, "a short between the plug's supply pins", nil},

	// Heaters, thermostats, sensors, fans.
	{"heater-sound", nil, "the heater's ohms fit its plate", []string{"heater-suspect", "heater-open", "heater-failed"}},
	{"heater-suspect", nil, "the heater's ohms are at the edge, or the reading is doubtful", []string{"heater-open", "heater-failed"}},
	{"heater-open", nil, "the heater is open", nil},
	{"heater-failed", nil, "the heater's ohms are far from its plate", nil},
	{"heater-grounded", nil, "the heater has a path to its sheath", []string{"heater-insulation-sound"}},
	{"heater-no-gross-fault", nil, "an ohmmeter found no path to the sheath; it cannot prove the insulation", nil},
	{"heater-volts-present", nil, "the heater gets its volts", []string{"heater-volts-absent"}},
	{"heater-volts-absent", nil, "the heater gets no volts although it is called on", []string{"heats-up"}},
	{"heater-insulation-sound", nil, "the heater is sound to its sheath", nil},
	{"thermostat-closed", nil, "the thermostat conducts when it should call", []string{"thermostat-open", "control-not-calling"}},
	{"thermostat-open", nil, "the thermostat does not conduct when it should call", nil},
	{"thermostat-stuck-closed", nil, "the thermostat still conducts below its set point", []string{"thermostat-opens", "thermostat-open"}},
	{"thermostat-opens", nil, "the thermostat opens at its set point", nil},
	{"limit-closed", nil, "the thermal limit, fuse or defrost thermostat conducts when it should", []string{"limit-open"}},
	{"limit-open", nil, "the thermal limit, fuse or defrost thermostat is open when it should conduct", nil},
	{"sensor-sound", nil, "the sensor fits its curve", []string{"sensor-suspect", "sensor-failed"}},
	{"sensor-suspect", nil, "the sensor is at the edge of its curve", []string{"sensor-failed"}},
	{"sensor-failed", nil, "the sensor is open, shorted or off its curve", nil},
	{"sensor-reads-cold", nil, "the sensor pretends a temperature below the true one", []string{"sensor-sound", "sensor-reads-warm"}},
	{"sensor-reads-warm", nil, "the sensor pretends a temperature above the true one", []string{"sensor-sound"}},
	{"cond-fan-windings-sound", nil, "the condenser fan motor's windings are sound", []string{"cond-fan-windings-failed"}},
	{"cond-fan-windings-failed", nil, "the condenser fan motor's windings are open or shorted", nil},
	{"cond-fan-volts-present", nil, "the condenser fan gets its volts", []string{"cond-fan-volts-absent"}},
	{"cond-fan-volts-absent", nil, "the condenser fan gets no volts although it should run", []string{"cond-fan-runs"}},
	{"evap-fan-volts-present", nil, "the evaporator fan gets its volts", []string{"evap-fan-volts-absent"}},
	{"evap-fan-volts-absent", nil, "the evaporator fan gets no volts although it should run", []string{"evap-fan-runs"}},
	{"evap-fan-windings-sound", nil, "the evaporator fan motor's windings are sound", []string{"evap-fan-windings-failed"}},
	{"evap-fan-windings-failed", nil, "the evaporator fan motor's windings are open or shorted", nil},
	{"pulls-down-on-course", nil, "the timed temperatures lead to the set point", []string{"pulls-down-slowly", "will-not-reach", "does-not-cool"}},
	{"pulls-down-slowly", nil, "the timed temperatures lead to the set point far too late", []string{"will-not-reach", "cools-down"}},
	{"will-not-reach", nil, "the timed temperatures level off above the set point", []string{"cools-down"}},
	{"temp-at-target", nil, "the temperature is at or below its target", []string{"will-not-reach", "does-not-cool"}},

	// Read, but too near a limit to say, or with nothing to judge it by: the test
	// was made and is to be repeated, with a closer meter or the plate's values,
	// when nothing else parts what is left.
	{"insulation-undecided", nil, "insulation to the case read too near its limit to say", nil},
	{"start-device-undecided", nil, "the start device read too near its limit to say", nil},
	{"start-cap-undecided", nil, "the start capacitor read too near its limit to say", nil},
	{"run-cap-undecided", nil, "the run capacitor read too near its limit to say", nil},
	{"supply-undecided", nil, "the supply read too near its limit to say", nil},
	{"sag-undecided", nil, "the fall of the volts read too near its limit to say", nil},
	{"heater-undecided", nil, "the heater's ohms read too near their limit to say", nil},
	{"heater-insulation-undecided", nil, "heater to sheath read too near its limit to say", nil},
	{"heater-insulation-suspect", nil, "the heater's insulation to its sheath is in doubt", []string{"heater-insulation-sound", "heater-no-gross-fault"}},
	{"thermostat-undecided", nil, "the thermostat read neither closed nor open", nil},
	{"limit-undecided", nil, "the limit read neither closed nor open", nil},
	{"switch-undecided", nil, "the switch read neither closed nor open", nil},
	{"speed-switch-undecided", nil, "the speed switch read neither closed nor open", nil},
	{"fuse-undecided", nil, "the fuse read neither closed nor open", nil},
	{"earth-undecided", nil, "the earth path was read too near its limit to say", nil},
	{"cord-undecided", nil, "the cord read neither closed nor open", nil},
	{"sensor-undecided", nil, "the sensor read too near its limit to say", nil},

	{"wired-in", nil, "the appliance has no outlet that another one fits", nil},
	{"no-sealed-system", nil, "an appliance of this kind has no compressor", nil},
	{"two-legs", nil, "the plate's volts are those of two legs: no lamp fits that outlet", nil},

	// Pressures.
	{"pressures-apart", nil, "the running compressor raises the pressure", []string{"pressures-level"}},
	{"pressures-level", nil, "suction and discharge are nearly level while it should run", nil},
	{"standing-pressure-sound", nil, "the standing pressure is that of the gas at the room's temperature", []string{"standing-pressure-high", "standing-pressure-none"}},
	{"standing-pressure-high", nil, "the standing pressure is above that of the gas at the room's temperature", []string{"standing-pressure-none"}},
	{"standing-pressure-none", nil, "hardly any standing pressure", nil},
}

// yields names weaker facts and the stronger ones before which they count for
// nothing: an ohmmeter that found no path to the case cannot stand against an
// insulation tester that did; a protector that is closed now does not undo
// that it had opened; a small fall from a low supply does not make it sound.
var yields = map[string][]string{
	"insulation-no-gross-fault": {"insulation-sound", "insulation-suspect", "insulation-failed"},
	"protector-closed":          {"protector-reset"},
	"sag-sound":                 {"supply-low"},
}

// synonyms are codes under which other packages know a fact of the table.
var synonyms = map[string]string{
	"no-gross-ground":         "insulation-no-gross-fault",
	"windings-open-unplaced":  "open-unplaced",
	"earth-continuity-sound":  "earth-sound",
	"earth-continuity-failed": "earth-failed",
}
