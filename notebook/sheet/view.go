package sheet

import (
	"fmt"
	"html/template"
	"strings"
	"time"

	"ohmcall/notebook/page"
	"ohmcall/notebook/record"
)

// view is the record with all that the template should not work out itself.
type view struct {
	*record.Record
	CSS      template.CSS
	Title    string
	Summary  []record.Fact
	Contents []section
	Warning  string // why the file is not to be trusted, "" when nothing speaks against it
	Alerts   []alert
	Machines []machine
	Verdicts []verdict
	Causes   []cause
	Total    string
	Curves   []curve
	Remarks  []remark
	Log      []entry
	LogSum   string // SHA-256 of a closed log's text
}

// Heading is the heading of a part of the page.
func (v *view) Heading(id string) string { return headingOf(id) }

type alert struct{ Word, Text string }

type verdict struct {
	record.Verdict
	Refs []ref
}

type cause struct {
	record.Cause
	ForRefs, AgainstRefs []ref
}

// ref is an entry number; Linked when the log on the page has that entry.
type ref struct {
	N      int
	Linked bool
}

type entry struct {
	record.Entry
	Anchor bool // false for a number that was there before
}

func newView(r *record.Record, remarks map[string]string, warning string, told []record.Fact) *view {
	v := &view{Record: r, Warning: warning, CSS: style(), Title: title(r), Summary: append(summary(r, warning), told...)}
	known := make(map[int]bool, len(r.Log))
	for _, e := range r.Log {
		v.Log = append(v.Log, entry{Entry: e, Anchor: !known[e.N]})
		known[e.N] = true
	}
	if r.Header.State == "closed" {
		v.LogSum = page.Sum(page.Log(r.Log))
	}
	refs := func(list []int) []ref {
		out := make([]ref, len(list))
		for i, n := range list {
			out[i] = ref{n, known[n]}
		}
		return out
	}
	for _, a := range r.Alerts {
		v.Alerts = append(v.Alerts, newAlert(a))
	}
	for i, m := range r.Machines {
		v.Machines = append(v.Machines, newMachine(i+1, m))
	}
	for _, x := range record.Grouped(r.Verdicts) {
		v.Verdicts = append(v.Verdicts, verdict{x, refs(x.Entries)})
	}
	for _, c := range r.Causes {
		v.Causes = append(v.Causes, cause{c, refs(c.For), refs(c.Against)})
	}
	total, priced := 0.0, false
	for _, p := range r.Parts {
		if p.Priced && p.Struck == "" {
			total, priced = total+p.Price*p.Count, true
		}
	}
	if priced {
		v.Total = record.Money(total)
	}
	for i, c := range r.Curves {
		v.Curves = append(v.Curves, newCurve(i+1, c))
	}
	v.Remarks = newRemarks(remarks)
	v.Contents = contents(v)
	return v
}

// title names the call as the notebook file does.
func title(r *record.Record) string {
	what := r.Header.Unit
	if what == "" {
		what = "appliance not named"
	}
	if r.Header.Client != "" {
		what += ", " + r.Header.Client
	}
	return "Repair call: " + what
}

// summary is the line under the title.
func summary(r *record.Record, warning string) []record.Fact {
	h := &r.Header
	var out summed
	out.add("Begun", readable(h.Started))
	switch {
	case h.State == "closed":
		out.add("Closed", readable(h.Ended))
	case warning != "":
		out.add("State", "not to be trusted, see the warning")
	default:
		out.add("State", fmt.Sprintf("open, as of entry %d", h.Entries))
	}
	out.add("Technician", h.Technician)
	out.add("Unit left", h.Left)
	if h.Minutes > 0 {
		out.add("Time", fmt.Sprintf("%d min", h.Minutes))
	}
	if h.Cost > 0 {
		out.add("Parts", record.Money(h.Cost))
	}
	return out
}

// summed are the facts of a summary, those without a text left out.
type summed []record.Fact

//go:noinline
func (s *summed) add(label, text string) {
	if text != "" {
		*s = append(*s, record.Fact{Label: label, Text: text})
	}
}

// readable shows an ISO 8601 time without its offset, and anything else as
// it stands.
func readable(s string) string {
	t, err := time.Parse(page.TimeLayout, s)
	if err != nil {
		return s
	}
	return t.Format("2006-01-02 15:04")
}

// newAlert parts the word that leads an alert from the rest of it.
func newAlert(s string) alert {
	for _, word := range record.AlertWords {
		if rest, ok := strings.CutPrefix(s, word+": "); ok {
			return alert{word, rest}
		}
	}
	return alert{"Note", s}
}

// Class is the alert's class in the style sheet.
func (a alert) Class() string {
	if a.Word == "Unsafe" || a.Word == "Expectation not met" {
		return "bad"
	}
	return "doubt"
}

// contents lists the parts that this call has.
func contents(v *view) []section {
	r := v.Record
	has := map[string]bool{
		"outcome": len(r.Outcome) > 0, "attention": true, "identity": len(r.Identity) > 0,
		"cautions": len(r.Cautions) > 0, "terminals": len(r.Machines) > 0, "wiring": len(r.Wiring) > 0,
		"verdicts": len(r.Verdicts) > 0, "readings": len(r.Readings) > 0, "sums": len(r.Sums) > 0,
		"causes": len(r.Causes) > 0 || r.Next != "", "work": len(r.Work)+len(r.Parts) > 0,
		"proof":   len(r.Proof)+len(r.Curves) > 0,
		"remarks": len(v.Remarks) > 0, "log": len(r.Log) > 0,
	}
	var out []section
	for _, s := range sections() {
		if has[s.ID] {
			out = append(out, s)
		}
	}
	return out
}

// Has reports whether the page has a part.
func (v *view) Has(id string) bool {
	for _, s := range v.Contents {
		if s.ID == id {
			return true
		}
	}
	return false
}
