package notebook

import (
	"bytes"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"ohmcall/notebook/journal"
	"ohmcall/notebook/page"
)

// One place is no places.
func TestWarningCounts(t *testing.T) {
	r, err := Check(nil)
	if err != nil || !strings.Contains(r.Warning(), "differs in 1 place from") {
		t.Errorf("%q, %v", r.Warning(), err)
	}
}

// What takes the place of an open file is put aside, and that is said once: with
// the next line, or when the call is left.
func TestReplacedFileIsTold(t *testing.T) {
	for _, next := range []bool{true, false} {
		name := filepath.Join(t.TempDir(), "call.md")
		n, err := Create(Host{FS: journal.Disk{}, Now: wall}, name)
		if err != nil {
			t.Fatal(err)
		}
		if _, err := n.Do("note one"); err != nil || n.News() != nil {
			t.Fatal(err, "something is told of a file that nobody touched")
		}
		if err := os.WriteFile(name, []byte("# Shopping\n"), 0o600); err != nil {
			t.Fatal(err)
		}
		if next {
			if _, err := n.Do("note two"); err != nil {
				t.Fatal(err)
			}
		} else if err := n.Close(); err != nil {
			t.Fatal(err)
		}
		if got := strings.Join(n.News(), "|"); got != "Another program had put a file in this one's place; it is kept as call-replaced.md." || n.News() != nil {
			t.Errorf("next line %v: %q", next, got)
		}
		n.Close()
	}
}

// A file some or all of whose lines were given CR LF reads as with LF, says so,
// and is a file with LF again once a line is written.
func TestOtherLineEnds(t *testing.T) {
	name := filepath.Join(t.TempDir(), "call.md")
	n, err := Create(Host{FS: journal.Disk{}, Now: wall}, name)
	if err != nil {
		t.Fatal(err)
	}
	for _, line := range []string{"client Petra Placeholder", "volt line 118", "close declined, unit left unplugged"} {
		if _, err := n.Do(line); err != nil {
			t.Fatal(err)
		}
	}
	if err := n.Close(); err != nil {
		t.Fatal(err)
	}
	whole, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	front := bytes.Index(whole, []byte("\n---\n"))
	for what, tt := range map[string]struct {
		content []byte
		row     int
	}{
		"all":                 {bytes.ReplaceAll(whole, []byte("\n"), []byte("\r\n")), 1},
		"the front matter":    {slices.Concat(bytes.ReplaceAll(whole[:front], []byte("\n"), []byte("\r\n")), whole[front:]), 1},
		"one line of the log": {bytes.Replace(whole, []byte("volt line 118\n"), []byte("volt line 118\r\n"), 1), 1 + bytes.Count(whole[:bytes.Index(whole, []byte("volt line 118\n"))], []byte("\n"))},
		"behind a mark":       {append([]byte("\xEF\xBB\xBF"), bytes.ReplaceAll(whole, []byte("\n"), []byte("\r\n"))...), 1},
	} {
		r, err := Check(tt.content)
		if err != nil || r.Broken || len(r.Faults) != 1 || r.Faults[0] != (Fault{tt.row, 1, page.OtherEnds}) || !strings.Contains(r.Warning(), page.OtherEnds) {
			t.Errorf("%s: %+v, %v; %s", what, r.Faults, err, r.Warning())
		}
		if err := os.WriteFile(name, tt.content, 0o600); err != nil {
			t.Fatal(err)
		}
		n, err := Open(Host{FS: journal.Disk{}, Now: wall}, name)
		if err != nil {
			t.Fatal(what, err)
		}
		if news := strings.Join(n.News(), "\n"); !strings.Contains(news, page.OtherEnds) || n.Opening.Broken {
			t.Errorf("%s: at the opening is told %q", what, news)
		}
		if e, err := n.Do("note called again"); err != nil || len(e) != 1 {
			t.Fatal(what, e, err)
		}
		if news := strings.Join(n.News(), "\n"); news != "The file's lines end in LF again." {
			t.Errorf("%s: at the writing is told %q", what, news)
		}
		if err := n.Close(); err != nil {
			t.Fatal(err)
		}
		written, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		if r, err := Check(written); err != nil || len(r.Faults) > 0 || len(r.Record.Log) != 4 || bytes.Contains(written, []byte("\r")) {
			t.Errorf("%s: written is %+v, %v", what, r, err)
		}
	}
}
