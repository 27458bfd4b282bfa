package fleet

import (
	"bytes"
	"context"
	"crypto/sha256"
	"encoding/csv"
	"encoding/json"
	"fmt"
	"io"
	"path/filepath"
	"reflect"
	"slices"
	"strings"
	"testing"
	"time"
	"unicode"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/extension"
	east "github.com/yuin/goldmark/extension/ast"
	gmtext "github.com/yuin/goldmark/text"

	"ohmcall/notebook/page"
	"ohmcall/notebook/record"
)

func TestDigestGolden(t *testing.T) {
	d := NewDigest(fixtureItems(), Filter{})
	for _, f := range []struct {
		name  string
		write func(*bytes.Buffer) error
	}{
		{"digest.md", func(b *bytes.Buffer) error { return d.Markdown(b) }},
		{"digest.csv", func(b *bytes.Buffer) error { return d.CSV(b) }},
		{"digest.jsonl", func(b *bytes.Buffer) error { return d.JSONL(b) }},
	} {
		var b bytes.Buffer
		if err := f.write(&b); err != nil {
			t.Fatal(err)
		}
		golden(t, f.name, b.Bytes())
	}
}

func TestDigestAddsUp(t *testing.T) {
	d := NewDigest(fixtureItems(), Filter{})
	want := Totals{Calls: 4, Minutes: 210, Cost: 73.5, Unpriced: 1, Proved: 1, NotProved: 1, Unsafe: 1, Open: 1, Changed: 1, CallBacks: 1}
	if d.Totals != want {
		t.Errorf("totals %+v, want %+v", d.Totals, want)
	}
	var order []string
	for _, r := range d.Rows {
		order = append(order, r.ID)
	}
	if !slices.Equal(order, []string{"c3", "b2", "d4", "a1"}) {
		t.Errorf("order %q", order)
	}
	if !reflect.DeepEqual(d.Parts, []PartUse{{"Start Device", 3, 2}, {"solder", 0.5, 1}}) {
		t.Errorf("parts %+v", d.Parts)
	}
	if d.Foreign != 1 || len(d.Problems) != 2 {
		t.Errorf("problems %+v", d.Problems)
	}
	sum := 0.0
	for _, s := range d.Causes {
		sum += s.Part
	}
	if len(d.Causes) != 3 || sum < 0.999 || sum > 1.001 {
		t.Errorf("causes %+v", d.Causes)
	}
}

func TestCallBacks(t *testing.T) {
	for _, c := range []struct {
		first, second   string // dates
		serial1, serial string
		days            int // -1 for none
	}{
		{"2026-03-01", "2026-03-31", "X1", "X1", 30},
		{"2026-03-01", "2026-04-01", "X1", "X1", -1},
		{"2026-03-01", "2026-03-01", "X1", " x1", 0},
		{"2024-02-28", "2024-03-01", "X1", "X1", 2}, // leap day
		{"2026-03-01", "2026-03-02", "X1", "X2", -1},
		{"2026-03-01", "2026-03-02", "", "", -1},
		{"2026-03-01", "no date", "X1", "X1", -1},
	} {
		items := []Item{
			{Path: "a", State: Trusted, Header: record.Header{Started: c.first + "T23:00:00-05:00", Serial: c.serial1}},
			{Path: "b", State: Trusted, Header: record.Header{Started: c.second + "T23:30:00+09:00", Serial: c.serial}},
		}
		slices.Reverse(items)
		d := NewDigest(slices.Values(items), Filter{})
		got, followed := -1, 0
		for _, r := range d.Rows {
			if r.LaterOn != "" {
				followed++
				if r.Path != "a" || r.Later != "b" || r.LaterOn != c.second {
					t.Errorf("%+v: %s is followed by %s on %s", c, r.Path, r.Later, r.LaterOn)
				}
			}
			if r.CallBack != nil {
				got = *r.CallBack
				if r.Path != "b" || r.Earlier != "a" {
					t.Errorf("%+v: %s comes back of %s", c, r.Path, r.Earlier)
				}
			}
		}
		if got != c.days || (followed == 1) != (c.days >= 0) {
			t.Errorf("%+v: %d days", c, got)
		}
	}
}

