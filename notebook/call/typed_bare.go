package call

import (
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/notebook/said"
	"ohmcall/notebook/script"
)

// bareLine is the full line of a reading that was typed without its command word and
// carries on with nothing: a pin that is open or shorted, or to the case; a
// capacitor; volts of the mains; a value whose unit says what was read. "" when it
// is none, or would not be taken.
func (c *Call) bareLine(l *script.Line) string {
	body := respell(pointed(l.Body), "")
	if !strings.ContainsAny(body, `,("=`) {
		if line := c.kindInside(body); line != "" {
			return line
		}
	}
	words := strings.Fields(body)
	n := len(words) - 1
	if n < 1 || n > 3 || strings.ContainsAny(body, `,("=`) {
		return ""
	}
	first, last := words[0], words[n]
	pin := c.pinName(first) || first == "A" || first == "B"
	text := body
	word := ""
	switch low := strings.ToLower(first); {
	case n == 1 && pin && isShell(last):
		word, text = "ohm", body+" OL"
	case meterShows[strings.ToLower(last)] != "" && (pin || partOf(first) != nil) && len(cause.FindFindings(l.Body)) == 0:
		word, text = "ohm", strings.Join(words[:n], " ")+" "+meterShows[strings.ToLower(last)]
		if n == 1 && pin {
			other := "A"
			if low == "a" {
				other = "B"
			}
			if text = strings.TrimPrefix(c.Expand(text), "ohm "); strings.Count(text, " ") < 2 {
				text = other + " " + text
			}
		}
	case aCap().MatchString(body), (low == "c1" || low == "c2") && !pin:
		word = "mfd"
	case n == 1 && among(atMains, low) && onlyDigits(strings.ReplaceAll(last, ".", "")):
		word = "volt"
	default:
		unit := strings.TrimLeft(last, "~>-0123456789.")
		for _, q := range qualities {
			if unit != "" && unit != last && isUnit(unit, q.unit) && valueLike(last, q.unit) {
				word = q.word
				break
			}
		}
		if word == "" && valueLike(last, "ohm") && !said.Works(body) && c.hasOhms(words[:n]) {
			word = "ohm"
		}
	}
	full := c.readAs(word, text)
	if meterShows[strings.ToLower(last)] == "0" {
		full = strings.TrimSuffix(full, "0") + "…"
	}
	return full
}

// readAs is the full line of a reading, "" when it would not be taken.
func (c *Call) readAs(word, text string) string {
	q := qualityOf(word)
	if q == nil {
		return ""
	}
	full := word + " " + c.readingsAs(q, text)
	read, err := script.Parse(full)
	if err == nil && len(read.Words) < 2 {
		return "" // only a comment follows
	}
	if err == nil {
		_, err = c.parseReadings(q, read.Words[1:])
	}
	if err != nil || c.Doubtful(full) != nil {
		return ""
	}
	return full
}

// hasOhms reports whether words name what has ohms: one part, or what goes to the case.
func (c *Call) hasOhms(words []string) bool {
	if last := len(words) - 1; isShell(words[last]) && last > 0 {
		return words[0] == "all" || words[0] == "each" || c.pinName(words[0]) || partOf(strings.Join(words[:last], "-")) != nil
	}
	return len(words) > 1 && among(placeWords("amp"), strings.Join(words, "-")) || partOf(strings.Join(words, "-")) != nil
}

// kindInside is the full line of a reading whose kind stands behind its place, as in
// freezer temp -2, or behind a condition, as in run amps 1.2; "" when it is none.
func (c *Call) kindInside(body string) string {
	words := strings.Fields(body)
	for i := 1; i < len(words)-1; i++ {
		q := qualityOf(strings.TrimSuffix(strings.ToLower(words[i]), "s"))
		if q == nil {
			continue
		}
		if next := words[i+1]; !startsLikeNumber(next) && !isOver(next) {
			return c.readAs(q.word, strings.Join(words[i+1:], " ")) // now temp freezer -9F
		}
		place := words[:i]
		if last := i - 1; among(conditionWords, strings.ToLower(place[last])) {
			words = append(words, strings.ToLower(place[last]))
			place = place[:last]
		}
		at := strings.Join(place, "-")
		if at == "" {
			at = defaultPlace(q.word)
		}
		return c.readAs(q.word, at+" "+strings.Join(words[i+1:], " "))
	}
	return ""
}

// pointed is a text with points for its decimal commas.
func pointed(text string) string {
	return strings.TrimSpace(patterns().decimal.ReplaceAllString(" "+text, "$1.$2$3$4"))
}

// barePairs is the full line of ohms or volts between pairs that were typed without
// their command word, "" when they are none.
func (c *Call) barePairs(l *script.Line) string {
	if len(l.Body) > 60 || len(l.Words) < 2 || strings.ContainsAny(l.Body, `("=`) {
		return ""
	}
	of := "ohm"
	if volts().MatchString(l.Body) {
		of = "volt"
	}
	q := qualityOf(of)
	text := c.readingsAs(q, l.Body)
	for range 2 { // what one match ends with the next begins with
		text = valueThenPin().ReplaceAllString(text, "$1, $2")
	}
	text = c.readingsAs(q, text)
	for _, p := range strings.Split(text, ", ") {
		if !pairAndValue().MatchString(p) {
			return ""
		}
	}
	return c.readAs(of, text)
}

var (
	volts        = said.Lazily(`(?i)^(l[123]?|n)(?:[–/-]| |to)*(l[123]?|n) `)
	valueThenPin = said.Lazily(`( (?:[~>]?\d[\d.]*[kMΩ]?|OL)) ([A-Za-z]\S* \S|\d[–/-]\d)`)
	pairAndValue = said.Lazily(`(?i)^(?:\d \d|(?:[a-z]\d?|com|common|start|run|\d) (?:case|gnd|ground|earth)|(?:[a-z]\d?|com|common|start|run) (?:[a-z]\d?|com|common|start|run)) (?:[~>]?\d\S*|OL|inf)$`)
)

// meterShows is what a meter shows of what people tell in words; 0 stands for
// ohms that nobody but the meter can tell.
var meterShows = map[string]string{"open": "OL", "short": "0", "shorted": "0", "closed": "0"}

// atMains are the places of which a bare number is volts.
var atMains = []string{"line", "outlet", "plug", "wall", "mains", "socket", "receptacle"}

var aCap = said.Lazily(`(?i)^(?:(?:start|run) cap(?:acitor)?|cap(?:acitor)?(?: (?:start|run))?) [~\d.][^/\s]*(?: (?:[uµμ]f|mfd))?$`)
