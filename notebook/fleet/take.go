package fleet

import (
	"bytes"
	"cmp"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"reflect"
	"strings"
	"sync"

	"ohmcall/notebook/journal"
	"ohmcall/notebook/page"
	"ohmcall/notebook/record"
	"ohmcall/notebook/script"
)

// worker reads files one after another, reusing its buffer.
type worker struct {
	o    *Options
	open opener
	text string // Options.Text in lower case
	buf  []byte
	// large holds large files, one at a time for all workers; own is this
	// worker's buffer meanwhile.
	large *large
	own   []byte
	holds bool
}

// large is the buffer for files over keepBuffer.
type large struct {
	sync.Mutex
	buf []byte
}

func newWorker(o *Options, large *large) *worker {
	w := &worker{o: o, open: o.open, text: strings.ToLower(o.Text), large: large}
	if w.open == nil {
		w.open = openFile
	}
	return w
}

// take reads one file and says what it is.
func (w *worker) take(f found) Item {
	it := Item{Path: f.path, Rel: f.rel, State: f.state, Reason: f.reason}
	if f.state != "" {
		return it
	}
	defer w.release()
	content, err := w.read(f.path, cmp.Or(w.o.most, journal.MaxFile))
	if err != nil {
		it.State, it.Reason = Bad, reason(err)
		return it
	}
	content, row := page.Unix(content, w.buf)
	if it.State, it.Reason = unlike(content); it.State != "" {
		return it
	}
	h, top, log, closed, err := page.Head(content)
	headless := errors.Is(err, page.ErrNoLog) && h.Entries > 0
	if err != nil && !headless {
		it.State, it.Reason = Bad, script.Clean(err.Error())
		return it
	}
	it.Header = h
	head := content[:bytes.Index(content, []byte("\n---\n"))]
	if !plain(head) {
		cleanHeader(&it.Header)
	}
	it.sum, it.trail = sha256.Sum256(log), trailOf(log)
	if i := bytes.IndexByte(log, '\n'); i >= 0 {
		it.first = string(log[:min(i, script.MaxLine)])
	}
	it.Found = len(w.text) > 0 && w.find(log)
	switch {
	case headless:
		it.State, it.Reason = Changed, "cut off: it ends before its log"
	case h.State != "closed":
		it.State, it.Reason = Open, neverClosed
	case !closed:
		it.State, it.Reason = Changed, "cut off: it was closed, but its log has no end"
	case hex.EncodeToString(it.sum[:]) != h.SHA256:
		it.State, it.Reason = Changed, "the log is not what was closed"
	default:
		it.State, it.Reason = headState(head[len("---\n"):])
	}
	if it.State == Trusted {
		if list := page.Altered(&h, top); len(list) > 0 {
			it.State, it.Reason = Changed, "text changed: "+strings.Join(list, ", ")
		}
	}
	if row > 0 {
		if it.Reason = join(page.OtherEnds, it.Reason); it.State == Trusted {
			it.State = Changed
		}
	}
	if w.o.Replay != nil && (w.o.Records || it.State != Trusted) {
		w.replay(&it, content, log)
	}
	if row > 0 {
		it.Faults = append(it.Faults, Fault{Row: row, Col: 1, Text: page.OtherEnds})
	}
	return it
}

// neverClosed is said of an open call until its lines are replayed.
const neverClosed = "never closed"

// headState believes the front matter that bears its own digest.
func headState(front []byte) (State, string) {
	switch page.HeadStanding(front) {
	case page.Agrees:
		return Trusted, ""
	case page.Differs:
		return Changed, "the front matter is not what was closed"
	}
	return Changed, "the front matter bears no digest"
}

// find looks for the text in what was typed, line by line, so that only lines
// are copied.
func (w *worker) find(log []byte) bool {
	for line := range bytes.Lines(log) {
		if line[0] == '#' {
			continue
		}
		if _, typed := typedIn(string(line)); strings.Contains(strings.ToLower(typed), w.text) {
			return true
		}
	}
	return false
}

// begins is what a notebook begins with.
const begins = "---\nohmcall:"

// unlike tells the files that are no notebook before they are taken apart.
func unlike(text []byte) (State, string) {
	switch {
	case len(text) == 0:
		return Bad, "empty file"
	case !bytes.HasPrefix(text, []byte(begins)):
		return Foreign, "not a notebook"
	}
	end := bytes.Index(text[:min(len(text), page.MaxFront)], []byte("\n---\n"))
	switch {
	case end < 0 && len(text) > page.MaxFront:
		return Bad, fmt.Sprintf("front matter longer than the %d MB that are read", page.MaxFront>>20)
	case end < 0 && bytes.Contains(text, []byte("\nresult: \""+record.Unsafe+"\"\n")):
		return Bad, "cut off inside its front matter, which spoke of " + record.Unsafe
	case end < 0:
		return Bad, "cut off inside its front matter"
	}
	return "", ""
}

