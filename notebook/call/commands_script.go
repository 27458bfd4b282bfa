package call

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"ohmcall/calc/cause"
	"ohmcall/calc/sum"
	"ohmcall/notebook/script"
)

// need is one thing that a complete call of this kind must hold, as long as
// its guard holds; "" always does.
type need struct {
	entry int
	what  string
	guard string
}

// mostNeeds is how many needs a call may have: each is looked at anew whenever
// what is missing is told.
const mostNeeds = 500

// wanted reports whether a need counts now.
func (c *Call) wanted(n need) bool {
	if !c.alive(n.entry) {
		return false
	}
	if n.guard == "" {
		return true
	}
	met, err := sum.Condition(n.guard, &scope{c: c, text: n.guard})
	return err == nil && met != sum.No
}

func scriptCommands() []Command {
	return []Command{
		{
			Word: "need", Group: Scripts,
			Params:   []Param{{Name: "WHAT", Kind: Free, Words: needWords}},
			Help:     "what a complete call of this kind must hold",
			Doc:      "WHAT is a reading (ohm A case), a field (serial), a thing done (safe, part), a finding (saw starts) or roles. Behind `when CONDITION:` it counts whenever the condition holds, now or later. It adds to what the complaint asks for.",
			Examples: []string{"need volt line", "need ohm A case", "need serial", `when is(gas, "R-600a"): need safe`},
			apply: func(c *Call, a *args) (*Reply, error) {
				what := a.get("WHAT")
				if len(c.needs) >= mostNeeds {
					return nil, what.errorf("a call needs at most %d things", mostNeeds)
				}
				if _, err := c.holds(what.text); err != nil {
					return nil, what.errorf("%v", err).WithHint("as in: need volt line, need serial, need saw starts")
				}
				if _, err := c.guard(a.line); err != nil && !unreadYet(err) {
					return nil, err
				}
				c.needs = append(c.needs, need{c.entry, what.text, a.line.Guard})
				if a.line.Guard != "" {
					return say("Needed when " + a.line.Guard + ": " + what.text + "."), nil
				}
				return say("Needed: " + what.text + "."), nil
			},
		},
		{
			Word: "date", Group: Scripts,
			Params:   []Param{{Name: "YYYY-MM-DD HH:MM [OFFSET]", Kind: Free}},
			Help:     "when what follows happened; a script with a date replays to the same bytes",
			Doc:      "Entries after it are at that time until a time stands before a line: 14:30, or +40min, which counts from the entry before. The same may be written in any call. Without an offset from UTC, +00:00 is taken. `date now` returns to the clock on the wall; a call that is opened again does so before its first line, unless that is a date.",
			Examples: []string{"date 2026-03-02 09:00", "date 2026-03-02 09:00 -05:00", "date now"},
			apply: func(c *Call, a *args) (*Reply, error) {
				p := a.first()
				if p.text == "now" {
					c.clocks = append(c.clocks, clock{entry: c.entry, wall: true})
					return say("The clock on the wall counts again."), nil
				}
				t, ok := parseDate(p.words)
				if !ok {
					return nil, p.errorf("%q is no date and time", p.text).WithHint("as in: date 2026-03-02 09:00")
				}
				c.clocks = append(c.clocks, clock{entry: c.entry, at: t})
				return say("Date: " + t.Format("2006-01-02 15:04 -07:00") + "."), nil
			},
		},
	}
}

// parseDate reads `2026-03-02 09:00` with an optional offset.
func parseDate(words []script.Word) (time.Time, bool) {
	parts := make([]string, len(words))
	for i, w := range words {
		parts[i] = w.Text
	}
	text := strings.Join(parts, " ")
	for _, layout := range []string{"2006-01-02 15:04 -07:00", "2006-01-02 15:04 -0700", "2006-01-02 15:04:05 -07:00", "2006-01-02 15:04", "2006-01-02 15:04:05", "2006-01-02", time.RFC3339} {
		t, err := time.Parse(layout, text)
		if err != nil || t.Year() < 1970 || t.Year() > 2200 {
			continue
		}
		_, offset := t.Zone()
		return t.In(time.FixedZone("", offset)), true
	}
	return time.Time{}, false
}

