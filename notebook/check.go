package notebook

import (
	"errors"
	"fmt"
	"strings"

	"ohmcall/calc/source"
	"ohmcall/notebook/call"
	"ohmcall/notebook/page"
	"ohmcall/notebook/record"
)

// Fault is something in a file that its own lines do not bear out.
type Fault struct {
	Row, Col int // place in the file, from 1
	Text     string
}

func (f Fault) String() string { return fmt.Sprintf("%d:%d: %s", f.Row, f.Col, f.Text) }

// Report is what a check of a file found.
type Report struct {
	Record *record.Record // as its lines replay; nil when it could not be read
	Open   bool
	Torn   string
	Broken bool // it was closed, and its log is not what was closed
	// OtherEnds tells that some lines of the file end in CR LF.
	OtherEnds bool
	Cut       bool   // the file ends before its log
	Spoke     string // what its head says of the end that its log no longer shows
	Faults    []Fault
	// Remarks are what people wrote into the file, by the section before it.
	Remarks map[string]string
	// Behind says that the part above the log is older than the log, as it
	// may be after a crash; it is no fault.
	Behind bool
}

// Warning says in a sentence why the file is not to be trusted, "" when nothing
// speaks against it.
func (r *Report) Warning() string {
	switch {
	case r.Cut:
		return "The file ends before its log: what it held is lost, and nothing here stands for it." + r.spoke()
	case r.Broken:
		return "This file is not what was closed: its log was changed or cut off since. What stands here is what its lines say now." + r.spoke()
	case len(r.Faults) == 1 && r.OtherEnds:
		return "This file was changed: " + page.OtherEnds + ". What stands here is what its lines say."
	case len(r.Faults) > 0:
		return "The file differs in " + Places(len(r.Faults)) + " from what its lines say. What stands here is what its lines say." + r.spoke()
	}
	return ""
}

func (r *Report) spoke() string {
	if r.Spoke == "" {
		return ""
	}
	return " Its head spoke of more: " + r.Spoke + "."
}

// remember gives the record what only the head still says, when the log is not
// whole.
func (r *Report) remember(f *page.File) {
	if !f.Broken() && !f.Short() {
		return
	}
	if r.Spoke = f.Header.Beyond(&r.Record.Header); r.Spoke == "" {
		return
	}
	r.add(1, 1, "its head spoke of more than its log shows: %s", r.Spoke)
	r.Record.Remember(&f.Header)
	for i, o := range r.Record.Outcome {
		r.Record.Outcome[i].Text = strings.Replace(o.Text, "unfinished: the call was "+r.Record.StillOpen(), "its log does not show how it ended; its head spoke of "+r.Spoke, 1)
	}
}

// Places counts the places in which a file differs.
func Places(n int) string {
	if n == 1 {
		return "1 place"
	}
	return fmt.Sprintf("%d places", n)
}

// Check replays a file's lines and compares all that is derived from them.
// It writes nothing. The error says that the content is no notebook.
func Check(content []byte) (*Report, error) {
	f, err := page.Read(content)
	if err != nil {
		return nil, err
	}
	r := &Report{Open: !f.Closed, Torn: f.Torn, Broken: f.Broken(), Cut: f.Cut != nil, OtherEnds: f.OtherEnds}
	if f.Cut != nil || len(content) == 0 {
		r.Record = call.New().Record()
		if r.Remarks, err = keptRemarks(f, nil); err != nil {
			return nil, err
		}
		r.add(f.LogRow, 1, "the file ends before its log: no entry is left")
		r.remember(f)
		return r, nil
	}
	for _, x := range f.Faults {
		r.add(x.Row, x.Col, "%s", x.Text)
	}
	made, err := replayed(f, true, nil, func(i int, got call.Entry, reply []string, err error) {
		e := &f.Entries[i]
		if err != nil {
			col := e.Col
			var se *source.Error
			if errors.As(err, &se) && se.Col > 0 {
				col += se.Col - 1
			}
			r.add(e.Row, col, "this line cannot be replayed: %v", err)
			return
		}
		if got.Line != e.Line {
			r.add(e.Row, e.Col, "the line holds characters that are never stored")
		}
		r.compareReply(e, reply, i == len(f.Entries)-1 && !f.Closed)
	})
	if err != nil {
		return nil, err
	}
	if r.Remarks, err = keptRemarks(f, made.asOf); err != nil {
		return nil, err
	}
	r.Record = made.asOf
	if f.Header.Entries < len(f.Entries) {
		r.Record = made.call.Record()
	}
	r.Behind = f.Header.Entries < len(f.Entries)
	r.compareHead(f, made.asOf)
	r.remember(f)
	return r, nil
}

