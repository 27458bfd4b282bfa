package cause

import "ohmcall/calc/measure"

// judgedRows is the part of the vocabulary that judged readings establish, in the
// form of seenRows; nothing is typed for it.
const judgedRows = `
# Windings of the machine at hand.
windings-sound | | start and run windings are whole and fit each other | winding-open winding-shorted protector-open protector-open-cold windings-equal
no-air-path | | by what it is called it moves no air and no water through itself | airflow-blocked
coil-hidden | | by what it is called its evaporator is sealed in out of sight |
driven | | by its plate or name a drive runs the machine, without start device and capacitors | drive-none windings-sound start-device-sound start-device-suspect start-device-failed
brushed | | by its plate it is a universal motor, with brushes and without start device and capacitors | driven windings-equal
windings-equal | | all three pairs are equal: a three-phase or inverter-driven machine | winding-open winding-shorted protector-open
windings-isolated | | groups of leads open to each other, each whole by itself; by the wiring diagram a winding may be open between them |
windings-odd | | run reads low beside start, or more than the LRA is drawn: turns may be shorted |
windings-do-not-add-up | | the two lower readings do not add up to the highest: suspect the readings first |
windings-too-high | | the highest pair reads more than the two others together: a contact or a slip, as no winding makes it |
open-unplaced | | two open pairs on unmarked pins: protector, start or run winding open | windings-sound windings-equal
open-unplaced-cold | | two pairs on unmarked pins are open though it is cold: a protector failed open, a winding or a lead is open | protector-reset windings-sound windings-equal
not-a-winding | | the readings are not those of a winding | windings-sound windings-equal
winding-open | | a winding is open | protector-open
winding-open-hot | | a winding was open when hot and reads through cold: a joint that parts when it warms | protector-reset
winding-shorted | | a winding is far below its sound value |
winding-grounded | | a winding has a path to the case | insulation-sound insulation-no-gross-fault
insulation-sound | | an insulation tester found the winding sound to the case | insulation-failed insulation-suspect
insulation-no-gross-fault | | an ohmmeter found no path to the case; it cannot prove the insulation |
insulation-suspect | | insulation below a stricter limit, above the failing one |
insulation-failed | | insulation to the case below the failing limit |
protector-open | | both pairs to common open, start to run whole: the protector is open | protector-closed
protector-closed | | the protector conducts | protector-open-cold
protector-open-cold | | the protector stays open below ` + measure.CoolWords + `, ` + measure.CoolSource + ` | protector-reset
protector-reset | | the protector was open when hot and closed again on cooling |
overload-open | | the outside overload does not conduct, hot as it is | overload-closed
overload-open-cold | | the outside overload does not conduct although it is cold | overload-closed overload-reset
overload-closed | | the outside overload conducts |
overload-reset | | the outside overload was open when hot and closed again on cooling |

# Start gear and capacitors.
start-device-sound | | the start device reads as it should | start-device-failed start-device-suspect windings-equal drive-fault-shown drive-no-fault
start-device-suspect | | the start device reads at the edge | start-device-failed windings-equal drive-fault-shown drive-no-fault
start-device-failed | | the start device is open, shorted or worn out | windings-equal drive-fault-shown drive-no-fault
start-cap-sound | | the start capacitor is within its marking | start-cap-suspect start-cap-failed start-cap-open start-cap-shorted
start-cap-suspect | | the start capacitor is at the edge of its marking | start-cap-failed start-cap-open start-cap-shorted
start-cap-failed | | the start capacitor is outside its marking |
start-cap-open | | the start capacitor is open | start-cap-shorted
start-cap-shorted | | the start capacitor is shorted |
run-cap-sound | | the run capacitor is within the tolerance on its can | run-cap-suspect run-cap-failed
run-cap-suspect | | the run capacitor is at the edge of its tolerance | run-cap-failed
run-cap-failed | | the run capacitor is outside the tolerance on its can |

# Supply, control, current.
supply-sound | | the supply at rest is within limits | supply-low supply-absent leg-missing
supply-low | | the supply at rest is below its limit | supply-absent
supply-usable | | the supply is low, and not so low that a heater gives no heat on it |
supply-high | | the supply at rest is above its limit | supply-sound supply-low supply-absent
supply-absent | | no volts at the appliance's supply | sag-sound sag-deep starts-and-runs light-works outlet-works clicks hums cond-fan-runs evap-fan-runs amps-locked-rotor
sag-sound | | the volts at the machine fall little while it tries to start | sag-deep
sag-deep | | the volts at the machine fall too far while it tries to start |
control-calling | | the control gives volts to the machine | control-not-calling
control-not-calling | | the control gives no volts although it should call | clicks hums starts-and-runs
amps-none | | no current flows although the machine is called on | amps-low amps-sound amps-high amps-locked-rotor starts-and-runs hums
amps-agree | | the current is what the plate says, within the doubt of the readings | amps-locked-rotor
amps-undecided | | current read, but no plate or too near a limit to say |
amps-low | | running current well below the nameplate's | amps-sound amps-high amps-locked-rotor
amps-sound | | running current agrees with the nameplate | amps-high amps-locked-rotor
amps-high | | running current above the nameplate's | amps-locked-rotor
amps-locked-rotor | | current near locked rotor, and it stays there | starts-and-runs silent
surge-sound | | start surge falls to running current within a second or so | amps-locked-rotor
earth-sound | | earth pin to case conducts | earth-failed
earth-failed | | earth pin to case does not conduct as it must |
metal-live | | volts that can kill stand on the bare metal | metal-quiet
metal-quiet | | hardly any volts stand on the bare metal |
cord-sound | | the cord conducts from end to end | cord-open cord-shorted
cord-open | | a conductor of the cord is open |
fuse-sound | | the appliance's fuse conducts | fuse-open
switch-closed | | the switch or door interlock conducts when it should | switch-open
speed-switch-closed | | the speed switch conducts at each speed | speed-switch-open
speed-switch-open | | the speed switch does not conduct at a speed |
plug-to-plug-sound | | no short between the plug's supply pins with everything switched on | plug-to-plug-shorted
plug-to-plug-shorted | | a short between the plug's supply pins |

# Heaters, thermostats, sensors, fans.
heater-sound | | the heater's ohms fit its plate | heater-suspect heater-open heater-failed
heater-suspect | | the heater's ohms are at the edge, or the reading is doubtful | heater-open heater-failed
heater-failed | | the heater's ohms are far from its plate |
heater-grounded | | the heater has a path to its sheath | heater-insulation-sound
heater-no-gross-fault | | an ohmmeter found no path to the sheath; it cannot prove the insulation |
heater-volts-present | | the heater gets its volts | heater-volts-absent
heater-volts-absent | | the heater gets no volts although it is called on | heats-up
heater-insulation-sound | | the heater is sound to its sheath |
thermostat-closed | | the thermostat conducts when it should call | thermostat-open control-not-calling
thermostat-open | | the thermostat does not conduct when it should call |
thermostat-opens | | the thermostat opens at its set point |
limit-closed | | the thermal limit, fuse or defrost thermostat conducts when it should | limit-open
sensor-sound | | the sensor fits its curve | sensor-suspect sensor-failed
sensor-suspect | | the sensor is at the edge of its curve | sensor-failed
sensor-failed | | the sensor is open, shorted or off its curve |
module-fed | | the thermoelectric module gets its volts | module-unfed
module-unfed | | the thermoelectric module gets no volts although it should cool |
sensor-open | | the thermistor is open, which a control takes for cold or for a fault | sensor-sound
sensor-reads-cold | | the sensor pretends a temperature below the true one | sensor-sound sensor-reads-warm
sensor-reads-warm | | the sensor pretends a temperature above the true one | sensor-sound
cond-fan-windings-sound | | the condenser fan motor's windings are sound | cond-fan-windings-failed
cond-fan-windings-failed | | the condenser fan motor's windings are open or shorted |
cond-fan-windings-undecided | | the ohms of the condenser fan's motor tell nothing until its volts are known |
cond-fan-volts-present | | the condenser fan gets its volts | cond-fan-volts-absent
cond-fan-volts-absent | | the condenser fan gets no volts although it should run | cond-fan-runs
evap-fan-volts-present | | the evaporator fan gets its volts | evap-fan-volts-absent
evap-fan-volts-absent | | the evaporator fan gets no volts although it should run | evap-fan-runs
evap-fan-windings-sound | | the evaporator fan motor's windings are sound | evap-fan-windings-failed
evap-fan-windings-failed | | the evaporator fan motor's windings are open or shorted |
evap-fan-windings-undecided | | the ohms of the evaporator fan's motor tell nothing until its volts are known |
pulls-down-on-course | | the timed temperatures lead to the set point | pulls-down-slowly will-not-reach does-not-cool
pulls-down-slowly | | the timed temperatures lead to the set point far too late | will-not-reach cools-down
will-not-reach | | the timed temperatures level off above the set point | cools-down
temp-above | | the temperature is above its target | temp-at-target
freezer-cold | | the freezer beside a warm fridge is cold |
temp-at-target | | the temperature is at or below its target | will-not-reach does-not-cool

# Igniters, coils, the air of an air conditioner, three phases.
igniter-conducts | | the igniter is whole; whether it glows hot enough its amps say |
flame-sensor-open | | the flame sensor is open though it is cold | flame-sensor-closed
flame-sensor-closed | | the flame sensor conducts when it is cold |
flame-sensed | | the flame rod carries the current that a control needs | flame-weak flame-none
flame-weak | | the flame rod carries too little current for the control |
coil-conducts | | the coil of a valve is not open |
valve-volts-present | | the valve gets its volts | valve-volts-absent
valve-volts-absent | | the valve gets no volts although it is called on |
blower-windings-sound | | the fan motor's windings are sound | blower-windings-failed
blower-windings-failed | | the fan motor's windings are open or shorted |
blower-volts-present | | the fan motor gets its volts | blower-volts-absent
blower-volts-absent | | the fan motor gets no volts although it should run | blower-runs
split-sound | | the air leaves as much colder as it should | split-small split-large does-not-cool
split-small | | the air leaves hardly colder than it came | split-large
rise-sound | | the air leaves as much warmer as it should | rise-small rise-large does-not-heat heats-slowly
rise-small | | the air leaves hardly warmer than it came | rise-large
contactor-unfed | | the coil of the contactor has no volts |
rise-cooled | | set to heat, the air leaves far colder than it came: it cools | rise-sound rise-small rise-large
rise-large | | the air leaves far warmer than it came: there is too little of it, or an electric heater helps |
split-large | | the air leaves far colder than it came: there is too little of it |
supply-far-over | | the volts of the supply are far too high |
neutral-poor | | the neutral or the earth of the supply is poor or open |
winding-low | | a winding reads far below its sheet |
kit-or-gear | | it starts with a start kit, in place of a device or capacitor that was not read sound |
overloaded | | the three legs draw more than the plate allows though their volts are sound |
legs-overloaded | | the three legs draw more than the plate allows, and alike | single-phasing
coil-fed | | the coil of the contactor has its volts |
one-phase | | the machine is on one phase |
no-pump-down | | it is not made to pump down by a valve in its liquid line |
sealed-motor | | the motor is inside a sealed compressor |
start-cap-unlikely | | a run capacitor is marked, and no start capacitor or relay for one |
phases-sound | | the three legs of the supply are there and balanced | phases-unbalanced phase-lost
phases-unbalanced | | the volts of the supply's legs are unbalanced | phase-lost
phase-lost | | a leg of the supply is lost |
legs-sound | | the three legs at the machine are there and balanced | legs-unbalanced leg-lost
leg-lost | | a leg at the machine is lost |

# Read, but too near a limit to say, or with nothing to judge it by: the test
# was made and is to be repeated, with a closer meter or the plate's values,
# when nothing else parts what is left.
insulation-undecided | | insulation to the case read too near its limit to say |
start-device-undecided | | the start device read too near its limit to say |
start-cap-undecided | | the start capacitor read too near its limit to say |
run-cap-undecided | | the run capacitor read too near its limit to say |
supply-undecided | | the supply read too near its limit to say |
sag-undecided | | the fall of the volts read too near its limit to say |
heater-undecided | | the heater's ohms read too near their limit to say |
heater-insulation-undecided | | heater to sheath read too near its limit to say |
heater-insulation-suspect | | the heater's insulation to its sheath is in doubt | heater-insulation-sound heater-no-gross-fault
thermostat-undecided | | the thermostat read neither closed nor open |
limit-undecided | | the limit read neither closed nor open |
switch-undecided | | the switch read neither closed nor open |
speed-switch-undecided | | the speed switch read neither closed nor open |
fuse-undecided | | the fuse read neither closed nor open |
earth-undecided | | the earth path was read too near its limit to say |
cord-undecided | | the cord read neither closed nor open |
sensor-undecided | | the sensor read too near its limit to say |

wired-in | | the appliance has no outlet that another one fits |
several-elements | | by what it is called it has several elements on one supply |
no-flame-rod | | by what it is called a switch senses the heat of its flame, and no rod |
no-own-blower | | by what it is called no blower of its own takes its heat away |
no-gasket | | by what it is called it has no door with a gasket against water |
direct-drive | | by what it is called its motor turns its load without belt, brushes or tachogenerator |
no-burner | | an electric appliance has no gas burner |
no-sealed-system | | an appliance of this kind has no compressor |
two-legs | | the plate's volts are those of two legs: no lamp fits that outlet |

# Pressures.
pressures-apart | | the running compressor raises the pressure | pressures-level
pressures-level | | suction and discharge are nearly level while it should run |
standing-pressure-sound | | the standing pressure is that of the gas at the room's temperature | standing-pressure-high standing-pressure-none
standing-pressure-high | | the standing pressure is above that of the gas at the room's temperature | standing-pressure-none
standing-pressure-none | | hardly any standing pressure |
`

// yields names weaker facts and the stronger ones before which they count for
// nothing: an ohmmeter that found no path to the case cannot stand against an
// insulation tester that did; a protector that is closed now does not undo
// that it had opened; a small fall from a low supply does not make it sound; ohms
// that fit do not stand against another device with which it starts.
var yields = map[string][]string{
	"insulation-no-gross-fault": {"insulation-sound", "insulation-suspect", "insulation-failed"},
	"protector-closed":          {"protector-reset"},
	"overload-closed":           {"overload-reset"},
	"sag-sound":                 {"supply-low"},
	"start-device-sound":        {"starts-with-test-device"},
	"vents-clear":               {"damper-stuck-shut"},
}

// synonyms are codes under which other packages know a fact of the table.
var synonyms = map[string]string{
	"no-gross-ground":         "insulation-no-gross-fault",
	"windings-open-unplaced":  "open-unplaced",
	"earth-continuity-sound":  "earth-sound",
	"earth-continuity-failed": "earth-failed",
}
