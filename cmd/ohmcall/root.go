package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"os/signal"
	"path/filepath"
	"strings"
	"syscall"

	"github.com/spf13/cobra"

	"ohmcall/notebook"
)

// Exit codes.
const (
	done  = 0
	fault = 1 // the record or a check has a fault
	usage = 2 // wrong usage
)

// app is one run of the program: its streams and the flags all subcommands
// share.
type app struct {
	in       *os.File
	out, err io.Writer
	dir      string // the notebooks folder, as flagged
	code     int
	own      map[string]string // the user's snippets, by name
	aside    []string          // to be said behind the next reply
}

// usageError is wrong usage: exit code 2.
type usageError struct{ error }

func run(args []string, in *os.File, out, errs io.Writer) int {
	shown := &written{to: out}
	a := &app{in: in, out: shown, err: errs}
	root := a.root()
	root.SetArgs(args)
	root.SetIn(in)
	root.SetOut(shown)
	root.SetErr(errs)
	if err := root.Execute(); err != nil {
		var u usageError
		fmt.Fprintf(errs, "ohmcall: %v\n", err)
		if errors.As(err, &u) {
			return usage
		}
		return fault
	}
	if shown.err != nil && !errors.Is(shown.err, syscall.EPIPE) {
		fmt.Fprintf(errs, "ohmcall: not all could be shown: %v\n", shown.err)
		return fault
	}
	return a.code
}

// written passes on what is shown and keeps the first error, to be told once
// at the end: nobody who shows something has another way to go. That a reader
// has gone away is nobody's fault.
type written struct {
	to  io.Writer
	err error
}

func (w *written) Write(b []byte) (int, error) {
	if w.err == nil {
		_, w.err = w.to.Write(b)
	}
	return len(b), nil
}

// outFile is the file to which replies go, nil when they go elsewhere.
func (a *app) outFile() *os.File {
	if w, ok := a.out.(*written); ok {
		f, _ := w.to.(*os.File)
		return f
	}
	return nil
}

// writes marks the declaration of a subcommand that writes files. A reader of
// what it shows who goes away must not cost the record; all others end there,
// as programs do.
var writes = map[string]string{writing: ""}

const writing = "writes"

// exact and atLeast wrap cobra's argument checks into usage errors.
func exact(n int) cobra.PositionalArgs   { return asUsage(cobra.ExactArgs(n)) }
func atLeast(n int) cobra.PositionalArgs { return asUsage(cobra.MinimumNArgs(n)) }
func atMost(n int) cobra.PositionalArgs  { return asUsage(cobra.MaximumNArgs(n)) }

func asUsage(check cobra.PositionalArgs) cobra.PositionalArgs {
	return func(c *cobra.Command, args []string) error {
		if err := check(c, args); err != nil {
			return usageError{fmt.Errorf("%w; see %s --help", err, c.CommandPath())}
		}
		return nil
	}
}

// notebookArgs takes one notebook, that is there or is to be made.
func notebookArgs(c *cobra.Command, args []string) error {
	if len(args) == 0 || notebook.Exists(args[0]) || strings.EqualFold(filepath.Ext(args[0]), ".md") {
		return atMost(1)(c, args)
	}
	help := "a new notebook's name ends in .md"
	if near := c.SuggestionsFor(args[0]); len(near) > 0 {
		help = "perhaps: " + strings.Join(append([]string{c.Name(), near[0]}, args[1:]...), " ")
	}
	return usageError{fmt.Errorf("%s is neither a subcommand nor a notebook; %s", cleanName(args[0]), cleanName(help))}
}

func (a *app) root() *cobra.Command {
	root := &cobra.Command{
		Use:   "ohmcall [FILE.md]",
		Short: "a notebook for appliance and refrigeration repair calls",
		Long: `ohmcall takes terse readings (ohm A B 3.4) and answers with roles, verdicts and
the next useful test; anything that is not a command is a sum with units. Each
call is one Markdown file.

Without a subcommand it starts a call, or opens or resumes the one in FILE.md,
from a terminal or from piped lines.`,
		Annotations:   writes,
		Args:          notebookArgs,
		SilenceUsage:  true,
		SilenceErrors: true,
		PersistentPreRun: func(c *cobra.Command, _ []string) {
			if _, ok := c.Annotations[writing]; ok {
				signal.Ignore(syscall.SIGPIPE)
			}
		},
		RunE: func(_ *cobra.Command, args []string) error { return a.prompt(args) },
	}
	root.PersistentFlags().StringVar(&a.dir, "dir", "", "the notebooks folder (default: $OHMCALL_DIR, else ohmcall-calls in the home directory)")
	root.SetFlagErrorFunc(func(c *cobra.Command, err error) error {
		return usageError{fmt.Errorf("%w; see %s --help", err, c.CommandPath())}
	})
	root.SuggestionsMinimumDistance = 2
	root.CompletionOptions.DisableDefaultCmd = true
	root.Version = version
	root.SetVersionTemplate("ohmcall {{.Version}}\n")
	root.AddCommand(a.runCommand(), a.checkCommand(), a.digestCommand(), a.exportCommand(), a.pageCommand(), a.redactCommand(), a.manCommand(), a.completionCommand(root))
	root.SetHelpCommand(a.helpCommand(root))
	return root
}
