package winding

import (
	"slices"
	"strconv"
)

// isolatedPair answers for the motor with two isolated windings.
func (x *network) isolatedPair() bool {
	t, res := x.t, x.res
	if x.in.Kind == Fan || len(x.groups) != 2 || len(x.groups[0].nodes) != 2 || len(x.groups[1].nodes) != 2 ||
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
	if x.in.Diagram == Joined {
		x.joined()
		return true
	}
	if x.in.Diagram == Isolated || x.in.EqualByDesign || x.in.Leads == len(t.pins) || len(x.m.role) > 0 {
		res.fact(FactSound)
	} else {
		res.fact(FactIsolated)
	}
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
		x.ifJoined("one winding is open instead"))
	res.Windings = []Winding{
		{From: t.pins[a[0]], To: t.pins[a[1]], Name: name[0], Value: va},
		{From: t.pins[b[0]], To: t.pins[b[1]], Name: name[1], Value: vb},
	}
	return true
}

// ifJoined says what isolated groups leave open.
func (x *network) ifJoined(then string) string {
	if x.in.Diagram == Isolated {
		return "The wiring diagram shows them apart."
	}
	return "If the wiring diagram joins them inside, " + then + "."
}

// joined answers for groups that the wiring diagram joins inside: what reads
// open between them is broken.
func (x *network) joined() {
	x.res.State, x.res.Settled = OpenWinding, false
	x.res.Facts = slices.DeleteFunc(x.res.Facts, func(f string) bool { return f == FactSound })
	x.res.fact(FactOpen)
	x.res.note("A winding is open: the leads fall into " + strconv.Itoa(len(x.groups)) + " groups that the wiring diagram joins inside.")
}

// roleOf gives the role of group a by the markings on either group.
func (x *network) roleOf(a, b []int) Role {
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
