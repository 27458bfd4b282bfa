package fleet

import (
	"bytes"
	"math/rand/v2"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strings"
	"testing"
	"testing/synctest"

	"ohmcall/notebook/fleet/sample"
	"ohmcall/notebook/page"
	"ohmcall/notebook/record"
)

// one gives sample notebook n with a change made to its text.
func one(n int, old, new string) []byte {
	_, content := sample.File(7, n)
	return bytes.Replace(content, []byte(old), []byte(new), 1)
}

func write(t *testing.T, dir, name string, content []byte) string {
	t.Helper()
	path := filepath.Join(dir, name)
	if err := os.MkdirAll(filepath.Dir(path), 0o700); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, content, 0o600); err != nil {
		t.Fatal(err)
	}
	return path
}

// unlined gives a notebook without the line that begins so.
func unlined(content []byte, start string) []byte {
	i := bytes.Index(content, []byte("\n"+start)) + 1
	end := i + bytes.IndexByte(content[i:], '\n') + 1
	return slices.Concat(content[:i], content[end:])
}

// resealed gives the front matter the digest of what it holds now, as someone
// does who knows how.
func resealed(content []byte) []byte {
	i := bytes.Index(content, []byte("\nhead: ")) + 1
	end := i + bytes.IndexByte(content[i:], '\n') + 1
	head := "head: \"" + page.Sum(content[len("---\n"):i])[:12] + "\"\n"
	return slices.Concat(content[:i], []byte(head), content[end:])
}

// openCall gives an open notebook with these typed lines, each answered.
func openCall(lines ...string) []byte {
	rec := &record.Record{Header: record.Header{State: "open"}}
	for i, l := range lines {
		rec.Log = append(rec.Log, record.Entry{N: i + 1, Line: l, Reply: []string{"noted"}})
	}
	return page.Render(rec, nil)
}

