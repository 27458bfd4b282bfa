//go:build linux

package reliability

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// licencesFile lists every module that the program and its tests are built
// from, with its version and licence.
const licencesFile = "../../.ci/licences"

// permissive tells the licences by sentences that each of them holds.
var permissive = []struct {
	name string
	text *regexp.Regexp
}{
	{"Apache-2.0", regexp.MustCompile(`Apache License\s+Version 2\.0`)},
	{"MIT", regexp.MustCompile(`(?s)Permission is hereby granted, free of charge.*THE SOFTWARE IS PROVIDED "AS IS"`)},
	{"ISC", regexp.MustCompile(`Permission to use, copy, modify, (and/or|and) distribute this software for any\s+purpose with or without fee is hereby granted`)},
	{"BSD-3-Clause", regexp.MustCompile(`(?s)Redistribution and use in source and binary forms.*(Neither|may not be used to endorse)`)},
	{"BSD-2-Clause", regexp.MustCompile(`(?s)Redistribution and use in source and binary forms`)},
}

// TestLicences lists the modules and holds each to a permissive licence.
func TestLicences(t *testing.T) {
	out, err := exec.Command("go", "list", "-deps", "-test", "-f", "{{with .Module}}{{.Path}} {{.Version}} {{.Dir}}{{end}}", "ohmcall/...").Output()
	if err != nil {
		t.Fatal(err)
	}
	var list []string
	for _, l := range strings.Split(strings.TrimSpace(string(out)), "\n") {
		f := strings.Fields(l)
		if len(f) != 3 {
			continue // the standard library, or this module
		}
		list = append(list, fmt.Sprintf("%s %s %s\n", f[0], f[1], licence(t, f[0], f[2])))
	}
	slices.Sort(list)
	list = slices.Compact(list)
	if len(list) < 10 {
		t.Fatalf("only %d modules were seen", len(list))
	}
	got := strings.Join(list, "")
	if *update {
		if err := os.WriteFile(licencesFile, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(licencesFile)
	if err != nil || string(want) != got {
		t.Errorf("the modules are not those of .ci/licences (%v); look at the new ones, then go test ./notebook/reliability -run Licences -update\n%s", err, got)
	}
}

func licence(t *testing.T, module, dir string) string {
	files, err := filepath.Glob(filepath.Join(dir, "*"))
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range files {
		base := strings.ToLower(filepath.Base(f))
		if strings.TrimSuffix(strings.TrimSuffix(base, ".md"), ".txt") != "license" && base != "copying" && base != "licence" {
			continue
		}
		text, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		for _, p := range permissive {
			if p.text.Match(text) {
				return p.name
			}
		}
		t.Errorf("%s: the licence in %s is none that is known to be permissive", module, base)
		return "unknown"
	}
	t.Errorf("%s has no licence", module)
	return "none"
}

// TestLicencesControl holds the test to refusing what is not permissive.
func TestLicencesControl(t *testing.T) {
	for _, p := range permissive {
		if p.text.MatchString("GNU GENERAL PUBLIC LICENSE Version 3") || p.text.MatchString("") {
			t.Errorf("%s is seen in a text that is not it", p.name)
		}
	}
}

// TestReproducible builds the program twice to the same bytes; a build with
// another setting must differ. The long run builds without paths and the
// second time with an empty cache, so that all of it is compiled anew.
func TestReproducible(t *testing.T) {
	build := func(cache string, flags ...string) []byte {
		bin := filepath.Join(t.TempDir(), "ohmcall")
		args := append([]string{"build", "-o", bin}, flags...)
		if long {
			args = append(args, "-trimpath", "-buildvcs=false")
		}
		c := exec.Command("go", append(args, "ohmcall/cmd/ohmcall")...)
		if cache != "" {
			c.Env = append(os.Environ(), "GOCACHE="+cache)
		}
		if out, err := c.CombinedOutput(); err != nil {
			t.Fatalf("%v\n%s", err, out)
		}
		b, err := os.ReadFile(bin)
		if err != nil {
			t.Fatal(err)
		}
		return b
	}
	cache := ""
	if long {
		cache = t.TempDir()
	}
	first := build("")
	if !bytes.Equal(first, build(cache)) {
		t.Error("two builds differ")
	}
	if bytes.Equal(first, build("", "-ldflags=-s")) {
		t.Error("a build with other settings is the same: the test proves nothing")
	}
	root, err := filepath.Abs("../..")
	if err != nil {
		t.Fatal(err)
	}
	if long && bytes.Contains(first, []byte(root+"/")) {
		t.Error("the program holds the path of the folder that it was built in")
	}
}
