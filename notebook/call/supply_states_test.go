package call

import (
	"math"
	"slices"
	"strings"
	"testing"

	"ohmcall/calc/cause"
	"ohmcall/calc/measure"
)

// Of a pair that is judged together both were read of one state of the machine;
// what is right in one state does not contradict what is right in another. Common
// practice throughout.
func TestOneStateOfTheMachine(t *testing.T) {
	const (
		relay  = "unit refrigerator; fault clicks and does not cool; plate volts 115, hz 60, amps 1.3, lra 14, gas R-134a, start relay, run none; "
		cold   = "unit refrigerator; fault runs but does not cool; plate volts 115, amps 1.3, gas R-134a; temp room 75F; "
		cord   = relay + "saw long cord; saw clicks; volt line 114.2; volt line 84.1 start; "
		direct = cord + "saw plugged direct; volt line 118.3; volt line 115.2 start; saw starts; amp comp 1.31 run"
		open   = relay + "saw comp hot; ohm 1 2 OL, 1 3 OL, 2 3 9.8; "
	)
	checkTrade(t, []tradeCase{
		{"a trip before the repair is not of the amps behind it", relay + "amp comp 13.5 peak; trip 8s; did replaced start relay; saw starts; amp comp 12.1 peak; amp comp 1.30 run; show verdicts",
			[]string{"running amps comp | sound"}, []string{"within the plate"}, nil, "", "common practice"},
		{"a trip and its amps in the other order", relay + "trip 8s; amp comp 13.5 peak; show verdicts", []string{"overload trip | sound"}, nil, nil, "", "common practice"},
		{"the amps of a fan are not those of the protector", relay + "amp cond-fan 0.3 run; trip 8s", []string{"overload trip: cannot tell"}, nil, nil, "", "common practice"},
		{"the discharge of the empty system", cold + "psi suction -8 run, discharge 60 run; did recharged with 120 g; psi suction 1 run", []string{"one side alone"}, []string{"60 psi"}, nil, "", "common practice"},
		{"volts at rest before work on the outlet", relay + "volt line 114; did electrician renewed the outlet; volt line 115.2 start; show verdicts", nil, []string{"supply at start"}, nil, "", "common practice"},
		{"volts at rest before other work", relay + "volt line 118; did replaced start relay; volt line 112 start", []string{"supply at start: sound"}, nil, nil, "", "common practice"},

		{"bad on the cord and good direct is the proof", direct, nil, []string{"contradict"}, map[string]cause.State{"supply-weak": cause.Supported}, "mend", "common practice"},
		{"the same by another outlet", cord + "saw starts on other outlet; volt line 118.3; volt line 115.2 start; show verdicts", []string{"supply at start | sound"}, []string{"contradict"},
			map[string]cause.State{"supply-weak": cause.Supported}, "mend", "common practice"},
		{"good on the cord too", relay + "saw long cord; volt line 118; volt line 115 start; saw plugged direct", nil, []string{"contradict"},
			map[string]cause.State{"supply-weak": cause.RuledOut}, "", "common practice"},

		{"a contact in its two positions", relay + "ohm relay-contact OL upright, relay-contact 0.2 inverted", []string{"sound"}, []string{"both stand"}, nil, "", "training manual 14259, fig. 14-40"},
		{"a contact held nobody knows how", relay + "ohm relay 0.4", []string{"cannot tell", "welded if it stood upright, sound if turned over"}, []string{"supported"}, nil,
			"ohm relay-contact OL upright, relay-contact 0.2 inverted", "training manual 14259, fig. 14-40"},
		{"a contact open nobody knows how", relay + "ohm relay OL", []string{"open, right if it stood upright"}, nil, nil,
			"the relay in both positions: ohm relay-contact OL upright, relay-contact 0.2 inverted", "training manual 14259, fig. 14-40"},
		{"a contact open upright", relay + "ohm relay OL upright", []string{"half the test"}, []string{"both positions"}, nil, "now turned over", "training manual 14259, fig. 14-40"},
		{"a contact closed upright", relay + "ohm relay 0.4 upright", []string{"failed, the contact is welded"}, nil, map[string]cause.State{"start-device-failed": cause.Supported}, "", "training manual 14259, fig. 14-40"},
		{"in one position it is a jump", relay + "ohm relay-contact OL upright; ohm relay-contact 0.2 upright", []string{"both stand"}, nil, nil, "", "common practice"},
		{"a switch open and closed", "unit washer; ohm lid-switch OL open; ohm lid-switch 0.1 closed", []string{"sound"}, []string{"both stand"}, nil, "", "common practice"},
		{"a protector that has closed", open + "+50min ohm 1 2 2.3", []string{"a protector that has cooled closes (inferred)", "Wanted next: 1–3"}, []string{"Contradiction", "both stand"}, nil, "", "common practice"},
		{"all pairs read through", open + "+50min ohm 1 2 2.3; +1min ohm 1 3 7.5; roles", []string{"1 is common"}, nil, map[string]cause.State{"protector-hot": cause.Supported}, "", "common practice"},
		{"at once it is a probe that missed", open + "ohm 1 2 2.3", []string{"a probe missed its contact"}, []string{"cooled"}, nil, "", "common practice"},
		{"an outside overload that has closed", relay + "saw comp hot; ohm overload OL; +50min ohm overload 0.2", []string{"it has cooled (inferred)", "opened on heat"},
			[]string{"both stand"}, map[string]cause.State{"overload-hot": cause.Supported}, "", "common practice"},
		{"and is felt cold then", relay + "saw comp hot; ohm overload OL; +50min ohm overload 0.2; saw comp cold; next", []string{"condenser fan"},
			[]string{"contradict", "cannot both"}, map[string]cause.State{"overload-hot": cause.Supported}, "", "common practice"},
		{"an overload read cold has not closed by itself", relay + "ohm overload OL cold; +50min ohm overload 0.2 cold", []string{"both stand"}, []string{"it has cooled"}, nil, "", "common practice"},
		{"an overload read again at once", relay + "ohm overload OL; ohm overload 0.2", []string{"both stand"}, []string{"it has cooled"}, nil, "", "common practice"},
		{"an overload replaced", relay + "ohm overload OL hot; did replaced overload; +50min ohm overload 0.2", nil, []string{"it has cooled", "opened on heat"}, nil, "", "common practice"},
		{"a shell that has cooled", relay + "saw comp hot; +50min saw comp cold", nil, []string{"contradict"}, map[string]cause.State{"protector-hot": cause.Open, "overload-hot": cause.Open}, "", "common practice"},
		{"a shell that ran hot", relay + "saw comp cold; +50min saw comp hot", nil, []string{"contradict"}, nil, "", "common practice"},
		{"hot and cold at once", relay + "saw comp hot; saw comp cold", []string{"contradict"}, nil, nil, "", "common practice"},
		{"a start winding open when hot", relay + "saw comp hot; ohm 1 2 OL hot, 1 3 OL hot, 2 3 4.0 hot; +2h ohm 1 2 9.6 cold, 1 3 13.4 cold, 2 3 4.0 cold",
			[]string{"1, start, was open in entry 5 and reads through now"}, nil, map[string]cause.State{"winding-open": cause.Supported}, "", "common practice"},
		{"common open when hot is the protector", relay + "saw comp hot; ohm 1 2 OL hot, 1 3 OL hot, 2 3 13.4 hot; +2h ohm 1 2 9.6 cold, 1 3 4.0 cold, 2 3 13.4 cold",
			nil, []string{"parts when it warms"}, map[string]cause.State{"protector-hot": cause.Supported}, "", "common practice"},
		{"a probe that missed is no open winding", relay + "ohm 1 2 OL, 1 3 OL, 2 3 4.0; ohm 1 2 9.6, 1 3 13.4", nil, []string{"parts when it warms"}, nil, "", "common practice"},
		{"of a pair alone nobody knows", relay + "ohm 1 2 OL; +50min ohm 1 2 2.3", []string{"both stand"}, []string{"cooled"}, nil, "", "common practice"},
	})
	c := applyAll(t, strings.Split(direct+"; did removed the extension cord", "; ")...)
	for _, a := range c.Record().Alerts {
		for _, bad := range []string{"Contradiction", "Work for what", "the start seen", "running amps", "volts while it starts"} {
			if strings.Contains(a, bad) {
				t.Errorf("after the cord was removed: %q", a)
			}
		}
	}
	if out := c.Record().Outcome; !strings.Contains(flat(out), "supply too low") {
		t.Errorf("the cause found is %v", out)
	}
	var again *Call
	for _, l := range strings.Split(open+"+50min ohm 1 2 2.3; +1min ohm 1 3 7.5", "; ") {
		if again == nil {
			again = New()
		}
		if _, err := again.Apply(again.Clock(l, testDay), l); err != nil {
			t.Fatal(err)
		}
	}
	r := again.weigh(math.MaxInt)
	for i := range r.Standings {
		if s := &r.Standings[i]; s.Cause.Code == "protector-hot" && slices.ContainsFunc(s.Against, func(f cause.Fact) bool {
			return slices.ContainsFunc(s.For, func(g cause.Fact) bool { return g.Entry == f.Entry })
		}) {
			t.Errorf("entries both for and against: %v, %v", s.For, s.Against)
		}
	}
	for _, a := range again.Record().Alerts {
		if strings.HasPrefix(a, "Contradiction") {
			t.Error(a)
		}
	}
}

