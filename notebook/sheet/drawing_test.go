package sheet

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"ohmcall/notebook/record"
)

func TestTrianglePutsCommonOnTop(t *testing.T) {
	names := []string{"A", "B", "C"}
	for common := range 3 {
		for start := range 3 {
			if start == common {
				continue
			}
			run := 3 - common - start
			m := record.Machine{Pairs: []record.Pair{
				{A: names[start], B: names[common], Ohms: "cs"}, {A: names[run], B: names[common], Ohms: "cr"}, {A: names[run], B: names[start], Ohms: "sr"},
			}}
			role := map[int]string{common: "common", start: "start", run: "run"}
			for i, n := range names {
				m.Pins = append(m.Pins, record.Pin{Name: n, Role: role[i]})
			}
			d := newTriangle(m)
			got := [6]string{d.Pins[0].Role, d.Pins[1].Role, d.Pins[2].Role, d.Edges[0].Ohms, d.Edges[1].Ohms, d.Edges[2].Ohms}
			if want := [6]string{"common", "start", "run", "cs", "cr", "sr"}; got != want {
				t.Errorf("got %q, want %q", got, want)
			}
		}
	}
}

func TestUnreadPairIsSaid(t *testing.T) {
	m := record.Machine{Pins: []record.Pin{{Name: "1"}, {Name: "2"}, {Name: "3"}}, Pairs: []record.Pair{{A: "1", B: "2", Ohms: "7 Ω"}}}
	d := newTriangle(m)
	if d.Edges[0].Unread || !d.Edges[1].Unread || d.Edges[2].Ohms != "not read" {
		t.Errorf("got %+v", d.Edges)
	}
	c := newChain(record.Machine{Pins: []record.Pin{{Name: "1"}, {Name: "2"}, {Name: "3"}, {Name: "4"}}, Pairs: m.Pairs})
	if len(c.Links) != 1 || len(c.Loose) != 2 || c.Loose[0].Name != "3" {
		t.Errorf("got %+v", c)
	}
}

func TestChainStaysInItsBox(t *testing.T) {
	for n := range 30 {
		m := record.Machine{}
		for i := range n {
			m.Pairs = append(m.Pairs, record.Pair{A: "a", B: strconv.Itoa(i)})
		}
		m.Pins = []record.Pin{{Name: "loose"}}
		c := newChain(m)
		for _, l := range c.Links {
			if l.Y+chainRow/2 > c.Height || l.To > c.Width {
				t.Errorf("%d pairs: a row at %d,%d is outside %d,%d", n, l.To, l.Y, c.Width, c.Height)
			}
		}
		if len(c.Links)+len(c.Loose) != n+1 {
			t.Errorf("%d pairs give %d rows", n, len(c.Links))
		}
	}
}

func TestFit(t *testing.T) {
	for _, c := range []struct {
		in   string
		n    int
		want string
	}{{"abcd", 4, "abcd"}, {"abcde", 4, "abc…"}, {"電電電", 4, "電…"}, {"", 4, ""}} {
		if got := fit(c.in, c.n); got != c.want {
			t.Errorf("fit(%q, %d) = %q, want %q", c.in, c.n, got, c.want)
		}
	}
	if n := len(fit("e"+strings.Repeat("\u0301", 1000), 0)); n > 8 {
		t.Errorf("a cluster of 1000 marks leaves %d bytes", n)
	}
}

// exponential is a curve without noise whose points lie on its fit.
func exponential(unit string, scale float64) record.Curve {
	c := record.Curve{Place: "freezer", Unit: unit, Target: -18, Fit: &record.Fit{Final: -22, Start: 20, Tau: 60 * scale}}
	for i := range 7 {
		m := float64(i) * 20 * scale
		c.Points = append(c.Points, record.Point{Minutes: m, Celsius: -22 + 42*math.Exp(-m/(60*scale))})
	}
	return c
}