// maxFaults is how many faults are told of one file.
const maxFaults = 1000

//go:noinline
func (r *Report) add(row, col int, format string, args ...any) {
	if len(r.Faults) >= maxFaults {
		return
	}
	r.Faults = append(r.Faults, Fault{row, col, fmt.Sprintf(format, args...)})
}

// compareReply reports the first difference of a reply. The last reply of an
// open log may be cut short by a crash.
func (r *Report) compareReply(e *page.Entry, want []string, mayBeCut bool) {
	for i := 0; i < len(want) || i < len(e.Reply); i++ {
		row := e.Row + 1 + i
		switch {
		case i >= len(e.Reply):
			if !mayBeCut {
				r.add(row, 1, "entry %d: a line of the reply is missing: %s", e.N, want[i])
			}
			return
		case i >= len(want):
			r.add(row, 1, "entry %d: the reply has a line too many: %s", e.N, e.Reply[i])
			return
		case strings.TrimRight(e.Reply[i], " ") != strings.TrimRight(want[i], " "):
			r.add(row, 3+differsAt(e.Reply[i], want[i]), "entry %d: the reply differs, replayed it is: %s", e.N, want[i])
			return
		}
	}
}

// differsAt is the first rune at which two texts differ.
func differsAt(a, b string) int {
	ra, rb := []rune(a), []rune(b)
	for i := range ra {
		if i >= len(rb) || ra[i] != rb[i] {
			return i
		}
	}
	return len(ra)
}

func (r *Report) compareHead(f *page.File, asOf *record.Record) {
	if f.Short() {
		r.add(1, 1, "the header speaks of %d entries, the log holds %d", f.Header.Entries, len(f.Entries))
		return
	}
	if f.Closed && f.Header.SHA256 != "" && f.Header.SHA256 != f.SHA256 {
		r.add(f.LogRow, 1, "the log is not the one that was sealed: its SHA-256 is %s", f.SHA256)
	}
	if f.Closed && f.Header.SHA256 == "" || !f.Closed && f.Header.State == "closed" {
		r.add(1, 1, "the header and the log disagree on whether the call is closed")
	}
	if asOf == nil {
		return
	}
	differs := page.HeaderDifferences(&f.Header, &asOf.Header)
	for _, d := range differs {
		r.add(1, 1, "front matter: %s", d)
	}
	if f.Head == page.Differs && len(differs) == 0 {
		r.add(1, 1, "front matter: lines were added or changed that mean nothing here")
	}
	have := map[string]page.Section{}
	for _, s := range f.Sections {
		have[s.ID] = s
	}
	for _, s := range page.Sections(asOf) {
		h, ok := have[s.ID]
		delete(have, s.ID)
		if !ok {
			r.add(1, 1, "the section %s is missing", s.ID)
			continue
		}
		if h.Body == s.Body {
			continue
		}
		want := strings.Split(s.Body, "\n")
		got := strings.Split(h.Body, "\n")
		for i := range got {
			if i >= len(want) || got[i] != want[i] {
				w := ""
				if i < len(want) {
					w = want[i]
				}
				r.add(h.Row+1+i, 1+differsAt(got[i], w), "section %s differs from what its entries say", s.ID)
				break
			}
		}
	}
	for id, s := range have {
		r.add(s.Row, 1, "the section %s rests on no entry", id)
	}
}
