package sum

import (
	"strings"

	"github.com/expr-lang/expr/builtin"

	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
)

// dividing is the function of a division, which notes a divisor that may be
// nothing.
func (ev *evaluator) dividing() *builtin.Function {
	f := *hidden["_div"]
	plain := f.Func
	f.Func = func(args ...any) (any, error) {
		ev.byZero = ev.byZero || quantity.MayBeZero(args[1].(quantity.Q))
		return plain(args...)
	}
	return &f
}

// tell says beside the value of a sum what it may have been meant for
// otherwise, and how little it is worth.
func (ev *evaluator) tell(c *compiled, v Value) {
	if ev.byZero {
		ev.env.Note("The doubt of a divisor takes in zero: what it comes to can be anything.")
	}
	if q, ok := v.(quantity.Q); ok && c.prep.kelvin != "" && (quantity.ElectricByHeat(q) || string(c.prep.source) == c.prep.kelvin) {
		n := strings.TrimSuffix(c.prep.kelvin, "K")
		ev.env.Note(n + "K is taken as " + n + " kelvin; kilohms are " + n + "kohm.")
	}
	if s := c.prep.overUnit; s != "" {
		share, unit, _ := strings.Cut(s, " ")
		ev.env.Note(s + " divides by the unit too; so many of it are (" + share + ") * 1" + unit + ".")
	}
}

// glance notes of a literal of n runes what tell may say of it: 5K, and the
// 4 uF of 3/4 uF.
func (p *preparer) glance(n int) {
	text := string(p.source[p.at : p.at+n])
	digits := strings.TrimLeft(text, "0123456789.")
	if digits == "K" {
		p.kelvin = text
	}
	if strings.HasPrefix(digits, " ") && p.at > 0 && p.source[p.at-1] == '/' && p.whole.to == p.at-1 && p.whole.to > 0 {
		p.overUnit = string(p.source[p.whole.from:p.at]) + text
	}
	if digits == "" {
		p.whole = span{p.at, p.at + n}
	}
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
