package page

import (
	"bytes"
	"errors"
	"fmt"
	"strconv"
	"strings"
	"time"

	"ohmcall/calc/failpoint"
	"ohmcall/notebook/record"
)

// findLog returns where the log's text starts, -1 when there is none. Somebody
// may have copied another call's log into the file: the one that the front
// matter speaks of is taken.
func findLog(h record.Header, body []byte) int {
	first, last := -1, -1
	for at, looked := 0, 0; ; looked++ {
		next := nextLog(body[at:])
		if next < 0 {
			break
		}
		at += next
		last = at
		if first < 0 {
			first = at
		}
		if looked < 8 {
			if text, closed := logText(body[at:]); h.SHA256 != "" && closed && Sum(text) == h.SHA256 ||
				h.SHA256 == "" && h.Started != "" && bytes.HasPrefix(text, []byte("1 "+h.Started+" ")) {
				return at
			}
		}
	}
	if h.State == "closed" {
		return first
	}
	return last
}

// logText is the log up to its closing fence, if it has one.
func logText(log []byte) (text []byte, closed bool) {
	if bytes.HasPrefix(log, []byte(fenceEnd+"\n")) {
		return log[:0], true
	}
	if i := bytes.Index(log, []byte("\n"+fenceEnd+"\n")); i >= 0 {
		return log[:i+1], true
	}
	return log, false
}

// nextLog finds a heading and a fence as a log has them.
func nextLog(body []byte) int {
	mark := []byte("\n" + logHeading + "\n")
	for from := 0; ; {
		i := bytes.Index(body[from:], mark)
		if i < 0 {
			return -1
		}
		from += i + len(mark)
		// Only blank lines and one paragraph of ours stand between.
		at := from
		for range 7 {
			end := bytes.IndexByte(body[at:], '\n')
			if end < 0 {
				return -1
			}
			line := body[at : at+end]
			at += end + 1
			if string(line) == logFence {
				return at
			}
		}
		from-- // the next heading may follow at once
	}
}

// readLog takes the log's text apart.
func (f *File) readLog(log []byte) {
	f.Clean = true
	text, closed := logText(log)
	f.Closed = closed
	end := len(text)
	if f.Closed {
		after := string(log[end+len(fenceEnd)+1:])
		if s := strings.Trim(after, "\n"); s != "" {
			f.written += len(s)
			f.Remarks["log"] = s
		}
	}
	f.SHA256 = Sum(text)
	replies := bytes.Count(text, []byte("\n#"))
	f.Entries = make([]Entry, 0, min(bytes.Count(text, []byte("\n"))-replies, MaxEntries+1))
	f.replies = make([]string, 0, replies)
	rest := string(text)
	for row := f.LogRow; rest != "" && f.stray <= MaxRemarks; row++ {
		line, more, whole := strings.Cut(rest, "\n")
		f.logLine(line, row, whole)
		rest = more
	}
}

func (f *File) logLine(line string, row int, whole bool) {
	if !whole {
		// A fence that a crash cut off closes nothing yet.
		f.Clean = false
		if strings.Trim(line, "`") != "" && !strings.HasPrefix(line, "#") {
			f.Torn += line
		}
		return
	}
	if reply, ok := strings.CutPrefix(line, "#"); ok && (len(f.Entries) > 0 || f.Torn != "") {
		if f.Torn != "" {
			return // the reply to an entry that never counted
		}
		// The replies of all entries stand in one list, each entry's in a row.
		e := &f.Entries[len(f.Entries)-1]
		f.replies = append(f.replies, strings.TrimPrefix(reply, " "))
		end := len(f.replies)
		e.Reply = f.replies[end-len(e.Reply)-1 : end : end]
		return
	}
	if strings.IndexByte(line, 0) >= 0 {
		// Blocks that a loss of power left unwritten read as zeros. Only the
		// last entry can be hit: the others were on disk before it began.
		f.unwritten()
		f.stray += len(line)
		f.Torn, f.tornRow, f.Clean = line, row, false
		return
	}
	e, err := parseEntry(line)
	if err == nil {
		f.unwritten()
	}
	if err != nil {
		if strings.TrimSpace(line) != "" {
			f.Stray = append(f.Stray, line)
			f.stray += len(line)
			f.fault(row, "neither an entry nor a reply: "+err.Error())
		}
		f.Clean = false
		return
	}
	if e.N != len(f.Entries)+1 {
		f.fault(row, fmt.Sprintf("entry %d stands where entry %d is due", e.N, len(f.Entries)+1))
	}
	e.Row = row
	f.Entries = append(f.Entries, e)
}

// unwritten turns what looked like a torn last entry into a stray line, once
// something follows it.
func (f *File) unwritten() {
	if f.Torn == "" {
		return
	}
	f.Stray = append(f.Stray, f.Torn)
	f.fault(f.tornRow, "neither an entry nor a reply: it holds zero bytes")
	f.Torn = ""
}

//go:noinline
func (f *File) fault(row int, text string) {
	if len(f.Faults) < maxFaults {
		f.Faults = append(f.Faults, Fault{row, 1, text})
	}
}

// parseEntry reads `NUMBER TIME TEXT`.
func parseEntry(line string) (Entry, error) {
	number, rest, ok := strings.Cut(line, " ")
	n, err := strconv.Atoi(number)
	if !ok || err != nil || n < 1 || number[0] == '+' {
		return Entry{}, errors.New("it does not start with a number")
	}
	stamp, text, ok := strings.Cut(rest, " ")
	at, err := time.Parse(TimeLayout, stamp)
	if !ok || err != nil {
		return Entry{}, errors.New("no ISO 8601 time follows the number")
	}
	if text = strings.TrimSuffix(text, "\r"); strings.Contains(text, "\r") {
		return Entry{}, errors.New("a carriage return stands in it, which is a line break to some readers")
	}
	return Entry{N: n, At: at, Line: text, Col: len(number) + len(stamp) + 3}, nil
}

// TornText is what is left of the text of a line that was cut off, without its
// number and its time.
func TornText(torn string) string {
	number, rest, _ := strings.Cut(torn, " ")
	if _, err := strconv.Atoi(number); err != nil {
		return torn
	}
	_, text, _ := strings.Cut(rest, " ")
	return text
}

// TimeLayout is how times are written in the log.
const TimeLayout = record.TimeLayout

// AppendEntry writes one log entry with its reply.
func AppendEntry(b []byte, n int, at time.Time, line string, reply []string) []byte {
	b = strconv.AppendInt(b, int64(n), 10)
	b = append(b, ' ')
	b = at.AppendFormat(b, TimeLayout)
	b = append(b, ' ')
	b = append(b, line...)
	b = append(b, '\n')
	for _, r := range reply {
		if !failpoint.On(failpoint.BareReplies) {
			b = append(b, "# "...)
		}
		b = append(b, r...)
		b = append(b, '\n')
	}
	return b
}
