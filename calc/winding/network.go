package winding

import (
	"maps"
	"slices"
	"strconv"

	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
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
	x := &network{t: t, m: m, in: in, res: res}
	res.Roles = maps.Clone(m.role)
	id := t.components(func(int, int) bool { return true })
	if clash := t.clashes(id); len(clash) > 0 {
		x.contradiction(clash)
		return
	}
	x.groups = t.groups(id)
	if x.sixEnds() {
		return
	}
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
	if len(lone) > 0 {
		x.lone(lone)
		x.outline()
	} else {
		x.judge()
	}
	if in.Leads > len(t.pins) {
		res.State, res.Settled = Incomplete, false
		res.Facts = nil
		res.note(strconv.Itoa(in.Leads) + " leads, of which " + strconv.Itoa(len(t.pins)) + " are read: read the others too.")
	}
	x.want()
}

// want says which reading comes next.
func (x *network) want() {
	if len(x.res.Wanted) == 0 {
		return
	}
	p := x.res.Wanted[0].String()
	x.res.Next = "read " + p
	x.res.note("Wanted next: " + p + ".")
}

// apart asks for one pair between each two groups that no open reading parts.
func (x *network) apart() {
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

// outline says which leads belong together.
func (x *network) outline() {
	for _, g := range x.groups {
		if len(g.pins()) > 1 {
			x.res.note("Joined: " + list(x.names(g.pins()), "and") + ".")
		}
	}
}

//go:noinline
func (x *network) names(pins []int) []string {
	out := make([]string, len(pins))
	for k, i := range pins {
		out[k] = x.t.pins[i]
	}
	return out
}

// contradiction reports finite readings that reach across leads which
// otherwise read open to each other.
func (x *network) contradiction(clash [][2]int) {
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

// lone reports leads that read open to every other. The other leads keep only
// their markings: with the broken lead unknown, the ranking of the rest could
// name a tap after the lead that is missing.
func (x *network) lone(pins []string) {
	res := x.res
	who := list(pins, "and")
	role := x.m.role[pins[0]]
	if len(pins) == 1 && role != "" && role != Common && role != Protector {
		res.State = OpenWinding
		res.fact(FactOpen)
		res.note("The " + string(role) + " winding is open: " + who + " reads open to every other lead.")
		return
	}
	if len(pins) == 1 && role == Protector {
		res.State = OverloadOpen
		res.fact(FactProtector)
		res.caution(caution.ProtectorStays)
		res.note("The protector may be open: its lead "+who+" reads open to every other lead.",
			"Let it cool below "+measure.CoolWords+" (touchable, can take hours) and read again.")
		return
	}
	res.State = OpenUnplaced
	res.fact(FactOpenUnplaced)
	res.caution(caution.ProtectorStays)
	res.note("Open to every other lead: "+who+".",
		"A winding or its wire is open, a protector is open (let it cool below "+measure.CoolWords+"), or it is no winding's lead.")
}

// judge judges every group and puts the answers together.
func (x *network) judge() {
	res := x.res
	if x.isolatedPair() {
		return
	}
	res.State, res.Settled = Sound, true
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
		if len(x.groups) == 1 {
			maps.Copy(res.Roles, part.Roles)
		}
	}
	if len(x.groups) > 1 {
		x.apartNote()
	}
	if res.State != Sound {
		res.Facts = slices.DeleteFunc(res.Facts, func(f string) bool { return f == FactSound })
	}
	x.splitMarks()
}

// apartNote says what isolated groups mean. Their leads keep only their
// markings: two groups may also be one network with a break in it.
func (x *network) apartNote() {
	res := x.res
	res.Settled = len(res.Roles) == len(x.t.pins)
	if x.in.Kind != Fan {
		switch x.in.Diagram {
		case Joined:
			x.joined()
		case Isolated:
			res.note("Isolated groups: the wiring diagram shows them apart.")
		default:
			res.Facts = slices.DeleteFunc(res.Facts, func(f string) bool { return f == FactSound })
			if res.State == Sound {
				res.fact(FactIsolated)
			}
			res.note("Isolated groups: if the wiring diagram joins them inside, a winding is open between them.",
				"Look at the diagram, then: plate windings isolated, or plate windings joined.")
		}
		return
	}
	if worse(OpenUnplaced, res.State) {
		res.State = OpenUnplaced
	}
	res.fact(FactOpenUnplaced)
	res.Notes = append([]string{"The leads fall into " + strconv.Itoa(len(x.groups)) + " groups open to each other.",
		"A fan's windings are joined as a rule: one is open between the groups; see the wiring diagram."}, res.Notes...)
}

// severity orders the states, the one to say first last.
var severity = []State{Sound, TooClose, Incomplete, EqualWindings, DoesNotAddUp, OpenUnplaced, OverloadOpen, OpenWinding, NotAWinding, Shorted, Grounded}

func worse(a, b State) bool { return slices.Index(severity, a) > slices.Index(severity, b) }

// splitMarks reports roles of one winding that lie in groups with no path
// between them.
func (x *network) splitMarks() {
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
