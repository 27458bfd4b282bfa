package judge

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// Series says what else lay in the path that was read.
type Series string

// What may stand in series with a heater. The empty Series means that
// nobody said.
const (
	Alone          Series = "alone"      // across the element itself
	WithThermostat Series = "thermostat" // a thermostat or thermal fuse in the path
)

// HeaterIn is an element with the values of its plate.
type HeaterIn struct {
	Name      string
	Ohms      measure.Value
	Watts     float64 // at Volts
	Volts     float64
	Low       float64 // the lower volts of a plate of two, 0 when it has one; Volts is the upper
	Hot       bool    // read at working heat; otherwise cold
	Tolerance float64 // percent of the resistance; 0 takes the power-input limits
	Series    Series
	// Coils is how many coils side by side the plate's watts may be of, each of which
	// can be read alone; 0 or 1 when it is one.
	Coils int
	// Whole tells that the watts are those of a plate on which more than this heater
	// draws: they are what it has at most (common practice).
	Whole bool
}

// coldShare is how much of the hot resistance a cold metal-sheathed element
// may show at least; nickel-chrome rises by some percent (common practice).
const coldShare = 0.85

// partlyShorted is the share of the lowest resistance below which turns must
// be missing, whatever the alloy of a sheathed element (common practice).
const partlyShorted = 0.5

// Heater judges an element against the resistance of its plate, V²/P.
// Of a plate with two volts the watts are held to the upper ones; what they do not
// fit and the lower ones may is not condemned.
func Heater(in HeaterIn) verdict.Verdict {
	out := heater(&in)
	if in.Low <= 0 || in.Watts <= 0 || in.Ohms.Over {
		return out
	}
	if out.Word == verdict.Suspect || out.Word == verdict.Failed {
		high := in.Volts
		in.Volts = in.Low
		if in.Ohms.X < high*high/in.Watts && (in.Ohms.X > in.Low*in.Low/in.Watts || heater(&in).Word == verdict.Sound) {
			out.Word, out.Fact, out.Limit, out.Judged, out.Margin = verdict.CannotTell, []string{fact("heater", verdict.CannotTell)}, "", false, 0
			out.Text = ohms(in.Ohms.X) + " is low for the watts at the upper of its volts, not at the lower: " + atWhich(in.Low, high)
		}
	}
	return out
}

// atWhich asks for the volts that the watts of a plate belong to.
func atWhich(low, high float64) string {
	return fmt.Sprintf("at which are they printed? plate volts %s, or plate volts %s", num(low), num(high))
}

