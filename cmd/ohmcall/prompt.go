package main

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"time"

	"golang.org/x/term"

	"ohmcall/notebook"
	"ohmcall/notebook/call"
	"ohmcall/repl"
)

// prompt starts, opens or resumes a call and talks with whoever types.
func (a *app) prompt(args []string) error {
	dir, err := a.folder()
	if err != nil {
		return err
	}
	var name string
	if len(args) == 1 {
		name = args[0]
	} else {
		if err := makeFolder(dir); err != nil {
			return err
		}
		name = freeName(dir, time.Now().Format("2006-01-02-1504")+"-call")
	}
	host := a.host(dir, filepath.Dir(name))
	n, err := openOrCreate(host, name)
	if err != nil {
		return named(name, err)
	}
	a.told(n)
	known := &learned{stop: func() {}}
	code := repl.Run(a.promptOptions(n, dir, known))
	known.stop()
	if err := a.closing(n); err != nil {
		return fmt.Errorf("the notebook cannot be brought up to date; its log is complete: %w", err)
	}
	a.code = code
	return nil
}

func (a *app) promptOptions(n *notebook.Notebook, dir string, known *learned) repl.Options {
	outFile, out := a.outFile(), a.out
	terminal := outFile != nil && term.IsTerminal(int(a.in.Fd())) && term.IsTerminal(int(outFile.Fd()))
	if terminal {
		out = outFile
	}
	dumb := os.Getenv("TERM") == "dumb"
	warned := false // of times ahead of the clock, once
	return repl.Options{
		Notebook: n,
		In:       a.in,
		Out:      out,
		Err:      a.err,
		Terminal: terminal && !dumb,
		Color:    terminal && !dumb && os.Getenv("NO_COLOR") == "",
		Width:    func() int { return widthOf(outFile) },
		Height:   func() int { _, h := sizeOf(outFile); return h },
		NewFileName: func() string {
			_ = makeFolder(dir) // when it cannot be made, the file says so
			return freeName(dir, time.Now().Format("2006-01-02-1504")+"-rescued")
		},
		Where:    homeShort(n.Name()),
		Resume:   "ohmcall " + homeShort(n.Name()),
		Dumb:     terminal && dumb,
		Parts:    known.parts,
		Scripts:  func() []string { return scripts(dir) },
		Snippets: a.ownCalls,
		Ready:    func() { known.begin(dir) },
		Aside: func(e call.Entry) []string {
			if n.Call().Ahead(e, time.Now()) && !warned {
				warned = true
				return []string{fmt.Sprintf("Entry %d stands at %s, ahead of the clock: + counts from the entry before. If that is a slip: strike %d, and write the time itself, as in 14:30 temp freezer -2F.", e.N, e.At.Format("15:04"), e.N)}
			}
			return append(a.asides(n, e), known.aside(n.Call(), e)...)
		},
	}
}

// widthOf is the width of the screen, 0 when it has none.
func widthOf(f *os.File) int {
	w, _ := sizeOf(f)
	return w
}

// sizeOf is the size of the screen in columns and lines, 0 when there is none.
func sizeOf(f *os.File) (w, h int) {
	if f == nil {
		return 0, 0
	}
	w, h, err := term.GetSize(int(f.Fd()))
	if err != nil {
		return 0, 0
	}
	return w, h
}

// scripts lists the files of lines that `use` can name.
func scripts(dir string) []string {
	var out []string
	for _, d := range []string{".", dir} {
		names, err := filepath.Glob(filepath.Join(d, "*.call"))
		if err != nil {
			continue
		}
		for _, n := range names {
			out = append(out, filepath.Base(n))
		}
	}
	return out
}

// named puts a file's name before an error that does not have it.
func named(name string, err error) error {
	if strings.Contains(err.Error(), name) {
		return err
	}
	return fmt.Errorf("%s: %w", cleanName(name), err)
}
