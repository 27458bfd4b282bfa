package formula

import (
	"fmt"
	"math"
	"slices"

	"ohmcall/calc/quantity"
)

// vapour is one saturation line: ln(p/pc) = (Tc/T) Σ n θ^t, θ = 1 − T/Tc.
// The coefficients are those of the CoolProp fluid files (MIT licence,
// © the CoolProp developers), fitted to the equation of state named in each
// gas to within 0.053 %.
type vapour struct {
	tc float64 // critical temperature, K
	pc float64 // critical pressure, Pa
	n  [6]float64
	t  [6]float64
}

// gas is a refrigerant with its dew (vapour) and bubble (liquid) lines.
type gas struct {
	name        string
	source      string // of the equation of state
	dew, bubble vapour
	glide       bool // the two lines differ
}

// pure makes a refrigerant whose dew and bubble lines are one.
func pure(name, source string, tc, pc float64, n, t [6]float64) gas {
	line := vapour{tc, pc, n, t}
	return gas{name: name, source: source, dew: line, bubble: line}
}

const lemmon = "Lemmon, Int. J. Thermophys. 24 (2003), as a pseudo-pure fluid"

// gases are the refrigerants with the equation of state behind each; the
// coefficients are of the CoolProp fluid files, see vapour.
var gases = []gas{
	pure("R-134a", "Tillner-Roth & Baehr, J. Phys. Chem. Ref. Data 23 (1994) 657", 374.21, 4059280,
		[6]float64{0.4331478287291047, -9.090302559074352, 2.1476074125217703, -1.557687007603464, -3.5020328972698604, 14.958442337201044},
		[6]float64{0.845, 0.99, 1.14, 2.651, 4.507, 17.235}),
	pure("R-600a", "Bücker & Wagner, J. Phys. Chem. Ref. Data 35 (2006)", 407.817, 3629000,
		[6]float64{-48.02915589537987, 43.34653680580028, -1.4421317283854331, -3.1322275225078413, 5.203481182010376, -6.173022897817098},
		[6]float64{1.082, 1.108, 1.463, 4.045, 13.157, 14.042}),
	pure("R-290", "Lemmon, McLinden & Wagner, J. Chem. Eng. Data 54 (2009)", 369.89, 4251200,
		[6]float64{-23.998635747391152, 18.313017605233238, -0.42240851966839504, -2.7378298813798962, 0.257888414168987, -1.3113462226130785},
		[6]float64{1.05, 1.084, 2.259, 4.287, 7.66, 18.584}),
	pure("R-12", "Marx, Pruss & Wagner (1992)", 385.12, 4136100,
		[6]float64{-0.4180899251614923, -6.821426208906223, 1.4450198472690974, -1.4837613030063526, -2.1731387101462754, -5.72739817030707},
		[6]float64{0.894, 1.009, 1.274, 3.0, 4.927, 19.696}),
	pure("R-22", "Kamei, Beyerlein & Jacobsen, Int. J. Thermophys. (1995)", 369.295, 4990000,
		[6]float64{-7.2670371701641265, 1.2860929616388512, -0.10790119794275199, -0.989473291657183, -2.9393096353041623, 0.488431917326884},
		[6]float64{0.999, 1.272, 1.692, 2.74, 4.539, 15.876}),
	pure("R-32", "Tillner-Roth & Yokozeki, J. Phys. Chem. Ref. Data 26 (1997) 1273", 351.255, 5782000,
		[6]float64{0.019194334673139708, -6.794802163795212, 9.276391392786632, -12.327153852761946, 28.46579606476374, -28.570870718190093},
		[6]float64{0.531, 0.979, 2.203, 2.382, 3.421, 3.558}),
	{
		name: "R-410A", source: lemmon, glide: true,
		dew: vapour{344.494, 4901200,
			[6]float64{-8.81630527169583, 3.0101820364714076, -1.0140011045291613, -3.736880461403412, 1.478360466811462, -34.64742822281509},
			[6]float64{1.018, 1.285, 1.862, 3.869, 5.725, 10.878}},
		bubble: vapour{344.494, 4901200,
			[6]float64{-7.393982466686463, 1.4712516902869381, -0.10468488716031096, -2.612149622992068, 0.24139536090585145, -2.688737604664642},
			[6]float64{1.002, 1.579, 2.313, 2.841, 3.77, 5.337}},
	},
	{
		name: "R-407C", source: lemmon, glide: true,
		dew: vapour{359.345, 4631700,
			[6]float64{-0.02526319311536476, -1.4911994937454576, -5.422666319606085, 0.46047437701559923, -4.5527752103859545, -22.506926177764264},
			[6]float64{0.289, 0.798, 1.03, 2.282, 3.477, 10.467}},
		bubble: vapour{359.345, 4631700,
			[6]float64{0.16728493073329312, -53.38279226938705, 60.42641909765115, -14.171031944447838, -2.416970185723638, -0.6842647632263293},
			[6]float64{0.446, 1.145, 1.222, 1.436, 4.271, 4.452}},
	},
	{
		name: "R-404A", source: lemmon, glide: true,
		dew: vapour{345.27, 3734800,
			[6]float64{-5.364477716661244, -1.4230007624991121, 3.314690272990208, -5.181329955404622, -3.360484849212965, -551.2801078830697},
			[6]float64{0.951, 1.13, 2.426, 2.778, 5.072, 16.153}},
		bubble: vapour{345.27, 3734800,
			[6]float64{0.5635840402585297, -0.5827522825709982, -6.4663745582192815, -2.8281654415264432, -0.7995458853560359, -11.354572861041914},
			[6]float64{0.688, 0.743, 0.963, 3.561, 4.194, 10.201}},
	},
}

