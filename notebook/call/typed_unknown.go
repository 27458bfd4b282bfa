package call

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/calc/source"
	"ohmcall/calc/sum"
	"ohmcall/notebook/said"
	"ohmcall/notebook/script"
)

// unknownWord tells a slip in a command word, or prose, from a sum: two words
// that follow each other without an operator between them are no sum.
func (c *Call) unknownWord(l *script.Line) error {
	first := l.Words[0]
	if !isWord(first.Text) {
		if w := l.Words; len(w) > 1 && len(w) < 12 && len(first.Text) <= 3 && (startsLikeNumber(w[1].Text) || isOver(w[1].Text)) && c.hinted < mostHinted {
			c.hinted++
			if line := c.barePairs(l); line != "" {
				return first.Errorf("ohms or volts between points name their kind").WithHint("a reading names what was read: %s", line)
			}
		}
		return valueFirst(l)
	}
	bare := len(l.Words) == 1
	if !bare {
		next := l.Words[1]
		if next.Text != "," && !next.Quoted && !isWord(next.Text) && !startsLikeNumber(next.Text) {
			return nil
		}
		if _, known := c.lookupName(first.Text); (known || among(ofTruth, first.Text)) && among(operatorWords, next.Text) {
			return nil
		}
		if next.Text == "-" || next.Text == "+" {
			return nil
		}
	} else if _, known := c.lookupName(first.Text); known || sum.Constant(first.Text) {
		return nil
	}
	if among(slips, strings.ToLower(first.Text)) {
		return first.Errorf("no entry is left to take back").WithHint("strike takes any by its number: strike 3 misread")
	}
	e := first.Errorf("%q is neither a command nor a sum", first.Text)
	if c.hinted++; c.hinted > mostHinted {
		return e
	}
	_, own := c.lookupName(l.Words[len(l.Words)-1].Text)
	if len(first.Text) > 1 && (bare || startsLikeNumber(l.Words[1].Text) || own) && (c.TakesFunction(first.Text) || among(sum.Names(), first.Text)) {
		return c.bracketless(l)
	}
	if bare && (leaves(first.Text) || among(ending, strings.ToLower(first.Text))) {
		return e.WithHint("close ends the call; Ctrl-D stops and leaves it open")
	}
	if n := c.entryNamed(l); len(l.Words) > 1 && onlyDigits(l.Words[1].Text) && among(mends, strings.ToLower(first.Text)) {
		if n == 0 {
			return e.WithHint("no such entry stands; what is wrong is struck by its number and typed anew")
		}
		line := ""
		if rest := l.Words[2:]; len(rest) > 0 {
			line = "; then at its time: " + c.entries[n-1].At.Format("15:04") + " " + pointWords(rest)
		}
		return e.WithHint("an entry is struck and typed anew: strike %d misread%s", n, line)
	}
	if strings.EqualFold(first.Text, "done") {
		return e.WithHint("perhaps did; close ends the call")
	}
	if one := qualityOf(strings.TrimSuffix(strings.ToLower(first.Text), "s")); one != nil && plateKeyOf(one.word+"s") != nil {
		return e.WithHint("a reading: %s %s; from the plate: plate %ss …", one.word, cmp.Or(defaultPlace(one.word), "A B")+" …", one.word)
	}
	if line := c.kindByNoun(l); line != "" {
		return e.WithHint("a reading names what was read: %s", line)
	}
	if line := c.slipBeforePlace(l); line != "" {
		return orNote(e, "perhaps: "+line, l.Body)
	}
	if source.Nearest(strings.ToLower(first.Text), []string{"plate"}) != "" {
		if line := c.slipped("plate", l); line != "" {
			return e.WithHint("perhaps: %s", line)
		}
	}
	line := c.bareLine(l)
	if line == "" && (len(l.Words) > 3 || strings.ContainsAny(first.Text, "-–") || len(first.Text) > 3 && len(l.Words) > 2) {
		line = c.barePairs(l)
	}
	if line != "" {
		why := "a reading names what was read"
		if strings.HasPrefix(line, "ohm ") {
			why += ", with what the meter shows"
		}
		return e.WithHint("%s: %s", why, line)
	}
	n := len(l.Words) // of the first of several readings
	if i := slices.IndexFunc(l.Words, func(w script.Word) bool { return w.Text == "," }); i > 0 {
		n = i
	}
	if (n == 2 || n == 3) && valueLike(l.Words[n-1].Text, "ohm") && len(first.Text) <= 3 && len(l.Words[n-2].Text) <= 4 && first.Text != "rh" {
		var last *reading
		if k := len(c.readings); k > 0 {
			last = c.readings[k-1]
		}
		if line := c.rather(last, l.Words[:n-1], l.Words[n-1].Text); line != "" && (last == nil || last.quality.word == "ohm" || !strings.Contains(" fan a l l1 l2 l3 n ", " "+strings.ToLower(first.Text)+" ")) {
			ohms := "ohm A B " + l.Words[n-1].Text
			if n == 3 {
				ohms = "ohm " + clip(l.Body, 40)
			} else if strings.EqualFold(first.Text, "ac") {
				ohms = "ohm A C " + l.Words[1].Text
			}
			return e.WithHint("a reading or plate names its kind: %s; ohms of two pins: %s", line, ohms)
		}
		word := "ohm"
		if k := len(c.readings); k > 0 && n == 2 {
			word = c.readings[k-1].quality.word
		}
		return e.WithHint("a reading names what was read: %s %s", word, clip(l.Body, 40))
	}
	if words := strings.Fields(respell(clip(pointed(l.Body), 40), "")); len(words) == 2 || len(words) == 3 {
		for i := range qualities {
			q := &qualities[i]
			if among(placeWords(q.word), strings.ToLower(first.Text)) && valueLike(words[1], q.unit) && (q.word == "temp" || !onlyDigits(words[1])) {
				return e.WithHint("a reading names what was read: %s %s", q.word, strings.Join(words, " "))
			}
		}
	}
	text := clip(l.Body, 40)
	if strings.EqualFold(first.Text, "unsafe") {
		return e.WithHint("what makes it unsafe: saw %s; and how it is left: left tagged out", text)
	}
	if c.last("fault") == "" && len(cause.Hits(l.Body)) > 0 && len(l.Words) > 1 {
		return orNote(e, "the complaint: fault "+text, l.Body)
	}
	switch done := said.Stated(l.Body); {
	case slices.Contains(cause.FindFindings(c.fanWords(l.Body)), "gas-off"):
		return e.WithHint("shut for work: safe unplugged, %s; found shut while nothing lights: saw %s", text, text)
	case len(cause.FindFindings(c.fanWords(l.Body))) > 0:
		return orNote(e, "a finding: saw "+text, l.Body)
	case said.MadeSafe(l.Body):
		return orNote(e, "that it was made safe: safe "+text, l.Body)
	case len(done) > 0 && said.Works(done[0]) && cause.MendsSomething(strings.Join(done, ", ")):
		return orNote(e, "work done: did "+text, l.Body)
	}
	if n := source.Nearest(first.Text, commandWords()); n != "" && (bare || qualityOf(n) != nil || !anyPlace(l.Words[1].Text)) && (len(first.Text) > 4 || n[0] == strings.ToLower(first.Text)[0]) {
		if line := c.slipped(n, l); line != "" {
			return orNote(e, "perhaps: "+line, l.Body)
		}
		return orNote(e, "perhaps "+n, l.Body)
	}
	return e.WithHint("write it down as it is: note %s", clip(l.Body, 40))
}

