package call

import (
	"math"
	"ohmcall/calc/measure"
	"ohmcall/calc/quantity"
)

// limit is the guaranteed half-width of a reading, in the quality's unit.
func (c *Call) limit(r *reading) float64 {
	x := r.x
	if r.derived {
		u, _ := r.q.UIn(r.quality.unit)
		return 2 * u
	}
	if r.quality.word == "trip" {
		return r.res / 2 // counted by a person, not by a meter's last digit
	}
	m := c.meterFor(r.quality.word)
	if r.quality.word == "temp" {
		l := m.fixed
		if r.rough {
			l *= measure.RoughFactor
		}
		return l
	}
	return m.Limit(x, r.res, r.rough)
}

// standard is the standard uncertainty of a reading, in the quality's unit: its
// own where it was worked out, else the meter's limit taken as a rectangular
// distribution (JCGM 100:2008, 4.3.7; from memory).
func (c *Call) standard(r *reading) float64 {
	if r.derived {
		u, _ := r.q.UIn(r.quality.unit)
		return u
	}
	return c.limit(r) / math.Sqrt(3)
}

// value is what a reading is worth with the meter and probes of this call.
func (c *Call) value(r *reading) measure.Value {
	if r.over {
		return measure.Open(r.entry)
	}
	x := r.x
	half := c.limit(r)
	v := measure.Within(x, half)
	v.Rough, v.Entry = r.rough, r.entry
	if r.quality.word == "ohm" && !r.derived {
		if p := c.probes(); p > 0 {
			v = v.Minus(p)
		}
	}
	return v
}

// quantityOf is the reading for sums, with its standard uncertainty. Each
// reading is a source of its own.
func (c *Call) quantityOf(r *reading) quantity.Q {
	q := r.q
	if r.derived {
		return q
	}
	if r.quality.word == "ohm" {
		if p := c.probes(); p > 0 {
			if pq, err := quantity.New(p, "ohm"); err == nil {
				if d, err := quantity.Sub(q, pq); err == nil {
					q = d
				}
			}
		}
	}
	u := c.standard(r)
	if q.UCUM() == "[degF]" {
		u *= 1.8
	} else if factor, err := quantity.New(1, r.quality.unit); err == nil && r.quality.word != "temp" {
		if x, err := factor.To(q.Unit()); err == nil {
			v, _ := x.In(q.Symbol())
			u *= v
		}
	}
	return q.WithU(u, uint64(r.index)+1)
}

// shown is a reading's value as people read it, digits as typed.
//
//go:noinline
func (r *reading) shown() string {
	if r.floor > 0 {
		return ">" + r.q.String()
	}
	if r.over {
		return "OL"
	}
	s := r.q.String()
	if r.derived {
		return s
	}
	if r.rough {
		s = "~" + s
	}
	return s
}
