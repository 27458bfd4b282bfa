// Package page writes a call as one Markdown file and takes such a file
// apart again.
//
// The file is CommonMark with GFM tables: front matter, derived sections
// between marks, and last the log, one fenced block to which a new entry is
// appended. Only the log's entries are the truth; every derived section can
// be rebuilt from them. What people write outside the marks is kept.
package page

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"ohmcall/notebook/record"
)

// part is one derived section: its ID, heading and body writer. A part
// without a body is left out of the page.
type part struct {
	id, heading string
	body        func(*strings.Builder, *record.Record)
}

var parts = []part{
	{"title", "", title},
	{"outcome", "Outcome", func(b *strings.Builder, r *record.Record) { facts(b, r.Outcome) }},
	{"attention", "Needs attention", attention},
	{"identity", "Who and what", identity},
	{"cautions", "Cautions given", cautions},
	{"terminals", "Terminals and roles", terminals},
	{"wiring", "Wiring of the part fitted", wiring},
	{"verdicts", "Verdicts", verdicts},
	{"readings", "Readings", readings},
	{"sums", "Sums", sums},
	{"causes", "Causes considered", causes},
	{"work", "Work and parts", work},
	{"proof", "Proof of repair", proof},
}

// PartIDs lists the derived sections in their order on the page.
func PartIDs() []string {
	ids := make([]string, len(parts))
	for i, p := range parts {
		ids[i] = p.id
	}
	return ids
}

// Heading is that of a derived section, "" when it has none.
func Heading(id string) string {
	for i := range parts {
		if parts[i].id == id {
			return parts[i].heading
		}
	}
	return ""
}

// Sections renders the derived sections of a call, empty ones left out.
func Sections(r *record.Record) []Section {
	var out []Section
	for _, p := range parts {
		var b strings.Builder
		b.WriteByte('\n')
		if p.heading != "" {
			b.WriteString("## " + p.heading + "\n\n")
		}
		empty := b.Len()
		p.body(&b, r)
		if b.Len() == empty {
			continue
		}
		b.WriteByte('\n')
		out = append(out, Section{ID: p.id, Body: b.String()})
	}
	return out
}

// Render writes the whole file. The log is fenced off when the call is
// closed and left open for appending when it is not.
func Render(r *record.Record, remarks map[string]string) []byte {
	log := Log(r.Log)
	h := r.Header
	closed := h.State == "closed"
	h.SHA256 = ""
	if closed {
		h.SHA256 = Sum(log)
	}
	var b strings.Builder
	b.Grow(3 * len(log))
	writeHeader(&b, &h)
	left := make(map[string]string, len(remarks))
	for id, s := range remarks {
		left[id] = s
	}
	remark := func(id string) {
		if s := left[id]; s != "" {
			b.WriteString("\n" + apart(s) + "\n")
		}
		delete(left, id)
	}
	remark("")
	sections := Sections(r)
	for _, p := range parts {
		if i := slices.IndexFunc(sections, func(s Section) bool { return s.ID == p.id }); i >= 0 {
			s := sections[i]
			b.WriteString("\n" + beginMark + s.ID + "\n" + s.Body + endMark + s.ID + ` "` + mark(s.Body) + "\"\n")
		}
		remark(p.id)
	}
	for _, id := range sortedKeys(left) {
		remark(id)
	}
	b.WriteString("\n" + logHeading + "\n\n")
	if closed {
		b.WriteString("The call is closed. All of the above is derived from these lines; `ohmcall check` replays them.\n")
	} else {
		fmt.Fprintf(&b, "The call is open: the part above is as of entry %d, this log may hold more.\n", h.Entries)
	}
	b.WriteString("\n" + logFence + "\n")
	b.Write(log)
	if closed {
		b.WriteString(fenceEnd + "\n")
	}
	return []byte(b.String())
}

// apart sets in those lines of a remark that would be taken for marks or for
// a log of ours when the file is read again.
func apart(remark string) string {
	if !strings.Contains(remark, "[ohmcall-") && !strings.Contains(remark, logFence) {
		return remark
	}
	lines := strings.Split(remark, "\n")
	for i, l := range lines {
		if strings.HasPrefix(l, beginMark) || strings.HasPrefix(l, endMark) || l == logFence {
			lines[i] = "  " + l
		}
	}
	return strings.Join(lines, "\n")
}

