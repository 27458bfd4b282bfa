package call

import (
	"strings"
	"testing"

	"ohmcall/calc/cause"
	"ohmcall/calc/caution"
)

// What was seen of a danger stands where a supervisor looks until something shows
// that it is gone; work alone may have been for something else: common practice.
func TestAlarms(t *testing.T) {
	const gone = ", and nothing since shows that it is gone"
	for _, x := range []struct {
		lines []string
		want  string
	}{
		{[]string{"fault shock from door"}, "the complaint speaks of it: somebody felt a shock from its metal (entry 1)" + gone},
		{[]string{"fault shock from door", "saw shock"}, "somebody felt a shock from its metal (entry 2)" + gone},
		{[]string{"fault no heat", "saw smoke", "saw gas smell"}, "a smell of gas (entry 3)" + gone + "; smoke, sparks or a smell of burning (entry 2)" + gone},
		{[]string{"fault no heat", "saw smoke", "strike 2 slip"}, ""},
		{[]string{"fault no heat", "saw smoke", "did replaced bake element"}, "smoke, sparks or a smell of burning (entry 2)" + gone},
		{[]string{"fault no heat", "saw smoke", "did replaced bake element", "saw no smoke"}, ""},
		// An aired room smells of nothing; a leak test holds.
		{[]string{"fault smells of gas", "saw no gas smell"}, "the complaint speaks of it: a smell of gas (entry 1)" + gone},
		{[]string{"fault smells of gas", "saw no gas smell", "saw gas leak test good"}, ""},
		{[]string{"fault shock from door", "did tightened the earth", "ohm earth 0.05"}, "the complaint speaks of it: somebody felt a shock from its metal (entry 1)" + gone},
		// An ohm-meter cannot tell insulation: a tester can, or hardly any volts beside it.
		// Each load that has a reading, or is asked for, counts.
		{[]string{"fault shock from door", "ohm A case OL", "ohm heater case OL", "did tightened the earth", "ohm earth 0.05"}, "the complaint speaks of it: somebody felt a shock from its metal (entry 1)" + gone},
		{[]string{"fault shock from door", "ohm A case OL", "ohm heater case OL", "did tightened the earth", "ohm earth 0.05", "volt earth case 0.2 run"}, ""},
		{[]string{"fault shock from door", "ohm A case 300M test 500V", "ohm heater case 300M test 500V", "did tightened the earth", "ohm earth 0.05"}, ""},
		{[]string{"fault shock from door", "ohm heater case 300M test 500V", "did tightened the earth", "ohm earth 0.05"}, "the complaint speaks of it: somebody felt a shock from its metal (entry 1)" + gone},
		{[]string{"unit washer", "fault shocks", "ohm earth 0.05", "ohm heater case OL"}, "the complaint speaks of it: somebody felt a shock from its metal (entry 2)" + gone},
		{[]string{"unit washer", "fault shocks", "ohm earth 0.05", "ohm heater case OL", "ohm A B 4.1, B C 5.2, A C 9.3", "ohm A case OL, B case OL"}, "the complaint speaks of it: somebody felt a shock from its metal (entry 2)" + gone},
		{[]string{"unit washer", "fault shocks", "ohm earth 0.05", "ohm heater case OL", "ohm A B 4.1, B C 5.2, A C 9.3", "ohm A case OL, B case OL", "volt earth case 0.2 run"}, "the complaint speaks of it: somebody felt a shock from its metal (entry 2)" + gone},
		{[]string{"unit washer", "fault shocks", "ohm earth 0.05", "ohm heater case OL", "ohm A B 4.1, B C 5.2, A C 9.3", "ohm A case OL, B case OL, C case OL", "volt earth case 0.2 run"}, ""},
		{[]string{"unit washer", "fault shocks", "ohm earth 0.05", "saw no heater", "ohm A case 300M test 500V"}, ""},
		{[]string{"unit washer", "fault shocks", "ohm earth 0.05", "ohm A case 300M test 500V", "ohm heater case 300M test 500V", "ohm heater2 25"}, "the complaint speaks of it: somebody felt a shock from its metal (entry 2)" + gone},
		{[]string{"unit electric water heater", "fault shocks", "ohm earth 0.05", "ohm heater case 300M test 500V"}, ""},
		{[]string{"unit washer", "fault no spin", "note client gets a shock", "ohm earth 0.05", "ohm heater case OL", "volt earth case 0.2 run"}, "somebody felt a shock from its metal (entry 3)" + gone},
		// That none is felt at one moment shows nothing; earth and insulation, read since, do.
		{[]string{"fault shock from door", "did dried the plug", "saw no shock"}, "the complaint speaks of it: somebody felt a shock from its metal (entry 1)" + gone},
		{[]string{"note client gets a shock", "saw no shock", "did replaced plug"}, "somebody felt a shock from its metal (entry 1)" + gone},
		{[]string{"ohm A case OL", "saw shock", "ohm earth 0.05"}, "somebody felt a shock from its metal (entry 2)" + gone},
		{[]string{"saw shock", "saw no heater", "ohm A case OL", "ohm earth 0.05", "volt earth case 0.2 run"}, ""},
		{[]string{"saw shock", "ohm earth 0.05", "volt earth case 0.2 run"}, "somebody felt a shock from its metal (entry 1)" + gone},
		// Smoke that is not there now may be so for want of power: its place is mended, or
		// the terminals were looked at.
		{[]string{"fault no heat", "saw smoke", "saw no smoke"}, "smoke, sparks or a smell of burning (entry 2)" + gone},
		{[]string{"fault no heat", "did replaced bake element", "saw smoke", "saw no smoke"}, "smoke, sparks or a smell of burning (entry 3)" + gone},
		{[]string{"fault no heat", "saw smoke", "saw terminals tight", "saw no smoke"}, ""},
		// What was burnt and is renewed is gone, when it is the same and nothing smoked.
		{[]string{"unit window ac", "fault no cool", "saw burnt terminal block", "did replaced terminal block"}, ""},
		{[]string{"unit window ac", "fault no cool", "saw terminal block burnt at L1", "did new terminal block and wires"}, ""},
		{[]string{"unit window ac", "fault no cool", "saw burnt terminal block, burnt plug", "did replaced terminal block", "did replaced plug"}, ""},
		{[]string{"unit window ac", "fault no cool", "saw burnt terminal block, burnt plug", "did replaced terminal block"}, "smoke, sparks or a smell of burning (entry 3)" + gone},
		{[]string{"unit window ac", "fault no cool", "saw burnt terminal block", "did replaced fan motor"}, "smoke, sparks or a smell of burning (entry 3)" + gone},
		{[]string{"unit window ac", "fault no cool", "saw burnt terminal block", "did cleaned terminal block"}, "smoke, sparks or a smell of burning (entry 3)" + gone},
		{[]string{"unit window ac", "fault no cool", "did replaced terminal block", "saw burnt terminal block"}, "smoke, sparks or a smell of burning (entry 4)" + gone},
		{[]string{"unit window ac", "fault no cool", "saw burnt terminal block", "did replaced terminal block", "strike 4 slip"}, "smoke, sparks or a smell of burning (entry 3)" + gone},
		{[]string{"unit window ac", "fault no cool", "saw smoke", "saw burnt terminal block", "did replaced terminal block"}, "smoke, sparks or a smell of burning (entry 4)" + gone},
		{[]string{"unit window ac", "fault no cool", "saw burnt terminal block, smells burnt", "did replaced terminal block"}, "smoke, sparks or a smell of burning (entry 3)" + gone},
		{[]string{"unit window ac", "fault no cool", "saw burnt terminal block", "did replaced terminal block", "saw sparks"}, "smoke, sparks or a smell of burning (entry 5)" + gone},
		{[]string{"unit window ac", "fault no cool", "saw burnt terminal block", "did needs a new terminal block"}, "smoke, sparks or a smell of burning (entry 3)" + gone},
		// What is cracked stays so at zero ppm; an alarm may have been a false one.
		{[]string{"unit gas furnace", "fault no heat", "saw heat exchanger cracked", "saw no co"}, "what makes or spills carbon monoxide, or a warning of it (entry 3)" + gone},
		{[]string{"unit gas furnace", "fault no heat", "saw heat exchanger cracked", "saw co alarm", "saw no co"}, "what makes or spills carbon monoxide, or a warning of it (entry 4)" + gone},
		{[]string{"unit gas furnace", "fault no heat", "saw heat exchanger cracked", "did replaced heat exchanger", "saw spill test good, co 0 ppm"}, ""},
		// No monoxide at one moment may be for want of a fire: the flue is tested as well.
		{[]string{"unit gas furnace", "fault no heat", "saw co alarm", "saw no co"}, "what makes or spills carbon monoxide, or a warning of it (entry 3)" + gone},
		{[]string{"unit gas furnace", "fault no heat", "saw co alarm", "saw spill test good"}, "what makes or spills carbon monoxide, or a warning of it (entry 3)" + gone},
		{[]string{"unit gas furnace", "fault no heat", "saw co alarm", "saw spill test good", "saw co meter 0 ppm in the kitchen"}, ""},
		{[]string{"unit gas furnace", "fault no heat", "saw co alarm", "did cleaned flue, spill test passed", "note CO 0 ppm after repair"}, ""},
		{[]string{"unit gas furnace", "fault no heat", "saw co alarm", "note spill test good, co 30 ppm"}, "what makes or spills carbon monoxide, or a warning of it (entry 4)" + gone},
		{[]string{"unit refrigerator", "fault warm", "note co alarm went off", "saw co 0 ppm"}, ""},
		// A leak test in plain words counts as seen, behind the work that it is of.
		{[]string{"unit gas range", "fault no heat", "saw gas leak", "did leak test with soap, no bubbles"}, ""},
		{[]string{"unit gas range", "fault no heat", "saw gas leak", "did tightened the union, leak test good"}, ""},
		{[]string{"unit gas range", "fault no heat", "saw gas leak", "note soap tested all joints: tight"}, ""},
		{[]string{"unit gas range", "fault no heat", "saw gas smell", "close leak found and fixed, leak test good"}, ""},
		{[]string{"unit refrigerator", "fault warm", "plate gas R-600a", "saw leak found", "did brazed the joint, leak test clean"}, ""},
		{[]string{"unit gas range", "fault no heat", "saw gas leak", "did leak test good, then tightened the union"}, "fuel gas leaks (entry 3)" + gone},
		{[]string{"unit gas range", "fault no heat", "saw gas leak", "note leak test not good"}, "fuel gas leaks (entry 3)" + gone},
		{[]string{"unit gas range", "fault no heat", "saw gas leak", "note needs a leak test, burner good"}, "fuel gas leaks (entry 3)" + gone},
		{[]string{"unit gas range", "fault no heat", "saw gas leak", "did tightened the union, still leaks gas, leak test good later"}, "fuel gas leaks (entry 4)" + gone},
		{[]string{"unit gas range", "fault no heat", "saw gas leak", "did tightened the union"}, "fuel gas leaks (entry 3)" + gone},
		// What can hurt and was mended in the same words is gone.
		{[]string{"unit washer", "fault no spin", "did cord cut, copper showing; fitted new cord"}, ""},
		{[]string{"unit washer", "fault no spin", "note ground wire loose, tightened it"}, ""},
		{[]string{"unit washer", "fault no spin", "note copper showing, fitted new pump"}, "something that can hurt whoever is near (entry 3)" + gone},
		{[]string{"unit washer", "fault no spin", "note client gets a shock, replaced the cord"}, "somebody felt a shock from its metal (entry 3)" + gone},
		// An oven whose door does not stop its waves: 21 CFR 1030.10(c).
		{[]string{"unit microwave", "fault runs with door open"}, "the complaint speaks of it: microwaves can come out of the oven (entry 2)" + gone},
		{[]string{"unit microwave", "fault no heat", "saw runs with the door open", "saw stops when door opens"}, "microwaves can come out of the oven (entry 3)" + gone},
		{[]string{"unit microwave", "fault no heat", "did replaced door switch, still runs with the door open"}, "microwaves can come out of the oven (entry 3)" + gone},
		{[]string{"unit microwave", "fault no heat", "saw runs with the door open", "did replaced door switch", "saw stops when door opens", "saw leakage test good"}, ""},
		{[]string{"unit dryer", "fault no heat", "saw runs with door open"}, "it runs with its door or lid open (entry 3)" + gone},
		{[]string{"unit dryer", "fault no heat", "saw runs with door open", "did replaced door switch", "saw stops when door opens"}, ""},
		{[]string{"unit refrigerator", "fault warm", "saw runs with door open"}, ""},
		{[]string{"unit washer", "fault no spin", "note no ground at the outlet"}, "the outlet has no earth, or its line and neutral are swapped (entry 3)" + gone},
		{[]string{"unit washer", "fault no spin", "saw reversed polarity", "saw outlet wired right"}, ""},
		{[]string{"fault shock from door", "ohm earth 0.05", "saw shock"}, "somebody felt a shock from its metal (entry 3)" + gone},
		{[]string{"fault no heat", "did replaced bake element", "saw smoke"}, "smoke, sparks or a smell of burning (entry 3)" + gone},
		{[]string{"fault no heat", "saw no smoke"}, ""},
		// The words that bring a caution are the finding too.
		{[]string{"unit dryer", "fault no heat", "saw gave me a shock"}, "somebody felt a shock from its metal (entry 3)" + gone},
		{[]string{"unit dryer", "fault no heat", "saw customer got a tingle from the door"}, "somebody felt a shock from its metal (entry 3)" + gone},
		{[]string{"unit gas range", "fault no heat", "saw i smell gas"}, "a smell of gas (entry 3)" + gone},
		// A shut cock and an aired room prove nothing of a leak; a leak test does.
		{[]string{"unit gas cooktop", "fault no flame", "saw gas leak at fitting"}, "fuel gas leaks (entry 3)" + gone},
		{[]string{"unit gas oven", "fault no heat", "saw leak found", "saw no gas smell"}, "fuel gas leaks (entry 3)" + gone},
		{[]string{"unit gas oven", "fault no heat", "saw leak found", "saw gas leak test good"}, ""},
		{[]string{"unit gas oven", "fault no heat", "saw gas smell", "saw gas leak test good"}, ""},
		// A leak of refrigerant is a danger where it burns: ASHRAE 34, classes A2L to A3 (from memory).
		{[]string{"unit refrigerator", "fault warm", "plate gas R-600a", "saw leak found"}, "a leak detector or bubbles showed a leak (entry 4)" + gone},
		{[]string{"unit refrigerator", "fault warm", "plate gas R-600a", "saw gas leak"}, "a leak detector or bubbles showed a leak (entry 4)" + gone},
		{[]string{"unit refrigerator", "fault warm", "plate gas R-600a", "saw leak found", "did mended leak, recharged"}, "a leak detector or bubbles showed a leak (entry 4)" + gone},
		{[]string{"unit refrigerator", "fault warm", "plate gas R-600a", "saw leak found", "did mended leak, recharged", "saw no leak found"}, ""},
		{[]string{"unit refrigerator", "fault warm", "plate gas R-134a", "saw leak found"}, ""},
		{[]string{"unit gas furnace", "fault no heat, CO alarm went off"}, "the complaint speaks of it: what makes or spills carbon monoxide, or a warning of it (entry 2)" + gone},
		{[]string{"unit gas furnace", "fault no heat", "saw heat exchanger cracked"}, "what makes or spills carbon monoxide, or a warning of it (entry 3)" + gone},
		// Volts on the metal: IEC 61140 (from memory).
		{[]string{"unit washer", "fault no spin", "volt case neutral 118"}, "volts that can kill stand on the bare metal (entry 3)" + gone},
		{[]string{"unit washer", "fault no spin", "volt cabinet ground 64"}, "volts that can kill stand on the bare metal (entry 3)" + gone},
		{[]string{"unit washer", "fault no spin", "volt earth case 64", "volt earth case 0.2"}, ""},
		{[]string{"unit washer", "fault no spin", "volt earth case 64", "safe", "volt earth case 0.2"}, "volts that can kill stand on the bare metal (entry 3)" + gone},
		{[]string{"unit washer", "fault no spin", "volt earth case 64", "safe", "volt earth case 0.2 run"}, ""},
		{[]string{"unit washer", "fault no spin", "volt line case 118"}, ""},
	} {
		c := applyAll(t, x.lines...)
		var texts []string
		for _, a := range c.alarms() {
			texts = append(texts, a.text)
		}
		if got := strings.Join(texts, "; "); got != x.want {
			t.Errorf("%v: %q, want %q", x.lines, got, x.want)
		}
		first, _, _ := strings.Cut(x.want, "; ")
		r := c.Record()
		if x.want != "" && (r.Alerts[0] != "Unsafe: "+first || r.Header.Result != "unsafe") {
			t.Errorf("%v: %q stands first, want %q; the result is %s", x.lines, r.Alerts[0], first, r.Header.Result)
		}
	}
}

