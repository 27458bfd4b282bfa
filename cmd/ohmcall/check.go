package main

import (
	"fmt"
	"os"
	"strconv"

	"github.com/spf13/cobra"

	"ohmcall/calc/failpoint"
	"ohmcall/notebook"
	"ohmcall/notebook/fleet"
	"ohmcall/notebook/journal"
	"ohmcall/notebook/script"
)

func (a *app) checkCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "check FILE.md|FOLDER...",
		Short: "replay notebooks and report what their lines do not bear out",
		Long: `Replays the lines of each notebook and compares every reply, section and digest
with what they give, of a folder those in it. Differences are reported as
FILE:LINE:COLUMN. Nothing is written.`,
		Args: atLeast(1),
		RunE: func(_ *cobra.Command, args []string) error {
			for _, name := range args {
				if i, err := os.Stat(name); err != nil || !i.IsDir() {
					a.checkFile(name)
					continue
				}
				items, err := a.scan([]string{name}, fleet.Options{})
				if err != nil {
					return err
				}
				none := true
				for it := range items {
					if it.State == fleet.Foreign {
						fmt.Fprintf(a.out, "%s: %s\n", script.Clean(it.Path), it.Reason)
						continue
					}
					none = false
					a.checkFile(it.Path)
				}
				if none {
					fmt.Fprintf(a.out, "%s: there are no notebooks here\n", script.Clean(name))
				}
			}
			return nil
		},
	}
}

func (a *app) checkFile(name string) {
	shown := script.Clean(name)
	content, err := journal.Read(journal.Disk{}, name)
	if err == nil {
		var r *notebook.Report
		if r, err = notebook.Check(content); err == nil {
			for _, f := range r.Faults {
				fmt.Fprintf(a.out, "%s:%d:%d: %s\n", shown, f.Row, f.Col, script.Clean(f.Text))
			}
			if len(r.Faults) > 0 {
				a.code = fault
				return
			}
			state := "closed, digest agrees"
			if r.Open {
				state = "open"
			}
			if r.Behind {
				state += ", the part above the log is older than the log"
			}
			if r.Torn != "" {
				state += ", a last line was cut off and never counted"
			}
			fmt.Fprintf(a.out, "%s: %s to themselves; %s\n", shown, replaying(len(r.Record.Log)), state)
			return
		}
	}
	a.code = fault
	msg := script.Clean(err.Error())
	if failpoint.On(failpoint.ErrorRaw) {
		msg = err.Error()
	}
	fmt.Fprintf(a.err, "ohmcall: %s: %s\n", shown, msg)
}

func (a *app) redactCommand() *cobra.Command {
	var output string
	c := &cobra.Command{
		Use:         "redact FILE.md -o NEW.md",
		Annotations: writes,
		Short:       "write a copy of a notebook without client and site",
		Long: `Replaces what client and site lines say by a mark, keeps the technical content
replayable, and says in the copy that it was done. The original stays as it is.
What notes, remarks and other free texts say of people is for you to look
through.`,
		Args: exact(1),
		RunE: func(_ *cobra.Command, args []string) error {
			if output == "" {
				return usageError{fmt.Errorf("name the copy with -o NEW.md")}
			}
			content, err := journal.Read(journal.Disk{}, args[0])
			if err != nil {
				return err
			}
			clean, err := notebook.Redact(content)
			if err != nil {
				return err
			}
			j, err := journal.Create(journal.Disk{}, output, clean)
			if err != nil {
				return err
			}
			fmt.Fprintf(a.out, "%s: client and site are replaced; read the notes and remarks yourself\n", output)
			return j.Close()
		},
	}
	c.Flags().StringVarP(&output, "output", "o", "", "the copy to write")
	return c
}

// homeShort writes a path with ~ for the home directory.
func homeShort(path string) string {
	home, err := os.UserHomeDir()
	if err != nil || len(home) < 2 || len(path) <= len(home) || path[:len(home)] != home {
		return path
	}
	return "~" + path[len(home):]
}

func replaying(n int) string {
	if n == 1 {
		return "1 entry replays"
	}
	return strconv.Itoa(n) + " entries replay"
}
