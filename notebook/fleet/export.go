package fleet

import (
	"iter"
)

// Sink takes the rows of an export. Values stand in the order of the table's
// columns: nil, string, int64, float64, bool or []string. They are only
// valid during the call.
type Sink interface {
	Begin(tables []*Table) error
	Row(t *Table, date string, values []any) error
	// Commit makes the export appear under its name.
	Commit() error
	// Abort leaves nothing behind.
	Abort()
}

// Exported says what an export wrote.
type Exported struct {
	Calls    int
	Rows     map[string]int // by table
	Problems []Problem      // files left out, and calls that could not be replayed
}

// Export writes the calls of a scan to a sink; scan with Options.Records, or
// only the table of calls has rows. After an error nothing is left behind.
func Export(items iter.Seq[Item], sink Sink, tables []*Table) (*Exported, error) {
	done := &Exported{Rows: map[string]int{}}
	if err := export(items, sink, tables, done); err != nil {
		sink.Abort()
		return nil, err
	}
	return done, nil
}

func export(items iter.Seq[Item], sink Sink, tables []*Table, done *Exported) error {
	if err := sink.Begin(tables); err != nil {
		return err
	}
	for it := range items {
		if !it.State.Counts() {
			done.Problems = append(done.Problems, Problem{it.Path, it.State, it.Reason})
			continue
		}
		done.Calls++
		day := date(&it.Header)
		for _, t := range tables {
			err := t.rows(&it, func(values []any) error {
				done.Rows[t.Name]++
				return sink.Row(t, day, values)
			})
			if err != nil {
				return err
			}
		}
	}
	return sink.Commit()
}