// A marking that the readings go against is said, asked and written down as that.
// Common practice.
func TestMarkingAgainstReadings(t *testing.T) {
	const at = "unit refrigerator; fault clicks; plate start ptc, run none; ohm A B 3.6, A C 10.1, B C 6.7; mark A common; "
	checkTrade(t, []tradeCase{
		{"said and asked", at + "show", nil, []string{"do not add up"}, nil, "settle which pin is common first", "common practice"},
		{"a wire is warned of", at + "wire black common", []string{"settle which pin is common before this is connected"}, nil, nil, "", "common practice"},
		{"missing", at + "missing", []string{"which pin is common: the readings add up and contradict the marking"}, []string{"that add up."}, nil, "", "common practice"},
		{"settled once the marking is struck", at + "strike 5 misread; wire black common", []string{"pin B"}, []string{"settle"}, nil, "", "common practice"},
	})
	r := applyAll(t, strings.Split(at+"wire black common", "; ")...).Record()
	if got := strings.Join(r.Alerts, "\n"); !strings.Contains(got, "Contradiction: the readings add up and contradict the marking (entries 4, 5)") || !strings.Contains(got, "In doubt: wiring: the readings") {
		t.Error(got)
	}
	if got := flat(r.Machines); !strings.Contains(got, disputes) || strings.Contains(got, "do not add up") {
		t.Error(got)
	}
	if got := flat(r.Wiring); !strings.Contains(got, disputes) {
		t.Error(got)
	}
}

