package call

import (
	"strings"

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
	case "language":
		return Language(), nil
	case "formulas":
		return formulaList(), nil
	case "units":
		return unitList(commandHelp(byWord["units"])), nil
	}
	r := &Reply{}
	if cmd := byWord[word]; cmd != nil {
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
		for _, c := range commands {
			if c.Group == g {
				words = append(words, c.Word)
			}
		}
		r.add(Plain, pad(string(g), 20)+strings.Join(words, " "))
	}
	r.add(Plain, "Anything else is a sum: 120V / 3.45ohm, ohm(A, B) * 1.2A, cap_load(4.2A, 330V)")
	r.add(Plain, "help WORD tells of one; also: help formulas, help units, help language")
	return r
}

func pad(s string, n int) string {
	if len(s) >= n {
		return s + " "
	}
	return s + strings.Repeat(" ", n-len(s))
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
	return r
}

func formulaList() *Reply {
	r := &Reply{}
	topic := ""
	for _, f := range formula.All() {
		if f.Topic != topic {
			topic = f.Topic
			r.add(Plain, topic+":")
		}
		r.add(Plain, "  "+pad(f.Signature(), 40)+f.Help)
	}
	r.add(Plain, "mathematics:")
	for _, f := range sum.Functions() {
		r.add(Plain, "  "+pad(f.Usage(), 40)+f.Help)
	}
	r.add(Plain, "of this call:")
	for _, f := range callFuncs {
		r.add(Plain, "  "+pad(f.usage, 40)+f.help)
	}
	return r
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
		for _, c := range commands {
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
	"Conditions  cold hot start run before after peak, at 25C, test 500V",
	"Several     ohm A B 3.45, A C ~6.5, B C 2.5",
	"Carry on    after ohm A B 3.4 a bare  C 6.5  means  ohm A C 6.5",
	"Time        14:30 temp freezer -2F    +40min temp freezer -9F",
	"Guard       when is(gas, \"R-600a\"): need safe",
	"Sums        120V / 3.45ohm   75degF in degC   ohm(A, B) * amp(comp)",
}
