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
	for lines, want := range map[string]string{
		oven + "ohm primary-interlock 0.1 open, door-switch 0.1 open; ohm monitor-switch OL open; did replaced fuse and monitor switch" + ends:                              "unsafe",
		oven + "ohm primary-switch 0.1 open; did replaced fuse" + ends:                                                                                                      "unsafe",
		oven + "ohm primary-switch 0.1 open; did replaced both door switches" + ends:                                                                                        "unsafe",
		oven + "ohm primary-switch 0.1 open; did replaced both door switches; ohm primary-switch 0.1 closed" + ends:                                                         "unsafe",
		oven + "ohm primary-switch 0.1 open; did replaced both door switches; ohm secondary-switch OL open" + ends:                                                          "unsafe",
		oven + "ohm primary-switch 0.1 open; did replaced both door switches; ohm primary-interlock OL open, secondary-interlock OL open" + ends:                            "proved",
		oven + "saw door interlock welded; did replaced door switches" + ends:                                                                                               "unsafe",
		oven + "saw door interlock welded; did replaced door switches; ohm primary-switch OL open" + ends:                                                                   "proved",
		oven + "ohm primary-switch 0.1 open; strike 4 slip; ohm primary-switch OL open; did replaced fuse" + ends:                                                           "proved",
		oven + "ohm primary-switch 0.1 closed, secondary-switch 0.1 closed; did replaced fuse" + ends:                                                                       "proved",
		oven + "did replaced door latch" + ends:                                                                                                                             "not proved",
		oven + "ohm monitor-switch OL open; did replaced fuse" + ends:                                                                                                       "not proved",
		oven + "ohm monitor-switch OL open; ohm monitor-switch OL closed; did replaced fuse" + ends:                                                                         "not proved",
		oven + "ohm monitor-switch 0.1 open; ohm monitor-switch OL closed; did replaced fuse" + ends:                                                                        "proved",
		oven + "ohm light-switch 0.1 open; did replaced fuse" + ends:                                                                                                        "proved",
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