// Log writes the log's text.
func Log(entries []record.Entry) []byte {
	size := 0
	for _, e := range entries {
		size += len(e.Line) + len(TimeLayout) + 8
		for _, l := range e.Reply {
			size += len(l) + 3
		}
	}
	b := make([]byte, 0, size)
	for _, e := range entries {
		b = AppendEntry(b, e.N, e.At, e.Line, e.Reply)
	}
	return b
}

func sortedKeys(m map[string]string) []string {
	keys := make([]string, 0, len(m))
	for k := range m {
		keys = append(keys, k)
	}
	slices.Sort(keys)
	return keys
}

func title(b *strings.Builder, r *record.Record) {
	what := r.Header.Unit
	if what == "" {
		what = "appliance not named"
	}
	b.WriteString("# Repair call: " + Escape(what))
	if r.Header.Client != "" {
		b.WriteString(", " + Escape(r.Header.Client))
	}
	b.WriteString("\n")
}

func facts(b *strings.Builder, list []record.Fact) {
	for i, f := range list {
		b.WriteString("**" + Escape(f.Label) + ":** " + Escape(f.Text))
		if i+1 < len(list) {
			b.WriteString("\\")
		}
		b.WriteByte('\n')
	}
}

func bullets(b *strings.Builder, list []string) {
	for _, s := range list {
		b.WriteString("- " + escapeLine(s) + "\n")
	}
}

// Spoken is a code word, such as ruled-out, as people say it; any other text
// stays as it is.
func Spoken(code string) string {
	for _, r := range code {
		if r != '-' && (r < 'a' || r > 'z') {
			return code
		}
	}
	return strings.ReplaceAll(code, "-", " ")
}

func attention(b *strings.Builder, r *record.Record) { bullets(b, r.Alerts) }

func identity(b *strings.Builder, r *record.Record) {
	var rows [][]string
	for _, f := range r.Identity {
		rows = append(rows, []string{f.Label, f.Text})
	}
	if rows != nil {
		writeTable(b, []string{"Field", "Value"}, rows)
	}
}

func cautions(b *strings.Builder, r *record.Record) {
	var rows [][]string
	for _, c := range r.Cautions {
		rows = append(rows, []string{strconv.Itoa(c.Entry), c.Text, c.Source})
	}
	if rows != nil {
		writeTable(b, []string{"Entry", "Caution", "Source"}, rows, 0)
	}
}

func terminals(b *strings.Builder, r *record.Record) {
	for i, m := range r.Machines {
		if i > 0 {
			b.WriteByte('\n')
		}
		settled := "roles settled"
		if !m.Settled {
			settled = "roles not settled"
		}
		fmt.Fprintf(b, "### %s: %s, %s\n\n", Escape(m.Name), Escape(Spoken(m.State)), settled)
		b.WriteString(CodeBlock(record.Drawing(m)) + "\n")
		var rows [][]string
		for _, p := range m.Pins {
			rows = append(rows, []string{p.Name, cmp.Or(p.Role, "not known"), cmp.Or(p.Case, "not read")})
		}
		writeTable(b, []string{"Pin", "Role", "To case"}, rows)
		if len(m.Notes) > 0 {
			b.WriteByte('\n')
			bullets(b, m.Notes)
		}
	}
}

// CodeBlock fences plain text off; the fence is longer than any run of
// backticks in it.
func CodeBlock(lines []string) string {
	text := strings.Join(lines, "\n")
	fence := "```"
	for strings.Contains(text, fence) {
		fence += "`"
	}
	return fence + "text\n" + text + "\n" + fence + "\n"
}

func wiring(b *strings.Builder, r *record.Record) {
	var rows [][]string
	for _, w := range r.Wiring {
		rows = append(rows, []string{w.Wire, w.Role, cmp.Or(w.At, "-"), w.Note})
	}
	if rows != nil {
		writeTable(b, []string{"Wire, as printed on the part", "Role", "Pin", "Remark"}, rows)
	}
}

func entries(list []int) string {
	parts := make([]string, len(list))
	for i, n := range list {
		parts[i] = strconv.Itoa(n)
	}
	return strings.Join(parts, ", ")
}

