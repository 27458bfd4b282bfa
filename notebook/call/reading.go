package call

import (
	"slices"
	"strconv"
	"strings"
	"time"

	"ohmcall/calc/cause"
	"ohmcall/calc/judge"
	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
	"ohmcall/calc/verdict"
	"ohmcall/calc/winding"
	"ohmcall/notebook/script"
)

// quality is one thing that a meter reads: its command word, the unit that a
// bare number takes, and how it is named.
type quality struct {
	word, unit, ucum, noun string
}

var qualities = []quality{
	{"ohm", "ohm", "Ohm", "resistance"},
	{"volt", "V", "V", "voltage"},
	{"amp", "A", "A", "current"},
	{"mfd", "uF", "uF", "capacitance"},
	{"temp", "degC", "Cel", "temperature"},
	{"watt", "W", "W", "power"},
	{"psi", "psi", "[psi]", "gauge pressure"},
	{"trip", "s", "s", "time to trip"},
}

//go:noinline
func qualityOf(word string) *quality {
	for i := range qualities {
		if qualities[i].word == word {
			return &qualities[i]
		}
	}
	return nil
}

func qualityWords(*Call) []string {
	out := make([]string, len(qualities))
	for i, q := range qualities {
		out[i] = q.word
	}
	return out
}

// thermometer is the limit taken for a temperature when none was declared, in
// kelvin (common practice for a pocket thermometer).
const thermometer = 1.0

// tenthsBelow is the end of the lowest range of an ordinary meter or clamp. It
// shows tenths there at least, which people leave out (common practice): `7`
// is read as 7.0, and the reply says so once.
var tenthsBelow = map[string]float64{"ohm": 200, "amp": 40}

// The same of its ranges of kilohms and megohms, and of an insulation tester, in ohms
// (common practice): nobody reads a value of one digit on the range for two hundred.
const (
	kilohm          = 1e3
	megohm          = 1e6
	kiloTenthsBelow = 200 * kilohm
	megTenthsBelow  = 20 * megohm
)

// fullVacuum is the most that a gauge shows below the air's pressure, in psi:
// the standard atmosphere is 14.696 (NIST SP 811, from memory), and dials end at
// 30 inHg (common practice).
const fullVacuum = 14.74

// number writes a float shortly.
//
//go:noinline
func number(x float64) string { return strconv.FormatFloat(x+0, 'g', 6, 64) } // no -0

// reading is one reading as typed. What it is worth (see Call.value) depends
// on the meter and the probes declared in the call, also later ones: it is
// the same meter.
type reading struct {
	entry   int
	index   int // among all readings, from 0
	at      time.Time
	quality *quality
	of      string // machine at hand, for ohms between its pins
	a, b    string // b is empty for a single place
	q       quantity.Q
	x       float64 // its value in the quality's unit
	res     float64 // worth of the last digit, in the quality's unit
	over    bool
	floor   float64 // of an over reading written as >200M, the range it is over
	rough   bool
	typed   string
	derived bool // the value was a sum in parentheses and has its own doubt
	tenths  bool // typed in whole numbers and taken as tenths shown
	bare    bool // a temperature typed without its unit
	cond    condition
}

// key tells which readings repeat each other.
func (r *reading) key() string {
	a, b := r.a, r.b
	if b != "" && a > b {
		a, b = b, a
	}
	phase := ""
	if r.cond.is("peak") || r.cond.is("start") {
		phase = "start"
	}
	if r.cond.is(directWord) {
		phase += directWord
	}
	return strings.Join([]string{r.quality.word, r.of, a, b, phase}, "\x00")
}

// wrongRange reports whether the digits typed speak for a wrong range of the
// ohm-meter.
func (r *reading) wrongRange() (verdict.Verdict, bool) {
	if r.quality.word != "ohm" || r.over || r.derived || r.cond.test > 0 {
		return verdict.Verdict{}, false
	}
	return judge.WrongRange(r.typed)
}