func needWords(*Call) []string {
	out := []string{"roles", "safe", "part", "wire", "did", "saw"}
	for _, f := range identityFields {
		out = append(out, f.word)
	}
	for _, q := range qualities {
		out = append(out, q.word)
	}
	return append(out, "plate")
}

// holds reports whether the call holds what a need names; an error says that
// the words name nothing.
func (c *Call) holds(what string) (bool, error) {
	words := strings.Fields(what)
	if len(words) == 0 {
		return false, fmt.Errorf("nothing is named")
	}
	first, rest := words[0], words[1:]
	for _, f := range identityFields {
		if f.word == first && len(rest) == 0 {
			return c.last(first) != "", nil
		}
	}
	if q := qualityOf(first); q != nil {
		if n := len(rest); n > 0 && valueLike(rest[n-1], q.unit) && !onlyDigits(rest[n-1]) {
			return false, fmt.Errorf("a reading is needed by its place, and %s is a value", rest[n-1])
		}
		return c.holdsReading(q, rest), nil
	}
	switch first {
	case "roles":
		m := c.machines[c.mainMachine()]
		return m != nil && m.result.Settled, nil
	case "plate":
		if len(rest) == 0 {
			return slices.ContainsFunc(c.plates, func(p plate) bool { return c.alive(p.entry) }), nil
		}
		if plateKeyOf(rest[0]) == nil {
			return false, fmt.Errorf("%q is not on a plate that is known here", rest[0])
		}
		_, ok := c.plateAt("", rest[0], "")
		return ok, nil
	case "safe", "did", "note":
		for _, w := range c.works {
			if w.kind == first && c.alive(w.entry) {
				return true, nil
			}
		}
		return false, nil
	case "part":
		for _, p := range c.parts {
			if c.alive(p.entry) {
				return true, nil
			}
		}
		return false, nil
	case "wire":
		for _, w := range c.wires {
			if c.alive(w.entry) {
				return true, nil
			}
		}
		return false, nil
	case "saw":
		t := strings.Join(rest, " ")
		if t == "" {
			return slices.ContainsFunc(c.findings, func(f finding) bool { return c.alive(f.entry) }), nil
		}
		if _, _, ok := cause.FindFinding(t); !ok {
			return false, fmt.Errorf("%q is no finding in the list", t)
		}
		return c.established(t), nil
	}
	return false, fmt.Errorf("%q names nothing that a call can hold", what)
}

func (c *Call) holdsReading(q *quality, rest []string) bool {
	var points []string
	var conds []string
	for _, w := range rest {
		if among(conditionWords, w) {
			conds = append(conds, w)
		} else {
			points = append(points, w)
		}
	}
	after := 0
	if among(conds, "after") {
		if rep := c.repairs(); len(rep) > 0 {
			after = rep[len(rep)-1]
		}
	}
	c.spend(2 * len(c.readings))
	for _, r := range c.readings {
		if r.quality != q || !c.alive(r.entry) {
			continue
		}
		if !samePoints(r, points) {
			continue
		}
		ok := true
		for _, k := range conds {
			ok = ok && (r.cond.is(k) || k == "after" && after > 0 && r.entry > after)
		}
		if ok {
			return true
		}
	}
	return false
}

// lastAtPoints is the last reading there that counts, nil for none.
func (c *Call) lastAtPoints(q *quality, points []string) *reading {
	c.spend(2 * len(c.readings))
	for i := len(c.readings) - 1; i >= 0; i-- {
		if r := c.readings[i]; r.quality == q && c.alive(r.entry) && samePoints(r, points) {
			return r
		}
	}
	return nil
}

func samePoints(r *reading, points []string) bool {
	switch len(points) {
	case 0:
		return true
	case 1:
		return strings.EqualFold(r.a, points[0]) || strings.EqualFold(r.b, points[0]) || points[0] == "line" && isLine(r)
	}
	return strings.EqualFold(r.a, points[0]) && strings.EqualFold(r.b, points[1]) ||
		strings.EqualFold(r.a, points[1]) && strings.EqualFold(r.b, points[0])
}

// established reports whether a finding or a fact holds.
func (c *Call) established(what string) bool {
	code := what
	if k, _, ok := cause.FindFinding(what); ok {
		code = k
	}
	for _, f := range c.facts(len(c.entries) + 2) {
		if f.Code == code {
			return true
		}
	}
	return false
}
