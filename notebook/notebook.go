// Package notebook keeps one repair call: the lines as they are typed, what
// they amount to, and the Markdown file that is their only store.
//
// A live line, a piped line and a replayed line go through the same parse and
// apply (package call). A live line is acknowledged only after it is on disk.
package notebook

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"time"

	"ohmcall/calc/failpoint"
	"ohmcall/notebook/call"
	"ohmcall/notebook/journal"
	"ohmcall/notebook/page"
	"ohmcall/notebook/script"
)

// Host is what a notebook needs of the machine around it.
type Host struct {
	FS journal.FS
	// Now is the clock on the wall.
	Now func() time.Time
	// Script reads a file named by `use`.
	Script func(name string) ([]byte, error)
	// Keep adds a line to the user's own snippets.
	Keep func(line string) error
	// Snippets are the user's own definitions, by name.
	Snippets map[string]string
}

// Notebook is one call and its file. It is not safe for concurrent use.
type Notebook struct {
	host    Host
	call    *call.Call
	cost    bounds           // of replaying the call
	journal *journal.Journal // nil when nothing is stored
	remarks map[string]string
	begun   bool // something was written since it was opened
	dirty   bool // the file's derived part is behind its log
	refused bool // the last line typed
	// full is why the call takes no more lines but its closing, once one was
	// refused for that.
	full error
	// mend is set when the file's tail cannot be appended to as it is: the
	// next entry replaces the file.
	mend bool
	ends bool // some lines of the file end in CR LF
	// found is the content of a file that is not what was closed, to be kept
	// beside it before it is replaced.
	found   []byte
	news    []string
	Opening Opening
}

// Opening says what was found when a file was opened.
type Opening struct {
	Resumed bool
	Torn    string // an entry that a crash cut off; it never counted
	Cut     bool   // the file ends before its log: no entry is left
	Stray   int    // lines in the log that are neither entries nor replies
	Broken  bool   // it was closed, and its log is not what was closed
	Spoke   string // what its head says of the end that its log no longer shows
	Changed int    // replies that differ from what this program says today, as no crash can have left them
	Lost    []lostEntry
}

// lostEntry is a line of the log that this program cannot apply.
type lostEntry struct {
	Row  int
	Line string
	Err  error
}

// SaveError says that an entry could not be stored and so was not applied. Line
// is what was typed or stood in the file used, also when what failed was entered
// for it: a mark, or one of the user's snippets.
type SaveError struct {
	Line string
	Err  error
}

func (e *SaveError) Error() string { return "not stored: " + e.Err.Error() }
func (e *SaveError) Unwrap() error { return e.Err }

// New starts a call that is stored nowhere.
func New(h Host) *Notebook { return &Notebook{host: h, call: call.New()} }

// Create starts a call in a new file, which its first entry makes: a call in
// which nothing was written down leaves none. The name is held until then.
func Create(h Host, name string) (*Notebook, error) {
	n := New(h)
	j, err := journal.Claim(h.FS, name)
	if err != nil {
		return nil, err
	}
	n.journal, n.mend = j, true
	return n, nil
}

// Open resumes the call in an existing file. A torn tail is no error; a file
// that is no notebook, or that holds a line that this program cannot apply,
// is: such a file is left alone.
func Open(h Host, name string) (*Notebook, error) {
	if target, err := filepath.EvalSymlinks(name); err == nil && !failpoint.On(failpoint.LinkReplaced) {
		name = target
	}
	j, content, err := journal.Open(h.FS, name)
	if err != nil && failpoint.On(failpoint.UnkeptOpened) {
		return New(h), nil
	}
	if err != nil {
		return nil, err
	}
	n, err := load(h, content)
	if err == nil && len(n.Opening.Lost) > 0 {
		l := n.Opening.Lost[0]
		err = fmt.Errorf("%s: line %d cannot be replayed: %w; ohmcall check lists all of it", name, l.Row, l.Err)
	}
	if err != nil {
		j.Close()
		return nil, err
	}
	n.journal = j
	return n, nil
}