// where names the points as people read them.
//
//go:noinline
func (r *reading) where() string {
	if r.b == "" {
		return r.a
	}
	return r.a + "–" + r.b
}

// parseReadings reads `POINT [POINT] VALUE [CONDITION]`, several with commas.
func (c *Call) parseReadings(q *quality, words []script.Word) ([]*reading, error) {
	parts, err := split(words)
	if err != nil {
		return nil, err
	}
	var out []*reading
	for i, p := range parts {
		r, err := c.parseReading(q, p)
		if other := qualityOf(p[0].Text); err != nil && i > 0 && len(p) > 1 && other != nil {
			if _, bad := c.parseReading(other, p[1:]); bad == nil {
				return nil, p[0].Errorf("%s starts a line of its own", p[0].Text).WithHint("a line each: %s %s; then: %s", q.word, pointWords(parts[i-1]), pointWords(p))
			}
		}
		if err != nil && i == 0 && q.word == "ohm" {
			if name, n := namedMotor(strings.Fields(pointWords(p))); n > 0 && len(p) >= n+3 && (startsLikeNumber(p[n+2].Text) || isOver(p[n+2].Text)) {
				return nil, source.Errorf(p[2].Col, p[n+2].End, "a reading has one or two points and one value").
					WithHint("on %s, then: ohm %s", name, strings.ReplaceAll(pointWords(words[n:]), " ,", ","))
			}
		}
		if err != nil {
			return nil, err
		}
		if q.word == "ohm" && strings.EqualFold(r.a, "plug") && r.b == caseName {
			return nil, p[0].Errorf("a plug has several pins").
				WithHint("its earth pin to metal: ohm earth 0.05; a supply pin to metal: ohm L case OL, ohm N case OL")
		}
		if q.word == "ohm" && r.b != "" {
			r.a, r.b = c.spelling(r.a, out), c.spelling(r.b, out)
		}
		out = append(out, r)
	}
	return out, nil
}

// spelling is a pin's name as it was first written on the machine at hand or
// in the same line: A and a are one pin.
func (c *Call) spelling(pin string, sameLine []*reading) string {
	for _, r := range sameLine {
		for _, p := range [2]string{r.a, r.b} {
			if strings.EqualFold(p, pin) {
				return p
			}
		}
	}
	for _, p := range c.pins() {
		if strings.EqualFold(p, pin) {
			return p
		}
	}
	return pin
}

func (c *Call) parseReading(q *quality, words []script.Word) (*reading, error) {
	r := &reading{quality: q}
	rest, err := r.cond.parse(words, c.tempUnit())
	if err != nil {
		return nil, err
	}
	if len(rest) == 0 {
		return nil, words[0].Errorf("no value stands before %q", words[0].Text).WithHint("as in: %s", Find(q.word).Examples[0])
	}
	points, value := pointsAndValue(q, rest)
	if err := c.noValue(r, points, value, pointWords(rest)); err != nil {
		return nil, err
	}
	for i, p := range points {
		if other := qualityOf(p.Text); other != nil {
			e := p.Errorf("%s starts a line of its own", p.Text)
			if _, err := c.parseReading(other, words[i+1:]); err == nil {
				return nil, e.WithHint("as: %s", pointWords(words[i:]))
			}
			return nil, e.WithHint("commas part readings of one kind")
		}
	}
	if err := r.parseValue(c, value); err != nil {
		return nil, c.behindValue(q, points, value, err)
	}
	if points = r.liftConditions(points); r.cond.is(directWord) && q.word != "volt" {
		return nil, words[len(words)-1].Errorf("dc is said of volts alone").WithHint("as in: volt evap-fan 12.4 dc")
	}
	if err := c.takenAt(r, words, points, value); err != nil {
		return nil, err
	}
	if r.b != "" && q.word == "amp" {
		e := points[1].Errorf("current is read at one place")
		if startsLikeNumber(points[0].Text) || startsLikeNumber(points[1].Text) {
			return nil, e.WithHint("%s", c.parted(q, words))
		}
		return nil, e.WithHint("the condition follows the value: amp %s %s peak", points[0].Text, value.Text)
	}
	if r.b != "" && !among(pairKinds, q.word) {
		return nil, points[1].Errorf("%s names one place", q.word).WithHint("as in: %s", Find(q.word).Examples[0])
	}
	for _, p := range points {
		if len([]rune(p.Text)) > 40 {
			return nil, p.Errorf("a name of a point is too long").WithHint("at most 40 characters")
		}
	}
	r.toShell()
	switch {
	case r.b == caseName && isShell(r.a) && !r.onMetal():
		return nil, points[1].Errorf("both probes stand on the shell").WithHint("as in: ohm A case OL; the earth path is ohm earth 0.05")
	case r.a == "" && q.word == "volt":
		return nil, points[0].Errorf("the case alone is one point").WithHint("name the other one too: volt case earth %s", value.Text)
	case r.a == "":
		return nil, points[0].Errorf("the case alone is one point").WithHint("name the pin too: ohm A case OL")
	}
	return r, nil
}

