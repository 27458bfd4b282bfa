package repl

import (
	"bytes"
	"strconv"
	"strings"

	"ohmcall/notebook/call"
)

// entry shows what a line was answered with. On a screen the answer to a
// question stops where the screen is full, and Enter alone shows the rest. What
// a fact is answered with is never held back: when it is longer than the screen
// the line that it answers is named again under it.
func (t *talk) entry(e call.Entry) {
	high := t.height()
	if high == 0 || t.lines.Pending() {
		t.p.Entry(e)
		return
	}
	var b bytes.Buffer
	p := *t.p
	p.Out = &b
	p.Entry(e)
	rows := strings.SplitAfter(b.String(), "\n")
	rows = rows[:len(rows)-1]
	if cmd := call.Find(e.Kind); cmd != nil && cmd.Group == call.Asks {
		t.page(rows, 2) // the line that was typed stays in sight
		return
	}
	t.o.Out.Write(b.Bytes())
	if len(rows) > high-2 {
		t.p.Say(call.Plain, "These "+strconv.Itoa(len(rows))+" lines answer: "+e.Line)
	}
}

// page shows as many rows as the screen has beside those that are taken, and
// keeps the rest.
func (t *talk) page(rows []string, taken int) {
	n := max(t.height()-taken-2, 3)
	if t.height() == 0 || len(rows) <= n+1 {
		n = len(rows)
	}
	for _, r := range rows[:n] {
		t.o.Out.Write([]byte(r))
	}
	if t.rest = rows[n:]; len(t.rest) > 0 {
		t.p.Say(call.Plain, counted(len(t.rest), "line", "lines")+" more: Enter shows them.")
	}
}

// height is how many lines the screen has, 0 where nobody sees one.
func (t *talk) height() int {
	if !t.person || t.o.Height == nil {
		return 0
	}
	return t.o.Height()
}
