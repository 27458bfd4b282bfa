// Package pulldown fits a cabinet's timed temperatures with one time
// constant, T = Tf + (T0 − Tf)·exp(−t/τ), and says from the fit whether a
// target has been proved, is on course, will not be reached, or cannot be
// told yet.
//
// For a given τ the curve is linear in its two temperatures, so only τ is
// searched for (variable projection). Bounds are profile bounds: for few or
// early readings the constants are far from normally distributed, and a
// symmetric ± would be wrong.
package pulldown

import (
	"errors"
	"fmt"
	"math"
)

// Point is one reading.
type Point struct {
	Minutes float64 // since any fixed moment
	Celsius float64
	U       float64 // standard uncertainty of Celsius, K
}

// SlowestTau is the largest time constant considered, minutes. A cabinet that
// works is several times faster than a day (common practice); without a limit
// a handful of early readings would allow any final temperature at all.
const SlowestTau = 24 * 60

// coverage is the factor k for 95 %. A thermometer's stated uncertainty is
// itself known to about a quarter, which is worth 8 degrees of freedom
// (JCGM 100:2008 G.4.2), and Student's t then gives 2.31 (Table G.2).
const (
	coverage        = 2.31
	coverageFreedom = 8
)

// Estimate is one constant of the curve.
type Estimate struct {
	Value     float64
	U         float64 // standard uncertainty, first order
	Low, High float64 // bounds for 95 %
	Open      bool    // the readings leave one of the bounds to the limits of the search
}

// Result is the curve through the readings.
type Result struct {
	Final Estimate // Tf, °C
	Tau   Estimate // τ, min
	Start Estimate // T0, °C, on the curve at the first reading

	Cov [3][3]float64 // of Final, Tau, Start, first order
	K   float64       // coverage factor of the bounds

	Chi2 float64 // sum of squared residuals in units of the readings' uncertainty
	Dof  int     // readings less three
	// Scattered says that the readings are off the curve by more than their
	// uncertainty; the bounds are widened by what the scatter shows.
	Scattered bool

	data  data
	level float64 // of chi², that bounds the constants
	least float64 // limits of the search for τ, min
	most  float64
	lines []line // for τ between its bounds, evenly in its logarithm
}

// Fit finds the curve. It needs three readings or more in the order of time.
func Fit(points []Point) (Result, error) {
	d, err := newData(points)
	if err != nil {
		return Result{}, err
	}
	r := Result{data: d, Dof: len(points) - 3, K: coverage, least: d.shortest() / 4, most: max(SlowestTau, d.span())}
	tau := minimize(func(tau float64) float64 { return d.at(tau).chi2 }, r.least, r.most)
	best := d.at(tau)
	r.Chi2 = best.chi2

	scale := 1.0
	if r.Chi2 > chi2Limit(max(r.Dof, 1)) {
		r.Scattered = true
		nu := max(r.Dof, 1)
		scale = r.Chi2 / float64(nu)
		r.K = student(min(nu, coverageFreedom))
	}
	r.level = r.Chi2 + r.K*r.K*scale

	r.Tau.Value = tau
	r.tauBounds()
	r.lines = make([]line, gridSteps+1)
	for i := range r.lines {
		r.lines[i] = d.at(gridded(r.Tau.Low, r.Tau.High, i))
	}
	r.Start.Value, r.Final.Value = best.value(0), best.value(1)
	r.Start.Low, r.Start.High = r.edge(atStart, -1), r.edge(atStart, 1)
	r.Final.Low, r.Final.High = r.edge(atEnd, -1), r.edge(atEnd, 1)
	r.covariance(best, scale)
	return r, nil
}

// Temperature is the curve at a time on the readings' own scale, °C.
func (r *Result) Temperature(minutes float64) float64 {
	return r.Final.Value + (r.Start.Value-r.Final.Value)*math.Exp(-(minutes-r.data.origin)/r.Tau.Value)
}

// data is the readings laid out for the fit: time from the first one and
// weights.
type data struct {
	origin  float64
	x, y, w []float64
	u       float64 // largest standard uncertainty, K
	weight  float64 // sum of w
	mean    float64 // weighted mean of y
	square  float64 // weighted sum of squares of y about it
}

func newData(points []Point) (data, error) {
	if len(points) < 3 {
		return data{}, fmt.Errorf("a pull-down needs at least 3 timed temperatures, there are %d", len(points))
	}
	d := data{origin: points[0].Minutes}
	for i, p := range points {
		switch {
		case !finite(p.Minutes) || !finite(p.Celsius) || !finite(p.U):
			return data{}, fmt.Errorf("reading %d is not a finite number", i+1)
		case p.U <= 0:
			return data{}, fmt.Errorf("reading %d has no uncertainty", i+1)
		case i > 0 && p.Minutes <= points[i-1].Minutes:
			return data{}, fmt.Errorf("reading %d is not later than the one before", i+1)
		}
		d.x = append(d.x, p.Minutes-d.origin)
		d.y = append(d.y, p.Celsius)
		d.w = append(d.w, 1/(p.U*p.U))
		d.u = max(d.u, p.U)
	}
	for i, y := range d.y {
		d.weight += d.w[i]
		d.mean += d.w[i] * y
	}
	d.mean /= d.weight
	for i, y := range d.y {
		d.square += d.w[i] * (y - d.mean) * (y - d.mean)
	}
	if s := d.span(); s > 1e6 || d.shortest() < 1e-6*s {
		return data{}, errors.New("the readings' times do not make one pull-down: they span too much or lie too close together")
	}
	return d, nil
}

