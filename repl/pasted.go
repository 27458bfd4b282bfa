package repl

import (
	"strconv"
	"strings"

	"ohmcall/notebook/call"
)

// Of lines that came together so many or more, those that were not taken are
// named again at the end, at most so many of them.
const (
	pasted   = 5
	mostTold = 8
)

// piece ends a line. When it was the last of several that came together, such as
// a paste, it names those that were not taken: they have scrolled away.
func (t *talk) piece() {
	if t.run++; t.lines.Pending() {
		return
	}
	run, missed := t.run, t.missed
	t.run, t.missed = 0, nil
	n := len(missed)
	if !t.person || run < pasted || n == 0 {
		return
	}
	if n > mostTold {
		missed = append(missed[:mostTold], "…")
	}
	t.p.Say(call.Warn, "Of these "+strconv.Itoa(run)+" lines "+strconv.Itoa(n)+" were not taken: "+strings.Join(missed, "; "))
}
