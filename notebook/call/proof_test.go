package call

import (
	"slices"
	"strings"
	"testing"

	"ohmcall/calc/cause"
)

// The proof is of the part that was worked on: common practice.
func TestProofOfTheFan(t *testing.T) {
	start := []string{"unit refrigerator", "fault fridge warm", "plate volts 115, amps 1.2", "saw evap-fan stopped", "safe", "on evap-fan", "plate amps 0.1", "ohm 1 2 OL"}
	wanted := func(lines ...string) string {
		return strings.Join(applyAll(t, append(slices.Clone(start), lines...)...).proofMissing(), "\n")
	}
	got := wanted("did replaced evaporator fan motor")
	for _, w := range []string{"saw evap-fan runs", "amp evap-fan … run", "temp fridge"} {
		if !strings.Contains(got, w) {
			t.Errorf("%q is not wanted: %s", w, got)
		}
	}
	for _, w := range []string{"amp comp", "ohm A case", "cond-fan"} {
		if strings.Contains(got, w) {
			t.Errorf("%q is wanted: %s", w, got)
		}
	}
	if got := wanted("did replaced evaporator fan motor", "saw evap-fan runs", "amp evap-fan 0.085 run"); strings.Contains(got, "evap-fan") {
		t.Errorf("shown and still wanted: %s", got)
	}
	if got := wanted("did replaced evaporator fan motor", "amp comp 1.15 run"); !strings.Contains(got, "amp evap-fan") {
		t.Errorf("the compressor's amps prove the fan: %s", got)
	}
	if got := wanted("did replaced evaporator fan motor", "did cleaned the condenser"); !strings.Contains(got, "amp comp") || !strings.Contains(got, "amp evap-fan") {
		t.Errorf("work on the condenser as well: %s", got)
	}
	if got := wanted("did replaced compressor, by a certified person"); !strings.Contains(got, "amp comp") {
		t.Errorf("work on the compressor: %s", got)
	}
}

// A fan is proved by the fan, and what did not start by its start: no surge, no
// sag and no pull-down of a machine that nobody worked on (common practice).
func TestProofOfTheFanAlone(t *testing.T) {
	c := applyAll(t, "unit refrigerator", "fault compressor does not start", "plate volts 115, amps 1.2", "saw cond-fan stopped", "safe", "did replaced condenser fan motor")
	got := strings.Join(c.proofMissing(), "\n")
	for _, w := range []string{"saw starts", "saw cond-fan runs", "amp cond-fan"} {
		if !strings.Contains(got, w) {
			t.Errorf("%q is not wanted: %s", w, got)
		}
	}
	for _, w := range []string{"peak", "volt line", "temp ", "amp comp"} {
		if strings.Contains(got, w) {
			t.Errorf("%q is wanted: %s", w, got)
		}
	}
}

// A part that breaks a circuit is read again once it was replaced, and its new
// reading is no slip of the old one (common practice).
func TestBreakersAreReadAgain(t *testing.T) {
	for _, x := range []struct{ lines, wanted, read string }{
		{"unit electric dryer; fault no heat; safe; ohm limit OL; did replaced hi-limit", "the new limit or thermal fuse read", "ohm limit 0.1 closed"},
		{"unit electric dryer; fault no heat; safe; ohm thermal-fuse OL; did replaced the thermal fuse", "the new limit or thermal fuse read", "ohm thermal-fuse 0.1"},
		{"unit fridge; fault clicks; safe; ohm ptc OL cold; did replaced start device", "the new start device read", "ohm ptc 5.1 cold"},
	} {
		c := applyAll(t, strings.Split(x.lines, "; ")...)
		if got := strings.Join(c.proofMissing(), "\n"); !strings.Contains(got, x.wanted) {
			t.Errorf("%s: %s", x.lines, got)
		}
		e, err := c.Apply(testDay(), x.read)
		if err != nil {
			t.Fatal(err)
		}
		if slices.Contains(e.Reply.Flags, "jump") {
			t.Errorf("%s: %s", x.read, e.Reply.Plain())
		}
		if got := strings.Join(c.proofMissing(), "\n"); strings.Contains(got, x.wanted) {
			t.Errorf("%s, %s: still wanted: %s", x.lines, x.read, got)
		}
	}
}