// TestFitGoesThroughItsPoints checks the drawn curve against points that lie
// on it by their making: on 61 steps the polyline is off by less than the
// drawing's resolution of 0.1 and the chord's sag.
func TestFitGoesThroughItsPoints(t *testing.T) {
	for _, unit := range []string{"C", "F"} {
		for _, scale := range []float64{1, 5} {
			p := newCurve(1, exponential(unit, scale)).Plot
			fields := strings.Fields(strings.NewReplacer("M", " ", "L", " ").Replace(p.Fit))
			var xs, ys []float64
			for i, f := range fields {
				v, err := strconv.ParseFloat(f, 64)
				if err != nil {
					t.Fatal(err)
				}
				if i%2 == 0 {
					xs = append(xs, v)
				} else {
					ys = append(ys, v)
				}
			}
			if len(xs) != 61 || len(ys) != 61 {
				t.Fatalf("%d and %d numbers in the path", len(xs), len(ys))
			}
			for i, d := range p.Dots {
				x, _ := strconv.ParseFloat(d.X, 64)
				y, _ := strconv.ParseFloat(d.Y, 64)
				if j := i * 10; math.Abs(xs[j]-x) > 0.11 || math.Abs(ys[j]-y) > 0.11 {
					t.Errorf("%s: point %d is at %g,%g, the curve at %g,%g", unit, i, x, y, xs[j], ys[j])
				}
			}
		}
	}
}

func TestPlotUnits(t *testing.T) {
	c := newCurve(1, exponential("F", 1))
	if c.Plot.YLabel != "Temperature (°F)" || c.Plot.XLabel != "Time after the first reading (min)" {
		t.Errorf("got %q, %q", c.Plot.YLabel, c.Plot.XLabel)
	}
	// -18 °C is -0.4 °F, -22 °C is -7.6 °F, by t/°F = 1.8 t/°C + 32 (BIPM, "The International System of Units", from memory).
	for _, want := range []string{"target -0.4 °F", "settles at -7.6 °F", "time constant of 60 min", "from 68 °F at 0 min"} {
		if !strings.Contains(c.Say, want) {
			t.Errorf("%q is not in %q", want, c.Say)
		}
	}
	if l := newCurve(1, exponential("C", 5)).Plot.XLabel; l != "Time after the first reading (h)" {
		t.Errorf("ten hours are drawn as %q", l)
	}
}

func TestPlotOfOddCurves(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	for name, c := range map[string]record.Curve{
		"one point":      {Unit: "C", Points: []record.Point{{Celsius: 5}}, Target: 5},
		"level":          {Unit: "C", Points: []record.Point{{Celsius: 5}, {Minutes: 10, Celsius: 5}}, Target: 5},
		"not numbers":    {Unit: "C", Points: []record.Point{{Minutes: nan}, {Celsius: inf}, {Minutes: 3, Celsius: 1}}},
		"a wild fit":     {Unit: "C", Points: []record.Point{{}, {Minutes: 9, Celsius: 1}}, Fit: &record.Fit{Final: inf, Start: nan, Tau: 0}},
		"a growing fit":  {Unit: "F", Points: []record.Point{{}, {Minutes: 9, Celsius: 1}}, Fit: &record.Fit{Tau: -1}},
		"clock gone off": {Unit: "C", Points: []record.Point{{Minutes: -40, Celsius: 3}, {Minutes: 1e7, Celsius: -3}}},
	} {
		p := newCurve(1, c).Plot
		if p == nil {
			t.Errorf("%s: no drawing", name)
			continue
		}
		if n := len(p.XTicks); n < 2 || n > 12 {
			t.Errorf("%s: %d ticks along", name, n)
		}
		if n := len(p.YTicks); n < 2 || n > 12 {
			t.Errorf("%s: %d ticks up", name, n)
		}
		for _, d := range p.Dots {
			x, errX := strconv.ParseFloat(d.X, 64)
			y, errY := strconv.ParseFloat(d.Y, 64)
			if errX != nil || errY != nil || x < plotLeft-0.1 || x > plotRight+0.1 || y < plotTop-0.1 || y > plotBottom+0.1 {
				t.Errorf("%s: a dot at %s,%s is outside the drawing", name, d.X, d.Y)
			}
		}
		if strings.Contains(p.Fit+p.TargetY, "NaN") || strings.Contains(p.Fit+p.TargetY, "Inf") {
			t.Errorf("%s: no numbers in %s %s", name, p.Fit, p.TargetY)
		}
	}
	if newCurve(1, record.Curve{}).Plot != nil {
		t.Error("a curve without points is drawn")
	}
}