func finite(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) }

// span is the time from the first reading to the last, minutes.
func (d data) span() float64 { return d.x[len(d.x)-1] }

// shortest is the shortest time between neighbours, minutes.
func (d data) shortest() float64 {
	s := math.Inf(1)
	for i := 1; i < len(d.x); i++ {
		s = min(s, d.x[i]-d.x[i-1])
	}
	return s
}

// line is the weighted straight line of the readings over 1 − exp(−x/τ), the
// part of the way that is done, for one τ. It is kept about its centre and the
// part is computed without cancellation, so that a τ far longer than the
// readings' span does no harm.
type line struct {
	tau    float64
	part   float64 // centre
	y      float64 // centre, °C
	slope  float64 // Tf − T0, K
	weight float64 // sum of weights
	spread float64 // weighted sum of squares of the part about its centre
	chi2   float64
}

func (d data) at(tau float64) line {
	var sp, spp, spy float64
	for i, x := range d.x {
		p := -math.Expm1(-x / tau)
		wp := d.w[i] * p
		sp += wp
		spp += wp * p
		spy += wp * d.y[i]
	}
	l := line{tau: tau, part: sp / d.weight, y: d.mean, weight: d.weight}
	l.spread = spp - sp*l.part
	product := spy - sp*d.mean
	l.slope = product / l.spread
	l.chi2 = max(d.square-l.slope*product, 0)
	return l
}

// value is the temperature at a part of the way: T0 at 0, Tf at 1.
func (l line) value(part float64) float64 { return l.y + l.slope*(part-l.part) }

// half is how far value(part) may move before chi² has grown by room.
func (l line) half(part, room float64) float64 {
	return math.Sqrt(room * (1/l.weight + (part-l.part)*(part-l.part)/l.spread))
}

// tauBounds finds where chi² crosses the level on either side of the best τ.
// A τ without an upper bound leaves the final temperature without one too.
func (r *Result) tauBounds() {
	above := func(tau float64) bool { return r.data.at(tau).chi2 > r.level }
	r.Tau.Low, r.Tau.High = r.least, r.most
	lowOpen, highOpen := !above(r.least), !above(r.most)
	if !lowOpen {
		r.Tau.Low = crossing(above, r.Tau.Value, r.least)
	}
	if !highOpen {
		r.Tau.High = crossing(above, r.Tau.Value, r.most)
	}
	r.Tau.Open, r.Final.Open = lowOpen || highOpen, highOpen
}

func atStart(float64) float64 { return 0 }
func atEnd(float64) float64   { return 1 }

// edge gives the greatest (side 1) or least (side -1) temperature at a part
// of the way over every curve whose chi² is within the level. The part may
// depend on τ, as it does at a fixed time.
func (r *Result) edge(part func(tau float64) float64, side float64) float64 {
	reach := func(l line) float64 {
		room := r.level - l.chi2
		if room < 0 {
			return math.Inf(-1)
		}
		p := part(l.tau)
		return side*l.value(p) + l.half(p, room)
	}
	best, most := 0, math.Inf(-1)
	for i, l := range r.lines {
		if y := reach(l); y > most {
			best, most = i, y
		}
	}
	a, b := r.lines[max(best-1, 0)].tau, r.lines[min(best+1, gridSteps)].tau
	tau := golden(func(tau float64) float64 { return -reach(r.data.at(tau)) }, a, b, 12)
	return side * max(most, reach(r.data.at(tau)))
}

// covariance fills Cov and the standard uncertainties by the first-order
// formula; where the readings are so flat that τ has no effect on the curve,
// it falls back on the bounds.
func (r *Result) covariance(best line, scale float64) {
	var normal [3][3]float64
	for i, x := range r.data.x {
		e := math.Exp(-x / best.tau)
		j := [3]float64{1 - e, -best.slope * e * x / (best.tau * best.tau), e}
		for a := range j {
			for b := range j {
				normal[a][b] += r.data.w[i] * j[a] * j[b]
			}
		}
	}
	estimates := [3]*Estimate{&r.Final, &r.Tau, &r.Start}
	inverse, ok := invert(normal)
	for a := range inverse {
		for b := range inverse {
			r.Cov[a][b] = inverse[a][b] * scale
		}
		if !ok {
			half := (estimates[a].High - estimates[a].Low) / (2 * r.K)
			r.Cov[a] = [3]float64{}
			r.Cov[a][a] = half * half
		}
		estimates[a].U = math.Sqrt(r.Cov[a][a])
	}
}
