package call

import (
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"ohmcall/notebook/record"
)

// What was struck once the call had been closed is told.
func TestStruckAfterClosing(t *testing.T) {
	c := applyAll(t, "fault does not cool", "ohm earth 0.35 test 10A", "close", "strike 2 probe slipped", "ohm earth 0.05 test 10A", "close")
	r := c.Record()
	if !slices.Contains(r.Header.Doubt, "struck after the call had been closed: 2 probe slipped (entry 4)") || !slices.Contains(r.Alerts, "Note: it was closed and opened again (entry 4)") {
		t.Errorf("%q, %q", r.Header.Doubt, r.Alerts)
	}
	// A slip typed since is none of what was closed.
	r = applyAll(t, "fault does not cool", "ohm ptc OL cold", "close waiting for part", "ohm ptc 49 cold", "strike 4 mistyped", "ohm ptc 4.9 cold").Record()
	if strings.Contains(strings.Join(r.Header.Doubt, "\n"), "struck after") {
		t.Errorf("a slip typed after the closing: %q", r.Header.Doubt)
	}
}

// What needs attention stands with the most dangerous first, each line once and
// with the entry that it rests on; the order is that of the danger to people,
// then of the doubt in the work, then of what the record lacks (common
// practice).
func TestAttentionByDanger(t *testing.T) {
	c := applyAll(t, "client Petra Placeholder", "unit chest freezer", "fault tingles at the door and does not cool", "plate volts 115, hz 60, amps 1.2, lra 12",
		"ohm A B 3, A C 8, B C 11", "ohm A case 4.2k, B case 4.1k, C case 4.2k", "saw shock", "saw cond-fan stopped", "did replaced the door gasket, bypassed the overload", "saw starts",
		"ohm earth 0.08 test 10A", "ohm earth 2 test 10A", `expect 1V > 2V "the sag is small"`, "left running")
	var labels []string
	for _, a := range c.Record().Alerts {
		label, rest, _ := strings.Cut(a, ": ")
		if !slices.Contains(labels, label) {
			labels = append(labels, label)
		}
		if slices.Contains([]string{"Missing"}, label) {
			continue
		}
		if !strings.Contains(rest, "entry ") && !strings.Contains(rest, "entries ") {
			t.Errorf("%q rests on nothing", a)
		}
	}
	if got, want := strings.Join(labels, ", "), "Unsafe, In doubt, Expectation not met, Not mended, Missing"; got != want {
		t.Errorf("%s, want %s\n%s", got, want, strings.Join(c.Record().Alerts, "\n"))
	}
	if got := c.Record().Alerts[0]; !strings.HasPrefix(got, "Unsafe: left running though it is unsafe (entry 14)") {
		t.Errorf("first stands %q", got)
	}
}

// Readings that cannot be of the same thing stand among what needs attention
// until one is struck; a breaker that was set and a part that was renewed are no
// such thing. Common practice.
func TestJumpsNeedAttention(t *testing.T) {
	for _, x := range []struct {
		lines []string
		want  string
	}{
		{[]string{"ohm A B 3", "ohm A B 30"}, "A–B read 3 Ω (entry 2) and 30 Ω (entry 3), and neither is struck"},
		{[]string{"ohm A B 3", "ohm A B 30", "strike 3 slip"}, ""},
		{[]string{"volt line 118", "volt line 80"}, "line read 118 V (entry 2) and 80 V (entry 3), and neither is struck"},
		{[]string{"volt line 118", "volt line 106"}, ""},
		{[]string{"volt line 118", "volt line 80 start"}, ""},
		{[]string{"volt line 0", "volt line 118"}, ""},
		{[]string{"ohm heater OL", "did replaced the heater", "ohm heater 12"}, ""},
	} {
		got := ""
		for _, a := range applyAll(t, append([]string{"fault does not cool"}, x.lines...)...).Record().Alerts {
			if text, ok := strings.CutPrefix(a, "Contradiction: "); ok {
				got += text
			}
		}
		if got != x.want {
			t.Errorf("%q: %q, want %q", x.lines, got, x.want)
		}
	}
}

// A unit of another kind, named after something was found or done, is asked about
// and stays in doubt until one of the two lines is struck.
func TestOtherUnit(t *testing.T) {
	for _, x := range []struct {
		lines []string
		asked bool
		doubt bool
	}{
		{[]string{"unit washer", "saw pump jammed", "did cleared the pump", "unit dryer", "fault no heat"}, true, true},
		{[]string{"unit washer", "volt line 118", "unit gas dryer"}, true, true},
		{[]string{"unit washer", "part drain pump", "unit dishwasher"}, true, true},
		{[]string{"unit washer", "saw pump jammed", "unit dryer", "strike 1 wrong unit"}, true, false},
		{[]string{"unit washer", "saw pump jammed", "unit dryer", "strike 3 another unit"}, true, false},
		{[]string{"unit washer", "unit dryer", "saw pump jammed"}, false, false},
		{[]string{"unit washer", "note in the cellar", "unit dryer"}, false, false},
		{[]string{"saw pump jammed", "unit dryer"}, false, false},
		{[]string{"unit washer", "saw pump jammed", "unit washer, front loader"}, false, false},
		{[]string{"unit washer", "saw pump jammed", "unit washer-dryer"}, false, false},
		{[]string{"unit refrigerator", "saw clicks", "unit fridge freezer, built in"}, false, false},
		{[]string{"unit big white thing", "saw pump jammed", "unit washer"}, false, false},
	} {
		c := applyAll(t, x.lines...)
		asked := false
		for _, e := range c.Entries() {
			asked = asked || among(e.Reply.Flags, "other-unit")
		}
		doubt := slices.ContainsFunc(c.Record().Header.Doubt, func(s string) bool { return strings.HasPrefix(s, "the unit was changed from ") })
		if asked != x.asked || doubt != x.doubt {
			t.Errorf("%q: asked %v, in doubt %v", x.lines, asked, doubt)
		}
	}
}

