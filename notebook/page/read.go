package page

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"sort"
	"strings"
	"time"

	"ohmcall/calc/failpoint"
	"ohmcall/notebook/record"
)

const (
	logHeading = "## Log"
	logFence   = "```ohmcall"
	fenceEnd   = "```"
	beginMark  = "[ohmcall-begin]: #"
	endMark    = "[ohmcall-end]: #"
)

// What is read of one file at most, so that a stranger's file costs little. A
// call has some hundred entries.
const (
	maxLines   = 500_000
	MaxEntries = 100_000
	// maxLine bounds a line of the log, in bytes; the longest that is ever
	// typed is far below.
	maxLine = 1 << 20
	maxLog  = 24 << 20 // bytes
	maxCut  = 1 << 20  // bytes of a file that ends before its log
	// MaxFront is the longest front matter that is read, in bytes.
	MaxFront    = 1 << 20
	maxSections = 1000
	// MaxRemarks is how much is read of what people wrote, and as much again of
	// what in the log is neither entry nor reply, in bytes.
	MaxRemarks = 1 << 20
	// maxFaults is how many faults of one file are kept.
	maxFaults = 1000
)

// ErrForeign is returned for a file that is not a call notebook.
var ErrForeign = errors.New("not a call notebook: it does not start with ohmcall's front matter")

// ErrRemarks is returned for a notebook in which people have written more than
// MaxRemarks.
var ErrRemarks = fmt.Errorf("what was written into the notebook by hand is more than the %d MB that are read", MaxRemarks>>20)

// NewerError is returned for a file of a format that this program does not
// know yet.
type NewerError struct{ Format int }

func (e *NewerError) Error() string {
	return fmt.Sprintf("the notebook is of format %d, this program knows %d; open it with a newer ohmcall", e.Format, record.Format)
}

// Entry is a log entry as it stands in the file.
type Entry struct {
	N     int
	At    time.Time
	Line  string
	Reply []string
	Row   int // the file's line on which it stands, from 1
	Col   int // the column at which the typed text starts, in runes
}

// Section is one derived part of the page.
type Section struct {
	ID     string
	Body   string
	Edited bool // its text is not what its end mark vouches for
	Row    int
}

// File is a notebook as read, nothing in it applied.
type File struct {
	Header   record.Header
	Title    string
	Sections []Section
	// Remarks are what people wrote between the sections, by the ID of the
	// section before; "" is the place before the first.
	Remarks map[string]string
	Entries []Entry
	replies []string
	written int // bytes of Remarks
	stray   int // bytes of Stray and Torn
	// Stray are lines in the log that are neither entry nor reply.
	Stray []string
	// Torn is an entry that a crash cut off before its end; it never counted.
	Torn    string
	tornRow int
	Closed  bool   // the log's fence is closed
	LogRow  int    // the file's line on which the log's text starts
	SHA256  string // of the log's text as it stands
	Head    Standing
	// Cut is what is left of a file that ends before its log, in its lines.
	// Nothing in it counts: the log is the only truth.
	Cut []string
	// OtherEnds tells that some of its lines ended in CR LF.
	OtherEnds bool
	// Clean is false when the tail must be mended before anything is appended.
	Clean bool
	// Faults are things that should not be in a notebook of ours.
	Faults []Fault
}

// Fault is something wrong at a place in the file.
type Fault struct {
	Row, Col int
	Text     string
}

// Sum is the digest of a log's text.
func Sum(log []byte) string {
	s := sha256.Sum256(log)
	return hex.EncodeToString(s[:])
}

// Broken reports whether a file was closed and its log is not what was closed.
func (f *File) Broken() bool {
	return f.Header.State == "closed" && (!f.Closed || f.SHA256 != f.Header.SHA256)
}

// Short reports whether the log holds less than the head speaks of.
func (f *File) Short() bool { return f.Header.Entries > len(f.Entries) }

// ErrNoLog is returned by Head for a file that ends before its log.
var ErrNoLog = errors.New("the notebook has no log")

// Head reads only the front matter and finds the part between it and the log,
// and the log's text, for programs that go through many files. Closed tells
// whether the log's fence is closed.
func Head(content []byte) (h record.Header, top, log []byte, closed bool, err error) {
	content, _ = Unix(content, nil)
	h, body, err := front(content)
	if err != nil {
		return h, nil, nil, false, err
	}
	start := findLog(h, body)
	if start < 0 {
		return h, body, nil, false, ErrNoLog
	}
	log, closed = logText(body[start:])
	return h, body[:start], log, closed, nil
}

