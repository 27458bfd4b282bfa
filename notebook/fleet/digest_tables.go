package fleet

import (
	"cmp"
	"math"
	"strconv"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/notebook/page"
	"ohmcall/notebook/record"
)

// TextTable is a table to show: plain texts without markup or controls.
type TextTable struct {
	Title string
	Head  []string
	Rows  [][]string
	Right []int // columns whose cells stand at the right
}

// Tables lays the digest out for people. Tables without rows are left out,
// and the totals where no call is.
func (d *Digest) Tables() []TextTable {
	return filled(append([]TextTable{d.callTable()}, d.sumTables()...))
}

// sumTables are the tables under that of the calls.
func (d *Digest) sumTables() []TextTable {
	return []TextTable{d.totalTable(), d.technicianTable(), d.callBackTable(), d.returnTable(), d.saidTable(), d.partTable(), d.causeTable(), d.problemTable()}
}

func filled(all []TextTable) []TextTable {
	out := all[:0]
	for _, t := range all {
		if len(t.Rows) > 0 {
			out = append(out, t)
		}
	}
	return out
}

// Nothing says in a sentence that no call is listed, "" when some are.
func (d *Digest) Nothing() string {
	switch {
	case d.Totals.Calls > 0:
		return ""
	case d.Seen == 0:
		return "There are no calls here."
	case d.Seen == 1:
		return "The one call here is not of this kind."
	}
	return "None of the " + strconv.Itoa(d.Seen) + " calls here is of this kind."
}

func (d *Digest) callTable() TextTable {
	t := TextTable{Title: "Calls", Right: []int{6, 7},
		Head: []string{"Date", "Client", "Unit", "Complaint", "Cause", "Result", "Minutes", "Cost", "Missing or unsafe", "File"}}
	for i := range d.Rows {
		r := &d.Rows[i]
		var wants sayings
		for _, s := range r.Unsafe {
			wants.add("unsafe: ", s)
		}
		for _, s := range r.Doubt {
			wants.add("in doubt: ", s)
		}
		wants = append(wants, r.missing()...)
		wants.add("next: ", r.Next)
		t.Rows = append(t.Rows, []string{r.day(), cmp.Or(r.Client, "-"), cmp.Or(r.what(), "-"), cmp.Or(r.Complaint, "-"), cmp.Or(r.Cause, "not found"),
			join(append([]string{r.result()}, r.remarks()...)...), strconv.Itoa(r.Minutes), record.Money(r.Cost), cmp.Or(strings.Join(wants, "; "), "nothing"), r.safePath()})
	}
	return t
}

// saidTable holds what is to be read for a danger, and what was said of proved calls
// since the repair: it was taken as nothing against the proof, and whoever reads it may
// know better.
func (d *Digest) saidTable() TextTable {
	t := TextTable{Title: "To read, and said since the repair of proved calls", Head: []string{"File", "Words"}}
	for i := range d.Rows {
		if r := &d.Rows[i]; len(r.Said) > 0 {
			t.Rows = append(t.Rows, []string{r.safePath(), strings.Join(r.Said, "; ")})
		}
	}
	return t
}

//go:noinline
func (r *Row) day() string { return cmp.Or(r.Date, "no date") }

//go:noinline
func (r *Row) result() string { return cmp.Or(r.Result, "no result") }

// what is the appliance, by name and model.
//
//go:noinline
func (r *Row) what() string { return strings.Trim(r.Unit+", "+r.Model, ", ") }

// remarks are what else there is to say of the result.
func (r *Row) remarks() []string {
	var out sayings
	if r.CallBack != nil {
		out.add("call-back after ", days(*r.CallBack))
	}
	if r.Return != nil {
		out.add("return after ", days(*r.Return))
	}
	if r.Later != r.Followed {
		out.add("call-back followed on ", r.LaterOn)
	}
	out.add("", r.followed())
	out.add("left ", r.Left)
	out.add("by ", r.Technician)
	out.add("serial ", r.Serial)
	out.add("", r.recordState())
	return out
}

// sayings are texts that say something, each behind its lead.
type sayings []string

//go:noinline
func (s *sayings) add(lead, text string) {
	if text != "" {
		*s = append(*s, lead+text)
	}
}

// followed tells of the call that followed, "" of none.
func (r *Row) followed() string {
	if r.Followed == "" {
		return ""
	}
	lead := "followed on "
	switch {
	case r.MadeGood:
		lead = "made good since, followed on "
	case r.Later == r.Followed:
		lead = "call-back followed on "
	}
	return lead + r.FollowedOn + " by " + safe(r.Followed) + ": " + r.FollowedAs
}

// join puts the parts that say something one behind the other.
//
//go:noinline
func join(parts ...string) string {
	text := ""
	for _, s := range parts {
		if text != "" && s != "" {
			text += "; "
		}
		text += s
	}
	return text
}

