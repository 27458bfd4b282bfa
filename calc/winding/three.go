package winding

import (
	"maps"

	"ohmcall/calc/caution"
	"ohmcall/calc/measure"
)

// naming gives three pins, by index, their roles.
type naming struct{ c, s, r int }

// namings are the six ways to name three pins.
var namings = [6]naming{{0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}}

// three is the reading of one machine or group of three points.
type three struct {
	t   *table
	m   marks
	in  Input
	res *Result
}

func inferThree(t *table, m marks, in Input, res *Result) {
	x := &three{t, m, in, res}
	switch {
	case x.shorted():
	case t.open > 0:
		x.judgeOpen()
	case t.known < 3:
		x.partial()
	default:
		x.complete()
	}
	if x.named() && res.State != EqualWindings {
		res.Settled = true
	}
}

// roles turns a naming into roles by pin.
//
//go:noinline
func (x *three) roles(n naming) map[string]Role {
	p := x.t.pins
	return map[string]Role{p[n.c]: Common, p[n.s]: Start, p[n.r]: Run}
}

// allowed reports whether the markings let n be.
func (x *three) allowed(n naming) bool {
	p := x.t.pins
	return x.m.allows(p[n.c], Common) && x.m.allows(p[n.s], Start) && x.m.allows(p[n.r], Run)
}

// filter keeps the namings that every test passes.
func filter(tests ...func(naming) bool) []naming {
	out := make([]naming, 0, len(namings))
next:
	for _, n := range namings {
		for _, test := range tests {
			if !test(n) {
				continue next
			}
		}
		out = append(out, n)
	}
	return out
}

// shared gives the roles that all of ns agree on.
func (x *three) shared(ns []naming) map[string]Role {
	if len(ns) == 0 {
		return maps.Clone(x.m.role)
	}
	out := x.roles(ns[0])
	for _, n := range ns[1:] {
		other := x.roles(n)
		for pin, role := range out {
			if other[pin] != role {
				delete(out, pin)
			}
		}
	}
	return out
}

// marked gives the naming that the markings alone leave, if only one is left.
//
//go:noinline
func (x *three) marked() (naming, bool) {
	if len(x.m.role) < 2 {
		return naming{}, false
	}
	if ns := filter(x.allowed); len(ns) == 1 {
		return ns[0], true
	}
	return naming{}, false
}

// named reports whether the markings alone name every pin.
func (x *three) named() bool {
	_, all := x.marked()
	return all
}

// highest reports whether n's start–run may be the highest pair.
func (x *three) highest(n naming) bool {
	h := x.t.v(n.s, n.r)
	return !x.t.v(n.c, n.s).Above(h) && !x.t.v(n.c, n.r).Above(h)
}

// ordered reports whether n's start may be above its run.
func (x *three) ordered(n naming) bool { return !x.t.v(n.c, n.r).Above(x.t.v(n.c, n.s)) }