// Under power while gas that can burn was found: common practice.
func TestSparkingIsToldOf(t *testing.T) {
	const told = "under power while gas that can burn was found and not shown to be gone, entries 4, 5"
	c := applyAll(t, "unit gas oven", "fault no heat", "saw gas smell", "volt line 118", "saw igniter glows", "saw gas leak test good", "volt line 118")
	if got := strings.Join(c.doubts(), "; "); !strings.Contains(got, told) {
		t.Errorf("%q does not hold %q", got, told)
	}
	// A cock shut for safety is no cause.
	c = applyAll(t, "unit gas oven", "fault no heat", "saw gas smell", "saw gas off")
	if got := c.Record().Header.Cause; got != "" {
		t.Errorf("%q was found", got)
	}
}

// Volts near zero prove a unit dead where it is fed, and while nothing calls:
// a control circuit, an open switch or a conductor that is at zero anyhow does
// not (common practice).
func TestLowVoltsOfALiveMachineProveNothing(t *testing.T) {
	for line, dead := range map[string]bool{"volt R C 24.6": false, "volt N case 0.4": false, "volt door-switch 0.2 run": false,
		"volt N earth 0.6 run": false, "volt comp 0.3 run": false, "volt line 0.3": true, "volt comp 0.2": true, "volt L1 L2 0.4": true} {
		c := applyAll(t, "unit refrigerator", "plate volts 120", "volt line 119 run", line)
		got := must(t, c, "ohm A B 12").Reply.Plain()
		if strings.Contains(got, "prove it dead") == dead {
			t.Errorf("after %q it counts as dead: %v, want %v", line, !dead, dead)
		}
	}
}

