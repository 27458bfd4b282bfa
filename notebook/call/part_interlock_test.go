package call

import (
	"slices"
	"strings"
	"testing"

	"ohmcall/calc/cause"
	"ohmcall/calc/caution"
)

// A door switch that conducts with the door open leaves the oven unsafe until each was
// read open again; a new one is not known to open before it was read: common practice.
func TestInterlocks(t *testing.T) {
	const oven = "unit microwave oven; fault fuse blows every time; safe unplugged; "
	const ends = "; saw heats; saw leakage test good; ohm earth 0.10; close"
	const read = "; ohm primary-switch OL open, secondary-switch OL open; ohm monitor-switch 0.1 open; ohm monitor-switch OL closed"
	for lines, want := range map[string]string{
		"unit microwave; fault blown main fuse; safe unplugged; ohm fuse OL; did replaced the line fuse; ohm fuse 0.1" + ends:                                               "not proved",
		"unit microwave; fault blown main fuse; safe unplugged; ohm fuse OL" + read + "; did replaced the line fuse" + ends:                                                 "proved",
		"unit microwave; fault dead, no display; safe unplugged; ohm fuse OL; did new fuse" + ends:                                                                          "not proved",
		"unit microwave; fault dead, no display; safe unplugged; ohm fuse OL; did new fuse; saw interlocks good; saw monitor switch good" + ends:                            "proved",
		"unit microwave; fault dead, no display; safe unplugged; ohm tco OL; did new thermal fuse; ohm tco 0.1" + ends:                                                      "proved",
		"unit microwave; fault runs does not heat; safe unplugged; saw hv fuse blown; did new hv fuse" + ends:                                                               "proved",
		"unit microwave; fault runs does not heat; safe unplugged; saw hv fuse blown; did replaced fuse" + ends:                                                             "proved",
		oven + "saw interlocks good; saw monitor switch good; did replaced fuse and monitor switch" + ends:                                                                  "not proved",
		oven + "ohm primary-interlock 0.1 open, door-switch 0.1 open; ohm monitor-switch OL open; did replaced fuse and monitor switch" + ends:                              "unsafe",
		oven + "ohm primary-switch 0.1 open; did replaced fuse" + ends:                                                                                                      "unsafe",
		oven + "ohm primary-switch 0.1 open; did replaced both door switches" + ends:                                                                                        "unsafe",
		oven + "ohm primary-switch 0.1 open; did replaced both door switches; ohm primary-switch 0.1 closed" + ends:                                                         "unsafe",
		oven + "ohm primary-switch 0.1 open; did replaced both door switches; ohm secondary-switch OL open" + ends:                                                          "unsafe",
		oven + "ohm primary-switch 0.1 open; did replaced both door switches; ohm primary-interlock OL open, secondary-interlock OL open" + ends:                            "proved",
		oven + "saw door interlock welded; did replaced door switches" + ends:                                                                                               "unsafe",
		oven + "saw door interlock welded; did replaced door switches; ohm primary-switch OL open" + ends:                                                                   "proved",
		oven + "ohm primary-switch 0.1 open; strike 4 slip; ohm primary-switch OL open; did replaced fuse" + ends:                                                           "not proved",
		oven + "ohm primary-switch 0.1 closed, secondary-switch 0.1 closed; did replaced fuse" + ends:                                                                       "not proved",
		oven + "did replaced both door switches; saw interlocks good" + ends:                                                                                                "proved",
		oven + "did replaced both door switches; saw interlocks good; ohm primary-switch 0.1 open" + ends:                                                                   "unsafe",
		oven + "saw interlocks good; did replaced both door switches" + ends:                                                                                                "not proved",
		oven + "did replaced door latch" + ends:                                                                                                                             "not proved",
		oven + "ohm monitor-switch OL open; did replaced fuse" + ends:                                                                                                       "not proved",
		oven + "ohm monitor-switch OL open; ohm monitor-switch OL closed; did replaced fuse" + ends:                                                                         "not proved",
		oven + "ohm monitor-switch 0.1 open; ohm monitor-switch OL closed; did replaced fuse" + ends:                                                                        "not proved",
		oven + "ohm light-switch 0.1 open; did replaced fuse" + ends + read:                                                                                                 "proved",
		"unit microwave; fault light stays on with door open; safe unplugged; ohm primary-switch 0.1 open; ohm secondary-switch 0.1 open; close":                            "unsafe",
		"unit microwave; fault does not start; safe unplugged; ohm door-switch 0.1 open; ohm thermal-cutout OL; did replaced thermal cutout; ohm thermal-cutout 0.1" + ends: "unsafe",
		"unit dryer; fault no heat; safe unplugged; ohm door-switch 0.1 open; ohm thermal-fuse OL; did replaced thermal fuse; close":                                        "unsafe",
		"unit dryer; fault no heat; safe unplugged; ohm belt-switch 0.1 open; ohm thermal-fuse OL; did replaced thermal fuse; close":                                        "not proved",
		"unit fridge; fault warm; safe unplugged; ohm door-switch 0.1 open; did replaced fan; close":                                                                        "not proved",
	} {
		c := applyAll(t, strings.Split(lines, "; ")...)
		if r := c.Record(); r.Header.Result != want {
			t.Errorf("%s: %s, want %s: %q", lines, r.Header.Result, want, r.Alerts)
		}
	}
	unread := applyAll(t, strings.Split(oven+"ohm fuse OL; ohm primary-switch 0.2 closed; did replaced door switches", "; ")...)
	for _, p := range unread.proofMissing() {
		if strings.Contains(p, "entry 0") || strings.Contains(p, "): read open") {
			t.Errorf("what nobody read: %q", p)
		}
	}
	last := applyAll(t, "unit microwave", "fault dead", "ohm primary-switch 0.1 open").Entries()
	if got, radiation := last[2].Reply.Plain(), cautionOf(caution.Radiation).Text; !strings.Contains(got, radiation) {
		t.Errorf("%q lacks %q", got, radiation)
	}
}

