package call

import (
	"strconv"
	"strings"

	"ohmcall/calc/source"
	"ohmcall/notebook/said"
	"ohmcall/notebook/script"
)

// readingLine is a line of readings that is shown as it is likelier meant.
type readingLine struct {
	q     *quality
	words []script.Word
}

// with is the line with something else in the place of a word.
//
//go:noinline
func (l *readingLine) with(w *script.Word, other string) string {
	out := l.q.word
	for i := range l.words {
		x := &l.words[i]
		switch {
		case x.Col == w.Col:
			out += " " + other
		case x.Col > w.Col && x.End <= w.End:
		case x.Text == "," && !x.Quoted:
			out += ","
		default:
			out += " " + x.Text
		}
	}
	return out
}

//go:noinline
func refused(w *script.Word, says, hint string) error {
	return w.Errorf("%s", says).WithHint("%s", hint)
}

// mistyped refuses a reading that is likelier a slip than what it says: a pin that is
// nearly the case, behind which a winding shorted to the shell would not be seen; a
// number that a point in it was missed of; volts below zero; milliohms where megohms
// are read. What stands in quotation marks is a name as it is.
func (c *Call) mistyped(q *quality, words []script.Word) error {
	parts, _ := split(words)
	l := &readingLine{q, words}
	for _, p := range parts {
		var cond condition
		rest, err := cond.parse(p, c.tempUnit())
		if err != nil || len(rest) < 2 {
			continue
		}
		points, value := pointsAndValue(q, rest)
		if len(points) == 0 {
			continue
		}
		if err := l.mistypedValue(points, &value, cond.is(directWord)); err != nil {
			return err
		}
		for i := range points {
			w := &points[i]
			if name := c.nearly(q, w, len(points) == 2); name != "" {
				return refused(w, w.Text+" is no point that is known here", "perhaps: "+l.with(w, name)+"; if that is its name: "+l.with(w, `"`+w.Text+`"`))
			}
		}
	}
	return nil
}

// milliohms are ohms with the sign for a thousandth; volts below zero are no
// thermocouple's, which are read in thousandths.
var (
	milliohms = said.Lazily(`^~?(\d*\.?\d+)m(?:[oO]hms?|Ω)?$`)
	below     = said.Lazily(`^-([.\d]+(?i:kv|v)?)$`)
)

func (l *readingLine) mistypedValue(points []script.Word, value *script.Word, direct bool) error {
	first, last := points[0].Text, &points[len(points)-1]
	switch {
	case l.q.word == "volt" && isPilotPower(first) && len(points) == 1 && inVolts(value.Text):
		return refused(value, value.Text+" V is far more than it can give", "millivolts: "+l.with(value, value.Text+"mV"))
	case l.q.word == "volt" && !direct && first != "-" && first != "+":
		if m := below().FindStringSubmatch(value.Text); m != nil {
			return refused(value, "volts below zero are direct ones, or a dash stands before them", l.with(value, m[1])+"; direct ones: "+l.with(value, value.Text+" dc"))
		}
	case l.q.word == "ohm" && len(points) == 2 && isShell(first) != isShell(last.Text):
		if m := milliohms().FindStringSubmatch(value.Text); m != nil {
			x, _ := strconv.ParseFloat(m[1], 64)
			return refused(value, value.Text+" is read as milliohms, which no ordinary meter shows to the case", "megohms take a capital: "+l.with(value, m[1]+"M")+"; milliohms in ohms: "+l.with(value, number(x/1000)))
		}
	}
	n := last.Text
	if len(points) == 1 || last.Quoted || len(n) < 2 || len(first) < 3 || !onlyDigits(n) || onlyDigits(first) || !onlyDigits(value.Text) {
		return nil
	}
	both := script.Word{Col: last.Col, End: value.End}
	hint := "perhaps: " + l.with(&both, n+"."+value.Text)
	if len(value.Text) > 2 {
		hint = "commas part readings: " + l.with(&both, n+", "+pointWords(points[:len(points)-1])+" "+value.Text)
	}
	return refused(&both, "two numbers stand behind "+first, hint+"; in quotation marks a number is a name")
}

// inVolts tells a number without a unit that is more volts than a pilot's flame makes.
func inVolts(value string) bool {
	x, err := strconv.ParseFloat(strings.TrimLeft(value, "~-"), 64)
	return err == nil && x > mostPile
}

// mostPile is more than any thermopile gives, in volts (common practice).
const mostPile = 2

// aColour is a wire by its colour, noSlip a point that a word for the metal or a
// place is a slip away from.
var (
	aColour = said.Lazily(`^(?i:` + colour + `)$`)
	noSlip  = said.Lazily(`^(?i:` + colour + `|gry|end|flame|fame|shelf|sheet|round|home|cord|plus|link|comm|coil)$|\d`)
)

