package formula

import (
	"errors"
	"fmt"
	"math"
)

func capParam(help string) Param { return Param{Name: "cap", Unit: "uF", Help: help, In: positive} }

// mains is the supply's frequency. It has a default to keep a call short, and
// every reply that used it says so.
var mains = Param{Name: "freq", Unit: "Hz", Help: "supply frequency", In: positive, Optional: true, Default: 60}

// StartSpread is how far above its marked minimum a start capacitor may be
// (EIA-463, −0/+20 %, from memory).
const StartSpread = 1.2

const sine = "sine wave; refuses zero and below"

var circuits = []Formula{
	{
		Name: "series_r", Topic: "series and parallel", Unit: "ohm", Repeat: 1, Groups: 2,
		Params:   []Param{{Name: "ohms", Unit: "ohm", Help: "each part", In: notNegative}},
		Help:     "resistances one after the other",
		Equation: "R = R1 + R2 + …", Valid: "two or more; refuses a negative one", Source: "Kirchhoff's voltage law",
		Example: Example{Call: "series_r(11ohm, 4ohm)", Args: []any{11.0, 4.0}, Want: 15, Tol: 1e-9,
			Text: "start winding 11 ohm and run winding 4 ohm read 15 ohm from end to end"},
		Fn: func(a Args) (float64, error) { return sum(a.Num), nil },
	},
	{
		Name: "parallel_r", Topic: "series and parallel", Unit: "ohm", Repeat: 1, Groups: 2,
		Params:   []Param{ohmParam("ohms", "each part")},
		Help:     "resistances side by side",
		Equation: "1/R = 1/R1 + 1/R2 + …", Valid: "two or more; refuses zero and below", Source: "Kirchhoff's current law",
		Example: Example{Call: "parallel_r(32ohm, 32ohm)", Args: []any{32.0, 32.0}, Want: 16, Tol: 1e-9,
			Text: "two elements of 32 ohm side by side read 16 ohm"},
		Fn: func(a Args) (float64, error) { return sumOfInverses(a.Num), nil },
	},
	{
		Name: "series_c", Topic: "series and parallel", Unit: "uF", Repeat: 1, Groups: 2,
		Params:   []Param{capParam("each capacitor")},
		Help:     "capacitors one after the other",
		Equation: "1/C = 1/C1 + 1/C2 + …", Valid: "two or more; refuses zero and below", Source: "any circuits text",
		Example: Example{Call: "series_c(10uF, 15uF)", Args: []any{10.0, 15.0}, Want: 6, Tol: 1e-9,
			Text: "10 uF in series with 15 uF is 6 uF"},
		Fn: func(a Args) (float64, error) { return sumOfInverses(a.Num), nil },
	},
	{
		Name: "parallel_c", Topic: "series and parallel", Unit: "uF", Repeat: 1, Groups: 2,
		Params:   []Param{capParam("each capacitor")},
		Help:     "capacitors side by side",
		Equation: "C = C1 + C2 + …", Valid: "two or more; refuses zero and below", Source: "any circuits text",
		Example: Example{Call: "parallel_c(35uF, 5uF)", Args: []any{35.0, 5.0}, Want: 40, Tol: 1e-9,
			Text: "35 uF beside 5 uF is 40 uF"},
		Fn: func(a Args) (float64, error) { return sum(a.Num), nil },
	},
}

