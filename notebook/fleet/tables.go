package fleet

import (
	"slices"
	"strconv"
	"strings"
	"sync"
	"time"

	"ohmcall/notebook/call"
	"ohmcall/notebook/page"
	"ohmcall/notebook/record"
)

// Tables are the tables of an export in the order in which they are written:
// a row comes after the row it refers to. The log's entries hold everything
// that was typed, remarks about people too, and so are left out unless asked
// for.
func Tables(entries bool) []*Table {
	all := schema()
	if !entries {
		all = all[:len(all)-1]
	}
	return slices.Clip(all)
}

// schema is built when it is first asked for, so that programs that export
// nothing start none the later.
var schema = sync.OnceValue(func() []*Table {
	return []*Table{callsTable(), readingsTable(), verdictsTable(), sumsTable(), partsTable(), entriesTable()}
})

type (
	reading = record.Reading
	judged  = record.Verdict
	sum     = record.Sum
	used    = record.Part
	entry   = record.Entry
)

func always[T any](get func(*T) float64) func(*T) (float64, bool) {
	return func(r *T) (float64, bool) { return get(r), true }
}

// parseTime gives the zero time for a text that is no time.
func parseTime(s string) time.Time {
	at, err := time.Parse(page.TimeLayout, s)
	if err != nil {
		return time.Time{}
	}
	return at
}

func callsTable() *Table {
	cols := []col{
		text("path", "file below the scanned folder", func(it *Item) string { return it.Rel }),
		text("state", "how far the file is believed: trusted, changed or open", func(it *Item) string { return string(it.State) }),
		text("reason", "why it is not trusted", func(it *Item) string { return it.Reason }),
		integer("faults", "1", "differences that the replay found", func(it *Item) int { return len(it.Faults) }),
		boolean("replayed", "the typed lines were applied again; the other tables have rows only for such calls", func(it *Item) bool { return it.Record != nil }),
		integer("format", "1", "version of the notebook's format", func(it *Item) int { return it.Header.Format }),
		integer("entries", "1", "lines in the log", func(it *Item) int { return it.Header.Entries }),
		moment("started", "time of the first entry, ISO 8601", func(it *Item) time.Time { return parseTime(it.Header.Started) }),
		moment("ended", "time of the last entry, ISO 8601", func(it *Item) time.Time { return parseTime(it.Header.Ended) }),
		text("technician", "who did the work", func(it *Item) string { return it.Header.Technician }),
		text("client", "whose appliance it is", func(it *Item) string { return it.Header.Client }),
		text("site", "where it stands", func(it *Item) string { return it.Header.Site }),
		text("unit", "what appliance it is", func(it *Item) string { return it.Header.Unit }),
		text("model", "the appliance's model", func(it *Item) string { return it.Header.Model }),
		text("serial", "the appliance's serial number", func(it *Item) string { return it.Header.Serial }),
		text("machine", "model of the machine judged, the compressor as a rule", func(it *Item) string { return it.Header.Machine }),
		text("complaint", "the complaint in the customer's words", func(it *Item) string { return it.Header.Complaint }),
		text("kind", "code of the complaint", func(it *Item) string { return it.Header.Kind }),
		text("cause", "the cause found, an inference", func(it *Item) string { return it.Header.Cause }),
		text("result", record.ResultWords(), func(it *Item) string { return it.Header.Result }),
		integer("minutes", "min", "from the first entry to the last, without gaps of more than four hours and without what lies between a closing and the line that opened the call again", func(it *Item) int { return it.Header.Minutes }),
		real("cost", "", "of the parts, in the notebook's own currency", always(func(it *Item) float64 { return it.Header.Cost })),
		list("missing", "what a complete record would still hold", func(it *Item) []string { return it.Header.Missing }),
		list("unsafe", "what was left unsafe", func(it *Item) []string { return it.Header.Unsafe }),
		list("ohms", "settled winding resistances in Ohm, as role-role value", func(it *Item) []string { return it.Header.Ohms }),
		boolean("redacted", "personal fields were taken out", func(it *Item) bool { return it.Header.Redacted }),
		text("log_sha256", "SHA-256 of the log when closed", func(it *Item) string { return it.Header.SHA256 }),
		text("left", "the state in which the unit was left: running, off, unplugged, tagged out or taken away", func(it *Item) string { return it.Header.Left }),
		list("doubt", "dangers told of, what is in doubt, and what cannot be so", func(it *Item) []string { return it.Header.Doubt }),
		text("serial_key", "letters and digits of the serial number, by which calls on one unit are found", func(it *Item) string { return serialKey(it.Header.Serial) }),
	}
	for i, c := range followColumns {
		cols = append(cols, col{c, func(it *Item, _ any, _ int) any { return it.follow.cell(i) }})
	}
	cols = append(cols, list("said", "words to read for a danger, and since a repair those that leave it proved", func(it *Item) []string { return it.Header.Said }))
	return table("calls", "One row a call", func(it *Item, emit func(any) error) error { return emit(it) }, cols...)
}

