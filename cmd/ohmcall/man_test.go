package main

import (
	"cmp"
	"io"
	"os"
	"strings"
	"testing"

	"github.com/cpuguy83/go-md2man/v2/md2man"
	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"ohmcall/notebook/call"
)

// TestManual holds the manual page that is built in against the declarations
// that it is made from; -update makes it anew.
func TestManual(t *testing.T) {
	a := &app{in: os.Stdin, out: io.Discard, err: io.Discard}
	want := md2man.Render([]byte(manual(a.root())))
	if *update {
		if err := os.WriteFile("ohmcall.1", want, 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	if string(want) != string(manPage) {
		t.Error("ohmcall.1 is not what the declarations say; go test ./cmd/ohmcall -run TestManual -update makes it")
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

// plainMan keeps words such as [-o FILE] from being taken for markup; indented
// lines are none.
func plainMan(s string) string {
	lines := strings.Split(s, "\n")
	for i, l := range lines {
		if !strings.HasPrefix(l, "    ") {
			lines[i] = strings.NewReplacer("[", `\[`, "]", `\]`, "|", `\|`, "*", `\*`, "_", `\_`).Replace(l)
		}
	}
	return strings.Join(lines, "\n")
}

func flags(b *strings.Builder, set *pflag.FlagSet) {
	set.VisitAll(func(f *pflag.Flag) {
		if f.Name == "help" || f.Name == "version" {
			return
		}
		b.WriteString("**--" + f.Name + "**\n: " + plainMan(f.Usage) + "\n\n")
	})
}
