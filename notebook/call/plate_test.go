package call

import (
	"strings"
	"testing"

	"ohmcall/calc/cause"
)

// answer is the reply to the last of several lines, as typed live, or why it
// was refused.
func answer(t testing.TB, lines string) string {
	t.Helper()
	c := New()
	got := ""
	for _, l := range strings.Split(lines, "; ") {
		e, err := c.Apply(nine, c.Expand(l))
		if err != nil {
			got = "refused: " + err.Error()
			continue
		}
		got = e.Reply.Plain()
	}
	return got
}

func answers(t *testing.T, rows [][2]string) {
	t.Helper()
	for _, r := range rows {
		if got := answer(t, r[0]); !strings.Contains(got, r[1]) {
			t.Errorf("%s:\n%s\nwant %q", r[0], got, r[1])
		}
	}
}

// A plate's slash is two values except in horsepower, and its dash a range;
// that 208/230 and 220-240 are one connection and 115/230 two is common
// practice, 230 V for 220-240 is IEC 60038 (from memory).
func TestTwoValuesOnThePlate(t *testing.T) {
	answers(t, [][2]string{
		{"plate hp 1/6; plate(hp) in W", "= 124.3 W"},
		{"plate mfd 45/5", "Plate of compressor: mfd herm 45, mfd fan 5."},
		{"plate mfd C1 45/5 6%", "name each: plate mfd herm 45 6%, mfd fan 5 6%"},
		{"plate mfd herm 45, mfd fan 5; mfd fan 4.9", "run capacitor fan: sound"},
		{"plate mfd start 88-108; mfd start 97", "sound"},
		{"plate volts 115/230", "plate volts 115, or: plate volts 230"},
		{"plate volts 120-240", "plate volts 120, or: plate volts 240"},
		{"plate volts 220-240; volt line 231", "limit 207 to 253 V"},
		{"plate volts 240/220; plate(volts)", "= 230 V"},
		{"plate volts 208/230; volt line 241", "limit 216 to 252 V"},
		{"plate volts 208-230; volt line 205", "limit 187.2 to 218.4 V"},
		{"plate hz 50/60", "plate hz 50, or: plate hz 60"},
		{"plate amps 12/6", "plate amps 12"},
		{"plate lra 1/6", "lra takes one value"},
		{"mfd C1 45/5", "mfd herm 44.6, fan 4.9"},
		{"ohm A B 7/2", "(7/2)"},
		{"ohm A B (7/2); ohm(A, B)", "3.5"},
	})
}

// A marking judges the can that it was typed for.
func TestMarkingOfItsOwn(t *testing.T) {
	answers(t, [][2]string{
		{"plate mfd 12; mfd C1 11.8", "sound"},
		{"plate mfd 45; mfd C1 4.8", "cannot tell, 4.8 µF is far from the one marking typed, 45; name the can that is marked so: plate mfd C1 …"},
		{"plate mfd 45; mfd C1 44.8; mfd C2 4.8", "plate mfd C2 …"},
		{"plate mfd 45; mfd C1 44.8; mfd C2 4.98; plate mfd C2 5 10%", "run capacitor C2: sound, -0.4 % off"},
		{"plate mfd 45; mfd C1 0.3", "failed"},
		{"plate mfd C2 45; mfd C1 44.8", "plate mfd C1 …"},
		{"plate mfd run 12; mfd run-cap 11.9", "sound"},
		{"plate run cap, mfd 5; mfd run-cap 2.1", "run capacitor run-cap: failed"},
		{"plate run cap, mfd 5; mfd run-cap 25", "cannot tell, 25 µF is far from the one marking typed"},
		{"unit window air conditioner; plate mfd 35; mfd run-cap 5", "cannot tell, 5 µF is far from the one marking typed"},
		{"mfd C1 4.8", "needed to judge it: plate mfd C1 …"},
	})
}

