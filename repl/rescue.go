package repl

import (
	"fmt"
	"strconv"
	"strings"

	"ohmcall/notebook"
	"ohmcall/notebook/call"
)

// rescue deals with an entry that could not be stored: the call goes on in a
// new file, with the entry in it, or the line is given back to be copied.
func (t *talk) rescue(unsaved *notebook.SaveError, err error) {
	old := t.where()
	t.p.Trouble("not stored: " + reason(unsaved.Err))
	if t.o.NewFileName == nil {
		t.giveBack(unsaved.Line)
		return
	}
	name := t.o.NewFileName()
	if moved := t.n.Move(name); moved != nil {
		t.p.Trouble("a new file cannot be written either: " + reason(moved))
		t.giveBack(unsaved.Line)
		return
	}
	t.o.Where, t.o.Resume = name, ""
	t.p.Say(call.Warn, "The file "+old+" can no longer be trusted. The call goes on in "+name+", with all entries so far.")
	entries, again := t.n.Do(unsaved.Line)
	t.show(entries)
	if again != nil {
		t.p.Trouble("not stored: " + reason(again))
		t.giveBack(unsaved.Line)
		return
	}
	if err != error(unsaved) {
		t.p.Trouble("the lines after it in the file used were not taken in; use the rest of them anew")
	}
}

// failed deals with a fault of the program's own at a line, before which the
// call had so many entries.
func (t *talk) failed(line string, had int, fault any) {
	t.refused = true
	t.p.Trouble(fmt.Sprintf("ohmcall itself failed at this line (%v); the call goes on", fault))
	for _, e := range t.n.Call().Entries()[had:] {
		if e.Line == line {
			t.p.Trouble("the line is stored: entry " + strconv.Itoa(e.N))
			return
		}
	}
	t.giveBack(line)
}

// giveBack shows a line that is stored nowhere.
func (t *talk) giveBack(line string) {
	t.refused = true
	t.p.Trouble("this line is stored nowhere; copy it:")
	t.p.Verbatim(line)
}

// reason is an error in one line, without what was said already.
func reason(err error) string { return strings.TrimPrefix(err.Error(), "not stored: ") }
