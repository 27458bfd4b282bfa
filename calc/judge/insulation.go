package judge

import (
	"fmt"
	"math"

	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// InsulationRule is one published lower limit from a winding to the case.
type InsulationRule struct {
	Code   string // what `limit` is given
	Name   string // the rule in words
	Source string
	Scope  string // what the publication says it is for
	flat   float64
	perV   float64
}

// defaultInsulationRule is applied when the house names none: the strictest
// of the limits that were published for small hermetic compressors.
const defaultInsulationRule = "2M"

// The published limits, laxest first at mains volts, each with its source. They
// disagree, so a verdict always names the one applied.
var insulationRules = []InsulationRule{
	{Code: "1000/V", Name: "1000 Ω per rated volt", perV: 1000,
		Source: "bulletin AE4-1294 (2010), megohm values of compressors",
		Scope:  "probably acceptable; hermetic compressors"},
	{Code: "0.5M", Name: "0.5 MΩ flat", flat: 0.5e6,
		Source: "bulletin AE4-1294 (2010), megohm values of compressors",
		Scope:  "hermetic compressors; a single reading cannot condemn"},
	{Code: "1M+kV", Name: "1 MΩ plus 1 MΩ per kV", flat: 1e6, perV: 1000,
		Source: "IEEE 43, formula as reprinted in a chiller service manual p. 143",
		Scope:  "windings before about 1970, at 40 °C; leaves out fractional horsepower"},
	{Code: "2M", Name: "2 MΩ flat", flat: 2e6,
		Source: "Hermetic Compressor Service Handbook p. 40-41",
		Scope:  "hermetic compressors, any pin to the suction line"},
	{Code: "5M", Name: "5 MΩ flat", flat: 5e6,
		Source: "IEEE 43-2000, as quoted by a testing-trade quiz",
		Scope:  "random-wound machines under 1 kV, at 40 °C; leaves out fractional horsepower"},
}

// InsulationRules lists the published limits.
func InsulationRules() []InsulationRule { return append([]InsulationRule(nil), insulationRules...) }

// InsulationRuleFor finds a rule by its code.
func InsulationRuleFor(code string) (InsulationRule, bool) {
	for _, r := range insulationRules {
		if r.Code == code {
			return r, true
		}
	}
	return InsulationRule{}, false
}

// Ohms is the limit for a machine rated at volts; false when the rule needs
// the rated volts and they are not known.
func (r InsulationRule) Ohms(volts float64) (float64, bool) {
	if r.perV > 0 && volts <= 0 {
		return 0, false
	}
	return r.flat + r.perV*volts, true
}

// leastMains is the lowest volts of a household supply, for a plate not read
// (common practice).
const leastMains = 100

// Grounded reports whether a reading to the case is a ground fault by any meter:
// the whole of it lies below every published limit, the laxest being that per
// rated volt; 0 V is a plate not read. Above it a single reading of an ordinary
// meter does not condemn, so that it is in doubt.
func Grounded(v measure.Value, ratedVolts float64) bool {
	if ratedVolts <= 0 {
		ratedVolts = leastMains
	}
	for _, r := range insulationRules {
		if limit, _ := r.Ohms(ratedVolts); v.Over || v.Hi >= limit {
			return false
		}
	}
	return true
}

// ClearOfGround reports whether a reading to the case passes every published
// limit.
func ClearOfGround(v measure.Value, ratedVolts float64) bool {
	for _, r := range insulationRules {
		if limit, ok := r.Ohms(ratedVolts); ok && !v.Over && v.X < limit {
			return false
		}
	}
	return true
}

// InsulationIn is one reading from a pin to the case.
type InsulationIn struct {
	Pin        string
	Ohms       measure.Value
	Floor      float64 // of an open reading, the range that it is over in ohms; 0 when not told
	TestVolts  float64 // of an insulation tester; 0 is an ordinary ohm-meter
	RatedVolts float64 // of the machine, 0 when not known
	Rule       string  // code of a published rule; empty is the default
	HouseOhms  float64 // a house limit in ohms, overrides Rule when positive
}

// Insulation judges a reading from a pin to the case. An ordinary ohm-meter
// can find a gross fault and cannot prove the insulation.
func Insulation(in InsulationIn) verdict.Verdict {
	subject := "insulation"
	if in.Pin != "" {
		subject += " " + in.Pin + " to case"
	}
	limit, name, source, problem := insulationLimit(in)
	if problem != "" {
		return verdict.Verdict{Subject: subject, Word: verdict.CannotTell, Text: problem,
			Entries: entries(in.Ohms)}
	}
	w := atLeast(limit)
	out := begin(subject, in.Ohms, w, "Ω", source)
	out.Limit += " (" + name + ")"
	if in.TestVolts > 0 {
		out.Caution = append(out.Caution, caution.InsulationVolts)
	} else {
		out.Caution = append(out.Caution, caution.ProveDead)
	}
	at := in.Ohms
	if at.Over {
		at = measure.Exact(math.Inf(1))
	}
	p := w.place(at)
	switch {
	case p == inside && in.Ohms.Over && in.Floor > 0 && in.Floor < limit:
		out.Word, out.Fact = verdict.CannotTell, []string{"insulation-undecided"}
		out.Text = "over " + ohms(in.Floor) + ", which is less than the limit: read it on a range that reaches it"
	case p == inside && in.TestVolts <= 0:
		out.Word, out.Fact = verdict.CannotTell, []string{"insulation-no-gross-fault"}
		out.Text = "no gross fault found; an ordinary ohm-meter cannot prove insulation, an insulation tester can"
	case p == inside && in.TestVolts < math.Sqrt2*in.RatedVolts:
		out.Word, out.Fact = verdict.CannotTell, []string{"insulation-no-gross-fault"}
		out.Text = fmt.Sprintf("the test at %s V is below the %s V peak in service; test at %s V",
			num(in.TestVolts), num(math.Sqrt2*in.RatedVolts), testAbove(math.Sqrt2*in.RatedVolts))
	case p == inside:
		out.Word, out.Fact = verdict.Sound, []string{"insulation-sound"}
		out.Text = fmt.Sprintf("insulation holds at %s V test", num(in.TestVolts))
	case p == straddles:
		out.Word = verdict.CannotTell
		out.Text = "too near the limit to say; do not energise: clean and dry the terminals, use an insulation tester"
		out.Fact = []string{fact("insulation", out.Word)}
		out.Caution = append(out.Caution, caution.NeverEnergise)
	default:
		insulationLow(in, at, &out)
	}
	if out.Word == verdict.Suspect {
		out.Fact = []string{"insulation-suspect"}
	}
	if (p != inside || in.TestVolts > 0) && !Grounded(at, in.RatedVolts) {
		// An ordinary ohm-meter passes no rule, so what others say of an open
		// reading would mislead.
		out.Also = append(out.Also, otherInsulationRules(in, at, name)...)
	}
	if out.Word == verdict.Failed || out.Word == verdict.Suspect {
		out.Caution = append(out.Caution, caution.NeverEnergise)
	}
	return out
}

// insulationLow words a reading that lies wholly below the limit applied. It
// condemns when no published limit would pass it, or when the house chose the
// limit and used the instrument that the limit is meant for.
func insulationLow(in InsulationIn, at measure.Value, out *verdict.Verdict) {
	house := in.HouseOhms > 0 || in.Rule != ""
	switch {
	case Grounded(at, in.RatedVolts), house && in.TestVolts > 0:
		out.Word, out.Fact = verdict.Failed, []string{"insulation-failed"}
		out.Text = fmt.Sprintf("%s to the case is below the rule of the house: do not energise", ohms(at.X))
		if Grounded(at, in.RatedVolts) {
			out.Text = fmt.Sprintf("%s to the case, below every published limit: grounded, do not energise", ohms(at.X))
		}
	case in.TestVolts > 0:
		out.Word = verdict.Suspect
		out.Text = "below the rule applied, though a laxer published limit would pass it; do not energise: clean the terminals and repeat"
		if !passesSomeRule(in, at) {
			out.Text = "below the rule applied, and no published limit surely passes it; do not energise: clean the terminals and repeat"
		}
	default:
		out.Word = verdict.Suspect
		out.Text = "in doubt, low for good insulation: do not energise until an insulation tester has settled it"
	}
}

func passesSomeRule(in InsulationIn, at measure.Value) bool {
	for _, r := range insulationRules {
		if limit, ok := r.Ohms(in.RatedVolts); ok && at.Lo >= limit {
			return true
		}
	}
	return false
}

// insulationLimit picks the rule: the house's number, its chosen rule or the
// default. The last result says why none can be applied.
func insulationLimit(in InsulationIn) (limit float64, name, source, problem string) {
	if in.HouseOhms > 0 {
		return in.HouseOhms, "house limit", "house rule", ""
	}
	code := in.Rule
	if code == "" {
		code = defaultInsulationRule
	}
	r, ok := InsulationRuleFor(code)
	if !ok {
		return 0, "", "", "there is no insulation rule of that name"
	}
	limit, ok = r.Ohms(in.RatedVolts)
	if !ok {
		return 0, "", "", "this insulation rule needs the rated volts of the plate"
	}
	return limit, r.Name, r.Source, ""
}

// otherInsulationRules says what the other published limits make of the
// reading, each with its scope.
func otherInsulationRules(in InsulationIn, at measure.Value, applied string) []string {
	var out []string
	for _, r := range insulationRules {
		limit, ok := r.Ohms(in.RatedVolts)
		if r.Name == applied {
			continue
		}
		says := "would pass it"
		switch p := atLeast(limit).place(at); {
		case !ok:
			says = "needs the plate's rated volts"
		case p == below:
			says = "would fail it"
		case p == straddles:
			says = "is too near to say"
		}
		out = append(out, fmt.Sprintf("%s (%s; %s) %s", r.Name, r.Source, r.Scope, says))
	}
	return out
}

// Volts of insulation testers (common practice).
const (
	usualTest = 500.0
	highTest  = 1000.0
)

// testAbove is the voltage of an insulation tester that lies above a peak.
func testAbove(peak float64) string {
	if peak <= usualTest {
		return num(usualTest)
	}
	return num(highTest)
}
