package record

import (
	"fmt"
	"strings"
	"unicode/utf8"
)

// Drawing shows a machine's terminals with roles and ohms as plain text.
// Three pins stand as a triangle with common on top; any other number is
// listed pair by pair.
func Drawing(m Machine) []string {
	if len(m.Pins) == 3 {
		if d := triangle(m); d != nil {
			return d
		}
	}
	var out []string
	for _, p := range m.Pins {
		out = append(out, strings.TrimRight("  ("+p.Name+")  "+p.Role, " "))
	}
	for _, p := range m.Pairs {
		out = append(out, fmt.Sprintf("  (%s)--[ %s ]--(%s)", p.A, p.Ohms, p.B))
	}
	return out
}

func triangle(m Machine) []string {
	top, left, right := m.Pins[0], m.Pins[1], m.Pins[2]
	for i, p := range m.Pins {
		if p.Role == "common" {
			top = p
			left, right = m.Pins[(i+1)%3], m.Pins[(i+2)%3]
		}
	}
	if left.Role == "run" || right.Role == "start" {
		left, right = right, left
	}
	ohms := func(a, b Pin) string {
		for _, p := range m.Pairs {
			if p.A == a.Name && p.B == b.Name || p.A == b.Name && p.B == a.Name {
				return p.Ohms
			}
		}
		return "not read"
	}
	label := func(p Pin) string { return strings.TrimSpace("(" + p.Name + ") " + p.Role) }
	l, r := ohms(top, left), ohms(top, right)
	base := ohms(left, right)
	width := max(len([]rune(l))+len([]rune(r))+9, len([]rune(label(left)))+len([]rune(label(right)))+10, len([]rune(base))+12)
	center := func(s string) string {
		pad := (width - utf8.RuneCountInString(s)) / 2
		return strings.Repeat(" ", max(pad, 0)) + s
	}
	spread := func(a, b string) string {
		gap := width - utf8.RuneCountInString(a) - utf8.RuneCountInString(b)
		return a + strings.Repeat(" ", max(gap, 1)) + b
	}
	inner := width - 6
	legs := inner - utf8.RuneCountInString(l) - utf8.RuneCountInString(r)
	gap := width - utf8.RuneCountInString(label(left)) - utf8.RuneCountInString(label(right)) - 2
	out := []string{
		center(label(top)),
		center("/" + strings.Repeat(" ", max(width/3, 1)) + `\`),
		"   " + l + strings.Repeat(" ", max(legs, 1)) + r,
		spread(" /", `\ `),
		label(left) + " " + strings.Repeat("-", max(gap, 1)) + " " + label(right),
		center(base),
	}
	for i := range out {
		out[i] = strings.TrimRight(out[i], " ")
	}
	return out
}
