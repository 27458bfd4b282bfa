package formula

import "fmt"

// windingK is the constant k of R2/R1 = (k + t2)/(k + t1): minus the
// temperature at which the metal's resistance would come to zero on a straight
// line. Published values differ, so each has its own word: copper 234.5 (UL text, IEEE
// 112), 235 (IEC 60034-1, from memory); aluminium 225 (UL text), 228 (published
// by an engineering portal).
var windingK = map[string]float64{
	"copper":        234.5,
	"copper-235":    235,
	"aluminium":     225,
	"aluminium-228": 228,
}

var (
	windingMetal = Param{Name: "metal", Help: "of the winding, and with it the constant k", Optional: true, DefaultWord: "copper",
		Words: []string{"copper", "copper-235", "aluminium", "aluminium-228"}}
	windingRange = Range{Lo: -60, Hi: 300}
	coldOhms     = ohmParam("cold", "winding's resistance, cold")
	coldTemp     = Param{Name: "at", Unit: "degC", Help: "winding's temperature then", In: windingRange}
	hotOhms      = ohmParam("hot", "the same winding's resistance now")
)

const (
	windingValid    = "winding fully at the cold temperature for the first reading; refuses temperatures outside -60 to 300 degC; warns of a result outside that range"
	windingEquation = "t2 = (R2/R1)(k + t1) − k"
	windingSource   = "k 234.5 copper and 225 aluminium: IEEE 112 and UL text; copper-235: IEC 60034-1 cl. 8.6.2 (from memory); aluminium-228: EEP knowledge base"
)

func windingTemp(cold, at, hot float64, metal string) float64 {
	k := windingK[metal]
	return hot/cold*(k+at) - k
}

func windingWarn(a Args, metal int) string {
	if t := windingTemp(a.Num[0], a.Num[1], a.Num[2], a.Word[metal]); t < windingRange.Lo || t > windingRange.Hi {
		return fmt.Sprintf("a winding at %.0f degC is not credible: the readings are of different windings, or one is off", t)
	}
	return ""
}

func namedK(metal string) string { return fmt.Sprintf("%s, k = %.4g", metal, windingK[metal]) }

var windings = []Formula{
	{
		Name: "winding_temp", Topic: "windings", Unit: "degC", Params: []Param{coldOhms, coldTemp, hotOhms, windingMetal},
		Help:     "temperature of a winding from its resistance cold and now",
		Equation: windingEquation, Valid: windingValid, Source: windingSource,
		Example: Example{Call: `winding_temp(5ohm, 25C, 6ohm, "copper")`, Args: []any{5.0, 25.0, 6.0, "copper"}, Want: 76.90, Tol: 0.005,
			Text: "a copper winding of 5 ohm at 25 degC that now reads 6 ohm is at 77 degC"},
		Fn:   func(a Args) (float64, error) { return windingTemp(a.Num[0], a.Num[1], a.Num[2], a.Word[3]), nil },
		Warn: func(a Args) string { return windingWarn(a, 3) },
		Say:  func(a Args, _ float64) string { return namedK(a.Word[3]) },
	},
	{
		Name: "winding_rise", Topic: "windings", Unit: "K",
		Params:   []Param{coldOhms, coldTemp, hotOhms, {Name: "around", Unit: "degC", Help: "temperature of the air or gas around it at the end", In: windingRange}, windingMetal},
		Help:     "rise of a winding over what cools it",
		Equation: "rise = (R2 − R1)/R1 (k + t1) + t1 − ta",
		Valid:    windingValid, Source: "IEC 60034-1 cl. 8.6.2.2 (from memory); " + windingSource,
		Example: Example{Call: `winding_rise(4ohm, 22C, 5.2ohm, 26C, "copper-235")`, Args: []any{4.0, 22.0, 5.2, 26.0, "copper-235"}, Want: 73.10, Tol: 0.005,
			Text: "4.00 ohm at 22 degC and 5.20 ohm in air of 26 degC is a rise of 73 K"},
		Fn: func(a Args) (float64, error) {
			return windingTemp(a.Num[0], a.Num[1], a.Num[2], a.Word[4]) - a.Num[3], nil
		},
		Warn: func(a Args) string { return windingWarn(a, 4) },
		Say:  func(a Args, _ float64) string { return namedK(a.Word[4]) },
	},
	{
		Name: "winding_ohms", Topic: "windings", Unit: "ohm",
		Params: []Param{ohmParam("ohms", "winding's resistance"), coldTemp,
			withDefault(Param{Name: "to", Unit: "degC", Help: "temperature to correct to, 20 or 25 as the maker's sheet says", In: windingRange}, 25), windingMetal},
		Help:     "resistance a winding would have at another temperature",
		Equation: "R2 = R1 (k + t2) / (k + t1)",
		Valid:    "winding evenly warm; refuses temperatures outside -60 to 300 degC", Source: windingSource,
		Example: Example{Call: "winding_ohms(4.2ohm, 40C, 25C)", Args: []any{4.2, 40.0, 25.0}, Want: 3.9705, Tol: 0.0001,
			Text: "a copper winding of 4.20 ohm at 40 degC has 3.97 ohm at 25 degC"},
		Fn: func(a Args) (float64, error) {
			k := windingK[a.Word[3]]
			return a.Num[0] * (k + a.Num[2]) / (k + a.Num[1]), nil
		},
		Say: func(a Args, _ float64) string { return fmt.Sprintf("at %.4g degC; %s", a.Num[2], namedK(a.Word[3])) },
	},
}
