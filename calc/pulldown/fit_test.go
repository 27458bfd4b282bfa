package pulldown

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/stat/distuv"
)

// truth is an exact exponential to be read with noise.
type truth struct{ final, tau, start float64 }

func (c truth) at(minutes float64) float64 {
	return c.final + (c.start-c.final)*math.Exp(-minutes/c.tau)
}

// read takes n readings evenly over span minutes, with noise of standard
// deviation u; a nil rng reads exactly.
func (c truth) read(rng *rand.Rand, n int, span, u float64) []Point {
	points := make([]Point, n)
	for i := range points {
		x := span * float64(i) / float64(n-1)
		points[i] = Point{Minutes: x, Celsius: c.at(x), U: u}
		if rng != nil {
			points[i].Celsius += u * rng.NormFloat64()
		}
	}
	return points
}

func mustFit(t testing.TB, points []Point) Result {
	t.Helper()
	r, err := Fit(points)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func TestFitExact(t *testing.T) {
	// Newton's law of cooling, textbook values: toward 3 °C with τ 3 h a
	// cabinet at 24 °C is at 8.54 °C after 4 h and at 4.4 °C after 8.12 h.
	r := mustFit(t, truth{final: 3, tau: 180, start: 24}.read(nil, 7, 300, 0.1))
	for _, c := range []struct {
		name           string
		got, want, tol float64
	}{
		{"final", r.Final.Value, 3, 1e-4}, {"tau", r.Tau.Value, 180, 1e-3}, {"start", r.Start.Value, 24, 1e-4},
		{"after 4 h", r.Temperature(240), 8.54, 0.005}, {"chi²", r.Chi2, 0, 1e-6},
	} {
		if math.Abs(c.got-c.want) > c.tol {
			t.Errorf("%s: %.6g, want %g", c.name, c.got, c.want)
		}
	}
	f, err := r.Forecast(4.4)
	if err != nil || math.Abs(f.Minutes-8.12*60) > 0.5 {
		t.Errorf("4.4 °C after %.1f min (%v), want 487", f.Minutes, err)
	}
	if r.Dof != 4 || r.Scattered {
		t.Errorf("dof %d, scattered %t", r.Dof, r.Scattered)
	}
}

// Times are on the readings' own scale, wherever it starts, to a thousandth
// of the uncertainty.
func TestFitShiftedTime(t *testing.T) {
	points := truth{final: 3, tau: 60, start: 24}.read(nil, 7, 200, 0.1)
	plain := mustFit(t, points)
	for i := range points {
		points[i].Minutes += 600
	}
	shifted := mustFit(t, points)
	a, _ := plain.Forecast(4)
	b, _ := shifted.Forecast(4)
	if math.Abs(b.Minutes-a.Minutes-600) > 1e-3*a.U || math.Abs(shifted.Temperature(650)-plain.Temperature(50)) > 1e-3*0.1 {
		t.Errorf("forecast %.3f and %.3f min", a.Minutes, b.Minutes)
	}
}

func TestFitRefusals(t *testing.T) {
	for want, points := range map[string][]Point{
		"at least 3":                       {{0, 20, 0.5}, {10, 15, 0.5}},
		"reading 3 is not later":           {{0, 20, 0.5}, {10, 15, 0.5}, {10, 14, 0.5}},
		"reading 2 is not a finite number": {{0, 20, 0.5}, {10, math.NaN(), 0.5}, {20, 14, 0.5}},
		"reading 1 has no uncertainty":     {{0, 20, 0}, {10, 15, 0.5}, {20, 14, 0.5}},
		"do not make one pull-down":        {{0, 20, 0.5}, {1e-9, 15, 0.5}, {20, 14, 0.5}},
	} {
		if _, err := Fit(points); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("got %v, want %q", err, want)
		}
	}
}

// Newton's method on all three constants at once, its steps solved by a
// general linear solver, finds the same constants and the same covariance.
func TestFitAgreesWithGaussNewton(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 8))
	for range 50 {
		c := truth{final: -20 + 25*rng.Float64(), tau: 20 + 100*rng.Float64(), start: 15 + 15*rng.Float64()}
		points := c.read(rng, 8+rng.IntN(10), c.tau*(2+2*rng.Float64()), 0.2)
		r := mustFit(t, points)
		got, covariance := gaussNewton(t, points, c)
		values := [3]float64{r.Final.Value, r.Tau.Value, r.Start.Value}
		for i, want := range [3]float64{got.final, got.tau, got.start} {
			u := math.Sqrt(r.Cov[i][i])
			if math.Abs(values[i]-want) > 1e-4*u {
				t.Errorf("%+v: constant %d is %.8g, the general solver has %.8g", c, i, values[i], want)
			}
			for j := range 3 {
				if !r.Scattered && math.Abs(r.Cov[i][j]-covariance.At(i, j)) > 1e-3*u*math.Sqrt(r.Cov[j][j]) {
					t.Errorf("%+v: covariance %d %d is %.6g, the general solver has %.6g", c, i, j, r.Cov[i][j], covariance.At(i, j))
				}
			}
		}
	}
}

