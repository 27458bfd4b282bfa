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

// A fan of a refrigerator may run on direct volts: its ohms then tell nothing, and
// twelve volts on an ordinary range are all that it needs. Common practice.
func TestFanOnDirectVolts(t *testing.T) {
	const at = "unit fridge; fault fridge too warm; saw evap fan stopped; "
	both := map[string]cause.State{"evap-fan-failed": cause.Supported, "evap-fan-unfed": cause.Supported}
	motor := map[string]cause.State{"evap-fan-failed": cause.Supported, "evap-fan-unfed": cause.RuledOut}
	checkTrade(t, []tradeCase{
		{"open, volts not known", at + "safe; ohm evap-fan OL", []string{"evap-fan: cannot tell", "volt evap-fan … run"}, []string{"failed"}, both, "volts at the evaporator fan", "common practice"},
		{"by its pins", at + "safe; on evap-fan; plate leads 2; ohm 1 2 OL cold", []string{"1–2 OL: open is a mains motor"}, []string{"Ruled out"}, both, "read 1, 2 to the case", "common practice"},
		{"on mains", at + "volt evap-fan 117 run; safe; ohm evap-fan OL", []string{"evap-fan: failed, open"}, nil, motor, "replace the fan motor", "common practice"},
		{"the mains read last", at + "ohm evap-fan OL; volt evap-fan 117 run", []string{"evap-fan: failed, open"}, nil, motor, "replace the fan motor", "common practice"},
		{"by its pins, the mains read last", at + "on evap-fan; plate leads 2; ohm 1 2 OL; volt evap-fan 117 run", []string{"The winding reads open"}, nil, motor, "", "common practice"},
		{"on direct volts", at + "volt evap-fan 12.1 dc run; ohm evap-fan OL", []string{"cannot tell, a motor on direct volts"}, []string{"failed"}, motor, "replace the fan motor", "common practice"},
		{"its own plate", at + "on evap-fan; plate volts 115; ohm evap-fan OL", []string{"failed, open"}, nil, nil, "", "common practice"},
		{"twelve volts, the range not said", at + "volt evap-fan 11.9 run", []string{"cannot tell, 11.9 V is all that a fan on direct volts needs"}, []string{"failed", "115 V", "Ruled out"}, both, "", "common practice"},
		{"with the compressor's plate", at + "plate volts 115; volt evap-fan 11.9 run", []string{"cannot tell"}, []string{"failed", "Ruled out"}, both, "", "common practice"},
		{"with the fan's own", at + "on evap-fan; plate volts 115; volt evap-fan 11.9 run", []string{"failed, it should be called and is given 11.9 V"}, nil, map[string]cause.State{"evap-fan-failed": cause.RuledOut}, "", "common practice"},
		{"none", at + "volt evap-fan 0.3 run", []string{"failed, it should be called"}, nil, map[string]cause.State{"evap-fan-failed": cause.RuledOut}, "", "common practice"},
		{"and it runs", "unit fridge; fault fridge warm; volt evap-fan 12.1 run; saw evap fan runs", nil, []string{"contradict"}, nil, "", "common practice"},
	})
}

// Frost on a part of the evaporator is of a low charge, a restriction or worn valves, and
// of a defrost that leaves ice in one place: it strikes none of them. Common practice.
func TestPartialFrost(t *testing.T) {
	const at = "unit fridge; fault runs constantly, 55F inside; saw frost partial; "
	checkTrade(t, []tradeCase{
		{"alone", at + "saw comp runs", nil, []string{"does not pump"}, map[string]cause.State{"compressor-weak": cause.Open, "heater-failed": cause.Open, "limit-open": cause.Open,
			"defrost-control-failed": cause.Open, "refrigerant-low": cause.Open, "restriction": cause.Open, "evaporator-iced": cause.RuledOut}, "", "common practice"},
		{"with gauges, no leak and no restriction", at + "plate volts 115, amps 1.2, gas R-134a; psi suction 35 run, discharge 90 run; saw no leak found; saw no restriction", nil, nil,
			map[string]cause.State{"compressor-weak": cause.Open, "refrigerant-low": cause.RuledOut, "restriction": cause.RuledOut}, "", "common practice"},
		{"with a cold condenser", at + "saw condenser cold", nil, nil, map[string]cause.State{"compressor-weak": cause.Open, "condenser-dirty": cause.RuledOut}, "", "common practice"},
		{"even frost", "unit fridge; fault runs constantly, 55F inside; saw frost even", nil, nil, map[string]cause.State{"compressor-weak": cause.RuledOut, "heater-failed": cause.RuledOut}, "", "common practice"},
	})
}

