package quantity

import (
	"fmt"
	"math"

	"ohmcall/calc/source"
)

// residue is the part of two operands below which their difference is only
// rounding of binary fractions and counts as nothing.
const residue = 1e-14

// Add is a + b. Two points, such as two temperatures, cannot be added; a
// point and a difference make a point.
func Add(a, b Q) (Q, error) {
	ua, ub := a.Unit(), b.Unit()
	if ua != ub && ua.dim != ub.dim {
		return Q{}, mismatch(ua, ub, a.v, b.v, "added")
	}
	if ua.kind != Plain && ub.kind != Plain {
		return Q{}, twoPoints(ua, ub)
	}
	if ua.kind == Plain && ub.kind != Plain {
		ua = ub
	}
	return combine(&a, &b, ua, 1)
}

// Sub is a - b. Two points of one kind leave a difference.
func Sub(a, b Q) (Q, error) {
	ua, ub := a.Unit(), b.Unit()
	switch {
	case ua.dim != ub.dim:
		return Q{}, mismatch(ua, ub, a.v, b.v, "subtracted")
	case ua.kind == ub.kind:
		ua = ua.difference()
	case ub.kind != Plain && ua.kind != Plain:
		return Q{}, fault("%s and %s cannot be subtracted", ua.described(), ub.described()).
			WithHint("turn one into the other first, such as `in %s`", ua.symbol)
	case ub.kind != Plain:
		return Q{}, fault("%s cannot be taken from %s", ub.described(), ua.described())
	}
	return combine(&a, &b, ua, -1)
}

// combine is a + sign·b in unit u, the operands being fit for it. It is
// written for speed: sums of readings pass here most.
func combine(a, b *Q, u *Unit, sign float64) (Q, error) {
	v := a.v + sign*b.v
	if math.Abs(v) <= residue*max(math.Abs(a.v), math.Abs(b.v)) {
		v = 0
	}
	res := 0.0
	if a.res > 0 && b.res > 0 {
		res = min(a.res, b.res)
	}
	r := Q{v: v, unit: u, res: res}
	r.doubt.merge(&a.doubt, &b.doubt, 1, sign)
	if math.Abs(v) <= math.MaxFloat64 && r.doubt.stated() {
		return r, nil
	}
	return r.checked(v)
}

// ShareFault refuses a sum or difference of a plain number and a percentage: 80 +
// 5% is meant as 84, and comes to 80.05. Of 1 both are one; nil for all else.
func ShareFault(a, b Q) *source.Error {
	ua, ub := a.Unit(), b.Unit()
	if ua == plain && ub.symbol == "%" && a.v != 1 || ub == plain && ua.symbol == "%" && b.v != 1 {
		return mismatch(ua, ub, 0, 0, "added")
	}
	return nil
}

//go:noinline
func mismatch(a, b *Unit, va, vb float64, verb string) *source.Error {
	e := fault("%s and %s cannot be %s", a.named(), b.named(), verb)
	if a.symbol == "%" || b.symbol == "%" {
		of := "120V"
		if a == plain || b == plain {
			of = "80"
		}
		return e.WithHint("a share is taken of something: %s * 5%% is 5 %% of %[1]s, %[1]s * (1 + 10%%) is 10 %% more", of)
	}
	if a == plain || b == plain {
		v, other := vb, a
		if a == plain {
			v, other = va, b
		}
		if verb != "compared" {
			other = other.difference()
		}
		such := fmt.Sprintf("%g%s", v, other.symbol)
		for _, base := range units().family[other.decl] {
			if other.exp == 0 || base.exp != 0 {
				continue
			}
			if one := fmt.Sprintf("%g%s", v, base.symbol); v < 1000 {
				such = one + " or " + such
			} else {
				such = one // a multiple was typed, or all of it
			}
		}
		e = e.WithHint("a unit stands directly after its number, such as %s", such)
	}
	return e
}

func twoPoints(a, b *Unit) *source.Error {
	if a.kind != b.kind {
		return fault("%s and %s cannot be added", a.described(), b.described()).
			WithHint("one is gauge and the other absolute; convert with `in psi` or `in psia`")
	}
	e := fault("two %ss cannot be added", a.Quantity())
	if a.kind == Point {
		return e.WithHint("a rise or fall is written in K or Fdiff, such as 5Fdiff")
	}
	return e.WithHint("a rise or fall is written in psid, kPad, bard or inWCd, such as 5%s", a.difference().symbol)
}

// Neg is -q. A temperature point has none: the minus of `-2F` belongs to the
// number and is read with it.
func Neg(q Q) (Q, error) {
	if q.Kind() == Point {
		return Q{}, fault("a temperature cannot be negated: its zero is arbitrary")
	}
	q.v, q.doubt = -q.v, q.doubt.times(-1)
	return q, nil
}

// scales reports whether u may be multiplied: a temperature or a gauge
// pressure may not, since its zero is arbitrary.
func scales(u *Unit, verb string) error {
	switch u.kind {
	case Point:
		return fault("%s cannot be %s: a temperature's zero is arbitrary", u.named(), verb).
			WithHint("take a difference first, such as (75F - 40F)")
	case Gauge:
		return fault("%s gauge cannot be %s: it starts at the pressure of the air", u.named(), verb).
			WithHint("what it is above the air is such as (40psi - 0psi), in psid; absolute it is (40psi in psia)")
	}
	return nil
}