// Running amps after those of a locked rotor are no slip of a digit.
func TestLockedIsNoSlip(t *testing.T) {
	start := []string{"unit fridge", "fault clicks", "plate volts 115, amps 1.2, lra 12"}
	for _, lines := range [][]string{{"amp comp 11.5 run", "amp comp 1.15 run"}, {"amp comp 11.5", "amp comp 1.15 run"}} {
		c := applyAll(t, append(slices.Clone(start), lines[0])...)
		if e, err := c.Apply(testDay(), lines[1]); err != nil || slices.Contains(e.Reply.Flags, "tenfold") {
			t.Errorf("%v: %v, %v", lines, err, e.Reply.Flags)
		}
	}
	c := applyAll(t, "unit oven", "fault no heat", "amp heater 12.0 run")
	if e, _ := c.Apply(testDay(), "amp heater 1.2 run"); !slices.Contains(e.Reply.Flags, "tenfold") {
		t.Error("a tenth of a heater's amps is not asked about")
	}
}

// A motor's values are the motor's though nothing was put at hand yet.
func TestPlateBeforeTheMotor(t *testing.T) {
	c := applyAll(t, "unit washer", "fault motor hums", "plate volts 115, amps 6.5, lra 30", "on motor", "safe", "ohm 1 2 2.6, 1 3 5.9, 2 3 8.4")
	if c.mainMachine() != "motor" || c.plateNumber("motor", "amps", "A") != 6.5 {
		t.Errorf("the call is about %s, its plate says %v A", c.mainMachine(), c.plateNumber("motor", "amps", "A"))
	}
}

// What a verdict cannot tell proves nothing, and what would settle it is said;
// where a temperature is the proof, being seen to heat is none.
func TestCheapProof(t *testing.T) {
	dryer := []string{"unit dryer", "fault does not heat", "safe", "ohm limit OL", "did replaced limit", "ohm limit 0.2 closed", "ohm earth 0.05 test 10A"}
	plated := append([]string{"plate volts 240, watts 5300"}, dryer...)
	for _, x := range []struct {
		start, lines []string
		missing      []string
		result       string
	}{
		{dryer, []string{"amp heater 2.0", "saw heats up"}, []string{"cannot tell", "plate watts …, volts …", "the temperature it reaches"}, "not proved"},
		{dryer, []string{"amp heater 22.0", "temp dryer 148F"}, []string{"plate watts …, volts …"}, "not proved"},
		{plated, []string{"amp heater 22.0", "saw heats up"}, []string{"the temperature it reaches"}, "not proved"},
		{plated, []string{"amp heater 20.2", "temp dryer 148F"}, []string{"read the volts beside it"}, "not proved"},
		{plated, []string{"amp heater 22.1", "temp dryer 90F"}, []string{"the temperature it reaches"}, "not proved"},
		{plated, []string{"amp heater 22.1", "temp dryer 148F"}, nil, "proved"},
		{plated, []string{"amp heater 20.2", "temp dryer 148F", "volt L1 L2 228 run"}, nil, "proved"}, // 5300 W at 240 V are 20.98 A at 228 V
	} {
		c := applyAll(t, append(slices.Clone(x.start), x.lines...)...)
		all := strings.Join(c.proofMissing(), "\n")
		for _, w := range x.missing {
			if !strings.Contains(all, w) {
				t.Errorf("%v: %q is not in %s", x.lines, w, all)
			}
		}
		told := ""
		for _, f := range c.Record().Outcome {
			told += f.Text
		}
		if got := c.result(); got != x.result || strings.Contains(told, "without its verdict") {
			t.Errorf("%v: %s, want %s: %s; %s", x.lines, got, x.result, all, told)
		}
	}
}

// The place of the proof is the one whose temperatures were taken, where the
// complaint names none: common practice.
func TestPlaceOfProof(t *testing.T) {
	for _, x := range []struct{ fault, temps, want string }{
		{"clicks", "temp freezer 40F", "temp freezer"},
		{"clicks", "temp fridge 60F", "temp fridge"},
		{"clicks", "temp freezer 40F; temp fridge 60F", "temp fridge"},
		{"clicks", "temp room 70F", "temp fridge"},
		{"fridge warm, freezer ok, clicks", "temp freezer 3F", "temp fridge"},
	} {
		c := applyAll(t, append([]string{"unit refrigerator", "fault " + x.fault}, append(strings.Split(x.temps, "; "), "part start device")...)...)
		if got := strings.Join(c.proofMissing(), "\n"); !strings.Contains(got, x.want) {
			t.Errorf("%s, %s: no %q in %s", x.fault, x.temps, x.want, got)
		}
	}
}

