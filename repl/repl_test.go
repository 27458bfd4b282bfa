package repl

import (
	"bytes"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"ohmcall/notebook"
	"ohmcall/notebook/call"
	"ohmcall/notebook/journal"
	"ohmcall/repl/term"
)

// disk is the real one, whose syncs can be made to fail.
type disk struct {
	journal.Disk
	failing *bool
}

// faulty is the real one, whose new files can be refused, and at which the
// program itself fails in the middle of storing.
type faulty struct {
	journal.Disk
	refuse, fail string // what the name, or the text, holds
}

func (d faulty) CreateTemp(name string, mode os.FileMode) (journal.File, error) {
	if d.refuse != "" && strings.HasSuffix(name, d.refuse) {
		return nil, errors.New("input/output error")
	}
	f, err := d.Disk.CreateTemp(name, mode)
	return faultyFile{f, d.fail}, err
}

type faultyFile struct {
	journal.File
	fail string
}

func (f faultyFile) Write(b []byte) (int, error) {
	if f.fail != "" && bytes.Contains(b, []byte(f.fail)) {
		panic("a fault of the program")
	}
	return f.File.Write(b)
}

func (d disk) Append(name string) (journal.File, error) {
	f, err := d.Disk.Append(name)
	return file{f, d.failing}, err
}

func (d disk) CreateTemp(name string, mode os.FileMode) (journal.File, error) {
	if *d.failing && strings.Contains(name, "nowhere") {
		return nil, errors.New("no space left")
	}
	return d.Disk.CreateTemp(name, mode)
}

type file struct {
	journal.File
	failing *bool
}

func (f file) Sync() error {
	if *f.failing && !strings.Contains(f.Name(), "rescued") {
		return errors.New("input/output error")
	}
	return f.File.Sync()
}

// typed is a person's input of which one line breaks the disk.
type typed struct {
	lines   []string
	failing *bool
}

func (r *typed) Read(p []byte) (int, error) {
	if len(r.lines) == 0 {
		return 0, errors.New("over")
	}
	line := r.lines[0]
	r.lines = r.lines[1:]
	if line == "BREAK" {
		*r.failing = true
		return r.Read(p)
	}
	return copy(p, line+"\n"), nil
}

func converse(t *testing.T, newName string, lines ...string) (n *notebook.Notebook, out, errs string, code int) {
	t.Helper()
	failing := false
	dir := t.TempDir()
	n, err := notebook.Create(notebook.Host{FS: disk{failing: &failing}, Now: time.Now}, filepath.Join(dir, "call.md"))
	if err != nil {
		t.Fatal(err)
	}
	var o, e bytes.Buffer
	code = Run(Options{Notebook: n, In: &typed{lines, &failing}, Out: &o, Err: &e, Dumb: true, Where: "call.md",
		NewFileName: func() string { return filepath.Join(dir, newName) }, Resume: "ohmcall call.md"})
	t.Cleanup(func() { n.Close() })
	return n, o.String(), e.String(), code
}

func TestCallGoesOnInANewFileWhenItsOwnFails(t *testing.T) {
	n, out, errs, _ := converse(t, "rescued.md", "note one", "BREAK", "note two", "note three")
	if !strings.Contains(errs, "not stored: input/output error") || !strings.Contains(out, "goes on in") {
		t.Errorf("the failure is not told:\n%s\n%s", out, errs)
	}
	if filepath.Base(n.Name()) != "rescued.md" {
		t.Fatalf("the call is in %s", n.Name())
	}
	b, err := os.ReadFile(n.Name())
	if err != nil {
		t.Fatal(err)
	}
	for _, l := range []string{"note one", "note two", "note three"} {
		if !strings.Contains(string(b), l) {
			t.Errorf("%q is not in the new file", l)
		}
	}
}

func TestLineIsGivenBackWhenNothingCanBeWritten(t *testing.T) {
	n, out, errs, code := converse(t, "nowhere.md", "note one", "BREAK", "note two that must not be lost")
	if !strings.Contains(errs, "copy it:\nnote two that must not be lost\n") || code != 1 {
		t.Errorf("code %d, the line is not given back:\n%s\n%s", code, out, errs)
	}
	if n.Call().Len() != 1 {
		t.Errorf("%d entries count", n.Call().Len())
	}
}

