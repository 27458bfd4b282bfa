package formula

import (
	"errors"
	"fmt"
	"math"
)

var (
	unloadedVolts = voltParam("unloaded", "supply with the load off")
	loadedVolts   = voltParam("loaded", "supply with the load on")
	loadAmps      = ampParam("amps", "that the load draws")
)

// sourceOhms is the resistance of the supply behind the outlet.
func sourceOhms(unloaded, loaded, amps float64) (float64, error) {
	if loaded > unloaded {
		return 0, errors.New("the loaded voltage is above the unloaded one: the line moved between the readings, take both again")
	}
	return (unloaded - loaded) / amps, nil
}

var supplies = []Formula{
	{
		Name: "source_ohms", Topic: "supply", Unit: "ohm", Params: []Param{unloadedVolts, loadedVolts, loadAmps},
		Help:     "impedance of the supply from volts without and with a load",
		Equation: "Zs = (V0 − V1) / I",
		Valid:    "load and line of about the same phase angle; refuses a loaded voltage above the unloaded one", Source: "Ohm's law",
		Example: Example{Call: "source_ohms(121.4V, 117.8V, 9.6A)", Args: []any{121.4, 117.8, 9.6}, Want: 0.375, Tol: 1e-6,
			Text: "121.4 V falling to 117.8 V at 9.6 A is a supply of 0.375 ohm"},
		Fn: func(a Args) (float64, error) { return sourceOhms(a.Num[0], a.Num[1], a.Num[2]) },
		Say: func(a Args, z float64) string {
			return fmt.Sprintf("the load pulls the line down by %.3g %% of the unloaded volts", 100*z*a.Num[2]/a.Num[0])
		},
	},
	{
		Name: "start_volts", Topic: "supply", Unit: "V",
		Params:   []Param{unloadedVolts, loadedVolts, loadAmps, ampParam("start", "starting current, such as the nameplate's locked-rotor amps")},
		Help:     "volts left at the outlet while a motor starts, predicted from a smaller load",
		Equation: "V = V0 − Istart (V0 − V1) / I",
		Valid:    "the drop in phase with the supply, which makes it the worst case; refuses a current that the supply cannot give",
		Source:   "Ohm's law",
		Example: Example{Call: "start_volts(121.4V, 117.8V, 9.6A, 24A)", Args: []any{121.4, 117.8, 9.6, 24.0}, Want: 112.4, Tol: 1e-6,
			Text: "a motor that starts with 24 A pulls this line to 112.4 V"},
		Fn: func(a Args) (float64, error) {
			z, err := sourceOhms(a.Num[0], a.Num[1], a.Num[2])
			if err != nil {
				return 0, err
			}
			left := a.Num[0] - a.Num[3]*z
			if left < 0 {
				return 0, fmt.Errorf("this supply gives %.4g A at most", a.Num[0]/z)
			}
			return left, nil
		},
		Say: func(a Args, v float64) string {
			return fmt.Sprintf("a sag of %.3g %% of the unloaded volts", 100*(a.Num[0]-v)/a.Num[0])
		},
	},
	{
		Name: "start_sag", Topic: "supply", Unit: "%",
		Params:   []Param{unloadedVolts, loadedVolts, loadAmps, ampParam("start", "starting current, such as the nameplate's locked-rotor amps")},
		Help:     "sag of the supply while a motor starts, predicted from a smaller load",
		Equation: "sag = Istart (V0 − V1) / (I V0)",
		Valid:    "the drop in phase with the supply, which makes it the worst case; refuses a current that the supply cannot give",
		Source:   "Ohm's law",
		Example: Example{Call: "start_sag(121.4V, 117.8V, 9.6A, 24A)", Args: []any{121.4, 117.8, 9.6, 24.0}, Want: 7.414, Tol: 0.001,
			Text: "a motor that starts with 24 A sags this line by 7.4 %"},
		Fn: func(a Args) (float64, error) {
			z, err := sourceOhms(a.Num[0], a.Num[1], a.Num[2])
			if err != nil {
				return 0, err
			}
			if a.Num[3]*z > a.Num[0] {
				return 0, fmt.Errorf("this supply gives %.4g A at most", a.Num[0]/z)
			}
			return 100 * a.Num[3] * z / a.Num[0], nil
		},
	},
}

