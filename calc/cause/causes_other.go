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
leg-fuse-open | fuse of one leg open | leg-lost fuse-open | single-phasing hums cuts-out amps-locked-rotor amps-high comp-hot phase-lost | legs-overloaded fuse-sound fuse-none legs-sound pole-open | find what opened it, then fit three fuses of the same rating | fuse
pole-open | contactor pole open or burnt | leg-lost pole-open | single-phasing hums cuts-out amps-locked-rotor amps-high comp-hot phase-lost coil-fed | legs-overloaded pole-sound legs-sound fuse-open contactor-unfed | replace the contactor with one of its rating | contactor, pole
load-drags | overloaded: what it drives drags, or is too much for it | load-drags overloaded | legs-overloaded amps-high comp-hot cuts-out noisy starts-after-wait | load-free supply-low phases-unbalanced legs-unbalanced single-phasing leg-lost phase-lost amps-none amps-sound amps-low | find what loads it: bearings, what jams or rubs, a pump or fan that moves more than it is made for; never set its overload higher | bearing, pump, load, belt, fan, impeller, jam, coupl, align
lock-kept | control does not let the lock go |  | unlocks-unpowered lock-free | lock-jammed | replace the control, after water, level sensing or sensor, lock and wires have been proved | control, board, timer
work-coil-open | work coil open or its joint burnt | coil-open | does-not-heat other-heats | coil-conducts | mend the joint or replace the work coil | coil, joint, terminal
no-supply | no supply at the appliance | supply-absent outlet-dead | silent all-dead other-dead cond-fan-stopped amps-none does-not-heat does-not-drain heater-volts-absent breaker-tripped does-not-fill | legs-overloaded other-heats phases-sound phases-unbalanced phase-lost leg-lost heater-volts-present pump-runs one-speed-dead supply-sound supply-low supply-high outlet-works light-works cond-fan-runs evap-fan-runs clicks hums starts-bypassed starts-and-runs control-calling sag-sound sag-deep amps-locked-rotor agitates drum-turns igniter-glows blower-runs fills valve-volts-present | restore the supply; a breaker or fuse that opened is reset once only, after its reason is known | breaker, outlet, supply, electrician, fuse, plug
connection-weak | loose or burnt connection | connection-loose | one-speed-dead clicks silent amps-none sag-deep does-not-drain heater-volts-absent does-not-fill igniter-dark leg-lost valve-volts-absent | connections-sound | replace the burnt terminal or connector with one of its rating; do not only squeeze it tighter | terminal, connect, wir, lug, joint, plug, spade, crimp, socket, recep
module-not-fed | thermoelectric module gets no volts: its supply, control or wires | module-unfed | does-not-cool | module-fed module-cold | look at setting and fuse, then mend the wires, the power supply or the control that should feed it | supply, control, board, wir, fuse
coil-dirty | filter or evaporator coil clogged | airflow-blocked | coil-iced cools-slowly split-large does-not-cool | airflow-clear | clean filter and coil and let the ice thaw | filter, coil
pan-drain-blocked | drain of pan or base blocked, by which its float switch stops it | drain-blocked | water-inside water-on-floor contactor-unfed | drain-clear | clear the drain of pan and base, and pour water through it | drain, pan
blower-failed | fan motor or blower failed or jammed | blower-stopped blower-windings-failed blower-stiff | coil-iced comp-hot cuts-out blower-volts-present does-not-cool heat-lost limit-open short-cycles rise-large | no-own-blower blower-runs blower-volts-absent | free the blade, or replace the fan motor with one of its volts, speeds and turning direction and with its capacitor | fan, blower
blower-unfed | fan motor gets no supply | blower-stopped blower-volts-absent | coil-iced comp-hot blower-windings-sound | blower-runs blower-volts-present blower-windings-failed blower-stiff | mend the selector, wire or control output that should feed the fan | fan, selector, switch, wir, board
selector-open | selector switch or relay open to the compressor | switch-open | silent comp-cold amps-none | driven switch-closed control-calling clicks hums starts-and-runs amps-locked-rotor | replace the selector switch or relay with one of its rating | selector, switch, relay
valve-coil-open | coil of the inlet valve open | coil-open | does-not-fill | coil-conducts fills | replace the inlet valve | valve, coil
valve-stuck-shut | inlet valve fed and does not open |  | does-not-fill fills-slowly coil-conducts valve-volts-present | coil-open valve-volts-absent | replace the inlet valve | valve
level-says-full | pressure switch, level sensor or float says full | level-full | does-not-fill valve-volts-absent runs-all-the-time | level-sound level-empty valve-volts-present | clear its hose and air trap or free the float; else replace it | pressure switch, level sens, level switch, float, hose
valve-stuck-open | inlet valve does not shut | fills-unpowered | overfills | no-fill-unpowered | shut the tap; replace the inlet valve | valve
level-says-empty | pressure switch, level sensor or float does not report the water | level-empty | overfills no-fill-unpowered | level-sound level-full fills-unpowered | mend its hose and air trap or free the float; else replace it | pressure switch, level sens, level switch, float, pressure hose, air hose, air tube, air trap
valve-kept-fed | control keeps feeding the inlet valve |  | overfills no-fill-unpowered level-sound | fills-unpowered level-empty | replace the control, after valve and level sensing have been proved | control, board, timer
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
