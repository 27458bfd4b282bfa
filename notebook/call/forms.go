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
	for _, p := range points {
		pin := p.Text == "start" || p.Text == "run" || p.Text == "open" || p.Text == "closed"
		switch {
		case p.Quoted || !slices.Contains(conditionWords, p.Text), pin && (r.quality.word == "ohm" || r.quality.word == "mfd"):
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

// twoWordPart gives the name of a part that was typed in two words, as in
// `ohm door switch 0.1`, or by its two ends, as in `ohm heater-1 heater-2 29`;
// "" when the words are two points.
func twoWordPart(q *quality, a, b string) string {
	name := a + "-" + b
	p := partOf(name)
	if q.word != "ohm" || p == nil || strings.EqualFold(b, caseName) || strings.EqualFold(a, "c1") || strings.EqualFold(a, "c2") {
		return ""
	}
	if other := partOf(b); other != nil && other != p && !slices.Contains(p.words, strings.ToLower(name)) {
		return ""
	}
	return name
}

// isOver tells what meters show when a reading is over their range.
func isOver(text string) bool {
	switch strings.ToUpper(text) {
	case "OL", "0L", "O.L", "0.L", "O.L.", "0.L.", "INF", "∞":
		return true
	}
	return false
}
