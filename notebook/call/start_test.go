package call

import (
	"testing"

	"ohmcall/calc/cause"
)

// The peak alone does not part a start from a rotor that does not turn: a start
// draws up to 6 times the running amps (refrigerator service text).
func TestStartCurrent(t *testing.T) {
	const fridge = "unit refrigerator; fault clicks and wont start; plate amps 1.2, lra 12; "
	const locked = "no start seen: the rotor is locked"
	checkTrade(t, []tradeCase{
		{name: "nobody said what followed", lines: fridge + "amp comp 12 peak",
			in: []string{"cannot tell, 12 A is near locked-rotor current: a start or a locked rotor"}, not: []string{"normal start", "at once"}, source: "refrigerator service text"},
		{name: "seen not to start before", lines: fridge + "saw no start; amp comp 12 peak", in: []string{locked}, source: "refrigerator service text"},
		{name: "clicks seen after", lines: fridge + "amp comp 12 peak; saw clicks", in: []string{locked}, source: "refrigerator service text"},
		{name: "a current that stays", lines: fridge + "amp comp 12 peak; amp comp 11.5 run",
			in: []string{"start surge comp: failed, 12 A and staying", "running amps comp: failed"}, not: []string{"normal start"}, source: "refrigerator service text"},
		{name: "a current that falls", lines: fridge + "amp comp 12 peak, comp 1.15 run", in: []string{"12 A, and it started: a normal start"}, source: "refrigerator service text"},
		{name: "seen to start", lines: fridge + "amp comp 12 peak; saw starts", in: []string{"12 A, and it started: a normal start"}, source: "refrigerator service text"},
		{name: "not repeated with each current", lines: fridge + "amp comp 12 peak; saw starts; amp comp 1.1 run; amp comp 1.12 run",
			in: []string{"running amps"}, not: []string{"tart surge"}, source: "common practice"},
		{name: "what stood before a repair says nothing of the start after it", lines: fridge + "saw no start; did replaced ptc; amp comp 12 peak",
			in: []string{"a start or a locked rotor"}, source: "common practice"},
		{name: "a current that falls to the plate's, read in tenths", lines: fridge + "amp comp 12 peak, comp 1.2 run", in: []string{"a normal start", "running as rated"},
			not: []string{"turns"}, source: "common practice"},
		{name: "well below the LRA", lines: fridge + "amp comp 5 peak",
			in: []string{"sound, 5 A, above the running amps and well below locked-rotor current: a start; nobody wrote that it falls"}, source: "common practice"},
		{name: "a fan's start is not the compressor's", lines: fridge + "saw no start; on cond-fan; plate amps 0.5, lra 5; amp cond-fan 4.2 peak",
			in: []string{"a start or a locked rotor"}, source: "common practice"},
		{name: "no current at start", lines: fridge + "saw starts; amp comp 0 peak", in: []string{"less than it draws running"}, not: []string{"normal start"}, source: "common practice"},
		{name: "next to none at start", lines: fridge + "saw starts; amp comp 0.2 peak", in: []string{"less than it draws running"}, not: []string{"normal start"}, source: "common practice"},
		{name: "tripped, and started later", lines: fridge + "amp comp 11.8 peak; trip 7; saw starts after wait; show verdicts",
			in: []string{"start surge comp | failed | 11.8 A and staying"}, not: []string{"normal start", "contradict"}, source: "common practice"},
		{name: "the trip written first", lines: fridge + "trip 7; amp comp 11.8 peak; saw starts; show verdicts",
			in: []string{"start surge comp | failed | 11.8 A and staying"}, not: []string{"normal start", "contradict"}, source: "common practice"},
		{name: "the start after the trip has a peak of its own", lines: fridge + "amp comp 11.8 peak; trip 7; saw starts after wait; amp comp 11 peak; saw starts; show verdicts",
			in: []string{"11 A, and it started: a normal start"}, source: "common practice"},
		{name: "started, and tripped after minutes", lines: fridge + "amp comp 11.8 peak; saw starts; trip 240; show verdicts", in: []string{"a normal start"}, source: "common practice"},
		{name: "minutes until it trips are no lock-up", lines: fridge + "amp comp 11.8 peak; trip 240", not: []string{"and staying"}, source: "common practice"},
		{name: "no current", lines: fridge + "amp comp 0 run", in: []string{"does not run, or the clamp is not round one wire alone"},
			not: []string{"little load"}, source: "common practice"},
	})
	checkTrade(t, []tradeCase{{name: "a locked rotor stands among the facts", lines: fridge + "saw no start; amp comp 12 peak; saw cond-fan runs; causes",
		states: map[string]cause.State{"control-not-calling": cause.RuledOut}, source: "refrigerator service text"}})
}

