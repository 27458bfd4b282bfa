package call

import (
	"math"
	"strings"
	"testing"

	"ohmcall/calc/cause"
)

// provedLeak is a call whose leak was mended and proved.
const provedLeak = "client A; unit split air conditioner; fault not cooling; plate volts 230, amps 15, gas R-410A; saw set to cool; volt line 242; saw starts; amp comp 8.0 run; psi suction 60 run; psi discharge 230 run; " +
	"saw leak at flare nut; safe off; did reflared the flare nut, evacuated, recharged 5 lb; saw no leak found; ohm earth 0.08; saw filter clean; saw coils clean; saw starts; saw blower runs; saw cond-fan runs; amp comp 12.2 run; +20min temp return 78F; temp supply 59F; "

// wantsAfter holds, line by line typed after a call, what must be wanting of its proof,
// "" when nothing.
func wantsAfter(t *testing.T, before string, rows [][2]string) {
	t.Helper()
	for _, row := range rows {
		c := New()
		for _, l := range strings.Split(before+row[0], "; ") {
			if _, err := c.Apply(c.Clock(l, testDay), l); err != nil {
				t.Fatal(l, err)
			}
		}
		got := strings.Join(c.proofMissing(), "\n")
		if (row[1] == "") != (got == "") || !strings.Contains(got, row[1]) {
			t.Errorf("%s: wanting is %q, want %q", row[0], got, row[1])
		}
	}
}

// A leak that is seen again after its repair, its signs, and the pressures of the fault
// take the proof back; what shows that it is tight does not: common practice.
func TestLeakAgain(t *testing.T) {
	wantsAfter(t, provedLeak, [][2]string{
		{"note all good", ""},
		{"+2h saw bubbles at flare nut", "a sign of a leak again"},
		{"+2h saw service valve leaks", "a sign of a leak again"},
		{"+2h saw leak at valve core", "a sign of a leak again"},
		{"+2h saw oil at joint", "a sign of a leak again"},
		{"+2h saw bubbles at flare nut; did tightened flare nut; saw no leak found", "earth"},
		{"+2h saw oil at joint; saw no leak found", ""},
		{"saw no leak found", ""},
		{"+20h psi suction 60 run", "read right again: pressures"},
		{"+20h psi suction 60 run; psi discharge 230 run", "read right again: pressures"},
		{"+20h psi suction 60 run; psi suction 120 run", ""},
		{"+20h psi suction 120 run; psi discharge 300 run", ""},
		{"psi discharge 650 run", "above any high-pressure cut-out"},
		{"note gas is low", "told again"},
		{"note pressures dropped since yesterday", "told again"},
		{"note it lost its charge again", "told again"},
		{"note pressures hold, not low on gas", ""},
		{"note it was low on gas", ""},
		{"note charge is right, pressures steady", ""},
		{"note low side low when cold outside", ""},
	})
}

// What the work was done for and is seen again after it takes the proof back, whatever it
// is; what is told of the old part does not: common practice.
func TestFoundAgain(t *testing.T) {
	const gasket = "client A; unit fridge; fault runs all the time; plate volts 115, amps 1.2; volt line 119; saw door gasket torn; safe unplugged; did replaced door gasket; ohm earth 0.08; saw starts; amp comp 1.1 run; temp fridge 50F; +20min temp fridge 45F; +20min temp fridge 41F; +20min temp fridge 38F; +20min temp fridge 36F; "
	wantsAfter(t, gasket, [][2]string{
		{"note all good", ""},
		{"saw door gasket torn", "what was mended seen to hold: the door gasket does not seal"},
		{"saw old gasket torn", ""},
		{"saw door gasket torn; saw gasket good", ""},
	})
}

// provedAC is an air conditioner whose capacitor was replaced and proved.
const provedAC = "client A; unit split air conditioner; fault outdoor unit hums, not cooling; plate volts 230, amps 15, gas R-410A; saw set to cool; volt line 242; plate mfd 40; mfd HERM 12; safe off; did replaced run capacitor; mfd HERM 40.2; " +
	"ohm earth 0.08; saw filter clean; saw coils clean; saw starts; saw blower runs; saw cond-fan runs; amp comp 12.2 run; +20min temp return 78F; temp supply 59F; "

