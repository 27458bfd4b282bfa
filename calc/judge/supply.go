package judge

import (
	"fmt"
	"math"

	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

// SupplyEdition is one published range for the volts at an outlet or a
// machine, as shares of the nominal volts.
type SupplyEdition struct {
	Code, Name, Source string
	lo, hi             float64
	nominals           []float64 // that it speaks of; nil is every one
}

// northAmerica are the nominal volts of which ANSI C84.1 speaks here (from
// memory).
var northAmerica = []float64{120, 208, 240}

// supplyEditions are the published ranges, each with its source.
var supplyEditions = []SupplyEdition{
	{"c84-2011", "C84.1-2011 range A at the outlet", "ANSI C84.1-2011 Table 1, utilization voltage, range A (from memory)",
		0.9, 1.05, northAmerica},
	{"c84-2006", "C84.1-2006 range A at the outlet", "ANSI C84.1-2006 Table 1, utilization voltage, range A (from memory)",
		110.0 / 120, 1.05, northAmerica},
	{"c84-2011-b", "C84.1-2011 range B at the outlet", "ANSI C84.1-2011 Table 1, utilization voltage, range B (from memory)",
		104.0 / 120, 127.0 / 120, northAmerica},
	{"service", "range A at the service", "COMAR 20.50.07.02, same numbers as ANSI C84.1 range A",
		0.95, 1.05, northAmerica},
	{"illinois", "Illinois service limits", "83 Illinois Administrative Code 410.300",
		113.0 / 120, 127.0 / 120, []float64{120}},
	{"iec-230", "230 V ±10 %", "IEC 60038 (from memory)", 0.9, 1.1, []float64{230, 400}},
	{"plate", "plate ±10 %", "NEMA Condensed MG 1-2011 cl. 9.9.1, rated volts of a motor", 0.9, 1.1, nil},
}

// SupplyEditions lists the published ranges.
func SupplyEditions() []SupplyEdition { return append([]SupplyEdition(nil), supplyEditions...) }

// speaksOf reports whether the edition covers the nominal volts.
func (e SupplyEdition) speaksOf(nominal float64) bool {
	for _, n := range e.nominals {
		if n == nominal {
			return true
		}
	}
	return e.nominals == nil
}

// SupplyIn is the volts found without load, and what they should be.
type SupplyIn struct {
	Place   string
	Volts   measure.Value
	Nominal float64 // of the system or the plate
	Edition string  // code of a published range; empty takes the first that speaks of Nominal
}

// absentShare and ghostShare part no supply, a floating or ghost voltage,
// and a supply that is merely low (common practice). Above ghostShare a machine
// is given its volts.
const (
	absentShare = 0.1
	ghostShare  = 0.6
)

// Supply judges the no-load volts against one edition, which it names.
func Supply(in SupplyIn) verdict.Verdict {
	subject := named("supply", in.Place)
	if in.Volts.Over {
		return cannot(subject, "over the meter's range: take a higher one and read again", in.Volts)
	}
	if in.Nominal <= 0 && in.Volts.Hi < LegNominal*absentShare {
		return verdict.Verdict{Subject: subject, Word: verdict.Failed, Text: "no supply: " + quantity(in.Volts.X, "V") + " is dead by any plate",
			Fact: []string{"supply-absent"}, Source: commonPractice, Caution: []string{caution.MainsLive}, Entries: entries(in.Volts)}
	}
	if in.Nominal <= 0 {
		return cannot(subject, "the plate's volts are needed to judge it: plate volts …", in.Volts)
	}
	e, ok := supplyEdition(in)
	if !ok {
		return cannot(subject, "no published range of that name speaks of this nominal voltage", in.Volts)
	}
	w := window{in.Nominal * e.lo, in.Nominal * e.hi}
	out := begin(subject, in.Volts, w, "V", e.Source)
	out.Caution = []string{caution.MainsLive}
	out.Word = w.word(in.Volts)
	x := quantity(in.Volts.X, "V")
	switch p := w.place(in.Volts); {
	case in.Volts.Hi < in.Nominal*absentShare:
		out.Text, out.Fact = "no supply: "+x, []string{"supply-absent"}
	case in.Volts.Hi < in.Nominal*ghostShare:
		out.Text, out.Fact = x+" is no working supply: a lost neutral, a poor joint or a ghost reading", []string{"supply-low"}
		out.Also = append(out.Also, "repeat with a load or a low-impedance meter ("+commonPractice+")")
	case p == below:
		out.Text, out.Fact = x+" is low for "+quantity(in.Nominal, "V")+", "+e.Name, []string{"supply-low", "supply-usable"}
	case p == above && in.Volts.Lo > in.Nominal*farOver:
		out.Text, out.Fact = x+" is far too high for "+quantity(in.Nominal, "V")+": a lost neutral or the wrong supply; power off, for an electrician", []string{"supply-high", "supply-far-over"}
	case p == above:
		out.Text, out.Fact = x+" is high for "+quantity(in.Nominal, "V")+", "+e.Name, []string{"supply-high"}
	case p == inside:
		out.Text, out.Fact = x+" is within "+e.Name, []string{"supply-sound"}
	default:
		out.Text, out.Fact = x+" is too near the limit to say: repeat with a closer meter", []string{fact("supply", out.Word)}
	}
	for _, other := range supplyEditions {
		if other.Code == e.Code || !other.speaksOf(in.Nominal) {
			continue
		}
		ow := window{in.Nominal * other.lo, in.Nominal * other.hi}
		if ow.place(in.Volts) != w.place(in.Volts) {
			out.Also = append(out.Also, fmt.Sprintf("%s (%s, %s) says %s",
				other.Name, ow.text("V"), other.Source, ow.word(in.Volts)))
		}
	}
	return out
}

func supplyEdition(in SupplyIn) (SupplyEdition, bool) {
	for _, e := range supplyEditions {
		if (in.Edition == "" || in.Edition == e.Code) && e.speaksOf(in.Nominal) {
			return e, true
		}
	}
	return SupplyEdition{}, false
}

// farOver is the share of the nominal volts above which nothing but a fault of the supply
// explains them, and what is plugged in burns (common practice).
const farOver = 1.15

// SagIn is the volts at one place without and with load.
type SagIn struct {
	Place          string
	NoLoad, Loaded measure.Value
	Amps           measure.Value // zero value when not read
	Starting       bool          // taken during the start surge
	// CountsHalf is the counts part of each bound in volts when both were
	// read on one meter and range. Its gain error then cancels in the ratio
	// of the two, so only the counts are left. 0 takes both bounds as given.
	CountsHalf float64
}

// Sag limits in percent of the no-load volts: NEC 210.19(A) and 215.2(A)
// informational notes (advice), at start common practice.
const (
	branchSag = 3.0
	totalSag  = 5.0
	startSag  = 15.0
)

// lineDrift is how far, in percent, the volts of a sound line may move by
// themselves between two readings (common practice).
const lineDrift = 5.0

// Sag judges how far the volts fall under load, which speaks of the cord,
// the joints and the branch circuit.
func Sag(in SagIn) verdict.Verdict {
	subject := named("supply under load", in.Place)
	limit, source := totalSag, "NEC 215.2(A) informational note (advice, not enforceable)"
	if in.Starting {
		subject, limit, source = named("supply at start", in.Place), startSag, commonPractice
	}
	if in.NoLoad.Over || in.Loaded.Over || in.NoLoad.Lo <= 0 || in.Loaded.Lo < 0 {
		return cannot(subject, "volts without and with load are needed", in.NoLoad, in.Loaded)
	}
	drop := in.drop()
	w := atMost(limit)
	out := begin(subject, drop, w, "%", source)
	out.Entries = entries(in.NoLoad, in.Loaded, in.Amps)
	out.Caution = []string{caution.MainsLive}
	out.Limit += " of the no-load volts"
	out.Word = w.advisoryWord(drop) // neither limit condemns: one is advice, the other practice
	x := fmt.Sprintf("%.1f %%", math.Abs(drop.X))
	risen := atLeast(-lineDrift).place(drop)
	switch w.place(drop) {
	case inside:
		if risen != inside {
			out.Limit = window{-lineDrift, limit}.text("%") + " of the no-load volts"
			out.Margin, out.Judged = window{-lineDrift, limit}.margin(drop)
			out.Word, out.Text, out.Fact = verdict.CannotTell, "the volts rise by "+x+" under load: the line moved, or the neutral is poor; read both again", []string{fact("sag", verdict.CannotTell)}
			if drop.X >= 0 {
				out.Text = "the volts fall by " + x + ", less than the meter's doubt: read both again on a finer range"
			}
			if risen == below {
				out.Word, out.Text = verdict.Suspect, "the volts rise by "+x+" under load: a poor or lost neutral does that; read each leg to it"
			}
			return out
		}
		out.Text, out.Fact = "the volts fall by "+x, []string{"sag-sound"}
	case above:
		out.Text, out.Fact = "the volts fall by "+x+": look for a long cord, a thin wire or a poor joint", []string{"sag-deep"}
		if !in.Starting && in.Loaded.Lo > in.NoLoad.Hi*ghostShare { // what is left heats
			out.Fact = append(out.Fact, "supply-usable")
		}
	default:
		out.Text, out.Fact = "the volts fall by "+x+", too near the limit to say: repeat both on one range", []string{fact("sag", out.Word)}
	}
	if !in.Starting && drop.Lo > branchSag && drop.Lo <= limit {
		out.Also = append(out.Also, "NEC 210.19(A) informational note: 3 % in the branch circuit is exceeded")
	}
	if z, ok := in.impedance(); ok {
		out.Also = append(out.Also, fmt.Sprintf("source impedance %s to %s (Ohm's law)", ohms(math.Max(0, z.Lo)), ohms(z.Hi)))
	}
	return out
}

// AtStart judges the volts while it starts that were not read at rest: where they lie less
// than the limit of a fall below the highest that a sound supply has at rest, they cannot
// have fallen by more. Else it cannot be told.
func AtStart(in SupplyIn) verdict.Verdict {
	subject := named("supply at start", in.Place)
	e, ok := supplyEdition(in)
	if in.Volts.Over || in.Nominal <= 0 || !ok {
		return cannot(subject, "volts at rest are needed beside it", in.Volts)
	}
	w := window{in.Nominal * e.hi * (1 - startSag/100), in.Nominal * e.hi}
	out := begin(subject, in.Volts, w, "V", e.Source+"; the fall "+commonPractice)
	out.Caution = []string{caution.MainsLive}
	if w.place(in.Volts) != inside {
		out.Word, out.Fact = verdict.CannotTell, []string{fact("sag", verdict.CannotTell)}
		out.Text = quantity(in.Volts.X, "V") + " is no fall by itself"
		return out
	}
	out.Word, out.Fact = verdict.Sound, []string{"sag-sound"}
	out.Text = quantity(in.Volts.X, "V") + " is no deep fall, whatever a sound supply has at rest"
	return out
}

// drop is the fall in percent of the no-load volts with its bounds.
func (in *SagIn) drop() measure.Value {
	a, b := in.NoLoad, in.Loaded
	if h := in.CountsHalf; h > 0 && h < a.X {
		a, b = measure.Within(a.X, h), measure.Within(b.X, h)
	}
	return measure.Value{X: 100 * (1 - b.X/a.X), Lo: 100 * (1 - b.Hi/a.Lo), Hi: 100 * (1 - b.Lo/a.Hi)}
}

// impedance is that of the supply in ohms, when the amps are known.
func (in *SagIn) impedance() (measure.Value, bool) {
	if in.Amps.Over || in.Amps.Lo <= 0 {
		return measure.Value{}, false
	}
	a, b := in.NoLoad, in.Loaded
	lo, hi := a.Lo-b.Hi, a.Hi-b.Lo
	if h := in.CountsHalf; h > 0 {
		lo, hi = a.X-b.X-2*h, a.X-b.X+2*h
	}
	if hi <= 0 {
		return measure.Value{}, false
	}
	return measure.Value{X: (a.X - b.X) / in.Amps.X, Lo: lo / in.Amps.Hi, Hi: hi / in.Amps.Lo}, true
}