// A machine that draws its amps after the work has a breaker that holds; one that
// tripped after a while shows it after a while: common practice.
func TestBreakerHolds(t *testing.T) {
	start := []string{"unit refrigerator", "fault trips the breaker", "plate volts 115, amps 1.4", "saw holds unplugged", "safe", "did mended the harness", "ohm earth 0.05 test 10A"}
	late := append([]string{"saw trips later"}, start...)
	for _, x := range []struct {
		start   []string
		lines   string
		missing bool
	}{
		{start, "note nothing", true},
		{start, "amp comp 1.40 run", false},
		{start, "amp comp 1.9 run", true},
		{late, "amp comp 1.40 run", true},
		{late, "amp comp 1.40 run; +180min amp comp 1.40 run", false},
		{late, "amp comp 1.40 run; +180min temp freezer 0F", false},
		{late, "amp comp 1.40 run; +180min amp comp 1.40 run; saw trips later", true},
		{late, "saw breaker holds", false},
	} {
		c := New()
		for _, l := range append(slices.Clone(x.start), strings.Split(x.lines, "; ")...) {
			if _, err := c.Apply(c.Clock(l, testDay), l); err != nil {
				t.Fatal(l, err)
			}
		}
		if got := slices.Contains(c.missing(), "breaker holds"); got != x.missing {
			t.Errorf("%v, %s: breaker holds missing %v", x.start[:1], x.lines, got)
		}
	}
}

// The reminder to discharge a capacitor is for a machine that has or may have
// one: 29 CFR 1910.333(b)(2)(ii)(C).
func TestCapacitorReminder(t *testing.T) {
	for plate, want := range map[string]bool{
		"volts 115": true, "start none": true, "start none, run cap": true, "start none, run none": false,
		"start none, run none, type inverter": true, "start none, run none, mfd C1 12": true,
	} {
		c := applyAll(t, "unit refrigerator", "plate "+plate, "safe", "ohm ptc 5 cold")
		if got := c.warned["capacitor-discharge"] > 0; got != want {
			t.Errorf("plate %s: reminded %v", plate, got)
		}
	}
}

// What a record wants and a point of the proof brings is told once, as that
// point: each pair of names in provings is one of a complaint, and none whose
// findings are the same lacks its pair.
func TestWhatProofBringsIsToldOnce(t *testing.T) {
	var points []string
	for _, list := range proofs {
		for _, p := range list.points {
			points = append(points, p.what)
		}
	}
	for _, f := range fanProofs {
		points = append(points, f.runs.what, f.amps.what)
	}
	for i := range fuseProofs {
		points = append(points, fuseProofs[i].what)
	}
	for _, p := range seenProofs {
		points = append(points, p.what)
		k, _ := cause.ComplaintBy(p.complaint)
		for _, n := range k.Need {
			if intersects(n.Any, p.codes) && (provedBy(n.What) == "" || !strings.Contains(p.what, provedBy(n.What))) {
				t.Errorf("%s: %q brings %q, and both are missing", p.complaint, p.what, n.What)
			}
		}
	}
	needs := map[string]bool{}
	for _, k := range cause.Complaints() {
		for _, n := range k.Need {
			needs[n.What] = true
		}
	}
	for _, pair := range provings {
		need, point := pair[0], pair[1]
		if !needs[need] || !slices.ContainsFunc(points, func(p string) bool { return strings.Contains(p, point) }) {
			t.Errorf("%q is no need, or %q is in no point of a proof", need, point)
		}
	}
	c := applyAll(t, "unit washer", "fault will not drain", "saw impeller loose", "did replaced pump")
	if m := c.missing(); slices.Contains(m, "draining seen") || !slices.Contains(m, "proof: that it drains (saw drains)") {
		t.Errorf("missing %q", m)
	}
}

