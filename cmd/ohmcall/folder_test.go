package main

import (
	"io"
	"os"
	"path/filepath"
	"testing"

	"ohmcall/notebook"
)

// A definition that is kept stands on a line of its own, whatever an editor left
// at the file's end.
func TestKeepSnippet(t *testing.T) {
	for _, tt := range []struct{ had, want string }{
		{"", "let m = 3V\n"},
		{"let k = 2V\n", "let k = 2V\nlet m = 3V\n"},
		{"let k = 2V", "let k = 2V\nlet m = 3V\n"},
		{"let k = 2V\r\n", "let k = 2V\r\nlet m = 3V\n"},
	} {
		dir := t.TempDir()
		name := filepath.Join(dir, snippetFile)
		if tt.had != "" {
			if err := os.WriteFile(name, []byte(tt.had), 0o600); err != nil {
				t.Fatal(err)
			}
		}
		if err := keepSnippet(dir, "let m = 3V"); err != nil {
			t.Fatal(err)
		}
		if got, err := os.ReadFile(name); err != nil || string(got) != tt.want {
			t.Errorf("%q became %q, %v", tt.had, got, err)
		}
	}
}

// A call that is rescued finds its folder made, however it was begun.
func TestRescueHasItsFolder(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "calls", "of-today")
	a := &app{in: os.Stdin, out: io.Discard, err: io.Discard}
	n := notebook.New(a.host(dir))
	name := a.promptOptions(n, dir, &learned{stop: func() {}}).NewFileName()
	if err := n.Move(name); err != nil || !notebook.Exists(name) || filepath.Dir(name) != dir {
		t.Errorf("%s: %v", name, err)
	}
}
