package call

import (
	"cmp"
	"maps"
	"math"
	"slices"
	"strconv"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/calc/failpoint"
	"ohmcall/calc/formula"
	"ohmcall/calc/repair"
	"ohmcall/calc/sum"
	"ohmcall/calc/winding"
)

func askCommands() []Command {
	return []Command{
		{
			Word: "roles", Group: Asks,
			Help:     "what the pins of the machine at hand are, with the readings that prove it",
			Examples: []string{"roles"},
			apply:    applyRoles,
		},
		{
			Word: "next", Group: Asks,
			Help:     "the next useful test, and why",
			Examples: []string{"next"},
			apply:    applyNext,
		},
		{
			Word: "why", Group: Asks,
			Params:   []Param{{Name: "ENTRY|CAUSE", Kind: Free, Optional: true, Words: func(c *Call) []string { return c.causeCodes() }}},
			Help:     "what an answer rests on, back to entries and sources",
			Doc:      "Alone it tells of the cause that the findings show, else of the last verdict.",
			Examples: []string{"why 3", "why start-device-failed", "why"},
			apply:    applyWhy,
		},
		{
			Word: "causes", Group: Asks,
			Help:     "which causes are open, supported or ruled out, and by which entries",
			Examples: []string{"causes"},
			apply:    applyCauses,
		},
		{
			Word: "missing", Group: Asks,
			Help:     "what a complete record of this call still wants",
			Examples: []string{"missing"},
			apply: func(c *Call, _ *args) (*Reply, error) {
				m := c.missing()
				if len(m) == 0 {
					return (&Reply{}).add(Good, "Nothing is missing."), nil
				}
				r := &Reply{}
				for _, s := range m {
					r.add(Ask, "Missing: "+s+".")
				}
				return r, nil
			},
		},
		{
			Word: "show", Group: Asks,
			Params:   []Param{{Name: "WHAT", Kind: Choice, Words: showWords, Optional: true}},
			Help:     "where the call stands; or its readings, verdicts, sums, parts, wiring, cautions or curve",
			Examples: []string{"show", "show readings"},
			apply:    applyShow,
		},
		{
			Word: "choose", Group: Asks,
			Params:   []Param{{Name: "PART", Kind: Choice, Words: func(*Call) []string { return []string{"start-kit", "run-cap", "start-cap", "overload"} }}},
			Help:     "what the part to fit must say on its own label",
			Examples: []string{"choose start-kit"},
			apply:    applyChoose,
		},
		{
			Word: "worth", Group: Asks,
			Params:   []Param{{Name: "KEY VALUE, …", Kind: Fields, Optional: true, Words: func(*Call) []string { return repair.Assume(true).Names() }}},
			Help:     "repair or replace: the sum over the years, with each assumption changeable",
			Doc:      worthDoc(),
			Examples: []string{"worth repair-cost 180, replacement-price 650, age 9"},
			apply:    applyWorth,
		},
		{
			Word: "help", Group: Asks, Screen: true,
			Params:   []Param{{Name: "WORD", Kind: Name, Optional: true, Words: helpWords}, {Name: "PART", Kind: Free, Optional: true, Words: formulaTopics}},
			Help:     "the commands, or one command, formula, function or page",
			Examples: []string{"help", "help ohm", "help cap_load", "help formulas capacitors"},
			apply:    applyHelp,
		},
	}
}

// roleOf is the role of a pin in words, "" when it is not known.
func roleOf(res *winding.Result, pin string) string {
	if role := string(res.Roles[pin]); role != "" || !res.Alike {
		return role
	}
	return "none"
}

// rolesTable shows a machine's pins in columns.
func (c *Call) rolesTable(m *machine) *Table {
	t := &Table{Head: []string{"Pin", "Role"}}
	if m.name == c.mainMachine() && c.gapWide() {
		t.Head[1] = "Role, in doubt"
	}
	for _, p := range m.result.Pins {
		t.Rows = append(t.Rows, []string{p, cmp.Or(roleOf(&m.result, p), "not known")})
	}
	return t
}

func applyRoles(c *Call, _ *args) (*Reply, error) {
	m := c.machines[c.machineAtHand()]
	if m == nil {
		return (&Reply{}).add(Ask, "No pins of "+c.machineAtHand()+" were read yet: ohm A B 3.4 takes the first pair down."), nil
	}
	r := &Reply{}
	for i, n := range m.result.Notes {
		tone := Plain
		if i == 0 {
			tone = toneOf(m.result)
		}
		r.add(tone, n)
	}
	r.Table = c.rolesTable(m)
	r.Windings = []Windings{windingsOf(m)}
	return r, nil
}

func (c *Call) machineNames() []string {
	names := map[string]bool{}
	c.spend(200 * len(c.machines))
	for of := range c.machines {
		names[of] = true
	}
	if failpoint.On(failpoint.MapOrder) {
		return slices.Collect(maps.Keys(names))
	}
	return sortedNames(names)
}

func (c *Call) causeCodes() []string {
	r := c.weigh(math.MaxInt)
	var out []string
	for i := range r.Standings {
		out = append(out, r.Standings[i].Cause.Code)
	}
	return out
}

