package main

import (
	"go/ast"
	"go/parser"
	"go/token"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"ohmcall/calc/cause"
	"ohmcall/calc/caution"
	"ohmcall/calc/formula"
	"ohmcall/calc/judge"
	"ohmcall/notebook/call"
)

// source tells a word that names where a number comes from.
var sourceWord = regexp.MustCompile(`(?i)common\s+practice|from\s+memory|IEC|IEEE|ANSI|NEC\b|NEMA|EIA-463|NIST|JCGM|CFR|COMAR|EN 50106|AS/NZS|FDA|UL text|handbook|manual|bulletin|Introduction to Digital Multimeter|house rule|each with its source|ASTM|textbook|CoolProp|Umans`)

// own are the numbers of the trade's packages that are no rule of the trade,
// with what they are.
var own = map[string]string{
	"judge.ntcCold": "where is looked", "call.mostFound": "how many findings are told", "call.mostAsked": "how many definitions are told", "call.longAsked": "how much of each is told", "call.ahead": "a difference of clocks", "call.enoughToTell": "when a reason is told",
	"call.mostPins": "a bound of the search", "call.mostJudged": "how far back is looked", "call.mostSearched": "how far back is looked",
	"call.mostNeeds": "a bound of a call", "call.mostWaiting": "a bound of a call", "call.headerText": "a bound of the front matter", "call.headerItem": "a bound of the front matter",
	"call.headerList": "a bound of the front matter", "call.mostRepairs": "how far back is looked",
	"call.mostPoints": "a bound of the fit", "call.fewestToTell": "degrees of freedom", "call.fewestForCourse": "degrees of freedom",
	"said.MostClauses": "a bound on work", "said.MostBytes": "a bound on work", "said.LongClause": "a bound on work", "call.longestTyped": "a bound on work", "call.mostHinted": "a bound on work", "call.mostTechs": "how many are told", "call.mostRenewals": "a bound on work", "call.mostSeen": "a bound on work", "call.coldTemperature": "the temperature to which is corrected",
	"judge.switchFacts": "a table's width", "pulldown.leastWidth": "a drawing's size", "pulldown.leastHeight": "a drawing's size",
	"pulldown.gutter": "a drawing's size", "pulldown.vague": "a width beyond which a number is not told", "pulldown.gridSteps": "steps of a search",
	"winding.mostTold": "how many candidates are told", "call.mostTold": "how much is told at once", "call.mostSaid": "how much is told at once", "call.pause": "what is no work", "winding.speedNames": "counts of speeds", "winding.namings": "pins by number",
	"winding.maxNodes": "a bound of the search", "winding.maxTrees": "a bound of the search", "winding.maxTries": "a bound of the search",
	"winding.slack": "rounding", "winding.anything": "no bound",
	"cause.nearEnough": "a share of words in common",
	"formula.positive": "a range's end", "formula.notNegative": "a range's end", "formula.edge": "rounding", "formula.hoursPerYear": "the calendar",
	"formula.duty": "a range's end", "formula.slip": "a range's end", "formula.slipFromRest": "a range's end", "formula.powerFactor": "a range's end",
	"formula.poles": "a range's end", "formula.gauge": "a range's end", "formula.wireTemp": "a range's end",
	"formula.ntcRange": "a range's end", "formula.ntcRef": "the R25's own temperature", "formula.beta": "a range's end", "formula.windingRange": "a range's end",
	"formula.coldest": "where the fitted lines start", "formula.mains": "a default that every reply names", "formula.feetToM": "a unit, exact",
	"formula.platinum": "two parts by their ohms at 0 °C", "formula.sampleTable": "an example", "formula.samplePoints": "an example",
}

