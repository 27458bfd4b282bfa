package winding

import (
	"maps"
	"math"
	"slices"
	"sort"
)

// speedNames are the roles of the taps of a motor by the number of speeds.
var speedNames = [...][]Role{
	1: {Run},
	2: {High, Low},
	3: {High, Medium, Low},
	4: {High, MediumHigh, MediumLow, Low},
	5: {High, MediumHigh, Medium, MediumLow, Low},
}

// pattern is one way to name the nodes of a tree as a motor with taps.
type pattern struct {
	roles map[int]Role // by node in search order
	text  string
}

// protectorUpTo is the most, in ohms, that a protector brought out by itself
// is taken to read, probe leads included (common practice).
const protectorUpTo = 1

// patterns lists the ways to name t as a tapped motor: a main winding from
// common to the high tap, further turns in series to each lower tap, and, when
// there is one, a start winding at common, at high or at low; one more lead
// may be that of a protector, at common.
//
// What it takes for granted (common practice): each tap's turns read below the
// main winding; the start winding reads above it; a motor without a start lead
// has at most three speeds, and its taps read below half of its main winding.
func (p *part) patterns(t tree) []pattern {
	out := p.tapped(nil, t, -1)
	for k := range t.n {
		if at := t.neighbours(k); len(at) == 1 && t.n > 3 && t.winding(k, at[0]).lo <= protectorUpTo {
			out = p.tapped(out, t, k)
		}
	}
	return out
}

// tapped adds the patterns in which the lead at node prot is the protector's;
// none is when prot is negative.
func (p *part) tapped(out []pattern, t tree, prot int) []pattern {
	n := t.n
	if prot >= 0 {
		n--
	}
	for c := range t.n {
		if c == prot || prot >= 0 && t.neighbours(prot)[0] != c {
			continue
		}
		for low := range t.n {
			if c == low || low == prot {
				continue
			}
			chain := p.chain(t, c, low)
			switch n - len(chain) {
			case 0:
				if n <= 4 && n > 2 && !p.in.StartLead {
					out = p.named(out, t, chain, -1, prot)
				}
			case 1:
				for s := range t.n {
					if s != prot && !slices.Contains(chain, s) {
						out = p.named(out, t, chain, s, prot)
					}
				}
			}
		}
	}
	return out
}

// chain lists the nodes from a to b.
func (p *part) chain(t tree, a, b int) []int {
	on := []int{a}
	var walk func(at, from int) bool
	walk = func(at, from int) bool {
		if at == b {
			return true
		}
		for _, k := range t.neighbours(at) {
			if k == from {
				continue
			}
			on = append(on, k)
			if walk(k, at) {
				return true
			}
			on = on[:len(on)-1]
		}
		return false
	}
	walk(a, -1)
	return on
}

// named adds the pattern with the taps along chain, the start lead s and the
// protector's lead, none where negative, unless readings or markings rule it
// out.
func (p *part) named(out []pattern, t tree, chain []int, s, prot int) []pattern {
	taps := chain[1:]
	if len(taps) == 0 || len(taps) >= len(speedNames) {
		return out
	}
	names := speedNames[len(taps)]
	main := t.winding(chain[0], taps[0])
	part := 1.0
	if s < 0 {
		part = 2
	}
	for k := 1; k < len(taps); k++ {
		if t.winding(taps[k-1], taps[k]).lo*part > main.hi {
			return out
		}
	}
	roles := map[int]Role{chain[0]: Common}
	for k, n := range taps {
		roles[n] = names[k]
	}
	where := ""
	if s >= 0 {
		at := t.neighbours(s)[0]
		switch {
		case at == chain[0]:
			where = "start at common"
		case len(taps) > 1 && at == taps[0]:
			where = "start at the high tap"
		case len(taps) > 1 && at == taps[len(taps)-1]:
			where = "start at the low tap"
		default:
			return out
		}
		if len(t.neighbours(s)) != 1 || t.winding(s, at).hi < main.lo {
			return out
		}
		roles[s] = Start
	} else {
		where = "no start lead"
	}
	if prot >= 0 {
		roles[prot] = Protector
	}
	byPin := map[string]Role{}
	for n, role := range roles {
		if p.nodes[n] == nil {
			return out
		}
		pin := p.t.pins[p.lead(p.nodes[n])]
		m, marked := p.m.role[pin]
		speed := role != Common && role != Start && role != Protector
		if marked && m != role && !(m == Run && speed) {
			return out
		}
		byPin[pin] = role
	}
	return append(out, pattern{roles, named(byPin) + " (" + where + ")"})
}

