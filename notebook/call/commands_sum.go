package call

import (
	"strings"

	"ohmcall/calc/formula"
	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
	"ohmcall/calc/sum"
	"ohmcall/notebook/script"
)

// sumLine is an evaluated expression.
type sumLine struct {
	entry int
	text  string
	value string
	out   *Sum
	from  []basis
	by    string // the definitions that it used, as they were then
}

func sumCommands() []Command {
	expr := func(name string) Param {
		return Param{Name: name, Kind: Expression, Words: func(c *Call) []string { return c.sumNames() }}
	}
	return []Command{
		{
			Word: "let", Group: Sums,
			Params:   []Param{{Name: "NAME = SUM", Kind: Definition, Words: func(c *Call) []string { return c.sumNames() }}, {Name: "HELP", Kind: Quoted, Optional: true}},
			Help:     "give a value a name",
			Examples: []string{"let drop = 121.4V - 117.8V", `let tariff = 0.31 "money per kWh"`},
			apply:    applyLet,
		},
		{
			Word: "def", Group: Sums,
			Params:   []Param{{Name: "NAME(A, B) = SUM", Kind: Definition, Words: func(c *Call) []string { return c.sumNames() }}, {Name: "HELP", Kind: Quoted, Optional: true}},
			Help:     "give a sum with parameters a name",
			Examples: []string{`def sag(rest, load) = (rest - load) / rest * 100 "percent of the volts at rest"`},
			apply:    applyDef,
		},
		{
			Word: "expect", Group: Sums,
			Params:   []Param{expr("CONDITION"), {Name: "MEANING", Kind: Quoted}},
			Help:     "write down a judgement; it stays in the record as met, not met or cannot tell",
			Doc:      "One whose reading is still to come waits, counts as missing, and is judged when the reading is there.",
			Examples: []string{`expect 121.4V - 117.8V < 6V "sag at start within 5 %"`},
			apply:    applyExpect,
		},
		{
			Word: "use", Group: Sums,
			Params:   []Param{{Name: "FILE", Kind: File}},
			Help:     "take in the lines of another .call file, such as a collection of snippets",
			Doc:      "The lines become entries of this call, so that the record replays without the file. Where one is refused, none is taken. What is there already in the same words is passed over; a let whose readings have changed is worked out anew. Close, date, client, site, strike and times are of one call and refused.",
			Examples: []string{"use refrigeration.call"},
			apply: func(c *Call, a *args) (*Reply, error) {
				return say("From " + a.text("FILE") + ":"), nil
			},
		},
		{
			Word: "keep", Group: Sums,
			Params:   []Param{{Name: "NAME", Kind: Name, Words: func(c *Call) []string { return c.ownNames() }}},
			Help:     "put a definition of this call into your own snippets, for calls to come",
			Examples: []string{"keep sag"},
			apply: func(c *Call, a *args) (*Reply, error) {
				if _, ok := c.defined(a.text("NAME")); !ok {
					return nil, withNearest(a.get("NAME").errorf("%s is not defined in this call", a.text("NAME")), a.text("NAME"), c.ownNames())
				}
				return say("Kept: " + a.text("NAME") + "."), nil
			},
		},
	}
}

// ownNames lists the names that the call itself defines.
func (c *Call) ownNames() []string {
	var out []string
	for _, d := range c.defs {
		if c.alive(d.entry) && !among(out, d.name) {
			out = append(out, d.name)
		}
	}
	return out
}

// DefinitionLine is what defines a name in this call, without the time before it.
func (c *Call) DefinitionLine(name string) (string, bool) {
	d, ok := c.defined(name)
	return d.line, ok
}

func applyLet(c *Call, a *args) (*Reply, error) {
	p := a.get("NAME = SUM")
	name, expr, ok := strings.Cut(p.text, "=")
	if !ok || strings.HasPrefix(expr, "=") {
		return nil, p.errorf("the name and its sum are parted by =").WithHint("as in: let drop = 121.4V - 117.8V")
	}
	lead := len([]rune(name)) + 1
	bare := strings.TrimSpace(name)
	if err := c.nameFree(bare, p); err != nil {
		return nil, err
	}
	trimmed := strings.TrimLeft(expr, " ")
	col := p.col + lead + len(expr) - len(trimmed)
	if trimmed == "" {
		return nil, p.errorf("%s has no sum", bare).WithHint("as in: let drop = 121.4V - 117.8V")
	}
	s := &scope{c: c, text: trimmed}
	q, err := sum.Quantity(trimmed, s)
	if err != nil {
		return nil, shifted(err, col)
	}
	old, again := c.defined(bare)
	c.defs = append(c.defs, definition{entry: c.entry, name: bare, value: q, from: s.used, by: s.by(), help: a.text("HELP"), line: a.line.Body})
	r := say(bare + " = " + q.String())
	if again {
		r.add(Plain, "It was: "+old.said()+".")
	}
	for _, n := range append(s.doubts(), s.notes...) {
		r.add(Plain, n)
	}
	r.Sum = sumOf(q)
	return r, nil
}