// complete judges three finite readings.
func (x *three) complete() {
	res := x.res
	g := x.gap()
	res.Gap = g.Gap
	equal := x.allAlike()
	if (equal || x.nearly() && len(x.m.role) == 0) && g.least > x.in.leads() {
		x.equal(equal)
		return
	}
	if x.twoSpeed(g) {
		return
	}
	ranked := filter(x.highest, x.ordered)
	fit, order := filter(x.allowed, x.highest, x.ordered), true
	if len(fit) == 0 {
		fit, order = filter(x.allowed, x.highest), false
	}
	res.Roles = x.shared(fit)
	res.Settled = len(fit) == 1
	topology := len(fit) > 0
	if !topology {
		if n, ok := x.marked(); ok {
			res.Roles = x.roles(n)
		}
	}
	x.conflicts(ranked, topology, order)
	switch {
	case !topology:
		res.State, res.Disputed = DoesNotAddUp, !g.Beyond
		if g.Beyond {
			res.fact(g.addUpFact())
		}
		res.note("By marking "+named(res.Roles)+"; the readings contradict it.", res.Conflicts[len(res.Conflicts)-1],
			"Readings: "+x.others(func(int, int) bool { return true })+".")
		return
	case g.Beyond && g.Percent >= noRolesGap && !x.leads(&g) && !x.named():
		res.State, res.Settled, res.Roles, fit = DoesNotAddUp, false, maps.Clone(x.m.role), nil
		res.fact(g.addUpFact())
		res.note("The readings do not add up: one of them is wrong, and no role is certain by them.")
	case g.Beyond:
		res.State = DoesNotAddUp
		res.fact(g.addUpFact())
		res.note(x.headline() + ", but the readings do not add up.")
	case len(fit) == 1 || x.in.EqualByDesign && x.alikeToCommon(fit):
		res.State, res.Settled = Sound, true
		res.fact(FactSound)
		res.note(x.headline() + ".")
	case x.maybeShorted(g) && !x.named():
		res.State, res.Roles, fit = TooClose, maps.Clone(x.m.role), nil
		res.note("No role is certain: "+reads(g.low)+" may be a short between two pins, beside two pairs that may be alike.",
			"Zero the leads, take off what is on the pins (relay, jumper) and read on a finer range.")
	default:
		res.State = TooClose
		res.note(x.closeHeadline())
	}
	x.reasons(fit)
	x.gapNote(g)
	if !res.Settled {
		x.howToSettle(fit)
	}
	if len(fit) == 1 {
		x.ratio(fit[0])
		p := x.t.pins
		n := fit[0]
		res.Windings = []Winding{
			{From: p[n.c], To: p[n.s], Name: string(Start), Value: x.t.v(n.c, n.s)},
			{From: p[n.c], To: p[n.r], Name: string(Run), Value: x.t.v(n.c, n.r)},
		}
	}
	if res.State != Sound && equal {
		res.note("All three may also be equal (three-phase or inverter-driven): no mains, no start kit until settled.")
		res.caution(caution.InverterLine)
	}
}

// headline says the roles as far as they go, and what they rest on.
func (x *three) headline() string {
	if len(x.res.Roles) == 0 {
		return "No role is certain"
	}
	by := "By the readings "
	if len(x.m.role) > 0 {
		by = "By marking and readings "
	}
	s := by + named(x.res.Roles)
	if len(x.res.Roles) < 3 && !x.in.EqualByDesign {
		s += "; the others are not certain"
	}
	return s
}

func (x *three) closeHeadline() string {
	if len(x.res.Roles) == 0 {
		return "Too close to tell: the readings lie within each other's limits."
	}
	return "Too close to tell all: " + named(x.res.Roles) + "; the others lie within each other's limits."
}

// alikeToCommon reports whether common is certain and only start and run are
// not told apart.
func (x *three) alikeToCommon(fit []naming) bool { return len(fit) == 2 && fit[0].c == fit[1].c }

// conflicts compares the markings with the ranking.
func (x *three) conflicts(ranked []naming, topology, order bool) {
	res := x.res
	if topology && order {
		return
	}
	by := x.shared(ranked)
	if topology {
		for pin, role := range res.Roles {
			if role == Start {
				res.Conflicts = append(res.Conflicts, "The marking makes "+pin+
					" start although it reads below run; some rotary machines are built so. The marking holds.")
				return
			}
		}
		res.Conflicts = append(res.Conflicts, "The markings swap start and run against the ranking; the markings hold.")
		return
	}
	res.Conflicts = append(res.Conflicts, "By the readings "+named(by)+
		". The marking holds; read again or check it.")
}

