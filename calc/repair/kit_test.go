package repair

import (
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"ohmcall/calc/caution"
)

// machine is an invented small refrigerator.
var machine = KitIn{Volts: 115, Hertz: 60, HP: 1.0 / 6, Metering: Capillary, Motor: SinglePhase, Windings: "sound",
	Gas: "R-134a", Rested: true, MinutesOff: 20}

func value(k Kit, what string) string {
	for _, r := range k.Need {
		if r.What == what {
			return r.Value
		}
	}
	return ""
}

func TestStartKitListsWhatThePlateAsks(t *testing.T) {
	k := StartKit(machine)
	if k.Refused != "" || len(k.Missing) != 0 {
		t.Fatalf("refused %q, missing %q", k.Refused, k.Missing)
	}
	for what, want := range map[string]string{
		"voltage": "a range that holds 115 V", "frequency": "60 Hz, or 50/60 Hz", "horsepower": "a range that holds 1/6 hp",
		"system": "capillary tube", "motor": "single-phase, split-phase or capacitor",
	} {
		if got := value(k, what); got != want {
			t.Errorf("%s: %q, want %q", what, got, want)
		}
	}
	for _, r := range k.Need {
		if r.Why == "" || r.Source == "" {
			t.Errorf("%s has no reason or source", r.What)
		}
	}
	if !slices.Contains(k.Caution, caution.ProtectorStays) || !slices.Contains(k.Caution, caution.Capacitor) {
		t.Errorf("cautions %v", k.Caution)
	}
}

func TestStartKitIsRefused(t *testing.T) {
	for _, c := range []struct {
		name   string
		change func(*KitIn)
		word   string
		code   string
	}{
		{"grounded", func(in *KitIn) { in.Windings = "grounded" }, "grounded", caution.NeverEnergise},
		{"inverter", func(in *KitIn) { in.Motor = Inverter }, "inverter", caution.InverterLine},
		{"three-phase", func(in *KitIn) { in.Motor = ThreePhase }, "three-phase", caution.ProtectorStays},
		{"equal windings", func(in *KitIn) { in.Windings = "equal-windings" }, "equal", caution.InverterLine},
		{"open winding", func(in *KitIn) { in.Windings = "open-winding" }, "open", caution.ProveDead},
		{"open somewhere", func(in *KitIn) { in.Windings = "open-unplaced" }, "open", caution.ProveDead},
		{"shorted", func(in *KitIn) { in.Windings = "shorted" }, "shorted", caution.ProveDead},
		{"no motor", func(in *KitIn) { in.Windings = "not-a-winding" }, "windings", caution.ProveDead},
		{"protector open", func(in *KitIn) { in.Windings = "overload-open" }, "cool", caution.ProtectorStays},
		{"grounded inverter", func(in *KitIn) { in.Motor, in.Windings = Inverter, "grounded" }, "grounded", caution.NeverEnergise},
	} {
		in := machine
		c.change(&in)
		k := StartKit(in)
		if !strings.Contains(k.Refused, c.word) || len(k.Need) != 0 || k.Source == "" {
			t.Errorf("%s: refused %q with %d requirements", c.name, k.Refused, len(k.Need))
		}
		if !slices.Contains(k.Caution, c.code) {
			t.Errorf("%s: cautions %v", c.name, k.Caution)
		}
	}
}

func TestStartKitSaysWhatIsMissing(t *testing.T) {
	k := StartKit(KitIn{})
	if k.Refused != "" || len(k.Missing) != 7 {
		t.Errorf("refused %q, missing %q", k.Refused, k.Missing)
	}
	in := machine
	in.Windings = "too-close"
	if k = StartKit(in); k.Refused != "" || !strings.Contains(strings.Join(k.Notes, "; "), "too close") {
		t.Errorf("refused %q, notes %q", k.Refused, k.Notes)
	}
}

// A kit for capillary systems assumes that the pressures are level (common
// practice); one with a potential relay starts against pressure (start-kit
// maker's brochure, p. 3).
func TestStartKitMindsThePressures(t *testing.T) {
	notes := func(change func(*KitIn)) (Kit, string) {
		in := machine
		change(&in)
		k := StartKit(in)
		return k, strings.Join(k.Notes, "; ")
	}
	if _, n := notes(func(in *KitIn) { in.MinutesOff = 1 }); !strings.Contains(n, "only 1 min at rest") {
		t.Errorf("restart too soon: %q", n)
	}
	if _, n := notes(func(in *KitIn) { in.Rested = false }); !strings.Contains(n, "rest 5 min") {
		t.Errorf("rest unknown: %q", n)
	}
	if _, n := notes(func(*KitIn) {}); strings.Contains(n, "at rest") || strings.Contains(n, "rest 5") {
		t.Errorf("well rested: %q", n)
	}
	k, n := notes(func(in *KitIn) { in.Metering = Valve })
	if !strings.Contains(value(k, "system"), "potential relay") || !strings.Contains(n, "expansion valve") {
		t.Errorf("valve: %q, %q", value(k, "system"), n)
	}
	if _, n := notes(func(in *KitIn) { in.Metering, in.PressuresMeasured = Valve, true }); strings.Contains(n, "expansion valve") {
		t.Errorf("valve, pressures measured: %q", n)
	}
}

func TestStartKitKeepsTheCapacitorsApart(t *testing.T) {
	in := machine
	in.RunCap, in.RunVolts, in.StartLow, in.StartHigh, in.StartVolts = 12, 370, 88, 108, 165
	k := StartKit(in)
	if got := value(k, "start capacitor"); got != "98 µF, the middle of the marked range, at least 88 and at most 117.6, 165 V or more" {
		t.Errorf("start capacitor %q", got)
	}
	if !strings.Contains(value(k, "run capacitor"), "12 µF") {
		t.Errorf("run capacitor %q", value(k, "run capacitor"))
	}
}

