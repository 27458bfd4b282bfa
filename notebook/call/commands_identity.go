package call

import (
	"fmt"
	"slices"
	"strings"

	"ohmcall/calc/caution"
	"ohmcall/calc/judge"
	"ohmcall/calc/repair"
	"ohmcall/notebook/said"
)

// set records a plain text under a key; the last one that still counts holds.
//
//go:noinline
func (c *Call) set(key, value string) {
	c.fields = append(c.fields, text{key, value, c.entry})
}

// last is the text that holds under a key, "" when there is none.
//
//go:noinline
func (c *Call) last(key string) string { return c.lastField(key).value }

// lastAt is the entry of that text, 0 when there is none.
func (c *Call) lastAt(key string) int { return c.lastField(key).entry }

func (c *Call) lastField(key string) text {
	for i := len(c.fields) - 1; i >= 0; i-- {
		if f := c.fields[i]; f.key == key && c.alive(f.entry) {
			c.spend(len(c.fields) - i)
			return f
		}
	}
	c.spend(len(c.fields))
	return text{}
}

type identityField struct{ word, label, help, example string }

// identityFields are the texts that name the call, in the order in which the
// record shows them.
var identityFields = []identityField{
	{"tech", "Technician", "who does the work", "tech Tilda Tester"},
	{"client", "Client", "whose appliance it is", "client Petra Placeholder"},
	{"site", "Site", "where it stands", "site 12 Sample Street, flat 3"},
	{"unit", "Unit", "what appliance it is", "unit refrigerator, bottom freezer"},
	{"model", "Model", "the appliance's model", "model INVENTED-300"},
	{"serial", "Serial", "the appliance's serial number", "serial DEMO-000123"},
	{"fault", "Complaint", "the complaint in the customer's words", `fault clicks and does not cool`},
}

// mostTechs is how many technicians of a call are named.
const mostTechs = 16

// technicians are those who worked on the call, each once, where there are
// several with the entry from which on.
func (c *Call) technicians(from bool) []string {
	var out []string
	var at []int
	c.spend(len(c.fields))
	for _, f := range c.fields {
		if f.key == "tech" && c.alive(f.entry) && !among(out, f.value) && len(out) < mostTechs {
			out, at = append(out, f.value), append(at, f.entry)
		}
	}
	for i := range out {
		if from && len(out) > 1 {
			out[i] += " from entry " + itoa(at[i])
		}
	}
	return out
}

// isName reports whether a command takes a name that the call has already.
func (c *Call) isName(word string) bool {
	return among([]string{"tech", "client", "site", "unit"}, word) && c.last(word) != ""
}

func identityCommands() []Command {
	var out []Command
	for _, f := range identityFields {
		f := f
		out = append(out, Command{
			Word: f.word, Group: Who, Params: []Param{{Name: "TEXT", Kind: Text}}, Help: f.help, Examples: []string{f.example},
			apply: func(c *Call, a *args) (*Reply, error) {
				t := a.text("TEXT")
				was := c.lastField(f.word)
				old := was.value
				c.set(f.word, t)
				r := say(f.label + ": " + t + ".")
				if old != "" && old != t {
					r.add(Plain, "It was: "+old+".")
				}
				if f.word == "unit" {
					c.otherUnit(r, was, t)
				}
				if c.appliance().HighVolts {
					c.warn(r, caution.HighVoltage)
				}
				if f.word == "fault" {
					c.alarmed(r, t)
					c.relapse(r, t)
					if said.ToldOut(t) {
						c.guards(r, t)
					}
					c.tellComplaint(r)
				}
				if f.word == "fault" || f.word == "unit" {
					return c.rejudgeAll(r), nil // what a part should read depends on what it is in
				}
				return r, nil
			},
		})
	}
	return append(out, Command{
		Word: "plate", Group: Who,
		Params:   []Param{{Name: "KEY VALUE, …", Kind: Fields, Words: plateWords}},
		Help:     "values from the plate or service sheet of the machine at hand",
		Doc:      plateDoc(),
		Examples: []string{"plate volts 115, hz 60, amps 1.2, lra 12, hp 1/6, gas R-600a, start cap", "plate mfd C1 12 5%", "plate mfd start 88-108", "plate ohms start 4.1 5%"},
		apply:    applyPlate,
	})
}

