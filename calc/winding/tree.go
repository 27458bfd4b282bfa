package winding

import (
	"math"

	"ohmcall/calc/measure"
)

// maxNodes bounds the leads of one group, joints included; more leads than
// maxNodes-1 in one group are not searched.
const maxNodes = 12

// How far the search goes before it says that too many networks fit.
const (
	maxTrees = 12
	maxTries = 500
)

// slack absorbs the rounding of sums, in ohms.
const slack = 1e-9

// span is an interval of ohms.
type span struct{ lo, hi float64 }

func (s span) meet(o span) span  { return span{max(s.lo, o.lo), min(s.hi, o.hi)} }
func (s span) empty() bool       { return s.lo > s.hi }
func (s span) plus(o span) span  { return span{s.lo + o.lo, s.hi + o.hi} }
func (s span) minus(o span) span { return span{s.lo - o.hi, s.hi - o.lo} }

var anything = span{math.Inf(-1), math.Inf(1)}

// net is what is known of one group: bounds between nodes, unread pairs have
// none. Node 0 is the first in insertion order.
type net struct {
	n      int
	r      [maxNodes][maxNodes]span
	known  [maxNodes][maxNodes]bool
	leadUp float64 // the most one lead resistance in every pair may be, in ohms
	joint  bool    // node 1 is a joint that is not brought out
	tries  int
	found  []tree
	full   bool // more trees fit than were kept, or the search was cut
}

// tree is a network of windings in series: every node but 0 hangs by one
// winding on its parent.
type tree struct {
	n      int
	parent [maxNodes]int8
	edge   [maxNodes]span // bounds of the winding from a node to its parent
	lead   span           // bounds of the resistance common to all pairs
}

// path calls visit with each node whose winding to its parent lies between i
// and j.
func (t *tree) path(i, j int, visit func(e int)) {
	di, dj := t.depth(i), t.depth(j)
	for i != j {
		if di >= dj {
			visit(i)
			i = int(t.parent[i])
			di--
		} else {
			visit(j)
			j = int(t.parent[j])
			dj--
		}
	}
}

func (t *tree) depth(i int) (d int) {
	for i != 0 {
		i = int(t.parent[i])
		d++
	}
	return d
}

// between gives the bounds of the sum along the path from i to j.
func (t *tree) between(i, j int) span {
	s := t.lead
	t.path(i, j, func(e int) { s = s.plus(t.edge[e]) })
	return s
}

// degree counts the windings at node i.
func (t *tree) degree(i int) (d int) {
	if i != 0 {
		d++
	}
	for k := 1; k < t.n; k++ {
		if int(t.parent[k]) == i {
			d++
		}
	}
	return d
}

// neighbours lists the nodes one winding away from i.
func (t *tree) neighbours(i int) []int {
	var out []int
	if i != 0 {
		out = append(out, int(t.parent[i]))
	}
	for k := 1; k < t.n; k++ {
		if int(t.parent[k]) == i {
			out = append(out, k)
		}
	}
	return out
}

// winding gives the bounds of the winding between neighbours i and j.
func (t *tree) winding(i, j int) span {
	if i != 0 && int(t.parent[i]) == j {
		return t.edge[i]
	}
	return t.edge[j]
}

// fits narrows the windings of t to what the readings leave and reports
// whether anything is left.
func (w *net) fits(t *tree) bool {
	w.tries++
	t.lead = w.leadOf(t)
	if t.lead.empty() {
		return false
	}
	for k := 1; k < t.n; k++ {
		p := t.parent[k]
		t.edge[k] = span{0, math.Inf(1)}
		if w.known[k][p] {
			t.edge[k] = w.r[k][p].minus(t.lead).meet(t.edge[k])
			if t.edge[k].empty() {
				return false
			}
		}
	}
	if w.joint && t.n > 3 && !w.legs(t) {
		return false
	}
	var on [maxNodes]int
	for range 4 {
		changed := false
		for i := range t.n {
			for j := i + 1; j < t.n; j++ {
				if !w.known[i][j] {
					continue
				}
				n, unbounded := 0, -1
				sum := t.lead
				t.path(i, j, func(e int) {
					on[n] = e
					n++
					if math.IsInf(t.edge[e].hi, 1) {
						if unbounded >= 0 {
							unbounded = maxNodes
							return
						}
						unbounded = e
						sum.lo += t.edge[e].lo
						return
					}
					sum = sum.plus(t.edge[e])
				})
				got := w.r[i][j]
				if unbounded >= maxNodes { // two windings without an upper bound
					if sum.lo > got.hi+slack {
						return false
					}
					for _, e := range on[:n] {
						t.edge[e].hi = min(t.edge[e].hi, got.hi)
					}
					changed = true
					continue
				}
				if sum.lo > got.hi+slack || unbounded < 0 && sum.hi < got.lo-slack {
					return false
				}
				for _, e := range on[:n] {
					rest := span{sum.lo - t.edge[e].lo, sum.hi}
					if unbounded < 0 {
						rest.hi = sum.hi - t.edge[e].hi
					} else if e != unbounded {
						continue
					}
					if m := t.edge[e].meet(got.minus(rest)); m != t.edge[e] {
						if m.lo > m.hi+slack {
							return false
						}
						t.edge[e], changed = m, true
						sum = t.resum(on[:n])
						unbounded = -1
					}
				}
				if w.leadUp > 0 && unbounded < 0 {
					rest := span{sum.lo - t.lead.lo, sum.hi - t.lead.hi}
					if m := t.lead.meet(got.minus(rest)); m != t.lead {
						if m.lo > m.hi+slack {
							return false
						}
						t.lead, changed = m, true
					}
				}
			}
		}
		if !changed {
			break
		}
	}
	for k := 1; k < t.n; k++ {
		if t.edge[k].hi <= 0 {
			return false
		}
	}
	return true
}

