package call

import (
	"strings"

	"ohmcall/calc/quantity"
	"ohmcall/notebook/script"
)

// condition is what a reading was taken in.
type condition struct {
	words []string // in the order typed
	at    float64  // °C of the part, when hasAt
	hasAt bool
	bare  bool    // at was typed without a unit
	test  float64 // volts of an insulation tester, 0 for an ordinary meter
	amps  float64 // of an earth tester, 0 for an ordinary meter
}

// conditionWords are the conditions that stand alone.
var conditionWords = []string{"cold", "hot", "start", "run", "before", "after", "peak", "closed", "open", "upright", "inverted", iceWord, "standing", directWord}

// underPower are the conditions of a machine that is energised, in which no ohms
// are read.
var underPower = []string{"start", "run", "peak"}

func (c *condition) energised() bool { return intersects(c.words, underPower) }

// iceWord says that a sensor stands in stirred ice water, at 0 °C.
const iceWord = "ice"

// directWord says that a meter stood on direct volts.
const directWord = "dc"

// put sets a condition word before those that are there.
func (c *condition) put(word string) {
	c.words = append([]string{word}, c.words...)
	if word == iceWord {
		c.at, c.hasAt = 0, true
	}
}

// positions are the conditions of a contact that conducts in one of them.
var positions = []string{"inverted", "open", "closed"}

// state is the position in which a contact was read, "" as it stands.
func (c *condition) state() string {
	for _, w := range positions {
		if c.is(w) {
			return w
		}
	}
	return ""
}

//go:noinline
func (c *condition) is(word string) bool { return among(c.words, word) }

func (c condition) String() string {
	parts := append([]string(nil), c.words...)
	if c.hasAt && !c.is(iceWord) {
		parts = append(parts, "at "+degrees(c.at, ""))
	}
	if c.test > 0 {
		parts = append(parts, "test "+number(c.test)+" V")
	}
	if c.amps > 0 {
		parts = append(parts, "test "+number(c.amps)+" A")
	}
	return strings.Join(parts, ", ")
}

// parse takes the conditions off the end of the words and returns the rest.
// A temperature without a unit is in the one named.
func (c *condition) parse(words []script.Word, unit string) ([]script.Word, error) {
	for len(words) > 1 {
		last := words[len(words)-1]
		prev := words[len(words)-2]
		switch {
		case among(conditionWords, last.Text) && !last.Quoted:
			c.put(last.Text)
			words = words[:len(words)-1]
			continue
		case last.Text == "upside-down" && !last.Quoted:
			c.put("inverted")
			words = words[:len(words)-1]
			continue
		case (prev.Text == "upside" && last.Text == "down" || prev.Text == "turned" && last.Text == "over") && len(words) > 2 && !last.Quoted:
			c.put("inverted")
			words = words[:len(words)-2]
			continue
		case prev.Text == "at" && len(words) > 2 && !prev.Quoted:
			q, err := quantity.Parse(last.Text, unit)
			if err != nil && strings.Contains(last.Text, ":") {
				return nil, last.Errorf("%q is no temperature", last.Text).WithHint("a time stands before the line, as in: 14:30 temp freezer -2F")
			}
			if err != nil {
				return nil, last.Errorf("%q is no temperature", last.Text).WithHint("as in: at 65C")
			}
			t, err := q.In("degC")
			if err != nil {
				return nil, last.Errorf("%q is no temperature", last.Text).WithHint("as in: at 65C")
			}
			c.at, c.hasAt, c.bare = t, true, asBare(last.Text)
			words = words[:len(words)-2]
			continue
		case prev.Text == "test" && len(words) > 2 && !prev.Quoted:
			if err := c.parseTest(last); err != nil {
				return nil, err
			}
			words = words[:len(words)-2]
			continue
		}
		break
	}
	return words, nil
}

// parseTest reads what a tester puts on: volts of an insulation tester, or
// amperes of an earth tester.
func (c *condition) parseTest(w script.Word) error {
	bad := w.Errorf("%q is neither test volts nor test amperes", w.Text).WithHint("as in: test 500V, or for an earth path: test 10A")
	q, err := quantity.Parse(w.Text, "")
	if err != nil || q.SI() <= 0 {
		return bad
	}
	if bare, err := q.Assume("V"); err == nil {
		q = bare
	}
	if v, err := q.In("V"); err == nil {
		c.test = v
		return nil
	}
	if v, err := q.In("A"); err == nil {
		c.amps = v
		return nil
	}
	return bad
}
