package call

import (
	"regexp"
	"strconv"
	"strings"
	"sync"

	"ohmcall/notebook/said"
	"ohmcall/notebook/script"
)

// plateSpelt writes what is typed off a plate as it stands there, 115V 60Hz
// 10.2A LRA 52 R-32, as keys and values parted by commas. What the language
// takes already, and what is not understood to its end, stays as it is.
func (c *Call) plateSpelt(text string) string {
	if len(text) > longestTyped || c.takesPlate(text) {
		return text
	}
	parts, bad := plateParts(plateWordsOf(text))
	if bad != "" || len(parts) == 0 {
		return text
	}
	var out []string
	for _, p := range parts {
		out = append(out, sections(p)...)
	}
	if s := strings.Join(out, ", "); c.takesPlate(s) {
		return s
	}
	return text
}

// plateSlip is the first word of a plate as it stands there that is not understood, ""
// when all are.
func (c *Call) plateSlip(text string) string {
	parts, bad := plateParts(plateWordsOf(text))
	for i := 0; i < len(parts) && bad == ""; i++ {
		if !c.takesPlate(strings.Join(sections(parts[i]), ", ")) {
			bad = parts[i][len(parts[i])-1]
		}
	}
	return bad
}

// plateWordsOf are the words of a plate with commas by themselves; a comma before
// the decimals of a value with its unit is a point.
func plateWordsOf(text string) []string {
	text = phaseBehind().ReplaceAllString(voltsAndHertz().ReplaceAllString(text, "${1}v ${2}hz "), "$1 ${2}ph$3")
	text = capTube().ReplaceAllString(text, "capillary")
	return strings.Fields(strings.ReplaceAll(decimalsOfUnit().ReplaceAllString(text, "$1.$2"), ",", " , "))
}

// Volts, hertz and phases as plates join them: 115/60/1, 230V~50Hz.
var (
	voltsAndHertz = said.Lazily(`(?i)\b(\d{3}(?:[-/]\d{3})?) ?(?:v(?:ac)?)? ?[/~] ?([56]0) ?(?:hz\b/?|(?:/|$|\s))`)
	phaseBehind   = said.Lazily(`(?i)(\dhz) +([13])(?: ?ph)?(\s|,|$)`)
	capTube       = said.Lazily(`(?i)\bcap(?:illary)? tubes?\b`)
)

var decimalsOfUnit = said.Lazily(`(?i)\b(\d+),(\d{1,2}(?:v|hz|a|w|kw|hp|uf|µf|mfd|kg|oz|lbs?)\b)`)

// onPlates are words that stand on a plate without their key.
var onPlates = map[string]string{"inverter": "type", "split-phase": "type", "shaded-pole": "type", "universal": "type", "capillary": "metering", "ptc": "start"}

// takesPlate reports whether a text is values of a plate as the language has
// them.
func (c *Call) takesPlate(text string) bool {
	l, err := script.Parse("plate " + text)
	if err != nil || len(l.Words) < 2 {
		return false
	}
	_, err = c.parsePlate(l.Words[1:])
	return err == nil
}

// plateUnits are the keys whose value shows by its unit what it is.
var plateUnits = sync.OnceValue(func() *struct{ value, unit, gas *regexp.Regexp } {
	const unit = `(v|vac|volts?|hz|a|amps?|w|watts?|kw|hp|uf|µf|mfd|ph|phase|g|gr|grams?|kg|oz|lbs?)`
	return &struct{ value, unit, gas *regexp.Regexp }{regexp.MustCompile(`(?i)^([\d./+–-]*\d)` + unit + `?$`), regexp.MustCompile(`(?i)^` + unit + `$`),
		regexp.MustCompile(`(?i)^r-?\d{2,4}[a-z]*$`)}
})

// massUnits are the units of a charge as plates print them.
var massUnits = map[string]string{"g": "g", "gr": "g", "gram": "g", "grams": "g", "kg": "kg", "oz": "oz", "lb": "lb", "lbs": "lb"}

func isVolts(w string) bool {
	_, ok := said.RatedVolts(w)
	return ok
}

func keyOfUnit(unit string) string {
	switch unit = strings.ToLower(unit); unit {
	case "v", "vac":
		return "volts"
	case "a":
		return "amps"
	case "w":
		return "watts"
	case "µf":
		return "mfd"
	}
	return plateKeyOf(unit).word
}

