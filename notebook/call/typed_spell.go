package call

import (
	"cmp"
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"ohmcall/notebook/said"
	"ohmcall/notebook/script"
)

// spell gives a line typed live the one form that the record holds: a time as
// 09:15, a command word in small letters and in the singular, readings as
// readingsAs has them. What is no such line comes back as it is.
func (c *Call) spell(text string) string {
	text = c.timeFirst(spellTime(c.unmark(plainly(text))))
	l, err := script.Parse(text)
	if err != nil || l.Blank() {
		return text
	}
	first := l.Words[0]
	if first.Quoted {
		return text
	}
	if s := c.takeBack(l); s != "" {
		return s
	}
	for _, m := range meterWords {
		if s := m.typed().ReplaceAllString(l.Body, m.to); s != l.Body && l.Guard == "" {
			if _, own := c.lookupName(first.Text); !own {
				return string([]rune(l.Text)[:l.BodyCol-1]) + s
			}
		}
	}
	word := c.spellWord(l)
	edits := []edit{{first, word}}
	if q := qualityOf(word); q != nil && l.Guard == "" {
		if s := c.readingsSpelt(q, l); s != "" {
			return string([]rune(l.Text)[:l.BodyCol-1]) + word + s
		}
	} else if cmd := Find(word); cmd != nil && len(cmd.Params) > 0 {
		if len(l.Words) > 1 && cmd.Params[0].Kind != Text {
			if rest, _ := l.Rest(); !strings.ContainsAny(rest, `"#`) && len(rest) <= longestTyped {
				s := respell(rest, word)
				if word == "plate" {
					s = c.plateSpelt(s)
				}
				if s != rest {
					return string([]rune(l.Text)[:l.BodyCol-1]) + word + " " + s
				}
			}
		}
		edits = append(edits, c.spellArgs(cmd, l.Words[1:])...)
	}
	out := []rune(l.Text)
	for _, e := range slices.Backward(edits) {
		if e.to == e.from.Text {
			continue
		}
		rest := out[e.from.End-1:]
		if e.to == "" && len(rest) > 0 && rest[0] == ' ' {
			rest = rest[1:]
		}
		out = slices.Concat(out[:e.from.Col-1], []rune(e.to), rest)
	}
	return string(out)
}

// meterWords are readings as their meters name them: of a flame's thermocouple, and of
// an insulation tester between a pin and the metal.
var meterWords = []struct {
	typed func() *regexp.Regexp
	to    string
}{
	{said.Lazily(`(?i)^(?:mv|millivolts?) ([a-z][a-z -]* )(\d+(?:\.\d+)?)(?: ?mv)?((?: [a-z]+)*)$`), `volt $1${2}mV$3`},
	{said.Lazily(`(?i)^meg(?:ger)? (\S+)(?: to)?(?: (?:case|gnd|ground|g|earth|frame|chassis|shell))? ((?:[>~]?\d[\d.]* ?[kMG]\S*|OL).*)$`), `ohm $1 case $2`},
}

// edit puts a text in the place of a word.
type edit struct {
	from script.Word
	to   string
}

// spellWord is the command word that a line's first word means.
func (c *Call) spellWord(l *script.Line) string {
	typed := l.Words[0].Text
	low := strings.ToLower(typed)
	_, own := c.lookupName(typed)
	switch {
	case own || Find(typed) != nil:
		return typed
	case typed == "?":
		return "help"
	case Find(low) != nil:
		return low
	case len(l.Words) > 1 && Find(strings.TrimRight(low, ":")) != nil:
		return strings.TrimRight(low, ":")
	case len(l.Words) == 1 && Find(strings.Trim(low, ".!?")) != nil:
		if low = strings.Trim(low, ".!?"); strings.ContainsRune(typed, '?') && len(Find(low).Params) > 0 {
			return "help " + low
		}
		return low
	}
	// In the plural only what names its place is a reading: `amps 1.2` may be
	// the plate's.
	one := strings.TrimSuffix(low, "s")
	if one == low || qualityOf(one) == nil || len(l.Words) < 3 || !isWord(l.Words[1].Text) && !onlyDigits(l.Words[1].Text) ||
		among(operatorWords, l.Words[1].Text) {
		return typed
	}
	return one
}

// readingsSpelt is what follows the command word of readings in its one form,
// "" when it has that already.
func (c *Call) readingsSpelt(q *quality, l *script.Line) string {
	typed, _ := l.Rest()
	comment := l.Body[l.Comment:]
	typed = strings.TrimRight(strings.TrimSuffix(typed, comment), " ")
	s := c.readingsAs(q, typed)
	if s == typed || s == "" {
		return ""
	}
	if comment != "" {
		s += " " + comment
	}
	return " " + s
}

