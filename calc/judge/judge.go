// Package judge says what one reading of a part is worth: sound, suspect,
// failed or cannot tell, with the limit, its source and the margin.
//
// The rule is the same everywhere. A reading is sound when the whole of its
// guaranteed bounds lies inside the limit, and failed when the whole lies
// outside. When the bounds straddle the limit it cannot be told, on whichever
// side the reading itself lies; no fact follows, and the text says what would
// settle it. A limit that is only a typical range or advice (common practice)
// condemns nothing: wholly outside it a reading is suspect. So is one that
// another published limit would pass, or that a slip of the meter's range or
// something else in the path would explain.
//
// The package knows neither pins, notebooks nor the order of entries, and it
// does not judge windings. Every text is one sentence.
package judge

import (
	"math"

	"ohmcall/calc/measure"
	"ohmcall/calc/verdict"
)

const commonPractice = verdict.CommonPractice

// place says where the bounds of a reading lie with respect to a limit.
type place int

const (
	inside    place = iota // wholly inside
	straddles              // across the limit
	below                  // wholly below the lower end
	above                  // wholly above the upper end
)

// window is a limit with two ends; an infinite end is no end.
type window struct{ lo, hi float64 }

// atLeast is the window without an upper end, atMost that without a lower.
func atLeast(lo float64) window { return window{lo, math.Inf(1)} }

//go:noinline
func atMost(hi float64) window { return window{math.Inf(-1), hi} }

// around is the window of tol percent on either side of x.
//
//go:noinline
func around(x, tol float64) window {
	return window{x * (1 - tol/100), x * (1 + tol/100)}
}

// place finds v, which is finite, in the window.
//
//go:noinline
func (w window) place(v measure.Value) place {
	switch {
	case v.Lo >= w.lo && v.Hi <= w.hi:
		return inside
	case v.Hi < w.lo:
		return below
	case v.Lo > w.hi:
		return above
	}
	return straddles
}

// holds reports whether the reading itself, its doubt aside, is inside.
func (w window) holds(x float64) bool { return x >= w.lo && x <= w.hi }

// margin is the distance from v to the nearer end in half-widths of v,
// negative outside; it is not judged for a value without doubt. Where the
// bounds are not symmetrical the half that faces the end is the unit, so that
// a sound reading always has 1 or more and a failed one -1 or less.
func (w window) margin(v measure.Value) (float64, bool) {
	m := math.Inf(1)
	for _, end := range []struct{ distance, half float64 }{
		{v.X - w.lo, v.X - v.Lo}, {w.hi - v.X, v.Hi - v.X},
	} {
		if end.distance < 0 { // outside, so the other bound faces the end
			end.half = v.Hi - v.Lo - end.half
		}
		if math.IsInf(end.distance, 0) {
			continue
		}
		if end.half <= 0 {
			return 0, false
		}
		m = min(m, end.distance/end.half)
	}
	return m, !v.Over && !math.IsInf(m, 0)
}

// word applies the rule of the package to a hard limit.
//
//go:noinline
func (w window) word(v measure.Value) verdict.Word {
	switch w.place(v) {
	case inside:
		return verdict.Sound
	case below, above:
		return verdict.Failed
	}
	return verdict.CannotTell
}

// fact is the code of what a verdict on a part establishes: nothing but that
// it was read when it cannot be told.
//
//go:noinline
func fact(part string, w verdict.Word) string {
	switch w {
	case verdict.Sound, verdict.Suspect, verdict.Failed:
		return part + "-" + string(w)
	}
	return part + "-undecided"
}

// advisoryWord applies it to a typical range, which condemns nothing.
//
//go:noinline
func (w window) advisoryWord(v measure.Value) verdict.Word {
	if word := w.word(v); word != verdict.Failed {
		return word
	}
	return verdict.Suspect
}

// begin makes a verdict with what every judgement of v against w carries.
func begin(subject string, v measure.Value, w window, unit, source string) verdict.Verdict {
	out := verdict.Verdict{Subject: subject, Limit: w.text(unit), Source: source}
	if m, ok := w.margin(v); ok {
		out.Margin, out.Judged = m, true
	}
	out.Entries = entries(v)
	return out
}

// entries lists the notebook entries of the values, each once, in order.
//
//go:noinline
func entries(vs ...measure.Value) []int {
	var out []int
	for _, v := range vs {
		known := v.Entry == 0
		for _, e := range out {
			known = known || e == v.Entry
		}
		if !known {
			out = append(out, v.Entry)
		}
	}
	return out
}
