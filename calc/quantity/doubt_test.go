package quantity

import (
	"math"
	"testing"
)

// A doubt has the unit that its value has, wherever it goes. The sums are done by
// hand.
func TestDoubtKeepsItsUnit(t *testing.T) {
	q := must(New(4.7, "kohm")).WithU(0.05, 1)
	if v, unit, u := q.Shown(); v != 4.7 || unit != "kOhm" || math.Abs(u-0.05) > 1e-12 {
		t.Errorf("shown as %v %s, u %v", v, unit, u)
	}
	if u := must2(q.UIn("ohm")); math.Abs(u-50) > 1e-9 {
		t.Errorf("u is %v ohm, want 50", u)
	}
	if math.Abs(q.U()-50) > 1e-9 {
		t.Errorf("u is %v in SI, want 50", q.U())
	}

	// P = U²/R through a function in its own units: 120 V on 4.7 kΩ is 3.06383 W, and
	// dP/P is dR/R.
	watts := func(x []float64) (float64, error) { return x[0] * x[0] / (x[1] * 1000), nil }
	p, err := Apply(watts, []string{"V", "kohm"}, "W", must(New(120, "V")), q)
	if err != nil {
		t.Fatal(err)
	}
	want := 120 * 120 / 4700.0
	if math.Abs(p.SI()-want) > 1e-9 || math.Abs(p.U()-want*0.05/4.7) > 1e-6 {
		t.Errorf("%v W, u %v, want %v, u %v", p.SI(), p.U(), want, want*0.05/4.7)
	}
	// The same told in milliwatts by the function.
	milli := func(x []float64) (float64, error) { y, err := watts(x); return 1000 * y, err }
	m, err := Apply(milli, []string{"V", "kohm"}, "mW", must(New(120, "V")), q)
	if err != nil || math.Abs(m.SI()-want) > 1e-9 || math.Abs(m.U()-p.U()) > 1e-9 {
		t.Errorf("%v W, u %v, want as above, %v", m.SI(), m.U(), err)
	}
	// Where the function ends at the value itself, the slope of one side serves.
	for _, side := range []float64{-1, 1} {
		half := func(x []float64) (float64, error) {
			if (x[0]-4.7)*side > 0 {
				return math.NaN(), nil
			}
			return 3 * x[0], nil
		}
		y, err := Apply(half, []string{"kohm"}, "kohm", q)
		if err != nil || math.Abs(y.U()-150) > 1e-6 {
			t.Errorf("side %v: u %v, want 150, %v", side, y.U(), err)
		}
	}

	r, err := Round(must(New(24.567, "degF")).WithU(0.3, 2), 1)
	if err != nil || math.Abs(must2(r.In("degF"))-24.6) > 1e-9 || math.Abs(must2(r.UIn("degF"))-0.3) > 1e-9 {
		t.Errorf("rounded to %v, u %v, %v", must2(r.In("degF")), must2(r.UIn("degF")), err)
	}
	if got := must2(r.Resolution("degF")); math.Abs(got-0.1) > 1e-9 {
		t.Errorf("its last digit is worth %v, want 0.1", got)
	}
}

// Twice the doubt is what printing shows, and what may be zero lies within it.
func TestMayBeZero(t *testing.T) {
	for _, r := range []struct {
		v, u float64
		want bool
	}{{0, 0, false}, {3, 0, false}, {3, 1.5, true}, {3, 1.49, false}, {-3, 1.5, true}, {-3, 1.49, false}, {0, 0.1, true}} {
		if got := MayBeZero(must(New(r.v, "ohm")).WithU(r.u, 1)); got != r.want {
			t.Errorf("%v with u %v: %v", r.v, r.u, got)
		}
	}
}

// A pressure above the air is told above vacuum by 101.325 kPa more (NIST SP 811,
// from memory).
func TestAsAbsolute(t *testing.T) {
	abs, ok := must(New(35, "psig")).AsAbsolute()
	if v := must2(abs.In("psia")); !ok || math.Abs(v-49.696) > 0.001 {
		t.Errorf("%v psia, %v", v, ok)
	}
	for _, unit := range []string{"psia", "V", "degC"} {
		if q, ok := must(New(35, unit)).AsAbsolute(); ok || q.Unit() != must(New(35, unit)).Unit() {
			t.Errorf("35 %s is told above vacuum", unit)
		}
	}
}

func must2(x float64, err error) float64 {
	if err != nil {
		panic(err)
	}
	return x
}
