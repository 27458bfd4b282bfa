package call

import (
	"math"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/calc/winding"
)

// Suggest lists the lines that are wanted next, the best first, each without
// the fact that only the technician knows: `ohm A C ` without its value, `saw
// outlet ` without what was seen.
func (c *Call) Suggest() []string {
	var out []string
	add := func(line string) {
		if line != "" && !among(out, line) {
			out = append(out, line)
		}
	}
	opened := c.last("fault") != "" || len(c.readings) > 0 || len(c.works) > 0
	if !opened {
		for _, f := range c.fieldsWanted() {
			add(f + " ")
		}
	}
	for _, p := range c.proofMissing() {
		add(neededLine(p))
	}
	for _, p := range c.pinsWanted() {
		add("ohm " + p + " ")
	}
	if len(c.repairs()) == 0 || c.persists() {
		if r := c.weigh(math.MaxInt); r.Next != nil {
			add(testLine(r.Next))
		}
	}
	for _, t := range c.testsNeeded() {
		add(testLine(&t))
	}
	missing := c.missing()
	for _, m := range missing {
		add(neededLine(m))
	}
	if opened {
		for _, f := range c.fieldsWanted() {
			add(f + " ")
		}
	}
	if len(missing) == 0 && len(c.entries) > 0 && !c.Closed() {
		add("close")
	}
	return out
}

// testsNeeded lists, for what the complaint wants in the record, the first
// test that can give it.
func (c *Call) testsNeeded() []cause.Test {
	var out []cause.Test
	facts := c.facts(math.MaxInt)
	if rep := c.repairs(); len(rep) > 0 {
		facts = append(c.facts(rep[0]), facts...)
	}
	for _, n := range cause.Missing(c.kindFound(), facts) {
		for _, t := range cause.Tests() {
			if intersects(t.Outcomes, n.Any) {
				out = append(out, t)
				break
			}
		}
	}
	return out
}

//go:noinline
func intersects(a, b []string) bool {
	for _, s := range a {
		if among(b, s) {
			return true
		}
	}
	return false
}

// fieldsWanted lists the texts that name the call and are not given yet: what
// follows the last one given comes first.
func (c *Call) fieldsWanted() []string {
	latest, at := -1, 0
	for i, f := range identityFields {
		for _, t := range c.fields {
			if t.key == f.word && t.entry > at && c.alive(t.entry) {
				latest, at = i, t.entry
			}
		}
	}
	var out []string
	for i := range identityFields {
		f := identityFields[(latest+1+i)%len(identityFields)]
		if f.word != "tech" && c.last(f.word) == "" {
			out = append(out, f.word)
		}
	}
	return out
}

// pinsWanted lists the pairs still to be read; after a first pair, of which
// the third pin has no name yet, each of its pins.
func (c *Call) pinsWanted() []string {
	m := c.machines[c.machineAtHand()]
	if m == nil {
		return nil
	}
	var out []string
	for _, p := range m.result.Wanted {
		out = append(out, p[0]+" "+p[1])
	}
	if len(out) == 0 && len(m.result.Pins) == 2 && m.result.State == winding.Incomplete {
		return m.result.Pins
	}
	return out
}

// testLine is the start of the line that records a test.
func testLine(t *cause.Test) string {
	if !strings.HasPrefix(t.How, "saw ") {
		return withoutValue(t.How)
	}
	var common string
	for i, code := range t.Outcomes {
		f, ok := cause.Lookup(code)
		switch {
		case !ok || len(f.Words) == 0:
			return "saw "
		case i == 0:
			common = f.Words[0]
		}
		for !strings.HasPrefix(f.Words[0], common) {
			common = common[:len(common)-1]
		}
	}
	return "saw " + common[:strings.LastIndexByte(common, ' ')+1]
}

// withoutValue is the start of an example, up to its first value.
func withoutValue(example string) string {
	words := strings.Fields(example)
	if len(words) == 0 || Find(words[0]) == nil {
		return ""
	}
	if qualityOf(words[0]) == nil {
		if len(Find(words[0]).Params) == 0 || Find(words[0]).Params[0].Optional {
			return words[0]
		}
		return words[0] + " "
	}
	n := 1
	for n < len(words) && !startsLikeNumber(words[n]) && !strings.HasPrefix(words[n], "~") && words[n] != "OL" && words[n] != "…" {
		n++
	}
	return strings.Join(words[:n], " ") + " "
}

// neededLine is the start of the line that gives what is missing: a need is
// such a start itself, other wants hold an example in parentheses.
func neededLine(what string) string {
	if i := strings.LastIndexByte(what, '('); i >= 0 && strings.HasSuffix(what, ")") {
		return withoutValue(what[i+1 : len(what)-1])
	}
	first, _, _ := strings.Cut(what, " ")
	if Find(first) == nil {
		return ""
	}
	if qualityOf(first) != nil {
		return what + " "
	}
	return withoutValue(what)
}

// FieldValues lists the words that the value of a `key value` pair can be,
// nil when it is a number or free text.
func (c *Call) FieldValues(command, key string) []string {
	if command != "plate" {
		return nil
	}
	if k := plateKeyOf(key); k != nil {
		return k.words
	}
	return nil
}

// Conditions lists what can stand behind the value of a reading.
func Conditions() []string { return conditionWords }

// SecondPoints lists what the second probe of a reading can stand on.
func (c *Call) SecondPoints(kind string) []string {
	if kind != "ohm" {
		return nil
	}
	return append(append([]string(nil), c.pins()...), caseName)
}

// IsValue reports whether a word can be the value of a kind of reading.
func IsValue(kind, word string) bool {
	q := qualityOf(kind)
	return q != nil && (valueLike(word, q.unit) || strings.HasPrefix(word, "("))
}

// TakesFunction reports whether a name of a sum is called with arguments.
func (c *Call) TakesFunction(name string) bool {
	if d, ok := c.defined(name); ok {
		return d.isFunc
	}
	_, ok := (&scope{c: c}).Func(name)
	return ok || qualityOf(name) != nil
}

// SumNames lists every name that a sum can use.
func (c *Call) SumNames() []string { return c.sumNames() }

// Given reports whether a text that names the call, such as client, is given.
func (c *Call) Given(field string) bool { return c.last(field) != "" }

// Model is the appliance's model, "" when it is not given.
func (c *Call) Model() string { return c.last("model") }
