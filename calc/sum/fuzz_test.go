package sum

import (
	"math"
	"testing"

	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
)

func seeds(f *testing.F) {
	for _, text := range []string{"120V / 3.45ohm", "ohm(A, B) + ohm(B, C)", "75F in degC", "1/6 hp in W", "-2F < 3C ? 1V : 2V",
		"twice(ohm(A, B)) * 5%", "(40psi in psia)/(5psi in psia)", "max(1, 2, 3k) ** 2", "temp(evap-fan)", "not (1 ≤ 2)", "sqrt('A')"} {
		f.Add(text)
	}
	for _, text := range hostile() {
		if len(text) <= 2*maxBytes {
			f.Add(text)
		}
	}
}

// placed fails unless err is a fault with columns inside text.
func placed(t *testing.T, text string, err error) {
	t.Helper()
	e, ok := err.(*source.Error)
	if !ok {
		t.Fatalf("%q: %T %v", text, err, err)
	}
	if n := len([]rune(text)); e.Col < 1 || e.Col > n+1 || e.End <= e.Col || e.End > n+2 || e.Msg == "" {
		t.Fatalf("%q: columns %d-%d of %d, %q", text, e.Col, e.End, n, e.Msg)
	}
}

// FuzzPrepare holds that the pass before the parser never panics, that its
// faults lie inside the text, and that every place leads back into it.
func FuzzPrepare(f *testing.F) {
	seeds(f)
	env := hostileScope(f)
	f.Fuzz(func(t *testing.T, text string) {
		p, err := prepare(text, &evaluator{env: env})
		if err != nil {
			placed(t, text, err)
			return
		}
		n, last := len([]rune(text)), 0
		for at := range []rune(p.text) {
			col, end := p.columns(at, at+1)
			if col < last || col > n || end <= col || end > n+1 {
				t.Fatalf("%q: rune %d of %q leads to %d-%d of %d", text, at, p.text, col, end, n)
			}
			last = col
		}
	})
}

// FuzzEval holds the bounds of an evaluation: it ends in time, never panics,
// and yields a finite quantity, a yes or no, or a fault inside the text.
func FuzzEval(f *testing.F) {
	seeds(f)
	env := hostileScope(f)
	f.Fuzz(func(t *testing.T, text string) {
		var v Value
		var err error
		if took := quickest(10*hostileTime, func() { v, err = Eval(text, env) }); took > 10*hostileTime {
			t.Fatalf("%q took %v", text, took)
		}
		if err != nil {
			placed(t, text, err)
			return
		}
		switch v := v.(type) {
		case quantity.Q:
			if math.IsNaN(v.SI()) || math.IsInf(v.SI(), 0) || math.IsNaN(v.U()) || math.IsInf(v.U(), 0) || v.String() == "" {
				t.Fatalf("%q = %v", text, v)
			}
		case Truth:
		default:
			t.Fatalf("%q = %T", text, v)
		}
	})
}

// FuzzDef holds that what ParseDef reads it also prints and reads again.
func FuzzDef(f *testing.F) {
	f.Add("cop(heat, work) = heat / work")
	f.Add(`sag( v0 ,v1 )=(v0-v1)/v0  "fall of the supply"`)
	f.Fuzz(func(t *testing.T, text string) {
		d, err := ParseDef(text)
		if err != nil {
			placed(t, text, err)
			return
		}
		if again, err := ParseDef(d.String()); err != nil || again.String() != d.String() {
			t.Fatalf("%q prints as %q, which reads as %q, %v", text, d, again, err)
		}
	})
}
