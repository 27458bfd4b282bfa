package call

import (
	"slices"
	"strconv"
	"strings"

	"ohmcall/calc/formula"
	"ohmcall/calc/source"
	"ohmcall/calc/sum"
	"ohmcall/calc/winding"
	"ohmcall/notebook/said"
	"ohmcall/notebook/script"
)

// Doubtful refuses a line typed live that a stored one may be, though it is
// likelier a slip: a comma that can be a sign of thousands, of decimals, or part
// two readings, as in watt unit 1,200; a value in the place of a point, as in
// ohm coil 1320 550; what a client or a unit did, in the place of their name; the
// accuracy of what no meter shows; ohms of a machine under power; what has no pins
// read yet for all of them; several entries behind strike; a formula's name for
// another sum; a sum that begins with a word for a reading, or what sum.Doubtful
// has.
func (c *Call) Doubtful(text string) error {
	l, err := script.Parse(text)
	if err != nil || l.Blank() {
		return nil
	}
	if first := l.Words[0].Text; len(l.Words) > 1 && c.isName(first) && said.Tells(l.Words[1].Text) {
		return l.Words[1].Errorf("this tells something of the %s and would take the place of its name", first).
			WithHint("note %s; how the unit is left: left unplugged; the complaint: fault …", clip(l.Body, 60))
	}
	if w := l.Words; w[0].Text == "meter" && len(w) > 1 && w[1].Text == "trip" {
		return w[1].Errorf("a time to trip is counted by a person and has no meter").WithHint("its doubt is half its last digit: trip overload 7s")
	}
	name, _ := Defines(text)
	if _, ok := formula.Lookup(name); ok {
		return l.Words[1].Errorf("%s is built in and cannot be given another meaning", name).WithHint("choose another name")
	}
	if l.Words[0].Text == "def" {
		if err := pointless(l); err != nil {
			return err
		}
	}
	for _, expr := range c.expressions(text) {
		if err := c.noGas(expr); err != nil {
			before, _, _ := strings.Cut(text, expr)
			return shifted(err, 1+len([]rune(before)))
		}
		if err := sum.Doubtful(expr, &scope{c: c}); err != nil {
			before, _, _ := strings.Cut(text, expr)
			return shifted(err, 1+len([]rune(before)))
		}
	}
	if l.Words[0].Text == "strike" {
		rest, col := l.Rest()
		if m := severalEntries().FindStringSubmatch(rest); m != nil {
			if n, _ := strconv.Atoi(m[2]); n > 0 && n <= len(c.entries) {
				w := script.Word{Col: col, End: col + len([]rune(strings.TrimSpace(m[0])))}
				return w.Errorf("strike takes one entry at a time").WithHint("strike each with its reason: strike %s probe slipped", m[1])
			}
		}
	}
	if l.Words[0].Text == "part" {
		return commaless(l)
	}
	if l.Words[0].Text == "wire" && len(l.Words) == 3 {
		return c.miswired(&l.Words[1], &l.Words[2])
	}
	if l.Words[0].Text == "need" && len(l.Words) > 1 {
		return c.needless(l)
	}
	q := qualityOf(l.Words[0].Text)
	if q == nil || len(text) > longestTyped || strings.Contains(text, "(") {
		return nil
	}
	if m := patterns().two.FindStringSubmatch(l.Text); m != nil {
		col := 1 + len([]rune(m[1]))
		w := script.Word{Col: col, End: col + len(m[2]) + 1 + len(m[3])}
		return w.Errorf("%s,%s can be read two ways", m[2], m[3]).
			WithHint("write it without the comma: %s%s%s, or with a point: %s%s.%s", m[1], m[2], m[3], m[1], m[2], m[3])
	}
	if w := l.Words[len(l.Words)-1]; q.word == "ohm" && among(underPower, w.Text) && !w.Quoted && !(c.burns() && partOf(l.Words[1].Text) == partStarting("pressure-switch")) && len(l.Words) > 2 && startsLikeNumber(l.Words[len(l.Words)-2].Text) {
		e := w.Errorf("ohms are read dead, and %s is of a machine under power", w.Text)
		if name := l.Words[1].Text; len(l.Words) == 4 && len(name) > 3 {
			return e.WithHint("read dead: ohm %s %s; the volts across it, under power: volt %[1]s … %[3]s", name, l.Words[2].Text, w.Text)
		}
		return e.WithHint("as in: amp comp %s %s", l.Words[len(l.Words)-2].Text, w.Text)
	}
	if err := c.sumOfReadings(q, l); err != nil {
		return err
	}
	if err := numberForPoint(q, l.Words[1:]); err != nil {
		return err
	}
	if err := c.mistyped(q, l.Words[1:]); err != nil {
		return err
	}
	for i, w := range l.Words[1:] {
		switch next := l.Words[min(i+2, len(l.Words)-1)]; {
		case q.word == "ohm" && isMotor(w.Text) && isShell(next.Text) && !among(c.pins(), w.Text):
			e, value := w.Errorf("each pin of it is read to the case"), pointWords(l.Words[min(i+3, len(l.Words)):])
			if of := c.machineAtHand(); !strings.EqualFold(motorName(w.Text), of) && !strings.EqualFold(w.Text, "motor") && kindOf(w.Text) != winding.Compressor {
				return e.WithHint("on %s, then ohm 1 case %s", motorName(w.Text), value)
			}
			each := ""
			for _, pin := range c.pins() {
				if !isShell(pin) {
					each += ", " + pin + " case " + value
				}
			}
			if each == "" {
				each = ", A case " + value
			}
			return e.WithHint("ohm%s", each[1:])
		case i == 0 && q.word == "ohm" && c.appliance().Tank && among(levels, strings.ToLower(w.Text)) && (isShell(next.Text) || startsLikeNumber(next.Text) || isOver(next.Text)):
			rest := pointWords(l.Words[2:])
			return w.Errorf("%s is an element or a thermostat", w.Text).WithHint("ohm %s-element %s, or: ohm %s-thermostat %s", w.Text, rest, w.Text, rest)
		case w.Text == "all" && isShell(next.Text):
			return w.Errorf("no pins were read yet that all could be").WithHint("name them: ohm A case OL, B case OL")
		case startsLikeNumber(w.Text) && (len(w.Text) > 3 || strings.Contains(w.Text, ".")) && startsLikeNumber(next.Text) && i+2 < len(l.Words):
			return w.Errorf("%s stands where a point is wanted", w.Text).WithHint("%s", c.parted(q, l.Words[1:]))
		}
	}
	return nil
}

