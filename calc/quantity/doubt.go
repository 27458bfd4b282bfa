package quantity

import "math"

// term is what one independent source of doubt adds: the derivative of the
// value to that source times the source's standard uncertainty, SI.
type term struct {
	source uint64
	c      float64
}

// doubt is a standard uncertainty split by source, by rising source. Up to
// two terms, the sum of two readings, stand inside it: that spares an
// allocation, which would cost more than the sum.
type doubt struct {
	few  [2]term
	n    int    // of few
	more []term // all terms, when there are more than two; never changed
}

// maxDoubt is the uncertainty whose square can still be summed.
const maxDoubt = 1e150

func (d *doubt) terms() []term {
	if d.more != nil {
		return d.more
	}
	return d.few[:d.n]
}

// put adds a term; sources must come rising.
func (d *doubt) put(source uint64, c float64) {
	switch {
	case c == 0:
	case d.more != nil:
		d.more = append(d.more, term{source, c})
	case d.n < len(d.few):
		d.few[d.n] = term{source, c}
		d.n++
	default:
		d.more = append(append(make([]term, 0, 4), d.few[:]...), term{source, c})
	}
}

// merge makes d, which is empty, ka·a + kb·b.
func (d *doubt) merge(a, b *doubt, ka, kb float64) {
	s, t := a.terms(), b.terms()
	if len(t) == 0 && ka == 1 {
		*d = *a
		return
	}
	if len(s) == 0 && kb == 1 {
		*d = *b
		return
	}
	if n := len(s) + len(t); n > len(d.few) {
		d.more = make([]term, 0, n)
	}
	i, j := 0, 0
	for i < len(s) || j < len(t) {
		switch {
		case j == len(t) || i < len(s) && s[i].source < t[j].source:
			d.put(s[i].source, ka*s[i].c)
			i++
		case i == len(s) || t[j].source < s[i].source:
			d.put(t[j].source, kb*t[j].c)
			j++
		default:
			// A source that cancels but for rounding has cancelled.
			x := ka * s[i].c
			if c := x + kb*t[j].c; math.Abs(c) > residue*math.Abs(x) {
				d.put(s[i].source, c)
			}
			i++
			j++
		}
	}
}

// times is d scaled by k.
func (d *doubt) times(k float64) (r doubt) {
	r.merge(d, &doubt{}, k, 1)
	return r
}

// dot is the sum over shared sources of the products of the terms.
func (d *doubt) dot(e *doubt) float64 {
	sum := 0.0
	s, t := d.terms(), e.terms()
	for i, j := 0, 0; i < len(s) && j < len(t); {
		switch {
		case s[i].source < t[j].source:
			i++
		case s[i].source > t[j].source:
			j++
		default:
			sum += s[i].c * t[j].c
			i++
			j++
		}
	}
	return sum
}

// stated reports whether every part of d can be stated.
func (d *doubt) stated() bool {
	for _, t := range d.terms() {
		if !(math.Abs(t.c) <= maxDoubt) {
			return false
		}
	}
	return true
}