// Digits that stand two or three places elsewhere are a slip likelier than a
// change: common practice.
func TestDigitsMoved(t *testing.T) {
	for _, x := range []struct{ a, b, want string }{
		{"temp freezer 3.4", "temp freezer 340", "100 times that"}, {"temp freezer 3.4F", "temp freezer 340F", "100 times that"},
		{"temp freezer -2F", "temp freezer -200F", "100 times that"}, {"temp freezer 34F", "temp freezer 0.34F", "a 100th of that"},
		{"temp oven 0.18", "temp oven 180", "1000 times that"}, {"ohm A B 3.4", "ohm A B 340", "100 times that"}, {"ohm A B 3.4", "ohm A B 3.4k", "1000 times that"},
		{"temp freezer 20F", "temp freezer 2F", ""}, {"temp freezer 3.4", "temp freezer 341", ""}, {"temp freezer 3.4F", "temp freezer 340C", ""}, {"ohm A B 3.4", "ohm A B 345", ""},
		{"temp freezer 2F", "temp freezer -200F", ""},
	} {
		c := applyAll(t, x.a)
		got := must(t, c, x.b).Reply.Plain()
		if told := strings.Contains(got, "the same digits"); told != (x.want != "") || !strings.Contains(got, x.want) {
			t.Errorf("%s, %s: %q", x.a, x.b, got)
		}
	}
}