// pointCall is a reading in a sum.
var pointCall = said.Lazily(`\b(ohm|volt|amp|mfd|temp|watt|psi|trip)\(([^()]*)\)`)

// pointless refuses a function that gives its values where a reading's points stand:
// they are names, and no value could ever be given.
func pointless(l *script.Line) error {
	rest, col := l.Rest()
	d, err := sum.ParseDef(rest)
	if err != nil {
		return nil
	}
	for _, m := range pointCall().FindAllStringSubmatch(d.Body, -1) {
		for _, p := range d.Params {
			if among(strings.Fields(strings.ReplaceAll(m[2], ",", " ")), p) {
				return source.Errorf(col, col+len(rest), "%s would be a point in %s, and a function takes values", p, m[0]).
					WithHint("give it the value: def %s(%s) = %s, used as %[1]s(%[4]s(…))", d.Name, p, strings.Replace(d.Body, m[0], p, 1), m[1])
			}
		}
	}
	return nil
}

// levels part the two elements of a tank, and their thermostats.
var levels = []string{"upper", "lower", "top", "bottom"}

// numberForPoint refuses two pins of which only words say what is between them,
// and two values where the place is not said, as of a start and the run behind it.
func numberForPoint(q *quality, words []script.Word) error {
	if len(words) > 1 && q.word == "temp" && len(words[0].Text) > 1 && startsLikeNumber(words[0].Text) && startsLikeNumber(words[1].Text) {
		return words[0].Errorf("%s stands where a place is wanted", words[0].Text).
			WithHint("as in: temp freezer %s, fridge %s", words[0].Text, words[1].Text)
	}
	if len(words) < 2 || !onlyDigits(strings.ReplaceAll(words[0].Text, ".", "")) {
		return nil
	}
	first, e := words[0].Text, words[0].Errorf("%s stands where a point is wanted", words[0].Text)
	for i, w := range words[1:] {
		shows := meterShows[w.Text]
		switch {
		case w.Text == "," || w.Text == "at" || w.Text == "test":
			return nil
		case q.word == "ohm" && i == 1 && len(words) == 3 && shows != "" && onlyDigits(words[1].Text):
			return w.Errorf("%s is no value between two pins", w.Text).
				WithHint("write what the meter shows: ohm %s %s %s", first, words[1].Text, strings.Replace(shows, "0", "…", 1))
		case !startsLikeNumber(w.Text) || w.Text[0] == '-':
		case q.word == "volt" && len(first) > 2:
			return e.WithHint("commas part readings: volt line %s, line %s start", first, w.Text)
		case q.word == "amp":
			return e.WithHint("commas part readings: amp comp %s peak, comp %s run", first, w.Text)
		}
	}
	return nil
}