// Whatever brings the caution of a danger makes the record unsafe.
func TestDangersToldStand(t *testing.T) {
	for _, line := range []string{"saw smelled gas", "saw smell gas", "saw live case", "saw caught fire", "fault tenant smelled gas", "fault bitten by the door", "fault got zapped"} {
		if h := applyAll(t, line).Record().Header; h.Result != "unsafe" {
			t.Errorf("%s: %s", line, h.Result)
		}
	}
}

// A danger told of in passing counts as seen, in whatever line it stands; words that
// only sound like one, or say that it is gone, do not: common practice.
func TestDangersToldInPassing(t *testing.T) {
	for line, want := range map[string]string{
		"note faint smell of gas at the valve":            "gas-smell",
		"did tightened union, still smells of gas":        "gas-smell",
		"left running, smells of gas":                     "gas-smell",
		"close waits for a valve, smell of gas at union":  "gas-smell",
		"note customer felt a tingle at the lid":          "shock",
		"close no fault found, metal live":                "shock",
		"note smoke from the motor":                       "smoke",
		"note plug melted":                                "smoke",
		"saw lint fire inside":                            "smoke",
		"saw outlet scorched":                             "smoke",
		"saw CO 85 ppm in supply":                         "co",
		"note heat exchanger cracked, CO 60ppm":           "co",
		"saw crack in heat exchanger":                     "co",
		"saw flame rollout switch tripped":                "co",
		"saw flue pipe disconnected":                      "co",
		"saw yellow flames":                               "co",
		"saw bubbles at union":                            "gas-leak",
		"close unsafe, do not use":                        "called-unsafe",
		"close red tagged":                                "called-unsafe",
		"note unit is not safe to use":                    "called-unsafe",
		"saw metal live":                                  "shock",
		"saw case live, 90V to earth":                     "shock",
		"note smells like rotten eggs":                    "gas-smell",
		"note propane smell":                              "gas-smell",
		"note smelt gas on arrival":                       "gas-smell",
		"note soap test shows bubbles at the union":       "gas-leak",
		"note smells like something burning":              "smoke",
		"note smouldering lint in the dryer":              "smoke",
		"note wire nut melted":                            "smoke",
		"note it bit me when I touched it":                "shock",
		"note cabinet live":                               "shock",
		"note furnace makes us dizzy":                     "co",
		"close unit condemned, disconnected":              "called-unsafe",
		"close unit condemned and unsafe, not worth it":   "called-unsafe",
		"note customer smokes":                            "",
		"note customer was shocked at the price":          "",
		"note tingling noise from bottles in the door":    "",
		"note he smelled gas once last year":              "",
		"note smoked salmon left in the crisper":          "",
		"note CO detector fitted in hall, reads 0":        "",
		"note electric shock sticker on the panel":        "",
		"note unit is unsafe to move alone":               "",
		"note unsafe ladder, used my own":                 "",
		"note sewer gas smell from the standpipe":         "",
		"note no smell of gas":                            "",
		"note gas smell gone":                             "",
		"did gas leak mended and tested good":             "",
		"did replaced melted plug":                        "",
		"saw shock absorber broken":                       "",
		"saw suspension shocks worn":                      "",
		"saw shocks bad":                                  "",
		"saw sparks at igniter ok":                        "",
		"note smoke detector chirps":                      "",
		"note CO 3 ppm in the flue":                       "",
		"saw flames even and blue":                        "",
		"saw rollout switch closed":                       "",
		"note client keeps it off until it is safe again": "",
	} {
		c := applyAll(t, "unit gas furnace", "fault no heat", line)
		got := ""
		for _, a := range c.alarms() {
			got += a.code
		}
		if got != want {
			t.Errorf("%s: %q, want %q", line, got, want)
		}
		if unsafe := c.Record().Header.Result == "unsafe"; unsafe != (want != "") {
			t.Errorf("%s: unsafe %v", line, unsafe)
		}
	}
}

