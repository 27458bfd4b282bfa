package call

import (
	"strings"
	"testing"

	"ohmcall/notebook/said"
)

// What clients say every day is the complaint that it is, and what only sounds like it is
// not: common practice.
func TestEverydayComplaints(t *testing.T) {
	for _, r := range []struct{ unit, fault, want string }{
		{"washing machine", "stops with water still in the tub", said.NoDrain},
		{"front load washer", "won't spin, water still in drum at end, error F21", said.NoDrain},
		{"dishwasher", "water left in the bottom after the cycle", said.NoDrain},
		{"washing machine", "leaves water in the drum", said.NoDrain},
		{"washing machine", "leaks water on the floor", "leaks-water"},
		{"washing machine", "still leaks water in the laundry room", "leaks-water"},
		{"refrigerator", "water in the bottom of the fridge", "leaks-ices"},
		{"dishwasher", "no water coming in, hums", "no-fill"},
		{"dishwasher", "hums and won't fill", "no-fill"},
		{"dishwasher", "hums, does not start", "motor-dead"},
		{"washing machine", "hot side doesn't work, only cold water comes in", "no-fill"},
		{"gas range", "oven takes 40 min to preheat, top burners fine", "gas-no-heat"},
		{"gas range", "oven takes 40 minutes to preheat", "gas-no-heat"},
		{"electric range", "clock works, nothing heats", "no-heat"},
		{"electric range", "oven door locked after self clean, F9", "oven-locked"},
		{"wall oven", "oven door is stuck locked after cleaning", "oven-locked"},
		{"electric range", "oven door not locked, drops open", ""},
		{"walk-in cooler", "box at 48 wont pull down", "no-cool"},
		{"walk-in cooler", "box wont get below 45", "no-cool"},
		{"reach-in cooler", "temp alarm, product soft, unit running nonstop", "runs-always"},
		{"reach-in freezer", "product soft", "no-cool"},
		{"ice machine", "ice wont fall off", "poor-ice"},
		{"portable ice maker", "ice full light on but bin empty", "no-ice"},
		{"electric water heater", "have to push reset button every few days", "too-hot"},
		{"electric water heater", "water scalding hot", "too-hot"},
		{"washing machine", "won't lock lid", "wont-run"},
		{"washing machine", "door won't unlock", "door-locked"},
	} {
		if got := applyAll(t, "unit "+r.unit, "fault "+r.fault).complaint(); got != r.want {
			t.Errorf("%s, %s: %q, want %q", r.unit, r.fault, got, r.want)
		}
	}
}