func TestCallBackReachesOutsideTheFilter(t *testing.T) {
	d := NewDigest(fixtureItems(), Filter{From: "2026-04-01"})
	for _, r := range d.Rows {
		if r.ID == "b2" && (r.CallBack == nil || *r.CallBack != 30 || r.Earlier != "n/a.md") {
			t.Errorf("the call before the range is not seen: %+v", r)
		}
	}
}

func TestCallBackIsToldOfACallOutsideTheFilter(t *testing.T) {
	for _, r := range NewDigest(fixtureItems(), Filter{To: "2026-03-31"}).Rows {
		if r.ID == "a1" && (r.LaterOn != "2026-04-01" || r.Later != "n/b.md") {
			t.Errorf("the call-back after the range is not seen: %+v", r)
		}
	}
}

// typed is a log's text with the trail of its lines.
func typed(path string, lines ...string) Item {
	var log string
	for i, l := range lines {
		log += fmt.Sprintf("%d 2026-03-02T09:00:0%d+01:00 %s\n# a reply\n", i+1, i, l)
	}
	return Item{Path: path, State: Trusted, sum: sha256.Sum256([]byte(log)), trail: trailOf([]byte(log)), Header: record.Header{Started: "2026-03-02T09:00:00+01:00", Serial: "DEMO-1"}}
}

// closedAs gives a call a state and a client, by which its copies are known.
func closedAs(it Item, s State) Item {
	it.State, it.Header.Client = s, "Petra Placeholder"
	return it
}

// A redacted copy is counted when its original is not there, and never taken
// for the copy of another call.
func TestRedactedCopies(t *testing.T) {
	whole := []string{"client Petra Placeholder", "+3min site 12 Sample Street", "note client was there", "ohm A B 3.4", "saw clicks"}
	marked := []string{"client (redacted)", "+3min site (redacted)", "note client was there", "ohm A B 3.4", "saw clicks"}
	other := []string{"client Petra Placeholder", "+3min site 12 Sample Street", "note client was there", "ohm A B 3.5", "saw clicks"}
	original, copied := typed("b", whole...), typed("a", marked...)
	for name, c := range map[string]struct {
		items []Item
		calls string // counted
		out   string // left out
	}{
		"beside its original":      {[]Item{original, copied}, "b", "a"},
		"before its original":      {[]Item{copied, original}, "b", "a"},
		"alone":                    {[]Item{copied}, "a", ""},
		"original not to be had":   {[]Item{{Path: "b", State: Bad}, copied}, "a", "b"},
		"made before it went on":   {[]Item{original, typed("a", marked[:3]...)}, "b", "a"},
		"two of them, no original": {[]Item{typed("b", marked...), typed("a", marked[:3]...)}, "b", "a"},
		"of a call that differs":   {[]Item{typed("b", other...), copied}, "a b", ""},
		"went on by itself":        {[]Item{typed("b", whole[:3]...), copied}, "a b", ""},
		"an earlier state":         {[]Item{original, typed("a", whole[:3]...)}, "b", "a"},
		"went on by an editor":     {[]Item{closedAs(typed("b", whole[:3]...), Trusted), closedAs(typed("a", whole...), Changed)}, "b", "a"},
		"nothing in it to compare": {[]Item{original, typed("a")}, "a b", ""},
	} {
		d := NewDigest(slices.Values(c.items), Filter{})
		var calls, out []string
		for _, r := range d.Rows {
			calls = append(calls, r.Path)
			if c.out == "a" && (r.CallBack != nil || r.LaterOn != "") {
				t.Errorf("%s: the copy makes a call-back", name)
			}
		}
		for _, p := range d.Problems {
			out = append(out, p.Path)
			if p.State == Redacted && p.Reason != "a redacted copy of b" {
				t.Errorf("%s: %q", name, p.Reason)
			}
		}
		slices.Sort(calls)
		if strings.Join(calls, " ") != c.calls || strings.Join(out, " ") != c.out || d.Totals.Calls != len(calls) {
			t.Errorf("%s: calls %q, left out %q, totals %+v", name, calls, out, d.Totals)
		}
		if outside := NewDigest(slices.Values(c.items), Filter{Text: "no such thing"}); len(outside.Rows) != 0 || len(outside.Problems) != len(out) {
			t.Errorf("%s: filtered, %d rows, %d problems", name, len(outside.Rows), len(outside.Problems))
		}
	}
}