// The fuse of a microwave oven blows by its door switches or its monitor switch first:
// common practice.
func TestBlowsFuse(t *testing.T) {
	const source = "common practice"
	for _, fault := range []string{"fuse blows every time", "blows fuse when door opened", "keeps popping fuses", "breaker trips when I open the door", "dead, fuse blown"} {
		checkTrade(t, []tradeCase{
			{fault, "unit microwave; fault " + fault + "; safe unplugged; ohm primary-switch 0.1 open; causes", []string{"door switch that stays closed"}, []string{"compressor", "winding", "heater"},
				map[string]cause.State{"interlock-stuck": cause.Supported}, "replace each door switch", source},
			{fault + ", monitor", "unit microwave; fault " + fault + "; safe unplugged; ohm primary-switch OL open, secondary-switch OL open; ohm monitor-switch 0.1 closed; ohm monitor-switch 0.1 open", nil, nil,
				map[string]cause.State{"monitor-stuck": cause.Supported, "interlock-stuck": cause.RuledOut}, "replace the monitor switch", source},
			{fault + ", one of two read", "unit microwave; fault " + fault + "; safe unplugged; ohm primary-switch OL open", nil, nil, map[string]cause.State{"interlock-stuck": cause.Open}, "each door switch", source},
		})
	}
	for fault, not := range map[string]string{"thermal fuse blown, dead": "blows-fuse", "breaker trips": "blows-fuse"} {
		if slices.ContainsFunc(applyAll(t, "unit microwave", "fault "+fault).appliance().Complaints, func(h cause.Hit) bool { return h.Code == not }) {
			t.Errorf("%s is %s", fault, not)
		}
	}
}

