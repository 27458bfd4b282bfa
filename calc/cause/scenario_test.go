package cause

import (
	"slices"
	"strings"
	"testing"
)

// scenario is an invented call as the sequence of facts that it established,
// one an entry, and what a senior technician would conclude (common practice
// unless a source stands beside the row).
type scenario struct {
	name      string
	complaint string
	facts     string
	supported string // exactly these
	out       string // at least these are ruled out
	open      string // at least these stay open
	next      string // test to do next, "" for none
	repair    string // cause to mend now, "" for none
}

const (
	woundAndCased = " windings-sound insulation-no-gross-fault"
	// goodGear is everything around a compressor found in order, dead.
	goodGear = woundAndCased + " start-device-sound overload-closed start-cap-none run-cap-none wiring-matches connections-sound"
)

var scenarios = []scenario{
	{"a furnace that goes off on its limit", "gas-quits", "heat-lost airflow-clear blower-stopped", "blower-failed", "airflow-blocked", "limit-hot", "", "blower-failed"},
	{"a blower that stands, its volts there", "no-blower", "blower-stopped airflow-clear belt-sound run-cap-sound blower-volts-present connections-sound", "blower-failed", "airflow-blocked belt-broken run-cap-failed blower-unfed", "", "", "blower-failed"},
	{"a dryer that blows its thermal fuse again", "too-hot", "limit-open", "", "", "airflow-blocked thermostat-stuck heater-grounded", "airflow", ""},
	{"the same, its thermostat stuck", "too-hot", "limit-open airflow-clear thermostat-stuck-closed heater-no-gross-fault", "thermostat-stuck", "airflow-blocked", "", "", "thermostat-stuck"},
	{"a sump pump whose float hangs", "pump-on", "runs-all-the-time level-full", "level-says-full", "", "check-valve-leaks", "", "level-says-full"},
	{"a water heater, its fittings and relief valve dry", "leaks-tank", "joints-dry relief-shut", "", "joints-leak relief-opens relief-leaks", "tank-leaks", "tank-look", ""},
	{"hot water that smells, its anode gone", "smelly-water", "cold-odourless water-kept-hot anode-spent", "anode-spent", "water-tepid", "", "", "anode-spent"},
	{"a dishwasher set to wait", "wont-run", "set-waiting", "set-waiting", "", "no-supply", "", "set-waiting"},
	{"a washer that stops and has to cool, its hose free", "stops-mid", "cuts-out hose-clear starts-after-wait", "", "hose-blocked door-switch-slips", "protector-hot winding-shorted", "winding-ohms", ""},
	{"a dryer that stops, nothing seen", "stops-early", "cuts-out", "", "", "airflow-blocked bearings-worn ends-it-early protector-hot", "airflow", ""},
	{"a dryer that stops and whose vent is blocked", "stops-early", "cuts-out airflow-blocked", "airflow-blocked", "", "bearings-worn", "", "airflow-blocked"},
	{"a dryer that starts again at once", "stops-early", "cuts-out airflow-clear door-holds restarts-at-once", "", "protector-hot airflow-blocked door-switch-slips", "ends-it-early connection-weak", "bearings", ""},
	{"a dryer that has to cool", "stops-early", "cuts-out airflow-clear door-holds starts-after-wait", "", "ends-it-early door-switch-slips airflow-blocked", "bearings-worn protector-hot winding-shorted", "bearings", ""},
	{"an oven of which the broil heats", "no-heat", "does-not-heat several-elements other-heats", "", "no-supply leg-missing supply-weak", "heater-failed switch-open control-not-calling", "heater-ohms", ""},
	{"an oven of which nothing heats", "no-heat", "does-not-heat several-elements other-dead", "", "heater-failed", "no-supply leg-missing", "outlet-lamp", ""},
	{"a heat pump that does not heat, nothing seen", "hp-no-heat", "does-not-heat", "", "", "set-not-heating outdoor-iced reversing-stuck refrigerant-low heater-failed", "mode-heat", ""},
	{"an outdoor coil full of ice", "hp-no-heat", "rise-small set-to-heat airflow-clear starts-and-runs outdoor-iced", "outdoor-iced", "set-not-heating airflow-blocked compressor-off", "refrigerant-low", "", "outdoor-iced"},
	{"an outdoor fan that stands", "hp-no-heat", "rise-small set-to-heat airflow-clear starts-and-runs outdoor-clear cond-fan-stopped", "cond-fan-failed cond-fan-unfed", "outdoor-iced", "", "cond-fan-motor", ""},
	{"a reversing valve that stays in cooling", "hp-no-heat", "rise-small set-to-heat airflow-clear starts-and-runs outdoor-clear cond-fan-runs blower-runs reversing-stuck", "reversing-stuck", "cond-fan-failed blower-failed", "", "", "reversing-stuck"},
	{"all that can be looked at is sound", "hp-no-heat", "rise-small set-to-heat airflow-clear starts-and-runs outdoor-clear cond-fan-runs blower-runs reversing-shifts heater-none connections-sound", "", "reversing-stuck outdoor-iced heater-failed", "refrigerant-low restriction compressor-weak", "restriction-look", ""},
	{"an air conditioner whose outdoor fan stands", "ac-warm", "split-small airflow-clear starts-and-runs cond-fan-stopped", "cond-fan-failed cond-fan-unfed", "", "", "cond-fan-motor", ""},
	{"one motor for both fans of an air conditioner", "ac-warm", "split-small airflow-clear starts-and-runs fan-shared", "", "cond-fan-failed cond-fan-unfed", "blower-failed", "mode", ""},
	{"an overload that closed again", "hums-trips", "comp-hot overload-reset", "overload-hot", "", "cond-fan-failed condenser-dirty supply-weak compressor-seized", "cond-fan-look", ""},
	{"the same, its fan runs and its condenser is clean", "hums-trips", "comp-hot overload-reset cond-fan-runs condenser-clean", "overload-hot", "cond-fan-failed condenser-dirty", "run-cap-failed", "case-ohms", ""},
	{"a universal motor, nothing seen", "no-spin", "does-not-spin brushed", "", "start-device-failed run-cap-failed start-cap-failed", "brushes-worn tacho-open winding-open", "brushes", ""},
	{"a tachogenerator that is open", "no-spin", "does-not-spin brushed brushes-sound tacho-open", "tacho-open", "brushes-worn", "", "", "tacho-open"},
	{"an ice maker, nothing seen", "no-ice", "no-ice-made", "", "", "ice-switched-off fill-tube-frozen ice-maker-failed valve-coil-open", "ice-arm", ""},
	{"an ice maker that is on and cold", "no-ice", "no-ice-made ice-arm-down ice-cold-enough", "", "ice-switched-off freezer-too-warm", "fill-tube-frozen", "fill-tube", ""},
	{"a frozen fill tube", "no-ice", "no-ice-made ice-arm-down fill-tube-frozen", "fill-tube-frozen", "ice-switched-off", "", "", "fill-tube-frozen"},
	{"an ice maker that turns, and no water", "no-ice", "no-ice-made does-not-fill ice-arm-down ice-cold-enough fill-tube-clear water-filter-clear tap-open ice-maker-turns coil-open",
		"valve-coil-open", "ice-maker-failed tap-shut", "", "", "valve-coil-open"},
	{"a washer's door that stays locked, nothing seen", "door-locked", "door-locked", "", "", "water-left level-says-full lock-jammed lock-kept", "water-look", ""},
	{"the same, water in its drum", "door-locked", "door-locked does-not-drain", "water-left", "", "lock-jammed", "", "water-left"},
	{"the same, its drum empty and its lock jammed", "door-locked", "door-locked drum-empty lock-jammed", "lock-jammed", "water-left lock-kept", "", "", "lock-jammed"},
	{"the same, its lock free and its level sensing full", "door-locked", "door-locked drum-empty lock-free level-full", "level-says-full", "water-left lock-jammed", "lock-kept", "", "level-says-full"},
	{"the same, all but its control sound", "door-locked", "door-locked drum-empty unlocks-unpowered level-sound connections-sound", "lock-kept", "lock-jammed level-says-full connection-weak", "", "", "lock-kept"},
	{"an oven's door that stays locked, its sensor too warm", "oven-locked", "door-locked lock-free sensor-reads-warm", "sensor-stops-heat", "lock-jammed", "lock-kept", "", "sensor-stops-heat"},
	{"a microwave oven that runs cold, nothing read", "no-waves", "does-not-heat", "", "", "switch-open limit-open magnetron-failed high-volts-failed", "switch", ""},
	{"the same, what carries no high voltage is sound", "no-waves", "does-not-heat switch-closed limit-closed connections-sound", "", "switch-open limit-open", "magnetron-failed high-volts-failed", "high-volts", ""},
	{"the same, its magnetron told to be bad", "no-waves", "does-not-heat switch-closed limit-closed connections-sound high-volts-sound magnetron-failed", "magnetron-failed", "high-volts-failed", "", "", "magnetron-failed"},
	{"a warm fridge beside a cold freezer", "fridge-warm", "temp-above freezer-cold", "", "", "vents-blocked evap-fan-failed evaporator-iced refrigerant-low compressor-weak", "evap-fan-look", ""},
	{"the same, its fan runs", "fridge-warm", "temp-above freezer-cold evap-fan-runs", "", "evap-fan-failed evap-fan-unfed", "vents-blocked heater-failed refrigerant-low", "vents", ""},
	{"the same, its damper stuck shut", "fridge-warm", "temp-above freezer-cold evap-fan-runs vents-clear damper-stuck-shut", "vents-blocked", "evap-fan-failed", "heater-failed", "", "vents-blocked"},
	{"the same, its evaporator iced", "fridge-warm", "temp-above freezer-cold evap-fan-runs vents-clear frost-heavy", "evaporator-iced", "vents-blocked refrigerant-low compressor-weak", "heater-failed limit-open", "defrost-by-hand", ""},
	{"a dead run capacitor where the complaint has it not among its own", "no-cool", "does-not-cool run-cap-failed", "run-cap-failed", "", "refrigerant-low evap-fan-failed", "case-ohms", ""},
	{"the same, its insulation looked at", "no-cool", "does-not-cool run-cap-failed insulation-no-gross-fault", "run-cap-failed", "", "refrigerant-low", "", "run-cap-failed"},
	{"the same, at the edge of its tolerance", "no-cool", "does-not-cool run-cap-suspect", "", "", "refrigerant-low", "evap-fan-look", ""},
	{"the same, beside a fan that stands", "no-cool", "does-not-cool run-cap-failed cond-fan-stopped", "run-cap-failed cond-fan-failed cond-fan-unfed", "", "", "cond-fan-motor", ""},
	{"a refrigerator that rattles", "noisy-cold", "noisy", "", "", "tubes-rattle fan-noisy compressor-noisy", "tubes", ""},
	{"a fan that scrapes", "noisy-cold", "noisy tubes-quiet fan-noisy", "fan-noisy", "tubes-rattle", "compressor-noisy", "", "fan-noisy"},
	{"clicks, nothing measured", "no-start", "clicks", "", "no-supply control-not-calling overload-failed",
		"winding-grounded winding-open start-device-failed compressor-seized", "winding-ohms", ""},
	{"seized compressor with perfect windings, before the trial", "no-start",
		"clicks cond-fan-runs" + goodGear + " supply-sound no-start-on-other-outlet no-start-after-wait",
		"", "supply-weak start-device-failed winding-open winding-shorted pressure-unequalised miswired", "compressor-seized compressor-tight", "start-amps", ""},
	{"the same, its amps read", "no-start",
		"clicks cond-fan-runs" + goodGear + " supply-sound no-start-on-other-outlet no-start-after-wait amps-locked-rotor",
		"", "supply-weak start-device-failed winding-open winding-shorted pressure-unequalised miswired", "compressor-seized compressor-tight", "test-device", ""},
	{"seized compressor with perfect windings, after the trial", "no-start",
		"clicks cond-fan-runs" + goodGear + " supply-sound no-start-on-other-outlet no-start-after-wait no-start-with-test-device",
		"", "supply-weak start-device-failed", "compressor-seized compressor-tight", "test-kit", ""},
	{"seized compressor that a kit does not move either", "no-start",
		"clicks cond-fan-runs" + goodGear + " supply-sound no-start-on-other-outlet no-start-after-wait no-start-with-test-device no-start-with-kit",
		"compressor-seized", "supply-weak start-device-failed compressor-tight", "", "", "compressor-seized"},
	{"a start device that reads well and fails under load", "no-start",
		"clicks" + goodGear + " no-start-on-other-outlet no-start-after-wait starts-with-test-device",
		"start-device-failed", "compressor-seized compressor-tight", "", "", "start-device-failed"},
	{"tight compressor that a kit starts", "no-start",
		"clicks" + goodGear + " no-start-on-other-outlet no-start-after-wait starts-with-kit",
		"compressor-tight", "compressor-seized start-device-failed", "", "", "compressor-tight"},
	{"a known good device starts it, its own not measured", "no-start", "clicks" + woundAndCased + " starts-with-test-device",
		"start-device-failed", "compressor-seized compressor-tight", "", "", "start-device-failed"},
	{"failed start device, all else sound", "no-start",
		"clicks cond-fan-runs" + woundAndCased + " protector-closed supply-sound start-device-failed",
		"start-device-failed", "winding-open winding-shorted winding-grounded protector-failed no-supply control-not-calling drive-fault",
		"compressor-seized", "", "start-device-failed"},
	{"rattling start device before the case is measured", "no-start", "clicks cond-fan-runs device-rattles",
		"start-device-failed", "no-supply", "winding-grounded compressor-seized", "case-ohms", ""},
	// Chiller service manual, p. 12: overload between terminal C and motor common.
	{"open protector on a hot shell", "no-start", "clicks comp-hot cond-fan-runs insulation-no-gross-fault protector-open",
		"protector-hot protector-failed", "winding-open", "start-device-failed", "cool-and-ohm", ""},
	{"open protector that closes on cooling", "no-start", "clicks comp-hot cond-fan-runs insulation-no-gross-fault protector-reset windings-sound protector-closed",
		"protector-hot", "protector-failed winding-open", "supply-weak start-device-failed", "start-device", ""},
	{"outside overload that closes on cooling", "no-start", "clicks comp-hot cond-fan-runs insulation-no-gross-fault overload-reset windings-sound",
		"overload-hot", "overload-failed winding-open", "supply-weak start-device-failed", "start-device", ""},
	{"protector that stays open when cold", "no-start", "silent comp-cold cond-fan-runs insulation-no-gross-fault protector-open-cold",
		"protector-failed", "protector-hot", "", "", "protector-failed"},
	{"weak supply through a long cord, by another outlet", "no-start",
		"clicks cond-fan-runs long-cord" + woundAndCased + " start-device-sound supply-sound starts-on-other-outlet",
		"supply-weak", "compressor-seized start-device-failed no-supply", "", "", "supply-weak"},
	{"weak supply through a long cord, by its sag", "no-start",
		"hums long-cord" + goodGear + " supply-sound sag-deep", "supply-weak", "start-device-failed", "compressor-seized", "", "supply-weak"},
	{"low supply at rest", "no-start", "clicks" + woundAndCased + " supply-low", "supply-weak", "no-supply", "start-device-failed", "", "supply-weak"},
	{"low supply that hardly falls further", "no-start", "clicks" + woundAndCased + " supply-low sag-sound", "supply-weak", "no-supply", "", "", "supply-weak"},
	{"miswired start device after a repair", "no-start", "hums cond-fan-runs" + woundAndCased + " start-device-sound wiring-wrong",
		"miswired", "start-device-failed", "compressor-seized", "", "miswired"},
	// Hermetic Compressor Service Handbook, pp. 40-41: replace, do not energise.
	{"grounded winding", "no-start", "clicks insulation-failed", "winding-grounded", "", "start-device-failed", "", "winding-grounded"},
	{"grounded winding on a breaker that trips", "trips-breaker", "trips-at-once holds-unplugged winding-grounded",
		"winding-grounded", "circuit-fault circuit-overloaded", "", "", "winding-grounded"},
	// Technical service manual for an inverter-compressor refrigerator: start, run and common do not apply.
	{"inverter machine, drive not looked at", "no-start", "silent light-works windings-equal insulation-no-gross-fault",
		"", "start-device-failed start-cap-failed winding-open winding-shorted protector-failed", "drive-fault", "drive-lamp", ""},
	{"inverter machine with a drive fault", "no-start", "silent light-works windings-equal insulation-no-gross-fault drive-fault-shown",
		"drive-fault", "start-device-failed run-cap-failed", "", "", "drive-fault"},
	{"inverter machine whose overload conducts", "no-start", "silent light-works driven overload-closed insulation-no-gross-fault",
		"", "start-device-failed overload-failed overload-hot", "drive-fault", "drive-lamp", ""},
	{"an open start winding under a hum", "hums-trips", "hums winding-open insulation-no-gross-fault", "winding-open", "winding-grounded", "compressor-seized", "", "winding-open"},
	{"an open overload under a hum", "hums-trips", "overload-open-cold insulation-no-gross-fault", "overload-failed", "overload-hot", "", "", "overload-failed"},
	{"run capacitor at -24 %", "hums-trips", "hums cuts-out" + woundAndCased + " run-cap-failed",
		"run-cap-failed", "winding-shorted winding-grounded", "start-device-failed", "", "run-cap-failed"},
	{"run capacitor at the edge", "hums-trips", "hums cuts-out cond-fan-runs" + goodGearBut("run-cap-none", "run-cap-suspect") + " condenser-clean",
		"", "cond-fan-failed", "run-cap-failed supply-weak", "other-outlet", ""},
	{"open start capacitor", "no-start", "hums cond-fan-runs" + woundAndCased + " start-device-sound start-cap-open",
		"start-cap-failed", "start-device-failed", "", "", "start-cap-failed"},
	{"condenser fan stands, compressor good", "no-cool", "cools-slowly starts-and-runs comp-hot cond-fan-stopped",
		"cond-fan-failed cond-fan-unfed", "compressor-off", "condenser-dirty", "cond-fan-motor", ""},
	{"condenser fan failed, compressor good", "no-cool", "cools-slowly starts-and-runs amps-high comp-hot cond-fan-stopped cond-fan-windings-failed",
		"cond-fan-failed", "cond-fan-unfed compressor-off", "", "", "cond-fan-failed"},
	{"condenser fan without volts", "hums-trips", "cuts-out comp-hot cond-fan-stopped cond-fan-windings-sound cond-fan-volts-absent",
		"cond-fan-unfed", "cond-fan-failed", "", "", "cond-fan-unfed"},
	{"evaporator fan failed", "no-cool", "cools-slowly starts-and-runs cond-fan-runs condenser-clean evap-fan-stopped evap-fan-windings-failed",
		"evap-fan-failed", "evap-fan-unfed cond-fan-failed", "", "", "evap-fan-failed"},
	{"defrost heater open", "no-cool", "does-not-cool starts-and-runs cond-fan-runs evap-fan-runs frost-heavy heater-open",
		"evaporator-iced heater-failed", "refrigerant-low restriction compressor-weak evap-fan-failed", "", "", "heater-failed"},
	{"defrost thermostat open", "no-cool", "cools-slowly starts-and-runs frost-heavy evap-fan-runs heater-sound limit-open",
		"evaporator-iced limit-open", "heater-failed refrigerant-low", "", "", "limit-open"},
	{"defrost never starts", "leaks-ices", "frost-heavy evap-fan-runs heater-sound limit-closed gasket-sound normal-use drain-clear pan-sound water-line-dry level",
		"evaporator-iced defrost-control-failed", "drain-blocked gasket-leaks heater-failed limit-open", "", "", "defrost-control-failed"},
	{"an absorption cooler that heats and does not stand level", "absorption-warm", "no-sealed-system does-not-cool heats-up supply-sound not-level", "not-level", "no-supply heater-failed", "cooling-unit-blocked", "", "not-level"},
	{"an absorption cooler whose unit does not circulate", "absorption-warm", "no-sealed-system does-not-cool heats-up supply-sound level back-aired unit-still", "cooling-unit-blocked", "not-level back-unaired heater-failed", "", "", "cooling-unit-blocked"},
	{"a thermoelectric module that gets nothing", "peltier-warm", "no-sealed-system does-not-cool supply-sound back-aired module-unfed", "module-not-fed", "module-failed back-unaired no-supply", "", "", "module-not-fed"},
	{"slow leak, looks done", "runs-always", "runs-all-the-time set-normal normal-use room-normal gasket-sound lamp-goes-off condenser-clean cond-fan-runs evap-fan-runs frost-partial",
		"", "evaporator-iced set-wrong gasket-leaks", "refrigerant-low restriction compressor-weak heater-failed", "restriction-look", ""},
	{"slow leak found", "no-cool", "will-not-reach starts-and-runs condenser-clean cond-fan-runs evap-fan-runs frost-partial oil-stain leak-found",
		"refrigerant-low", "evaporator-iced cond-fan-failed", "restriction compressor-weak", "", "refrigerant-low"},
	{"restricted drier", "no-cool", "does-not-cool starts-and-runs condenser-cold evap-fan-runs frost-partial restriction-frost",
		"restriction", "condenser-dirty", "refrigerant-low compressor-weak", "", "restriction"},
	{"compressor that does not pump", "no-cool", "one-phase no-pump-down does-not-cool starts-and-runs condenser-cold evap-fan-runs frost-none restriction-none leak-not-found normal-use vents-clear gasket-sound",
		"compressor-weak", "refrigerant-low restriction", "", "", "compressor-weak"},
	{"a pump-down valve that stays shut", "no-cool", "short-cycles suction-low liquid-valve-shut", "liquid-valve-shut", "", "", "", "liquid-valve-shut"},
	{"a drain hose that siphons", "overfills", "overfills no-fill-unpowered hose-deep", "drain-siphons", "valve-stuck-open", "", "", "drain-siphons"},
	{"a tub whose dampers are worn", "no-spin", "does-not-spin suspension-worn", "suspension-worn", "", "", "", "suspension-worn"},
	{"a fan's motor that is seized, on three phases", "three-phase", "no-sealed-system phases-sound shaft-stuck windings-sound", "motor-seized", "compressor-seized", "", "", "motor-seized"},
	{"two legs swapped", "three-phase", "phases-sound after-wiring noisy amps-low turns-wrong-way" + woundAndCased,
		"wrong-rotation", "phase-lost winding-open", "", "", "wrong-rotation"},
	{"a scroll that is loud and pumps nothing after work on the panel", "ac-warm", "after-wiring noisy pressures-level" + woundAndCased,
		"", "", "wrong-rotation compressor-weak", "rotation", ""},
	{"its legs in order", "ac-warm", "after-wiring noisy pressures-level rotation-right" + woundAndCased,
		"", "wrong-rotation", "compressor-weak", "mode", ""},
	{"thermostat does not call", "no-start", "silent light-works cond-fan-stopped" + woundAndCased,
		"", "no-supply winding-open drive-fault", "control-not-calling", "thermostat", ""},
	{"thermostat found open", "no-start", "silent light-works cond-fan-stopped" + woundAndCased + " thermostat-open",
		"control-not-calling", "no-supply", "", "", "control-not-calling"},
	{"outlet dead", "no-power", "all-dead outlet-dead", "no-supply", "", "cord-open", "", "no-supply"},
	{"cord open", "no-power", "all-dead outlet-works cord-open", "cord-open", "no-supply", "fuse-open", "", "cord-open"},
	{"dead board by elimination", "no-power", "all-dead outlet-works cord-sound fuse-sound switch-closed limit-closed connections-sound",
		"control-dead", "no-supply cord-open fuse-open switch-open", "", "", "control-dead"},
	{"started again too soon", "no-start", "clicks restarted-soon cond-fan-runs" + woundAndCased + " starts-after-wait",
		"pressure-unequalised", "compressor-seized protector-failed", "", "", "pressure-unequalised"},
	{"burnt terminal", "no-start", "clicks cond-fan-runs connection-loose", "connection-weak", "no-supply", "start-device-failed", "", "connection-weak"},
	{"thermostat stuck, too cold", "too-cold", "freezes-food set-normal damper-none sensor-sound thermostat-stuck-closed",
		"thermostat-stuck", "control-stuck sensor-failed damper-stuck set-wrong", "", "", "thermostat-stuck"},
	{"breaker trips with nothing plugged in", "trips-breaker", "trips-at-once trips-unplugged", "circuit-fault",
		"cord-shorted wires-shorted heater-grounded circuit-overloaded", "", "", "circuit-fault"},
	{"heater leaks to its sheath", "trips-breaker", "residual-trips holds-unplugged trips-only-when-called heater-grounded",
		"heater-grounded", "circuit-fault circuit-overloaded", "", "", "heater-grounded"},
	{"heater open", "no-heat", "does-not-heat light-works heater-open", "heater-failed", "no-supply", "limit-open", "", "heater-failed"},
	{"limit open behind blocked air", "no-heat", "does-not-heat light-works heater-sound limit-open airflow-blocked",
		"airflow-blocked limit-open", "heater-failed", "", "", "airflow-blocked"},
	{"one leg missing", "no-heat", "does-not-heat light-works leg-missing", "leg-missing", "no-supply", "", "", "leg-missing"},
	{"washer motor with a dead run capacitor", "motor-dead", "hums starts-when-pushed" + woundAndCased + " shaft-free run-cap-failed",
		"run-cap-failed", "motor-seized winding-open brushes-worn belt-broken", "", "", "run-cap-failed"},
	{"pump jammed", "motor-dead", "hums shaft-free load-jammed", "load-jammed", "motor-seized brushes-worn", "", "", "load-jammed"},
	// Other machines: common practice.
	{"air conditioner with a failed capacitor", "ac-warm", "does-not-cool set-to-cool airflow-clear blower-runs hums insulation-no-gross-fault windings-sound run-cap-failed",
		"compressor-off run-cap-failed", "set-not-cooling coil-dirty blower-failed selector-open control-not-calling winding-open", "compressor-seized", "", "run-cap-failed"},
	{"air conditioner with a clogged filter", "ac-warm", "coil-iced starts-and-runs blower-runs airflow-blocked",
		"coil-dirty coil-iced", "compressor-off compressor-weak compressor-seized", "refrigerant-low", "", "coil-dirty"},
	{"air conditioner that splits the air well", "ac-warm", "starts-and-runs blower-runs airflow-clear set-to-cool split-large", "", "refrigerant-low restriction compressor-weak", "condenser-dirty", "coil-look", ""},
	{"washer that washes and does not spin", "no-spin", "agitates does-not-spin", "", "no-supply winding-open motor-seized brushes-worn load-jammed", "switch-open belt-broken clutch-worn", "switch", ""},
	{"washer with a broken belt", "no-spin", "does-not-spin starts-and-runs belt-broken", "belt-broken", "switch-open winding-open motor-seized", "", "", "belt-broken"},
	{"valve that is fed and stays shut", "no-fill", "does-not-fill tap-open screens-clean switch-closed level-sound coil-conducts connections-sound valve-volts-present", "valve-stuck-shut", "tap-shut level-says-full valve-coil-open control-not-calling", "", "", "valve-stuck-shut"},
	{"water runs in unplugged", "overfills", "overfills fills-unpowered", "valve-stuck-open", "level-says-empty valve-kept-fed", "", "", "valve-stuck-open"},
	{"igniter broken", "gas-no-heat", "igniter-dark igniter-open", "igniter-open", "igniter-weak", "flame-sensor-open", "", "igniter-open"},
	{"igniter glows and no flame follows", "gas-no-heat", "igniter-glows flame-none gas-on", "", "igniter-open flame-sensor-open limit-open control-not-calling no-supply gas-off", "gas-coil-open igniter-weak", "valve-coil", ""},
	{"oven sensor reads too cold", "too-hot", "too-hot sensor-reads-cold", "sensor-heats-on", "", "heat-relay-stuck", "", "sensor-heats-on"},
	{"lost leg behind a sound supply", "three-phase", "hums insulation-no-gross-fault phases-sound leg-lost", "leg-fuse-open pole-open", "phase-lost phases-unequal no-supply control-not-calling", "connection-weak", "fuse", ""},
	// L1 to L3 are met at the breaker, at the fuses and on the contactor's line side:
	// where they were read was not said.
	{"lost leg of the supply", "three-phase", "hums insulation-no-gross-fault phase-lost", "phase-lost", "no-supply", "pole-open leg-fuse-open", "fuse", ""},
	{"the same, its fuses sound", "three-phase", "hums insulation-no-gross-fault phase-lost fuse-sound", "phase-lost", "no-supply leg-fuse-open", "pole-open", "contactor", ""},
	{"lost leg of the supply, fuses and poles sound", "three-phase", "hums insulation-no-gross-fault phase-lost fuse-sound pole-sound", "phase-lost", "pole-open leg-fuse-open no-supply", "", "", "phase-lost"},
	{"drain frozen", "leaks-ices", "water-inside drain-blocked", "drain-blocked", "", "pan-cracked", "", "drain-blocked"},
}

