package call

import (
	"errors"
	"slices"
	"strconv"
	"strings"

	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
	"ohmcall/notebook/said"
	"ohmcall/notebook/script"
)

// plateKey is one value that a nameplate or service sheet can give.
type plateKey struct {
	word  string
	also  string // other words for it, as plates print them, parted by spaces
	unit  string // "" for words
	words []string
	help  string
}

var plateKeys = []plateKey{
	{word: "model", help: "model of the machine at hand"},
	{word: "volts", also: "volt voltage", unit: "V", help: "rated volts"},
	{word: "hz", also: "frequency", unit: "Hz", help: "rated frequency"},
	{word: "amps", also: "amp rla fla", unit: "A", help: "rated running amps (RLA or FLA)"},
	{word: "lra", unit: "A", help: "locked-rotor amps"},
	{word: "hp", unit: "hp", help: "horsepower"},
	{word: "watts", also: "watt", unit: "W", help: "rated watts; those of one heater by its name: watts bake 2800"},
	{word: "gas", also: "refrigerant", help: "refrigerant, such as R-600a"},
	{word: "charge", unit: "g", help: "charge of refrigerant"},
	{word: "metering", words: []string{"capillary", "valve"}, help: "capillary tube or expansion valve"},
	{word: "start", words: []string{"cap", "none", "ptc", "relay"}, help: "start cap fitted by the maker, or none"},
	{word: "run", words: []string{"cap", "none"}, help: "run cap fitted by the maker, or none"},
	{word: "type", words: []string{"split-phase", "inverter", "three-phase", "reversing", "shaded-pole", "universal"}, help: "kind of machine"},
	{word: "phase", also: "phases ph", words: []string{"1", "3"}, help: "1 or 3; 3 is type three-phase"},
	{word: "windings", words: []string{"isolated", "joined"}, help: "what the wiring diagram shows of groups that read open to each other"},
	{word: "leads", unit: "", help: "number of leads"},
	{word: "mfd", also: "cap capacitor uf", unit: "uF", help: "capacitor's marking: mfd C1 35 6% 440V, mfd start 88-108"},
	{word: "ohms", also: "ohm", unit: "ohm", help: "ohms from plate or service sheet: ohms start 4.1 5%"},
	{word: "r25", unit: "ohm", help: "sensor's ohms at 25 °C"},
	{word: "beta", unit: "", help: "sensor's beta in kelvin"},
	{word: "r0", unit: "ohm", help: "platinum sensor's ohms at 0 °C"},
	{word: "class", words: []string{"A", "B"}, help: "platinum sensor's tolerance class"},
	{word: "row", help: "a row of a sensor's table: row 0C 32.65k"},
	{word: "igniter", unit: "A", help: "amps that the gas valve is marked with for its igniter: igniter 3.2-3.6"},
	{word: "bleeder", unit: "ohm", help: "resistor across the capacitor"},
}

func plateWords(*Call) []string {
	out := make([]string, len(plateKeys))
	for i, k := range plateKeys {
		out[i] = k.word
	}
	return out
}

// plate is one value of a plate.
type plate struct {
	entry  int
	of     string // machine at hand
	key    string
	name   string // which capacitor or winding, may be empty
	text   string // as typed
	q      quantity.Q
	hi     quantity.Q // upper end of a range such as 88-108 or 208/240
	isQ    bool
	ranged bool
	wide   bool    // volts given as a range; q is its middle
	tol    float64 // percent, 0 when not given
	rated  float64 // volts on a capacitor beside its mfd, 0 when not given
}

func plateKeyOf(word string) *plateKey {
	for i := range plateKeys {
		if k := &plateKeys[i]; k.word == word || strings.Contains(" "+k.also+" ", " "+strings.ToLower(word)+" ") {
			return k
		}
	}
	return nil
}

// parsePlate reads `key value` parts. One that cannot be read refuses all: a
// line of which a part was taken could not be typed again as it stood.
func (c *Call) parsePlate(words []script.Word) ([]plate, error) {
	parts, err := split(words)
	if err != nil {
		return nil, err
	}
	var out []plate
	for i, p := range parts {
		if i < len(parts)-1 && plateKeyOf(p[0].Text) == nil && startsLikeNumber(p[0].Text) && c.plateSlip(pointWords(p)) == "" {
			continue // as it stands on a plate: what refuses the line comes behind it
		}
		v, err := c.platePart(p)
		if err == nil {
			out = append(out, v)
			continue
		}
		if len(p) > 1 && among([]string{"run", "start"}, p[0].Text) && startsLikeNumber(p[1].Text) {
			return nil, p[1].Errorf("%s takes no number", p[0].Text).WithHint("what is marked on its capacitor: plate %s; what it draws is amps", markedCan(parts, i))
		}
		var e *source.Error
		if len(parts) > 1 && errors.As(err, &e) {
			whole := "none of the line is taken yet: Up brings it back to be mended"
			if e.Hint != "" {
				whole = e.Hint + "; " + whole
			}
			return nil, e.WithHint("%s", whole)
		}
		return nil, err
	}
	if !c.putAtHand() && c.appliance().Unsealed && slices.ContainsFunc(out, func(p plate) bool { return among(ofMotors, p.key) }) {
		for i := range out {
			if out[i].of == defaultMachine {
				out[i].of = itsMotor
			}
		}
	}
	return out, nil
}

