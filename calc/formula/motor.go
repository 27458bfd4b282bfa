package formula

import (
	"errors"
	"fmt"
	"math"
	"math/cmplx"
)

var poles = Param{Name: "poles", Help: "2, 4, 6 …", In: Range{Lo: 2, Hi: 100}}

var slip = Param{Name: "slip", Help: "fraction by which the rotor is behind the field: 0.05 is 5 %", In: Range{Lo: 0, Hi: 1, Above: true}}

// machine is the single-phase induction motor on its run winding alone. All
// impedances are seen from the run winding; the rotor's are whole, each of the
// two revolving fields sees one half.
var machine = []Param{
	voltParam("volts", "supply"), slip,
	ohmParam("r1", "run winding's resistance"), ohmParam("x1", "run winding's leakage reactance"),
	ohmParam("r2", "rotor's resistance"), ohmParam("x2", "rotor's leakage reactance"),
	ohmParam("xm", "magnetising reactance"),
}

var losses = []Param{
	{Name: "core", Unit: "W", Help: "core loss, taken off at the shaft as the textbook does", In: notNegative},
	{Name: "friction", Unit: "W", Help: "friction and windage loss", In: notNegative},
}

const (
	motorValid  = "running on the run winding alone; refuses a slip outside 0 to 1 and impedances of zero and below"
	motorSource = "Umans, Fitzgerald & Kingsley's Electric Machinery, Example 9.2 (inputs as published, results computed)"
	motorTopic  = "single-phase motor"
	halves      = "Zf = ½[jXm ‖ (R2/s + jX2)], Zb = ½[jXm ‖ (R2/(2−s) + jX2)], Z = R1 + jX1 + Zf + Zb"
)

// running is the state of that motor.
type running struct {
	current  complex128
	watts    float64 // into the winding
	forward  float64 // air-gap power of the forward field, W
	backward float64 // and of the backward field
	slip     float64
}

func run(a []float64) running {
	volts, s, r1, x1, r2, x2, xm := a[0], a[1], a[2], a[3], a[4], a[5], a[6]
	field := func(slip float64) complex128 {
		rotor, gap := complex(r2/slip, x2), complex(0, xm)
		return gap * rotor / (gap + rotor) / 2
	}
	f, b := field(s), field(2-s)
	i := complex(volts, 0) / (complex(r1, x1) + f + b)
	square := real(i)*real(i) + imag(i)*imag(i)
	return running{current: i, watts: volts * real(i), forward: square * real(f), backward: square * real(b), slip: s}
}

// shaft is the mechanical power before friction, W.
func (m running) shaft() float64 { return (1 - m.slip) * (m.forward - m.backward) }

func syncRPM(hz, poles float64) float64 { return 120 * hz / poles }

func evenPoles(n float64) error {
	if math.Mod(n, 2) != 0 {
		return errors.New("poles must be an even whole number")
	}
	return nil
}

// sampleMotor is the textbook's 1/4 hp motor.
var sampleMotor = []any{110.0, 0.05, 2.02, 2.79, 4.12, 2.12, 66.8}

const sampleCall = "110V, 0.05, 2.02ohm, 2.79ohm, 4.12ohm, 2.12ohm, 66.8ohm"

//go:noinline
func joined[T any](parts ...[]T) []T {
	var all []T
	for _, p := range parts {
		all = append(all, p...)
	}
	return all
}

