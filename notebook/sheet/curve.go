package sheet

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"ohmcall/notebook/record"
)

// curve is a temperature curve with its drawing, nil when it has no points.
type curve struct {
	record.Curve
	N      int
	Plot   *plot
	Say    string // the drawing in words
	Legend string
}

// plot is a drawing in the units of its viewBox.
type plot struct {
	Left, Right, Top, Bottom int
	XTicks, YTicks           []tick
	XLabel, YLabel           string
	Dots                     []dot
	Fit                      string // path, "" without a fit
	TargetY, TargetText      string
	TargetLabelY             string
}

type tick struct{ At, Label string }

type dot struct{ X, Y string }

const (
	plotLeft, plotRight = 60, 620
	plotTop, plotBottom = 14, 216
)

// longCall is the length in minutes from which the axis counts hours.
const longCall = 180

func newCurve(n int, c record.Curve) curve {
	out := curve{Curve: c, N: n}
	points := make([]record.Point, 0, len(c.Points))
	for _, p := range c.Points {
		if finite(p.Minutes) && finite(p.Celsius) {
			points = append(points, p)
		}
	}
	if len(points) == 0 || !finite(c.Target) {
		return out
	}
	show := func(celsius float64) string { return decimal(shown(c.Unit, celsius), 1) + " °" + c.Unit }
	first, last := points[0], points[len(points)-1]
	say := fmt.Sprintf("%d readings, from %s at %s min to %s at %s min; target %s", len(points),
		show(first.Celsius), decimal(first.Minutes, 0), show(last.Celsius), decimal(last.Minutes, 0), show(c.Target))
	out.Legend = "Dots: readings. Dashed: target."
	out.Plot = newPlot(c, points)
	if out.Plot.Fit != "" {
		settles := fmt.Sprintf("settles at %s with a time constant of %s min", show(c.Fit.Final), decimal(c.Fit.Tau, 0))
		say += "; fitted curve " + settles
		out.Legend = "Dots: readings. Line: fitted exponential, " + settles + ". Dashed: target."
	}
	out.Say = say + "."
	return out
}

func newPlot(c record.Curve, points []record.Point) *plot {
	lowX, highX, lowY, highY := 0.0, 0.0, c.Target, c.Target
	for _, p := range points {
		lowX, highX = min(lowX, p.Minutes), max(highX, p.Minutes)
		lowY, highY = min(lowY, p.Celsius), max(highY, p.Celsius)
	}
	fitted := c.Fit != nil && c.Fit.Tau > 0 && finite(c.Fit.Tau) && finite(c.Fit.Start) && finite(c.Fit.Final)
	fitAt := func(minutes float64) float64 {
		return c.Fit.Final + (c.Fit.Start-c.Fit.Final)*math.Exp(-minutes/c.Fit.Tau)
	}
	if fitted {
		for _, y := range []float64{fitAt(lowX), fitAt(highX)} {
			fitted = fitted && finite(y)
			lowY, highY = min(lowY, y), max(highY, y)
		}
	}
	perX, unitX := 1.0, "min"
	if highX-lowX > longCall {
		perX, unitX = 60, "h"
	}
	x := newAxis(lowX/perX, highX/perX, plotLeft, plotRight)
	y := newAxis(shown(c.Unit, lowY), shown(c.Unit, highY), plotBottom, plotTop)
	atX := func(minutes float64) string { return decimal(x.at(minutes/perX), 1) }
	atY := func(celsius float64) string { return decimal(y.at(shown(c.Unit, celsius)), 1) }

	p := &plot{Left: plotLeft, Right: plotRight, Top: plotTop, Bottom: plotBottom,
		XTicks: x.ticks(), YTicks: y.ticks(),
		XLabel: "Time after the first reading (" + unitX + ")", YLabel: "Temperature (°" + c.Unit + ")"}
	for _, q := range points {
		p.Dots = append(p.Dots, dot{atX(q.Minutes), atY(q.Celsius)})
	}
	if fitted {
		const steps = 60
		var b strings.Builder
		for i := range steps + 1 {
			m := lowX + (highX-lowX)*float64(i)/steps
			b.WriteString(map[bool]string{true: "M", false: " L"}[i == 0] + atX(m) + " " + atY(fitAt(m)))
		}
		p.Fit = b.String()
	}
	p.TargetY = atY(c.Target)
	target := y.at(shown(c.Unit, c.Target))
	p.TargetLabelY = decimal(target-6, 1)
	if target < plotTop+20 {
		p.TargetLabelY = decimal(target+16, 1)
	}
	p.TargetText = "target " + decimal(shown(c.Unit, c.Target), 1) + " °" + c.Unit
	return p
}

// axis maps values to places between two ends, with round ticks.
type axis struct {
	low, high, step float64
	from, to        int
}

func newAxis(low, high float64, from, to int) axis {
	if high-low < 1e-6*max(math.Abs(low), math.Abs(high), 1) {
		low, high = low-1, high+1
	}
	step := math.Pow(10, math.Floor(math.Log10((high-low)/4)))
	for _, m := range []float64{5, 2} {
		if (high-low)/(step*m) >= 3 {
			step *= m
			break
		}
	}
	return axis{math.Floor(low/step+1e-9) * step, math.Ceil(high/step-1e-9) * step, step, from, to}
}

func (a axis) at(v float64) float64 {
	return float64(a.from) + (v-a.low)/(a.high-a.low)*float64(a.to-a.from)
}

func (a axis) ticks() []tick {
	digits := max(0, int(-math.Floor(math.Log10(a.step)+1e-9)))
	var out []tick
	for i := range int(math.Round((a.high-a.low)/a.step)) + 1 {
		v := a.low + float64(i)*a.step
		if math.Abs(v) < a.step/2 {
			v = 0
		}
		out = append(out, tick{decimal(a.at(v), 1), strconv.FormatFloat(v, 'f', digits, 64)})
	}
	return out
}

// shown turns °C into the unit that the call uses.
func shown(unit string, celsius float64) float64 {
	if unit == "F" {
		return celsius*1.8 + 32
	}
	return celsius
}

// decimal writes a number with at most so many decimals.
func decimal(x float64, digits int) string {
	s := strconv.FormatFloat(x, 'f', digits, 64)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	if s == "-0" {
		return "0"
	}
	return s
}

func finite(x float64) bool { return math.Abs(x) < 1e9 }

// Title is the drawing's name.
func (c curve) Title() string { return "Temperature of " + c.Place + " after the repair" }