// A finding that does not take a danger off says what does.
func TestAbsenceSaysWhatClears(t *testing.T) {
	for line, want := range map[string]string{"saw no shock": "ohm earth", "saw no smoke": "burnt place mended", "saw no gas smell": "saw gas leak test good", "saw stops when door opens": ""} {
		c := applyAll(t, "unit gas range", "fault no heat", "saw shock", "saw smoke", "saw gas smell")
		if got := must(t, c, line).Reply.Plain(); strings.Contains(got, "does not take the danger off") != (want != "") || !strings.Contains(got, want) {
			t.Errorf("%s: %q, want %q", line, got, want)
		}
	}
}

// What is dangerous comes first in next, in whatever line it was told: the power is
// taken off, then what was live is read, before the complaint; common practice.
func TestNextBeginsWithTheDanger(t *testing.T) {
	for _, told := range []string{"note %s", "saw %s", "did tightened plug, %s", "left running, %s", "fault does not heat, %s", "close declined, %s"} {
		for words, safe := range map[string]string{
			"sparks at the plug": "", "client gets a shock": "earth path", "smells of gas": "cock shut", "co alarm went off": "burner off", "unit is unsafe": "", "outlet not grounded": "", "runs with the door open": "",
		} {
			c := applyAll(t, "unit gas dryer", "fault does not heat", strings.Replace(told, "%s", words, 1))
			first, want := must(t, c, "next").Reply.Plain(), "Next: take the power off at its source"
			if safe == "cock shut" || safe == "burner off" {
				want = "Next: leave "
			}
			if !strings.HasPrefix(first, want) {
				t.Errorf(told+": %q", words, first)
			}
			must(t, c, "safe")
			if got := must(t, c, "next").Reply.Plain(); strings.Contains(got, "take the power off") || !strings.Contains(got, safe) {
				t.Errorf(told+", safe: %q, want %q", words, got, safe)
			}
		}
	}
}