// otherTime is a time before a command as 14.30, 1430 or +40 minutes. A number
// before a unit is a sum: a reading must name its place.
var otherTime = said.Lazily(`^\s*(?:\+(\d+)(?: (min|h|s)[a-z]*)?|([01]?\d[.h]|[01]\d|2[0-3][.h]?)([0-5]\d)) +(([A-Za-z]+)(?: +(\S+))?.*)$`)

// timeBehind is a time at the end of a line, where a reading has none; apartTime one
// at its beginning whose unit stands apart.
var (
	timeBehind = said.Lazily(`^([A-Za-z].*\d.*?|.* (?:OL|ol))[ ,@]+(?:(?:at )?(\d{1,2}:\d\d(?: ?[aApP][mM])?)|(\+\d+ ?(?:h|min)[a-z]*|\+\d+ ?h ?\d{1,2}(?: ?m[a-z]*)?)|(\d+ ?(?:h|min)[a-z]*) later|(?:after|in) (\d+ ?(?:h|min)[a-z]*))$`)
	apartTime  = said.Lazily(`^\s*(?:after +|in +|\+)?(\d+ ?(?:h|min)[a-z]*)(?: later)?,? +(\S.*)$`)
	timeUnit   = said.Lazily(`(h|min)[a-z]*$`)
)

// timeFirst puts the time of a reading before it in the one form, wherever it stands.
func (c *Call) timeFirst(text string) string {
	if !strings.ContainsAny(text, ":+") && !strings.Contains(text, "h") && !strings.Contains(text, "min") {
		return text
	}
	var at, rest string
	if m := timeBehind().FindStringSubmatch(strings.TrimRight(text, " .")); m != nil {
		if at, rest = cmp.Or(m[2], m[3]), m[1]; at == "" {
			at = "+" + m[4] + m[5]
		}
	} else if m = apartTime().FindStringSubmatch(text); m != nil {
		at, rest = "+"+m[1], m[2]
	} else {
		return text
	}
	out := spellTime(timeUnit().ReplaceAllString(strings.ReplaceAll(at, " ", ""), "$1") + " " + rest)
	l, err := script.Parse(out)
	if err != nil || !l.Stamp.Set || l.Guard != "" || l.Blank() {
		return text
	}
	if _, carries := c.carry(l); !carries && qualityOf(c.spellWord(l)) == nil {
		return text
	}
	return out
}

// hoursMinutes is +1h10 for +1h10min.
var hoursMinutes = said.Lazily(`^\s*\+(\d+) ?h ?(\d{1,2}) +([A-Za-z].*)$`)

var (
	looseTime = said.Lazily(`^\s*(\d{1,2}):(\d\d)(:\d\d)? ?([aApP][mM])?\s+(\S)`)
	fullHour  = said.Lazily(`^(\s*\d{1,2})( ?[aApP][mM]\s+([A-Za-z]+)\s.*)`)
)

// spellTime writes the time before a line as the language has it: 9:15 as
// 09:15, 9:15pm as 21:15.
func spellTime(text string) string {
	if m := hoursMinutes().FindStringSubmatch(text); m != nil {
		text = "+" + m[1] + "h" + m[2] + "min " + m[3]
	}
	if m := otherTime().FindStringSubmatch(text); m != nil && Find(strings.ToLower(m[6])) != nil &&
		(qualityOf(strings.ToLower(m[6])) == nil || isWord(m[7]) && !among(operatorWords, m[7])) {
		if m[1] != "" {
			text = "+" + m[1] + cmp.Or(m[2], "min") + " " + m[5]
		} else {
			text = strings.Trim(m[3], ".h") + ":" + m[4] + " " + m[5]
		}
	}
	if m := fullHour().FindStringSubmatch(text); m != nil && Find(strings.ToLower(m[3])) != nil && !among(operatorWords, m[3]) {
		text = m[1] + ":00" + m[2]
	}
	m := looseTime().FindStringSubmatchIndex(text)
	if m == nil {
		return text
	}
	part := func(i int) string {
		if m[2*i] < 0 {
			return ""
		}
		return text[m[2*i]:m[2*i+1]]
	}
	hour, _ := strconv.Atoi(part(1))
	half := strings.ToLower(part(4))
	if half != "" && (hour < 1 || hour > 12) {
		return text
	}
	if half != "" {
		hour %= 12
	}
	if half == "pm" {
		hour += 12
	}
	return fmt.Sprintf("%02d:%s%s %s", hour, part(2), part(3), text[m[10]:])
}
