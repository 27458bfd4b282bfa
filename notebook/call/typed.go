package call

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
	"sync"

	"ohmcall/calc/source"
	"ohmcall/notebook/said"
	"ohmcall/notebook/script"
)

// What is typed fast, dictated by habit or changed by the keyboard of a phone
// is written as the language has it before it is taken: what the record holds
// is the one full form, and only that is read again.

// patterns are those of what is typed, made when the first line is.
var patterns = sync.OnceValue(func() *struct{ decimal, two, mark *regexp.Regexp } {
	for i := range respellings {
		respellings[i].re = regexp.MustCompile(respellings[i].from)
	}
	return &struct{ decimal, two, mark *regexp.Regexp }{regexp.MustCompile(decimalComma), regexp.MustCompile(twoWays),
		regexp.MustCompile(`^\s*((?:[-*+•·–—>$%]|\d{1,2}[.)]|\[[ xX]?\]|(?i:call:))\s+)+`)}
})

// longestTyped is the longest line in bytes that is looked through for other
// ways of typing: nobody types more in a hurry.
const longestTyped = 1000

// respell puts a text through the respellings for two commands.
func respell(text string, of ...string) string {
	patterns()
	for _, r := range respellings {
		if among(of, r.of) {
			text = r.re.ReplaceAllString(text, r.to)
		}
	}
	return text
}

// readingsAs writes the readings of a kind as the language has them. Sums in
// parentheses and what is quoted stay as they are.
func (c *Call) readingsAs(q *quality, text string) string {
	if len(text) > longestTyped || strings.ContainsAny(text, `("`) || patterns().two.MatchString(" "+text) {
		return text
	}
	if q.word == "psi" {
		text = bothSides(text)
	}
	for range 2 { // what one match ends with the next begins with
		text = gluedDecimal().ReplaceAllStringFunc(text, func(s string) string {
			m := gluedDecimal().FindStringSubmatch(s)
			if name := m[4]; !among(pairKinds, q.word) || name != "" && (isShell(name) || among(markRoles, name) || q.word == "ohm" && partOf(name) == nil) {
				return s
			}
			return m[1] + "." + m[2] + ", " + m[3] + m[5]
		})
	}
	text = betweenReadings().ReplaceAllString(strings.ReplaceAll(text, ";", ", "), "$1, $2")
	parts := strings.Split(patterns().decimal.ReplaceAllString(" "+text, "$1.$2$3$4"), ",")
	at := make([]int, len(parts)) // where the conditions start
	inC := q.word == "temp" && lineInC().MatchString(text)
	inF := q.word == "temp" && !inC && c.last("units") == "" && lineInF().MatchString(text)
	for i, p := range parts {
		p = strings.Join(strings.Fields(p), " ")
		p = respell(p, "", q.word)
		words := strings.Split(p, " ")
		if i > 0 && len(words) > 2 && strings.EqualFold(words[0], q.word) {
			words = words[1:] // the kind said again
		}
		if len(words[0]) == 2 && len(words) > 1 && q.word == "ohm" && (!isWord(words[1]) || isOver(words[1]) || isShell(words[1])) && partOf(words[0]) == nil && c.pinName(words[0][:1]) && c.pinName(words[0][1:]) {
			words[0] = words[0][:1] + " " + words[0][1:]
		}
		if len(words) > 2 && q.word == "ohm" && c.complaint() == said.NoDrain && strings.EqualFold(words[0], "drain") && strings.EqualFold(words[1], drainPump) {
			words = words[1:]
		}
		if len(words) > 1 && q.word == "ohm" && among([]string{drainPump, "drain-pump"}, strings.ToLower(words[0])) && c.complaint() == said.NoDrain && c.machineAtHand() == drainPump {
			if startsLikeNumber(words[1]) || isOver(words[1]) {
				words = append([]string{"1", "2"}, words[1:]...) // between its leads, there is no other pair of it
			} else if isShell(words[1]) {
				words[0] = "1" // its winding joins both leads
			}
		}
		if q.word == "ohm" {
			words = words[c.motorFirst(words):]
		}
		n := len(words)
		for n > 1 && !startsLikeNumber(words[n-1]) && !isOver(words[n-1]) || n > 2 && (strings.EqualFold(words[n-2], "at") || strings.EqualFold(words[n-2], "test")) {
			if low := strings.ToLower(words[n-1]); !startsLikeNumber(low) {
				for _, w := range conditionWords {
					if w == low {
						words[n-1] = low
					}
				}
			}
			n--
		}
		few := c.oneName(q, words, n)
		words, n = few, n-len(words)+len(few)
		if q.word == "temp" && n == 2 && asBare(words[1]) && !(len(words) > 2 && isUnit(words[2], q.unit)) && !inC && (inF || c.readInF(words[0])) {
			words[1] += "F"
		}
		head := strings.Join(words[:n], " ")
		parts[i], at[i] = strings.Join(words, " "), len(head)
	}
	spread(parts, at)
	return strings.Join(c.eachToCase(q, parts), ", ")
}