// After the power is off the earth path comes first where metal was live, then what
// can lead to it, then the complaint.
func TestNextAfterAShock(t *testing.T) {
	c := applyAll(t, "unit electric dryer", "fault no heat", "note client gets a shock", "safe")
	for _, x := range []struct{ next, line string }{
		{"Next: the earth path", "ohm earth 0.05 test 10A"}, {"Next: what can lead to the metal", "ohm heater case OL"}, {"Next: ohms of the heater", "next"},
	} {
		if got := must(t, c, "next").Reply.Plain(); !strings.HasPrefix(got, x.next) {
			t.Errorf("%q, want %q", got, x.next)
		}
		must(t, c, x.line)
	}
}

// A unit that nobody may use is unsafe, or stands in doubt until it is said why.
func TestLeftForNobody(t *testing.T) {
	for line, unsafe := range map[string]bool{
		"note do not use": true, "saw do not use": true, "left do not use": true, "left unplugged, do not use": true, "left tagged out, do not use until repaired": true, "note told client not to use it": true,
		"left out of service": true, "left red tagged": true, "left condemned": true, "note must not be used until the valve is replaced": true, "close declined, unit left do not use": true, "note do not use sign put on it": true,
		"note don't use the dryer": true, "left tagged out": false, "left unplugged and tagged": false, "left locked out": false,
		"note does not run": false, "note fans do not run": false, "note cannot be turned on": false, "note they do not use it much": false, "note we never use the dryer": false, "note it could not be run": false, "fault does not run": false, "note seems not to run": false,
		"note do not use bleach in it": false, "note told client not to use the self-clean": false, "note do not use fabric softener": false, "note food at risk of spoiling": false, "left unplugged": false, "left running": false,
	} {
		c := applyAll(t, "unit dryer", "fault no heat", line)
		r := c.Record()
		if (r.Header.Result == "unsafe") != unsafe {
			t.Errorf("%s: %s", line, r.Header.Result)
		}
		tagged := strings.HasPrefix(line, "left") && !unsafe && (strings.Contains(line, "tagged") || strings.Contains(line, "locked"))
		if got := strings.Contains(strings.Join(r.Alerts, "; "), "In doubt: left "); got != tagged {
			t.Errorf("%s: %q", line, r.Alerts)
		}
	}
}

// Every danger can be seen and shown to be gone by a finding, or is judged.
func TestDangersAreOfTheVocabulary(t *testing.T) {
	for _, a := range alarming {
		f, known := cause.Lookup(a.code)
		if !known {
			t.Errorf("%s is no finding", a.code)
		}
		for _, code := range a.cleared {
			if _, known := cause.Lookup(code); !known {
				t.Errorf("%s: %s is no finding", a.code, code)
			}
		}
		if _, ok := caution.Text(a.caution); !ok || a.proof == "" || len(a.cleared) == 0 {
			t.Errorf("%s: caution %q, proof %q, cleared by %v", a.code, a.caution, a.proof, a.cleared)
		}
		if len(f.Words) == 0 {
			continue
		}
		unit := "unit box"
		if a.code == "runs-open" || a.code == stuckDoor {
			unit = "unit dryer"
		}
		c := applyAll(t, unit, "plate gas R-600a", "saw "+f.Words[0])
		if h := c.Record().Header; h.Result != "unsafe" {
			t.Errorf("saw %s: %s", f.Words[0], h.Result)
		}
	}
}