func (d *Digest) totalTable() TextTable {
	s := &d.Totals
	if s.Calls == 0 {
		return TextTable{}
	}
	t := TextTable{Title: "Totals", Head: []string{"What", "Sum"}, Right: []int{1}}
	type row struct {
		what string
		n    int
		if0  bool // told also of none
	}
	rows := []row{{"calls", s.Calls, true}, {record.Unsafe, s.Unsafe, true}, {"of them made good since", s.MadeGood, false}}
	by := s.byResult()
	for _, r := range record.Results {
		if n := by[r.Word]; n != nil {
			rows = append(rows, row{r.Word, *n, false})
		}
	}
	rows = append(rows, row{"call-backs within " + days(callBackDays), s.CallBacks, true}, row{"returns, to be expected", s.Returns, false},
		row{"still open", s.Open, true}, row{"not as closed", s.Changed, true}, row{"files not counted", len(d.Problems), true}, row{"minutes", s.Minutes, true})
	for _, r := range rows {
		if r.n > 0 || r.if0 {
			t.Rows = append(t.Rows, []string{r.what, strconv.Itoa(r.n)})
		}
	}
	t.Rows = append(t.Rows, []string{"cost of parts", record.Money(s.Cost)})
	if s.Unpriced > 0 {
		t.Rows = append(t.Rows, []string{"parts without a price, not in it", strconv.Itoa(s.Unpriced)})
	}
	return t
}

const notNamed = "not named"

var technicianHead = [...]string{"Technician", "Calls", "Unsafe", "Not proved", "In doubt", "Not as closed", "Called back"}

// technicianTable compares technicians, where there are several.
func (d *Digest) technicianTable() TextTable {
	type sums struct {
		name string // as it is spelled first in the alphabet
		of   [len(technicianHead) - 1]int
	}
	by, names := map[string]*sums{}, []string{}
	for i := range d.Rows {
		r := &d.Rows[i]
		name := key(r.Technician)
		if by[name] == nil {
			by[name] = &sums{}
			names = append(names, name)
		}
		s := by[name]
		if spelled := strings.Join(strings.Fields(r.Technician), " "); s.of[0] == 0 || spelled < s.name {
			s.name = spelled
		}
		for k, yes := range [...]bool{true, len(r.Unsafe) > 0, r.Result == record.NotProved, len(r.Doubt) > 0, r.State == Changed, r.LaterOn != ""} {
			count(&s.of[k], yes)
		}
	}
	if len(names) < 2 {
		return TextTable{}
	}
	order(names, func(a, b *string) int {
		return strings.Compare(cmp.Or(by[*a].name, notNamed), cmp.Or(by[*b].name, notNamed))
	})
	t := TextTable{Title: "Technicians", Head: technicianHead[:], Right: []int{1, 2, 3, 4, 5, 6}}
	for _, name := range names {
		row := []string{cmp.Or(by[name].name, notNamed)}
		for _, n := range by[name].of {
			row = append(row, strconv.Itoa(n))
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}

func (d *Digest) callBackTable() TextTable {
	return d.followTable("Call-backs", func(r *Row) (*int, string) { return r.CallBack, r.Earlier })
}

func (d *Digest) returnTable() TextTable {
	return d.followTable("Returns", func(r *Row) (*int, string) { return r.Return, r.ReturnOf })
}

// followTable lists the calls that came after another, with the days between.
func (d *Digest) followTable(title string, of func(*Row) (*int, string)) TextTable {
	t := TextTable{Title: title, Head: []string{"Date", "Serial", "Unit", "After", "File", "Earlier call"}}
	for i := range d.Rows {
		r := &d.Rows[i]
		if n, earlier := of(r); n != nil {
			t.Rows = append(t.Rows, []string{r.Date, r.Serial, cmp.Or(r.Unit, "-"), days(*n), r.safePath(), safe(earlier)})
		}
	}
	return t
}

func (d *Digest) partTable() TextTable {
	t := TextTable{Title: "Parts used", Head: []string{"Part", "Count", "Calls"}, Right: []int{1, 2}}
	for _, p := range d.Parts {
		t.Rows = append(t.Rows, []string{p.Name, page.Amount(p.Count), strconv.Itoa(p.Calls)})
	}
	return t
}

func (d *Digest) causeTable() TextTable {
	t := TextTable{Title: "Causes by complaint", Head: []string{"Complaint", "Cause found", "Calls", "Of", "Share"}, Right: []int{2, 3, 4}}
	for _, s := range d.Causes {
		kind := s.Kind
		if k, ok := cause.ComplaintBy(s.Kind); ok {
			kind = k.Name
		}
		t.Rows = append(t.Rows, []string{kind, cmp.Or(s.Cause, "not found"), strconv.Itoa(s.Calls), strconv.Itoa(s.Of),
			strconv.Itoa(int(math.Round(100*s.Part))) + " %"})
	}
	return t
}

func (d *Digest) problemTable() TextTable {
	t := TextTable{Title: "Files not counted", Head: []string{"File", "State", "Reason"}}
	for _, p := range d.Problems {
		t.Rows = append(t.Rows, []string{safe(p.Path), string(p.State), p.Reason})
	}
	return t
}

//go:noinline
func days(n int) string {
	if n == 1 {
		return "1 day"
	}
	return strconv.Itoa(n) + " days"
}
