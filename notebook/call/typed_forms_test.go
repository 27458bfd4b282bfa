package call

import (
	"strings"
	"testing"
	"time"
)

// What technicians type without thinking is either taken for what it means or
// refused: never taken down as something else.
func TestReadingForms(t *testing.T) {
	rows := []struct{ line, want string }{
		{"ohm A B 0L", "A–B OL"},
		{"ohm A B O.L", "A–B OL"},
		{"ohm A B hot 3.4", "A–B 3.4 Ω"},
		{"ohm common start 8.0", "common–start 8.0 Ω"},
		{"ohm start run 11.0", "start–run 11.0 Ω"},
		{"ohm thermal fuse OL", "thermal-fuse OL"},
		{"ohm door switch 0.1 closed", "door-switch 0.1 Ω"},
		{"ohm relay contact inverted OL", "relay-contact OL"},
		{"ohm heater-1 heater-2 29.0", "heater-1-heater-2 29.0 Ω"},
		{"ohm earth door 0.10", "earth-door 0.10 Ω"},
		{"ohm C1 S 3.4", "C1–S 3.4 Ω"},
		{"ohm AB 3.4", "Joined: A and B"},
		{"volt start 104.0", "line 104.0 V"},
		{"amp comp start 14.0", "comp 14.0 A"},
		{"amp comp LRA 14", "start surge comp"},
		{"volt evap fan 0", "evap-fan 0 V"},
		{"volt evaporator fan 0", "evap-fan 0 V"},
		{"volt cond fan 118.0", "cond-fan 118.0 V"},
		{"volt drain pump 118", "drain-pump 118 V"},
		{"volt door switch 118", "door-switch 118 V"},
		{"volt defrost heater 117", "defrost-heater 117 V"},
		{"volt heater N 118", "heater–N 118 V"},
		{"volt heater L2 118", "heater–L2 118 V"},
		{"volt L1 L2 240", "L1–L2 240 V"},
		{"volt pump N 118", "pump–N 118 V"},
		{"amp cond fan 0.4", "cond-fan 0.4 A"},
		{"amp condenser fan 0.4 run", "cond-fan 0.4 A"},
		{"amp drain pump 1.4", "drain-pump 1.4 A"},
		{"watt drain pump 30", "drain-pump 30 W"},
		{"mfd run cap 11.8", "run-cap 11.8 µF"},
		{"mfd A B 11.8", "refused: mfd names one place"},
		{"temp evap coil 10F", "evap-coil 10 °F"},
		{"temp A B 10F", "refused: temp names one place"},
		{"ohm evap fan 28.0", "evap-fan has pins: on evap-fan"},
		{"ohm drain pump 28.0", "drain-pump has pins: on drain-pump"},
		{"ohm C F 28.0", "C–F 28.0 Ω"},
		{"ohm hot to ground 0.05", "insulation L to case: failed, 0.05 Ω to the case"},
		{"ohm hot ground OL", "insulation L to case: cannot tell, no gross fault"},
		{"ohm hot leg to frame 50k", "insulation L to case: failed, 50 kΩ to the case"},
		{"ohm hot to neutral 0.3", "plug, between its supply pins: failed, 0.3 Ω"},
		{"ohm L N 45.0", "plug, between its supply pins: sound"},
		{"ohm A B 3.4 hot", "A–B 3.4 Ω (±0.33) hot"},
		{"volt hot to neutral 120", "supply: sound, 120 V"},
		{"temp hot gas 180F", "hot-gas 180 °F"},
		{"temp cold side 40F", "cold-side 40 °F"},
		{"temp before drier 90F", "before-drier 90 °F"},
		{"temp run freezer 10", "freezer 10 °C (±1 °C) run"},
		{"volt run cap 330", "run-cap 330 V"},
		{"volt start line 104.0", "line 104.0 V (±1.3) start"},
		{"amp start winding 3.0 run", "start-winding 3.0 A"},
		{"amp run comp 1.2", "comp 1.2 A (±0.31) run"},
		{"ohm heater gnd OL", "heater to case: cannot tell, no gross fault"},
		{"ohm htr to gnd 0.4", "heater to case: failed, 0.4 Ω to the sheath"},
		{"ohm heater sheath OL", "heater–case OL"},
		{"ohm defrost htr 1 gnd OL", "defrost-heater-1–case OL"},
		{"ohm lf elem 30.0", "heater lf-element"},
		{"ohm ignitor 60.0", "igniter ignitor: cannot tell, not open"},
		{"ohm hsi 60.0", "cannot tell, not open"},
		{"temp fz -1F", "freezer -1 °F"},
		{"ohm moisture sensor OL", "sensor moisture-sensor: cannot tell, no thermistor"},
		{"ohm sensor bars OL", "sensor sensor-bars: cannot tell, no thermistor"},
		{"ohm water level sensor 24.0", "sensor water-level-sensor: cannot tell, no thermistor"},
		{"ohm oven sensor OL", "suspect, open"},
		{"ohm drum light OL", "lamp drum-light: cannot tell, open: a filament would be burnt out"},
		{"ohm light switch 0.1 closed", "switch light-switch: sound"},
		{"ohm spark module 0.1", "spark-module: cannot tell, no ohms judge electronics"},
		{"ohm control board OL", "control-board: cannot tell, no ohms judge electronics"},
		{"ohm display board fuse OL", "fuse display-board-fuse: failed"},
		{"ohm ice maker 70.0", "ice-maker: cannot tell, an assembly"},
		{"ohm cold control 0.1", "thermostat cold-control: cannot tell, closed"},
		{"ohm cold heater 32.0", "heater: cannot tell"},
		{"ohm hot surface igniter 60.0", "igniter hot-surface-igniter: cannot tell, not open"},
		{"ohm hot surface igniter case OL", "insulation hot-surface-igniter to case: cannot tell, no gross fault"},
		{"ohm flame rod case OL", "flame rod: cannot tell, open, as a sound rod is"},
		{"ohm inlet valve case 20k", "insulation inlet-valve to case: failed, 20 kΩ to the case"},
		{"ohm push button 0.1", "push-button is none of the parts that are judged here"},
		{"ohm start winding 3.1", "common–start 3.1 Ω"},
		{"ohm mtr run 1.8", "common–run 1.8 Ω"},
		{"mfd cap fan 4.8", "fan 4.8 µF"},
		{"plate mfd cap herm 45", "mfd herm 45"},
		{"ohm door lock switch 0.1 closed", "switch door-lock-switch: sound"},
		{"ohm lid lock coil 95.0", "coil lid-lock-coil: cannot tell, not open"},
		{"ohm defrost timer 2000", "defrost-timer: cannot tell, not open"},
		{"ohm defrost thermostat 0.1 frozen", "defrost thermostat: sound, closed when cold"},
		{"ohm eco 0.1", "limit eco: sound"},
		{"ohm tach coil 55.0", "coil tach-coil: cannot tell, not open"},
		{"ohm comp A B 3.4", "A–B 3.4 Ω"},
		{"ohm drain pump 1 2 14.0", "refused: a reading has one or two points and one value (on drain-pump, then: ohm 1 2 14.0)"},
		{"ohm drain pump 1 2 14.0, 1 3 20.0", "refused: a reading has one or two points and one value (on drain-pump, then: ohm 1 2 14.0, 1 3 20.0)"},
		{"ohm fan C S 62, C R 38, S R 99", "refused: a reading has one or two points and one value (on fan, then: ohm C S 62, C R 38, S R 99)"},
		{"mv thermopile 450", "thermopile 450 mV"},
		{"on evap fan", "At hand: evap-fan"},
		{"on condenser fan", "At hand: cond-fan"},
		{"on drain pump", "At hand: drain-pump"},
		{"psi suction -25", "refused: no pressure is below a full vacuum"},
		{"psi low -40 run", "refused: no pressure is below a full vacuum"},
		{"psi suction -110kPa", "refused: no pressure is below a full vacuum"},
		{"psi suction -25inHg", "suction -25 inHg"},
		{"psi suction -30inHg", "suction -30 inHg"},
		{"psi suction -14.0 run", "suction -14.0 psi"},
		{"ohm heater fuse OL", "fuse heater-fuse: failed"},
		{"ohm heater coil OL", "heater"},
		{"ohm belt switch 0.1 closed", "switch belt-switch: sound"},
		{"ohm A case 200M+", "A–case >200 MΩ"},
		{"ohm A case >200M test 500V", "insulation holds at 500 V test"},
		{"ohm A case >2M", "refused: more than 2M says that the range was too low"},
		{"ohm A B >200", "refused: more than 200 says that the range was too low"},
		{"volt line >600", "refused: more than 600 says"},
		{"ohm A case OL, B case OL after", "A–case OL after, B–case OL after"},
		{"volt line 118.0, line 104.0 start", "line 118.0 V (±1.5), line 104.0 V (±1.3) start"},
		{"temp freezer -600C", "refused: no temperature is below absolute zero"},
		{"temp freezer -500F", "refused: no temperature is below absolute zero"},
		{"ohm A B -3", "refused: a resistance below zero"},
		{"amp comp minus 3", "refused: a current below zero"},
		{"mfd start 97.0", "start 97.0 µF"},
		{"volts line 118", "line 118 V"},
		{"Volts L N 118", "L–N 118 V"},
		{"OHM A C: 6.5", "A–C 6.5 Ω"},
		{"ohm A C = 6.5, B C: 2.5", "A–C 6.5 Ω (±0.37), B–C 2.5 Ω"},
		{"9:15 temp freezer 3F", "freezer 3 °F"},
		{"ohm A B open", "refused: no value stands before open"},
		{"ohm relay contact open", "refused: no value stands before open"},
		{"amps 1.2", "refused: \"amps\" is neither a command nor a sum"},
		{"part start relay, 24.50", "refused: 24.50 reads like a price"},
		{"part relay, 2", "2 × relay"},
		{"part gas, 0.5, 30", "0.5 × gas at 30.00"},
		{"plate rla 1.2", "amps 1.2"},
	}
	at := time.Date(2026, 3, 2, 14, 0, 0, 0, time.UTC)
	for _, r := range rows {
		c := New()
		if _, err := c.Apply(at, "ohm P Q 5.0"); err != nil {
			t.Fatal(err)
		}
		e, err := c.Apply(at, c.Expand(r.line))
		got := ""
		if err != nil {
			got = "refused: " + err.Error()
		} else {
			got = e.Reply.Plain()
		}
		if !strings.Contains(got, r.want) {
			t.Errorf("%s: %q, want %q", r.line, got, r.want)
		}
	}
}