// A doubt about the earth path, and the leads taken off it, are told; a freezer on
// its way is not only failed. Common practice; 0.2 Ω is EN 50106:2008.
func TestEarthAndCourseInTheRecord(t *testing.T) {
	checkTrade(t, []tradeCase{
		{"leads taken off", "probes 0.3; ohm earth 0.35", []string{"0.05 Ω, 0.35 Ω less 0.3 Ω of the leads"}, nil, nil, "", "common practice"},
		{"no leads declared", "ohm earth 0.05", []string{"earth: "}, []string{"less"}, nil, "", "common practice"},
	})
	for line, doubt := range map[string]bool{"ohm earth 0.19": true, "ohm earth 0.6": true, "ohm earth 0.05 test 10A": false} {
		alerts := strings.Join(applyAll(t, "fault does not cool", line).Record().Alerts, "\n")
		if strings.Contains(alerts, "In doubt: earth") != doubt {
			t.Errorf("%s: %s", line, alerts)
		}
	}
	c := New()
	for _, l := range strings.Split("unit refrigerator; fault does not cool; did cleaned condenser; +1min temp freezer 50F; +30min temp freezer 32F; +30min temp freezer 20F; +30min temp freezer 11F; +30min temp freezer 5F", "; ") {
		if _, err := c.Apply(c.Clock(l, testDay), l); err != nil {
			t.Fatal(err)
		}
	}
	if got := flat(c.Record().Verdicts); !strings.Contains(got, "on course to its target") {
		t.Error(got)
	}
}

// A heat pump in heating gives warm air out and frosts outdoors; its mode is said, or
// inferred from the air. Common practice throughout.
func TestHeatPumpThatHeats(t *testing.T) {
	const (
		hp  = "unit mini split heat pump; "
		air = "temp return 68F; temp supply 92F"
		no  = hp + "fault not heating; saw comp runs; "
	)
	checkTrade(t, []tradeCase{
		{"taken as such", hp + "fault no heat", []string{"a heat pump that does not heat"}, nil, nil, "how it is set", "common practice"},
		{"it heats", no + air, []string{"air rise: sound, 13.3 K", "taken as heating by the complaint"}, []string{"cools"}, map[string]cause.State{"reversing-stuck": cause.RuledOut, "refrigerant-low": cause.RuledOut}, "", "common practice"},
		{"it hardly heats", no + "temp return 68F; temp supply 71F", []string{"air rise: suspect", "it hardly heats"}, nil, map[string]cause.State{"reversing-stuck": cause.Open, "refrigerant-low": cause.Open, "outdoor-iced": cause.Open}, "how it is set", "common practice"},
		{"nobody says the mode", hp + "fault noisy; " + air, []string{"air rise: sound", "(inferred)", "saw set to cool changes it"}, []string{"hardly cools"}, nil, "", "common practice"},
		{"said to cool after all", hp + "fault noisy; " + air + "; saw set to cool", []string{"air split: suspect", "it hardly cools"}, nil, nil, "", "common practice"},
		{"said to heat afterwards", hp + "fault not cooling; " + air + "; saw heating mode", []string{"air rise: sound", "taken as heating by entry 5"}, nil, nil, "", "common practice"},
		{"asked to cool", hp + "fault not cooling; " + air, []string{"air split: suspect", "it hardly cools"}, nil, nil, "", "common practice"},
		{"it cools", hp + "fault noisy; temp return 78F; temp supply 59F", []string{"air split: sound"}, []string{"rise"}, nil, "", "common practice"},
		{"an air conditioner has no other mode", "unit window air conditioner; fault noisy; temp return 70F; temp supply 80F", []string{"air split: suspect"}, []string{"rise"}, nil, "", "common practice"},
		{"the outdoor fan is not the indoor one", no + "saw set to heat, outdoor coil clear; saw outdoor fan stopped", nil, nil, map[string]cause.State{"cond-fan-failed": cause.Supported, "blower-failed": cause.Open}, "", "common practice"},
		{"ice outdoors", no + "saw set to heat, filter clean; saw outdoor coil iced", []string{"outdoor coil iced over"}, nil, map[string]cause.State{"outdoor-iced": cause.Supported}, "defrost", "common practice"},
		{"blows cold", no + "saw set to heat; saw blows cold air in heating", nil, nil, map[string]cause.State{"reversing-stuck": cause.Supported}, "", "common practice"},
		{"it stands still", hp + "fault no heat; saw set to heat; saw comp not running", []string{"taken from here on as: clicks or stays silent"}, nil, nil, "", "common practice"},
		{"proved by its air", no + "saw outdoor coil iced; did replaced the defrost sensor; missing", []string{"the air rise, ten minutes after"}, nil, nil, "", "common practice"},
		{"and then proved", no + "saw outdoor coil iced; did replaced the defrost sensor; +10min " + air + "; missing", nil, []string{"the air rise"}, nil, "", "common practice"},
		{"not at once", no + "saw outdoor coil iced; did replaced the defrost sensor; +9min " + air + "; missing", []string{"the air rise", "less than ten minutes after the work (entry 5)"}, nil, nil, "", "common practice"},
		{"a resistance heater stays one", "unit wall heater; fault no heat", []string{"a heater appliance"}, []string{"heat pump"}, nil, "", "common practice"},
	})
	c := applyAll(t, "unit mini split heat pump", "fault not heating")
	if is := c.appliance(); is != c.appliance() {
		t.Error("what a heat pump is, is worked out with every question")
	}
	_, err := c.Apply(testDay(), "plate type heat pump")
	if err == nil || !strings.Contains(err.Error()+hintOf(err), "unit mini split heat pump") {
		t.Errorf("the refusal of a plate's type: %v", err)
	}
}

