package sum

import (
	"testing"
	"time"
)

// TestNestedInTime nests what makes expr put one node into two places, inside
// what a sum refuses and what it takes: neither may double with the depth.
func TestNestedInTime(t *testing.T) {
	nests := []func(string) string{
		func(s string) string { return "1<(" + s + ")<1" },
		func(s string) string { return "(" + s + ")?:1" },
		func(s string) string { return "max(" + s + ",1)<1<1" },
		func(s string) string { return "-(" + s + "<1<1)" },
		func(s string) string { return "1<" + s + "<1" },
		func(s string) string { return "not (1<(" + s + ")<1)" },
		func(s string) string { return "(1<(" + s + ")<1) ? 1 : 2" },
		func(s string) string { return "[1<(" + s + ")<1]" },
	}
	around := []func(string) string{
		func(s string) string { return s },
		func(s string) string { return "1(" + s + ")" },
		func(s string) string { return "sqrt(" + s + ")" },
		func(s string) string { return "unknown(" + s + ")" },
		func(s string) string { return "1+(" + s + ")" },
		func(s string) string { return "-(" + s + ")" },
		func(s string) string { return "(" + s + ") in V" },
		func(s string) string { return "x.(" + s + ")" },
		func(s string) string { return "(" + s + ")[1:2]" },
		func(s string) string { return "{a: " + s + "}" },
		func(s string) string { return "let a = " + s + "; a" },
		func(s string) string { return "all(1..2, " + s + ")" },
	}
	for _, nest := range nests {
		deep := "1"
		for len(nest(deep)) < maxBytes-32 {
			deep = nest(deep)
		}
		for _, a := range around {
			ended := make(chan time.Duration, 1)
			go func() {
				ended <- quickest(10*hostileTime, func() { Eval(a(deep), nil) })
			}()
			select {
			case took := <-ended:
				if took > 10*hostileTime {
					t.Errorf("%.40s took %v", a(deep), took)
				}
			case <-time.After(10 * time.Second):
				t.Fatalf("%.40s does not end", a(deep))
			}
		}
	}
}
