package cause

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"ohmcall/calc/caution"
)

var codeForm = regexp.MustCompile(`^[a-z]+(-[a-z]+)*$`)

func TestVocabularyIsWellFormed(t *testing.T) {
	texts := []string{seenRows, judgedRows}
	for _, c := range slices.Concat(causeTables()...) {
		if c.Own != nil {
			texts = append(texts, c.Own.Seen)
		}
	}
	for row := range strings.Lines(strings.Join(texts, "\n")) {
		if row = strings.TrimSpace(row); row != "" && !strings.HasPrefix(row, "#") && strings.Count(row, "|") != 3 {
			t.Errorf("%q is not read: a row has four fields", row)
		}
	}
	codes, phrases := map[string]bool{}, map[string]string{}
	for _, f := range append(Findings(), judged()...) {
		if !codeForm.MatchString(f.Code) || codes[f.Code] {
			t.Errorf("code %q is malformed or stands twice", f.Code)
		}
		codes[f.Code] = true
		if f.Help == "" {
			t.Errorf("%s: no help", f.Code)
		}
		if slices.Contains(f.Excludes, f.Code) {
			t.Errorf("%s excludes itself", f.Code)
		}
		for _, w := range f.Words {
			p := strings.Join(Fold(w), " ")
			if other, ok := phrases[p]; ok {
				t.Errorf("%q is typed for both %s and %s", w, other, f.Code)
			}
			phrases[p] = f.Code
		}
	}
	for _, f := range Findings() {
		if len(f.Words) == 0 {
			t.Errorf("%s cannot be typed", f.Code)
		}
	}
	for other := range synonyms {
		if codes[other] {
			t.Errorf("synonym %s is a code of its own", other)
		}
	}
}

// Every code that any table uses has to stand in the vocabulary.
func TestEveryCodeUsedIsKnown(t *testing.T) {
	check := func(where string, lists ...[]string) {
		for _, list := range lists {
			for _, c := range list {
				if f, ok := Lookup(c); !ok || f.Code != c {
					t.Errorf("%s uses %q, which is not in the vocabulary", where, c)
				}
			}
		}
	}
	for _, f := range append(Findings(), judged()...) {
		check(f.Code, f.Excludes)
	}
	for _, c := range slices.Concat(causeTables()...) {
		check(c.Code, c.Predicts, c.ShownBy, c.Contradicts)
	}
	for _, x := range Tests() {
		check(x.Code, x.Outcomes, x.Vague, x.When, x.Barred)
	}
	for _, c := range Complaints() {
		check(c.Code, c.Signs, c.Cured)
		for _, n := range c.Need {
			check(c.Code, n.Any)
			if n.What == "" || len(n.Any) == 0 {
				t.Errorf("%s: a need says nothing", c.Code)
			}
		}
	}
}

func TestCausesAreWellFormed(t *testing.T) {
	used := map[string]bool{}
	for _, c := range Complaints() {
		for _, code := range c.Causes {
			if _, ok := By(code); !ok {
				t.Errorf("%s names the unknown cause %s", c.Code, code)
			}
			used[code] = true
		}
	}
	seenCode := map[string]bool{}
	for _, c := range slices.Concat(causeTables()...) {
		if !codeForm.MatchString(c.Code) || seenCode[c.Code] {
			t.Errorf("code %q is malformed or stands twice", c.Code)
		}
		seenCode[c.Code] = true
		if !used[c.Code] {
			t.Errorf("%s belongs to no complaint", c.Code)
		}
		if c.Name == "" || c.Fix == "" || c.Source == "" || len(c.Contradicts) == 0 {
			t.Errorf("%s lacks a name, a repair, a source or what rules it out", c.Code)
		}
		if len(c.Predicts)+len(c.ShownBy) == 0 {
			t.Errorf("%s predicts nothing", c.Code)
		}
		for _, f := range append(slices.Clone(c.Predicts), c.ShownBy...) {
			if slices.Contains(c.Contradicts, f) {
				t.Errorf("%s has %s both for and against it", c.Code, f)
			}
		}
		for _, f := range c.Predicts {
			if slices.Contains(c.ShownBy, f) {
				t.Errorf("%s lists %s twice", c.Code, f)
			}
		}
		for _, b := range c.Before {
			if x := tables().test[b]; x == nil || x.Danger == Live {
				t.Errorf("%s wants %s before its repair, which is unknown or live", c.Code, b)
			}
		}
	}
}

// No repair may teach how to get round a protective device, and work on the
// sealed system is left to certified persons (40 CFR 82.161).
func TestRepairsAreSafe(t *testing.T) {
	for _, c := range slices.Concat(causeTables()...) {
		text := strings.ReplaceAll(c.Fix, "never bridge", "")
		for _, bad := range []string{"bridge", "bypass", "jumper", "defeat", "screwdriver"} {
			if strings.Contains(text, bad) {
				t.Errorf("%s: the repair says %q", c.Code, bad)
			}
		}
		for _, sealed := range []string{"evacuate", "replace the compressor", "condemns the compressor"} {
			if strings.Contains(c.Fix, sealed) && !strings.Contains(c.Fix, "certified") {
				t.Errorf("%s: sealed-system work without a word on certified persons", c.Code)
			}
		}
	}
}