// ofMotors are the values that only the plate of a motor gives: with one of them
// a plate is the motor's, though none was put at hand yet.
var ofMotors = []string{"lra", "hp", "leads", "windings"}

// markedCan is a line of a plate with one of its parts as the marking of a capacitor.
func markedCan(parts [][]script.Word, of int) string {
	out := make([]string, len(parts))
	for i, p := range parts {
		out[i] = pointWords(p)
	}
	lo, hi, two := strings.Cut(parts[of][1].Text, "/")
	switch key := parts[of][0].Text; {
	case two && key == "run":
		out[of] = "mfd herm " + lo + ", mfd fan " + hi
	default:
		out[of] = "mfd " + out[of]
	}
	return strings.Join(out, ", ")
}

// platePart reads one `key value`.
func (c *Call) platePart(p []script.Word) (plate, error) {
	k := plateKeyOf(p[0].Text)
	if k == nil && startsLikeNumber(p[0].Text) {
		// Where the rest is understood, the word that is not is the one to mend.
		if bad := c.plateSlip(pointWords(p)); bad != "" && bad != p[0].Text {
			for _, w := range p {
				if w.Text == bad {
					hint := Find("plate").Examples[0][6:]
					if rest := c.plateSpelt(strings.Replace(pointWords(p), " "+bad, "", 1)); !startsLikeNumber(rest) {
						hint = rest
					}
					return plate{}, w.Errorf("%q is no value of a plate that is known by itself", bad).WithHint("its key stands before it, or it is left out, as in: plate %s", hint)
				}
			}
		}
		return plate{}, p[0].Errorf("no key stands before %s", p[0].Text).WithHint("as in: %s", Find("plate").Examples[0])
	}
	if k == nil && isHeater(p[0].Text) && startsLikeNumber(p[len(p)-1].Text) {
		return plate{}, p[0].Errorf("%s has no key of its own on a plate", p[0].Text).WithHint("its watts: watts %s %s", p[0].Text, p[len(p)-1].Text)
	}
	if k == nil {
		return plate{}, withNearest(p[0].Errorf("%q is not on a plate that is known here", p[0].Text), p[0].Text, plateWords(nil))
	}
	if len(p) == 1 {
		return plate{}, p[0].Errorf("%s has no value", k.word).WithHint("%s", k.hint())
	}
	return c.plateValue(k, p[1:])
}

// isMass reports whether a quantity is one of mass.
func isMass(q quantity.Q) bool {
	_, err := q.In("g")
	return err == nil
}

// hint says what a key takes.
func (k *plateKey) hint() string {
	if k.unit == "" || strings.Contains(k.help, k.word+" ") {
		return k.help
	}
	return k.help + ": a number, in " + k.unit + " unless a unit is written"
}