// Every number among the constants and tables of the trade's packages names
// its source beside it, or is listed above with what it is.
func TestNumbersNameTheirSource(t *testing.T) {
	numbers, used := 0, map[string]bool{}
	for _, dir := range []string{"calc/judge", "calc/cause", "calc/pulldown", "calc/repair", "calc/winding", "calc/measure", "calc/formula", "notebook/said", "notebook/call"} {
		pkg := filepath.Base(dir)
		files, err := filepath.Glob("../../" + dir + "/*.go")
		if err != nil || len(files) == 0 {
			t.Fatal(pkg, err)
		}
		for _, name := range files {
			if strings.HasSuffix(name, "_test.go") {
				continue
			}
			f, err := parser.ParseFile(token.NewFileSet(), name, nil, parser.ParseComments)
			if err != nil {
				t.Fatal(err)
			}
			for _, d := range f.Decls {
				g, ok := d.(*ast.GenDecl)
				if !ok {
					continue
				}
				for _, s := range g.Specs {
					v, ok := s.(*ast.ValueSpec)
					if !ok {
						continue
					}
					found, said := numbersOf(v)
					if !found {
						continue
					}
					numbers++
					key := pkg + "." + v.Names[0].Name
					if own[key] != "" {
						used[key] = true
						continue
					}
					if !sourceWord.MatchString(g.Doc.Text() + v.Doc.Text() + v.Comment.Text() + said) {
						t.Errorf("%s: %s is a number without a source", name, key)
					}
				}
			}
		}
	}
	if numbers < 60 {
		t.Errorf("only %d numbers were seen", numbers)
	}
	for key := range own {
		if !used[key] {
			t.Errorf("%s is listed and is no number any more", key)
		}
	}
}

// numbersOf reports whether a declaration holds a number, and the texts and
// names that stand in it.
func numbersOf(v *ast.ValueSpec) (found bool, said string) {
	for _, e := range v.Values {
		ast.Inspect(e, func(n ast.Node) bool {
			switch n := n.(type) {
			case *ast.BasicLit:
				found = found || n.Kind == token.INT || n.Kind == token.FLOAT
				if n.Kind == token.STRING {
					said += n.Value
				}
			case *ast.Ident:
				if strings.HasSuffix(n.Name, "Source") || n.Name == "commonPractice" {
					said += "common practice"
				}
			}
			return true
		})
	}
	return found, said
}

// plainNumbers are those that a judge may write in its working: no rule of the
// trade is one of them.
var plainNumbers = map[string]bool{"0": true, "1": true, "2": true, "10": true, "100": true, "100.0": true, "9": true, "64": true,
	"3":   true, // digits of a number in print
	"6":   true, // counts of a display
	"25":  true, // the temperature in the name of R25
	"1e3": true, "1e6": true, "1e-3": true, "1e-6": true, "999_950": true, "999.95": true}

// eachNumber hands over every number that stands in the working of a function of
// the packages, with the function's name.
func eachNumber(t *testing.T, dirs []string, see func(l *ast.BasicLit, at token.Position, fn string)) {
	t.Helper()
	for _, dir := range dirs {
		files, err := filepath.Glob("../../" + dir + "/*.go")
		if err != nil || len(files) == 0 {
			t.Fatal(dir, err)
		}
		for _, name := range files {
			if strings.HasSuffix(name, "_test.go") {
				continue
			}
			set := token.NewFileSet()
			f, err := parser.ParseFile(set, name, nil, 0)
			if err != nil {
				t.Fatal(err)
			}
			for _, d := range f.Decls {
				fn, ok := d.(*ast.FuncDecl)
				if !ok {
					continue
				}
				ast.Inspect(fn, func(n ast.Node) bool {
					if l, ok := n.(*ast.BasicLit); ok && (l.Kind == token.INT || l.Kind == token.FLOAT) {
						see(l, set.Position(l.Pos()), fn.Name.Name)
					}
					return true
				})
			}
		}
	}
}

