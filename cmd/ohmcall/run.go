package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"syscall"

	"github.com/spf13/cobra"

	"ohmcall/notebook"
	"ohmcall/notebook/call"
	"ohmcall/notebook/journal"
	"ohmcall/repl/term"
)

func (a *app) runCommand() *cobra.Command {
	var output string
	var asJSON bool
	c := &cobra.Command{
		Use:         "run SCRIPT.call|- [-o FILE.md] [--json]",
		Annotations: writes,
		Short:       "apply a script's lines and write its notebook",
		Long: `Applies the lines of a script, or of standard input for -, and shows the replies.

With -o the notebook is kept in FILE.md entry by entry, exactly as the prompt
does: a file that exists is resumed, unless its call is closed; lines from standard
input open that again. Without -o a script's notebook is written
into the notebooks folder at the end; lines from standard input are then only
answered, not stored, and keep is refused. With --json one JSON object per entry
is printed.`,
		Args: exact(1),
		RunE: func(_ *cobra.Command, args []string) error { return a.runScript(args[0], output, asJSON) },
	}
	c.Flags().StringVarP(&output, "output", "o", "", "the notebook to write")
	c.Flags().BoolVar(&asJSON, "json", false, "print one JSON object per entry")
	return c
}

func (a *app) runScript(script, output string, asJSON bool) error {
	dir, err := a.folder()
	if err != nil {
		return err
	}
	var lines lineSource
	host := a.host(dir)
	if script == "-" {
		lines = readLines(a.in)
	} else {
		content, err := (journal.Disk{}).ReadFile(script)
		if err != nil {
			return usageError{err}
		}
		if bytes.HasPrefix(content, []byte("---\nohmcall:")) {
			return usageError{fmt.Errorf("%s is a notebook and no script; ohmcall %[1]s goes on with it, ohmcall check %[1]s replays it", script)}
		}
		lines = readLines(bytes.NewReader(content))
		host = a.host(dir, filepath.Dir(script))
	}
	if script == "-" && output == "" {
		host.Keep = func(string) error { return errors.New("these lines are only answered; -o FILE.md stores them") }
	}
	n := notebook.New(host)
	if output != "" {
		there := notebook.Exists(output)
		if n, err = openOrCreate(host, output); err != nil {
			return err
		}
		if there && script != "-" && n.Call().Closed() {
			n.Close()
			return usageError{fmt.Errorf("%s holds a call that is closed, and %s would be added to it; -o another file writes it anew, ohmcall run - -o %[1]s adds lines from standard input", output, script)}
		}
	}
	show := a.printer()
	if asJSON {
		show = &jsonPrinter{out: a.out, err: a.err}
	}
	if err := a.feed(n, lines, show); err != nil {
		n.Close()
		return err
	}
	if err := a.closing(n); err != nil {
		return fmt.Errorf("the notebook cannot be brought up to date: %w", err)
	}
	if output == "" && script != "-" {
		return a.writeScripted(n, dir, script)
	}
	if output != "" {
		fmt.Fprintf(a.err, "notebook: %s\n", output)
	}
	return nil
}

// writeScripted puts a script's notebook into the folder. The same script
// gives the same bytes when it has a date, and is then not written twice.
func (a *app) writeScripted(n *notebook.Notebook, dir, script string) error {
	if err := makeFolder(dir); err != nil {
		return err
	}
	base := strings.TrimSuffix(filepath.Base(script), filepath.Ext(script))
	content := n.Render()
	for i := 1; ; i++ {
		name := filepath.Join(dir, base+".md")
		if i > 1 {
			name = filepath.Join(dir, fmt.Sprintf("%s-%d.md", base, i))
		}
		have, err := (journal.Disk{}).ReadFile(name)
		if err == nil && bytes.Equal(have, content) {
			fmt.Fprintf(a.err, "notebook: %s, as it was\n", name)
			return nil
		}
		if err == nil {
			continue
		}
		if !os.IsNotExist(err) {
			return err
		}
		j, err := journal.Create(journal.Disk{}, name, content)
		if err != nil {
			return err
		}
		fmt.Fprintf(a.err, "notebook: %s\n", name)
		return j.Close()
	}
}

func openOrCreate(h notebook.Host, name string) (*notebook.Notebook, error) {
	if notebook.Exists(name) {
		n, err := notebook.Open(h, name)
		return n, unwritable(err, name, "copy the file to another and open it there; ohmcall check, page and digest read it where it is")
	}
	n, err := notebook.Create(h, name)
	return n, unwritable(err, name, "--dir, or a name with its folder, takes another")
}

// unwritable says what works where nothing can be written.
func unwritable(err error, name, works string) error {
	if errors.Is(err, fs.ErrPermission) || errors.Is(err, syscall.EROFS) {
		return fmt.Errorf("nothing can be written in %s; %s: %w", cleanName(filepath.Dir(name)), works, err)
	}
	return err
}

// shower shows what came of a line.
type shower interface {
	Entry(e call.Entry)
	Fault(line string, err error)
}

func (a *app) printer() shower { return &term.Printer{Out: a.out, Err: a.err} }

// lineSource gives line after line; io.EOF ends it. A line that is too long
// comes as an error of its own and does not end it.
type lineSource func() (string, error)

// feed applies line after line. A refused line is shown and passed over; an
// entry that cannot be stored ends it.
func (a *app) feed(n *notebook.Notebook, next lineSource, show shower) error {
	for row := 1; ; row++ {
		line, err := next()
		if errors.Is(err, io.EOF) {
			return nil
		}
		if err == nil {
			var entries []call.Entry
			full := n.Call().Expand(line)
			entries, err = n.Do(line)
			line = full
			for _, e := range entries {
				show.Entry(e)
				for _, s := range a.asides(n, e) {
					fmt.Fprintln(a.err, s)
				}
			}
		}
		if err == nil || errors.Is(err, call.ErrBlank) {
			continue
		}
		var unsaved *notebook.SaveError
		if errors.As(err, &unsaved) {
			show.Fault(line, err)
			return fmt.Errorf("line %d and all after it are not stored: %w", row, unsaved.Err)
		}
		a.code = fault
		fmt.Fprintf(a.err, "line %d:\n", row)
		show.Fault(line, err)
	}
}
