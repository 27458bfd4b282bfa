package call

import (
	"slices"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/notebook/said"
)

// placed is where a line of work belongs that was written down later: to the line
// that had said the same, or behind the entry after which its own time falls.
type placed struct {
	with  int // the line that says the same; 0 for none
	after int // the entry after which it was done
}

// workAt is the entry from which on a line of work counts.
func (c *Call) workAt(n int) int {
	p, ok := c.placed[n]
	switch {
	case !ok:
		return n
	case p.with == 0:
		return p.after
	case c.alive(p.with):
		return c.workAt(p.with)
	}
	return n
}

// saidBefore reports whether a line of work only says again what a line that
// counts had said.
//
//go:noinline
func (c *Call) saidBefore(n int) bool {
	p := c.placed[n]
	return p.with > 0 && c.alive(p.with)
}

// beforeWork is the entry up to which facts came before the work that counts from
// an entry on.
func (c *Call) beforeWork(at int) int {
	if at <= len(c.entries) && !among([]string{"did", "part"}, c.entries[at-1].Kind) {
		return at + 1
	}
	return at
}

// place finds where the work of the line at hand belongs.
func (c *Call) place(a *args, kind, text string) {
	if with := c.sameWork(kind, text); with > 0 {
		c.placed[c.entry] = placed{with: with}
		return
	}
	if s := a.line.Stamp; !s.Set || s.After {
		return
	}
	n := len(c.entries)
	for n > 1 && c.entries[n-1].At.After(c.at) {
		c.spend(1)
		n--
	}
	if n > 0 && n < len(c.entries) {
		c.placed[c.entry] = placed{after: n}
	}
}

// sameWork is the line of the other kind, did or part, since the last repair began
// that names the thing which a line names, and nothing else; 0 when none does. What
// was closed or put off between is done anew.
func (c *Call) sameWork(kind, text string) int {
	from := c.since()
	if from == 0 {
		return 0
	}
	for _, n := range c.closed {
		from = max(from, n)
	}
	if e := c.ending(); e != nil {
		from = max(from, e.entry)
	}
	c.spend(20_000)
	if kind == "part" {
		for i := len(c.works) - 1; i >= 0 && c.works[i].entry >= from; i-- {
			w := &c.works[i]
			if c.spend(5000); w.kind == "did" && c.alive(w.entry) && slices.ContainsFunc(said.Fitted(w.text), func(t []string) bool { return namesPart(t, text) }) {
				return w.entry
			}
		}
		return 0
	}
	things, with := said.Fitted(text), 0
	for _, t := range things {
		at := 0
		for i := len(c.parts) - 1; i >= 0 && c.parts[i].entry >= from; i-- {
			if c.spend(500); c.alive(c.parts[i].entry) && namesPart(t, c.parts[i].name) {
				at = c.parts[i].entry
				break
			}
		}
		if at == 0 {
			return 0
		}
		with = max(with, at)
	}
	for n, p := range c.placed { // any order finds the same
		if c.spend(10); with > 0 && p.with == with && c.alive(n) {
			return 0
		}
	}
	return with
}

// namesPart reports whether the words of a thing name a part: each of them is in
// its name, or in those of its family.
func namesPart(thing []string, part string) bool {
	names := cause.Fold(part)
	for _, b := range breakers {
		if said.Has(part, b.words) {
			names = append(names, cause.Fold(strings.Join(b.words, " "))...)
		}
	}
	return len(names) > 0 && !slices.ContainsFunc(thing, func(w string) bool { return !among(names, w) })
}

// tellVoided says what new work takes its proof from, and how work that was done
// earlier is put in its place.
func (c *Call) tellVoided(r *Reply, line string) {
	if c.saidBefore(c.entry) {
		if with := c.workAt(c.entry); c.establishedBetween(with, c.entry) {
			r.add(Plain, "It says the work of entry "+itoa(with)+" again: what was read and seen since then is its proof.")
		}
		return
	}
	rep := c.repairs()
	at := c.workAt(c.entry)
	if n := len(rep); n < 2 || rep[n-1] != at {
		return
	}
	var was []string
	for _, p := range c.proofList() {
		if s := p.held(c, rep[len(rep)-2]); s.held && !p.held(c, at).held {
			was = append(was, p.point())
		}
	}
	if len(was) > 0 {
		r.add(Warn, "New work: it is not proved by what was shown before it: "+strings.Join(was, "; ")+". If it was done before that, strike "+itoa(c.entry)+
			" and type it with its time before it, as in: 14:05 "+clip(line, 40)+".").flag("proof-void")
	}
}
