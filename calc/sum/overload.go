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

func (s *span) take(n ast.Node) { s.join(n, map[ast.Node]bool{}) }

// join takes each node once. expr puts one node into two places where values
// are compared in a row or a choice leaves out its middle: what goes through
// all places, as ast.Walk does, doubles with each of them inside another.
func (s *span) join(n ast.Node, seen map[ast.Node]bool) {
	if n == nil || seen[n] {
		return
	}
	seen[n] = true
	for _, c := range children(n) {
		s.join(c, seen)
	}
	if _, ok := n.(*ast.ConditionalNode); ok {
		return // its place is that of the token after it
	}
	l := n.Location()
	if s.from < 0 || l.From < s.from {
		s.from = l.From
	}
	s.to = max(s.to, l.To)
}

// children lists what hangs below a node of the kinds that a text can make.
func children(n ast.Node) []ast.Node {
	switch n := n.(type) {
	case *ast.UnaryNode:
		return []ast.Node{n.Node}
	case *ast.BinaryNode:
		return []ast.Node{n.Left, n.Right}
	case *ast.ConditionalNode:
		return []ast.Node{n.Cond, n.Exp1, n.Exp2}
	case *ast.CallNode:
		return append([]ast.Node{n.Callee}, n.Arguments...)
	case *ast.BuiltinNode:
		return n.Arguments
	case *ast.MemberNode:
		return []ast.Node{n.Node, n.Property}
	case *ast.SliceNode:
		return []ast.Node{n.Node, n.From, n.To}
	case *ast.ChainNode:
		return []ast.Node{n.Node}
	case *ast.PredicateNode:
		return []ast.Node{n.Node}
	case *ast.VariableDeclaratorNode:
		return []ast.Node{n.Value, n.Expr}
	case *ast.SequenceNode:
		return n.Nodes
	case *ast.ArrayNode:
		return n.Nodes
	case *ast.MapNode:
		return n.Pairs
	case *ast.PairNode:
		return []ast.Node{n.Key, n.Value}
	}
	return nil
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
