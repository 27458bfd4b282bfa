package sum

import (
	"strings"

	"github.com/expr-lang/expr/ast"
	"github.com/expr-lang/expr/conf"
	"github.com/expr-lang/expr/file"

	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
)

// operator is one operator of a sum, and the function that it stands for.
// expr has no quantities, so each becomes a call before it is compiled; the
// checker, the compiler and the machine are expr's own.
type operator struct {
	sign   string
	name   string
	result Kind
	call   func(a, b quantity.Q) (any, error)
}

var operators = []operator{
	{"+", "_add", Number, arithmetic(quantity.Add)},
	{"-", "_sub", Number, arithmetic(quantity.Sub)},
	{"*", "_mul", Number, arithmetic(quantity.Mul)},
	{"/", "_div", Number, arithmetic(quantity.Div)},
	{"^", "_pow", Number, arithmetic(quantity.Pow)},
	{"**", "_pow", Number, arithmetic(quantity.Pow)},
	{"<", "_lt", YesNo, comparison(func(c int) bool { return c < 0 })},
	{">", "_gt", YesNo, comparison(func(c int) bool { return c > 0 })},
	{"<=", "_le", YesNo, comparison(func(c int) bool { return c <= 0 })},
	{">=", "_ge", YesNo, comparison(func(c int) bool { return c >= 0 })},
	{"==", "_eq", YesNo, comparison(func(c int) bool { return c == 0 })},
	{"!=", "_ne", YesNo, comparison(func(c int) bool { return c != 0 })},
}

//go:noinline
func arithmetic(f func(a, b quantity.Q) (quantity.Q, error)) func(a, b quantity.Q) (any, error) {
	return func(a, b quantity.Q) (any, error) { return f(a, b) }
}

//go:noinline
func comparison(f func(int) bool) func(a, b quantity.Q) (any, error) {
	return func(a, b quantity.Q) (any, error) {
		c, err := quantity.Compare(a, b)
		return err == nil && f(c), err
	}
}

// The functions behind the operators, made once.
var (
	bySign   = map[string]*operator{}
	hidden   = conf.FunctionsTable{}
	negation = Func{Name: "_neg", Call: func(a []Value) (Value, error) { return quantity.Neg(a[0].(quantity.Q)) }}
	convert  = Func{Name: "_in", Call: func(a []Value) (Value, error) {
		return a[0].(quantity.Q).Convert(a[1].(string))
	}}
)

func init() {
	for i := range operators {
		o := &operators[i]
		bySign[o.sign] = o
		f := Func{Name: o.name, Result: o.result, Call: func(a []Value) (Value, error) {
			return o.call(a[0].(quantity.Q), a[1].(quantity.Q))
		}}
		hidden[o.name] = f.builtin()
	}
	hidden[negation.Name], hidden[convert.Name] = negation.builtin(), convert.builtin()
}

// vetter allows a parsed tree by kind of node, checks every operand, and
// notes which hidden functions the tree needs.
type vetter struct {
	ev    *evaluator
	prep  *prepared
	funcs conf.FunctionsTable
}

// kind is the kind of value that n yields, or a fault in the trade's words.
func (v *vetter) kind(n ast.Node) (Kind, error) {
	switch n := n.(type) {
	case *ast.IdentifierNode:
		return Number, nil
	case *ast.BoolNode:
		return YesNo, nil
	case *ast.StringNode:
		return Text, nil
	case *ast.UnaryNode:
		return v.unary(n)
	case *ast.BinaryNode:
		return v.binary(n)
	case *ast.ConditionalNode:
		return v.choice(n)
	case *ast.CallNode:
		return v.call(n)
	}
	return 0, v.fault(n, "this is not used in sums")
}

func (v *vetter) unary(n *ast.UnaryNode) (Kind, error) {
	switch n.Operator {
	case "-":
		v.funcs[negation.Name] = hidden[negation.Name]
		return Number, v.want(n.Node, Number)
	case "+":
		return Number, v.want(n.Node, Number)
	}
	return YesNo, v.want(n.Node, YesNo)
}

