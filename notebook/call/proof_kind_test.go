package call

import (
	"strings"
	"testing"
	"time"
)

// What is wanted by the kind of work and of appliance, beside or without a complaint:
// common practice.
func TestProofByKind(t *testing.T) {
	const (
		flame, heat, tight, leakage = "a flame seen", "the temperature it reaches", "every gas joint opened is tight", "leakage of microwaves"
		odd                         = "fault door will not shut"
	)
	for _, x := range []struct{ lines, wanted, not string }{
		{"unit gas range; " + odd + "; did new ignitor", flame + "; " + heat, tight},
		{"unit gas range; " + odd + "; did replaced oven safety valve", flame + "; " + heat + "; " + tight, ""},
		{"unit gas range; fault oven wont lite; did new igniter", flame + "; " + heat, ""},
		{"unit gas range; " + odd + "; did replaced lamp", flame + "; " + heat, tight},
		{"unit gas dryer; fault drum does not turn; did new belt, new igniter", flame, heat},
		{"unit gas dryer; " + odd + "; did cleaned flame sensor", flame + "; " + heat, ""},
		{"unit gas dryer; fault drum does not turn; did new belt", "the drum seen to turn", flame + "; " + heat},
		{"unit gas furnace; fault noisy; did replaced hsi", flame, ""},
		{"unit range; fault oven wont light; did new igniter", flame + "; " + heat, ""},
		{"unit range; fault burner dead; did replaced burner", proofWarms.what, flame + "; " + heat}, // no oven is complained of
		{"unit electric range; fault no heat; did cleaned pilot lamp", heat, flame},
		{"unit electric range; " + odd + "; did replaced burner element", heat, flame},
		{"unit electric dryer; " + odd + "; did new belt", "running amps", flame + "; " + heat},
		{"unit fridge; " + odd + "; did replaced lamp", "running amps", flame + "; " + heat},
		{"unit microwave; fault runs dosnt heat, loud hum; did new hv fuse", "that it heats (saw heats)", "amp motor; " + leakage},
		{"unit microwave; fault no heat; did new magnetron", "that it heats (saw heats); " + leakage, "amp heater"},
		{"unit microwave; fault keypad dead; did new keypad", "that it works", "that it heats (; " + leakage},
		{"unit heat pump split; fault no cool; did new od fan motor", "amp cond-fan; saw cond-fan runs", "amp fan"},
		{"unit heat pump split; fault no cool; did new od fan motor; saw od fan runs; amp od fan .9", "(amp cond-fan … run): 0.9 A", "saw cond-fan; amp fan"},
		{"unit heat pump split; fault no cool; did new fan motor", "amp fan; saw fan runs", "cond-fan"},
		{"unit window ac; fault no cool; did new condenser fan motor", "amp fan", "cond-fan"},
		{"unit washer; fault motor hums; did new capacitor; saw drum turns both ways", "earth", "the start seen"},
		{"unit washer; fault motor hums; did new capacitor; saw spins 1200 ok", "earth", "the start seen"},
		{"unit three phase pump; fault does not run; did new contactor; saw pump runs", "earth", "the start seen"},
		{"unit washer; fault motor hums; did new capacitor; saw drum turns by hand", "the start seen", ""},
		{"unit fridge; fault no cool; did new start device; amp defrost 3.8", "running amps (amp comp … run)", "3.8 A"},
		{"unit microwave; fault blows fuse; did replaced door switch", leakage + "; that it works", ""},
		{"unit microwave; fault runs dosnt heat; did new hv fuse; saw heats", "earth", "that it heats"},
		{"unit microwave; fault keypad dead; did new keypad; saw runs", "earth", "that it works"},
		{"unit microwave; fault runs dosnt heat; did new hv fuse; saw runs", "that it heats", ""},
		{"unit gas range; " + odd + "; did new ignitor; saw flame lights in 35 sec, blue; temp oven 350F", "earth", flame + "; " + heat},
		{"unit electric oven; fault too hot; temp set 350F; did new sensor; temp oven 352F; temp oven 348F; temp oven 351F", "earth", "holds the temperature"},
		{"unit electric oven; fault too hot; temp set 350F; did new sensor; temp oven 352F; temp oven 410F; temp oven 351F", "holds the temperature", ""},
		{"unit electric oven; fault too hot; temp set 350F; did new sensor; temp oven 352F; temp oven 351F", "holds the temperature", ""},
		{"unit electric oven; fault too hot; temp set 350F; temp oven 352F; temp oven 351F; did new sensor; temp oven 351F", "holds the temperature", ""},
		{"unit electric oven; fault too hot; did new sensor; temp oven 352F; temp oven 348F; temp oven 351F", "holds the temperature", ""},
		{"unit electric oven; fault too hot; did new sensor; saw holds 350", "earth", "holds the temperature"},
	} {
		c := New()
		for i, l := range strings.Split(x.lines, "; ") {
			if _, err := c.Apply(testDay().Add(time.Duration(i)*10*time.Minute), l); err != nil {
				t.Fatal(l, err)
			}
		}
		got := strings.Join(c.proofMissing(), "\n")
		for _, w := range strings.Split(x.wanted, "; ") {
			if !strings.Contains(got, w) {
				t.Errorf("%s: %q is not wanted:\n%s", x.lines, w, got)
			}
		}
		for _, w := range strings.Split(x.not, "; ") {
			if w != "" && strings.Contains(got, w) {
				t.Errorf("%s: %q is wanted:\n%s", x.lines, w, got)
			}
		}
	}
}

