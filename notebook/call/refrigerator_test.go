package call

import (
	"testing"

	"ohmcall/calc/cause"
)

// A reading below what the leads have speaks of a wrong zero, and proves no earth:
// common practice.
func TestEarthBelowTheLeads(t *testing.T) {
	checkTrade(t, []tradeCase{
		{"hundredths", "unit fridge; probes 0.1; safe; ohm earth 0.04; show verdicts", []string{"earth | cannot tell | -0.06 Ω, 0.04 Ω less 0.1 Ω", "short the probes"}, []string{"NaN", "sound", "inside"}, nil, "", "common practice"},
		{"tenths", "fault gives shock; probes 0.4; safe; ohm ground 0.2", []string{"cannot tell, -0.2 Ω", "short the probes"}, []string{"NaN", "sound"}, nil, "", "common practice"},
		{"as much as the leads", "unit fridge; probes 0.10; safe; ohm earth 0.10", []string{"sound, 0 Ω"}, []string{"NaN"}, nil, "", "common practice"},
		{"a count less", "unit fridge; probes 0.10; safe; ohm earth 0.09", []string{"sound, -0.01 Ω"}, []string{"NaN"}, nil, "", "common practice"},
	})
}

// Pins that hang together by some ohms read no further apart to the case than those
// (the triangle of resistances): one grounded beside one that is not was misread. It is
// not energised, and condemns nothing.
func TestGroundThatCannotBe(t *testing.T) {
	const at = "unit fridge; fault clicks no cool; safe; ohm a b 4.1, b c 6.1, a c 10.2; "
	open := map[string]cause.State{"winding-grounded": cause.Open}
	grounded := map[string]cause.State{"winding-grounded": cause.Supported}
	checkTrade(t, []tradeCase{
		{"one of three", at + "ohm a case 12, b case OL, c case OL", []string{"Contradiction: a–case 12 Ω and b–case OL", "insulation a to case: suspect", "Never energise"}, []string{"Grounded", "failed"}, open, "before anything is energised", "common practice"},
		{"the other way round", at + "ohm a case OL, b case OL, c case 300", []string{"c–case 300 Ω and a–case OL", "read again"}, []string{"Grounded", "failed"}, open, "before anything is energised", "common practice"},
		{"the open one read later", at + "ohm a case 12; ohm b case OL", []string{"insulation a to case: suspect, 12 Ω here and OL at b cannot both be, 4.1 Ω lying between"}, []string{"Grounded"}, open, "before anything is energised", "common practice"},
		{"the pairs read last", "unit fridge; fault clicks no cool; safe; ohm a case 12, b case OL; ohm a b 4.1", []string{"insulation a to case: suspect"}, []string{"Grounded"}, open, "before anything is energised", "common practice"},
		{"a doubtful pin beside it", at + "ohm a case 12, b case 400k", []string{"Contradiction"}, []string{"Grounded"}, open, "before anything is energised", "common practice"},
		{"readings that fit", at + "ohm a case 12, b case 16, c case 22", []string{"Grounded: a–case 12 Ω, b–case 16 Ω and c–case 22 Ω", "failed"}, []string{"Contradiction"}, grounded, "replace the machine", "common practice"},
		{"one pin read alone", at + "ohm a case 12", []string{"Grounded"}, []string{"Contradiction"}, grounded, "replace the machine", "common practice"},
		{"leakage that drifts", at + "ohm a case 90k, b case 130k", []string{"Grounded"}, []string{"Contradiction"}, grounded, "", "common practice"},
		{"a tester beside an ohm-meter", at + "ohm a case 0.02M test 500V; ohm b case OL", nil, []string{"Contradiction"}, grounded, "replace the machine", "common practice"},
		{"pins that are open to each other", "unit fridge; fault clicks no cool; safe; ohm a b OL, a c OL, b c 6.1; ohm a case 12, b case OL", []string{"Grounded"}, []string{"Contradiction"}, grounded, "replace the machine", "common practice"},
		{"struck", at + "ohm a case 12, b case OL; strike 5 slip", nil, nil, open, "", "common practice"},
	})
}

// A pair near nothing beside two alike is a short, or what still hangs on the pins, and
// makes no pin start: common practice.
func TestNearZeroBesideTwoAlike(t *testing.T) {
	const at = "unit fridge; fault clicks no cool; plate volts 115; safe plug pulled; "
	shorted := map[string]cause.State{"winding-shorted": cause.Supported}
	checkTrade(t, []tradeCase{
		{"as coarse as the meter", at + "ohm a b 4.1, b c 4.1, a c 0.2", []string{"Shorted: a–c 0.2 Ω", "relay, jumper"}, []string{"is start"}, shorted, "before the machine is condemned", "common practice"},
		{"another", at + "ohm 1 2 3.2; ohm 1 3 3.2; ohm 2 3 0.1", []string{"Shorted: 2–3 0.1 Ω"}, []string{"is start"}, shorted, "before the machine is condemned", "common practice"},
		{"perhaps", at + "ohm 1 2 1.2, 1 3 1.2, 2 3 0.3", []string{"No role is certain"}, []string{"is start", "Shorted"}, map[string]cause.State{"winding-shorted": cause.Open}, "finer range", "common practice"},
		{"low, and unlike", at + "ohm 1 2 4.1, 1 3 4.9, 2 3 0.8", []string{"1 is start"}, []string{"Shorted"}, nil, "", "common practice"},
	})
}
