package call

import (
	"strconv"
	"strings"

	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
	"ohmcall/notebook/script"
)

// parseValue reads the value word.
func (r *reading) parseValue(c *Call, w script.Word) error {
	text := w.Text
	r.typed = text
	if isOver(text) {
		r.over = true
		return nil
	}
	col := w.Col
	if rest, ok := strings.CutPrefix(text, ">"); ok {
		return r.parseOver(w, rest)
	}
	if rest, ok := strings.CutPrefix(text, "~"); ok {
		r.rough, text, col = true, rest, col+1
	}
	if strings.HasPrefix(text, "(") && strings.HasSuffix(text, ")") {
		q, err := c.evalQuantity(text, col)
		if err != nil {
			return err
		}
		return r.settle(c, q, w, true)
	}
	if low, high, two := strings.Cut(text, "/"); two && r.quality.word == "psi" {
		if x, _ := strconv.ParseFloat(low, 64); x > 0 {
			if y, err := strconv.ParseFloat(high, 64); err == nil && y < x {
				low, high = high, low
			}
		}
		return w.Errorf("%s are two pressures", w.Text).WithHint("each has its side, the lower is that of suction: psi suction %s run, discharge %s run", low, high)
	}
	if strings.Contains(text, "/") {
		return w.Errorf("%s is no single value", w.Text).
			WithHint("a comma parts two readings, as in mfd herm 44.6, fan 4.9; a sum stands in parentheses: (%s)", text)
	}
	q, err := quantity.Parse(text, r.bareUnit(c))
	if err != nil {
		if e, ok := err.(*source.Error); ok {
			if e.Col == 0 {
				e = &source.Error{Col: 1, End: 1 + len([]rune(text)), Msg: e.Msg, Hint: e.Hint}
			}
			return e.Shift(col - 1)
		}
		return w.Errorf("%v", err)
	}
	r.bare = r.quality.word == "temp" && asBare(text)
	return r.settle(c, q, w, false)
}

// leastRange is the lowest range of ohms that reading over it says of what is
// read that it is open: the highest of an ordinary meter (common practice).
const leastRange = 20e6

// parseOver reads the range that a reading is over, as in >200M.
func (r *reading) parseOver(w script.Word, text string) error {
	q, err := quantity.Parse(text, r.quality.unit)
	if err == nil {
		r.floor, err = q.In(r.quality.unit)
	}
	if err != nil || r.quality.word != "ohm" || r.floor < leastRange {
		return w.Errorf("more than %s says that the range was too low", text).
			WithHint("read it again on a higher range; ohms over the highest range are OL, or >200M with the range")
	}
	r.q, r.over = q, true
	return nil
}

// bareUnit is the unit of a number without one.
func (r *reading) bareUnit(c *Call) string {
	if r.quality.word == "temp" {
		return c.tempUnit()
	}
	return r.quality.unit
}

// asShown is a number with the digits that a meter would show of it, three at
// least and no more than it has.
func asShown(x float64) string {
	short := strconv.FormatFloat(x, 'f', -1, 64)
	if round := strconv.FormatFloat(x, 'g', 3, 64); len(short) > len(round) {
		if y, err := strconv.ParseFloat(round, 64); err == nil {
			return strconv.FormatFloat(y, 'f', -1, 64)
		}
	}
	return short
}

func (r *reading) settle(c *Call, q quantity.Q, w script.Word, derived bool) error {
	q, err := q.Assume(r.bareUnit(c))
	if err == nil {
		r.x, err = q.In(r.quality.unit)
	}
	if err != nil {
		return w.Errorf("%s is no %s", w.Text, r.quality.noun).WithHint("%s takes %s", r.quality.word, r.quality.unit)
	}
	if derived && q.U() == 0 {
		// Numbers alone: what a meter showed, worked on, has its doubt all the same.
		derived = false
		if x, err := quantity.Parse(asShown(r.x), r.quality.unit); err == nil && r.quality.word != "temp" {
			q = x
		}
	}
	r.q, r.derived = q, derived
	if r.quality.word == "temp" {
		if u := q.Symbol(); u == "°F" {
			r.res, _ = q.Resolution("degF")
			r.res /= 1.8
		} else {
			r.res, _ = q.Resolution("degC")
		}
	} else {
		r.res, _ = q.Resolution(r.quality.unit)
	}
	x := r.x
	if !derived && r.res >= 1 && x >= 0 && x < tenthsBelow[r.quality.word] {
		r.res, r.tenths = 0.1, true
	}
	if !derived && !r.rough && r.quality.word == "ohm" && (r.res == kilohm && x < kiloTenthsBelow || r.res == megohm && x < megTenthsBelow) {
		r.res, r.tenths = r.res/10, true
	}
	switch r.quality.word {
	case "ohm", "mfd", "amp", "watt", "trip":
		if x < 0 {
			return w.Errorf("a %s below zero is no reading", r.quality.noun)
		}
	case "temp":
		if x < -quantity.ZeroC {
			return w.Errorf("no temperature is below absolute zero")
		}
	case "psi":
		if x < -fullVacuum {
			return w.Errorf("no pressure is below a full vacuum, -14.7 psi on a gauge").WithHint("a vacuum in inches of mercury takes its unit: psi suction -25inHg")
		}
	}
	return nil
}
