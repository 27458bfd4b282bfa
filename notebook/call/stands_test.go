package call

import (
	"slices"
	"strings"
	"testing"

	"ohmcall/notebook/record"
)

// What reads bad, is seen to fail or is told so once all was proved takes the proof back
// until it is right again; what is of another machine, of the old part, or a probe that
// missed does not: common practice.
func TestProofStands(t *testing.T) {
	for _, call := range []struct {
		begin         []string
		taken, stands string
	}{
		{[]string{"client A Invented", "unit fridge", "fault clicks, does not start", "plate volts 115, amps 1.2, lra 12", "volt line 118", "safe unplugged, 0 V at the block", "ohm A B 5.2, A C 9.0, B C 14.1", "ohm A case OL, B case OL, C case OL", "ohm ptc OL cold", "did replaced the start device", "ohm ptc 5.0 cold", "ohm earth 0.08", "saw starts", "amp comp 9 peak", "amp comp 1.1 run", "volt line 115 start", "temp freezer 60F", "+30min temp freezer 30F", "+30min temp freezer 10F", "+40min temp freezer -2F", "+30min temp freezer -4F"}, `ohm C A OL, B C OL
ohm C A 0.1
ohm overload OL
volt comp 80 run
volt line 0
saw cools slowly
saw device burnt
saw short cycles
saw cond-fan stopped
saw evap-fan stopped
saw won't restart
+60min saw comp stopped
saw freezer warm
+60min saw freezer 40F
note freezer back up to 40 overnight
note freezer at 40 this morning
note put the old one back
close will fail again soon`, `ohm A B OL
ohm C A 9.1, B C 14.0
ohm C A OL, B C OL | ohm C A 9.0, B C 14.1
volt comp 80 run | volt comp 115 run
volt line 0 | volt line 118
safe unplugged | volt line 0
saw evap-fan stopped | saw evap-fan runs
saw evap-fan stopped when the door is open
saw old relay burnt
on evap-fan | ohm 1 2 OL
amp evap-fan 5 run
note freezer at 0 this morning
note freezer warm on arrival
note ice maker not fitted
safe unplugged | volt comp 0
saw comp stopped, cycled off at temp
saw cycles off, cond-fan stopped
volt evap-fan 60 run`},
		{[]string{"client B Invented", "unit gas furnace", "fault no heat, flame goes out", "plate volts 115, hz 60", "volt line 118", "amp flame-rod 0.3uA run", "saw flame drops out", "did cleaned the flame rod", "ohm earth 0.08", "saw flame lights", "amp flame-rod 3.2uA run", "amp blower 4 run", "temp return 68F, supply 125F"}, `amp flame-rod 0.20uA
amp flame-sensor 0.40uA run
saw blower stopped
saw short cycles`, `amp flame-rod 0.20uA | amp flame-rod 3.1uA run
saw blower stopped | saw blower runs
note freezer at 40`},
		{[]string{"client C Invented", "unit electric water heater", "fault no hot water", "plate volts 240, watts 4500", "volt line 241", "safe breaker off, 0 V", "ohm upper-element OL", "did replaced the upper element", "ohm upper-element 12.8", "ohm upper-element case OL", "ohm earth 0.08", "amp heater 18.7 run", "saw heats", "temp water 120F"}, `volt line 120
volt L1 L2 120
volt L1 N 120, L2 N 0, L1 L2 120`, `volt line 120 | volt line 240`},
		{[]string{"client D Invented", "unit air conditioner", "fault does not cool, hums", "plate volts 230, amps 10, lra 50, mfd run-cap 35", "volt line 235", "safe disconnect out, 0 V", "mfd run-cap 12", "did replaced the run capacitor", "mfd run-cap 35.1", "ohm earth 0.08", "saw starts", "amp comp 40 peak", "amp comp 9.5 run", "volt line 232 start", "+20min temp return 75F, supply 56F", "+5min temp return 75F, supply 55F"}, `ohm C A OL, B C OL
saw run cap bulging`, `ohm A B OL
saw old cap bulging
note old run cap was bulging`},
	} {
		for i, lines := range []string{call.taken, "note blue dot\n" + call.stands} {
			for _, line := range strings.Split(lines, "\n") {
				c := New()
				for _, l := range append(slices.Clone(call.begin), strings.Split(line, " | ")...) {
					if _, err := c.Apply(c.Clock(l, testDay), l); err != nil {
						t.Fatal(l, err)
					}
				}
				if got := c.result(); (got == record.Proved) != (i == 1) {
					t.Errorf("%s, %s: %s, %q", call.begin[1], line, got, c.proofMissing())
				}
			}
		}
	}
	// What is warm before the cold was proved is only on its way.
	c := applyAll(t, "unit fridge", "fault no cool", "did cleaned the condenser", "note freezer at 40")
	if n := c.seenAgain(); n > 0 {
		t.Errorf("on its way: told again at %d", n)
	}
	// What failed before the repair takes nothing back.
	c = applyAll(t, slices.Insert(slices.Clone(provedDryer), 5, "volt line 0", "volt line 241", "saw does not heat")...)
	if got := c.result(); got != record.Proved {
		t.Errorf("failed before: %s, %q", got, c.proofMissing())
	}
}
