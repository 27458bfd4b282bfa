package fleet

import (
	"bufio"
	"encoding/csv"
	"encoding/json"
	"io"
	"strconv"
	"strings"

	"ohmcall/notebook/page"
	"ohmcall/notebook/record"
	"ohmcall/notebook/script"
)

// safe makes a file name fit to show: it may hold any byte.
//
//go:noinline
func safe(s string) string { return script.Clean(s) }

func (r *Row) safePath() string { return safe(r.Path) }

// alignUpTo is the widest column whose cells are padded in the Markdown
// source; wider ones would fill the file with spaces.
const alignUpTo = 40

// Markdown writes the digest as CommonMark with GFM tables.
func (d *Digest) Markdown(w io.Writer) error {
	b := bufio.NewWriter(w)
	b.WriteString("# Digest of repair calls\n")
	if s := d.Nothing(); s != "" {
		b.WriteString("\n" + s + "\n")
	}
	for _, t := range d.Tables() {
		b.WriteString("\n## " + page.Escape(t.Title) + "\n\n")
		t.markdown(b)
	}
	return b.Flush()
}

func (t *TextTable) markdown(b io.StringWriter) {
	widths := make([]int, len(t.Head))
	right := make([]bool, len(t.Head))
	for _, i := range t.Right {
		right[i] = true
	}
	cells := make([][]string, 0, len(t.Rows)+1)
	for _, row := range append([][]string{t.Head}, t.Rows...) {
		line := make([]string, len(row))
		for i, c := range row {
			line[i] = page.Escape(c)
			widths[i] = min(max(widths[i], page.Width(line[i]), 3), alignUpTo)
		}
		cells = append(cells, line)
	}
	for n, line := range cells {
		for i, c := range line {
			pad := strings.Repeat(" ", max(widths[i]-page.Width(c), 0))
			if right[i] {
				c, pad = pad, c
			}
			b.WriteString("| " + c + pad + " ")
		}
		b.WriteString("|\n")
		if n > 0 {
			continue
		}
		for i := range line {
			rule := strings.Repeat("-", widths[i])
			if right[i] {
				rule = rule[1:] + ":"
			}
			b.WriteString("| " + rule + " ")
		}
		b.WriteString("|\n")
	}
}

// CSV writes the calls of the digest by RFC 4180, one line a call. Texts
// are as Cell writes them. Columns are only ever added, at the end.
func (d *Digest) CSV(w io.Writer) error {
	c := csv.NewWriter(w)
	c.UseCRLF = true
	c.Write([]string{"date", "started", "technician", "client", "unit", "model", "serial", "machine", "complaint", "kind", "cause", "result",
		"minutes", "cost", "unsafe", "missing", "parts", "call_back_days", "call_back_of", "state", "reason", "path", "id", "called_back_on", "called_back_by", "left", "doubt",
		"return_days", "return_of", "followed_on", "followed_by", "followed_result", "made_good", "next", "said"})
	for i := range d.Rows {
		r := &d.Rows[i]
		line := []string{r.Date, r.Started, r.Technician, r.Client, r.Unit, r.Model, r.Serial, r.Machine, r.Complaint, r.Kind, r.Cause, r.Result,
			"", "", strings.Join(r.Unsafe, "; "), strings.Join(r.Missing, "; "), strings.Join(r.Parts, "; "),
			number(r.CallBack), safe(r.Earlier), string(r.State), r.Reason, r.safePath(), r.ID, r.LaterOn, safe(r.Later), r.Left, strings.Join(r.Doubt, "; "),
			number(r.Return), safe(r.ReturnOf), r.FollowedOn, safe(r.Followed), r.FollowedAs, strconv.FormatBool(r.MadeGood), r.Next, strings.Join(r.Said, "; ")}
		for i := range line {
			line[i] = Cell(line[i])
		}
		line[12], line[13] = strconv.Itoa(r.Minutes), record.Money(r.Cost)
		c.Write(line)
	}
	c.Flush()
	return c.Error()
}

// number writes a number that may be absent.
func number(n *int) string {
	if n == nil {
		return ""
	}
	return strconv.Itoa(*n)
}

// JSONL writes the whole digest as JSON Lines; the field `type` of each says
// what it is: `call`, `totals`, `part`, `cause` or `problem`.
func (d *Digest) JSONL(w io.Writer) error {
	b := bufio.NewWriter(w)
	e := json.NewEncoder(b)
	e.SetEscapeHTML(false)
	for i := range d.Rows {
		r := d.Rows[i]
		f := *r.Follow
		r.Path, f.Earlier, f.Later = safe(r.Path), safe(f.Earlier), safe(f.Later)
		f.ReturnOf, f.Followed = safe(f.ReturnOf), safe(f.Followed)
		r.Follow = &f
		if err := e.Encode(struct {
			Type string `json:"type"`
			Row
		}{"call", r}); err != nil {
			return err
		}
	}
	if err := e.Encode(struct {
		Type string `json:"type"`
		Totals
	}{"totals", d.Totals}); err != nil {
		return err
	}
	for _, p := range d.Parts {
		if err := e.Encode(struct {
			Type string `json:"type"`
			PartUse
		}{"part", p}); err != nil {
			return err
		}
	}
	for _, s := range d.Causes {
		if err := e.Encode(struct {
			Type string `json:"type"`
			Share
		}{"cause", s}); err != nil {
			return err
		}
	}
	for _, p := range d.Problems {
		p.Path = safe(p.Path)
		if err := e.Encode(struct {
			Type string `json:"type"`
			Problem
		}{"problem", p}); err != nil {
			return err
		}
	}
	return b.Flush()
}
