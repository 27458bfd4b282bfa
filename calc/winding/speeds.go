package winding

import (
	"maps"
	"sort"
)

// speedNames are the roles of the taps of a motor by the number of speeds.
var speedNames = map[int][]Role{
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

// patterns lists the ways to name t as a tapped motor: a main winding from
// common to the high tap, further turns in series to each lower tap, and, when
// there is one, a start winding at common, at high or at low.
//
// What it takes for granted (common practice): each tap's turns read below the
// main winding; the start winding reads above it; a motor without a start lead
// has at most three speeds, and its taps read below half of its main winding.
func (p *part) patterns(t tree) []pattern {
	var out []pattern
	for c := range t.n {
		for low := range t.n {
			if c == low {
				continue
			}
			chain := p.chain(t, c, low)
			switch t.n - len(chain) {
			case 0:
				if t.n <= 4 && !p.in.StartLead {
					out = p.named(out, t, chain, -1)
				}
			case 1:
				for s := range t.n {
					if !contains(chain, s) {
						out = p.named(out, t, chain, s)
					}
				}
			}
		}
	}
	return out
}

func contains(chain []int, n int) bool {
	for _, k := range chain {
		if k == n {
			return true
		}
	}
	return false
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

// named adds the pattern with the taps along chain and the start lead s, or
// none when s is negative, unless readings or markings rule it out.
func (p *part) named(out []pattern, t tree, chain []int, s int) []pattern {
	taps := chain[1:]
	names, ok := speedNames[len(taps)]
	if !ok {
		return out
	}
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
		switch at {
		case chain[0]:
			where = "start at common"
		case taps[0]:
			where = "start at the high tap"
		case taps[len(taps)-1]:
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
	byPin := map[string]Role{}
	for n, role := range roles {
		if p.nodes[n] == nil {
			return out
		}
		pin := p.t.pins[p.lead(p.nodes[n])]
		m, marked := p.m.role[pin]
		speed := role != Common && role != Start
		if marked && m != role && !(m == Run && speed) && m != Protector {
			return out
		}
		byPin[pin] = role
	}
	return append(out, pattern{roles, named(byPin) + " (" + where + ")"})
}

// name2roles names the leads of the only network by the patterns that fit.
func (p *part) name2roles(t tree, ws []Winding) {
	fits := p.patterns(t)
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
		p.out.Notes = append([]string{"Tapped motor: " + fits[0].text + "."}, p.out.Notes...)
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

// windingName names a winding by the roles of its ends.
func (p *part) windingName(roles map[int]Role, w Winding) string {
	end := map[string]Role{}
	for n, role := range roles {
		end[p.name(n)] = role
	}
	a, b := end[w.From], end[w.To]
	switch {
	case a == Start || b == Start:
		return string(Start)
	case a == Common || b == Common:
		return string(Main)
	}
	return "tap"
}
