package call

import (
	"strconv"
	"strings"

	"ohmcall/calc/source"
	"ohmcall/notebook/record"
)

func endCommands() []Command {
	return []Command{
		{
			Word: "strike", Group: Mends,
			Params:   []Param{{Name: "ENTRY", Kind: EntryRef, Words: lastEntries}, {Name: "REASON", Kind: Text}},
			Help:     "strike an entry, with a reason; it stays legible and counts no more",
			Examples: []string{`strike 5 "probe slipped"`},
			apply:    applyStrike,
		},
		leftCommand(),
		{
			Word: "close", Group: Mends,
			Params:   []Param{{Name: "TEXT", Kind: Text, Optional: true}},
			Help:     "end the call; the record is completed and sealed with the digest of its log",
			Doc:      "A line typed after it opens the call again, but for left, which belongs to it. Without a repair its words tell why: " + endingHints() + ".",
			Examples: []string{`close "customer shown the temperatures"`, "close declined, unit left unplugged", "close"},
			apply: func(c *Call, a *args) (*Reply, error) {
				r := &Reply{}
				c.closed = append(c.closed, c.entry)
				c.set("closing", a.text("TEXT"))
				c.hearEnding(a.text("TEXT"), true)
				c.told(r, a.text("TEXT"), false)
				c.guards(r, a.text("TEXT"))
				c.shownGone(r, a.text("TEXT"))
				c.wonder(r, a.text("TEXT"))
				m := c.missing()
				unsafe := c.unsafe()
				switch {
				case len(unsafe) > 0:
					r.add(Bad, "Closed as unsafe.").flag("closed-unsafe")
				case len(m) == 0:
					r.add(Good, "Closed; nothing is missing.")
				default:
					r.add(Plain, "Closed.")
				}
				for _, s := range unsafe {
					r.add(Bad, "Unsafe: "+s+".")
				}
				if len(c.repairs()) == 0 { // else it is missing as a proof
					for _, s := range c.alarms() {
						r.add(Ask, "What is wanted is "+c.proofOf(s.alarm, s.at)+".")
					}
				}
				for _, s := range c.unreadWords() {
					r.add(Ask, "To read: "+s+".")
				}
				if s := c.faultless(); s != "" {
					r.add(Ask, "Contradiction: "+s+".")
				}
				if c.result() == record.NoRepair {
					r.add(Ask, "No repair is written down; a word behind close says why: "+endingHints()+".")
				}
				if len(m) == 0 {
					return r, nil
				}
				for _, s := range m {
					r.add(Ask, "Missing: "+s+".")
				}
				return r.flag("closed-incomplete"), nil
			},
		},
	}
}

// lastEntries offers the latest entries to be struck.
func lastEntries(c *Call) []string {
	var out []string
	for i := len(c.entries) - 1; i >= 0 && len(out) < 9; i-- {
		cmd := Find(c.entries[i].Kind)
		if c.alive(i+1) && (cmd == nil || cmd.Group != Asks) {
			out = append(out, strconv.Itoa(i+1))
		}
	}
	return out
}

func applyStrike(c *Call, a *args) (*Reply, error) {
	p := a.get("ENTRY")
	if len(c.entries) == 0 {
		return nil, p.errorf("no entry is there yet that could be struck")
	}
	n, err := strconv.Atoi(p.text)
	if err != nil || n < 1 || n > len(c.entries) {
		return nil, p.errorf("there is no entry %s", p.text).WithHint("strike takes the number of an entry, 1 to %d, and a reason", len(c.entries))
	}
	if reason, gone := c.struck[n]; gone {
		return nil, p.errorf("entry %d is struck already: %s", n, reason)
	}
	e := c.entries[n-1]
	if unstrikable(e.Kind) {
		return nil, p.errorf("entry %d is a %s and cannot be struck", n, e.Kind).WithHint("strike the entry that it is about, or write a note")
	}
	reason := unquote(a.text("REASON"))
	first, more, _ := strings.Cut(reason, " ")
	if another, err := strconv.Atoi(first); strings.HasPrefix(reason, ",") || err == nil && more != "" && another > 0 && another <= len(c.entries) {
		r := a.get("REASON")
		return nil, source.Errorf(r.col, r.col+1, "strike takes one entry").WithHint("strike each with its reason: strike %d probe slipped", n)
	}
	c.struck[n] = reason
	if k := len(c.closed); k > 0 && n < c.closed[k-1] {
		c.struckLate = append(c.struckLate, c.entry)
	}
	r := say("Struck entry " + itoa(n) + " (" + e.Line + "): " + reason + ".")
	c.shake(r, n)
	for _, of := range c.machineNames() {
		c.machines[of].shown = nil
	}
	return c.reread(r), nil
}

// unstrikable tells the entries that cannot be struck by their kind.
func unstrikable(kind string) bool { return kind == "strike" || kind == "close" || kind == "use" }

// Closed reports whether nothing but questions, and how the unit was left, came
// after the last `close`.
func (c *Call) Closed() bool {
	switch n := len(c.closed); {
	case n == 0:
		return false
	case c.closed[n-1] > len(c.entries):
		return true // by the line being applied
	}
	for _, e := range c.entries[c.closed[len(c.closed)-1]:] {
		if cmd := Find(e.Kind); cmd == nil || cmd.Group != Asks && cmd.Word != "left" {
			return false
		}
	}
	return true
}
