package main

import (
	"errors"
	"fmt"
	"iter"
	"os"
	"runtime/debug"
	"strings"
	"time"

	"github.com/spf13/cobra"
	"golang.org/x/term"

	"ohmcall/notebook"
	"ohmcall/notebook/fleet"
	"ohmcall/notebook/fleet/sqlite"
	"ohmcall/notebook/record"
)

// scanFlags are the flags that pick calls.
type scanFlags struct{ fleet.Filter }

func (f *scanFlags) on(c *cobra.Command) {
	c.Flags().StringVar(&f.From, "from", "", "first day, as 2026-03-02")
	c.Flags().StringVar(&f.To, "to", "", "last day, as 2026-03-31")
	c.Flags().StringVar(&f.Technician, "technician", "", "part of the technician's name")
	c.Flags().StringVar(&f.Model, "model", "", "part of the model of the appliance or its machine")
	c.Flags().StringVar(&f.Cause, "cause", "", "the cause found: its code, or whole words of its name")
	c.Flags().StringVar(&f.Result, "result", "", "part of the result, such as unsafe or waits; or open, changed, call-back")
	c.Flags().StringVar(&f.Text, "text", "", "a text in what was typed or in the front matter")
}

// replay is how a notebook that is not trusted is read.
func replay(content []byte) (*record.Record, []fleet.Fault, error) {
	r, err := notebook.Check(content)
	if err != nil {
		return nil, nil, err
	}
	faults := make([]fleet.Fault, len(r.Faults))
	for i, f := range r.Faults {
		faults[i] = fleet.Fault{Row: f.Row, Col: f.Col, Text: f.Text}
	}
	return r.Record, faults, nil
}

// garbage is how much garbage in percent of what is in use may come together before it
// is collected while a folder is gone through: below softMemory there is room, and a
// digest takes a tenth less time.
const garbage = 200

// scan goes through the folder named, or the notebooks folder.
func (a *app) scan(args []string, o fleet.Options) (iter.Seq[fleet.Item], error) {
	if len(args) == 0 {
		dir, err := a.folder()
		if err != nil {
			return nil, err
		}
		if !notebook.Exists(dir) {
			return nil, usageError{fmt.Errorf("there is no notebooks folder yet: the first call makes %s; --dir, OHMCALL_DIR or a name behind the word takes another", cleanName(homeShort(dir)))}
		}
		args = []string{dir}
	}
	for _, p := range args {
		if err := there(p); err != nil {
			return nil, err
		}
	}
	if os.Getenv("GOGC") == "" {
		debug.SetGCPercent(garbage)
	}
	o.Replay, o.Renamed = replay, true
	bar := a.bar()
	o.Progress = bar.step
	items := fleet.Scan(args, o)
	if o.Records {
		items = fleet.Once(args, items)
	}
	return func(yield func(fleet.Item) bool) {
		defer bar.clear()
		items(yield)
	}, nil
}

// there tells in plain words why a folder or file cannot be gone through.
func there(name string) error {
	_, err := os.Stat(name)
	if errors.Is(err, os.ErrNotExist) {
		err = fmt.Errorf("there is no folder or file %s; name one that is there, or none for the notebooks folder", cleanName(name))
	}
	if err != nil {
		return usageError{err}
	}
	return nil
}

// bar shows progress on a terminal once a scan has taken half a second. It is
// a line of our own: the libraries for it weigh 0.1 to 1.8 MB in a binary that
// has a bound on its size.
type bar struct {
	on      bool
	started time.Time
	shown   time.Time // last, zero when never
	app     *app
}

const (
	barAfter = 500 * time.Millisecond
	barEvery = 100 * time.Millisecond
	barWidth = 30
)

func (a *app) bar() *bar {
	f, ok := a.err.(*os.File)
	return &bar{on: ok && term.IsTerminal(int(f.Fd())) && os.Getenv("TERM") != "dumb", started: time.Now(), app: a}
}

