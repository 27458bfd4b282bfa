package quantity

import (
	"math"
	"strconv"
	"strings"

	"ohmcall/calc/source"
)

// Q is an immutable quantity. The zero value is the plain number 0, exact.
type Q struct {
	v     float64 // SI; kelvin for a temperature point
	unit  *Unit   // nil is the plain number
	doubt doubt   // empty when exact
	res   float64 // what the last digit typed is worth, SI; 0 when none was typed
	fixed bool    // shown in its unit as it is, prefix included
}

// Number is an exact plain number.
func Number(x float64) Q { return Q{v: x} }

// New is x in the unit named, exact. It fails on an unknown unit and on a
// value that is no finite number; the error is a *source.Error.
func New(x float64, unit string) (Q, error) {
	u, err := ParseUnit(unit)
	if err != nil {
		return Q{}, err
	}
	return of(x, u)
}

// of is x in unit u, exact.
func of(x float64, u *Unit) (Q, error) {
	return Q{unit: u}.finite(x*u.factor + u.offset)
}

// finite returns q with the value v, or says what is wrong with v.
func (q Q) finite(v float64) (Q, error) {
	switch {
	case math.IsNaN(v):
		return Q{}, fault("the result is not a number")
	case math.IsInf(v, 0):
		return Q{}, fault("the result is too large to hold")
	}
	q.v = v
	return q, nil
}

//go:noinline
func fault(format string, args ...any) *source.Error {
	return source.Errorf(0, 0, format, args...)
}

// Unit is the unit that q is kept in; printing may choose another prefix.
//
//go:noinline
func (q Q) Unit() *Unit {
	if q.unit == nil {
		return plain
	}
	return q.unit
}

// Dim is q's dimension and Kind its kind.
func (q Q) Dim() Dim { return q.Unit().dim }

// Kind tells points, gauge and absolute pressures from plain quantities.
func (q Q) Kind() Kind { return q.Unit().kind }

// SI is the value in SI units: kelvin for a temperature, pascals above the
// air for a gauge pressure.
func (q Q) SI() float64 { return q.v }

// Exact reports whether q carries no uncertainty.
func (q Q) Exact() bool { return len(q.doubt.terms()) == 0 }

// WithU gives q the standard uncertainty u, in q's own unit, from one source.
// Quantities that share a source id are fully correlated through it. What q
// carried before is dropped; u of 0 makes it exact. u is taken by size.
func (q Q) WithU(u float64, sourceID uint64) Q {
	q.doubt = doubt{}
	if c := math.Abs(u) * q.Unit().factor; c <= maxDoubt {
		q.doubt.put(sourceID, c)
	}
	return q
}

// U is the standard uncertainty in SI; 0 when exact.
func (q Q) U() float64 { return math.Sqrt(Cov(q, q)) }

// Cov is the covariance of two quantities in SI units: the sum over the
// sources they share. Source: JCGM 100:2008, 5.2 and F.1.2.3 (from memory).
func Cov(a, b Q) float64 { return a.doubt.dot(&b.doubt) }

// In is q's value in the unit named. Gauge and absolute pressure convert
// through the standard atmosphere, since the unit named says so.
func (q Q) In(unit string) (float64, error) {
	r, err := q.Convert(unit)
	if err != nil {
		return 0, err
	}
	return tidy(r.value(r.unit), r.unit), nil
}

// UIn is q's standard uncertainty in the unit named.
func (q Q) UIn(unit string) (float64, error) {
	r, err := q.Convert(unit)
	if err != nil {
		return 0, err
	}
	return r.U() / r.unit.factor, nil
}

// Resolution is what the last digit typed is worth in the unit named: 0.01
// for `3.45`, 100 for `6.5k`; 0 when q was not typed as a literal.
func (q Q) Resolution(unit string) (float64, error) {
	r, err := q.Convert(unit)
	if err != nil {
		return 0, err
	}
	return q.res / r.unit.factor, nil
}

// Convert is q shown in the unit named and no other.
func (q Q) Convert(unit string) (Q, error) {
	u, err := ParseUnit(unit)
	if err != nil {
		return Q{}, err
	}
	return q.To(u)
}

// To is Convert to a unit already at hand.
func (q Q) To(u *Unit) (Q, error) {
	from := q.Unit()
	if from.dim != u.dim {
		e := fault("%s cannot be turned into %s", from.named(), u.named())
		if from == plain {
			e = e.WithHint("a unit stands directly after its number, such as 12%s", u.symbol)
		}
		return Q{}, e
	}
	v := q.v
	switch {
	case from.kind == u.kind:
	case from.kind == Gauge && u.kind == Absolute:
		v += Atmosphere
	case from.kind == Absolute && u.kind == Gauge:
		v -= Atmosphere
	default:
		e := fault("%s cannot be turned into %s", from.described(), u.described())
		if from.kind == Plain && u.difference() != u {
			e = e.WithHint("a difference is shown in %s", u.difference().symbol)
		}
		return Q{}, e
	}
	r := Q{v: v, unit: u, doubt: q.doubt, fixed: true}
	if from == u {
		r.res = q.res
	}
	return r, nil
}

// AsAbsolute is a gauge pressure told above vacuum, in the absolute unit of its name;
// ok is false for what is none or has no such unit.
func (q Q) AsAbsolute() (abs Q, ok bool) {
	if q.Kind() != Gauge {
		return q, false
	}
	abs, err := q.Convert(strings.TrimSuffix(q.Unit().symbol, "g") + "a")
	return abs, err == nil
}

// described says a unit with what it measures: `°C (temperature)`.
//
//go:noinline
func (u *Unit) described() string {
	if w := u.Quantity(); w != "" && u.symbol != "" {
		return u.symbol + " (" + w + ")"
	}
	return u.named()
}

// Assume gives a bare number the unit named, as `3.4` is ohms where ohms are
// asked for; anything else must already convert to it, and stays as it is.
func (q Q) Assume(unit string) (Q, error) {
	u, err := ParseUnit(unit)
	if err != nil {
		return Q{}, err
	}
	return q.assume(u)
}

func (q Q) assume(u *Unit) (Q, error) {
	if q.Unit() != plain || u.dim == (Dim{}) {
		_, err := q.To(u)
		return q, err
	}
	r := Q{unit: u, res: q.res * u.factor, doubt: q.doubt.times(u.factor), fixed: q.res > 0}
	return r.finite(q.v*u.factor + u.offset)
}

// tidy takes the rounding of binary fractions off a number that leaves the
// package: twelve significant digits, and ten decimals where the unit's zero
// is not that of SI.
func tidy(v float64, u *Unit) float64 {
	if u.offset != 0 {
		v = math.Round(v*1e10) / 1e10
	}
	r, err := strconv.ParseFloat(strconv.FormatFloat(v, 'g', 12, 64), 64)
	if err != nil {
		return v
	}
	return r
}

// value is q's number in u, which has q's dimension and kind.
func (q Q) value(u *Unit) float64 {
	d := q.v - u.offset
	if math.Abs(d) <= equalWithin*math.Abs(u.offset) {
		return 0 // the rounding of binary fractions: 32 °F is 0 °C
	}
	return d / u.factor
}
