package fleet

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"strconv"
	"strings"
)

// Format is how rows are written to files.
type Format string

const (
	// CSV is RFC 4180 with a line of column names; formulas are made harmless.
	CSV Format = "csv"
	// JSONL is one JSON object a line.
	JSONL Format = "jsonl"
)

// encoder writes rows of one table to a buffer; skip is the column left out,
// -1 for none.
type encoder struct {
	format Format
	table  *Table
	skip   int
	cells  []string
	line   bytes.Buffer
	csv    *csv.Writer
}

func newEncoder(format Format, t *Table, skip int) *encoder {
	e := &encoder{format: format, table: t, skip: skip}
	e.csv = csv.NewWriter(&e.line)
	e.csv.UseCRLF = true
	return e
}

func (e *encoder) head(b *bytes.Buffer) {
	if e.format != CSV {
		return
	}
	e.cells = e.cells[:0]
	for i, c := range e.table.Columns {
		if i != e.skip {
			e.cells = append(e.cells, c.Name)
		}
	}
	e.writeCells(b)
}

func (e *encoder) writeCells(b *bytes.Buffer) {
	e.line.Reset()
	// A buffer takes every write, so neither of these can fail.
	e.csv.Write(e.cells)
	e.csv.Flush()
	b.Write(e.line.Bytes())
}

func (e *encoder) row(b *bytes.Buffer, values []any) error {
	if e.format == CSV {
		e.cells = e.cells[:0]
		for i, v := range values {
			if i != e.skip {
				e.cells = append(e.cells, cellOf(v))
			}
		}
		e.writeCells(b)
		return nil
	}
	b.WriteByte('{')
	first := true
	for i, v := range values {
		if i == e.skip {
			continue
		}
		if !first {
			b.WriteByte(',')
		}
		first = false
		b.WriteString(strconv.Quote(e.table.Columns[i].Name) + ":")
		if err := writeJSON(b, v); err != nil {
			return err
		}
	}
	b.WriteString("}\n")
	return nil
}

// writeJSON writes one value without the escapes that JSON adds for HTML.
// The common values go without an encoder, which costs more than they do.
func writeJSON(b *bytes.Buffer, v any) error {
	switch x := v.(type) {
	case nil:
		b.WriteString("null")
		return nil
	case int64:
		b.Write(strconv.AppendInt(b.AvailableBuffer(), x, 10))
		return nil
	case float64:
		b.Write(strconv.AppendFloat(b.AvailableBuffer(), x, 'g', -1, 64))
		return nil
	case bool:
		b.Write(strconv.AppendBool(b.AvailableBuffer(), x))
		return nil
	case string:
		if simple(x) {
			b.WriteByte('"')
			b.WriteString(x)
			b.WriteByte('"')
			return nil
		}
	}
	enc := json.NewEncoder(b)
	enc.SetEscapeHTML(false)
	if err := enc.Encode(v); err != nil {
		return err
	}
	b.Truncate(b.Len() - 1) // the line feed
	return nil
}

// simple reports whether a text stands in JSON as it is.
func simple(s string) bool {
	for i := range len(s) {
		if c := s[i]; c < 0x20 || c >= 0x7F || c == '"' || c == '\\' {
			return false
		}
	}
	return true
}

func cellOf(v any) string {
	switch x := v.(type) {
	case string:
		return Cell(x)
	case []string:
		return Cell(strings.Join(x, "; "))
	case int64:
		return strconv.FormatInt(x, 10)
	case float64:
		return strconv.FormatFloat(x, 'g', digits, 64)
	case bool:
		return strconv.FormatBool(x)
	}
	return ""
}
