package repl

import (
	"io"
	"strconv"

	"ohmcall/notebook/call"
	"ohmcall/notebook/page"
)

// newcomer leads to a first verdict. Each line fits 60 columns.
var newcomer = []string{
	"Prove the unit dead, then type:  safe",
	"Pins, two at a time:  ohm A B 4.2   A C 15.1   B C 10.9",
	"The third pair names common, start and run.",
	"Tab: what is wanted next.  help: all words.  Ctrl-D: stop.",
}

// greet says where the call is kept and where it stands. What is not typed by
// a person is told only what it must know.
//
// On a terminal the first prompt stands before there is a line editor, which
// then draws it anew in its place.
func (t *talk) greet() {
	if t.person {
		t.p.AtOnce(t.standing)
	}
	t.troubles()
	if t.o.Terminal {
		io.WriteString(t.o.Out, prompt)
	}
}

// standing says where the call is kept and where it stands.
func (t *talk) standing() {
	n := t.n
	switch {
	case n.Call().Len() > 0:
		t.p.Say(call.Plain, "This call is kept in "+t.where())
		t.p.Reply(n.Call().Standing())
	case t.where() == "":
		t.p.Say(call.Warn, "A new call, stored nowhere.")
	default:
		t.p.Say(call.Plain, "A new call, kept in "+t.where())
		for _, s := range newcomer {
			t.p.Say(call.Plain, s)
		}
	}
	if n.Call().Closed() {
		t.p.Say(call.Plain, "It is closed: a question is answered and not written down, left … belongs to it, any other line opens it again.")
	}
}

// troubles says what was wrong with the file.
func (t *talk) troubles() {
	n := t.n
	if n.Opening.Cut {
		t.p.Trouble("the file ended before its log, so no entry is left in it; what it held is kept as a remark")
	}
	if n.Opening.Torn != "" {
		again := "nothing is left of its words"
		if left := page.TornText(n.Opening.Torn); left != "" {
			again = "type it again, its end may be missing: " + left
		}
		t.p.Trouble("the last line was cut off by a crash and never counted; " + again)
	}
	if n.Opening.Broken {
		t.p.Trouble("the file is not what was closed: its log was changed or cut off since; ohmcall check shows where it differs from its lines")
	} else if k := n.Opening.Changed; k > 0 {
		t.p.Trouble(counted(k, "reply", "replies") + " in the file would read otherwise today; ohmcall check shows them")
	}
	if k := n.Opening.Stray; k > 0 {
		t.p.Trouble(counted(k, "line", "lines") + " in the log belong to no entry; they are kept as remarks")
	}
}

// farewell says how to go on.
func (t *talk) farewell() {
	if !t.person {
		return
	}
	t.flush()
	if t.n.Call().Closed() {
		t.closed()
		return
	}
	if t.n.Call().Len() == 0 {
		t.p.Say(call.Plain, "Nothing was written down.")
		return
	}
	t.p.Say(call.Plain, "The call stays open in "+t.where()+"; close ends it when it is done.")
	if t.o.Resume != "" {
		t.p.Say(call.Plain, "Go on with: "+t.o.Resume)
	}
}

func counted(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return strconv.Itoa(n) + " " + many
}