// goodGearBut is goodGear with one word changed.
func goodGearBut(word, other string) string { return strings.Replace(goodGear, word, other, 1) }

func facts(words string) []Fact {
	var list []Fact
	for i, w := range strings.Fields(words) {
		list = append(list, Fact{Code: w, Entry: i + 1})
	}
	return list
}

func TestScenarios(t *testing.T) {
	for _, s := range scenarios {
		for _, w := range strings.Fields(s.facts) {
			if _, ok := Lookup(w); !ok {
				t.Fatalf("%s: %s is not in the vocabulary", s.name, w)
			}
		}
		r := Weigh(s.complaint, facts(s.facts))
		if len(r.Contradictions) > 0 || r.Exhausted || r.Cured {
			t.Errorf("%s: contradictions %v, exhausted %v, cured %v", s.name, r.Contradictions, r.Exhausted, r.Cured)
		}
		got, want := r.Codes(Supported), strings.Fields(s.supported)
		slices.Sort(got)
		slices.Sort(want)
		if !slices.Equal(got, want) {
			t.Errorf("%s: supported %v, want %v", s.name, got, want)
		}
		for state, list := range map[State]string{RuledOut: s.out, Open: s.open} {
			for _, c := range strings.Fields(list) {
				if !slices.Contains(r.Codes(state), c) {
					t.Errorf("%s: %s is not %s", s.name, c, state)
				}
			}
		}
		next, repair := "", ""
		if r.Next != nil {
			next = r.Next.Code
		}
		if r.Repair != nil {
			repair = r.Repair.Code
		}
		if next != s.next || repair != s.repair || r.NextWhy == "" {
			t.Errorf("%s: next %q, repair %q (%s), want %q and %q", s.name, next, repair, r.NextWhy, s.next, s.repair)
		}
	}
}