// otherUnit asks about a unit of another kind than the one that something was
// found in or done to: it may be another, or a correction.
func (c *Call) otherUnit(r *Reply, was text, now string) {
	if was.value == "" || !c.touched() && len(c.mended) == 0 {
		return
	}
	from, to := clip(was.value, headerItem), clip(now, headerItem)
	c.spend(1000 * len(from+to))
	if a, b := said.Kinds(from), said.Kinds(to); a == 0 || b == 0 || a&b != 0 {
		return
	}
	c.units = append(c.units, jump{was.entry, c.entry, "the unit was changed from " + from + atEntry(was.entry) + " to " + to + atEntry(c.entry) + " after findings or work; a call is of one unit"})
	r.add(Ask, fmt.Sprintf("A call is of one unit. Another one wants its own notebook: strike %d another unit, close, ohmcall NAME.md. A correction: strike %d wrong unit.", c.entry, was.entry)).flag("other-unit")
}

func plateDoc() string {
	var parts []string
	for _, k := range plateKeys {
		s := k.word + ": " + k.help
		if k.words != nil {
			s += " (" + strings.Join(k.words, ", ") + ")"
		}
		parts = append(parts, s)
	}
	return "Keys: " + strings.Join(parts, "; ") + "."
}

// tellComplaint says which of the common complaints the words are taken for, by
// which of them, and how that is changed.
func (c *Call) tellComplaint(r *Reply) {
	hits := c.appliance().Complaints
	if heard := c.appliance().Heard; len(hits) == 0 && slices.ContainsFunc(alarming, func(a alarm) bool { return among(heard, a.code) }) {
		r.add(Plain, "It is taken for a danger. What the appliance does or does not do besides can be said too: fault smell of gas, does not heat.")
		return
	}
	if len(hits) == 0 && c.appliance().Oil {
		r.add(Plain, "No causes of oil burners are held here; saw … and readings are kept, and what they prove.")
		return
	}
	if len(hits) == 0 {
		r.add(Plain, "It is none of the common complaints by its words: help complaints lists them; saw … tells what you find.")
		return
	}
	r.add(Plain, "Taken as: "+hits[0].Name+". causes lists what can be behind it, next names the first test.")
	text := `It is taken so by "` + hits[0].Phrase + `"`
	if len(hits) > 1 {
		var others []string
		for _, h := range hits[1:] {
			others = append(others, h.Name+` by "`+h.Phrase+`"`)
		}
		text += ", and could be: " + strings.Join(others, "; ")
	}
	r.add(Plain, text+". fault in other words changes it.")
	if of := c.appliance(); of.Elements && hits[0].Code == "no-heat" {
		e, seen := said.WorkingElement(of.Fault), "other burners work"
		switch e {
		case "bake", "broil":
			seen = e + " works"
		case "grill":
			seen = "broil works"
		}
		if e != "" && e != of.Element {
			r.add(Plain, "What is told to work rules nothing out, what you see does: saw "+seen+".")
		}
	}
}

func applyPlate(c *Call, a *args) (*Reply, error) {
	values, err := c.parsePlate(a.first().words)
	if err != nil {
		return nil, err
	}
	c.plates = append(c.plates, values...)
	var parts []string
	for _, v := range values {
		parts = append(parts, v.key+" "+v.text)
	}
	r := say("Plate of " + c.owner(values[0].of) + ": " + strings.Join(parts, ", ") + ".")
	for _, v := range values {
		if v.wide {
			taken := v.q.String()
			if v.parted() {
				taken += ", for the watts of a heater " + v.hi.String()
			}
			r.add(Plain, "Where one number is needed, the middle of "+v.text+" is taken: "+taken+".")
		}
		if v.key == "gas" && repair.Flammable(v.text) {
			c.warn(r, caution.Flammable)
		}
		if v.key == "type" && v.text == "inverter" {
			c.warn(r, caution.InverterLine)
		}
	}
	c.tellRows(values, r)
	c.shake(r, c.entry)
	return c.rejudgeAll(r), nil
}

// tellRows checks a sensor's table once rows were typed, so that a misprint is
// seen before a part is judged by it.
func (c *Call) tellRows(values []plate, r *Reply) {
	rows := c.sensorRows()
	if len(rows) < 2 || !slices.ContainsFunc(values, func(v plate) bool { return v.key == "row" || v.key == "r25" || v.key == "beta" }) {
		return
	}
	table, doubts, err := judge.NewTable(rows)
	doubts = append(doubts, judge.Against(table, c.plateNumber("", "r25", "ohm"), c.plateNumber("", "beta", ""))...)
	if err != nil {
		r.add(Warn, "Sensor table: "+err.Error()+"; strike what is wrong and type it again.").flag("table-misprint")
	}
	for _, d := range doubts {
		r.add(Warn, "Sensor table: "+d+".").flag("table-doubt")
	}
}

// owner is whose plate it is: that of an appliance without a compressor is not
// the compressor's, though nothing else was put at hand.
func (c *Call) owner(of string) string {
	if of == defaultMachine && c.appliance().Unsealed {
		return "the appliance"
	}
	return of
}