// name2roles names the leads of the only network by the patterns that fit.
func (p *part) name2roles(t tree, ws []Winding) {
	fits := p.patterns(t)
	if p.tooLow(fits) {
		return
	}
	if len(fits) == 0 {
		for _, i := range p.g.pins() {
			if role := p.m.role[p.t.pins[i]]; role != "" {
				p.out.Roles[p.t.pins[i]] = role
			}
		}
		if len(p.out.Roles) > 0 {
			p.out.Conflicts = append(p.out.Conflicts, "The markings fit no usual arrangement of common, taps and start; the markings hold.")
			p.out.note(p.out.Conflicts[len(p.out.Conflicts)-1])
		} else {
			p.out.note("It fits no usual arrangement of common, taps and start: look for markings or the diagram.")
		}
		p.out.Settled = len(p.out.Roles) == len(p.g.pins())
		return
	}
	shared := maps.Clone(fits[0].roles)
	for _, f := range fits[1:] {
		for n, role := range shared {
			if f.roles[n] != role {
				delete(shared, n)
			}
		}
	}
	p.out.Settled = len(fits) == 1
	if p.out.Settled {
		p.out.Notes = append([]string{"Tapped motor, by the readings: " + fits[0].text + "."}, p.out.Notes...)
		p.out.note("Roles inferred from the usual arrangement (common practice): start above main, taps below it.")
		for i := range ws {
			ws[i].Name = p.windingName(shared, ws[i])
		}
	} else {
		sort.Slice(fits, func(i, j int) bool { return fits[i].text < fits[j].text })
		p.out.note("The network is certain, the names are not:")
		for _, f := range fits[:min(len(fits), 4)] {
			p.out.note("Possible: " + f.text + ".")
		}
		p.out.note("A marking or the capacitor's wire tells which.")
	}
	for n, role := range shared {
		p.assign(p.nodes[n], role)
	}
	for _, i := range p.g.pins() {
		if role := p.m.role[p.t.pins[i]]; role != "" && p.out.Roles[p.t.pins[i]] == "" {
			p.out.Roles[p.t.pins[i]] = role
		}
	}
}

// tooLow reports leads that read near zero where no protector belongs: a tap
// too low for this range, a jumper or a short. No lead is named then but by its
// marking, for a tap may be hidden there.
func (p *part) tooLow(fits []pattern) bool {
	for k, node := range p.nodes {
		if len(node) < 2 || !slices.ContainsFunc(fits, func(f pattern) bool { return f.roles[k] != Common }) {
			continue
		}
		far := math.Inf(1)
		for _, w := range p.net.r[k][:p.net.n] {
			if w.hi > 0 {
				far = min(far, w.lo)
			}
		}
		near := 0.0
		for _, i := range node {
			for _, j := range node {
				if i != j && p.t.finite(i, j) {
					near = max(near, p.t.v(i, j).Hi)
				}
			}
		}
		p.out.Facts = nil
		if near*plainlyZero < far {
			p.out.State = Shorted
			p.out.fact(FactShorted)
			p.out.note("Between " + list(p.names(node), "and") + " a tap is shorted, unless the diagram shows a jumper there.")
		} else {
			p.out.State = TooClose
			p.out.note("Between " + list(p.names(node), "and") + " a tap may be too low for this range: read it on a finer one.")
		}
		for _, i := range p.g.pins() {
			if role := p.m.role[p.t.pins[i]]; role != "" {
				p.out.Roles[p.t.pins[i]] = role
			}
		}
		return true
	}
	return false
}

// windingName names a winding by the roles of its ends.
func (p *part) windingName(roles map[int]Role, w Winding) string {
	end := map[string]Role{}
	for n, role := range roles {
		end[p.name(n)] = role
	}
	a, b := end[w.From], end[w.To]
	switch {
	case a == Protector || b == Protector:
		return string(Protector)
	case a == Start || b == Start:
		return string(Start)
	case a == Common || b == Common:
		return string(Main)
	}
	return "tap"
}