// The plate's frequency and the unit of temperatures hold for sums too.
func TestSumsKnowTheCall(t *testing.T) {
	answers(t, [][2]string{
		{"plate volts 230, hz 50; cap_load(4.2A, 330V)", "= 40.5 µF\nAt 50 Hz, from the plate."},
		{"on cond-fan; plate hz 50; on compressor; reactance_c(35uF)", "= 90.9 Ω"},
		{"plate hz 50; on cond-fan; plate hz 60; cap_load(4.2A, 330V)", "At 60 Hz, from the plate."},
		{"units F; cool_final(75, 60, 50)", "= 30 °F"},
		{"units C; cool_final(75F, 60F, 50F)", "= -1.1 °C"},
		{"75F - 55F", "= 20 Fdiff"},
	})
}

// What a place can have is common practice; a bare temperature is told once.
func TestBareAndBeyond(t *testing.T) {
	const told = "is taken as °C"
	answers(t, [][2]string{
		{"temp fridge 5", "5 is taken as °C. Type 5F for °F, or units F for all that follow."},
		{"ohm ptc 5.2 at 70", "70 is taken as °C"},
		{"units F; temp fridge 38", "Entry 2: fridge 38 °F"},
		{"units F; ohm sensor 9.8k at 77; ohm(sensor)", "9.8"},
		{"temp fridge 52", "52 °C is beyond what a fridge has, -30 °C to 45 °C (common practice). If it is a slip: strike 1 misread; if it was °F, then: temp fridge 52F."},
		{"temp room 78", "temp room 78F"},
		{"temp oven 2000F", "beyond what an oven has, -22 °F to 1022 °F"},
		{"volt line 1180", "1180 V is beyond"},
		{"plate volts 115; volt line 400", "400 V is beyond what is found there, at most about 345 V"},
		{"amp comp 1150", "1150 A is beyond"},
		{"plate lra 12; amp comp 30 peak", "at most about 24 A"},
	})
	for _, lines := range []string{"temp fridge 5; temp fridge 6", "units C; temp fridge 5", "temp fridge 5C", "temp fridge 41F", "ohm ptc 5.2 at 70F"} {
		if got := answer(t, lines); strings.Contains(got, told) {
			t.Errorf("%s is told of °C: %s", lines, got)
		}
	}
	for _, lines := range []string{"temp oven 480F", "temp freezer -20F", "volt line 241", "plate volts 115; volt cap 420", "plate lra 12; amp comp 14 peak"} {
		if got := answer(t, lines); strings.Contains(got, "beyond") {
			t.Errorf("%s is asked about: %s", lines, got)
		}
	}
}

func TestOneCompressor(t *testing.T) {
	answers(t, [][2]string{
		{"on comp", "At hand: compressor."},
		{"on comp; ohm A B 3.0; on Compressor; ohm A C 8.0; ohm B C 11.0; roles", "A is common"},
		{"on cond-fan; on Cond-Fan", "At hand: cond-fan."},
	})
	c := New()
	for _, l := range []string{"ohm A B 3.0", "on cond-fan", "ohm A B 40.0"} {
		must(t, c, l)
	}
	rows := must(t, c, "show readings").Reply.Table.Rows
	if rows[0][2] != "A–B" || rows[1][2] != "cond-fan A–B" {
		t.Errorf("two machines are shown as %v", rows)
	}
}

// The hint for a sum that lacks something names what it lacks, and the line
// it proposes is taken.
func TestWorthHint(t *testing.T) {
	answers(t, [][2]string{
		{"worth", "worth repair-cost …, replacement-price …"},
		{"worth age 9, replacement-price 650, hour-rate 80", "worth repair-cost …"},
		{"worth age 9, replacement-price 650, hour-rate 80; worth repair-cost 180", "Over 10 years"},
		{"help worth", "replacement-price: a like machine, delivered (to be given)"},
	})
}

