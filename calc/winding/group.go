package winding

import "slices"

// group is a set of leads that read through to each other.
type group struct {
	nodes [][]int // pins by index; pins of one node read near zero to each other
}

// pins lists all leads of the group.
func (g group) pins() []int {
	out := slices.Concat(g.nodes...)
	slices.Sort(out)
	return out
}

// components joins pins by the finite readings that use approves.
func (t *table) components(use func(i, j int) bool) []int {
	id := make([]int, len(t.pins))
	for i := range id {
		id[i] = i
	}
	for i := range t.pins {
		for j := i + 1; j < len(t.pins); j++ {
			if t.finite(i, j) && id[i] != id[j] && use(i, j) {
				from, to := max(id[i], id[j]), min(id[i], id[j])
				for k := range id {
					if id[k] == from {
						id[k] = to
					}
				}
			}
		}
	}
	return id
}

// clashes lists the pairs that read open although other readings join them.
func (t *table) clashes(id []int) [][2]int {
	var out [][2]int
	for i := range t.pins {
		for j := i + 1; j < len(t.pins); j++ {
			if c := t.cell(i, j); c.known && c.v.Over && id[i] == id[j] {
				out = append(out, [2]int{i, j})
			}
		}
	}
	return out
}

// crossings lists the finite readings each of which, left out, would leave no
// clash: a path between windings that otherwise read isolated.
func (t *table) crossings() []string {
	var out []string
	for i := range t.pins {
		for j := i + 1; j < len(t.pins); j++ {
			if !t.finite(i, j) {
				continue
			}
			id := t.components(func(a, b int) bool { return a != i || b != j })
			if len(t.clashes(id)) == 0 {
				out = append(out, t.says(i, j))
			}
		}
	}
	return out
}

// groups splits the pins by component, smallest pin first, and joins within
// each the pins that read near zero.
func (t *table) groups(id []int) []group {
	var out []group
	at := map[int]int{}
	for i, c := range id {
		k, ok := at[c]
		if !ok {
			k = len(out)
			at[c] = k
			out = append(out, group{})
		}
		g := &out[k]
		joined := false
		for n, node := range g.nodes {
			if slices.ContainsFunc(node, func(j int) bool { return t.nearZero(j, i) }) {
				g.nodes[n], joined = append(node, i), true
				break
			}
		}
		if !joined {
			g.nodes = append(g.nodes, []int{i})
		}
	}
	return out
}

// plainlyZero is how many times a reading lies below all others when it is
// near zero on any meter (common practice).
const plainlyZero = 50

// nearZero reports whether i and j are one point as far as ohms go: a reading
// that the meter cannot tell from zero and that is far below every other at
// either pin, or one that is plainlyZero times below, while both pins read alike to
// all others.
func (t *table) nearZero(i, j int) bool {
	if !t.finite(i, j) {
		return false
	}
	v := t.v(i, j)
	ratio := float64(plainlyZero)
	if v.Lo <= 0 {
		ratio = shortRatio
	}
	for k := range t.pins {
		if k == i || k == j {
			continue
		}
		if t.finite(i, k) && t.finite(j, k) {
			a, b := t.v(i, k), t.v(j, k)
			if a.Lo-b.Hi > v.Hi || b.Lo-a.Hi > v.Hi {
				return false
			}
		}
		for _, p := range [2]int{i, j} {
			if v.X > 0 && t.finite(p, k) && t.v(p, k).X > 0 && v.Hi*ratio > t.v(p, k).Hi && !t.chained(i, j, k) {
				return false
			}
		}
	}
	return v.X <= 0 || v.Lo <= 0 || v.X <= leadsUpTo
}

// chained reports whether k too reads too low at i and j to judge by: three
// leads on one point.
func (t *table) chained(i, j, k int) bool {
	return t.finite(i, k) && t.finite(j, k) && t.v(i, k).Lo <= 0 && t.v(j, k).Lo <= 0
}

// span gives the bounds between two nodes: what all readings between their
// pins allow, or what the first of them allows when they disagree.
func (t *table) span(a, b []int) (span, bool) {
	s, known := anything, false
	for _, i := range a {
		for _, j := range b {
			if !t.finite(i, j) {
				continue
			}
			r := span{t.v(i, j).Lo, t.v(i, j).Hi}
			if m := s.meet(r); !m.empty() {
				s = m
			}
			known = true
		}
	}
	return s, known
}

// order sorts the nodes so that each is the nearest to those before it, as far
// as readings tell; that keeps the search for trees short.
func (t *table) order(nodes [][]int) [][]int {
	out := slices.Clone(nodes)
	for k := 1; k < len(out); k++ {
		best, at := 0.0, -1
		for i := k; i < len(out); i++ {
			for j := range k {
				s, ok := t.span(out[i], out[j])
				if d := s.lo + s.hi; ok && (at < 0 || d < best) {
					best, at = d, i
				}
			}
		}
		if at > 0 {
			out[k], out[at] = out[at], out[k]
		}
	}
	return out
}