// A conductor's resistivity at 20 °C and the constant k of its temperature
// law R2/R1 = (k + t2)/(k + t1), by the word a user picks: 100 and 61 % IACS (from memory).
var conductors = map[string]struct{ rho20, k float64 }{
	"copper":    {1.7241e-8, 234.5}, // 100 % IACS
	"aluminium": {2.8264e-8, 228.1}, // 61 % IACS
}

var conductor = Param{Name: "metal", Help: "of the wire", Words: []string{"copper", "aluminium"}, Optional: true, DefaultWord: "copper"}

var gauge = Param{Name: "gauge", Help: "AWG number; 0 for 1/0, -1 for 2/0, -2 for 3/0, -3 for 4/0", In: Range{Lo: -3, Hi: 40}}

var wireTemp = Range{Lo: -50, Hi: 200}

const (
	wireValid  = "solid wire, direct current or mains frequency in small gauges; refuses a gauge outside 4/0 to 40 and a temperature outside -50 to 200 degC"
	wireSource = "ASTM B258 diameters; copper of 100 % IACS, 1.7241e-8 ohm.m at 20 degC; aluminium of 61 % IACS, 2.8264e-8 ohm.m (from memory)"
	feetToM    = 0.3048
)

// wireOhms is the resistance of a solid wire, length in feet.
func wireOhms(awg, feet, celsius float64, metal string) (float64, error) {
	if awg != math.Trunc(awg) {
		return 0, errors.New("gauge must be a whole number")
	}
	d := 0.127 * math.Pow(92, (36-awg)/39)
	return sectionOhms(math.Pi/4*d*d, feet*feetToM, celsius, metal), nil
}

// sectionOhms is the resistance of a conductor of a section in mm² and a length in m.
func sectionOhms(mm2, metres, celsius float64, metal string) float64 {
	m := conductors[metal]
	return m.rho20 * (m.k + celsius) / (m.k + 20) * metres / (mm2 * 1e-6)
}

// section takes what wires in and before an appliance have (common practice).
var section = Param{Name: "mm2", Help: "the conductor's section in mm², a plain number", In: Range{Lo: 0.05, Hi: 1000}}

const (
	sectionValid  = "direct current or mains frequency in small sections; the section is taken as printed, a maker's may have some percent more resistance; refuses a section outside 0.05 to 1000 mm² and a temperature outside -50 to 200 degC"
	sectionSource = "copper of 100 % IACS, 1.7241e-8 ohm.m at 20 degC; aluminium of 61 % IACS, 2.8264e-8 ohm.m (from memory)"
)

