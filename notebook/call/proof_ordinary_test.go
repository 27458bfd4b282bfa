package call

import (
	"slices"
	"strings"
	"testing"

	"ohmcall/calc/verdict"
)

// Calls as technicians type them on a busy day: what proves the repair is enough, and what
// no longer tells anything is not asked for; the line beside each has what still is: common
// practice.
func TestOrdinaryProof(t *testing.T) {
	const (
		fan    = "unit freezer; fault not freezing; temp freezer 24F; saw evap fan not turning; on evap-fan; ohm 1 2 OL; did replaced evaporator fan motor; ohm earth 0.08; "
		cold   = "+5min temp freezer 20F; +45min temp freezer 9F; +45min temp freezer 0F; +30min temp freezer -3F"
		gasket = "unit fridge; fault runs all the time; temp fridge 47F; saw door seal torn; "
		fridge = "; +5min temp fridge 47F; +40min temp fridge 43F; +45min temp fridge 40F; +45min temp fridge 37F"
		arm    = "unit ice maker; fault no ice 3 days; saw arm up; did moved bag, arm down; "
		timer  = "unit fridge; fault compressor dead, light on; ohm timer-motor OL; did swapped defrost timer; "
		relay  = "unit fridge; fault clicks and does not cool; plate amps 1.4; ohm ptc OL cold; did new start relay; ohm earth 0.08; amp comp 11 peak; volt line 116 start; "
	)
	for lines, want := range map[string]string{
		fan + "saw evap fan blowing good, no noise; " + cold: "",
		fan + cold:                        "the evaporator fan seen to run",
		fan + "saw evap fan blowing good": "three timed temperatures",
		fan + "saw evap fan blowing good; on evap-fan; plate amps 0.2; amp evap-fan 9.9 run; " + cold: "amps of the evaporator fan",
		gasket + "did fitted new door gasket, reset hinge" + fridge:                                   "",
		gasket + "did fitted new door gasket":                                                         "three timed temperatures",
		gasket + "did fitted new door gasket, new door heater" + fridge:                               "earth",
		gasket + "did fitted new door gasket; did new thermostat" + fridge:                            "earth",
		arm + "saw makes ice":                                  "",
		arm + "saw arm down":                                   "ice made",
		timer + "ohm earth 0.08":                               "the start seen",
		relay + "saw comp fires up; amp comp 1.2 run" + fridge: "",
		relay + "amp comp 1.2 run":                             "the new start device read",
		relay + "saw comp fires up":                            "the new start device read",
		relay + "saw comp fires up; amp comp 2.9 run":          "the new start device read",
	} {
		c := New()
		for _, l := range strings.Split(lines, "; ") {
			if _, err := c.Apply(c.Clock(l, testDay), l); err != nil {
				t.Fatalf("%s: %v", l, err)
			}
		}
		got := strings.Join(c.proofMissing(), "; ")
		if want == "" && got != "" || !strings.Contains(got, want) {
			t.Errorf("%s: %q, want %q", lines, got, want)
		}
		if m := c.missing(); want == "" && slices.ContainsFunc(m, func(s string) bool {
			return strings.HasSuffix(s, "seen") || strings.Contains(s, "arm") || strings.Contains(s, "earth")
		}) {
			t.Errorf("%s: asks besides: %q", lines, m)
		}
		if strings.HasPrefix(lines, timer) && (strings.Contains(got, "surge") || strings.Contains(got, "volts while")) {
			t.Errorf("%s: asks what a timer has no part in: %q", lines, got)
		}
	}
}

// A device that protects, an earth and a measurement stay wanted though the unit works.
func TestStillWanted(t *testing.T) {
	for lines, want := range map[string]string{
		"unit fridge; fault gives a shock; saw gasket torn; did new door gasket": "earth",
		"unit fridge; fault warm; did new door gasket":                           "earth",
		"unit fridge; fault hums and trips; ohm ptc OL cold; did new ptc; +5min temp fridge 47F; +40min temp fridge 43F; +45min temp fridge 40F; +45min temp fridge 37F": "windings",
	} {
		c := New()
		for _, l := range strings.Split(lines, "; ") {
			if _, err := c.Apply(c.Clock(l, testDay), l); err != nil {
				t.Fatalf("%s: %v", l, err)
			}
		}
		if got := strings.Join(c.missing(), "; "); !strings.Contains(got, want) {
			t.Errorf("%s: %q, want %q", lines, got, want)
		}
	}
	for line, not := range map[string]string{
		"saw gasket seals worn": "gasket-sound", "saw dollar bill grips nowhere": "gasket-sound",
		"saw damper closes halfway": "damper-moves", "saw comp kicks on, clicks off after 5 s": "starts-and-runs",
	} {
		if c := applyAll(t, "unit fridge", "fault not cooling", line); len(c.seenAt[not]) > 0 {
			t.Errorf("%s: taken as %s", line, not)
		}
	}
}