// For gauge pressures at sea level.
const (
	atmosphere = quantity.Atmosphere
	psi        = quantity.PSI
)

// coldest is where the lines start, K: below it no repair trade works.
const coldest = 200.0

// logRatio is ln(p/pc) at a temperature in kelvin.
func (v *vapour) logRatio(kelvin float64) float64 {
	// θ^t as exp(t ln θ): one logarithm for six powers.
	l := math.Log(1 - kelvin/v.tc)
	s := 0.0
	for i, n := range v.n {
		s += n * math.Exp(v.t[i]*l)
	}
	return v.tc / kelvin * s
}

// pressure is the absolute saturation pressure, Pa.
//
//go:noinline
func (v *vapour) pressure(kelvin float64) float64 { return v.pc * math.Exp(v.logRatio(kelvin)) }

// temperature inverts pressure by false position over 1/T, in which the
// logarithm of the pressure is nearly straight; the halving of the stale end
// keeps it from creeping (the Illinois rule).
func (v *vapour) temperature(pascal float64) float64 {
	want := math.Log(pascal / v.pc)
	x0, x1 := 1/v.tc, 1/coldest
	f0, f1 := v.logRatio(v.tc)-want, v.logRatio(coldest)-want
	x := x0
	for range 100 {
		if f0 == f1 {
			break
		}
		next := (x0*f1 - x1*f0) / (f1 - f0)
		done := math.Abs(next-x) < 1e-15*x
		x = next
		f := v.logRatio(1/x) - want
		if f == 0 || done {
			break
		}
		if f*f1 < 0 {
			x0, f0 = x1, f1
		} else {
			f0 /= 2
		}
		x1, f1 = x, f
	}
	return 1 / x
}

func (g *gas) line(side string) *vapour {
	if side == "bubble" {
		return &g.bubble
	}
	return &g.dew
}

//go:noinline
func gasNamed(name string) *gas {
	return &gases[slices.IndexFunc(gases, func(g gas) bool { return g.name == name })]
}

// say tells which line a result is on.
func (g *gas) say(side string) string {
	switch {
	case !g.glide:
		return "dew and bubble are the same for " + g.name + "; gauge at sea level"
	case side == "bubble":
		return "bubble line, for liquid such as at the condenser's end; gauge at sea level"
	}
	return "dew line, for vapour such as at the evaporator's end; gauge at sea level"
}

