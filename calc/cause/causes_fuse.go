package cause

import "ohmcall/calc/caution"

// fuseCauses are those of a microwave oven's door switches, by which it blows its fuse.
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
			Test: Test{Code: "interlocks", Name: "each door switch by itself, plug out, its wires off: open with the door open", How: "ohm primary-switch OL open, secondary-switch OL open",
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
}
