package cause

import "ohmcall/calc/caution"

// iceCauses are those of an ice maker in a freezer, and of noises of an appliance
// that cools.
var iceCauses = []Cause{
	{
		Code: "ice-switched-off", Name: "ice maker switched off, or its arm up",
		ShownBy:     []string{"ice-arm-up"},
		Predicts:    []string{"no-ice-made", "does-not-fill"},
		Contradicts: []string{"ice-arm-down", "makes-ice"},
		Fix:         "lower the arm or switch it on, and empty a full bin",
		Work:        "arm, switched on, turned on, bin",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				ice-arm-up | arm up, ice maker off, bin full | the ice maker is switched off, its arm is up, or its bin is full | ice-arm-down
				ice-arm-down | arm down, ice maker on | the ice maker is on, and its arm is down |`,
			Test: Test{Code: "ice-arm", Name: "see that the ice maker is on, its arm down and its bin not full", How: "saw arm down",
				Outcomes: []string{"ice-arm-down", "ice-arm-up"}, Effort: 1, Danger: Look},
		},
	},
	{
		Code: "freezer-too-warm", Name: "freezer too warm for the ice maker to let go of its ice",
		ShownBy:     []string{"ice-too-warm"},
		Predicts:    []string{"no-ice-made", "does-not-cool", "cools-slowly"},
		Contradicts: []string{"ice-cold-enough", "makes-ice"},
		Fix:         "find out why the freezer is warm: fault does not cool",
		Work:        "set, dial, door, gasket",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				ice-too-warm | mould too warm, mold too warm, freezer too warm for ice | the freezer stays too warm for the ice maker | ice-cold-enough
				ice-cold-enough | freezer cold enough, mould cold, mold cold | the freezer is as cold as the ice maker needs |`,
			Test: Test{Code: "ice-cold", Name: "temperature of the freezer at the ice maker: 15 °F (-9 °C) or colder", How: "saw freezer cold enough", Source: commonPractice,
				Outcomes: []string{"ice-cold-enough", "ice-too-warm"}, Effort: 1, Danger: Look},
		},
	},
	{
		Code: "water-filter-clogged", Name: "water filter clogged",
		ShownBy:     []string{"water-filter-clogged"},
		Predicts:    []string{"no-ice-made", "does-not-fill", "fills-slowly"},
		Contradicts: []string{"water-filter-clear", "makes-ice"},
		Fix:         "replace the water filter",
		Work:        "water filter, filter",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				water-filter-clogged | water filter clogged, dispenser slow, dispenser trickles | the water filter lets little through | water-filter-clear
				water-filter-clear | water filter clear, dispenser runs full, no water filter, dispenser gives full stream, dispenser full stream, full stream at dispenser, dispenser runs well, dispenser flow good, good flow at dispenser, good water flow at dispenser | the dispenser gives a full stream, or there is no filter |`,
			Test: Test{Code: "water-filter", Name: "draw water at the dispenser, with and without its filter", How: "saw water filter clear",
				Outcomes: []string{"water-filter-clear", "water-filter-clogged"}, Effort: 1, Danger: Look},
		},
	},
	{
		Code: "fill-tube-frozen", Name: "fill tube of the ice maker frozen",
		ShownBy:     []string{"fill-tube-frozen"},
		Predicts:    []string{"no-ice-made", "does-not-fill"},
		Contradicts: []string{"fill-tube-clear", "fills", "makes-ice"},
		Fix:         "thaw the tube; then look for why: a valve that drips, low water pressure, a tube out of place",
		Work:        "thaw, tube, deic",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				fill-tube-frozen | fill tube frozen, fill tube iced, tube frozen, ice in fill tube, fill tube blocked with ice | the fill tube is closed by ice | fill-tube-clear
				fill-tube-clear | fill tube clear, tube clear, fill tube not frozen, fill tube not iced, tube not frozen, no ice in fill tube, fill tube open | the fill tube is open |`,
			Test: Test{Code: "fill-tube", Name: "look into the fill tube of the ice maker for ice", How: "saw fill tube clear",
				Outcomes: []string{"fill-tube-clear", "fill-tube-frozen"}, Effort: 1, Danger: Look},
		},
	},
	{
		Code: "ice-maker-failed", Name: "ice maker does not turn: its motor, gears or thermostat failed, or ice jams it",
		ShownBy:     []string{"ice-maker-stuck"},
		Predicts:    []string{"no-ice-made", "does-not-fill", "valve-volts-absent"},
		Contradicts: []string{"ice-maker-turns", "makes-ice", "valve-volts-present"},
		Fix:         "free it of ice; if it does not turn when started by hand, replace it",
		Work:        "ice maker, icemaker, module, jam",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				ice-maker-stuck | ice maker stuck, ice maker does not turn, fingers do not turn, rake stuck, ice jammed, no harvest, will not harvest | the ice maker does not turn when it is started by hand | ice-maker-turns
				ice-maker-turns | ice maker turns, fingers turn, harvests, harvest starts | the ice maker turns through a harvest |`,
			Test: Test{Code: "ice-harvest", Name: "start a harvest by hand as its sheet says, and see whether it turns", How: "saw ice maker turns",
				Outcomes: []string{"ice-maker-turns", "ice-maker-stuck"}, Effort: 2, Danger: Look, Caution: []string{caution.HotMoving}},
		},
	},
	{
		Code: "fan-noisy", Name: "a fan's bearing is worn, or its blade scrapes",
		ShownBy:     []string{"fan-noisy"},
		Predicts:    []string{"noisy"},
		Contradicts: []string{"fans-quiet"},
		Fix:         "free the blade of ice and wires; replace the fan motor whose bearing is worn",
		Work:        "fan, blade",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				fan-noisy | fan noisy, fan bearing noisy, fan bearing worn, fan scrapes, blade scrapes, fan squeals, evap-fan noisy, cond-fan noisy, evap-fan squeals, cond-fan squeals, fan rattles, fan noise, fan grinding, fan bearing squeals, fan bearing gone, blades scraping, fan hitting | a fan makes the noise | fans-quiet
				fans-quiet | noise not from fans, no fan noise, fan quiet, noise stays with the fans held | the noise is not of a fan |`,
			Test: Test{Code: "fan-noise", Name: "listen at each fan; hold the door switch in for the inner one", How: "saw noise not from fans",
				Outcomes: []string{"fans-quiet", "fan-noisy"}, Effort: 1, Danger: Look, Caution: []string{caution.HotMoving}},
		},
	},
	{
		Code: "tubes-rattle", Name: "a tube, the pan or a panel rattles",
		ShownBy:     []string{"tubes-rattle"},
		Predicts:    []string{"noisy"},
		Contradicts: []string{"tubes-quiet"},
		Fix:         "part what touches and fasten what is loose; bend no tube near a joint",
		Work:        "tube, pan, panel, clip, fasten, secur, pad",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				tubes-rattle | tube rattles, tubes rattle, pan rattles, panel rattles, tubing rattles, tube touches, tubing rattling, tubes rattling, drain pan rattles, drain pan rattling | a tube, the drain pan or a panel rattles and is quiet under a hand | tubes-quiet
				tubes-quiet | tubes quiet, nothing rattles, pan quiet | no tube, pan or panel rattles |`,
			Test: Test{Code: "tubes", Name: "hold tubes, pan and panels one after the other while it runs: hot, live parts kept clear of", How: "saw nothing rattles",
				Outcomes: []string{"tubes-quiet", "tubes-rattle"}, Effort: 1, Danger: Look, Caution: []string{caution.HotMoving}},
		},
	},
	{
		Code: "mounts-worn", Name: "mounts of the compressor worn or hard, or shipping blocks left in",
		ShownBy:     []string{"mounts-worn"},
		Predicts:    []string{"noisy"},
		Contradicts: []string{"mounts-sound"},
		Fix:         "replace the rubber mounts; take shipping blocks out",
		Work:        "mount, grommet, rubber, block, bolt",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				mounts-worn | mounts worn, mounts hard, mount broken, comp touches, shipping blocks in | the compressor's mounts do not hold it free | mounts-sound
				mounts-sound | mounts good, mounts sound | the compressor rests free on sound mounts |`,
			Test: Test{Code: "mounts", Name: "look at the compressor's mounts and whether it touches anything", How: "saw mounts good",
				Outcomes: []string{"mounts-sound", "mounts-worn"}, Effort: 1, Danger: Dead, Caution: []string{caution.ProveDead}},
		},
	},
	{
		Code: "compressor-noisy", Name: "compressor itself knocks or rattles",
		ShownBy:     []string{"comp-knocks"},
		Predicts:    []string{"noisy"},
		Contradicts: []string{"comp-quiet"},
		Fix:         "a knock at start and stop alone is usual; one that stays comes of worn parts inside, or of liquid: read amps and pressures before a compressor is judged",
		Work:        "compressor",
		Machine:     true,
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				comp-knocks | comp knocks, comp rattles, comp loud, comp noisy | the compressor itself makes the noise while it runs | comp-quiet
				comp-quiet | comp quiet, comp runs quietly | the compressor runs without the noise |`,
			Test: Test{Code: "comp-noise", Name: "listen at the compressor's shell while it runs, with a rod", How: "saw comp quiet",
				Outcomes: []string{"comp-quiet", "comp-knocks"}, Effort: 1, Danger: Look, Caution: []string{caution.HotMoving}},
		},
	},
}
