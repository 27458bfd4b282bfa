package main

import (
	"fmt"
	"time"

	"github.com/spf13/cobra"

	"ohmcall/notebook"
)

// helpCommand answers `ohmcall help`: a subcommand's help, or that of a word
// of the language.
func (a *app) helpCommand(root *cobra.Command) *cobra.Command {
	return &cobra.Command{
		Use:   "help [SUBCOMMAND|language|WORD]",
		Short: "help on a subcommand, on the language, or on one of its words",
		Args:  atMost(1),
		RunE: func(_ *cobra.Command, args []string) error {
			if len(args) == 0 {
				return root.Help()
			}
			for _, c := range root.Commands() {
				if c.Name() == args[0] {
					return c.Help()
				}
			}
			entries, err := notebook.New(notebook.Host{Now: time.Now}).Do("help " + args[0])
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
