package sum

import (
	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
)

// Formula makes a Func of a plain calculation: fn gets argument i as a number
// in params[i].Unit and returns a number in unit. A bare number given for an
// argument takes the declared unit; anything else is converted to it or
// refused. Uncertainty is carried through to first order, correlations kept,
// so fn must be smooth where it is used. Arguments left out make the slice
// shorter. Every parameter must be a value: for names and texts write a Func.
//
//go:noinline
func Formula(name, help string, params []Param, unit string, fn func([]float64) (float64, error)) Func {
	f := Func{Name: name, Params: params, Help: help}
	f.Call = func(args []Value) (Value, error) {
		qs, units := make([]quantity.Q, len(args)), make([]string, len(args))
		for i := range args {
			q, err := f.Argument(args, i)
			if err != nil {
				return nil, err
			}
			qs[i], units[i] = q, f.param(i).Unit
		}
		return quantity.Apply(fn, units, unit, qs...)
	}
	return f
}

// Argument is argument i in the unit that f declares for it. The error marks
// the argument where it was typed. Funcs that are not made by Formula use it
// for those of their arguments that are values.
func (f *Func) Argument(args []Value, i int) (quantity.Q, error) {
	p := f.param(i)
	q, ok := args[i].(quantity.Q)
	if !ok {
		return q, &argError{i, source.Errorf(0, 0, "%s wants a value for %s", f.Name, p.Name)}
	}
	r, err := q.Assume(p.Unit)
	if err == nil {
		return r, nil
	}
	unit := p.Unit
	if u, err := quantity.ParseUnit(p.Unit); err == nil && u.Symbol() != "" {
		unit = u.Symbol()
	}
	return r, Misfit(i, f.Name, p.Name, unit, q)
}

// Misfit says that argument i of a function is in another unit than is wanted.
//
//go:noinline
func Misfit(i int, function, param, unit string, got quantity.Q) error {
	if unit == "" {
		unit = "a plain number"
	}
	return &argError{i, source.Errorf(0, 0, "%s wants %s in %s, not %s", function, param, unit, got)}
}