// A changed file that is unsafe is left out for no other that is not: the danger
// would leave the digest with it.
func TestUnsafeIsNotLeftOutForWhatIsNot(t *testing.T) {
	whole := []string{"client Petra Placeholder", "ohm A case 2", "note more"}
	unsafe := func(it Item) Item { it.Header.Unsafe = []string{"insulation"}; return it }
	for name, c := range map[string]struct {
		early, late Item
		calls       int
	}{
		"went on without it":       {unsafe(closedAs(typed("a", whole[:2]...), Changed)), closedAs(typed("b", whole...), Open), 2},
		"went on with it":          {unsafe(closedAs(typed("a", whole[:2]...), Changed)), unsafe(closedAs(typed("b", whole...), Open)), 1},
		"an earlier state, mended": {unsafe(closedAs(typed("a", whole[:2]...), Trusted)), closedAs(typed("b", whole...), Trusted), 1},
		"altered, the other safe":  {unsafe(closedAs(typed("a", "note other"), Changed)), closedAs(typed("b", whole...), Trusted), 2},
	} {
		if d := NewDigest(slices.Values([]Item{c.early, c.late}), Filter{}); d.Totals.Calls != c.calls || d.Totals.Unsafe != 1 && name != "an earlier state, mended" {
			t.Errorf("%s: %+v, left out %+v", name, d.Totals, d.Problems)
		}
	}
}

// What is left out leaves the call-backs between the other calls as they are.
func TestCallBackBehindARedactedCopy(t *testing.T) {
	a, b, c := typed("a", "client (redacted)"), typed("b", "client Petra Placeholder", "saw clicks"), typed("c", "client Petra Placeholder")
	c.Header.Started, c.trail = "2026-03-09T09:00:00+01:00", trail{}
	d := NewDigest(slices.Values([]Item{a, b, c}), Filter{})
	if len(d.Rows) != 2 || d.Rows[0].Later != "c" || d.Rows[1].Earlier != "b" || d.Totals.CallBacks != 1 || d.Seen != 2 {
		t.Errorf("%+v", d)
	}
}

// Digest, export and what earlier calls teach count a call once, though its
// redacted copy stands before it and was made before it went on.
func TestOneCallCountsOnce(t *testing.T) {
	dir := t.TempDir()
	call := func(name string, lines ...string) {
		rec := &record.Record{Outcome: []record.Fact{{Label: "Complaint", Text: "clicks"}}, Header: record.Header{State: "closed", Kind: "no-start", Cause: "start device or relay failed", Started: "2026-03-02T09:00:00+01:00"}}
		for i, l := range lines {
			rec.Log = append(rec.Log, record.Entry{N: i + 1, At: time.Date(2026, 3, 2, 9, i, 0, 0, time.UTC), Line: l, Reply: []string{"noted"}})
		}
		write(t, dir, name, page.Render(rec, nil))
	}
	call("a.md", "client (redacted)", "saw clicks")
	call("b.md", "client Petra Placeholder", "saw clicks", "note went on")
	if d := NewDigest(Scan([]string{dir}, Options{}), Filter{}); d.Totals.Calls != 1 || d.Rows[0].Path != filepath.Join(dir, "b.md") {
		t.Errorf("digest: %+v", d.Totals)
	}
	if e, err := Export(Once([]string{dir}, Scan([]string{dir}, Options{})), Stream(io.Discard), Tables(false)); err != nil || e.Calls != 1 || len(e.Problems) != 1 || e.Problems[0].State != Redacted {
		t.Errorf("export: %+v, %v", e, err)
	}
	if k, err := Learn(context.Background(), dir); err != nil || k.Calls != 1 || k.Causes("no-start")[0].Calls != 1 {
		t.Errorf("learned: %+v, %v", k, err)
	}
}

