package sum

import (
	"strings"
	"unicode"

	"github.com/expr-lang/expr/builtin"

	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
)

// dividing is the function of a division, which notes a divisor that may be
// nothing.
func (ev *evaluator) dividing(o *operator) *builtin.Function {
	f := Func{Name: o.name, Call: func(args []Value) (Value, error) {
		a, b := args[0].(quantity.Q), args[1].(quantity.Q)
		ev.byZero = ev.byZero || b.MayBeZero()
		return o.call(a, b)
	}}
	return f.builtin()
}

// tell says beside the value of a sum what it may have been meant for
// otherwise, and how little it is worth.
func (ev *evaluator) tell(c *compiled, v Value) {
	if ev.byZero {
		ev.env.Note("The doubt of a divisor takes in zero: what it comes to can be anything.")
	}
	if q, ok := v.(quantity.Q); ok && c.prep.kelvin != "" && q.ElectricByHeat() {
		n := strings.TrimSuffix(c.prep.kelvin, "K")
		ev.env.Note(n + "K is taken as " + n + " kelvin; kilohms are " + n + "kohm.")
	}
	if s := c.prep.overUnit; s != "" {
		share, unit, _ := strings.Cut(s, " ")
		over, under, _ := strings.Cut(s, "/")
		ev.env.Note(s + " is taken as " + over + " divided by " + under + "; so many of the unit are (" + share + ") * 1" + unit + ".")
	}
}

// glance notes of a literal of n runes what tell may say of it: 5K, and the
// 4 uF of 3/4 uF.
func (p *preparer) glance(n int) {
	text := string(p.source[p.at : p.at+n])
	if digits := strings.TrimRight(text, "K"); len(digits) == len(text)-1 && p.kelvin == "" && strings.Trim(digits, "0123456789.") == "" {
		p.kelvin = text
	}
	from := p.at - 1
	if from < 1 || p.source[from] != '/' || !strings.Contains(text, " ") || strings.Trim(text[:strings.Index(text, " ")], "0123456789") != "" {
		return
	}
	for from > 0 && unicode.IsDigit(p.source[from-1]) {
		from--
	}
	if from == p.at-1 || from > 0 && (wordRune(p.source[from-1]) || p.source[from-1] == '.') {
		return
	}
	p.overUnit = string(p.source[from:p.at]) + text
}

// instead adds to a fault the text that would have worked in place of the whole
// sum, when it does.
func (p *preparer) instead(e *source.Error, text string) *source.Error {
	if p.ev.offered {
		return e
	}
	p.ev.offered = true
	trial := evaluator{env: p.ev.env, offered: true}
	c, err := trial.compile(text, nil)
	if err == nil {
		_, err = c.run()
	}
	p.ev.work += trial.work + 40*len(text)
	if err != nil {
		return e
	}
	return e.WithHint("write %s", text)
}

// replaced is the source with n runes at a place replaced.
func (p *preparer) replaced(at, n int, by string) string {
	return string(p.source[:at]) + by + string(p.source[at+n:])
}
