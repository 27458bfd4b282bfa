package sum

import (
	"testing"

	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
)

// call is a scope such as a call has: readings by point, and a value.
func call() *Scope {
	ohms := map[string]quantity.Q{}
	for i, pair := range []string{"A B", "A C", "B C"} {
		q, err := quantity.New([]float64{3.45, 6.5, 2.5}[i], "ohm")
		if err != nil {
			panic(err)
		}
		ohms[pair] = q.WithU(0.03, uint64(i+1))
	}
	return &Scope{
		Values: map[string]quantity.Q{"supply": quantity.Number(0)},
		Funcs: map[string]Func{"ohm": {
			Name:   "ohm",
			Params: []Param{{Name: "point", Text: true}, {Name: "point", Text: true}},
			Call: func(a []Value) (Value, error) {
				q, ok := ohms[a[0].(string)+" "+a[1].(string)]
				if !ok {
					return nil, source.Errorf(0, 0, "there is no such reading")
				}
				return q, nil
			},
		}},
	}
}

func BenchmarkEval(b *testing.B) {
	env := call()
	for _, text := range []string{"120V / ohm(A,B)", "(3.45ohm+2.5ohm)*1.2A", "sqrt((ohm(A,B)^2 + ohm(B,C)^2)) in kohm"} {
		b.Run(text, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if _, err := Eval(text, env); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