func TestFilter(t *testing.T) {
	for _, c := range []struct {
		f    Filter
		want string
	}{
		{Filter{}, "c3 b2 d4 a1"},
		{Filter{From: "2026-03-02", To: "2026-03-02"}, "a1"},
		{Filter{From: "2026-04-01"}, "c3 b2"},
		{Filter{To: "2026-04-01"}, "b2 a1"},
		{Filter{Technician: "MUSTER"}, "b2"},
		{Filter{Model: "invented"}, "b2 a1"},
		{Filter{Model: "mock-c7"}, "c3 b2 a1"},
		{Filter{Cause: "grounded"}, "c3"},
		{Filter{Cause: "ground"}, ""},
		{Filter{Cause: "winding-grounded"}, "c3"},
		{Filter{Cause: "Winding grounded to"}, "c3"},
		{Filter{Result: "unsafe"}, "c3"},
		{Filter{Result: "OPEN"}, "d4"},
		{Filter{Result: "changed"}, "c3"},
		{Filter{Result: "call-back"}, "b2"},
		{Filter{Result: "Callback"}, "b2"},
		{Filter{Result: "call-back", From: "2026-05-01"}, ""},
		{Filter{Text: "solder"}, "a1"},
		{Filter{Text: "really"}, "c3"},
		{Filter{Text: "no such thing"}, ""},
		{Filter{From: "2026-04-01", Technician: "tester"}, "c3"},
	} {
		var ids []string
		for _, r := range NewDigest(fixtureItems(), c.f).Rows {
			ids = append(ids, r.ID)
		}
		if got := strings.Join(ids, " "); got != c.want {
			t.Errorf("%+v picks %q, want %q", c.f, got, c.want)
		}
		if got := NewDigest(Select(once(fixtureItems(), fixtureItems()), c.f), Filter{}); len(got.Rows) != len(ids) || len(got.Problems) != 2 {
			t.Errorf("%+v selects %d rows, %d problems", c.f, len(got.Rows), len(got.Problems))
		}
	}
	for _, f := range []Filter{{From: "yesterday"}, {To: "2026-02-30"}, {Result: "xyz"}, {From: "2026-03-02", To: "2026-03-01"}} {
		if f.Check() == nil {
			t.Errorf("%+v was taken", f)
		}
	}
	if err := (Filter{From: "2026-03-01", To: "2026-03-01"}).Check(); err != nil {
		t.Error(err)
	}
}

// The whole word of a result picks that result alone: who signs off what is proved gets
// nothing that is not.
func TestFilterByResult(t *testing.T) {
	for _, want := range record.Results {
		for _, is := range record.Results {
			it := Item{Path: "a", State: Trusted, Header: record.Header{Result: is.Word, Started: "2026-03-02T09:00:00+01:00"}}
			for _, word := range []string{want.Word, strings.ToUpper(strings.ReplaceAll(want.Word, " ", "-"))} {
				f := Filter{Result: word}
				if err := f.Check(); err != nil || f.Match(&it) != (want.Word == is.Word) {
					t.Errorf("%s, a call %s: %v, %v", word, is.Word, f.Match(&it), err)
				}
			}
		}
	}
	f := Filter{Result: "waits"}
	if it := (Item{State: Trusted, Header: record.Header{Result: record.Waits}}); f.Check() != nil || !f.Match(&it) {
		t.Error("a part of a result picks no more")
	}
}

// A word finds the causes that are called so, not those that it explains.
func TestFilterOfCauses(t *testing.T) {
	const earth, gas, either = "earth path open: a leak to the metal is felt", "refrigerant leak: charge too low", "either condenser fan motor failed or jammed or refrigerant leak: charge too low (not parted)"
	for _, c := range []struct {
		found, want string
		is          bool
	}{
		{gas, "leak", true}, {earth, "leak", false}, {either, "leak", true}, {earth + "; " + gas, "LEAK", true}, {"water tube, valve or hose leaks", "leak", false},
		{gas, "refrigerant-low", true}, {earth, "refrigerant-low", false}, {earth, "earth", true}, {earth, "leak to the metal", true}, {gas, "charge too low", true},
		{gas, "", true}, {"", "", true}, {"", "leak", false}, {"", "?", true},
	} {
		if causeIs(c.found, c.want) != c.is {
			t.Errorf("%q in %q: want %v", c.want, c.found, c.is)
		}
	}
}

// payloads are texts that try to become something else.
var payloads = []string{
	"=cmd|' /C calc'!A0", "+1+1", "-1+1", "@SUM(A1:A9)", "\t=1", "\r=1", "\x00=1", "＝1+1",
	"a|b", "a\nb", "a\r\nb", "```\n# x", "<script>alert(1)</script>", "<!-- x -->", "[x](javascript:alert)", "![x](//x.invalid/x)",
	"\x1b[31mred\x1b[0m", "\x1b]52;c;eA==\x07", "\u009b31m", "\u202eevil", "\u2066x\u2069", "\u200b", "\ufeff", "a\u2028b",
	"\xff\xfe", "'; DROP TABLE calls; --", `"quoted", and`, "{{x}}", strings.Repeat("x", 5000), strings.Repeat("e\u0301", 1000),
}

