package winding

import (
	"maps"
	"slices"
	"strconv"

	"ohmcall/calc/caution"
)

// network reads four and more leads.
type network struct {
	t      *table
	m      marks
	in     Input
	res    *Result
	groups []group
}

func inferNetwork(t *table, m marks, in Input, res *Result) {
	x := network{t: t, m: m, in: in, res: res}
	res.Roles = maps.Clone(m.role)
	id := t.components(func(int, int) bool { return true })
	if clash := t.clashes(id); len(clash) > 0 {
		x.contradiction(clash)
		return
	}
	x.groups = t.groups(id)
	if x.apart(); len(res.Wanted) > 0 {
		res.note("Recorded: " + strconv.Itoa(t.known) + " of " + strconv.Itoa(len(t.pins)*(len(t.pins)-1)/2) + " pairs.")
		x.outline()
		x.want()
		return
	}
	var lone []string
	var whole []group
	for _, g := range x.groups {
		if len(g.pins()) == 1 {
			lone = append(lone, t.pins[g.pins()[0]])
		} else {
			whole = append(whole, g)
		}
	}
	x.groups = whole
	x.judge()
	x.lone(lone)
	if in.Leads > len(t.pins) {
		res.State, res.Settled = Incomplete, false
		res.Facts = nil
		res.note(strconv.Itoa(in.Leads) + " leads, of which " + strconv.Itoa(len(t.pins)) + " are read: read the others too.")
	}
	x.want()
}

// want says which reading comes next.
func (x network) want() {
	if len(x.res.Wanted) == 0 {
		return
	}
	p := x.res.Wanted[0].String()
	x.res.Next = "read " + p
	x.res.note("Wanted next: " + p + ".")
}

// apart asks for one pair between each two groups that no open reading parts.
func (x network) apart() {
	for a, g := range x.groups {
		for _, h := range x.groups[a+1:] {
			var first *Pair
			parted := false
			for _, i := range g.pins() {
				for _, j := range h.pins() {
					switch {
					case x.t.has(i, j):
						parted = true
					case first == nil:
						p := x.t.pair(i, j)
						first = &p
					}
				}
			}
			if !parted && first != nil {
				x.res.Wanted = append(x.res.Wanted, *first)
			}
		}
	}
}

// outline says which leads belong together so far.
func (x network) outline() {
	for _, g := range x.groups {
		if len(g.pins()) > 1 {
			x.res.note("Joined so far: " + list(x.names(g.pins()), "and") + ".")
		}
	}
}

func (x network) names(pins []int) []string {
	out := make([]string, len(pins))
	for k, i := range pins {
		out[k] = x.t.pins[i]
	}
	return out
}

// contradiction reports finite readings that reach across leads which
// otherwise read open to each other.
func (x network) contradiction(clash [][2]int) {
	t, res := x.t, x.res
	res.State = DoesNotAddUp
	res.fact(FactDoNotAddUp)
	var open []string
	for _, c := range clash {
		open = append(open, t.pair(c[0], c[1]).String())
	}
	if across := t.crossings(); len(across) > 0 {
		res.note("Not sound: "+list(across, "or")+" crosses between windings that otherwise read open.",
			"A path between isolated windings, or a slip: read it again with nothing else connected.")
	} else {
		res.note("Contradiction: readings through other leads join what reads open.")
	}
	res.note("Open, although joined by other readings: " + list(open, "and") + "; read those again too.")
	for _, c := range clash {
		res.Wanted = append(res.Wanted, t.pair(c[0], c[1]))
	}
	x.want()
}

// lone reports leads that read open to every other.
func (x network) lone(pins []string) {
	if len(pins) == 0 {
		return
	}
	res := x.res
	who := list(pins, "and")
	res.Settled = false
	res.Facts = slices.DeleteFunc(res.Facts, func(f string) bool { return f == FactSound })
	role := x.m.role[pins[0]]
	if len(pins) == 1 && role != "" && role != Common && role != Protector {
		res.State = OpenWinding
		res.fact(FactOpen)
		res.Notes = append([]string{"The " + string(role) + " winding is open: " + who + " reads open to every other lead."}, res.Notes...)
		return
	}
	res.State = OpenUnplaced
	res.fact(FactOpenUnplaced)
	res.caution(caution.ProtectorStays)
	res.Notes = append([]string{"Open to every other lead: " + who + ".",
		"A winding or its wire is open, a protector is open (let it cool below 49 °C), or it is no winding's lead."}, res.Notes...)
}

