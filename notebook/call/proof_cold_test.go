package call

import (
	"testing"

	"ohmcall/calc/cause"
)

// A cold place is proved by its own temperatures, long enough after the work: common
// practice.
func TestProofOfTheCold(t *testing.T) {
	const (
		combi = "unit combi fridge freezer; plate volts 230, amps 1.2; "
		done  = "did replaced damper; "
		temps = "proof: three timed temperatures"
		cold  = "temp freezer -19C; +60min temp freezer -20C; +60min temp freezer -20C; "
		fridg = "temp fridge 12C; +60min temp fridge 5C; +60min temp fridge 3C; "
	)
	checkTrade(t, []tradeCase{
		{"the freezer was never ill", combi + "fault fridge warm, freezer ok; " + done + cold + "missing", []string{temps, "the complaint is about the fridge"}, nil, nil, "", "common practice"},
		{"and the fridge is still warm", combi + "fault fridge part too warm; " + done + cold + "temp fridge 14C; missing", []string{temps, "fridge 14 °C (entry 8), still too warm"}, nil, nil, "", "common practice"},
		{"the fridge itself", combi + "fault fridge warm, freezer ok; " + done + fridg + "missing", nil, []string{temps}, nil, "", "common practice"},
		{"the freezer is warm though the fridge is cold", combi + "fault fridge warm, freezer ok; " + done + fridg + "temp freezer -5C; missing", []string{"freezer -5 °C (entry 8), still too warm"}, nil, nil, "", "common practice"},
		{"warm at first, cold when it was read again", combi + "fault freezer warm; " + done + "temp fridge 14C; " + cold + "temp fridge 3C; missing", nil, []string{temps}, nil, "", "common practice"},
		{"both were ill", combi + "fault fridge and freezer both warm; " + done + cold + "missing", []string{"(temp freezer …, fridge …)", "the complaint is about the fridge"}, nil, nil, "", "common practice"},
		{"both were ill and are cold", combi + "fault fridge and freezer both warm; " + done + cold + fridg + "missing", nil, []string{temps}, nil, "", "common practice"},
		{"the whole appliance by its name", combi + "fault fridge freezer not cooling; " + done + cold + "missing", nil, []string{temps}, nil, "", "common practice"},
		{"what did not start", combi + "fault fridge is warm, compressor not running; did replaced start relay; " + cold + "missing", nil, []string{temps}, nil, "", "common practice"},
		{"a freezer by another name", "unit upright freezer; fault fridge not cooling; " + done + cold + "missing", nil, []string{temps}, nil, "", "common practice"},
		{"three minutes", combi + "fault fridge warm, freezer ok; " + done + "+1min temp fridge 38F; +1min temp fridge 37F; +1min temp fridge 37F; missing",
			[]string{temps, "less than half an hour after the work (entry 4)"}, nil, nil, "", "common practice"},
		{"an hour before the first", combi + "fault fridge warm, freezer ok; " + done + "+60min temp fridge 38F; +1min temp fridge 37F; +1min temp fridge 37F; missing", nil, []string{temps}, nil, "", "common practice"},
	})
}

// What was fitted is proved, whatever the complaint was: common practice.
func TestProofOfWhatWasFitted(t *testing.T) {
	const (
		pins    = "pins of the new machine to case, before power"
		start   = "proof: the start seen"
		amps    = "amp comp … run"
		temps   = "three timed temperatures"
		defrost = "proof: a defrost seen"
		dry     = "that it stays dry"
	)
	checkTrade(t, []tradeCase{
		{"a compressor for frost", "unit freezer; fault frost on top shelf only, comp runs; did replaced compressor and drier, recharged; missing", []string{pins, start, "peak", amps, temps}, nil, nil, "", "common practice"},
		{"a compressor for a noise", "unit fridge; fault noisy; did replaced compressor; missing", []string{pins, start, "peak", amps, temps, "the noise gone"}, nil, nil, "", "common practice"},
		{"its mounts", "unit fridge; fault noisy; did replaced compressor mounts; missing", []string{"the noise gone"}, []string{pins, start, amps, temps}, nil, "", "common practice"},
		{"a charge", "unit fridge; fault noisy; did recharged it; missing", []string{amps, temps}, []string{pins, start}, nil, "", "common practice"},
		{"a damper for ice", "unit fridge; fault leaks water inside; did replaced damper; missing", []string{temps, dry}, []string{amps, defrost}, nil, "", "common practice"},
		{"a defrost control", "unit freezer frost free; fault not defrosting, iced up; saw frost heavy; did replaced defrost control; missing", []string{temps, defrost}, []string{dry}, nil, "", "common practice"},
		{"a board for ice", "unit freezer; fault freezer warm, iced up; did thawed by hot air, replaced board; missing", []string{temps, defrost}, nil, nil, "", "common practice"},
		{"its defrost was seen", "unit freezer; fault freezer warm, iced up; did thawed by hot air, replaced board; saw defrost started by itself; missing", []string{temps}, []string{defrost}, nil, "", "common practice"},
		{"thawed and no more", "unit freezer; fault freezer warm, iced up; did thawed it; missing", []string{defrost}, nil, nil, "", "common practice"},
		{"thawed, and a gasket", "unit freezer; fault freezer warm, iced up; did thawed it; did replaced the gasket; missing", []string{temps}, []string{defrost}, nil, "", "common practice"},
		{"a chest has no defrost", "unit chest freezer; fault freezer warm, iced up; did defrosted it; missing", []string{temps}, []string{defrost}, nil, "", "common practice"},
		{"a frozen drain", "unit fridge; fault water in fridge; did thawed the drain; missing", []string{dry}, []string{defrost}, nil, "", "common practice"},
		{"a device of the start is no ice", "unit fridge; fault start device clicks; did replaced board; missing", []string{start}, []string{defrost}, nil, "", "common practice"},
		{"amps of the heater are a defrost", "unit fridge; fault iced up; plate watts defrost-heater 450, volts 115; did replaced defrost heater; ohm defrost-heater 29.4; volt line 115 run; amp defrost-heater 3.90 run; missing", []string{temps}, []string{defrost}, nil, "", "common practice"},
	})
}

