package fleet

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"errors"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"ohmcall/notebook/record"
)

func TestExportGolden(t *testing.T) {
	for _, format := range []Format{CSV, JSONL} {
		dir := filepath.Join(t.TempDir(), "out")
		done, err := Export(once(fixtureItems(), fixtureItems()), Folder(dir, format, Flat), Tables(true))
		if err != nil {
			t.Fatal(err)
		}
		if done.Calls != 4 || done.Rows["readings"] != 3 || done.Rows["sums"] != 2 || len(done.Problems) != 2 {
			t.Errorf("told %+v", done)
		}
		for _, tb := range Tables(true) {
			name := tb.Name + "." + string(format)
			golden(t, name, read(t, filepath.Join(dir, name)))
		}
		golden(t, "SCHEMA.md", read(t, filepath.Join(dir, "SCHEMA.md")))
	}
	var b bytes.Buffer
	if _, err := Export(fixtureItems(), Stream(&b), Tables(false)); err != nil {
		t.Fatal(err)
	}
	golden(t, "stream.jsonl", b.Bytes())
}

func read(t *testing.T, path string) []byte {
	t.Helper()
	b, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return b
}

func TestExportByDate(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "out")
	items := fixture()
	items[3].Record = items[0].Record // a call without a date, with readings
	if _, err := Export(slices.Values(items), Folder(dir, CSV, ByDate), Tables(false)); err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, line := range snapshotNames(t, dir) {
		got = append(got, filepath.ToSlash(line))
	}
	want := []string{"SCHEMA.md",
		"table=calls/date=2026-03-02/part-0.csv", "table=calls/date=2026-04-01/part-0.csv", "table=calls/date=2026-05-02/part-0.csv",
		"table=calls/date=__HIVE_DEFAULT_PARTITION__/part-0.csv"}
	for _, name := range []string{"parts", "readings", "sums", "verdicts"} {
		want = append(want, "table="+name+"/date=2026-03-02/part-0.csv", "table="+name+"/date=__HIVE_DEFAULT_PARTITION__/part-0.csv")
	}
	if !slices.Equal(got, want) {
		t.Errorf("files %q", got)
	}
	records, err := csv.NewReader(bytes.NewReader(read(t, filepath.Join(dir, "table=readings", "date=2026-03-02", "part-0.csv")))).ReadAll()
	if err != nil || len(records) != 4 || slices.Contains(records[0], "date") {
		t.Errorf("%v, %q", err, records)
	}
	info, err := os.Stat(dir)
	if err != nil || info.Mode().Perm()&0o077 != 0 {
		t.Errorf("mode %v, %v", info.Mode(), err)
	}
}

