package said

import (
	"slices"
	"strings"

	"ohmcall/calc/cause"
)

// Joint is a kind of joint that work opens and that is shown to be tight again by
// a finding, whose code it is.
type Joint string

// Of fuel gas by its name, of fuel gas where an appliance is known to burn it, and
// of refrigerant.
const (
	GasJoint         Joint = "gas"
	BurnerJoint      Joint = "burner"
	RefrigerantJoint Joint = "refrigerant"
)

var (
	gasParts = Lazily(`\b(gas|lpg|propane) ((control|safety|combination|supply|pressure|main|flexible|burner) )*(valves?|cocks?|regulators?|manifolds?|pipes?|pipework|lines?|hoses?|flex|connectors?|unions?|fittings?|joints?|trains?|orifices?|jets?|injectors?|bottles?|cylinders?|pilots?)\b`)
	// burnerParts are of fuel gas in what burns it alone.
	burnerParts = Lazily(`\b(regulators?|manifolds?|pilots?|orifices?|injectors?|jets?|spuds?|flex|unions?|pipe joints?|black pipe)\b|\b(safety|oven|burner|bake|broil\w*|control|main|combination) valves?\b` +
		`|^(i |we )?(replaced|fitted|installed|changed|swapped|exchanged|renewed|resealed|new|put in)( the| a| new)* valve\b|^(the )?(new )?valve (was )?(replaced|fitted|changed|swapped|resealed)`)
	// unopened tells work at such a part by which no joint is opened.
	unopened = Lazily(`^(i |we )?(opened|turned|shut|closed|lit\b|re-?lit\b|lighted|reset|set\b|left)|\b(coils?|knobs?|drain|relief|mixing|water|lamp|label|screw)\b`)

	refrigerantWork = Lazily(`\b(un|de-?)?braz|\bsilver.?solder|\brecharg|\bre-?gass|\bcharged (it |up |back |the |system |unit )*(with|to|by|in|\d|r-?\d|propane|(iso)?butane|refrigerant)|\bused (\w+ )?r-?\d|\bcharge of \d|\btopped (it |the charge )?(up|off)|\b(added|weighed in|put in|let in|dumped in) ([\w.]+ ){0,4}?(refrigerant|charge|gas$|gas (to|in)\b|r-? ?\d|4\d\d[abc]\b)|\b(adjusted|trimmed|corrected) (the )?(refrigerant )?charge\b|\bgassed (it |the (system|unit) )?up\b|\bevacuat|\bpulled .{0,12}vacuum` +
		`|\brecovered\b|\bpurged\b|\bvented (the )?(gas|charge|refrigerant)|\bcut the tube|\bpiercing|\b(access|line.?tap|expansion|reversing) (valve|core)|\bvalve core|\btxv\b|\bprocess tube|\b(un)?sweated (in |out |off |the |a |new )*(joint|drier|tub|line|valve|fitting)|\bopened (up )?(the )?(sealed )?(system|circuit)\b|\b(cut|sawed|torched)( out| off)? (the |old )*((filter[ -]?)?drier|cap(illary)? tube|capillary)( (with|and|by|using|at)\b|$)|\b(suction|discharge|refrigerant) line\b`)
	refrigerantParts = Lazily(`\b(compressor|comp|evaporator|evap|condenser|cond|capillary|cap tube|accumulator|(filter[ -]?)?drier)\b`)
	// besideIt are parts at one of those which leave it whole.
	besideIt = Lazily(`\b(relay|start|device|overload|protector|capacitor|run cap|terminals?|cover|plug|wires?|wiring|leads?|mounts?|bolts?|kit|ptc|board|pan|oil|fans?|motor|sensor|therm\w+|heater|control|switch|probe|bulb|hose|tray|drain|door|belt|drum|lint|vent|grille?|guard|screen)\b`)
)

// charged tells the gas that was put in, where aGas has one; oils and
// hoses are for one, and none.
var (
	charged = pattern{expr: `\b(?:(?:re)?charg(?:ed|ing)|top(?:ped)? (?:\w+ )*?(?:up|off)|added|used|filled|gassed|put)\b(?:[ ,]+[\w.]+){0,5}?[ ,]+(r-? ?\d{2,4}[a-z]{0,2}|propane|(?:iso)?butane)\b( label| sticker| hose| gauge| oil| leak| detector| torch| bottle| tank| cylinder| grill| heater)?`}
	byName  = []string{"propane", "butane"}
)

