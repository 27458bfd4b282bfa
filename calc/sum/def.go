package sum

import (
	"slices"
	"strings"

	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
)

// definition is a Def as one evaluation holds it.
type definition struct {
	f    Func
	c    *compiled
	err  error
	busy bool // being compiled: a call found now is a recursion
}

// function finds what name calls: a built-in function, one of the host's, or
// a definition. Nil means that there is none; the error is a definition's
// own fault.
func (ev *evaluator) function(name string) (*Func, error) {
	if f := builtins[name]; f != nil {
		return f, nil
	}
	if ev.env == nil {
		return nil, nil
	}
	if d := ev.defs[name]; d != nil {
		if d.busy {
			return nil, source.Errorf(0, 0, "%s calls itself, which would never end", name)
		}
		return &d.f, d.err
	}
	if f, ok := ev.env.Func(name); ok {
		return &f, nil
	}
	def, ok := ev.env.Def(name)
	if !ok {
		return nil, nil
	}
	return ev.define(name, def)
}

// define compiles def once for this evaluation.
func (ev *evaluator) define(name string, def Def) (*Func, error) {
	if ev.depth >= maxDepth {
		return nil, source.Errorf(0, 0, "definitions call each other more than %d deep", maxDepth)
	}
	if err := ev.spend(compileWork * len(def.Body)); err != nil {
		return nil, err
	}
	d := &definition{busy: true}
	if ev.defs == nil {
		ev.defs = make(map[string]*definition)
	}
	ev.defs[name] = d
	ev.depth++
	d.c, d.err = ev.compile(def.Body, def.Params)
	ev.depth--
	d.busy = false
	if d.err != nil {
		d.err = within(name, d.err)
		return nil, d.err
	}
	d.f = Func{Name: name, Result: d.c.kind, Help: def.Help, Params: make([]Param, len(def.Params))}
	for i, p := range def.Params {
		d.f.Params[i].Name = p
	}
	d.f.Call = func(args []Value) (Value, error) {
		if err := ev.spend(len(def.Body)); err != nil {
			return nil, err
		}
		// The arguments are values by now and no definition calls itself, so
		// each is running at most once and may keep its own variables.
		for i, p := range def.Params {
			d.c.vars[p] = args[i]
		}
		v, err := d.c.run()
		if err != nil {
			err = within(name, err)
			if e, ok := err.(*source.Error); ok && strings.Contains(e.Msg, "a plain number") {
				err = e.WithHint("values have their units, such as 4V: %s", d.f.Usage())
			}
			return nil, err
		}
		return v, nil
	}
	return &d.f, nil
}

// spend counts work and refuses what would take too long.
func (ev *evaluator) spend(work int) error {
	if ev.work += callWork + work; ev.work > maxWork {
		return source.Errorf(0, 0, "the definitions in this sum call each other too often")
	}
	return nil
}

// within moves a fault in a definition's body to the call of it.
func within(name string, err error) error {
	e, ok := err.(*source.Error)
	if !ok {
		return err
	}
	c := *e
	c.Col, c.End, c.Msg = 0, 0, "in "+name+": "+e.Msg
	return &c
}

// Check compiles d's body against env without running it. The error's
// columns are those of the text that d was parsed from.
func (d Def) Check(env Env) error {
	ev := evaluator{env: env, defs: map[string]*definition{d.Name: {busy: true}}}
	if env != nil {
		defer func() { env.Spent(4000 + 100*len(d.Body) + 3*ev.work) }()
	}
	_, err := ev.compile(d.Body, d.Params)
	if e, ok := err.(*source.Error); ok {
		return e.Shift(d.at)
	}
	return err
}

// Refs are the names that a text needs from its Env.
type Refs struct {
	Values []string
	Funcs  []string // functions and definitions that are not built in
}

// References lists what text needs from env, in the order typed, so that a
// notebook can carry it along. Names of points inside a call, such as A in
// ohm(A, B), are not among them.
func References(text string, env Env) (Refs, error) {
	return (&evaluator{env: env}).references(text, nil)
}

// References lists what d's body needs from env besides its parameters.
func (d Def) References(env Env) (Refs, error) {
	r, err := (&evaluator{env: env}).references(d.Body, d.Params)
	if e, ok := err.(*source.Error); ok {
		return r, e.Shift(d.at)
	}
	return r, err
}

func (ev *evaluator) references(text string, params []string) (Refs, error) {
	var r Refs
	p, err := prepare(text, ev)
	if err != nil {
		return r, err
	}
	for _, n := range p.names {
		if _, constant := constants[n.text]; !constant && !slices.Contains(params, n.text) {
			if n.per != nil && ev.env != nil {
				if _, ok := ev.env.Lookup(n.text); !ok {
					continue
				}
			}
			r.Values = append(r.Values, n.text)
		}
	}
	for name := range p.calls {
		if builtins[name] == nil {
			r.Funcs = append(r.Funcs, name)
		}
	}
	slices.Sort(r.Funcs)
	return r, nil
}

// NameFault says what keeps word from being the name of a value, a
// parameter or a definition; nil when nothing does.
func NameFault(word string) *source.Error {
	r := []rune(word)
	fault := func(format string) *source.Error {
		return source.Errorf(1, max(len(r), 1)+1, format, source.Short(word))
	}
	for i, c := range r {
		if !wordRune(c) || i == 0 && !letter(c) {
			return fault("%q is not a name: letters, digits and _, a letter first")
		}
	}
	_, constant := constants[word]
	switch {
	case len(r) == 0:
		return fault("a name is missing%s")
	case len(r) > 40:
		return fault("%q is too long for a name")
	case words[word]:
		return fault("%q has a meaning in sums already")
	case builtins[word] != nil || constant:
		return fault("%q is built in and keeps its meaning")
	}
	return nil
}

// Constant reports whether a name is that of a value that every sum knows.
func Constant(name string) bool { _, ok := constants[name]; return ok }

// constants are the names that every sum knows.
var constants = map[string]quantity.Q{"pi": quantity.Number(3.141592653589793)}
