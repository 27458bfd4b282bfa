package main

import (
	"fmt"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"ohmcall/notebook"
)

// helpCommand answers `ohmcall help`: a subcommand's help, or what help says
// in a call.
func (a *app) helpCommand(root *cobra.Command) *cobra.Command {
	return &cobra.Command{
		Use:   "help [SUBCOMMAND|language|WORD [PART]]",
		Short: "help on a subcommand, on the language, or on one of its words",
		RunE: func(_ *cobra.Command, args []string) error {
			if len(args) == 0 {
				return root.Help()
			}
			if c, rest, err := root.Find(args); err == nil && c != root && len(rest) == 0 {
				return c.Help()
			}
			entries, err := notebook.New(notebook.Host{Now: time.Now}).Do("help " + strings.Join(args, " "))
			if err != nil {
				return usageError{err}
			}
			for _, e := range entries {
				for _, l := range e.Reply.PlainLines() {
					fmt.Fprintln(a.out, l)
				}
			}
			return nil
		},
	}
}