// load replays a file's content.
func load(h Host, content []byte) (*Notebook, error) {
	f, err := page.Read(content)
	if err != nil {
		return nil, err
	}
	n := New(h)
	n.Opening = Opening{Resumed: true, Torn: script.Clean(f.Torn), Cut: len(f.Cut) > 0, Stray: len(f.Stray), Broken: f.Broken()}
	if ids := touched(f); len(ids) > 0 {
		n.tell("Text above the log was changed by hand, in: %s. What its lines say is shown here and made anew when a line is written; ohmcall check shows the places.", script.Clean(strings.Join(ids, ", ")))
	}
	made, err := replayed(f, len(touched(f)) > 0, nil, func(i int, _ call.Entry, reply []string, err error) {
		e := &f.Entries[i]
		if err != nil {
			n.Opening.Lost = append(n.Opening.Lost, lostEntry{e.Row, e.Line, err})
			return
		}
		if !equal(reply, e.Reply) {
			// A crash may have cut off the last reply at the end of a line, or left
			// blocks of it unwritten, which read as zeros.
			last := i == len(f.Entries)-1
			n.mend = n.mend || last
			if k := len(e.Reply); !last || f.Closed || !(k < len(reply) && equal(reply[:k], e.Reply) || strings.Contains(strings.Join(e.Reply, ""), "\x00")) {
				n.Opening.Changed++
			}
		}
	})
	if err != nil {
		return nil, err
	}
	n.call, n.cost = made.call, made.cost
	if n.remarks, err = keptRemarks(f, made.asOf); err != nil {
		return nil, err
	}
	if n.ends = f.OtherEnds; n.ends {
		n.tell("The file was changed: %s. The next line that is written gives all of it LF again.", page.OtherEnds)
	}
	if f.Broken() || f.Short() {
		n.found, n.Opening.Spoke = content, f.Header.Beyond(&n.call.Record().Header)
		if s := n.Opening.Spoke; s != "" {
			n.tell("The head of the file speaks of more than its log shows: %s.", s)
		}
	}
	n.mend = n.mend || !f.Clean || f.Closed || f.Header.State == "closed" || len(f.Faults) > 0 || f.Short()
	return n, nil
}

func equal(a, b []string) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if strings.TrimRight(a[i], " ") != strings.TrimRight(b[i], " ") {
			return false
		}
	}
	return true
}

// Call is what the entries amount to; it must not be changed.
func (n *Notebook) Call() *call.Call { return n.call }

// Name is the file's name, "" when nothing is stored.
func (n *Notebook) Name() string {
	if n.journal == nil {
		return ""
	}
	return n.journal.Name()
}

// Render is the whole file as it would be written now.
func (n *Notebook) Render() []byte { return page.Render(n.call.Record(), n.remarks) }

// Do takes one typed line: completes it, applies it, stores it, and returns
// the entries that came of it, each on disk. A line of `use`, or one that
// needs the user's snippets, makes several. On an error the entries returned
// were stored all the same; the line itself was not.
func (n *Notebook) Do(text string) ([]call.Entry, error) {
	full := n.call.Expand(text)
	if n.refused {
		n.refused = false
		if err := call.NotTaken(text, full); err != nil {
			return nil, err
		}
	}
	out, err := n.typed(full)
	n.refused = err != nil && !errors.Is(err, call.ErrBlank)
	return out, err
}

// typed is Do of a line that is written out.
func (n *Notebook) typed(text string) ([]call.Entry, error) {
	if err := n.call.Doubtful(text); err != nil {
		return nil, err
	}
	s, err := n.call.Parse(text)
	switch {
	case err == nil && s.Kind() == "help" && n.onlyKept(s.Word(0)):
		return n.showKept(text, s.Word(0))
	case err == nil && s.Asks() && (n.call.Closed() || n.damaged() || n.full != nil):
		return n.ask(text)
	case err == nil && !n.begun && !s.Screens():
		before, late := n.marks(s), n.late(s)
		if len(before) > 0 {
			if err := n.try(text); err != nil {
				return nil, err
			}
		}
		var out []call.Entry
		for _, line := range before {
			e, err := n.enter(line)
			if err != nil {
				return out, unsavedOf(text, err)
			}
			out = append(out, e)
		}
		rest, err := n.do(text, 0)
		out = append(out, rest...)
		n.begun = len(out) > 0 && (len(before) > 0 || !late)
		return out, err
	}
	return n.do(text, 0)
}

// try reports whether a line would be refused, so that nothing is written before
// one that is.
func (n *Notebook) try(text string) error {
	if needed, err := n.snippetsFor(text); err != nil || len(needed) > 0 {
		return err
	}
	if _, uses := n.usedFile(text); uses {
		return n.rehearse(text)
	}
	_, err := n.ask(text)
	return err
}

// damaged reports whether the file lacks what was in it, and nothing was written
// into it since it was opened.
func (n *Notebook) damaged() bool {
	o := &n.Opening
	return !n.dirty && (o.Broken || o.Cut || o.Spoke != "")
}

