package judge

import (
	"fmt"
	"math"
	"strings"

	"ohmcall/calc/caution"
	"ohmcall/calc/formula"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// CapKind is what a capacitor is for.
type CapKind string

// The two kinds. Run capacitors are marked with one value, start capacitors
// with a range.
const (
	RunKind   CapKind = "run"
	StartKind CapKind = "start"
)

const handbookCap = "Hermetic Compressor Service Handbook p. 69"

// defaultRunTolerance is the percentage applied when the can shows none
// (Hermetic Compressor Service Handbook p. 69).
const defaultRunTolerance = 10.0

// canTolerances are the narrower ones that cans are marked with, in percent
// (common practice; 5 is a class of IEC 60252-1, from memory).
var canTolerances = []float64{6, 5, 3}

// openShare is the share of its marking below which a capacitor is as good as
// open (common practice).
const openShare = 0.1

// RunCapIn is a run capacitor, or one section of a dual one, read in µF.
type RunCapIn struct {
	Name      string // "C1", "C1 fan section"
	Measured  measure.Value
	Marked    float64
	Tolerance float64 // percent on the can; 0 when it shows none
}

// RunCap judges a capacitance against its marking.
func RunCap(in RunCapIn) verdict.Verdict {
	out := runCap(in)
	out.Caution = []string{caution.ProveDead, caution.Capacitor}
	return out
}

func runCap(in RunCapIn) verdict.Verdict {
	subject := named("run capacitor", in.Name)
	tol, source := in.Tolerance, "tolerance on the can"
	if tol <= 0 {
		tol, source = defaultRunTolerance, handbookCap+" (±10 % assumed, none read from the can)"
	}
	if in.Marked <= 0 {
		return undecided("run-cap", subject, "the marked µF is needed to judge it", in.Measured)
	}
	w := around(in.Marked, tol)
	out := begin(subject, in.Measured, w, "µF", source)
	if in.Measured.Over {
		out.Word = verdict.CannotTell
		out.Text = "over the meter's range: wrong range or a short; read ohms across it after discharge"
		return out
	}
	out.Word = w.word(in.Measured)
	off := (in.Measured.X/in.Marked - 1) * 100
	switch p := w.place(in.Measured); {
	case p == below && in.Measured.Hi < in.Marked*openShare:
		out.Text = fmt.Sprintf("%s where %s is marked: open", quantity(in.Measured.X, "µF"), quantity(in.Marked, "µF"))
	case p == below || p == above:
		out.Text = fmt.Sprintf("%+.1f %% off its marking, the limit is ±%s %%", off, num(tol))
		if p == above {
			out.Also = append(out.Also, "a high reading may be another section or part still connected: take both wires off and repeat")
		}
	case p == straddles:
		out.Text = fmt.Sprintf("%+.1f %% off its marking, too near ±%s %% to say; repeat with a capacitance meter", off, num(tol))
	default:
		out.Text = fmt.Sprintf("%+.1f %% off its marking, within ±%s %%", off, num(tol))
	}
	out.Fact = []string{capFact(RunKind, out.Word)}
	if in.Tolerance <= 0 && out.Word == verdict.Sound {
		out.Also = append(out.Also, stricterRunTolerances(in, tol)...)
	}
	return out
}

// stricterRunTolerances says what a marking that was not read might change.
func stricterRunTolerances(in RunCapIn, applied float64) []string {
	var out []string
	for _, tol := range canTolerances {
		if tol < applied && around(in.Marked, tol).place(in.Measured) != inside {
			out = append(out, fmt.Sprintf("a can marked ±%s %% would not pass with it", num(tol)))
		}
	}
	return out
}

// StartCapIn is a start capacitor read in µF and marked with a range, such
// as 88–108. High may be 0 when one value is marked: the range is then that
// within the tolerance on the can, or the value to 20 % above it.
type StartCapIn struct {
	Name      string
	Measured  measure.Value
	Low, High float64
	Tolerance float64 // percent beside one marked value, 0 when none is marked
}

// StartCap judges a start capacitor against its marked range.
func StartCap(in StartCapIn) verdict.Verdict {
	subject := named("start capacitor", in.Name)
	source := "range on the can"
	if in.Low <= 0 || in.High > 0 && in.High < in.Low {
		return undecided("start-cap", subject, "the marked range in µF is needed to judge it", in.Measured)
	}
	w := window{in.Low, in.High}
	switch {
	case in.High > 0:
	case in.Tolerance > 0:
		w, source = around(in.Low, in.Tolerance), "±"+num(in.Tolerance)+" % marked on the can"
	default:
		w.hi, source = in.Low*formula.StartSpread, "EIA-463, −0/+20 % of the marked minimum (from memory)"
	}
	out := begin(subject, in.Measured, w, "µF", source)
	if in.High <= 0 {
		said, _, _ := strings.Cut(source, " of ")
		out.Limit += ", " + said
	}
	out.Caution = []string{caution.ProveDead, caution.Capacitor}
	if in.Measured.Over {
		out.Word = verdict.CannotTell
		out.Text = "over the meter's range: wrong range or a short; read ohms across it after discharge"
		return out
	}
	out.Word = w.word(in.Measured)
	x := quantity(in.Measured.X, "µF")
	switch w.place(in.Measured) {
	case below:
		out.Text = x + " is under the marked range: weak or open"
	case above:
		// The trade replaces with up to 20 % more, so a little over the range
		// harms nothing: it is worth a second look and no more.
		out.Word = verdict.Suspect
		out.Text = x + " is over the marked range; check that nothing else is connected and repeat"
	case straddles:
		out.Text = x + " is too near the end of the range to say; repeat with a capacitance meter"
	default:
		out.Text = x + " is within the marked range"
	}
	out.Fact = []string{capFact(StartKind, out.Word)}
	if in.Measured.Hi < w.lo*openShare {
		out.Text = x + " where " + quantity(w.lo, "µF") + " or more is marked: open"
		out.Fact = append(out.Fact, "start-cap-open")
	}
	return out
}

// UnderLoadIn is a run capacitor measured while it works: the amps through
// it and the volts across it.
type UnderLoadIn struct {
	Name        string
	Amps, Volts measure.Value
	Hertz       float64
	Marked      float64
	Tolerance   float64
}

// CapUnderLoad computes C = I/(2πfU) in µF with the bounds that the two
// readings guarantee, and judges it as RunCap does.
func CapUnderLoad(in UnderLoadIn) (measure.Value, verdict.Verdict) {
	subject := named("run capacitor", in.Name)
	if in.Hertz <= 0 || in.Amps.Over || in.Volts.Over || in.Volts.Lo <= 0 || in.Amps.Lo < 0 {
		return measure.Value{}, cannot(subject,
			"amps through it, volts across it and the hertz are needed", in.Amps, in.Volts)
	}
	k := 1e6 / (2 * math.Pi * in.Hertz)
	c := measure.Value{X: k * in.Amps.X / in.Volts.X, Lo: k * in.Amps.Lo / in.Volts.Hi,
		Hi: k * in.Amps.Hi / in.Volts.Lo, Rough: in.Amps.Rough || in.Volts.Rough}
	out := runCap(RunCapIn{in.Name, c, in.Marked, in.Tolerance})
	out.Entries = entries(in.Amps, in.Volts)
	out.Caution = []string{caution.MainsLive, caution.HotMoving}
	return c, out
}

// CapOhmsIn is a discharged capacitor on an ohm-meter, the readings in the
// order in which the display showed them.
type CapOhmsIn struct {
	Name     string
	Kind     CapKind
	Readings []measure.Value
	Bleeder  float64 // ohms of a resistor across it, 0 when there is none
}

// shortedOhms is what a shorted capacitor stays under, leads and all (common
// practice).
const shortedOhms = 5.0

// CapOhms judges how the ohms moved. It can find an open or shorted part; it
// cannot prove the capacitance.
func CapOhms(in CapOhmsIn) verdict.Verdict {
	out := verdict.Verdict{Subject: named(string(in.Kind)+" capacitor", in.Name),
		Source:  "refrigerator service manual RS1200001 (1998), capacitor test; " + commonPractice,
		Entries: entries(in.Readings...), Caution: []string{caution.ProveDead, caution.Capacitor}}
	n := len(in.Readings)
	if n == 0 {
		out.Word, out.Text = verdict.CannotTell, "no reading yet"
		return out
	}
	last := in.Readings[n-1]
	climbs := n > 1
	for i := 1; i < n; i++ {
		climbs = climbs && in.Readings[i].Above(in.Readings[i-1])
	}
	bleeds := in.Bleeder > 0 && !last.Over && around(in.Bleeder, defaultRunTolerance).place(last) != below &&
		around(in.Bleeder, defaultRunTolerance).place(last) != above
	switch {
	case climbs:
		out.Word = verdict.CannotTell
		out.Text = "it charges, so it is neither open nor shorted; read the µF to know its value"
	case last.Over && in.Bleeder > 0:
		out.Word, out.Fact = verdict.Suspect, []string{capFact(in.Kind, verdict.Suspect)}
		out.Text = "no kick and no bleeder: the bleeder is open; discharge by resistor, then read the µF"
	case last.Over:
		out.Word, out.Fact = verdict.Suspect, []string{capFact(in.Kind, verdict.Suspect)}
		out.Text = "no kick seen: open, or charged by the meter; discharge, swap the leads and watch it climb"
	case last.Hi < shortedOhms && n > 1:
		out.Word, out.Fact = verdict.Failed, []string{capFact(in.Kind, verdict.Failed)}
		out.Text = "it stays near zero ohms: shorted"
		if in.Kind == StartKind {
			out.Fact = append(out.Fact, "start-cap-shorted")
		}
	case last.Lo < shortedOhms:
		out.Word = verdict.CannotTell
		out.Text = "near zero at first is normal; keep the probes on and record where it goes"
	case bleeds:
		out.Word = verdict.CannotTell
		out.Text = "that is the bleeder resistor; lift it to test the capacitor itself"
	default:
		out.Word, out.Fact = verdict.Suspect, []string{capFact(in.Kind, verdict.Suspect)}
		out.Text = "a steady " + ohms(last.X) + ": leaky, unless a bleeder or another part is still across it"
	}
	return out
}

func capFact(kind CapKind, w verdict.Word) string { return fact(string(kind)+"-cap", w) }

// named joins what a thing is and what it is called.
func named(what, name string) string {
	if name == "" || strings.Contains(strings.ToLower(what), strings.ToLower(name)) {
		return what
	}
	return what + " " + name
}

// undecided is the verdict on a part that was read and for which there is
// nothing to judge it by.
func undecided(part, subject, text string, vs ...measure.Value) verdict.Verdict {
	out := cannot(subject, text, vs...)
	out.Fact = []string{fact(part, out.Word)}
	return out
}

// NotHere is the verdict on what was read as a part that the appliance does not
// have, or whose like this package does not judge.
func NotHere(subject, why string, v measure.Value) verdict.Verdict {
	return cannot(subject, why, v)
}

// cannot is the verdict when something needed is missing.
//
//go:noinline
func cannot(subject, text string, vs ...measure.Value) verdict.Verdict {
	return verdict.Verdict{Subject: subject, Word: verdict.CannotTell, Text: text, Entries: entries(vs...)}
}
