package cause

// cold are the complaints about a machine that should cool.
var cold = []string{"leaks-ices", "too-cold", "runs-always", "no-cool", "fridge-warm", "hums-trips"}

// coldTestRows bear on a machine that runs but does not keep its temperature.
const coldTestRows = "" +
	"listen | listen and feel whether the compressor runs | saw comp runs | 1l | starts-and-runs does-not-start | clicks hums silent runs-all-the-time |  | no-start trips-breaker no-dry ac-warm hp-no-heat three-phase $cold\n" +
	"evap-fan-look | hold the door switch in and see whether the evaporator fan runs | saw evap-fan runs | 1l | evap-fan-runs evap-fan-stopped evap-fan-none |  | hot-and-moving | no-start $cold\n" +
	"cond-look | look at the condenser and feel along it | saw condenser clean | 1l | condenser-clean condenser-dirty |  | hot-and-moving\n" +
	"cond-feel | feel whether the condenser grows warm | saw condenser warm | 1l | condenser-cold condenser-warm |  | hot-and-moving | no-dry ac-warm $cold\n" +
	"setting | read the setting of the control | saw set normal | 1l | set-normal set-coldest\n" +
	"lamp | see whether the lamp goes off with the door switch pressed | saw lamp goes off | 1l | lamp-goes-off lamp-stays-on\n" +
	"gasket | try the gasket with a slip of paper all round | saw gasket sound | 1l | gasket-sound gasket-leaks\n" +
	"use | ask what was loaded and how often the door is opened | saw normal use | 1l | normal-use heavy-use\n" +
	"room | temperature of the room against the climate class on the plate | saw room normal | 1l | room-normal room-hot room-cold\n" +
	"vents | look at the air passages inside and the damper | saw vents clear | 1l | vents-clear vents-blocked damper-stuck-shut\n" +
	"damper | watch the damper through its travel | saw damper moves | 2l | damper-moves damper-stuck-open damper-stuck-shut damper-none\n" +
	"level | lay a level on the cabinet | saw level | 1l | level not-level\n" +
	"pan | look at the drain pan | saw pan sound | 1l | pan-sound pan-cracked\n" +
	"water-line | look at water tubes, valve and hoses | saw water line dry | 1l | water-line-dry water-line-leaks\n" +
	"cycles | watch whether it cycles off | saw cycles off | 4l | cycles-off runs-all-the-time\n" +
	"frost-look | take the evaporator cover off and look at the frost | saw frost even | 3d | frost-none frost-partial frost-even frost-heavy |  | prove-dead | no-dry $cold |  | coil-hidden\n" +
	"drain | pour warm water into the drain of evaporator or pan | saw drain clear | 2d | drain-clear drain-blocked |  | prove-dead\n" +
	"cond-fan-motor | turn the condenser fan by hand and read its windings | saw cond-fan stiff | 2d | cond-fan-stiff cond-fan-windings-failed cond-fan-windings-sound | cond-fan-windings-undecided | prove-dead |  | cond-fan-stopped\n" +
	"evap-fan-motor | turn the evaporator fan by hand and read its windings | saw evap-fan stiff | 2d | evap-fan-stiff evap-fan-windings-failed evap-fan-windings-sound | evap-fan-windings-undecided | prove-dead |  | evap-fan-stopped\n" +
	"heater-ohms | ohms of the heater, wires off | ohm heater 29.4 | 2d | heater-sound heater-open heater-failed | heater-suspect heater-undecided | prove-dead hot-and-moving\n" +
	"load-sag | volts of the supply with the heater on | volt line 116 run | 2L | sag-sound sag-deep | sag-undecided | mains-live hot-and-moving | no-heat slow-dry |  | heater-grounded\n" +
	"heater-amps | current of the heater with a clamp, called on | amp heater 3.75 run | 2L | amps-none amps-sound | amps-low amps-high amps-agree amps-undecided | mains-live hot-and-moving | no-heat slow-dry |  | heater-grounded\n" +
	"limit-ohms | ohms through the thermal limit or fuse, at a temperature at which it should conduct | ohm limit 0.1 closed | 2d | limit-closed limit-open | limit-undecided | prove-dead protector-stays | no-heat no-power no-tumble wont-run gas-no-heat furnace-no-heat pilot-out fan-on slow-dry no-waves\n" +
	"limit-hot | ohms through the limit, dead, at once after the heat went | ohm limit 0.1 closed hot | 2d | limit-closed limit-open | limit-undecided | prove-dead protector-stays hot-and-moving | gas-quits\n" +
	"defrost-thermostat | ohms through the defrost thermostat while it is colder than its mark | ohm defrost-thermostat 0.1 cold | 2d | limit-closed limit-open | limit-undecided | prove-dead protector-stays | $cold\n" +
	"heater-volts | volts at the heater's own terminals while it is called on | volt heater 239 run | 2L | heater-volts-present heater-volts-absent |  | mains-live hot-and-moving | no-heat | heater-sound | heater-grounded\n" +
	"sensor-ohms | ohms of the sensor in stirred ice water, or beside a thermometer | ohm sensor 32.6k ice | 3d | sensor-sound sensor-reads-cold sensor-reads-warm sensor-open sensor-failed | sensor-suspect sensor-undecided | prove-dead\n" +
	"thermostat-cold | ohms through the thermostat below its set point | ohm thermostat OL open | 2d | thermostat-opens thermostat-stuck-closed |  | prove-dead | too-cold runs-always too-hot ac-runs-on\n" +
	"restriction-look | feel the drier and the capillary tube, listen for the hiss when it stops | saw no restriction | 2l | restriction-none restriction-frost |  | hot-and-moving\n" +
	"running-amps | running current against the plate's, with a clamp round one wire | amp comp 1.1 run | 2L | amps-low amps-sound amps-high | amps-agree amps-undecided | mains-live hot-and-moving | no-cool fridge-warm runs-always no-dry ac-warm | condenser-cold\n" +
	"leak-search | look for oil at the joints, then search all of them with a leak detector made for the gas | saw no leak found | 4d | leak-found leak-not-found |  | prove-dead flammable-gas\n" +
	"defrost-by-hand | start a defrost by hand and see whether it heats | saw defrost runs by hand | 3l | defrost-runs-by-hand defrost-dead-by-hand |  | hot-and-moving | $cold\n" +
	"module-volts | direct volts at the thermoelectric module, set to cool | volt module 12.1 dc run | 2L | module-fed module-unfed |  | mains-live\n" +
	"cond-fan-volts | volts at the condenser fan's connector | volt cond-fan 117 | 2L | cond-fan-volts-present cond-fan-volts-absent |  | mains-live hot-and-moving |  | cond-fan-stopped\n" +
	"evap-fan-volts | volts at the evaporator fan's connector | volt evap-fan 117 | 2L | evap-fan-volts-present evap-fan-volts-absent |  | mains-live hot-and-moving |  | evap-fan-stopped\n" +
	"suction | suction pressure, only by a person certified for the refrigerant and only where there is a port | saw suction normal | 5L | suction-low suction-normal suction-high |  | sealed-system flammable-gas mains-live hot-and-moving\n" +
	// Only once gauges are on for another reason: no port is opened for it.
	"standing-pressure | standing pressure at room temperature, only by a person certified for the refrigerant and only where there is a port | psi suction 36.2 standing at 25C | 5d | standing-pressure-sound standing-pressure-high standing-pressure-none |  | prove-dead sealed-system flammable-gas |  | suction-low suction-normal suction-high pressures-apart pressures-level\n"