// TestRescueKeepsTheLineTyped: what fails may be the mark of a file that is not
// as it was closed, or a snippet entered before the line.
func TestRescueKeepsTheLineTyped(t *testing.T) {
	for _, tt := range []struct {
		name, old, new, typed string
		snippets              map[string]string
		want                  []string
	}{
		{"the line itself", "", "", "ohm A B 3.45", nil, []string{"ohm A B 3.45"}},
		{"a mark", " unit washer\n# Unit: washer", " unit dryer\n# Unit: dryer", "ohm A B 3.45", nil, []string{"note " + call.NotAsClosed, "ohm A B 3.45"}},
		{"a snippet", "", "", "let net = 3.45ohm - lead", map[string]string{"lead": "let lead = 0.2ohm"}, []string{"let lead = 0.2ohm", "let net = 3.45ohm - lead"}},
	} {
		dir := t.TempDir()
		name := filepath.Join(dir, "call.md")
		n, err := notebook.Create(notebook.Host{FS: journal.Disk{}, Now: time.Now}, name)
		if err != nil {
			t.Fatal(err)
		}
		for _, l := range []string{"client Petra Placeholder", "unit washer", "close"} {
			if _, err := n.Do(l); err != nil {
				t.Fatal(err)
			}
		}
		n.Close()
		b, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(name, []byte(strings.Replace(string(b), tt.old, tt.new, 1)), 0o600); err != nil {
			t.Fatal(err)
		}
		h := notebook.Host{FS: faulty{refuse: "call.md"}, Now: time.Now, Snippets: tt.snippets}
		if n, err = notebook.Open(h, name); err != nil {
			t.Fatal(err)
		}
		var o, e bytes.Buffer
		Run(Options{Notebook: n, In: strings.NewReader(tt.typed + "\n"), Out: &o, Err: &e, Dumb: true, Where: "call.md",
			NewFileName: func() string { return filepath.Join(dir, "rescued.md") }})
		n.Close()
		again, err := notebook.Open(h, filepath.Join(dir, "rescued.md"))
		if err != nil {
			t.Fatalf("%s: %v\n%s", tt.name, err, e.String())
		}
		var got []string
		for _, entry := range again.Call().Entries()[3:] {
			got = append(got, entry.Line)
		}
		if strings.Join(got, "\n") != strings.Join(tt.want, "\n") {
			t.Errorf("%s: the new file holds %q, want %q", tt.name, got, tt.want)
		}
		again.Close()
	}
}

// TestFaultOfTheProgramEndsNoCall: the line at which it fails is given back, the
// call stands as before it, and no lock stays behind.
func TestFaultOfTheProgramEndsNoCall(t *testing.T) {
	dir := t.TempDir()
	name := filepath.Join(dir, "call.md")
	h := notebook.Host{FS: faulty{fail: "unit dryer"}, Now: time.Now, Script: func(string) ([]byte, error) { panic("another fault") }}
	n, err := notebook.Create(h, name)
	if err != nil {
		t.Fatal(err)
	}
	var o, e bytes.Buffer
	code := Run(Options{Notebook: n, In: strings.NewReader("unit dryer\nunit washer\nuse kit.call\nnote last\n"), Out: &o, Err: &e, Dumb: true, Where: "call.md"})
	for _, want := range []string{"(a fault of the program)", "copy it:\nunit dryer\n", "(another fault)", "copy it:\nuse kit.call\n"} {
		if !strings.Contains(e.String(), want) {
			t.Errorf("%q is not said:\n%s", want, e.String())
		}
	}
	if err := n.Close(); err != nil || code != 1 {
		t.Errorf("code %d, %v", code, err)
	}
	again, err := notebook.Open(h, name)
	if err != nil {
		t.Fatal(err)
	}
	if es := again.Call().Entries(); len(es) != 2 || es[0].Line != "unit washer" || es[1].Line != "note last" {
		t.Errorf("stored are %v", es)
	}
	again.Close()
	if journal.Claimed(name) {
		t.Error("the lock stayed behind")
	}
}

func TestGreetingFitsASmallScreen(t *testing.T) {
	_, out, errs, code := converse(t, "x.md", "# a remark", "# another", "", "close")
	lines := strings.Split(out, "\n")
	if lines[0] != "A new call, kept in call.md" {
		t.Errorf("starts with %q", lines[0])
	}
	if len(newcomer) != 4 {
		t.Errorf("%d lines for a newcomer", len(newcomer))
	}
	for _, l := range newcomer {
		if len(l) > 60 {
			t.Errorf("%d columns: %q", len(l), l)
		}
	}
	if strings.Count(out, "Comments are not recorded") != 1 {
		t.Errorf("of comments it says:\n%s", out)
	}
	if !strings.Contains(out, "The record is in call.md.") || errs != "" || code != 0 {
		t.Errorf("code %d\n%s\n%s", code, out, errs)
	}
}

