package call

import (
	"strings"

	"ohmcall/calc/judge"
	"ohmcall/calc/measure"
	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
)

// meter is a declared accuracy.
type meter struct {
	entry int
	word  string // quality
	measure.Meter
	fixed float64 // kelvin, for temperatures
}

// meterFor is the accuracy that counts for a quality: the last declared, or
// what is assumed when none was.
func (c *Call) meterFor(word string) meter {
	for i := len(c.meters) - 1; i >= 0; i-- {
		if m := c.meters[i]; m.word == word && c.alive(m.entry) {
			return m
		}
	}
	return undeclared(word)
}

// undeclared is what is assumed of a meter (common practice).
func undeclared(word string) meter {
	return meter{word: word, Meter: measure.Default, fixed: thermometer}
}

// probes is the resistance of the probe leads in ohms, 0 when not declared.
func (c *Call) probes() float64 { return ohmsOf(c.last("probes")) }

// ohmsOf is a resistance as it was typed, 0 for none.
func ohmsOf(text string) float64 {
	if text == "" {
		return 0
	}
	q, err := quantity.Parse(text, "ohm")
	if err != nil {
		return 0
	}
	x, _ := q.In("ohm")
	return x
}

// tempUnit is the unit of a bare temperature.
//
//go:noinline
func (c *Call) tempUnit() string {
	if c.last("units") == "F" {
		return "degF"
	}
	return "degC"
}

func meterCommands() []Command {
	return []Command{
		{
			Word: "meter", Group: Meter,
			Params:   []Param{{Name: "KIND", Kind: Choice, Words: qualityWords}, {Name: "ACCURACY", Kind: Free}},
			Help:     "the meter's accuracy: percent of reading and counts of the last digit",
			Doc:      "It holds for all readings of that kind in this call, earlier ones too. When none is declared, 1 % and 3 counts are assumed, and 1 K for temperatures (common practice).",
			Examples: []string{"meter ohm 0.9% 2", "meter temp 0.5C"},
			apply:    applyMeter,
		},
		{
			Word: "probes", Group: Meter,
			Params:   []Param{{Name: "OHMS", Kind: Number}},
			Help:     "the probe leads' own resistance, taken off every ohm reading",
			Doc:      "Hold the probes together and read: that is the value. It holds for all ohm readings in this call, earlier ones too.",
			Examples: []string{"probes 0.2"},
			apply: func(c *Call, a *args) (*Reply, error) {
				v := a.get("OHMS")
				q, err := quantity.Parse(v.text, "ohm")
				if err == nil {
					q, err = q.Assume("ohm")
				}
				if err == nil {
					_, err = q.In("ohm")
				}
				if err != nil || q.SI() < 0 || q.SI() > 1 {
					return nil, v.errorf("%q is no resistance of probe leads", v.text).WithHint("0 to 1 ohm, as in: probes 0.2")
				}
				c.set("probes", v.text)
				r := say("Probe leads " + q.String() + ": taken off every ohm reading.")
				return c.accurate(r), nil
			},
		},
		{
			Word: "units", Group: Meter,
			Params:   []Param{{Name: "C|F", Kind: Choice, Words: func(*Call) []string { return []string{"C", "F"} }}},
			Help:     "the unit of a temperature typed without one, and of one that is computed",
			Doc:      "A reading taken down before it stays as it was. Without it, °C is taken, and a formula answers in the unit of its arguments.",
			Examples: []string{"units F"},
			apply: func(c *Call, a *args) (*Reply, error) {
				c.set("units", a.text("C|F"))
				return say("Temperatures without a unit are now °" + a.text("C|F") + "."), nil
			},
		},
		{
			Word: "limit", Group: Meter,
			Params:   []Param{{Name: "RULE|OHMS", Kind: Name, Words: limitWords}},
			Help:     "the house rule for insulation to the case, or the edition for the supply",
			Doc:      limitDoc(),
			Examples: []string{"limit 1M+kV", "limit 10M", "limit c84-2006"},
			apply:    applyLimit,
		},
	}
}

// applyLimit takes a published rule, an edition, or the house's own ohms.
func applyLimit(c *Call, a *args) (*Reply, error) {
	p := a.get("RULE|OHMS")
	if _, ok := judge.InsulationRuleFor(p.text); ok {
		c.set("limit", p.text)
		return c.rejudgeAll(say("Insulation is judged by the rule " + p.text + ".")), nil
	}
	if among(limitWords(c), p.text) {
		c.set("edition", p.text)
		return c.rejudgeAll(say("The supply is judged by " + p.text + ".")), nil
	}
	if x, ok := houseOhms(p.text); ok {
		c.set("limit", p.text)
		return c.rejudgeAll(say("Insulation is judged by the house limit, " + number(x/1e6) + " MΩ.")), nil
	}
	return nil, withNearest(p.errorf("%q is neither a rule nor the house's own ohms", p.text), p.text, limitWords(c))
}

