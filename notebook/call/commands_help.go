package call

import (
	"strings"
	"unicode/utf8"

	"ohmcall/calc/formula"
	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
	"ohmcall/calc/sum"
)

func applyHelp(c *Call, a *args) (*Reply, error) {
	word := a.text("WORD")
	switch word {
	case "":
		return helpScreen(), nil
	case "formulas":
		return formulaList(a.get("PART"))
	case "units":
		return unitList(commandHelp(Find("units"))), nil
	}
	r := &Reply{}
	t := topicOf(word)
	if part := a.get("PART"); part.given && (t == nil || !t.narrows) {
		return nil, part.errorf("more than help %s takes", word).WithHint("as in: help %s", word)
	}
	if t != nil && t.page != nil {
		r = t.page(a.text("PART"))
		if len(r.Lines) == 1 {
			return nil, a.get("PART").errorf("none of the %s has %q in it", t.word, a.text("PART")).WithHint("help %s lists them all", t.word)
		}
	}
	if cmd := Find(word); cmd != nil {
		r = commandHelp(cmd)
	}
	if f, ok := formula.Lookup(word); ok {
		return formulaHelp(f), nil
	}
	for _, f := range sum.Functions() {
		if f.Name == word {
			return say(f.Usage() + ": " + f.Help), nil
		}
	}
	if f, ok := (&scope{c: c}).Func(word); ok {
		r.add(Plain, f.Usage()+" in a sum: "+f.Help)
	}
	if d, ok := c.defined(word); ok {
		r.add(Plain, d.line)
	}
	if len(r.Lines) > 0 {
		return r, nil
	}
	p := a.get("WORD")
	e := p.errorf("there is no help on %q", word)
	if n := source.Nearest(word, helpWords(c)); n != "" {
		return nil, e.WithHint("perhaps: help %s", n)
	}
	return nil, e.WithHint("help alone lists the commands")
}

// helpScreen lists the commands on one screen, group by group.
func helpScreen() *Reply {
	r := &Reply{}
	for _, g := range Groups {
		var words []string
		for _, c := range Commands() {
			if c.Group == g {
				words = append(words, c.Word)
			}
		}
		r.add(Plain, pad(string(g), 20)+strings.Join(words, " "))
	}
	r.add(Plain, "Anything else is a sum: 120V / 3.45ohm, ohm(A, B) * 1.2A, cap_load(4.2A, 330V)")
	var pages []string
	for _, t := range topics {
		pages = append(pages, t.word)
	}
	r.add(Plain, "A time (14:30, +40min) or when CONDITION: may stand before a line")
	r.add(Plain, "help WORD tells of one of these, or of")
	half := (len(pages) + 1) / 2
	r.add(Plain, pad("", 20)+strings.Join(pages[:half], " "))
	r.add(Plain, pad("", 20)+strings.Join(pages[half:], " "))
	return r
}

//go:noinline
func pad(s string, n int) string {
	return s + strings.Repeat(" ", max(1, n-utf8.RuneCountInString(s)))
}

func commandHelp(cmd *Command) *Reply {
	r := say(cmd.Usage())
	r.add(Plain, "  "+cmd.Help+endStop(cmd.Help))
	if cmd.Doc != "" {
		r.add(Plain, "  "+cmd.Doc)
	}
	for _, e := range cmd.Examples {
		r.add(Plain, "    "+e)
	}
	if cmd.See != "" {
		r.add(Plain, "  help "+cmd.See+" lists what it knows.")
	}
	return r
}

// formulaGroup is one group of functions of sums.
type formulaGroup struct {
	name string
	rows [][2]string // how it is called, and what it gives
}

func formulaGroups() []formulaGroup {
	var out []formulaGroup
	add := func(name, call, help string) {
		if n := len(out); n == 0 || out[n-1].name != name {
			out = append(out, formulaGroup{name: name})
		}
		g := &out[len(out)-1]
		g.rows = append(g.rows, [2]string{call, help})
	}
	for _, f := range formula.All() {
		add(f.Topic, f.Name, f.Help)
	}
	for _, f := range sum.Functions() {
		add("mathematics", f.Usage(), f.Help)
	}
	for _, f := range callFuncs {
		add("of this call", f.usage, f.help)
	}
	return out
}

// formulaList names the formulas group by group, or shows one group with its
// arguments.
func formulaList(want arg) (*Reply, error) {
	r := &Reply{}
	var names []string
	for _, g := range formulaGroups() {
		names = append(names, g.name)
		if !want.given {
			var calls []string
			for _, row := range g.rows {
				name, _, _ := strings.Cut(row[0], "(")
				calls = append(calls, name)
			}
			r.add(Plain, pad(g.name, 22)+strings.Join(calls, " "))
			continue
		}
		if !strings.HasPrefix(g.name, want.text) {
			continue
		}
		r.add(Plain, g.name+":")
		for _, row := range g.rows {
			if f, ok := formula.Lookup(row[0]); ok {
				row[0] = f.Signature()
			}
			r.add(Plain, "  "+row[0])
			r.add(Plain, "      "+row[1])
		}
	}
	if len(r.Lines) == 0 {
		return nil, withNearest(want.errorf("there is no group of formulas named %s", want.text), want.text, names)
	}
	if !want.given {
		r.add(Plain, "help NAME shows one in full, help formulas GROUP a group with its arguments")
	}
	return r, nil
}

// unitList adds the table of units to a reply.
func unitList(r *Reply) *Reply {
	for _, u := range quantity.Units() {
		r.add(Plain, pad(strings.Join(u.Symbols, ", "), 26)+pad(u.Quantity, 24)+u.Help)
	}
	return r
}

// Language is the page of the language: how a line is written, and every
// command with its form.
func Language() *Reply {
	r := &Reply{}
	for _, s := range languageText {
		r.Lines = append(r.Lines, Line{Plain, s})
	}
	for _, g := range Groups {
		r.Lines = append(r.Lines, Line{}, Line{Plain, string(g) + ":"})
		for _, c := range Commands() {
			if c.Group == g {
				r.add(Plain, "  "+c.Usage())
				r.add(Plain, "      "+c.Help)
			}
		}
	}
	return r
}

var languageText = []string{
	"One line is one statement. A first word that is a command makes a command;",
	"anything else is a sum. # starts a comment, except in free text.",
	"",
	"Values      3.4  3.4k  2.2M  3R4  4k7  OL  ~6.5 (read roughly)  (sum)",
	"Points      any names; case is the metal shell; a part: ptc, heater, earth",
	"Conditions  cold hot start run before after peak closed open ice standing, at 25C, test 500V",
	"Several     ohm A B 3.45, A C ~6.5, B C 2.5; a condition behind the last of a",
	"            like kind counts for all: ohm A case OL, B case OL after",
	"Carry on    after ohm A B 3.4 a bare  C 6.5  means  ohm A C 6.5",
	"In a hurry  ohm A-B 3,4  ohm C case 50meg  ohm A case >200M  temp freezer minus 2",
	"            are written out before they are stored; undo strikes the last entry",
	"Time        14:30 temp freezer -2F    +40min temp freezer -9F",
	"Guard       when is(gas, \"R-600a\"): need safe",
	"Sums        120V / 3.45ohm   75degF in degC   ohm(A, B) * amp(comp)",
}