// aGas reports whether a text may name a refrigerant, by a number behind an r or by name.
func aGas(text string) bool {
	for i := 0; i+1 < len(text); i++ {
		if text[i]|0x20 != 'r' || i > 0 && wordByte(text[i-1]|0x20) {
			continue
		}
		n := i + 1
		if n+1 < len(text) && (text[n] == '-' || text[n] == ' ') {
			n++
		}
		if text[n] >= '0' && text[n] <= '9' {
			return true
		}
	}
	return Has(text, byName)
}

// Charged gives the gas that words of what was done say was put in, "" when they name none.
func Charged(done string) string {
	if aGas(done) {
		if m := charged.get().FindStringSubmatch(strings.ToLower(done)); m != nil && m[2] == "" {
			return m[1]
		}
	}
	return ""
}

// Held gives the gas that words say was put into a machine or is in it, "" when they name
// none, deny it or speak of what may be.
func Held(text string) string {
	if !aGas(text) {
		return ""
	}
	for _, c := range Clauses(text) {
		gas := Charged(c)
		if m := heldIn.get().FindStringSubmatch(c); gas == "" && m != nil {
			gas = m[1] + m[2]
		}
		if before, _, _ := strings.Cut(c, gas); gas != "" && !unheldGas.is(before) {
			return gas
		}
	}
	return ""
}

var (
	heldIn    = pattern{expr: `(?:(?:system|unit|machine|circuit|charge|ac|fridge|freezer|it) (?:now |still )?(?:holds?|has|contains?|is(?: full of)?|got|(?:was )?found with|runs on)(?: \w+){0,3} (r-? ?\d{2,4}[a-z]{0,2}|propane|(?:iso)?butane)$|(r-? ?\d{2,4}[a-z]{0,2}|propane|(?:iso)?butane)(?: \w+){0,2} in (?:it|the|this|there|system|unit|circuit|lines?)\b)`}
	unheldGas = pattern{expr: `\b(no|not|never|without|nothing|if|should|would|could|may|might|asked|wants?|wanted|suggest\w*|order\w*|quot\w*|needs?|for|was|n't)\b|n't\b`}
)

// named tells of a refrigerant that burns: by its number, or as what is in a machine or
// comes out of it, which a torch and a bottle are not.
var (
	named = pattern{expr: `(?i)\br-? ?(290|600a?)\b|\bhydrocarbon|\bflammable (refrig\w*|gas|charge)|\b(propane|(iso)?butane) (gas )?(box|unit|fridge|freezer|machine|charge|system|refrigerant|leak|hiss|pour|escap)`}
	names = []string{"290", "600", "propane", "butane", "flammable", "hydrocarbon"}
)

var lines = pattern{expr: `\b(suction|discharge|refrigerant) line\b`}

// NamesFire reports whether a text names a refrigerant that burns.
//
//go:noinline
func NamesFire(text string) bool { return Has(text, names) && named.is(text) }

// NamesMild reports whether a text names a refrigerant that burns less well (A2L of
// ASHRAE 34, from memory).
//
//go:noinline
func NamesMild(text string) bool { return Has(text, mildNames) && mild.is(text) }

var (
	mild      = pattern{expr: `(?i)\br-? ?(32|45[24]b)\b|\b(454b|a2l)\b`}
	mildNames = []string{"r32", "r-32", "r 32", "454b", "452b", "a2l"}
)

// Opened gives the kinds of joints that words of work say were opened; a part is
// one that was fitted.
func Opened(text string, part bool) (out []Joint) {
	add := func(j Joint) {
		if !slices.Contains(out, j) {
			out = append(out, j)
		}
	}
	for _, c := range Stated(text) {
		if part {
			c = "new " + c
		}
		switch {
		case unopened().MatchString(c):
		case gasParts().MatchString(c):
			add(GasJoint)
		case burnerParts().MatchString(c):
			add(BurnerJoint)
		}
		if Has(c, []string{"insul", "foam", "lagging", "tape"}) { // a line is wrapped and stays whole
			c = lines.get().ReplaceAllString(c, "")
		}
		if refrigerantWork().MatchString(c) || Has(c, []string{"solder"}) && !Has(c, electrical) {
			add(RefrigerantJoint)
			continue
		}
		for _, what := range Renewals(c) {
			if refrigerantParts().MatchString(what) && !besideIt().MatchString(what) && (renewing.is(what) || !Works(what)) {
				add(RefrigerantJoint)
			}
		}
	}
	return out
}

// GasShut reports whether words of making safe are of the gas and of nothing else.
func GasShut(text string) bool { return gasAlone().MatchString(text) }

var gasAlone = Lazily(`(?i)^(the )?(gas|cock|gas cock|gas valve|gas supply)( is| was)? (off|shut|shut ?off|closed|turned off)( at .*)?$`)

