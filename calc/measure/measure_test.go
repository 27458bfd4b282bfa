package measure

import (
	"math"
	"math/rand"
	"testing"
)

// The rule is the makers' own, percent of reading plus counts of the last
// digit (common practice); the sums are done by hand.
func TestLimit(t *testing.T) {
	for _, c := range []struct {
		name          string
		m             Meter
		x, resolution float64
		rough         bool
		want          float64
	}{
		{"0.9 % of 100.0 and 2 tenths", Meter{Percent: 0.9, Counts: 2}, 100, 0.1, false, 0.9 + 0.2},
		{"below zero as above", Meter{Percent: 0.9, Counts: 2}, -100, 0.1, false, 1.1},
		{"near zero the counts are left", Meter{Percent: 1, Counts: 3}, 0.2, 0.1, false, 0.002 + 0.3},
		{"rough is three times", Meter{Percent: 1, Counts: 3}, 1, 0.1, true, 3 * (0.01 + 0.3)},
		{"rough is a tenth at least", Meter{Percent: 0.5}, 200, 0.1, true, 20},
		{"an exact meter", Meter{}, 5, 0.1, false, 0},
	} {
		if got := c.m.Limit(c.x, c.resolution, c.rough); math.Abs(got-c.want) > 1e-12 {
			t.Errorf("%s: %v, want %v", c.name, got, c.want)
		}
	}
}

// Of two values one is above the other, or they agree: never both, never
// neither, and never one that a true value within the bounds belies.
func TestAboveAndAgrees(t *testing.T) {
	random := rand.New(rand.NewSource(1))
	value := func() Value {
		if random.Intn(8) == 0 {
			return Open(1)
		}
		return Within(random.NormFloat64(), random.Float64())
	}
	inside := func(v Value) float64 { return v.Lo + random.Float64()*(v.Hi-v.Lo) }
	for range 20_000 {
		v, w := value(), value()
		n := 0
		for _, is := range []bool{v.Above(w), w.Above(v), v.Agrees(w)} {
			if is {
				n++
			}
		}
		if n != 1 || v.Agrees(w) != w.Agrees(v) {
			t.Fatalf("%+v and %+v: above %v, below %v, agree %v", v, w, v.Above(w), w.Above(v), v.Agrees(w))
		}
		if v.Over || w.Over {
			continue
		}
		if v.Above(w) && inside(v) <= inside(w) {
			t.Fatalf("%+v is called above %+v", v, w)
		}
		sum, a, b := v.Plus(w), inside(v), inside(w)
		if slack := 1e-12; a+b < sum.Lo-slack || a+b > sum.Hi+slack {
			t.Fatalf("%v + %v lies outside %+v", a, b, sum)
		}
	}
}

// What is done with a value is done to its bounds as well; the sums are done by
// hand.
func TestArithmeticOfBounds(t *testing.T) {
	v, w := Within(10, 1), Within(4, 0.5)
	for _, c := range []struct {
		name      string
		got, want Value
	}{
		{"within", v, Value{X: 10, Lo: 9, Hi: 11}},
		{"exact", Exact(3), Value{X: 3, Lo: 3, Hi: 3}},
		{"minus", v.Minus(0.25), Value{X: 9.75, Lo: 8.75, Hi: 10.75}},
		{"times", v.Times(3), Value{X: 30, Lo: 27, Hi: 33}},
		{"plus", v.Plus(w), Value{X: 14, Lo: 12.5, Hi: 15.5}},
		{"half", Within(v.Half(), w.Half()), Value{X: 1, Lo: 0.5, Hi: 1.5}},
	} {
		if c.got != c.want {
			t.Errorf("%s: %+v, want %+v", c.name, c.got, c.want)
		}
	}
	if !v.Plus(Open(1)).Over || !Open(1).Plus(v).Over || v.Plus(w).Over {
		t.Error("a sum is open when one of its parts is, and only then")
	}
	if touching := Within(12, 1); !v.Agrees(touching) || !touching.Agrees(v) || touching.Above(v) {
		t.Error("bounds that touch may be the same value")
	}
}