// replay puts what the typed lines amount to in the place of the front
// matter.
func (w *worker) replay(it *Item, content, log []byte) {
	if row := longLine(log); row > 0 {
		it.State = Bad
		it.Reason = fmt.Sprintf("line %d of its log is longer than the %d KB that are taken", row, script.MaxLine>>10)
		return
	}
	rec, faults, err := safely(w.o.Replay, content)
	if err == nil && rec == nil {
		err = errors.New("the replay gave no record")
	}
	if err != nil {
		it.State, it.Reason = Bad, "cannot be replayed: "+script.Clean(err.Error())
		return
	}
	for _, f := range faults {
		f.Text = script.Clean(f.Text)
		it.Faults = append(it.Faults, f)
	}
	h := rec.Header
	h.Format, h.SHA256 = it.Header.Format, it.Header.SHA256
	cleanHeader(&h)
	if it.State == Trusted {
		if name := differs(&h, &it.Header); name != "" {
			it.State, it.Reason = Changed, "the front matter is not what the log amounts to: "+name
		}
	}
	if len(it.Faults) > 0 {
		f := it.Faults[0]
		it.Reason = strings.TrimPrefix(fmt.Sprintf("%s; line %d: %s", it.Reason, f.Row, shortSum(f.Text)), "; ")
	}
	it.Header = h
	if it.State == Open {
		it.next = script.Clean(rec.Next)
		it.Reason = strings.Replace(it.Reason, neverClosed, rec.StillOpen(), 1)
	}
	if w.o.Records {
		it.Record = rec
	}
}

// shortSum leaves of a SHA-256 what is enough for a line; check tells all of it.
func shortSum(text string) string {
	head, sum, ok := strings.Cut(text, "SHA-256 is ")
	if !ok || len(sum) < 2*sha256.Size {
		return text
	}
	return head + "SHA-256 is " + sum[:12] + "…" + sum[2*sha256.Size:]
}

// safely keeps one notebook from ending the whole scan. The text of a panic
// may quote the notebook, so it is not passed on.
func safely(replay Replay, content []byte) (rec *record.Record, faults []Fault, err error) {
	defer func() {
		if recover() != nil {
			err = errors.New("the program failed on it, which is a fault of the program")
		}
	}()
	return replay(content)
}

// longLine finds the first typed line that is too long to be taken, 0 when
// there is none. Lines count from 1.
func longLine(log []byte) int {
	const prefix = 64 // number and time stand before the typed text
	for row := 1; len(log) > 0; row++ {
		end := bytes.IndexByte(log, '\n')
		if end < 0 {
			end = len(log)
		}
		if end > script.MaxLine+prefix && log[0] != '#' {
			return row
		}
		log = log[min(end+1, len(log)):]
	}
	return 0
}

// plain reports whether text is printable ASCII without escapes, so that
// nothing in it needs cleaning.
func plain(text []byte) bool {
	for i, c := range text {
		if c >= 0x7F || c < 0x20 && c != '\n' {
			return false
		}
		if c == '\\' && i+1 < len(text) && text[i+1] != '"' && text[i+1] != '\\' {
			return false
		}
	}
	return true
}

// cleanHeader makes every text of a header safe to show.
func cleanHeader(h *record.Header) {
	v := reflect.ValueOf(h).Elem()
	for i := range v.NumField() {
		switch p := v.Field(i).Addr().Interface().(type) {
		case *string:
			*p = script.Clean(*p)
		case *[]string:
			if len(*p) == 0 {
				continue
			}
			clean := make([]string, len(*p))
			for i, s := range *p {
				clean[i] = script.Clean(s)
			}
			*p = clean
		}
	}
}

// differs names the first field in which two headers differ, "" when none.
func differs(a, b *record.Header) string {
	va, vb := reflect.ValueOf(a).Elem(), reflect.ValueOf(b).Elem()
	for i := range va.NumField() {
		x, y := va.Field(i), vb.Field(i)
		if x.Kind() == reflect.Slice && x.Len() == 0 && y.Len() == 0 {
			continue
		}
		if !reflect.DeepEqual(x.Interface(), y.Interface()) {
			return strings.ToLower(va.Type().Field(i).Name)
		}
	}
	return ""
}
