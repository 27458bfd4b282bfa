package fleet

import (
	"bytes"
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"sort"
	"strings"

	"ohmcall/notebook/page"
)

// found is a file to read, or one that is already known not to be readable.
type found struct {
	path, rel string
	state     State // "" when it is to be read
	reason    string
}

// walker lists the notebooks below some paths.
type walker struct {
	list    []found
	links   map[string]bool // targets of links that are already listed
	renamed bool            // see Options
}

// find lists the files of a scan, sorted by path, each once. Folders are
// searched for names that end in .md; hidden folders and files are passed
// over, as are links to what lies in the same folder tree.
func find(paths []string, renamed bool) []found {
	w := walker{links: map[string]bool{}, renamed: renamed}
	for _, p := range paths {
		w.argument(filepath.Clean(p))
	}
	sort.SliceStable(w.list, func(i, j int) bool { return w.list[i].path < w.list[j].path })
	return slices.CompactFunc(w.list, func(a, b found) bool { return a.path == b.path })
}

//go:noinline
func (w *walker) add(path, rel string, state State, reason string) {
	w.list = append(w.list, found{path, filepath.ToSlash(rel), state, reason})
}

// argument takes a path that the user typed: a link is followed.
func (w *walker) argument(path string) {
	info, err := os.Stat(path)
	base := filepath.Base(path)
	switch {
	case err != nil:
		w.add(path, base, Bad, reason(err))
	case info.IsDir():
		root, err := filepath.EvalSymlinks(path)
		if err != nil {
			root = path
		}
		w.folder(path, root, "")
	case !info.Mode().IsRegular():
		w.add(path, base, Bad, "not a regular file")
	default:
		w.add(path, base, "", "")
	}
}

// folder lists one folder; root is the real path of the tree's top.
func (w *walker) folder(path, root, rel string) {
	entries, err := os.ReadDir(path)
	if err != nil {
		w.add(path, rel, Bad, "folder cannot be listed: "+reason(err))
	}
	for _, e := range entries {
		name := e.Name()
		if strings.HasPrefix(name, ".") {
			continue
		}
		full, below := path+string(filepath.Separator)+name, filepath.Join(rel, name)
		ours := strings.EqualFold(filepath.Ext(name), ".md")
		switch t := e.Type(); {
		case t.IsDir():
			w.folder(full, root, below)
		case t&fs.ModeSymlink != 0:
			w.link(full, root, below, ours)
		case !ours:
			if w.renamed && t.IsRegular() && isNotebook(full) {
				w.add(full, below, Bad, "a notebook by its first line, whose name does not end in .md")
			}
		case t.IsRegular():
			w.add(full, below, "", "")
		default:
			w.add(full, below, Bad, "not a regular file")
		}
	}
}

// isNotebook reports whether a file begins as a notebook does.
func isNotebook(path string) bool {
	f, err := openFile(path)
	if err != nil {
		return false
	}
	defer f.Close()
	var b [64]byte
	n, _ := f.Read(b[:])
	text, _ := page.Unix(b[:n], nil)
	return bytes.HasPrefix(text, []byte(begins))
}

// link takes a link inside a tree. Links to folders are not followed, so
// that no loop can hold the scan; what lies in the tree anyway is not read
// twice.
func (w *walker) link(path, root, rel string, ours bool) {
	target, err := filepath.EvalSymlinks(path)
	if err != nil {
		if ours {
			w.add(path, rel, Bad, "link that leads nowhere: "+reason(err))
		}
		return
	}
	info, err := os.Stat(target)
	switch {
	case err != nil:
		w.add(path, rel, Bad, reason(err))
	case info.IsDir():
		w.add(path, rel, Foreign, "link to a folder, not followed; name the folder itself")
	case !ours:
	case !info.Mode().IsRegular():
		w.add(path, rel, Bad, "not a regular file")
	case within(target, root) || w.links[target]:
		w.add(path, rel, Foreign, "link to a file that is listed under its own name")
	default:
		w.links[target] = true
		w.add(path, rel, "", "")
	}
}

func within(path, root string) bool {
	rel, err := filepath.Rel(root, path)
	return err == nil && rel != ".." && !strings.HasPrefix(rel, ".."+string(filepath.Separator))
}

// reason is an error without the path, which is shown beside it.
func reason(err error) string {
	var p *fs.PathError
	if errors.As(err, &p) {
		return p.Err.Error()
	}
	return err.Error()
}
