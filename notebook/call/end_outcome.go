package call

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/notebook/record"
	"ohmcall/notebook/said"
)

// result says in two words how the call stands.
func (c *Call) result() string {
	e := c.stopped()
	switch {
	case len(c.unsafe()) > 0:
		return record.Unsafe
	case e != nil:
		return e.Result
	case len(c.repairs()) > 0 && len(c.proofMissing()) == 0 && len(c.untreated()) == 0:
		return record.Proved
	case len(c.repairs()) > 0:
		return record.NotProved
	case c.Closed():
		return record.NoRepair
	}
	return record.Unfinished
}

func (c *Call) drawOutcome(r *record.Record, found cause.Result) {
	add := func(label, text string) { r.Outcome = append(r.Outcome, record.Fact{Label: label, Text: text}) }
	complaint := cmp.Or(c.last("fault"), "not written down")
	if k, ok := cause.ComplaintBy(found.Complaint); ok {
		complaint += " (taken as: " + k.Name + ")"
	}
	add("Complaint", complaint)
	told := func(list []group) (out []string) {
		for _, g := range list {
			out = append(out, g.name()+c.partsNamed(g[0])+", inferred from "+c.foundBy(g.rests()))
		}
		return out
	}
	shown, follow := causesOf(&found)
	causes := told(shown)
	if len(causes) == 0 {
		open := len(found.Codes(cause.Open))
		causes = []string{"not found; " + itoa(open) + " possible causes are open"}
		if found.Complaint == "" {
			causes = []string{"no complaint was weighed"}
		} else if by := c.byItsWork(&found); by != "" {
			causes = []string{"not shown before the repair; by its words the work is for: " + by}
		} else if len(follow) > 0 {
			causes = []string{"not found yet; " + strings.Join(told(follow), "; ") + ", follows from another cause, which is still to be found"}
		}
	}
	add("Cause found", strings.Join(causes, "; "))
	var done, fitted []string
	for _, w := range c.works {
		if w.kind == "did" && c.alive(w.entry) {
			done = append(done, quoted(w.text))
		}
	}
	for _, p := range c.parts {
		if len(done) == 0 && len(c.repairs()) > 0 && c.alive(p.entry) {
			fitted = append(fitted, p.name)
		}
	}
	if len(fitted) > 0 {
		done = []string{"parts used: " + strings.Join(fitted, ", ")}
	}
	text := cmp.Or(strings.Join(done, "; "), "no repair written down")
	e := c.stopped()
	closing := c.closing()
	switch r.Header.Result {
	case record.Proved:
		text += "; proved: " + c.proofWords(r)
	case record.NotProved:
		text += "; not proved yet"
		if n := len(c.proofMissing()); n > 0 {
			text += ": " + wantingWords(n)
		}
	case record.Unsafe:
		list := c.unsafe()
		text += "; left unsafe: " + list[0]
		if n := len(list) - 1; n > 0 {
			text += "; and " + itoa(n) + " more, see what needs attention"
		}
	case record.Unfinished:
		if e == nil {
			text += "; unfinished: the call was " + r.StillOpen()
		}
	}
	if e = c.fuller(e); e != nil {
		text += "; " + e.Result
		if !among(done, quoted(e.text)) {
			text += ": " + quoted(e.text)
		}
		text += atEntry(e.entry)
		if e.text == closing {
			closing = ""
		}
	}
	for _, g := range c.untreated() {
		text += "; no work is written down for: " + g.name()
	}
	if closing != "" {
		text += "; " + quoted(closing)
	}
	add("Work and result", text)
	if r.Header.Result == record.Proved {
		var since []string
		for _, w := range c.saidSince() {
			if w.kind == "did" {
				continue // told above
			}
			since = append(since, quoted(w.text)+atEntry(w.entry))
		}
		if len(since) > 0 {
			add("Said since", strings.Join(since, "; ")+"; taken as nothing against the proof")
		}
	}
	if as, n := c.leftAs(); n > 0 {
		add("Unit left", as+atEntry(n))
	}
	c.drawWorth(add)
}

// saidSince is what was noted or seen since the repair that is no listed finding, or
// done and mended nothing: the lists of words behind it end somewhere, and whoever reads the record may know better.
func (c *Call) saidSince() []work {
	var out []work
	since := c.since()
	for i := len(c.works) - 1; i >= 0 && c.works[i].entry > since && len(out) < mostSaid; i-- {
		c.spend(20)
		w := c.works[i]
		if c.alive(w.entry) && (w.kind == "note" || w.kind == "did" && said.Undone(w.text) || w.kind == "saw" && !c.listed(w.entry)) {
			out = append(out, w)
		}
	}
	slices.Reverse(out)
	return out
}

// mostSaid is how much of that is told, the last.
const mostSaid = 12

// listed reports whether an entry holds a finding of the vocabulary.
func (c *Call) listed(entry int) bool {
	for i := len(c.findings) - 1; i >= 0 && c.findings[i].entry >= entry; i-- {
		c.spend(1)
		if f := &c.findings[i]; f.entry == entry && f.code != "" {
			return true
		}
	}
	return false
}

// byItsWork names what was mended in a call whose cause was not shown: the one open
// cause, or two, that the words of the work name; "" when they name none or more.
func (c *Call) byItsWork(found *cause.Result) string {
	var names []string
	for i := range found.Standings {
		if s := &found.Standings[i]; s.State == cause.Open && c.treats(group{s}) {
			names = append(names, s.Cause.Name)
		}
	}
	if len(names) > 2 {
		return ""
	}
	return strings.Join(names, ", or ")
}

// quoted marks a technician's own words among the program's.
//
//go:noinline
func quoted(s string) string { return "“" + s + "”" }

// closing is what was said when the call was closed, "" of one that was opened
// again.
func (c *Call) closing() string {
	if !c.Closed() {
		return ""
	}
	return c.last("closing")
}

// degrees writes a temperature given in °C in the unit in which it is shown.
func degrees(celsius float64, unit string) string {
	if unit == "F" {
		return number(math.Round((celsius*1.8+32)*10)/10+0) + " °F"
	}
	return number(math.Round(celsius*10)/10) + " °C"
}
