package page

import (
	"bytes"
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/extension"

	"ohmcall/notebook/record"
)

var nine = time.Date(2026, 3, 2, 9, 0, 0, 0, time.UTC)

func sample(state string) *record.Record {
	return &record.Record{
		Header:  record.Header{Format: 1, State: state, Entries: 2, Client: "Petra Placeholder", Missing: []string{"a", `b "c"`}},
		Outcome: []record.Fact{{Label: "Complaint", Text: "clicks | hums <b>"}},
		Alerts:  []string{"1. not a list", "# not a heading"},
		Log: []record.Entry{
			{N: 1, At: nine, Line: "note a", Reply: []string{"Noted."}},
			{N: 2, At: nine.Add(time.Hour), Line: "note # b", Reply: []string{"Noted.", ""}},
		},
	}
}

// TestReadIsTheInverseOfRender reads what was rendered and finds all of it.
func TestReadIsTheInverseOfRender(t *testing.T) {
	for _, state := range []string{"open", "closed"} {
		r := sample(state)
		remarks := map[string]string{"": "before all", "title": "two\n\nparagraphs", "outcome": "```text\ncode\n```"}
		b := Render(r, remarks)
		f, err := Read(b)
		if err != nil {
			t.Fatal(err)
		}
		if f.Closed != (state == "closed") || !f.Clean || len(f.Faults) > 0 || len(f.Stray) > 0 || f.Torn != "" {
			t.Errorf("%s: %+v", state, f)
		}
		if d := HeaderDifferences(&f.Header, &r.Header); len(d) > 0 {
			t.Errorf("%s: %v", state, d)
		}
		for id, s := range remarks {
			if f.Remarks[id] != s {
				t.Errorf("%s: remark %q is %q", state, id, f.Remarks[id])
			}
		}
		for i, e := range f.Entries {
			want := r.Log[i]
			if e.N != want.N || !e.At.Equal(want.At) || e.Line != want.Line || strings.Join(e.Reply, "\n") != strings.Join(want.Reply, "\n") {
				t.Errorf("%s: entry %+v, want %+v", state, e, want)
			}
			if lines := strings.Split(string(b), "\n"); []rune(lines[e.Row-1])[e.Col-1] != []rune(e.Line)[0] {
				t.Errorf("%s: entry %d is said to stand at %d:%d", state, e.N, e.Row, e.Col)
			}
		}
		for _, s := range f.Sections {
			if s.Edited {
				t.Errorf("%s: section %s counts as edited", state, s.ID)
			}
		}
		if again := Render(r, f.Remarks); !bytes.Equal(again, b) {
			t.Errorf("%s: rendered again it differs", state)
		}
	}
}

// TestReadForgives reads what other systems, editors and crashes leave.
func TestReadForgives(t *testing.T) {
	whole := Render(sample("open"), nil)
	nul := append(bytes.Clone(whole), "3 2026-03-02T11:00:00+00:00 note c\x00\x00\n# No\x00\n"...)
	tests := []struct {
		name    string
		content []byte
		entries int
		torn    string
		clean   bool
	}{
		{"as written", whole, 2, "", true},
		{"byte order mark", append([]byte("\xEF\xBB\xBF"), whole...), 2, "", false},
		{"carriage returns", bytes.ReplaceAll(whole, []byte("\n"), []byte("\r\n")), 2, "", false},
		{"torn entry", append(bytes.Clone(whole), "3 2026-03-02T11:00:00+00:00 no"...), 2, "3 2026-03-02T11:00:00+00:00 no", false},
		{"torn reply", append(bytes.Clone(whole), "# No"...), 2, "", false},
		{"blocks never written", nul, 2, "3 2026-03-02T11:00:00+00:00 note c\x00\x00", false},
		{"empty", nil, 0, "", false},
		{"cut in the front matter", whole[:20], 0, "", false},
	}
	for _, tt := range tests {
		f, err := Read(tt.content)
		if err != nil {
			t.Errorf("%s: %v", tt.name, err)
			continue
		}
		if len(f.Entries) != tt.entries || f.Torn != tt.torn || f.Clean != tt.clean {
			t.Errorf("%s: %d entries, torn %q, clean %v", tt.name, len(f.Entries), f.Torn, f.Clean)
		}
	}
}

// TestReadRefuses lists what is no notebook, or too much of one.
func TestReadRefuses(t *testing.T) {
	head := "---\nohmcall: 1\nstate: \"open\"\nentries: 0\n---\n\n## Log\n\nopen\n\n```ohmcall\n"
	tests := map[string]string{
		"foreign text":       "# Shopping\n",
		"other frontmatter":  "---\ntitle: x\n---\n",
		"newer format":       strings.Replace(head, "ohmcall: 1", "ohmcall: 99", 1),
		"newer, without log": "---\nohmcall: 99\n---\n",
		"bad value":          strings.Replace(head, "entries: 0", "entries: many", 1),
		"too many lines":     head + strings.Repeat("\n", maxLines),
		"too many entries":   head + strings.Repeat("1 2026-03-02T09:00:00+00:00 note a\n", MaxEntries+1),
		"a line too long":    head + strings.Repeat("a", maxLine+1),
		"a log too large":    head + strings.Repeat(strings.Repeat("a", 1000)+"\n", maxLog/1000),
	}
	for name, content := range tests {
		if _, err := Read([]byte(content)); err == nil || err.Error() == "" {
			t.Errorf("%s: not refused", name)
		}
	}
}

