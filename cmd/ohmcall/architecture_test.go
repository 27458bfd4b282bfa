package main

import (
	"encoding/json"
	"errors"
	"io"
	"os"
	"os/exec"
	"slices"
	"strings"
	"testing"
)

// layers from the bottom up: a package may import its own layer and those
// below.
var layers = []string{"calc", "notebook", "repl", "cmd"}

// impure are what the calculating layer must not touch: files, the network,
// other programs.
var impure = []string{"os", "os/exec", "net", "net/http", "io/fs", "path/filepath", "syscall"}

type listed struct {
	ImportPath string
	Imports    []string
	GoFiles    []string
}

// TestLayers holds the house to its layers.
func TestLayers(t *testing.T) {
	out, err := exec.Command("go", "list", "-json=ImportPath,Imports,GoFiles", "ohmcall/...").Output()
	if err != nil {
		t.Fatal(err)
	}
	layer := func(path string) int {
		rest, ok := strings.CutPrefix(path, "ohmcall/")
		if !ok {
			return -1
		}
		first, _, _ := strings.Cut(rest, "/")
		return slices.Index(layers, first)
	}
	doc, err := os.ReadFile("../../DEVELOPERS.md")
	if err != nil {
		t.Fatal(err)
	}
	d := json.NewDecoder(strings.NewReader(string(out)))
	n := 0
	for {
		var p listed
		if err := d.Decode(&p); errors.Is(err, io.EOF) {
			break
		} else if err != nil {
			t.Fatal(err)
		}
		n++
		mine := layer(p.ImportPath)
		if mine < 0 {
			t.Errorf("%s belongs to no layer", p.ImportPath)
		}
		if name := strings.TrimPrefix(p.ImportPath, "ohmcall/"); !strings.Contains(string(doc), "| `"+name+"`") && !strings.Contains(string(doc), ", `"+name+"`") {
			t.Errorf("DEVELOPERS.md's table lacks %s", name)
		}
		for _, i := range p.Imports {
			if l := layer(i); l > mine {
				t.Errorf("%s imports %s, which is above it", p.ImportPath, i)
			}
			if mine == 0 && slices.Contains(impure, i) {
				t.Errorf("%s imports %s: calc is pure", p.ImportPath, i)
			}
		}
	}
	if n < 15 {
		t.Errorf("only %d packages were seen", n)
	}
}

// TestFilesOfCallStandInGroups holds each file of notebook/call to a group that the
// map names, and each group to files.
func TestFilesOfCallStandInGroups(t *testing.T) {
	doc, err := os.ReadFile("../../DEVELOPERS.md")
	if err != nil {
		t.Fatal(err)
	}
	_, table, ok := strings.Cut(string(doc), "| files | hold |\n")
	table, _, end := strings.Cut(table, "\n\n")
	if !ok || !end {
		t.Fatal("DEVELOPERS.md has no table of the files of notebook/call")
	}
	files := map[string]int{}
	for _, row := range strings.Split(table, "\n")[1:] {
		for _, word := range strings.Split(strings.Split(row, "|")[1], ",") {
			files[strings.Trim(word, " `")] = 0
		}
	}
	entries, err := os.ReadDir("../../notebook/call")
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		if !strings.HasSuffix(e.Name(), ".go") || strings.HasSuffix(e.Name(), "_test.go") {
			continue
		}
		group, _, _ := strings.Cut(strings.TrimSuffix(e.Name(), ".go"), "_")
		if _, ok := files[group]; !ok {
			t.Errorf("%s stands in no group of DEVELOPERS.md", e.Name())
		}
		files[group]++
	}
	for group, n := range files {
		if n == 0 {
			t.Errorf("DEVELOPERS.md names %s, of which notebook/call has no file", group)
		}
	}
}

// TestCalcHasNoClock keeps the wall clock out of the calculating layer.
func TestCalcHasNoClock(t *testing.T) {
	out, err := exec.Command("grep", "-rnE", `time\.(Now|Since|Until|After|Tick|Sleep)\(`, "--include=*.go", "../../calc", "../../notebook/call").CombinedOutput()
	for _, line := range strings.Split(strings.TrimSpace(string(out)), "\n") {
		if line != "" && !strings.Contains(line, "_test.go:") {
			t.Errorf("the clock is read: %s", line)
		}
	}
	var exit *exec.ExitError
	if err != nil && (!errors.As(err, &exit) || exit.ExitCode() != 1) {
		t.Fatal(err)
	}
}
