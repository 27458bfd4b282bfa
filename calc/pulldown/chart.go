package pulldown

import (
	"fmt"
	"math"
	"strings"
)

// Chart says how a pull-down is drawn. The drawing is plain ASCII, so that it
// reads the same in every viewer and in print.
type Chart struct {
	Width, Height int // of the whole drawing in characters; at least 40 by 10
	Target        *Target
	Fahrenheit    bool // label in °F instead of °C
}

// The least size a drawing can be read at.
const (
	leastWidth  = 40
	leastHeight = 10
)

// Marks of a drawing.
const (
	markReading = 'o'
	markCurve   = '.'
	markTarget  = '-'
)

// gutter is the room left of the plot: the temperature and the axis.
const gutter = 8

// Draw gives the drawing line by line, without trailing blanks: readings,
// curve and target over the time since the first reading. It runs on to the
// time at which the curve meets the target, if that is not more than as long
// again as the readings.
func (c Chart) Draw(r Result) []string {
	width, height := max(c.Width, leastWidth), max(c.Height, leastHeight)
	columns, rows := width-gutter, height-3
	end := r.data.span()
	if c.Target != nil {
		if f, err := r.Forecast(c.Target.Celsius); err == nil {
			end = max(end, min(1.05*(f.Minutes-r.data.origin), 2*end))
		}
	}
	low, high := c.limits(r, end)
	row := func(celsius float64) int {
		return int(math.Round((high - c.scale(celsius)) / (high - low) * float64(rows-1)))
	}
	column := func(after float64) int { return int(math.Round(after / end * float64(columns-1))) }

	cells := make([][]byte, rows)
	for i := range cells {
		cells[i] = []byte(strings.Repeat(" ", columns))
	}
	put := func(x, y int, mark byte) {
		if y >= 0 && y < rows && x >= 0 && x < columns {
			cells[y][x] = mark
		}
	}
	if c.Target != nil {
		for x := range columns {
			put(x, row(c.Target.Celsius), markTarget)
		}
	}
	for x := range columns {
		put(x, row(r.Temperature(r.data.origin+end*float64(x)/float64(columns-1))), markCurve)
	}
	for i, x := range r.data.x {
		put(column(x), row(r.data.y[i]), markReading)
	}

	lines := make([]string, 0, height)
	for i, cell := range cells {
		label := ""
		if i%4 == 0 || i == rows-1 {
			label = fmt.Sprintf("%.1f", high-(high-low)*float64(i)/float64(rows-1))
		}
		lines = append(lines, strings.TrimRight(fmt.Sprintf("%*s |%s", gutter-2, label, cell), " "))
	}
	lines = append(lines, fmt.Sprintf("%*s+%s", gutter-1, "", strings.Repeat("-", columns)), timeAxis(end, columns), c.legend())
	return lines
}

// limits are the temperatures at the top and the bottom, in the shown unit.
func (c Chart) limits(r Result, end float64) (low, high float64) {
	last := r.Temperature(r.data.origin + end)
	low, high = min(r.Start.Value, last), max(r.Start.Value, last)
	for _, y := range r.data.y {
		low, high = min(low, y), max(high, y)
	}
	if c.Target != nil {
		low, high = min(low, c.Target.Celsius), max(high, c.Target.Celsius)
	}
	if high-low < 1 {
		low, high = low-0.5, high+0.5
	}
	return c.scale(low), c.scale(high)
}

// scale turns a temperature into the shown unit.
func (c Chart) scale(celsius float64) float64 {
	if c.Fahrenheit {
		return celsius*1.8 + 32
	}
	return celsius
}

func (c Chart) legend() string {
	unit := "degC"
	if c.Fahrenheit {
		unit = "degF"
	}
	s := fmt.Sprintf("%s  %c reading  %c curve", unit, markReading, markCurve)
	if c.Target != nil {
		s += fmt.Sprintf("  %c target %.1f", markTarget, c.scale(c.Target.Celsius))
	}
	return s
}

// timeAxis labels the time since the first reading at the start, the middle
// and the end, in hours where the drawing spans three or more.
func timeAxis(end float64, columns int) string {
	label := func(minutes float64) string {
		if end >= 180 {
			return fmt.Sprintf("%.1f h", minutes/60)
		}
		return fmt.Sprintf("%.0f min", minutes)
	}
	line := []byte(strings.Repeat(" ", gutter+columns))
	copy(line[gutter:], "0")
	middle, last := label(end/2), label(end)
	copy(line[gutter+columns/2-len(middle)/2:], middle)
	copy(line[gutter+columns-len(last):], last)
	return string(line)
}
