package quantity

import (
	"math"
	"testing"
)

// The five simultaneous observations of JCGM 100:2008, Table H.2.
var (
	gumV   = []float64{5.007, 4.994, 5.005, 4.990, 4.999}
	gumI   = []float64{19.663, 19.639, 19.640, 19.685, 19.678}
	gumPhi = []float64{1.0456, 1.0438, 1.0468, 1.0428, 1.0433}
)

func gumInputs(t testing.TB) (v, i, phi Q) {
	t.Helper()
	var err [3]error
	v, err[0] = meanOf(gumV, "V", 1)
	i, err[1] = meanOf(gumI, "mA", 1)
	phi, err[2] = meanOf(gumPhi, "", 1)
	for _, e := range err {
		if e != nil {
			t.Fatal(e)
		}
	}
	return v, i, phi
}

func gumOutputs(t testing.TB, v, i, phi Q) (r, x, z Q) {
	t.Helper()
	in := []string{"V", "A", ""}
	apply := func(f func(v, i, phi float64) float64) Q {
		q, err := Apply(func(a []float64) (float64, error) { return f(a[0], a[1], a[2]), nil }, in, "ohm", v, i, phi)
		if err != nil {
			t.Fatal(err)
		}
		return q
	}
	r = apply(func(v, i, phi float64) float64 { return v / i * math.Cos(phi) })
	x = apply(func(v, i, phi float64) float64 { return v / i * math.Sin(phi) })
	z = apply(func(v, i, _ float64) float64 { return v / i })
	return r, x, z
}

// JCGM 100:2008, Annex H.2: Tables H.2 to H.4. Means, resistances and
// correlations of the inputs as seen in stored copies of the example; the
// published uncertainties and output correlations from memory and recomputed.
func TestAnnexH2(t *testing.T) {
	v, i, phi := gumInputs(t)
	r, x, z := gumOutputs(t, v, i, phi)
	in := func(q Q, unit string) float64 {
		y, err := q.In(unit)
		if err != nil {
			t.Fatal(err)
		}
		return y
	}
	uin := func(q Q, unit string) float64 {
		y, err := q.UIn(unit)
		if err != nil {
			t.Fatal(err)
		}
		return y
	}
	rows := []struct {
		what      string
		got, want float64
		within    float64 // half of the last digit published, unless stated
	}{
		{"V", in(v, "V"), 4.9990, 0.00005},
		{"I", in(i, "mA"), 19.6610, 0.00005},
		{"phi", in(phi, ""), 1.04446, 0.000005},
		{"u(V)", uin(v, "V"), 0.0032, 0.00005},
		{"u(I)", uin(i, "mA"), 0.0095, 0.00005},
		{"u(phi)", uin(phi, ""), 0.00075, 0.000005},
		{"r(V,I)", corr(v, i), -0.36, 0.005},
		{"r(V,phi)", corr(v, phi), 0.86, 0.005},
		{"r(I,phi)", corr(i, phi), -0.65, 0.005},
		{"R", in(r, "ohm"), 127.732, 0.0005},
		{"X", in(x, "ohm"), 219.847, 0.0006},
		{"Z", in(z, "ohm"), 254.260, 0.0005},
		{"u(R)", uin(r, "ohm"), 0.071, 0.0005},
		// Unrounded 0.2956 by first-order propagation, 0.2955 by working
		// out each observation: the annex prints 0.295.
		{"u(X)", uin(x, "ohm"), 0.295, 0.001},
		{"u(Z)", uin(z, "ohm"), 0.236, 0.0005},
		{"r(R,X)", corr(r, x), -0.588, 0.0005},
		{"r(R,Z)", corr(r, z), -0.485, 0.0005},
		// Unrounded 0.9925.
		{"r(X,Z)", corr(x, z), 0.993, 0.001},
	}
	for _, row := range rows {
		if math.Abs(row.got-row.want) > row.within {
			t.Errorf("%s = %.6f, want %v ± %v", row.what, row.got, row.want, row.within)
		}
	}
}

// Without the correlations the annex's uncertainties come out wrong: u(R)
// near 0.195 instead of 0.071 (computed). This keeps the test above honest.
func TestAnnexH2NeedsTheCorrelations(t *testing.T) {
	v, i, phi := gumInputs(t)
	apart := func(q Q, id uint64) Q { return q.WithU(q.U()/q.Unit().factor, id) }
	r, _, _ := gumOutputs(t, apart(v, 101), apart(i, 102), apart(phi, 103))
	if u := r.U(); math.Abs(u-0.1945) > 0.0005 {
		t.Errorf("uncorrelated u(R) = %.4f, want 0.1945", u)
	}
}

// Arithmetic and numeric derivatives must agree: V/I by either path, with
// the covariance to a third quantity.
func TestApplyAgreesWithArithmetic(t *testing.T) {
	v, i, phi := gumInputs(t)
	z, err := Div(v, i)
	if err != nil {
		t.Fatal(err)
	}
	_, _, by := gumOutputs(t, v, i, phi)
	if math.Abs(z.SI()-by.SI()) > 1e-9*z.SI() || math.Abs(z.U()-by.U()) > 1e-7*z.U() {
		t.Errorf("Div %v u %v, Apply %v u %v", z.SI(), z.U(), by.SI(), by.U())
	}
	if a, b := Cov(z, phi), Cov(by, phi); math.Abs(a-b) > 1e-6*math.Abs(a) {
		t.Errorf("covariance by Div %v, by Apply %v", a, b)
	}
}

// JCGM 100:2008, Annex H.1 (from memory): the components 25, 9.7, 2.9 and
// 16.6 nm of the end gauge combine to 32 nm.
func TestRootSumSquare(t *testing.T) {
	sum := Number(0)
	for k, u := range []float64{25, 9.7, 2.9, 16.6} {
		var err error
		if sum, err = Add(sum, Number(0).WithU(u, uint64(k))); err != nil {
			t.Fatal(err)
		}
	}
	if u := sum.U(); math.Abs(u-31.67) > 0.01 {
		t.Errorf("u = %.3f, want 31.67", u)
	}
}

func BenchmarkAdd(b *testing.B) {
	x := must(New(3.45, "ohm")).WithU(0.03, 1)
	y := must(New(2.5, "ohm")).WithU(0.03, 2)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := Add(x, y); err != nil {
			b.Fatal(err)
		}
	}
}

func must(q Q, err error) Q {
	if err != nil {
		panic(err)
	}
	return q
}

// meanOf is the mean of simultaneous observations in the unit named, with the
// standard uncertainty of the mean. Observation k takes the source id
// firstSource+k: give quantities that were observed together the same
// firstSource and their covariances are exact. Fewer than two observations
// have no uncertainty to state and are refused.
// Source: JCGM 100:2008, 4.2 and 5.2.3 (from memory).
func meanOf(observations []float64, unit string, firstSource uint64) (Q, error) {
	n := float64(len(observations))
	if n < 2 {
		return Q{}, fault("a mean needs two observations or more")
	}
	sum := 0.0
	for _, x := range observations {
		sum += x
	}
	mean := sum / n
	q, err := New(mean, unit)
	if err != nil {
		return Q{}, err
	}
	for k, x := range observations {
		q.doubt.put(firstSource+uint64(k), (x-mean)/math.Sqrt(n*(n-1))*q.Unit().factor)
	}
	return q.checked(q.v)
}

// corr is the correlation coefficient of two quantities, 0 when either is
// exact.
func corr(a, b Q) float64 {
	d := a.U() * b.U()
	if d == 0 {
		return 0
	}
	return max(-1, min(1, Cov(a, b)/d))
}