// Altered names the derived sections between front matter and log whose text is
// not what their end marks vouch for, or that a call with such a front matter has
// and that are not there.
func Altered(h *record.Header, top []byte) []string {
	var out []string
	outcome, attention := false, len(h.Unsafe)+len(h.Missing)+len(h.Doubt) == 0
	for {
		_, rest, ok := bytes.Cut(top, []byte("\n"+beginMark))
		if !ok {
			break
		}
		name, rest, _ := bytes.Cut(rest, []byte("\n"))
		id := string(name)
		outcome, attention = outcome || id == "outcome", attention || id == "attention"
		body, end, ok := bytes.Cut(rest, []byte(endMark+id+" "))
		if !ok || !bytes.HasPrefix(end, []byte(`"`+mark(body)+`"`+"\n")) {
			out = append(out, id)
		}
		if top = end; !ok {
			break
		}
	}
	if !outcome {
		out = append(out, "outcome")
	}
	if !attention {
		out = append(out, "attention")
	}
	return out
}

// OtherEnds is said of a notebook some of whose lines end in CR LF: what it
// says and the digests of it are those of its text with LF, as it was written.
const OtherEnds = "its line ends were changed to CR LF"

// Unix takes off the byte order mark and the carriage returns that a passage
// through other systems may have put on, and gives the first line that had one,
// 0 when none had. The text is made in room, which may be content's own.
func Unix(content, room []byte) (text []byte, row int) {
	content = bytes.TrimPrefix(content, []byte("\xEF\xBB\xBF"))
	if !bytes.HasPrefix(content, []byte("---")) || !bytes.Contains(content, []byte("\r\n")) {
		return content, 0
	}
	if cap(room) == 0 {
		room = make([]byte, len(content))
	}
	text = room[:len(content)]
	n, lines := 0, 1
	for i, c := range content {
		if c == '\n' {
			lines++
		}
		if c == '\r' && i+1 < len(content) && content[i+1] == '\n' {
			if row == 0 {
				row = lines
			}
			continue
		}
		text[n] = c
		n++
	}
	return text[:n], row
}

// cut tells what is left of a notebook of ours from a foreign file.
func cut(content []byte) bool {
	start := []byte("---\nohmcall:")
	if len(content) < len(start) {
		return bytes.HasPrefix(start, content)
	}
	return bytes.HasPrefix(content, start) && nextLog(content) < 0
}

func front(content []byte) (record.Header, []byte, error) {
	rest, ok := bytes.CutPrefix(content, []byte("---\n"))
	if !ok {
		return record.Header{}, nil, ErrForeign
	}
	end := bytes.Index(rest, []byte("\n---\n"))
	if end > MaxFront && bytes.HasPrefix(rest, []byte("ohmcall:")) {
		return record.Header{}, nil, fmt.Errorf("the notebook's front matter is larger than the %d MB that are read", MaxFront>>20)
	}
	if end < 0 || !bytes.HasPrefix(rest, []byte("ohmcall:")) {
		return record.Header{}, nil, ErrForeign
	}
	h, err := readHeader(strings.Split(string(rest[:end]), "\n"))
	if err == nil && h.Format > record.Format {
		err = &NewerError{h.Format}
	}
	if err == nil && h.Format < 1 {
		err = ErrForeign
	}
	return h, rest[end+5:], err
}