// What a microwave oven heats with is no heater that is read: common practice.
func TestNoHeaterInMicrowaves(t *testing.T) {
	for unit, wanted := range map[string]bool{"microwave": false, "electric oven": true} {
		got := strings.Join(applyAll(t, "unit "+unit, "fault no heat", "did new fuse").Record().Alerts, "\n")
		if strings.Contains(got, "ohms of the heater") != wanted || strings.Contains(got, "to its sheath") != wanted || strings.Contains(got, "thermal limit") != true {
			t.Errorf("%s: %s", unit, got)
		}
	}
}

// Work that is written down under another name than what it was found by, and work
// that is for something else: common practice.
func TestWorkIsForWhatWasFound(t *testing.T) {
	const (
		burner = "unit electric range; fault lr burner dead, others ok; "
		ac     = "unit window ac; fault not cold; "
		micro  = "unit microwave; fault blows fuse; "
		chest  = "unit chest freezer; fault clicks; "
		box    = "unit walk-in cooler; fault not cold; "
	)
	for lines, want := range map[string]string{
		burner + "saw lr socket burnt brown, terminal loose; did replaced element + recep block": "",
		burner + "saw lr socket brown; did replaced recep block":                                 "",
		burner + "saw lr socket brown; did new socket":                                           "",
		burner + "saw element receptacle burnt; did new terminal block":                          "",
		burner + "saw lr socket burnt brown; did replaced element":                               "Not mended: loose or burnt connection",
		burner + "saw lr socket arcing; did new socket":                                          "Unsafe: smoke",
		burner + "saw lr socket smells burnt; did new socket":                                    "Unsafe: smoke",
		burner + "saw lr socket burnt, smokes; did new socket":                                   "Unsafe: smoke",
		burner + "saw wall socket burnt; did new element":                                        "Unsafe: smoke",
		ac + "saw coil dirty; did washed coils":                                                  "",
		ac + "saw coil dirty; did chem washed coil":                                              "",
		ac + "saw cond dirty; did hosed off cond":                                                "",
		ac + "saw cond coil matted; did cleaned cond coil":                                       "",
		ac + "saw coil dirty, cleaned":                                                           "",
		ac + "saw cond dirty; did hosed down patio":                                              "Not mended: condenser matted",
		box + "saw door gasket torn, replaced":                                                   "",
		box + "did cleaned condenser; saw door gasket torn, replaced":                            "",
		box + "saw door gasket torn, replace; did cleaned condenser":                             "Not mended: door gasket",
		box + "saw door gasket torn, not replaced; did cleaned condenser":                        "Not mended: door gasket",
		box + "saw door gasket torn, replaced last year; did cleaned condenser":                  "Not mended: door gasket",
		micro + "ohm fuse 0.1; ohm hv fuse OL; did new hv fuse":                                  "",
		micro + "ohm fuse 0.1; did new hv fuse":                                                  "",
		micro + "ohm fuse 0.1; did new fuse":                                                     "Note: fuse was replaced",
		chest + "ohm olp 0.3 cold; ohm ptc OL cold; did new ptc + olp combo":                     "",
		chest + "ohm olp 0.3 cold; ohm ptc OL cold; did new olp":                                 "Note: olp was replaced",
		chest + "ohm olp OL cold; ohm ptc 5 cold; did new ptc + olp combo":                       "",
		burner + "saw outlet burnt brown; did new element":                                       "Unsafe: smoke",
	} {
		got := strings.Join(applyAll(t, strings.Split(lines, "; ")...).Record().Alerts, "\n")
		if want == "" && (strings.Contains(got, "Not mended") || strings.Contains(got, "Unsafe") || strings.Contains(got, "Note: ")) || !strings.Contains(got, want) {
			t.Errorf("%s: want %q, got\n%s", lines, want, got)
		}
	}
}