// One part in several words is one name, judged where it is known; pins by their names
// stay two points. Common practice throughout.
func TestOnePartInSeveralWords(t *testing.T) {
	const (
		dryer, range_ = "unit electric dryer; fault trips breaker", "unit electric range; fault one burner dead; plate volts 240"
		fridge, gas   = "unit fridge; fault does not start", "unit gas furnace; fault no heat"
		micro         = "unit microwave oven; fault does not heat"
	)
	rows := []struct{ before, line, stored, want, not string }{
		{dryer, "ohm heater coil 10.6", "ohm heater-coil 10.6", "heater heater-coil: cannot tell", "motor"},
		{dryer, "ohm heater coil case 0.4", "ohm heater-coil case 0.4", "the element is grounded", "motor"},
		{dryer, "ohm heater coil to ground OL", "ohm heater-coil ground OL", "heater heater-coil to case: cannot tell", "motor"},
		{dryer, "ohm coil case 0.4", "ohm heater case 0.4", "heater to case: failed", "winding"},
		{dryer, "ohm inner coil 21", "ohm inner-heater 21", "heater inner-heater: cannot tell", "motor"},
		{"unit gas dryer; fault no heat", "ohm coil OL", "ohm coil OL", "coil: failed, open", "heater"},
		{"unit gas dryer; fault no heat", "ohm coil case 0.4", "ohm coil case 0.4", "insulation coil to case: failed", "heater"},
		{dryer, "ohm push to start OL", "ohm push-to-start OL", "switch push-to-start: cannot tell, open", "motor"},
		{dryer, "ohm timer contact 0.1", "ohm timer-contact 0.1", "switch timer-contact: cannot tell, closed", "motor"},
		{dryer, "ohm timer contact OL closed", "ohm timer-contact OL closed", "failed, open where it must be closed", "motor"},
		{dryer, "ohm heater limit OL", "ohm heater-limit OL", "limit heater-limit: failed", "motor"},
		{dryer, "ohm motor overload OL", "ohm motor-overload OL", "overload", "motor:"},
		{dryer, "ohm motor red black 5.0", "ohm red black 5.0", "red–black 5.0 Ω", "judged here"},
		{dryer, "ohm motor main common 2.4", "ohm main common 2.4", "main–common 2.4 Ω", "judged here"},
		{dryer, "ohm main start 5.1", "ohm main start 5.1", "main–start 5.1 Ω", "judged here"},
		{dryer, "ohm line neutral 5.1", "ohm line neutral 5.1", "line–neutral 5.1 Ω", "judged here"},
		{dryer, "ohm purple orange 5.1", "ohm purple orange 5.1", "purple–orange 5.1 Ω", "judged here"},

		{fridge, "ohm timer motor 2.9k", "ohm timer 2.9k", "timer: cannot tell, not open; its sheet", "compressor"},
		{fridge, "ohm timer coil 2.9k", "ohm timer 2.9k", "timer: cannot tell, not open", "compressor"},
		{fridge, "ohm timer motor OL", "ohm timer OL", "timer: failed, open", "Cause supported"},
		{fridge, "ohm defrost timer motor 2900", "ohm defrost-timer 2900", "defrost-timer: cannot tell", "compressor"},
		{fridge, "ohm defrost timer 2900", "ohm defrost-timer 2900", "defrost-timer: cannot tell", "compressor"},
		{fridge, "ohm defrost timer OL", "ohm defrost-timer OL", "defrost-timer: failed, open", "compressor"},
		{fridge + "; on defrost timer", "ohm 1 2 OL", "ohm 1 2 OL", "defrost-timer: cannot tell, one pair of its pins is its motor", "Open so far"},
		{fridge, "ohm board output OL", "ohm board-output OL", "no ohms judge electronics", "compressor"},
		{fridge + "; ohm timer motor 2.9k; ohm board output OL; ohm timer coil 2.9k", "ohm 1 2 4.1, 1 3 9.8, 2 3 13.7", "ohm 1 2 4.1, 1 3 9.8, 2 3 13.7", "By the readings 1 is common, 3 is start, 2 is run", "not known"},

		{gas, "ohm transformer primary 8.0", "ohm transformer-primary 8.0", "cannot tell, not open; its sheet", "start"},
		{gas, "ohm transformer secondary 1.2", "ohm transformer-secondary 1.2", "cannot tell, not open; its sheet", "motor"},
		{gas, "ohm transformer secondary OL", "ohm transformer-secondary OL", "failed, open", "motor"},
		{gas, "ohm left rollout 0.1", "ohm left-rollout 0.1", "limit left-rollout: sound", "motor"},
		{gas, "ohm right rollout OL", "ohm right-rollout OL", "flue and heat exchanger are looked at", "motor"},
		{gas, "ohm L1 fuse 0.1", "ohm L1-fuse 0.1", "fuse l1-fuse: sound", "motor"},
		{gas, "ohm L2 fuse OL", "ohm L2-fuse OL", "fuse l2-fuse: failed", "motor"},
		{gas, "ohm L1 heater 10.2", "ohm L1 heater 10.2", "L1–heater 10.2", "judged here"},
		{gas, "ohm hi lim .1", "ohm hi lim .1", "limit hi-lim: sound", "motor"},
		{gas, "ohm t-fuse 0", "ohm t-fuse 0", "limit t-fuse: sound", "judged here"},
		{"unit washer; fault does not drain; ohm drain pump 14.2", "ohm motor stator 6.0", "ohm motor-stator 6.0", "is read between its two pins", "Joined"},
		{"unit washer; fault does not spin", "ohm brush left 0.4", "ohm brush-left 0.4", "brush-left is none of the parts", "Joined"},
		{"unit dishwasher; fault leaks", "ohm soap dispenser 285", "ohm soap-dispenser 285", "soap-dispenser is none of the parts", "motor"},

		{range_, "ohm surface burner OL", "ohm surface-element OL", "heater surface-element: failed", "motor"},
		{range_, "ohm burner receptacle 0.1", "ohm burner-receptacle 0.1", "burner-receptacle is none of the parts", "motor"},
		{range_, "ohm dual element outer 26.0", "ohm dual-outer-element 26.0", "heater dual-outer-element: cannot tell", "motor"},
		{range_, "ohm selector switch left 0.1", "ohm selector-left-switch 0.1", "switch selector-left-switch: cannot tell, closed", "motor"},
		{range_, "ohm selector switch L1 0.1", "ohm selector switch L1 0.1", "refused", "sound"},
		{dryer, "ohm pressure switch common 0.1", "ohm pressure switch common 0.1", "refused", "sound"},
		{dryer, "ohm main pcb OL", "ohm main-pcb OL", "no ohms judge electronics", "motor:"},
		{fridge, "ohm ice maker fill valve OL", "ohm ice-maker-fill-valve OL", "coil ice-maker-fill-valve: failed", "assembly"},
		{fridge, "ohm start relay coil 1.2", "ohm relay-coil 1.2", "relay", "small coil"},
		{range_, "ohm LF switch OL", "ohm LF-switch OL", "switch lf-switch: cannot tell, open", "refused"},
		{range_, "ohm RF element OL", "ohm RF-element OL", "heater rf-element: failed", "refused"},
		{range_, "ohm RF burner OL", "ohm RF-element OL", "heater rf-element: failed", "refused"},
		{range_, "ohm left-front OL", "ohm left-front-element OL", "heater left-front-element: failed", "judged here"},
		{"unit gas range; fault burner does not light", "ohm left-front OL", "ohm left-front OL", "left-front is none of the parts", "heater"},
		{range_, "ohm LR 5.1", "ohm L R 5.1", "L–R 5.1 Ω", "judged here"},

		{fridge, "ohm evap fan OL", "ohm evap fan OL", "evap-fan: cannot tell, open is a mains motor with a broken winding, or one on direct volts", "has pins"},
		{"unit fridge; fault not cooling; volt evap-fan 118", "ohm evap fan OL", "ohm evap fan OL", "Cause supported: evaporator fan motor", "has pins"},
		{"unit fridge; fault not cooling; volt evap-fan 12.4 dc", "ohm evap fan OL", "ohm evap fan OL", "cannot tell, a motor on direct volts", "Cause supported"},
		{fridge, "ohm evap fan 28.0", "ohm evap fan 28.0", "evap-fan has pins", "failed"},
		{fridge, "ohm blower OL", "ohm blower OL", "blower has pins", "failed"},
		{fridge, "volt evap fan 12.4 dc", "volt evap fan 12.4V dc", "volts at evap-fan: sound, it is given 12.4 V", "115"},
		{fridge, "volt evap fan 12.4dc", "volt evap fan 12.4V dc", "sound, it is given 12.4 V", "115"},
		{fridge, "volt evap fan 12.4VDC run", "volt evap fan 12.4V dc run", "sound, it is given 12.4 V", "115"},
		{fridge, "volt evap fan 0 dc run", "volt evap fan 0V dc run", "failed, it should be called and is given 0 V", "115"},
		{fridge, "volt evap fan 8.1 dc run", "volt evap fan 8.1V dc run", "cannot tell, 8.1 V: a board that sets a fan's speed", "suspect"},
		{"unit fridge; fault not cooling; volt evap-fan 12.4 dc run", "saw evap fan not running", "saw evap fan not running", "Cause supported: evaporator fan motor", "no supply"},
		{"unit fridge; fault not cooling; volt evap-fan 0 dc run", "saw evap fan not running", "saw evap fan not running", "Seen: the evaporator fan stands still", "fan motor"},
		{fridge, "volt evap fan 12.4", "volt evap fan 12.4", "read it on direct volts", "no call"},
		{fridge, "volt line 0 dc", "volt line 0V dc", "Direct volts are written down", "failed"},
		{fridge, "volt board 5.1 dc", "volt board 5.1V dc", "Direct volts are written down", "sound"},
		{fridge, "amp comp 3.1 dc", "amp comp 3.1 dc", "refused: dc is said of volts alone", "sound"},
		{fridge, "ohm door switch 0.1 pressed", "ohm door-switch 0.1 closed", "sound, closed", "refused"},

		{gas, "ohm T1 G 500M test 1000V", "ohm T1 case 500M test 1000V", "insulation T1 to case: sound", "Not a winding"},
		{gas, "ohm T1 G 5.1", "ohm T1 G 5.1", "T1–G 5.1 Ω", "insulation"},
		{gas, "meg T1 gnd 500M", "ohm T1 case 500M", "T1–case 500 MΩ", "refused"},
		{gas, "megger T1 500M at 1000V", "ohm T1 case 500M test 1000V", "insulation T1 to case: sound", "refused"},
		{gas, "megger T1 500", "megger T1 500", "refused", "MΩ"},
		{fridge, "part compressor FAKE-C18 1 168.00 serial FAKEC-99", "part compressor FAKE-C18 serial FAKEC-99, 1, 168.00", "1 × compressor FAKE-C18, serial FAKEC-99 at 168.00", "refused"},
		{fridge, "part run cap 5 370", "part run cap 5 370", "1 × run cap 5 370", " at "},
		{fridge + "; plate volts 115", "volt L PE 118", "volt L earth 118", "cannot tell, 118 V: the line is there", "sound"},
		{fridge + "; plate volts 115", "volt L E 40", "volt L earth 40", "suspect, 40 V is not what the line has to earth", "sound"},
		{fridge + "; plate volts 230, hz 50", "volt L1-PE 231", "volt L1 earth 231", "cannot tell, 231 V: the line is there", "suspect"},
		{fridge + "; plate volts 400, phase 3", "volt L1-PE 231", "volt L1 earth 231", "cannot tell, 231 V: the line is there", "suspect"},
		{"unit electric dryer; fault no heat; plate volts 240", "volt L2 PE 120", "volt L2 earth 120", "cannot tell, 120 V: the line is there", "suspect"},
		{"unit electric dryer; fault no heat; plate volts 240", "volt L2 PE 2", "volt L2 earth 2", "suspect, 2 V is not", "sound"},
		{"unit electric dryer; fault no heat; safe; volt L1 L2 0", "volt L1 PE 0", "volt L1 earth 0", "L1–earth 0 V", "suspect"},
		{fridge, "volt N E 12", "volt N earth 12", "neutral to earth: suspect", "refused"},

		{micro, "ohm primary switch OL closed", "ohm primary-switch OL closed", "Cause supported: switch or door interlock open", "high-voltage side"},
		{micro, "ohm secondary switch 0.1 closed", "ohm secondary-switch 0.1 closed", "switch secondary-switch: sound", "high-voltage side"},
		{micro, "ohm primary door switch OL closed", "ohm primary-door-switch OL closed", "failed, open", "high-voltage side"},
		{micro, "ohm primary interlock OL closed", "ohm primary-interlock OL closed", "failed, open", "high-voltage side"},
		{micro, "ohm HV diode OL", "ohm HV-diode OL", "nothing here judges the high-voltage side", "refused"},
		{micro, "mfd hv cap 0.98", "mfd hv-cap 0.98", "nothing here judges the high-voltage side", "run capacitor"},
		{micro, "ohm transformer primary 0.3", "ohm transformer-primary 0.3", "nothing here judges the high-voltage side", "Joined"},
	}
	for _, r := range rows {
		c := New()
		for _, l := range strings.Split(r.before, "; ") {
			must(t, c, c.Expand(l))
		}
		full := c.Expand(r.line)
		got := ""
		if e, err := c.Apply(nine, full); err != nil {
			got = "refused: " + err.Error()
		} else {
			got = e.Reply.Plain()
		}
		if full != r.stored || !strings.Contains(got, r.want) || strings.Contains(got, r.not) {
			t.Errorf("%s; %s: stored %q, want %q, not %q: %q", r.before, r.line, full, r.want, r.not, got)
		}
	}
}

