package fleet

import (
	"fmt"
	"iter"
	"slices"
	"strings"
	"time"
	"unicode"

	"ohmcall/calc/cause"
	"ohmcall/notebook/record"
)

// Filter picks calls. An empty field picks all; texts but that of a cause are
// looked for anywhere in theirs, letter case aside.
type Filter struct {
	// From and To are the first and the last day, as 2026-03-02, compared
	// with the date that the call's own clock showed at its start.
	From, To   string
	Technician string
	Model      string // of the appliance, or of the machine in it
	Cause      string // a code, or whole words of what a cause is called
	// Result is that of the call; unsafe picks all with anything unsafe, open all
	// that are not closed, changed all that are not as closed, call-back those.
	Result string
	// Text is looked for in the front matter's texts; set Options.Text to the
	// same for a scan that looks into the log as well.
	Text string
}

// Check reports a date that is none.
func (f Filter) Check() error {
	for _, d := range []string{f.From, f.To} {
		if _, err := time.Parse(time.DateOnly, d); d != "" && err != nil {
			return fmt.Errorf("%q is not a date; write it as 2026-03-02", d)
		}
	}
	if f.From != "" && f.To != "" && f.To < f.From {
		return fmt.Errorf("the range ends on %s, before it begins on %s", f.To, f.From)
	}
	known := []string{openCalls, changedCalls, calledBack}
	for _, r := range record.Results {
		known = append(known, r.Word)
	}
	if !slices.ContainsFunc(known, func(s string) bool { return f.result(s) }) && !f.callBacks() {
		return fmt.Errorf("%q is no result; one of: %s", f.Result, strings.Join(known, ", "))
	}
	return nil
}

// What picks calls whatever their result: those that are not closed, those not as
// they were closed, and those on a unit that was called for a short time before.
const (
	openCalls    = string(Open)
	changedCalls = string(Changed)
	calledBack   = "call-back"
)

// byState reports whether a call is picked by how its file stands; which ones are
// call-backs is only known of all together.
func (f *Filter) byState(s State) bool {
	return strings.EqualFold(f.Result, string(s)) || f.callBacks()
}

func (f *Filter) callBacks() bool { return folded(f.Result) == "callback" }

// follows reports whether a call is picked by the one that it follows on.
func (f *Filter) follows(by *Follow) bool { return !f.callBacks() || by != nil && by.CallBack != nil }

// Match reports whether a call is picked.
func (f Filter) Match(it *Item) bool {
	h := &it.Header
	if day := date(h); f.From != "" && day < f.From || f.To != "" && (day == "" || day > f.To) {
		return false
	}
	return has(key(h.Technician), key(f.Technician)) &&
		(has(h.Model, f.Model) || has(h.Machine, f.Model)) &&
		causeIs(h.Cause, f.Cause) &&
		(f.result(h.Result) || f.byState(it.State) || strings.EqualFold(f.Result, record.Unsafe) && len(h.Unsafe) > 0) &&
		(f.Text == "" || it.Found || f.inTexts(h))
}

// result reports whether a call's result is picked: by its whole word where that is
// one, so that proved is not "not proved", else by a part of it.
func (f *Filter) result(s string) bool {
	if f.Result == "" {
		return true
	}
	if slices.ContainsFunc(record.Results, func(r record.Result) bool { return folded(r.Word) == folded(f.Result) }) {
		return folded(s) == folded(f.Result)
	}
	return has(s, f.Result)
}

func (f Filter) inTexts(h *record.Header) bool {
	for _, s := range []string{h.Technician, h.Client, h.Site, h.Unit, h.Model, h.Serial, h.Machine, h.Complaint, h.Kind, h.Cause, h.Result} {
		if has(s, f.Text) {
			return true
		}
	}
	for _, list := range [][]string{h.Missing, h.Unsafe, h.Doubt, h.Said, h.Parts, h.Ohms} {
		for _, s := range list {
			if has(s, f.Text) {
				return true
			}
		}
	}
	return false
}

// Select passes on the calls that a filter picks, and every file that is no
// call.
func Select(items iter.Seq[Item], f Filter) iter.Seq[Item] {
	return func(yield func(Item) bool) {
		for it := range items {
			if (!it.State.Counts() || f.Match(&it) && f.follows(it.follow)) && !yield(it) {
				return
			}
		}
	}
}

func has(s, part string) bool {
	return part == "" || s != "" && strings.Contains(strings.ToLower(s), strings.ToLower(part))
}

// causeIs reports whether among the causes found is one of the code, or one whose
// name has the words in it. What stands behind its colon explains it: a leak of
// current to metal is no leak of refrigerant.
func causeIs(found, want string) bool {
	if want == "" {
		return true
	}
	if k, ok := cause.By(want); ok {
		return strings.Contains(found, k.Name)
	}
	if want = bare(want); strings.Count(want, " ") > 2 {
		return strings.Contains(bare(found), want)
	}
	for _, one := range strings.Split(found, "; ") {
		for _, name := range strings.Split(one, " or ") {
			name, _, _ = strings.Cut(name, ": ")
			if strings.Contains(bare(name), want) {
				return true
			}
		}
	}
	return false
}

// bare is a text as its words alone, a space before and behind each; "" of none.
func bare(s string) string {
	words := strings.FieldsFunc(strings.ToLower(s), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
	return strings.TrimSuffix(" "+strings.Join(words, " ")+" ", "  ")
}

// date is the day on which a call began by its own clock, "" when it has not
// begun or its time is none.
func date(h *record.Header) string {
	if len(h.Started) < 10 {
		return ""
	}
	if _, err := time.Parse(time.DateOnly, h.Started[:10]); err != nil {
		return ""
	}
	return h.Started[:10]
}
