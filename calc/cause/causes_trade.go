package cause

import "ohmcall/calc/caution"

// airCauses are those of an air conditioner, whose one fan motor blows over both
// coils and whose evaporator grows cold and wet and does not frost.
var airCauses = []Cause{
	{
		Code: "set-not-cooling", Name: "set to fan only, or too warm",
		ShownBy:     []string{"set-off-cool"},
		Predicts:    []string{"does-not-cool", "silent"},
		Contradicts: []string{"set-to-cool", "clicks", "hums", "amps-locked-rotor"},
		Fix:         "set it to cool and below the room's temperature, and read the air ten minutes later",
		Work:        "set, dial, turn",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				set-to-cool | set to cool, cooling mode, in cooling, in cooling mode, in cool mode | it is set to cool and below the room's temperature | set-off-cool
				set-off-cool | set to fan only, set to fan, set too warm, set to dry mode, set to fan mode | it is set to fan only or above the room's temperature |`,
			Test: Test{Code: "mode", Name: "read how it is set: cool, and below the room's temperature", How: "saw set to cool",
				Outcomes: []string{"set-to-cool", "set-off-cool"}, Effort: 1, Danger: Look},
		},
	},
	{
		Code: "coil-iced", Name: "evaporator coil iced over", Consequence: true,
		ShownBy:     []string{"coil-iced"},
		Predicts:    []string{"does-not-cool", "cools-slowly"},
		Contradicts: []string{"coil-cold", "coil-warm"},
		Fix:         "let it thaw with the fan on, then look for why: filter, fan, cold room, charge",
		Work:        "thaw, ice",
		Source:      commonPractice,
	},
}

// contactorCauses are those of what switches a compressor on low control volts.
var contactorCauses = []Cause{
	{
		Code: "control-volts-low", Name: "control volts low: the transformer is weak, or a load drags it down",
		ShownBy:     []string{"control-volts-low"},
		Predicts:    []string{"contactor-chatters", "hums", "cuts-out"},
		Contradicts: []string{"driven", "fan-shared", "control-volts-sound"},
		Fix:         "take the loads off the secondary one by one, power off each time, and read it again: it rises when the one that drags it is off; low alone with its primary right it is the transformer",
		Work:        "transformer, control wire, short",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				contactor-chatters | contactor chatters, contactor chattering, contactor buzzes | the contactor chatters |
				control-volts-low | control volts low, control voltage low, transformer weak, transformer overloaded | the transformer gives its control circuit too little | control-volts-sound
				control-volts-sound | control volts good, control voltage good, transformer good | the transformer gives its control circuit what it is marked with |`,
			Test: Test{Code: "control-volts", Name: "volts of the control transformer's secondary while it should call", How: "volt transformer-secondary 25.6 run",
				Outcomes: []string{"control-volts-sound", "control-volts-low"}, Effort: 2, Danger: Live, Caution: []string{caution.MainsLive}},
		},
	},
	{
		Code: "contactor-welded", Name: "contactor welded, or held in",
		ShownBy:     []string{"contactor-welded"},
		Predicts:    []string{"runs-all-the-time", "contactor-unfed"},
		Contradicts: []string{"contactor-drops", "control-calls-when-cold"},
		Fix:         "locked out and proved dead, replace the contactor with one of its rating, and find what welded it: chatter, low control volts, short cycling",
		Work:        "contactor",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				contactor-welded | contactor welded, welded contactor, contactor stuck closed, contactor stuck shut, contactor stuck in, contactor stuck on, contactor contacts welded, contactor points welded, contacts welded, contactor stays in, contactor won't drop out, contactor does not drop out | the contactor stays in without volts on its coil | contactor-drops
				contactor-drops | contactor drops out, contactor opens | the contactor drops out when its coil has no volts |`,
			Test: Test{Code: "contactor-drops", Name: "take the call away: see the contactor drop out", How: "saw contactor drops out",
				Outcomes: []string{"contactor-drops", "contactor-welded"}, Effort: 1, Danger: Live, Caution: []string{caution.MainsLive}},
		},
	},
}

