// Package repl talks with whoever types: it reads lines, hands them to the
// notebook, and shows what comes back. It owns no knowledge of the language
// and keeps nothing: what the arrow keys recall are the lines of the call
// itself.
package repl

import (
	"errors"
	"io"
	"os"
	"os/signal"
	"strconv"
	"strings"
	"syscall"

	"ohmcall/calc/source"
	"ohmcall/notebook"
	"ohmcall/notebook/call"
	"ohmcall/repl/term"
)

// prompt stands before each line that is typed.
const prompt = "call: "

// Options is what a conversation needs.
type Options struct {
	Notebook *notebook.Notebook
	In       io.Reader // an *os.File when Terminal is set
	Out, Err io.Writer
	// Terminal says that In and Out are a terminal that can move its cursor.
	Terminal bool
	// Dumb says that a person types at a terminal that can only print.
	Dumb  bool
	Color bool
	// Width is the screen's width in columns, 0 when it has none; asked anew
	// for each reply.
	Width func() int
	// Height is the screen's height in lines, 0 when it has none.
	Height func() int
	// NewFileName names a file to go on in when the call's own fails.
	NewFileName func() string
	// Where is how the call's file is shown, Resume how it is taken up again.
	Where, Resume string
	// Aside is what else there is to say of an entry, from other calls. It is
	// shown and is no part of the record.
	Aside func(call.Entry) []string
	// Parts lists parts used in earlier calls on a model, for completion.
	Parts func(model string) []string
	// Scripts lists the files that `use` can name, for completion.
	Scripts func() []string
	// Snippets lists the names of the user's own definitions, for completion;
	// those with parameters with the bracket behind.
	Snippets func() []string
	// Ready is called once the first prompt stands; nil for nothing to do.
	Ready func()
}

// talk is one conversation.
type talk struct {
	o       Options
	n       *notebook.Notebook
	p       *term.Printer
	lines   term.LineReader
	person  bool // someone types
	row     int
	refused bool
	asked   bool     // how the unit is left
	told    bool     // that comments are not recorded
	rest    []string // of an answer longer than the screen
	held    bool     // the rest is of a fact: it is shown whatever comes next
	run     int      // lines of the piece of input at hand that came together
	missed  []string // of them, those that were not taken
}

// Run reads and answers lines until the input ends, `close` is typed, or the
// program is asked to stop. The notebook is left open: closing it brings the
// file up to date. The result is an exit code: 1 when a line that was not
// typed by a person was refused or an entry could not be stored, else 0.
func Run(o Options) int {
	t := &talk{o: o, n: o.Notebook, person: o.Terminal || o.Dumb,
		p: &term.Printer{Out: o.Out, Err: o.Err, Color: o.Color}}
	if err := t.open(); err != nil {
		t.p.Trouble(err.Error())
		return 1
	}
	defer t.setBack()
	stop := make(chan os.Signal, 1)
	signal.Notify(stop, os.Interrupt, syscall.SIGTERM, syscall.SIGHUP)
	done := make(chan struct{})
	go func() {
		for {
			select {
			case s := <-stop:
				if t.o.Dumb && s == os.Interrupt {
					// The terminal has dropped the line that was being typed.
					io.WriteString(t.o.Out, "  ("+term.ErrCancelled.Error()+")\n"+prompt)
					continue
				}
				t.lines.Stop()
			case <-done:
			}
			return
		}
	}()
	t.greet()
	if t.o.Ready != nil {
		t.o.Ready()
	}
	t.loop()
	close(done)
	signal.Stop(stop)
	if t.refused {
		return 1
	}
	return 0
}

// setBack gives the terminal back as it was.
func (t *talk) setBack() {
	if err := t.lines.Close(); err != nil {
		t.p.Trouble("the terminal cannot be set back: " + err.Error())
	}
}