// Volts of legs by the names L1 to L3 are met at breaker, fuses and contactor; which
// was read was not said, so none of them is ruled out. Common practice.
func TestLostLegOfNobodyKnowsWhere(t *testing.T) {
	const lost = "unit walk-in cooler; plate volts 230, phase 3; fault does not run; volt L1 L2 231; volt L2 L3 118; volt L1 L3 116"
	checkTrade(t, []tradeCase{
		{"not said where", lost, []string{"leg L3 is lost"}, nil, map[string]cause.State{"phase-lost": cause.Supported, "leg-fuse-open": cause.Open, "pole-open": cause.Open}, "keep it off, on two legs it burns out: ohms through the appliance's fuse", "common practice"},
		{"the fuse is sound", lost + "; safe; ohm fuse 0.1", nil, nil, map[string]cause.State{"leg-fuse-open": cause.RuledOut, "pole-open": cause.Open}, "", "common practice"},
		{"fuse and contactor are sound", lost + "; safe; ohm fuse-1 0.1, fuse-2 0.1, fuse-3 0.1; saw contactor good", nil, nil, map[string]cause.State{"leg-fuse-open": cause.RuledOut, "pole-open": cause.RuledOut}, "an electrician's or the utility's", "common practice"},
		{"the fuse is open", lost + "; safe; ohm fuse OL", nil, []string{"contradict"}, map[string]cause.State{"leg-fuse-open": cause.Supported, "phase-lost": cause.RuledOut}, "fuse", "common practice"},
	})
}

// Three legs that were each read against the two others make a machine one on three
// phases, where its plate tells no type: common practice.
func TestThreeLegsAlone(t *testing.T) {
	const unit = "unit compressor; fault hums; "
	for _, x := range []struct {
		lines string
		three bool
	}{
		{unit + "volt L1 L2 230; volt L2 L3 231; volt L1 L3 12", true},
		{unit + "volt L1 L2 230, L3 L2 231, L3 L1 229", true},
		{unit + "volt T1 T2 230 run, T2 T3 231 run, T1 T3 229 run", true},
		{unit + "volt L1 L2 230; volt L2 L3 231", false},
		{unit + "volt L1 L2 230; volt L2 L3 231; volt T1 T3 229", false},
		{unit + "volt L1 L2 230; volt L2 L3 231; volt L1 L3 12; strike 5 slip", false},
		{unit + "plate type split-phase; volt L1 L2 230; volt L2 L3 231; volt L1 L3 12", false},
		{unit + "volt L1 L2 230; volt L2 L3 231; volt L1 L3 12; plate type split-phase", false},
		{unit + "volt U V 230; volt V W 231; volt U W 229", false},
		{unit + "ohm L1 L2 2.3; ohm L2 L3 2.3; ohm L1 L3 2.3", false},
		{"unit electric dryer; fault no heat; volt L1 L2 230, L1 N 115, L2 N 115", false},
	} {
		c := applyAll(t, strings.Split(x.lines, "; ")...)
		if got := c.onThreePhases(); got != x.three {
			t.Errorf("%s: on three phases %v", x.lines, got)
		}
		if got := len(c.verdictsWith("phases-sound", "phase-lost", "leg-lost", "legs-sound")) > 0; got != x.three {
			t.Errorf("%s: its legs are judged %v", x.lines, got)
		}
	}
	checkTrade(t, []tradeCase{
		{"a leg lost", unit + "volt L1 L2 230; volt L2 L3 12; volt L1 L3 12", []string{"taken as on three phases (inferred)", "leg L3 is lost"}, nil, map[string]cause.State{"phase-lost": cause.Supported}, "keep it off", "common practice"},
	})
}