func heater(in *HeaterIn) verdict.Verdict {
	subject := named("heater", in.Name)
	if in.Ohms.Over {
		return heaterOpen(subject, in)
	}
	if in.Watts <= 0 || in.Volts <= 0 {
		needs := "plate watts and volts are needed to judge it"
		if in.Name != "" && in.Name != "heater" {
			needs = "its own watts, and the plate's volts, are needed to judge it: plate watts " + in.Name + " …, volts …"
		}
		return undecided("heater", subject, needs, in.Ohms)
	}
	w, source := heaterWindow(in)
	if !in.Hot {
		w.lo *= coldShare
		source += "; read cold, down to 15 % lower (" + commonPractice + ")"
	}
	p, limit := w.place(in.Ohms), w
	less := in.Whole && (p == above || p == straddles && in.Ohms.Hi > w.hi)
	if less {
		limit = atLeast(w.lo)
	}
	out := begin(subject, in.Ohms, limit, "Ω", source)
	out.Caution = []string{caution.ProveDead, caution.HotMoving}
	expect := ohms(in.Volts * in.Volts / in.Watts)
	if in.Low > 0 {
		expect += " at " + quantity(in.Volts, "V")
	}
	x := ohms(in.Ohms.X)
	if slip := powerOfTen(in.Ohms, w); slip != "" {
		out.Word, out.Text, out.Fact = verdict.Suspect, slip, []string{"heater-suspect"}
		return out
	}
	if less {
		out.Word, out.Fact = verdict.CannotTell, []string{fact("heater", verdict.CannotTell)}
		out.Text = fmt.Sprintf("%s is %s of the plate's %s, on which more draws; its own would tell: plate watts %s …", x,
			quantity(in.Volts*in.Volts/in.Ohms.X, "W"), quantity(in.Watts, "W"), cmp.Or(in.Name, "heater"))
		return out
	}
	switch p {
	case inside:
		out.Word, out.Fact = verdict.Sound, []string{"heater-sound"}
		out.Text = fmt.Sprintf("%s agrees with the plate's %s hot", x, expect)
	case above:
		out.Word, out.Fact = verdict.Failed, []string{"heater-failed"}
		out.Text = fmt.Sprintf("%s is too high for the plate's %s hot: part of it is open or a joint is bad", x, expect)
		if in.Series != Alone {
			out.Word, out.Fact = verdict.Suspect, []string{"heater-suspect"}
			out.Text = fmt.Sprintf("%s is too high for the plate's %s hot: read across the element alone", x, expect)
		}
		for i := 2; i <= in.Coils; i++ {
			n := float64(i)
			if p := (window{w.lo * n, w.hi * n}).place(in.Ohms); p == inside || p == straddles {
				out.Word, out.Fact = verdict.Suspect, []string{"heater-suspect"}
				out.Text = fmt.Sprintf("%s is %s times the plate's %s hot: one of %[2]s coils read alone, else the rest is open; read each", x, num(n), expect)
				break
			}
		}
	case below:
		out.Word, out.Fact = verdict.Failed, []string{"heater-failed"}
		out.Text = fmt.Sprintf("%s is too low for the plate's %s hot: turns are shorted or a load is in parallel", x, expect)
		if !in.Hot && in.Ohms.Hi >= w.lo*partlyShorted {
			out.Word, out.Fact = verdict.Suspect, []string{"heater-suspect"}
			out.Text = fmt.Sprintf("%s is low for the plate's %s even cold: lift one wire and repeat", x, expect)
		}
	default:
		out.Word = verdict.CannotTell
		out.Text = fmt.Sprintf("%s is too near the limit for the plate's %s hot: read again on a lower range", x, expect)
		out.Fact = []string{fact("heater", out.Word)}
	}
	return out
}

func heaterOpen(subject string, in *HeaterIn) verdict.Verdict {
	out := verdict.Verdict{Subject: subject, Entries: entries(in.Ohms), Source: commonPractice,
		Limit: "finite", Caution: []string{caution.ProveDead, caution.HotMoving}}
	switch in.Series {
	case Alone:
		out.Word, out.Fact = verdict.Failed, []string{"heater-open"}
		out.Text = "open across the element itself: burnt out"
	case WithThermostat:
		out.Word = verdict.CannotTell
		out.Text = "an open thermostat or fuse in series reads the same: read across the element alone"
	default:
		out.Word, out.Fact = verdict.Suspect, []string{"heater-suspect"}
		out.Text = "open: the element, or a thermostat or fuse in series; read across the element alone"
	}
	return out
}

// heaterWindow is the hot resistance that the plate allows.
func heaterWindow(in *HeaterIn) (window, string) {
	r := in.Volts * in.Volts / in.Watts
	if in.Tolerance > 0 {
		return around(r, in.Tolerance), fmt.Sprintf("plate, ±%s %% as given", num(in.Tolerance))
	}
	lo, hi := heatingPowerLimits(in.Watts)
	return window{in.Volts * in.Volts / hi, in.Volts * in.Volts / lo}, powerSource
}

// powerInput are the deviations of IEC 60335-1 cl. 10.1 Table 1 for heating
// appliances (from memory), as shares, with a least one in watts.
var powerInput = []struct{ upTo, less, more, moreWatts float64 }{
	{25, 0.2, 0.2, 0},
	{200, 0.1, 0.1, 0},
	{math.Inf(1), 0.1, 0.05, 20},
}

const powerSource = "IEC 60335-1 cl. 10.1 Table 1 (from memory)"