// heatCauses are those of a heat pump that heats rooms: its indoor coil is warm then
// and its outdoor coil cold, and frosts.
var heatCauses = []Cause{
	{
		Code: "set-not-heating", Name: "set to cool or fan only, or too low",
		ShownBy:     []string{"set-off-heat"},
		Predicts:    []string{"does-not-heat", "silent"},
		Contradicts: []string{"set-to-heat", "rise-sound"},
		Fix:         "set it to heat and above the room's temperature, and read the air ten minutes later",
		Work:        "set, dial, turn",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				set-to-heat | set to heat, heating mode, heat mode, in heating, in heating mode, in heat mode | it is set to heat and above the room's temperature | set-off-heat
				set-off-heat | set to cool only, set too low, set below room | it is set to cool or fan only, or below the room's temperature |`,
			Test: Test{Code: "mode-heat", Name: "read how it is set: heat, and above the room's temperature", How: "saw set to heat",
				Outcomes: []string{"set-to-heat", "set-off-heat"}, Effort: 1, Danger: Look},
		},
	},
	{
		Code: "outdoor-iced", Name: "outdoor coil iced over, its defrost failed",
		ShownBy:     []string{"outdoor-iced"},
		Predicts:    []string{"heats-slowly", "does-not-heat", "rise-small", "suction-low", "cond-fan-runs"},
		Contradicts: []string{"outdoor-clear", "rise-sound"},
		Fix:         "let it thaw with water or time, never with a tool; then see sensor and board of the defrost, and the drain under the coil",
		Work:        "defrost, thaw, ice, sensor, board",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				outdoor-iced | outdoor coil iced, outdoor coil iced over, outdoor unit iced, outdoor unit iced up, outdoor coil frozen, outdoor unit frozen, outdoor coil packed with ice | ice on the outdoor coil that no defrost clears | outdoor-clear
				outdoor-clear | outdoor coil clear, outdoor coil clean, outdoor coil frosted lightly, outdoor unit clear, defrosts normally | the outdoor coil is free of ice, or has a thin frost that a defrost clears |`,
			Test: Test{Code: "outdoor-look", Name: "look at the outdoor coil: a thin frost that a defrost clears is usual, ice is not", How: "saw outdoor coil clear",
				Outcomes: []string{"outdoor-clear", "outdoor-iced"}, Effort: 1, Danger: Look, Caution: []string{caution.HotMoving}},
		},
	},
	{
		Code: "reversing-stuck", Name: "reversing valve stuck, or its coil fed in the wrong mode or not at all",
		ShownBy:     []string{"reversing-stuck", "rise-cooled"},
		Predicts:    []string{"does-not-heat", "rise-small", "coil-cold", "pressures-apart"},
		Contradicts: []string{"reversing-shifts", "rise-sound", "rise-large"},
		Fix:         "see by its diagram whether its coil is fed to heat (B) or to cool (O), and read coil and volts while the mode is changed: volts in the wrong mode are the thermostat's, its setting's or a wire's; the valve itself is in the sealed system and is for a person certified for the refrigerant",
		Work:        "reversing, four-way, 4-way, valve, coil, solenoid",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				reversing-stuck | reversing valve stuck, reversing valve does not shift, reversing valve not shifting, cools in heating, cools in heat mode, blows cold in heating, blows cold air in heating, blows cold in heat mode, blows cold air in heat mode | it does the same in heating as in cooling: the reversing valve does not shift | reversing-shifts
				reversing-shifts | reversing valve shifts, reversing valve works, indoor line hot in heating | the reversing valve is heard to shift, and the indoor line grows hot in heating |`,
			Test: Test{Code: "reversing", Name: "change it between heat and cool: hear the reversing valve shift, and feel the indoor line grow hot in heating", How: "saw reversing valve shifts",
				Outcomes: []string{"reversing-shifts", "reversing-stuck"}, Effort: 2, Danger: Look, Caution: []string{caution.HotMoving}},
		},
	},
}

