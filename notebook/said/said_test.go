package said

import (
	"slices"
	"testing"
)

func TestUndone(t *testing.T) {
	for text, want := range map[string]bool{
		"isolated the freezer, compressor grounded": true, "run cap was dead": true, "replaced the cap that was dead": false, "tightened what was loose": false,
		"nothing, customer not home": true, "client's outlet replaced": false, "customer line replaced": false,
		"waited an hour": true, "tried a test start device, same": true, "checked the windings": true, "measured caps": true, "took a photo": true,
		"discharged cap": true, "opened the back cover": true, "looked at the fan": true, "let it cool": true, "pulled the relay": true,
		"removed start device for test": true, "removed overload to test": true, "leak search, found leak": true, "jumpered cold control for test": true,
		"jumpered door switch": true, "bypassed the limit": true, "removed the jumper": true, "took the jumper off": true, "jumper off": true, "removed thermal fuse jumper": true, "jumper removed, fitted new fuse": false, "removed jumper and fitted new fuse": false, "removed the coin from the pump": false,
		"took out the thermal fuse and joined the wires": true, "thermal fuse jumped out": true, "ran with the overload shorted": true, "taped the door switch in": true, "limit bypassed": true,
		"bypassed the limit and cleaned the vent": false, "took out the thermal fuse and fitted a new one": false, "cleaned the contacts and left the cover off": false,
		"bypassed the limit, replaced it": false, "replaced the fuse with foil": false, "joined the broken wire": false,
		"removed the blockage": false, "pulled the sock out of the pump": false, "opened the damper": false, "turned the control up": false,
		"tightened the terminal": false, "cleaned the coil": false, "defrosted by hand": false, "moved to another outlet": false, "checked the coil, cleaned it": false,
		"replaced the compressor":                        false,
		"new compressor":                                 false,
		"compressor replaced, customer to pay later":     false,
		"replace start device":                           false,
		"replaced relay that did not click":              false,
		"cleaned the coil, compressor must be replaced":  false,
		"customer does not want the compressor replaced": true,
		"compressor must be replaced":                    true,
		"could not get new compressor":                   true,
		"discussed new compressor with customer":         true,
		"wrote a quote for new compressor":               true,
		"changed customer's mind about compressor":       true,
		"customer declined a new compressor":             true,
		"has to be replaced next week":                   true,
		"ordered new compressor":                         true,
		"new compressor on order":                        true,
		"didn't replace the compressor":                  true,
		"new compressor quoted":                          true,
		"told the customer to replace the compressor":    true,
		"compressor will be fitted tomorrow":             true,
		"waiting for new compressor":                     true,
		// Looks, talk, trials, opening up and putting back mend nothing; what comes
		// with them can.
		"ran 20 min": true, "ran it through a wash cycle": true, "ran new water line": false, "ran vinegar through the line": false,
		"took panel off": true, "took off front panel and cleaned coil": false, "removed the evap cover and thawed the ice": false, "refitted evap cover": true,
		"moved it back": true, "moved it out from the wall for air flow": false, "put belt back on": false, "put the panel back": true, "put drain pan back": false,
		"diagnosed bad compressor": true, "diagnosed and replaced igniter": false, "checked and replaced the relay": false, "checked door and seal": true,
		"wiring checked ok": true, "relay tested": true, "relay replaced and tested": false, "new relay tested": false,
		"explained to client": true, "photographed plate": true, "photo eye cleaned": false, "contactor replaced": false, "check valve replaced": false,
		"reassembled dryer": true, "cleaned up work area": true, "cleaned up the contacts": false, "drained water by hand": true, "removed ice": false,
		"restored power": true, "reset breaker": false, "cleared error code F21": true, "cleared the drain": false, "hooked up gauges": true, "ohmed the heater": true,
		"swapped fans to compare": true, "swapped in test relay": true, "levelled machine": false, "plugged back in": true, "none": true, "level the unit": false,
	} {
		if got := Undone(text); got != want {
			t.Errorf("Undone(%q) = %v", text, got)
		}
	}
}

// TestRenewed holds a replacement to the machine that the words say.
func TestRenewed(t *testing.T) {
	for text, want := range map[string]bool{
		"replaced the compressor":                            true,
		"Replaced compressor and relay":                      true,
		"compressor replaced":                                true,
		"fitted compressor with new overload":                true,
		"new compressor, evacuated and charged":              true,
		"swapped compressor":                                 true,
		"replaced the compressor relay":                      false,
		"new start device on compressor":                     false,
		"replaced the wires of the compressor":               false,
		"put in new compressor":                              true,
		"changed the plug at the compressor":                 false,
		"tested the compressor":                              false,
		"customer does not want the compressor replaced":     false,
		"cleaned the coil, compressor must be replaced":      false,
		"cleaned compressor, new relay":                      false,
		"got a price for a new compressor":                   false,
		"wrote down that a new compressor would be too dear": false,
	} {
		got := slices.ContainsFunc(Renewals(text), func(s string) bool { return Names(s, "compressor") })
		if got != want {
			t.Errorf("%q renews the compressor: %v", text, got)
		}
	}
}

// TestNames tells a machine or part by its whole name: what was replaced elsewhere
// takes no verdict off it.
func TestNames(t *testing.T) {
	for _, x := range []struct {
		text, of string
		want     bool
	}{
		{"thermostat", "M1", false}, {"pump", "M", false}, {"motor m1", "M1", true}, {"m1", "m1", true}, {"condenser fan", "C1", false},
		{"gasket", "2", false}, {"evaporator fan 1", "fan2", false}, {"evaporator fan 2", "fan2", true}, {"fan", "fan2", true}, {"fan #1", "fan2", false},
		{"heater 240 v", "heater2", true}, {"compressors", "compressor", true}, {"condenser fan motor", "cond-fan", true}, {"evap fan", "cond-fan", false},
		{"motor", "motor", true}, {"motor 2", "motor", true}, {"compressor relay", "compressor", false}, {"m1 relay", "M1", false}, {"pump", "", false},
	} {
		if got := Names(x.text, x.of); got != x.want {
			t.Errorf("%q names %s: %v", x.text, x.of, got)
		}
	}
}

