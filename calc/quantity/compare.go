package quantity

import "math"

// equalWithin is the relative difference below which two values are the
// same: the rounding of binary fractions, not of meters.
const equalWithin = 1e-12

// Compare is -1, 0 or +1 as a is below, equal to or above b. Uncertainties
// play no part. Unlike units cannot be compared.
func Compare(a, b Q) (int, error) {
	ua, ub := a.Unit(), b.Unit()
	switch {
	case ua.dim != ub.dim:
		return 0, mismatch(ua, ub, a.v, b.v, "compared")
	case ua.kind != ub.kind:
		return 0, fault("%s and %s cannot be compared", ua.described(), ub.described())
	}
	d := a.v - b.v
	switch {
	case math.Abs(d) <= equalWithin*math.Max(math.Abs(a.v), math.Abs(b.v)):
		return 0, nil
	case d < 0:
		return -1, nil
	}
	return 1, nil
}

// Close reports whether a and b differ by no more than the expanded
// uncertainty of their difference, as printing shows it, so that which is
// greater cannot be told. A doubt that both share cancels. Unlike units are never close.
func Close(a, b Q) bool {
	d, err := Sub(a, b)
	if err != nil {
		return false
	}
	u := d.U()
	return u > 0 && math.Abs(d.v) <= coverage*u
}

// MayBeZero reports whether q's expanded uncertainty, as printing shows it,
// takes in zero.
func MayBeZero(q Q) bool {
	u := q.U()
	return u > 0 && math.Abs(q.v) <= coverage*u
}

// ElectricByHeat reports whether q's unit has both amperes and kelvins in it,
// as hardly any that the trade uses.
func ElectricByHeat(q Q) bool { return q.Dim()[3] != 0 && q.Dim()[4] != 0 }

// Min is the lesser of a and b, Max the greater.
func Min(a, b Q) (Q, error) {
	c, err := Compare(a, b)
	if c > 0 {
		a = b
	}
	return a, err
}

// Max is the greater of a and b.
func Max(a, b Q) (Q, error) {
	c, err := Compare(a, b)
	if c < 0 {
		a = b
	}
	return a, err
}

// Round is q rounded to so many decimals of the unit that printing shows it
// in. Its uncertainty stays.
func Round(q Q, decimals int) (Q, error) {
	u := q.shownIn()
	p := math.Pow10(decimals)
	v := math.Round(q.value(u)*p) / p
	r := Q{unit: u, doubt: q.doubt, res: u.factor / p, fixed: true}
	return r.finite(v*u.factor + u.offset)
}

// StandardU is the standard uncertainty as a quantity of its own, exact; of
// a temperature it is a difference.
func (q Q) StandardU() Q { return Q{v: q.U(), unit: q.Unit().difference()} }
