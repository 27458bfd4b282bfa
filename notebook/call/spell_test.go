package call

import (
	"strings"
	"testing"
)

// What is stored is the full line in its one form, whatever was typed.
func TestSpelling(t *testing.T) {
	rows := []struct{ before, typed, stored string }{
		{"", "Ohm A B 3.4", "ohm A B 3.4"},
		{"", "CLOSE", "close"},
		{"", "Client Petra Placeholder", "client Petra Placeholder"},
		{"", "Note Ohm: as read", "note Ohm: as read"},
		{"", "ohms A B 3.4", "ohm A B 3.4"},
		{"", "Amps comp 1.2 run", "amp comp 1.2 run"},
		{"", "amps 1.2", "amps 1.2"},
		{"", "ohms in kohm", "ohms in kohm"},
		{"let volts = 3V", "volts line 118", "volts line 118"},
		{"", "ohm A B: 3.4", "ohm A B 3.4"},
		{"", "ohm A B = 3.4, A C: 6.5", "ohm A B 3.4, A C 6.5"},
		{"", "?", "help"},
		{"", "? ohm", "help ohm"},
		{"", "9:15 temp freezer 3F", "09:15 temp freezer 3F"},
		{"", "9:15pm temp freezer 3F", "21:15 temp freezer 3F"},
		{"", "12:05 AM Temp freezer 3F", "00:05 temp freezer 3F"},
		{"", "12:05pm temp freezer 3F", "12:05 temp freezer 3F"},
		{"", "13:05pm temp freezer 3F", "13:05pm temp freezer 3F"},
		{"", "09:15:30 safe", "09:15:30 safe"},
		{"", "volt L1 G 120", "volt L1 G 120"},
		{"", "ohm A case 500 M", "ohm A case 500M"},
		{"", "ohm ptc ~3.4 k", "ohm ptc ~3.4k"},
		// A time behind its reading, or with its unit apart.
		{"", "temp freezer -8C +10min", "+10min temp freezer -8C"},
		{"", "temp freezer -8C +10 minutes", "+10min temp freezer -8C"},
		{"", "Temp freezer -8C, fridge 5C +1h10", "+1h10min temp freezer -8C, fridge 5C"},
		{"", "temp freezer -8C +2 hours", "+2h temp freezer -8C"},
		{"", "temp freezer -8C 30 min later", "+30min temp freezer -8C"},
		{"", "temp freezer -8C after 20 min", "+20min temp freezer -8C"},
		{"", "temp freezer -8C in 20 minutes", "+20min temp freezer -8C"},
		{"", "after 20 min temp freezer -8C", "+20min temp freezer -8C"},
		{"", "20 min temp freezer -8C", "+20min temp freezer -8C"},
		{"", "10min later temp freezer -8C", "+10min temp freezer -8C"},
		{"", "2 hours later, temp freezer -8C", "+2h temp freezer -8C"},
		{"", "temp freezer -8C after", "temp freezer -8C after"},
		{"", "2pm temp freezer -8C", "14:00 temp freezer -8C"},
		{"", "20 min * 3", "20 min * 3"},
		{"", "5 min in s", "5 min in s"},
		{"", "5 pm in m", "5 pm in m"},
		{"", "20 min note came", "20 min note came"},
		{"", "temp freezer -8C at 9:15pm", "21:15 temp freezer -8C"},
		{"", "ohm A C OL @ 9:15", "09:15 ohm A C OL"},
		{"", "amp comp 1.2 run 14:30", "14:30 amp comp 1.2 run"},
		{"temp freezer 3C", "freezer -8C +10min", "+10min temp freezer -8C"},
		{"temp freezer 3C", "+10 min freezer -8C", "+10min temp freezer -8C"},
		{"", "saw starts 14:30", "saw starts 14:30"},
		{"", "note came later", "note came later"},
		{"", "3 min + 10min", "3 min + 10min"},
		{"", "amp comp 3 + 5", "amp comp 3 + 5"},
		{"", "14:00 temp freezer -8C +10min", "14:00 temp freezer -8C +10min"},
		{"ohm A B 3.4", "C 6.5", "ohm A C 6.5"},
		{"ohm A B 3.4; ohm B C 126; strike 2 slip", "B C 12.6", "ohm B C 12.6"},
		{"ohm A B 3.4; strike 1 slip", "C 6.5", "C 6.5"},
		{"ohm ptc 52; strike 1 slip", "ptc 5.2", "ohm ptc 5.2"},
		{"", "psi 118/340 run", "psi suction 118 run, discharge 340 run"},
		{"", "psi 118 over 340 run", "psi suction 118 run, discharge 340 run"},
		{"", "psi 118 / 340", "psi suction 118, discharge 340"},
		{"", "psi 118 340 run", "psi suction 118 run, discharge 340 run"},
		{"", "psi 340/118 run", "psi 340/118 run"},
		{"", "psi suction 118 run", "psi suction 118 run"},
		// Inches of mercury on a gauge are a vacuum.
		{"", "psi suction 5inHg", "psi suction -5inHg"},
		{"", "psi suction 28 inHg run", "psi suction -28inHg run"},
		{"", "psi suction 5 inHg vac", "psi suction -5inHg"},
		{"", "psi suction -5 inHg vac run", "psi suction -5 inHg run"},
		{"", "psi suction vacuum 10", "psi suction -10inHg"},
		{"", "psi suction 10 inches of vacuum run", "psi suction -10inHg run"},
		{"", "psi suction 10 vac run, discharge 70 run", "psi suction -10inHg run, discharge 70 run"},
		{"psi suction 5 run", "suction 7inHg run", "psi suction -7inHg run"},
		{"", "psi suction -25inHg", "psi suction -25inHg"},
		{"", "psi suction 5psi run", "psi suction 5psi run"},
		{"", "psi suction 500microns", "psi suction 500microns"},
		{"", "psi suction 29.9inHga", "psi suction 29.9inHga"},
		{"", "volt line 118 vac", "volt line 118V"},
		{"", "10inHg in psi", "10inHg in psi"},
		{"plate gas R-410A", "sat_temp(118psi)", `sat_temp("R-410A", 118psi)`},
		{"plate gas R-410A", "sat_press(40F)", `sat_press("R-410A", 40F)`},
		{"plate gas R-410A", "sat_temp(psi(suction))", `sat_temp("R-410A", psi(suction))`},
		{"plate gas R-410A", `sat_temp("R-22", 68psi)`, `sat_temp("R-22", 68psi)`},
		{"plate gas R-410A", `sat_temp("R-22")`, `sat_temp("R-22")`},
		{"", "part ptc, 1, 24,50", "part ptc, 1, 24.50"},
		{"", "part ptc, 1, 24.50", "part ptc, 1, 24.50"},
		{"", "wire brown pin B", "wire brown B"},
		{"", "wire brown common", "wire brown common"},
		// A letter for a quantity is no pin, unless it is one.
		{"ohm heater 24", "W 120", "W 120"},
		{"ohm bake 20", "A 12.5", "A 12.5"},
		{"ohm bake 20", "broil 21", "ohm broil 21"},
		{"ohm B C 3.4", "A 6.5", "ohm B A 6.5"},
		{"ohm C R 2", "S 4", "ohm C S 4"},
		{"ohm V W 2, U V 2", "W 2", "ohm U W 2"},
		{"ohm C R 2; ohm bake 20", "R S 4", "ohm R S 4"},
		// Below zero is below zero.
		{"", "temp freezer 5 below zero", "temp freezer -5"},
		{"", "temp freezer 5F below zero", "temp freezer -5F"},
		{"", "temp freezer 5 °F below zero after", "temp freezer -5F after"},
		{"", "temp freezer 5 degrees below zero", "temp freezer -5"},
		{"", "temp freezer ~5 below, fridge 38F", "temp freezer ~-5F, fridge 38F"},
		{"temp freezer -2F", "temp freezer 5 below", "temp freezer -5F"},
		{"temp freezer -2F", "freezer 5 below zero", "temp freezer -5F"},
		{"", "temp freezer neg 5F", "temp freezer -5F"},
		{"temp freezer -3F", "temp freezer -2 deg F", "temp freezer -2 F"},
		{"temp freezer -3F", "temp freezer 5 F below zero", "temp freezer -5F"},
		{"", "temp freezer 5F below freezing", "temp freezer 5F below freezing"},
		{"", "temp freezer 5F below target", "temp freezer 5F below target"},
		{"", "temp freezer -5 below zero", "temp freezer -5 below zero"},
		{"", "note 5 below zero", "note 5 below zero"},
		// A bare temperature is in the unit of those before it.
		{"temp freezer -2F", "temp fridge 38", "temp fridge 38F"},
		{"temp freezer -2F", "temp supply 55, return 75", "temp supply 55F, return 75F"},
		{"temp freezer -2F", "temp freezer 0 after", "temp freezer 0F after"},
		{"", "temp fridge 38, freezer -2F", "temp fridge 38F, freezer -2F"},
		{"", "temp freezer -2F, fridge 38", "temp freezer -2F, fridge 38F"},
		{"temp freezer -2F; temp freezer -19C", "temp fridge 3", "temp fridge 3"},
		{"temp fridge 38F; temp freezer -19C", "temp fridge 39", "temp fridge 39F"},
		{"temp freezer -19", "temp fridge 4", "temp fridge 4"},
		{"temp freezer -2F; strike 1 slip", "temp fridge 4", "temp fridge 4"},
		{"units C; temp freezer -2F", "temp fridge 4", "temp fridge 4"},
		{"temp freezer -2F", "temp fridge 4C", "temp fridge 4C"},
		{"temp freezer -2F", "temp fridge 4C, cabinet 5", "temp fridge 4C, cabinet 5"},
		{"", "temp room 72F, fridge 4C, freezer 3", "temp room 72F, fridge 4C, freezer 3"},
		{"unit washer; fault wont drain", "ohm pump OL", "ohm 1 2 OL"},
		{"unit washer; fault wont drain", "ohm drain-pump 14.2", "ohm 1 2 14.2"},
		{"unit washer; fault wont drain", "ohm drain pump 14.2", "ohm 1 2 14.2"},
		{"unit washer; fault wont drain", "amp drain pump 0.9", "amp drain pump 0.9"},
		{"unit washer; fault wont drain; on motor", "ohm pump OL", "ohm pump OL"},
		{"unit fridge; fault clicks", "ohm pump OL", "ohm pump OL"},
		{"", "500micron in mbar", "500micron in mbara"},
		{"", "let v = 500 Microns in Pa", "let v = 500 Microns in Paa"},
		{"", "500 micron in mbarg", "500 micron in mbarg"},
		{"", "note 500 micron in Pa", "note 500 micron in Pa"},
		{"", "14.7psia in psi", "14.7psia in psi"},
		// A place keeps the unit that it was read in while units says nothing.
		{"temp fridge 60F", "+1h temp fridge 38", "+1h temp fridge 38F"},
		{"temp fridge 60F", "fridge 38 after", "temp fridge 38F after"},
		{"temp fridge 60F", "temp freezer 5, fridge ~38", "temp freezer 5F, fridge ~38F"},
		{"temp fridge 60F; strike 1 slip", "temp fridge 38", "temp fridge 38"},
		{"temp fridge 60F; units C", "temp fridge 4", "temp fridge 4"},
		{"temp fridge 60F; temp fridge 15C", "temp fridge 4", "temp fridge 4"},
		{"temp fridge 15C", "temp fridge 4", "temp fridge 4"},
		// A part without commas.
		{"", "part relay RL-77 1 18.40", "part relay RL-77, 1, 18.40"},
		{"", "part relay RL-77 3 €18.40", "part relay RL-77, 3, 18.40"},
		{"", "part relay RL-77 1 18,40", "part relay RL-77, 1, 18.40"},
		{"", "part board CB-2 serial DEMO-B-0042 1 85.00", "part board CB-2 serial DEMO-B-0042, 1, 85.00"},
		{"", "part run capacitor 35 1 18.40", "part run capacitor 35, 1, 18.40"},
		{"", "part relay RL-77, 1, 18.40", "part relay RL-77, 1, 18.40"},
		{"", "part relay RL-77", "part relay RL-77"},
		// What is a pin stays one, also by the name of a leg or a letter of the units.
		{"ohm U V 5.1", "W 5.2", "ohm U W 5.2"},
		{"ohm L1 L2 5.1", "L3 5.2", "ohm L1 L3 5.2"},
		{"ohm L1 L2 5.1; ohm L1 L3 5.2", "L2 L3 5.2", "ohm L2 L3 5.2"},
		{"ohm L1 L2 5.1", "L1 L2 5.2", "ohm L1 L2 5.2"},
		{"ohm B C 5.1", "A 1.4", "ohm B A 1.4"},
		{"ohm A case OL", "A 1.4", "ohm A case 1.4"},
		{"ohm A V 5.1", "V 5.2", "ohm A V 5.2"},
		{"ohm A B 5.1", "blk 5.2", "ohm A blk 5.2"},
		{"volt line 119", "L1 N 120", "volt L1 N 120"},
		// Pins and points.
		{"ohm A B 3.4", "ohm BA 3.4", "ohm B A 3.4"},
		{"", "ohm CR 3.0", "ohm C R 3.0"},
		{"", "ohm cs 4.2, SR 7.2", "ohm c s 4.2, S R 7.2"},
		{"", "ohm AB 3.4", "ohm A B 3.4"},
		{"", "ohm C1 3.4", "ohm C1 3.4"},
		{"", "ohm A-B 3.4", "ohm A B 3.4"},
		{"", "ohm A/B 3.4, C-case OL", "ohm A B 3.4, C case OL"},
		{"", "ohm A to B 3.4", "ohm A B 3.4"},
		{"", "ohm A and case OL", "ohm A case OL"},
		{"", "ohm 1 - 2 3.4", "ohm 1 2 3.4"},
		{"", "ohm run-com 3.1, start/com 4.2", "ohm run com 3.1, start com 4.2"},
		{"", "ohm c-s=4.2;c-r=3.1;s-r=7.3", "ohm c s 4.2, c r 3.1, s r 7.3"},
		{"", "ohm 1-2 3,4 and 1-3 6.5 / 2-3 9.9", "ohm 1 2 3.4, 1 3 6.5, 2 3 9.9"},
		{"", "temp freezer -2F and fridge 38F", "temp freezer -2F, fridge 38F"},
		{"", "ohm 1 and case OL", "ohm 1 case OL"},
		{"", "ohm red and blue 4.4", "ohm red blue 4.4"},
		{"", "ohm A B 4.2 K", "ohm A B 4.2k"},
		{"", "ohm A B 4.2omh", "ohm A B 4.2ohm"},
		{"", "ohm A case 500M @500V", "ohm A case 500M test 500V"},
		{"", "volt L1-L2 240", "volt L1 L2 240"},
		{"", "volt LN 118", "volt L N 118"},
		{"", "mfd C herm 18", "mfd herm 18"},
		{"", "mfd fan to C 5", "mfd fan 5"},
		{"", "mfd C 18", "mfd C 18"},
		{"ohm C S 4.2", "CR 3.0", "ohm C R 3.0"},
		// Values.
		{"", "ohm A case >200M", "ohm A case >200M"},
		{"", "ohm A case 200M+", "ohm A case >200M"},
		{"", "ohm A case > 200 meg", "ohm A case >200M"},
		{"", "ohm A case over 200M", "ohm A case >200M"},
		{"", "ohm A case 50meg", "ohm A case 50M"},
		{"", "ohm A case 50 Megohms test 500V", "ohm A case 50M test 500V"},
		{"", "ohm A case infinite", "ohm A case OL"},
		{"", "ohm A case o/l.", "ohm A case OL"},
		{"", "ohm heater O.L.", "ohm heater O.L"},
		{"", "ohm A B 3.4.", "ohm A B 3.4"},
		{"", "ohm  A   B  3.4", "ohm A B 3.4"},
		{"", "ohm A\u00a0B\u00a03.4\u202fΩ", "ohm A B 3.4 Ω"},
		{"", "ohm A B about 6.5", "ohm A B ~6.5"},
		{"", "ohm A B ≈6.5", "ohm A B ~6.5"},
		{"", "temp freezer minus 2", "temp freezer -2"},
		{"", "temp freezer –2F", "temp freezer -2F"},
		{"", "temp freezer 38 degrees F", "temp freezer 38 F"},
		{"", "volt line 118 VAC", "volt line 118V"},
		{"", "volt line 118 v.", "volt line 118 v"},
		{"", "trip 8 seconds", "trip 8s"},
		// A comma between digits.
		{"", "ohm A B 3,4", "ohm A B 3.4"},
		{"", "ohm A B 3,45, A C 6,5 cold", "ohm A B 3.45 cold, A C 6.5 cold"},
		{"", "ohm A B 3,A C 6", "ohm A B 3, A C 6"},
		{"", "amp comp 1,2A run", "amp comp 1.2A run"},
		{"", "volt 118, 117", "volt 118, 117"},
		{"", "ohm 1 2 3,1 3 6", "ohm 1 2 3, 1 3 6"},
		{"", "watt unit 1,200", "watt unit 1,200"},
		// Conditions.
		{"", "amp comp 1.1A running", "amp comp 1.1A run"},
		{"", "Amp comp 14 Starting.", "amp comp 14 start"},
		{"", "amp comp 14 inrush", "amp comp 14 peak"},
		{"", "amp comp 14 lra", "amp comp 14 peak"},
		{"", "amp comp 14 locked rotor", "amp comp 14 run"},
		{"", "ohm ptc 5.2 Cold", "ohm ptc 5.2 cold"},
		{"", "ohm sensor 10k @25C", "ohm sensor 10k at 25C"},
		{"", "ohm A case OL, B case OL after", "ohm A case OL after, B case OL after"},
		{"", "ohm A case OL, B case OL, C case OL test 500V", "ohm A case OL test 500V, B case OL test 500V, C case OL test 500V"},
		{"", "ohm A B 3.4, A C 6.5 hot", "ohm A B 3.4 hot, A C 6.5 hot"},
		{"", "temp freezer -2F, fridge 38F after", "temp freezer -2F after, fridge 38F after"},
		{"", "ohm A B 3.4, A case OL test 500V", "ohm A B 3.4, A case OL test 500V"},
		{"", "volt line 118, line 104 start", "volt line 118, line 104 start"},
		{"", "ohm ptc 5.2, overload 0.2 cold", "ohm ptc 5.2, overload 0.2 cold"},
		{"", "ohm A case OL before, B case OL after", "ohm A case OL before, B case OL after"},
		{"", "ohm A B 3,4 # as read", "ohm A B 3.4 # as read"},
		{"", "ohm A B (3 + 4)", "ohm A B (3 + 4)"},
		// What a list or a page puts before a line.
		{"", "- ohm A B 3.4", "ohm A B 3.4"},
		{"", "1. ohm A B 3.4", "ohm A B 3.4"},
		{"", "2) 9:15 temp freezer 3F", "09:15 temp freezer 3F"},
		{"", "• [ ] saw clicks", "saw clicks"},
		{"", "call: ohm A B 3.4", "ohm A B 3.4"},
		{"ohm A B 3.4", "> C 6.5", "ohm A C 6.5"},
		{"", "- 3 + 4", "- 3 + 4"},
		{"", "- ohm (A, B)", "- ohm (A, B)"},
		// Quotes of phones.
		{"", "saw “clicks”", `saw "clicks"`},
		{"", "strike 5 “probe slipped”", `strike 5 "probe slipped"`},
		{"", "note he said “clicks” twice", "note he said “clicks” twice"},
		{"", "let a = 3V “as read”", `let a = 3V "as read"`},
		// Slips.
		{"ohm A B 3.4", "undo", "strike 1 taken back"},
		{"ohm A B 3.4", "Oops probe slipped", "strike 1 probe slipped"},
		{"ohm A B 3.4; note x", "oops 1 wrong pins", "strike 1 wrong pins"},
		{"ohm A B 3.4; note x; undo", "undo that", "strike 1 taken back"},
		{"ohm A B 3.4; next; close", "undo", "strike 1 taken back"},
		{"let undo = 3V", "undo", "undo"},
		{"temp freezer 20F; note hi", "undo temp", "strike 1 taken back"},
		{"temp freezer 20F; note hi", "undo freezer", "strike 1 taken back"},
		{"temp freezer 20F; temp fridge 50F; note hi", "undo temp freezer misread", "strike 1 misread"},
		{"temp freezer 20F; temp fridge 50F; note hi", "undo temp", "strike 2 taken back"},
		{"ohm A B 3.4; ohm A C 6; tech Sam", "undo ohm", "strike 2 taken back"},
		{"ohm A B 3.4; ohm A C 6; tech Sam", "undo ohm A B", "strike 1 taken back"},
		{"temp freezer 20F; strike 1 slip; temp freezer 5F; strike 3 slip; note temp", "undo temp", "strike temp temp"},
		{"temp freezer 20F; note hi", "undo ohm", "strike ohm ohm"},
		{"temp freezer 20F; note temp hi", "undo note", "strike 2 taken back"},
		{"temp freezer 20F; note hi", "undo slip of the pen", "strike 2 slip of the pen"},
		{"temp freezer 20F; note hi", "undo last", "strike 2 last"},
		{"", "undo", "undo"},
		// A value with a condition stays where the last one was read.
		{"amp comp 1.1 run", "14 inrush", "amp comp 14 peak"},
		{"volt L N 118", "104 start", "volt L N 104 start"},
		{"ohm A case OL", "OL after", "ohm A case OL after"},
		{"amp comp 1.1 run; strike 1 slip", "14 peak", "14 peak"},
		{"amp comp 1.1 run", "14", "14"},
		{"amp comp 1.1 run", "14 in A", "14 in A"},
		{"amp comp 1.1 run", "14 at 25C", "amp comp 14 at 25C"},
		// Times, and what is none.
		{"", "14.30 temp freezer -2F", "14:30 temp freezer -2F"},
		{"", "1430 volt line 118", "14:30 volt line 118"},
		{"", "+40 minutes temp freezer -2F", "+40min temp freezer -2F"},
		{"", "240 volt / 12 ohm", "240 volt / 12 ohm"},
		{"", "1200 watt in kW", "1200 watt in kW"},
		{"", "1200 watt", "1200 watt"},
		{"", "118 volt line", "118 volt line"},
		{"", "14.2 amp * 118 volt", "14.2 amp * 118 volt"},
		// A sum with a name of one's own is no reading.
		{"let r = 5ohm; ohm A B 3.4", "r > 20M", "r > 20M"},
		{"let r = 5ohm; ohm A B 3.4", "r - 3", "r - 3"},
		// Parts.
		{"", "ohm heater fuse OL", "ohm heater-fuse OL"},
		{"", "ohm float switch 0.1", "ohm float-switch 0.1"},
		{"", "ohm inlet valve hot 1000", "ohm inlet-valve-hot 1000"},
		{"", "ohm element-case OL", "ohm element case OL"},
		{"ohm P Q 5.0", "ohm all to ground OL after", "ohm P ground OL after, Q ground OL after"},
		{"", "ohm all case OL", "ohm all case OL"},
		{"", "mark A = c", "mark A common"},
		{"", "wire red to start", "wire red start"},
		{"", "plate volts: 115, amps=1.2", "plate volts 115, amps 1.2"},
		{"", "plate model X:12", "plate model X:12"},
		{"note x", "strike last", "strike 1 taken back"},
		{"", "next?", "next"},
		{"", "ohm?", "help ohm"},
		{"", "note: he is out", "note he is out"},
		// Other lines.
		{"", "next.", "next"},
		{"", "show Readings.", "show readings"},
		{"", "Plate Volts 115, LRA 12, Hz 60.", "plate volts 115, lra 12, hz 60"},
		{"", "note as it was.", "note as it was."},
	}
	for _, r := range rows {
		c := New()
		for _, l := range strings.Split(r.before, "; ") {
			if l != "" {
				must(t, c, c.Expand(l))
			}
		}
		got := c.Expand(r.typed)
		if got != r.stored {
			t.Errorf("after %q, %q is stored as %q, want %q", r.before, r.typed, got, r.stored)
		}
		if again := c.Expand(got); again != got {
			t.Errorf("%q is spelled again: %q", got, again)
		}
	}
}