// hostileDir holds one closed and one open notebook for each payload, in
// every field of the front matter, as a hostile sender would write them.
func hostileDir(t *testing.T) string {
	dir := t.TempDir()
	for i, p := range payloads {
		quoted, err := json.Marshal(p)
		if err != nil {
			t.Fatal(err)
		}
		content := string(one(i, "", ""))
		for _, field := range []string{"technician", "client", "site", "unit", "model", "serial", "machine", "complaint", "kind", "cause", "result", "started", "ended"} {
			at := strings.Index(content, "\n"+field+": ")
			if at < 0 {
				continue
			}
			end := at + 1 + strings.Index(content[at+1:], "\n")
			content = content[:at] + "\n" + field + ": " + string(quoted) + content[end:]
		}
		list := "\nmissing: [" + string(quoted) + "]\nunsafe: [" + string(quoted) + "]\nparts: [" + string(quoted) + "]\nohms: [" + string(quoted) + "]\nlog-sha256:"
		content = strings.Replace(content, "\nlog-sha256:", list, 1)
		write(t, dir, "p"+string(rune('a'+i%26))+strings.Repeat("x", i)+".md", []byte(content))
	}
	return dir
}

func TestHostileTextInEveryField(t *testing.T) {
	d := NewDigest(Scan([]string{hostileDir(t)}, Options{}), Filter{})
	if d.Totals.Calls != len(payloads) {
		t.Fatalf("%d calls, problems %+v", d.Totals.Calls, d.Problems)
	}
	var md, csvText, lines bytes.Buffer
	if err := d.Markdown(&md); err != nil {
		t.Fatal(err)
	}
	if err := d.CSV(&csvText); err != nil {
		t.Fatal(err)
	}
	if err := d.JSONL(&lines); err != nil {
		t.Fatal(err)
	}
	for name, b := range map[string]*bytes.Buffer{"markdown": &md, "csv": &csvText, "jsonl": &lines} {
		inert(t, name, b.String())
	}
	for _, tt := range d.Tables() {
		for _, row := range tt.Rows {
			inert(t, tt.Title, strings.Join(row, " "))
		}
	}
	markdownInert(t, md.Bytes(), d)
	records, err := csv.NewReader(&csvText).ReadAll()
	if err != nil || len(records) != len(payloads)+1 {
		t.Fatalf("%d lines of CSV, %v", len(records), err)
	}
	cellsInert(t, records)
}

// markdownInert reads the digest's Markdown with a parser that is not ours.
func markdownInert(t *testing.T, md []byte, d *Digest) {
	t.Helper()
	doc := goldmark.New(goldmark.WithExtensions(extension.GFM)).Parser().Parse(gmtext.NewReader(md))
	rows, headings := 0, 0
	err := ast.Walk(doc, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if !entering {
			return ast.WalkContinue, nil
		}
		switch n.Kind() {
		case ast.KindHTMLBlock, ast.KindRawHTML, ast.KindLink, ast.KindImage, ast.KindAutoLink, ast.KindCodeSpan, ast.KindFencedCodeBlock, ast.KindCodeBlock:
			t.Errorf("the Markdown holds a %s", n.Kind())
		case ast.KindHeading:
			headings++
		case east.KindTableRow:
			rows++
		}
		return ast.WalkContinue, nil
	})
	if err != nil {
		t.Fatal(err)
	}
	want := 0
	for _, tt := range d.Tables() {
		want += len(tt.Rows)
	}
	if rows != want || headings != len(d.Tables())+1 {
		t.Errorf("%d rows and %d headings, want %d and %d", rows, headings, want, len(d.Tables())+1)
	}
}

func cellsInert(t *testing.T, records [][]string) {
	t.Helper()
	for _, r := range records {
		for _, c := range r {
			if c != "" && strings.ContainsRune("=+-@\t\r\x00＝＋－＠", []rune(c)[0]) && !strictNumber(c) {
				t.Errorf("a cell begins with a trigger: %.40q", c)
			}
		}
	}
}

// inert fails for bytes that could steer a terminal, hide or reorder text.
func inert(t *testing.T, name, s string) {
	t.Helper()
	for _, r := range strings.ReplaceAll(s, "\r\n", "\n") {
		if r != '\n' && unicode.IsControl(r) || unicode.Is(unicode.Cf, r) || r == '\u2028' || r == '\u2029' {
			t.Errorf("%s holds %U", name, r)
			return
		}
	}
}