// gluedDecimal is a decimal comma behind which the next pair or place stands without a
// comma before it: A-B 3,4 A-C 12,1.
var gluedDecimal = said.Lazily(`(?i)(\d),(\d{1,2}[km]?(?: (?:cold|hot|run|start|peak))?) ((?:[a-z]\d?|\d)[ –/>-](?:[a-z]\d?|\d)|[a-mo-z][a-z]|([a-z][a-z-]{2,}))( [~>]?(?:\d|ol\b|inf))`)

// betweenReadings is what parts two readings otherwise than a comma: and, &, or /.
var betweenReadings = said.Lazily(`(?i)( (?:[~>-]?\d\S*|OL|inf)) (?:and|&|/) ([a-z]|\d[–/-]\d)`)

var overEach = said.Lazily(`(?i)^(\d+(?:\.\d+)?) *(?:/|over| ) *(\d+(?:\.\d+)?)(?: ?psig?)?((?: [a-z]+)*)$`)

// bothSides writes two pressures, the lower over the higher as the trade tells
// them, as those of suction and discharge.
func bothSides(text string) string {
	m := overEach().FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return text
	}
	low, _ := strconv.ParseFloat(m[1], 64)
	high, _ := strconv.ParseFloat(m[2], 64)
	if low >= high {
		return text
	}
	return "suction " + m[1] + m[3] + ", discharge " + m[2] + m[3]
}

// A line of temperatures says by one of them what the bare ones are in.
var (
	lineInF = said.Lazily(`(?i)\d ?°?f\b`)
	lineInC = said.Lazily(`(?i)\d ?°?c\b`)
)

// readInF reports whether a place, or, when it was never read, the last temperature
// of the call was read in °F, while units has said nothing.
func (c *Call) readInF(place string) bool {
	if c.last("units") != "" {
		return false
	}
	c.spend(2 * len(c.readings))
	var last *reading
	for _, r := range slices.Backward(c.readings) {
		if r.quality.word != "temp" || r.over || !c.alive(r.entry) {
			continue
		}
		if strings.EqualFold(r.a, place) {
			last = r
			break
		}
		if last == nil {
			last = r
		}
	}
	return last != nil && last.q.UCUM() == "[degF]"
}

// eachToCase writes several pins, or all, to the case as a reading of each.
func (c *Call) eachToCase(q *quality, parts []string) []string {
	var out []string
	for _, p := range parts {
		words := strings.Fields(p)
		n := 0
		for n < len(words) && c.pinName(words[n]) {
			n++
		}
		pins := words[:n]
		if len(words) > 2 && (strings.EqualFold(words[0], "all") || strings.EqualFold(words[0], "each")) {
			n, pins = 1, nil
			for _, pin := range c.pins() {
				if !isShell(pin) {
					pins = append(pins, pin)
				}
			}
		}
		if q.word != "ohm" || n == len(words) || !isShell(words[n]) || len(pins) < 2 {
			out = append(out, p)
			continue
		}
		for _, pin := range pins {
			out = append(out, pin+" "+strings.Join(words[n:], " "))
		}
	}
	return out
}

// pinName tells a pin that was read before, or one of those that the trade
// calls C, S and R.
func (c *Call) pinName(s string) bool {
	for _, p := range append(c.pins(), "C", "S", "R") {
		if strings.EqualFold(p, s) {
			return true
		}
	}
	return false
}

