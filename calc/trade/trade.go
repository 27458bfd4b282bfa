// Package trade lends the formulas of the trade to sums: each becomes a
// function that takes quantities, converts them to the units its formula
// declares, and carries their uncertainty through it.
package trade

import (
	"errors"
	"slices"
	"strings"

	"ohmcall/calc/formula"
	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
	"ohmcall/calc/sum"
)

// Use is what the place where a formula is used settles for it.
type Use struct {
	// Note takes what the formula says about a result, or against relying on
	// it, a sentence each; it may be nil.
	Note func(string)
	// Hertz is the supply's frequency where it is left out; 0 takes the
	// formula's own.
	Hertz float64
	// Temp is degC or degF: the unit of a temperature typed without one, and
	// of one computed. Empty takes degC, and for what is computed the unit of
	// the arguments.
	Temp string
}

// Func is the function for a formula.
func Func(f *formula.Formula, use Use) sum.Func {
	if use.Hertz > 0 {
		f = fedWith(f, use.Hertz)
	}
	out := sum.Func{Name: f.Name, Help: f.Help, Example: f.Example.Call, Params: make([]sum.Param, len(f.Params))}
	for i, p := range f.Params {
		out.Params[i] = sum.Param{Name: p.Name, Unit: p.Unit, Text: p.Words != nil, Optional: p.Optional,
			Many: f.Repeat > 0 && i == len(f.Params)-1}
	}
	out.Call = func(args []sum.Value) (sum.Value, error) { return call(f, args, use) }
	return out
}

// fedWith is a formula with another frequency where none is given.
func fedWith(f *formula.Formula, hertz float64) *formula.Formula {
	g := *f
	g.Params = slices.Clone(f.Params)
	for i := range g.Params {
		if p := &g.Params[i]; p.Optional && p.Unit == "Hz" {
			p.Default = hertz
		}
	}
	return &g
}

// leftOut reports whether the call goes by a frequency that it does not give.
func leftOut(f *formula.Formula, slots []int) bool {
	for i, p := range f.Params {
		if p.Optional && p.Unit == "Hz" && !slices.Contains(slots, i) {
			return true
		}
	}
	return false
}

func call(f *formula.Formula, args []sum.Value, use Use) (sum.Value, error) {
	isWord := make([]bool, len(args))
	for i, a := range args {
		_, isWord[i] = a.(string)
	}
	slots, _, err := f.Match(isWord)
	if err != nil {
		return nil, fault(err)
	}
	in, err := fit(f, args, slots, use)
	if err != nil {
		return nil, err
	}
	var first []any // the arguments as they were given, before their doubt is tried
	var result float64
	fn := func(xs []float64) (float64, error) {
		all := make([]any, len(args))
		j := 0
		for i, a := range args {
			if isWord[i] {
				all[i] = a
				continue
			}
			all[i] = xs[j]
			j++
		}
		y, err := f.Call(all...)
		if first == nil {
			first, result = all, y
		}
		return y, err
	}
	q, err := quantity.Apply(fn, in.units, in.out, in.qs...)
	var of *formula.ParamError
	if errors.As(err, &of) {
		if i := slices.Index(slots, of.Slot); i >= 0 {
			return nil, sum.OfArgument(i, fault(err))
		}
	}
	if err != nil {
		return nil, fault(err)
	}
	if laid, err := f.Lay(first...); err == nil && use.Note != nil {
		use.tell(f, laid, result, use.Hertz > 0 && leftOut(f, slots))
	}
	switch {
	case in.fahrenheit && f.Unit == "degC":
		q, err = q.Convert("degF")
	case in.fahrenheit && f.Unit == "K":
		q, err = q.Convert("Fdiff")
	case f.Money && q.Exact():
		q, err = quantity.Round(q, 2)
	}
	if err != nil {
		return nil, fault(err)
	}
	return q, nil
}

// fitted are the quantities of a call in the units that its formula declares.
type fitted struct {
	qs         []quantity.Q
	units      []string
	out        string // unit of the result
	fahrenheit bool   // temperatures are told in °F
}

// fit takes each quantity in the unit of its parameter, and one without a unit as
// being in it.
func fit(f *formula.Formula, args []sum.Value, slots []int, use Use) (in fitted, err error) {
	in.out, in.fahrenheit = f.Unit, use.Temp == "degF"
	shared := "" // of parameters that take any unit, the first's
	for i, a := range args {
		q, ok := a.(quantity.Q)
		if !ok {
			continue
		}
		unit := f.At(slots[i]).Unit
		if unit == formula.AnyUnit {
			if shared == "" {
				shared = q.Symbol()
			}
			unit = shared
		}
		bare := unit
		if unit == "degC" && use.Temp != "" {
			bare = use.Temp
		}
		plain, given := q.Symbol() == "", q
		if q, err = q.Assume(bare); err != nil {
			return in, sum.Misfit(i, f.Name, f.At(slots[i]).Name, unit, given)
		}
		if plain && bare == "degC" && use.Temp == "" && use.Note != nil {
			use.Note("A temperature without a unit is taken as " + q.String() + "; units F takes all in °F.")
		}
		if plain && bare == "psig" && use.Note != nil {
			use.Note("A pressure without a unit is taken as " + q.String() + ".")
		}
		in.fahrenheit = in.fahrenheit || use.Temp == "" && (q.Symbol() == "°F" || q.Symbol() == "Fdiff")
		in.qs, in.units = append(in.qs, q), append(in.units, unit)
	}
	if in.out == formula.AnyUnit {
		in.out = shared
	}
	return in, nil
}

// tell notes what a formula says about its result and against relying on it.
func (u Use) tell(f *formula.Formula, laid formula.Args, result float64, fromPlate bool) {
	if f.Warn != nil {
		if s := f.Warn(laid); s != "" {
			u.Note("Careful: " + s + ".")
		}
	}
	if f.Say != nil {
		if s := f.Say(laid, result); s != "" {
			if fromPlate {
				s += ", from the plate"
			}
			u.Note(strings.ToUpper(s[:1]) + s[1:] + ".")
		}
	}
}

// fault makes any error one that can point into a line.
func fault(err error) *source.Error {
	var e *source.Error
	if errors.As(err, &e) {
		return e
	}
	return &source.Error{Msg: err.Error()}
}
