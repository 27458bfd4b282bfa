package winding

import "maps"

// A fan with three leads may be one speed with a start lead (start, common,
// run) or two speeds without one (common, high, low in series). Ohms part them
// only when the third winding is no possible tap: a tap reads below half of
// its main winding (common practice).

// tapped reports whether the machine may be such a fan.
func (x *three) tapped() bool {
	tap := x.in.Kind == Fan
	for _, role := range x.m.role {
		if role == Start || role == Run {
			return false
		}
		tap = tap || role != Common
	}
	return tap && !x.in.StartLead
}

// twoSpeed answers for such a fan when the two-speed arrangement fits.
func (x *three) twoSpeed(g gapDetail) bool {
	if !x.tapped() {
		return false
	}
	var fits []map[string]Role
	p := x.t.pins
	for _, n := range namings { // c common, s high, r low
		main, turns, both := x.t.v(n.c, n.s), x.t.v(n.s, n.r), x.t.v(n.c, n.r)
		if x.m.allows(p[n.c], Common) && x.m.allows(p[n.s], High) && x.m.allows(p[n.r], Low) &&
			!main.Above(both) && !turns.Above(both) && turns.Lo*2-x.in.leads() <= main.Hi {
			fits = append(fits, map[string]Role{p[n.c]: Common, p[n.s]: High, p[n.r]: Low})
		}
	}
	if len(fits) == 0 {
		return false
	}
	for _, n := range filter(x.allowed, x.highest, x.ordered) {
		fits = append(fits, x.roles(n))
	}
	res := x.res
	res.Roles = maps.Clone(fits[0])
	for _, f := range fits[1:] {
		for pin, role := range f {
			if res.Roles[pin] != role {
				delete(res.Roles, pin)
			}
		}
	}
	but := "."
	if g.Beyond {
		res.State, but = DoesNotAddUp, ", but the readings do not add up."
		res.fact(FactDoNotAddUp)
	} else {
		res.State = Sound
		res.fact(FactSound)
	}
	if res.Settled = len(fits) == 1; res.Settled {
		res.note("Two speeds, no start lead, by the readings: " + named(res.Roles) + but)
	} else {
		res.note("Which lead is which, ohms alone cannot tell" + but)
		for _, f := range fits {
			res.note("Possible: " + named(f) + ".")
		}
		res.note("A marking or the capacitor's wire tells which.")
	}
	x.gapNote(g)
	return true
}