func gaugePSI(pascal float64) float64 { return (pascal - atmosphere) / psi }

var (
	refrigerant = Param{Name: "gas", Help: "refrigerant as the nameplate says", Words: gasNames()}
	side        = Param{Name: "line", Help: "dew for vapour (evaporator, superheat), bubble for liquid (condenser, subcooling)",
		Words: []string{"dew", "bubble"}, Optional: true, DefaultWord: "dew"}
)

func gasNames() []string {
	names := make([]string, len(gases))
	for i, g := range gases {
		names[i] = g.name
	}
	return names
}

const (
	satTopic    = "refrigerants"
	satEquation = "ln(p/pc) = (Tc/T) Σ n θ^t, θ = 1 − T/Tc, six terms; gauge = p − 101.325 kPa"
	satValid    = "clean refrigerant with liquid and vapour together, gauge at sea level: at 1500 m a gauge reads about 2.4 psi more; refuses below -73.15 degC and above the critical point"
	satSource   = "coefficients of the CoolProp fluid files, within 0.053 % of: R-134a Tillner-Roth & Baehr 1994; R-600a Bücker & Wagner 2006; R-290 Lemmon et al. 2009; R-12 Marx et al. 1992; R-22 Kamei et al. 1995; R-32 Tillner-Roth & Yokozeki 1997; R-410A, R-407C and R-404A Lemmon 2003"
)

var saturation = []Formula{
	{
		Name: "sat_press", Topic: satTopic, Unit: "psig",
		Params: []Param{refrigerant, {Name: "temp", Unit: "degC", Help: "saturation temperature"}, side},
		Help:   "gauge pressure at which a refrigerant boils or condenses at a temperature", Equation: satEquation, Valid: satValid, Source: satSource,
		Example: Example{Call: `sat_press("R-134a", 40F)`, Args: []any{"R-134a", (40.0 - 32) / 1.8}, Want: 35.05, Tol: 0.02,
			Text: "R-134a at 40 degF stands at 35 psig"},
		Fn: func(a Args) (float64, error) {
			v := gasNamed(a.Word[0]).line(a.Word[2])
			t := a.Num[1] + zeroC
			if t < coldest || t > v.tc {
				return 0, fmt.Errorf("%s: temperature must be from %.4g to %.4g degC", a.Word[0], coldest-zeroC, v.tc-zeroC)
			}
			return gaugePSI(v.pressure(t)), nil
		},
		Say: func(a Args, _ float64) string { return gasNamed(a.Word[0]).say(a.Word[2]) },
	},
	{
		Name: "sat_temp", Topic: satTopic, Unit: "degC",
		Params: []Param{refrigerant, {Name: "press", Unit: "psig", Help: "gauge pressure; below zero is vacuum"}, side},
		Help:   "temperature at which a refrigerant boils or condenses at a gauge pressure", Equation: satEquation, Valid: satValid, Source: satSource,
		Example: Example{Call: `sat_temp("R-404A", 85.4psig, "dew")`, Args: []any{"R-404A", 85.4, "dew"}, Want: 4.444, Tol: 0.02,
			Text: "R-404A vapour at 85.4 psig boils out at 40 degF"},
		Fn: func(a Args) (float64, error) {
			return saturated(a.Word[0], a.Num[1], a.Word[2])
		},
		Say: func(a Args, _ float64) string { return gasNamed(a.Word[0]).say(a.Word[2]) },
	},
	{
		Name: "superheat", Topic: satTopic, Unit: "K", Params: lineParams,
		Help: "how far a suction line is above the boiling point at its pressure", Equation: "SH = T − Tsat(p), dew line", Valid: lineValid, Source: lineSource,
		Example: Example{Call: `superheat("R-134a", 35psig, 50F)`, Args: []any{"R-134a", 35.0, 10.0}, Want: 5.57, Tol: 0.02,
			Text: "R-134a at 35 psig boils at 40 degF; a line at 50 degF is 10 Fdiff above"},
		Fn: func(a Args) (float64, error) {
			t, err := saturated(a.Word[0], a.Num[1], "dew")
			return a.Num[2] - t, err
		},
		Say: func(a Args, t float64) string { return gasNamed(a.Word[0]).say("dew") + unfit(t) },
	},
	{
		Name: "subcooling", Topic: satTopic, Unit: "K", Params: lineParams,
		Help: "how far a liquid line is below the condensing point at its pressure", Equation: "SC = Tsat(p) − T, bubble line", Valid: lineValid, Source: lineSource,
		Example: Example{Call: `subcooling("R-134a", 124.2psig, 90F)`, Args: []any{"R-134a", 124.2, 290.0 / 9}, Want: 5.55, Tol: 0.02,
			Text: "R-134a at 124 psig condenses at 100 degF; a line at 90 degF is 10 Fdiff below"},
		Fn: func(a Args) (float64, error) {
			t, err := saturated(a.Word[0], a.Num[1], "bubble")
			return t - a.Num[2], err
		},
		Say: func(a Args, t float64) string { return gasNamed(a.Word[0]).say("bubble") + unfit(t) },
	},
}