// The fall is that of one outlet: volts at start go with those at rest before
// them, and with none across a change (common practice).
func TestSagPairsOneOutlet(t *testing.T) {
	const fridge = "unit refrigerator; fault clicks and wont start; "
	checkTrade(t, []tradeCase{
		{name: "moved to another outlet", lines: fridge + "volt line 118; volt line 96 start; did moved to other outlet; volt line 121; causes",
			not: []string{"20."}, states: map[string]cause.State{"supply-weak": cause.Open}, source: "common practice"},
		{name: "read again at rest", lines: fridge + "volt line 118; volt line 96 start; volt line 121",
			in: []string{"fall by 18.6 %"}, source: "common practice"},
		{name: "no rest before it", lines: fridge + "volt line 104 start; volt line 118", in: []string{"supply: sound"}, not: []string{"fall"}, source: "common practice"},
		{name: "at the machine", lines: fridge + "volt line 118; volt comp 112 start; volt line 121; show verdicts",
			in: []string{"fall by 5.1 %"}, source: "common practice"},
		{name: "at the machine, none before", lines: fridge + "volt comp 112 start; volt line 121; show verdicts", not: []string{"fall by"}, source: "common practice"},
	})
}

// The armature of a current relay is a loose plunger: the contact is open
// upright and closed turned over (training manual 14259, fig. 14-40), and it
// rattles when it is sound; a disc that rattles is broken (common practice).
func TestRattlingRelay(t *testing.T) {
	const fridge = "unit refrigerator; fault hums and clicks off; safe; ohm C S 7.4, C R 2.1, S R 9.4; ohm C case OL, S case OL, R case OL; "
	const manual = "training manual 14259, fig. 14-40"
	checkTrade(t, []tradeCase{
		{name: "a current relay's plunger", lines: fridge + "plate start relay; saw relay rattles", in: []string{"No evidence: the plunger"}, not: []string{"Cause supported"},
			states: map[string]cause.State{"start-device-failed": cause.Open}, source: "common practice"},
		{name: "of a device called so", lines: fridge + "plate start relay; saw device rattles", in: []string{"No evidence"},
			states: map[string]cause.State{"start-device-failed": cause.Open}, source: "common practice"},
		{name: "nothing tells which", lines: fridge + "saw relay rattles", in: []string{"No evidence"},
			states: map[string]cause.State{"start-device-failed": cause.Open}, source: "common practice"},
		{name: "known by its coil", lines: fridge + "ohm relay-coil 0.9; saw start device rattles", in: []string{"No evidence"},
			states: map[string]cause.State{"start-device-failed": cause.Open}, source: "common practice"},
		{name: "a disc by its plate", lines: fridge + "plate start ptc; saw relay rattles", not: []string{"No evidence"},
			states: map[string]cause.State{"start-device-failed": cause.Supported}, source: "common practice"},
		{name: "a disc by its words", lines: fridge + "saw ptc rattles", states: map[string]cause.State{"start-device-failed": cause.Supported}, source: "common practice"},
		{name: "cracked", lines: fridge + "plate start relay; saw relay cracked", states: map[string]cause.State{"start-device-failed": cause.Supported}, source: "common practice"},
		{name: "pins of a part at hand are no start device", lines: "fault clicks; saw relay rattles; on heater; ohm 1 2 14.4", in: []string{"heater: "}, source: "common practice"},
		{name: "known by a disc at hand", lines: fridge + "saw relay rattles; on ptc; ohm 1 2 8", in: []string{"its disc is broken (entry "}, source: "common practice"},
		{name: "sticks", lines: fridge + "saw relay sticks", states: map[string]cause.State{"start-device-failed": cause.Supported}, source: "common practice"},
		{name: "welded", lines: fridge + "saw relay welded", states: map[string]cause.State{"start-device-failed": cause.Supported}, source: "common practice"},
		{name: "broken", lines: fridge + "saw relay broken", states: map[string]cause.State{"start-device-failed": cause.Supported}, source: "common practice"},
		{name: "open upright is half the test", lines: fridge + "ohm relay OL upright", in: []string{"cannot tell, open upright", "half the test"},
			next: "ohm relay 0.2 inverted", source: manual},
		{name: "upside down", lines: fridge + "ohm relay OL upright; ohm relay OL upside down", in: []string{"does not close when turned over"},
			states: map[string]cause.State{"start-device-failed": cause.Supported}, source: manual},
		{name: "turned over", lines: fridge + "ohm relay OL upright; ohm relay 0.2 turned over; ohm relay-coil 0.9; show verdicts", in: []string{"current relay"}, not: []string{"half the test"},
			states: map[string]cause.State{"start-device-failed": cause.RuledOut}, source: manual},
	})
}