// A furnace is proved by the air that it gives out, or by its rise over the air that
// it takes in: common practice.
func TestHeatIsProvedWhereItIsMade(t *testing.T) {
	const (
		start = "unit gas furnace; fault no heat; ohm igniter OL; did replaced the igniter; saw flame lights; "
		want  = "the temperature it reaches"
	)
	checkTrade(t, []tradeCase{
		{"return read last", start + "temp supply 120F; temp return 68F; missing", nil, []string{want}, nil, "", "common practice"},
		{"return read first", start + "temp return 68F; temp supply 120F; missing", nil, []string{want}, nil, "", "common practice"},
		{"the return alone", start + "temp return 68F; missing", []string{want}, nil, nil, "", "common practice"},
		{"a hot return is no heat", start + "temp return 110F; missing", []string{want}, nil, nil, "", "common practice"},
		{"by its rise", start + "temp return 60F; temp supply 97F; missing", nil, []string{want}, nil, "", "common practice"},
		{"a new defrost heater", "unit freezer; fault frosts up; did replaced defrost heater; missing", []string{"the new defrost heater read (ohm defrost-heater …, or saw forced defrost heats)"}, nil, nil, "", "common practice"},
		{"it is read", "unit freezer; fault frosts up; plate watts defrost-heater 450, volts 115; did replaced defrost heater; ohm defrost-heater 29.4; missing", nil, []string{"the new defrost heater"}, nil, "", "common practice"},
		{"not open is enough without a plate", "unit freezer; fault frosts up; did replaced defrost heater; ohm defrost-heater 29.4; missing", nil, []string{"the new defrost heater"}, nil, "", "common practice"},
		{"it is seen to heat", "unit freezer; fault frosts up; did replaced defrost heater; saw forced defrost heats; missing", nil, []string{"the new defrost heater"}, nil, "", "common practice"},
		{"it is dead", "unit freezer; fault frosts up; did replaced defrost heater; ohm defrost-heater OL; missing", []string{"the new defrost heater read"}, nil, nil, "", "common practice"},
		{"air hotter than all is well", start + "temp return 68F; temp supply 205F; missing", []string{want, "hotter than 180 °F, too little air, or too much gas"}, nil, nil, "", "common practice"},
		{"water that scalds", "unit electric water heater; fault no hot water; did replaced the element; temp water 168F; missing", []string{"hotter than 140 °F, it scalds"}, nil, nil, "", "common practice"},
		{"water as it should be", "unit electric water heater; fault no hot water; did replaced the element; temp water 130F; missing", nil, []string{"the temperature it reaches"}, nil, "", "common practice"},
		{"too small a rise", start + "temp supply 80F; temp return 68F; missing", []string{want, "80 °F from 68 °F (entries 6, 7)"}, nil, nil, "", "common practice"},
		{"the flue read last", start + "temp supply 80F; temp flue 300F; missing", []string{want, "80 °F (entry 6)"}, nil, nil, "", "common practice"},
		{"read before the work", "unit gas furnace; fault no heat; temp supply 120F; did replaced the igniter; temp return 68F; missing", []string{want}, nil, nil, "", "common practice"},
		{"hot water, the cold read last", "unit electric water heater; fault no hot water; ohm element OL; did replaced the element; temp water 130F; temp inlet 50F; missing", nil, []string{want}, nil, "", "common practice"},
		{"an oven, the kitchen read last", "unit electric oven; fault stays cold; ohm bake OL; did replaced the bake element; temp oven 350F; temp kitchen 72F; missing", nil, []string{want}, nil, "", "common practice"},
		{"an oven, the kitchen alone", "unit electric oven; fault stays cold; ohm bake OL; did replaced the bake element; temp kitchen 130F; missing", []string{want}, nil, nil, "", "common practice"},
	})
}

// A machine that stops before its end is proved by an end that was seen, washer as
// dryer: common practice.
func TestProofOfAnEnd(t *testing.T) {
	for _, unit := range []string{"washer", "dishwasher", "electric dryer"} {
		c := applyAll(t, "unit "+unit, "fault stops mid-cycle", "did cleared the drain hose")
		if m := strings.Join(c.missing(), "\n"); !strings.Contains(m, "proof: the end of a cycle seen") || !strings.Contains(m, "amp motor") {
			t.Errorf("%s: %s", unit, m)
		}
		must(t, c, "saw cycles off")
		if m := strings.Join(c.missing(), "\n"); strings.Contains(m, "end of a cycle") {
			t.Errorf("%s, seen: %s", unit, m)
		}
	}
}