func (b *bar) step(done, total int) {
	now := time.Now()
	if !b.on || total == 0 || now.Sub(b.started) < barAfter || now.Sub(b.shown) < barEvery {
		return
	}
	b.shown = now
	full := barWidth * done / total
	fmt.Fprintf(b.app.err, "\rnotebooks [%s%s] %d of %d", strings.Repeat("=", full), strings.Repeat(" ", barWidth-full), done, total)
}

func (b *bar) clear() {
	if !b.shown.IsZero() {
		fmt.Fprintf(b.app.err, "\r%s\r", strings.Repeat(" ", 2*barWidth+30))
	}
}

func (a *app) exportCommand() *cobra.Command {
	var f scanFlags
	var form, to, layout, db string
	var entries, replace, schema bool
	c := &cobra.Command{
		Use:         "export [FOLDER|FILE.md...] (--into DIR | --sqlite FILE | --schema)",
		Annotations: writes,
		Short:       "calls, readings, verdicts, sums and parts as tables for other programs",
		Long: `Writes the calls of a folder as tables: CSV or JSON Lines in a new folder, flat
or cut by day for engines that read partitions, or a new SQLite database with
foreign keys. Units are UCUM codes, times ISO 8601. --schema prints what each
column means.`,
		RunE: func(_ *cobra.Command, args []string) error {
			if schema {
				return fleet.SchemaText(a.out, fleet.Tables(true))
			}
			if err := f.Check(); err != nil {
				return usageError{err}
			}
			var sink fleet.Sink
			var err error
			switch {
			case to != "" && db != "":
				return usageError{fmt.Errorf("--into and --sqlite are two ways; take one at a time")}
			case db != "":
				if sink, err = sqlite.File(db, replace); err != nil {
					return usageError{err}
				}
			case to == "":
				return usageError{fmt.Errorf("say where to: --into DIR or --sqlite FILE")}
			case form != string(fleet.CSV) && form != string(fleet.JSONL):
				return usageError{fmt.Errorf("--as takes csv or jsonl, not %q", form)}
			case layout != string(fleet.Flat) && layout != string(fleet.ByDate):
				return usageError{fmt.Errorf("--layout takes flat or by-date, not %q", layout)}
			default:
				sink = fleet.Folder(to, fleet.Format(form), fleet.Layout(layout))
			}
			return a.export(args, f.Filter, sink, entries)
		},
	}
	f.on(c)
	c.Flags().StringVar(&to, "into", "", "the new folder to write")
	c.Flags().StringVar(&form, "as", "csv", "csv or jsonl")
	c.Flags().StringVar(&layout, "layout", "flat", "flat, or by-date for one file a day")
	c.Flags().StringVar(&db, "sqlite", "", "the new SQLite database to write")
	c.Flags().BoolVar(&replace, "replace", false, "put the database in the place of another one")
	c.Flags().BoolVar(&entries, "entries", false, "the typed lines too")
	c.Flags().BoolVar(&schema, "schema", false, "print what the tables hold, and stop")
	return c
}

func (a *app) export(args []string, f fleet.Filter, sink fleet.Sink, entries bool) error {
	items, err := a.scan(args, fleet.Options{Text: f.Text, Records: true})
	if err != nil {
		return err
	}
	e, err := fleet.Export(fleet.Select(items, f), sink, fleet.Tables(entries))
	if err != nil {
		return err
	}
	for _, p := range e.Problems {
		if p.State != fleet.Foreign && p.State != fleet.Redacted {
			a.code = fault
		}
		fmt.Fprintf(a.err, "left out: %s: %s\n", cleanName(p.Path), p.Reason)
	}
	fmt.Fprintf(a.out, "%d calls", e.Calls)
	for _, t := range fleet.Tables(entries) {
		if t.Name != "calls" {
			fmt.Fprintf(a.out, ", %d %s", e.Rows[t.Name], t.Name)
		}
	}
	fmt.Fprintln(a.out)
	return nil
}