// R-600a, R-290 and R-441A: 79 FR 29682; the others by their classes in ASHRAE 34
// (from memory).
func TestFlammable(t *testing.T) {
	for gas, want := range map[string]bool{
		"R-600a": true, "r600a": true, "R 290": true, "R441A": true, "HC-290": true, "isobutane": true, "propane": true, "R-32": true,
		"R-600a 45g": true, "R600a (isobutane)": true, "isobutane R600a": true, "R-290/R-600a": true, "R-600a flammable": true, "hc600a": true,
		"R-454B": true, "R-452B": true, "R-454C": true, "R-455A": true, "R-1234ze": true, "R-436A": true, "r600": true, "R-717": true,
		"HFC-32": true, "HFO-1234yf": true, "R290 (propane)": true, "LPG": true, "hydrocarbon": true, "r 32": true,
		"HFC-134a": false, "134a": false, "R-407C": false, "R-507A": false, "R-448A": false, "R-744": false, "unknown": false,
		"R-134a": false, "R-12": false, "R-404A": false, "R-410A": false, "R-22": false, "": false,
	} {
		if Flammable(gas) != want {
			t.Errorf("%q: flammable %v, want %v", gas, !want, want)
		}
	}
	in := machine
	in.Gas = "R-600a"
	k := StartKit(in)
	if !slices.Contains(k.Caution, caution.Flammable) || !strings.Contains(value(k, "flammable gas"), "sealed") {
		t.Errorf("cautions %v, need %q", k.Caution, value(k, "flammable gas"))
	}
	if slices.Contains(StartKit(machine).Caution, caution.Flammable) {
		t.Error("a gas that does not burn brought the caution")
	}
}

func TestKitTextsAreShortAndSafe(t *testing.T) {
	var texts []string
	for _, windings := range []string{"sound", "grounded", "equal-windings", "open-winding", "shorted", "overload-open", "too-close", "not-a-winding", ""} {
		for _, m := range []Metering{Capillary, Valve, ""} {
			for _, motor := range []Motor{SinglePhase, ThreePhase, Inverter, ""} {
				in := machine
				in.Windings, in.Metering, in.Motor, in.MinutesOff, in.StartLow, in.Gas = windings, m, motor, 1, 88, "R-600a"
				for _, k := range []Kit{StartKit(in), Overload(in, 1.3)} {
					texts = append(append(append(texts, k.Refused), k.Notes...), k.Missing...)
					for _, r := range k.Need {
						texts = append(texts, r.Value, r.Why)
					}
					for _, c := range k.Caution {
						if _, ok := caution.Text(c); !ok {
							t.Fatalf("no caution %q", c)
						}
					}
				}
			}
		}
	}
	for _, s := range texts {
		if n := utf8.RuneCountInString(s); n > 120 || strings.HasSuffix(s, ".") {
			t.Errorf("%d runes: %q", n, s)
		}
		for _, bad := range []string{"bypass", "jumper", "bridge"} {
			if strings.Contains(s, bad) {
				t.Errorf("%q speaks of %q", s, bad)
			}
		}
	}
}

// The fractions are those of motor plates (common practice); the decimals are
// worked out by hand.
func TestHorsepowerAsOnPlates(t *testing.T) {
	for hp, want := range map[float64]string{
		0.0833: "1/12", 0.1: "1/10", 0.125: "1/8", 0.1667: "1/6", 0.2: "1/5", 0.25: "1/4", 0.3333: "1/3", 0.5: "1/2", 0.75: "3/4",
		0.103: "0.103", 0.3: "0.3", 1.5: "1.5",
	} {
		if got := horsepower(hp); got != want {
			t.Errorf("%v hp is %q, want %q", hp, got, want)
		}
	}
}

// What an overload is chosen by, and when none is: common practice.
func TestOverload(t *testing.T) {
	with := func(change func(*KitIn)) KitIn {
		in := machine
		change(&in)
		return in
	}
	for _, x := range []struct {
		name, refused, missing, kind string
		in                           KitIn
		amps                         float64
	}{
		{"by its plate", "", "", "in series with common", machine, 1.3},
		{"no amps on the plate", "", "plate amps", "in series with common", machine, 0},
		{"three phases", "", "", "three legs", with(func(in *KitIn) { in.Motor = ThreePhase }), 12},
		{"equal windings, of which nobody said what feeds them", "", "three phases", "", with(func(in *KitIn) { in.Motor, in.Windings = "", "equal-windings" }), 12},
		{"an open protector keeps no overload away", "", "", "in series with common", with(func(in *KitIn) { in.Windings = "overload-open" }), 1.3},
		{"grounded", "grounded", "", "", with(func(in *KitIn) { in.Windings = "grounded" }), 1.3},
		{"inverter", "inverter", "", "", with(func(in *KitIn) { in.Motor = Inverter }), 1.3},
	} {
		k := Overload(x.in, x.amps)
		if !strings.Contains(k.Refused, x.refused) || (k.Refused == "") != (x.refused == "") {
			t.Errorf("%s: refused %q", x.name, k.Refused)
		}
		if got := strings.Join(k.Missing, "; "); !strings.Contains(got, x.missing) || (got == "") != (x.missing == "") {
			t.Errorf("%s: missing %q", x.name, got)
		}
		if !strings.Contains(value(k, "kind"), x.kind) || k.Refused == "" && !slices.Contains(k.Caution, caution.ProtectorStays) {
			t.Errorf("%s: kind %q, cautions %v", x.name, value(k, "kind"), k.Caution)
		}
	}
}