// leastHouse is the least that a house may choose as its limit: the laxest of
// the published ones at 115 V, rounded down (bulletin AE4-1294 (2010)).
const leastHouse = 0.1e6

// houseOhms reads a house limit, such as 10M; false when it is none.
func houseOhms(text string) (float64, bool) {
	q, err := quantity.Parse(text, "ohm")
	if err == nil {
		q, err = q.Assume("ohm")
	}
	if err != nil {
		return 0, false
	}
	x, err := q.In("ohm")
	return x, err == nil && x >= leastHouse && x <= 1e12
}

// insulationRule is what the insulation is judged by: the code of a published
// rule, or the house's own ohms.
func (c *Call) insulationRule() (code string, house float64) {
	code = c.last("limit")
	if _, ok := judge.InsulationRuleFor(code); !ok {
		if x, ok := houseOhms(code); ok {
			return "", x
		}
	}
	return code, 0
}

func applyMeter(c *Call, a *args) (*Reply, error) {
	word := a.text("KIND")
	acc := a.get("ACCURACY")
	m := meter{entry: c.entry, word: word}
	if word == "temp" {
		q, err := quantity.Parse(strings.TrimSuffix(strings.TrimSuffix(acc.text, "C"), "K"), "K")
		if err == nil {
			q, err = q.Assume("K")
		}
		x, err2 := q.In("K")
		if err != nil || err2 != nil || x <= 0 || x > 20 {
			return nil, acc.errorf("%q is no accuracy of a thermometer", acc.text).WithHint("in kelvin, as in: meter temp 0.5C")
		}
		m.fixed = x
		c.meters = append(c.meters, m)
		return c.accurate(say("Thermometer taken as ±" + number(x) + " K.")), nil
	}
	bad := acc.errorf("%q is no accuracy of a meter", acc.text).
		WithHint("percent of reading and counts of the last digit, as in: meter %s 0.9%% 2", word)
	if len(acc.words) > 2 {
		return nil, bad
	}
	pct, ok := strings.CutSuffix(acc.words[0].Text, "%")
	x, err := parsePositive(pct)
	if !ok || err != nil || x > 20 {
		return nil, bad
	}
	m.Percent = x
	if len(acc.words) == 2 {
		counts := strings.TrimPrefix(acc.words[1].Text, "+")
		if m.Counts, err = parsePositive(counts); err != nil || m.Counts > 1000 {
			return nil, bad
		}
	}
	c.meters = append(c.meters, m)
	return c.accurate(say("Meter for " + word + ": " + number(m.Percent) + " % of reading and " + number(m.Counts) + " counts.")), nil
}

// accurate makes anew what rests on what was declared of meter or probes.
func (c *Call) accurate(r *Reply) *Reply {
	c.shake(r, c.entry)
	return c.reread(r)
}

func withNearest(e *source.Error, word string, list []string) *source.Error {
	if n := source.Nearest(word, list); n != "" {
		return e.WithHint("perhaps %s", n)
	}
	if len(list) == 0 {
		return e
	}
	return e.WithHint("one of: %s", strings.Join(list, ", "))
}

// limitWords are the codes of the published rules that may be chosen.
func limitWords(*Call) []string {
	var out []string
	for _, r := range judge.InsulationRules() {
		out = append(out, r.Code)
	}
	for _, e := range judge.SupplyEditions() {
		out = append(out, e.Code)
	}
	return out
}

// limitDoc lists the rules with their names and sources.
func limitDoc() string {
	parts := []string{"Published limits disagree; a verdict names the rule applied and what others would say. Insulation"}
	for _, r := range judge.InsulationRules() {
		parts = append(parts, r.Code+": "+r.Name+" ("+r.Source+")")
	}
	text := strings.Join(parts[:1], "") + ": " + strings.Join(parts[1:], "; ")
	var supply []string
	for _, e := range judge.SupplyEditions() {
		supply = append(supply, e.Code+": "+e.Name+" ("+e.Source+")")
	}
	return text + ". Supply: " + strings.Join(supply, "; ") + "."
}