// judge judges every group and puts the answers together.
func (x network) judge() {
	res := x.res
	if x.isolatedPair() {
		return
	}
	res.State, res.Settled = Sound, true
	taken := map[Role]bool{}
	clash := false
	for k, g := range x.groups {
		part := x.judgeGroup(g)
		if len(x.groups) > 1 {
			res.note("Group " + strconv.Itoa(k+1) + ": " + list(x.names(g.pins()), "and") + ", isolated from the rest.")
		}
		res.Notes = append(res.Notes, part.Notes...)
		res.Windings = append(res.Windings, part.Windings...)
		res.Candidates = append(res.Candidates, part.Candidates...)
		res.Wanted = append(res.Wanted, part.Wanted...)
		res.Conflicts = append(res.Conflicts, part.Conflicts...)
		res.fact(part.Facts...)
		res.caution(part.Cautions...)
		if res.Gap == nil {
			res.Gap = part.Gap
		}
		res.Settled = res.Settled && part.Settled
		if worse(part.State, res.State) {
			res.State = part.State
		}
		for pin, role := range part.Roles {
			clash = clash || taken[role] && x.m.role[pin] == ""
			res.Roles[pin] = role
		}
		for _, role := range part.Roles {
			taken[role] = true
		}
	}
	if clash {
		res.Roles, res.Settled = maps.Clone(x.m.role), false
		res.note("More than one group could hold the same roles: look for markings or the wiring diagram.")
	}
	if res.State != Sound {
		res.Facts = slices.DeleteFunc(res.Facts, func(f string) bool { return f == FactSound })
	}
	x.splitMarks()
	res.Facts = slices.Compact(res.Facts)
}

// severity orders the states, the one to say first last.
var severity = []State{Sound, TooClose, Incomplete, EqualWindings, DoesNotAddUp, OpenUnplaced, OverloadOpen, OpenWinding, NotAWinding, Shorted, Grounded}

func worse(a, b State) bool { return slices.Index(severity, a) > slices.Index(severity, b) }

// splitMarks reports roles of one winding that lie in groups with no path
// between them.
func (x network) splitMarks() {
	common := -1
	for k, g := range x.groups {
		for _, pin := range x.names(g.pins()) {
			if x.m.role[pin] == Common {
				common = k
			}
		}
	}
	if common < 0 {
		return
	}
	var off []string
	for k, g := range x.groups {
		for _, pin := range x.names(g.pins()) {
			if role := x.m.role[pin]; k != common && role != "" && role != Main && role != Auxiliary && role != Protector {
				off = append(off, pin+" ("+string(role)+")")
			}
		}
	}
	if len(off) == 0 {
		return
	}
	res := x.res
	res.State = OpenWinding
	res.Facts = slices.DeleteFunc(res.Facts, func(f string) bool { return f == FactSound })
	res.fact(FactOpen)
	res.Notes = append([]string{"Open between common and " + list(off, "and") + ": a winding is open there."}, res.Notes...)
}

// isolatedPair answers for the motor with two isolated windings.
func (x network) isolatedPair() bool {
	t, res := x.t, x.res
	if len(x.groups) != 2 || len(x.groups[0].nodes) != 2 || len(x.groups[1].nodes) != 2 ||
		len(x.groups[0].pins()) != 2 || len(x.groups[1].pins()) != 2 {
		return false
	}
	for _, role := range x.m.role {
		if role != Main && role != Auxiliary {
			return false
		}
	}
	a, b := x.groups[0].pins(), x.groups[1].pins()
	va, vb := t.v(a[0], a[1]), t.v(b[0], b[1])
	res.State = Sound
	res.fact(FactSound)
	name := [2]string{"winding 1", "winding 2"}
	roles := [2]Role{Main, Auxiliary}
	known := true
	switch {
	case x.roleOf(a, b) != "":
		if x.roleOf(a, b) == Auxiliary {
			roles = [2]Role{Auxiliary, Main}
		}
		res.note("Two isolated windings, named by their marking.")
	case vb.Above(va):
		res.note("Two isolated windings: the lower reads like main, the higher like auxiliary (start).")
	case va.Above(vb):
		roles = [2]Role{Auxiliary, Main}
		res.note("Two isolated windings: the lower reads like main, the higher like auxiliary (start).")
	case x.in.EqualByDesign:
		known, res.Settled = false, true
		res.note("Two isolated windings alike, as a reversing motor has by design; not shorted.")
	default:
		known = false
		res.State = TooClose
		res.Facts = nil
		res.note("Two isolated windings too close to part main from auxiliary.",
			"A reversing motor has two alike by design; else use a finer range or find a marking.")
	}
	if known {
		res.Settled = true
		for k, g := range [2][]int{a, b} {
			name[k] = string(roles[k])
			for _, pin := range x.names(g) {
				res.Roles[pin] = roles[k]
			}
		}
	}
	res.note("Readings: "+t.says(a[0], a[1])+", "+t.says(b[0], b[1])+"; open between them.",
		"If the wiring diagram joins them inside, one winding is open instead.")
	res.Windings = []Winding{
		{t.pins[a[0]], t.pins[a[1]], name[0], va},
		{t.pins[b[0]], t.pins[b[1]], name[1], vb},
	}
	return true
}

// roleOf gives the role of group a by the markings on either group.
func (x network) roleOf(a, b []int) Role {
	for _, pin := range x.names(a) {
		if r := x.m.role[pin]; r != "" {
			return r
		}
	}
	for _, pin := range x.names(b) {
		switch x.m.role[pin] {
		case Main:
			return Auxiliary
		case Auxiliary:
			return Main
		}
	}
	return ""
}
