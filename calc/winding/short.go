package winding

import (
	"maps"
	"math"

	"ohmcall/calc/measure"
)

// maybeShorted reports a pair that may be nothing at all beside two that may be alike:
// tied together two pins read so, and no role follows from it.
func (x *three) maybeShorted(g gapDetail) bool { return g.low.Lo <= 0 && g.mid.Agrees(g.high) }

// apart is by how much the two higher pairs differ: of sound windings by the lowest.
func (x *three) apart() float64 {
	g := x.gap()
	return math.Abs(g.high.X - g.mid.X)
}

// shorted reports a pair that reads zero, or so far below the next pair that
// no sound machine does. Less than three finite readings prove nothing yet.
func (x *three) shorted() bool {
	t, res := x.t, x.res
	if t.known < 3 {
		return false
	}
	if x.allNearZero() {
		x.res.State = TooClose
		x.res.note("All three pairs read about zero, within what meter and leads allow: no winding can be told from the leads.",
			"Zero the leads (probes) on the lowest range, scrape the pins and read again before judging.")
		return true
	}
	type entry struct{ i, j int }
	var low []entry
	for _, e := range [3]entry{{0, 1}, {0, 2}, {1, 2}} {
		if t.v(e.i, e.j).Over {
			continue
		}
		v, next := t.v(e.i, e.j), false
		for _, o := range [3]entry{{0, 1}, {0, 2}, {1, 2}} {
			w := t.v(o.i, o.j)
			far := v.Hi*shortRatio < w.Lo || v.Lo <= 0 && (v.X+v.Half()/2)*shortRatio < w.X && x.apart() < v.X/2 // perhaps nothing at all
			next = next || !w.Over && o != e && far && (t.open > 0 || x.lowTwo(w))
		}
		if v.X <= 0 || next {
			low = append(low, e)
		}
	}
	if len(low) == 0 {
		return false
	}
	res.State = Shorted
	res.fact(FactShorted)
	res.Roles = maps.Clone(x.m.role)
	if n, ok := x.marked(); ok {
		res.Roles = x.roles(n)
	}
	var words []string
	for _, e := range low {
		words = append(words, t.says(e.i, e.j))
	}
	res.note("Shorted: " + list(words, "and") + " against " + x.others(func(i, j int) bool {
		for _, e := range low {
			if e.i == i && e.j == j {
				return false
			}
		}
		return true
	}) + ".")
	if len(low) == 1 {
		if w := x.between(low[0].i, low[0].j); w != "" {
			res.note("By the markings this is the " + w + ".")
		} else {
			res.note("Which winding it is, the readings cannot tell: look for markings.")
		}
	}
	res.note("Zero the leads, take off what is on the pins (relay, jumper) and read again before judging: that or a very low winding can look like this.")
	if t.open > 0 {
		res.fact(FactOpen)
		res.note("And a winding is open: " + x.others(func(i, j int) bool { return t.v(i, j).Over }) + ".")
	}
	return true
}

// allNearZero reports three finite pairs each of which may be zero.
func (x *three) allNearZero() bool {
	for _, v := range x.values() {
		if v.Over || v.Lo > 0 {
			return false
		}
	}
	return true
}

// lowTwo reports whether w agrees with some other pair: a short across one
// winding leaves the two other pairs alike.
func (x *three) lowTwo(w measure.Value) bool {
	agree := 0
	for _, v := range x.values() {
		if v.Agrees(w) {
			agree++
		}
	}
	return agree >= 2
}

// between names the winding between two pins by the roles known.
func (x *three) between(i, j int) string {
	a, b := x.res.Roles[x.t.pins[i]], x.res.Roles[x.t.pins[j]]
	if b == Common {
		a, b = b, a
	}
	switch {
	case a == Common && b != "":
		return string(b) + " winding"
	case a != "" && b != "":
		return "path from start to run"
	}
	return ""
}

// others lists the readings that keep approves.
func (x *three) others(keep func(i, j int) bool) string {
	var out []string
	for i := range 3 {
		for j := i + 1; j < 3; j++ {
			if x.t.has(i, j) && keep(i, j) {
				out = append(out, x.t.says(i, j))
			}
		}
	}
	if len(out) == 0 {
		return "nothing else"
	}
	return list(out, "and")
}
