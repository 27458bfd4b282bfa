package winding

import (
	"maps"

	"ohmcall/calc/measure"
)

// partial answers when three pins are known and pairs are missing.
func (x *three) partial() {
	t, res := x.t, x.res
	res.Roles = maps.Clone(x.m.role)
	if n, ok := x.marked(); ok {
		res.Roles = x.roles(n)
	}
	res.Wanted = t.missing()
	switch t.known {
	case 0:
		res.note("No pair is read yet.")
		x.m.recall(res)
	case 1:
		x.sharpen()
		res.note("Recorded: " + x.others(func(int, int) bool { return true }) + ".")
		x.m.recall(res)
	default:
		x.predict()
	}
	p := res.Wanted[0]
	res.Next = "read " + p.String()
	res.note("Wanted next: " + p.String() + ".")
}

// sharpen puts the pair first that the markings leave open: with common
// marked, the pairs to it.
func (x *three) sharpen() {
	for i, p := range x.res.Wanted {
		if x.m.role[p[0]] == Common || x.m.role[p[1]] == Common {
			x.res.Wanted[0], x.res.Wanted[i] = x.res.Wanted[i], x.res.Wanted[0]
			return
		}
	}
}

// third computes what the pair not read would be under n, and whether n can
// be: also with probe leads in every reading, which a sum holds once too often
// and a difference once too little.
func (x *three) third(n naming) (measure.Value, bool) {
	cs, cr, sr := x.t.cell(n.c, n.s), x.t.cell(n.c, n.r), x.t.cell(n.s, n.r)
	var v measure.Value
	switch {
	case !sr.known:
		v = cs.v.Plus(cr.v)
		sr.v = v
		sr.v.Lo -= x.in.leads()
	case !cs.known:
		v = less(sr.v, cr.v)
		cs.v = v
		cs.v.Hi += x.in.leads()
	default:
		v = less(sr.v, cs.v)
		cr.v = v
		cr.v.Hi += x.in.leads()
	}
	return v, min(cs.v.Hi, cr.v.Hi) > 0 && !cr.v.Above(cs.v) && !cs.v.Above(sr.v) && !cr.v.Above(sr.v)
}

// less subtracts independent values; the bounds add.
func less(v, w measure.Value) measure.Value {
	return measure.Value{X: v.X - w.X, Lo: v.Lo - w.Hi, Hi: v.Hi - w.Lo}
}

// predict says what two finite readings leave open.
func (x *three) predict() {
	t, res := x.t, x.res
	p := res.Wanted[0]
	a, b := t.index(p[0]), t.index(p[1])
	k := 3 - a - b // the pin that both readings share
	va, vb := t.v(k, a), t.v(k, b)
	alike := va.Agrees(vb)

	possible := func(n naming) bool { _, ok := x.third(n); return ok }
	fit := filter(x.allowed, possible)
	pr := Prediction{Pair: p}
	res.note("Recorded: " + x.others(func(int, int) bool { return true }) + ".")
	if len(fit) == 0 {
		res.Conflicts = append(res.Conflicts, "The markings ("+named(x.m.role)+
			") go against the ranking of these two readings; the markings hold.")
		res.note(res.Conflicts[len(res.Conflicts)-1])
		res.Predictions = []Prediction{pr}
		return
	}
	certain := x.shared(fit)
	if x.tapped() {
		certain = nil
	}
	if len(certain) > 0 {
		res.Roles = certain
		pr.Certain = append(pr.Certain, "Certain, if the windings are sound: "+named(certain)+".")
	}
	if !alike && !x.tapped() {
		low, out := Pair{t.pins[k], t.pins[a]}, b
		if va.Above(vb) {
			low, out = Pair{t.pins[k], t.pins[b]}, a
		}
		if _, named := certain[t.pins[out]]; !named {
			pr.Certain = append(pr.Certain, t.pins[out]+" is not common: "+t.pair(t.index(low[0]), t.index(low[1])).String()+
				", the pair without it, is not the highest.")
		}
	}
	zero := false // said once, whichever pin would be common
	for _, c := range [3]int{k, a, b} {
		o, ok := x.option(p, c, fit, alike && c != k)
		if ok && !(zero && c != k) {
			pr.Options = append(pr.Options, o)
		}
		zero = zero || ok && alike && c != k
	}
	if alike && len(x.m.role) == 0 {
		v := va
		v.Lo, v.Hi = max(va.Lo, vb.Lo), min(va.Hi, vb.Hi)
		v.X, v.Rough, v.Entry = (v.Lo+v.Hi)/2, false, 0
		pr.Options = append(pr.Options, Option{Value: v,
			Text: "If " + p.String() + " reads the same as both: three equal windings, no common, start or run."})
	}
	res.note(pr.Certain...)
	for _, o := range pr.Options {
		res.note(o.Text)
	}
	res.Predictions = []Prediction{pr}
}

// option is the possibility that pin c is common.
func (x *three) option(p Pair, c int, fit []naming, nearZero bool) (Option, bool) {
	var ns []naming
	for _, n := range fit {
		if n.c == c {
			ns = append(ns, n)
		}
	}
	if len(ns) == 0 {
		return Option{}, false
	}
	v, _ := x.third(ns[0])
	o := Option{Roles: x.shared(ns), Value: v}
	o.Text = "If " + p.String() + " reads " + between(v) + ": " + named(o.Roles) + "."
	if x.tapped() {
		o.Roles = map[string]Role{}
		o.Text = "If " + p.String() + " reads " + between(v) + ": " + x.t.pins[c] + " lies between the other two."
	}
	if nearZero {
		o.Roles = map[string]Role{}
		o.Text = "If " + p.String() + " reads near zero: a short, or a winding too low for this range."
	}
	return o, true
}
