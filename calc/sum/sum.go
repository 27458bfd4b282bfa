// Package sum evaluates a typed expression with units.
//
// The notation is that of expr-lang/expr, which parses, compiles and runs it,
// cut down to what a sum needs: values with units (`47uF`, `3.4k`, `4k7`,
// `1/6 hp`, `-2F`), names, + - * / ^, comparisons, and, or, not, `a ? b : c`,
// and calls of declared functions. `X in UNIT` converts: `75F in degC`,
// `(40psi in psia) / (5psi in psia)`, `ohm(A, B) in kohm`; it binds weaker
// than arithmetic, so `a + b in kW` converts the whole sum. A number with a
// unit is one value: `1/6 hp` is a sixth of a horsepower, `5%` is 0.05. In a
// sum `F` and `C` after a number are degrees, and `R47` is a name.
//
// A text goes through four gates: its length, a pass that turns literals into
// generated names and refuses signs that no sum needs, a walk over the parsed
// tree that allows by kind of node, and expr's own checker. What passes ends
// in time linear in its length. Nothing here reads a clock, a file or chance.
package sum

import (
	"cmp"
	"errors"
	"strings"

	"github.com/expr-lang/expr/ast"
	"github.com/expr-lang/expr/checker"
	"github.com/expr-lang/expr/compiler"
	"github.com/expr-lang/expr/conf"
	"github.com/expr-lang/expr/file"
	"github.com/expr-lang/expr/parser"
	"github.com/expr-lang/expr/vm"

	"ohmcall/calc/failpoint"
	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
)

// Limits of one evaluation. maxBytes holds before anything is parsed, since
// parentheses cost the parser stack without making nodes.
const (
	maxBytes = 512
	maxNodes = 600
	maxDepth = 16 // definitions inside definitions

	// maxWork bounds what definitions may add to one sum. Compiling a body
	// counts compileWork for each of its bytes, running it counts one.
	maxWork     = 48000
	compileWork = 16
	callWork    = 16   // for each besides
	nearWork    = 6000 // the search for what an unknown name may have meant
)

// Eval evaluates text. The value is a quantity.Q or, for a comparison, a
// Truth. The error is a *source.Error with columns in text. env may be nil.
func Eval(text string, env Env) (Value, error) {
	failpoint.Unlimited(text)
	ev := evaluator{env: env}
	if env != nil {
		defer func() { env.Spent(2500 + 80*len(text) + 3*ev.work) }()
	}
	c, err := ev.compile(text, nil)
	var v Value
	if err == nil {
		v, err = c.run()
	}
	if err != nil {
		return nil, ev.instead(text, err)
	}
	if env != nil {
		ev.tell(c, v)
	}
	if q, ok := v.(quantity.Q); ok && len(c.prep.calls) == 0 {
		v = c.preferred(q)
	}
	if yes, ok := v.(bool); ok {
		return ev.truth(c, yes), nil
	}
	return v, err
}

// Quantity is Eval for where only a quantity will do.
func Quantity(text string, env Env) (quantity.Q, error) {
	v, err := Eval(text, env)
	if err != nil {
		return quantity.Q{}, err
	}
	if q, ok := v.(quantity.Q); ok {
		return q, nil
	}
	return quantity.Q{}, whole(text, "this is a yes or no, where a value is wanted")
}

// Condition is Eval for where only a yes or no will do.
func Condition(text string, env Env) (Truth, error) {
	v, err := Eval(text, env)
	if err != nil {
		return No, err
	}
	if t, ok := v.(Truth); ok {
		return t, nil
	}
	return No, whole(text, "this is a value, where a yes or no is wanted").WithHint("compare it, such as %s > 0", source.Short(text))
}

//go:noinline
func whole(text, msg string) *source.Error {
	return source.Errorf(1, max(len([]rune(text)), 1)+1, "%s", msg)
}

// evaluator is one evaluation: it compiles each definition once, and counts the work.
type evaluator struct {
	env   Env
	defs  map[string]*definition
	depth int
	work  int
	// What comparisons that cannot be told are taken for, in the order met;
	// what is met beyond it is taken by its middle values and added.
	taken   []bool
	met     int
	byZero  bool       // a divisor may be nothing
	strict  bool       // what is likelier meant otherwise is refused,
	doubted bool       // and was
	gauge   quantity.Q // what an absolute pressure was turned into, when it stood last
}