// leadOf gives the bounds of one lead resistance in every pair: where node k
// lies between i and j, the two parts hold it twice and the whole once.
func (w *net) leadOf(t *tree) span {
	s := span{0, w.leadUp}
	if w.leadUp == 0 {
		return s
	}
	for i := range t.n {
		for j := i + 1; j < t.n; j++ {
			if !w.known[i][j] {
				continue
			}
			at, seen := i, false
			t.path(i, j, func(e int) {
				for _, k := range [2]int{e, int(t.parent[e])} {
					if k != i && k != j && k != at && w.known[i][k] && w.known[k][j] {
						s, seen = s.meet(w.r[i][k].plus(w.r[k][j]).minus(w.r[i][j])), true
						at = k
					}
				}
			})
			if seen && s.empty() {
				return s
			}
		}
	}
	return s
}

// legs narrows the windings that meet at the joint, node 1: for leads i, j and
// k on three of them, i to the joint is half of ij + ik − jk.
func (w *net) legs(t *tree) bool {
	at := t.neighbours(1)
	if len(at) < 3 {
		return true
	}
	for a, i := range at {
		for b, j := range at {
			for c, k := range at {
				if a == b || a == c || b >= c || !w.known[i][j] || !w.known[i][k] || !w.known[j][k] {
					continue
				}
				s := w.r[i][j].plus(w.r[i][k]).minus(w.r[j][k])
				leg := &t.edge[i]
				if int(t.parent[1]) == i {
					leg = &t.edge[1]
				}
				*leg = leg.meet(span{s.lo / 2, s.hi / 2})
				if leg.empty() {
					return false
				}
			}
		}
	}
	return true
}

func (t *tree) resum(on []int) span {
	s := t.lead
	for _, e := range on {
		s = s.plus(t.edge[e])
	}
	return s
}

// search collects the trees of all nodes that fit.
func (w *net) search() {
	w.tries, w.found, w.full = 0, nil, false
	w.grow(tree{n: 1})
}

// grow puts the next node into t in every way that fits. Node x is joined to
// a node p and takes over any part of p's neighbours: none makes x the far end
// of a winding, one makes it a tap, more make it a branching point. Every
// labelled tree arises so, whatever the order of the nodes.
func (w *net) grow(t tree) {
	if w.tries > maxTries || len(w.found) >= maxTrees {
		w.full = true
		return
	}
	if t.n == w.n {
		if w.joint && t.degree(1) < 3 {
			return
		}
		w.found = append(w.found, t)
		return
	}
	x := t.n
	var next []tree
	for p := range x {
		kids := t.children(p)
		for set := range 1 << len(kids) {
			low := t
			low.n, low.parent[x] = x+1, int8(p)
			for b, k := range kids {
				if set>>b&1 == 1 {
					low.parent[k] = int8(x)
				}
			}
			next = w.keep(next, low)
			if p == 0 {
				continue
			}
			high := low // x also takes p's parent
			high.parent[x], high.parent[p] = t.parent[p], int8(x)
			next = w.keep(next, high)
		}
	}
	for _, u := range next {
		w.grow(u)
	}
}

// keep adds u when it is new and fits.
func (w *net) keep(have []tree, u tree) []tree {
	for i := range have {
		if have[i].parent == u.parent {
			return have
		}
	}
	if w.tries > maxTries {
		w.full = true
		return have
	}
	if w.fits(&u) {
		have = append(have, u)
	}
	return have
}

func (t *tree) children(p int) []int {
	var out []int
	for k := 1; k < t.n; k++ {
		if int(t.parent[k]) == p {
			out = append(out, k)
		}
	}
	return out
}

// value turns bounds into a value with its middle as nominal, the lower bound
// when there is no upper one.
func (s span) value() measure.Value {
	if math.IsInf(s.hi, 1) {
		return measure.Value{X: s.lo, Lo: s.lo, Hi: s.hi}
	}
	return measure.Value{X: (s.lo + s.hi) / 2, Lo: s.lo, Hi: s.hi}
}