// Each result has its sum among the totals: the table itself.
func TestEachResultIsSummed(t *testing.T) {
	for _, r := range record.Results {
		d := NewDigest(slices.Values([]Item{{Path: "a", State: Trusted, Header: record.Header{Result: r.Word, Started: "2026-03-02T09:00:00+01:00"}}}), Filter{})
		if n := d.Totals.byResult()[r.Word]; r.Word != record.Unsafe && (n == nil || *n != 1) {
			t.Errorf("%s is not summed: %+v", r.Word, d.Totals)
		}
	}
}

// What comes next is not told once more as missing, and how long a call took is
// told at every width.
func TestNextIsToldOnce(t *testing.T) {
	earth := "earth from plug pin to metal (ohm earth …): 0.1 Ω, cannot tell (entry 12): type each digit (0.10)"
	it := seen("a", 1, record.NotProved, "cord", "proof: "+earth, "proof: that it heats")
	it.Header.Minutes, it.next = 95, "prove the repair: "+earth
	d := NewDigest(slices.Values([]Item{it}), Filter{})
	brief := strings.Join(d.Rows[0].Brief(), "\n")
	calls, _ := d.Screen()
	for what, text := range map[string]string{"brief": brief, "screen": strings.Join(calls.Rows[0], "\n"), "table": strings.Join(d.callTable().Rows[0], "\n")} {
		if strings.Count(text, "type each digit") != 1 || !strings.Contains(text, "proof: that it heats; cord") && what != "table" || !strings.Contains(text, "95") {
			t.Errorf("%s: %s", what, text)
		}
	}
	if !strings.Contains(brief, "95 min") || len(d.Rows[0].Missing) != 3 {
		t.Errorf("%s; %q", brief, d.Rows[0].Missing)
	}
	// One that is clipped is the same; a part of another's words is not.
	it.Header.Missing, it.next = []string{"proof: " + earth[:60] + "…", "earth"}, "prove the repair: "+earth
	if d := NewDigest(slices.Values([]Item{it}), Filter{}); !slices.Equal(d.Rows[0].missing(), []string{"earth"}) {
		t.Errorf("%q", d.Rows[0].missing())
	}
	// Nor is an earth that is in doubt; the proof of another thing is missing all the same.
	it.Header.Missing, it.next = []string{"proof: " + earth, "proof: heater to its sheath", "proof: earthing of the pipes"}, ""
	it.Header.Doubt = []string{"earth: cannot tell, there is a path (entry 12)", "heater: cannot tell (entry 3)"}
	d = NewDigest(slices.Values([]Item{it}), Filter{})
	if want := []string{"proof: heater to its sheath", "proof: earthing of the pipes"}; !slices.Equal(d.Rows[0].missing(), want) {
		t.Errorf("%q, want %q", d.Rows[0].missing(), want)
	}
}

// What was said of a proved call since its repair stands in a table of its own.
func TestSaidTable(t *testing.T) {
	a, b := seen("a", 1, record.Proved), seen("b", 2, record.Proved)
	a.Header.Said = []string{"the lamp of the door flickers", "client happy"}
	got := NewDigest(slices.Values([]Item{a, b}), Filter{}).saidTable()
	if len(got.Rows) != 1 || got.Rows[0][1] != "the lamp of the door flickers; client happy" {
		t.Errorf("%v", got.Rows)
	}
}

// The table of technicians tells whose records are in doubt or not as closed.
func TestTechnicianTable(t *testing.T) {
	a, b, c := seen("a", 1, record.Proved), seen("b", 2, record.NotProved), seen("c", 20, record.Proved)
	a.Header.Technician, b.Header.Technician, c.Header.Technician = "Tilda Tester", "Max Muster", "max  muster"
	b.State, b.Header.Doubt, c.Header.Serial = Changed, []string{"the file was not what had been closed"}, "DEMO-2"
	got := NewDigest(slices.Values([]Item{a, b, c}), Filter{}).technicianTable()
	want := [][]string{
		{"Max Muster", "2", "0", "1", "1", "1", "0"},
		{"Tilda Tester", "1", "0", "0", "0", "0", "1"},
	}
	if !reflect.DeepEqual(got.Rows, want) {
		t.Errorf("%v: %v", got.Head, got.Rows)
	}
}
