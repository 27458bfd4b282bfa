package winding

import (
	"math"
	"slices"
	"sort"
	"strconv"

	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
)

// part is one group of leads at work: its nodes in the order of the search and
// the trees that fit.
type part struct {
	network
	g     group
	nodes [][]int // in search order; nil for a joint that is not brought out
	net   *net
	out   Result
}

// judgeGroup judges the leads of one group by themselves.
func (x network) judgeGroup(g group) Result {
	p := part{network: x, g: g, out: Result{Roles: map[string]Role{}, State: Sound}}
	p.nearZeros()
	switch n := len(g.nodes); {
	case n == 1:
		p.out.Settled = len(p.out.Roles) == len(g.pins())
	case n == 2:
		p.two()
	case n == 3 && p.complete():
		p.three()
	default:
		p.solve()
	}
	return p.out
}

// complete reports whether all pairs of nodes were read.
func (p *part) complete() bool {
	for a := range p.g.nodes {
		for b := a + 1; b < len(p.g.nodes); b++ {
			if _, ok := p.t.span(p.g.nodes[a], p.g.nodes[b]); !ok {
				return false
			}
		}
	}
	return true
}

// nearZeros reports the leads that are one point as far as ohms go.
func (p *part) nearZeros() {
	for _, node := range p.g.nodes {
		for k, i := range node {
			if p.m.role[p.t.pins[i]] == Protector {
				p.out.Roles[p.t.pins[i]] = Protector
			}
			for _, j := range node[k+1:] {
				if !p.t.finite(i, j) {
					continue
				}
				pair := p.t.pair(i, j)
				p.out.Windings = append(p.out.Windings, Winding{pair[0], pair[1], "protector or jumper", p.t.v(i, j)})
				p.out.note(p.t.says(i, j) + ": near zero, as a protector lead, a switch or a jumper reads; a short does too.")
				p.out.caution(caution.ProtectorStays)
			}
		}
	}
}

// lead is the pin that stands for a node: never the protector's own lead.
func (p *part) lead(node []int) int {
	for _, i := range node {
		if r := p.m.role[p.t.pins[i]]; r != "" && r != Protector {
			return i
		}
	}
	for _, i := range node {
		if p.m.role[p.t.pins[i]] != Protector {
			return i
		}
	}
	return node[0]
}

// sure reports whether the lead of a node is certain: it stands alone, it is
// marked, or all others of the node are.
func (p *part) sure(node []int) bool {
	open := 0
	for _, i := range node {
		switch p.m.role[p.t.pins[i]] {
		case Protector:
		case "":
			open++
		default:
			return true
		}
	}
	return open <= 1
}

// two judges a group of one winding.
func (p *part) two() {
	a, b := p.lead(p.g.nodes[0]), p.lead(p.g.nodes[1])
	v := p.value(p.g.nodes[0], p.g.nodes[1])
	p.out.Windings = append(p.out.Windings, Winding{p.t.pins[a], p.t.pins[b], "winding", v})
	p.out.note("One winding: " + p.t.pair(a, b).String() + " " + reads(v) + ".")
	p.out.fact(FactSound)
	for _, i := range p.g.pins() {
		if role := p.m.role[p.t.pins[i]]; role != "" {
			p.out.Roles[p.t.pins[i]] = role
		}
	}
	p.out.Settled = len(p.out.Roles) == len(p.g.pins())
}

// value is the reading between two nodes: the only one as it was read, several
// as the bounds that all of them leave.
func (p *part) value(a, b []int) measure.Value {
	var one measure.Value
	n := 0
	for _, i := range a {
		for _, j := range b {
			if p.t.finite(i, j) {
				one = p.t.v(i, j)
				n++
			}
		}
	}
	if n == 1 {
		return one
	}
	s, _ := p.t.span(a, b)
	return s.value()
}

