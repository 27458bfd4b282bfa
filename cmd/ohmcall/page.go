package main

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"ohmcall/notebook"
	"ohmcall/notebook/fleet"
	"ohmcall/notebook/journal"
	"ohmcall/notebook/record"
	"ohmcall/notebook/script"
	"ohmcall/notebook/sheet"
)

func cleanName(s string) string { return script.Clean(s) }

func (a *app) pageCommand() *cobra.Command {
	var output string
	var replace bool
	c := &cobra.Command{
		Use:         "page FILE.md [-o FILE.html]",
		Annotations: writes,
		Short:       "write a call as one HTML file to read and to print",
		Long: `Replays the notebook and writes one self-contained HTML file: no network, no
script, light and dark, fit to print. Without -o it is written into the folder
one stands in, under the notebook's name. - writes to standard output. That the
call is a call-back or a return, or that one followed, is told by the closed calls
of its folder.`,
		Args: exact(1),
		RunE: func(_ *cobra.Command, args []string) error {
			content, err := journal.Read(journal.Disk{}, args[0])
			if err != nil {
				return err
			}
			r, err := notebook.Check(content)
			if err != nil {
				return fmt.Errorf("%s: %w", cleanName(args[0]), err)
			}
			if len(r.Faults) > 0 {
				a.code = fault
				fmt.Fprintf(a.err, "ohmcall: the notebook differs from what its lines say in %s; ohmcall check lists them\n", notebook.Places(len(r.Faults)))
			}
			html, err := sheet.Render(r.Record, r.Remarks, r.Warning(), a.beside(args[0], &r.Record.Header)...)
			if err != nil {
				return err
			}
			if output == "-" {
				_, err := a.out.Write(html)
				return err
			}
			if output == "" {
				base := filepath.Base(args[0])
				output = strings.TrimSuffix(base, filepath.Ext(base)) + ".html"
			}
			if replace && !journal.Begins(output, doctype) {
				return usageError{fmt.Errorf("%s is no page; --replace writes over a page alone", cleanName(output))}
			}
			if err := writeNew(output, html, replace); err != nil {
				return err
			}
			fmt.Fprintf(a.err, "page: %s\n", cleanName(output))
			return nil
		},
	}
	c.Flags().StringVarP(&output, "output", "o", "", "the file to write")
	c.Flags().BoolVar(&replace, "replace", false, "write over a page of that name")
	return c
}

// doctype is what a page begins with.
const doctype = "<!DOCTYPE html>"

// beside tells what a call is to the last one before it on the same unit that is closed
// in its folder, and what the first one after it is to it. No notebook can tell it of
// itself: it holds what its own lines say.
func (a *app) beside(path string, h *record.Header) []record.Fact {
	if h.Serial == "" {
		return nil
	}
	k, err := fleet.Learn(context.Background(), filepath.Dir(path))
	if err != nil {
		fmt.Fprintf(a.err, "ohmcall: whether the call is a call-back is not told: %s\n", cleanName(err.Error()))
		return nil
	}
	var out []record.Fact
	if v := k.VisitOf(h); v != nil && v.Told(h) != "" {
		day, _, _ := strings.Cut(v.Header.Started, "T")
		out = append(out, record.Fact{Label: "Follows on", Text: day + ": " + v.Told(h)})
	}
	if on, told := k.FollowedBy(h); told != "" {
		out = append(out, record.Fact{Label: "Followed by", Text: on + ": " + told})
	}
	return out
}

// writeNew writes a file for its owner alone; it takes the place of another
// only when asked to.
func writeNew(name string, content []byte, replace bool) error {
	flags := os.O_WRONLY | os.O_CREATE | os.O_EXCL
	if replace {
		flags = os.O_WRONLY | os.O_CREATE | os.O_TRUNC
	}
	f, err := os.OpenFile(name, flags, 0o600)
	if errors.Is(err, os.ErrExist) {
		return usageError{fmt.Errorf("%s exists; --replace writes over it, -o names another", cleanName(name))}
	}
	if err != nil {
		return err
	}
	if _, err := f.Write(content); err != nil {
		f.Close()
		return err
	}
	return f.Close()
}
