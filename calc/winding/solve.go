package winding

import (
	"math"
	"slices"
	"sort"
	"strconv"

	"ohmcall/calc/caution"
)

// solve finds the networks that explain the group's readings.
func (p *part) solve() {
	if len(p.g.nodes) >= maxNodes {
		p.out.State = Incomplete
		p.out.note("More than " + strconv.Itoa(maxNodes-1) + " leads on one network: read them in smaller groups.")
		return
	}
	p.nodes = p.t.order(p.g.nodes)
	// Until the probes' own resistance is known, a network counts as the only
	// one only if no other fits with leads of any usual resistance either.
	p.load(p.in.leads())
	p.net.search()
	switch n := len(p.net.found); {
	case n > 0 && !p.net.full && p.complete() && p.leaks(p.net.found):
	case n == 1 && !p.net.full:
		p.only(p.net.found[0])
	case n > 0:
		p.several()
	default:
		p.none()
	}
}

// without reports whether t fits with no lead resistance, and narrows it so.
func (p *part) without(t *tree) bool {
	zero := *p.net
	zero.leadUp = 0
	plain := *t
	if !zero.fits(&plain) {
		return false
	}
	*t = plain
	return true
}

// only reports the only network that fits.
func (p *part) only(t tree) {
	if plain := t; p.without(&plain) {
		p.out.fact(FactSound)
		p.settle(t, p.edges(plain), "Windings in series")
		return
	}
	lead := math.Round(p.net.leadOf(&t).value().X*100) / 100
	s := strconv.FormatFloat(lead, 'g', -1, 64)
	p.out.State = DoesNotAddUp
	p.out.fact(FactDoNotAddUp)
	p.settle(t, p.edges(t), "The readings add up only with "+s+" Ω of probe leads in every pair")
	p.out.note("Short the probes, read them, enter `probes " + s + "` and see it add up.")
	p.out.Gap = &Gap{Ohms: lead, Beyond: true, Lead: lead}
}

// leakRatio is how many times a piece between windings may exceed all others
// before it is doubted (common practice: windings of one motor are of one
// order of magnitude).
const leakRatio = 10

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
//
//go:noinline
func (p *part) name(k int) string {
	if p.nodes[k] == nil {
		return "joint"
	}
	return p.title(p.nodes[k])
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
		w := Winding{From: from, To: to, Name: "winding", Value: t.edge[k].value(), computed: true}
		if p.net.known[k][q] {
			w.Value, w.computed = p.value(p.nodes[k], p.nodes[q]), false
		}
		out = append(out, w)
	}
	sort.Slice(out, func(i, j int) bool {
		return out[i].From < out[j].From || out[i].From == out[j].From && out[i].To < out[j].To
	})
	return out
}

func sketch(ws []Winding) string {
	var out []string
	for _, w := range ws {
		out = append(out, w.From+"–"+w.To+" "+w.says())
	}
	return list(out, "and")
}

// says is the ohms of a winding in words.
func (w Winding) says() string {
	switch {
	case math.IsInf(w.Value.Hi, 1):
		return "not known"
	case w.computed:
		return "about " + rounded(w.Value.X)
	}
	return reads(w.Value)
}

// leak reports a network in which one piece between windings is far above all
// windings: isolated windings with a path between them read so.
func (p *part) leak(t tree) (from, to int, found bool) {
	for k := 1; k < t.n; k++ {
		q := int(t.parent[k])
		if t.degree(k) < 2 || t.degree(q) < 2 {
			continue
		}
		highest := 0.0
		for e := 1; e < t.n; e++ {
			if e != k {
				highest = max(highest, t.edge[e].hi)
			}
		}
		if t.edge[k].lo > leakRatio*highest {
			return q, k, true
		}
	}
	return 0, 0, false
}

// leaks doubts the networks when each of them holds a leak.
func (p *part) leaks(trees []tree) bool {
	for _, t := range trees {
		if _, _, found := p.leak(t); !found {
			return false
		}
	}
	q, k, _ := p.leak(trees[0])
	p.out.State = DoesNotAddUp
	p.out.fact(FactDoNotAddUp)
	p.out.Windings = append(p.edges(trees[0]), p.out.Windings...)
	p.out.note("Not sound: "+p.t.pair(p.lead(p.nodes[q]), p.lead(p.nodes[k])).String()+" reads "+
		rounded(trees[0].winding(q, k).value().X)+", far above the windings it joins.",
		"Isolated windings with a path between them read so: "+sketch(p.edges(trees[0]))+".")
	return true
}

// settle reports the only network that fits and names its leads.
func (p *part) settle(t tree, ws []Winding, how string) {
	p.out.note(how + ": " + sketch(ws) + ".")
	if len(ws) < 3 || !p.star(t) || !p.alike(ws) {
		p.name2roles(t, ws)
	}
	p.out.Windings = append(ws, p.out.Windings...)
}

// none looks for an explanation when no series network of the leads fits: a
// joint that is not brought out.
func (p *part) none() {
	p.out.State = DoesNotAddUp
	p.out.fact(FactDoNotAddUp)
	if n := len(p.nodes); n <= 6 {
		p.nodes = slices.Insert(p.nodes, 1, nil)
		p.load(0)
		p.net.joint = true
		p.net.search()
		if len(p.net.found) == 1 && !p.net.full && p.complete() {
			p.out.State, p.out.Facts = Sound, []string{FactSound}
			ws := p.edges(p.net.found[0])
			p.out.note("Windings meet at a joint that is not brought out: " + sketch(ws) + ".")
			p.out.Windings = append(ws, p.out.Windings...)
			if !p.alike(ws) {
				p.out.note("No roles from this alone: look for markings or the diagram.")
			}
			return
		}
	}
	p.out.note("No network of windings in series explains the readings of "+list(p.names(p.g.pins()), "and")+".",
		"Read them again; a bad contact, shorted turns or a part still connected in parallel would do this.")
}

// star reports whether all windings meet at one lead.
func (p *part) star(t tree) bool {
	for k := range t.n {
		if t.degree(k) == t.n-1 {
			return true
		}
	}
	return false
}

// alike reports equal windings around one point and warns of them.
func (p *part) alike(ws []Winding) bool {
	lo, hi := ws[0].Value.Lo, ws[0].Value.Hi
	for _, w := range ws[1:] {
		lo, hi = max(lo, w.Value.Lo), min(hi, w.Value.Hi)
	}
	if lo > hi {
		return false
	}
	p.out.State, p.out.Facts = EqualWindings, []string{FactEqual}
	p.out.Notes = append([]string{"Equal windings around one point: three-phase or inverter-driven. No common, start or run."}, p.out.Notes...)
	p.out.note("Never connect mains or a start kit to it: its drive or its three phases run it.")
	p.out.caution(caution.InverterLine)
	return true
}