// plateParts gives each key with its values, and the first word that is neither,
// "" when there is none.
func plateParts(words []string) (parts [][]string, bad string) {
	at := func(i int) string {
		if i < len(words) {
			return words[i]
		}
		return ""
	}
	for i := 0; i < len(words); i++ {
		w := words[i]
		var part []string // the one that the word may go on with
		if len(parts) > 0 {
			part = parts[len(parts)-1]
		}
		ofCap := len(part) > 1 && part[0] == "mfd"
		ofWindings := len(part) > 1 && part[0] == "ohms"
		wants := len(part) == 1 || len(part) == 2 && (ofCap || ofWindings || part[0] == "watts") && !startsLikeNumber(part[1])
		number := plateUnits().value.FindStringSubmatch(w)
		name, n := heaterBefore(words[i:])
		switch {
		case w == ",":
			if i == 0 || at(i+1) == "," {
				return nil, w
			}
		case wants && part[0] == "start" && onPlates[strings.ToLower(w)] == "type": // what starts softly has no start device
			parts[len(parts)-1] = []string{"type", w}
		case wants:
			parts[len(parts)-1] = append(part, w)
		case ofWindings && (w == "run" || w == "start") && startsLikeNumber(at(i+1)):
			parts = append(parts, []string{"ohms", w})
		case n > 0:
			parts = append(parts, []string{"watts", name})
			i += n - 1
		case plateKeyOf(w) != nil:
			parts = append(parts, []string{plateKeyOf(w).word})
		case ofCap && (isVolts(w) && !isVolts(part[len(part)-1]) || strings.HasSuffix(w, "%")):
			parts[len(parts)-1] = append(part, w) // the volts or the tolerance of a capacitor
		case number != nil:
			unit := number[2]
			if unit == "" && plateUnits().unit.MatchString(at(i+1)) {
				i++
				unit = at(i)
			}
			switch {
			case massUnits[strings.ToLower(unit)] != "":
				parts = append(parts, []string{"charge", number[1] + massUnits[strings.ToLower(unit)]})
			case strings.EqualFold(unit, "kw"):
				parts = append(parts, []string{"watts", number[1] + "kW"})
			case unit != "":
				parts = append(parts, []string{keyOfUnit(unit), number[1]})
			case plateKeyOf(at(i+1)) != nil && plateKeyOf(at(i+1)).unit != "" && !startsLikeNumber(at(i+2)):
				i++
				parts = append(parts, []string{plateKeyOf(at(i)).word, w})
			case len(part) == 2 && part[1] == "cap" && (part[0] == "run" || part[0] == "start"):
				parts = append(parts, []string{"mfd", part[0], w}) // what is marked on the can has its own key
			default:
				return nil, w
			}
		case onPlates[strings.ToLower(w)] != "":
			parts = append(parts, []string{onPlates[strings.ToLower(w)], w})
		case plateUnits().gas.MatchString(w):
			parts = append(parts, []string{"gas", w})
		case ofCap && len(part) > 2 && isWord(w) && startsLikeNumber(at(i+1)):
			parts = append(parts, []string{"mfd", w})
		default:
			return nil, w
		}
	}
	return parts, ""
}

// heaterBefore is the name of a heater that stands before its watts, and the words up to
// their number.
func heaterBefore(words []string) (name string, n int) {
	for n < len(words) && n < 3 && isWord(words[n]) && plateKeyOf(words[n]) == nil {
		n++
	}
	name = strings.ToLower(strings.Join(words[:n], "-"))
	if n == 0 || n == len(words) || !isHeater(name) && !isHeater(words[0]) {
		return "", 0
	}
	if k := plateKeyOf(words[n]); k != nil && k.word == "watts" && n+1 < len(words) {
		return name, n + 1
	}
	if m := plateUnits().value.FindStringSubmatch(words[n]); m != nil && strings.HasSuffix(strings.ToLower(m[2]), "w") {
		return name, n
	}
	return "", 0
}

// sections writes a key with its values, and the two sections of one can as one
// each: the larger is the compressor's (common practice).
func sections(part []string) []string {
	whole := strings.Join(part, " ")
	if part[0] != "mfd" || len(part) < 2 {
		return []string{whole}
	}
	at := 1
	if len(part) > 2 && part[1] == "run" {
		at = 2
	}
	m := twoSections().FindStringSubmatch(part[at])
	if m == nil || among(printedVolts, m[2]) {
		return []string{whole}
	}
	big, _ := strconv.ParseFloat(m[1], 64)
	small, _ := strconv.ParseFloat(m[2], 64)
	if big <= small {
		return []string{whole}
	}
	rest := strings.Join(append([]string{""}, part[at+1:]...), " ")
	return []string{"mfd herm " + m[1] + rest, "mfd fan " + m[2] + rest}
}

var twoSections = said.Lazily(`(?i)^(\d+(?:\.\d+)?)[/+](\d+(?:\.\d+)?)(?:uf|µf|mfd)?$`)
