//go:build linux

package reliability

import (
	"errors"
	"fmt"
	"io"
	"os"
	"strings"
	"syscall"
	"time"

	"ohmcall/notebook"
	"ohmcall/notebook/journal"
)

// failFS lets the Nth call of one kind fail, once or from then on. It stands
// on a disk in memory; a broken layer that swallows errors may stand above it.
type failFS struct {
	*powerFS
	kind    string
	nth     int
	forever bool
	code    error

	calls  int // of the kind
	fired  int
	dead   map[*failFile]bool // descriptors on which a sync has failed
	misuse []string           // what was done on them afterwards
}

func (f *failFS) fails(kind, name string) error {
	if kind != f.kind {
		return nil
	}
	f.calls++
	if f.calls == f.nth || f.forever && f.calls > f.nth {
		f.fired++
		return &os.PathError{Op: kind, Path: name, Err: f.code}
	}
	return nil
}

func (f *failFS) ReadFile(name string) ([]byte, error) {
	if err := f.fails("read", name); err != nil {
		return nil, err
	}
	return f.powerFS.ReadFile(name)
}

func (f *failFS) Append(name string) (journal.File, error) {
	if err := f.fails("open", name); err != nil {
		return nil, err
	}
	file, err := f.powerFS.Append(name)
	if err != nil {
		return nil, err
	}
	return &failFile{file, f}, nil
}

func (f *failFS) CreateTemp(name string, mode os.FileMode) (journal.File, error) {
	if err := f.fails("create", name); err != nil {
		return nil, err
	}
	file, err := f.powerFS.CreateTemp(name, mode)
	if err != nil {
		return nil, err
	}
	return &failFile{file, f}, nil
}

func (f *failFS) Rename(from, to string) error {
	if err := f.fails("rename", to); err != nil {
		return err
	}
	return f.powerFS.Rename(from, to)
}

func (f *failFS) SyncDir(name string) error {
	if err := f.fails("syncdir", name); err != nil {
		return err
	}
	return f.powerFS.SyncDir(name)
}

func (f *failFS) Stat(name string) (os.FileInfo, error) {
	if err := f.fails("stat", name); err != nil {
		return nil, err
	}
	return f.powerFS.Stat(name)
}

func (f *failFS) Lock(name string) (io.Closer, error) {
	if err := f.fails("lock", name); err != nil {
		return nil, err
	}
	return f.powerFS.Lock(name)
}

type failFile struct {
	journal.File
	fs *failFS
}

func (f *failFile) used(op string) {
	if f.fs.dead[f] {
		f.fs.misuse = append(f.fs.misuse, op)
	}
}

func (f *failFile) Write(b []byte) (int, error) {
	f.used("write")
	if err := f.fs.fails("write", f.Name()); err != nil {
		n, _ := f.File.Write(b[:len(b)/2])
		return n, err
	}
	return f.File.Write(b)
}

func (f *failFile) Sync() error {
	f.used("sync")
	if err := f.fs.fails("sync", f.Name()); err != nil {
		f.fs.dead[f] = true
		return err
	}
	return f.File.Sync()
}

func (f *failFile) Truncate(size int64) error {
	f.used("truncate")
	if err := f.fs.fails("truncate", f.Name()); err != nil {
		return err
	}
	return f.File.Truncate(size)
}

// failEachCall is T5.
func failEachCall(w *watch) {
	codes := []error{syscall.EIO, syscall.ENOSPC, syscall.EDQUOT, syscall.EROFS}
	for _, kind := range []string{"write", "sync", "rename", "create", "open", "syncdir", "truncate", "stat", "read", "lock"} {
		for _, forever := range []bool{false, true} {
			for nth, fired := 1, true; fired && !w.red(); nth++ {
				fired = false
				for _, code := range codes {
					f := &failFS{powerFS: newPowerFS(nil), kind: kind, nth: nth, forever: forever, code: code, dead: map[*failFile]bool{}}
					failSession(w, f)
					fired = fired || f.fired > 0
					if f.fired > 0 {
						w.count("failures", 1)
					}
				}
			}
		}
	}
}

func failSession(w *watch, f *failFS) {
	what := fmt.Sprintf("%s %d failing with %v (for ever: %v)", f.kind, f.nth, f.code, f.forever)
	host := notebook.Host{FS: f, Now: time.Now}
	name := "call.md"
	files := []string{name}
	// told holds an error to naming its cause, and that of a file.
	told := func(err error) {
		if !errors.Is(err, f.code) && !errors.Is(err, journal.ErrDead) || !strings.Contains(err.Error(), "call") {
			w.fault("%s: the error names not both file and cause: %v", what, err)
		}
	}
	n, err := notebook.Create(host, name)
	if err != nil {
		told(err)
		return
	}
	var acked []string
	for _, l := range lines(5) {
		before := f.fired
		_, err := n.Do(l)
		if err == nil {
			if f.fired > before && (f.kind == "write" || f.kind == "sync") {
				w.fault("%s: %q was acknowledged all the same", what, l)
			}
			acked = append(acked, l)
			continue
		}
		var unsaved *notebook.SaveError
		if !errors.As(err, &unsaved) || unsaved.Line != l {
			w.fault("%s: %q was refused with %v", what, l, err)
		}
		told(err)
		if n.Call().Len() != len(acked) {
			w.fault("%s: an entry that is not stored counts", what)
		}
		fresh := fmt.Sprintf("call-%d.md", len(files))
		if err := n.Move(fresh); err == nil {
			files = append(files, fresh)
		}
	}
	if err := n.Close(); err != nil {
		told(err)
	}
	if len(f.misuse) > 0 {
		w.fault("%s: after the failed sync there was on that descriptor: %v", what, f.misuse)
	}
	again, err := notebook.Open(f.powerFS.host(), files[len(files)-1])
	if errors.Is(err, os.ErrNotExist) {
		err = holdsAtLeast(acked, nil) // the first entry makes the file
	} else if err == nil {
		var have []string
		for _, e := range again.Call().Entries() {
			have = append(have, e.Line)
		}
		// One line that was refused may stand there all the same: it was
		// written, and its sync failed.
		err = holdsAtLeast(acked, have)
	}
	if err != nil {
		w.fault("%s: %v", what, err)
	}
	for name := range f.names {
		if strings.HasPrefix(name, ".") {
			w.fault("%s: left behind: %s", what, name)
		}
	}
}

// holdsAtLeast allows one line more than was acknowledged.
func holdsAtLeast(acked, have []string) error {
	if len(have) > len(acked)+1 {
		return fmt.Errorf("%d acknowledged, %d in the file", len(acked), len(have))
	}
	return holds(acked, have, have)
}