// three hands a group of three points to the engine for three pins.
func (p *part) three() {
	sub := &table{at: make([]cell, 9), known: 3}
	m := marks{role: map[string]Role{}}
	for _, node := range p.g.nodes {
		pin := p.t.pins[p.lead(node)]
		sub.pins = append(sub.pins, pin)
		if role, ok := p.m.role[pin]; ok && role != Protector {
			m.role[pin] = role
		}
	}
	for i := range 3 {
		for j := i + 1; j < 3; j++ {
			sub.set(i, j, cell{p.value(p.g.nodes[i], p.g.nodes[j]), true})
		}
	}
	r := Result{Roles: map[string]Role{}, State: Sound}
	in := p.in
	in.Leads = 0
	inferThree(sub, m, in, &r)
	p.out.State, p.out.Settled, p.out.Gap, p.out.Conflicts = r.State, r.Settled, r.Gap, r.Conflicts
	p.out.Windings = append(r.Windings, p.out.Windings...)
	p.out.Notes = append(r.Notes, p.out.Notes...)
	p.out.fact(r.Facts...)
	p.out.caution(r.Cautions...)
	for k, node := range p.g.nodes {
		if role, ok := r.Roles[sub.pins[k]]; ok {
			p.assign(node, role)
		}
	}
}

// assign gives a node its role; when it is not certain which of its pins is
// the winding's own lead, none gets it.
func (p *part) assign(node []int, role Role) {
	if p.sure(node) {
		p.out.Roles[p.t.pins[p.lead(node)]] = role
		if len(node) > 1 && p.m.role[p.t.pins[p.lead(node)]] != "" {
			p.out.Settled = p.out.Settled && p.allNamed(node)
		}
		return
	}
	p.out.Settled = false
	p.out.note(list(p.names(node), "and") + " are both at " + string(role) +
		": only a marking or the diagram parts the protector's lead from the winding's.")
}

func (p *part) allNamed(node []int) bool {
	for _, pin := range p.names(node) {
		if p.out.Roles[pin] == "" && p.m.role[pin] == "" {
			return false
		}
	}
	return true
}

// solve finds the networks that explain the group's readings.
func (p *part) solve() {
	if len(p.g.nodes) >= maxNodes {
		p.out.State = Incomplete
		p.out.note("More than " + strconv.Itoa(maxNodes-1) + " leads on one network: read them in smaller groups.")
		return
	}
	p.nodes = p.t.order(p.g.nodes)
	p.load(0)
	p.net.search()
	switch n := len(p.net.found); {
	case n == 1 && !p.net.full:
		p.out.fact(FactSound)
		p.settle(p.net.found[0], "Windings in series")
	case n > 0:
		p.several()
	default:
		p.none()
	}
}

// load puts the readings between nodes into the net.
func (p *part) load(leadUp float64) {
	p.net = &net{n: len(p.nodes), leadUp: leadUp}
	for a := range p.nodes {
		for b := range p.nodes {
			if a != b {
				p.net.r[a][b], p.net.known[a][b] = p.t.span(p.nodes[a], p.nodes[b])
			}
		}
	}
}

// name is the pin of a node in search order.
func (p *part) name(k int) string {
	if p.nodes[k] == nil {
		return "joint"
	}
	return p.t.pins[p.lead(p.nodes[k])]
}

// edges lists the windings of a tree, sorted by name.
func (p *part) edges(t tree) []Winding {
	var out []Winding
	for k := 1; k < t.n; k++ {
		q := int(t.parent[k])
		from, to := p.name(q), p.name(k)
		if from > to {
			from, to = to, from
		}
		v := t.edge[k].value()
		if p.net.known[k][q] {
			v = p.value(p.nodes[k], p.nodes[q])
		}
		out = append(out, Winding{from, to, "winding", v})
	}
	sort.Slice(out, func(i, j int) bool {
		return out[i].From < out[j].From || out[i].From == out[j].From && out[i].To < out[j].To
	})
	return out
}

func sketch(ws []Winding) string {
	var out []string
	for _, w := range ws {
		text := reads(w.Value)
		if w.Value.Entry == 0 && w.Value.Hi > w.Value.Lo {
			text = rounded(w.Value.X)
		}
		out = append(out, w.From+"–"+w.To+" "+text)
	}
	return list(out, "and")
}

// settle reports the only network that fits and names its leads.
func (p *part) settle(t tree, how string) {
	ws := p.edges(t)
	p.out.note(how + ": " + sketch(ws) + ".")
	p.name2roles(t, ws)
	p.out.Windings = append(ws, p.out.Windings...)
}