// A gas that is not the plate's counts by whatever words it is told of, one that burns as a
// danger; what is denied, planned or of a torch does not: common practice.
func TestGasHeld(t *testing.T) {
	const fits, hurts = "Does not fit by its marking: the gas ", "Unsafe: something that can hurt"
	for line, want := range map[string][]string{
		"note client put propane in it":                      {fits, hurts},
		"note previous tech filled it with R290":             {fits, hurts},
		"note found isobutane in the circuit":                {fits, hurts},
		"note system holds propane, not R-410A":              {fits, hurts},
		"saw propane in the system":                          {fits, hurts},
		"did recovered all, recharged with propane":          {fits, hurts},
		"note somebody put R-22 in it before":                {fits},
		"note unit has R-407C":                               {fits},
		"note unit holds R-410A":                             nil,
		"note no propane in it":                              nil,
		"note if propane was put in it we would see it":      nil,
		"note used propane torch on the flare":               nil,
		"note client wanted R-22 put in it":                  nil,
		"note R-22 sticker from another unit":                nil,
		"note R-22 in it; did recovered all, charged R-410A": nil,
	} {
		alerts := strings.Join(applyAll(t, strings.Split(provedAC+line, "; ")...).Record().Alerts, "\n")
		for _, w := range []string{fits, hurts} {
			if has := strings.Contains(alerts, w); has != among(want, w) {
				t.Errorf("%s: %q is %v in %s", line, w, has, alerts)
			}
		}
	}
}

// Who feels unwell where nothing burns is asked about; what tells of a flue, an alarm or a
// burner is carbon monoxide: common practice.
func TestUnwellWhereNothingBurns(t *testing.T) {
	for line, want := range map[string]string{
		"unit split air conditioner; note customer gets headaches": "To read",
		"unit fridge; note client felt dizzy in the kitchen":       "To read",
		"unit heat pump split; note co alarm went off":             "Unsafe",
		"unit fridge; note headaches, co 60 ppm in the room":       "Unsafe",
		"unit gas furnace; note customer gets headaches":           "Unsafe",
		"unit range; note customer gets headaches":                 "Unsafe",
		"unit electric dryer; note customer feels sick":            "To read",
	} {
		alerts := strings.Join(applyAll(t, strings.Split(line, "; ")...).Record().Alerts, "\n")
		if strings.Contains(alerts, "Unsafe") != (want == "Unsafe") || !strings.Contains(alerts, want) {
			t.Errorf("%s: %s", line, alerts)
		}
	}
}

// A heat pump whose defrost was mended is not proved by the warm air of a coil that was
// thawed by hand: common practice.
func TestOutdoorDefrostProved(t *testing.T) {
	const pump = "client A; unit heat pump split; fault not heating, blows cool air; plate volts 230, amps 14, gas R-410A; volt line 240; saw set to heat; saw outdoor coil iced; safe off; "
	const after = "; ohm earth 0.08; saw starts; saw cond-fan runs; saw blower runs; amp comp 11.2 run; +20min temp return 68F; temp supply 92F; "
	const wanted = "a defrost of the outdoor coil seen"
	for _, work := range []string{"did replaced defrost sensor", "did replaced defrost board", "did replaced the outdoor thermistor", "did thawed outdoor coil with water"} {
		wantsAfter(t, pump+work+after, [][2]string{
			{"saw outdoor coil clear", wanted},
			{"saw defrost starts itself", ""},
			{"saw forced defrost clears the coil", ""},
			{"saw outdoor coil clear after forced defrost", ""},
		})
	}
	fan := strings.Split(strings.Replace(pump, "saw outdoor coil iced", "saw cond-fan stopped", 1)+"did replaced condenser fan motor; saw cond-fan runs", "; ")
	if got := strings.Join(applyAll(t, fan...).proofMissing(), "; "); got == "" || strings.Contains(got, wanted) {
		t.Error(got)
	}
}

// A protector that is seen by its time to open takes a proof back until the machine was
// seen to run again; so do a suction in vacuum and a coil that frosts in part once it was
// cold: common practice.
func TestTripAgain(t *testing.T) {
	const fridge = "client A; unit fridge freezer top mount; fault clicks, no cool; plate volts 115, amps 1.2, lra 12, gas R-134a; volt line 119; safe unplugged; ohm CS 6.5; ohm CR 3.4; ohm SR 9.8; ohm C case OL, S case OL, R case OL; ohm ptc OL cold; " +
		"did replaced start device; ohm ptc 5.0 cold; ohm earth 0.08; saw starts; volt line 117 start; amp comp 10 peak; amp comp 1.1 run; temp freezer 50F; +20min temp freezer 30F; +40min temp freezer 15F; +60min temp freezer 2F; +90min temp freezer -4F; "
	wantsAfter(t, fridge, [][2]string{
		{"note all good", ""},
		{"+20h trip comp 8", "that its overload holds"},
		{"+20h trip 90", "that its overload holds"},
		{"+20h trip comp 8; +1h saw starts", ""},
		{"+20h psi suction -10 run", "suction -10 psi is low"},
		{"+20h saw frost partial", "seen again"},
		{"+20h saw frost partial; saw frost even", ""},
		{"+20h saw frost even", ""},
	})
}

