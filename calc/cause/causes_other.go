package cause

import "ohmcall/calc/caution"

// otherRows are those of them that need no more, in the form of gasRows.
const otherRows = `
leg-missing | one leg of the supply missing | leg-missing | light-works other-dead does-not-heat heats-slowly heater-volts-absent | other-heats heater-none heater-volts-present supply-sound supply-low supply-high all-dead heats-up | look whether both poles of its breaker or both fuses are in and, dead, at terminal block and cord; have the breaker, outlet or wiring mended by an electrician | leg, breaker, electrician, supply, outlet, wir
cord-open | cord or plug open | cord-open | all-dead silent amps-none | cord-sound light-works starts-and-runs hums clicks heats-up agitates drum-turns | replace the cord whole with one of its rating; no splices | cord, plug
fuse-open | fuse of the appliance open | fuse-open | all-dead silent amps-none | fuse-sound fuse-none light-works starts-and-runs hums clicks heats-up agitates drum-turns | find what opened it, then fit a fuse of the same rating | fuse
switch-open | switch or door interlock open | switch-open | all-dead silent amps-none does-not-heat does-not-drain heater-volts-absent does-not-fill agitates | heater-volts-present pump-runs control-calling one-speed-dead switch-closed starts-and-runs hums clicks heats-up spins | replace the switch, or set what should press it; never bridge an interlock | switch, lock, latch, interlock
circuit-fault | fault in the outlet, wiring or breaker itself | trips-unplugged trips-with-other-load | trips-at-once trips-later other-outlet-holds | holds-unplugged other-outlet-trips holds-with-other-load breaker-holds | leave it off and call an electrician | electrician, outlet, circuit, breaker, wir
circuit-overloaded | circuit overloaded or breaker weak | trips-with-other-load | trips-later other-outlet-holds long-cord | trips-unplugged trips-at-once holds-with-other-load other-outlet-trips breaker-holds residual-trips | give it a circuit of its own; have a weak breaker replaced by an electrician, never by a bigger one | electrician, outlet, circuit, breaker, wir
cord-shorted | cord or plug shorted | cord-shorted plug-to-plug-shorted | trips-at-once other-outlet-trips | cord-sound plug-to-plug-sound trips-unplugged trips-later other-outlet-holds breaker-holds trips-only-when-called | replace the cord whole with one of its rating | cord, plug
wires-shorted | wires pinched or shorted inside | plug-to-plug-shorted | trips-at-once other-outlet-trips cord-sound | plug-to-plug-sound trips-unplugged trips-later other-outlet-holds breaker-holds cord-shorted trips-only-when-called | find the place by taking off one load after another, replace the wire, protect it where it was pinched | wir, harness
heater-grounded | heater leaks to its sheath | heater-grounded heater-insulation-suspect | residual-trips trips-at-once trips-later other-outlet-trips trips-only-when-called shock metal-live breaker-tripped heats-when-off too-hot | heater-insulation-sound heater-none trips-unplugged other-outlet-holds breaker-holds | replace the heater; damp in a heater long out of use may dry out, but measure it again before it is trusted | heater, element, bake, broil
airflow-blocked | air or water path blocked | airflow-blocked | heats-slowly limit-open short-cycles does-not-dry coil-iced too-hot runs-all-the-time rise-large cuts-out starts-after-wait | no-air-path airflow-clear | clear vent, filter and path; then prove the limit and the heater | vent, filter, duct, lint, fan, air, flue
load-jammed | what the motor drives is jammed | load-jammed | hums amps-locked-rotor cuts-out shaft-free does-not-drain | one-speed-dead load-free impeller-sound impeller-loose pump-runs starts-and-runs amps-none agitates spins drum-turns | take out what jams it; look for worn bearings | pump, drum, jam, blade, clear, took out, impeller, glass
impeller-loose | impeller broken or loose on its shaft | impeller-loose | does-not-drain pump-runs amps-low | impeller-sound load-jammed hums silent amps-none amps-locked-rotor | replace the impeller, or the pump with its impeller | impeller, pump
`