// proving are the words without one of which no test is told of.
var proving = []string{"test", "soap", "tight", "ppm", "co ", "monoxide", "flue", "spillage", "draft", "no gas leak", "leak", "bubbl", "sniff", "spill", "pressure", " hold", "n2"}

// shown are the findings of tests that own words tell of, with what was tested and what
// came of it.
var shown = []struct {
	code     string
	of, good pattern
}{
	{"no-gas-leak", pattern{expr: `\b(leak|soap|bubble|gas|pressure) ?(re)?(test|check)|\bsoap|\bgas.?tight|\bno gas leaks?\b|\bno bubbles?\b|\b(n2|nitrogen) (test|hold|held|pressure)|\bsniff\w*|\b(holds|held) pressure|\bpressure (holds|held)`},
		pattern{expr: `\b(good|ok|okay|pass|passed|tight|clean|clear|fine|held|holds|negative|neg|none|nil|quiet|silent)\b|\bno (gas )?(leaks?|bubbl\w*|drop)\b`}},
	{"no-co", pattern{expr: `\bco\b|monoxide`}, pattern{expr: `\b(0|zero) ?ppm\b|\b(co|monoxide) (is |at |reads |meter |now )*(0|zero)( |$)`}},
	{"no-spill", pattern{expr: `\b(spill\w*|draft|flue|combustion) (test|check|analysis)|\bflue draws|\bno spill(age|s|ing)?\b|\bdrafts? (is |was )?(good|ok)\b`},
		pattern{expr: `\b(good|ok|okay|pass|passed|clean|clear|fine|draws|no spill(age|s|ing)?)\b`}},
}

// unshown tells a clause of a test that is still to be, or that failed.
var unshown = pattern{expr: `\b(not|need\w*|will|must|should|if|unless|until|before|fail\w*|ask\w*|recommend\w*|advis\w*|to be)\b|n't\b|\b[1-9]\d* ?ppm|\bsome\b`}

// gasThings are those of which "no leak" is of a gas, where water may leak as well.
var (
	gasThings = []string{"gas ", "flex", "union", "sniff", "soap", "bubbl", "flare", "drier", "braz", "n2", "nitrogen", "recover"}
	noLeak    = pattern{expr: `\bno leaks?\b`}
)

// Shown gives the findings that a text tells of by tests that stand behind all its work.
func Shown(text string) []string {
	if !Has(text, proving) {
		return nil
	}
	var out []string
	tested := -1
	ofGas := Has(text, gasThings)
	for _, c := range Clauses(text) {
		if cause.Partly(c) != "" {
			out, tested = nil, -1
			continue
		}
		if ofGas {
			c = noLeak.get().ReplaceAllString(c, "no gas leak")
		}
		for i := range shown {
			s := &shown[i]
			of, good := s.of.is(c), s.good.is(c)
			switch {
			case unshown.is(c):
				of = false
			case (of || tested == i) && good:
				if !slices.Contains(out, s.code) {
					out = append(out, s.code)
				}
				of = true
			case i == 0 && mending.is(c):
				out, tested = nil, -1
			}
			if of {
				tested = i
			}
		}
	}
	return out
}

// LosesCharge reports whether a text says that a machine's refrigerant is short now.
func LosesCharge(text string) bool {
	return Has(text, []string{"gas", "charge", "refrigerant", "pressure"}) && slices.ContainsFunc(Now(sinceThen.get().ReplaceAllString(text, "")), func(t Telling) bool {
		return losesCharge.get().MatchString(t.Clause) && !keepsCharge.get().MatchString(t.Clause)
	})
}

var (
	losesCharge = pattern{expr: `
(low|short|down) (on|of) (the )?(gas|charge|refrigerant)\b
(los(t|ing|es)|leaks|leaking) (\w+ ){0,2}(gas|charge|refrigerant)\b
under.?charged\b
(pressures?|charge|gas|refrigerant) (\w+ ){0,2}(dropp(ed|ing)|drops?|fall(s|ing|en)?|fell|gone|low)\b
(gas|charge|refrigerant) (is |has )?(out|flat)\b
`}
	keepsCharge = pattern{expr: `\b(no|not|never|none|nothing|without|isn'?t|hasn'?t|didn'?t|doesn'?t|if|when|as|of)\b.*\b(gas|charge|refrigerant|pressures?|low|drop)|\b(when|as|normal|expected)\b`}
	sinceThen   = pattern{expr: `(?i) since (yesterday|then|the (repair|work|charge)|(my |the )?last \w+)`}
)
