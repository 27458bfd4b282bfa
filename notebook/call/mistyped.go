package call

import (
	"slices"
	"strconv"
	"strings"

	"ohmcall/calc/source"
	"ohmcall/notebook/said"
	"ohmcall/notebook/script"
)

// mistyped refuses a reading that is likelier a slip than what it says: a pin that is
// nearly the case, behind which a winding shorted to the shell would not be seen; a
// number that a point in it was missed of; volts below zero. What stands in quotation
// marks is a name as it is.
func (c *Call) mistyped(q *quality, words []script.Word) error {
	parts, err := split(words)
	if err != nil {
		return nil
	}
	for _, p := range parts {
		r := &reading{quality: q}
		rest, err := r.cond.parse(p, c.tempUnit())
		if err != nil || len(rest) < 2 {
			continue
		}
		points, value := pointsAndValue(q, rest)
		if len(points) == 0 {
			continue
		}
		if err := c.mistypedValue(r, words, points, &value); err != nil {
			return err
		}
		for i := range points {
			if name := c.nearly(q, points, i); name != "" {
				w := &points[i]
				return w.Errorf("%s is no point that is known here", w.Text).
					WithHint(`perhaps: %s; if that is its name: %s`, instead(q, words, w, name), instead(q, words, w, `"`+w.Text+`"`))
			}
		}
	}
	return nil
}

// milliohms are ohms with the sign for a thousandth.
var milliohms = said.Lazily(`^~?(\d*\.?\d+)m(?:[oO]hms?|Ω)?$`)

func (c *Call) mistypedValue(r *reading, words, points []script.Word, value *script.Word) error {
	q, last := r.quality, &points[len(points)-1]
	first := points[0].Text
	switch q.word {
	case "volt":
		if v := value.Text; v[0] == '-' && len(v) > 1 && !r.cond.is(directWord) && first != "-" && first != "+" && !strings.HasSuffix(strings.ToLower(v), "mv") {
			return value.Errorf("volts below zero are direct ones, or a dash stands before them").
				WithHint("%s; direct ones: %s", instead(q, words, value, v[1:]), instead(q, words, value, v+" dc"))
		}
	case "ohm":
		if m := milliohms().FindStringSubmatch(value.Text); m != nil && len(points) == 2 && isShell(first) != isShell(last.Text) {
			x, _ := strconv.ParseFloat(m[1], 64)
			return value.Errorf("%s is read as milliohms, which no ordinary meter shows to the case", value.Text).
				WithHint("megohms take a capital: %s; milliohms in ohms: %s", instead(q, words, value, m[1]+"M"), instead(q, words, value, number(x/1000)))
		}
	}
	n := last.Text
	if len(points) == 1 || last.Quoted || len(n) < 2 || len(first) < 3 || !onlyDigits(n) || onlyDigits(first) || !onlyDigits(value.Text) {
		return nil
	}
	both := &script.Word{Text: n, Col: last.Col, End: value.End}
	e := both.Errorf("two numbers stand behind %s", first)
	if len(value.Text) < 3 {
		return e.WithHint("perhaps: %s; in quotation marks a number is a name", instead(q, words, both, n+"."+value.Text))
	}
	return e.WithHint("commas part readings: %s; in quotation marks a number is a name", instead(q, words, both, n+", "+pointWords(points[:len(points)-1])+" "+value.Text))
}

// instead is a line of readings with something else in the place of a word.
//
//go:noinline
func instead(q *quality, words []script.Word, w *script.Word, with string) string {
	out := q.word
	for _, x := range words {
		switch {
		case x.Comma():
			out += ","
		case x.Col == w.Col:
			out += " " + with
		case x.Col < w.Col || x.End > w.End:
			out += " " + x.Text
		}
	}
	return out
}

// aColour is a wire by its colour.
var aColour = said.Lazily(`^(?i:` + colour + `)$`)

// miswired refuses a wire and its role that changed places, and a slip in the role.
func (c *Call) miswired(wire, to *script.Word) error {
	if to.Quoted || wire.Quoted || c.pinName(to.Text) || among(markRoles, to.Text) {
		return nil
	}
	if aColour().MatchString(to.Text) && !aColour().MatchString(wire.Text) {
		if c.pinName(wire.Text) || among(markRoles, strings.ToLower(wire.Text)) {
			return wire.Errorf("the wire stands before what it goes to").WithHint("wire %s %s", to.Text, wire.Text)
		}
	}
	if role := source.Slip(to.Text, markRoles); role != "" && len(to.Text) > 3 {
		return to.Errorf("%s is no role that is known here", to.Text).
			WithHint(`perhaps: wire %s %s; if that is its name: wire %[1]s "%[3]s"`, wire.Text, role, to.Text)
	}
	return nil
}

// noSlips are points that a word for the metal or a place is a slip away from.
var noSlips = said.Lazily(`^(?i:` + colour + `|gry|end|flame|fame|shelf|sheet|round|home|cord|plus|link|comm|coil)$`)