// Each word that an alert begins with is one of those by which pages know it.
func TestAlertsBeginWithTheirWords(t *testing.T) {
	source, err := os.ReadFile("end_attention.go")
	if err != nil {
		t.Fatal(err)
	}
	used := map[string]bool{}
	for _, m := range regexp.MustCompile(`\badd\("([A-Z][a-z ]+)"`).FindAllStringSubmatch(string(source), -1) {
		used[m[1]] = true
	}
	for _, w := range record.AlertWords {
		if !used[w] {
			t.Errorf("no alert begins with %q", w)
		}
		delete(used, w)
	}
	if len(used) > 0 {
		t.Errorf("not listed: %v", used)
	}
}

// A poor neutral is a danger until it is mended, and a part that failed and shows no
// cause by that is told until it is renewed. Common practice.
func TestFoundAndLeft(t *testing.T) {
	for lines, want := range map[string]string{
		"unit electric range; fault burners weak; volt L1 N 141, L2 N 99; left running":                                              "Unsafe: the neutral of its supply is poor or lost: 141 and 99 V from the legs (entry 3)",
		"unit electric range; fault burners weak; volt L1 N 141, L2 N 99; did electrician mended the neutral; volt L1 N 120":         "",
		"unit electric range; fault burners weak; volt L1 N 120, L2 N 119; left running":                                             "",
		"unit refrigerator; fault dead; plate volts 115; volt line 160; left running":                                                "Unsafe: supply: 160 V is far too high for 120 V: a lost neutral or the wrong supply; power off, for an electrician (entry 4)",
		"unit refrigerator; fault dead; plate volts 230, hz 50; volt line 310":                                                       "Unsafe: supply: 310 V is far too high for 230 V",
		"unit refrigerator; fault dead; plate volts 115; volt line 128":                                                              "",
		"unit refrigerator; fault dead; plate volts 115; volt line 160; did utility mended its service; volt line 119":               "",
		"unit refrigerator; fault dead; plate volts 115; volt N earth 28":                                                            "In doubt: neutral to earth: suspect, 28 V is more than a loaded neutral makes",
		"unit microwave; fault blows fuse; ohm monitor-switch 0.1 closed; did replaced fuse":                                         "Not mended: monitor switch that stays closed with the door shut, inferred from entry 3; the work written down is for something else",
		"unit microwave; fault blows fuse; ohm monitor-switch 0.1 closed; did replaced monitor switch and fuse":                      "",
		"unit microwave; fault blows fuse; ohm monitor-switch 0.1 closed; did replaced monitor switch; ohm monitor-switch OL closed": "",
	} {
		c := applyAll(t, strings.Split(lines, "; ")...)
		got := strings.Join(c.Record().Alerts, "\n")
		if want == "" && (strings.Contains(got, "neutral") || strings.Contains(got, "far too high") || strings.Contains(got, "Not mended")) || !strings.Contains(got, want) {
			t.Errorf("%s: %s", lines, got)
		}
	}
}

// A cause that all was found of before the repair is not found once more while what was
// repaired is watched.
func TestCauseIsFoundOnce(t *testing.T) {
	const lines = "unit refrigerator; fault warm; saw evap fan stopped; saw starts, cond fan runs; volt evap-fan 120; safe unplugged; did replaced evap fan motor; +5min temp fridge 55F; +30min temp fridge 47F; +30min temp fridge 42F; +30min temp fridge 39F"
	c, told := New(), 0
	for _, l := range strings.Split(lines, "; ") {
		e, err := c.Apply(c.Clock(l, testDay), l)
		if err != nil {
			t.Fatal(err)
		}
		told += strings.Count(e.Reply.Plain(), "Cause supported: evaporator fan motor")
	}
	if told != 1 {
		t.Errorf("it is told %d times", told)
	}
}

// A need that stands twice is one.
func TestNeedTwice(t *testing.T) {
	c := applyAll(t, "need temp freezer", "need ohm A case", "need temp freezer", "when 1 < 2: need temp freezer")
	if got := must(t, c, "missing").Reply.Plain(); strings.Count(got, "temp freezer") != 1 || !strings.Contains(got, "ohm A case") {
		t.Error(got)
	}
	c = applyAll(t, "need temp freezer", "need temp freezer", "strike 1 of another call")
	if got := must(t, c, "missing").Reply.Plain(); strings.Count(got, "temp freezer") != 1 {
		t.Error(got)
	}
}