// Wine is kept at what is set: common practice.
func TestWineIsKeptAtItsSetPoint(t *testing.T) {
	const asks = "cannot tell, wine is kept at what is set, and by no limit of food: temp set"
	checkTrade(t, []tradeCase{
		{"nothing is set", "unit wine cooler; fault not cold; temp cabinet 12C", []string{asks}, []string{"failed", "FDA"}, nil, "", "common practice"},
		{"another cooler", "unit cooler; fault not cold; temp cabinet 12C", []string{"failed", "FDA"}, []string{asks}, nil, "", "FDA, Refrigerator Thermometers: Cold Facts about Food Safety"},
		{"as it is set", "unit wine fridge; fault not cold; temp set 12C; temp cabinet 12C", []string{"cabinet temperature: sound, what is set"}, nil, nil, "", "common practice"},
		{"set behind it", "unit wine fridge; fault not cold; temp cabinet 17C; temp set 12C", []string{"cabinet temperature: failed, warmer than it is set to"}, nil, nil, "", "common practice"},
		{"colder", "unit wine fridge; fault noisy; temp set 12C; temp cabinet 5C", []string{"colder than it is set to"}, nil, nil, "", "common practice"},
		{"proved by it", "unit wine fridge; fault not cold; temp set 12C; did replaced thermostat; temp cabinet 20C; +60min temp cabinet 15C; +60min temp cabinet 12C; missing", nil, []string{"timed temperatures"}, nil, "", "common practice"},
		{"not proved without", "unit wine fridge; fault not cold; did replaced thermostat; temp cabinet 20C; +60min temp cabinet 15C; +60min temp cabinet 3C; missing", []string{"timed temperatures", "too early"}, nil, nil, "", "common practice"},
		{"not proved above", "unit wine fridge; fault not cold; temp set 5C; did replaced thermostat; temp cabinet 20C; +60min temp cabinet 15C; +60min temp cabinet 12C; missing", []string{"timed temperatures"}, nil, nil, "", "common practice"},
	})
}

// What starts while its overload is out of the circuit does not start by itself, and
// shows the overload bad: common practice.
func TestStartsWithItsOverloadOut(t *testing.T) {
	const start = "unit fridge; fault clicks no start; plate volts 115, amps 1.2; safe; ohm a b 4.1, b c 6.1, a c 10.2; ohm overload OL cold; "
	bad := map[string]cause.State{"overload-failed": cause.Supported}
	checkTrade(t, []tradeCase{
		{"bypassed", start + "did bypassed overload w jumper, runs fine; saw starts", []string{"starts with its overload out of the circuit"}, []string{"by itself"}, bad, "put back what is out", "common practice"},
		{"jumpered", start + "did jumpered ol; saw starts ok", []string{"starts with its overload out of the circuit"}, nil, bad, "put back what is out", "common practice"},
		{"the reading alone was not taken", "unit fridge; fault clicks no start; did jumpered overload; saw starts", nil, nil, bad, "put back what is out", "common practice"},
		{"the jumper is off", start + "did jumpered ol; did jumper off; saw starts", []string{"by itself"}, []string{"out of the circuit"}, map[string]cause.State{"overload-failed": cause.RuledOut}, "", "common practice"},
		{"another device is out", start + "did jumpered door switch; saw starts", []string{"by itself"}, []string{"overload out"}, map[string]cause.State{"overload-failed": cause.RuledOut}, "", "common practice"},
		{"the new one is read", start + "did replaced overload", []string{"the new overload read (ohm overload … cold)"}, nil, nil, "", "common practice"},
		{"it was", start + "did replaced overload; ohm overload 0.2 cold; missing", nil, []string{"the new overload read"}, nil, "", "common practice"},
	})
}

// What was seen is told no more exactly than it was typed: common practice.
func TestSeenIsToldAsTyped(t *testing.T) {
	for line, not := range map[string]string{
		"saw evap fan not running": "still with", "saw no restriction": "hiss", "saw compressor hot": "hand", "saw condenser cold": "room", "saw starts after wait": "ten minutes", "saw breaker holds": "connected",
	} {
		checkTrade(t, []tradeCase{{line, "unit fridge; " + line, []string{"Seen: "}, []string{not}, nil, "", "common practice"}})
	}
	checkTrade(t, []tradeCase{
		{"the door switch is asked about", "unit fridge; saw evap fan not running", []string{"stands still; with the door open that tells something only while its switch is held in"}, nil, nil, "", "common practice"},
		{"no complaint is heard", "unit fridge; fault blinks oddly; next", []string{"No test can be named: no listed complaint fits"}, []string{"Nothing is left"}, nil, "", "common practice"},
	})
}