// Wires that leave a role without any while another has two leave the work unproved until
// they are held against the part's diagram; a relay is read by its coil and its contact.
func TestPartsOfTheProof(t *testing.T) {
	const wires = "unit fridge; fault clicks; safe; ohm A B 4.1, A C 11.8, B C 15.9; did replaced start device; wire white run; wire red start; "
	const relay = "unit fridge; fault clicks; safe; ohm relay-coil OL; part current relay; ohm relay-coil 0.5"
	for _, tt := range []struct {
		lines, point string
		wanted       bool
	}{
		{wires + "wire black run", "the wiring settled", true},
		{wires + "wire black run; saw wiring right", "the wiring settled", false},
		{wires + "wire black common", "the wiring settled", false},
		{"unit fridge; fault clicks; safe; ohm A B 4.1, A C 11.8, B C 15.9; did replaced start device; wire white run", "the wiring settled", false},
		{relay, "its relay-contact was not read", true},
		{relay + "; ohm relay-contact OL upright; ohm relay-contact 0.1 inverted", "the new start device read", false},
		{"unit fridge; fault clicks; part potential relay", "potential-coil …", true},
		{"unit fridge; fault clicks; did replaced start relay", "ohm ptc … cold", true},
	} {
		c := applyAll(t, strings.Split(tt.lines, "; ")...)
		if got := strings.Join(c.proofMissing(), "; "); strings.Contains(got, tt.point) != tt.wanted {
			t.Errorf("%s: %q, wanted %v in it: %q", tt.lines, got, tt.wanted, tt.point)
		}
	}
	c := applyAll(t, "unit fridge", "plate gas r600a", "close waiting for a part")
	if got := must(t, c, "note back again").Reply.Plain(); !strings.Contains(got, "The gas is flammable") {
		t.Errorf("opened again: %q", got)
	}
	for line, want := range map[string]string{"saw starts w hard start kit": "starts-with-kit", "saw starts w test ptc": "starts-with-test-device", "saw no start w test ptc": "no-start-with-test-device",
		"saw drive flashes 5 times": "drive-fault-shown", "saw starts and draws 120 w": "starts-and-runs"} {
		if got := strings.Join(applyAll(t, "unit fridge", "fault clicks", line).seenCodes, " "); got != want {
			t.Errorf("%s: %q, want %q", line, got, want)
		}
	}
}
