//go:build unix

package fleet

import (
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"syscall"
	"testing"

	"ohmcall/notebook/journal"
)

// TestWalk holds a folder with everything that can stand in one; nothing may
// block, be read twice or change.
func TestWalk(t *testing.T) {
	dir, outside := t.TempDir(), t.TempDir()
	write(t, dir, "a.md", one(1, "", ""))
	write(t, dir, "sub.md/b.MD", one(2, "", ""))
	write(t, dir, "notes.txt", []byte("x"))
	write(t, dir, ".git/c.md", one(3, "", ""))
	write(t, dir, ".hidden.md", one(3, "", ""))
	far := write(t, outside, "d.md", one(4, "", ""))
	if err := os.Truncate(write(t, dir, "huge.md", nil), journal.MaxFile+1); err != nil {
		t.Fatal(err)
	}
	if err := syscall.Mkfifo(filepath.Join(dir, "fifo.md"), 0o600); err != nil {
		t.Fatal(err)
	}
	for name, target := range map[string]string{
		"loop.md": "loop.md", "dangling.md": "nowhere.md", "same.md": "a.md", "up": "..", "far.md": far, "far2.md": far,
		"zero.md": "/dev/zero", "x.md": "sub.md", "loop": "loop",
	} {
		if err := os.Symlink(target, filepath.Join(dir, name)); err != nil {
			t.Fatal(err)
		}
	}
	before := snapshot(t, dir)
	want := []string{
		"a.md trusted",
		"dangling.md bad link that leads nowhere",
		"far.md trusted",
		"far2.md foreign link to a file that is listed",
		"fifo.md bad not a regular file",
		"huge.md bad larger than the 64 MB that are read",
		"loop.md bad link that leads nowhere",
		"same.md foreign link to a file that is listed",
		"sub.md/b.MD trusted",
		"up foreign link to a folder, not followed",
		"x.md foreign link to a folder, not followed",
		"zero.md bad not a regular file",
	}
	items := slices.Collect(Scan([]string{dir, dir + "/."}, Options{Replay: sampleReplay}))
	for i, it := range items {
		got := strings.TrimSpace(it.Rel + " " + string(it.State) + " " + it.Reason)
		if i >= len(want) || !strings.HasPrefix(got, want[i]) {
			t.Errorf("item %d is %q", i, got)
		}
	}
	if len(items) != len(want) {
		t.Errorf("%d items, want %d", len(items), len(want))
	}
	if after := snapshot(t, dir); !slices.Equal(before, after) {
		t.Errorf("the folder was changed:\n%q\n%q", before, after)
	}
	// What is named itself is followed, and refused when it is no file.
	for path, state := range map[string]State{
		"same.md": Trusted, "fifo.md": Bad, "loop.md": Bad, "zero.md": Bad, "huge.md": Bad, "notes.txt": Foreign,
	} {
		items := slices.Collect(Scan([]string{filepath.Join(dir, path)}, Options{}))
		if len(items) != 1 || items[0].State != state {
			t.Errorf("%s named itself: %+v", path, items)
		}
	}
}

// TestFIFOTakesTheNameOfAFile: the kind of a file may change between
// listing and opening.
func TestFIFOTakesTheNameOfAFile(t *testing.T) {
	path := filepath.Join(t.TempDir(), "a.md")
	if err := syscall.Mkfifo(path, 0o600); err != nil {
		t.Fatal(err)
	}
	it := newWorker(&Options{}, &large{}).take(found{path: path})
	if it.State != Bad || it.Reason != "not a regular file" {
		t.Errorf("%s, %q", it.State, it.Reason)
	}
}

func snapshot(t *testing.T, dir string) []string {
	t.Helper()
	var out []string
	err := filepath.WalkDir(dir, func(path string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		info, err := d.Info()
		if err != nil {
			return err
		}
		out = append(out, path+" "+info.Mode().String()+" "+info.ModTime().String())
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return out
}
