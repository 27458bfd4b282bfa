//go:build faults

package failpoint

import "github.com/expr-lang/expr"

var broken Point

// Break breaks one guard, "" none, for the whole process.
func Break(p Point) { broken = p }

// On reports whether a guard is broken.
func On(p Point) bool { return p == broken }

// Unlimited evaluates, with NotVetted, as the evaluator's own limits let it.
func Unlimited(text string) {
	if broken == NotVetted {
		expr.Eval(text, nil)
	}
}

var held []byte

// Late gives, with AckFirst, what was to be written the time before.
func Late(b []byte) []byte {
	if broken != AckFirst {
		return b
	}
	b, held = held, append([]byte(nil), b...)
	return b
}
