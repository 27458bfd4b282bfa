package cause

import "ohmcall/calc/caution"

// stillCauses are those of what cools without a compressor: by absorption, or by a
// thermoelectric module.
var stillCauses = []Cause{
	{
		Code: "back-unaired", Name: "no air at its back: flue, vents, fins or the fan of the hot side",
		Predicts:    []string{"does-not-cool", "cools-slowly"},
		ShownBy:     []string{"back-unaired"},
		Contradicts: []string{"back-aired"},
		Fix:         "clear flue, vents and fins; replace a fan that stands; give it the room that its sheet asks for",
		Work:        "vent, flue, fin, fan, clean, room",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				back-aired | back clear, vents and fins clear, hot side fan runs, air at its back | air goes through at its back, moved where it has to be | back-unaired
				back-unaired | back blocked, flue or vents blocked, fins matted, hot side fan stopped, hot side fan dead, no air at its back | no air passes at its back |`,
			Test: Test{Code: "back-look", Name: "look at flue, vents and fins at its back, and at the fan of the hot side", How: "saw back clear",
				Outcomes: []string{"back-aired", "back-unaired"}, Effort: 1, Danger: Look, Caution: []string{caution.HotMoving}},
		},
	},
	{
		Code: "cooling-unit-blocked", Name: "cooling unit does not circulate: blocked, or empty",
		Predicts:    []string{"does-not-cool", "cools-slowly", "level", "heats-up", "heater-sound", "back-aired"},
		ShownBy:     []string{"unit-still"},
		Contradicts: []string{"unit-circulates"},
		Fix:         "replace the cooling unit; with a smell of ammonia or yellow crystals air the room and leave it to someone trained for it",
		Work:        "cooling unit, absorber",
		Note:        "it is condemned only after level, heat and air at its back are proved",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				unit-circulates | absorber warm, absorber coils warm, cooling unit circulates | the absorber behind it is warm from top to bottom | unit-still
				unit-still | absorber cold, absorber coils cold, boiler hot absorber cold, cooling unit blocked | the boiler is hot, and the absorber behind it stays cold |`,
			Test: Test{Code: "absorber-feel", Name: "level and some hours on its heater: feel whether the absorber behind it is warm", How: "saw absorber warm",
				Outcomes: []string{"unit-circulates", "unit-still"}, Effort: 5, Danger: Look, Caution: []string{caution.HotMoving}},
		},
	},
	{
		Code: "module-failed", Name: "thermoelectric module failed",
		Predicts:    []string{"does-not-cool", "cools-slowly", "module-fed"},
		ShownBy:     []string{"module-dead"},
		Contradicts: []string{"module-cold", "module-unfed"},
		Fix:         "replace the module with one of its volts and amps, paste on both sides, after the fan of the hot side is proved",
		Work:        "module, peltier",
		Source:      commonPractice,
		Own: &Own{
			Seen: `
				module-cold | module cold, cold side cold | under power one side of the module is cold, the other warm | module-dead
				module-dead | module dead, cold side warm | the module is under power, and no side of it grows cold |`,
			Test: Test{Code: "module-feel", Name: "ten minutes under power: feel whether the cold side of the module is cold", How: "saw module cold",
				Outcomes: []string{"module-cold", "module-dead"}, Effort: 3, Danger: Look, Caution: []string{caution.HotMoving}, When: []string{"module-fed"}},
		},
	},
}
