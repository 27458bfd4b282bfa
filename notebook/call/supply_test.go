package call

import (
	"strings"
	"testing"

	"ohmcall/calc/cause"
)

// The plate of a cabinet counts its heaters and fans: by it alone a compressor that
// draws little is not condemned. Common practice.
func TestPlateOfACabinet(t *testing.T) {
	const freezer = "unit frost free freezer; fault warm; "
	checkTrade(t, []tradeCase{
		{"the whole cabinet's", freezer + "plate volts 115, amps 5; amp comp 1.3 run", []string{"cannot tell, 1.3 A is low for a plate of 5 A", "the plate of a cabinet counts its heaters too"}, []string{"suspect"}, nil, "", "common practice"},
		{"the compressor's own", freezer + "plate volts 115, amps 5, lra 28; amp comp 1.3 run", []string{"suspect, 1.3 A is low for a plate of 5 A"}, []string{"cabinet"}, nil, "", "common practice"},
		{"a compressor's size", freezer + "plate volts 115, amps 1.4; amp comp 0.45 run", []string{"suspect, 0.45 A is low"}, []string{"cabinet"}, nil, "", "common practice"},
		{"more than the whole takes", freezer + "plate volts 115, amps 5; amp comp 6.8 run", []string{"6.8 A is high"}, []string{"cabinet"}, nil, "", "common practice"},
	})
}