// heatingPowerLimits are the deviations of power input that a heating
// appliance may show. Up to 25 W only the upper one is fixed; the lower is
// taken alike.
func heatingPowerLimits(watts float64) (lo, hi float64) {
	for _, p := range powerInput {
		if watts <= p.upTo {
			return watts * (1 - p.less), watts + max(watts*p.more, p.moreWatts)
		}
	}
	return watts, watts
}

// HeaterAmpsIn is the running current of a heater, and its plate.
type HeaterAmpsIn struct {
	Name  string
	Amps  measure.Value
	Watts float64       // at Rated
	Rated float64       // volts of the plate
	Low   float64       // as of HeaterIn
	Volts measure.Value // found at the heater's supply; the zero value takes Rated
	// AtRest tells that the volts were read with the heater off: under it they may be
	// less, by what a sound supply falls (NEC 215.2(A) informational note).
	AtRest bool
	Whole  bool // as of HeaterIn
}

// HeaterAmps judges the current of a heater at work: the plate's power limits
// as currents at the volts found, the element's ohms being the same at them.
func HeaterAmps(in HeaterAmpsIn) verdict.Verdict {
	read := in.Volts.Lo > 0 && !in.Volts.Over
	out := heaterAmps(&in)
	if in.Low <= 0 || in.Watts <= 0 || out.Word != verdict.Suspect {
		return out
	}
	high := in.Rated
	in.Rated = in.Low
	switch x := quantity(in.Amps.X, "A"); {
	case !read:
		out.Text = x + " tells nothing by a plate of two volts alone: read the volts beside it"
	case slices.Contains(out.Fact, "amps-high") && !slices.Contains(heaterAmps(&in).Fact, "amps-high"):
		out.Text = x + " is high for the watts at the upper of its volts, not at the lower: " + atWhich(in.Low, high)
	default:
		return out
	}
	out.Word, out.Fact, out.Limit, out.Judged, out.Margin = verdict.CannotTell, nil, "", false, 0
	return out
}

func heaterAmps(in *HeaterAmpsIn) verdict.Verdict {
	subject := named("heater amps", in.Name)
	if in.Amps.Over {
		return cannot(subject, overClamp, in.Amps)
	}
	if in.Watts <= 0 || in.Rated <= 0 {
		return cannot(subject, "the plate's watts and volts are needed to judge it: plate watts …, volts …", in.Amps)
	}
	closer, low := "read both on a finer range", ""
	if in.Volts.Lo <= 0 || in.Volts.Over {
		in.Volts, closer, low = measure.Exact(in.Rated), "read the volts beside it", "low volts, "
	}
	perWatt := in.Volts.X / (in.Rated * in.Rated)
	lo, hi := heatingPowerLimits(in.Watts)
	per := in.Rated * in.Rated
	w, outer := window{lo * in.Volts.Hi / per, hi * in.Volts.Lo / per}, window{lo * in.Volts.Lo / per, hi * in.Volts.Hi / per}
	if in.AtRest {
		outer.lo *= 1 - totalSag/100
		closer = "read the volts while it heats"
	}
	p := w.place(in.Amps)
	switch o := outer.place(in.Amps); {
	case o == below || o == above: // whatever the volts are within their bounds
		w, p = outer, o
	case w.lo >= w.hi || p != inside:
		p = straddles
	}
	shown := in.Amps
	if p == straddles { // by the doubt of both, held to the limits at the volts as read
		w = window{lo * perWatt, hi * perWatt}
		edge, volts := w.lo, in.Volts.Half()
		if in.Amps.X > (w.lo+w.hi)/2 {
			edge = w.hi
		} else if in.AtRest {
			volts += in.Volts.Lo * totalSag / 100
		}
		shown = measure.Within(in.Amps.X, in.Amps.Half()+edge*volts/in.Volts.X)
	}
	none := in.Amps.Hi < in.Watts*perWatt*noneShare
	limit, less := w, in.Whole && !none && (p == below || p == straddles && shown.Lo < w.lo)
	if less {
		limit = atMost(w.hi)
	}
	out := begin(subject, shown, limit, "A", powerSource)
	out.Entries = entries(in.Amps, in.Volts)
	out.Caution = []string{caution.MainsLive, caution.HotMoving}
	x, expect := quantity(in.Amps.X, "A"), quantity(in.Watts*perWatt, "A")
	if low == "" {
		expect += " at " + quantity(in.Volts.X, "V")
	}
	if in.AtRest {
		expect += " at rest"
	}
	switch {
	case none:
		out.Word, out.Text, out.Fact = verdict.Failed, "no current: the heater is not fed, or its path is open", []string{"amps-none"}
	case less:
		out.Word = verdict.CannotTell
		out.Text = fmt.Sprintf("%s of the plate's %s, on which more draws; its own would tell: plate watts %s …", x, expect, cmp.Or(in.Name, "heater"))
	case p == inside:
		out.Word, out.Text, out.Fact = verdict.Sound, x+" agrees with the plate's "+expect, []string{"amps-sound", "heater-sound"}
	case p == straddles && shown.Lo <= in.Watts*perWatt && shown.Hi >= in.Watts*perWatt && shown.Half() <= w.hi-w.lo: // no rough one
		out.Word, out.Fact = verdict.CannotTell, []string{"amps-agree"}
		out.Text = x + " agrees with the plate's " + expect + " within the doubt of both; for more, " + closer
	case p == straddles:
		out.Word, out.Text = verdict.CannotTell, x+" is too near the limit for the plate's "+expect+": "+closer
	case p == below:
		out.Word, out.Text, out.Fact = verdict.Suspect, x+" is low for the plate's "+expect+": "+low+"a poor joint, or part of it open", []string{"amps-low"}
	default:
		out.Word, out.Text, out.Fact = verdict.Suspect, x+" is high for the plate's "+expect+": another load, or turns shorted", []string{"amps-high"}
	}
	return out
}