// Volts at a fan whose winding is open leave the motor; a fan or pump has two
// leads more often than three (common practice).
func TestFanOfTwoLeads(t *testing.T) {
	const freezer = "unit freezer; fault not freezing; saw comp runs; saw evap fan stopped; "
	checkTrade(t, []tradeCase{
		{name: "fed", lines: freezer + "volt evap fan 118", states: map[string]cause.State{"evap-fan-unfed": cause.RuledOut}, source: "common practice"},
		{name: "not fed", lines: freezer + "volt evap fan 0 run", states: map[string]cause.State{"evap-fan-failed": cause.RuledOut}, source: "common practice"},
		{name: "asked for its leads", lines: freezer + "safe; on evap fan; ohm 1 2 OL", in: []string{"plate leads 2"}, source: "common practice"},
		{name: "judged", lines: freezer + "volt evap fan 118; safe; on evap fan; ohm 1 2 OL; plate leads 2", in: []string{"The winding reads open"},
			states: map[string]cause.State{"evap-fan-failed": cause.Supported, "evap-fan-unfed": cause.RuledOut}, source: "common practice"},
		{name: "a pump's own complaint", lines: "unit dishwasher; fault drain pump does not turn; safe; on drain pump; saw impeller sound; ohm 1 case OL, 2 case OL; ohm 1 2 OL", in: []string{"The winding reads open", "Taken to have two leads"}, not: []string{"plate leads 2"},
			next: "first let it cool", source: "common practice"},
		{name: "a drain pump beside another complaint", lines: "unit washer; fault no spin; safe; on drain pump; ohm 1 2 OL", in: []string{"The winding reads open", "Taken to have two leads"}, not: []string{"plate leads 2"}, source: "common practice"},
		{name: "a washer's pump is that", lines: "unit washer; fault no spin; safe; on pump; ohm 1 2 14", in: []string{"One winding, not open", "Taken to have two leads"}, not: []string{"plate leads 2"}, source: "common practice"},
		{name: "of which a third was read", lines: "unit washer; fault no spin; safe; on pump; ohm 1 2 14; ohm 1 3 14", not: []string{"Taken to have two leads"}, source: "common practice"},
		{name: "of which the plate says three", lines: "unit washer; fault no spin; safe; on pump; plate leads 3; ohm 1 2 OL", not: []string{"The winding reads open", "Taken to have two leads"}, source: "common practice"},
		{name: "a dishwasher's pump may be the other", lines: "unit dishwasher; fault leaks; safe; on pump; ohm 1 2 OL", in: []string{"plate leads 2"}, source: "common practice"},
		{name: "a pump's winding", lines: "unit dishwasher; fault drain pump does not turn; safe; on drain pump; plate leads 2; ohm 1 2 OL",
			in: []string{"The winding reads open"}, states: map[string]cause.State{"winding-open": cause.Supported}, source: "common practice"},
	})
}

// A verdict names the limit that it rests on: a ground is not judged by how the
// pairs add up (common practice).
func TestFailedShowsNoPassingLimit(t *testing.T) {
	const three = "unit refrigerator; fault clicks; safe; ohm A B 3.0, A C 8.0, B C 11.0; "
	checkTrade(t, []tradeCase{
		{name: "sound", lines: three + "show verdicts", in: []string{"of the highest pair"}, source: "common practice"},
		{name: "grounded", lines: three + "ohm A case 0; show verdicts", in: []string{"Grounded"}, not: []string{"of the highest pair", "inside"}, source: "common practice"},
	})
}

// A swollen can shows the capacitor that it is; of one that nobody names both are
// open, but where the machine has one alone. Common practice.
func TestSwollenCan(t *testing.T) {
	const fridge = "unit refrigerator; fault clicks and wont start; "
	both := map[string]cause.State{"start-cap-failed": cause.Open, "run-cap-failed": cause.Open}
	start := map[string]cause.State{"start-cap-failed": cause.Supported, "run-cap-failed": cause.Open}
	run := map[string]cause.State{"start-cap-failed": cause.Open, "run-cap-failed": cause.Supported}
	checkTrade(t, []tradeCase{
		{name: "nobody says which", lines: fridge + "saw cap bulging", in: []string{"Which capacitor?"}, not: []string{"supported"}, states: both, source: "common practice"},
		{name: "both are there", lines: fridge + "plate mfd start 88-108, mfd run 15; saw cap bulging", in: []string{"Which capacitor?"}, states: both, source: "common practice"},
		{name: "the start one", lines: fridge + "saw start cap bulging", not: []string{"Which"}, states: start, source: "common practice"},
		{name: "the run one", lines: fridge + "saw run cap swollen", not: []string{"Which"}, states: run, source: "common practice"},
		{name: "said afterwards", lines: fridge + "saw cap bulging; saw start cap bulging", not: []string{"Which"}, states: start, source: "common practice"},
		{name: "only one by the plate", lines: fridge + "plate start cap; saw cap bulging", not: []string{"Which"}, states: start, source: "common practice"},
		{name: "only one by the plate's range", lines: fridge + "plate mfd start 88-108, run none; saw cap bulging", not: []string{"Which"},
			states: map[string]cause.State{"start-cap-failed": cause.Supported, "run-cap-failed": cause.RuledOut}, source: "common practice"},
		{name: "a PTC has none for the start", lines: fridge + "plate start ptc; saw cap bulging", not: []string{"Which"},
			states: map[string]cause.State{"start-cap-failed": cause.RuledOut, "run-cap-failed": cause.Supported}, source: "common practice"},
		{name: "what moves air has one for running", lines: "unit air conditioner; fault not cooling; saw cap bulging", not: []string{"Which"},
			states: map[string]cause.State{"run-cap-failed": cause.Supported}, source: "common practice"},
	})
}