// What is read and seen in such calls bears on them: common practice, but for the rounding
// of what was typed in °F, which follows from its one digit.
func TestEverydayReadings(t *testing.T) {
	drain, fan := "unit washing machine; fault does not drain; safe; ", "unit three phase exhaust fan; fault hums and wont start; plate volts 208, phase 3, amps 5.8; "
	cold := "unit walk-in cooler; fault compressor short cycles on low pressure; safe; "
	answers(t, [][2]string{
		{drain + "ohm drain-pump 14.2; ohm drain-pump case OL", "Entry 5: 1–case OL"},
		{drain + "saw coin stuck in pump, impeller wont turn", "Cause supported: what the motor drives is jammed"},
		{drain + "saw sock jammed in drain pump", "Cause supported: what the motor drives is jammed"},
		{drain + "saw pump filter full of coins", "Cause supported: what the motor drives is jammed"},
		{drain + "ohm wash-motor 5.4", "wash-motor: cannot tell, not open"},
		{"unit gas furnace; fault no heat; safe; ohm inducer-motor 14", "inducer-motor: cannot tell, not open"},
		{"unit gas furnace; fault no heat; safe; ohm inducer-motor OL", "inducer-motor: failed, open"},
		{"unit microwave; fault plate does not turn; safe; ohm turntable-motor 2.9k", "turntable-motor: cannot tell, not open"},
		{"unit washer; fault no spin; safe; ohm wash-motor OL", "wash-motor has pins"},
		{fan + "amp motor L1 5.2 run, motor L2 5.1, motor L3 5.3", "Entry 4: L1 5.2 A"},
		{"unit compressor, three phase; amp comp L1 8.4 run, comp L2 8.2 run", "Entry 2: L1 8.4 A"},
		{fan + "amp L1 5.2 run, L2 5.1 run, L3 5.3 run", "the legs are 1.9 % apart round 5.2 A, too near 10 % to say"},
		{fan + "saw shaft stuck; causes", "motor bearings seized"},
		{fan + "did replaced bearings", "amp L1 … run, L2 … run, L3 … run"},
		{"unit three phase scroll compressor; fault not cooling after electrician changed the disconnect; next", "order of the legs"},
		{cold + "ohm liquid-line-solenoid OL", "Cause supported: valve of the liquid line (pump-down) does not open: liquid-line-solenoid"},
		{"unit walk-in freezer; fault warm; safe; ohm defrost-termination OL", "defrost thermostat: cannot tell"},
		{"unit washer; fault never stops filling; saw drain hose shoved too far down standpipe", "Cause supported: drain hose too deep"},
		{"unit washer; fault never spins fast; saw shock absorbers worn", "Cause supported: springs or dampers"},
		{"unit washer; fault no spin; saw lid lock clicks but doesnt lock", "Cause supported: switch or door interlock open"},
		{"unit electric water heater; fault no hot water; safe; ohm upper 12.9, lower 12.7", "upper-element 12.9 Ω"},
		{"unit oven; fault bakes hot; safe; ohm sensor 10.5k at 75F", "at 23.9 °C"},
		{"unit oven; fault bakes hot; safe; ohm sensor 1.08k at 20.5C", "at 20.5 °C"},
		{"unit gas furnace; fault no heat; did replaced igniter", "earth from its earth terminal"},
		{"unit walk-in cooler; fault warm; did replaced evap fan", "earth from its earth terminal"},
		{"unit central air conditioner; fault not cooling; did replaced contactor", "earth from its earth terminal"},
		{"unit heat pump; fault not heating; did replaced contactor", "earth from its earth terminal"},
		{"unit gas dryer; fault no heat; did replaced igniter", "earth from plug pin"},
		{"unit window heat pump; fault not heating; did replaced capacitor", "earth from plug pin"},
		{"unit washer; fault no spin; did replaced belt", "amp motor … run"},
		{"unit reach-in freezer; fault comp cuts out on overload; did replaced run capacitor", "start surge"},
	})
	for line, wrong := range map[string]string{
		fan + "amp cond-fan L1 5.2 run": "Entry 4",
		"unit compressor, three phase; fault hums; plate phase 3; saw shaft stuck; causes":                                                  "motor bearings seized",
		"unit refrigerator; fault warm; causes":                                                                                             "liquid line",
		"unit washer; fault no spin; did replaced shocks":                                                                                   "felt a shock",
		"unit electric water heater; fault no hot water; safe; ohm upper 0.2":                                                               "element",
		"unit washer; fault no spin; ohm lid-lock OL; did replaced lid lock":                                                                "amp motor",
		"unit reach-in freezer; fault comp cuts out on overload; did cleaned condenser":                                                     "start surge",
		"unit electric dryer; fault no heat; did replaced breaker":                                                                          "amp heater",
		"unit electric coil range; fault left front burner stays on high; did replaced infinite switch":                                     "temperature that is set",
		"unit washer; fault no spin; saw lid lock bad; did replaced lid lock; saw spins; ohm earth 0.10; close":                             "lid or door switch",
		"unit electric dryer; fault no heat; saw breaker pole dead; did replaced breaker; volt L1 L2 242; saw heats; ohm earth 0.10; close": "heater",
	} {
		if got := answer(t, line); strings.Contains(got, wrong) {
			t.Errorf("%s:\n%s\nmust not hold %q", line, got, wrong)
		}
	}
}
