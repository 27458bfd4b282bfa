package sum

import (
	"errors"
	"strings"

	"github.com/expr-lang/expr/ast"
	"github.com/expr-lang/expr/file"

	"ohmcall/calc/source"
)

// overload is the patch by which expr works on quantities: every operator on
// them becomes a call of its function. One walk does all of them, so that
// the time stays linear in the length of the text; expr's own Operator
// option checks the tree anew for every operator and round.
type overload struct{}

// Visit implements ast.Visitor.
func (overload) Visit(n *ast.Node) {
	switch x := (*n).(type) {
	case *ast.UnaryNode:
		switch x.Operator {
		case "-":
			ast.Patch(n, invoke(negation.Name, x, x.Node))
		case "+":
			*n = x.Node
		}
	case *ast.BinaryNode:
		if x.Operator == "in" {
			ast.Patch(n, invoke(convert.Name, x, x.Left, x.Right))
		} else if o := bySign[x.Operator]; o != nil {
			ast.Patch(n, invoke(o.name, x, x.Left, x.Right))
		}
	}
}

func invoke(name string, at ast.Node, args ...ast.Node) ast.Node {
	callee := &ast.IdentifierNode{Value: name}
	callee.SetLocation(at.Location())
	return &ast.CallNode{Callee: callee, Arguments: args}
}

// span is the part of the prepared text that a tree covers.
type span struct{ from, to int }

func (s *span) take(n ast.Node) {
	ast.Walk(&n, s)
}

// Visit implements ast.Visitor.
func (s *span) Visit(n *ast.Node) {
	l := (*n).Location()
	if _, ok := (*n).(*ast.ConditionalNode); ok {
		return // its place is that of the token after it
	}
	if s.from < 0 || l.From < s.from {
		s.from = l.From
	}
	s.to = max(s.to, l.To)
}

// argument is the place of argument i of the call at from; col and end when
// there is no such call.
func (c *compiled) argument(from, i, col, end int) (int, int) {
	f := finder{from: from}
	ast.Walk(&c.tree.Node, &f)
	if f.call == nil || i >= len(f.call.Arguments) {
		return col, end
	}
	s := span{from: -1}
	s.take(f.call.Arguments[i])
	return c.prep.columns(max(s.from, 0), s.to)
}

type finder struct {
	from int
	call *ast.CallNode
}

// Visit implements ast.Visitor.
func (f *finder) Visit(n *ast.Node) {
	if c, ok := (*n).(*ast.CallNode); ok && c.Location().From == f.from {
		f.call = c
	}
}

// unparsed says in the trade's words what expr could not parse.
func (p *prepared) unparsed(err error) *source.Error {
	var fe *file.Error
	if !errors.As(err, &fe) {
		return whole(string(p.source), "this sum is not understood")
	}
	col, end := p.columns(fe.From, fe.To)
	switch {
	case strings.Contains(fe.Message, "EOF"):
		n := len(p.source) + 1
		return source.Errorf(n, n+1, "the sum stops before a value")
	case strings.Contains(fe.Message, "nodes"):
		return whole(string(p.source), "this sum has too many parts")
	case strings.HasPrefix(fe.Message, "unexpected token"):
		return source.Errorf(col, end, "%s is not expected here", p.between(col, end))
	}
	return source.Errorf(col, end, "%s is not understood here", p.between(col, end))
}
