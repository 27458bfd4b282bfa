package winding

import (
	"cmp"
	"math"
	"slices"
	"sort"
	"strconv"
	"strings"
)

// mostTold is how many candidates are told in full; the record of a call holds
// no more than can be read at a glance.
const mostTold = 3

// several reports networks that fit equally well, in words, and the reading
// that parts them best: the unread pair after which the fewest are left
// whatever it reads, or a pair to be read again.
func (p *part) several() {
	trees := p.net.found
	p.out.State = TooClose
	unread := !p.complete()
	sofar := ""
	if unread {
		p.out.State, sofar = Incomplete, " so far"
	}
	many := strconv.Itoa(len(trees))
	if p.net.full {
		many += " or more"
	}
	p.out.note("The windings can be connected in " + many + " ways by the readings" + sofar + ".")
	plain := 0
	for i := range trees {
		if t := trees[i]; p.without(&t) {
			plain++
		}
	}
	if plain == 1 && !p.net.full && !unread {
		p.out.note("Without probe leads only one fits: short the probes, read them and enter `probes`.")
	}
	best := p.parting(trees, unread)
	if len(best) > 0 {
		trees = spread(trees, best[0])
	}
	for k, t := range trees {
		p.out.Candidates = append(p.out.Candidates, p.edges(t))
		if k < mostTold {
			p.out.note("Possible: " + p.describe(t) + ".")
		}
	}
	if len(best) == 0 {
		return
	}
	for _, c := range best {
		if unread {
			p.out.Wanted = append(p.out.Wanted, c.pair)
		}
	}
	again := ""
	if !unread {
		again = " again on a finer range"
	}
	p.out.note(best[0].pair.String() + " tells most: read it" + again + p.outcomes(trees, best[0]) + ".")
}

// choice is a pair of nodes by what reading it is worth: how many candidates
// may be left after it, and how far apart their values for it lie.
type choice struct {
	a, b int
	pair Pair
	left int
	wide float64
}

// spread puts first a candidate for each value that the pair may have.
func spread(trees []tree, c choice) []tree {
	first, rest := make([]tree, 0, len(trees)), make([]tree, 0, len(trees))
next:
	for _, t := range trees {
		s := t.between(c.a, c.b)
		for i := range first {
			if !first[i].between(c.a, c.b).meet(s).empty() {
				rest = append(rest, t)
				continue next
			}
		}
		first = append(first, t)
	}
	return append(first, rest...)
}

// parting ranks the pairs, the one that parts the candidates best first.
func (p *part) parting(trees []tree, unread bool) []choice {
	var best []choice
	for a := range p.nodes {
		for b := a + 1; b < len(p.nodes); b++ {
			if unread && p.net.known[a][b] {
				continue
			}
			lo, hi, left := math.Inf(1), math.Inf(-1), 0
			for i := range trees {
				s, alike := trees[i].between(a, b), 0
				for j := range trees {
					if !s.meet(trees[j].between(a, b)).empty() {
						alike++
					}
				}
				left = max(left, alike)
				if !p.net.known[a][b] {
					lo, hi = min(lo, s.lo), max(hi, s.hi)
					continue
				}
				x := (s.lo + s.hi) / 2
				lo, hi = min(lo, x), max(hi, x)
			}
			best = append(best, choice{a, b, p.t.pair(p.lead(p.nodes[a]), p.lead(p.nodes[b])), left, hi - lo})
		}
	}
	sort.SliceStable(best, func(i, k int) bool {
		x, y := &best[i], &best[k]
		return cmp.Or(cmp.Compare(x.left, y.left), cmp.Compare(y.wide, x.wide), cmp.Compare(x.pair.String(), y.pair.String())) < 0
	})
	return best
}

// outcomes says what the pair would read by each of the candidates told.
func (p *part) outcomes(trees []tree, c choice) string {
	if p.net.known[c.a][c.b] {
		return ""
	}
	var values []string
	by := map[string][]string{}
	for i := range trees[:min(len(trees), mostTold)] {
		s := trees[i].between(c.a, c.b)
		if math.IsInf(s.hi, 1) || math.IsInf(s.lo, -1) {
			continue
		}
		x := rounded(s.value().X)
		if by[x] == nil {
			values = append(values, x)
		}
		by[x] = append(by[x], ordinals[i])
	}
	if len(values) < 2 {
		return ""
	}
	for k, x := range values {
		values[k] = x + " by the " + list(by[x], "and")
	}
	return ", it would be about " + list(values, "or")
}

var ordinals = [mostTold]string{"first", "second", "third"}

// describe says how a network is connected: by the roles of its leads where
// only one usual arrangement fits, else along its chain or around its joint.
func (p *part) describe(t tree) string {
	ws := p.edges(t)
	shape := ""
	switch {
	case p.star(t) && t.n > 2 && len(p.pathOf(t)) == 0:
		shape = p.around(t, ws)
	case len(p.pathOf(t)) > 0:
		shape = "one series " + strings.Join(p.series(t, ws), " – ")
	default:
		shape = sketch(ws)
	}
	if fits := p.patterns(t); len(fits) == 1 {
		return shape + "; then " + fits[0].text
	}
	return shape
}

// pathOf gives the nodes of a network that is one series, end to end, the end
// that comes first by name first; nil when it branches.
func (p *part) pathOf(t tree) []int {
	ends := []int{}
	for k := range t.n {
		switch t.degree(k) {
		case 1:
			ends = append(ends, k)
		case 2:
		default:
			return nil
		}
	}
	if len(ends) != 2 {
		return nil
	}
	if p.name(ends[1]) < p.name(ends[0]) {
		slices.Reverse(ends)
	}
	return p.chain(t, ends[0], ends[1])
}

// series writes a chain as its leads with the ohms between them.
func (p *part) series(t tree, ws []Winding) []string {
	path := p.pathOf(t)
	out := []string{p.name(path[0])}
	for i := 1; i < len(path); i++ {
		out = append(out, p.between(ws, path[i-1], path[i]), p.name(path[i]))
	}
	return out
}

// around writes windings that meet at one lead.
func (p *part) around(t tree, ws []Winding) string {
	for k := range t.n {
		if t.degree(k) != t.n-1 {
			continue
		}
		var arms []string
		for j := range t.n {
			if j != k {
				arms = append(arms, p.name(j)+" ("+p.between(ws, k, j)+")")
			}
		}
		slices.Sort(arms)
		return "all joined at " + p.name(k) + ": " + list(arms, "and")
	}
	return sketch(ws)
}

// between is the ohms of the winding between two nodes in words.
func (p *part) between(ws []Winding, a, b int) string {
	from, to := p.name(a), p.name(b)
	for _, w := range ws {
		if w.From == from && w.To == to || w.From == to && w.To == from {
			return w.says()
		}
	}
	return "not known"
}
