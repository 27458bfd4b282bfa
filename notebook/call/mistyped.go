package call

import (
	"slices"
	"strings"

	"ohmcall/calc/quantity"
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
		instead := func(w script.Word, with string) string {
			out := q.word
			for _, x := range words {
				switch {
				case x.Text == "," && !x.Quoted:
					out += ","
				case x.Col == w.Col:
					out += " " + with
				case x.Col < w.Col || x.End > w.End:
					out += " " + x.Text
				}
			}
			return out
		}
		low := strings.ToLower(value.Text)
		if q.word == "volt" && low[0] == '-' && low != "-" && !r.cond.is(directWord) && !strings.HasSuffix(low, "mv") && points[0].Text != "-" && points[0].Text != "+" {
			return value.Errorf("volts below zero are direct ones, or a dash stands before them").
				WithHint("%s; direct ones: %s", instead(value, value.Text[1:]), instead(value, value.Text+" dc"))
		}
		if m := strings.TrimLeft(value.Text, "~.0123456789"); q.word == "ohm" && strings.HasPrefix(m, "m") && len(points) == 2 && isShell(points[0].Text) != isShell(points[1].Text) {
			if x, err := quantity.Parse(strings.TrimPrefix(value.Text, "~"), "ohm"); err == nil {
				return value.Errorf("%s is read as milliohms, which no ordinary meter shows to the case", value.Text).
					WithHint("megohms take a capital: %s; milliohms in ohms: %s", instead(value, strings.TrimSuffix(value.Text, m)+"M"), instead(value, number(x.SI())))
			}
		}
		for i, w := range points {
			if w.Quoted {
				continue
			}
			if name := c.nearly(q, points, i); name != "" {
				return w.Errorf("%s is no point that is known here", w.Text).
					WithHint(`perhaps: %s; if that is its name: %s`, instead(w, name), instead(w, `"`+w.Text+`"`))
			}
			if i == 0 || i < len(points)-1 || !onlyDigits(w.Text) || len(w.Text) < 2 || len(points[0].Text) < 3 || onlyDigits(points[0].Text) || !onlyDigits(value.Text) {
				continue
			}
			e := source.Errorf(w.Col, value.End, "two numbers stand behind %s", points[i-1].Text)
			both := script.Word{Col: w.Col, End: value.End}
			if len(value.Text) < 3 {
				return e.WithHint("perhaps: %s; in quotation marks a number is a name", instead(both, w.Text+"."+value.Text))
			}
			return e.WithHint("commas part readings: %s; in quotation marks a number is a name", instead(both, w.Text+", "+pointWords(points[:i])+" "+value.Text))
		}
	}
	return nil
}

// noSlips are points that a word for the metal or a place is a slip away from.
var noSlips = said.Lazily(`^(?i:` + colour + `|gry|end|flame|fame|shelf|sheet|round|home|cord|plus|link|comm|coil)$`)

// nearly is the name that a point is likely a slip of, "" when it says what it is.
func (c *Call) nearly(q *quality, points []script.Word, i int) string {
	w, low := points[i].Text, strings.ToLower(points[i].Text)
	if len(w) < 3 || !isWord(w) || strings.ContainsAny(w, "0123456789") || noSlips().MatchString(w) || among(conditionWords, low) || c.isPoint(low) {
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