// A new sensor has the temperature of where it came from until it has taken on that of
// its place, and a sensor of one space not that of another: common practice; the ohms
// by IEC 60539-1.
func TestSensorHasATemperatureOfItsOwn(t *testing.T) {
	const cold = "unit refrigerator; fault not cooling; plate r25 10k, beta 3977; safe; temp freezer 20F; "
	checkTrade(t, []tradeCase{
		{"replaced and read at once", cold + "ohm sensor 120k; did replaced the sensor; ohm sensor 9.8k", []string{"cannot tell", "that of entry 5 is of another place or of before the work", "ohm sensor … ice"}, []string{"failed", "wrong"}, nil, "", "common practice"},
		{"its temperature written behind it", cold + "ohm sensor 120k; did replaced the sensor; ohm sensor 9.9k at 25C", []string{"sound, 9.9 kΩ is right at 25 °C"}, []string{"wrong", "before the work"}, nil, "", "IEC 60539-1"},
		{"its temperature read anew", cold + "ohm sensor 120k; did replaced the sensor; temp freezer 20F; ohm sensor 48k", []string{"sound, "}, []string{"before the work"}, nil, "", "IEC 60539-1"},
		{"the old one is still held against it", cold + "ohm sensor 120k", []string{"failed"}, []string{"before the work"}, nil, "", "IEC 60539-1"},
		{"of another space", cold + "ohm fridge-sensor 27k", []string{"cannot tell", "another place"}, []string{"failed"}, nil, "", "common practice"},
		{"of its own space", cold + "ohm freezer-sensor 120k", []string{"failed"}, nil, nil, "", "IEC 60539-1"},
		{"of a space that was read before another", cold + "temp fridge 50F; ohm freezer-sensor 120k", []string{"failed"}, nil, nil, "", "IEC 60539-1"},
		{"platinum", "unit electric oven; fault stays cold; plate r0 1000; temp oven 350F; ohm sensor 1500; did replaced the sensor; ohm sensor 1085", []string{"before the work"}, []string{"failed"}, nil, "", "IEC 60751"},
	})
}

// A sensor is held against the temperature of its own place alone: of pipes, coils and
// moving air only where its name says so. Common practice; the ohms by IEC 60539-1.
func TestSensorHasAPlaceOfItsOwn(t *testing.T) {
	const fridge = "unit fridge; fault not cooling; plate r25 5k, beta 3977; safe; "
	checkTrade(t, []tradeCase{
		{"of no place, and two cold ones", fridge + "temp freezer -15C; temp fridge 5C; ohm ntc 40k", []string{"cannot tell", "either of two", "freezer-sensor"}, []string{"failed"}, nil, "", "common practice"},
		{"a pipe read between does not hide them", fridge + "temp freezer -15C; temp fridge 5C; temp suction 2C; ohm ntc 40k", []string{"cannot tell", "either of two"}, []string{"failed"}, nil, "", "common practice"},
		{"one of them twice", fridge + "temp fridge 5C; temp fridge 5C; ohm ntc 13k", []string{"sound, "}, []string{"failed"}, nil, "", "IEC 60539-1"},
		{"its place named", fridge + "temp freezer -15C; temp fridge 5C; ohm freezer-sensor 40k", []string{"sound, "}, []string{"failed"}, nil, "", "IEC 60539-1"},
		{"on the evaporator", fridge + "temp freezer -15C; ohm evap-sensor 60k", []string{"cannot tell", "another place"}, []string{"failed"}, nil, "", "common practice"},
		{"on the coil, which was read", fridge + "temp evap -5C; ohm coil-sensor 22.0k", []string{"NTC sensor coil-sensor: sound"}, nil, nil, "", "IEC 60539-1"},
		{"a sensor on the coil is no coil", fridge + "ohm coil-sensor OL", []string{"NTC sensor"}, []string{"coil-open"}, nil, "", "common practice"},
		{"the air of a furnace", "unit furnace; fault no heat; plate r25 10k, beta 3977; temp supply 50C; temp return 20C; ohm sensor 3.7k", []string{"cannot tell", "another place"}, []string{"failed"}, nil, "", "common practice"},
		{"a pressure at rest keeps the room's", "unit refrigerator; fault not cooling; plate gas R-134a; temp room 22C; did found it unplugged; psi suction 73 standing",
			[]string{"R-134a saturates at 73.5 psi at 22 °C"}, []string{"needed"}, nil, "", "Tillner-Roth & Baehr, J. Phys. Chem. Ref. Data 23 (1994) 657, as the judge names it"},
	})
}

