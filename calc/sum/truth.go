package sum

import (
	"github.com/expr-lang/expr/builtin"

	"ohmcall/calc/quantity"
)

// Truth is what a condition amounts to: No, Yes, or Unsure where it hangs on
// a comparison of values closer to each other than their doubt.
type Truth uint8

// The three of them.
const (
	No Truth = iota
	Yes
	Unsure
)

// String is "no", "yes" or "cannot tell".
func (t Truth) String() string { return [...]string{"no", "yes", "cannot tell"}[t] }

// mostBranches bounds how often a condition is run again to see whether it
// hangs on its close comparisons; what needs more cannot be told.
const mostBranches = 64

// comparing is the function of a comparison, which notes when it is close.
func (ev *evaluator) comparing(o *operator) *builtin.Function {
	f := Func{Name: o.name, Result: YesNo, Call: func(args []Value) (Value, error) {
		a, b := args[0].(quantity.Q), args[1].(quantity.Q)
		yes, err := o.call(a, b)
		if err != nil || !quantity.Close(a, b) {
			return yes, err
		}
		if ev.met == len(ev.taken) {
			ev.taken = append(ev.taken, yes.(bool))
		}
		ev.met++
		return ev.taken[ev.met-1], nil
	}}
	return f.builtin()
}

// truth runs c, which came to yes, with its close comparisons taken either
// way: it is told when all ways lead to the same.
func (ev *evaluator) truth(c *compiled, yes bool) Truth {
	if ev.met > 0 && ev.hangs(c, yes, 0, new(int)) {
		return Unsure
	}
	if yes {
		return Yes
	}
	return No
}

// hangs reports whether turning a close comparison, from the given one on,
// leads to something else than yes.
func (ev *evaluator) hangs(c *compiled, yes bool, from int, branches *int) bool {
	for n := ev.met - 1; n >= from; n-- {
		before := append([]bool(nil), ev.taken[:n+1]...)
		before[n] = !before[n]
		if *branches++; *branches > mostBranches || ev.spend(len(c.prep.source)) != nil {
			return true
		}
		ev.taken, ev.met = before, 0
		if v, err := c.run(); err != nil || v != yes || ev.hangs(c, yes, n+1, branches) {
			return true
		}
	}
	return false
}
