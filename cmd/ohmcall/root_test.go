package main

import (
	"io"
	"os"
	"testing"
)

// A subcommand that has a flag for what it writes says in its declaration that
// it writes, and no other does.
func TestWritersAreDeclared(t *testing.T) {
	a := &app{in: os.Stdin, out: io.Discard, err: io.Discard}
	root := a.root()
	if _, ok := root.Annotations[writing]; !ok {
		t.Error("a call at the prompt is written and not declared so")
	}
	for _, c := range root.Commands() {
		flagged := false
		for _, name := range []string{"output", "into", "sqlite"} {
			flagged = flagged || c.Flags().Lookup(name) != nil
		}
		if _, declared := c.Annotations[writing]; declared != flagged {
			t.Errorf("%s: declared to write %v, has a flag for it %v", c.Name(), declared, flagged)
		}
	}
}