// several reports networks that fit equally well and the reading that parts
// them best: the unread pair for which they predict the most different values,
// or a pair to be read again.
func (p *part) several() {
	trees := p.net.found
	p.out.State = TooClose
	unread := !p.complete()
	if unread {
		p.out.State = Incomplete
	}
	many := strconv.Itoa(len(trees))
	if p.net.full {
		many += " or more"
	}
	p.out.note(many + " networks of windings fit the readings.")
	for k, t := range trees {
		p.out.Candidates = append(p.out.Candidates, p.edges(t))
		if k < 3 {
			p.out.note("Possible: " + sketch(p.out.Candidates[k]) + ".")
		}
	}
	type choice struct {
		pair  Pair
		worth float64
	}
	var best []choice
	for a := range p.nodes {
		for b := a + 1; b < len(p.nodes); b++ {
			if unread && p.net.known[a][b] {
				continue
			}
			lo, hi := math.Inf(1), math.Inf(-1)
			for i := range trees {
				s := trees[i].between(a, b)
				if !p.net.known[a][b] {
					lo, hi = min(lo, s.lo), max(hi, s.hi)
					continue
				}
				x := (s.lo + s.hi) / 2
				lo, hi = min(lo, x), max(hi, x)
			}
			best = append(best, choice{p.t.pair(p.lead(p.nodes[a]), p.lead(p.nodes[b])), hi - lo})
		}
	}
	sort.SliceStable(best, func(i, j int) bool {
		if best[i].worth != best[j].worth {
			return best[i].worth > best[j].worth
		}
		return best[i].pair.String() < best[j].pair.String()
	})
	for _, c := range best {
		if unread {
			p.out.Wanted = append(p.out.Wanted, c.pair)
		}
	}
	if len(best) > 0 {
		again := ""
		if !unread {
			again = " again on a finer range"
		}
		p.out.note(best[0].pair.String() + " parts them best: read it" + again + ".")
	}
}

// none looks for an explanation when no series network fits: one lead
// resistance in every pair, then a joint that is not brought out.
func (p *part) none() {
	p.out.State = DoesNotAddUp
	p.out.fact(FactDoNotAddUp)
	p.load(leadsUpTo)
	p.net.search()
	if len(p.net.found) == 1 && !p.net.full {
		t := p.net.found[0]
		lead := math.Round(t.lead.value().X*100) / 100
		s := strconv.FormatFloat(lead, 'g', -1, 64)
		p.settle(t, "The readings add up only with "+s+" Ω of probe leads in every pair")
		p.out.note("Short the probes, read them, enter `probes " + s + "` and see it add up.")
		p.out.Gap = &Gap{Ohms: lead, Beyond: true, Lead: lead}
		return
	}
	if n := len(p.nodes); n <= 6 {
		p.nodes = slices.Insert(p.nodes, 1, nil)
		p.load(0)
		p.net.joint = true
		p.net.search()
		if len(p.net.found) == 1 && !p.net.full && p.complete() {
			p.out.State, p.out.Facts = Sound, []string{FactSound}
			ws := p.edges(p.net.found[0])
			p.out.note("Windings meet at a joint that is not brought out: "+sketch(ws)+".",
				"No roles from this alone: look for markings or the diagram.")
			p.out.Windings = append(ws, p.out.Windings...)
			p.alike(ws)
			return
		}
	}
	p.out.note("No network of windings in series explains the readings of "+list(p.names(p.g.pins()), "and")+".",
		"Read them again; a bad contact, shorted turns or a part still connected in parallel would do this.")
}

// alike warns when all windings around a joint are equal.
func (p *part) alike(ws []Winding) {
	lo, hi := ws[0].Value.Lo, ws[0].Value.Hi
	for _, w := range ws[1:] {
		lo, hi = max(lo, w.Value.Lo), min(hi, w.Value.Hi)
	}
	if lo <= hi {
		p.out.State, p.out.Facts = EqualWindings, []string{FactEqual}
		p.out.note("All are equal, as in a three-phase or inverter-driven machine: no mains, no start kit.")
		p.out.caution(caution.InverterLine)
	}
}
