package notebook

import (
	"errors"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"testing"
	"time"

	"ohmcall/notebook/call"
	"ohmcall/notebook/journal"
)

// mostlyFails is the real disk, on which each step may fail; it is in no hurry
// to be safe.
type mostlyFails struct {
	journal.Disk
	fails func() bool
}

func (mostlyFails) SyncDir(string) error { return nil }

type failingFile struct {
	journal.File
	fails func() bool
}

var errDisk = errors.New("input/output error")

func (d mostlyFails) CreateTemp(name string, mode os.FileMode) (journal.File, error) {
	if d.fails() {
		return nil, errDisk
	}
	f, err := d.Disk.CreateTemp(name, mode)
	return failingFile{f, d.fails}, err
}

func (d mostlyFails) Append(name string) (journal.File, error) {
	f, err := d.Disk.Append(name)
	return failingFile{f, d.fails}, err
}

func (f failingFile) Sync() error {
	if f.fails() {
		return errDisk
	}
	return nil
}

// TestAnyCallKeepsWhatItAcknowledged types lines of every kind in any order on a
// disk that fails now and then, goes on in another file as the prompt does, and
// closes, opens and asks in between, where the clocks change: the last file holds
// what was acknowledged and nothing else, and so does the user's own file.
func TestAnyCallKeepsWhatItAcknowledged(t *testing.T) {
	zone, err := time.LoadLocation("Europe/Berlin")
	if err != nil {
		zone = time.UTC
	}
	lines := []string{"client Petra Placeholder", "unit washer", "fault does not start", "ohm A B 3.45", "14:30 temp freezer -2F", "+20min temp freezer -4F",
		"23:50 note late", "let drop = 3V", "14:30 let drop = 4V", "let net = lead + 1ohm", "keep drop", "keep net", "did replaced relay", "note leaks again",
		"close", "causes", "why washer", "strike 2 slip", "ohm A B", "date 2026-10-25 02:30 +02:00", "date now", "saw clicks", "nonsense here", ""}
	for seed := range uint64(40) {
		rng := rand.New(rand.NewPCG(2, seed))
		dir, at := t.TempDir(), time.Date(2026, 3, 28, 23, 0, 0, 0, zone)
		failing := true
		var kept []string
		h := Host{FS: mostlyFails{fails: func() bool { return failing && rng.IntN(8) == 0 }}, Snippets: map[string]string{"lead": "let lead = 0.2ohm"},
			Now:  func() time.Time { at = at.Add(23 * time.Minute); return at },
			Keep: func(line string) error { kept = append(kept, line); return nil }}
		files := 0
		next := func() string { files++; return filepath.Join(dir, fmt.Sprintf("%d.md", files)) }
		n, err := Create(h, next())
		if err != nil {
			t.Fatal(err)
		}
		var told []string
		stuck := false // what failed last may stand in the file all the same
		holds := func() {
			content, err := os.ReadFile(n.Name())
			if err != nil && len(told) == 0 {
				return // the first entry makes it
			}
			if err != nil {
				t.Fatal(err)
			}
			again, err := load(h, content)
			if err != nil {
				t.Fatalf("seed %d: %v", seed, err)
			}
			var got []string
			for _, e := range again.Call().Entries() {
				got = append(got, e.Line)
			}
			if stuck && len(got) == len(told)+1 {
				got = got[:len(told)]
			}
			if o := again.Opening; !slices.Equal(got, told) || o.Stray > 0 || o.Torn != "" || o.Changed > 0 || o.Broken {
				t.Fatalf("seed %d: acknowledged %q, the file holds %q, %+v", seed, told, got, o)
			}
		}
		for range 40 {
			typed := lines[rng.IntN(len(lines))]
			line := typed
			for again := true; again; {
				entries, err := n.Do(line)
				for _, e := range entries {
					if e.N > 0 {
						told = append(told, e.Line)
					}
				}
				if last := len(entries) - 1; err == nil && entries[last].N > 0 && entries[last].Line != typed {
					t.Errorf("seed %d: typed %q, stored %q", seed, typed, entries[last].Line)
				}
				var unsaved *SaveError
				if again = errors.As(err, &unsaved); again {
					line = unsaved.Line
					if stuck = n.Move(next()) != nil; stuck {
						break
					}
				}
			}
			switch rng.IntN(12) {
			case 0, 1:
				holds()
			case 2:
				failing = false
				if n.Close() != nil { // the file can no longer be trusted
					if err := n.Move(next()); err != nil {
						t.Fatal(err)
					}
					stuck = false
				} else if _, err := os.Stat(n.Name()); err == nil {
					if n, err = Open(h, n.Name()); err != nil {
						t.Fatalf("seed %d: %v", seed, err)
					}
				} else if n, err = Create(h, next()); err != nil {
					t.Fatal(err)
				}
				failing = true
			}
		}
		holds()
		for _, line := range kept {
			if _, ok := call.Defines(line); !ok || line[:3] != "let" {
				t.Errorf("seed %d: kept %q", seed, line)
			}
		}
	}
}
