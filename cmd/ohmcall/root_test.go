package main

import (
	"errors"
	"io"
	"io/fs"
	"os"
	"strings"
	"syscall"
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

// Where nothing can be written it is said what works; another error stands as it
// is.
func TestUnwritableFolder(t *testing.T) {
	for _, cause := range []error{syscall.EROFS, fs.ErrPermission} {
		err := unwritable(&fs.PathError{Op: "open", Path: "ro/.z.md.lock", Err: cause}, "ro/z.md", "take another")
		if !errors.Is(err, cause) || !strings.HasPrefix(err.Error(), "nothing can be written in ro; take another: ") {
			t.Errorf("%v gives %v", cause, err)
		}
	}
	if err := unwritable(fs.ErrExist, "ro/z.md", "take another"); err != fs.ErrExist {
		t.Errorf("%v", err)
	}
	if unwritable(nil, "ro/z.md", "take another") != nil {
		t.Error("no error is one")
	}
}