// One fuse that is whole says nothing of those of the other legs, and what was lost
// while a fuse was open is read again once it was replaced. Common practice.
func TestFuseOfEachLeg(t *testing.T) {
	const (
		legs = "volt L1 L2 401, L2 L3 228, L1 L3 174"
		lost = "unit three-phase conveyor motor; fault hums; plate volts 400, amps 11.2; " + legs
		open = lost + "; ohm fuse1 0.1, fuse2 0.1, fuse3 OL; did replaced fuse 3; ohm fuse3 0.1"
	)
	checkTrade(t, []tradeCase{
		{"one of three", lost + "; ohm fuse1 0.1", nil, nil, map[string]cause.State{"leg-fuse-open": cause.Open, "phase-lost": cause.Supported}, "", "common practice"},
		{"two of three", lost + "; ohm fuse1 0.1, fuse2 0.1", nil, nil, map[string]cause.State{"leg-fuse-open": cause.Open}, "", "common practice"},
		{"each", lost + "; ohm fuse1 0.1, fuse2 0.1, fuse3 0.1", nil, nil, map[string]cause.State{"leg-fuse-open": cause.RuledOut, "phase-lost": cause.Supported}, "", "common practice"},
		{"each by its leg", lost + "; ohm fuse-L1 0.1, fuse-L2 0.1, fuse-L3 0.1", nil, nil, map[string]cause.State{"leg-fuse-open": cause.RuledOut}, "", "common practice"},
		{"one of them open", lost + "; ohm fuse1 0.1, fuse2 0.1, fuse3 OL", nil, nil, map[string]cause.State{"leg-fuse-open": cause.Supported, "phase-lost": cause.RuledOut}, "", "common practice"},
		{"replaced and read, the legs not yet", open, nil, []string{"Cause supported"}, nil, "", "common practice"},
		{"and lost again", open + "; " + legs, nil, nil, map[string]cause.State{"leg-fuse-open": cause.RuledOut, "phase-lost": cause.Supported}, "", "common practice"},
		{"and there again", open + "; volt L1 L2 401, L2 L3 399, L1 L3 402", nil, nil, map[string]cause.State{"phase-lost": cause.RuledOut}, "", "common practice"},
		{"the motor is no compressor", lost + "; did replaced fuse 3; missing", nil, []string{"amp comp"}, nil, "", "common practice"},
	})
	if c := applyAll(t, strings.Split(open+"; "+legs, "; ")...); slices.ContainsFunc(c.facts(math.MaxInt), func(f cause.Fact) bool { return f.Code == "phase-lost" && f.Entry < 8 }) {
		t.Error("what was read again after the repair counts from before it")
	}
}

