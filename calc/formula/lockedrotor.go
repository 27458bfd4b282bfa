package formula

import (
	"fmt"
	"math"
	"slices"
)

// codeLetter is one row of NEC Table 430.7(B): locked-rotor kVA per
// horsepower as printed; the last row has no upper end.
type codeLetter struct {
	letter      string
	least, most float64
}

// codeLetters is NEC Table 430.7(B).
var codeLetters = []codeLetter{
	{"A", 0, 3.14}, {"B", 3.15, 3.54}, {"C", 3.55, 3.99}, {"D", 4.0, 4.49}, {"E", 4.5, 4.99}, {"F", 5.0, 5.59},
	{"G", 5.6, 6.29}, {"H", 6.3, 7.09}, {"J", 7.1, 7.99}, {"K", 8.0, 8.99}, {"L", 9.0, 9.99}, {"M", 10.0, 11.19},
	{"N", 11.2, 12.49}, {"P", 12.5, 13.99}, {"R", 14.0, 15.99}, {"S", 16.0, 17.99}, {"T", 18.0, 19.99},
	{"U", 20.0, 22.39}, {"V", 22.4, math.Inf(1)},
}

// codeOf is the row that a kVA per horsepower falls in; what lies between two
// printed rows belongs to the lower one. Sixteen amps that come to 8 by their
// decimals come to a hair less in binary.
func codeOf(kva float64) codeLetter {
	row := codeLetters[0]
	for _, r := range codeLetters[1:] {
		if kva*(1+1e-12) >= r.least {
			row = r
		}
	}
	return row
}

func letters() []string {
	var all []string
	for _, r := range codeLetters {
		all = append(all, r.letter)
	}
	return all
}

func rowNamed(letter string) codeLetter {
	return codeLetters[slices.IndexFunc(codeLetters, func(r codeLetter) bool { return r.letter == letter })]
}

var (
	codeParam  = Param{Name: "code", Help: "locked-rotor code letter on the nameplate; there is no I, O or Q", Words: letters()}
	horsepower = Param{Name: "power", Unit: "hp", Help: "rated output", In: positive}
	phases     = Param{Name: "supply", Help: "single-phase or three-phase", Words: []string{"single-phase", "three-phase"}, Optional: true, DefaultWord: "single-phase"}
)

// lineFactor turns volts times amps into volt-amperes.
func lineFactor(supply string) float64 {
	if supply == "three-phase" {
		return math.Sqrt(3)
	}
	return 1
}

const (
	codeTopic  = "locked rotor"
	codeSource = "NEC Table 430.7(B)"
	codeValid  = "motors whose nameplate has a code letter; hermetic compressors carry locked-rotor amps instead; refuses zero and below"
)

var lockedRotor = []Formula{
	{
		Name: "lra_code", Topic: codeTopic,
		Params: []Param{ampParam("amps", "with the rotor locked"), voltParam("volts", "rated"), horsepower, phases},
		Help:   "kVA per horsepower with the rotor locked, and the code letter it falls under", Equation: "kVA/hp = V I [√3] / (1000 hp)", Valid: codeValid, Source: codeSource,
		Example: Example{Call: "lra_code(30A, 115V, 0.33333hp)", Args: []any{30.0, 115.0, 0.33333}, Want: 10.35, Tol: 0.001,
			Text: "30 A at 115 V and 1/3 hp is 10.35 kVA/hp, code M"},
		Fn: func(a Args) (float64, error) {
			return a.Num[0] * a.Num[1] * lineFactor(a.Word[3]) / (1000 * a.Num[2]), nil
		},
		Say: func(_ Args, kva float64) string {
			r := codeOf(kva)
			if math.IsInf(r.most, 1) {
				return fmt.Sprintf("code letter %s, %.4g kVA/hp and more", r.letter, r.least)
			}
			return fmt.Sprintf("code letter %s, %.4g to %.4g kVA/hp", r.letter, r.least, r.most)
		},
	},
	{
		Name: "lra_least", Topic: codeTopic, Unit: "A", Params: []Param{codeParam, voltParam("volts", "rated"), horsepower, phases},
		Help: "least locked-rotor amps that a code letter allows", Equation: "I = 1000 hp (kVA/hp) / (V [√3])", Valid: codeValid, Source: codeSource,
		Example: Example{Call: `lra_least("L", 115V, 0.25hp)`, Args: []any{"L", 115.0, 0.25}, Want: 19.57, Tol: 0.005,
			Text: "1/4 hp, code L, on 115 V draws at least 19.6 A locked"},
		Fn: func(a Args) (float64, error) {
			return 1000 * rowNamed(a.Word[0]).least * a.Num[2] / (a.Num[1] * lineFactor(a.Word[3])), nil
		},
	},
	{
		Name: "lra_most", Topic: codeTopic, Unit: "A", Params: []Param{codeParam, voltParam("volts", "rated"), horsepower, phases},
		Help: "most locked-rotor amps that a code letter allows", Equation: "I = 1000 hp (kVA/hp) / (V [√3])",
		Valid: codeValid + ", and code V, which has no upper end", Source: codeSource,
		Example: Example{Call: `lra_most("L", 115V, 0.25hp)`, Args: []any{"L", 115.0, 0.25}, Want: 21.72, Tol: 0.005,
			Text: "1/4 hp, code L, on 115 V draws at most 21.7 A locked"},
		Fn: func(a Args) (float64, error) {
			r := rowNamed(a.Word[0])
			if math.IsInf(r.most, 1) {
				return 0, fmt.Errorf("code %s has no upper end: %.4g kVA/hp and more", r.letter, r.least)
			}
			return 1000 * r.most * a.Num[2] / (a.Num[1] * lineFactor(a.Word[3])), nil
		},
	},
}
