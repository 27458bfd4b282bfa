//go:build linux

package reliability

import (
	"os"
	"path/filepath"
	"strings"
	"syscall"
)

// reader is a way in which the program reads a notebook: a subcommand with its
// arguments, where OUT is a name of its own for what it writes.
type reader struct {
	name   string
	argv   []string // before the file
	after  []string // behind it
	input  string
	writes bool // it opens the notebook to write to it
}

var readers = []reader{
	{"check", []string{"check"}, nil, "", false},
	{"open", nil, nil, "help\n", true},
	{"page", []string{"page"}, []string{"-o", "OUT"}, "", false},
	{"digest", []string{"digest"}, nil, "", false},
	{"redact", []string{"redact"}, []string{"-o", "OUT"}, "", false},
	{"export CSV", []string{"export"}, []string{"--entries", "--into", "OUT"}, "", false},
	{"digest JSON Lines", []string{"digest", "--as", "jsonl"}, nil, "", false},
	{"export JSON Lines", []string{"export"}, []string{"--as", "jsonl", "--layout", "by-date", "--into", "OUT"}, "", false},
	{"export SQLite", []string{"export"}, []string{"--entries", "--sqlite", "OUT"}, "", false},
	{"digest CSV", []string{"digest", "--as", "csv"}, nil, "", false},
	{"resume", []string{"run", "-", "-o"}, nil, "help ohm\n", true},
}

// reads runs a reader on a file and gives what it cost. The folder of the file
// must be as it was.
func (r reader) reads(w *watch, name string) measured {
	out := filepath.Join(w.dir(), "out")
	argv := append(append([]string{program}, r.argv...), name)
	for _, a := range r.after {
		argv = append(argv, strings.ReplaceAll(a, "OUT", out))
	}
	input := os.DevNull
	if r.input != "" {
		input = filepath.Join(w.dir(), "input")
		w.must(os.WriteFile(input, []byte(r.input), 0o600))
	}
	m := measureIn(w, input, argv...)
	os.RemoveAll(out)
	return m
}

// sizes is T12. OHMCALL_BEAST and OHMCALL_READER pick files by part of their
// name and a reader, to look at one.
func sizes(w *watch) {
	odd(w)
	if w.red() {
		return
	}
	beasts := zoo()
	if long {
		beasts = append(beasts, commandZoo()...)
	}
	dir := w.dir()
	name := filepath.Join(dir, "beast.md")
	for i, b := range beasts {
		if only := os.Getenv("OHMCALL_BEAST"); only != "" && !strings.Contains(b.name, only) {
			continue
		}
		w.must(os.WriteFile(name, []byte(b.text()), 0o600))
		before := tree(dir)
		for k, r := range readers {
			if only := os.Getenv("OHMCALL_READER"); only != "" && r.name != only {
				continue
			}
			if !long && (i+k)%len(readers) != 0 {
				continue
			}
			w.count("runs", 1)
			bounded(w, r.name+" of "+b.name, r.reads(w, name))
		}
		if after := tree(dir); after != before {
			w.fault("%s: the folder has changed:\n%s\n%s", b.name, before, after)
			w.must(os.RemoveAll(dir))
			w.must(os.Mkdir(dir, 0o700))
		}
		w.count("files", 1)
		if w.red() {
			return
		}
	}
}

// odd holds what is no file at all, or not one of its own.
func odd(w *watch) {
	dir := w.dir()
	fifo := filepath.Join(dir, "fifo.md")
	w.must(syscall.Mkfifo(fifo, 0o600))
	link := filepath.Join(dir, "zero.md")
	w.must(os.Symlink("/dev/zero", link))
	before := tree(dir)
	for _, name := range []string{fifo, link, "/dev/zero", dir} {
		for _, r := range readers {
			m := r.reads(w, name)
			w.count("odd files", 1)
			folder := name == dir && len(r.argv) > 0 && (r.argv[0] == "digest" || r.argv[0] == "export")
			if m.Seconds > 1 || m.Code == 0 && !folder || m.Code > 2 || m.Out == "" || strings.Contains(m.Out, "goroutine ") {
				w.fault("%s of %s: %+v", r.name, name, m)
			}
			if w.red() {
				return
			}
		}
	}
	if after := tree(dir); after != before {
		w.fault("the folder has changed:\n%s\n%s", before, after)
	}
}

// bounded holds a run to 2 s and 200 MB, and to words of its own: it ends with
// an exit code of ours.
func bounded(w *watch, what string, m measured) {
	w.t.Logf("%s: %.2f s, %d MB, code %d: %.90s", what, m.Seconds, m.MB, m.Code, m.Out)
	if m.Seconds > 2 || m.MB > 200 || m.Code < 0 || m.Code > 2 || m.Out == "" || strings.Contains(m.Out, "goroutine ") {
		w.fault("%s: %.2f s, %d MB, exit %d: %.200s", what, m.Seconds, m.MB, m.Code, m.Out)
	}
}
