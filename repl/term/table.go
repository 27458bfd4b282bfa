package term

import (
	"bytes"
	"strings"

	"github.com/olekukonko/tablewriter"
	"github.com/olekukonko/tablewriter/renderer"
	"github.com/olekukonko/tablewriter/tw"

	"ohmcall/notebook/call"
	"ohmcall/notebook/script"
)

const (
	gap = 2 // columns of space between two columns of a table
	// broken is the least width of a column whose texts are broken: below it
	// they read better as a list.
	broken = 14
)

// cells are the head and the rows of a table, fit to be shown.
func cells(t *call.Table) [][]string {
	rows := make([][]string, 0, len(t.Rows)+1)
	for _, row := range append([][]string{t.Head}, t.Rows...) {
		clean := make([]string, len(t.Head))
		for i := range clean {
			if i < len(row) {
				clean[i] = script.Clean(row[i])
			}
		}
		rows = append(rows, clean)
	}
	return rows
}

// tableLines draws a table: plain columns, a line of dashes under the head.
// Cells are broken by words here, so that a narrow screen takes width from
// the widest columns first.
func tableLines(rows [][]string, widths []int, screen int) []string {
	for _, row := range rows {
		for i, cell := range row {
			row[i] = strings.Join(wrapCell(cell, widths[i]), "\n")
		}
	}
	var b bytes.Buffer
	w := tablewriter.NewTable(&b,
		tablewriter.WithRenderer(renderer.NewBlueprint(tw.Rendition{
			Borders:  tw.BorderNone,
			Symbols:  tw.NewSymbolCustom("plain").WithRow("-").WithColumn(" ").WithCenter("-").WithMidLeft("-").WithMidRight("-"),
			Settings: tw.Settings{Separators: tw.Separators{BetweenColumns: tw.On}, Lines: tw.Lines{ShowHeaderLine: tw.On}},
		})),
		tablewriter.WithPadding(tw.Padding{Left: "", Right: " ", Overwrite: true}),
		tablewriter.WithHeaderAutoFormat(tw.Off),
		tablewriter.WithHeaderAlignment(tw.AlignLeft),
		tablewriter.WithRowAlignment(tw.AlignLeft),
		tablewriter.WithHeaderAutoWrap(tw.WrapNone),
		tablewriter.WithRowAutoWrap(tw.WrapNone),
		tablewriter.WithTrimSpace(tw.Off),
		tablewriter.WithEastAsian(false),
	)
	w.Header(rows[0])
	if err := w.Bulk(rows[1:]); err != nil {
		return plainRows(rows)
	}
	if err := w.Render(); err != nil {
		return plainRows(rows)
	}
	var out []string
	for _, line := range strings.Split(strings.TrimRight(b.String(), "\n"), "\n") {
		line = strings.TrimRight(line, " ")
		if strings.Trim(line, "-") == "" && screen > 0 {
			line = line[:min(len(line), screen)]
		}
		out = append(out, line)
	}
	return out
}

// plainRows shows a table that cannot be drawn.
func plainRows(rows [][]string) []string {
	var out []string
	for _, row := range rows {
		out = append(out, strings.ReplaceAll(strings.Join(row, " | "), "\n", " "))
	}
	return out
}

// wrapCell breaks a cell by words, without a hanging indent.
func wrapCell(s string, columns int) []string {
	var out []string
	for {
		head, rest := fit(strings.TrimRight(s, " "), columns)
		out = append(out, head)
		if rest == "" {
			return out
		}
		s = rest
	}
}

// columnWidths are the widths that cells want, shrunk until the table fits: no
// column shrinks while a wider one is left, nor below its longest word. ok is
// false when there is no room for that, or too little to read.
func columnWidths(rows [][]string, screen int) (widths []int, ok bool) {
	widths, least := make([]int, len(rows[0])), make([]int, len(rows[0]))
	sum := gap * (len(widths) - 1)
	for i := range widths {
		for _, row := range rows {
			widths[i] = max(widths[i], width(row[i]), 1)
			for _, w := range strings.Fields(row[i]) {
				least[i] = max(least[i], width(w))
			}
		}
		least[i] = max(least[i], min(widths[i], broken))
		sum += widths[i]
	}
	for screen > 0 && sum > screen {
		wide := -1
		for i := range widths {
			if widths[i] > least[i] && (wide < 0 || widths[i] > widths[wide]) {
				wide = i
			}
		}
		if wide < 0 {
			return widths, false
		}
		widths[wide]--
		sum--
	}
	return widths, true
}

// Fits reports whether a table has room on the screen without a word cut, and
// with texts that can be read.
func (p *Printer) Fits(t *call.Table) bool {
	_, ok := columnWidths(cells(t), p.Width)
	return ok
}

// listed is a row of a table as one text, for a screen that has no room for the
// table.
func listed(head, row []string) string {
	text, lead := row[0], ": "
	for i, s := range row[1:] {
		if s != "" {
			text += lead + strings.ToLower(head[i+1]) + " " + s
			lead = "; "
		}
	}
	return text
}
