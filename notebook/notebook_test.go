package notebook

import (
	"bytes"
	"errors"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"ohmcall/notebook/call"
	"ohmcall/notebook/journal"
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

// tempFails is the real disk, on which one name cannot be written anew.
type tempFails struct {
	journal.Disk
	name string
}

func (f *tempFails) CreateTemp(name string, mode os.FileMode) (journal.File, error) {
	if f.name != "" && strings.HasSuffix(name, f.name) {
		return nil, errors.New("input/output error")
	}
	return f.Disk.CreateTemp(name, mode)
}

// TestMovedCallTakesEntries: what is acknowledged after the call went on in
// another file can be read back from it, also when the call was closed.
func TestMovedCallTakesEntries(t *testing.T) {
	for _, lines := range [][]string{{"client Petra Placeholder"}, {"client Petra Placeholder", "close"}} {
		dir, fs := t.TempDir(), &tempFails{}
		h := Host{FS: fs, Now: wall}
		n, err := Create(h, filepath.Join(dir, "a.md"))
		if err != nil {
			t.Fatal(err)
		}
		for _, l := range lines {
			if _, err := n.Do(l); err != nil {
				t.Fatal(err)
			}
		}
		fs.name = "a.md"
		n.mend = true // as behind a torn line
		if _, err := n.Do("note leaks again"); err == nil {
			t.Fatal("stored")
		}
		if err := n.Move(filepath.Join(dir, "b.md")); err != nil {
			t.Fatal(err)
		}
		for _, l := range []string{"note leaks again", "note and again"} {
			if _, err := n.Do(l); err != nil {
				t.Fatal(err)
			}
		}
		content, err := os.ReadFile(filepath.Join(dir, "b.md"))
		if err != nil {
			t.Fatal(err)
		}
		again, err := load(h, content)
		if err != nil || again.Call().Len() != len(lines)+2 || again.Opening.Torn != "" || again.Opening.Stray > 0 {
			t.Errorf("after %q: %+v, %v", lines, again.Opening, err)
		}
		n.Close()
	}
}

// TestCutReplyIsNoOther: a crash may cut off the last reply anywhere. That is not
// told as a reply that would read otherwise, which another text in it is.
func TestCutReplyIsNoOther(t *testing.T) {
	dir := t.TempDir()
	h := Host{FS: journal.Disk{}, Now: wall}
	name := filepath.Join(dir, "a.md")
	n, err := Create(h, name)
	if err != nil {
		t.Fatal(err)
	}
	for _, l := range []string{"ohm A B 3.45", "ohm A C 6.5"} {
		if _, err := n.Do(l); err != nil {
			t.Fatal(err)
		}
	}
	n.journal.Close()
	content, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	typed := bytes.Index(content, []byte("ohm A C 6.5\n")) + len("ohm A C 6.5\n")
	for end := typed; end <= len(content); end++ {
		again, err := load(h, content[:end])
		if err != nil || again.Call().Len() != 2 || again.Opening.Changed > 0 {
			t.Fatalf("cut to %q: %+v, %v", content[typed:end], again.Opening, err)
		}
	}
	other := bytes.Replace(content, []byte("C is not common"), []byte("C is common"), 1)
	if again, err := load(h, other); err != nil || again.Opening.Changed != 1 {
		t.Errorf("another text: %+v, %v", again.Opening, err)
	}
	zeros := bytes.Replace(content, []byte("C is not common"), make([]byte, len("C is not common")), 1)
	if again, err := load(h, zeros); err != nil || again.Opening.Changed > 0 {
		t.Errorf("blocks unwritten: %+v, %v", again.Opening, err)
	}
}

// TestEditedLastEntryIsNoted: whoever changes the last typed line of an open notebook by
// hand leaves a note and a doubt, as whoever changes an earlier one does.
func TestEditedLastEntryIsNoted(t *testing.T) {
	h := Host{FS: journal.Disk{}, Now: wall}
	for _, x := range []struct{ typed, edited string }{
		{"ohm A case 0.5", "ohm A case OL"},
		{"did jumpered the thermal fuse", "did replaced the thermal fuse"},
		{"volt case earth 118", "volt case earth 0"},
		{"note looked", ""}, // left as it is
	} {
		for _, more := range [][]string{nil, {"note went on"}} { // it is the last entry, or one before it
			name := filepath.Join(t.TempDir(), "a.md")
			n, err := Create(h, name)
			if err != nil {
				t.Fatal(err)
			}
			for _, l := range append([]string{"unit electric dryer", "fault does not heat", x.typed}, more...) {
				if _, err := n.Do(l); err != nil {
					t.Fatal(err)
				}
			}
			if err := n.Close(); err != nil {
				t.Fatal(err)
			}
			content, err := os.ReadFile(name)
			if err != nil {
				t.Fatal(err)
			}
			want := 1
			if x.edited != "" {
				at := bytes.LastIndex(content, []byte(" "+x.typed+"\n"))
				content = append(content[:at:at], append([]byte(" "+x.edited), content[at+1+len(x.typed):]...)...)
				want = 2
			}
			if err := os.WriteFile(name, content, 0o600); err != nil {
				t.Fatal(err)
			}
			n, err = Open(h, name)
			if err != nil {
				t.Fatal(err)
			}
			entries, err := n.Do("note looked")
			if err != nil || len(entries) != want || want == 2 && entries[0].Line != "note "+call.NotAsWritten {
				t.Errorf("%q made %q: %v, %v", x.typed, x.edited, entries, err)
			}
			if alerts := strings.Join(n.Call().Record().Alerts, "\n"); strings.Contains(alerts, call.NotAsWritten) != (want == 2) {
				t.Errorf("%q made %q: %s", x.typed, x.edited, alerts)
			}
			n.Close()
		}
	}
}

// What was refused is not in the call: to take the last line back then asks once
// before it strikes the good entry before it.
func TestTakingBackARefusedLine(t *testing.T) {
	for _, tt := range []struct {
		lines, struck string
		refused       int // the lines not taken
	}{
		{"ohm A B 4.1; oops", "1", 0},
		{"ohm A B 4.1; ohm A csae OL B case OL; oops", "", 2},
		{"ohm A B 4.1; ohm A csae OL B case OL; oops; undo", "1", 2},
		{"ohm A B 4.1; ohm A csae OL B case OL; strike last", "", 2},
		{"ohm A B 4.1; ohm A csae OL B case OL; undo 1", "1", 1},
		{"ohm A B 4.1; ohm A csae OL B case OL; ohm A C 11.8; oops", "2", 1},
	} {
		n, refused, struck := New(Host{Now: wall}), 0, ""
		for _, line := range strings.Split(tt.lines, "; ") {
			entries, err := n.Do(line)
			if err != nil {
				refused++
			} else if f := strings.Fields(entries[0].Line); f[0] == "strike" {
				struck = f[1]
			}
		}
		if struck != tt.struck || refused != tt.refused {
			t.Errorf("%s: struck %q with %d refused, want %q and %d", tt.lines, struck, refused, tt.struck, tt.refused)
		}
	}
}