// TestAlarms tells a danger from what holds its words.
func TestAlarms(t *testing.T) {
	for text, want := range map[string]string{
		"got a shock": "shock", "shock absorbers worn": "", "shocks worn": "", "Shock-absorber leaks": "", "tingles": "shock",
		"sparks at the relay": "smoke", "igniter sparks": "", "sparks but does not light": "", "sparks, then smokes": "smoke", "igniter sparks, burning smell": "smoke",
		"blue flames": "", "yellow flames at the burner": "co", "flames behind the panel": "smoke", "smoked glass shelf broken": "", "it smoked": "smoke",
		"leak at the gasket": "", "leak at the gas valve": "gas-leak", "gas-smell": "gas-smell", "no gas smell": "", "no co alarm": "", "eco alarm lit": "", "CO alarm sounds": "co", "flue disconnected": "co", "burner sooted": "co", "no co found": "", "gas odour": "gas-smell",
	} {
		got := ""
		for _, a := range Alarms(text, ApplianceOf("", ""), false) {
			got += a.Finding
		}
		if got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// TestTakenOut tells a protective device that is left out of its circuit from
// one that was put back, and from words that only sound like it.
func TestTakenOut(t *testing.T) {
	for text, want := range map[string]int{
		"bypassed the limit":                                1,
		"bypassed the limit, power restored":                1,
		"bypassed the thermal limit and put back the panel": 1,
		"bypassed the limit, reconnected the wires":         1,
		"bridged the limit; fuse back in":                   1,
		"wired around the limit":                            1,
		"shorted the limit with a clip":                     1,
		"put a wire across the limit":                       1,
		"linked out the limit":                              1,
		"looped the fuse":                                   1,
		"strapped the limit":                                1,
		"wired round the high limit":                        1, "took out the thermal fuse and joined the wires": 1, "removed the thermal fuse from the circuit": 1,
		"left the limit disconnected": 1, "wired round the door switch": 1, "disabled the lid lock": 1, "penny behind the fuse": 1, "pressure switch held with tape": 1,
		"coin in pump": 0, "replaced the thermal fuse": 0, "removed the overload and fitted a new one": 0, "jumped thermal fuse to test, then took the jumper off": 0,
		"foil in the fuse":                     1,
		"wedged the door switch":               1,
		"took the limit out of the circuit":    1,
		"twisted the two limit wires together": 1,
		"disconnected the earth wire":          1,
		"removed the earth":                    1,
		"taped lid switch shut":                1, "wired the thermal fuse straight through": 1, "shunted the door switch": 1, "stuck a paperclip in the door switch": 1,
		"removed limit and twisted wires together": 1, "left overload off": 1, "replaced 15A fuse with 20A": 1, "swapped fuse for bigger one": 1,
		"put 30A breaker in place of 20A": 1, "linked out the cut-out": 1, "cut ground pin off plug": 1, "disconnected ground wire": 1,
		"used cheater cord": 1, "fitted 3 to 2 prong adapter": 1, "lid switch taped shut": 1, "fuse wrapped in foil": 1, "ground pin cut off": 1, "earth wire off": 1,
		"checked nothing is jumpered": 0, "fitted a jumper wire kit": 0, "replaced 20A fuse with 20A": 0, "replaced 20A breaker with 15A": 0, "turned breaker off": 0, "overload out of its clip, put back": 0,
		"left without its cover":                                 1,
		"left the terminal cover off":                            1,
		"terminal cover left off":                                1,
		"runs with the cover off":                                1,
		"took the evaporator cover off and looked":               0,
		"back cover off":                                         0,
		"wall switch is off":                                     0,
		"turned the light switch off":                            0,
		"thermostat is off":                                      0,
		"left the switch off":                                    0,
		"door switch out":                                        1,
		"thermal fuse off":                                       1,
		"lid switch left off":                                    1,
		"bypassed the limit to test, limit back in circuit":      0,
		"bypassed the limit for a moment and removed the bypass": 0,
		"disconnected the earth wire, reconnected it":            0,
		"did not bypass anything":                                0,
		"bypassed nothing, all safeties tested":                  0,
		"left the old limit, no bypass fitted":                   0,
		"replaced the shorted limit":                             0,
		"measured across the limit":                              0,
		"removed the ground fault":                               0,
		"replaced the bypass valve":                              0,
		"wired the new limit":                                    0,
		"power restored":                                         0,
	} {
		if got := len(Out(Guards(0, text, true, false))); got != want {
			t.Errorf("%q: %d are out of their circuit, want %d", text, got, want)
		}
	}
}

func TestOpensSystem(t *testing.T) {
	for text, want := range map[string]bool{
		"soldered the process tube": true, "soldered a wire at the lamp": false, "brazed in a drier": true, "cleaned the coil": false,
	} {
		if got := OpensSystem(text); got != want {
			t.Errorf("OpensSystem(%q) = %v", text, got)
		}
	}
}

func TestMadeSafe(t *testing.T) {
	for text, want := range map[string]bool{
		"unplugged, cap discharged": true, "locked out and tagged": true, "power off": true, "plug pulled": true, "isolated": true,
		"disconnected ground wire": false, "power not off": false, "breaker trips": false, "replaced plug": false,
	} {
		if got := MadeSafe(text); got != want {
			t.Errorf("MadeSafe(%q) = %v", text, got)
		}
	}
}