// A sheet that gives each winding what the other reads condemns neither: start and run
// are exchanged on it or by the ohms. A winding far below its sheet is not sound because
// it adds up. Common practice.
func TestSheetAgainstRoles(t *testing.T) {
	const start = "unit refrigerator; fault clicks, does not start; safe; "
	checkTrade(t, []tradeCase{
		{"exchanged", start + "plate ohms start 4.1 5%, ohms run 9.8 5%; ohm A B 4.1, A C 9.8, B C 13.9", []string{"start winding: suspect, start winding reads 9.8 Ω, what the sheet gives the other", "run winding: suspect"}, []string{"failed", "shorted turns", "Cause supported"}, nil, "", "common practice"},
		{"told when the plate comes later", start + "ohm A B 9.8, A C 4.1, B C 13.9; plate ohms start 4.1, ohms run 9.8", []string{"start winding: suspect", "run winding: suspect"}, []string{"failed"}, nil, "", "common practice"},
		{"as the sheet says", start + "plate ohms start 9.8 5%, ohms run 4.1 15%; ohm A B 4.1, A C 9.8, B C 13.9", []string{"start winding: sound"}, []string{"exchanged"}, nil, "", "common practice"},
		{"far below", start + "plate ohms run 3.4 5%, ohms start 6.6 5%; ohm A B 2.0, A C 6.6, B C 8.5", []string{"run winding: failed", "Cause supported: winding grossly shorted"}, nil,
			map[string]cause.State{"winding-shorted": cause.Supported}, "", "common practice"},
		{"a little below", start + "plate ohms run 9.8 5%, ohms start 14.2 5%; ohm A B 8.7, A C 14.3, B C 23.0", []string{"run winding: failed"}, []string{"Cause supported"},
			map[string]cause.State{"winding-shorted": cause.RuledOut}, "", "common practice"},
	})
	c := applyAll(t, strings.Split(start+"plate ohms start 4.1 5%, ohms run 9.8 5%; ohm A B 4.1, A C 9.8, B C 13.9", "; ")...)
	if got := strings.Join(c.Record().Alerts, "\n"); !strings.Contains(got, "Contradiction: start and run by the ohms are run and start by the sheet (entries 4, 5)") {
		t.Error(got)
	}
}

// A start with a kit shows a tight compressor only where the machine's own device, and
// the start capacitor that it has, were sound. Common practice.
func TestStartWithKit(t *testing.T) {
	const start = "unit refrigerator; fault clicks, does not start; safe; ohm A B 3.4, A C 6.5, B C 9.8; ohm A case OL, B case OL, C case OL; "
	tight := func(s cause.State) map[string]cause.State { return map[string]cause.State{"compressor-tight": s} }
	checkTrade(t, []tradeCase{
		{"nothing read", start + "saw starts with start kit; causes", nil, []string{"Cause supported"}, tight(cause.Open), "", "common practice"},
		{"the device sound", start + "ohm ptc 5.1 cold; saw starts with start kit", []string{"Cause supported: compressor tight"}, nil, tight(cause.Supported), "", "common practice"},
		{"the device dead", start + "ohm ptc OL cold; saw starts with start kit; causes", nil, nil, map[string]cause.State{"compressor-tight": cause.Open, "start-device-failed": cause.Supported}, "", "common practice"},
		{"another of its kind tried", start + "saw no start with new relay; saw starts with start kit", []string{"Cause supported: compressor tight"}, nil, tight(cause.Supported), "", "common practice"},
		{"its capacitor not read", start + "plate mfd start 88-108; saw no start with new relay; saw starts with start kit; causes", nil, nil, map[string]cause.State{"compressor-tight": cause.Open, "start-cap-failed": cause.Open}, "", "common practice"},
		{"its capacitor dead", start + "plate mfd start 88-108; saw no start with new relay; mfd start-cap 12", []string{"Cause supported: start capacitor failed"}, []string{"does not explain"}, map[string]cause.State{"start-cap-failed": cause.Supported}, "", "common practice"},
		{"an inverter", start + "plate type inverter; saw starts with start kit", nil, []string{"compressor tight"}, nil, "", "common practice"},
	})
}
