package notebook

import (
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"ohmcall/notebook/call"
)

var update = flag.Bool("update", false, "rewrite the golden files")

var wall = func() time.Time { return time.Date(2026, 3, 2, 14, 0, 0, 0, time.UTC) }

// runScript applies a script and fails on any refused line.
func runScript(t *testing.T, name string) *Notebook {
	t.Helper()
	content, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	n := New(Host{Now: wall, Script: func(f string) ([]byte, error) { return os.ReadFile(filepath.Join(filepath.Dir(name), f)) }})
	for i, line := range ScriptLines(content) {
		if _, err := n.Do(line); err != nil && err != call.ErrBlank {
			t.Errorf("%s:%d: %s: %v", name, i+1, line, err)
		}
	}
	return n
}

// TestExamples replays every example to its notebook byte for byte, and the
// notebook to itself.
func TestExamples(t *testing.T) {
	scripts, err := filepath.Glob("../examples/*.call")
	if err != nil || len(scripts) == 0 {
		t.Fatal("no examples", err)
	}
	for _, s := range scripts {
		t.Run(filepath.Base(s), func(t *testing.T) {
			got := runScript(t, s).Render()
			golden := filepath.Join("testdata", strings.TrimSuffix(filepath.Base(s), ".call")+".md")
			if *update {
				if err := os.WriteFile(golden, got, 0o644); err != nil {
					t.Fatal(err)
				}
			}
			want, err := os.ReadFile(golden)
			if err != nil {
				t.Fatal(err)
			}
			if string(got) != string(want) {
				t.Errorf("the notebook differs from %s; go test ./notebook -update rewrites it\n%s", golden, firstDifference(string(got), string(want)))
			}
			r, err := Check(got)
			if err != nil {
				t.Fatal(err)
			}
			for _, f := range r.Faults {
				t.Error(f)
			}
		})
	}
}

func firstDifference(a, b string) string {
	la, lb := strings.Split(a, "\n"), strings.Split(b, "\n")
	for i := range la {
		if i >= len(lb) || la[i] != lb[i] {
			other := "(nothing)"
			if i < len(lb) {
				other = lb[i]
			}
			return "got:  " + la[i] + "\nwant: " + other
		}
	}
	return "the golden file is longer"
}