// A zone that heats by induction has no element, a washer's hot water comes of its hot
// valve, and a machine that freezes slabs is looked at by its water and its harvest:
// common practice.
func TestOwnWays(t *testing.T) {
	const source = "common practice"
	checkTrade(t, []tradeCase{
		{"a zone with an error", "unit induction cooktop; fault left front zone error, fan runs; causes", []string{"pan", "work coil", "inverter board"}, []string{"heater"}, map[string]cause.State{"airflow-blocked": cause.Open}, "pan", source},
		{"one zone", "unit induction hob; fault one zone wont heat, others ok; saw same with other pan; saw igbt shorted", nil, nil, map[string]cause.State{"zone-drive-failed": cause.Supported, "pan-unfit": cause.RuledOut}, "inverter board", source},
		{"an open work coil", "unit induction range; fault rear burner dead; safe off; ohm coil-lr OL", []string{"failed"}, nil, map[string]cause.State{"work-coil-open": cause.Supported}, "work coil", source},
		{"a sound work coil", "unit induction cooktop; fault no heat; safe off; ohm coil-lf 0.1", []string{"sound", "as low as a work coil is"}, []string{"suspect"}, map[string]cause.State{"work-coil-open": cause.RuledOut}, "", source},
		{"a work coil by its name", "ohm work-coil 0.15", []string{"sound"}, []string{"hardly any coil"}, nil, "", source},
		{"another coil stays suspect", "unit dishwasher; ohm valve-coil 0.1", []string{"hardly any coil"}, nil, nil, "", source},
		{"two pots", "unit induction range; fault zone cuts out when two pots are on", []string{"an induction zone"}, []string{"motor"}, nil, "pan", source},
		{"off after a while", "unit induction range; fault shuts off after 10 minutes", []string{"an induction zone"}, []string{"motor"}, nil, "", source},
		{"its oven off after a while", "unit induction range; fault oven shuts off after 10 minutes", nil, []string{"an induction zone"}, nil, "", source},
		{"seen to heat", "unit induction range; fault burner won't heat the pan; safe off; ohm coil OL; did replaced coil; ohm earth 0.08; saw heats; close", []string{"Closed."}, []string{"proof: that it heats"}, nil, "", source},
		{"not seen to heat", "unit induction range; fault burner won't heat the pan; safe off; ohm coil OL; did replaced coil; ohm earth 0.08; close", []string{"proof: that it heats"}, nil, nil, "", source},
		{"the oven of an induction range", "unit induction range; fault oven not heating", []string{"a heater appliance"}, nil, nil, "", source},
		{"its lamp", "unit induction range; fault oven light out", []string{"none of the common complaints"}, nil, nil, "", source},

		{"no hot fill", "unit washer; fault no hot water fill, fills cold only; safe unplugged; ohm hot-valve OL", []string{"coil of the inlet valve open"}, nil, map[string]cause.State{"valve-coil-open": cause.Supported}, "inlet valve", source},
		{"hot side", "unit washer; fault hot side doesn't work, only cold water comes in", []string{"does not fill"}, nil, nil, "tap", source},
		{"on hot", "unit washer; fault won't fill on hot; did replaced inlet valve; ohm earth 0.10; saw fills; missing", []string{"fills hot"}, nil, nil, "fills hot", source},
		{"it fills hot", "unit washer; fault won't fill on hot; did replaced inlet valve; ohm earth 0.10; saw fills hot; missing", nil, []string{"fills hot"}, nil, "", source},
		{"a leak stays one", "unit washer; fault water in cabinet, leaks", []string{"leaks water"}, nil, nil, "", source},
		{"cold water in a dishwasher", "unit dishwasher; fault no hot water in wash, dishes cold", []string{"a heater appliance"}, nil, nil, "", source},

		{"a cuber", "unit ice machine, commercial cuber; fault makes thin ice, long harvest, bridge won't drop; saw scale on evaporator", []string{"scale"}, []string{"protective device"}, map[string]cause.State{"scaled": cause.Supported}, "descale", source},
		{"its harvest valve", "unit cube ice machine; fault not harvesting; safe off; ohm hot-gas-valve OL", nil, nil, map[string]cause.State{"harvest-valve": cause.Supported}, "coil", source},
		{"a slab too thick", "unit ice machine; fault ice bridging, slab too thick, won't harvest; saw thickness probe dirty", nil, nil, map[string]cause.State{"slab-probe": cause.Supported}, "probe", source},
		{"an ice maker in a freezer", "unit fridge; fault ice maker not making ice", []string{"an ice maker that makes no ice"}, nil, nil, "", source},
	})
}
