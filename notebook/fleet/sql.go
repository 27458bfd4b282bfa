package fleet

import (
	"fmt"
	"strconv"
	"strings"
)

// sqlTypes are the column types of SQLite's strict tables.
var sqlTypes = map[Type]string{Text: "TEXT", List: "TEXT", Integer: "INTEGER", Real: "REAL", Boolean: "INTEGER", Time: "TEXT", Date: "TEXT"}

// createSQL is the statement that makes the table in SQLite, keys included.
func (t *Table) createSQL() string {
	var b strings.Builder
	fmt.Fprintf(&b, "CREATE TABLE %s (\n", t.Name)
	for _, c := range t.Columns {
		fmt.Fprintf(&b, "  %q %s", c.Name, sqlTypes[c.Type])
		if !c.Null {
			b.WriteString(" NOT NULL")
		}
		if c.Type == Boolean {
			fmt.Fprintf(&b, " CHECK (%q IN (0, 1))", c.Name)
		}
		b.WriteString(",\n")
	}
	fmt.Fprintf(&b, "  PRIMARY KEY (%s)", strings.Join(t.Key, ", "))
	if t.Parent != "" {
		fmt.Fprintf(&b, ",\n  FOREIGN KEY (call_id) REFERENCES %s (call_id)", t.Parent)
	}
	b.WriteString("\n) STRICT")
	return b.String()
}

// SQLPreamble are the statements before the first row.
func SQLPreamble(tables []*Table) []string {
	out := []string{"PRAGMA user_version = " + strconv.Itoa(SchemaVersion)}
	for _, t := range tables {
		out = append(out, t.createSQL())
	}
	out = append(out, "CREATE INDEX calls_by_date ON calls (date)", "CREATE INDEX calls_by_serial ON calls (serial_key)",
		"CREATE TABLE schema_columns (\"table\" TEXT NOT NULL, \"column\" TEXT NOT NULL, type TEXT NOT NULL, unit TEXT NOT NULL, help TEXT NOT NULL, PRIMARY KEY (\"table\", \"column\")) STRICT")
	for _, t := range tables {
		for _, c := range t.Columns {
			out = append(out, "INSERT INTO schema_columns VALUES ("+strings.Join([]string{quoteSQL(t.Name), quoteSQL(c.Name), quoteSQL(string(c.Type)), quoteSQL(c.Unit), quoteSQL(c.Help)}, ", ")+")")
		}
	}
	return out
}

// SQLValue turns a value of a Sink's row into one that SQL has.
func SQLValue(v any) any {
	switch x := v.(type) {
	case []string:
		return strings.Join(x, "; ")
	case bool:
		if x {
			return int64(1)
		}
		return int64(0)
	}
	return v
}

func quoteSQL(s string) string { return "'" + strings.ReplaceAll(s, "'", "''") + "'" }
