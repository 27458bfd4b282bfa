package sample

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"ohmcall/notebook/page"
)

func TestNotebooksAreWhole(t *testing.T) {
	results, names := map[string]int{}, map[string]bool{}
	for i := range 300 {
		name, content := File(1, i)
		if again, same := File(1, i); again != name || !bytes.Equal(content, same) {
			t.Fatalf("notebook %d is not the same twice", i)
		}
		if names[name] || !filepath.IsLocal(name) {
			t.Errorf("name %q", name)
		}
		names[name] = true
		h, _, log, closed, err := page.Head(content)
		if err != nil || !closed || h.SHA256 != page.Sum(log) || h.State != "closed" {
			t.Fatalf("notebook %d: closed %v, %v", i, closed, err)
		}
		f, err := page.Read(content)
		if err != nil || len(f.Faults) > 0 || len(f.Entries) != h.Entries || len(f.Entries) < 15 {
			t.Errorf("notebook %d: %d entries, faults %v, %v", i, len(f.Entries), f.Faults, err)
		}
		for _, s := range f.Sections {
			if s.Edited {
				t.Errorf("notebook %d: section %s does not match its mark", i, s.ID)
			}
		}
		results[h.Result]++
	}
	for _, r := range []string{"proved", "not proved", "unsafe", "no repair"} {
		if results[r] == 0 {
			t.Errorf("no notebook is %q: %v", r, results)
		}
	}
}

func TestWrite(t *testing.T) {
	dir := t.TempDir()
	size, err := Write(dir, 2, 20)
	if err != nil {
		t.Fatal(err)
	}
	var found int64
	n := 0
	err = filepath.WalkDir(dir, func(path string, d os.DirEntry, err error) error {
		if err == nil && strings.HasSuffix(path, ".md") {
			info, err := d.Info()
			if err != nil {
				return err
			}
			n++
			found += info.Size()
		}
		return err
	})
	if err != nil || n != 20 || found != size {
		t.Errorf("%d files, %d bytes of %d, %v", n, found, size, err)
	}
}