// wetCauses are those of machines that take in water, and of drums and noises.
var wetCauses = []Cause{
	{
		Code: "tap-shut", Name: "tap shut or house water low",
		ShownBy:     []string{"tap-shut"},
		Predicts:    []string{"does-not-fill", "fills-slowly"},
		Contradicts: []string{"tap-open"},
		Fix:         "open the tap; low house pressure is a plumber's",
		Work:        "tap, water on, plumber",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				tap-shut | tap shut, tap closed, water off, low water pressure | the tap is shut or gives little | tap-open
				tap-open | tap open, water on | the tap is open and gives a full stream into a bucket |`,
			Test: Test{Code: "tap", Name: "run the tap into a bucket", How: "saw tap open", Outcomes: []string{"tap-open", "tap-shut"}, Effort: 1, Danger: Look},
		},
	},
	{
		Code: "screens-clogged", Name: "inlet screens or hose clogged",
		ShownBy:     []string{"screens-clogged"},
		Predicts:    []string{"does-not-fill", "fills-slowly"},
		Contradicts: []string{"screens-clean"},
		Fix:         "shut the tap; clean the screens, replace a kinked hose",
		Work:        "screen, hose, clean",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				screens-clogged | screens clogged, screen clogged, screens dirty, screen dirty, fill hose kinked, inlet screens clogged, inlet screen clogged, inlet screens dirty, inlet filter clogged | the inlet screens or the fill hose are clogged | screens-clean
				screens-clean | screens clean, screen clean | inlet screens and fill hose are free |`,
			Test: Test{Code: "screens", Name: "tap shut, look at the fill hose and its screens", How: "saw screens clean",
				Outcomes: []string{"screens-clean", "screens-clogged"}, Effort: 2, Danger: Look},
		},
	},
	{
		Code: "seal-leaks", Name: "seal of tub or pump leaks, or the tub is cracked",
		ShownBy:     []string{"seal-leaks"},
		Predicts:    []string{"water-on-floor"},
		Contradicts: []string{"seal-dry"},
		Fix:         "replace the seal, with the bearings where water has reached them, or the pump or tub that is cracked",
		Work:        "seal, tub, pump, sump",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				seal-leaks | pump seal leaks, pump seal leaking, tub seal leaks, tub seal leaking, pump leaks, pump leaking, drain pump leaks, drain pump leaking, leak at pump, leak at tub seal, leak at pump seal, tub cracked, outer tub cracked, tub leaks, tub leaking, outer tub leaking, sump leaking, sump cracked, sump seal leaking, pump cracked, pump housing cracked, water at tub seal | the seal of tub or pump leaks, or tub or pump is cracked | seal-dry
				seal-dry | pump and tub dry, tub and pump dry, tub seal dry, pump seal dry | tub, pump and their seals are dry |`,
			Test: Test{Code: "seals", Name: "with water in it and the power off, look from below at pump, tub and their seals", How: "saw pump and tub dry",
				Outcomes: []string{"seal-dry", "seal-leaks"}, Effort: 2, Danger: Look},
		},
	},
	{
		Code: "arms-blocked", Name: "spray arms or their filter blocked, or an arm does not turn",
		ShownBy:     []string{"arms-blocked"},
		Predicts:    []string{"does-not-clean"},
		Contradicts: []string{"arms-clear"},
		Fix:         "clear the holes of the arms and the filter, and see that each arm turns freely under a full load",
		Work:        "arm, filter, clear, clean",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				arms-blocked | spray arm blocked, spray arms blocked, spray arm stuck, spray arm clogged, spray arm not turning, spray arm cracked, spray arm off, sump filter blocked | the spray arms or their filter are blocked, or an arm does not turn | arms-clear
				arms-clear | spray arms clear, spray arm clear, spray arms turn, spray arms clean | the spray arms and their filter are free and turn |`,
			Test: Test{Code: "arms", Name: "take out filter and spray arms, look through their holes, and turn each arm in a full load", How: "saw spray arms clear",
				Outcomes: []string{"arms-clear", "arms-blocked"}, Effort: 1, Danger: Look},
		},
	},
	{
		Code: "clutch-worn", Name: "clutch, brake or coupling worn",
		ShownBy:     []string{"clutch-worn"},
		Predicts:    []string{"agitates", "starts-and-runs"},
		Contradicts: []string{"clutch-sound", "hums", "silent", "amps-locked-rotor"},
		Fix:         "replace clutch, brake or coupling",
		Work:        "clutch, coupl, brake",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				clutch-worn | clutch worn, clutch slips, coupling broken, coupler broken, clutch slipping, clutch broken, coupler stripped, coupling stripped, coupler worn | clutch, brake or coupling slips or is broken | clutch-sound
				clutch-sound | clutch good, coupling good, no clutch | clutch, brake and coupling hold, or there are none |`,
			Test: Test{Code: "clutch", Name: "look at clutch, brake and coupling", How: "saw clutch good",
				Outcomes: []string{"clutch-sound", "clutch-worn"}, Effort: 3, Danger: Dead, Caution: []string{caution.ProveDead}},
		},
	},
	{
		Code: "bearings-worn", Name: "bearings or rollers worn",
		ShownBy:     []string{"bearings-worn"},
		Predicts:    []string{"noisy", "cuts-out", "starts-after-wait"},
		Contradicts: []string{"bearings-sound"},
		Fix:         "replace bearings and seal, or rollers and slides",
		Work:        "bearing, roller, slide",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				bearings-worn | bearings worn, bearing worn, bearing bad, rollers worn, drum has play, tub bearings worn, tub bearing worn, drum bearings worn, drum bearing worn, bearings shot, bearings gone, bearings noisy, bearing noise, bearings roaring, bearings collapsed, drum bearings collapsed, drum bearings gone, drum bearings shot, drum bearings noisy, bearing collapsed, bearing gone, bearing roaring, bearings rumbling, bearing noisy, drum bearings roaring, worn bearings, tub bearings gone, tub bearing noisy, drum roller seized, drum rollers seized, roller seized, rollers seized, roller worn, drum roller worn, drum rollers worn, rear drum bearing worn, drum bearing seized, rear bearing worn, idler seized, idler pulley seized, idler worn, motor bearing noisy, pump bearing noisy, motor bearings noisy, motor bearings worn, motor bearing worn | bearings or rollers have play, are stiff or rumble | bearings-sound
				bearings-sound | bearings good, bearing good, rollers good | it turns by hand without play or rumble |`,
			Test: Test{Code: "bearings", Name: "turn the shaft, or lift and turn the empty drum by hand: play, rumble", How: "saw bearings good",
				Outcomes: []string{"bearings-sound", "bearings-worn"}, Effort: 1, Danger: Dead, Caution: []string{caution.ProveDead}},
		},
	},
	{
		Code: "object-inside", Name: "loose object in drum, pump or blower",
		ShownBy:     []string{"object-inside"},
		Predicts:    []string{"noisy"},
		Contradicts: []string{"no-object"},
		Fix:         "take it out",
		Work:        "took out, object, coin, remov",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				object-inside | object inside, coin in drum, object in drum, object in blower | a loose object lies in drum, pump or blower | no-object
				no-object | no object, nothing loose inside | nothing loose in drum, pump or blower |`,
			Test: Test{Code: "object", Name: "look for a loose object in drum, pump trap and blower", How: "saw no object",
				Outcomes: []string{"no-object", "object-inside"}, Effort: 2, Danger: Dead, Caution: []string{caution.ProveDead}},
		},
	},
	{
		Code: "suspension-worn", Name: "springs or dampers of the tub worn, or shipping bolts left in",
		ShownBy:     []string{"suspension-worn"},
		Predicts:    []string{"noisy"},
		Contradicts: []string{"suspension-sound"},
		Fix:         "replace springs or dampers in sets; take shipping bolts out",
		Work:        "suspension, spring, damper, bolt, shock, strut",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				suspension-worn | suspension worn, spring broken, springs worn, damper worn, shipping bolts in, dampers worn, damper broken, damper bad, damper leaks, spring off, damper leaking, dampers leaking, suspension rods worn, suspension rods broken, suspension rod broken, damper leaked, rods worn | the tub's springs or dampers are worn, or it is still bolted | suspension-sound
				suspension-sound | suspension good, springs good | the tub hangs level and is damped |`,
			Test: Test{Code: "suspension", Name: "press the tub down and let go; look for shipping bolts", How: "saw suspension good",
				Outcomes: []string{"suspension-sound", "suspension-worn"}, Effort: 1, Danger: Dead, Caution: []string{caution.ProveDead}},
		},
	},
	{
		Code: "ends-it-early", Name: "timer, moisture sensor or control ends it early",
		Predicts:    []string{"restarts-at-once", "windings-sound", "airflow-clear"},
		Contradicts: []string{"starts-after-wait"},
		Fix:         "clean the moisture bars and see their wires; else replace timer or control, after the motor and its air have been proved",
		Work:        "timer, control, board, moisture, sensor",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				restarts-at-once | restarts at once, restarts right away, starts again at once, starts again right away | when it has stopped it starts again as soon as it is asked to: nothing had to cool | starts-after-wait`,
			Test: Test{Code: "restart", Name: "press start as soon as it has stopped, and again when it has stood for ten minutes", How: "saw starts after wait",
				Outcomes: []string{"restarts-at-once", "starts-after-wait"}, Effort: 2, Danger: Look, On: []string{"stops-early", "stops-mid"}},
		},
	},
	{
		Code: "door-switch-slips", Name: "door switch lets go while it runs",
		ShownBy:     []string{"door-slips"},
		Predicts:    []string{"restarts-at-once"},
		Contradicts: []string{"door-holds", "starts-after-wait"},
		Fix:         "set the strike, or replace the switch; never bridge an interlock",
		Work:        "switch, strike, latch, door",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				door-slips | door switch slips, stops when door is pressed, stops when door is pulled, door switch intermittent | it stops when the door is moved: its switch lets go | door-holds
				door-holds | door switch holds, runs when door is pulled | it runs on when the door is pressed and pulled |`,
			Test: Test{Code: "door", Name: "press and pull the shut door while it runs", How: "saw door switch holds",
				Outcomes: []string{"door-holds", "door-slips"}, Effort: 1, Danger: Look},
		},
	},
	{
		Code: "timer-stuck", Name: "timer or control does not go on",
		ShownBy:     []string{"timer-stuck"},
		Predicts:    []string{"runs-all-the-time"},
		Contradicts: []string{"timer-advances", "cycles-off"},
		Fix:         "replace timer or control, after what it waits for has been proved",
		Work:        "timer, control, board",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				timer-stuck | timer stuck, timer does not advance | timer or control stays where it is | timer-advances
				timer-advances | timer advances | timer or control goes on |`,
			Test: Test{Code: "timer", Name: "see whether timer or control goes on", How: "saw timer advances",
				Outcomes: []string{"timer-advances", "timer-stuck"}, Effort: 3, Danger: Look},
		},
	},
}
