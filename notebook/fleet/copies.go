package fleet

import (
	"bytes"
	"hash/maphash"
	"iter"
	"strings"
	"sync"

	"ohmcall/notebook/call"
	"ohmcall/notebook/script"
)

// trail is what the typed lines of a log say, client and site aside: one digest
// for each line with all before it. A call has the trail of its redacted copy,
// also when it went on afterwards; no other call has, since the lines bear
// their times.
type trail struct {
	lines    []uint64
	redacted bool // client or site is the mark
}

var trailSeed = sync.OnceValue(maphash.MakeSeed)

// trailOf goes through a log's text.
func trailOf(log []byte) trail {
	var t trail
	var m maphash.Hash
	m.SetSeed(trailSeed())
	for line := range bytes.Lines(log) {
		if line[0] < '0' || line[0] > '9' {
			continue
		}
		if bytes.Contains(line, []byte("client ")) || bytes.Contains(line, []byte("site ")) {
			head, text := typedIn(string(line))
			if bare := call.Redacted(text); bare != text || bytes.HasSuffix(line, []byte(call.RedactedMark+"\n")) {
				t.redacted = t.redacted || bare == text
				line = []byte(head + bare)
			}
		}
		m.Write(line)
		m.WriteByte('\n')
		t.lines = append(t.lines, m.Sum64())
	}
	return t
}

// typedIn parts the number and the time of a line from its text.
func typedIn(line string) (head, text string) {
	at := 0
	for range 2 {
		if i := strings.IndexByte(line[at:], ' '); i >= 0 {
			at += i + 1
		}
	}
	return line[:at], strings.TrimSuffix(line[at:], "\n")
}

// copies finds the redacted copies among the calls of a scan. It is not safe
// for concurrent use.
type copies struct {
	calls    map[uint64][]traced // by their first line
	redacted []traced
}

type traced struct {
	trail
	path string
}

// add takes in a call that counts.
func (c *copies) add(it *Item) {
	if len(it.trail.lines) == 0 {
		return
	}
	if c.calls == nil {
		c.calls = map[uint64][]traced{}
	}
	x := traced{it.trail, it.Path}
	first := x.lines[0]
	c.calls[first] = append(c.calls[first], x)
	if x.redacted {
		c.redacted = append(c.redacted, x)
	}
}

// of gives each redacted copy whose original is there, or a later copy of it,
// with that one's path.
func (c *copies) of() map[string]string {
	out := map[string]string{}
	for _, r := range c.redacted {
		n := len(r.lines)
		for _, x := range c.calls[r.lines[0]] {
			longer := len(x.lines) > n || len(x.lines) == n && (!x.redacted || x.path < r.path)
			if longer && x.path != r.path && x.lines[n-1] == r.lines[n-1] && (out[r.path] == "" || !x.redacted) {
				out[r.path] = x.path
			}
		}
	}
	return out
}

// copyOf says of what a file is a redacted copy.
func copyOf(original string) string { return clip("a redacted copy of " + script.Clean(original)) }

// Once passes on the items of a scan of files and folder trees, the redacted
// copies of calls that are there as well marked as such. It goes through the
// files first, replaying nothing, since a copy may come before its original.
func Once(paths []string, items iter.Seq[Item]) iter.Seq[Item] {
	return func(yield func(Item) bool) {
		var c copies
		for it := range Scan(paths, Options{}) {
			if it.State.Counts() {
				c.add(&it)
			}
		}
		out := c.of()
		for it := range items {
			if original := out[it.Path]; original != "" && it.State.Counts() {
				it.State, it.Reason = Redacted, copyOf(original)
			}
			if !yield(it) {
				return
			}
		}
	}
}
