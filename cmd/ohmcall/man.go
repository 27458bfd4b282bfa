package main

import (
	_ "embed"
	"fmt"
	"strings"

	"github.com/spf13/cobra"
)

// manPage is made by a test from the declarations of the subcommands and of
// the language, and held against them by it.
//
//go:embed ohmcall.1
var manPage []byte

// manCommand prints the manual page.
func (a *app) manCommand() *cobra.Command {
	return &cobra.Command{
		Use:   "man",
		Short: "print the manual page",
		Long: `Prints the manual page. To install it for yourself:

    mkdir -p ~/.local/share/man/man1
    ohmcall man > ~/.local/share/man/man1/ohmcall.1`,
		Args: exact(0),
		RunE: func(*cobra.Command, []string) error {
			_, err := a.out.Write(manPage)
			return err
		},
	}
}

// shells are those that completion is written for.
var shells = []string{"bash", "zsh", "fish", "powershell"}

// completionCommand prints what a shell needs to complete subcommands and
// flags.
func (a *app) completionCommand(root *cobra.Command) *cobra.Command {
	return &cobra.Command{
		Use:   "completion " + strings.Join(shells, "|"),
		Short: "print what a shell needs to complete subcommands and flags",
		Long: `Prints a script for the shell named. To install it for yourself, write it to

    bash        ~/.local/share/bash-completion/completions/ohmcall
    zsh         _ohmcall in a folder of $fpath
    fish        ~/.config/fish/completions/ohmcall.fish
    powershell  a file that $PROFILE names behind a dot

and start the shell anew. Inside a call Tab completes by itself.`,
		Args:      exact(1),
		ValidArgs: shells,
		RunE: func(_ *cobra.Command, args []string) error {
			switch args[0] {
			case "bash":
				return root.GenBashCompletionV2(a.out, true)
			case "zsh":
				return root.GenZshCompletion(a.out)
			case "fish":
				return root.GenFishCompletion(a.out, true)
			case "powershell":
				return root.GenPowerShellCompletionWithDesc(a.out)
			}
			return usageError{fmt.Errorf("completion takes %s, not %q", strings.Join(shells, ", "), args[0])}
		},
	}
}