// orNote hints at a line, or a note.
//
//go:noinline
func orNote(e *source.Error, line, body string) error {
	return e.WithHint("%s; or write it down as it is: note %s", line, clip(body, 40))
}

// nouns are what the kinds of readings are called, beside their command words.
var nouns = map[string][]string{
	"amp":  {"current", "ampere", "amperage"},
	"volt": {"voltage"},
	"ohm":  {"resistance", "resist", "res", "hom"},
	"mfd":  {"cap", "capacitor", "capacitance", "uf", "µf", "mic", "microfarad", "farad"},
	"temp": {"temperature", "deg"},
	"watt": {"power", "wattage"},
	"psi":  {"pressure", "vacuum"},
}

// ofNoun is the kind of reading that a word, or a slip in it, is a name of.
func ofNoun(first string) string {
	if first = strings.ToLower(first); len(first) > 3 {
		first = strings.TrimSuffix(first, "s")
	}
	for i := range qualities {
		if list := nouns[qualities[i].word]; among(list, first) || len(first) > 4 && source.Slip(first, list) != "" {
			return qualities[i].word
		}
	}
	return ""
}

// kindByNoun is the line of a reading whose first word is what its kind is called, ""
// when it would not be taken.
func (c *Call) kindByNoun(l *script.Line) string {
	word := ofNoun(l.Words[0].Text)
	if word == "" || len(l.Words) < 2 || aCap().MatchString(l.Body) || c.pinName(l.Words[0].Text) {
		return ""
	}
	rest, _ := l.Rest()
	if word == "psi" && strings.Contains(rest, "icron") && startsLikeNumber(rest) {
		rest = "suction " + rest
	}
	return c.readAs(word, rest)
}

// anyPlace reports whether readings of some kind are taken at a place of this name.
func anyPlace(name string) bool {
	for i := range qualities {
		if among(placeWords(qualities[i].word), strings.ToLower(name)) {
			return true
		}
	}
	return false
}

// entryNamed is the entry that the second word of a line is the number of, 0 for none.
func (c *Call) entryNamed(l *script.Line) int {
	if len(l.Words) < 2 {
		return 0
	}
	n, err := strconv.Atoi(l.Words[1].Text)
	if err != nil || n < 1 || n > len(c.entries) || !c.alive(n) {
		return 0
	}
	return n
}

// mends are words for a change of an entry.
var mends = []string{"edit", "change", "replace", "correct", "fix", "amend"}