func (c *Call) plateValue(k *plateKey, words []script.Word) (plate, error) {
	v := plate{entry: c.entry, of: c.plateAtHand(k.word), key: k.word}
	texts := make([]string, len(words))
	for i, w := range words {
		texts[i] = w.Text
	}
	v.text = strings.Join(texts, " ")
	last := words[len(words)-1]
	if k.words != nil {
		if len(words) > 1 && words[0].Text == "cap" && startsLikeNumber(words[1].Text) {
			lo, hi, two := twoValues(k, words[1].Text)
			line := k.word + " " + lo
			if two {
				line = "herm " + lo + ", mfd fan " + hi
			}
			return v, words[1].Errorf("%s takes no value", k.word).WithHint("what is marked on the can has its own key: plate %s cap, mfd %s", k.word, line)
		}
		if kind := strings.ReplaceAll(strings.ToLower(v.text), "-", " "); k.word == "type" && kind == "heat pump" {
			unit := c.last("unit")
			if !c.appliance().HeatPump {
				unit = strings.TrimSpace(unit + " heat pump")
			}
			return v, words[0].Errorf("type is that of the motor or compressor").WithHint("what the appliance is has its own line: unit %s", unit)
		}
		if len(words) > 1 || !among(k.words, last.Text) {
			return v, withNearest(words[0].Errorf("%s takes one of %s", k.word, strings.Join(k.words, ", ")), words[0].Text, k.words)
		}
		if k.word == "phase" && v.text == "3" {
			v.key, v.text = "type", said.ThreePhase
		}
		return v, nil
	}
	if k.word == "row" {
		return v, v.parseRow(words, c.tempUnit())
	}
	if k.word == "gas" {
		for i, w := range words[1:] {
			if m, err := quantity.Parse(w.Text, ""); err == nil && isMass(m) {
				return v, w.Errorf("a charge has its own key").WithHint("gas %s, charge %s", strings.Join(texts[:i+1], " "), strings.Join(texts[i+1:], ""))
			}
		}
	}
	numeric := k.unit != "" || k.word == "leads" || k.word == "beta"
	if !numeric {
		return v, nil
	}
	if k.word == "mfd" && len(words) > 1 {
		if volts, ok := said.RatedVolts(last.Text); ok {
			v.rated = volts
			words = words[:len(words)-1]
			last = words[len(words)-1]
		}
	}
	if pct, ok := strings.CutSuffix(last.Text, "%"); ok && len(words) > 1 {
		t, err := strconv.ParseFloat(pct, 64)
		if err != nil || t <= 0 || t > 100 {
			return v, last.Errorf("%q is no tolerance", last.Text).WithHint("as in: %s", k.help)
		}
		v.tol, words = t, words[:len(words)-1]
	}
	if len(words) > 1 && (k.word == "mfd" || k.word == "ohms" || k.word == "watts") && !startsLikeNumber(words[0].Text) {
		v.name, words = words[0].Text, words[1:]
	}
	if len(words) == 0 {
		return v, last.Errorf("%s has no value", k.word).WithHint("%s", k.help)
	}
	value := words[0]
	if len(words) == 2 && isUnit(words[1].Text, orUnit(k.unit)) {
		value = script.Word{Text: value.Text + " " + words[1].Text, Col: value.Col, End: words[1].End}
	} else if len(words) > 1 {
		return v, words[1].Errorf("more than %s takes", k.word).WithHint("%s", k.help)
	}
	lo, hi, two := twoValues(k, value.Text)
	var err error
	if v.q, err = k.parse(lo); err == nil && two {
		v.hi, err = k.parse(hi)
	}
	if err != nil {
		return v, value.Errorf("%q is no value for %s", value.Text, k.word).WithHint("%s", k.hint())
	}
	if two {
		if err := v.settleTwo(k, value, lo, hi); err != nil {
			return v, err
		}
	}
	if v.q.SI() < 0 {
		return v, value.Errorf("%s below zero", k.word)
	}
	v.isQ = true
	return v, nil
}

func (k *plateKey) parse(text string) (quantity.Q, error) {
	q, err := quantity.Parse(text, k.unit)
	if err != nil {
		return q, err
	}
	return q.Assume(k.unit)
}

// twoValues parts `88-108` and `115/230`. Only horsepower is written as a
// fraction.
func twoValues(k *plateKey, text string) (lo, hi string, two bool) {
	for _, sign := range []string{"-", "–", "/", "+"} {
		if k.word == "hp" {
			break
		}
		if lo, hi, two = strings.Cut(text, sign); two && lo != "" && hi != "" {
			return lo, hi, true
		}
	}
	return text, "", false
}

// printedVolts are the volts that are printed on run and start capacitors (common
// practice).
var printedVolts = []string{"110", "125", "165", "220", "250", "330", "370", "400", "440", "450"}

// narrow is how far the ends of one range of supply volts lie apart at most:
// 208/230 and 220-240 are one connection, 115/230 are two (common practice).
const narrow = 1.2

// settleTwo takes two values for the range that they mean, or refuses them
// with the line to type.
func (v *plate) settleTwo(k *plateKey, value script.Word, lo, hi string) error {
	slash := strings.ContainsAny(value.Text, "/+")
	lowest, highest := v.q.SI(), v.hi.SI()
	if highest < lowest {
		lowest, highest = highest, lowest
	}
	switch {
	case k.word == "mfd" && slash && among(printedVolts, strings.TrimRight(strings.ToUpper(hi), "VAC")):
		return value.Errorf("%s are its microfarads and its volts", value.Text).WithHint("volts take their unit: plate mfd %s %sV", lo, strings.TrimRight(strings.ToUpper(hi), "VAC"))
	case k.word == "mfd" && !slash, k.word == "igniter" && !slash && v.q.SI() < v.hi.SI():
		v.ranged = true
		return nil
	case k.word == "mfd":
		tol := ""
		if v.tol > 0 {
			tol = " " + number(v.tol) + "%"
		}
		return value.Errorf("%s are two sections of one can", value.Text).
			WithHint("name each: plate mfd herm %s%s, mfd fan %s%s", lo, tol, hi, tol)
	case k.word == "volts" && lowest > 0 && highest <= narrow*lowest:
		mid, err := quantity.New((lowest+highest)/2, k.unit)
		if v.hi.SI() < highest {
			v.hi = v.q
		}
		v.q, v.wide = mid, true
		return err
	case k.word == "volts":
		return value.Errorf("%s are two voltages", value.Text).
			WithHint("type the one that it is connected for here: plate volts %s, or: plate volts %s", lo, hi)
	case k.word == "hz":
		return value.Errorf("%s are two frequencies", value.Text).
			WithHint("type the one of the supply here: plate hz %s, or: plate hz %s", lo, hi)
	}
	return value.Errorf("%s takes one value", k.word).
		WithHint("of two on the plate, the one for the volts that it is connected for: plate %s %s", k.word, lo)
}