func TestLeaving(t *testing.T) {
	answers(t, [][2]string{
		{"quit", "close ends the call; Ctrl-D stops and leaves it open"},
		{"Exit", "Ctrl-D"},
		{"done", "Ctrl-D"},
		{"done replaced relay", "perhaps did"},
		{"?", "mending and ending"},
		{"ohm A B open", "ohm A B OL"},
		{"amps 1.2", "amp comp …; from the plate: plate amps …"},
	})
}

// Every page that help names is there, and what can be narrowed is.
func TestHelpPages(t *testing.T) {
	screen := answer(t, "help")
	for _, p := range topics {
		if !strings.Contains(screen, " "+p.word) {
			t.Errorf("help does not name its page %s", p.word)
		}
		if got := answer(t, "help "+p.word); strings.HasPrefix(got, "refused") || !strings.Contains(got, "\n") {
			t.Errorf("help %s: %s", p.word, got)
		}
	}
	answers(t, [][2]string{
		{"help when", `seen("FINDING")`},
		{"help when", `when is(gas, "R-600a"): need safe`},
		{"help time", "after the entry before, not after now"},
		{"help conditions", "when CONDITION"},
		{"help findings fan", "cond-fan stopped: the condenser fan stands still"},
		{"help parts heat", "heater, defrost-heater"},
		{"help parts nothing", "refused: none of the parts"},
		{"help points", "none named is line"},
		{"help formulas", "capacitors            cap_load cap_energy"},
		{"help formulas capacitors", "cap_load(amps A, volts V, freq Hz = 60)"},
		{"help formulas nothing", "refused: there is no group"},
		{"help ohm nothing", "refused: more than help ohm takes"},
	})
	for _, l := range strings.Split(answer(t, "help formulas"), "\n") {
		if strings.HasPrefix(l, " ") {
			t.Errorf("a group is not named: %q", l)
		}
	}
	if n := strings.Count(answer(t, "help findings fan"), "\n"); n > 20 {
		t.Errorf("help findings fan has %d lines", n)
	}
}