// miswired refuses a wire and its role that changed places, and a slip in the role.
func (c *Call) miswired(wire, to *script.Word) error {
	if to.Quoted || c.roleOrPin(to.Text) {
		return nil
	}
	if aColour().MatchString(to.Text) && c.roleOrPin(wire.Text) {
		return refused(wire, "the wire stands before what it goes to", "wire "+to.Text+" "+wire.Text)
	}
	if role := source.Slip(to.Text, markRoles); role != "" && len(to.Text) > 3 {
		return refused(to, to.Text+" is no role that is known here", "perhaps: wire "+wire.Text+" "+role+"; if that is its name: wire "+wire.Text+` "`+to.Text+`"`)
	}
	return nil
}

func (c *Call) roleOrPin(word string) bool {
	return c.pinName(word) || among(markRoles, strings.ToLower(word))
}

// nearly is the name that a point is likely a slip of, "" when it says what it is.
func (c *Call) nearly(q *quality, point *script.Word, two bool) string {
	w, low := point.Text, strings.ToLower(point.Text)
	if len(w) < 3 || point.Quoted || q.word == "temp" || !isWord(w) || isShell(w) || among(conditionWords, low) || noSlip().MatchString(w) || c.isPoint(low) {
		return ""
	}
	cut := strings.LastIndexByte(w, '-')
	switch {
	case two && among(pairKinds, q.word):
		if among(markRoles, low) {
			return ""
		}
		if partOf(w) == nil && (nearMetal(low) || cut > 0 && (isShell(w[:cut]) || isShell(w[cut+1:]))) {
			return caseName
		}
		if q.word == "volt" {
			return ""
		}
		if name := source.Slip(w, markRoles); name != "" {
			return name
		}
		return c.strange(low)
	case q.word == "ohm":
		if cut > 1 && nearMetal(low[cut+1:]) {
			return w[:cut] + " " + caseName
		}
	case len(w) > 3 && !isMotor(w) && (q.word == "mfd" || partOf(w) == nil):
		if name := source.Slip(w, append(placeWords(q.word), atMains...)); name != low && strings.ReplaceAll(name, "-", "") != low {
			return name
		}
	}
	return ""
}

// nearMetal reports whether a word is one for the case, cut off or mistyped.
func nearMetal(low string) bool {
	known := " " + strings.Join(append(shells, earths...), " ")
	return len(low) > 2 && !noSlip().MatchString(low) && (strings.Contains(known, " "+low) || partStarting(low) == nil && source.Slip(low, strings.Fields(known)) != "")
}

// strange is the case for a word beside pins that have all been read and have letters
// or numbers for names.
func (c *Call) strange(low string) string {
	n := 0
	for _, p := range c.pins() {
		if isShell(p) {
			continue
		}
		if n++; len(p) > 2 {
			return ""
		}
	}
	if n < 3 || partOf(low) != nil || isMotor(low) || isSupplyPoint(low) {
		return ""
	}
	return caseName
}

// meant are conditions by other words.
var meant = map[string]string{"pk": "peak", "strt": "start", "idle": "standing", "off": "standing", "static": "standing", "equalized": "standing",
	"equalised": "standing", "loaded": "run", "shut": "closed"}

// behindNumber is the hint for a word behind a value that is no condition: without it
// the value would be another, or of another time, so that what is shown has it still.
func (c *Call) behindNumber(r *reading, points []script.Word, last string) string {
	q, low, typed := r.quality, strings.ToLower(last), pointWords(points)
	behind := " " + strings.NewReplacer(",", "", " °C", "C", " V", "V", " A", "A").Replace(r.cond.String())
	for i := range qualities {
		if other := &qualities[i]; other != q && isUnit(last, other.unit) {
			if line := c.readAs(other.word, typed+last+behind); line != "" {
				return last + " is of another kind of reading: " + line
			}
		}
	}
	as := meant[low]
	if as == "" {
		as = source.Slip(low, conditionWords)
	}
	why := "perhaps: "
	if as == "standing" {
		why = "levelled, and all at one temperature: "
	}
	line := ""
	switch {
	case as != "" && (as != "standing" || q.word == "psi"):
		line = c.readAs(q.word, typed+" "+as+behind)
	case unitLike(low) && asBare(points[len(points)-1].Text):
		return unitsOf(q)
	default:
		why = "# starts a comment: "
		if line = c.readAs(q.word, typed+behind); line != "" {
			line += " # " + last
		}
	}
	if line == "" {
		return unitsOf(q)
	}
	return why + line
}

// unitLike tells a word that may be a unit of the number before it.
func unitLike(low string) bool { return len(low) < 4 || unitWord().MatchString(low) }

var unitWord = said.Lazily(`oh|gi|meg|mil|mic|ki|k-|tor|bar|pa|hg|far|vol|amp|wat|cel|deg`)

func unitsOf(q *quality) string {
	switch q.word {
	case "ohm":
		return "a unit stands with its number: 2G, 500M, 4.7k, 80m"
	case "psi":
		return "a unit stands with its number: 35psi, 2bar, 240kPa, -5inHg, 500 microns"
	}
	return "as in: " + Find(q.word).Examples[0]
}
