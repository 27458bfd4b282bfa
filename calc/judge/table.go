package judge

import (
	"fmt"
	"math"
	"sort"
)

// Point is one row of a sensor's table.
type Point struct{ Celsius, Ohms float64 }

// Table is a sensor's table that was checked and sorted by temperature.
type Table struct{ points []Point }

// jumpFactor is how far the steepness of one step of a table may stand from
// that of both its neighbours: real curves bend slowly (common practice).
const jumpFactor = 1.6

// NewTable checks the rows of a sensor's table. The ohms must fall, or rise,
// from row to row without exception; when removing one row would mend that,
// the error names it, since it is then most likely a misprint. Doubts name
// rows that keep the order and yet bend the curve as no sensor does.
func NewTable(rows []Point) (t Table, doubts []string, err error) {
	p := append([]Point(nil), rows...)
	sort.SliceStable(p, func(i, j int) bool { return p[i].Celsius < p[j].Celsius })
	if len(p) < 2 {
		return Table{}, nil, fmt.Errorf("a sensor table needs two rows or more, this has %d", len(p))
	}
	for i, q := range p {
		if !(q.Ohms > 0) || math.IsInf(q.Ohms, 0) || !(q.Celsius > -kelvin) || math.IsInf(q.Celsius, 0) {
			return Table{}, nil, fmt.Errorf("the row at %s °C has no possible value", num(q.Celsius))
		}
		if i > 0 && q.Celsius == p[i-1].Celsius {
			return Table{}, nil, fmt.Errorf("two rows stand at %s °C", num(q.Celsius))
		}
	}
	if !monotone(p) {
		return Table{}, nil, misprint(p)
	}
	return Table{p}, bends(p), nil
}

func monotone(p []Point) bool {
	rises, falls := true, true
	for i := 1; i < len(p); i++ {
		rises = rises && p[i].Ohms > p[i-1].Ohms
		falls = falls && p[i].Ohms < p[i-1].Ohms
	}
	return rises || falls
}

// misprint words the fault of a table that is not monotone.
func misprint(p []Point) error {
	var culprits []Point
	for i := range p {
		rest := append(append([]Point(nil), p[:i]...), p[i+1:]...)
		if len(rest) > 2 && monotone(rest) {
			culprits = append(culprits, p[i])
		}
	}
	switch len(culprits) {
	case 0:
		return fmt.Errorf("the ohms neither rise nor fall throughout; check more than one row")
	case 1:
		return fmt.Errorf("the row at %s °C breaks the order: %s is likely a misprint",
			num(culprits[0].Celsius), ohms(culprits[0].Ohms))
	}
	text := num(culprits[0].Celsius)
	for _, c := range culprits[1:] {
		text += " or " + num(c.Celsius)
	}
	return fmt.Errorf("one of the rows at %s °C breaks the order: likely a misprint", text)
}

// bends compares the steepness ln R against 1/T of each step with both its
// neighbours. A wrong row makes one step too steep and the next too flat.
func bends(p []Point) []string {
	slope := make([]float64, 0, len(p))
	for i := 1; i < len(p); i++ {
		slope = append(slope, math.Abs(math.Log(p[i].Ohms/p[i-1].Ohms)/
			(1/(p[i].Celsius+kelvin)-1/(p[i-1].Celsius+kelvin))))
	}
	var out []string
	for i := 1; i < len(slope); i++ {
		ratio := slope[i] / slope[i-1]
		if ratio < 1/jumpFactor || ratio > jumpFactor {
			bridged := math.Abs(math.Log(p[i+1].Ohms/p[i-1].Ohms) /
				(1/(p[i+1].Celsius+kelvin) - 1/(p[i-1].Celsius+kelvin)))
			if neighbourly(bridged, slope, i) {
				out = append(out, fmt.Sprintf("the row at %s °C, %s, bends the curve: check it against the sheet",
					num(p[i].Celsius), ohms(p[i].Ohms)))
			}
		}
	}
	return out
}

// neighbourly reports whether the slope that leaves out row i agrees with the
// steps before and after the two that touch the row.
func neighbourly(bridged float64, slope []float64, i int) bool {
	near, any := true, false
	for _, j := range []int{i - 2, i + 1} {
		if j >= 0 && j < len(slope) {
			any = true
			r := bridged / slope[j]
			near = near && r < jumpFactor && r > 1/jumpFactor
		}
	}
	return near && any
}

// edgeKelvin is how far the first and last step of a table are carried on, so
// that a thermometer's doubt does not put its end rows out of reach (common
// practice).
const edgeKelvin = 2

// Ohms interpolates ln R over 1/T, which follows a thermistor closely; it is
// false more than edgeKelvin outside the table.
func (t Table) Ohms(c float64) (float64, bool) {
	p := t.points
	if len(p) < 2 || c < p[0].Celsius-edgeKelvin || c > p[len(p)-1].Celsius+edgeKelvin {
		return 0, false
	}
	i := sort.Search(len(p), func(i int) bool { return p[i].Celsius >= c })
	i = min(max(i, 1), len(p)-1)
	a, b := p[i-1], p[i]
	x, xa, xb := 1/(c+kelvin), 1/(a.Celsius+kelvin), 1/(b.Celsius+kelvin)
	return a.Ohms * math.Exp(math.Log(b.Ohms/a.Ohms)*(x-xa)/(xb-xa)), true
}