// A new part that reads bad is missing once: as a point of its own where no other point
// of the proof tells of it.
func TestNewPartThatReadsBadIsToldOnce(t *testing.T) {
	start := []string{"client X", "unit electric dryer", "fault tumbles but no heat", "volt L1 L2 238", "safe breaker off", "plate watts 5200, volts 240"}
	for _, r := range []struct {
		lines []string
		want  string
	}{
		{[]string{"ohm limit OL closed", "did new limit fitted", "ohm limit OL cold"}, "limit"},
		{[]string{"ohm heater OL", "did new element fitted", "ohm heater OL"}, "the new part sound: heater, "},
	} {
		c := applyAll(t, slices.Concat(start, r.lines)...)
		var told []string
		for _, s := range c.proofMissing() {
			if strings.Contains(s, "(entry 9)") {
				told = append(told, s)
			}
		}
		if len(told) != 1 || !strings.Contains(told[0], r.want) {
			t.Errorf("%q: told %q", r.lines, told)
		}
	}
}

// What is found after a repair and has no work of its own is not mended, and comes next.
func TestFoundAfterTheRepair(t *testing.T) {
	start := []string{"client X", "unit electric dryer", "fault tumbles but no heat", "volt L1 L2 240", "plate watts 5200, volts 240", "ohm heater OL", "did new element"}
	c := applyAll(t, append(slices.Clone(start), "ohm thermal fuse OL")...)
	if got := must(t, c, "next").Reply.Plain(); !strings.Contains(got, "No work is written down for what was found: thermal limit, fuse or defrost thermostat open, inferred from entry 8.") {
		t.Errorf("next: %q", got)
	}
	if got := c.Record().Alerts; !slices.ContainsFunc(got, func(s string) bool { return strings.HasPrefix(s, "Not mended: thermal limit") }) {
		t.Errorf("alerts: %q", got)
	}
	for _, mended := range []string{"did new thermal fuse", "ohm thermal fuse 0.1"} {
		c := applyAll(t, append(slices.Clone(start), "ohm thermal fuse OL", mended)...)
		if got := c.untreated(); len(got) > 0 {
			t.Errorf("%s: not mended %s", mended, got[0].told())
		}
	}
}

// Three readings fit a curve of three numbers exactly: they show no course, whatever
// it settles at, and no household freezer settles at -45 °C (common practice).
func TestThreeReadingsShowNoCourse(t *testing.T) {
	const done = "unit refrigerator, freezer on top; fault does not cool; did cleaned condenser; "
	for lines, want := range map[string]string{
		"temp freezer 18C; +20min temp freezer 5C; +20min temp freezer -5.5C":                                                      "too early",
		"temp freezer 50F; +30min temp freezer 30F; +30min temp freezer 14F":                                                       "too early",
		"temp freezer 68F; +20min temp freezer 30F; +20min temp freezer 5F":                                                        "too early",
		"temp freezer 40F; +60min temp freezer 20F; +60min temp freezer 5F":                                                        "too early",
		"temp freezer 50F; +30min temp freezer 20F; +30min temp freezer -5F":                                                       "proved",
		"temp freezer 18C; +20min temp freezer 5C; +20min temp freezer -5.5C; +20min temp freezer -9C; +20min temp freezer -10.2C": "too early",
		"temp freezer 50F; +30min temp freezer 32F; +30min temp freezer 20F; +30min temp freezer 11F; +30min temp freezer 5F":      "on course",
		"temp freezer 18C; +20min temp freezer 6.5C; +20min temp freezer -1.5C; +20min temp freezer -7.5C":                         "too early",
		"temp freezer 18C; +30min temp freezer 4C; +30min temp freezer -6C; +30min temp freezer -12.6C":                            "on course",
	} {
		c := New()
		for _, l := range strings.Split(done+lines, "; ") {
			if _, err := c.Apply(c.Clock(l, testDay), l); err != nil {
				t.Fatal(err)
			}
		}
		k := c.Record().Curves
		if len(k) != 1 || k[0].Verdict != want {
			t.Errorf("%s: %+v, want %s", lines, k, want)
		}
	}
}
