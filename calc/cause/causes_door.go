package cause

import "ohmcall/calc/caution"

// doorCauses are those of a door that stays locked, and of a microwave oven whose
// high voltage makes no heat: that side is told of and not judged.
var doorCauses = []Cause{
	{
		Code: "water-left", Name: "water left inside: pump, filter or hose did not take it out",
		ShownBy:     []string{"does-not-drain"},
		Contradicts: []string{"drum-empty", "drains"},
		Fix:         "power off, let the water out through the trap of the drain; then find why it stays in: fault does not drain",
		Work:        "drain, pump, trap, hose, water, filter",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				drum-empty | drum empty, no water in drum, no water left, tub is empty | no water stands in the drum | does-not-drain`,
			Test: Test{Code: "water-look", Name: "look whether water stands in the drum", How: "saw drum empty",
				Outcomes: []string{"drum-empty", "does-not-drain"}, Effort: 1, Danger: Look, On: []string{"door-locked"}},
		},
	},
	{
		Code: "lock-jammed", Name: "door lock jammed or broken",
		ShownBy:     []string{"lock-jammed"},
		Contradicts: []string{"lock-free", "unlocks-unpowered"},
		Fix:         "free the latch and set the strike, or replace the lock; never force the door or tie the lock open",
		Work:        "lock, latch, strike, handle",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				lock-jammed | lock jammed, lock stuck, door lock jammed, door lock stuck, lid lock jammed, lid lock stuck, latch jammed, latch stuck, latch motor dead, lock motor dead, lock bad | the lock or its latch is jammed or broken | door-unlocks
				lock-free | lock free, lock good, door lock good, door lock free, latch free, latch good | lock, latch and strike are whole and move freely |
				unlocks-unpowered | unlocks with power off, unlocks when unplugged, door opens with power off, door opens when unplugged | with the power off for some minutes the door unlocks | lock-jammed
				door-locked | door stays locked, door doesn't unlock, door not unlocking, door locked, lid stays locked, lid doesn't unlock | the door stays locked after the end | door-unlocks
				door-unlocks | door unlocks, door unlocks now, unlocks, lid unlocks, door opens now | the door unlocks after the end as it should |`,
			Test: Test{Code: "lock", Name: "power off, let what is hot cool and what turns stop, wait ten minutes and try the door; then look at lock, latch and strike", How: "saw lock free",
				Outcomes: []string{"lock-free", "lock-jammed", "unlocks-unpowered"}, Effort: 2, Danger: Dead, Source: commonPractice, Caution: []string{caution.ProveDead, caution.HotMoving}},
		},
	},
	{
		Code: "magnetron-failed", Name: "magnetron failed",
		ShownBy:     []string{"magnetron-failed"},
		Contradicts: []string{"magnetron-sound"},
		Fix:         "replace the magnetron with one of its type, by who is trained for its high voltage: plug out, capacitor discharged and proved; then prove door, seals and leakage",
		Work:        "magnetron",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				magnetron-failed | magnetron bad, magnetron failed, magnetron open, magnetron shorted, magnetron grounded, magnetron dead, filament open, bad magnetron | the magnetron's filament is open, or it has a path to its case | magnetron-sound
				magnetron-sound | magnetron good, magnetron sound, filament good | its filament conducts, and it has no path to its case |`,
			Test: Test{Code: "magnetron", Name: "only by who is trained for its high voltage, plug out, capacitor discharged and proved: the magnetron's filament, and its terminals to case", How: "saw magnetron good",
				Outcomes: []string{"magnetron-sound", "magnetron-failed"}, Effort: 4, Danger: Dead, Caution: []string{caution.ProveDead, caution.Capacitor, caution.HighVoltage}},
		},
	},
	{
		Code: "high-volts-failed", Name: "high-voltage diode, capacitor, transformer or fuse failed",
		ShownBy:     []string{"high-volts-failed"},
		Contradicts: []string{"high-volts-sound"},
		Fix:         "replace the part that failed with one of its rating, by who is trained for its high voltage: plug out, capacitor discharged and proved; see what made it fail",
		Work:        "diode, hv, high voltage, transformer, capacitor, cap, fuse",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				high-volts-failed | hv failed, hv diode shorted, hv diode open, hv diode bad, diode shorted, diode open, diode bad, hv cap shorted, hv cap open, hv cap bad, hv fuse open, hv fuse blown, hv transformer open, hv transformer shorted, hv transformer bad, transformer open, transformer shorted | a part of the high voltage is open or shorted | high-volts-sound
				high-volts-sound | hv good, hv sound, hv side good, hv parts good | diode, capacitor, transformer and fuse of the high voltage are sound |`,
			Test: Test{Code: "high-volts", Name: "only by who is trained for its high voltage, plug out, capacitor discharged and proved: its fuse, diode, capacitor and transformer", How: "saw hv good",
				Outcomes: []string{"high-volts-sound", "high-volts-failed"}, Effort: 4, Danger: Dead, Caution: []string{caution.ProveDead, caution.Capacitor, caution.HighVoltage}},
		},
	},
}
