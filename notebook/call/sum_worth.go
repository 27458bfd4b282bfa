package call

import (
	"slices"
	"strings"

	"ohmcall/calc/repair"
	"ohmcall/notebook/record"
	"ohmcall/notebook/said"
)

// worth is a repair-or-replace sum as it stands in the record.
type worth struct {
	entry int
	text  string
}

// worthText says what a sum comes to, with what entered it.
func (c *Call) worthText(k *repair.Comparison) string {
	from := [4]string{}
	for _, s := range k.Assumptions {
		i := 2
		switch {
		case c.wasGiven(s.Name):
			i = 0
		case s.From == repair.Alike:
			i = 3
		case !strings.HasPrefix(s.From, "assumed"):
			i = 1
		}
		from[i] += ", " + strings.ReplaceAll(s.Name, "-", " ") + worthValue(s)
	}
	inputs := ""
	for i, lead := range []string{"given ", "counted ", "assumed, by common practice, ", "taken as the other's "} {
		if from[i] != "" {
			inputs += "; " + lead + from[i][2:]
		}
	}
	if k.Uncounted {
		inputs += "; energy " + energyAlike
	}
	return k.Text + " (" + record.Money(k.Repair) + " against " + record.Money(k.Replace) + "), an inference from these: " + inputs[2:]
}

// worthValue is one input's number and unit, to stand behind its name.
func worthValue(s repair.Assumption) string {
	twice := ""
	if s.Name == "years" {
		twice = " years"
	}
	return strings.TrimSuffix(" "+number(s.Value)+spokenUnit(s.Unit), twice)
}

// wasGiven reports whether a value of the sum was typed.
func (c *Call) wasGiven(name string) bool {
	return slices.ContainsFunc(c.assumed, func(s assumption) bool { return s.name == name && c.alive(s.entry) })
}

// drawWorth puts the last repair-or-replace sum beside what the client decided.
func (c *Call) drawWorth(add func(label, text string)) {
	for i := len(c.worths) - 1; i >= 0; i-- {
		w := c.worths[i]
		if !c.alive(w.entry) {
			continue
		}
		text := w.text + atEntry(w.entry)
		if d, n := c.decided(); n > 0 {
			text += ". The client's decision: " + d + atEntry(n)
		} else {
			text += ". The client's decision is not written down"
		}
		add("Repair or replace", text)
		return
	}
}

// decided is the last text of the client's decision, with its entry; 0 when
// there is none.
func (c *Call) decided() (string, int) {
	text, at := "", 0
	for _, w := range c.works {
		c.spend(20 * min(len(w.text), said.LongClause))
		if w.kind != "saw" && w.kind != "safe" && c.alive(w.entry) && said.Decides(w.text) {
			text, at = w.text, w.entry
		}
	}
	for _, f := range c.fields {
		c.spend(1)
		if f.key == "closing" && f.entry > at && said.Decides(f.value) {
			text, at = f.value, f.entry
		}
	}
	return text, at
}