// compiled is a text ready to run.
type compiled struct {
	prep *prepared
	tree *parser.Tree
	prog *vm.Program
	vars map[string]any
	kind Kind
}

// compile takes text through the gates, one stage of expr after the other:
// its Compile would parse once more and copy every built-in function that a
// sum may not call. params are names that get their values at run time.
func (ev *evaluator) compile(text string, params []string) (*compiled, error) {
	p, err := prepare(text, ev)
	if err != nil {
		return nil, err
	}
	c := &compiled{prep: p, vars: make(map[string]any, len(p.literals)+len(p.names))}
	for _, l := range p.literals {
		c.vars[l.name] = l.q
	}
	if err := ev.bind(c, params); err != nil {
		return nil, err
	}
	funcs := make(conf.FunctionsTable, len(p.calls)+4)
	for name, f := range p.calls {
		funcs[name] = f.builtin()
	}
	cfg := &conf.Config{Functions: funcs, MaxNodes: maxNodes}
	cfg.WithEnv(c.vars)
	if c.tree, err = parser.ParseWithConfig(p.text, cfg); err != nil {
		return nil, p.unparsed(err)
	}
	v := vetter{ev: ev, prep: p, funcs: funcs}
	if c.kind, err = v.kind(c.tree.Node); err == nil && c.kind == Text {
		err = v.fault(c.tree.Node, "a text alone is not a sum")
	}
	if err != nil {
		return nil, err
	}
	ast.Walk(&c.tree.Node, overload{})
	if _, err = checker.Check(c.tree, cfg); err != nil {
		return nil, p.unparsed(err)
	}
	if c.prog, err = compiler.Compile(c.tree, cfg); err != nil {
		return nil, p.unparsed(err)
	}
	return c, nil
}

// bind gives every name of c its value.
func (ev *evaluator) bind(c *compiled, params []string) error {
next:
	for _, n := range c.prep.names {
		for _, p := range params {
			if n.text == p {
				c.vars[n.text] = quantity.Q{}
				continue next
			}
		}
		q, ok := constants[n.text]
		if !ok && ev.env != nil {
			q, ok = ev.env.Lookup(n.text)
		}
		if !ok && n.per == nil {
			return ev.unknownName(n, params)
		}
		if !ok {
			q = *n.per
		}
		c.vars[n.text] = q
	}
	return nil
}

// preferred is a result in a unit that was typed.
//
//go:noinline
func (c *compiled) preferred(q quantity.Q) Value {
	for i := range c.prep.literals {
		quantity.Prefer(&q, &c.prep.literals[i].q)
	}
	if r := c.prep.rate; c.prep.other && len(c.prep.literals) == 1 && strings.HasSuffix(string(c.prep.source), r) {
		if in, err := q.Convert(cmp.Or(c.prep.literals[0].q.Unit().Symbol(), "1") + r); err == nil {
			return in
		}
	}
	return q
}

func (ev *evaluator) unknownName(n name, params []string) error {
	e := source.Errorf(n.col, n.col+len([]rune(n.text)), "there is no value named %q", source.Short(n.text))
	if f, _ := ev.function(n.text); f != nil {
		return e.WithHint("%s is a function: write %s(…)", n.text, n.text)
	}
	ev.work += nearWork
	if near := source.Nearest(n.text, append(ev.names(), params...)); near != "" {
		return e.WithHint("did you mean %s?", near)
	}
	return e
}

// names lists everything that a sum may name, for hints.
func (ev *evaluator) names() []string {
	list := Names()
	if ev.env != nil {
		list = append(list, ev.env.Names()...)
	}
	return list
}

// run evaluates c with the values bound in c.vars.
func (c *compiled) run() (Value, error) {
	v, err := vm.Run(c.prog, c.vars)
	if err == nil {
		return v, nil
	}
	var fe *file.Error
	if !errors.As(err, &fe) {
		return nil, whole(string(c.prep.source), "this sum failed: "+err.Error())
	}
	col, end := c.prep.columns(fe.From, fe.To)
	var arg *argError
	if errors.As(err, &arg) {
		col, end = c.argument(fe.From, arg.index, col, end)
	}
	var e *source.Error
	if !errors.As(err, &e) {
		return nil, source.Errorf(col, end, "%s", fe.Message)
	}
	placed := *e
	placed.Col, placed.End = col, end
	return nil, &placed
}