// readingWords are the commands that take readings, as they are declared.
func readingWords() string {
	var words []string
	for _, c := range call.Commands() {
		if slices.ContainsFunc(c.Params, func(p call.Param) bool { return p.Kind == call.Readings }) {
			words = append(words, c.Word)
		}
	}
	last := len(words) - 1
	return strings.Join(words[:last], ", ") + " or " + words[last]
}

func readingsTable() *Table {
	return table("readings", "One row a reading; several may share an entry", rec(func(r *record.Record) []reading { return r.Readings }),
		integer("entry", "1", "number of the log's entry", func(r *reading) int { return r.Entry }),
		moment("at", "time of the entry, ISO 8601; entry numbers give the order, not times", func(r *reading) time.Time { return r.At }),
		text("kind", "the command word: "+readingWords(), func(r *reading) string { return r.Kind }),
		text("machine", "whose pins were read", func(r *reading) string { return r.Of }),
		text("point_a", "pin or place", func(r *reading) string { return r.A }),
		text("point_b", "the other pin", func(r *reading) string { return r.B }),
		real("value", "see unit", "absent when it was over the meter's range", func(r *reading) (float64, bool) { return r.Value, !r.Over }),
		text("unit", "UCUM code of value and uncertainty", func(r *reading) string { return r.Unit }),
		real("uncertainty", "see unit", "standard uncertainty from the meter's limits", func(r *reading) (float64, bool) { return r.U, !r.Over }),
		boolean("over", "over the meter's range, an open circuit as a rule", func(r *reading) bool { return r.Over }),
		text("shown", "value as shown, with unit", func(r *reading) string { return r.Shown }),
		text("condition", "in which it was taken", func(r *reading) string { return r.Condition }),
		text("struck", "the reason, when it no longer counts", func(r *reading) string { return r.Struck }),
	)
}

func verdictsTable() *Table {
	return table("verdicts", "One row a judgement", rec(func(r *record.Record) []judged { return r.Verdicts }),
		text("subject", "what is judged", func(v *judged) string { return v.Subject }),
		text("verdict", "the judgement in a word", func(v *judged) string { return v.Word }),
		text("reason", "the judgement in a sentence", func(v *judged) string { return v.Text }),
		text("limit_text", "the limit it was held against", func(v *judged) string { return v.Limit }),
		text("margin", "how far from the limit, in units of the meter's doubt", func(v *judged) string { return v.Margin }),
		text("source", "where the limit comes from", func(v *judged) string { return v.Source }),
		list("also", "further remarks", func(v *judged) []string { return v.Also }),
		list("entries", "numbers of the entries it rests on", func(v *judged) []string {
			var out []string
			for _, n := range v.Entries {
				out = append(out, strconv.Itoa(n))
			}
			return out
		}),
	)
}

func sumsTable() *Table {
	return table("sums", "One row a sum, definition or expectation", rec(func(r *record.Record) []sum { return r.Sums }),
		integer("entry", "1", "number of the log's entry", func(s *sum) int { return s.Entry }),
		text("expression", "as typed", func(s *sum) string { return s.Text }),
		text("shown", "the result as shown", func(s *sum) string { return s.Value }),
		text("meaning", "what it was for", func(s *sum) string { return s.Meaning }),
		real("value", "see unit", "absent for an expectation", func(s *sum) (float64, bool) { return s.Number, s.Met == "" }),
		text("unit", "UCUM code of value and uncertainty", func(s *sum) string { return s.Unit }),
		real("uncertainty", "see unit", "standard uncertainty, 0 when exact", func(s *sum) (float64, bool) { return s.U, s.Met == "" }),
		text("met", "for an expectation: met, not met, cannot tell, in doubt or waiting", func(s *sum) string { return s.Met }),
		text("struck", "the reason, when it no longer counts", func(s *sum) string { return s.Struck }),
	)
}

func partsTable() *Table {
	return table("parts", "One row a line that used a part", rec(func(r *record.Record) []used { return r.Parts }),
		integer("entry", "1", "number of the log's entry", func(p *used) int { return p.Entry }),
		text("name", "the part", func(p *used) string { return p.Name }),
		real("count", "1", "how many", always(func(p *used) float64 { return p.Count })),
		real("price", "", "of one, in the notebook's own currency", func(p *used) (float64, bool) { return p.Price, p.Priced }),
		text("struck", "the reason, when it no longer counts", func(p *used) string { return p.Struck }),
		text("serial", "the part's own serial number", func(p *used) string { return p.Serial }),
	)
}

func entriesTable() *Table {
	return table("entries", "One row a line of the log", rec(func(r *record.Record) []entry { return r.Log }),
		integer("entry", "1", "number of the log's entry", func(e *entry) int { return e.N }),
		moment("at", "time of the entry, ISO 8601", func(e *entry) time.Time { return e.At }),
		text("kind", "the command word, or sum", func(e *entry) string { return e.Kind }),
		text("line", "as typed", func(e *entry) string { return e.Line }),
		list("reply", "the reply that was given, line by line", func(e *entry) []string { return e.Reply }),
		text("struck", "the reason, when it was struck", func(e *entry) string { return e.Struck }),
	)
}
