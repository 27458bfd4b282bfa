package cause

import "ohmcall/calc/caution"

// fuseCauses are those of a microwave oven's door switches, by which it blows its fuse,
// of an induction zone, and of a machine that freezes slabs of ice on its evaporator.
var fuseCauses = []Cause{
	{
		Code: "interlock-stuck", Name: "door switch that stays closed or opens too late: its monitor switch blows the fuse",
		ShownBy:     []string{"interlock-closed"},
		Contradicts: []string{"interlocks-good"},
		Fix:         "replace each door switch that stays closed, and the monitor switch, by their types, set latch and door, then fit the fuse of its rating; read each switch again, door shut and open: for the trained",
		Work:        "interlock, switch, latch, door",
		Source:      "21 CFR 1030.10(c)(2), from memory: two interlocks, and a monitor that makes the oven inoperable when they fail",
		Own: &Own{
			Seen: `
				interlocks-good | interlocks good, door switches good, interlock switches good, all interlocks good | each door switch opens with the door, before the monitor switch closes |`,
			Test: Test{Code: "interlocks", Name: "each door switch by itself, plug out, its wires off: open with the door open (ohm primary-switch … open, secondary-switch … open)", How: "saw interlocks good",
				Outcomes: []string{"interlock-closed", "interlocks-good"}, Effort: 2, Danger: Dead, Caution: []string{caution.ProveDead, caution.ProtectorStays, caution.Capacitor}},
		},
	},
	{
		Code: "monitor-stuck", Name: "monitor switch that stays closed with the door shut",
		ShownBy:     []string{"monitor-closed"},
		Contradicts: []string{"monitor-opens"},
		Fix:         "replace the monitor switch by its type, and the door switches with it, never without one; read each again, door shut and open: for the trained",
		Work:        "monitor, switch",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				monitor-closed | monitor switch stuck closed, monitor switch welded, monitor switch shorted, monitor stuck closed | the monitor switch conducts with the door shut: it lies across the supply | monitor-opens
				monitor-opens | monitor switch good | the monitor switch is open with the door shut |`,
			Test: Test{Code: "monitor", Name: "the monitor switch, plug out, its wires off: open with the door shut, closed with it open", How: "ohm monitor-switch OL closed",
				Outcomes: []string{"monitor-closed", "monitor-opens"}, Effort: 2, Danger: Dead, Caution: []string{caution.ProveDead, caution.ProtectorStays, caution.Capacitor}},
		},
	},
	{
		Code: "pan-unfit", Name: "pan that the zone does not take: no magnetic base, too small, or not flat",
		ShownBy:     []string{"pan-unfit"},
		Predicts:    []string{"does-not-heat", "heats-slowly", "other-heats"},
		Contradicts: []string{"pan-fits"},
		Fix:         "use a pan whose base a magnet holds to, flat and as wide as the zone",
		Work:        "pan, pot",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				pan-unfit | pan not magnetic, magnet doesn't stick, pan too small, works with other pan, heats another pan | the zone does not take that pan | pan-fits
				pan-fits | pan magnetic, magnet sticks, same with other pan, no heat with good pan | a pan that other zones heat does nothing on this one |`,
			Test: Test{Code: "zone-pan", Name: "put a pan that another zone heats on this one", How: "saw same with other pan", Outcomes: []string{"pan-fits", "pan-unfit"}, Effort: 1, Danger: Look},
		},
	},
	{
		Code: "zone-drive-failed", Name: "inverter board of the zone failed",
		ShownBy:     []string{"zone-drive-shorted"},
		Predicts:    []string{"does-not-heat", "pan-fits", "coil-conducts"},
		Contradicts: []string{"zone-drive-sound"},
		Fix:         "replace the inverter board of that zone, after its fan, coil and sensor were proved: a short there takes the next board with it",
		Work:        "board, inverter, igbt, module",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				zone-drive-shorted | igbt shorted, igbts shorted, igbt bad, igbt blown, inverter board burnt, inverter board shorted, power board burnt, induction board bad, induction board burnt | its inverter has a shorted transistor or is burnt | zone-drive-sound
				zone-drive-sound | igbt good, igbts good, inverter board good, works with boards swapped | its inverter reads as that of a zone that works |`,
			Test: Test{Code: "zone-drive", Name: "the transistors of its inverter against those of a zone that works, power off and capacitor discharged", How: "saw igbt good",
				Outcomes: []string{"zone-drive-sound", "zone-drive-shorted"}, Effort: 3, Danger: Dead, Caution: []string{caution.ProveDead, caution.Capacitor}},
		},
	},
	{
		Code: "scaled", Name: "scale on evaporator, distributor or probe",
		ShownBy:     []string{"scaled"},
		Predicts:    []string{"no-ice-made"},
		Contradicts: []string{"scale-none"},
		Fix:         "descale and sanitize it by its sheet, and see to its filter",
		Work:        "descal, scale, clean",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				scaled | scale on evaporator, scale on evap, scaled up, evaporator scaled, evap scaled, heavy scale, limescale, lime on evaporator, water distributor plugged, distributor scaled | scale on evaporator, distributor or probe | scale-none
				scale-none | no scale, evaporator clean, evap clean, water distributor clear | neither evaporator nor distributor has scale |`,
			Test: Test{Code: "scale", Name: "look at evaporator, water distributor and probe for scale", How: "saw no scale", Outcomes: []string{"scale-none", "scaled"}, Effort: 1, Danger: Look},
		},
	},
	{
		Code: "slab-probe", Name: "thickness probe or level float dirty, open or out of its setting",
		ShownBy:     []string{"slab-wrong"},
		Contradicts: []string{"slab-right"},
		Fix:         "clean the probe and set it by the sheet; replace one that is open or leaks to earth",
		Work:        "probe, thickness, float, bridge",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				slab-wrong | slab too thick, slab too thin, bridge too thick, bridge too thin, probe dirty, thickness probe dirty, thickness probe bad, probe out of adjustment | the slab is thicker or thinner than its sheet gives when the harvest starts | slab-right
				slab-right | slab right, bridge thickness good, slab thickness good, thickness probe good | the slab is as thick as its sheet gives when the harvest starts |`,
			Test: Test{Code: "slab", Name: "thickness of the slab when its harvest starts against the sheet", How: "saw slab thickness good", Outcomes: []string{"slab-right", "slab-wrong"}, Effort: 2, Danger: Look},
		},
	},
	{
		Code: "slab-pump", Name: "water pump stands, or gives little over the evaporator",
		ShownBy:     []string{"slab-dry"},
		Predicts:    []string{"no-ice-made"},
		Contradicts: []string{"slab-wet"},
		Fix:         "clean or replace the water pump",
		Work:        "pump",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				slab-dry | water pump dead, water pump stopped, water pump not running, no water over evaporator, no water over evap, poor water flow over evaporator | no even sheet of water runs over the evaporator | slab-wet
				slab-wet | water pump runs, water over evaporator, water flows over evaporator, water flows over evap, even water over evap | an even sheet of water runs over the whole evaporator |`,
			Test: Test{Code: "slab-water", Name: "see whether an even sheet of water runs over the evaporator while it freezes", How: "saw water flows over evaporator", Outcomes: []string{"slab-wet", "slab-dry"}, Effort: 1, Danger: Look},
		},
	},
	{
		Code: "harvest-valve", Name: "harvest (hot gas) valve does not open, or leaks while it freezes",
		ShownBy:     []string{"harvest-cold", "coil-open"},
		Predicts:    []string{"no-ice-made"},
		Contradicts: []string{"harvest-hot"},
		Fix:         "read its coil and the volts at it in harvest; the valve itself is in the sealed system and is for a person certified for the refrigerant",
		Work:        "valve, coil, solenoid",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				harvest-cold | hot gas valve stuck, hot gas valve not opening, hot gas valve leaks, harvest valve stuck, harvest valve not opening, harvest valve leaks, hot gas line cold in harvest | its line stays cold in harvest, or is hot while it freezes | harvest-hot
				harvest-hot | hot gas valve opens, hot gas valve works, harvest valve opens, hot gas line hot in harvest | its line is hot in harvest and cool while it freezes |`,
			Test: Test{Code: "harvest", Name: "feel the line of the harvest valve: hot in harvest, cool while it freezes", How: "saw harvest valve opens",
				Outcomes: []string{"harvest-hot", "harvest-cold"}, Effort: 2, Danger: Look, Caution: []string{caution.HotMoving}},
		},
	},
}