// parseRow reads a temperature and the sensor's ohms at it.
func (v *plate) parseRow(words []script.Word, unit string) error {
	bad := words[0].Errorf("a row is a temperature and ohms").WithHint("as in: plate row 0C 32.65k, row 25C 10k")
	if len(words) != 2 {
		return bad
	}
	t, err := quantity.Parse(words[0].Text, unit)
	if err == nil {
		t, err = t.Assume(unit)
	}
	if err != nil {
		return bad
	}
	r, err := quantity.Parse(words[1].Text, "ohm")
	if err == nil {
		r, err = r.Assume("ohm")
	}
	if err != nil || r.SI() <= 0 {
		return bad
	}
	v.q, v.hi = t, r
	return nil
}

func orUnit(u string) string {
	if u == "" {
		return "ohm"
	}
	return u
}

// plateAt finds the last value of a key for a machine; name "" takes one
// without a name, other names match exactly or, failing that, the one
// without a name.
func (c *Call) plateAt(of, key, name string) (plate, bool) {
	var unnamed plate
	found := false
	c.spend(2 * len(c.plates))
	for i := len(c.plates) - 1; i >= 0; i-- {
		p := c.plates[i]
		if p.key != key || p.of != of && of != "" || !c.alive(p.entry) {
			continue
		}
		if sameName(p.name, name) {
			return p, true
		}
		if p.name == "" && !found {
			unnamed, found = p, true
		}
	}
	return unnamed, found
}

// plateHere finds a value of the machine at hand, else of the appliance around
// it.
func (c *Call) plateHere(key, name string) (plate, bool) {
	p, ok := c.plateAt(c.machineAtHand(), key, name)
	if !ok && c.appliance().Unsealed {
		p, ok = c.plateAt(defaultMachine, key, name)
	}
	return p, ok
}

// sameName takes run and run-cap for one name.
func sameName(a, b string) bool {
	a, b = strings.ToLower(a), strings.ToLower(b)
	return a == b || a != "" && b != "" && strings.TrimSuffix(a, "-cap") == strings.TrimSuffix(b, "-cap")
}

// plateNumber is a plate value in a unit, 0 when there is none.
func (c *Call) plateNumber(of, key, unit string) float64 {
	p, ok := c.plateAt(of, key, "")
	if !ok || !p.isQ {
		return 0
	}
	x, err := p.q.In(unit)
	if err != nil {
		return 0
	}
	return x
}

// plateText is a plate value in words, "" when there is none.
//
//go:noinline
func (c *Call) plateText(of, key string) string {
	p, ok := c.plateAt(of, key, "")
	if !ok {
		return ""
	}
	return p.text
}

// mainMachine is the machine that the call is about: the compressor when it
// was spoken of, else the first machine named.
func (c *Call) mainMachine() string {
	first := ""
	c.spend(2 * len(c.plates))
	for _, r := range c.readings {
		c.spend(2)
		if r.of == defaultMachine && c.alive(r.entry) {
			return defaultMachine
		}
		if first == "" && r.of != "" && c.alive(r.entry) {
			first = r.of
		}
	}
	for _, p := range c.plates {
		if first != "" && among([]string{said.ThreePhase, said.MotorDead}, c.complaint()) {
			break
		}
		if p.of == defaultMachine && c.complaint() != said.NoDrain && !c.appliance().Unsealed && c.alive(p.entry) {
			return defaultMachine
		}
		if first == "" && p.of != defaultMachine && c.alive(p.entry) {
			first = p.of
		}
	}
	if first != "" {
		return first
	}
	if at := c.machineAtHand(); !c.isCompressor(at) {
		return at
	}
	return c.firstCompressor()
}

// platedElse is the one machine whose plate gives amps, when it is another than
// one; "" when there is none or more.
func (c *Call) platedElse(of string) string {
	c.spend(2 * len(c.plates))
	at := ""
	for _, p := range c.plates {
		if p.key != "amps" || !c.alive(p.entry) {
			continue
		}
		if at != "" && at != p.of {
			return ""
		}
		at = p.of
	}
	if at == of {
		return ""
	}
	return at
}
