package winding

import (
	"sort"
)

// marks holds what the housing says.
type marks struct {
	role map[string]Role
}

// readMarks keeps the last marking of each pin; two pins with one marking
// contradict each other and neither is used, save roles that two leads share.
func readMarks(in []Mark, res *Result) marks {
	m := marks{role: map[string]Role{}}
	if len(in) == 0 {
		return m
	}
	entry := map[string]int{}
	for _, k := range in {
		if isCase(k.Pin) {
			continue
		}
		m.role[k.Pin], entry[k.Pin] = k.Role, k.Entry
	}
	holders := map[Role][]string{}
	for pin, role := range m.role {
		holders[role] = append(holders[role], pin)
	}
	for _, role := range roleOrder {
		pins := holders[role]
		if len(pins) < 2 || role == Main || role == Auxiliary || role == Protector {
			continue
		}
		sort.Strings(pins)
		res.Conflicts = append(res.Conflicts, list(pins, "and")+" are both marked "+string(role)+": neither marking is used.")
		for _, p := range pins {
			delete(m.role, p)
		}
	}
	for pin, role := range m.role {
		res.Marked = append(res.Marked, Mark{pin, role, entry[pin]})
	}
	sort.Slice(res.Marked, func(i, j int) bool { return res.Marked[i].Pin < res.Marked[j].Pin })
	return m
}

// recall says the markings while readings are missing.
func (m marks) recall(res *Result) {
	if len(m.role) > 0 {
		res.note("By marking " + named(m.role) + ".")
	}
}

// allows reports whether the markings let a pin have a role.
func (m marks) allows(pin string, role Role) bool {
	r, ok := m.role[pin]
	return !ok || r == role
}
