package main

import (
	"cmp"
	_ "embed"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"ohmcall/notebook/call"
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

// manual is the manual page in Markdown.
func manual(root *cobra.Command) string {
	var b strings.Builder
	b.WriteString("% OHMCALL 1 \"\" \"ohmcall " + version + "\"\n# NAME\n\nohmcall - " + root.Short + "\n\n# SYNOPSIS\n\n")
	b.WriteString("**ohmcall** [*FILE.md*]\n\n")
	commands := []*cobra.Command{}
	for _, c := range root.Commands() {
		if c.IsAvailableCommand() {
			commands = append(commands, c)
			b.WriteString("**ohmcall** " + plainMan(c.Use) + "\n\n")
		}
	}
	b.WriteString("# DESCRIPTION\n\n" + plainMan(root.Long) + "\n\n# OPTIONS\n\n")
	flags(&b, root.PersistentFlags())
	b.WriteString("# SUBCOMMANDS\n\n")
	for _, c := range commands {
		b.WriteString("## " + plainMan(c.Use) + "\n\n" + plainMan(cmp.Or(c.Long, c.Short)) + "\n\n")
		flags(&b, c.NonInheritedFlags())
	}
	b.WriteString("# LANGUAGE\n\n")
	for _, l := range call.Language().Lines {
		b.WriteString("    " + l.Text + "\n")
	}
	b.WriteString("\n# EXIT STATUS\n\n0 done, 1 the record or a check has a fault, 2 wrong usage.\n\n")
	b.WriteString("# FILES\n\n*~/" + folderName + "* holds the notebooks, *" + snippetFile + "* in it your own definitions. OHMCALL_DIR names another folder.\n")
	return b.String()
}

// plainMan keeps words such as [-o FILE] from being taken for markup.
func plainMan(s string) string {
	return strings.NewReplacer("[", `\[`, "]", `\]`, "|", `\|`, "*", `\*`, "_", `\_`).Replace(s)
}

func flags(b *strings.Builder, set *pflag.FlagSet) {
	set.VisitAll(func(f *pflag.Flag) {
		if f.Name == "help" || f.Name == "version" {
			return
		}
		b.WriteString("**--" + f.Name + "**\n: " + plainMan(f.Usage) + "\n\n")
	})
}
