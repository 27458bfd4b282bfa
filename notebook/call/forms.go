package call

import (
	"slices"
	"strings"

	"ohmcall/notebook/script"
)

// liftConditions takes conditions that were typed before the value, as in
// `amp comp start 14`. Between two points of a winding only those are taken
// that are no names of pins.
func (r *reading) liftConditions(points []script.Word) []script.Word {
	var out []script.Word
	var lifted []string
	for i, p := range points {
		if i == 0 && len(points) > 1 && r.partOfName(p, points[1]) {
			name := p.Text + "-" + points[1].Text
			return append([]script.Word{{Text: name, Col: p.Col, End: points[1].End}}, points[2:]...)
		}
		pin := p.Text == "start" || p.Text == "run" || p.Text == "open" || p.Text == "closed"
		switch {
		case p.Quoted || !among(conditionWords, p.Text), pin && (r.quality.word == "ohm" || r.quality.word == "mfd"):
			out = append(out, p)
		default:
			lifted = append(lifted, p.Text)
		}
	}
	if r.quality.word == "ohm" && len(out) == 0 {
		return points
	}
	slices.Reverse(lifted)
	for _, w := range lifted {
		r.cond.put(w)
	}
	return out
}

// partOfName reports whether a word that could be a condition begins the name of what it
// stands before: the hot gas and the cold side are places, a run compressor is none.
func (r *reading) partOfName(first, next script.Word) bool {
	low := strings.ToLower(next.Text)
	if r.quality.word == "ohm" || r.quality.word == "mfd" || first.Quoted || next.Quoted || !among(conditionWords, first.Text) || among(conditionWords, low) {
		return false
	}
	return listedPart(first.Text+"-"+low) || isName(low) && !among(placeWords(r.quality.word), low) && !isSupplyPoint(low) && !isMotor(low) && !isHeater(low) && !startsWithAny(low, placesOf)
}

// placesOf are how places begin that a condition may stand before.
var placesOf = []string{"freezer", "fridge", "fresh", "comp", "line", "supply", "return", "unit", "suction", "discharge"}

// twoWords gives the name of one place that was typed in two words, as in
// `ohm door switch 0.1` or `volt evap fan 118`, or by its two ends, as in
// `ohm heater-1 heater-2 29`; "" when the words are two points.
func twoWords(q *quality, a, b string) string {
	name := a + "-" + b
	switch {
	case strings.EqualFold(a, caseName), strings.EqualFold(b, caseName):
		return ""
	case twoWordMotor(a, b):
		return name
	case q.word == "ohm":
		return twoWordPart(a, b)
	case listedPart(name):
		return name
	case (q.word == "temp" || q.word == "psi" || q.word == "watt") && isName(a) && isName(b):
		return name
	}
	return ""
}

// twoWordMotor tells a motor named by what it drives or where it stands.
func twoWordMotor(a, b string) bool {
	a, b = strings.ToLower(a), strings.ToLower(b)
	return isName(a) && !among(motors, a) && !isSupplyPoint(a) && among([]string{"fan", "pump", "motor", "blower", "timer"}, b)
}

// motorFirst is how many words before two pins name the motor that is at hand, as in
// `ohm motor A B 2.1`.
func (c *Call) motorFirst(words []string) int {
	name, n := namedMotor(words)
	if n == 0 || len(words) < n+3 || !startsLikeNumber(words[n+2]) && !isOver(words[n+2]) {
		return 0
	}
	if at := c.machineAtHand(); c.machineNamed(name) != at && (at != itsMotor || !strings.HasSuffix(name, itsMotor)) {
		return 0
	}
	return n
}

// namedMotor is the motor that words begin with, and in how many of them.
func namedMotor(words []string) (name string, n int) {
	first := strings.ToLower(words[0])
	if len(words) > 1 && twoWordMotor(first, words[1]) {
		return first + "-" + strings.ToLower(words[1]), 2
	}
	if isMotor(first) {
		return first, 1
	}
	return "", 0
}

// isName tells a word of the language from a pin or a number.
func isName(s string) bool {
	return len(s) >= 3 && !strings.ContainsFunc(s, func(r rune) bool { return r < 'A' })
}

// listedPart tells a name that the table of parts or their other names hold.
func listedPart(name string) bool { return among(partNamed(), strings.ToLower(name)) }

// twoWordPart is twoWords for the parts that ohms are read of.
func twoWordPart(a, b string) string {
	name := a + "-" + b
	p := partStarting(name)
	if low := strings.ToLower(b); p == nil && (low == "coil" || low == "contact") && isName(a) && !isMotor(a) && partOf(name) != nil {
		return name
	}
	if p == nil || p.words[0] == "ice-maker" || strings.EqualFold(a, "c1") || strings.EqualFold(a, "c2") {
		return ""
	}
	if other := partOf(b); other != nil && other != p && !listedPart(name) {
		return ""
	}
	return name
}

// isOver tells what meters show when a reading is over their range.
//
//go:noinline
func isOver(text string) bool {
	switch strings.ToUpper(text) {
	case "OL", "0L", "O.L", "0.L", "O.L.", "0.L.", "INF", "∞":
		return true
	}
	return false
}