// spread lets the conditions behind the last reading of a list count for all of
// it, where the others have none and all are of one sort: pins to the case,
// pairs of pins, or places before or after the work. What repeats a point, as
// volts at rest and at the start, is told apart by its condition.
func spread(parts []string, at []int) {
	last := len(parts) - 1
	conds := parts[last][at[last]:]
	if conds == "" || sortOf(parts[last]) == 1 && conds != " before" && conds != " after" {
		return
	}
	seen := map[string]bool{}
	for i, p := range parts {
		cut := strings.LastIndexByte(p[:at[i]], ' ')
		if cut < 0 || i < last && at[i] < len(p) || sortOf(p) != sortOf(parts[last]) || seen[p[:cut]] {
			return
		}
		seen[p[:cut]] = true
	}
	for i := range last {
		parts[i] += conds
	}
}

// sortOf is 1 for a reading of a place, 2 for a pair, 3 for a pin to the case.
func sortOf(part string) int {
	words := strings.Fields(part)
	switch {
	case len(words) < 3 || startsLikeNumber(words[1]) || isOver(words[1]):
		return 1
	case isShell(words[0]) || isShell(words[1]):
		return 3
	}
	return 2
}

// parted is the hint for readings that no commas part: the line with commas
// where it can be taken so, else an example.
func (c *Call) parted(q *quality, words []script.Word) string {
	for i, w := range words {
		if i > 0 && i == len(words)-2 && strings.Contains(" plate marked rated nameplate ", " "+strings.ToLower(w.Text)+" ") && startsLikeNumber(words[i-1].Text) {
			return "a line each: " + q.word + " " + pointWords(words[:i]) + "; what is marked goes to the plate: help plate"
		}
	}
	var b strings.Builder
	sure := true // a condition between two values may belong to either
	for i, w := range words {
		b.WriteString(" " + w.Text)
		if i+2 < len(words) && (startsLikeNumber(w.Text) || isOver(w.Text)) && !startsLikeNumber(words[i+1].Text) {
			b.WriteByte(',')
			sure = sure && isWord(words[i+1].Text) && !among(conditionWords, words[i+1].Text) && !turned(words[i+1])
		}
	}
	l, err := script.Parse(q.word + b.String())
	if err == nil && sure && strings.Contains(b.String(), ",") {
		if _, err = c.parseReadings(q, l.Words[1:]); err == nil {
			return "commas part readings: " + l.Text
		}
	}
	if among(pairKinds, q.word) {
		return "separate several readings with commas: " + q.word + " A B 3.4, A C 6.5"
	}
	return "as in: " + Find(q.word).Examples[0]
}

// unmark takes bullets, numbers and prompts off a pasted line that is a command,
// or carries on with a reading, without them. Anything else keeps them: - x is
// a sum.
func (c *Call) unmark(text string) string {
	m := patterns().mark.FindString(text)
	if m == "" {
		return text
	}
	rest := text[len(m):]
	l, err := script.Parse(spellTime(rest))
	if err != nil || l.Blank() || len(l.Words) > 1 && strings.HasPrefix(l.Words[1].Text, "(") {
		return text
	}
	if _, ok := c.carry(l); ok || Find(c.spellWord(l)) != nil {
		return rest
	}
	return text
}

var (
	spaces = strings.NewReplacer("\u00a0", " ", "\u202f", " ", "\u2007", " ", "\u2009", " ", "\u3000", " ")
	quotes = strings.NewReplacer("“", `"`, "”", `"`, "„", `"`, "«", `"`, "»", `"`)
)

// plainly writes the blanks of pages and phones as spaces, and curled quotes as
// plain ones where the language has quotes: in free text they stay, unless they
// enclose all of it.
func plainly(text string) string {
	text = spaces.Replace(text)
	to := quotes.Replace(text)
	if to == text {
		return text
	}
	word, _, _ := strings.Cut(strings.TrimSpace(text), " ")
	if cmd := Find(strings.ToLower(word)); cmd != nil && len(cmd.Params) > 0 && cmd.Params[len(cmd.Params)-1].Kind == Text &&
		(strings.Count(to, `"`) != 2 || !strings.HasSuffix(to, `"`) || !strings.Contains(to, ` "`)) {
		return text
	}
	return to
}

// slips are the words that take a line back.
var slips = []string{"undo", "oops", "delete", "del"}

// severalEntries begins with a range or a list of numbers where strike takes one.
var severalEntries = said.Lazily(`^(\d+)(?:\s*[-–,&+]\s*|\s+(?:and|to)\s+|\s+)(\d+)(?:[\s,&+–-]+(?:and )?\d+)*(?:\s|$)`)