// A judge's limit is a constant with its source, not a number in its working.
func TestJudgesWorkWithNamedLimits(t *testing.T) {
	eachNumber(t, []string{"calc/judge"}, func(l *ast.BasicLit, at token.Position, fn string) {
		if !plainNumbers[l.Value] {
			t.Errorf("%s: %s stands in the working of %s", at, l.Value, fn)
		}
	})
}

// callNumbers are fractions that are no rule of the trade, beside plainNumbers.
var callNumbers = map[string]bool{"0.0": true, "1.8": true /* °F for a kelvin, exact */, "0.1": true /* a digit shown */, "1e4": true, "1e9": true, "1e12": true, "1e-9": true, "1.0": true}

// What decides in a call or a repair by a fraction decides by one that is named.
// Whole numbers are mostly sizes and steps of work there, and are not looked at.
func TestCallsWorkWithNamedFractions(t *testing.T) {
	seen := 0
	eachNumber(t, []string{"notebook/call", "calc/repair"}, func(l *ast.BasicLit, at token.Position, fn string) {
		if l.Kind != token.FLOAT {
			return
		}
		if seen++; !plainNumbers[l.Value] && !callNumbers[l.Value] {
			t.Errorf("%s: %s stands in the working of %s", at, l.Value, fn)
		}
	})
	if seen < 10 {
		t.Errorf("only %d fractions were seen", seen)
	}
}

// limitInWords tells a number with a unit of the trade, written in prose.
var limitInWords = regexp.MustCompile(`[0-9] (%|K|°C|V|A|Ω|MΩ|kΩ|µF|s|min)\b|[0-9] (%|Ω|MΩ|kΩ)`)

// A limit that the program's own help states names its source there.
func TestHelpNamesItsSources(t *testing.T) {
	limits := 0
	for _, c := range call.Commands() {
		for _, text := range []string{c.Help, c.Doc} {
			if !limitInWords.MatchString(text) {
				continue
			}
			limits++
			if !sourceWord.MatchString(text) {
				t.Errorf("help %s states a limit without its source: %s", c.Word, text)
			}
		}
	}
	if limits < 2 {
		t.Errorf("only %d texts state a limit", limits)
	}
}

var digit = regexp.MustCompile(`[0-9]`)

// What the program itself says beside a number of the trade.
func TestTablesNameTheirSource(t *testing.T) {
	for _, f := range formula.All() {
		if f.Source == "" {
			t.Errorf("formula %s has no source", f.Name)
		}
	}
	for _, c := range caution.All() {
		if c.Source == "" {
			t.Errorf("caution %s has no source", c.Code)
		}
	}
	for _, r := range judge.InsulationRules() {
		if r.Source == "" || r.Scope == "" {
			t.Errorf("insulation rule %s has no source or scope", r.Code)
		}
	}
	for _, e := range judge.SupplyEditions() {
		if e.Source == "" {
			t.Errorf("supply edition %s has no source", e.Code)
		}
	}
	for _, k := range cause.Complaints() {
		for _, code := range k.Causes {
			if c, _ := cause.By(code); c.Source == "" {
				t.Errorf("cause %s has no source", code)
			}
		}
	}
	for _, x := range cause.Tests() {
		if digit.MatchString(x.Name) && !sourceWord.MatchString(x.Source) {
			t.Errorf("test %s: %q has a number and the source %q", x.Code, x.Name, x.Source)
		}
	}
	// What readings establish stands in the causes that rest on it.
	facts := cause.Findings()
	for _, k := range cause.Complaints() {
		for _, code := range k.Causes {
			c, _ := cause.By(code)
			for _, code := range slices.Concat(c.Predicts, c.ShownBy, c.Contradicts) {
				f, _ := cause.Lookup(code)
				facts = append(facts, f)
			}
		}
	}
	for _, f := range facts {
		if digit.MatchString(f.Help) && !sourceWord.MatchString(f.Help) {
			t.Errorf("finding %s: %q has a number without a source", f.Code, f.Help)
		}
	}
}