func snapshotNames(t *testing.T, dir string) []string {
	t.Helper()
	var out []string
	err := filepath.WalkDir(dir, func(path string, d os.DirEntry, err error) error {
		if err == nil && !d.IsDir() {
			rel, _ := filepath.Rel(dir, path)
			out = append(out, rel)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// TestPartsAreFlushedWhole exports more rows than a buffer takes, over many
// days, and reads each back.
func TestPartsAreFlushedWhole(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "out")
	const n = 3000
	rec := &record.Record{}
	for i := range 20 {
		rec.Readings = append(rec.Readings, record.Reading{Entry: i + 1, Kind: "ohm", Shown: strings.Repeat("x", 40)})
	}
	items := func(yield func(Item) bool) {
		for i := range n {
			day := time.Date(2026, 1, 1+i%3, 0, 0, 0, 0, time.UTC).Format(time.DateOnly)
			if !yield(Item{ID: callID("x", string(rune(i))), State: Trusted, Record: rec, Header: record.Header{Started: day + "T08:00:00Z"}}) {
				return
			}
		}
	}
	if _, err := Export(items, Folder(dir, JSONL, ByDate), Tables(false)); err != nil {
		t.Fatal(err)
	}
	rows := 0
	for i := range 3 {
		text := read(t, filepath.Join(dir, "table=readings", "date=2026-01-0"+string(rune('1'+i)), "part-0.jsonl"))
		for _, line := range bytes.Split(bytes.TrimSpace(text), []byte("\n")) {
			if !json.Valid(line) {
				t.Fatalf("not JSON: %q", line)
			}
			rows++
		}
	}
	if rows != 20*n {
		t.Errorf("%d rows of %d", rows, 20*n)
	}
}

func TestExportIsWholeOrAbsent(t *testing.T) {
	root := t.TempDir()
	dir := filepath.Join(root, "out")
	sink := failing{Folder(dir, CSV, ByDate), 3}
	if _, err := Export(fixtureItems(), &sink, Tables(true)); !errors.Is(err, errFull) {
		t.Errorf("error %v", err)
	}
	if names := snapshotNames(t, root); len(names) != 0 {
		t.Errorf("left behind: %q", names)
	}
	if err := os.Mkdir(dir, 0o700); err != nil {
		t.Fatal(err)
	}
	kept := write(t, dir, "kept.txt", []byte("x"))
	if _, err := Export(fixtureItems(), Folder(dir, CSV, Flat), Tables(true)); err == nil {
		t.Error("a folder that exists was taken")
	}
	other := filepath.Join(root, "other")
	stale := write(t, other+".tmp", "kept.txt", []byte("x"))
	if _, err := Export(fixtureItems(), Folder(other, CSV, Flat), Tables(true)); err == nil || !strings.Contains(err.Error(), "broken off") {
		t.Errorf("error %v", err)
	}
	read(t, kept)
	read(t, stale)
}

var errFull = errors.New("no space left")

// failing is a sink that fails at its nth row.
type failing struct {
	Sink
	n int
}

func (f *failing) Row(t *Table, date string, values []any) error {
	if f.n--; f.n < 0 {
		return errFull
	}
	return f.Sink.Row(t, date, values)
}

// hostileRecord has a payload in every text of a record.
func hostileRecord(p string) *record.Record {
	nan := 0.0
	nan /= nan
	return &record.Record{
		Readings: []record.Reading{{Entry: 1, Kind: p, Of: p, A: p, B: p, Value: nan, Unit: p, Shown: p, Condition: p, Struck: p}},
		Verdicts: []record.Verdict{{Subject: p, Word: p, Text: p, Limit: p, Source: p, Margin: p, Also: []string{p, p}}},
		Sums:     []record.Sum{{Text: p, Value: p, Meaning: p, Unit: p, Met: p, Struck: p}},
		Parts:    []record.Part{{Name: p, Count: nan, Struck: p}},
		Log:      []record.Entry{{N: 1, Line: p, Kind: p, Reply: []string{p}, Struck: p}},
	}
}

func TestHostileTextInEveryExportedField(t *testing.T) {
	var items []Item
	for it := range Scan([]string{hostileDir(t)}, Options{}) {
		it.Record = hostileRecord(payloads[len(items)])
		items = append(items, it)
	}
	for _, layout := range []Layout{Flat, ByDate} {
		dir := filepath.Join(t.TempDir(), "out")
		if _, err := Export(slices.Values(items), Folder(dir, CSV, layout), Tables(true)); err != nil {
			t.Fatal(err)
		}
		for _, name := range snapshotNames(t, dir) {
			inert(t, name, name)
			text := read(t, filepath.Join(dir, name))
			inert(t, name, string(text))
			if filepath.Ext(name) != ".csv" {
				continue
			}
			records, err := csv.NewReader(bytes.NewReader(text)).ReadAll()
			if err != nil {
				t.Errorf("%s: %v", name, err)
			}
			cellsInert(t, records)
			if layout == Flat && len(records) != len(payloads)+1 {
				t.Errorf("%s: %d lines", name, len(records))
			}
		}
	}
	var lines bytes.Buffer
	if _, err := Export(slices.Values(items), Stream(&lines), Tables(true)); err != nil {
		t.Fatal(err)
	}
	inert(t, "stream", lines.String())
	for _, line := range bytes.Split(bytes.TrimSpace(lines.Bytes()), []byte("\n")) {
		if !json.Valid(line) {
			t.Errorf("not JSON: %.80q", line)
		}
	}
}

// TestSchemaIsSound holds the tables to what their text promises.
func TestSchemaIsSound(t *testing.T) {
	seen := map[string]bool{}
	for _, tb := range Tables(true) {
		if tb.Parent != "" && !seen[tb.Parent] {
			t.Errorf("%s comes before %s, to which it refers", tb.Name, tb.Parent)
		}
		seen[tb.Name] = true
		names := map[string]bool{}
		for _, c := range tb.Columns {
			if names[c.Name] || c.Help == "" || strings.Trim(c.Name, "abcdefghijklmnopqrstuvwxyz_0123456789") != "" {
				t.Errorf("%s.%s: a name twice, without help or with odd letters", tb.Name, c.Name)
			}
			names[c.Name] = true
		}
		for _, k := range tb.Key {
			if !names[k] {
				t.Errorf("%s has no key column %s", tb.Name, k)
			}
		}
		for _, it := range fixture() {
			err := tb.rows(&it, func(values []any) error {
				for i, v := range values {
					if c := tb.Columns[i]; v == nil && !c.Null || v != nil && !fits(c.Type, v) {
						t.Errorf("%s.%s holds %T %v", tb.Name, c.Name, v, v)
					}
				}
				return nil
			})
			if err != nil {
				t.Error(err)
			}
		}
	}
}

func fits(ty Type, v any) bool {
	switch v := v.(type) {
	case string:
		if ty == Time {
			_, err := time.Parse(time.RFC3339, v)
			return err == nil
		}
		if ty == Date {
			_, err := time.Parse(time.DateOnly, v)
			return err == nil
		}
		return ty == Text
	case int64:
		return ty == Integer
	case float64:
		return ty == Real
	case bool:
		return ty == Boolean
	case []string:
		return ty == List
	}
	return false
}