// takeBack makes of undo or oops, with a reason or without, the strike of the
// last entry that can be struck, or of the entry named; strike last is the same.
func (c *Call) takeBack(l *script.Line) string {
	word := strings.ToLower(l.Words[0].Text)
	reason, _ := l.Rest()
	if _, own := c.lookupName(l.Words[0].Text); own || l.Guard != "" || !among(slips, word) {
		last, _, _ := strings.Cut(reason, " ")
		if word != "strike" || !strings.EqualFold(last, "last") {
			return ""
		}
		reason = strings.TrimSpace(reason[len(last):])
	}
	if severalEntries().MatchString(reason) {
		return string([]rune(l.Text)[:l.BodyCol-1]) + "strike " + reason // for Doubtful to refuse
	}
	entry := ""
	for _, n := range lastEntries(c) {
		if i, _ := strconv.Atoi(n); !unstrikable(c.entries[i-1].Kind) {
			entry = n
			break
		}
	}
	if first, more, _ := strings.Cut(reason, " "); onlyDigits(first) {
		entry, reason = first, more
	} else if at, why := c.lastNamed(reason); at > 0 {
		entry, reason = strconv.Itoa(at), why
	} else if more == "" && Find(strings.ToLower(first)) != nil {
		entry = first // for strike to ask which
	}
	if reason == "" || reason == "that" || reason == "it" {
		reason = "taken back"
	}
	if entry == "" {
		return ""
	}
	return string([]rune(l.Text)[:l.BodyCol-1]) + "strike " + entry + " " + reason
}

// NotTaken refuses once to take back the last entry, by no number of its own, where
// what was typed after it was refused: a person takes back what was typed last.
func NotTaken(text, full string) error {
	entry, strikes := strings.CutPrefix(full, "strike ")
	if text == full || !strikes || strings.ContainsAny(text, "0123456789") {
		return nil
	}
	return source.Errorf(1, 7, "the last line was not taken, so nothing of it is in the record").WithHint("once more, and it strikes entry %s", strings.Fields(entry)[0])
}

// lastNamed is the last entry of the commands and points that a text begins with, as
// in undo temp freezer, and what follows them; 0 when there is none.
func (c *Call) lastNamed(text string) (entry int, reason string) {
	words, low, n := strings.Fields(text), strings.Fields(strings.ToLower(text)), 0
	for n < len(low) && n < 3 && (n == 0 && Find(low[n]) != nil || c.isPoint(low[n])) {
		n++
	}
	c.spend(4 * len(c.entries))
	for i := len(c.entries); i > 0 && n > 0; i-- {
		e := &c.entries[i-1]
		line := []string{e.Kind}
		if qualityOf(e.Kind) != nil {
			line = strings.Fields(strings.ToLower(strings.ReplaceAll(e.Line, ",", " ")))
		}
		all := c.alive(i) && !unstrikable(e.Kind)
		for _, w := range low[:n] {
			all = all && among(line, w)
		}
		if all {
			return i, strings.Join(words[n:], " ")
		}
	}
	return 0, ""
}

// isPoint reports whether something was read at a point.
func (c *Call) isPoint(p string) bool {
	c.spend(2 * len(c.readings))
	for _, r := range c.readings {
		if strings.EqualFold(r.a, p) || strings.EqualFold(r.b, p) {
			return true
		}
	}
	return false
}

// spellArgs writes the keys of a plate and the words of a list in the letters
// of their table, and takes the full stop off the end of a line that is no text.
func (c *Call) spellArgs(cmd *Command, words []script.Word) (out []edit) {
	p := cmd.Params[0]
	for i, w := range words {
		to := w.Text
		if i == len(words)-1 {
			to = strings.TrimRight(to, ".")
		}
		low := strings.ToLower(to)
		switch {
		case w.Quoted || to == "":
			continue
		case p.Kind == Fields && (i == 0 || words[i-1].Comma()) && plateKeyOf(low) != nil:
			to = low
		case (p.Kind == Choice || p.Kind == Name || p.Kind == Free) && i == 0:
			for _, one := range c.offered(p) {
				if one == low {
					to = low
				}
			}
		case p.Kind != Fields:
			continue
		}
		out = append(out, edit{w, to})
	}
	return out
}

func (c *Call) offered(p Param) []string {
	if p.Words == nil {
		return nil
	}
	return p.Words(c)
}
