package call

import (
	"slices"

	"ohmcall/notebook/record"
	"ohmcall/notebook/said"
)

// worries reports whether a text has words of danger or of a protective device that
// nothing else here understands.
func (c *Call) worries(text string) bool {
	if text == "" {
		return false
	}
	c.spend(400 * min(len(text), said.MostBytes))
	return said.Worries(text) && len(c.alarmsIn(text, false)) == 0 && !said.TakesOut(text)
}

// worry asks about such words: they count as nothing until they are answered.
func (c *Call) worry(r *Reply, text string) {
	if c.lastOf(c.relapsed, c.entry) != c.entry && c.worries(text) {
		r.add(Ask, "Not read as a danger. If it leaves one, or a protective device out of its circuit: saw hazard.").flag("not-understood")
	}
}

// mendings are the last works that mended something.
func (c *Call) mendings() []work {
	var out []work
	for i := len(c.works) - 1; i >= 0 && len(out) < mostSaid; i-- {
		c.spend(20)
		if w := c.works[i]; w.kind == "did" && c.alive(w.entry) && !said.Undone(w.text) {
			out = append(out, w)
		}
	}
	slices.Reverse(out)
	return out
}

// toRead is what was done, or said since the last work, in such words, and not answered by what
// says that nothing is left that can hurt.
func (c *Call) toRead() []string {
	cleared := c.lastShown([]string{"no-hazard", "no-called-unsafe", "hazard", "called-unsafe"})
	var out []string
	for _, w := range append(c.mendings(), c.saidSince()...) {
		if w.entry > cleared && c.worries(w.text) {
			out = append(out, quoted(w.text)+atEntry(w.entry)+unread)
		}
	}
	if s := c.closing(); s != "" && c.lastAt("closing") > cleared && c.worries(s) {
		out = append(out, quoted(s)+atEntry(c.lastAt("closing"))+unread)
	}
	return out
}

const unread = ": it may tell of a danger or of a protective device, and is not understood here"

// wordsSince are the words since the repair of a proved call, those first that are to be
// read for a danger.
func (c *Call) wordsSince() (list []string) {
	if c.result() != record.Proved {
		return nil
	}
	for _, w := range c.saidSince() {
		list = append(list, c.flagged(w.text))
	}
	if s := c.closing(); s != "" {
		list = append(list, c.flagged(s))
	}
	return list
}

func (c *Call) flagged(text string) string {
	if c.worries(text) {
		return "to read: " + text
	}
	return text
}
