package fleet

import (
	"bytes"
	"path/filepath"
	"slices"
	"testing"
)

// TestRenamedNotebooksAreNamed: a notebook whose name does not end in .md any more is not
// counted, and named among the files that are not; what is no notebook stays unnamed.
func TestRenamedNotebooksAreNamed(t *testing.T) {
	dir := t.TempDir()
	for name, content := range map[string][]byte{
		"a.md": one(1, "", ""), "b.txt": one(2, "", ""), "c.md.bak": one(3, "", ""), "below/d": one(4, "", ""),
		"e.txt":     bytes.ReplaceAll(one(5, "", ""), []byte("\n"), []byte("\r\n")),
		".f.md.tmp": one(6, "", ""), "g.txt": []byte("---\ntitle: x\n"), "h.jpg": {0xFF, 0xD8}, "i.txt": nil,
	} {
		write(t, dir, name, content)
	}
	d := NewDigest(Scan([]string{dir}, Options{Renamed: true}), Filter{})
	var got []string
	for _, p := range d.Problems {
		rel, _ := filepath.Rel(dir, p.Path)
		if got = append(got, filepath.ToSlash(rel)); p.State != Bad {
			t.Errorf("%s is %s", rel, p.State)
		}
	}
	if want := []string{"b.txt", "below/d", "c.md.bak", "e.txt"}; d.Totals.Calls != 1 || !slices.Equal(got, want) {
		t.Errorf("%d calls, not counted %q, want %q", d.Totals.Calls, got, want)
	}
	if d = NewDigest(Scan([]string{dir}, Options{}), Filter{}); len(d.Problems) > 0 {
		t.Errorf("unasked: %v", d.Problems)
	}
}
