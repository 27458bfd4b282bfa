package term

import (
	"bytes"
	"math"
	"strings"

	"github.com/olekukonko/tablewriter"
	"github.com/olekukonko/tablewriter/renderer"
	"github.com/olekukonko/tablewriter/tw"

	"ohmcall/notebook/call"
	"ohmcall/notebook/script"
)

const (
	gap       = 2 // columns of space between two columns of a table
	narrowest = 6 // to which a column may shrink

	longestWord = 18 // that is kept whole where it can be
)

// tableLines draws a table: plain columns, a line of dashes under the head.
// Cells are broken by words here, so that a narrow screen takes width from
// the widest columns first.
func tableLines(t *call.Table, screen int) []string {
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
	widths := columnWidths(rows, screen)
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

// columnWidths are the widths that cells want, shrunk until the table fits:
// no column shrinks while a wider one is left, nor below its longest word
// while another has room. Where not all words have room, those over
// longestWord are cut first.
func columnWidths(rows [][]string, screen int) []int {
	want := make([]int, len(rows[0]))
	sum := gap * (len(want) - 1)
	for i := range want {
		for _, row := range rows {
			want[i] = max(want[i], width(row[i]), 1)
		}
		sum += want[i]
	}
	for _, kept := range []int{math.MaxInt, longestWord, 0} {
		least := leastWidths(rows, kept)
		for screen > 0 && sum > screen {
			wide := -1
			for i := range want {
				if want[i] > least[i] && (wide < 0 || want[i] > want[wide]) {
					wide = i
				}
			}
			if wide < 0 {
				break
			}
			want[wide]--
			sum--
		}
	}
	return want
}

// leastWidths are the widths to which columns may shrink when words up to so
// many columns are kept whole.
func leastWidths(rows [][]string, kept int) []int {
	least := make([]int, len(rows[0]))
	for i := range least {
		least[i] = narrowest
		for _, row := range rows {
			if kept == 0 {
				break
			}
			for _, w := range strings.Fields(row[i]) {
				least[i] = max(least[i], min(width(w), kept))
			}
		}
	}
	return least
}

// Fits reports whether a table has room on the screen without a word cut.
func (p *Printer) Fits(t *call.Table) bool {
	rows := append([][]string{t.Head}, t.Rows...)
	whole := leastWidths(rows, math.MaxInt)
	sum := gap * (len(whole) - 1)
	for i, w := range columnWidths(rows, 0) {
		sum += min(w, whole[i])
	}
	return p.Width == 0 || sum <= p.Width
}
