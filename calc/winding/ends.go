package winding

import "strings"

// ends are the leads of motors on three phases that bring out both ends of each
// winding (IEC 60034-8 and NEMA MG 1; from memory).
var ends = [][2]string{{"U1", "U2"}, {"V1", "V2"}, {"W1", "W2"}, {"T1", "T4"}, {"T2", "T5"}, {"T3", "T6"}}

// OtherEnd names the other end of the winding that a lead is one end of, in the
// writing of the lead; "" for other names.
func OtherEnd(lead string) string {
	up := strings.ToUpper(lead)
	for _, e := range ends {
		other := ""
		switch up {
		case e[0]:
			other = e[1]
		case e[1]:
			other = e[0]
		default:
			continue
		}
		if up != lead {
			other = strings.ToLower(other)
		}
		return other
	}
	return ""
}

// sixEnds answers for six leads that by their names are the ends of three windings,
// each of which was read; false for others.
func (x *network) sixEnds() bool {
	if len(x.t.pins) != 6 || len(x.groups) != 3 || len(x.m.role) > 0 {
		return false
	}
	t, res := x.t, x.res
	var low, high int
	var says []string
	for k, g := range x.groups {
		p := g.pins()
		if len(p) != 2 || !strings.EqualFold(OtherEnd(t.pins[p[0]]), t.pins[p[1]]) {
			return false
		}
		v := t.v(p[0], p[1])
		if l := x.groups[low].pins(); t.v(l[0], l[1]).X > v.X {
			low = k
		}
		if h := x.groups[high].pins(); t.v(h[0], h[1]).X < v.X {
			high = k
		}
		says = append(says, t.says(p[0], p[1]))
		res.Windings = append(res.Windings, Winding{From: t.pins[p[0]], To: t.pins[p[1]], Name: "winding " + string(rune('1'+k)), Value: v})
	}
	l, h := x.groups[low].pins(), x.groups[high].pins()
	res.Alike = true
	res.note("Three windings by the names of their ends: " + list(says, "and") + ".")
	if t.v(h[0], h[1]).Above(t.v(l[0], l[1])) {
		res.State = DoesNotAddUp
		res.fact(FactDoNotAddUp)
		res.note("They differ by more than the meter allows: suspect a winding, a joint or the readings.")
		return true
	}
	res.State = Sound
	res.fact(FactSound)
	res.note("They read alike, as they should; between them nothing should read: the links are off.")
	return true
}