var motors = []Formula{
	{
		Name: "motor_ohms", Topic: motorTopic, Unit: "ohm", Params: machine[1:],
		Help: "impedance of a running motor at a slip", Equation: "|Z|; " + halves, Valid: motorValid, Source: motorSource,
		Example: Example{Call: "motor_ohms(0.05, 2.02ohm, 2.79ohm, 4.12ohm, 2.12ohm, 66.8ohm)", Args: sampleMotor[1:], Want: 30.514, Tol: 0.002,
			Text: "the textbook's 1/4 hp motor at 5 % slip has 30.5 ohm"},
		Fn: func(a Args) (float64, error) {
			return 1 / cmplx.Abs(run(append([]float64{1}, a.Num...)).current), nil
		},
		Say: func(a Args, _ float64) string {
			z := 1 / run(append([]float64{1}, a.Num...)).current
			return fmt.Sprintf("%.4g ohm resistance and %.4g ohm reactance in series", real(z), imag(z))
		},
	},
	{
		Name: "motor_amps", Topic: motorTopic, Unit: "A", Params: machine,
		Help: "line current of a running motor at a slip", Equation: "I = V / |Z|; " + halves, Valid: motorValid, Source: motorSource,
		Example: Example{Call: "motor_amps(" + sampleCall + ")", Args: sampleMotor, Want: 3.605, Tol: 0.001,
			Text: "the textbook's 1/4 hp motor at 5 % slip draws 3.6 A"},
		Fn: func(a Args) (float64, error) { return cmplx.Abs(run(a.Num).current), nil },
	},
	{
		Name: "motor_pf", Topic: motorTopic, Params: machine,
		Help: "power factor of a running motor at a slip, lagging", Equation: "pf = Re Z / |Z|; " + halves, Valid: motorValid, Source: motorSource,
		Example: Example{Call: "motor_pf(" + sampleCall + ")", Args: sampleMotor, Want: 0.6208, Tol: 0.0001,
			Text: "the textbook's 1/4 hp motor at 5 % slip has a power factor of 0.62"},
		Fn: func(a Args) (float64, error) { i := run(a.Num).current; return real(i) / cmplx.Abs(i), nil },
	},
	{
		Name: "motor_watts", Topic: motorTopic, Unit: "W", Params: machine,
		Help: "watts that a running motor takes at a slip", Equation: "P = V I pf; " + halves, Valid: motorValid, Source: motorSource,
		Example: Example{Call: "motor_watts(" + sampleCall + ")", Args: sampleMotor, Want: 246.2, Tol: 0.1,
			Text: "the textbook's 1/4 hp motor at 5 % slip takes 246 W"},
		Fn: func(a Args) (float64, error) { return run(a.Num).watts, nil },
	},
	{
		Name: "motor_shaft", Topic: motorTopic, Unit: "W", Params: joined(machine, losses),
		Help:     "watts that a running motor gives at its shaft at a slip",
		Equation: "P = (1−s)(I² Re Zf − I² Re Zb) − core loss − friction; " + halves,
		Valid:    motorValid + "; warns when the losses exceed the power", Source: motorSource,
		Example: Example{Call: "motor_shaft(" + sampleCall + ", 24W, 13W)", Args: joined(sampleMotor, []any{24.0, 13.0}), Want: 147.4, Tol: 0.1,
			Text: "the textbook's 1/4 hp motor at 5 % slip gives 147 W"},
		Fn: func(a Args) (float64, error) { return run(a.Num).shaft() - a.Num[7] - a.Num[8], nil },
		Warn: func(a Args) string {
			if run(a.Num).shaft() < a.Num[7]+a.Num[8] {
				return "the losses exceed the power: the motor cannot run at this slip"
			}
			return ""
		},
	},
	{
		Name: "motor_torque", Topic: motorTopic, Unit: "N.m",
		Params:   joined(machine, losses, []Param{{Name: "freq", Unit: "Hz", Help: "supply frequency", In: positive}, poles}),
		Help:     "torque at the shaft of a running motor at a slip",
		Equation: "T = P / ((1−s) 4π f / poles), P as motor_shaft; " + halves,
		Valid:    motorValid + ", a slip of 1 and an odd number of poles", Source: motorSource,
		Example: Example{Call: "motor_torque(" + sampleCall + ", 24W, 13W, 60Hz, 4)", Args: joined(sampleMotor, []any{24.0, 13.0, 60.0, 4.0}), Want: 0.823, Tol: 0.001,
			Text: "the textbook's 1/4 hp motor at 5 % slip gives 0.82 N.m"},
		Fn: func(a Args) (float64, error) {
			if err := evenPoles(a.Num[10]); err != nil {
				return 0, err
			}
			if a.Num[1] == 1 {
				return 0, errors.New("at a slip of 1 the rotor stands still and friction takes no power: use a smaller slip")
			}
			speed := (1 - a.Num[1]) * syncRPM(a.Num[9], a.Num[10]) * math.Pi / 30
			return (run(a.Num).shaft() - a.Num[7] - a.Num[8]) / speed, nil
		},
	},
	{
		Name: "motor_eff", Topic: motorTopic, Unit: "%", Params: joined(machine, losses),
		Help: "efficiency of a running motor at a slip", Equation: "motor_shaft / motor_watts; " + halves, Valid: motorValid + ", and losses that exceed the power",
		Source: motorSource,
		Example: Example{Call: "motor_eff(" + sampleCall + ", 24W, 13W)", Args: joined(sampleMotor, []any{24.0, 13.0}), Want: 59.9, Tol: 0.05,
			Text: "the textbook's 1/4 hp motor at 5 % slip is 60 % efficient"},
		Fn: func(a Args) (float64, error) {
			m := run(a.Num)
			out := m.shaft() - a.Num[7] - a.Num[8]
			if out < 0 {
				return 0, errors.New("the losses exceed the power: the motor cannot run at this slip")
			}
			return 100 * out / m.watts, nil
		},
	},
	{
		Name: "motor_rpm", Topic: motorTopic, Unit: "rpm",
		Params: []Param{{Name: "freq", Unit: "Hz", Help: "supply frequency", In: positive}, poles, slipFromRest},
		Help:   "speed of an induction motor", Equation: "n = 120 f (1−s) / poles",
		Valid: "refuses an odd number of poles and a slip outside 0 to 1", Source: "any machines text; Umans Example 9.2",
		Example: Example{Call: "motor_rpm(60Hz, 4, 0.05)", Args: []any{60.0, 4.0, 0.05}, Want: 1710, Tol: 1e-6,
			Text: "four poles at 60 Hz and 5 % slip turn at 1710 rpm"},
		Fn: func(a Args) (float64, error) {
			return syncRPM(a.Num[0], a.Num[1]) * (1 - a.Num[2]), evenPoles(a.Num[1])
		},
	},
	{
		Name: "motor_slip", Topic: motorTopic,
		Params: []Param{{Name: "speed", Unit: "rpm", Help: "measured", In: notNegative}, {Name: "freq", Unit: "Hz", Help: "supply frequency", In: positive}, poles},
		Help:   "slip of an induction motor from its speed", Equation: "s = 1 − n poles / (120 f)",
		Valid: "refuses an odd number of poles and a speed above that of the field", Source: "any machines text; Umans Example 9.2",
		Example: Example{Call: "motor_slip(1710rpm, 60Hz, 4)", Args: []any{1710.0, 60.0, 4.0}, Want: 0.05, Tol: 1e-9,
			Text: "1710 rpm on four poles at 60 Hz is 5 % slip"},
		Fn: func(a Args) (float64, error) {
			sync := syncRPM(a.Num[1], a.Num[2])
			if a.Num[0] > sync {
				return 0, fmt.Errorf("a motor of these poles turns at %.4g rpm at most", sync)
			}
			return 1 - a.Num[0]/sync, evenPoles(a.Num[2])
		},
		Say: func(a Args, s float64) string {
			return fmt.Sprintf("%.3g %% below %.4g rpm", 100*s, syncRPM(a.Num[1], a.Num[2]))
		},
	},
	{
		Name: "start_amps_max", Topic: motorTopic, Unit: "A",
		Params:   []Param{voltParam("volts", "supply"), ohmParam("ohms", "winding, or run and start windings side by side")},
		Help:     "upper bound of the starting current from a winding's resistance",
		Equation: "I ≤ V / R",
		Valid:    "an upper bound: the reactance, unknown here, makes the true current smaller; refuses zero and below",
		Source:   "Ohm's law, |Z| ≥ R",
		Example: Example{Call: "start_amps_max(115V, 4ohm)", Args: []any{115.0, 4.0}, Want: 28.75, Tol: 1e-9,
			Text: "a 4 ohm winding on 115 V cannot draw more than 28.8 A"},
		Fn: func(a Args) (float64, error) { return a.Num[0] / a.Num[1], nil },
		Say: func(Args, float64) string {
			return "an upper bound: the winding's reactance is not known and makes the true current smaller"
		},
	},
}

// slipFromRest also takes a motor that runs at the speed of its field.
var slipFromRest = withDefault(Param{Name: "slip", Help: "fraction by which the rotor is behind the field", In: Range{Lo: 0, Hi: 1}}, 0)