// slipped is a line with another command word in place of its first, "" when it would
// not be taken or has none that follows.
func (c *Call) slipped(word string, l *script.Line) string {
	rest, _ := l.Rest()
	if rest == "" || len(rest) > 40 {
		return ""
	}
	if qualityOf(word) != nil {
		return c.readAs(word, rest)
	}
	if _, err := c.Parse(word + " " + rest); err != nil {
		return ""
	}
	return word + " " + rest
}

// slipBeforePlace is a line whose first word is a slip in a kind of reading, by the
// place that stands behind it; "" when it may be the place itself.
func (c *Call) slipBeforePlace(l *script.Line) string {
	first := strings.ToLower(l.Words[0].Text)
	q := qualityOf(source.Nearest(first, commandWords()))
	if len(l.Words) == 3 && kindLetter(first) != "" && isWord(l.Words[1].Text) && !c.pinName(first) {
		if line := c.rather(nil, l.Words[:2], l.Words[2].Text); line != "" {
			return line
		}
	}
	if n := source.Slip(first, commandWords()); q == nil && n != "" && len(l.Words) == 3 && partOf(l.Words[1].Text) != nil && c.slipOfCommand(l) {
		return c.slipped(n, l)
	}
	if q == nil || len(l.Words) < 3 || partOf(first) != nil || among(atMains, first) {
		return ""
	}
	next := l.Words[1].Text
	for i := range qualities {
		if among(placeWords(qualities[i].word), first) {
			return ""
		}
	}
	if !among(placeWords(q.word), strings.ToLower(next)) && !(anyPlace(next) && source.Slip(first, []string{q.word}) != "") && !(q.word == "ohm" && (c.pinName(next) || partOf(next) != nil)) {
		return ""
	}
	return c.slipped(q.word, l)
}

// bracketless refuses a function that is called without brackets, and shows the
// call that it may mean.
func (c *Call) bracketless(l *script.Line) error {
	name := l.Words[0].Text
	e := l.Words[0].Errorf("%s is a function: its values stand in brackets", name)
	rest, _ := l.Rest()
	call := name + "(" + strings.Join(strings.Fields(strings.ReplaceAll(rest, ",", " ")), ", ") + ")"
	if _, _, err := c.eval(call, 1); err == nil {
		return e.WithHint("write %s", call)
	}
	return e.WithHint("help %s shows how it is called", name)
}

// mostHinted is for how many words that are not known a call looks for what would
// have worked: a file of nothing else is read through all the same.
const mostHinted = 200

// valueFirst tells a reading whose value stands before what was read.
func valueFirst(l *script.Line) error {
	m := beforePlace().FindStringSubmatch(l.Body)
	if w := l.Words; len(w) == 2 && among(underPower, w[1].Text) && startsLikeNumber(w[0].Text) {
		return w[0].Errorf("no amps or volts were read last that %s could go on with", w[1].Text).WithHint("as in: amp comp %s %s", w[0].Text, w[1].Text)
	}
	if m == nil || among(operatorWords, m[3]) || among(operatorWords, m[4]) {
		return nil
	}
	word := strings.TrimSuffix(strings.ToLower(m[2]), "s")
	for i, q := range qualities {
		if strings.EqualFold(q.unit, word) {
			word = qualities[i].word
		}
	}
	if l.Words[1].Text == "A" && len(m[3]) == 1 && m[4] == "" {
		return l.Words[0].Errorf("the value stands before what was read").WithHint("ohm A %s %s", m[3], m[1])
	}
	if m[4] != "" && !among(pairKinds, word) || among(conditionWords, m[3]) {
		return nil
	}
	return l.Words[0].Errorf("the value stands before what was read").WithHint("%s %s %s", word, strings.TrimSpace(m[3]+" "+m[4]), m[1])
}

// beforePlace is a value with its unit, and one or two names behind it.
var beforePlace = said.Lazily(`^([~>-]?\d[\d.]*) ?((?i:amps?|volts?|watts?|ohms?|[avw]|uf|mfd)) (?:(?:at|on|across|from) )?([A-Za-z][\w-]*)(?: (?:to )?([A-Za-z][\w-]*))?$`)

// leaving are the words with which people leave a program; ending can mean that
// the call is to end as well.
var (
	leaving = []string{"quit", "exit", "bye", "q", "logout"}
	ending  = []string{"done", "end", "stop"}
)

func leaves(word string) bool { return among(leaving, strings.ToLower(word)) }

// Leaves reports whether a line says that whoever types wants to leave.
func (c *Call) Leaves(line string) bool {
	line = strings.TrimSpace(line)
	_, own := c.lookupName(line)
	return leaves(line) && !own
}

// ofTruth begin a sum that is true or not.
var ofTruth = []string{"true", "false", "not"}

// operatorWords may stand between the words of a sum.
var operatorWords = []string{"in", "and", "or", "not"}

func isWord(s string) bool {
	if s == "" {
		return false
	}
	for i, r := range s {
		letter := r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' || r == '_' || r > 0x7f && r != '√' && r != '±' && r != '−'
		if !letter && (i == 0 || !(r >= '0' && r <= '9' || r == '-' || r == '\'' || r == '.' || r == '!' || r == '?')) {
			return false
		}
	}
	return true
}