func verdicts(b *strings.Builder, r *record.Record) {
	var rows [][]string
	var also []string
	for _, v := range record.Grouped(r.Verdicts) {
		rows = append(rows, []string{v.Subject, v.Word, v.Text, v.Limit, v.Margin, v.Source, entries(v.Entries)})
		for _, a := range v.Also {
			if !slices.Contains(also, a) {
				also = append(also, a)
			}
		}
	}
	if rows != nil {
		writeTable(b, []string{"What", "Verdict", "Reason", "Limit", "Margin, × doubt", "Source", "Entries"}, rows)
	}
	if also != nil {
		b.WriteString("\nOther limits and remarks:\n\n")
		bullets(b, also)
	}
}

func readings(b *strings.Builder, r *record.Record) {
	var rows [][]string
	for _, m := range r.Readings {
		at := m.A
		if m.B != "" {
			at += " to " + m.B
		}
		if m.Of != "" {
			at = m.Of + ": " + at
		}
		remark := m.Condition
		if m.Struck != "" {
			remark = strings.TrimPrefix(remark+", struck: "+m.Struck, ", ")
		}
		rows = append(rows, []string{strconv.Itoa(m.Entry), r.Clock(m.At), m.Kind, at, m.Shown, remark})
	}
	if rows != nil {
		writeTable(b, []string{"Entry", "Time", "Kind", "Where", "Value", "Condition"}, rows, 0, 4)
	}
}

func sums(b *strings.Builder, r *record.Record) {
	var rows [][]string
	for _, s := range r.Sums {
		meaning := s.Meaning
		if s.Struck != "" {
			meaning = strings.TrimPrefix(meaning+", struck: "+s.Struck, ", ")
		}
		rows = append(rows, []string{strconv.Itoa(s.Entry), s.Text, s.Value, meaning})
	}
	if rows != nil {
		writeTable(b, []string{"Entry", "Sum", "Value", "Meaning"}, rows, 0)
	}
}

func causes(b *strings.Builder, r *record.Record) {
	var rows [][]string
	for _, c := range r.Causes {
		rows = append(rows, []string{c.Name, Spoken(c.State), cmp.Or(entries(c.For), "-"), cmp.Or(entries(c.Against), "-")})
	}
	if rows != nil {
		if r.CausesBefore > 0 {
			fmt.Fprintf(b, "As they stood before the repair of entry %d.\n\n", r.CausesBefore)
		}
		writeTable(b, []string{"Cause", "Standing", "Entries for", "Entries against"}, rows)
	}
	if r.Next != "" {
		if rows != nil {
			b.WriteByte('\n')
		}
		b.WriteString("Next: " + Escape(r.Next) + "\n")
	}
}

func work(b *strings.Builder, r *record.Record) {
	var rows [][]string
	for _, w := range r.Work {
		text := w.Text
		if w.Struck != "" {
			text += ", struck: " + w.Struck
		}
		rows = append(rows, []string{strconv.Itoa(w.Entry), r.Clock(w.At), w.Kind, text})
	}
	if rows != nil {
		writeTable(b, []string{"Entry", "Time", "Kind", "Text"}, rows, 0)
	}
	if len(r.Parts) == 0 {
		return
	}
	if rows != nil {
		b.WriteByte('\n')
	}
	rows = nil
	total, priced := 0.0, false
	for _, p := range r.Parts {
		row := []string{strconv.Itoa(p.Entry), p.Called(), Amount(p.Count), "", ""}
		if p.Priced {
			row[3], row[4] = record.Money(p.Price), record.Money(p.Price*p.Count)
		}
		if p.Struck != "" {
			row[1] += ", struck: " + p.Struck
		} else if p.Priced {
			total, priced = total+p.Price*p.Count, true
		}
		rows = append(rows, row)
	}
	if priced {
		rows = append(rows, []string{"", "Total", "", "", record.Money(total)})
	}
	writeTable(b, []string{"Entry", "Part", "Count", "Price", "Sum"}, rows, 0, 2, 3, 4)
}

// Amount writes a count without needless digits.
func Amount(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

func proof(b *strings.Builder, r *record.Record) {
	facts(b, r.Proof)
	for i, c := range r.Curves {
		if i > 0 || len(r.Proof) > 0 {
			b.WriteByte('\n')
		}
		fmt.Fprintf(b, "### %s: %s\n\n", Escape(c.Place), Escape(c.Verdict))
		b.WriteString(escapeLine(c.Reason) + "\n")
		if len(c.Plot) > 0 {
			b.WriteString("\n" + CodeBlock(c.Plot))
		}
	}
}