// otherTestRows bear on power, tripping, heating and plain motors.
const otherTestRows = "" +
	"unplugged | unplug the appliance, reset the breaker once only, and see whether it holds | saw holds unplugged | 1l | holds-unplugged trips-unplugged |  |  | trips-breaker |  | windings-do-not-add-up\n" +
	"when-trips | note when it trips: at once, when a load is called on, or later | saw trips later | 1l | trips-at-once trips-later trips-only-when-called\n" +
	"other-load | try another appliance of like load on that circuit | saw other appliance holds | 2l | holds-with-other-load trips-with-other-load\n" +
	"other-circuit | ask or see whether it trips another circuit as well | saw holds on other circuit | 2l | other-outlet-holds other-outlet-trips |  |  | trips-breaker |  | heater-grounded plug-to-plug-shorted cord-shorted trips-at-once residual-trips trips-only-when-called $grounded\n" +
	"other-element | switch another element on, the broil for the bake or another ring, and see whether it heats | saw other element heats | 1l | other-heats other-dead |  | hot-and-moving | no-heat | several-elements\n" +
	"airflow | look at vent, filter and air path | saw airflow clear | 1l | airflow-clear airflow-blocked\n" +
	"cord | ohms of the cord from pin to far end, and between its pins | ohm cord 0.1 | 2d | cord-sound cord-open cord-shorted | cord-undecided | prove-dead capacitor-discharge\n" +
	"plug-pins | ohms between the plug's supply pins with its switches on | ohm plug 14.2 | 1l | plug-to-plug-sound plug-to-plug-shorted |  | prove-dead\n" +
	"fuse | ohms through the appliance's fuse | ohm fuse 0.1 | 2d | fuse-sound fuse-open fuse-none | fuse-undecided | prove-dead capacitor-discharge\n" +
	"switch | ohms through switch and door interlock, closed | ohm switch 0.1 closed | 2d | switch-closed switch-open | switch-undecided | prove-dead protector-stays\n" +
	"speed-switch | ohms through the speed switch at each speed, wires off | ohm speed-switch 0.1 closed | 2d | speed-switch-closed speed-switch-open speed-switch-none | speed-switch-undecided | prove-dead capacitor-discharge | motor-dead\n" +
	"heater-case | ohms from the heater to its sheath, both wires off | ohm heater case OL | 2d | heater-no-gross-fault heater-grounded heater-insulation-sound heater-none | heater-insulation-undecided heater-insulation-suspect | prove-dead\n" +
	"heater-tester | insulation tester from the heater to its sheath, both wires off | ohm heater case 200M test 500V | 3d | heater-insulation-sound heater-grounded |  | prove-dead insulation-test-volts |  | heater-no-gross-fault heater-insulation-undecided heater-insulation-suspect\n" +
	"insulation-tester | insulation tester from the windings to case | ohm A case 200M test 500V | 3d | insulation-sound insulation-suspect insulation-failed | insulation-undecided | prove-dead capacitor-discharge insulation-test-volts |  | insulation-no-gross-fault insulation-suspect insulation-undecided\n" +
	"shaft | take the load off and turn the shaft by hand | saw shaft free | 2d | shaft-free shaft-stuck |  | prove-dead hot-and-moving\n" +
	"load | turn what the motor drives, a disposer with its hex key from below | saw load free | 2d | load-free load-jammed load-drags |  | prove-dead hot-and-moving | motor-dead no-spin no-tumble three-phase\n" +
	"impeller | open the trap of the drain pump, take out what is in it (it may be glass), look at the impeller and turn it | saw impeller sound | 2d | impeller-sound load-jammed impeller-loose shaft-stuck | load-free | prove-dead | no-drain pump-on\n" +
	"earth | ohms from the plug's earth pin to the metal that was touched, unplugged | ohm earth 0.05 test 10A | 1d | earth-sound earth-failed | earth-undecided | prove-dead | shocks\n"