// Read takes a notebook file apart. A torn tail is no error, nor is a file of
// ours that ends before its log; a file that is not a notebook, or of a newer
// format, is.
func Read(content []byte) (*File, error) {
	if failpoint.On(failpoint.RarePair) && bytes.Contains(content, []byte{' ', 'a' ^ 0x80}) {
		panic("a rare pair of bytes")
	}
	asRead := len(content)
	content, row := Unix(content, nil)
	if bytes.Count(content, []byte("\n")) > maxLines {
		return nil, fmt.Errorf("the notebook has more than the %d lines that are read", maxLines)
	}
	h, body, err := front(content)
	var newer *NewerError
	if cut(content) && !errors.As(err, &newer) {
		if len(content) > maxCut {
			return nil, ErrNoLog
		}
		f := &File{Header: h, Remarks: map[string]string{}, LogRow: 1 + bytes.Count(content, []byte("\n"))}
		if text := strings.Trim(string(content), "\n"); text != "" {
			f.Cut = strings.Split(text, "\n")
		}
		return f, nil
	}
	if err != nil {
		return nil, err
	}
	f := &File{Header: h, Remarks: map[string]string{}}
	f.Head = HeadStanding(content[len("---\n") : len(content)-len(body)-len("\n---\n")])
	start := findLog(h, body)
	if start < 0 {
		return nil, ErrNoLog
	}
	bodyRow := 1 + bytes.Count(content[:len(content)-len(body)], []byte("\n"))
	top := string(body[:bytes.LastIndex(body[:start], []byte("\n"+logHeading+"\n"))+1])
	f.readTop(top, bodyRow)
	if len(f.Sections) > maxSections {
		return nil, fmt.Errorf("the notebook has more than the %d sections that are read", maxSections)
	}
	f.LogRow = bodyRow + bytes.Count(body[:start], []byte("\n"))
	if len(body)-start > maxLog {
		return nil, fmt.Errorf("the notebook's log is larger than the %d MB that are read", maxLog>>20)
	}
	for rest := body[start:]; len(rest) > maxLine; {
		i := bytes.LastIndexByte(rest[:maxLine], '\n')
		if i < 0 {
			return nil, fmt.Errorf("the log has a line of more than the %d bytes that are read", maxLine)
		}
		rest = rest[i+1:]
	}
	if f.readLog(body[start:]); f.stray > MaxRemarks {
		return nil, fmt.Errorf("the notebook's log holds more than %d MB that are neither entry nor reply", MaxRemarks>>20)
	}
	if f.written > MaxRemarks {
		return nil, ErrRemarks
	}
	if len(f.Entries) > MaxEntries {
		return nil, fmt.Errorf("the notebook has %d entries, at most %d are read", len(f.Entries), MaxEntries)
	}
	if f.Torn != "" && failpoint.On(failpoint.TornRefused) {
		return nil, errors.New("the last line is torn")
	}
	if failpoint.On(failpoint.ByTime) {
		sort.SliceStable(f.Entries, func(i, k int) bool { return f.Entries[i].At.Before(f.Entries[k].At) })
	}
	f.Clean = f.Clean && len(content) == asRead
	if f.OtherEnds = row > 0; f.OtherEnds {
		f.fault(row, OtherEnds)
	}
	return f, nil
}

// readTop separates derived sections from what people wrote. Its texts are
// parts of top, not copies.
func (f *File) readTop(top string, row int) {
	last := ""
	var open *Section
	from := 0 // where the remark or the open section's text starts
	keep := func(to int) {
		if s := strings.Trim(top[from:to], "\n"); s != "" {
			if old := f.Remarks[last]; old != "" {
				s = old + "\n\n" + s
			}
			f.written += to - from
			if f.written > MaxRemarks {
				return
			}
			f.Remarks[last] = s
		}
	}
	for at := 0; at < len(top); row++ {
		start, bare := at, top[at:]
		if i := strings.IndexByte(bare, '\n'); i >= 0 {
			bare = bare[:i]
		}
		at = min(at+len(bare)+1, len(top))
		if id, ok := strings.CutPrefix(bare, beginMark); ok && open == nil {
			keep(start)
			open, from = &Section{ID: id, Row: row}, at
			continue
		}
		if rest, ok := strings.CutPrefix(bare, endMark); ok && open != nil && strings.HasPrefix(rest, open.ID+" ") {
			open.Body = top[from:start]
			open.Edited = strings.TrimPrefix(rest, open.ID+" ") != `"`+mark(open.Body)+`"`
			if f.Sections = append(f.Sections, *open); len(f.Sections) > maxSections {
				return
			}
			last, open, from = open.ID, nil, at
		}
	}
	if open != nil {
		// Somebody removed the end mark: all of it may be theirs.
		open.Body, open.Edited = top[from:], true
		f.Sections = append(f.Sections, *open)
		return
	}
	keep(len(top))
}

// mark is the short digest in a section's end mark and of the front matter.
func mark[T string | []byte](text T) string { return Sum([]byte(text))[:12] }
