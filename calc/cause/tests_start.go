package cause

import (
	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
)

// The facts that forbid energising a machine again.
var grounded = []string{"winding-grounded", "insulation-failed"}

// noDrive are facts of a machine that mains run: unlike windings, and start gear. An
// outside overload is none: compressors on a drive have one too (common practice).
var noDrive = []string{"windings-sound", "start-device-sound", "start-device-suspect", "start-device-failed",
	"starts-with-test-device", "no-start-with-test-device", "starts-with-kit", "no-start-with-kit",
	"protector-open", "protector-reset", "protector-open-cold",
	"start-cap-sound", "start-cap-failed", "start-cap-open", "start-cap-shorted"}

// startTests bear on a motor-compressor that does not start.
var startTests = []Test{
	{Code: "cond-fan-look", Name: "see whether the condenser fan runs", How: "saw cond-fan runs",
		Outcomes: []string{"cond-fan-runs", "cond-fan-stopped", "cond-fan-none"}, Vague: []string{"all-dead"}, Effort: 1, Danger: Look,
		On: []string{"no-start", "hums-trips", "no-cool", "fridge-warm", "runs-always", "no-dry", "hp-no-heat", "ac-warm", "poor-ice"}, Barred: []string{"fan-shared"}},
	{Code: "outlet-lamp", Name: "try another appliance at the same outlet", How: "saw outlet works",
		Outcomes: []string{"outlet-works", "outlet-dead"}, Effort: 1, Danger: Look, Barred: []string{"two-legs", "wired-in", "breaker-tripped"}},
	{Code: "other-outlet", Name: "plug straight into another good outlet, without extension cord", How: "saw no start on other outlet",
		Outcomes: []string{"starts-on-other-outlet", "no-start-on-other-outlet"}, Effort: 2, Danger: Look, Barred: with("trips-at-once", grounded),
		On: []string{"no-start", "hums-trips", "motor-dead", "ac-warm"}},
	{Code: "rest", Name: "leave it off for ten minutes or more, then let it start once", How: "saw no start after wait",
		Outcomes: []string{"starts-after-wait", "no-start-after-wait"}, Effort: 3, Danger: Look, Barred: with("trips-at-once", grounded),
		On: []string{"no-start", "hums-trips", "ac-warm", "three-phase"}},
	{Code: "shell", Name: "feel the shell with the back of the hand, before touching", How: "saw comp cold",
		Outcomes: []string{"comp-hot", "comp-cold"}, Effort: 1, Danger: Look, Caution: []string{caution.HotMoving},
		On: []string{"no-start", "hums-trips", "ac-warm", "three-phase"}},
	{Code: "drive-lamp", Name: "read the inverter drive's own fault lamp or display", How: "saw drive no fault",
		Outcomes: []string{"drive-fault-shown", "drive-no-fault", "drive-none"}, Effort: 1, Danger: Look,
		On:     []string{"no-start", "motor-dead", "no-spin", "ac-warm", "hp-no-heat"}, // and not where unlike windings or start gear tell that there is no drive
		Barred: noDrive},
	{Code: "connections", Name: "look at plug, terminals and connectors", How: "saw terminals tight",
		Outcomes: []string{"connections-sound", "connection-loose"}, Effort: 2, Danger: Dead,
		Caution: []string{caution.ProveDead, caution.Capacitor, caution.TerminalsPressed}},
	{Code: "wiring", Name: "hold each wire against the diagram and the part's own label", How: "saw wiring right",
		Outcomes: []string{"wiring-matches", "wiring-wrong"}, Effort: 2, Danger: Dead, Caution: []string{caution.ProveDead, caution.Capacitor}},
	{Code: "winding-ohms", Name: "ohms of the three pairs of pins, wires off", How: "ohm A B 3.4, A C 6.5, B C 2.5",
		Outcomes: []string{"windings-sound", "winding-open", "winding-shorted", "protector-open", "windings-equal"},
		Vague:    []string{"open-unplaced", "windings-do-not-add-up", "windings-too-high", "windings-isolated"}, Effort: 2, Danger: Dead,
		Caution: []string{caution.ProveDead, caution.Capacitor, caution.TerminalsPressed, caution.HotMoving}},
	{Code: "case-ohms", Name: "ohms from each pin to bare case", How: "ohm A case OL",
		Outcomes: []string{"insulation-no-gross-fault", "insulation-sound", "insulation-failed", "winding-grounded"},
		Vague:    []string{"insulation-suspect", "insulation-undecided"}, Effort: 2, Danger: Dead,
		Caution: []string{caution.ProveDead, caution.Capacitor, caution.TerminalsPressed}},
	{Code: "cool-and-ohm", Name: "let it cool below " + measure.CoolWords + " and measure the pairs again", How: "ohm A B 8.4 cold, A C 3.1 cold, B C 11.5 cold",
		Outcomes: []string{"protector-reset", "protector-open-cold", "winding-open", "windings-sound"}, Vague: []string{"open-unplaced-cold"}, Effort: 4, Danger: Dead,
		Caution: []string{caution.ProveDead, caution.Capacitor},
		When:    []string{"protector-open", "open-unplaced"}, Source: "ice machine operation manual 80-0111-9, p. 176"},
	{Code: "overload-ohms", Name: "ohms through the outside overload, cold", How: "ohm overload 0.4 cold",
		Outcomes: []string{"overload-closed", "overload-open-cold", "overload-reset"}, Effort: 2, Danger: Dead, Caution: []string{caution.ProveDead}},
	{Code: "start-device", Name: "take the start device off, shake it and read its ohms cold", How: "ohm ptc 8.2 cold",
		Outcomes: []string{"start-device-sound", "start-device-failed", "device-rattles", "device-burnt"},
		Vague:    []string{"start-device-suspect", "start-device-undecided", "windings-equal"}, Effort: 2, Danger: Dead, Caution: []string{caution.ProveDead, caution.HotMoving}},
	{Code: "start-cap", Name: "capacitance of the start capacitor, wires off", How: "mfd start 98",
		Outcomes: []string{"start-cap-sound", "start-cap-failed", "start-cap-open", "start-cap-shorted", "start-cap-none"},
		Vague:    []string{"start-cap-suspect", "start-cap-undecided"}, Effort: 2, Danger: Dead, Caution: []string{caution.ProveDead, caution.Capacitor}, Barred: []string{"start-cap-unlikely"}},
	{Code: "run-cap", Name: "capacitance of the run capacitor, wires off", How: "mfd C1 11.8",
		Outcomes: []string{"run-cap-sound", "run-cap-failed", "run-cap-none"},
		Vague:    []string{"run-cap-suspect", "run-cap-undecided"}, Effort: 2, Danger: Dead, Caution: []string{caution.ProveDead, caution.Capacitor}},
	{Code: "thermostat", Name: "ohms through the thermostat at a temperature at which it should call", How: "ohm thermostat 0.2 closed",
		Outcomes: []string{"thermostat-closed", "thermostat-open"}, Vague: []string{"thermostat-undecided"}, Effort: 2, Danger: Dead, Caution: []string{caution.ProveDead},
		On: []string{"no-start", "no-heat", "runs-always", "too-cold", "ac-warm", "gas-no-heat", "furnace-no-heat", "gas-quits", "slow-dry", "wont-run"}},
	{Code: "supply-volts", Name: "volts at the outlet, of each leg where there are two", How: "volt line 118.2",
		Outcomes: []string{"supply-sound", "supply-low", "supply-absent", "leg-missing"}, Vague: []string{"supply-high", "supply-undecided"}, Effort: 1, Danger: Live, Caution: []string{caution.MainsLive}},
	{Code: "start-sag", Name: "volts at the machine while it tries to start", How: "volt comp 112 start",
		Outcomes: []string{"sag-sound", "sag-deep"}, Vague: []string{"sag-undecided"}, Effort: 3, Danger: Live, On: []string{"no-start", "hums-trips", "motor-dead", "ac-warm", "stops-early"}, Caution: []string{caution.MainsLive, caution.HotMoving},
		Barred: grounded},
	{Code: "start-amps", Name: "current at start and five seconds later, with a clamp", How: "amp comp 14 peak, comp 1.2 run",
		Outcomes: []string{"amps-locked-rotor", "amps-none", "amps-sound"}, Vague: []string{"amps-high", "amps-low", "amps-agree", "amps-undecided"}, Effort: 2, Danger: Live, On: []string{"trips-breaker", "no-start", "hums-trips", "no-cool", "motor-dead", "ac-warm", "three-phase", "no-spin", "no-tumble", "stops-early"},
		Caution: []string{caution.MainsLive, caution.HotMoving}, Barred: grounded},
	{Code: "call-volts", Name: "volts that the control gives to the machine", How: "volt comp 117.5",
		Outcomes: []string{"control-calling", "control-not-calling"}, Effort: 2, Danger: Live, Caution: []string{caution.MainsLive},
		Barred: with("windings-equal", grounded)},
	{Code: "test-device", Name: "let it start once with a start device known to be good and made for this compressor", How: "saw no start with test device",
		Outcomes: []string{"starts-with-test-device", "no-start-with-test-device"}, Effort: 4, Danger: Live,
		Caution: []string{caution.MainsLive, caution.Capacitor, caution.Flammable, caution.TerminalsPressed, caution.HotMoving},
		On:      []string{"no-start", "hums-trips"},
		Barred:  with("windings-equal winding-open winding-shorted protector-open drive-fault-shown drive-no-fault", grounded)},
	{Code: "test-kit", Name: "let it start once with a start kit whose label allows this compressor", How: "saw no start with kit",
		Outcomes: []string{"starts-with-kit", "no-start-with-kit"}, Effort: 5, Danger: Live,
		Caution: []string{caution.MainsLive, caution.Capacitor, caution.Flammable, caution.TerminalsPressed, caution.HotMoving},
		On:      []string{"no-start", "hums-trips", "ac-warm", "trips-breaker"}, When: []string{"no-start-with-test-device", "blower-runs", "holds-unplugged"}, // what has a run capacitor alone has no device to try first
		Barred: with("driven windings-equal winding-open winding-shorted protector-open drive-fault-shown drive-no-fault", grounded)},
}