// What is refused shows a line that is taken.
func TestFormsRefused(t *testing.T) {
	for line, want := range map[string]string{
		"ohm pressure switch 0.1 run": "read dead: ohm pressure-switch 0.1; the volts across it, under power: volt pressure-switch … run",
		"ohm motor switch 0.2 run":    "read dead: ohm motor-switch 0.2",
		"ohm A B 3.4 run":             "as in: amp comp 3.4 run",
		"part drier 1 12":             "with its count and price: part drier, 1, 12",
		"part capacitor 35 370":       "",
	} {
		c := New()
		err := c.Doubtful(c.Expand(line))
		if got := flat(err); (err != nil) != (want != "") || !strings.Contains(got, want) {
			t.Errorf("%s: %s, want %q", line, got, want)
		}
	}
}

// A remark on a slip follows the number of the entry that it is about.
func TestEntryStandsBeforeItsRemarks(t *testing.T) {
	for _, lines := range [][]string{
		{"ohm A B 3.4", "ohm A B 34.0"},
		{"volt line 118.0", "volt line 11.8"},
		{"ohm A case OL", "ohm A case 2.0M"},
		{"temp freezer 0F", "temp freezer 200C"},
		{"amp comp 1.1", "amp comp 11.0, cond-fan 0.4"},
	} {
		c := New()
		must(t, c, lines[0])
		var said []Line
		for _, l := range must(t, c, lines[1]).Reply.Lines {
			if l.Tone != Caution {
				said = append(said, l)
			}
		}
		if len(said) < 2 || !strings.HasPrefix(said[0].Text, "Entry 2: ") {
			t.Errorf("%s after %s: %v", lines[1], lines[0], said)
		}
	}
}