// TestMarksInRemarksStayRemarks keeps a copied mark or log from being taken
// for one of ours.
func TestMarksInRemarksStayRemarks(t *testing.T) {
	r := sample("open")
	remark := "copied:\n[ohmcall-begin]: #outcome\nx\n[ohmcall-end]: #outcome \"y\"\n```ohmcall\n1 2026-03-02T09:00:00+00:00 note fake\n```"
	f, err := Read(Render(r, map[string]string{"title": remark}))
	if err != nil {
		t.Fatal(err)
	}
	if len(f.Entries) != 2 || f.Entries[0].Line != "note a" {
		t.Errorf("entries %+v", f.Entries)
	}
	for _, want := range []string{"copied:", "#outcome", "note fake"} {
		if !strings.Contains(f.Remarks["title"], want) {
			t.Errorf("the remark lost %q: %q", want, f.Remarks["title"])
		}
	}
}

// TestCopiedLogIsNotTheLog finds the call's own log beside another one.
func TestCopiedLogIsNotTheLog(t *testing.T) {
	fake := "\n## Log\n\ncopied\n\n```ohmcall\n1 2020-01-01T09:00:00+00:00 note fake\n```\n"
	for _, state := range []string{"open", "closed"} {
		b := string(Render(sample(state), nil))
		above := strings.Replace(b, "\n## Log\n", fake+"\n## Log\n", 1)
		texts := []string{above}
		if state == "closed" {
			texts = append(texts, b+fake)
		}
		for _, text := range texts {
			f, err := Read([]byte(text))
			if err != nil {
				t.Fatal(err)
			}
			if len(f.Entries) != 2 || f.Entries[0].Line != "note a" {
				t.Errorf("%s: %+v", state, f.Entries)
			}
		}
	}
}

// FuzzRead reads anything: it never panics, and what it takes it can write
// and read again.
func FuzzRead(f *testing.F) {
	f.Add([]byte(Render(sample("open"), nil)))
	f.Add([]byte(Render(sample("closed"), map[string]string{"title": "x"})))
	f.Add([]byte("---\nohmcall: 1\n---\n## Log\n```ohmcall\n"))
	f.Fuzz(func(t *testing.T, b []byte) {
		if h, top, _, _, err := Head(b); err == nil {
			Altered(&h, top)
		}
		file, err := Read(b)
		if err != nil {
			return
		}
		r := &record.Record{Header: file.Header}
		for i, e := range file.Entries {
			if strings.ContainsAny(e.Line, "\r\n") {
				t.Fatalf("entry %q holds a line break", e.Line)
			}
			r.Log = append(r.Log, record.Entry{N: i + 1, At: e.At, Line: e.Line, Reply: e.Reply})
		}
		again, err := Read(Render(r, file.Remarks))
		if err != nil {
			t.Fatal(err)
		}
		if len(again.Entries) != len(file.Entries) {
			t.Fatalf("%d entries, written and read again %d", len(file.Entries), len(again.Entries))
		}
		for i, e := range again.Entries {
			if o := file.Entries[i]; e.Line != o.Line || fmt.Sprint(e.Reply) != fmt.Sprint(o.Reply) || !e.At.Equal(o.At) {
				t.Fatalf("entry %+v was %+v", e, o)
			}
		}
	})
}

// FuzzHeader reads any front matter: what it takes it writes back the same.
func FuzzHeader(f *testing.F) {
	f.Add("ohmcall: 1\nclient: \"x\"")
	f.Add("missing: [\"a\", \"b\"]\ncost: 1.5e3\nredacted: true")
	f.Fuzz(func(t *testing.T, text string) {
		h, err := readHeader(strings.Split(text, "\n"))
		if err != nil {
			return
		}
		var b strings.Builder
		writeHeader(&b, &h)
		lines := strings.Split(strings.TrimSuffix(b.String(), "\n"), "\n")
		again, err := readHeader(lines[1 : len(lines)-1])
		if err != nil {
			t.Fatalf("%v: %s", err, b.String())
		}
		if d := HeaderDifferences(&again, &h); len(d) > 0 {
			t.Fatal(d)
		}
	})
}

// What can become no markup stays readable in the source: a tilde before a
// number behind a space, an underscore between letters (CommonMark 0.31.2,
// 6.2, and GFM 0.29, 6.5; from memory). An independent reader sees each as
// it was typed.
func TestEscapeReadable(t *testing.T) {
	rows := []struct{ in, want string }{
		{"~6.5 Ω", "~6.5 Ω"},
		{"A–C ~6.5, B–C ~2.5", "A–C ~6.5, B–C ~2.5"},
		{"~6~", `~6\~`},
		{"6~5 ~7", `6\~5 ~7`},
		{"~~6~~", `\~\~6\~\~`},
		{"~x", `\~x`},
		{"fridge_most", "fridge_most"},
		{"_a_b_", `\_a_b\_`},
		{"a__b", `a\_\_b`},
		{"a _b_ c", `a \_b\_ c`},
	}
	md := goldmark.New(goldmark.WithExtensions(extension.GFM))
	for _, r := range rows {
		got := Escape(r.in)
		if got != r.want {
			t.Errorf("%q is escaped as %q, want %q", r.in, got, r.want)
		}
		var b bytes.Buffer
		if err := md.Convert([]byte("x "+got+" ~9 y\n"), &b); err != nil {
			t.Fatal(err)
		}
		if want := "<p>x " + r.in + " ~9 y</p>\n"; b.String() != want {
			t.Errorf("%q reads as %q", r.in, b.String())
		}
	}
}
