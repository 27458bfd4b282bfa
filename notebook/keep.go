package notebook

import (
	"errors"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"time"

	"ohmcall/notebook/call"
	"ohmcall/notebook/journal"
	"ohmcall/notebook/page"
	"ohmcall/notebook/script"
)

// writable is a time as the file will give it back: without a zone's name or
// the odd seconds of a historical offset, so that a replay sees the same.
func writable(at time.Time) (time.Time, error) {
	t, err := time.Parse(page.TimeLayout, at.Format(page.TimeLayout))
	if err != nil {
		return t, fmt.Errorf("the time of the line would lie in the year %d; a year has four digits", at.Year())
	}
	return t, nil
}

func (n *Notebook) store(e call.Entry) error {
	if n.journal.Moved() {
		if err := n.takeIn(); err != nil {
			return err
		}
		n.mend = true
	}
	if len(n.found) > 0 {
		aside, err := n.putAside(n.found)
		if err != nil {
			return err
		}
		n.found = nil
		n.tell("The file as it was found is kept as %s.", aside)
	}
	if n.mend {
		if err := n.journal.Rewrite(n.Render()); err != nil {
			return err
		}
		if n.ends {
			n.tell("The file's lines end in LF again.")
		}
		n.mend, n.ends = n.call.Closed(), false
		return nil
	}
	return n.journal.Append(page.AppendEntry(nil, e.N, e.At, e.Line, e.Reply.PlainLines()))
}

// undo takes the call back to its first entries, and what they cost, by
// replaying them.
func (n *Notebook) undo(entries int, cost bounds) { n.call, n.cost = n.upTo(entries), cost }

// upTo is the call as of its first entries, made anew.
func (n *Notebook) upTo(entries int) *call.Call {
	c := call.New()
	for _, e := range n.call.Entries()[:entries] {
		c.Apply(e.At, e.Line)
	}
	return c
}

// takeIn reads what bears the file's name before it is replaced: what people
// wrote there is kept. A file whose entries are not ours is put aside whole.
func (n *Notebook) takeIn() error {
	name := n.journal.Name()
	content, err := journal.Read(n.host.FS, name)
	if errors.Is(err, os.ErrNotExist) {
		return nil
	}
	if err != nil {
		return err
	}
	f, err := page.Read(content)
	if err == nil && f.Cut == nil && n.begins(f.Entries) {
		n.remarks, err = remarksIn(f)
		return err
	}
	if len(content) == 0 {
		return nil
	}
	aside, err := n.putAside(content)
	if err != nil {
		return err
	}
	n.tell("Another program had put a file in this one's place; it is kept as %s.", aside)
	n.remarks = maps.Clone(n.remarks)
	if n.remarks == nil {
		n.remarks = map[string]string{}
	}
	addRemark(n.remarks, "log", "Another file had taken this one's place; it is kept as "+page.Escape(aside)+".")
	return nil
}

// putAside keeps a content beside the file, and gives the name it got.
func (n *Notebook) putAside(content []byte) (string, error) {
	base := strings.TrimSuffix(n.journal.Name(), ".md") + "-replaced"
	aside := base + ".md"
	for i := 2; i < 1000; i++ {
		if _, err := n.host.FS.Stat(aside); err != nil {
			break
		}
		aside = base + "-" + strconv.Itoa(i) + ".md"
	}
	j, err := journal.Create(n.host.FS, aside, content)
	if err != nil {
		return "", err
	}
	return script.Clean(filepath.Base(aside)), j.Close()
}

// tell has something to say that no reply says.
//
//go:noinline
func (n *Notebook) tell(format string, args ...any) {
	n.news = append(n.news, fmt.Sprintf(format, args...))
}

// News is what happened to the file since it was last asked for, in sentences.
func (n *Notebook) News() []string {
	news := n.news
	n.news = nil
	return news
}

// begins reports whether the entries are those with which the call begins.
func (n *Notebook) begins(entries []page.Entry) bool {
	ours := n.call.Entries()
	if len(entries) > len(ours) {
		return false
	}
	for i := range entries {
		if e, o := &entries[i], &ours[i]; e.Line != o.Line || !e.At.Equal(o.At) {
			return false
		}
	}
	return true
}

// Move goes on in a new file that holds all entries so far: for when the old
// file can no longer be trusted. The old file stays as it is.
func (n *Notebook) Move(name string) error {
	j, err := journal.Create(n.host.FS, name, n.Render())
	if err != nil {
		return err
	}
	if n.journal != nil {
		n.journal.Close()
	}
	n.journal, n.mend = j, n.call.Closed()
	return nil
}

// Close brings the file's derived part up to date and lets go of it. What
// people wrote into it meanwhile is kept.
func (n *Notebook) Close() error {
	if n.journal == nil {
		return nil
	}
	defer n.journal.Close()
	if !n.dirty {
		return nil
	}
	if err := n.journal.Err(); err != nil {
		return err
	}
	if err := n.takeIn(); err != nil {
		return err
	}
	if err := n.journal.Rewrite(n.Render()); err != nil {
		return err
	}
	n.dirty = false
	return nil
}