// Of kilohms and megohms a meter shows tenths too, which people leave out; what is
// written ~ has the doubt that it says. Common practice.
func TestRoundKilohms(t *testing.T) {
	const at = "unit fridge; fault clicks; plate volts 115, r25 5k, beta 3950; safe; "
	checkTrade(t, []tradeCase{
		{"a PTC that is worn out", at + "ohm ptc 3k cold", []string{"failed, 3 kΩ is what one reads hot", "Whole kilohms are taken as tenths shown (3.0k); write ~3k"}, []string{"edge"},
			map[string]cause.State{"start-device-failed": cause.Supported}, "", "common practice"},
		{"nobody said cold", at + "ohm ptc 2k", []string{"suspect, 2 kΩ is high"}, []string{"edge"}, nil, "", "common practice"},
		{"hot", at + "ohm ptc 2k hot", []string{"sound, high while hot"}, nil, nil, "", "common practice"},
		{"a sensor", at + "ohm sensor 5k at 25C", []string{"no gross fault"}, []string{"(±3"}, nil, "", "IEC 60539-1, beta equation"},
		{"written as rough", at + "ohm sensor ~5k at 25C", nil, []string{"sound", "Whole"}, nil, "", "common practice"},
		{"megohms of an ohm-meter", at + "ohm 1 case 5M, 2 case 5M, 3 case 5M", []string{"No gross fault to the case at 1, 2 and 3"}, []string{"too near", "do not energise"}, nil, "", "common practice"},
		{"too near all the same", at + "ohm 1 case 2M", []string{"Wanted"}, []string{"No gross fault"}, nil, "", "common practice"},
	})
}

// An open thermistor is colder to its control than anything, and no temperature makes a
// short of one right: common practice.
func TestSensorOpenOrShorted(t *testing.T) {
	const cool, cold = "unit fridge; fault no cool; safe; ", "unit fridge; fault runs all the time, freezes food; safe; "
	checkTrade(t, []tradeCase{
		{"open, by its curve", "unit fridge; fault no cool; plate r25 5k, beta 3950; safe; ohm sensor OL at 20C", []string{"failed, open", "Cause supported: temperature sensor reads too cold"}, nil,
			map[string]cause.State{"sensor-cold": cause.Supported}, "read it at its own plug, then replace the sensor", "common practice"},
		{"open, no data", cool + "ohm thermistor OL", []string{"suspect, open"}, nil, map[string]cause.State{"sensor-cold": cause.Supported}, "read it at its own plug", "common practice"},
		{"open, where it freezes", cold + "ohm thermistor OL", nil, nil, map[string]cause.State{"sensor-failed": cause.Supported}, "read it at its own plug", "common practice"},
		{"shorted", cold + "ohm thermistor 0.2", []string{"failed, 0.2 Ω is a short at any temperature"}, []string{"write it behind"}, map[string]cause.State{"sensor-failed": cause.Supported}, "read it at its own plug", "common practice"},
		{"of the evaporator", cool + "ohm defrost-sensor OL", nil, nil, map[string]cause.State{"sensor-cold": cause.Open}, "", "common practice"},
		{"a bimetal called a sensor", cold + "ohm defrost-sensor 0.2", []string{"cannot tell"}, nil, map[string]cause.State{"sensor-failed": cause.Open}, "", "common practice"},
		{"low, no short", cold + "ohm thermistor 400", []string{"cannot tell"}, nil, map[string]cause.State{"sensor-failed": cause.Open}, "", "common practice"},
	})
}

