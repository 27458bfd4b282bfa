package main

import (
	"cmp"
	"fmt"

	"github.com/spf13/cobra"

	"ohmcall/notebook/call"
	"ohmcall/notebook/fleet"
	"ohmcall/repl/term"
)

func (a *app) digestCommand() *cobra.Command {
	var f scanFlags
	var form string
	c := &cobra.Command{
		Use:   "digest [FOLDER|FILE.md...]",
		Short: "many calls at a glance: what was found, what is unsafe, unproved or missing",
		Long: `Lists the calls of a folder, unsafe and unproved ones first, with totals, calls
on the same unit within 30 days of an earlier one, parts used and causes
found. Closed notebooks whose log, front matter and sections have the digests that
were sealed are read from their front matter; all others are replayed. Bad files are
listed with the reason and stop nothing. Nothing is written.`,
		RunE: func(_ *cobra.Command, args []string) error { return a.digest(args, f.Filter, form) },
	}
	f.on(c)
	c.Flags().StringVar(&form, "as", "table", "table, markdown, csv or jsonl")
	return c
}

func (a *app) digest(args []string, f fleet.Filter, form string) error {
	if err := f.Check(); err != nil {
		return usageError{err}
	}
	switch form {
	case "table", "markdown", "csv", "jsonl":
	default:
		return usageError{fmt.Errorf("--as takes table, markdown, csv or jsonl, not %q", form)}
	}
	items, err := a.scan(args, fleet.Options{Text: f.Text})
	if err != nil {
		return err
	}
	d := fleet.NewDigest(items, f)
	for _, p := range d.Problems {
		if p.State != fleet.Foreign && p.State != fleet.Redacted {
			a.code = fault
		}
	}
	switch form {
	case "markdown":
		return d.Markdown(a.out)
	case "csv":
		return d.CSV(a.out)
	case "jsonl":
		return d.JSONL(a.out)
	}
	layOut(&term.Printer{Out: a.out, Err: a.err, Width: cmp.Or(widthOf(a.outFile()), pipedWidth)}, d)
	return nil
}

const (
	// wideTable is the width from which the calls stand in a table.
	wideTable = 160
	// pipedWidth is how wide the digest is written where there is no screen.
	pipedWidth = 100
)

// layOut shows a digest on a screen. What has no room in a table without a
// word cut stands in lines.
func layOut(p *term.Printer, d *fleet.Digest) {
	if s := d.Nothing(); s != "" {
		p.Say(call.Plain, s)
	}
	calls, rest := d.Screen()
	switch t := tableOf(calls); {
	case p.Width >= wideTable && p.Fits(t):
		p.Reply(&call.Reply{Table: t})
	default:
		for i := range d.Rows {
			for _, l := range d.Rows[i].Brief() {
				p.Say(call.Plain, l)
			}
			// Not broken, so that it can be copied.
			fmt.Fprintln(p.Out, "  "+cleanName(homeShort(d.Rows[i].Path)))
		}
	}
	for _, t := range rest {
		p.Say(call.Plain, "")
		p.Say(call.Plain, t.Title)
		p.Reply(&call.Reply{Table: tableOf(t)})
	}
	// Where the screen ends stands what is to be looked at.
	if s := d.First(); s != "" {
		p.Say(call.Plain, "")
		p.Say(call.Plain, s)
	}
}

func tableOf(t fleet.TextTable) *call.Table { return &call.Table{Head: t.Head, Rows: t.Rows} }