func TestTestsAreWellFormed(t *testing.T) {
	codes := map[string]bool{}
	for _, x := range Tests() {
		if !codeForm.MatchString(x.Code) || codes[x.Code] {
			t.Errorf("code %q is malformed or stands twice", x.Code)
		}
		codes[x.Code] = true
		if x.Name == "" || x.How == "" || len(x.Outcomes) < 2 || x.Effort < 1 || x.Effort > 5 {
			t.Errorf("%s lacks a name, a line to type, two outcomes or a fair effort", x.Code)
		}
		if x.Danger == Live && !slices.Contains(x.Caution, caution.MainsLive) {
			t.Errorf("%s is live and does not say so", x.Code)
		}
		if x.Danger == Dead && !slices.Contains(x.Caution, caution.ProveDead) {
			t.Errorf("%s opens the machine without proving it dead", x.Code)
		}
		for _, c := range x.Caution {
			if _, ok := caution.Text(c); !ok {
				t.Errorf("%s names the unknown caution %s", x.Code, c)
			}
		}
		if word, rest, ok := strings.Cut(x.How, " "); ok && word == "saw" {
			code, _, found := FindFinding(rest)
			if !found || !slices.Contains(append(slices.Clone(x.Outcomes), x.Vague...), code) {
				t.Errorf("%s: %q gives %q, which is no outcome of it", x.Code, x.How, code)
			}
		}
	}
}

// Each cause has to fall to some outcome of a test of its complaint, and each
// two causes have to be parted by some outcome.
func TestEveryCauseAndPairCanBeDecided(t *testing.T) {
	for _, p := range tables().plans {
		for i := range p.causes {
			if !decided(p, func(out group) bool { return out.has(i) }) {
				t.Errorf("%s: no test rules out %s", p.Code, p.causes[i].Code)
			}
			for j := range i {
				a, b := p.causes[i].Code, p.causes[j].Code
				if !decided(p, func(out group) bool { return out.has(i) != out.has(j) }) {
					t.Errorf("%s: no test parts %s from %s", p.Code, a, b)
				}
			}
		}
	}
}

func decided(p *plan, ok func(group) bool) bool {
	for _, x := range p.trials {
		if slices.ContainsFunc(x.rulesOut, ok) {
			return true
		}
	}
	return false
}

// What cannot be true at the same time, from either side.
func TestExclusions(t *testing.T) {
	groups := [][]string{
		{"frost-none", "frost-partial", "frost-even", "frost-heavy"},
		{"windings-sound", "windings-equal", "winding-open"},
		{"windings-sound", "winding-shorted"},
		{"protector-open", "protector-closed"},
		{"cond-fan-runs", "cond-fan-stopped", "cond-fan-none"},
		{"evap-fan-runs", "evap-fan-stopped", "evap-fan-none"},
		{"comp-hot", "comp-cold"},
		{"amps-none", "amps-low", "amps-sound", "amps-high", "amps-locked-rotor"},
		{"supply-sound", "supply-low", "supply-high", "supply-absent"},
		{"sag-sound", "sag-deep"},
		{"starts-and-runs", "does-not-start"},
		{"cools-down", "cools-slowly", "does-not-cool"},
		{"start-device-sound", "start-device-suspect", "start-device-failed"},
		{"start-cap-sound", "start-cap-suspect", "start-cap-failed"},
		{"run-cap-none", "run-cap-sound"}, {"run-cap-sound", "run-cap-suspect", "run-cap-failed"},
		{"suction-low", "suction-normal", "suction-high"},
		{"insulation-sound", "insulation-suspect"}, {"insulation-sound", "insulation-failed"}, {"insulation-sound", "winding-grounded"},
	}
	for _, g := range groups {
		for _, a := range g {
			for _, b := range g {
				r := Weigh("no-start", []Fact{{Code: a, Entry: 1}, {Code: b, Entry: 2}})
				if want := a != b; want != (len(r.Contradictions) == 1) {
					t.Errorf("%s and %s: contradictions %v", a, b, r.Contradictions)
				}
			}
		}
	}
}

// The complaints of the trade that the table has to cover.
func TestComplaintsCovered(t *testing.T) {
	want := []string{"no-start", "hums-trips", "no-cool", "runs-always", "too-cold", "no-power", "trips-breaker", "leaks-ices", "no-heat", "motor-dead"}
	for _, code := range want {
		c, ok := ComplaintBy(code)
		if !ok || len(c.Causes) < 5 || len(c.Words) == 0 || len(c.Need) == 0 {
			t.Errorf("complaint %s is missing or thin", code)
		}
	}
	if _, ok := ComplaintBy("no-such"); ok {
		t.Error("an unknown complaint was found")
	}
}