// heaterInsulation is the least resistance from an element to its sheath, in
// ohms (AS/NZS 3760, as quoted by a test-and-tag firm: 1 MΩ at 500 V).
const heaterInsulation = 1e6

// groundedShare is the share of heaterInsulation below which it is no matter
// of damp (common practice).
const groundedShare = 0.1

// HeaterToCase judges the ohms from an element to its sheath. A sheathed
// element draws damp while it lies cold and may dry out in use, so only a
// low path condemns it; of one that lies in water, what leaks is no damp that
// heat drives out, but water behind a cracked sheath or on its terminals (common
// practice).
func HeaterToCase(name string, v measure.Value, testVolts float64, immersed bool) verdict.Verdict {
	w := atLeast(heaterInsulation)
	out := begin(named("heater", name)+" to case", v, w, "Ω", "AS/NZS 3760, as quoted by a test-and-tag firm (1 MΩ at 500 V)")
	out.Caution = []string{caution.ProveDead, caution.EarthAfter}
	if testVolts > 0 {
		out.Caution = append(out.Caution, caution.InsulationVolts)
	}
	switch {
	case (v.Over || w.place(v) == inside) && testVolts <= 0:
		out.Word = verdict.CannotTell
		out.Text = "no gross fault found; an ordinary ohm-meter cannot prove insulation, an insulation tester can"
	case v.Over || w.place(v) == inside:
		out.Word, out.Fact = verdict.Sound, []string{"heater-insulation-sound"}
		out.Text = "the element is sound to its sheath"
	case v.Hi < w.lo*groundedShare:
		out.Word, out.Fact = verdict.Failed, []string{"heater-grounded"}
		out.Text = ohms(v.X) + " to the sheath: the element is grounded"
	case w.place(v) == below:
		out.Word, out.Text = verdict.Suspect, ohms(v.X)+" to the sheath may be damp: dry it gently and repeat"
		if immersed {
			out.Text = ohms(v.X) + " to the sheath: wires off, terminals wiped dry and read again; the same again is a cracked sheath, which no drying mends"
		}
		out.Fact = []string{"heater-insulation-suspect"}
	default:
		out.Word, out.Text = verdict.CannotTell, "too near the limit to say: dry it and repeat with an insulation tester"
		if immersed {
			out.Text = "too near the limit to say: wires off, terminals wiped dry, and repeat with an insulation tester"
		}
		out.Fact = []string{fact("heater-insulation", out.Word)}
	}
	return out
}
