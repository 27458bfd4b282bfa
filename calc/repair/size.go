package repair

import (
	"fmt"
	"math"
	"ohmcall/calc/formula"
	"strconv"
)

// Size is the range from which a replacement capacitor may be taken.
type Size struct {
	Want    float64 // the marking to look for first, µF
	Lo, Hi  float64 // markings that would do; of one marked with a range its middle
	Volts   float64 // least voltage rating, 0 when the old one's is not known
	Kind    string  // "run" or "start"
	Reasons []string
	Source  string
}

// Sources of the two rules.
const (
	runRule   = "trade tip on replacing capacitors of PSC motors; IEC 60252-1 ±5 % (from memory)"
	startRule = "trade article on selecting motor start capacitors (equal or up to 20 % higher)"
)

// runTolerance is taken for a run capacitor whose can shows none: the
// narrower preferred class of IEC 60252-1 (from memory).
const runTolerance = 5.0

// RunSize sizes the replacement of a run capacitor marked with microfarads
// and volts; tolerance is the percentage on the can, 0 when none was read.
func RunSize(marked, volts, tolerance float64) (Size, error) {
	if !(marked > 0) || math.IsInf(marked, 0) || !(volts >= 0) || !(tolerance >= 0 && tolerance < 50) {
		return Size{}, fmt.Errorf("sizing needs the marking of the old capacitor, not its reading")
	}
	if tolerance == 0 {
		tolerance = runTolerance
	}
	return Size{Want: marked, Lo: marked * (1 - tolerance/100), Hi: marked * (1 + tolerance/100), Volts: volts, Kind: "run",
		Reasons: []string{
			"the same marking is right: more heats the winding, less weakens the motor",
			fmt.Sprintf("a marking within the can's own ±%s %% asks nothing new of the motor", plain(tolerance)),
			"a higher voltage rating does no harm, a lower one fails early",
		}, Source: runRule}, nil
}

// StartSize sizes the replacement of a start capacitor marked low to high
// µF; high is 0 when one value is marked.
func StartSize(low, high, volts float64) (Size, error) {
	if !(low > 0) || math.IsInf(low, 0) || high != 0 && !(high >= low) || !(volts >= 0) {
		return Size{}, fmt.Errorf("sizing needs the marking of the old capacitor, not its reading")
	}
	middle := (low + max(low, high)) / 2 // what is inside the can's own range asks nothing new of the motor
	return Size{Want: middle, Lo: low, Hi: max(high, middle*formula.StartSpread), Volts: volts, Kind: "start",
		Reasons: []string{
			"the same marking is right; up to 20 % more is the trade's limit, less starts worse",
			"a higher voltage rating does no harm, a lower one fails early",
		}, Source: startRule}, nil
}

// Text is the range in one line, as for a shopping list.
func (s Size) Text() string {
	t := fmt.Sprintf("%s µF, at most %s", short(s.Want), short(s.Hi))
	if s.Kind == "run" {
		t = fmt.Sprintf("%s µF (%s to %s would do)", short(s.Want), short(s.Lo), short(s.Hi))
	}
	if s.Kind == "start" && s.Lo < s.Want {
		t = fmt.Sprintf("%s µF, the middle of the marked range, at least %s and at most %s", short(s.Want), short(s.Lo), short(s.Hi))
	}
	if s.Volts > 0 {
		return t + ", " + short(s.Volts) + " V or more"
	}
	return t + ", voltage rating not below the old one"
}

// Misfit says why a part marked with microfarads (of a range its middle) and volts may not
// replace the old one, "" when it may. Volts that are 0,
// or an old one's rating that is not known, are not held against it.
func (s Size) Misfit(microfarads, volts float64) string {
	const slack = 1e-9 // rounding of the ends themselves
	switch {
	case microfarads < s.Lo*(1-slack):
		return fmt.Sprintf("%s µF is below %s µF", short(microfarads), short(s.Lo))
	case microfarads > s.Hi*(1+slack):
		return fmt.Sprintf("%s µF is above %s µF", short(microfarads), short(s.Hi))
	case volts > 0 && volts < s.Volts:
		return fmt.Sprintf("%s V is below the %s V of the old one", short(volts), short(s.Volts))
	}
	return ""
}

// short writes four significant figures.
func short(x float64) string { return plain(roundFigures(x)) }

func roundFigures(x float64) float64 {
	r, _ := strconv.ParseFloat(strconv.FormatFloat(x, 'g', 4, 64), 64)
	return r
}
