package call

import (
	"slices"
	"strings"

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
	if w == said.Calm || len(c.mended) > 0 && said.Rests(text) || len(c.alarmsIn(text, false)) > 0 || said.TakesOut(text) {
		return said.Calm
	}
	return w
}

// unread is a line with such words, and the work by which what it tells of was put right.
type unread struct {
	entry  int
	text   string
	feared bool // it proves nothing until it is answered
	right  int
	about  *question
}

// question is what is asked about words that are not understood.
type question struct {
	may, answers string
	codes        []string // the findings that answer it
	by           []string // words of which a line has one that is such an answer
}

var (
	ofDanger = &question{"a danger or of a protective device", "saw hazard, or saw no hazard", []string{"no-hazard", "asked-harmless", "no-called-unsafe", "hazard", "called-unsafe"}, []string{"hazard", "safe"}}
	ofReturn = &question{"the complaint again", "saw complaint back, or saw complaint gone", []string{"complaint-back", "complaint-gone"}, []string{"saw "}}

	questions = []*question{ofDanger, ofReturn}
)

// worry asks about such words, and keeps them: they count as nothing until they are
// answered, whatever is done after them, and what is feared proves nothing until then.
func (c *Call) worry(r *Reply, text string) {
	w := c.worries(text)
	if w == said.Calm {
		return
	}
	c.unread = append(c.unread, unread{entry: c.entry, text: text, feared: w == said.Feared, about: ofDanger})
	if c.lastOf(c.relapsed, c.entry) != c.entry {
		r.add(Ask, "Not read as a danger. If it leaves one, or a protective device out of its circuit: saw hazard; else: saw no hazard.").flag("not-understood")
	}
}

// wonder asks about such words too, and, once the repair was proved, about those on the
// machine or from the client that nothing here understands.
func (c *Call) wonder(r *Reply, text string) {
	c.worry(r, text)
	n := len(c.unread)
	if len(c.mended) == 0 || c.lastOf(c.relapsed, c.entry) == c.entry || n > 0 && c.unread[n-1].entry == c.entry || c.fares(text) != said.Unclear {
		return
	}
	if c.result() != record.Proved && !slices.ContainsFunc(c.toRead(), func(u unread) bool { return u.about == ofReturn }) {
		return
	}
	c.unread = append(c.unread, unread{entry: c.entry, text: text, feared: true, about: ofReturn})
	r.add(Ask, "Not understood. If the complaint is back: saw complaint back; else: saw complaint gone.").flag("not-understood")
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

// toRead is what was asked about and neither put right nor answered by what was seen of
// a danger, or of none.
func (c *Call) toRead() (list []unread) {
	if len(c.unread) == 0 {
		return nil
	}
	danger, back := c.answered(ofDanger), -1
	c.spend(len(c.unread))
	for i := range c.unread {
		u, by := &c.unread[i], danger
		if u.about == ofReturn {
			if back < 0 {
				back = max(c.since(), c.answered(ofReturn))
			}
			by = back
		}
		if u.entry >= by && c.alive(u.entry) && !c.righted(u) {
			list = append(list, *u)
		}
	}
	return list
}

// answered is the last entry that answers what is asked of a kind, 0 when none does.
func (c *Call) answered(q *question) int {
	last := 0
	for _, code := range q.codes {
		list := c.seenAt[code]
		for i := len(list) - 1; i >= 0 && list[i] > last; i-- {
			c.spend(20)
			if n := list[i]; n <= len(c.entries) && c.alive(n) && c.entries[n-1].Kind == "saw" && said.Has(c.entries[n-1].Line, q.by) {
				last = n
			}
		}
	}
	return last
}

// onlyAnswers makes of a finding by which nothing can hurt any more an answer and no more,
// where something was asked about: it takes off no danger that stands beside the question.
func (c *Call) onlyAnswers(codes []string, text string, asked []unread) []string {
	i := slices.Index(codes, "no-hazard")
	if i < 0 || !said.Has(text, []string{"no hazard"}) || len(c.hazardsLeft()) == 0 || !slices.ContainsFunc(asked, func(u unread) bool { return u.about == ofDanger }) {
		return codes
	}
	codes = slices.Clone(codes)
	codes[i] = "asked-harmless"
	return codes
}

// answers says which questions a finding answers, when there was more than one, and what
// stands beside them.
func (c *Call) answers(r *Reply, codes []string, asked []unread) {
	var list []int
	for _, u := range asked {
		if intersects(codes, u.about.codes) {
			list = append(list, u.entry)
		}
	}
	if len(list) > 1 {
		r.add(Plain, "Answers what was asked of "+entryList(list)+".")
	}
	if still := c.stillHazard(); still != "" && among(codes, "asked-harmless") {
		r.add(Ask, still)
	}
}

// unreadWords are those, with what is to be done with them.
func (c *Call) unreadWords() (list []string) {
	for _, u := range c.toRead() {
		list = append(list, quoted(u.text)+atEntry(u.entry)+": it may tell of "+u.about.may+", and is not understood here; "+strings.Replace(u.about.answers, ",", "", 1)+" answers it")
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