func TestStates(t *testing.T) {
	_, whole := sample.File(7, 1)
	long := strings.Repeat("x", 10<<20)
	for _, c := range []struct {
		name    string
		content []byte
		state   State
		reason  string // begins with
	}{
		{"closed", whole, Trusted, ""},
		{"BOM in front", append([]byte("\xEF\xBB\xBF"), whole...), Trusted, ""},
		{"remark behind the log", append(slices.Clone(whole), "\nSeen by the office.\n"...), Trusted, ""},
		{"reading changed", one(1, "# No path", "# A path"), Changed, "the log is not what was closed"},
		{"digest changed", one(1, `log-sha256: "`, `log-sha256: "0`), Changed, "the log is not what was closed"},
		{"front matter edited", one(1, `result: "`, `result: "un`), Changed, "the front matter is not what was closed"},
		{"line of the front matter deleted", unlined(whole, "minutes: "), Changed, "the front matter is not what was closed"},
		{"line added to the front matter", one(1, "\nhead: ", "\ntags: []\nhead: "), Changed, "the front matter is not what was closed"},
		{"line behind its digest", one(1, "\n---\n\n", "\nresult: \"proved\"\n---\n\n"), Changed, "the front matter is not what was closed"},
		{"Outcome written over", one(1, "**Work and result:** ", "**Work and result:** proved "), Changed, "text changed: outcome"},
		{"line of a section deleted", unlined(whole, "**Work and result:** "), Changed, "text changed: outcome"},
		{"section without its end", unlined(whole, "[ohmcall-end]: #outcome"), Changed, "text changed: outcome"},
		{"section gone", slices.Concat(whole[:bytes.Index(whole, []byte("[ohmcall-begin]: #outcome"))], whole[bytes.Index(whole, []byte("[ohmcall-begin]: #identity")):]), Changed, "text changed: outcome"},
		{"remark between the sections", one(1, "\n[ohmcall-begin]: #identity", "\nSeen by the office.\n\n[ohmcall-begin]: #identity"), Trusted, ""},
		{"without its digest", unlined(whole, "head: "), Changed, "the front matter bears no digest"},
		{"digest of the front matter changed", one(1, `head: "`, `head: "0`), Changed, "the front matter is not what was closed"},
		{"entry without reply", one(1, "\n# The call is closed.", ""), Changed, "the log is not what was closed; line "},
		{"open", openCall("client Petra"), Open, "never closed"},
		{"open, last line torn", append(openCall("client Petra"), "2 2026-01-"...), Open, "never closed"},
		{"empty", nil, Bad, "empty file"},
		{"README", []byte("# Read me\n"), Foreign, "not a notebook"},
		{"other front matter", []byte("---\ntitle: x\n---\n"), Foreign, "not a notebook"},
		{"bytes", []byte{0, 1, 2, 0xFF}, Foreign, "not a notebook"},
		{"CR LF", bytes.ReplaceAll(whole, []byte("\n"), []byte("\r\n")), Changed, "its line ends were changed to CR LF"},
		{"one line with CR LF", one(1, "\nstate: \"closed\"\n", "\nstate: \"closed\"\r\n"), Changed, "its line ends were changed to CR LF"},
		{"CR LF and a reading changed", bytes.ReplaceAll(one(1, "# No path", "# A path"), []byte("\n"), []byte("\r\n")), Changed, "its line ends were changed to CR LF; the log is not what was closed"},
		{"open with CR LF", bytes.ReplaceAll(openCall("client Petra"), []byte("\n"), []byte("\r\n")), Open, "its line ends were changed to CR LF; never closed"},
		{"cut in front matter with CR LF", bytes.ReplaceAll(whole[:100], []byte("\n"), []byte("\r\n")), Bad, "cut off inside its front matter"},
		{"README with CR LF", []byte("# Read me\r\n"), Foreign, "not a notebook"},
		{"newer", one(1, "ohmcall: 1", "ohmcall: 99"), Bad, "the notebook is of format 99"},
		{"no format", one(1, "ohmcall: 1", "ohmcall: 0"), Bad, "not a call notebook"},
		{"value that is none", one(1, "minutes: ", "minutes: x"), Bad, "line "},
		{"cut in front matter", whole[:100], Bad, "cut off inside its front matter"},
		{"cut above the log", whole[:bytes.Index(whole, []byte("\n## Log"))], Changed, "cut off: it ends before its log"},
		{"cut in the log", whole[:len(whole)-40], Changed, "cut off: it was closed"},
		{"cut in front matter that spoke of unsafe", append(slices.Clone(whole[:100]), "\nresult: \"unsafe\"\nminu"...), Bad, "cut off inside its front matter, which spoke of unsafe"},
		{"nothing but a head that speaks of no entry", []byte("---\nohmcall: 1\n---\n"), Bad, "the notebook has no log"},
		{"10 MB typed line", openCall("note " + long), Bad, "line 1 of its log is longer than the 64 KB"},
		{"10 MB second line", openCall("note a", "note "+long), Bad, "line 3 of its log is longer"},
		{"10 MB front matter", one(1, `client: "`, `client: "`+long), Bad, "front matter longer than the 1 MB"},
		{"10 MB line of a README", []byte(long), Foreign, "not a notebook"},
		{"replay panics", openCall("panic"), Bad, "cannot be replayed: the program failed on it"},
	} {
		dir := t.TempDir()
		write(t, dir, "call.md", c.content)
		items := slices.Collect(Scan([]string{dir}, Options{Replay: sampleReplay}))
		if len(items) != 1 {
			t.Fatalf("%s: %d items", c.name, len(items))
		}
		if it := items[0]; it.State != c.state || !strings.HasPrefix(it.Reason, c.reason) || (it.Reason == "") != (c.reason == "") {
			t.Errorf("%s: %s, %q; want %s, %q", c.name, it.State, it.Reason, c.state, c.reason)
		}
	}
}

