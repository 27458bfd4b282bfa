package sum

import (
	"math"
	"slices"

	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
)

// table declares every built-in function. The uncertainty of what goes in is
// carried through each of them unless its help says otherwise.
var table = []Func{
	one("abs", "size of x without its sign", quantity.Abs),
	one("sqrt", "square root of x", quantity.Sqrt),
	many("min", "least of the values", fold(quantity.Min)),
	many("max", "greatest of the values", fold(quantity.Max)),
	many("sum", "the values added up", fold(quantity.Add)),
	many("mean", "mean of the values", mean),
	many("rms", "root of the mean square of the values", rms),
	{Name: "round", Help: "x rounded to whole units as shown, or to so many decimals",
		Params: []Param{{Name: "x"}, {Name: "decimals", Optional: true}}, Call: round},
	number("exp", "e to the power x", "", "", math.Exp),
	number("ln", "natural logarithm of x", "", "", logarithm(math.Log)),
	number("log10", "logarithm of x to base 10", "", "", logarithm(math.Log10)),
	number("sin", "sine of an angle, radians or 30deg", "", "", math.Sin),
	number("cos", "cosine of an angle, radians or 30deg", "", "", math.Cos),
	number("tan", "tangent of an angle, radians or 30deg", "", "", math.Tan),
	number("asin", "angle whose sine is x, in degrees", "", "deg", degrees(math.Asin)),
	number("acos", "angle whose cosine is x, in degrees", "", "deg", degrees(math.Acos)),
	number("atan", "angle whose tangent is x, in degrees", "", "deg", degrees(math.Atan)),
	one("u", "standard uncertainty of x, itself exact", standard),
	one("exact", "x without its uncertainty", exact),
}

// builtins finds them by name.
var builtins = map[string]*Func{}

func init() {
	for i := range table {
		builtins[table[i].Name] = &table[i]
	}
}

// Functions lists the built-in functions in the table's order, for help and
// completion.
func Functions() []Func { return slices.Clone(table) }

// Names lists the names that every sum knows.
func Names() []string {
	var list []string
	for _, f := range table {
		list = append(list, f.Name)
	}
	for n := range constants {
		list = append(list, n)
	}
	slices.Sort(list)
	return list
}

// words are part of the notation and can name nothing.
var words = map[string]bool{"in": true, "and": true, "or": true, "not": true, "true": true, "false": true,
	"let": true, "if": true, "else": true, "nil": true, "matches": true, "contains": true,
	"startsWith": true, "endsWith": true}

// What makes a function out of one of quantities is not copied to each that it makes.
//
//go:noinline
func one(name, help string, f func(quantity.Q) (quantity.Q, error)) Func {
	return Func{Name: name, Help: help, Params: []Param{{Name: "x"}}, Call: func(a []Value) (Value, error) {
		return f(a[0].(quantity.Q))
	}}
}

//go:noinline
func many(name, help string, f func([]quantity.Q) (quantity.Q, error)) Func {
	return Func{Name: name, Help: help, Params: []Param{{Name: "x", Many: true}}, Call: func(a []Value) (Value, error) {
		list := make([]quantity.Q, len(a))
		for i, v := range a {
			list[i] = v.(quantity.Q)
		}
		return f(list)
	}}
}

//go:noinline
func number(name, help, in, out string, f func(float64) float64) Func {
	return Formula(name, help, []Param{{Name: "x", Unit: in}}, out, func(x []float64) (float64, error) {
		y := f(x[0])
		if math.IsNaN(y) {
			return y, source.Errorf(0, 0, "%s of %.4g does not exist", name, x[0])
		}
		return y, nil
	})
}

// logarithm is NaN, which is refused, where log would be minus infinity too.
//
//go:noinline
func logarithm(log func(float64) float64) func(float64) float64 {
	return func(x float64) float64 {
		if x <= 0 {
			return math.NaN()
		}
		return log(x)
	}
}

//go:noinline
func degrees(f func(float64) float64) func(float64) float64 {
	return func(x float64) float64 { return f(x) * 180 / math.Pi }
}

//go:noinline
func fold(f func(a, b quantity.Q) (quantity.Q, error)) func([]quantity.Q) (quantity.Q, error) {
	return func(list []quantity.Q) (quantity.Q, error) {
		acc := list[0]
		var err error
		for _, q := range list[1:] {
			if acc, err = f(acc, q); err != nil {
				return acc, err
			}
		}
		return acc, nil
	}
}

// mean works by differences to the first value, so that temperatures, which
// cannot be added, have one too.
func mean(list []quantity.Q) (quantity.Q, error) {
	n := quantity.Number(float64(len(list)))
	acc := list[0]
	for _, q := range list[1:] {
		d, err := quantity.Sub(q, list[0])
		if err != nil {
			return d, err
		}
		if d, err = quantity.Div(d, n); err != nil {
			return d, err
		}
		if acc, err = quantity.Add(acc, d); err != nil {
			return acc, err
		}
	}
	return acc, nil
}

func rms(list []quantity.Q) (quantity.Q, error) {
	squares := make([]quantity.Q, len(list))
	for i, q := range list {
		var err error
		if squares[i], err = quantity.Mul(q, q); err != nil {
			return q, err
		}
	}
	m, err := mean(squares)
	if err != nil {
		return m, err
	}
	return quantity.Sqrt(m)
}

func round(a []Value) (Value, error) {
	q, decimals := a[0].(quantity.Q), 0
	if len(a) > 1 {
		d, err := a[1].(quantity.Q).In("")
		if err != nil || d != math.Trunc(d) || d < 0 || d > 12 {
			return nil, &argError{1, source.Errorf(0, 0, "the decimals are a whole number from 0 to 12")}
		}
		decimals = int(d)
	}
	return quantity.Round(q, decimals)
}

func standard(q quantity.Q) (quantity.Q, error) { return q.StandardU(), nil }

func exact(q quantity.Q) (quantity.Q, error) { return q.WithU(0, 0), nil }
