package sheet

import (
	"fmt"
	"strconv"
	"strings"

	"github.com/rivo/uniseg"

	"ohmcall/notebook/page"
	"ohmcall/notebook/record"
)

// machine is a machine with its drawing.
type machine struct {
	record.Machine
	N        int // tells the ids of one drawing from those of another
	Triangle *triangle
	Chain    *chain
	Say      string // the drawing in words
}

// triangle is the drawing of three pins, the first of them on top.
type triangle struct {
	Pins  [3]node
	Edges [3]edge
}

// chain is the drawing of any other number of pins, pair by pair.
type chain struct {
	Width, Height int
	Links         []link
	Loose         []node // pins of which no pair was read
}

type node struct {
	X, Y           int
	Name, Role     string
	LabelX, LabelY int
	Anchor         string
}

type edge struct {
	X1, Y1, X2, Y2 int
	X, Y           int // of the text
	Anchor, Ohms   string
	Unread         bool
}

type link struct {
	Y        int // of the row's middle
	From, To int // ends of the line
	BoxX     int
	A, B     node
	Ohms     string
}

func newMachine(n int, m record.Machine) machine {
	out := machine{Machine: m, N: n, Say: sayMachine(m)}
	switch {
	case len(m.Pins) == 3:
		out.Triangle = newTriangle(m)
	case len(m.Pins) > 0 || len(m.Pairs) > 0:
		out.Chain = newChain(m)
	}
	return out
}

// sayMachine is the drawing for those who hear it.
func sayMachine(m record.Machine) string {
	var b strings.Builder
	for _, p := range m.Pins {
		role := p.Role
		if role == "" {
			role = "role not known"
		}
		fmt.Fprintf(&b, "Pin %s: %s. ", p.Name, role)
	}
	for _, p := range m.Pairs {
		fmt.Fprintf(&b, "%s to %s: %s. ", p.A, p.B, p.Ohms)
	}
	return strings.TrimSpace(b.String())
}

// newTriangle puts common on top, start on the left and run on the right,
// as far as they are known.
func newTriangle(m record.Machine) *triangle {
	top, left, right := m.Pins[0], m.Pins[1], m.Pins[2]
	for i, p := range m.Pins {
		if p.Role == "common" {
			top, left, right = p, m.Pins[(i+1)%3], m.Pins[(i+2)%3]
		}
	}
	if left.Role == "run" || right.Role == "start" {
		left, right = right, left
	}
	pin := func(p record.Pin, x, y, lx, ly int, anchor string) node {
		return node{X: x, Y: y, Name: fit(p.Name, 4), Role: fit(p.Role, 18), LabelX: lx, LabelY: ly, Anchor: anchor}
	}
	t := &triangle{}
	t.Pins[0] = pin(top, 240, 40, 276, 32, "start")
	t.Pins[1] = pin(left, 90, 172, 90, 214, "middle")
	t.Pins[2] = pin(right, 390, 172, 390, 214, "middle")
	t.Edges[0] = newEdge(m, top, left, edge{X1: 221, Y1: 57, X2: 109, Y2: 155, X: 152, Y: 104, Anchor: "end"})
	t.Edges[1] = newEdge(m, top, right, edge{X1: 259, Y1: 57, X2: 371, Y2: 155, X: 328, Y: 104, Anchor: "start"})
	t.Edges[2] = newEdge(m, left, right, edge{X1: 116, Y1: 172, X2: 364, Y2: 172, X: 240, Y: 194, Anchor: "middle"})
	return t
}

func newEdge(m record.Machine, a, b record.Pin, e edge) edge {
	e.Ohms, e.Unread = "not read", true
	for _, p := range m.Pairs {
		if p.A == a.Name && p.B == b.Name || p.A == b.Name && p.B == a.Name {
			e.Ohms, e.Unread = fit(p.Ohms, 20), false
		}
	}
	return e
}

const (
	chainRow    = 46
	chainColumn = 400
	oneColumn   = 8 // rows that stay in one column
)

// newChain draws each pair that was read as a row, in two columns when there
// are many.
func newChain(m record.Machine) *chain {
	roles := map[string]string{}
	read := map[string]bool{}
	for _, p := range m.Pins {
		roles[p.Name] = p.Role
	}
	for _, p := range m.Pairs {
		read[p.A], read[p.B] = true, true
	}
	var loose []record.Pin
	for _, p := range m.Pins {
		if !read[p.Name] {
			loose = append(loose, p)
		}
	}
	rows := len(m.Pairs) + len(loose)
	columns, perColumn := 1, rows
	if rows > oneColumn {
		columns, perColumn = 2, (rows+1)/2
	}
	c := &chain{Width: columns * chainColumn, Height: perColumn*chainRow + 8}
	place := func(i int) (x, y int) {
		return i / perColumn * chainColumn, i%perColumn*chainRow + chainRow/2
	}
	pin := func(name string, x, y int, anchor string) node {
		return node{X: x, Y: y, Name: fit(name, 12), Role: fit(roles[name], 16), LabelY: y + 18, Anchor: anchor}
	}
	for i, p := range m.Pairs {
		x, y := place(i)
		c.Links = append(c.Links, link{Y: y, From: x + 116, To: x + 284, BoxX: x + 130, Ohms: fit(p.Ohms, 16),
			A: pin(p.A, x+110, y, "end"), B: pin(p.B, x+290, y, "start")})
	}
	for i, p := range loose {
		x, y := place(len(m.Pairs) + i)
		c.Loose = append(c.Loose, pin(p.Name, x+110, y, "end"))
	}
	return c
}

// fit cuts a text for a drawing to a number of columns; the whole of it
// stands in the table and in the drawing's description.
func fit(s string, columns int) string {
	if page.Width(s) <= columns {
		return s
	}
	var b strings.Builder
	width := 0
	for g := uniseg.NewGraphemes(s); g.Next(); {
		if width += g.Width(); width > columns-1 || b.Len() > 8*columns {
			break
		}
		b.WriteString(g.Str())
	}
	return b.String() + "…"
}

// Title is the drawing's name.
func (m machine) Title() string {
	return "Terminals of " + m.Name + ", " + strconv.Itoa(len(m.Pins)) + " pins"
}
