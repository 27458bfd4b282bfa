package call

import (
	"errors"
	"fmt"
	"slices"
	"sort"
	"strings"

	"ohmcall/calc/formula"
	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
	"ohmcall/calc/sum"
	"ohmcall/calc/trade"
	"ohmcall/notebook/script"
)

// scope is what a sum may name: the call's own values and definitions, its
// readings, its plates, and the formulas of the trade.
type scope struct {
	c     *Call
	text  string       // the sum, and what its own functions stand for
	notes []string     // what formulas said
	used  []basis      // what the sum rests on
	asked []definition // the own names that it used
}

// own notes a definition that the sum uses.
func (s *scope) own(d definition) {
	s.rest(basis{entry: d.entry, asOf: s.c.entry})
	if !slices.ContainsFunc(s.asked, func(o definition) bool { return o.entry == d.entry }) {
		s.asked = append(s.asked, d)
	}
}

// How many definitions are shown beside a sum, and how much of each; the others
// are named by their entries.
const (
	mostAsked = 4
	longAsked = 120 // runes
)

// by says what the sum's own names stood for when it was reckoned.
func (s *scope) by() string {
	text, lead := "", "by "
	for i, d := range s.asked {
		switch {
		case i < mostAsked:
			text += lead + clip(d.said(), longAsked) + atEntry(d.entry)
		case i == mostAsked:
			text += "; more in entries " + itoa(d.entry)
		case i < 4*mostAsked:
			text += ", " + itoa(d.entry)
		}
		lead = "; "
	}
	s.c.spend(10 * len(text))
	return text
}

// Lookup implements sum.Env.
func (s *scope) Lookup(name string) (quantity.Q, bool) {
	d, ok := s.c.defined(name)
	if !ok || d.isFunc {
		return quantity.Q{}, false
	}
	s.own(d)
	s.rest(d.from...)
	return d.value, true
}

// Def implements sum.Env.
func (s *scope) Def(name string) (sum.Def, bool) {
	d, ok := s.c.defined(name)
	if !ok || !d.isFunc {
		return sum.Def{}, false
	}
	s.own(d)
	s.text += " " + d.def.Body
	return d.def, true
}

// Func implements sum.Env.
func (s *scope) Func(name string) (sum.Func, bool) {
	if q := qualityOf(name); q != nil {
		return s.readingFunc(q), true
	}
	for _, f := range callFuncs {
		if f.name == name {
			return f.make(s), true
		}
	}
	if f, ok := formula.Lookup(name); ok && !s.c.redefined(name) {
		use := trade.Use{Note: func(t string) { s.notes = append(s.notes, t) }, Hertz: s.c.ratedHertz()}
		if s.c.last("units") != "" {
			use.Temp = s.c.tempUnit()
		}
		return trade.Func(f, use), true
	}
	return sum.Func{}, false
}

// redefined reports whether a call has a function of its own by a name: that
// counts, so that a record older than a formula stays what it was.
//
//go:noinline
func (c *Call) redefined(name string) bool {
	d, ok := c.defined(name)
	return ok && d.isFunc
}

// Names implements sum.Env.
func (s *scope) Names() []string { return s.c.sumNames() }

// Spent counts what a sum cost.
func (s *scope) Spent(steps int) { s.c.spend(steps) }

// Note implements sum.Env.
//
//go:noinline
func (s *scope) Note(text string) {
	if !among(s.notes, text) {
		s.notes = append(s.notes, text)
	}
}

// sumNames lists every name that a sum can use.
func (c *Call) sumNames() []string {
	var out []string
	c.spend(200 * len(c.defs)) // made here, and held against a slip by the asker
	known := make(map[string]bool, len(c.defs))
	for _, d := range c.defs {
		if c.alive(d.entry) && !known[d.name] {
			known[d.name] = true
			out = append(out, d.name)
		}
	}
	for _, q := range qualities {
		out = append(out, q.word)
	}
	for _, f := range callFuncs {
		out = append(out, f.name)
	}
	for _, f := range formula.All() {
		out = append(out, f.Name)
	}
	out = append(out, sum.Names()...)
	sort.Strings(out)
	return out
}

// lookupName reports whether a bare word has a value.
//
//go:noinline
func (c *Call) lookupName(name string) (quantity.Q, bool) {
	d, ok := c.defined(name)
	return d.value, ok && !d.isFunc
}

// definition is a `let` or a `def`.
type definition struct {
	entry  int
	name   string
	isFunc bool
	value  quantity.Q
	from   []basis // what the value rests on
	def    sum.Def
	help   string
	by     string // as of a sum
	line   string // as typed, so that it can be kept
}

