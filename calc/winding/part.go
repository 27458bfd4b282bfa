package winding

import (
	"slices"
	"strings"

	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
)

// part is one group of leads at work: its nodes in the order of the search and
// the trees that fit.
type part struct {
	*network
	g     group
	nodes [][]int // in search order; nil for a joint that is not brought out
	net   *net
	out   Result
}

// judgeGroup judges the leads of one group by themselves.
func (x *network) judgeGroup(g group) Result {
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
				p.out.Windings = append(p.out.Windings,
					Winding{From: pair[0], To: pair[1], Name: "protector or jumper", Value: p.t.v(i, j)})
				p.out.note(p.t.says(i, j) + ": near zero, as a protector lead, a switch or a jumper reads; a short does too.")
				p.out.caution(caution.ProtectorStays)
			}
		}
	}
}

// lead is the pin that stands for a node: never the protector's own lead.
//
//go:noinline
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

// alone reports whether all pins of a node but its lead are marked.
func (p *part) alone(node []int) bool {
	for _, i := range node {
		if i != p.lead(node) && p.m.role[p.t.pins[i]] == "" {
			return false
		}
	}
	return true
}

// two judges a group of one winding.
func (p *part) two() {
	a, b := p.lead(p.g.nodes[0]), p.lead(p.g.nodes[1])
	v := p.value(p.g.nodes[0], p.g.nodes[1])
	p.out.Windings = append(p.out.Windings, Winding{From: p.title(p.g.nodes[0]), To: p.title(p.g.nodes[1]), Name: "winding", Value: v})
	p.out.note("One winding: " + p.t.pair(a, b).String() + " " + reads(v) + ".")
	p.out.fact(FactSound)
	for _, i := range p.g.pins() {
		if role := p.m.role[p.t.pins[i]]; role != "" {
			p.out.Roles[p.t.pins[i]] = role
		}
	}
	p.out.Settled = len(p.out.Roles) == len(p.g.pins())
}

// value is the reading between the leads of two nodes, or else between any of
// their pins.
func (p *part) value(a, b []int) measure.Value {
	if i, j := p.lead(a), p.lead(b); p.t.finite(i, j) {
		return p.t.v(i, j)
	}
	for _, i := range a {
		for _, j := range b {
			if p.t.finite(i, j) {
				return p.t.v(i, j)
			}
		}
	}
	return measure.Value{Over: true}
}

// title names a node: its lead, or all its pins when which of them is the lead
// is not certain.
func (p *part) title(node []int) string {
	if p.sure(node) {
		return p.t.pins[p.lead(node)]
	}
	return strings.Join(p.names(node), "/")
}

// three hands a group of three points to the engine for three pins.
func (p *part) three() {
	sub := &table{at: make([]cell, 9), known: 3}
	m := marks{role: map[string]Role{}}
	for _, node := range p.g.nodes {
		pin := p.t.pins[p.lead(node)]
		sub.pins = append(sub.pins, p.title(node))
		if role, ok := p.m.role[pin]; ok && role != Protector {
			m.role[p.title(node)] = role
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
	p.out.Disputed = r.Disputed
	p.out.Windings = append(r.Windings, p.out.Windings...)
	p.out.Notes = append(r.Notes, p.out.Notes...)
	p.out.fact(r.Facts...)
	p.out.caution(r.Cautions...)
	if p.in.Kind == Fan && slices.ContainsFunc(p.g.nodes, func(node []int) bool { return !p.alone(node) }) {
		p.out.Settled = false // a tap may hide in the leads that read as one
		r.Roles = m.role
		p.out.Notes = append([]string{"Leads of a fan that read as one may be taps too low for this range: read on a finer one."}, p.out.Notes...)
	}
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