// No windings, of whatever kind, read more between two pins than over the third (the
// triangle of resistances): one of the readings is wrong, and nothing is condemned.
func TestPairsThatCannotBe(t *testing.T) {
	const drive = "unit fridge inverter; fault compressor not running; plate type inverter; safe; "
	const again = "read the three pairs again"
	open := map[string]cause.State{"winding-shorted": cause.Open, "winding-open": cause.Open}
	cased := "ohm u case OL, v case OL, w case OL; "
	checkTrade(t, []tradeCase{
		{"a pair of a drive's is open", drive + cased + "ohm u v 12, u w 12, v w OL", []string{"One pair reads more than the two others together", "a probe missed its contact"}, []string{"suspect a winding"}, open, again, "common practice"},
		{"or far too high", drive + cased + "ohm u v 12.0, u w 12.1, v w 40.2", []string{"One pair reads more than the two others together"}, []string{"suspect a winding"}, open, again, "common practice"},
		{"one that may be", drive + "ohm u v 12.0, u w 12.1, v w 7.0", []string{"suspect a winding"}, []string{"One pair"}, nil, "", "common practice"},
		{"of any compressor", "unit fridge; fault clicks, no cool; safe; ohm a case OL, b case OL, c case OL; ohm a b 4.1, a c 6.2, b c OL", []string{"Contradiction", "Read all again"}, nil, open, again, "common practice"},
		{"read again", "unit fridge; fault clicks, no cool; safe; ohm a b 4.1, a c 6.2, b c OL; ohm b c 10.3", nil, []string{"Contradiction"}, nil, "", "common practice"},
	})
}

// What cools by absorption or by a thermoelectric module has no compressor, and is weighed
// by level, heat, air at its back and what drives it: common practice.
func TestCoolersWithoutACompressor(t *testing.T) {
	const absorber, module = "unit absorption fridge, gas/electric; fault no cooling on 230v; plate volts 230, watts heater 125; ", "unit wine cooler, peltier; fault warm; "
	checkTrade(t, []tradeCase{
		{"its heater", absorber + "safe; ohm heater 423", []string{"heater: sound"}, nil, map[string]cause.State{"heater-failed": cause.RuledOut, "cooling-unit-blocked": cause.Open}, "", "ohms from watts and volts"},
		{"by the watts of its plate", "unit minibar absorption; fault not cold; plate volts 230, watts 60; safe; ohm heater 882", []string{"heater: sound"}, nil, nil, "", "ohms from watts and volts"},
		{"not level", absorber + "saw heats; saw not level", []string{"Cause supported: cabinet leans"}, nil, map[string]cause.State{"not-level": cause.Supported}, "set the feet", "common practice"},
		{"what it has not is not asked for", absorber + "missing", []string{"cabinet level", "air at its back"}, []string{"fan seen", "start observed", "frost"}, nil, "", "common practice"},
		{"a unit that does not circulate", absorber + "volt line 230; saw heats; saw level; saw back clear; saw boiler hot absorber cold", nil, nil, map[string]cause.State{"cooling-unit-blocked": cause.Supported, "not-level": cause.RuledOut}, "replace the cooling unit", "common practice"},
		{"a module that gets nothing", module + "volt line 119; volt module 0.0 run", []string{"volts at module: failed"}, nil, map[string]cause.State{"module-not-fed": cause.Supported, "module-failed": cause.RuledOut}, "", "common practice"},
		{"one that is fed and dead", module + "volt line 119; saw back clear; volt module 12.1 dc run; saw module dead", nil, nil, map[string]cause.State{"module-not-fed": cause.RuledOut, "module-failed": cause.Supported}, "replace the module", "common practice"},
		{"any other wine cooler", "unit wine cooler; fault warm", nil, []string{"thermoelectric"}, map[string]cause.State{"compressor-weak": cause.Open}, "", "common practice"},
	})
}

// The one marking typed is of what is called a capacitor and no more: common practice.
func TestOnlyMarkingOfACapacitor(t *testing.T) {
	const at = "unit fridge; fault clicks; plate mfd run 4; safe; "
	failed := map[string]cause.State{"run-cap-failed": cause.Supported}
	checkTrade(t, []tradeCase{
		{"cap", at + "mfd cap 2.1", []string{"run capacitor: failed"}, nil, failed, "", "common practice"},
		{"c1", at + "mfd c1 2.1", []string{"failed"}, nil, failed, "", "common practice"},
		{"sound", at + "mfd cap 4.00", []string{"sound"}, nil, nil, "", "common practice"},
		{"far off: perhaps another can", at + "mfd cap 61", []string{"cannot tell", "name the can"}, nil, nil, "", "common practice"},
		{"two are marked", at + "plate mfd start 61; mfd cap 2.1", []string{"cannot tell, the marked µF is needed"}, nil, nil, "", "common practice"},
		{"by its own name", at + "mfd fan 2.1", []string{"cannot tell, the marked µF is needed"}, nil, nil, "", "common practice"},
	})
}
