package call

import (
	"cmp"
	"math"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/calc/pulldown"
	"ohmcall/notebook/record"
)

// result says in two words how the call stands.
func (c *Call) result() string {
	switch {
	case len(c.unsafe()) > 0:
		return "unsafe"
	case len(c.repairs()) == 0:
		return "no repair"
	case len(c.proofMissing()) == 0:
		return "proved"
	}
	return "not proved"
}

func (c *Call) drawOutcome(r *record.Record, found cause.Result) {
	add := func(label, text string) { r.Outcome = append(r.Outcome, record.Fact{Label: label, Text: text}) }
	complaint := cmp.Or(c.last("fault"), "not written down")
	if k, ok := cause.ComplaintBy(found.Complaint); ok {
		complaint += " (taken as: " + k.Name + ")"
	}
	add("Complaint", complaint)
	var causes []string
	for _, g := range groupsOf(&found) {
		causes = append(causes, g.name()+c.partsNamed(g[0])+", inferred from "+c.foundBy(g.rests()))
	}
	if len(causes) == 0 {
		open := len(found.Codes(cause.Open))
		causes = []string{"not found; " + itoa(open) + " possible causes are open"}
		if found.Complaint == "" {
			causes = []string{"no complaint was weighed"}
		}
	}
	add("Cause found", strings.Join(causes, "; "))
	var done []string
	for _, w := range c.works {
		if w.kind == "did" && c.alive(w.entry) {
			done = append(done, w.text)
		}
	}
	text := cmp.Or(strings.Join(done, "; "), "no repair written down")
	switch r.Header.Result {
	case "proved":
		text += "; proved: " + proofWords(r)
	case "not proved":
		text += "; not proved yet: " + wantingWords(len(c.proofMissing()))
	case "unsafe":
		text += "; left unsafe: " + strings.Join(c.unsafe(), "; ")
	}
	for _, g := range c.untreated() {
		text += "; no work is written down for: " + g.name()
	}
	if t := c.last("closing"); t != "" {
		text += "; " + t
	}
	add("Work and result", text)
}

func proofWords(r *record.Record) string {
	for _, k := range r.Curves {
		last := k.Points[len(k.Points)-1].Celsius
		switch k.Verdict {
		case string(pulldown.Proved):
			return "the " + k.Place + " came down to " + degrees(last, k.Unit) + ", and every other point is shown"
		case string(pulldown.OnCourse):
			return "the " + k.Place + " is at " + degrees(last, k.Unit) + " and on course to its target, and every other point is shown"
		}
	}
	return "every point is shown"
}

// degrees writes a temperature given in °C in the unit in which it is shown.
func degrees(celsius float64, unit string) string {
	if unit == "F" {
		return number(math.Round((celsius*1.8+32)*10)/10) + " °F"
	}
	return number(math.Round(celsius*10)/10) + " °C"
}
