package repl

import (
	"strconv"
	"strings"

	"ohmcall/notebook/call"
)

// Of lines that came together so many or more, those that were not taken are
// named again at the end, at most so many of them and so much of each.
const (
	pasted   = 5
	mostTold = 8
	longTold = 40 // runes
)

// piece ends a line. When it was the last of several that came together, such as
// a paste, it names those that were not taken: they have scrolled away.
func (t *talk) piece() {
	if t.run++; t.lines.Pending() {
		return
	}
	run, missed := t.run, t.missed
	t.run, t.missed = 0, nil
	if !t.person || run < pasted || len(missed) == 0 {
		return
	}
	var told []string
	for i, line := range missed {
		if i == mostTold {
			told = append(told, "and "+strconv.Itoa(len(missed)-i)+" more")
			break
		}
		if r := []rune(strings.TrimSpace(line)); len(r) > longTold {
			line = string(r[:longTold]) + "…"
		}
		told = append(told, strings.TrimSpace(line))
	}
	t.p.Say(call.Warn, "Of these "+strconv.Itoa(run)+" lines "+strconv.Itoa(len(missed))+" were not taken: "+strings.Join(told, "; "))
}
