//go:build linux

package reliability

import (
	"fmt"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"time"

	"ohmcall/notebook"
	"ohmcall/notebook/journal"
)

// tree describes all files below a folder.
func tree(dir string) string {
	var b strings.Builder
	filepath.WalkDir(dir, func(path string, d fs.DirEntry, err error) error {
		info, infoErr := os.Lstat(path)
		if err != nil || infoErr != nil {
			fmt.Fprintln(&b, path, err, infoErr)
			return nil
		}
		text := ""
		if info.Mode().IsRegular() {
			content, _ := os.ReadFile(path)
			text = sum(content)
		} else if info.Mode()&os.ModeSymlink != 0 {
			text, _ = os.Readlink(path)
		}
		size := info.Size()
		if info.IsDir() {
			size = 0
		}
		fmt.Fprintln(&b, path, info.Mode(), size, text)
		return nil
	})
	return b.String()
}

// quiet is T19.
func quiet(w *watch) {
	tracer, ok := strace(w)
	if !ok {
		return
	}
	dir := w.dir()
	name := filepath.Join(dir, "stranger.md")
	w.must(os.WriteFile(name, hostilePage("<U+001B>"), 0o600))
	before := tree(dir)
	for _, r := range readers {
		w.count("subcommands", 1)
		log := filepath.Join(w.dir(), "trace")
		out := filepath.Join(w.dir(), "out")
		argv := append([]string{"-f", "-qq", "-s", "256", "-o", log, "-e", "trace=network,openat,mkdirat,unlinkat,renameat,renameat2", program}, r.argv...)
		argv = append(argv, name)
		for _, a := range r.after {
			argv = append(argv, strings.ReplaceAll(a, "OUT", out))
		}
		t := exec.Command(tracer, argv...)
		t.Env = append(os.Environ(), "OHMCALL_DIR="+dir)
		t.Stdin = strings.NewReader(r.input)
		t.CombinedOutput()
		trace, err := os.ReadFile(log)
		w.must(err)
		for line := range strings.Lines(string(trace)) {
			if strings.Contains(line, "socket(") || strings.Contains(line, "connect(") {
				w.fault("%s opens a socket: %s", r.name, line)
			}
			// One's own call is opened to be written to, and so locked.
			if strings.Contains(line, dir) && !r.writes && !readsOnly(line) {
				w.fault("%s touches what lies beside the notebook: %s", r.name, line)
			}
		}
	}
	if after := tree(dir); after != before {
		w.fault("the folder has changed:\n%s\n%s", before, after)
	}
}

// readsOnly tells the trace of a call that only opens for reading.
func readsOnly(line string) bool {
	return strings.Contains(line, "openat(") && strings.Contains(line, "O_RDONLY") && !strings.Contains(line, "O_CREAT")
}

// hostileNames are names for files that try to be more than that.
func hostileNames() []string {
	return []string{"../up", "../../up", "a/../../up", "/abs", "-rf", "--help", "-o", ".", "..", "...", ".git/x", "a\x00b", "a\nb", "a\x1b[31m",
		strings.Repeat("n", 256), strings.Repeat("n", 5000), "con", "nul", "aux.md", "a:b", "a|b", "a*b", "a?b", "~", "~/x", "$HOME", "`id`", "$(id)", ";id", "%00", "a\\..\\b", " ", "\u202e", "\xff"}
}