const (
	lineValid  = "as sat_temp, and refuses as it does; a gauge belongs to certified hands"
	lineSource = "common practice; saturation as sat_temp"
)

var lineParams = []Param{refrigerant, {Name: "press", Unit: "psig", Help: "gauge pressure at the line"}, {Name: "temp", Unit: "degC", Help: "of the line, where the pressure is read"}}

// unfit is what there is to say of superheat or subcooling below zero.
func unfit(kelvin float64) string {
	if kelvin < 0 {
		return "; below zero the readings, their place or the gas do not fit each other"
	}
	return ""
}

// saturated is the temperature of a gas in °C on one of its lines at a gauge
// pressure in psi.
//
//go:noinline
func saturated(gas string, press float64, line string) (float64, error) {
	v := gasNamed(gas).line(line)
	p := press*psi + atmosphere
	if least := v.pressure(coldest); p < least || p > v.pc {
		return 0, fmt.Errorf("%s: pressure must be from %.4g to %.4g psig", gas, gaugePSI(least), gaugePSI(v.pc))
	}
	return v.temperature(p) - zeroC, nil
}

// plateGas finds the refrigerant of the table that a plate names, as in
// "R600a" or "r-600A"; false when it is not in the table.
func plateGas(plate string) (name string, ok bool) {
	key := GasKey(plate)
	for _, g := range gases {
		if key == GasKey(g.name) {
			return g.name, true
		}
	}
	return "", false
}

// GasNamed is the name that the sums take for a refrigerant as a plate names it;
// false when it is not in the table.
func GasNamed(plate string) (name string, ok bool) { return plateGas(plate) }

// SaturationPSI is the gauge pressure in psi on the dew and the bubble line of
// a refrigerant of the table, at sea level; false outside the lines.
func SaturationPSI(gas string, celsius float64) (dew, bubble float64, ok bool) {
	name, ok := plateGas(gas)
	t := celsius + zeroC
	if !ok || t < coldest {
		return 0, 0, false
	}
	g := gasNamed(name)
	if t > min(g.dew.tc, g.bubble.tc) {
		return 0, 0, false
	}
	return gaugePSI(g.dew.pressure(t)), gaugePSI(g.bubble.pressure(t)), true
}

// SaturationCelsius is the temperature in °C at which a refrigerant of the
// table boils at a gauge pressure in psi at sea level; false outside the line.
func SaturationCelsius(gas string, press float64) (float64, bool) {
	name, ok := plateGas(gas)
	if !ok {
		return 0, false
	}
	t, err := saturated(name, press, "dew")
	return t, err == nil
}

// SaturationSource names the equation of state behind a refrigerant's lines.
func SaturationSource(gas string) string {
	name, ok := plateGas(gas)
	if !ok {
		return ""
	}
	return gasNamed(name).source
}