func gaussNewton(t *testing.T, points []Point, c truth) (truth, *mat.Dense) {
	t.Helper()
	jacobian, residual := mat.NewDense(len(points), 3, nil), mat.NewVecDense(len(points), nil)
	for range 100 {
		for i, p := range points {
			e := math.Exp(-p.Minutes / c.tau)
			jacobian.SetRow(i, []float64{(1 - e) / p.U, (c.start - c.final) * e * p.Minutes / (c.tau * c.tau) / p.U, e / p.U})
			residual.SetVec(i, (p.Celsius-c.at(p.Minutes))/p.U)
		}
		var step mat.VecDense
		if err := step.SolveVec(jacobian, residual); err != nil {
			t.Fatal(err)
		}
		c.final, c.tau, c.start = c.final+step.AtVec(0), c.tau+step.AtVec(1), c.start+step.AtVec(2)
		if mat.Norm(&step, 2) < 1e-11 {
			break
		}
	}
	var normal, inverse mat.Dense
	normal.Mul(jacobian.T(), jacobian)
	if err := inverse.Inverse(&normal); err != nil {
		t.Fatal(err)
	}
	return c, &inverse
}

// The constants come back within their stated bounds in 95 % of noisy runs,
// each one and also all three at once; likewise the forecast.
func TestCoverage(t *testing.T) {
	for _, c := range []struct {
		name string
		n    int
		span float64 // in time constants
		u    float64
	}{
		{"long", 12, 4, 0.25}, {"usual", 10, 2.5, 0.5}, {"short", 12, 1.2, 0.25}, {"few", 5, 2, 0.5}, {"three", 3, 2.5, 0.25},
	} {
		t.Run(c.name, func(t *testing.T) {
			rng := rand.New(rand.NewPCG(2026, uint64(c.n)))
			const runs = 1000
			var final, tau, start, all, symmetric, forecast int
			for range runs {
				w := truth{final: -25 + 30*rng.Float64(), tau: 15 + 120*rng.Float64(), start: 15 + 20*rng.Float64()}
				r := mustFit(t, w.read(rng, c.n, c.span*w.tau, c.u))
				inFinal, inTau, inStart := r.Final.holds(w.final), r.Tau.holds(w.tau), r.Start.holds(w.start)
				count(&final, inFinal)
				count(&tau, inTau)
				count(&start, inStart)
				count(&all, inFinal && inTau && inStart)
				count(&symmetric, math.Abs(r.Final.Value-w.final) <= r.K*r.Final.U)
				target := w.final + 0.2*(w.start-w.final)
				f, err := r.Forecast(target)
				at := w.tau * math.Log(5)
				// No forecast is right where the bounds allow no arrival.
				count(&forecast, err == nil && at >= f.Low && (f.Never || at <= f.High) || err != nil && r.Final.High >= target)
			}
			t.Logf("%d readings over %g tau, u %g K: final %.1f %%, tau %.1f %%, start %.1f %%, all three %.1f %%, ±k·u final %.1f %%, forecast %.1f %%",
				c.n, c.span, c.u, percent(final, runs), percent(tau, runs), percent(start, runs), percent(all, runs), percent(symmetric, runs), percent(forecast, runs))
			for name, n := range map[string]int{"final": final, "tau": tau, "start": start, "all three": all, "forecast": forecast} {
				if n < runs*95/100 {
					t.Errorf("%s within its bounds in %d of %d runs", name, n, runs)
				}
			}
		})
	}
}

func (e Estimate) holds(x float64) bool { return e.Low <= x && x <= e.High }

func count(n *int, yes bool) {
	if yes {
		*n++
	}
}

func percent(n, of int) float64 { return 100 * float64(n) / float64(of) }