// nearly is the name that a point is likely a slip of, "" when it says what it is.
func (c *Call) nearly(q *quality, points []script.Word, i int) string {
	w, low := points[i].Text, strings.ToLower(points[i].Text)
	if len(w) < 3 || points[i].Quoted || !isWord(w) || strings.ContainsAny(w, "0123456789") || noSlips().MatchString(w) || among(conditionWords, low) || c.isPoint(low) {
		return ""
	}
	cut := strings.LastIndexByte(w, '-')
	switch pair := among(pairKinds, q.word) && len(points) == 2; {
	case pair && (isShell(w) || among(markRoles, low)), q.word == "temp":
		return ""
	case pair:
		if name := nearMetal(low); name != "" {
			return name
		}
		if cut > 0 && partOf(w) == nil && (isShell(w[:cut]) || isShell(w[cut+1:])) {
			return caseName
		}
		if q.word == "ohm" {
			if name := source.Slip(w, markRoles); name != "" {
				return name
			}
			return c.strange(low)
		}
	case q.word == "ohm":
		if cut > 1 && (isShell(w[cut+1:]) || nearMetal(low[cut+1:]) != "") {
			return w[:cut] + " " + caseName
		}
	case len(w) > 3 && !isMotor(w) && (q.word == "mfd" || partOf(w) == nil):
		known := slices.Concat(placeWords(q.word), atMains)
		if name := source.Slip(w, known); name != low && strings.ReplaceAll(name, "-", "") != low {
			return name
		}
	}
	return ""
}

// nearMetal is the case for a word that is cut off or mistyped for it.
func nearMetal(low string) string {
	known := slices.Concat(shells, earths)
	if len(low) < 3 || partStarting(low) != nil || noSlips().MatchString(low) {
		return ""
	}
	if source.Slip(low, known) != "" || slices.ContainsFunc(known, func(s string) bool { return strings.HasPrefix(s, low) }) {
		return caseName
	}
	return ""
}

// meant are conditions by other words.
var meant = map[string]string{"pk": "peak", "strt": "start", "idle": "standing", "off": "standing", "static": "standing",
	"loaded": "run", "shut": "closed"}

// behindNumber is the hint for a word behind a value that is no condition: without it
// the value would be another, or of another time, so that what is shown has it still.
func (c *Call) behindNumber(r *reading, points []script.Word, last string) string {
	q, number := r.quality, points[len(points)-1].Text
	behind := ""
	if s := r.cond.String(); s != "" {
		behind = " " + strings.NewReplacer(",", "", " °C", "C", " V", "V", " A", "A").Replace(s)
	}
	for i := range qualities {
		if other := &qualities[i]; other != q && isUnit(last, other.unit) {
			if line := c.readAs(other.word, pointWords(points)+last+behind); line != "" {
				return last + " is of another kind of reading: " + line
			}
		}
	}
	low := strings.ToLower(last)
	as := meant[low]
	if as == "" {
		as = source.Slip(low, conditionWords)
	}
	for _, w := range conditionWords {
		if as == "" && len(low) > 2 && (strings.HasPrefix(low, w) || strings.HasPrefix(w, low)) {
			as = w
		}
	}
	if as == "" && strings.HasPrefix(low, "equali") {
		as = "standing"
	}
	if as != "" && (as != "standing" || q.word == "psi") {
		if line := c.readAs(q.word, pointWords(points)+" "+as+behind); line != "" {
			if as == "standing" {
				return "levelled, and all at one temperature: " + line
			}
			return "perhaps: " + line
		}
	}
	if unitLike(low) && asBare(number) {
		return unitsOf(q)
	}
	if line := c.readAs(q.word, pointWords(points)+behind); line != "" {
		return "# starts a comment: " + line + " # " + last
	}
	return ""
}

// unitLike tells a word that may be a unit of the number before it.
func unitLike(low string) bool {
	if len(low) < 4 {
		return true
	}
	for _, s := range []string{"oh", "gi", "meg", "mil", "mic", "ki", "k-", "tor", "bar", "pa", "hg", "far", "vol", "amp", "wat", "cel", "fah", "deg"} {
		if strings.Contains(low, s) {
			return true
		}
	}
	return false
}

func unitsOf(q *quality) string {
	switch q.word {
	case "ohm":
		return "a unit stands with its number: 2G, 500M, 4.7k, 80m"
	case "psi":
		return "a unit stands with its number: 35psi, 2bar, 240kPa, -5inHg, 500 microns"
	}
	return "as in: " + Find(q.word).Examples[0]
}

// strange is the case for a word beside pins that have all been read and have letters
// or numbers for names.
func (c *Call) strange(low string) string {
	n := 0
	for _, p := range c.pins() {
		if len(p) > 2 && !isShell(p) {
			return ""
		} else if len(p) < 3 {
			n++
		}
	}
	if n < 3 || partOf(low) != nil || isMotor(low) || isSupplyPoint(low) {
		return ""
	}
	return caseName
}