// A heater made for 240 V draws by the volts and heats by their square: on 208 V it
// gives three quarters, slow and not none. Ohm's law; the ranges of the supply are
// those of ANSI C84.1, from memory.
func TestHeaterOnLowVolts(t *testing.T) {
	const (
		dryer = "unit electric dryer; plate volts 240, watts 5400; fault no heat; "
		slow  = "unit electric oven; plate volts 240, watts 5400; fault takes too long to heat; "
		takes = "unit electric dryer; plate volts 240, watts 5400; fault takes too long to dry; "
		low   = "volt L1 L2 208; "
	)
	weak := func(s cause.State) map[string]cause.State { return map[string]cause.State{"supply-weak": s} }
	checkTrade(t, []tradeCase{
		{"208 V gives heat", dryer + "volt L1 L2 208", []string{"A heater made for 240 V gives 75 %", "fits a 208Y/120 V service", "Shown, though it does not explain the complaint: supply too low"}, []string{"Cause supported"},
			weak(cause.RuledOut), "ohm heater 10.7", "P with V²"},
		{"and the heater is open", dryer + low + "ohm heater OL", []string{"Cause supported: heater failed"}, nil, weak(cause.RuledOut), "", "common practice"},
		{"no outlet of its own for two legs", slow + "volt L1 L2 208", []string{"Cause supported: supply too low", "75 %"}, nil, weak(cause.Supported), "see to breaker, outlet, wiring and service; where the service is of 208 V", "common practice"},
		{"told that it heats slowly", dryer + "saw heats slowly; volt L1 L2 208", []string{"Cause supported: supply too low"}, nil, weak(cause.Supported), "", "common practice"},
		{"far too low is no heat", dryer + "volt L1 L2 139 run", nil, []string{"of its watts"}, nil, "", "common practice"},
		{"a heater on one leg", "unit dishwasher; plate volts 120, watts 900; fault does not heat; volt line 98", []string{"heater made for 120 V gives 67 %"}, nil, weak(cause.RuledOut), "", "P with V²"},
		{"a motor on low volts", "unit fridge; fault clicks; plate volts 115; volt line 96", []string{"Cause supported: supply too low"}, []string{"of its watts", "208Y"}, weak(cause.Supported), "plug straight into an outlet of its own", "common practice"},
		{"a motor of two legs", "unit central air conditioner; plate volts 240; fault hums, does not start; volt L1 L2 200", nil, []string{"of its watts"}, weak(cause.Supported), "electrician", "common practice"},
		{"enough", dryer + "volt L1 L2 236", []string{"sound"}, []string{"of its watts", "208Y"}, weak(cause.Open), "", "common practice"},
		{"made for 208 V", "unit electric dryer; plate volts 208, watts 4050; fault no heat; volt L1 L2 208", []string{"sound"}, []string{"of its watts"}, weak(cause.Open), "", "common practice"},

		{"read at work alone: low", takes + "volt L1 L2 208 run", []string{"75 %", "Read under load; at rest as well", "Cause supported: supply too low"}, nil, weak(cause.Supported), "", "ANSI C84.1: utilization voltage, from memory"},
		{"read at work alone: as it must be", dryer + "volt L1 L2 236 run", []string{"supply: sound, 236 V"}, []string{"at rest"}, weak(cause.Open), "", "ANSI C84.1, from memory"},
		{"read at work alone: none", dryer + "volt L1 L2 0 run", []string{"Cause supported: no supply"}, nil, nil, "restore the supply", "common practice"},
		{"read at work alone: one leg", dryer + "volt L1 L2 120 run", []string{"half of 240 V"}, []string{"sound"}, nil, "volt L1 N …, L2 N …", "common practice"},
		{"read at work beside rest is a fall", dryer + "volt L1 L2 240; volt L1 L2 222 run", []string{"the volts fall by 7.5 %"}, []string{"Read under load; at rest"}, nil, "", "NEC 215.2(A) informational note"},
		{"read at the start alone", "unit fridge; fault clicks; plate volts 115; volt line 96 start", []string{"supply at start: cannot tell, 96 V is no fall by itself: read it at rest first, volt line …, line … start"}, []string{"Cause supported"},
			weak(cause.Open), "", "common practice"},
		{"high enough at the start alone", "unit fridge; fault clicks; plate volts 115; volt line 116 start", []string{"supply at start: sound, 116 V is no deep fall, whatever a sound supply has at rest"}, nil,
			nil, "", "ANSI C84.1 range A, from memory; a fall of 15 %, common practice"},
		{"not at a heat pump's one leg", "unit heat pump split; plate volts 240; fault hums; volt L1 N 116 start", nil, []string{"supply at start: sound"}, nil, "", "common practice"},
		{"and at rest before it", "unit fridge; fault clicks; plate volts 115; volt line 118, line 84 start", []string{"the volts fall by 28.8 %"}, nil, weak(cause.Supported), "", "common practice"},

		{"one end of the heater to neutral", dryer + "volt heater N 120 run", []string{"cannot tell, 120 V is of one of its ends", "volt heater …"}, []string{"failed"}, nil, "", "common practice"},
		{"one end of the heater to a leg", dryer + "volt heater L1 120 run", []string{"of one of its ends"}, []string{"failed"}, nil, "", "common practice"},
		{"across it", dryer + "volt heater 120 run", []string{"failed, it should be called and is given 120 V"}, nil, nil, "", "common practice"},
		{"of one leg to neutral it is across", "unit dishwasher; plate volts 120, watts 900; fault does not heat; volt heater N 118 run", []string{"sound, it is given 118 V"}, nil, nil, "", "common practice"},

		{"twice the ohms of a dryer", dryer + "ohm heater 21.5", []string{"suspect, 21.5 Ω is 2 times the plate's 10.67 Ω hot: one of 2 coils"}, nil, map[string]cause.State{"heater-failed": cause.Open}, "", "Ohm's law"},
		{"twice those of an oven's element", "unit electric oven; plate volts 240, watts bake 5400; fault no heat; ohm bake 21.5", []string{"failed, 21.5 Ω is too high"}, nil, map[string]cause.State{"heater-failed": cause.Supported}, "", "Ohm's law"},
		{"twice those of all an oven has", "unit electric oven; plate volts 240, watts 5400; fault no heat; ohm bake element 21.5", []string{"cannot tell, 21.5 Ω is 2679 W of the plate's 5400 W", "plate watts bake-element"}, nil, map[string]cause.State{"heater-failed": cause.Open}, "", "common practice"},
		{"less than all an oven has", "unit electric oven; plate volts 240, watts 5400; fault no heat; ohm bake 3", []string{"failed, 3 Ω is too low"}, nil, map[string]cause.State{"heater-failed": cause.Supported}, "", "common practice"},
		{"one of several, typed by its name", "unit electric range; plate volts 240, watts 11000; plate watts bake-element 2800; fault oven no heat; ohm bake 20.6", []string{"sound, 20.6 Ω agrees"}, nil, map[string]cause.State{"heater-failed": cause.RuledOut}, "", "common practice"},
		{"the one to be read, by its own watts", "unit electric range; plate volts 240, watts 11000, watts broil 3400, watts bake 2800; fault bake does not heat; volt L1 L2 240; saw limit reset; next", []string{"ohm bake 20.6"}, nil, nil, "", "common practice"},
		{"another one of them", "unit electric range; plate volts 240, watts 11000; plate watts bake 2800; fault oven no heat; ohm broil 20.6", []string{"cannot tell, 20.6 Ω is"}, nil, nil, "", "common practice"},
		{"that of a washer, whose motor has its share", "unit washing machine; plate volts 230, watts 2300; fault does not heat; ohm heater 29.4", []string{"cannot tell, 29.4 Ω is 1799 W"}, nil, map[string]cause.State{"heater-failed": cause.Open}, "", "common practice"},
		{"and its amps", "unit washing machine; plate volts 230, watts 2300; fault does not heat; amp heater 7.9 run", []string{"cannot tell, 7.9 A of the plate's 10 A", "limit at most"}, []string{"a poor joint"}, nil, "", "common practice"},
		{"by its own watts", "unit washing machine; plate volts 230, watts 2300, watts heater 1800; fault does not heat; ohm heater 29.4; amp heater 7.6 run", []string{"sound, 7.6 A agrees"}, nil, map[string]cause.State{"heater-failed": cause.RuledOut}, "", "common practice"},
		{"a refrigerator's plate is of its compressor", "unit fridge; plate volts 115, watts 180; fault ice on the coil, not cold; ohm defrost heater 28", []string{"cannot tell, its own watts", "plate watts defrost-heater"}, nil, nil, "", "common practice"},
		{"its defrost heater's own", "unit fridge; plate volts 115, watts 180; plate watts defrost-heater 450; fault ice on the coil, not cold; ohm defrost heater 28", []string{"sound, 28 Ω agrees"}, nil, nil, "", "common practice"},

		{"a deep fall that leaves enough to heat", dryer + "volt L1 L2 238; volt L1 L2 205 run", []string{"the volts fall by 13.9 %", "Shown, though it does not explain the complaint: supply too low"}, []string{"Cause supported"}, weak(cause.RuledOut), "ohm heater", "common practice"},
		{"and is slow", takes + "volt L1 L2 238; volt L1 L2 205 run", []string{"Cause supported: supply too low"}, nil, weak(cause.Supported), "electrician", "common practice"},
		{"one that leaves too little", dryer + "volt L1 L2 238; volt L1 L2 90 run", []string{"Cause supported: supply too low"}, nil, weak(cause.Supported), "electrician", "common practice"},

		{"amps at the volts at rest", dryer + low + "amp heater 19.4 run", []string{"heater amps: sound, 19.4 A agrees with the plate's 19.5 A at 208 V at rest"}, nil, nil, "", "Ohm's law"},
		{"and under load before those", dryer + low + "volt L1 L2 200 run; amp heater 18.6 run", []string{"agrees with the plate's 18.75 A at 200 V"}, nil, nil, "", "Ohm's law"},
		{"half of it open on 208 V", dryer + low + "amp heater 9.7 run", []string{"suspect", "a poor joint, or part of it open"}, []string{"low volts"}, nil, "", "Ohm's law"},
		{"of 240 V on 208 V is too much", dryer + low + "amp heater 22.5 run", []string{"suspect", "is high"}, nil, nil, "", "Ohm's law"},
		{"no volts read", dryer + "amp heater 19.4 run", []string{"is low for the plate's 22.5 A: low volts"}, nil, nil, "", "Ohm's law"},
		{"one leg is not its supply", dryer + "volt L1 N 120; amp heater 22.5 run", []string{"sound, 22.5 A agrees with the plate's 22.5 A"}, nil, nil, "", "common practice"},
		{"volts long before", dryer + low + "+40min amp heater 19.4 run", []string{"is low for the plate's 22.5 A"}, nil, nil, "", "common practice"},
		{"volts that prove it dead", dryer + "safe; volt L1 L2 2; amp heater 22.5 run", []string{"agrees with the plate's 22.5 A"}, nil, nil, "", "common practice"},
		{"the share is of what is read now", takes + "volt L1 L2 208", []string{"slow, not none"}, nil, nil, "", "P with V²"},
	})
}