// Of several elements the one that the complaint is about is cured by its own heat,
// and proposed by its name; what another heats proves the supply. Common practice.
func TestElementOfTheComplaint(t *testing.T) {
	const bake = "unit electric oven; fault bake does not work, broil ok; "
	checkTrade(t, []tradeCase{
		{"proposed by its name", bake + "next", []string{"ohm bake"}, nil, nil, "ohm bake", "common practice"},
		{"the other way round", "unit electric oven; fault broil not working but bake is fine; next", []string{"ohm broil"}, nil, nil, "ohm broil", "common practice"},
		{"the other heats", bake + "saw broil works", nil, nil, map[string]cause.State{"no-supply": cause.RuledOut, "leg-missing": cause.RuledOut, "heater-failed": cause.Open}, "ohm bake", "common practice"},
		{"a thermal cutout is one part", "unit electric dryer; fault no heat; safe; ohm thermal cutout OL", []string{"limit thermal-cutout: failed", "Cause supported: thermal limit"}, []string{"third pin"}, map[string]cause.State{"limit-open": cause.Supported}, "", "common practice"},
		{"a cut-out", "unit electric dryer; fault no heat; safe; ohm cut-out 0.1", []string{"sound"}, nil, nil, "", "common practice"},
	})
	for saw, want := range map[string]string{"saw bake works": "heats-up", "saw broil works": "other-heats", "saw other elements heat": "other-heats"} {
		c := applyAll(t, strings.Split(bake+"safe; ohm bake OL; did replaced the bake element; "+saw, "; ")...)
		if !slices.ContainsFunc(c.facts(math.MaxInt), func(f cause.Fact) bool { return f.Code == want }) {
			t.Errorf("%s is no %s: %v", saw, want, c.facts(math.MaxInt))
		}
	}
}

// A value read hot is told at 25 °C with the digits that it had, and a relay read open
// without a word of how it stood is not said to have stood upright.
func TestToldNoMoreThanWasRead(t *testing.T) {
	for _, x := range []struct{ read, res, want float64 }{{9.8, 0.1, 8.2}, {10.2, 0.1, 8.6}, {10.24, 0.01, 8.59}, {1020, 1, 855}, {12, 1, 10}} {
		if v := fromHot(measure.Within(x.read, x.read/25), x.res); math.Abs(v.X-x.want) > 1e-9 || v.Lo >= v.X || v.Hi <= v.X {
			t.Errorf("%g Ω read hot is %+v at 25 °C, want %g", x.read, v, x.want)
		}
	}
	for line, want := range map[string]string{
		"ohm relay OL":         "open, right if it stood upright",
		"ohm relay OL upright": "open upright, as it must be",
	} {
		if got := must(t, applyAll(t, "unit fridge", "fault clicks, no cool"), line).Reply.Plain(); !strings.Contains(got, want) {
			t.Errorf("%s: %q, want %q", line, got, want)
		}
	}
}

// A shell that was cold before a try that trips rules nothing out that opened in it;
// one that is felt cold after it does (common practice).
func TestColdBeforeATryRulesNothingOut(t *testing.T) {
	lines := []string{"unit fridge", "fault clicks and does not start", "mark A common"}
	read := []string{"ohm A B OL, A C OL, B C 8.0", "ohm A case OL, B case OL, C case OL"}
	for _, x := range []struct {
		felt  []string
		mends bool
	}{
		{[]string{"saw comp cold", "trip 8s"}, false},
		{[]string{"saw comp cold", "amp comp 9 run"}, false},
		{[]string{"saw comp cold", "saw hums"}, false},
		{[]string{"trip 8s", "+120min saw comp cold"}, true},
		{[]string{"saw comp cold"}, false}, // a rotor that stands may have opened it a minute ago
		{[]string{"safe unplugged", "saw comp cold"}, false},
		{[]string{"safe unplugged", "+40min saw comp cold"}, true},
		{[]string{"safe unplugged since yesterday", "saw comp cold"}, true},
		{[]string{"note it was off all night", "saw comp cold"}, true},
		{[]string{"note it was off all night", "saw hums", "saw comp cold"}, false},
		{[]string{"note dead since yesterday", "saw comp cold"}, false},
		{[]string{"note unplugged since 10 min", "saw comp cold"}, false},
	} {
		c := New()
		for _, l := range slices.Concat(lines, x.felt, read) {
			if _, err := c.Apply(c.Clock(l, testDay), l); err != nil {
				t.Fatal(err)
			}
		}
		got := must(t, c, "next").Reply.Plain()
		if mends := strings.Contains(got, "condemns the machine") || strings.Contains(got, "replace it or decide"); mends != x.mends {
			t.Errorf("%q: %q", x.felt, got)
		}
	}
}