// Mul is a · b.
func Mul(a, b Q) (Q, error) {
	u, err := product(a.Unit(), b.Unit(), 1)
	if err != nil {
		return Q{}, err
	}
	r := Q{unit: u}
	r.doubt.merge(&a.doubt, &b.doubt, b.v, a.v)
	return r.checked(a.v * b.v)
}

// Div is a / b; division by zero is an error.
func Div(a, b Q) (Q, error) {
	u, err := product(a.Unit(), b.Unit(), -1)
	if err != nil {
		return Q{}, err
	}
	if b.v == 0 {
		return Q{}, fault("division by zero")
	}
	v := a.v / b.v
	r := Q{unit: u}
	r.doubt.merge(&a.doubt, &b.doubt, 1/b.v, -v/b.v)
	return r.checked(v)
}

// product is the unit of a·b (sign 1) or a/b (sign -1).
func product(a, b *Unit, sign int8) (*Unit, error) {
	verb := "multiplied"
	if sign < 0 {
		verb = "divided"
	}
	if sign < 0 && a.dim == dimPressure && b.dim == dimPressure && (a.kind == Gauge || b.kind == Gauge) {
		return nil, fault("a ratio is of absolute pressures, and these are gauge").
			WithHint("convert both, such as (250psi in psia) / (40psi in psia)")
	}
	if err := scales(a, verb); err != nil {
		return nil, err
	}
	if err := scales(b, verb); err != nil {
		return nil, err
	}
	switch {
	case sign > 0 && (a == plain && b.symbol == "%" || b == plain && a.symbol == "%"):
		return plain, nil
	case b.dim == Dim{} && (a.dim != Dim{} || b == plain):
		return a, nil
	case a.dim == Dim{} && sign > 0:
		return b, nil
	}
	d := a.dim.plus(b.dim, sign)
	if !d.bounded() {
		return nil, fault("the result's unit has too high a power")
	}
	if d == dimEnergy && (a.hours() || b.hours()) {
		return units().bySpelling["Wh"], nil
	}
	if sign < 0 && b.dim == dimTime && (a == plain && b.hours() || a.dim != (Dim{}) && (d == dimFlow || units().firstOf[dimKind{d, Plain}] == nil)) {
		return typed(a, b, -1)
	}
	if sign > 0 && a == b && a.dim == dimLength {
		return typed(a, b, 1)
	}
	return unitFor(d, Plain), nil
}

// typed is the unit of a·b or a/b made of the two as they were typed.
func typed(a, b *Unit, sign int) (*Unit, error) {
	c := compound{}
	if a == b {
		c.add(a, 1+sign)
	} else {
		c.add(a, 1)
		c.add(b, sign)
	}
	return c.unit()
}

// hours reports whether u is a time by which energy is counted in
// watt-hours.
func (u *Unit) hours() bool { return u.dim == dimTime && u.factor >= 60 }

// Pow is q to a power. A quantity with a unit takes powers that leave whole
// exponents in its unit; a plain number takes any.
func Pow(q, power Q) (Q, error) {
	if power.Unit().dim != (Dim{}) {
		return Q{}, fault("a power must be a plain number, not %s", power.Unit().named())
	}
	n, u := power.v, q.Unit()
	if n == 1 && power.Exact() {
		return q, nil
	}
	if u.dim != (Dim{}) {
		if err := scales(u, "raised to a power"); err != nil {
			return Q{}, err
		}
		if !power.Exact() {
			return Q{}, fault("the power of a quantity in %s must be exact", u.named())
		}
		d, err := u.dim.power(n)
		if err != nil {
			return Q{}, err
		}
		if n == 2 && u.dim == dimLength {
			u, err = typed(u, u, 1)
		} else {
			u = unitFor(d, Plain)
		}
		if err != nil {
			return Q{}, err
		}
	} else {
		u = plain
	}
	if q.v == 0 && n < 0 {
		return Q{}, fault("division by zero")
	}
	if q.v < 0 && n != math.Trunc(n) {
		return Q{}, fault("a root of a negative value does not exist")
	}
	v := math.Pow(q.v, n)
	dq, dn := 0.0, 0.0
	if !q.Exact() {
		dq = n * math.Pow(q.v, n-1)
	}
	if !power.Exact() {
		if q.v <= 0 {
			return Q{}, fault("only a positive value can be raised to a power that is uncertain")
		}
		dn = v * math.Log(q.v)
	}
	r := Q{unit: u}
	r.doubt.merge(&q.doubt, &power.doubt, dq, dn)
	return r.checked(v)
}

// power is d to the power n, which must leave whole exponents.
func (d Dim) power(n float64) (Dim, error) {
	var r Dim
	for i, e := range d {
		x := float64(e) * n
		if x != math.Trunc(x) {
			return r, fault("this power leaves no whole unit")
		}
		if math.Abs(x) > 50 {
			return r, fault("the result's unit has too high a power")
		}
		r[i] = int8(x)
	}
	return r, nil
}

// checked is finite, and refuses a doubt that cannot be stated.
func (q Q) checked(v float64) (Q, error) {
	if !q.doubt.stated() {
		return Q{}, fault("the uncertainty of the result cannot be stated here")
	}
	return q.finite(v)
}

// Sqrt is the square root of q.
func Sqrt(q Q) (Q, error) { return Pow(q, Number(0.5)) }

// Abs is q without its sign.
func Abs(q Q) (Q, error) {
	if q.Kind() == Point {
		return Q{}, fault("a temperature has no size without its sign").
			WithHint("take a difference first, such as abs(75F - 40F)")
	}
	if q.v < 0 {
		return Neg(q)
	}
	return q, nil
}
