package call

import (
	"slices"
	"strconv"
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
	if r.quality.word == "ohm" || r.quality.word == "mfd" || first.Quoted || next.Quoted || !among(conditionWords, first.Text) || first.Text == directWord || among(conditionWords, low) {
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
	case strings.EqualFold(a, caseName), isShell(b):
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
	return (isName(a) || a == "od") && !among(motors, a) && !isSupplyPoint(a) && among([]string{"fan", "pump", "motor", "blower"}, b)
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
	if len(words) == 0 {
		return "", 0
	}
	first := strings.ToLower(words[0])
	if len(words) > 1 && twoWordMotor(first, words[1]) {
		return first + "-" + strings.ToLower(words[1]), 2
	}
	if isMotor(first) {
		return first, 1
	}
	return "", 0
}

// oneName writes words before a value, which is words[n-1], as the name of one part
// where they are no two points.
func (c *Call) oneName(q *quality, words []string, n int) []string {
	k, ohms := n-1, q.word == "ohm"
	if ohms && k == 2 {
		words = c.earthLast(words)
	}
	if q.word == "volt" && k == 2 && among(earths, strings.ToLower(words[0])) && isMetal(words[1]) {
		return words
	}
	if ohms && k > 0 && isShell(words[k-1]) {
		k--
	}
	for k > 1 && (onlyDigits(words[k-1]) || among(conditionWords, words[k-1]) && !c.pinLike(words[k-1])) {
		k--
	}
	if k < 1 || !ohms && q.word != "volt" && q.word != "amp" {
		return words
	}
	a, names := c.appliance(), words[:k]
	switch low := strings.ToLower(names[k-1]); {
	case a.Gas:
	case low == "coil" && a.Dries() && (k == 1 || partOf(names[k-2]) == nil): // that of an electric dryer
		names[k-1] = "heater"
	case a.Tank && k == 1 && among(levels, low) && (ohmsAbove(words[k], contactMost) || (isShell(words[k]) || isOver(words[k])) && c.elementKnown(low)): // no thermostat
		names[k-1] += "-element"
	case low == "burner" && a.Elements: // that of an electric range
		names[k-1] = "element"
	}
	if k > 1 && !c.onePart(ohms, names) {
		return words
	}
	if k > 2 && among([]string{"inner", "outer", "left", "right", "upper", "lower", "front", "rear"}, names[k-1]) {
		names[k-2], names[k-1] = names[k-1], names[k-2] // element outer is outer element
	}
	name := strings.Join(names, "-")
	if a.Elements && !a.Gas && among(corners, strings.ToLower(name)) {
		name += "-element"
	}
	if k+1 < n && onlyDigits(words[k]) && isShell(words[k+1]) && partOf(name) != nil { // one of several, to the case
		name += "-" + words[k]
		k++
	}
	return append([]string{name}, words[k:]...)
}

// earthLast puts the earth behind what lives, of which it is the case, and before bare
// metal, to which it is the path.
func (c *Call) earthLast(words []string) []string {
	a, b := strings.ToLower(words[0]), strings.ToLower(words[1])
	switch {
	case among(earths, a) && !isShell(b) && b != "g" && (len(b) == 1 || c.pinLike(b) || among(living, b)):
		return append([]string{words[1], caseName}, words[2:]...)
	case among(earths, b) && among(bareMetal, a):
		return append([]string{"earth", words[0]}, words[2:]...)
	}
	return words
}

// living are parts whose conductor is meant by their name, bareMetal those without one.
var (
	living    = []string{"winding", "windings", "coil", "element", "terminal", "terminals", "pin"}
	bareMetal = []string{"door", "hinge", "handle", "panel", "lid", "drum", "tub", "drawer", "bracket", "screw", "knob", "backplate"}
)

// contactMost is what no closed contact reads, and the element of a tank always does, in
// ohms (common practice).
const contactMost = 5

func ohmsAbove(text string, least float64) bool {
	x, err := strconv.ParseFloat(text, 64)
	return err == nil && x > least
}

// corners are the places of a cooktop's elements.
var corners = []string{"left-front", "right-front", "left-rear", "right-rear", "left-back", "right-back", "front-left", "front-right", "rear-left", "rear-right", "back-left", "back-right"}

// onePart reports whether words are one name. In ohms that is so of any two words of
// three letters or more that name no pins; elsewhere of parts that are known.
func (c *Call) onePart(ohms bool, names []string) bool {
	last, pins := len(names)-1, 0
	end := strings.ToLower(names[last])
	for i, w := range names {
		switch {
		case i == 0 && among(sides, strings.ToLower(w)):
			if pins++; isSupplyPoint(w) && (!ohms || end != "fuse" && end != "breaker") {
				return false
			}
		case !isName(w) && (!strings.Contains(w, "-") || partOf(w) == nil):
			return false
		case c.pinLike(w):
			pins++
		}
	}
	name, noun := strings.Join(names, "-"), strings.Contains(partNouns, " "+end+" ")
	known, a, b := partOf(name) != nil, partOf(names[0]), partOf(end)
	switch {
	case c.pinLike(end), last == 1 && twoWordMotor(names[0], end):
		return false
	case !ohms:
		return known && (last > 1 || a == nil || b == nil || a == b || noun)
	}
	return last > pins || known || noun
}

// sides part parts of a kind where they stand before them in two letters.
var sides = []string{"lf", "rf", "lr", "rr", "lh", "rh", "hv", "l1", "l2", "l3"}

// partNouns end the name of a part that begins like a pin, or like another part.
const partNouns = " button winding belt lock clutch buzzer rod breaker diode pcb switch coil fuse relay igniter "

// pinLike tells a word by which pins are called: roles, colours, conductors and the
// shell, and a pin that was read.
func (c *Call) pinLike(w string) bool {
	low := strings.ToLower(w)
	return nameRoles[low] != "" || among(markRoles, low) || among([]string{"aux", "open", "closed", "speed"}, low) || strings.Contains("|"+colour+"|", "|"+low+"|") ||
		isSupplyPoint(low) || isShell(low) || slices.ContainsFunc(c.pins(), func(p string) bool { return strings.EqualFold(p, w) })
}

// isName tells a word of the language from a pin or a number.
//
//go:noinline
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

// elementKnown reports whether the element of a tank at a level was read or its watts
// typed: the level alone is then its name.
func (c *Call) elementKnown(level string) bool {
	return c.judged["part\x00"+level+"-element"] != nil || slices.ContainsFunc(c.plates, func(p plate) bool {
		return p.key == "watts" && strings.HasPrefix(strings.ToLower(p.name), level) && c.alive(p.entry)
	})
}
