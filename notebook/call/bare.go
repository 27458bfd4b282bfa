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
	body := pointed(l.Body)
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
	case aCap().MatchString(body):
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
		if word == "" && n == 1 && partOf(first) != nil && valueLike(last, "ohm") {
			word = "ohm"
		}
	}
	q := qualityOf(word)
	if q == nil {
		return ""
	}
	full := word + " " + c.readingsAs(q, text)
	read, err := script.Parse(full)
	if err == nil {
		_, err = c.parseReadings(q, read.Words[1:])
	}
	if err != nil {
		return ""
	}
	if meterShows[strings.ToLower(last)] == "0" {
		full = strings.TrimSuffix(full, "0") + "…"
	}
	return full
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
	read, err := script.Parse(of + " " + text)
	if err == nil {
		_, err = c.parseReadings(q, read.Words[1:])
	}
	if err != nil {
		return ""
	}
	return of + " " + text
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

var aCap = said.Lazily(`(?i)^(?:(?:start|run) cap|cap(?: (?:start|run))?) [~\d.][^/\s]*(?: (?:[uµμ]f|mfd))?$`)
