package cause

// tradeTestRows bear on air conditioners, machines that take in water, drums,
// burners and three phases.
const tradeTestRows = "" +
	"blower-look | see whether the fan blows | saw blower runs | 1l | blower-runs blower-stopped |  |  | ac-warm hp-no-heat gas-quits no-blower\n" +
	"coil-look | look at the evaporator coil and feel along it, panel off | saw coil cold | 2l | coil-cold coil-partial coil-warm coil-iced |  |  | ac-warm ac-drips\n" +
	"air-split | temperatures of the air that it takes in and gives out, ten minutes after it started | temp return 78F, supply 60F | 2l | split-sound split-small split-large |  |  | ac-warm |  |  | common practice\n" +
	"air-rise | temperatures of the air that it takes in and gives out in heating, ten minutes after it started and not while it defrosts | temp return 68F, supply 95F | 2l | rise-sound rise-small rise-large |  |  | hp-no-heat |  |  | common practice\n" +
	"blower-motor | turn the fan by hand and read its windings | saw blower stiff | 2d | blower-stiff blower-windings-failed blower-windings-sound |  | prove-dead capacitor-discharge |  | blower-stopped\n" +
	"blower-volts | volts at the fan motor's connector | volt blower 117 | 2L | blower-volts-present blower-volts-absent |  | mains-live hot-and-moving |  | blower-stopped\n" +
	"valve-coil | ohms of the coil, its wires off | ohm valve 1.1k | 2d | coil-open coil-conducts |  | prove-dead | no-fill no-ice gas-no-heat furnace-no-heat slow-dry no-zone poor-ice zone-cold\n" +
	"valve-coil-hot | ohms of each coil of the gas valve, dead, at once after the heat went | ohm valve-coil 1.1k hot | 2d | coil-open coil-conducts |  | prove-dead fuel-gas hot-and-moving | gas-quits\n" +
	"valve-volts | volts at the inlet valve while it is called on | volt valve 118 run | 2L | valve-volts-present valve-volts-absent |  | mains-live | no-fill\n" +
	"level-sensing | blow into the pressure hose or lift the float, and hear or read it switch | saw level sensing good | 2d | level-sound level-full level-empty |  | prove-dead\n" +
	"pull-plug | pull the plug while it fills and see whether the water stops | saw stops with power off | 1l | no-fill-unpowered fills-unpowered\n" +
	"igniter-look | watch through the sight hole whether the igniter glows | saw igniter glows | 1l | igniter-glows igniter-dark |  | fuel-gas hot-and-moving | gas-no-heat furnace-no-heat\n" +
	"igniter-ohms | ohms of the igniter, cold, its wires off | ohm igniter 80 | 2d | igniter-open igniter-conducts |  | prove-dead hot-and-moving\n" +
	"igniter-amps | amps of the igniter against the marking of its valve | amp igniter 3.45 run | 2L | igniter-strong igniter-weak |  | mains-live fuel-gas |  | igniter-glows\n" +
	"flame-sensor | ohms through the flame sensor, cold | ohm flame-sensor 0.2 | 2d | flame-sensor-closed flame-sensor-open |  | prove-dead protector-stays\n" +
	"flame-amps | current of the flame rod, in series with it while it burns | amp flame-rod 2.5uA run | 2L | flame-sensed flame-weak |  | mains-live fuel-gas hot-and-moving |  | flame-drops-out\n" +
	"heat-off | set the heat low or off and see whether it stops | saw heat stops when hot | 2l | heat-stops heats-when-off |  | hot-and-moving\n" +
	"phases | volts between every two legs of the supply, before fuse and contactor | volt L1 L2 231, L2 L3 229, L1 L3 232 | 2L | phases-sound phases-unbalanced phase-lost supply-absent |  | mains-live | three-phase\n" +
	"legs | volts between every two legs at the machine while it is called on | volt T1 T2 231 run, T2 T3 229 run, T1 T3 232 run | 2L | legs-sound legs-unbalanced leg-lost control-not-calling |  | mains-live hot-and-moving | three-phase |  | $grounded\n" +
	"contactor | look at the contactor's poles and read each closed by hand, dead | saw contactor good | 2d | pole-sound pole-open |  | prove-dead\n"