// said is a definition in short: its sum, or its value.
func (d *definition) said() string {
	if d.isFunc {
		return d.name + "(" + strings.Join(d.def.Params, ", ") + ") = " + d.def.Body
	}
	return d.name + " = " + d.value.String()
}

//go:noinline
func (c *Call) defined(name string) (definition, bool) {
	c.spend(2 * len(c.defs))
	for i := len(c.defs) - 1; i >= 0; i-- {
		if c.defs[i].name == name && c.alive(c.defs[i].entry) {
			return c.defs[i], true
		}
	}
	return definition{}, false
}

// Unknown lists the names in a line's sums that this call does not know.
func (c *Call) Unknown(text string) []string { return c.names(text, false) }

// Known lists the names in a line's sums that this call has defined itself.
func (c *Call) Known(text string) []string { return c.names(text, true) }

func (c *Call) names(text string, defined bool) []string {
	var out []string
	for _, expr := range c.expressions(text) {
		refs, err := sum.References(expr, guessing{&scope{c: c}})
		if err != nil {
			continue
		}
		for _, name := range append(refs.Values, refs.Funcs...) {
			if _, own := c.defined(name); own == defined && (own || !(&scope{c: c}).isBuiltIn(name)) {
				out = append(out, name)
			}
		}
	}
	return out
}

// guessing is a scope that takes every unknown name for a function of any
// number of values, so that a text can be read for its names before they are
// defined.
type guessing struct{ *scope }

// Func implements sum.Env.
func (g guessing) Func(name string) (sum.Func, bool) {
	if f, ok := g.scope.Func(name); ok {
		return f, true
	}
	if _, own := g.c.defined(name); own {
		return sum.Func{}, false
	}
	return sum.Func{Name: name, Params: []sum.Param{{Name: "X", Optional: true, Many: true}}}, true
}

// expressions are the parts of a line that are sums.
func (c *Call) expressions(text string) []string {
	l, err := script.Parse(text)
	if err != nil || l.Blank() {
		return nil
	}
	var out []string
	if l.Guard != "" {
		out = append(out, l.Guard)
	}
	cmd := Find(l.Words[0].Text)
	if cmd == nil {
		return append(out, l.Expression())
	}
	a, err := c.bind(cmd, l)
	if err != nil {
		return out
	}
	for i, p := range cmd.Params {
		v := a.at[i]
		switch {
		case !v.given:
		case p.Kind == Expression:
			out = append(out, v.text)
		case p.Kind == Definition && cmd.Word == "def":
			if d, err := sum.ParseDef(v.text); err == nil {
				out = append(out, d.Body)
			}
		case p.Kind == Definition:
			if _, body, ok := strings.Cut(v.text, "="); ok {
				out = append(out, strings.TrimSpace(body))
			}
		case p.Kind == Readings:
			for _, w := range v.words {
				if strings.HasPrefix(w.Text, "(") {
					out = append(out, w.Text)
				}
			}
		}
	}
	return out
}

// readingFunc is ohm(A, B), temp(freezer) and the like: the last reading
// there that counts, with its uncertainty. One taken while the machine started
// is asked for by its condition.
func (s *scope) readingFunc(q *quality) sum.Func {
	return sum.Func{
		Name: q.word,
		Params: []sum.Param{{Name: "POINT", Text: true}, {Name: "POINT", Text: true, Optional: true},
			{Name: "CONDITION", Text: true, Optional: true}},
		Help: "the last " + q.noun + " read there, with its uncertainty",
		Call: func(args []sum.Value) (sum.Value, error) { return s.findReading(q, args) },
	}
}

