package quantity

import (
	"math"
	"slices"
)

// Apply is fn of args with first-order propagation of their uncertainties,
// correlations kept. fn works on plain numbers: argument i in inUnits[i], the
// result in outUnit. A bare number given for an argument takes its unit.
// Derivatives are numeric; where fn refuses one side, the other is used.
func Apply(fn func([]float64) (float64, error), inUnits []string, outUnit string, args ...Q) (Q, error) {
	if len(args) != len(inUnits) {
		return Q{}, fault("%d values given, %d wanted", len(args), len(inUnits))
	}
	out, err := ParseUnit(outUnit)
	if err != nil {
		return Q{}, err
	}
	x := make([]float64, len(args))
	conv := make([]Q, len(args))
	for i, a := range args {
		u, err := ParseUnit(inUnits[i])
		if err != nil {
			return Q{}, err
		}
		if a, err = a.assume(u); err == nil {
			conv[i], err = a.To(u)
		}
		if err != nil {
			return Q{}, err
		}
		x[i] = conv[i].value(u)
	}
	y, err := fn(x)
	if err != nil {
		return Q{}, err
	}
	q, err := of(y, out)
	if err != nil {
		return Q{}, err
	}
	for i, a := range conv {
		if a.Exact() {
			continue
		}
		d := slope(fn, x, i, y, a.U()/a.unit.factor)
		var sum doubt
		sum.merge(&q.doubt, &a.doubt, 1, d*out.factor/a.unit.factor)
		q.doubt = sum
	}
	return q.checked(q.v)
}

// Prefer shows q in a unit that was typed for it and measures the same, where
// its own is only the one that such results have.
func Prefer(q, typed *Q) {
	if u, t := q.unit, typed.unit; u != nil && t != nil && u != plain && t.dim == u.dim && t.kind == u.kind && !q.fixed && u == unitFor(u.dim, u.kind) {
		q.unit = t
	}
}

// slope is the derivative of fn to x[i] at x, where fn is y. A step of
// about the cube root of the float's precision balances the error of
// rounding against that of curvature.
func slope(fn func([]float64) (float64, error), x []float64, i int, y, u float64) float64 {
	at := x[i]
	h := 6e-6 * math.Max(math.Abs(at), u)
	side := func(step float64) (float64, float64, bool) {
		p := slices.Clone(x)
		p[i] = at + step
		v, err := fn(p)
		return v, p[i] - at, err == nil && !math.IsNaN(v) && !math.IsInf(v, 0)
	}
	hi, up, okHi := side(h)
	lo, down, okLo := side(-h)
	switch {
	case okHi && okLo:
		return (hi - lo) / (up - down)
	case okHi:
		return (hi - y) / up
	case okLo:
		return (lo - y) / down
	}
	return math.NaN()
}
