package pulldown

import (
	"math/rand/v2"
	"strings"
	"testing"
)

func TestChart(t *testing.T) {
	r := mustFit(t, truth{final: 2, tau: 70, start: 24}.read(nil, 6, 100, 0.3))
	got := strings.Join(Chart{Width: 60, Height: 15, Target: &Refrigerator}.Draw(r), "\n")
	want := strings.TrimPrefix(`
  24.0 |o
       | ..
       |   ...
       |      o.
  16.8 |        ...
       |           ..o
       |              ...
       |                 ..o..
   9.6 |                      ...o.
       |                           .....o.
       |                                  ..........
   4.2 |--------------------------------------------........
       +----------------------------------------------------
        0                      81 min                161 min
degC  o reading  . curve  - target 4.4`, "\n")
	if got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
}

func TestChartInFahrenheitAndHours(t *testing.T) {
	r := mustFit(t, truth{final: -22, tau: 180, start: 20}.read(nil, 12, 600, 0.3))
	lines := Chart{Width: 72, Height: 16, Target: &Freezer, Fahrenheit: true}.Draw(r)
	text := strings.Join(lines, "\n")
	for _, want := range []string{"  68.0 |o", "degF  o reading", "target 0.0", "10.0 h", "5.0 h", "-4."} {
		if !strings.Contains(text, want) {
			t.Errorf("no %q in\n%s", want, text)
		}
	}
}

// Whatever the readings, a drawing keeps to its size and to printable ASCII.
func TestChartKeepsItsSize(t *testing.T) {
	rng := rand.New(rand.NewPCG(17, 18))
	for range 300 {
		w := truth{final: -30 + 60*rng.Float64(), tau: 5 + 300*rng.Float64(), start: -30 + 60*rng.Float64()}
		r := mustFit(t, w.read(rng, 3+rng.IntN(20), 5+900*rng.Float64(), 0.1+2*rng.Float64()))
		c := Chart{Width: 20 + rng.IntN(100), Height: 5 + rng.IntN(30), Fahrenheit: rng.IntN(2) == 0}
		if rng.IntN(3) > 0 {
			c.Target = &Freezer
		}
		lines := c.Draw(r)
		if len(lines) != max(c.Height, leastHeight) {
			t.Fatalf("%d lines for height %d", len(lines), c.Height)
		}
		readings := 0
		for i, line := range lines {
			if len(line) > max(c.Width, leastWidth) || strings.TrimRight(line, " ") != line {
				t.Fatalf("line %d of width %d: %q", i+1, c.Width, line)
			}
			for _, b := range []byte(line) {
				if b < ' ' || b > '~' {
					t.Fatalf("not plain ASCII: %q", line)
				}
			}
			if i < len(lines)-2 {
				readings += strings.Count(line, string(markReading))
			}
		}
		if readings == 0 || readings > len(r.data.x) {
			t.Fatalf("%d readings drawn of %d", readings, len(r.data.x))
		}
	}
}
