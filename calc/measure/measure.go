// Package measure holds what one reading of a meter is worth: its nominal
// value and the bounds that a meter within its specification guarantees.
//
// Judgements that someone will wire by use these bounds, not standard
// uncertainties: see Value.Above and Value.Agrees.
package measure

import "math"

// Meter is the accuracy a meter's maker declares for one range: percent of
// reading plus counts of the last digit shown.
type Meter struct {
	Percent float64 // of the reading
	Counts  float64 // of the last digit shown
	Assumed bool    // nobody declared it
}

// Default is assumed when no accuracy was declared: 1 % and 3 counts, a
// modest hand-held multimeter (common practice).
var Default = Meter{Percent: 1, Counts: 3, Assumed: true}

// RoughFactor widens the limits of a value that was read roughly (`~6.5`):
// its limits are RoughFactor times those of the meter, and never less than
// roughPercent of the reading (common practice: a swinging needle or digits
// that do not stand still are good to a tenth).
const (
	RoughFactor  = 3
	roughPercent = 10
)

// CoolBelow is the temperature in °C below which a protector that opened on
// heat has closed again, so that open pairs say something: 120 °F. CoolWords is
// the same in words, and CoolSource where it is published.
const (
	CoolBelow  = 49 // ice-machine operation manual 80-0111-9 p. 176
	CoolWords  = "49 °C (120 °F)"
	CoolSource = "ice-machine operation manual 80-0111-9 p. 176 (below 120 °F)"
)

// Limit is the guaranteed half-width of a reading of x shown with a last
// digit worth resolution, both in the same unit.
func (m Meter) Limit(x, resolution float64, rough bool) float64 {
	l := math.Abs(x)*m.Percent/100 + m.Counts*resolution
	if rough {
		l = max(RoughFactor*l, math.Abs(x)*roughPercent/100)
	}
	return l
}

// Value is one reading with its guaranteed bounds, in the unit that the user
// of the value names.
type Value struct {
	X     float64 // as read, corrections applied
	Lo    float64 // no meter within its specification was below this
	Hi    float64 // nor above this
	Over  bool    // over the meter's range (OL); X, Lo and Hi mean nothing
	Rough bool    // written with ~
	Entry int     // the notebook entry that holds it, 0 when none
}

// Exact is a value without doubt, such as a nameplate figure.
func Exact(x float64) Value { return Value{X: x, Lo: x, Hi: x} }

// Within gives x bounds of half on either side.
func Within(x, half float64) Value { return Value{X: x, Lo: x - half, Hi: x + half} }

// Open is a reading over the meter's range.
func Open(entry int) Value { return Value{Over: true, Entry: entry} }

// Half is the half-width of the bounds.
func (v Value) Half() float64 { return (v.Hi - v.Lo) / 2 }

// Above reports whether v is certainly greater than w: their difference
// exceeds the sum of both limits. An open reading is above every finite one.
//
//go:noinline
func (v Value) Above(w Value) bool {
	switch {
	case v.Over:
		return !w.Over
	case w.Over:
		return false
	}
	return v.Lo > w.Hi
}

// Agrees reports whether v and w may be the same: their bounds touch.
//
//go:noinline
func (v Value) Agrees(w Value) bool {
	if v.Over || w.Over {
		return v.Over == w.Over
	}
	return v.Lo <= w.Hi && w.Lo <= v.Hi
}

// Minus shifts v down by d, as when the probe leads' resistance is taken off.
func (v Value) Minus(d float64) Value {
	v.X, v.Lo, v.Hi = v.X-d, v.Lo-d, v.Hi-d
	return v
}

// Times scales v by the positive factor k, as in a temperature correction.
func (v Value) Times(k float64) Value {
	v.X, v.Lo, v.Hi = v.X*k, v.Lo*k, v.Hi*k
	return v
}

// Plus adds two independent values; the bounds add.
func (v Value) Plus(w Value) Value {
	return Value{X: v.X + w.X, Lo: v.Lo + w.Lo, Hi: v.Hi + w.Hi, Over: v.Over || w.Over}
}
