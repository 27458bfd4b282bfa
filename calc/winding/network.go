package winding

import "maps"

// inferNetwork reads four and more leads.
func inferNetwork(t *table, m marks, in Input, res *Result) {
	res.Roles = maps.Clone(m.role)
	res.Wanted = t.missing()
	if len(res.Wanted) > 0 {
		res.Next = "read " + res.Wanted[0].String()
		res.note("Wanted next: " + res.Wanted[0].String() + ".")
	}
}