// reasons says why the roles are what they are.
func (x *three) reasons(fit []naming) {
	t, p := x.t, x.t.pins
	if len(fit) == 0 {
		return
	}
	n, common := fit[0], true
	for _, o := range fit[1:] {
		common = common && o.c == n.c
	}
	if common {
		x.res.note(t.says(n.s, n.r) + " is the highest pair, so it is start–run; " + p[n.c] + ", outside it, is common.")
	}
	switch {
	case len(fit) == 1 && t.v(n.c, n.s).Above(t.v(n.c, n.r)):
		x.res.note("To common, " + p[n.s] + " reads " + reads(t.v(n.c, n.s)) + " and " + p[n.r] + " " +
			reads(t.v(n.c, n.r)) + ": the higher is start.")
	case len(fit) == 1 && len(x.res.Conflicts) > 0:
		x.res.note(x.res.Conflicts[len(x.res.Conflicts)-1])
	case len(fit) == 1:
		x.res.note("The markings say which of " + p[n.s] + " and " + p[n.r] + " is start.")
	case common && x.in.EqualByDesign:
		x.res.note("Main and auxiliary alike, as a reversing motor has by design: either may start it.")
	case common:
		a, b := t.says(n.c, n.s), t.says(n.c, n.r)
		x.res.note(min(a, b) + " and " + max(a, b) + " are too close to part start from run.")
	}
}

func (x *three) howToSettle(fit []naming) {
	if len(fit) < 2 {
		return
	}
	x.res.note("To settle it: zero the leads, use a finer range or a more accurate meter, or find a marking.")
	if x.alikeToCommon(fit) {
		x.res.note("A reversing motor has two equal windings by design; say so if this is one.")
	}
}

// The start winding usually has usualLow to usualHigh times the ohms of the run
// winding (common practice; sound machines are published at 2 and 2.75).
const usualLow, usualHigh = 3, 5

// ratio adds a word of caution when start to run is unusual.
func (x *three) ratio(n naming) {
	s, r := x.t.v(n.c, n.s), x.t.v(n.c, n.r)
	if r.Lo <= 0 || x.in.EqualByDesign || len(x.res.Conflicts) > 0 {
		return
	}
	sheet := "."
	if s.Lo/r.Hi > usualHigh {
		x.res.fact(FactOdd)
		sheet = "; the ohms of its sheet tell: plate ohms run …."
	}
	if k := s.X / r.X; s.Hi/r.Lo < usualLow || s.Lo/r.Hi > usualHigh {
		x.res.note("Start is " + number(float64(int(k*10+0.5))/10) +
			" times run; " + number(usualLow) + " to " + number(usualHigh) + " is usual (common practice), sound machines differ: no fault by itself" + sheet)
	}
}

// values gives the three readings and their pins.
func (x *three) values() (v [3]measure.Value) {
	return [3]measure.Value{x.t.v(0, 1), x.t.v(0, 2), x.t.v(1, 2)}
}

// allAlike reports whether one resistance fits all three readings.
func (x *three) allAlike() bool {
	v := x.values()
	return max(v[0].Lo, v[1].Lo, v[2].Lo) <= min(v[0].Hi, v[1].Hi, v[2].Hi)
}

// nearly reports three readings that differ beyond their limits, yet by so
// little that they cannot be two windings and both in series.
func (x *three) nearly() bool {
	v := x.values()
	lo, hi := min(v[0].X, v[1].X, v[2].X), max(v[0].X, v[1].X, v[2].X)
	return lo > 0 && hi-lo <= nearlyEqual*lo
}

// equal reports three equal windings: no roles, and nothing to connect.
func (x *three) equal(within bool) {
	res, t := x.res, x.t
	res.Roles = maps.Clone(x.m.role)
	all := t.says(0, 1) + ", " + t.says(0, 2) + ", " + t.says(1, 2)
	if within {
		res.State, res.Alike = EqualWindings, true
		res.fact(FactEqual)
		res.note("Three equal windings: three-phase or inverter-driven. No common, start or run.")
	} else {
		res.State = DoesNotAddUp
		res.fact(FactDoNotAddUp)
		res.note("Three nearly equal windings that differ beyond the meter: likely three-phase with one winding off.")
	}
	res.note("Readings: "+all+"; start and run in series would add up, these do not.",
		"Never connect mains or a start kit to it: its drive or its three phases run it.")
	if len(res.Roles) > 0 {
		res.Conflicts = append(res.Conflicts, "Marked "+named(res.Roles)+", but three equal windings have no such lead: see the nameplate.")
		res.note(res.Conflicts[len(res.Conflicts)-1])
	}
	res.caution(caution.InverterLine)
}
