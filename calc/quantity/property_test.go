package quantity

import (
	"math"
	"math/rand/v2"
	"testing"
)

// A value turned into any unit of its kind and back is the same value.
func TestConversionsGoBack(t *testing.T) {
	for _, a := range decls {
		for _, b := range decls {
			if a.dim != b.dim || a.kind != b.kind || a.prefixed || b.prefixed {
				continue
			}
			from, to := a.symbols[0], b.symbols[0]
			q := must(New(37.25, from))
			x, err := must(q.Convert(to)).In(from)
			if err != nil || math.Abs(x-37.25) > 1e-9 {
				t.Errorf("37.25 %s by %s is %v, %v", from, to, x, err)
			}
		}
	}
}

// Sums do not depend on their order, differences undo sums, quotients undo
// products, and the doubt follows: checked on readings with shared sources.
func TestAlgebra(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	reading := func() Q {
		q := must(New(r.Float64()*100+0.1, "ohm")).WithU(r.Float64(), uint64(r.IntN(4)))
		for range r.IntN(3) {
			q = must(Add(q, must(New(r.Float64(), "ohm")).WithU(r.Float64(), uint64(r.IntN(6)))))
		}
		return q
	}
	same := func(what string, a, b Q) {
		t.Helper()
		if math.Abs(a.v-b.v) > 1e-9*math.Abs(a.v) || math.Abs(a.U()-b.U()) > 1e-6*(a.U()+1e-3) || a.Dim() != b.Dim() {
			t.Fatalf("%s: %v u %v, and %v u %v", what, a.v, a.U(), b.v, b.U())
		}
	}
	for range 2000 {
		a, b, c := reading(), reading(), reading()
		same("a+b, b+a", must(Add(a, b)), must(Add(b, a)))
		same("(a+b)+c, a+(b+c)", must(Add(must(Add(a, b)), c)), must(Add(a, must(Add(b, c)))))
		same("a+b-b, a", must(Sub(must(Add(a, b)), b)), a)
		same("a·b/b, a", must(Div(must(Mul(a, b)), b)), a)
		same("√(a·a), a", must(Sqrt(must(Mul(a, a)))), a)
		same("a·(b+c), a·b+a·c", must(Mul(a, must(Add(b, c)))), must(Add(must(Mul(a, b)), must(Mul(a, c)))))
		parallel := must(Div(must(Mul(a, b)), must(Add(a, b))))
		byApply := must(Apply(func(x []float64) (float64, error) { return x[0] * x[1] / (x[0] + x[1]), nil }, []string{"ohm", "ohm"}, "ohm", a, b))
		same("parallel by steps, by Apply", parallel, byApply)
		if x := corr(a, b); x < -1 || x > 1 {
			t.Fatalf("correlation %v", x)
		}
		if u, v := Cov(a, c)+Cov(b, c), Cov(must(Add(a, b)), c); math.Abs(u-v) > 1e-9 {
			t.Fatalf("cov(a,c)+cov(b,c) = %v, cov(a+b,c) = %v", u, v)
		}
	}
}

// What is compared is the difference: a doubt that both share cancels, one
// that they do not share adds, and the order of the two does not matter.
func TestClose(t *testing.T) {
	ohm := func(v, u float64, source uint64) Q { return must(New(v, "ohm")).WithU(u, source) }
	for _, r := range []struct {
		what string
		a, b Q
		want bool
	}{
		{"exact values", must(New(3, "ohm")), must(New(3, "ohm")), false},
		{"within twice the doubt", ohm(3, 0.05, 1), must(New(3.09, "ohm")), true},
		{"beyond it", ohm(3, 0.05, 1), must(New(3.11, "ohm")), false},
		{"two doubts, root sum of squares", ohm(3, 0.03, 1), ohm(3.099, 0.04, 2), true},
		{"two doubts, beyond", ohm(3, 0.03, 1), ohm(3.101, 0.04, 2), false},
		{"one doubt shared", ohm(3, 0.05, 1), ohm(3.01, 0.05, 1), false},
		{"a prefix does not matter", ohm(3000, 50, 1), must(New(3.09, "kohm")), true},
		{"unlike units", ohm(3, 0.05, 1), must(New(3, "V")), false},
		{"temperatures", must(New(5, "degC")).WithU(0.5, 1), must(New(41.5, "degF")), true},
	} {
		if Close(r.a, r.b) != r.want || Close(r.b, r.a) != r.want {
			t.Errorf("%s: close is %v, want %v", r.what, !r.want, r.want)
		}
	}
}