// otherCauses are the causes for which an appliance is dead, trips the
// breaker, does not heat, or has a motor that does not turn.
var otherCauses = []Cause{
	{
		Code: "control-dead", Name: "control board dead",
		Predicts:    []string{"all-dead", "silent", "outlet-works"},
		ShownBy:     []string{"control-fed-and-dead"},
		Contradicts: []string{"light-works", "control-unfed", "control-calling", "starts-and-runs"},
		Fix:         "replace the control, after its supply, fuse and the loads on it have been proved",
		Work:        "control, board",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				control-fed-and-dead | control fed but dead, control has supply and is dead | the control has its supply and answers nothing | control-unfed light-works
				control-unfed | control not fed, no supply at control | the control has no supply |`,
			Test: Test{Code: "control-supply", Name: "volts into the control", How: "saw control fed but dead",
				Outcomes: []string{"control-fed-and-dead", "control-unfed"}, Effort: 2, Danger: Live, Caution: []string{caution.MainsLive}},
		},
	},
	{
		Code: "insulation-weak", Name: "winding insulation weak, above the failing limit", Machine: true,
		ShownBy:     []string{"insulation-suspect"},
		Predicts:    []string{"residual-trips", "insulation-no-gross-fault", "other-outlet-trips", "trips-only-when-called", "shock", "metal-live"},
		Contradicts: []string{"insulation-sound", "trips-unplugged", "other-outlet-holds", "breaker-holds"},
		Fix:         "measure with an insulation tester by the rule of the machine's maker; replace the machine when it fails",
		Work:        "compressor, motor, machine, pump",
		Note:        "an ohmmeter cannot see it",
		Source:      "Hermetic Compressor Service Handbook, pp. 40-41",
	},
	{
		Code: "speed-switch-open", Name: "speed switch open at a speed",
		Predicts:    []string{"one-speed-dead"},
		ShownBy:     []string{"speed-switch-open"},
		Contradicts: []string{"speed-switch-closed", "speed-switch-none"},
		Fix:         "replace the speed switch with one of its rating",
		Work:        "switch, selector",
		Note:        "a tap that is open inside the motor looks alike: read common to each speed",
		Source:      commonPractice,
	},
	{
		Code: "hose-blocked", Name: "drain hose, filter or air gap blocked",
		Predicts:    []string{"does-not-drain", "pump-runs", "water-on-floor", "runs-all-the-time"},
		ShownBy:     []string{"hose-blocked"},
		Contradicts: []string{"hose-clear"},
		Fix:         "clear hose, filter, air gap and standpipe, and lay the hose without a kink",
		Work:        "hose, filter, air gap, standpipe, clear",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				hose-blocked | hose blocked, drain hose blocked, hose kinked, drain hose kinked, air gap blocked, standpipe blocked, trap blocked, drain hose crushed, knockout plug still in, knock out plug still in, condensate trap blocked, condensate trap plugged, condensate drain plugged, condensate line plugged | the way of the water behind the pump is blocked | hose-clear
				hose-clear | hose clear, drain hose clear, air gap clear, standpipe clear, condensate trap clear | the way of the water behind the pump is free |`,
			Test: Test{Code: "hose", Name: "look along the drain hose to its end: kinks, filter, air gap, standpipe", How: "saw hose clear",
				Outcomes: []string{"hose-clear", "hose-blocked"}, Effort: 2, Danger: Look},
		},
	},
	{
		Code: "wire-at-metal", Name: "wire chafed or pinched at the metal",
		Predicts:    []string{"shock", "metal-live", "residual-trips", "trips-at-once"},
		ShownBy:     []string{"wire-at-metal"},
		Contradicts: []string{"wires-clear", "trips-unplugged", "other-outlet-holds", "breaker-holds"},
		Fix:         "replace the wire and protect it where it was chafed; then prove the earth path",
		Work:        "wir, harness",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				wire-at-metal | wire at metal, wire touches metal, chafed wire, wire chafed, pinched wire, wire pinched, bare wire, chewed wire, wire chewed, y wire chewed, y wire cut, low voltage wire chewed, low voltage wire cut, thermostat wire chewed, thermostat wire cut | a wire is chafed or pinched and touches the metal | wires-clear
				wires-clear | wires clear of metal, wires clear, harness sound | no wire is chafed or pinched at the metal |`,
			Test: Test{Code: "wires-at-metal", Name: "look along the wires where they cross or pass through metal", How: "saw wires clear of metal",
				Outcomes: []string{"wires-clear", "wire-at-metal"}, Effort: 3, Danger: Dead, Caution: []string{caution.ProveDead, caution.Capacitor}},
		},
	},
	{
		Code: "earth-lost", Name: "earth path open: a leak to the metal is felt",
		Predicts:    []string{"shock", "metal-live"},
		ShownBy:     []string{"earth-failed"},
		Contradicts: []string{"earth-sound"},
		Before:      []string{"case-ohms", "heater-case", "wires-at-metal"},
		Fix:         "mend the earth path from plug pin to metal, and then look for what leaks to it; the outlet's own earth is an electrician's",
		Work:        "earth, ground, cord, electrician",
		Source:      commonPractice,
	},
	{
		Code: "sensor-stops-heat", Name: "temperature sensor off its curve",
		Predicts:    []string{"does-not-heat", "heats-slowly", "sensor-suspect", "control-not-calling", "heater-volts-absent"},
		ShownBy:     []string{"sensor-failed", "sensor-reads-warm"},
		Contradicts: []string{"sensor-sound", "sensor-reads-cold", "heater-volts-present"},
		Fix:         "replace the sensor with one of the same curve",
		Work:        "sensor, thermistor, ntc, rtd, probe",
		Note:        "by a sensor that reads too warm the control stops the heat too early",
		Source:      "ice water at 0 C as the check point, common practice",
	},
	{
		Code: "belt-broken", Name: "belt broken, off or slipping",
		Predicts:    []string{"starts-and-runs", "amps-low", "noisy"},
		ShownBy:     []string{"belt-broken"},
		Contradicts: []string{"direct-drive", "one-speed-dead", "belt-sound", "hums", "silent", "amps-locked-rotor", "amps-none", "spins", "drum-turns"},
		Fix:         "replace the belt, set its tension, turn all pulleys by hand",
		Work:        "belt",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				belt-broken | belt broken, belt off, belt slips, belt shredded, drive belt broken, drive belt off, belt broke, belt torn, belt slipping, belt worn, belt stretched, belt came off, belt missing, belt split, broken belt | the belt is broken, off or slips | belt-sound
				belt-sound | belt good, belt sound, no belt, belt fine, belt on, belt tight | the belt is on and tight, or there is none |`,
			Test: Test{Code: "belt", Name: "look at the belt", How: "saw belt good", Outcomes: []string{"belt-sound", "belt-broken"}, Effort: 1, Danger: Dead, Caution: []string{caution.ProveDead}},
		},
	},
	{
		Code: "brushes-worn", Name: "carbon brushes worn or stuck",
		Predicts:    []string{"silent", "amps-none"},
		ShownBy:     []string{"brushes-worn"},
		Contradicts: []string{"direct-drive", "one-speed-dead", "brushes-sound", "hums", "starts-and-runs", "amps-locked-rotor", "agitates", "spins", "drum-turns"},
		Fix:         "replace both brushes; look at the commutator",
		Work:        "brush",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				brushes-worn | brushes worn, brush worn, worn brushes, brush stuck, brushes worn down, brushes short, brush short, brushes too short, brushes worn out, carbons worn, carbons short, carbon brushes worn, carbon brushes short, brushes gone | the carbon brushes are worn or stuck | brushes-sound
				brushes-sound | brushes good, brushes sound, no brushes, brushes fine, brushes long, carbons good, carbon brushes good | the carbon brushes are long and move freely, or there are none |`,
			Test: Test{Code: "brushes", Name: "take the brushes out and look", How: "saw brushes good",
				Outcomes: []string{"brushes-sound", "brushes-worn"}, Effort: 2, Danger: Dead, Caution: []string{caution.ProveDead}},
		},
	},
	{
		Code: "tacho-open", Name: "tachogenerator of the motor open or unplugged",
		ShownBy:     []string{"tacho-open"},
		Predicts:    []string{"does-not-spin", "drum-stands"},
		Contradicts: []string{"direct-drive", "tacho-conducts"},
		Fix:         "replace the tachogenerator or mend its plug and wires; see that its magnet sits tight on the shaft",
		Work:        "tacho, plug, connector",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				tacho-open | tacho open, tacho unplugged, tacho wire broken, tacho magnet loose, tacho magnet off, hall sensor bad, hall sensor dead, hall sensor open, hall sensor failed, tacho bad, tacho dead | the tachogenerator is open, unplugged, or its magnet is loose | tacho-conducts
				tacho-conducts | tacho good, tacho conducts, no tacho | the tachogenerator conducts and its magnet sits tight, or there is none |`,
			Test: Test{Code: "tacho", Name: "ohms of the tachogenerator, its plug off; look at its magnet", How: "ohm tacho 68",
				Outcomes: []string{"tacho-conducts", "tacho-open"}, Effort: 2, Danger: Dead, Caution: []string{caution.ProveDead}},
		},
	},
	{
		Code: "motor-seized", Name: "motor bearings seized", Machine: true,
		Predicts:    []string{"hums", "amps-locked-rotor", "cuts-out", "windings-sound"},
		ShownBy:     []string{"shaft-stuck"},
		Contradicts: []string{"sealed-motor", "one-speed-dead", "shaft-free", "impeller-sound", "impeller-loose", "pump-runs", "starts-and-runs", "starts-when-pushed", "amps-none", "agitates", "spins", "drum-turns"},
		Fix:         "replace the motor or its bearings",
		Work:        "motor, bearing, pump",
		Source:      commonPractice,
	},
}