// open takes the input over.
func (t *talk) open() error {
	t.resize()
	if t.o.Terminal {
		in, ok := t.o.In.(*os.File)
		if !ok {
			return errors.New("a terminal is a file")
		}
		var typed []string
		for _, e := range t.n.Call().Entries() {
			typed = append(typed, e.Line)
		}
		lines, err := term.NewEditor(term.EditorOptions{
			In: in, Out: t.o.Out, Prompt: prompt, Width: t.width, History: typed,
			Complete: &Completer{Call: t.n.Call, Parts: t.o.Parts, Scripts: t.o.Scripts, Snippets: t.o.Snippets},
			List: func(w io.Writer, words []string) {
				p := term.Printer{Out: w, Width: t.width()}
				p.List(words)
			},
		})
		if err != nil {
			return err
		}
		t.lines = lines
		return nil
	}
	p := ""
	if t.o.Dumb {
		p = prompt
	}
	t.lines = term.NewPlain(t.o.In, t.o.Out, p)
	return nil
}

func (t *talk) width() int {
	if t.o.Width == nil {
		return 0
	}
	return t.o.Width()
}

func (t *talk) resize() { t.p.Width = t.width() }

// loop reads and answers.
func (t *talk) loop() {
	defer t.flush()
	for {
		line, err := t.lines.ReadLine()
		t.row++
		t.resize()
		var long *term.TooLongError
		switch {
		case errors.Is(err, io.EOF):
			t.farewell()
			return
		case errors.Is(err, term.ErrCut):
			t.p.Trouble("a line was not finished and is not recorded")
			return
		case errors.Is(err, term.ErrCancelled):
			continue
		case errors.As(err, &long):
			t.fault("", err)
			t.piece()
			continue
		case err != nil:
			t.p.Trouble(err.Error())
			return
		}
		ends := t.take(line)
		t.piece()
		if ends {
			return
		}
	}
}

// take answers one line and reports whether it ends the conversation. Where the
// program fails at the line, the conversation goes on without it.
func (t *talk) take(line string) (ends bool) {
	had, full := t.n.Call().Len(), line
	defer func() {
		if fault := recover(); fault != nil {
			t.failed(full, had, fault)
		}
	}()
	if rest := t.rest; len(rest) > 0 {
		t.rest = nil
		if strings.TrimSpace(line) == "" {
			t.page(rest, 1)
			return false
		}
		if t.held {
			t.rest = rest
			t.flush()
		}
	}
	if t.asked = t.asked && t.n.Call().Closed(); t.asked && strings.TrimSpace(line) == "" {
		return t.closed()
	}
	if t.person && t.n.Call().Leaves(line) && !t.lines.Pending() {
		t.farewell()
		return true
	}
	full = t.n.Call().Expand(line)
	entries, err := t.n.Do(line)
	closing := t.show(entries)
	var unsaved *notebook.SaveError
	switch {
	case err == nil:
	case errors.Is(err, call.ErrBlank):
		if strings.Contains(line, "#") && t.person && !t.told {
			t.told = true
			t.p.Say(call.Plain, "Comments are not recorded; note keeps what should stay.")
		}
	case errors.As(err, &unsaved):
		t.rescue(unsaved, err)
	default:
		t.fault(full, err)
	}
	// What is pasted behind a close still belongs to the call.
	if !closing || !t.person || err != nil || t.lines.Pending() {
		return false
	}
	if t.n.Call().WantsLeft() && !t.asked {
		t.asked = true
		t.p.Say(call.Ask, "How is the unit left? left unplugged, left tagged out, …; Enter leaves it at that.")
		return false
	}
	return t.closed()
}

// show shows entries and reports whether the last of them closed the call.
func (t *talk) show(entries []call.Entry) (closing bool) {
	for _, e := range entries {
		t.entry(e)
		if t.o.Aside != nil {
			for _, s := range t.o.Aside(e) {
				t.p.Say(call.Plain, s)
			}
		}
		closing = (e.Kind == "close" || e.Kind == "left") && e.N > 0 && t.n.Call().Closed()
	}
	return closing
}

// closed says where a closed call is.
func (t *talk) closed() bool {
	t.p.Say(call.Plain, "The record is in "+t.where()+".")
	return true
}

// fault shows a refused line.
func (t *talk) fault(line string, err error) {
	if !t.person {
		t.refused = true
		t.p.Trouble("line " + strconv.Itoa(t.row) + ":")
	}
	t.missed = append(t.missed, source.Short(strings.TrimSpace(line)))
	t.p.Fault(line, err)
}

func (t *talk) where() string {
	if t.o.Where != "" {
		return t.o.Where
	}
	return t.n.Name()
}