// pointsAndValue parts the points of a reading from its value, the last word; its
// unit may stand apart: `1/6 hp`, `4.7 k`.
func pointsAndValue(q *quality, rest []script.Word) (points []script.Word, value script.Word) {
	points, value = rest[:len(rest)-1], rest[len(rest)-1]
	if n := len(points) - 1; n >= 0 && isUnit(value.Text, q.unit) && startsLikeNumber(points[n].Text) {
		value = script.Word{Text: points[n].Text + value.Text, Col: points[n].Col, End: value.End}
		points = points[:n]
	}
	return points, value
}

// noValue says what to type when what stands last is the value of no reading.
func (c *Call) noValue(r *reading, points []script.Word, value script.Word, rest string) error {
	word, number := r.quality.word, startsLikeNumber(value.Text) || isOver(value.Text)
	if said := wanted(r); said != "" && !number && !strings.HasPrefix(value.Text, "(") {
		shows, also := map[string]string{"open": "OL", "closed": "…"}[said], ""
		for _, w := range r.cond.words {
			if w != said {
				also += " " + w
			}
		}
		return value.Errorf("no value stands before %s", said).
			WithHint("write what the meter shows, OL when it is open: %s %s %s%s", word, rest, shows, also)
	}
	if !isWord(value.Text) || isOver(value.Text) {
		return nil
	}
	if len(cause.FindFindings(rest)) > 0 {
		return value.Errorf("%q is not a number", value.Text).WithHint("a finding: saw %s", rest)
	}
	n := len(points)
	if n == 0 || !startsLikeNumber(points[n-1].Text) && !isOver(points[n-1].Text) {
		return nil
	}
	e := value.Errorf("%q is no condition that is known here", value.Text)
	if strings.EqualFold(value.Text, "warm") && word == "ohm" {
		return e.WithHint("it is one of: %s %[2]s hot; %[1]s %[2]s cold", word, pointWords(points))
	}
	if turned(value) || turned(points[1:]...) {
		return e.WithHint("help %s names them; a value below zero has a minus: temp freezer -5F", word)
	}
	if breaksLying(points, value) {
		return e.WithHint(twoPositions, word, pointWords(points))
	}
	return e.WithHint("%s", c.behindNumber(r, points, value.Text))
}

// turned reports whether a word among some makes another value of the one before it.
//
//go:noinline
func turned(words ...script.Word) bool {
	for _, w := range words {
		if strings.Contains(" below under above over less more than not or ", " "+strings.ToLower(w.Text)+" ") {
			return true
		}
	}
	return false
}

const twoPositions = "a relay's contact tells something upright or turned over: %s %s upright, or: %[1]s %[2]s inverted"