// marks are the lines that come before the first one that goes into a file that
// was opened again: the clock on the wall counts, unless the line sets another,
// and that the file is not what it was is noted.
func (n *Notebook) marks(first *call.Statement) []string {
	var out []string
	o := &n.Opening
	switch {
	case o.Broken:
		out = append(out, "note "+call.NotAsClosed)
	case o.Changed > 0:
		out = append(out, "note "+call.NotAsWritten)
	}
	if o.Spoke != "" {
		out = append(out, "note "+call.HeadSpoke+o.Spoke)
	}
	if o.Resumed && n.call.Pinned() && first.Kind() != "date" && (len(out) > 0 || !n.late(first)) {
		out = append([]string{"date now"}, out...)
	}
	return out
}

// late reports whether a line says of a closed call how the unit was left: it
// belongs to the closing, and so to its time.
func (n *Notebook) late(s *call.Statement) bool { return n.call.Closed() && s.Kind() == "left" }

// ask answers a question to a closed or damaged call, which is not written down.
func (n *Notebook) ask(text string) ([]call.Entry, error) {
	at, err := writable(n.call.Clock(text, n.host.Now))
	if err != nil {
		return nil, err
	}
	defer n.undo(n.call.Len(), n.cost)
	e, err := n.call.Apply(at, text)
	if err != nil {
		return nil, err
	}
	e.N = 0
	return []call.Entry{e}, nil
}

// deepest is how far `use` may go: a file that uses a file that uses a file.
const deepest = 4

func (n *Notebook) do(text string, depth int) ([]call.Entry, error) {
	name, uses := n.usedFile(text)
	if uses && depth == 0 {
		if err := n.rehearse(text); err != nil {
			return nil, err
		}
	}
	return n.take(text, depth, name, uses)
}

// take enters a line, and those of the file that it uses.
func (n *Notebook) take(text string, depth int, name string, uses bool) ([]call.Entry, error) {
	var out []call.Entry
	needed, err := n.snippetsFor(text)
	if err != nil {
		return nil, err
	}
	for _, line := range needed {
		e, err := n.enter(line)
		if err != nil {
			return out, unsavedOf(text, err)
		}
		out = append(out, e)
	}
	var lines []string
	if uses {
		if depth >= deepest {
			return out, fmt.Errorf("files that use files go at most %d deep", deepest)
		}
		content, err := n.script(name)
		if err != nil {
			return out, err
		}
		lines = ScriptLines(content)
	}
	if err := n.keep(text); err != nil {
		return out, err
	}
	e, err := n.enter(text)
	if err != nil {
		return out, err
	}
	out = append(out, e)
	for i, line := range lines {
		if n.call.Stands(line) {
			continue
		}
		err := call.OfOneCall(line)
		if err == nil {
			var more []call.Entry
			more, err = n.do(line, depth+1)
			out = append(out, more...)
		}
		if err != nil && !errors.Is(err, call.ErrBlank) {
			return out, inFile(name, i+1, line, err)
		}
	}
	return out, nil
}

// unsavedOf names the line for which an entry was made that could not be stored.
func unsavedOf(line string, err error) error {
	var unsaved *SaveError
	if errors.As(err, &unsaved) {
		unsaved.Line = line
	}
	return err
}

// enter applies one full line and stores it. When the program fails at it, the
// call is as it was before.
func (n *Notebook) enter(text string) (e call.Entry, err error) {
	entries, cost, failed := n.call.Len(), n.cost, true
	defer func() {
		if failed {
			n.undo(entries, cost)
		}
	}()
	e, err = n.enterLine(text)
	failed = false
	return e, err
}

func (n *Notebook) enterLine(text string) (call.Entry, error) {
	at, err := writable(n.call.Clock(text, n.host.Now))
	if err != nil {
		return call.Entry{}, err
	}
	if n.full != nil {
		if s, err := n.call.Parse(text); err == nil && s.Kind() != "close" && !s.Screens() {
			return call.Entry{}, n.full
		}
	}
	spent, free := n.cost, reserve
	e, err := n.cost.apply(n.call, at, text)
	if err != nil || e.N == 0 {
		n.cost = spent
		return e, err
	}
	if e.Kind == "close" {
		free = 0
	}
	if err := n.cost.over(free); err != nil {
		n.undo(e.N-1, spent)
		n.full = fmt.Errorf("%w; close it and go on in another", err)
		return call.Entry{}, n.full
	}
	if n.journal == nil {
		return e, nil
	}
	if err := n.store(e); err != nil {
		n.undo(e.N-1, spent)
		return call.Entry{}, &SaveError{Line: e.Line, Err: err}
	}
	n.dirty = true
	return e, nil
}

// Exists reports whether a file of that name is there.
func Exists(name string) bool {
	_, err := os.Lstat(name)
	return err == nil
}