// Where the thermometer scatters more than it claims, the bounds follow the
// scatter.
func TestUnderstatedUncertainty(t *testing.T) {
	rng := rand.New(rand.NewPCG(9, 10))
	const runs = 500
	held, scattered := 0, 0
	for range runs {
		w := truth{final: 3, tau: 60, start: 25}
		points := w.read(rng, 12, 200, 0.6)
		for i := range points {
			points[i].U = 0.1
		}
		r := mustFit(t, points)
		count(&held, r.Final.holds(3))
		count(&scattered, r.Scattered)
	}
	if held < runs*93/100 || scattered < runs*99/100 {
		t.Errorf("final within its bounds in %d, scatter seen in %d of %d runs", held, scattered, runs)
	}
}

func TestStudentTable(t *testing.T) {
	for nu := 1; nu <= coverageFreedom; nu++ {
		want := distuv.StudentsT{Mu: 0, Sigma: 1, Nu: float64(nu)}.Quantile(0.975)
		if math.Abs(student(nu)-want) > 0.006 {
			t.Errorf("t for %d degrees of freedom: %g, want %.3f (JCGM 100:2008 Table G.2)", nu, student(nu), want)
		}
	}
	if student(coverageFreedom) != coverage {
		t.Error("the factor is not that of its degrees of freedom")
	}
	for nu := 1; nu <= 60; nu++ {
		want := distuv.ChiSquared{K: float64(nu)}.Quantile(0.99)
		if math.Abs(chi2Limit(nu)-want) > 0.03*want {
			t.Errorf("chi² limit for %d degrees of freedom: %.3f, want %.3f", nu, chi2Limit(nu), want)
		}
	}
}

// First-order uncertainties agree with the scatter of repeated fits.
func TestCovarianceAgreesWithScatter(t *testing.T) {
	rng := rand.New(rand.NewPCG(11, 12))
	w := truth{final: -18, tau: 60, start: 24}
	exact := mustFit(t, w.read(nil, 15, 240, 0.2))
	const runs = 2000
	var sum, square, cross float64
	for range runs {
		r := mustFit(t, w.read(rng, 15, 240, 0.2))
		f, g := r.Final.Value-w.final, r.Tau.Value-w.tau
		sum, square, cross = sum+f, square+f*f, cross+f*g
	}
	if sd := math.Sqrt(square/runs - sum*sum/runs/runs); math.Abs(sd/exact.Final.U-1) > 0.06 {
		t.Errorf("final scatters by %.4g K, stated %.4g K", sd, exact.Final.U)
	}
	if c := cross / runs; math.Abs(c/exact.Cov[0][1]-1) > 0.08 {
		t.Errorf("final and tau vary together by %.4g, stated %.4g", c, exact.Cov[0][1])
	}
}

// Hostile readings never give NaN.
func TestFitHostile(t *testing.T) {
	rng := rand.New(rand.NewPCG(13, 14))
	for range 300 {
		points := make([]Point, 3+rng.IntN(6))
		at := 0.0
		for i := range points {
			at += math.Exp(8*rng.Float64() - 4)
			points[i] = Point{Minutes: at, Celsius: []float64{5, 5, -40 + 80*rng.Float64(), float64(rng.IntN(3)), 1e6}[rng.IntN(5)], U: []float64{0.01, 0.5, 1e3}[rng.IntN(3)]}
		}
		r, err := Fit(points)
		if err != nil {
			t.Fatalf("%v: %v", points, err)
		}
		for _, e := range []Estimate{r.Final, r.Tau, r.Start} {
			if !finite(e.Value) || !finite(e.U) || !finite(e.Low) || !finite(e.High) || e.Low > e.High {
				t.Fatalf("%v: %+v", points, r)
			}
		}
		if f, err := r.Forecast(4.44); err == nil && (!finite(f.Minutes) || !finite(f.Low) || !finite(f.High) || !finite(f.U) || f.Low > f.Minutes+1e-3) {
			t.Fatalf("%v: %+v", points, f)
		}
		if j := r.Judge(Refrigerator, nil); j.Reason == "" || strings.Contains(j.Reason, "NaN") {
			t.Fatalf("%v: %+v", points, j)
		}
	}
}

func BenchmarkFit(b *testing.B) {
	points := truth{final: 3, tau: 60, start: 24}.read(rand.New(rand.NewPCG(1, 1)), 20, 200, 0.3)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := Fit(points); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkForecast(b *testing.B) {
	r := mustFit(b, truth{final: 3, tau: 60, start: 24}.read(rand.New(rand.NewPCG(1, 1)), 20, 200, 0.3))
	b.ReportAllocs()
	for b.Loop() {
		if _, err := r.Forecast(4.44); err != nil {
			b.Fatal(err)
		}
	}
}
