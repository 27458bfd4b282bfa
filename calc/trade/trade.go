// Package trade lends the formulas of the trade to sums: each becomes a
// function that takes quantities, converts them to the units its formula
// declares, and carries their uncertainty through it.
package trade

import (
	"errors"
	"strings"

	"ohmcall/calc/formula"
	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
	"ohmcall/calc/sum"
)

// Func is the function for a formula. What the formula says about a result,
// or against relying on it, goes to note, a sentence each.
func Func(f *formula.Formula, note func(string)) sum.Func {
	out := sum.Func{Name: f.Name, Help: f.Help, Params: make([]sum.Param, len(f.Params))}
	for i, p := range f.Params {
		out.Params[i] = sum.Param{Name: p.Name, Unit: p.Unit, Text: p.Words != nil, Optional: p.Optional,
			Many: f.Repeat > 0 && i == len(f.Params)-1}
	}
	out.Call = func(args []sum.Value) (sum.Value, error) { return call(f, args, note) }
	return out
}

func call(f *formula.Formula, args []sum.Value, note func(string)) (sum.Value, error) {
	isWord := make([]bool, len(args))
	for i, a := range args {
		_, isWord[i] = a.(string)
	}
	slots, _, err := f.Match(isWord)
	if err != nil {
		return nil, fault(err)
	}
	var qs []quantity.Q
	var units []string
	shared := ""
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
		if q, err = q.Assume(unit); err != nil {
			return nil, fault(err)
		}
		qs, units = append(qs, q), append(units, unit)
	}
	out := f.Unit
	if out == formula.AnyUnit {
		out = shared
	}
	var first []any
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
	q, err := quantity.Apply(fn, units, out, qs...)
	if err != nil {
		return nil, fault(err)
	}
	if laid, err := f.Lay(first...); err == nil && note != nil {
		if f.Warn != nil {
			if s := f.Warn(laid); s != "" {
				note("Careful: " + s + ".")
			}
		}
		if f.Say != nil {
			if s := f.Say(laid, result); s != "" {
				note(strings.ToUpper(s[:1]) + s[1:] + ".")
			}
		}
	}
	return q, nil
}

// fault makes any error one that can point into a line.
func fault(err error) error {
	var e *source.Error
	if errors.As(err, &e) {
		return e
	}
	return &source.Error{Msg: err.Error()}
}
