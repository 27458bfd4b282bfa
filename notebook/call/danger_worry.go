package call

import (
	"ohmcall/notebook/record"
	"ohmcall/notebook/said"
)

// worries tells how much a text has of words of danger or of a protective device that
// nothing else here understands.
func (c *Call) worries(text string) said.Worry {
	if text == "" {
		return said.Calm
	}
	c.spend(400 * min(len(text), said.MostBytes))
	w := said.Worries(text)
	if w == said.Calm || len(c.alarmsIn(text, false)) > 0 || said.TakesOut(text) {
		return said.Calm
	}
	return w
}

// unread is a line with such words, and the work by which what it tells of was put right.
type unread struct {
	entry  int
	text   string
	feared bool
	right  int
}

// worry asks about such words, and keeps them: they count as nothing until they are
// answered, whatever is done after them, and what is feared proves nothing until then.
func (c *Call) worry(r *Reply, text string) {
	w := c.worries(text)
	if w == said.Calm {
		return
	}
	c.unread = append(c.unread, unread{entry: c.entry, text: text, feared: w == said.Feared})
	if c.lastOf(c.relapsed, c.entry) != c.entry {
		r.add(Ask, "Not read as a danger. If it leaves one, or a protective device out of its circuit: saw hazard; else: saw no hazard.").flag("not-understood")
	}
}

// putRight takes what was asked about for put right, where work names all of it.
func (c *Call) putRight(done string) {
	list := c.unread[max(0, len(c.unread)-mostRenewals):]
	c.spend(400 * len(list))
	for i := range list {
		if u := &list[i]; u.entry < c.entry && !c.righted(u) && said.PutRight(u.text, done) {
			u.right = c.entry
		}
	}
}

func (c *Call) righted(u *unread) bool { return u.right > 0 && c.alive(u.right) }

// answering are the findings that answer what was asked about as a danger.
var answering = []string{"no-hazard", "no-called-unsafe", "hazard", "called-unsafe"}

// toRead is what was asked about and neither put right nor answered by what was seen of
// a danger, or of none.
func (c *Call) toRead() (list []unread) {
	answered := 0
	for _, code := range answering {
		for _, n := range c.seenAt[code] {
			c.spend(1)
			if n <= len(c.entries) && c.alive(n) && c.entries[n-1].Kind == "saw" && said.Has(c.entries[n-1].Line, []string{"hazard", "safe"}) {
				answered = max(answered, n)
			}
		}
	}
	c.spend(len(c.unread))
	for i := range c.unread {
		if u := &c.unread[i]; u.entry >= answered && c.alive(u.entry) && !c.righted(u) {
			list = append(list, *u)
		}
	}
	return list
}

// answers says which questions a finding answers, when there was more than one.
func (c *Call) answers(r *Reply, codes []string, asked []unread) {
	if len(asked) < 2 || !intersects(codes, answering) {
		return
	}
	list := make([]int, len(asked))
	for i, u := range asked {
		list[i] = u.entry
	}
	r.add(Plain, "Answers what was asked of "+entryList(list)+".")
}

// unreadWords are those, with what is to be done with them.
func (c *Call) unreadWords() (list []string) {
	for _, u := range c.toRead() {
		list = append(list, quoted(u.text)+atEntry(u.entry)+": it may tell of a danger or of a protective device, and is not understood here; saw hazard or saw no hazard answers it")
	}
	return list
}

// wordsSince are the words that are to be read for a danger, and those since the repair
// of a proved call.
func (c *Call) wordsSince() (list []string) {
	for _, u := range c.toRead() {
		list = append(list, "to read: "+u.text)
	}
	add := func(text string) {
		if !among(list, "to read: "+text) {
			list = append(list, text)
		}
	}
	if c.result() == record.Proved {
		for _, w := range c.saidSince() {
			add(w.text)
		}
		if s := c.closing(); s != "" {
			add(s)
		}
	}
	return list
}