func applyCauses(c *Call, _ *args) (*Reply, error) {
	r := c.weigh(math.MaxInt)
	if len(r.Standings) == 0 {
		return (&Reply{}).add(Ask, "No complaint to weigh causes for: fault clicks and does not cool, or saw …"), nil
	}
	reply := say(strconv.Itoa(len(r.Codes(cause.Supported))) + " supported, " + strconv.Itoa(len(r.Codes(cause.Open))) + " open, " +
		strconv.Itoa(len(r.Codes(cause.RuledOut))) + " ruled out.")
	t := &Table{Head: []string{"Cause", "Standing", "By entries"}}
	var out []string
	for _, state := range []cause.State{cause.Supported, cause.Open, cause.RuledOut} {
		for i := range r.Standings {
			switch s := &r.Standings[i]; {
			case s.State != state:
			case state == cause.RuledOut:
				out = append(out, s.Cause.Name+" ("+entriesWord(s.Against)+")")
			default:
				t.Rows = append(t.Rows, []string{s.Cause.Name, string(s.State), cmp.Or(factEntries(s.For), "none")})
			}
		}
	}
	if len(out) > 0 {
		reply.add(Plain, "Ruled out: "+strings.Join(out, "; ")+".")
	}
	for _, k := range r.Contradictions {
		reply.add(Warn, c.contradiction(k)+".")
	}
	if r.Exhausted {
		reply.add(Warn, "Every cause is ruled out: the findings cannot all be right.")
	}
	reply.Table = t
	reply.Causes = &Causes{Open: append(r.Codes(cause.Supported), r.Codes(cause.Open)...), RuledOut: r.Codes(cause.RuledOut), Next: c.nextStep(&r)}
	return reply, nil
}

func applyWhy(c *Call, a *args) (*Reply, error) {
	p := a.get("ENTRY|CAUSE")
	if !p.given {
		return c.whyLast(), nil
	}
	if n, err := strconv.Atoi(p.text); err == nil {
		if n < 1 || n > len(c.entries) {
			return nil, p.errorf("there is no entry %d", n).WithHint("the call has %d entries", len(c.entries))
		}
		return c.whyEntry(n), nil
	}
	r := c.weigh(math.MaxInt)
	lines := cause.Why(p.text, r)
	if len(lines) == 0 {
		return nil, withNearest(p.errorf("%q is neither an entry nor a cause of this complaint", p.text), p.text, c.causeCodes())
	}
	reply := &Reply{}
	for _, l := range lines {
		reply.add(Plain, l)
	}
	return reply, nil
}

// whyLast tells of the cause to mend or the first that is supported, else of
// the entry of the last verdict.
func (c *Call) whyLast() *Reply {
	r := c.weigh(math.MaxInt)
	lead := append(r.Codes(cause.Supported), "")[0]
	if r.Repair != nil {
		lead = r.Repair.Code
	}
	reply, last := &Reply{}, 0
	c.spend(20 * len(c.subjects))
	for _, key := range c.subjects {
		if j := c.judged[key]; j != nil {
			for _, n := range j.verdict.Entries {
				last = max(last, n)
			}
		}
	}
	for _, l := range cause.Why(lead, r) {
		reply.add(Plain, l)
	}
	switch {
	case last == 0 && lead == "":
		return reply.add(Ask, "Nothing is judged and no cause is shown yet; why takes the number of an entry, or a cause that causes names.")
	case lead == "":
		return c.whyEntry(last)
	case last > 0:
		reply.add(Plain, "why "+itoa(last)+" tells what the last verdict rests on.")
	}
	return reply
}

// whyEntry tells what an entry said and what rests on it.
func (c *Call) whyEntry(n int) *Reply {
	e := c.entries[n-1]
	r := say("Entry " + itoa(n) + ": " + e.Line)
	if reason, gone := c.struck[n]; gone {
		r.add(Warn, "Struck: "+reason+".")
	}
	if e.Reply != nil {
		for _, l := range e.Reply.Lines {
			r.add(l.Tone, "  "+l.Text)
		}
	}
	for _, key := range c.subjects {
		j := c.judged[key]
		if j == nil {
			continue
		}
		for _, m := range j.verdict.Entries {
			if m == n {
				r.add(Plain, "Rests on it: "+j.verdict.Subject+", "+string(j.verdict.Word)+" ("+cmp.Or(j.verdict.Source, "common practice")+").")
				for _, also := range j.verdict.Also {
					r.add(Plain, "  "+also+endStop(also))
				}
				break
			}
		}
	}
	res := c.weigh(math.MaxInt)
	for i := range res.Standings {
		s := &res.Standings[i]
		for _, f := range append(append([]cause.Fact(nil), s.For...), s.Against...) {
			if f.Entry == n && s.State != cause.Open {
				r.add(Plain, "Bears on a cause: "+s.Cause.Name+", "+string(s.State)+".")
				break
			}
		}
	}
	return r
}

// helpWords are what help knows besides commands.
func helpWords(c *Call) []string {
	out := append(c.ownNames(), commandWords()...)
	for _, f := range formula.All() {
		out = append(out, f.Name)
	}
	for _, f := range sum.Functions() {
		out = append(out, f.Name)
	}
	for _, t := range topics {
		if Find(t.word) == nil {
			out = append(out, t.word)
		}
	}
	return out
}

// formulaTopics are the groups that help formulas can be narrowed to.
func formulaTopics(*Call) []string {
	var out []string
	for _, g := range formulaGroups() {
		out = append(out, g.name)
	}
	return out
}

func showWords(*Call) []string {
	return []string{"readings", "verdicts", "sums", "parts", "wiring", "cautions", "curve", "log"}
}