func (v *vetter) binary(n *ast.BinaryNode) (Kind, error) {
	switch n.Operator {
	case "and", "&&", "or", "||":
		// expr reads a < b < c as a < b and b < c with one node for both b;
		// nested, that would be walked twice at every level.
		if left, ok := n.Left.(*ast.BinaryNode); ok {
			if l, r := lastComparison(left), asComparison(n.Right); l != nil && r != nil && l.Right == r.Left {
				return 0, v.at(n.Location(), "two values are compared at a time").WithHint("join two comparisons with and")
			}
		}
		if err := v.want(n.Left, YesNo); err != nil {
			return 0, err
		}
		return YesNo, v.want(n.Right, YesNo)
	case "in":
		if _, ok := n.Right.(*ast.StringNode); !ok {
			return 0, v.fault(n.Right, "nothing can follow the unit of a conversion").
				WithHint("put the conversion in brackets, such as (75F in degC) + 5K")
		}
		v.funcs[convert.Name] = v.ev.converting()
		return Number, v.want(n.Left, Number)
	}
	o := bySign[n.Operator]
	if o == nil {
		return 0, v.at(n.Location(), "%s is not used in sums", n.Operator)
	}
	v.funcs[o.name] = hidden[o.name]
	if o.result == YesNo {
		v.funcs[o.name] = v.ev.comparing(o)
	} else if o.sign == "/" || v.ev.strict && (o.sign == "+" || o.sign == "-") {
		v.funcs[o.name] = v.ev.watched(o.name)
	}
	if err := v.want(n.Left, Number); err != nil {
		return 0, err
	}
	return o.result, v.want(n.Right, Number)
}

func asComparison(n ast.Node) *ast.BinaryNode {
	if b, ok := n.(*ast.BinaryNode); ok && strings.ContainsAny(b.Operator, "<>") {
		return b
	}
	return nil
}

func lastComparison(n *ast.BinaryNode) *ast.BinaryNode {
	if n.Operator == "&&" {
		return asComparison(n.Right)
	}
	return asComparison(n)
}

func (v *vetter) choice(n *ast.ConditionalNode) (Kind, error) {
	if n.Exp1 == n.Cond {
		return 0, v.fault(n.Cond, "a choice needs a value on both sides of the colon")
	}
	if err := v.want(n.Cond, YesNo); err != nil {
		return 0, err
	}
	a, err := v.kind(n.Exp1)
	if err != nil {
		return 0, err
	}
	if a == Text {
		return 0, v.fault(n.Exp1, "a text is not a value")
	}
	return a, v.want(n.Exp2, a)
}

func (v *vetter) call(n *ast.CallNode) (Kind, error) {
	callee, ok := n.Callee.(*ast.IdentifierNode)
	if !ok {
		return 0, v.fault(n, "only a function by its name can be called")
	}
	f := v.prep.calls[callee.Value]
	if f == nil && strings.HasPrefix(callee.Value, "_") {
		return 0, v.fault(n, "an operator such as + or * is missing before the bracket")
	}
	if f == nil {
		return 0, v.fault(n, "there is no function named %q", source.Short(callee.Value))
	}
	least, most := f.arity()
	if got := len(n.Arguments); got < least || most >= 0 && got > most {
		return 0, v.at(n.Location(), "%s wants %s, not %d", f.Name, values(least, most), got).WithHint("%s", f.Usage())
	}
	for i, a := range n.Arguments {
		p := f.param(i)
		want := Number
		if p.Text {
			want = Text
		} else if p.YesNo {
			want = YesNo
		}
		if err := v.want(a, want); err != nil {
			return 0, err
		}
	}
	return f.Result, nil
}

func values(least, most int) string {
	words := []string{"no value", "1 value", "2 values", "3 values", "4 values", "5 values", "6 values", "7 values", "8 values", "9 values"}
	word := func(n int) string { return words[min(n, len(words)-1)] }
	switch {
	case most < 0:
		return word(least) + " or more"
	case least == most:
		return word(least)
	}
	return strings.Fields(word(least))[0] + " to " + word(most)
}

var kindWords = [...]string{Number: "a value", YesNo: "a yes or no", Text: "a name"}

// want checks that n yields kind k.
func (v *vetter) want(n ast.Node, k Kind) error {
	got, err := v.kind(n)
	if err == nil && got != k {
		e := v.fault(n, "%s is wanted here, not %s", kindWords[k], kindWords[got])
		if k == YesNo && got == Number {
			e = e.WithHint("compare it, such as x > 0")
		}
		return e
	}
	return err
}

// fault marks the whole of n.
func (v *vetter) fault(n ast.Node, format string, args ...any) *source.Error {
	s := span{from: -1}
	s.take(n)
	return v.at(file.Location{From: max(s.from, 0), To: s.to}, format, args...)
}

func (v *vetter) at(l file.Location, format string, args ...any) *source.Error {
	col, end := v.prep.columns(l.From, l.To)
	return source.Errorf(col, end, format, args...)
}
