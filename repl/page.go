package repl

import (
	"bytes"
	"strconv"
	"strings"

	"ohmcall/notebook/call"
)

// entry shows what a line was answered with. On a screen the answer to a
// question stops where the screen is full, and Enter alone shows the rest. What a
// fact is answered with is never held back; where the screen is too small for it a
// caution, which must not scroll away unread, stands last: under the reply, and
// held itself only when it is longer than the screen, where the rest comes with the
// next line at the latest. Without one the line is named again under its answer.
func (t *talk) entry(e call.Entry) {
	high := t.height()
	if high == 0 || t.lines.Pending() {
		t.p.Entry(e)
		return
	}
	rows := t.rows(e.Reply)
	if cmd := call.Find(e.Kind); cmd != nil && cmd.Group == call.Asks {
		t.held = false
		t.page(rows, 2) // the line that was typed stays in sight
		return
	}
	reply := *e.Reply
	var cautions call.Reply
	reply.Lines = nil
	for _, l := range e.Reply.Lines {
		of := &reply
		if l.Tone == call.Caution {
			of = &cautions
		}
		of.Lines = append(of.Lines, l)
	}
	long := len(rows) > high-2
	if long {
		rows = t.rows(&reply)
	}
	t.o.Out.Write([]byte(strings.Join(rows, "")))
	switch {
	case long && len(cautions.Lines) > 0:
		t.held = true
		t.page(t.rows(&cautions), 2)
	case long:
		t.p.Say(call.Plain, "These "+strconv.Itoa(len(rows))+" lines answer: "+e.Line)
	}
}

// rows are the lines of a reply as the screen has them.
func (t *talk) rows(r *call.Reply) []string {
	var b bytes.Buffer
	p := *t.p
	p.Out = &b
	p.Reply(r)
	rows := strings.SplitAfter(b.String(), "\n")
	return rows[:len(rows)-1]
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

// flush shows the rest of the cautions that a fact was answered with.
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
