package sqlite

import (
	"bytes"
	"database/sql"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	_ "modernc.org/sqlite" // the database/sql driver "sqlite": another reader than the writer

	"ohmcall/notebook/fleet"
	"ohmcall/notebook/record"
)

const hostile = "'; DROP TABLE calls; --\x1b[31m =1+1 \u202e\"x\""

func items() []fleet.Item {
	at := time.Date(2026, 3, 2, 9, 0, 0, 0, time.UTC)
	var out []fleet.Item
	for i := range 7 {
		rec := &record.Record{Verdicts: []record.Verdict{{Subject: hostile, Word: "good", Entries: []int{1, 2}}},
			Sums:  []record.Sum{{Entry: 3, Text: "-6", Number: -6.25, Unit: "1"}, {Entry: 4, Met: "met"}},
			Parts: []record.Part{{Entry: 5, Name: "fuse", Count: 2}},
			Log:   []record.Entry{{N: 1, At: at, Line: hostile, Reply: []string{"one", "two"}}}}
		for k := range i {
			rec.Readings = append(rec.Readings, record.Reading{Entry: k + 1, At: at, Kind: "ohm", A: hostile, Value: 0.1, Unit: "Ohm", Over: k == 1})
		}
		out = append(out, fleet.Item{ID: fmt.Sprint("id", i), Rel: "x.md", State: fleet.Trusted, Record: rec,
			Header: record.Header{Started: "2026-03-02T09:00:00+00:00", Client: hostile, Cost: 1.5}})
	}
	return append(out, fleet.Item{Path: "README.md", State: fleet.Foreign})
}

func export(t *testing.T, path string, replace bool) *fleet.Exported {
	t.Helper()
	sink, err := File(path, replace)
	if err != nil {
		t.Fatal(err)
	}
	done, err := fleet.Export(slices.Values(items()), sink, fleet.Tables(true))
	if err != nil {
		t.Fatal(err)
	}
	return done
}

func TestReadBack(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a year's calls?.db")
	done := export(t, path, false)
	if done.Calls != 7 || done.Rows["readings"] != 21 || len(done.Problems) != 1 {
		t.Errorf("told %+v", done)
	}
	info, err := os.Stat(path)
	if err != nil || info.Mode().Perm() != 0o600 {
		t.Errorf("mode %v, %v", info.Mode(), err)
	}
	left, err := os.ReadDir(filepath.Dir(path))
	if err != nil || len(left) != 1 {
		t.Errorf("files %v, %v", left, err)
	}
	db := open(t, path)
	for query, want := range map[string]string{
		"PRAGMA integrity_check":                                       "ok",
		"PRAGMA user_version":                                          fmt.Sprint(fleet.SchemaVersion),
		"SELECT count(*) FROM calls":                                   "7",
		"SELECT count(*) FROM readings":                                "21",
		"SELECT count(*) FROM readings r JOIN calls c USING (call_id)": "21",
		"SELECT count(value) FROM readings":                            "16", // five are over range
		"SELECT sum(value) FROM sums":                                  "-43.75",
		"SELECT entries FROM verdicts LIMIT 1":                         "1; 2",
		"SELECT at FROM entries LIMIT 1":                               "2026-03-02T09:00:00+00:00",
		"SELECT typeof(over) FROM readings LIMIT 1":                    "integer",
		"SELECT client FROM calls LIMIT 1":                             strings.NewReplacer("\x1b", "<U+001B>", "\u202e", "<U+202E>").Replace(hostile),
		"SELECT count(*) FROM pragma_foreign_key_check":                "0",
		"SELECT count(*) FROM (SELECT DISTINCT m.name FROM sqlite_master m, pragma_foreign_key_list(m.name) f WHERE m.type = 'table' AND f.\"table\" = 'calls')": "5",
	} {
		var got string
		if err := db.QueryRow(query).Scan(&got); err != nil || got != want {
			t.Errorf("%s: %q, want %q, %v", query, got, want, err)
		}
	}
	columns := 0
	for _, tb := range fleet.Tables(true) {
		columns += len(tb.Columns)
	}
	var n int
	if err := db.QueryRow("SELECT count(*) FROM schema_columns").Scan(&n); err != nil || n != columns {
		t.Errorf("%d columns told of %d, %v", n, columns, err)
	}
	if _, err := db.Exec("PRAGMA foreign_keys = ON; INSERT INTO parts (call_id, n, entry) VALUES ('nobody', 1, 1)"); err == nil {
		t.Error("a part without its call was taken")
	}
}

func open(t *testing.T, path string) *sql.DB {
	t.Helper()
	db, err := sql.Open("sqlite", path)
	if strings.Contains(path, "?") {
		// The driver takes what follows a question mark for settings.
		link := filepath.Join(t.TempDir(), "link.db")
		if err := os.Symlink(path, link); err != nil {
			t.Fatal(err)
		}
		db, err = sql.Open("sqlite", link)
	}
	if err != nil {
		t.Fatal(err)
	}
	db.SetMaxOpenConns(1)
	t.Cleanup(func() { db.Close() })
	return db
}

// TestCommandLineProgram reads the database with the engine's own program
// where there is one.
func TestCommandLineProgram(t *testing.T) {
	program, err := exec.LookPath("sqlite3")
	if err != nil {
		t.Log("no sqlite3 program here; the database was read back through database/sql only")
		return
	}
	file := filepath.Join(t.TempDir(), "file.db")
	export(t, file, false)
	out, err := exec.Command(program, "-bail", file, "PRAGMA integrity_check; PRAGMA foreign_key_check; PRAGMA user_version;", ".dump").CombinedOutput()
	if err != nil {
		t.Fatalf("%v, %s", err, out)
	}
	if a := string(out); !strings.HasPrefix(a, "ok\n1\n") || strings.Count(a, "INSERT INTO readings ") != 21 {
		t.Errorf("dump:\n%.2000s", a)
	}
}

func TestWholeOrAbsent(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "calls.db")
	sink, err := File(path, false)
	if err != nil {
		t.Fatal(err)
	}
	twice := append(items(), items()[0]) // a key that is there already
	if _, err := fleet.Export(slices.Values(twice), sink, fleet.Tables(true)); err == nil {
		t.Error("a call was taken twice")
	}
	if left, err := os.ReadDir(dir); err != nil || len(left) != 0 {
		t.Errorf("left behind: %v, %v", left, err)
	}
	if err := os.WriteFile(path, []byte("mine"), 0o600); err != nil {
		t.Fatal(err)
	}
	if _, err := File(path, false); err == nil {
		t.Error("a file that exists was taken")
	}
	if _, err := File(dir, true); err == nil {
		t.Error("a folder was taken")
	}
	if _, err := File(path, true); err == nil {
		t.Error("a file that is no database was taken")
	}
	for _, was := range []string{"", "SQLite format 3\x00 of before"} {
		if err := os.WriteFile(path, []byte(was), 0o600); err != nil {
			t.Fatal(err)
		}
		export(t, path, true)
	}
	if b, err := os.ReadFile(path); err != nil || !bytes.HasPrefix(b, []byte("SQLite format 3\x00")) {
		t.Errorf("not replaced: %.20q, %v", b, err)
	}
	if _, err := File(filepath.Join(dir, "missing", "x.db"), false); err != nil && !errors.Is(err, os.ErrNotExist) {
		t.Error(err)
	}
	again, err := File(filepath.Join(dir, "missing", "x.db"), false)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := fleet.Export(slices.Values(items()), again, fleet.Tables(false)); !errors.Is(err, os.ErrNotExist) {
		t.Errorf("a missing folder: %v", err)
	}
}
