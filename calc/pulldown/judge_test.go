package pulldown

import (
	"fmt"
	"math"
	"math/rand/v2"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// The targets are those of the FDA, "Refrigerator Thermometers: Cold Facts
// about Food Safety": 40 °F and 0 °F.
func TestTargets(t *testing.T) {
	for _, c := range []struct {
		target     Target
		fahrenheit float64
		celsius    float64
	}{{Refrigerator, 40, 4.44}, {Freezer, 0, -17.78}} {
		if got := c.target.Celsius*1.8 + 32; math.Abs(got-c.fahrenheit) > 1e-9 || math.Abs(c.target.Celsius-c.celsius) > 0.005 {
			t.Errorf("%s: %g °F", c.target.Name, got)
		}
	}
}

func TestJudge(t *testing.T) {
	fridge := truth{final: 2, tau: 70, start: 24}
	for _, c := range []struct {
		name   string
		points []Point
		target Target
		want   State
		reason string
	}{
		{"cold enough", fridge.read(nil, 8, 300, 0.3), Refrigerator, Proved, "the last reading, 2.3 °C, is at or below 4.4 °C by more than"},
		{"half-way down", fridge.read(nil, 10, 140, 0.3), Refrigerator, OnCourse, "which is below 4.4 °C; expected there 2.6 h (2."},
		{"settles too warm", truth{final: 8, tau: 70, start: 24}.read(nil, 12, 300, 0.3), Refrigerator, WillNotReach, "it settles at 8.0 °C"},
		{"first half hour", fridge.read(nil, 4, 30, 0.5), Refrigerator, TooEarly, "does not tell about 4.4 °C yet: take more readings"},
		{"freezer half-way", truth{final: -22, tau: 100, start: 20}.read(nil, 14, 200, 0.3), Freezer, OnCourse, "below -17.8 °C"},
		{"freezer too warm", truth{final: -12, tau: 80, start: 20}.read(nil, 12, 400, 0.5), Freezer, WillNotReach, "above -17.8 °C"},
		{"at the target within the thermometer", truth{final: 4.3, tau: 40, start: 20}.read(nil, 8, 300, 0.5), Refrigerator, TooEarly, "at 4.4 °C within the thermometer's uncertainty"},
		{"cooling in a straight line", []Point{{0, 24, 0.3}, {10, 22, 0.3}, {20, 20, 0.3}, {30, 18, 0.3}}, Refrigerator, TooEarly, "4 readings so near a straight line do not tell where it settles"},
		{"cooling in a straight line to the end", []Point{{0, 20, 0.6}, {20, 17, 0.6}, {40, 14, 0.6}, {60, 11, 0.6}, {80, 8, 0.6}, {100, 5, 0.6}, {160, -5, 0.6}, {220, -13, 0.6}}, Freezer, TooEarly, "8 readings so near a straight line"},
		{"three on a bow", []Point{{0, 20, 0.6}, {60, 5, 0.6}, {120, -8, 0.6}}, Freezer, TooEarly, "a freezer is between -35.0 °C and 45.0 °C"},
		{"a fourth bends it", []Point{{0, 20, 0.6}, {60, 5, 0.6}, {120, -7, 0.6}, {180, -13.5, 0.6}}, Freezer, OnCourse, "it settles at -3"},
		{"it would settle colder than a freezer becomes", []Point{{0, 20, 0.6}, {60, 5, 0.6}, {120, -8, 0.6}, {180, -15, 0.6}}, Freezer, TooEarly, "do not tell where it settles"},
		{"warming up", truth{final: 22, tau: 60, start: 6}.read(nil, 10, 240, 0.3), Refrigerator, WillNotReach, "settles at 22.0 °C"},
		{"steady and warm all night", []Point{{0, 9, 0.3}, {120, 9.1, 0.3}, {240, 8.9, 0.3}, {360, 9, 0.3}, {480, 9.1, 0.3}, {600, 8.9, 0.3}, {720, 9, 0.3}}, Refrigerator, WillNotReach, "above 4.4 °C"},
	} {
		j := judgeOf(t, c.points, c.target, nil)
		if j.State != c.want || !strings.Contains(j.Reason, c.reason) {
			t.Errorf("%s: %s: %s; want %s: …%s…", c.name, j.State, j.Reason, c.want, c.reason)
		}
		if (j.Forecast != nil) != (j.State == OnCourse) {
			t.Errorf("%s: forecast %v", c.name, j.Forecast)
		}
	}
}

func TestJudgeSaysScatterAndUnit(t *testing.T) {
	points := truth{final: 8, tau: 70, start: 24}.read(nil, 14, 400, 0.2)
	points[8].Celsius += 4 // the door stood open
	fahrenheit := func(c float64) string { return fmt.Sprintf("%.1f degF", c*1.8+32) }
	j := judgeOf(t, points, Refrigerator, fahrenheit)
	if !strings.Contains(j.Reason, "do not lie on one curve") || !strings.Contains(j.Reason, "40.0 degF") {
		t.Errorf("%s: %s", j.State, j.Reason)
	}
}

// A firm answer is rarely wrong: over cabinets on both sides of the target,
// read early or late, "on course" and "will not reach" are both right.
func TestJudgeIsRarelyWrong(t *testing.T) {
	rng := rand.New(rand.NewPCG(15, 16))
	const runs = 1500
	firm, wrong := 0, 0
	for range runs {
		w := truth{final: 10 * rng.Float64(), tau: 30 + 90*rng.Float64(), start: 18 + 10*rng.Float64()}
		j := judgeOf(t, w.read(rng, 4+rng.IntN(12), w.tau*(0.5+3*rng.Float64()), 0.3), Refrigerator, nil)
		reaches := w.final <= Refrigerator.Celsius
		count(&firm, j.State != TooEarly)
		count(&wrong, j.State == OnCourse && !reaches || j.State == WillNotReach && reaches)
	}
	t.Logf("%d of %d answers firm, %d of them wrong", firm, runs, wrong)
	if firm < runs/4 || wrong > firm*5/100 {
		t.Errorf("%d of %d answers firm, %d of them wrong", firm, runs, wrong)
	}
}

// No temperature is told that no cabinet has, however early the readings are.
func TestJudgeTellsNoImpossibleTemperature(t *testing.T) {
	rng := rand.New(rand.NewPCG(17, 18))
	told := regexp.MustCompile(`-?[0-9.]+ °C`)
	for range 1500 {
		w := truth{final: -25 + 30*rng.Float64(), tau: 30 + 600*rng.Float64(), start: 15 + 15*rng.Float64()}
		for _, target := range []Target{Refrigerator, Freezer} {
			j := judgeOf(t, w.read(rng, 3+rng.IntN(8), w.tau*(0.1+2*rng.Float64()), 0.5), target, nil)
			for _, s := range told.FindAllString(j.Reason, -1) {
				if x, err := strconv.ParseFloat(strings.TrimSuffix(s, " °C"), 64); err != nil || x < target.Coldest || x > warmest {
					t.Fatalf("%s: %s", j.State, j.Reason)
				}
			}
		}
	}
}

// A tighter thermometer never turns a proof into less, and the proof needs
// the whole of its uncertainty.
func TestProofNeedsTheUncertainty(t *testing.T) {
	points := truth{final: 3, tau: 30, start: 24}.read(nil, 8, 300, 0.1)
	last := points[7].Celsius
	for _, c := range []struct {
		u      float64
		proved bool
	}{{0.1, true}, {(Refrigerator.Celsius - last) / 2.001, true}, {(Refrigerator.Celsius - last) / 1.999, false}, {1.5, false}} {
		for i := range points {
			points[i].U = c.u
		}
		if got := judgeOf(t, points, Refrigerator, nil).State == Proved; got != c.proved {
			t.Errorf("u %.4f K: proved %t", c.u, got)
		}
	}
}

func TestForecastRefusals(t *testing.T) {
	cooling := mustFit(t, truth{final: 6, tau: 60, start: 24}.read(nil, 8, 240, 0.3))
	warming := mustFit(t, truth{final: 24, tau: 60, start: 6}.read(nil, 8, 240, 0.3))
	for _, c := range []struct {
		r      Result
		target float64
		want   string
	}{{cooling, 4.4, "settles at 6.0 °C, above the target"}, {warming, 4.4, "do not fall"}, {cooling, math.NaN(), "finite"}} {
		if f, err := c.r.Forecast(c.target); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("got %+v, %v, want %q", f, err, c.want)
		}
	}
	if f, err := cooling.Forecast(6.05); err != nil || !f.Never {
		t.Errorf("a target inside the final temperature's bounds: %+v, %v", f, err)
	}
}

func judgeOf(t testing.TB, points []Point, target Target, show func(float64) string) Judgement {
	t.Helper()
	r := mustFit(t, points)
	return r.Judge(target, show)
}