func TestReplayedHeaderCounts(t *testing.T) {
	dir := t.TempDir()
	write(t, dir, "a.md", openCall("client Petra Placeholder"))
	edited := one(1, `client: "`, `client: "Not `)
	write(t, dir, "b.md", edited)
	write(t, dir, "c.md", unlined(one(2, "", ""), "head: "))
	write(t, dir, "d.md", resealed(one(3, `client: "`, `client: "Not `)))
	items := slices.Collect(Scan([]string{dir}, Options{Replay: sampleReplay}))
	if got := items[0].Header.Client; got != "Petra Placeholder" {
		t.Errorf("the open call's client is %q, not that of its log", got)
	}
	for i, reason := range map[int]string{1: "the front matter is not what was closed", 2: "the front matter bears no digest"} {
		if it := items[i]; it.State != Changed || it.Reason != reason || strings.HasPrefix(it.Header.Client, "Not ") {
			t.Errorf("%s: %s, %q, client %q", it.Rel, it.State, it.Reason, it.Header.Client)
		}
	}
	// The digest is no signature: made anew it is believed, until the lines are
	// replayed.
	if items[3].State != Trusted {
		t.Errorf("a sealed front matter was not trusted: %s", items[3].Reason)
	}
	items = slices.Collect(Scan([]string{dir}, Options{Replay: sampleReplay, Records: true}))
	if it := items[3]; it.State != Changed || it.Reason != "the front matter is not what the log amounts to: client" {
		t.Errorf("the edited front matter gave %s, %q", it.State, it.Reason)
	}
	if it := items[3]; strings.HasPrefix(it.Header.Client, "Not ") || it.Record == nil {
		t.Errorf("the edited client %q was believed", it.Header.Client)
	}
	items = slices.Collect(Scan([]string{dir}, Options{}))
	if items[0].State != Open || items[0].Record != nil {
		t.Errorf("without a replay: %+v", items[0])
	}
}

func TestUnreadableFilesStopNothing(t *testing.T) {
	dir, names := sampleFiles(t, 40)
	deny := names[13]
	o := Options{open: func(path string) (source, error) {
		if path == deny {
			return nil, &os.PathError{Op: "open", Path: path, Err: os.ErrPermission}
		}
		return openFile(path)
	}}
	bad := 0
	for it := range Scan([]string{dir}, o) {
		switch {
		case it.Path == deny && it.State == Bad && it.Reason == os.ErrPermission.Error():
			bad++
		case it.State != Trusted:
			t.Errorf("%s: %s, %s", it.Path, it.State, it.Reason)
		}
	}
	if bad != 1 {
		t.Errorf("%d files were denied", bad)
	}
	items := slices.Collect(Scan([]string{filepath.Join(dir, "missing")}, Options{}))
	if len(items) != 1 || items[0].State != Bad {
		t.Errorf("a missing folder gave %+v", items)
	}
}

func TestOrderOfFilesDoesNotMatter(t *testing.T) {
	dir, names := sampleFiles(t, 150)
	write(t, dir, "README.md", []byte("# Read me\n"))
	names = append(names, filepath.Join(dir, "README.md"))
	want := NewDigest(Scan([]string{dir}, Options{Workers: 1}), Filter{})
	if want.Totals.Calls != 150 || want.Totals.CallBacks == 0 || want.Totals.Unsafe == 0 || want.Totals.NotProved == 0 {
		t.Fatalf("the samples do not show enough: %+v", want.Totals)
	}
	rnd := rand.New(rand.NewPCG(1, 2))
	for _, workers := range []int{1, 2, 7} {
		rnd.Shuffle(len(names), func(i, j int) { names[i], names[j] = names[j], names[i] })
		args := append(slices.Clone(names), names[0])
		if got := NewDigest(Scan(args, Options{Workers: workers}), Filter{}); !reflect.DeepEqual(got, want) {
			t.Errorf("%d workers: another digest", workers)
		}
	}
	items := slices.Collect(Scan([]string{dir}, Options{}))
	rnd.Shuffle(len(items), func(i, j int) { items[i], items[j] = items[j], items[i] })
	if got := NewDigest(slices.Values(items), Filter{}); !reflect.DeepEqual(got, want) {
		t.Error("items in another order gave another digest")
	}
}

