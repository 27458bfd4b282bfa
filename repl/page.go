package repl

import (
	"bytes"
	"slices"
	"strconv"
	"strings"

	"ohmcall/notebook/call"
)

// entry shows what a line was answered with. On a screen the answer to a
// question stops where the screen is full, and Enter alone shows the rest; so
// does what a fact is answered with when a caution is in it, which must not
// scroll away unread, and there the rest comes with the next line at the latest.
// Any other answer to a fact is never held back: when it is longer than the
// screen the line that it answers is named again under it.
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
	cmd := call.Find(e.Kind)
	asks := cmd != nil && cmd.Group == call.Asks
	if asks || slices.ContainsFunc(e.Reply.Lines, func(l call.Line) bool { return l.Tone == call.Caution }) {
		t.held = !asks
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

// flush shows the rest of what a fact was answered with.
func (t *talk) flush() {
	if t.held {
		for _, r := range t.rest {
			t.o.Out.Write([]byte(r))
		}
		t.rest = nil
	}
}

// height is how many lines the screen has, 0 where nobody sees one.
func (t *talk) height() int {
	if !t.person || t.o.Height == nil {
		return 0
	}
	return t.o.Height()
}