// partNumbers are the numbers at the end of a part that has no commas.
var partNumbers = said.Lazily(`^(.*?[A-Za-z].*?)(?: (\d{1,3}))? [$€£]?(\d+(?:\.\d\d)?)$`)

// partNumber ends in the number of a part, such as RL-77.
var partNumber = said.Lazily(`(?:[A-Za-z]\S*\d|\d\S*[A-Za-z])\S*$`)

// commaless refuses a part behind whose name a count or a price seems to stand
// without commas.
func commaless(l *script.Line) error {
	rest, col := l.Rest()
	m := partNumbers().FindStringSubmatch(rest)
	if m == nil || strings.ContainsAny(rest, `,"`) {
		return nil
	}
	name, count, last := m[1], m[2], m[3]
	price := strings.Contains(last, ".")
	if !price && count != "1" && !partNumber().MatchString(name) {
		return nil // capacitor 35 370: what is marked on it
	}
	w := script.Word{Col: col + len([]rune(rest)) - len(last), End: col + len([]rune(rest))}
	e := w.Errorf("%s can be a price, a count or the end of the name: commas part them", last)
	switch {
	case price && count != "":
		return e.WithHint("with its count and price: part %s, %s, %s; of one: part %s %s, 1, %s", name, count, last, name, count, last)
	case price:
		return e.WithHint("of one with its price: part %s, 1, %s; as its name: part %s, 1", name, last, rest)
	case count != "":
		return e.WithHint("with its count and price: part %s, %s, %s; as its name: part %s, 1", name, count, last, rest)
	}
	return e.WithHint("with its count: part %s, %s; as its name: part %s, 1", name, last, rest)
}

// sumOfReadings refuses what reads as a sum: volt line - 3. A plus or minus that
// stands apart is a pole beside another or the case, or alone with volts.
func (c *Call) sumOfReadings(q *quality, l *script.Line) error {
	m := readAsSum().FindStringSubmatch(l.Body)
	if m == nil {
		return nil
	}
	word, at, sign, rest := q.word, strings.TrimSpace(m[1]), m[2], m[3]
	if (sign == "+" || sign == "-") && (word == "temp" || at == "" && word == "volt" || isShell(at) || at == "+" || at == "-") {
		return nil
	}
	for _, w := range l.Words {
		if w.Text != sign {
			continue
		}
		e := w.Errorf("%s stands where a point is wanted, as in a sum", sign)
		if at == "" {
			return e.WithHint("as in: %s", Find(word).Examples[0])
		}
		if word == "ohm" && len(at) < 3 {
			at = c.lastPair(at)
		}
		if !strings.Contains("*/^×·÷", sign) && onlyDigits(strings.ReplaceAll(rest[1:], ".", "")) {
			rest += q.unit
		}
		return e.WithHint("the sum: %s(%s) %s%s", word, strings.ReplaceAll(at, " ", ", "), sign, rest)
	}
	return nil
}

// lastPair is what a pin, which has no ohms alone, was read with last.
func (c *Call) lastPair(pin string) string {
	c.spend(2 * len(c.readings))
	for _, r := range slices.Backward(c.readings) {
		if r.quality.word == "ohm" && r.b != "" && (strings.EqualFold(r.a, pin) || strings.EqualFold(r.b, pin)) {
			return r.a + " " + r.b
		}
	}
	return "A B"
}

// readAsSum finds an operator between points and a number.
var readAsSum = said.Lazily(`(?:^\w+|,)((?: [^\s,]+){0,2}?) ([*/^×·÷+–−-])( [~.\d][^,]*)`)

// needless refuses a need that no reading can ever meet.
func (c *Call) needless(l *script.Line) error {
	q := qualityOf(l.Words[1].Text)
	n := len(l.Words)
	for n > 2 && among(conditionWords, l.Words[n-1].Text) {
		n--
	}
	if q == nil || n == 2 {
		return nil
	}
	read, err := script.Parse(pointWords(l.Words[1:n]) + " 1")
	if err == nil {
		_, err = c.parseReadings(q, read.Words[1:])
	}
	if err == nil {
		return nil
	}
	w := l.Words[2]
	w.End = l.Words[n-1].End
	return w.Errorf("no reading can be of this: %s", faultOf(err)).WithHint("as in: need temp freezer, or: need ohm A case")
}