var capacitors = []Formula{
	{
		Name: "cap_load", Topic: "capacitors", Unit: "uF",
		Params:   []Param{ampParam("amps", "in the capacitor's lead"), voltParam("volts", "across the capacitor's terminals, running"), mains},
		Help:     "capacitance of a run capacitor from its amps and volts while the motor runs",
		Equation: "C = I / (2π f V)", Valid: sine, Source: "I = 2π f C V, any alternating-current text; at 60 Hz the trade rounds 10⁶/(2π f) to 2652 (from memory)",
		Example: Example{Call: "cap_load(4.2A, 330V, 60Hz)", Args: []any{4.2, 330.0, 60.0}, Want: 33.760, Tol: 0.001,
			Text: "4.2 A at 330 V and 60 Hz is 33.8 uF"},
		Fn:  func(a Args) (float64, error) { return 1e6 * a.Num[0] / (2 * math.Pi * a.Num[2] * a.Num[1]), nil },
		Say: func(a Args, _ float64) string { return atFrequency(a.Num[2]) },
	},
	{
		Name: "cap_energy", Topic: "capacitors", Unit: "J",
		Params:   []Param{capParam("capacitance"), {Name: "volts", Unit: "V", Help: "between the terminals now; after alternating current the peak"}},
		Help:     "energy stored in a charged capacitor",
		Equation: "W = C V² / 2", Valid: "any charge; refuses a capacitance of zero and below", Source: "any circuits text",
		Example: Example{Call: "cap_energy(45uF, 440V)", Args: []any{45.0, 440.0}, Want: 4.356, Tol: 0.001,
			Text: "45 uF charged to 440 V holds 4.4 J"},
		Fn: func(a Args) (float64, error) { return 0.5e-6 * a.Num[0] * a.Num[1] * a.Num[1], nil },
	},
	{
		Name: "discharge_time", Topic: "capacitors", Unit: "s",
		Params: []Param{ohmParam("ohms", "discharge resistor"), capParam("capacitance"),
			voltParam("volts", "at the start; after alternating current the peak"), voltParam("safe", "volts to come down to")},
		Help:     "time for a resistor to bring a capacitor down to a voltage",
		Equation: "t = R C ln(V / Vsafe)", Valid: "refuses a safe voltage above the first; measure before you touch, a resistor can be open",
		Source: "any circuits text",
		Example: Example{Call: "discharge_time(20kohm, 35uF, 523.3V, 34V)", Args: []any{20e3, 35.0, 523.3, 34.0}, Want: 1.914, Tol: 0.001,
			Text: "20 kohm brings 35 uF from 523 V to 34 V in 1.9 s"},
		Fn: func(a Args) (float64, error) {
			l, err := decay(a.Num[2], a.Num[3])
			return a.Num[0] * a.Num[1] * 1e-6 * l, err
		},
	},
	{
		Name: "bleeder_ohms", Topic: "capacitors", Unit: "ohm",
		Params: []Param{capParam("capacitance"), voltParam("volts", "at the start; after alternating current the peak"),
			voltParam("safe", "volts to come down to"), {Name: "time", Unit: "s", Help: "time allowed", In: positive}},
		Help:     "largest bleeder resistor that discharges a capacitor in time",
		Equation: "R = t / (C ln(V / Vsafe))", Valid: "refuses a safe voltage that is not below the first",
		Source: "ELECTRONICON catalogue p.47, with V = √2 U",
		Example: Example{Call: "bleeder_ohms(45uF, volts_peak(440V), 50V, 60s)", Args: []any{45.0, 440 * math.Sqrt2, 50.0, 60.0}, Want: 528.8e3, Tol: 50,
			Text: "45 uF on 440 V falls to 50 V in 60 s through 528 kohm or less"},
		Fn: func(a Args) (float64, error) {
			l, err := decay(a.Num[1], a.Num[2])
			if err == nil && l == 0 {
				err = errors.New("the capacitor is at the safe voltage from the start")
			}
			if err != nil {
				return 0, err
			}
			return a.Num[3] / (a.Num[0] * 1e-6 * l), nil
		},
		Say: func(a Args, _ float64) string {
			l, err := decay(math.Sqrt2*a.Num[1], a.Num[2])
			if err != nil || l == 0 {
				return ""
			}
			return fmt.Sprintf("counted from %.4g V; a line of %.4g V rms leaves up to %.4g V, and then at most %.4g kΩ (volts_peak)",
				a.Num[1], a.Num[1], math.Sqrt2*a.Num[1], a.Num[3]/(a.Num[0]*1e-6*l)/1e3)
		},
	},
	{
		Name: "bleeder_watts", Topic: "capacitors", Unit: "W",
		Params:   []Param{voltParam("volts", "across the capacitor while it works, rms"), ohmParam("ohms", "bleeder resistor")},
		Help:     "watts in a bleeder resistor all the time the capacitor is on",
		Equation: "P = V² / R", Valid: sine, Source: "Joule's law",
		Example: Example{Call: "bleeder_watts(440V, 15kohm)", Args: []any{440.0, 15e3}, Want: 12.907, Tol: 0.001,
			Text: "15 kohm across 440 V takes 12.9 W all the time, and 25.8 W at the first instant of a discharge from the peak"},
		Fn: func(a Args) (float64, error) { return a.Num[0] * a.Num[0] / a.Num[1], nil },
		Say: func(_ Args, w float64) string {
			return fmt.Sprintf("at the first instant of a discharge from the peak: %.3g W", 2*w)
		},
	},
	{
		Name: "start_cap", Topic: "capacitors", Unit: "uF",
		Params: []Param{ohmParam("run_r", "run winding's resistance, rotor at rest"), ohmParam("run_x", "run winding's reactance, rotor at rest"),
			ohmParam("start_r", "start winding's resistance, rotor at rest"), ohmParam("start_x", "start winding's reactance, rotor at rest"), mains},
		Help:     "capacitor in series with the start winding that puts its current 90° ahead of the run winding's",
		Equation: "Xc = Xs + Rs Rr / Xr; C = 1 / (2π f Xc)",
		Valid:    "impedances at rest, from a locked-rotor test; refuses zero and below. A compressor's maker names the capacitor: use that one",
		Source:   "Fitzgerald, Kingsley & Umans, Electric Machinery, 6th ed., Example 9.1 (from memory)",
		Example: Example{Call: "start_cap(3.5ohm, 2.5ohm, 8.6ohm, 2.5ohm, 60Hz)", Args: []any{3.5, 2.5, 8.6, 2.5, 60.0}, Want: 182.43, Tol: 0.01,
			Text: "run winding 3.5 + j2.5 ohm and start winding 8.6 + j2.5 ohm need 182 uF at 60 Hz"},
		Fn: func(a Args) (float64, error) {
			return 1e6 / (2 * math.Pi * a.Num[4] * (a.Num[3] + a.Num[2]*a.Num[0]/a.Num[1])), nil
		},
		Say: func(a Args, _ float64) string { return atFrequency(a.Num[4]) },
	},
}

