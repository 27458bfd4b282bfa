package fleet

import (
	"fmt"
	"io"
	"strings"
	"time"

	"ohmcall/notebook/page"
	"ohmcall/notebook/record"
	"ohmcall/notebook/script"
)

// SchemaVersion counts the versions of the exported tables. A column that
// goes or changes its meaning raises it; a new column at the end does not.
const SchemaVersion = 1

// Type is the type of a column.
type Type string

const (
	// Text is UTF-8 without controls.
	Text Type = "text"
	// List is several texts: an array in JSON, joined by "; " elsewhere.
	List Type = "list"
	// Integer is a whole number.
	Integer Type = "integer"
	// Real is a number with a decimal point.
	Real Type = "real"
	// Boolean is true or false; 1 or 0 in SQL.
	Boolean Type = "boolean"
	// Time is ISO 8601 to the second with the offset of the call's own clock.
	Time Type = "time"
	// Date is ISO 8601, the day by the call's own clock.
	Date Type = "date"
)

// Column is one column of an exported table.
type Column struct {
	Name string
	Type Type
	Unit string // UCUM code, or the column that holds it; "" when it has none
	Help string
	Null bool // may be absent: empty in CSV, null in JSON and SQL
}

// Table is one exported table.
type Table struct {
	Name, Help string
	Columns    []Column
	Key        []string // primary key
	// Parent is the table that call_id refers to, "" for calls itself.
	Parent string

	rows func(*Item, func(values []any) error) error
}

// col is a column with the way to its value in a row, which is a pointer; n
// counts the rows of one call from 1. A nil value is an absent one.
type col struct {
	Column
	get func(it *Item, r any, n int) any
}

// rows hands on the rows of one call, each as a pointer.
type rows func(it *Item, emit func(r any) error) error

func table(name, help string, list rows, cols ...col) *Table {
	t := &Table{Name: name, Help: help, Key: []string{"call_id"}}
	lead := []col{
		{Column{"call_id", Text, "", "names the call in every table", false}, func(it *Item, _ any, _ int) any { return it.ID }},
		{Column{"date", Date, "", "day on which the call began, by its own clock", true}, func(it *Item, _ any, _ int) any { return absent(date(&it.Header)) }},
	}
	if name != "calls" {
		t.Parent, t.Key = "calls", append(t.Key, "n")
		lead = append(lead, col{Column{"n", Integer, "", "counts the rows of one call from 1", false}, func(_ *Item, _ any, n int) any { return int64(n) }})
	}
	cols = append(lead, cols...)
	for _, c := range cols {
		t.Columns = append(t.Columns, c.Column)
	}
	t.rows = func(it *Item, emit func([]any) error) error {
		values := make([]any, len(cols))
		n := 0
		return list(it, func(r any) error {
			n++
			for k := range cols {
				values[k] = cols[k].get(it, r, n)
			}
			return emit(values)
		})
	}
	return t
}

// The shapes that columns come in.

//go:noinline
func text[T any](name, help string, get func(*T) string) col {
	return col{Column{name, Text, "", help, true}, func(_ *Item, r any, _ int) any { return absent(script.Clean(get(r.(*T)))) }}
}

//go:noinline
func list[T any](name, help string, get func(*T) []string) col {
	return col{Column{name, List, "", help, false}, func(_ *Item, r any, _ int) any { return cleaned(get(r.(*T))) }}
}

func cleaned(list []string) []string {
	out := []string{}
	for _, s := range list {
		out = append(out, script.Clean(s))
	}
	return out
}

//go:noinline
func integer[T any](name, unit, help string, get func(*T) int) col {
	return col{Column{name, Integer, unit, help, false}, func(_ *Item, r any, _ int) any { return int64(get(r.(*T))) }}
}

// real is a number that is absent when ok is false.
//
//go:noinline
func real[T any](name, unit, help string, get func(*T) (x float64, ok bool)) col {
	return col{Column{name, Real, unit, help, true}, func(_ *Item, r any, _ int) any {
		if x, ok := get(r.(*T)); ok && x-x == 0 {
			return x
		}
		return nil
	}}
}

//go:noinline
func boolean[T any](name, help string, get func(*T) bool) col {
	return col{Column{name, Boolean, "", help, false}, func(_ *Item, r any, _ int) any { return get(r.(*T)) }}
}

//go:noinline
func moment[T any](name, help string, get func(*T) time.Time) col {
	return col{Column{name, Time, "", help, true}, func(_ *Item, r any, _ int) any {
		if at := get(r.(*T)); !at.IsZero() {
			return at.Format(page.TimeLayout)
		}
		return nil
	}}
}

func absent(s string) any {
	if s == "" {
		return nil
	}
	return s
}

// rec hands on the record's list, nothing when the call was not replayed.
func rec[T any](get func(*record.Record) []T) rows {
	return func(it *Item, emit func(any) error) error {
		if it.Record == nil {
			return nil
		}
		list := get(it.Record)
		for i := range list {
			if err := emit(&list[i]); err != nil {
				return err
			}
		}
		return nil
	}
}

// SchemaText writes the schema as Markdown; it derives from the tables
// themselves.
func SchemaText(w io.Writer, tables []*Table) error {
	var b strings.Builder
	fmt.Fprintf(&b, "# Exported tables, schema version %d\n\n", SchemaVersion)
	b.WriteString("Times are ISO 8601 with the offset of the call's own clock, units are UCUM codes, numbers have a decimal point.\n" +
		"Texts are UTF-8 without control characters; in CSV files a text that a spreadsheet would take for a formula, or for a number that it writes otherwise (000123), has an apostrophe in front.\n" +
		"An absent value is empty in CSV and null in JSON and SQL; a list is an array in JSON and joined by \"; \" elsewhere.\n\n" +
		"`call_id` is the first 12 bytes, in hexadecimal, of the SHA-256 of the first line of the call's log, a line feed and the file's name\n" +
		"without its folder. It stays when the call grows, is closed, or is moved to another folder; of two calls that would share one,\n" +
		"the later in path order takes its path below the scanned folder in place of the name.\n" +
		"In a layout by date the column `date` stands in the folder's name and not in the file; calls without a date are under `__HIVE_DEFAULT_PARTITION__`.\n")
	for _, t := range tables {
		fmt.Fprintf(&b, "\n## %s\n\n%s. Key: %s.", t.Name, t.Help, strings.Join(t.Key, ", "))
		if t.Parent != "" {
			fmt.Fprintf(&b, " `call_id` refers to `%s`.", t.Parent)
		}
		b.WriteString("\n\n")
		tt := TextTable{Head: []string{"Column", "Type", "Unit", "Absent", "Meaning"}}
		for _, c := range t.Columns {
			null := "never"
			if c.Null {
				null = "possible"
			}
			tt.Rows = append(tt.Rows, []string{c.Name, string(c.Type), c.Unit, null, c.Help})
		}
		tt.markdown(&b)
	}
	_, err := io.WriteString(w, b.String())
	return err
}
