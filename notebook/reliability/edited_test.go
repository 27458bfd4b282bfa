//go:build linux

package reliability

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"time"

	"ohmcall/notebook"
	"ohmcall/notebook/journal"
	"ohmcall/notebook/page"
)

const remark = "The customer wants a call before noon."

// edits are what others do to the file while the call is open.
var edits = []struct {
	name string
	do   func(path string, content []byte) error
	keep string // text that must still be somewhere in the folder
	at   int    // how many entries stand by then
}{
	{"an editor puts a new file in its place", func(path string, b []byte) error {
		if err := os.WriteFile(path+"~", withRemark(b), 0o600); err != nil {
			return err
		}
		return os.Rename(path+"~", path)
	}, remark, 4},
	{"an editor writes into it", func(path string, b []byte) error {
		return os.WriteFile(path, withRemark(b), 0o600)
	}, remark, 4},
	{"another text takes the name before the first entry", func(path string, _ []byte) error {
		return os.WriteFile(path, []byte("# Shopping\n\n- bread\n"), 0o600)
	}, "# Shopping", 0},
	{"it is emptied", func(path string, _ []byte) error { return os.Truncate(path, 0) }, "", 4},
	{"it is removed", func(path string, _ []byte) error { return os.Remove(path) }, "", 4},
	{"another text takes its place", func(path string, _ []byte) error {
		if err := os.Remove(path); err != nil {
			return err
		}
		return os.WriteFile(path, []byte("# Shopping\n\n- bread\n"), 0o600)
	}, "# Shopping", 4},
	{"an entry is changed by hand", func(path string, b []byte) error {
		return os.WriteFile(path, bytes.Replace(b, []byte("note line 1"), []byte("note LINE one"), 1), 0o600)
	}, "note LINE one", 4},
	{"it is saved with the line ends of another system", func(path string, b []byte) error {
		return os.WriteFile(path, bytes.ReplaceAll(withRemark(b), []byte("\n"), []byte("\r\n")), 0o600)
	}, remark, 4},
}

func withRemark(b []byte) []byte {
	mark := []byte("\n## Log\n")
	return bytes.Replace(b, mark, append([]byte("\n"+remark+"\n"), mark...), 1)
}

// edited is T20.
func edited(w *watch) {
	for _, e := range edits {
		for _, finish := range []bool{false, true} {
			dir := w.dir()
			name := filepath.Join(dir, "call.md")
			host := notebook.Host{FS: journal.Disk{}, Now: time.Now}
			n, err := notebook.Create(host, name)
			w.must(err)
			typed := lines(9)
			for i, l := range typed {
				if i == e.at {
					content, err := os.ReadFile(name)
					if i > 0 || !os.IsNotExist(err) {
						w.must(err)
					}
					w.must(e.do(name, content))
				}
				if _, err := n.Do(l); err != nil {
					w.fault("%s: %v", e.name, err)
				}
				// Each entry must be there as soon as it is acknowledged.
				if have, err := read(name); err != nil {
					w.fault("%s: %v", e.name, err)
				} else if err := holds(typed[:i+1], typed, have); err != nil {
					w.fault("%s: %v", e.name, err)
				}
			}
			if finish {
				w.must(n.Close())
			}
			w.count("cases", 1)
			if content, err := os.ReadFile(name); err == nil {
				if err := checks(content); err != nil {
					w.fault("%s: %v", e.name, err)
				}
			}
			if e.keep != "" && !inFolder(dir, e.keep) {
				w.fault("%s: %q is gone", e.name, e.keep)
			}
			if !finish {
				w.must(n.Close())
			}
		}
	}
}

// read lists the lines in a file that another process holds.
func read(name string) ([]string, error) {
	content, err := os.ReadFile(name)
	if err != nil {
		return nil, err
	}
	f, err := page.Read(content)
	if err != nil {
		return nil, err
	}
	var out []string
	for _, e := range f.Entries {
		out = append(out, e.Line)
	}
	return out, nil
}

func inFolder(dir, text string) bool {
	list, _ := filepath.Glob(filepath.Join(dir, "*"))
	for _, f := range list {
		if b, err := os.ReadFile(f); err == nil && strings.Contains(string(b), text) {
			return true
		}
	}
	return false
}