// What runs makes no noise where it is said so; what stands is silent.
func TestNoNoise(t *testing.T) {
	for line, silent := range map[string]bool{
		"saw evap fan blowing good, no noise": false, "saw comp runs, no noise": false,
		"saw no noise": true, "saw comp silent": true, "saw evap fan stopped, no noise": true,
	} {
		c := applyAll(t, "unit fridge", "fault not cooling", line)
		if got := slices.ContainsFunc(c.seenAt["silent"], c.alive); got != silent {
			t.Errorf("%s: silent %v", line, got)
		}
	}
}

// How a plug or a cord is left, and what is hung on it, is no danger.
func TestLeftUnplugged(t *testing.T) {
	for line, asked := range map[string]bool{
		"left unplugged, sticker on plug": false, "left unplugged, tag tied on the cord": false, "left unplugged, cord coiled": false,
		"left unplugged, cord nicked": true, "left unplugged, cord coiled round the hot pipe": true, "left unplugged, sticker on cord hides the cut": true,
	} {
		c := applyAll(t, "unit wine cooler", "fault dead", line)
		if got := len(c.unread) > 0 || len(c.unsafe()) > 0; got != asked {
			t.Errorf("%s: asked %v", line, got)
		}
	}
}

// What stands where it was mended is not mended, though it is quiet.
func TestQuietAndNotMended(t *testing.T) {
	for _, line := range []string{"saw motor silent", "saw drum does not turn, motor quiet"} {
		c := applyAll(t, "unit dryer", "fault drum wont turn", "saw belt snapped", "did new belt", line)
		if c.seenAgain() == 0 {
			t.Errorf("%s: taken for mended", line)
		}
	}
}

// Words that are near to those of a fault and mean none, and a fan named by the place of
// its unit.
func TestNearWords(t *testing.T) {
	for _, tt := range []struct{ lines, want, not string }{
		{"unit washer; fault wont drain; saw plugged back in", "", "restarted-soon"},
		{"unit fridge; fault clicks; saw plugged right back in", "restarted-soon", ""},
		{"unit refrigerator; fault leaks water; saw no water under crisper", "water-line-dry", "does-not-fill"},
		{"unit washer; fault won't fill; saw no water comes in", "does-not-fill", "water-line-dry"},
		{"unit fridge; fault clicks; saw ptc burnt smell; did replaced ptc; saw no smell now", "no-smoke", "no-gas-smell"},
		{"unit fridge; fault clicks; saw no smell", "", "no-smoke"},
		{"unit gas range; fault oven wont light; saw gas smell; saw wire burnt smell; saw no smell", "", "no-smoke"},
		{"unit dryer; fault drum wont turn; saw belt snapped; did new belt; saw drum turns, quiet", "drum-turns", "silent"},
		{"unit washer; fault wont spin; did new lid switch; saw spins, nice and quiet", "spins", "silent"},
		{"unit dryer; fault drum wont turn; saw motor quiet", "", "drum-turns"},
		{"unit split ac, outdoor; fault not cooling; saw fan not running", "cond-fan-stopped", "blower-stopped"},
		{"unit split ac, indoor and outdoor; fault not cooling; saw fan not running", "blower-stopped", "cond-fan-stopped"},
		{"unit split ac; fault not cooling; saw fan not running", "blower-stopped", "cond-fan-stopped"},
	} {
		c := applyAll(t, strings.Split(tt.lines, "; ")...)
		if tt.want != "" && len(c.seenAt[tt.want]) == 0 || tt.not != "" && len(c.seenAt[tt.not]) > 0 {
			t.Errorf("%s: %v, want %s and not %s", tt.lines, c.seenAt, tt.want, tt.not)
		}
		if strings.Contains(tt.lines, "did ") && c.seenAgain() > 0 {
			t.Errorf("%s: told as not mended", tt.lines)
		}
	}
}

// A new run capacitor that is called otherwise than the old one is held against the same
// marking; of an air conditioner, which has two, and of one for the start it is not known.
func TestNewCapByAnotherName(t *testing.T) {
	for lines, want := range map[string]verdict.Word{
		"unit fridge; plate mfd 15; mfd cap 9.1; did new run cap; mfd run 10":     verdict.Failed,
		"unit fridge; plate mfd 15; mfd cap 9.1; did new run cap; mfd C1 15.0":    verdict.Sound,
		"unit fridge; plate mfd 15; mfd run 9.1; did new run cap; mfd new-cap 10": verdict.Failed,
		"unit split ac; plate mfd 15; mfd cap 9.1; did new run cap; mfd run 10":   verdict.CannotTell,
		"unit fridge; plate mfd 15; mfd cap 9.1; did new start cap; mfd start 10": verdict.CannotTell,
	} {
		c := applyAll(t, strings.Split(lines, "; ")...)
		r := c.readings[len(c.readings)-1]
		kind, name := c.subject(r)
		if v, ok := c.verdictOn(kind, name, r.entry+1); !ok || v.Word != want {
			t.Errorf("%s: %s (%s), want %s", lines, v.Word, v.Text, want)
		}
	}
}