// nameFree refuses a name that is taken: a built-in may not be shadowed.
func (c *Call) nameFree(name string, p arg) error {
	if err := sum.NameFault(name); err != nil {
		return err.Shift(p.col - 1)
	}
	_, formulas := formula.Lookup(name)
	if _, own := c.defined(name); own || formulas {
		return nil // see Doubtful
	}
	if Find(name) != nil || (&scope{c: c}).isBuiltIn(name) {
		return source.Errorf(p.col, p.col+len([]rune(name)), "%s is built in and cannot be given another meaning", name).
			WithHint("choose another name")
	}
	return nil
}

func (s *scope) isBuiltIn(name string) bool {
	if among(sum.Names(), name) {
		return true
	}
	_, ok := s.Func(name)
	return ok
}

func applyDef(c *Call, a *args) (*Reply, error) {
	p := a.first()
	d, err := sum.ParseDef(p.text)
	if err != nil {
		return nil, shifted(err, p.col)
	}
	d.Help = a.text("HELP")
	if err := c.nameFree(d.Name, p); err != nil {
		return nil, err
	}
	if err := d.Check(&scope{c: c}); err != nil {
		return nil, shifted(err, p.col)
	}
	old, again := c.defined(d.Name)
	c.defs = append(c.defs, definition{entry: c.entry, name: d.Name, isFunc: true, def: d, help: d.Help, line: a.line.Body})
	r := say(d.Name + "(" + strings.Join(d.Params, ", ") + ") defined.")
	if again {
		r.add(Plain, "It was: "+old.said()+".")
	}
	return r.add(Plain, d.Help), nil
}

// guard evaluates the condition before a line; Yes when there is none.
func (c *Call) guard(l *script.Line) (sum.Truth, error) {
	if l.Guard == "" {
		return sum.Yes, nil
	}
	v, err := sum.Condition(l.Guard, &scope{c: c, text: l.Guard})
	if err != nil {
		return sum.No, shifted(err, l.GuardCol)
	}
	return v, nil
}

// guarded says why a line whose guard came to met does nothing; nil when it
// may go on.
func guarded(met sum.Truth, nothing string) *Reply {
	switch met {
	case sum.Yes:
		return nil
	case sum.Unsure:
		return (&Reply{}).add(Ask, "Condition cannot be told, "+tooClose+"; "+nothing+".")
	}
	return say("Condition not met; " + nothing + ".")
}

// tooClose is why a condition cannot be told.
const tooClose = "what it compares lies closer together than its doubt"

// applySum evaluates a line that is no command.
func (c *Call) applySum(l *script.Line) (*Reply, error) {
	text := l.Expression()
	v, scope, err := c.eval(text, l.BodyCol)
	if err != nil {
		return nil, err
	}
	r := &Reply{}
	s := sumLine{entry: c.entry, text: text, from: scope.used, by: scope.by()}
	switch x := v.(type) {
	case quantity.Q:
		s.value, s.out = x.String(), sumOf(x)
		r.Sum = s.out
		r.add(Plain, "= "+s.value)
	case sum.Truth:
		s.value = x.String()
		if x == sum.Unsure {
			r.add(Plain, s.value+": "+tooClose)
		} else {
			r.add(Plain, s.value)
		}
	}
	for _, n := range append(scope.doubts(), scope.notes...) {
		r.add(Plain, n)
	}
	c.sums = append(c.sums, s)
	if bare := strings.TrimSpace(text); startsLikeNumber(bare) && !strings.ContainsAny(bare, " +-*/(^") && len(c.readings) > 0 &&
		valueLike(bare, c.readings[len(c.readings)-1].quality.unit) {
		last := c.readings[len(c.readings)-1]
		r.add(Ask, bare+" alone is a sum, no reading; a reading names its points: "+last.quality.word+" "+strings.TrimRight(last.a+" "+last.b, " ")+" "+bare)
	}
	return r, nil
}

func sumOf(q quantity.Q) *Sum {
	v, unit, u := q.Shown()
	return &Sum{Value: v, Unit: unit, U: u}
}

// formulaHelp is what `help NAME` shows of a formula.
func formulaHelp(f *formula.Formula) *Reply {
	r := say(f.Signature() + ": " + f.Help)
	r.add(Plain, "Formula: "+f.Equation)
	for _, p := range f.Params {
		s := "  " + p.Name
		if p.Unit != "" {
			s += " in " + p.Unit
		}
		if p.Words != nil {
			s += ", one of " + strings.Join(p.Words, ", ")
		}
		if p.Optional && p.Words == nil {
			s += ", " + number(p.Default) + " when left out"
		} else if p.Optional {
			s += ", " + p.DefaultWord + " when left out"
		}
		r.add(Plain, s+": "+p.Help)
	}
	r.add(Plain, "Valid: "+f.Valid)
	r.add(Plain, "Source: "+f.Source)
	return r.add(Plain, "Example: "+f.Example.Call+"   "+f.Example.Text)
}
