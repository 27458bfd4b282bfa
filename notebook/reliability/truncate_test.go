//go:build linux

package reliability

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"

	"ohmcall/notebook"
)

var entryLine = regexp.MustCompile(`^[0-9]+ [0-9]{4}-`)

// wholeEntries counts the entries of a file whose lines are whole, without
// the program's own reader.
func wholeEntries(content []byte) int {
	_, log, ok := bytes.Cut(content, []byte("\n```ohmcall\n"))
	if !ok {
		return 0
	}
	n := 0
	for _, l := range bytes.SplitAfter(log, []byte("\n")) {
		if bytes.HasSuffix(l, []byte("\n")) && entryLine.Match(l) {
			n++
		}
	}
	return n
}

// fixtures are the same call as it lies on disk while it is open, and closed.
func fixtures(w *watch, entries int) [][]byte {
	var out [][]byte
	for _, last := range []string{"", "close"} {
		m := newPowerFS(nil)
		n, err := notebook.Create(m.host(), "call.md")
		w.must(err)
		typed := lines(entries)
		if last != "" {
			typed = append(typed, last)
		}
		for _, l := range typed {
			_, err := n.Do(l)
			w.must(err)
		}
		if last != "" {
			w.must(n.Close())
		}
		out = append(out, m.now("call.md"))
	}
	return out
}

// truncate is T1.
func truncate(w *watch) {
	entries := 8
	if long {
		entries = 80
	}
	for _, whole := range fixtures(w, entries) {
		for cut := 0; cut <= len(whole) && !w.red(); cut++ {
			w.count("cuts", 1)
			prefix := whole[:cut]
			if err := openCut(prefix, cut%5 == 0); err != nil {
				w.fault("cut at byte %d of %d: %v", cut, len(whole), err)
			}
		}
		name := filepath.Join(w.dir(), "call.md")
		step := len(whole) / 13
		if long {
			step = len(whole) / 101
		}
		for cut := 0; cut <= len(whole); cut += step {
			w.must(os.WriteFile(name, whole[:cut], 0o600))
			out, err := exec.Command(program, "run", "-", "-o", name).CombinedOutput()
			have, readErr := os.ReadFile(name)
			w.count("cuts through the program", 1)
			if err != nil || readErr != nil || !bytes.Equal(have, whole[:cut]) {
				w.fault("the program on a cut at byte %d: %v %s", cut, errors.Join(err, readErr), out)
			}
		}
	}
}

// openCut opens what is left of a file, and types a line into it when asked.
func openCut(prefix []byte, write bool) error {
	m := newPowerFS(map[string][]byte{"call.md": prefix})
	n, err := notebook.Open(m.host(), "call.md")
	if err != nil {
		return err
	}
	if have, want := n.Call().Len(), wholeEntries(prefix); have != want {
		return fmt.Errorf("%d entries, %d lines are whole", have, want)
	}
	if !write {
		if err := n.Close(); err != nil {
			return err
		}
		if !bytes.Equal(m.now("call.md"), prefix) {
			return errors.New("the bytes were changed before a line was typed")
		}
		return nil
	}
	if _, err := n.Do("note typed after the cut"); err != nil {
		return err
	}
	if err := checks(m.now("call.md")); err != nil {
		return fmt.Errorf("mended: %w", err)
	}
	if err := n.Close(); err != nil {
		return err
	}
	return checks(m.now("call.md"))
}

// checks reports the first fault of a file.
func checks(content []byte) error {
	r, err := notebook.Check(content)
	if err != nil {
		return err
	}
	if len(r.Faults) > 0 {
		return fmt.Errorf("%s (%d faults)", r.Faults[0], len(r.Faults))
	}
	return nil
}
