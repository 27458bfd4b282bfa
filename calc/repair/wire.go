package repair

import (
	"fmt"
	"sort"
	"strings"
)

// Wire is one wire of the part in hand: its colour as printed on that part,
// and the pin or role that the part's own diagram gives it.
type Wire struct {
	Colour string
	To     string // a pin of the machine, a role ("start", "S"), or another point ("line")
	Entry  int
}

// WireRow is one line of the table wire → role → pin.
type WireRow struct {
	Wire  string
	Role  string // "common", "start", "run", …; "" for a point that is not of the machine
	Pin   string // "" likewise
	Other string // the point that is not of the machine
	Entry int
}

// WireTable shows where each wire goes and whether each role is served once.
type WireTable struct {
	Rows     []WireRow
	Problems []string // sentences, in a fixed order
	Entries  []int
}

// Complete reports whether every role is served exactly once and nothing is
// ambiguous.
func (t WireTable) Complete() bool { return len(t.Problems) == 0 && len(t.Rows) > 0 }

// letters are the marks that the trade prints for the three roles.
var letters = map[string]string{"c": "common", "s": "start", "r": "run"}

// Wiring maps wires to the roles that the readings gave to the pins. roles
// maps each pin to its role. A colour means nothing by itself: only what
// was typed from the part's own label counts.
func Wiring(wires []Wire, roles map[string]string) WireTable {
	var t WireTable
	if len(roles) == 0 {
		t.Problems = append(t.Problems, "the roles of the pins are not settled: read the ohms first")
	}
	served := map[string][]string{}
	colours := map[string]int{}
	for _, w := range wires {
		role, pin, problem := resolve(w.To, roles)
		row := WireRow{Wire: w.Colour, Role: role, Pin: pin, Entry: w.Entry}
		switch {
		case problem != "":
			t.Problems = append(t.Problems, w.Colour+": "+problem)
		case role == "":
			row.Other = w.To
		default:
			served[role] = append(served[role], w.Colour)
		}
		t.Rows = append(t.Rows, row)
		if w.Entry > 0 {
			t.Entries = append(t.Entries, w.Entry)
		}
		colours[strings.ToLower(strings.TrimSpace(w.Colour))]++
	}
	t.Problems = append(t.Problems, repeats(colours)...)
	for _, role := range rolesInOrder(roles) {
		switch s := served[role]; {
		case len(s) == 0:
			t.Problems = append(t.Problems, "no wire goes to "+role)
		case len(s) > 1:
			t.Problems = append(t.Problems, fmt.Sprintf("%d wires go to %s: %s", len(s), role, strings.Join(s, ", ")))
		}
	}
	return t
}

// resolve finds the role and pin that a typed target means. A pin's name
// comes first, since it is what is seen on the machine; when the same letter
// is also the mark of another role, both readings are possible and the line
// is a problem.
func resolve(to string, roles map[string]string) (role, pin, problem string) {
	word := strings.ToLower(strings.TrimSpace(to))
	named := letters[word]
	if named == "" {
		named = word
	}
	for p, r := range roles {
		if strings.ToLower(p) == word {
			if l := letters[word]; l != "" && l != r {
				return "", "", fmt.Sprintf("%s is a pin here, read as %s, and also the mark for %s: write the role in full", to, r, l)
			}
			return r, p, ""
		}
	}
	var pins []string
	for p, r := range roles {
		if strings.ToLower(r) == named {
			pins = append(pins, p)
		}
	}
	switch len(pins) {
	case 1:
		return roles[pins[0]], pins[0], ""
	case 0:
		if letters[word] != "" || isRole(named) {
			return "", "", "no pin is known to be " + named
		}
		return "", "", ""
	}
	sort.Strings(pins)
	return "", "", fmt.Sprintf("%s is on more than one pin: %s", named, strings.Join(pins, ", "))
}

func isRole(word string) bool { return word == "common" || word == "start" || word == "run" }

// rolesInOrder lists the roles present: common, start, run, then the rest.
func rolesInOrder(roles map[string]string) []string {
	present := map[string]bool{}
	for _, r := range roles {
		present[r] = true
	}
	var out, rest []string
	for _, r := range []string{"common", "start", "run"} {
		if present[r] {
			out = append(out, r)
			delete(present, r)
		}
	}
	for r := range present {
		rest = append(rest, r)
	}
	sort.Strings(rest)
	return append(out, rest...)
}

// repeats names colours that stand for more than one wire.
func repeats(colours map[string]int) []string {
	var out []string
	for c, n := range colours {
		if n > 1 {
			out = append(out, fmt.Sprintf("%d wires are called %s: mark them apart", n, c))
		}
	}
	sort.Strings(out)
	return out
}