func (s *scope) findReading(q *quality, args []sum.Value) (sum.Value, error) {
	c := s.c
	var words []string
	for _, a := range args {
		w, _ := a.(string)
		words = append(words, w)
	}
	cond := ""
	if n := len(words); n > 1 && among(conditionWords, words[n-1]) {
		cond, words = words[n-1], words[:n-1]
	}
	a, b := words[0], ""
	if len(words) > 1 {
		b = words[1]
	}
	if q.word == "ohm" && b == "" {
		a = c.gearAtHand(a)
	} else if q.word == "ohm" {
		at := reading{quality: q, a: a, b: b}
		at.toShell()
		a, b = at.a, at.b
	}
	var found, other *reading
	passed := ""
	c.spend(2 * len(c.readings))
	for i := len(c.readings) - 1; i >= 0; i-- {
		r := c.readings[i]
		if r.quality != q || !c.alive(r.entry) || cond != "" && !r.cond.is(cond) {
			continue
		}
		same := strings.EqualFold(r.a, a) && strings.EqualFold(r.b, b) || strings.EqualFold(r.a, b) && strings.EqualFold(r.b, a)
		if !same || r.of != "" && r.of != c.machineAtHand() {
			continue
		}
		if found != nil {
			if !intersects(r.cond.words, notAtRest) {
				other = r
				break
			}
			continue
		}
		if cond == "" && starting(r) {
			if passed = "peak"; r.cond.is("start") {
				passed = "start"
			}
			continue
		}
		if cond == "" {
			if word := s.asks(q, words, r); word != "" {
				passed = word
				continue
			}
		}
		found = r
		if cond != "" || !intersects(r.cond.words, notAtRest) {
			break
		}
	}
	if other != nil {
		s.Note(fmt.Sprintf("%s(%s) is the one read %s, entry %d; entry %d has %s.", q.word, strings.Join(words, ", "), found.cond.String(), found.entry, other.entry, other.shown()))
	}
	at := strings.Join(words, " ")
	if found == nil && cond != "" {
		return nil, early("no "+q.noun+" of "+at+" was read with the word "+cond).WithHint("take it down first: %s %s … %s, or leave the word out", q.word, at, cond)
	}
	if found == nil && passed != "" {
		return nil, early(at+" was read with the word "+passed+" only").WithHint("take it down at rest too: %s %s …; or with its word: %[1]s(%[3]s, %[4]s)", q.word, strings.Join(words, " "), strings.Join(words, ", "), passed)
	}
	if found == nil {
		e := early("no " + q.noun + " of " + at + " was read")
		if two := strings.Fields(at); len(words) == 1 && len(two) == 2 {
			if _, err := s.findReading(q, []sum.Value{two[0], two[1]}); err == nil {
				return nil, e.WithHint("a comma parts two points: %s(%s, %s)", q.word, two[0], two[1])
			}
		}
		if startsLikeNumber(at) {
			return nil, e.WithHint("%s(…) is what was read at a place, as in %[1]s(comp); of values: help formulas", q.word)
		}
		return nil, e.WithHint("take it down first: %s %s …", q.word, at)
	}
	if found.over {
		return nil, (&source.Error{Msg: at + " read " + found.shown() + " in entry " + itoa(found.entry) + ", which is no number"}).
			WithHint("that it is open is asked as has(\"%s %s OL\")", q.word, at)
	}
	s.restOnReading(found)
	return c.quantityOf(found), nil
}

// notAtRest are the conditions in which a reading is another one than at rest.
var notAtRest = []string{"run", "hot"}

// asks is the condition of a reading by which the sum names it beside the one
// without: volt(line) - volt(line, run).
func (s *scope) asks(q *quality, at []string, r *reading) string {
	s.c.spend(len(s.text) * len(r.cond.words))
	text := strings.ToLower(strings.ReplaceAll(strings.ReplaceAll(s.text, " ", ""), `"`, ""))
	for _, w := range r.cond.words {
		for _, points := range []string{strings.Join(at, ","), at[len(at)-1] + "," + at[0]} {
			if strings.Contains(text, strings.ToLower(q.word+"("+points+","+w+")")) {
				return w
			}
		}
	}
	return ""
}

// early is the refusal of a sum of what may yet be read.
//
//go:noinline
func early(msg string) *source.Error { return &source.Error{Early: true, Msg: msg} }

// namedOnPlate is a name under which the plate has a number of a key.
func (c *Call) namedOnPlate(key string) string {
	c.spend(len(c.plates))
	for i := range c.plates {
		if p := &c.plates[i]; p.key == key && p.isQ && c.alive(p.entry) {
			return p.name
		}
	}
	return ""
}

// eval evaluates a sum that starts at a column of the line.
func (c *Call) eval(text string, col int) (sum.Value, *scope, error) {
	s := &scope{c: c, text: text}
	v, err := sum.Eval(text, s)
	if err != nil {
		return nil, nil, shifted(err, col)
	}
	return v, s, nil
}

func (c *Call) evalQuantity(text string, col int) (quantity.Q, error) {
	q, err := sum.Quantity(text, &scope{c: c, text: text})
	if err != nil {
		return q, shifted(err, col)
	}
	return q, nil
}

func shifted(err error, col int) error {
	var e *source.Error
	if errors.As(err, &e) {
		return e.Shift(col - 1)
	}
	return err
}