var wires = []Formula{
	{
		Name: "wire_ohms", Topic: "wire", Unit: "ohm",
		Params: []Param{gauge, {Name: "length", Unit: "ft", Help: "of the wire, there and back for a pair", In: positive},
			withDefault(Param{Name: "temp", Unit: "degC", Help: "of the wire", In: wireTemp}, 20), conductor},
		Help:     "resistance of a wire from its gauge, length and temperature",
		Equation: "R = ρ20 (k+t)/(k+20) L / A, A = π/4 (0.127 mm · 92^((36−AWG)/39))²; k 234.5 copper, 228.1 aluminium",
		Valid:    wireValid, Source: wireSource,
		Example: Example{Call: "wire_ohms(14, 1000ft, 20C)", Args: []any{14.0, 1000.0, 20.0}, Want: 2.525, Tol: 0.001,
			Text: "1000 ft of 14 gauge copper at 20 degC has 2.53 ohm"},
		Fn:  func(a Args) (float64, error) { return wireOhms(a.Num[0], a.Num[1], a.Num[2], a.Word[3]) },
		Say: func(a Args, _ float64) string { return fmt.Sprintf("%s at %.4g degC", a.Word[3], a.Num[2]) },
	},
	{
		Name: "wire_drop", Topic: "wire", Unit: "V",
		Params: []Param{gauge, {Name: "length", Unit: "ft", Help: "one way; the current goes there and back", In: positive}, ampParam("amps", "load current"),
			withDefault(Param{Name: "temp", Unit: "degC", Help: "of the wire", In: wireTemp}, 75), conductor},
		Help:     "voltage lost in a two-wire run, there and back",
		Equation: "V = 2 L I r, r as wire_ohms",
		Valid:    wireValid, Source: wireSource + "; 75 degC as NEC Chapter 9 Table 8",
		Example: Example{Call: "wire_drop(14, 50ft, 12A)", Args: []any{14.0, 50.0, 12.0}, Want: 3.684, Tol: 0.01,
			Text: "12 A through 50 ft of 14 gauge copper loses 3.7 V, 3.1 % of 120 V"},
		Fn: func(a Args) (float64, error) {
			r, err := wireOhms(a.Num[0], 2*a.Num[1], a.Num[3], a.Word[4])
			return r * a.Num[2], err
		},
		Say: func(a Args, v float64) string {
			return fmt.Sprintf("%s at %.4g degC; %.3g %% of 120 V, %.3g %% of 240 V", a.Word[4], a.Num[3], v/1.2, v/2.4)
		},
	},
	{
		Name: "wire_ohms_mm2", Topic: "wire", Unit: "ohm",
		Params: []Param{section, {Name: "length", Unit: "m", Help: "of the wire, there and back for a pair", In: positive},
			withDefault(Param{Name: "temp", Unit: "degC", Help: "of the wire", In: wireTemp}, 20), conductor},
		Help:     "resistance of a wire from its section in mm², length and temperature",
		Equation: "R = ρ20 (k+t)/(k+20) L / A; k 234.5 copper, 228.1 aluminium",
		Valid:    sectionValid, Source: sectionSource,
		Example: Example{Call: "wire_ohms_mm2(1.5, 100m, 20C)", Args: []any{1.5, 100.0, 20.0}, Want: 1.1494, Tol: 0.0001,
			Text: "100 m of 1.5 mm² copper at 20 degC has 1.15 ohm"},
		Fn:  func(a Args) (float64, error) { return sectionOhms(a.Num[0], a.Num[1], a.Num[2], a.Word[3]), nil },
		Say: func(a Args, _ float64) string { return fmt.Sprintf("%s at %.4g degC", a.Word[3], a.Num[2]) },
	},
	{
		Name: "wire_drop_mm2", Topic: "wire", Unit: "V",
		Params: []Param{section, {Name: "length", Unit: "m", Help: "one way; the current goes there and back", In: positive}, ampParam("amps", "load current"),
			withDefault(Param{Name: "temp", Unit: "degC", Help: "of the wire", In: wireTemp}, 75), conductor},
		Help:     "voltage lost in a two-wire run of a section in mm², there and back",
		Equation: "V = 2 L I r, r as wire_ohms_mm2",
		Valid:    sectionValid, Source: sectionSource,
		Example: Example{Call: "wire_drop_mm2(1.5, 10m, 10A)", Args: []any{1.5, 10.0, 10.0}, Want: 2.796, Tol: 0.001,
			Text: "10 A through 10 m of 1.5 mm² copper loses 2.8 V, 1.2 % of 230 V"},
		Fn: func(a Args) (float64, error) {
			return sectionOhms(a.Num[0], 2*a.Num[1], a.Num[3], a.Word[4]) * a.Num[2], nil
		},
		Say: func(a Args, v float64) string {
			return fmt.Sprintf("%s at %.4g degC; %.3g %% of 230 V, %.3g %% of 400 V", a.Word[4], a.Num[3], v/2.3, v/4)
		},
	},
}
