package main

import (
	"io"
	"os"
	"testing"

	"github.com/cpuguy83/go-md2man/v2/md2man"
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
