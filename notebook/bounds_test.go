package notebook

import (
	"errors"
	"fmt"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"ohmcall/notebook/journal"
)

// TestFullCall types until the call is full: it says so, it can still be
// closed, and what was written opens and checks.
func TestFullCall(t *testing.T) {
	tests := map[string]func(i int) string{
		"long notes":    func(i int) string { return "note " + strings.Repeat("x", 60_000) },
		"dear readings": func(i int) string { return fmt.Sprintf("ohm A%d B%d %d", i%12, i%7, 1+i%9) },
		"marks":         func(i int) string { return "note " + strings.Repeat("|", 60_000) },
	}
	for what, line := range tests {
		h := Host{FS: unsynced{}, Now: func() time.Time { return time.Date(2026, 3, 2, 9, 0, 0, 0, time.UTC) }}
		name := filepath.Join(t.TempDir(), "call.md")
		n, err := Create(h, name)
		if err != nil {
			t.Fatal(err)
		}
		typed := 0
		for ; err == nil; typed++ {
			_, err = n.Do(line(typed))
		}
		if !errors.Is(err, ErrFull) || n.Call().Len() != typed-1 {
			t.Fatalf("%s: line %d: %v, %d entries", what, typed, err, n.Call().Len())
		}
		// What is asked is answered and not written down; another line is refused.
		if e, err := n.Do("next"); err != nil || len(e) != 1 || e[0].N != 0 {
			t.Errorf("%s: next: %v, %v", what, e, err)
		}
		if e, err := n.Do("help nothingofthat"); err == nil || len(e) != 0 {
			t.Errorf("%s: help: %v, %v", what, e, err)
		}
		if _, err := n.Do("note y"); !errors.Is(err, ErrFull) {
			t.Errorf("%s: note: %v", what, err)
		}
		if _, err := n.Do("close"); err != nil {
			t.Errorf("%s: close: %v", what, err)
		}
		if err := n.Close(); err != nil {
			t.Fatal(err)
		}
		again, err := Open(h, name)
		if err != nil {
			t.Fatalf("%s: %v", what, err)
		}
		if got := again.Call().Len(); got != typed {
			t.Errorf("%s: %d entries of %d", what, got, typed)
		}
		again.Close()
		content, err := journal.Read(h.FS, name)
		if err != nil {
			t.Fatal(err)
		}
		if r, err := Check(content); err != nil || len(r.Faults) > 0 {
			t.Errorf("%s: %v", what, err)
		}
		t.Logf("%s: %d entries, %d bytes", what, typed, len(content))
	}
}

// unsynced is the disk without syncs, which take most of the time here.
type unsynced struct{ journal.Disk }

func (u unsynced) Append(name string) (journal.File, error) {
	f, err := u.Disk.Append(name)
	return quick{f}, err
}

type quick struct{ journal.File }

func (quick) Sync() error { return nil }