// breaksLying reports whether a relay was read in a position in which it tells nothing.
func breaksLying(points []script.Word, value script.Word) bool {
	return strings.HasPrefix(strings.ToLower(points[0].Text), "relay") && among([]string{"side", "sideways", "lying", "flat", "horizontal"}, strings.ToLower(value.Text))
}

// behindValue says of a value that was not understood that it is words behind one
// that is.
func (c *Call) behindValue(q *quality, points []script.Word, value script.Word, err error) error {
	i := slices.IndexFunc(points, func(p script.Word) bool { return startsLikeNumber(p.Text) && !onlyDigits(p.Text) || isOver(p.Text) })
	if i <= 0 || !isWord(value.Text) {
		return err
	}
	if _, bad := c.parseReading(q, points[:i+1]); bad != nil {
		return bad // the value is not understood either
	}
	e := points[min(i+1, len(points)-1)].Errorf("words stand behind the value")
	if breaksLying(points, value) {
		return e.WithHint(twoPositions, q.word, pointWords(points[:i+1]))
	}
	if turned(value) || turned(points[i+1:]...) {
		return e.WithHint("a value is written as it was read: %s", Find(q.word).Examples[0])
	}
	rest := strings.TrimSpace(pointWords(points[i+1:]) + " " + value.Text)
	if unit, _, _ := strings.Cut(rest, " "); unitLike(strings.ToLower(unit)) && asBare(points[i].Text) {
		return e.WithHint("%s", unitsOf(q))
	}
	return e.WithHint("# starts a comment: %s %s # %s", q.word, pointWords(points[:i+1]), rest)
}

// takenAt says where a reading was taken: at two points, at one, or where readings
// of its kind are taken when nothing is said.
func (c *Call) takenAt(r *reading, words, points []script.Word, value script.Word) error {
	q := r.quality
	switch len(points) {
	case 0:
		if q.word == "ohm" {
			return value.Errorf("ohms of what is not said").WithHint("as in: ohm A B 3.4, or: ohm heater 32; decimals take a point, commas part readings")
		}
		r.a = c.placeOf(q.word)
		if r.a == "" {
			return value.Errorf("the place is not said").WithHint("as in: %s", Find(q.word).Examples[0])
		}
	case 1:
		r.a = points[0].Text
	case 2:
		r.a, r.b = points[0].Text, points[1].Text
		if strings.EqualFold(r.a, r.b) {
			return points[1].Errorf("both probes stand on %s", r.a).WithHint("name two different points")
		}
		if name := twoWords(q, r.a, r.b); name != "" {
			r.a, r.b = name, ""
		}
	default:
		e := source.Errorf(points[2].Col, value.End, "a reading has one or two points and one value")
		return e.WithHint("%s", c.parted(q, words))
	}
	if at := c.machineAtHand(); r.b == "" && q.word != "ohm" && at != defaultMachine && kindOf(at) == winding.Compressor && c.machineNamed(r.a) == defaultMachine {
		r.a = at // the one of several compressors that is at hand
	} else if r.b == "" && q.word == "ohm" {
		r.a = c.gearAtHand(r.a)
	}
	if r.b == "" {
		r.a = motorName(r.a)
		if q.word != "mfd" { // which has a section for the fan
			r.a = c.itsFan(r.a)
		}
	}
	return nil
}

//go:noinline
func startsLikeNumber(s string) bool {
	s = strings.TrimLeft(s, "~>+-")
	return s != "" && (s[0] >= '0' && s[0] <= '9' || s[0] == '.')
}

// isUnit tells a word that is a unit of the same dimension as want.
func isUnit(word, want string) bool {
	if startsLikeNumber(word) {
		return false
	}
	if _, err := quantity.ParseUnit(word); err != nil {
		return false
	}
	q, err := quantity.New(1, want)
	if err != nil {
		return false
	}
	_, err = q.Convert(word)
	return err == nil
}