// TestNewcomersLinesWork types what the greeting shows.
func TestNewcomersLinesWork(t *testing.T) {
	p := newTypist()
	var last call.Entry
	for _, l := range []string{"safe", "ohm A B 4.2", "A C 15.1", "B C 10.9"} {
		if !strings.Contains(strings.Join(newcomer, "\n"), l) {
			t.Errorf("%q is not shown", l)
		}
		entries, err := p.n.Do(l)
		if err != nil {
			t.Fatal(err)
		}
		last = entries[len(entries)-1]
	}
	if w := last.Reply.Windings; len(w) != 1 || !w[0].Settled || w[0].Roles["B"] != "common" {
		t.Errorf("no verdict: %+v", w)
	}
}

func TestResumedCallSaysWhereItStands(t *testing.T) {
	n := notebook.New(notebook.Host{Now: time.Now})
	for _, l := range []string{"fault clicks", "ohm A B 3.4", "close"} {
		if _, err := n.Do(l); err != nil {
			t.Fatal(err)
		}
	}
	n.Opening = notebook.Opening{Resumed: true, Torn: "note half\x1b[2J", Changed: 1, Stray: 2}
	var out, errs bytes.Buffer
	Run(Options{Notebook: n, In: strings.NewReader(""), Out: &out, Err: &errs, Dumb: true, Where: "x.md", Resume: "ohmcall x.md"})
	for _, want := range []string{"kept in x.md", "3 entries", "It is closed: a question is answered and not written down, left … belongs to it, any other line opens it again"} {
		if !strings.Contains(out.String(), want) {
			t.Errorf("%q is not said:\n%s", want, out.String())
		}
	}
	for _, want := range []string{"cut off", "note half<U+001B>[2J", "1 reply in", "2 lines in"} {
		if !strings.Contains(errs.String(), want) {
			t.Errorf("%q is not said:\n%s", want, errs.String())
		}
	}
}

// Of a line that was cut off its words are shown as they are typed.
func TestTornLineIsShownToBeTyped(t *testing.T) {
	for torn, want := range map[string]string{
		"5 2026-11-27T03:16:18+00:00 ohm B C 2": "type it again, its end may be missing: ohm B C 2\n",
		"5 2026-11-27T03:16":                    "nothing is left of its words",
		"5":                                     "nothing is left of its words",
		"note half":                             "missing: note half\n",
	} {
		n := notebook.New(notebook.Host{Now: time.Now})
		n.Opening = notebook.Opening{Resumed: true, Torn: torn}
		var out, errs bytes.Buffer
		Run(Options{Notebook: n, In: strings.NewReader(""), Out: &out, Err: &errs, Where: "x.md", Resume: "ohmcall x.md"})
		if !strings.Contains(errs.String(), want) || strings.Contains(errs.String(), "2026") {
			t.Errorf("%s: %s", torn, errs.String())
		}
	}
}

func TestPipedLines(t *testing.T) {
	long := "note " + strings.Repeat("x", 70<<10)
	in := "\uFEFFohm A B 3.45\r\nnote nul \x00 and \x03 in it\r\n" + long + "\nfrobnicate now\nclose\nnote last without an end"
	n := notebook.New(notebook.Host{Now: time.Now})
	var out, errs bytes.Buffer
	code := Run(Options{Notebook: n, In: strings.NewReader(in), Out: &out, Err: &errs})
	var got []string
	for _, e := range n.Call().Entries() {
		got = append(got, e.Line)
	}
	want := []string{"ohm A B 3.45", "note nul <U+0000> and <U+0003> in it", "close", "note last without an end"}
	if strings.Join(got, "\n") != strings.Join(want, "\n") {
		t.Errorf("the call holds %q", got)
	}
	if code != 1 || !strings.Contains(errs.String(), "line 3:") || !strings.Contains(errs.String(), "line 4:") {
		t.Errorf("code %d, trouble: %s", code, errs.String())
	}
	if strings.Contains(out.String(), prompt) || strings.Contains(out.String(), "A new call") {
		t.Errorf("a pipe is greeted: %s", out.String())
	}
}

func TestLongestLineIsTaken(t *testing.T) {
	for _, n := range []int{64 << 10, 64<<10 + 1} {
		line := strings.Repeat("y", n)
		r := term.NewPlain(strings.NewReader(line+"\r\nnext\n"), nil, "")
		got, err := r.ReadLine()
		if taken := err == nil && got == line; taken != (n <= 64<<10) {
			t.Errorf("of %d bytes: %d bytes, %v", n, len(got), err)
		}
		if next, err := r.ReadLine(); next != "next" || err != nil {
			t.Errorf("behind it: %q, %v", next, err)
		}
		r.Stop()
	}
}