// Volts that stand across what should conduct say that it is open, where both probes
// stood on it. Common practice throughout.
func TestVoltsAcrossASwitch(t *testing.T) {
	const (
		furnace = "unit gas furnace; fault no heat; plate volts 115; "
		dryer   = "unit electric dryer; fault no heat; plate volts 240, watts 5400; "
		open    = "if both probes stood on it"
	)
	limit := func(s cause.State) map[string]cause.State { return map[string]cause.State{"limit-open": s} }
	checkTrade(t, []tradeCase{
		{"control volts across a limit", furnace + "volt high-limit 25 run", []string{"suspect, 25 V: open", open, "Cause supported: thermal limit"}, nil, limit(cause.Supported), "", "common practice"},
		{"none", furnace + "volt high-limit 0.1 run", []string{"cannot tell", "closed if current flows through it"}, []string{"sound"}, limit(cause.Open), "", "common practice"},
		{"some", furnace + "volt high-limit 8 run", []string{"cannot tell", "neither all of its circuit nor none"}, nil, limit(cause.Open), "", "common practice"},
		{"a rollout", furnace + "volt rollout 25 run", []string{open, "burner, flue and heat exchanger are looked at"}, nil, limit(cause.Supported), "", "common practice"},
		{"at rest nothing is told", furnace + "volt rollout 25", nil, []string{"volts across"}, limit(cause.Open), "", "common practice"},
		{"from one end to the other side of the supply", furnace + "volt limit N 25 run", nil, []string{"volts across"}, limit(cause.Open), "", "common practice"},
		{"another limit's ohms", furnace + "volt rollout 25 run; ohm hi-limit 0.1", nil, []string{"contradict"}, limit(cause.Supported), "", "common practice"},
		{"its own ohms", furnace + "volt hi-limit 25 run; ohm hi-limit 0.1", []string{"contradict"}, nil, nil, "", "common practice"},
		{"a pressure switch may be open rightly", furnace + "volt pressure-switch 24 run", []string{"cannot tell, 24 V: open", "write closed before run"}, []string{"Cause supported"}, nil, "", "common practice"},
		{"told that it should be closed", furnace + "volt pressure-switch 24 closed run", []string{"suspect, 24 V: open"}, nil, nil, "", "common practice"},
		{"one leg across a thermal fuse", dryer + "volt thermal-fuse 120 run", []string{"suspect, 120 V: open"}, nil, limit(cause.Supported), "", "common practice"},
		{"both legs across a limit", dryer + "volt high-limit 240 run", []string{"suspect, 240 V: open"}, nil, limit(cause.Supported), "", "common practice"},
		{"a door switch", dryer + "volt door-switch 120 closed run", []string{"suspect, 120 V: open", "Cause supported: switch"}, nil, map[string]cause.State{"switch-open": cause.Supported}, "", "common practice"},
		{"that of a refrigerator", "unit refrigerator; fault does not cool; volt door-switch 118 closed run", nil, []string{"volts across"}, nil, "", "common practice"},
		{"a furnace's valve is on 24 V", furnace + "volt gas-valve 0 run", []string{"failed", "60 % of 24 V"}, nil, nil, "", "common practice"},
		{"fed", furnace + "volt gas-valve 24 run", []string{"sound", "of 24 V"}, nil, nil, "", "common practice"},
		{"a dryer's on the mains", "unit gas dryer; fault no heat; plate volts 120; volt gas-valve 0 run", []string{"failed", "60 % of 120 V"}, nil, nil, "", "common practice"},
	})
	for line, want := range map[string]string{
		"volt pressure switch 24 run": "volt pressure-switch 24 run", "volt upper element 239": "volt upper-element 239", "volt contactor coil 0 run": "volt contactor-coil 0 run",
		"volt transformer secondary 0": "volt transformer-secondary 0", "volt left rollout 25 run": "volt left-rollout 25 run",
		"amp oven igniter 2.7 run": "amp oven-igniter 2.7 run", "amp bake igniter 3.3 run": "amp bake-igniter 3.3 run", "amp upper element 18.7 run": "amp upper-element 18.7 run",
		"volt heater N 118": "volt heater N 118", "volt line neutral 118": "volt line neutral 118", "volt limit common 24": "volt limit common 24",
		"volt gas valve common 24 run": "volt gas valve common 24 run", "volt pressure switch common 24 run": "volt pressure switch common 24 run",
		"volt heater thermostat 118": "volt heater thermostat 118", "volt L1 fuse 118": "volt L1 fuse 118",
	} {
		if got := New().Expand(line); got != want {
			t.Errorf("%s: %s, want %s", line, got, want)
		}
	}
	if got := must(t, applyAll(t, "unit gas oven", "fault no heat", "plate igniter 3.2-3.6"), "amp bake-igniter 2.7 run").Reply.Plain(); !strings.Contains(got, "it draws less than its valve asks for") {
		t.Error(got)
	}
}

// G is the earth where volts stand between it and the case; up to what a transformer of
// controls gives it may be a thermostat's terminal for the fan (common practice).
func TestCaseToGround(t *testing.T) {
	for line, judged := range map[string]bool{
		"volt case G 120": true, "volt g cabinet 119": true, "volt case ground 120": true,
		"volt G case 24": false, "volt L G 120": false, "volt case L 120": false,
	} {
		if got := must(t, applyAll(t, "unit gas furnace", "fault no heat"), line).Reply.Plain(); strings.Contains(got, "metal to earth: failed") != judged {
			t.Errorf("%s: judged %t: %q", line, !judged, got)
		}
	}
}