var reactances = []Formula{
	{
		Name: "reactance_c", Topic: "reactance", Unit: "ohm",
		Params:   []Param{capParam("capacitance"), mains},
		Help:     "reactance of a capacitor",
		Equation: "Xc = 1 / (2π f C)", Valid: sine, Source: "any alternating-current text",
		Example: Example{Call: "reactance_c(35uF, 60Hz)", Args: []any{35.0, 60.0}, Want: 75.788, Tol: 0.001,
			Text: "35 uF at 60 Hz has 75.8 ohm"},
		Fn:  func(a Args) (float64, error) { return 1e6 / (2 * math.Pi * a.Num[1] * a.Num[0]), nil },
		Say: func(a Args, _ float64) string { return atFrequency(a.Num[1]) },
	},
	{
		Name: "reactance_l", Topic: "reactance", Unit: "ohm",
		Params:   []Param{{Name: "inductance", Unit: "mH", Help: "inductance", In: positive}, mains},
		Help:     "reactance of a coil",
		Equation: "XL = 2π f L", Valid: sine, Source: "any alternating-current text",
		Example: Example{Call: "reactance_l(100mH, 60Hz)", Args: []any{100.0, 60.0}, Want: 37.699, Tol: 0.001,
			Text: "100 mH at 60 Hz has 37.7 ohm"},
		Fn:  func(a Args) (float64, error) { return 2e-3 * math.Pi * a.Num[1] * a.Num[0], nil },
		Say: func(a Args, _ float64) string { return atFrequency(a.Num[1]) },
	},
}

// decay is how many time constants a voltage takes from one value to another.
func decay(from, to float64) (float64, error) {
	if to > from {
		return 0, errors.New("the safe voltage is above the voltage at the start")
	}
	return math.Log(from / to), nil
}

func atFrequency(hz float64) string { return fmt.Sprintf("at %.4g Hz", hz) }