// What is cold does not call its machine on: no current then is no failure unless it was
// read as run. A place that was proved cold stays so while its control holds it: common
// practice.
func TestOffInTheCold(t *testing.T) {
	const wine = "client A; unit wine cabinet; fault too warm, 65F; plate volts 115, amps 1.0, gas R-134a; temp set 55F; volt line 118; temp cabinet 66F; saw cond-fan stopped; saw evap-fan runs; saw frost even; volt cond-fan 118 run; safe unplugged; ohm cond fan OL; " +
		"did replaced condenser fan motor; ohm earth 0.08; saw cond-fan runs; on cond-fan; plate amps 0.20; on compressor; amp cond-fan 0.19 run; saw starts; amp comp 0.90 run; temp cabinet 64F; +30min temp cabinet 60F; +30min temp cabinet 57F; +30min temp cabinet 54F; +30min temp cabinet 52F; "
	wantsAfter(t, wine, [][2]string{
		{"note all good", ""},
		{"+5h amp comp 0.00", ""},
		{"saw cycles off; amp comp 0.00", ""},
		{"amp comp 0.00; saw cycles off", ""},
		{"amp comp 0.00 run; saw cycled off", ""},
		{"amp comp 0.00 run", "no current flows"},
		{"+2h temp cabinet 57F", ""},
		{"+2h temp cabinet 61F", "too early"},
	})
	const freezer = "client A; unit upright freezer; fault not cold; plate volts 115, amps 1.2, gas R-134a; volt line 119; safe unplugged; ohm ptc OL cold; did replaced start device; ohm ptc 5.0 cold; ohm earth 0.08; saw starts; amp comp 1.1 run; " +
		"temp freezer 50F; +20min temp freezer 30F; +40min temp freezer 15F; +60min temp freezer 2F; +90min temp freezer -4F; "
	wantsAfter(t, freezer, [][2]string{
		{"note all good", ""},
		{"+20h temp freezer 0F", ""},
		{"+20h temp freezer 4F", ""},
		{"+20h temp freezer 12F", "too early"},
		{"+3h amp comp 0.00", ""},
		{"+3h amp comp 0.00 run", "0.00 A, failed"},
	})
	if got := degrees(-17.79, "F"); got != "0 °F" {
		t.Error(got)
	}
}

// The valve that lets water in is no harvest valve, by work and by ohms: common practice.
func TestWaterValveIsNoHarvestValve(t *testing.T) {
	const ice = "unit ice machine; fault no ice, compressor runs; "
	for lines, want := range map[string]bool{
		"safe; ohm water-valve OL": false, "safe; ohm inlet-valve OL": false, "safe; ohm hot-gas-valve OL": true,
		"did replaced water inlet valve": false, "did changed water valve": false, "did replaced the harvest valve": true,
	} {
		c := applyAll(t, strings.Split(ice+lines, "; ")...)
		w := c.weigh(math.MaxInt)
		got := strings.Contains(outcome(c.Record(), "Cause found"), "harvest (hot gas) valve") || among(w.Codes(cause.Supported), "harvest-valve")
		if got != want {
			t.Errorf("%s: %v, %s", lines, got, outcome(c.Record(), "Cause found"))
		}
	}
}

// Temperatures of the air that are hours apart are not told against each other: common
// practice.
func TestAirOfAnotherTime(t *testing.T) {
	wantsAfter(t, provedAC, [][2]string{
		{"+20h temp supply 45F", ""},
		{"+2h temp return 70F", ""},
		{"+20h temp return 78F; temp supply 59F", ""},
		{"+20h temp return 78F; +25min temp supply 74F", "hardly cools"},
	})
	checkTrade(t, []tradeCase{
		{"alone", provedAC + "+20h temp supply 45F", []string{"of another time: temp return … beside it"}, []string{"air split"}, nil, "", "common practice"},
		{"both", provedAC + "+20h temp return 78F; temp supply 59F", nil, []string{"of another time"}, nil, "", "common practice"},
	})
}

// Refrigerant that was added went somewhere: it wants a leak check by whatever words it is
// told; what is no refrigerant does not. A note that reads as work is asked about: common
// practice.
func TestAddedWantsLeakCheck(t *testing.T) {
	const tight = "every refrigerant joint opened is tight"
	for work, want := range map[string]bool{
		"added 1 lb R-410A": true, "added 12 oz of r22": true, "weighed in 2 lb of R-410A": true, "put in some refrigerant": true, "added gas": true, "gassed it up": true, "adjusted the charge": true,
		"added a shelf": false, "put in 2 new screws": false, "added oil to the fan": false, "adjusted the door": false,
	} {
		c := applyAll(t, "unit split air conditioner", "fault not cooling", "plate gas R-410A", "did "+work)
		if got := strings.Contains(strings.Join(c.proofMissing(), "; "), tight); got != want {
			t.Errorf("%s: %v", work, got)
		}
	}
	for note, want := range map[string]bool{"added 1 lb R-410A": true, "fitted a hard start kit too": true, "tech before us added 2 lb": false, "customer happy": false} {
		c := applyAll(t, "unit fridge")
		if got := strings.Contains(must(t, c, "note "+note).Reply.Plain(), "A note is no work"); got != want {
			t.Errorf("note %s: %v", note, got)
		}
	}
}
