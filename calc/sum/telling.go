package sum

import (
	"strings"

	"github.com/expr-lang/expr/builtin"

	"ohmcall/calc/quantity"
)

// watched is the function of a division, which notes a divisor that may be nothing,
// or of a sum or difference, which refuses a share of nothing.
func (ev *evaluator) watched(name string) *builtin.Function {
	f := *hidden[name]
	plain := f.Func
	f.Func = func(args ...any) (any, error) {
		b := args[1].(quantity.Q)
		if name == "_div" {
			ev.byZero = ev.byZero || quantity.MayBeZero(b)
		} else if err := quantity.ShareFault(args[0].(quantity.Q), b); err != nil {
			ev.doubted = true
			return nil, err
		}
		return plain(args...)
	}
	return &f
}

// converting is the conversion, which notes an absolute pressure told as gauge.
func (ev *evaluator) converting() *builtin.Function {
	f := *hidden[convert.Name]
	plain := f.Func
	f.Func = func(args ...any) (any, error) {
		out, err := plain(args...)
		ev.gauge = quantity.Q{}
		if q, ok := out.(quantity.Q); ok && args[0].(quantity.Q).Kind() == quantity.Absolute {
			ev.gauge = q
		}
		return out, err
	}
	return &f
}

// Doubtful refuses a sum that a stored one may be, though it is likelier meant
// otherwise: a comma that can stand for a point, a share of nothing, a length to a
// power, a vacuum above the air.
func Doubtful(text string, env Env) error {
	ev := evaluator{env: env, strict: true}
	c, err := ev.compile(text, nil)
	if err == nil {
		_, err = c.run()
	}
	if !ev.doubted {
		return nil
	}
	return ev.instead(text, err)
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
	if q, ok := v.(quantity.Q); ok && q.Kind() == quantity.Gauge && q.SI() == ev.gauge.SI() && q.Unit() == ev.gauge.Unit() {
		if abs, ok := ev.gauge.AsAbsolute(); ok {
			ev.env.Note("That is above the air; absolute it is " + abs.String() + ".")
		}
	}
	if l := c.prep.literals; len(l) == 2 && len(c.prep.names) == 0 && strings.Contains(c.prep.text, "*") && l[0].q.Symbol() == "kWh" && l[1].q.Symbol() == "" && l[1].q.SI() < 1 {
		ev.env.Note("Money by the kilowatt-hour is written " + l[1].q.String() + "/kWh.")
	}
	if s := c.prep.radians; s != "" {
		ev.env.Note(s + " is taken in radians; degrees are " + s + "deg.")
	}
	if s := c.prep.overUnit; s != "" {
		share, unit, _ := strings.Cut(s, " ")
		ev.env.Note(s + " divides by the unit too; so many of it are (" + share + ") * 1" + unit + ".")
	}
}

// shares are those that people have of a unit; 1/60Hz is a time.
const shares = " 1/2 1/3 2/3 1/4 3/4 1/5 1/6 5/6 1/8 3/8 5/8 7/8 1/10 1/12 "

// glance notes of a literal of n runes what tell may say of it: 5K, and the
// 4 uF of 3/4 uF.
func (p *preparer) glance(n int) {
	text := string(p.source[p.at : p.at+n])
	digits := strings.TrimLeft(text, "0123456789.")
	if digits == "K" {
		p.kelvin = text
	}
	if digits != "" && p.at > 0 && p.source[p.at-1] == '/' && p.whole.to == p.at-1 && p.whole.to > 0 {
		share := string(p.source[p.whole.from:p.at]) + text[:len(text)-len(digits)]
		if digits[0] == ' ' || strings.Contains(shares, " "+share+" ") {
			p.overUnit = share + " " + strings.TrimSpace(digits)
		}
	}
	if digits == "" {
		p.whole = span{p.at, p.at + n}
		if k := len(p.frames) - 1; k >= 0 && p.peek(n) == ')' && p.frames[k].at == p.at-1 && p.frames[k].call != nil {
			if strings.Contains("sin cos tan", p.frames[k].call.Name) {
				p.radians = text
			}
		}
	}
}
