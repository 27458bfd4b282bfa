package fleet

import (
	"bytes"
	"hash/maphash"
	"iter"
	"slices"
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

// copies finds the redacted and the altered copies among the calls of a scan. It
// is not safe for concurrent use.
type copies struct {
	calls    map[uint64][]traced // by their first line
	redacted []traced
	alike    map[string][]traced // by who, what and when
}

type traced struct {
	trail
	path   string
	state  State
	unsafe bool
}

// standsFor reports whether a call may be left out for another: not when it was
// changed and is unsafe, which the other does not say.
func (x *traced) standsFor(o *traced) bool { return o.state != Changed || !o.unsafe || x.unsafe }

// twin is of what a file is a copy, and how it is told.
type twin struct {
	State  State
	Reason string
}

// add takes in a call that counts.
func (c *copies) add(it *Item) {
	x := traced{it.trail, it.Path, it.State, len(it.Header.Unsafe) > 0}
	if h := &it.Header; h.Started != "" && h.Client+h.Serial != "" {
		if c.alike == nil {
			c.alike = map[string][]traced{}
		}
		who := strings.Join([]string{h.Started, key(h.Client), serialKey(h.Serial), key(h.Unit)}, "\x00")
		c.alike[who] = append(c.alike[who], x)
	}
	if len(x.lines) == 0 {
		return
	}
	if c.calls == nil {
		c.calls = map[uint64][]traced{}
	}
	first := x.lines[0]
	c.calls[first] = append(c.calls[first], x)
	if x.redacted {
		c.redacted = append(c.redacted, x)
	}
}

// of gives each redacted copy whose original is there, or a later copy of it,
// and each call that was changed since it was closed where one of the same start,
// client, serial number and unit is as it was: a copy that was altered; and each
// whose lines are those with which another begins.
func (c *copies) of() map[string]twin {
	out := map[string]twin{}
	for _, list := range c.alike {
		for _, x := range list {
			i := slices.IndexFunc(list, func(o traced) bool { return o.state == Trusted })
			if x.state == Changed && i >= 0 && list[i].standsFor(&x) {
				out[x.path] = twin{Copy, clip("seems to be an altered copy of " + script.Clean(list[i].path))}
			}
		}
	}
	for _, list := range c.calls {
		if len(list) < 2 {
			continue
		}
		ends := map[uint64]traced{} // of each call, what all its lines come to
		for _, x := range list {
			if !x.redacted {
				ends[x.lines[len(x.lines)-1]] = x
			}
		}
		order(list, func(a, b *traced) int { return strings.Compare(a.path, b.path) })
		for _, x := range list {
			if _, altered := out[x.path]; altered || x.redacted || x.state == Changed {
				continue // what is not counted, or not believed, stands for no other
			}
			for _, sum := range x.lines[:len(x.lines)-1] {
				if early, is := ends[sum]; is && early.path != x.path && x.standsFor(&early) {
					out[early.path] = twin{Copy, clip("an earlier state of " + script.Clean(x.path))}
				}
			}
		}
	}
	of := map[string]string{}
	for _, r := range c.redacted {
		n := len(r.lines)
		for _, x := range c.calls[r.lines[0]] {
			longer := len(x.lines) > n || len(x.lines) == n && (!x.redacted || x.path < r.path)
			if longer && x.path != r.path && x.lines[n-1] == r.lines[n-1] && (of[r.path] == "" || !x.redacted) {
				of[r.path] = x.path
			}
		}
	}
	for path, original := range of {
		out[path] = twin{Redacted, clip("a redacted copy of " + script.Clean(original))}
	}
	return out
}

// Once passes on the items of a scan of files and folder trees, the copies of
// calls that are there as well marked as such. It goes through the files first,
// replaying nothing, since a copy may come before its original.
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
			if t, is := out[it.Path]; is && it.State.Counts() {
				it.State, it.Reason = t.State, t.Reason
			}
			if !yield(it) {
				return
			}
		}
	}
}