func TestNames(t *testing.T) {
	dir := t.TempDir()
	write(t, dir, "a/call.md", openCall("client Petra"))
	write(t, dir, "b/call.md", openCall("client Petra", "note more"))
	write(t, dir, "c/other.md", openCall("client Petra"))
	items := slices.Collect(Scan([]string{dir}, Options{}))
	if items[0].ID == items[1].ID || len(items[0].ID) != 24 {
		t.Errorf("IDs %q and %q", items[0].ID, items[1].ID)
	}
	if d := NewDigest(slices.Values([]Item{items[0], items[2]}), Filter{}); len(d.Problems) != 1 || d.Problems[0] != (Problem{items[2].Path, Copy, "the same log as " + items[0].Path}) {
		t.Errorf("the copy is told as %+v", d.Problems)
	}
	moved := t.TempDir()
	write(t, moved, "x/y/call.md", openCall("client Petra", "note grown", "note again"))
	again := slices.Collect(Scan([]string{moved}, Options{}))
	if again[0].ID != items[0].ID {
		t.Error("the ID changed when the call grew and moved")
	}
}

func TestProgressAndStop(t *testing.T) {
	dir, _ := sampleFiles(t, 100)
	var seen []int
	o := Options{Progress: func(done, total int) {
		if total != 100 {
			t.Errorf("total %d", total)
		}
		seen = append(seen, done)
	}}
	for range Scan([]string{dir}, o) {
	}
	if len(seen) != 100 || seen[0] != 1 || seen[99] != 100 {
		t.Errorf("told %d times", len(seen))
	}
}

// A scan that is left leaves nothing running: the bubble ends with all that began in it,
// and says so when it cannot.
func TestScanThatIsLeft(t *testing.T) {
	dir, _ := sampleFiles(t, 100)
	synctest.Test(t, func(*testing.T) {
		for range 20 {
			for range Scan([]string{dir}, Options{}) {
				break
			}
		}
	})
}

func TestTextOfTheLogIsFound(t *testing.T) {
	dir := t.TempDir()
	write(t, dir, "a.md", openCall("note the COMPRESSOR was hot"))
	write(t, dir, "b.md", openCall("note nothing"))
	// Neither the replies nor the numbers and times of entries are searched.
	for text, want := range map[string]int{"compressor WAS": 1, "note": 2, "noted": 0, "0001-01": 0} {
		f := Filter{Text: text}
		d := NewDigest(Scan([]string{dir}, Options{Text: f.Text}), f)
		if len(d.Rows) != want || want == 1 && filepath.Base(d.Rows[0].Path) != "a.md" {
			t.Errorf("%s: found %+v", text, d.Rows)
		}
	}
}

// TestMemoryIsBounded digests a folder with twenty notebooks of the largest
// size that is read in a process of its own; 200 MB is what a single one of
// them may take.
func TestMemoryIsBounded(t *testing.T) {
	dir, _ := sampleFiles(t, 200)
	for i := range 20 {
		path := write(t, dir, "large"+strings.Repeat("x", i)+".md", one(1000+i, "", ""))
		f, err := os.OpenFile(path, os.O_WRONLY, 0)
		if err != nil {
			t.Fatal(err)
		}
		// A hole in the file costs no disk and reads as zero bytes, behind
		// the log, where remarks stand.
		if err := f.Truncate(60 << 20); err != nil {
			t.Fatal(err)
		}
		if err := f.Close(); err != nil {
			t.Fatal(err)
		}
	}
	_, peak, totals := digestProcess(t, dir)
	if totals.Calls != 220 {
		t.Errorf("%d calls", totals.Calls)
	}
	if peak > 200 {
		t.Errorf("%.0f MB at most", peak)
	}
	t.Logf("%.0f MB at most", peak)
}
