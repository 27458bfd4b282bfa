package fleet

import (
	"bytes"
	"cmp"
	"hash/maphash"
	"iter"
	"path/filepath"
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

// copies finds the copies among the calls of a scan: of the same log, redacted,
// or altered. It is not safe for concurrent use.
type copies struct{ calls []*traced }

type traced struct {
	trail
	path   string
	who    string // who, what and when; "" when nobody is named
	whose  string // by whom, on which serial number and when; "" without one
	named  bool   // by its technician or serial number, or by so many lines that no other call has them
	sum    [32]byte
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
	h := &it.Header
	x := &traced{trail: it.trail, path: it.Path, sum: it.sum, state: it.State, unsafe: len(h.Unsafe) > 0}
	x.named = h.Technician+h.Serial != "" || len(x.lines) >= manyLines
	unit := strings.Join([]string{h.Started, serialKey(h.Serial), key(h.Unit)}, "\x00")
	if h.Started != "" && h.Serial != "" {
		x.whose = unit + "\x00" + key(h.Technician)
	}
	if h.Started != "" && h.Client+h.Serial != "" {
		x.who = unit + "\x00" + key(h.Client)
	}
	c.calls = append(c.calls, x)
}

// manyLines are so many that two calls do not have them at the same times.
const manyLines = 8

// original puts of two files of one log the one first of which the other is a
// copy: the one that is as it was closed, then by its name.
func original(a, b *traced) int {
	return cmp.Or(cmp.Compare(copied(a), copied(b)), cmp.Compare(len(filepath.Base(a.path)), len(filepath.Base(b.path))), strings.Compare(a.path, b.path))
}

// copied ranks a file by how far it seems to be a copy.
func copied(x *traced) (rank int) {
	if x.state != Trusted {
		rank = 2
	}
	if name := strings.ToLower(filepath.Base(x.path)); strings.Contains(name, "copy") || strings.Contains(name, "(") {
		rank++ // as "06 copy.md" and "06 (1).md"
	}
	return rank
}

// once gives the calls, by path, without those of a log that another has as well.
func (c *copies) once(out map[string]twin) []*traced {
	order(c.calls, func(a, b **traced) int {
		x, y := *a, *b
		if c := bytes.Compare(x.sum[:], y.sum[:]); c != 0 {
			return c
		}
		return original(x, y)
	})
	var left []*traced
	for i, first := 0, 0; i < len(c.calls); i++ {
		x, o := c.calls[i], c.calls[first]
		if x.sum != o.sum {
			first = i
		} else if i > first && len(x.lines) > 0 && o.standsFor(x) {
			out[x.path] = twin{Copy, clip("the same log as " + script.Clean(o.path))}
			continue
		}
		left = append(left, x)
	}
	order(left, func(a, b **traced) int { return strings.Compare((*a).path, (*b).path) })
	return left
}

// of gives each file that is a copy where its original is there: of the same log;
// redacted, also when the call went on after it; changed since it was closed where
// one of the same start, unit, and client or serial number is as it was; of the same
// lines but for client and site; and with lines with which another begins.
func (c *copies) of() map[string]twin {
	out := map[string]twin{}
	calls, alike := map[uint64][]*traced{}, map[string][]*traced{} // by their first line, by who, what and when
	var redacted []*traced
	for _, x := range c.once(out) {
		for _, who := range []string{x.who, x.whose} {
			if who != "" {
				alike[who] = append(alike[who], x)
			}
		}
		if len(x.lines) == 0 {
			continue
		}
		calls[x.lines[0]] = append(calls[x.lines[0]], x)
		if x.redacted {
			redacted = append(redacted, x)
		}
	}
	for _, list := range alike {
		for _, x := range list {
			i := slices.IndexFunc(list, func(o *traced) bool { return o.state == Trusted })
			if x.state == Changed && i >= 0 && list[i].standsFor(x) {
				out[x.path] = twin{Copy, clip("seems to be an altered copy of " + script.Clean(list[i].path))}
			}
		}
	}
	for _, list := range calls {
		if len(list) < 2 {
			continue
		}
		order(list, func(a, b **traced) int { return original(*a, *b) })
		ends := map[uint64]*traced{} // of each call, what all its lines come to
		for _, x := range list {
			if x.redacted {
				continue
			}
			switch o := ends[x.lines[len(x.lines)-1]]; {
			case o == nil:
				ends[x.lines[len(x.lines)-1]] = x
			case x.named && out[x.path].State == "" && o.standsFor(x):
				out[x.path] = twin{Copy, clip("the same lines as " + script.Clean(o.path) + ", but for client or site")}
			}
		}
		for _, x := range list {
			if _, altered := out[x.path]; altered || x.redacted || x.state == Changed {
				continue // what is not counted, or not believed, stands for no other
			}
			for _, sum := range x.lines[:len(x.lines)-1] {
				if early := ends[sum]; early != nil && early.path != x.path && x.standsFor(early) {
					out[early.path] = twin{Copy, clip("an earlier state of " + script.Clean(x.path))}
				}
			}
		}
	}
	of := map[string]string{}
	for _, r := range redacted {
		n := len(r.lines)
		for _, x := range calls[r.lines[0]] {
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

// gathered is what the calls of a scan tell of each other.
type gathered struct {
	copies copies
	visits []*visit
	same   texts
}

// add takes in a call that counts; what the others tell of it goes into f.
func (g *gathered) add(it *Item, f *Follow) {
	g.copies.add(it)
	if v := newVisit(it, g.same); v.serial != "" && !v.day.IsZero() {
		v.Follow = f
		g.visits = append(g.visits, v)
	}
}

// compare gives the copies, and finds what the other calls tell of each other.
func (g *gathered) compare() map[string]twin {
	out := g.copies.of()
	left := g.visits[:0]
	for _, v := range g.visits {
		if _, copied := out[v.path]; !copied {
			left = append(left, v)
		}
	}
	g.visits = left
	findFollowing(left)
	return out
}

// Once passes on the items of a scan of files and folder trees, the copies of
// calls that are there as well marked as such, and the others with what calls on
// the same unit tell of each other. It goes through the files first, since a copy
// may come before its original, and a call before the one that followed on it. It
// replays nothing then, which would be done twice: what their front matter says
// counts, also of files that are not trusted.
//
//go:noinline
func Once(paths []string, items iter.Seq[Item]) iter.Seq[Item] {
	return once(Scan(paths, Options{}), items)
}

func once(first, items iter.Seq[Item]) iter.Seq[Item] {
	return func(yield func(Item) bool) {
		g, follow := gathered{same: texts{}}, map[string]*Follow{}
		first(func(it Item) bool {
			if it.State.Counts() {
				f := &Follow{}
				follow[it.Path] = f
				g.add(&it, f)
			}
			return true
		})
		out := g.compare()
		g = gathered{}
		items(func(it Item) bool {
			it.follow = follow[it.Path]
			if t, is := out[it.Path]; is && it.State.Counts() {
				it.State, it.Reason = t.State, t.Reason
			}
			return yield(it)
		})
	}
}