// paths is T18.
func paths(w *watch) {
	modes(w)
	links(w)
	// A script that uses files by hostile names reads at most, and a call
	// whose fields hold them makes no file but its own.
	outer := w.dir()
	dir := filepath.Join(outer, "in", "calls")
	w.must(os.MkdirAll(dir, 0o700))
	before := tree(outer)
	for i, name := range hostileNames() {
		w.count("names", 1)
		file := filepath.Join(dir, "call.md")
		input := strings.ReplaceAll("use "+name+"\nclient "+name+"\nunit "+name+"\nserial "+name+"\nkeep "+name, "\x00", "")
		c := exec.Command(program, "run", "-", "-o", file)
		c.Dir = dir
		c.Env = append(os.Environ(), "OHMCALL_DIR="+dir, "HOME="+outer)
		c.Stdin = strings.NewReader(input + "\n")
		c.CombinedOutput()
		if err := os.Remove(file); !os.IsNotExist(err) { // none is made when every line is refused
			w.must(err)
		}
		if after := tree(outer); after != before {
			w.fault("name %d %q: files were made:\n%s", i, name, after)
			return
		}
		if strings.ContainsRune(name, 0) {
			continue
		}
		// As the name of a notebook it may be made, there and only there.
		n, err := notebook.Create(notebook.Host{FS: journal.Disk{}, Now: time.Now}, filepath.Join(dir, filepath.Base(name)))
		if err == nil {
			made := n.Name()
			_, err := n.Do("note made")
			w.must(err)
			n.Close()
			w.must(os.Remove(made))
		}
		if after := tree(outer); after != before {
			w.fault("name %d %q as a notebook: files are left:\n%s", i, name, after)
			return
		}
	}
}

// links holds notebooks behind links: the target is written, the link stays.
func links(w *watch) {
	dir := w.dir()
	target, link := filepath.Join(dir, "t", "target.md"), filepath.Join(dir, "link.md")
	w.must(os.Mkdir(filepath.Dir(target), 0o700))
	w.must(os.WriteFile(target, fixtures(w, 4)[0], 0o600))
	w.must(os.Symlink(target, link))
	c := exec.Command(program, "run", "-", "-o", link)
	c.Stdin = strings.NewReader("note through the link\n")
	out, err := c.CombinedOutput()
	if to, linkErr := os.Readlink(link); err != nil || linkErr != nil || to != target {
		w.fault("a linked notebook: %v %v %s", err, linkErr, out)
	}
	if have, err := stored(target); err != nil || len(have) != 5 {
		w.fault("a linked notebook: %d entries, %v", len(have), err)
	}
	w.must(os.Symlink(filepath.Join(dir, "nowhere.md"), filepath.Join(dir, "dangling.md")))
	w.must(os.Symlink(filepath.Join(dir, "loop.md"), filepath.Join(dir, "loop.md")))
	w.must(os.Symlink("/dev/zero", filepath.Join(dir, "zero.md")))
	w.must(os.Symlink(dir, filepath.Join(dir, "folder.md")))
	before := tree(dir)
	for _, name := range []string{"dangling.md", "loop.md", "zero.md", "folder.md"} {
		for _, argv := range [][]string{{"run", "-", "-o", filepath.Join(dir, name)}, {filepath.Join(dir, name)}, {"check", filepath.Join(dir, name)}} {
			c := exec.Command(program, argv...)
			c.Stdin = strings.NewReader("note in vain\n")
			if out, err := c.CombinedOutput(); err == nil {
				w.fault("%v: not refused: %s", argv, out)
			}
		}
	}
	if after := tree(dir); after != before {
		w.fault("refused links: the folder has changed:\n%s\n%s", before, after)
	}
}

// modes holds new files to 0600 under any umask, and old files to their mode.
func modes(w *watch) {
	for _, mask := range []string{"000", "022", "077"} {
		for _, mode := range []os.FileMode{0, 0o640, 0o664} {
			w.count("modes", 1)
			dir := w.dir()
			name := filepath.Join(dir, "call.md")
			want := os.FileMode(0o600)
			if mode != 0 {
				w.must(os.WriteFile(name, fixtures(w, 2)[1], 0o600))
				w.must(os.Chmod(name, mode))
				want = mode
			}
			k := keeper(name)
			c := exec.Command("sh", append([]string{"-c", "umask " + mask + "; exec \"$0\" \"$@\"", k.Path}, k.Args[1:]...)...)
			c.Env = k.Environ()
			c.Stdin = strings.NewReader("note a\n")
			if out, err := c.CombinedOutput(); err != nil {
				w.fault("umask %s, mode %v: %v %s", mask, mode, err, out)
			}
			info, err := os.Stat(name)
			w.must(err)
			if info.Mode().Perm() != want {
				w.fault("umask %s: mode %v, not %v", mask, info.Mode().Perm(), want)
			}
			if s := strays(dir); len(s) > 0 {
				w.fault("umask %s: left behind: %v", mask, s)
			}
		}
	}
}
