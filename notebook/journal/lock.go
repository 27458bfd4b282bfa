package journal

import (
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strconv"
	"strings"
)

// LockedError says who holds a notebook.
type LockedError struct {
	Name string
	PID  int // 0 when the holder did not say
}

func (e *LockedError) Error() string {
	who := "another program"
	if e.PID > 0 {
		who = "process " + strconv.Itoa(e.PID)
	}
	return fmt.Sprintf("%s is being written by %s; close it there first", e.Name, who)
}

// lock is a lock on a file beside the notebook: a lock on the notebook
// itself would stay with the old file when a new one takes its name.
type lock struct {
	path string
	file *os.File
}

var errHeld = errors.New("held")

func lockPath(name string) string {
	return filepath.Join(filepath.Dir(name), "."+filepath.Base(name)+".lock")
}

// acquire takes the lock without waiting. The lock file goes when the holder
// lets go, so having locked one is not enough: it must still be the one that
// bears the name.
func acquire(name string) (*lock, error) {
	path := lockPath(name)
	for range 100 {
		f, err := os.OpenFile(path, os.O_RDWR|os.O_CREATE|noFollow, 0o600)
		if err != nil {
			return nil, err
		}
		if err := tryLock(f); err != nil {
			defer f.Close()
			if !errors.Is(err, errHeld) {
				return nil, err
			}
			text, _ := io.ReadAll(io.LimitReader(f, 32))
			pid, _ := strconv.Atoi(strings.TrimSpace(string(text)))
			return nil, &LockedError{Name: name, PID: pid}
		}
		mine, err1 := f.Stat()
		named, err2 := os.Lstat(path)
		if err1 == nil && err2 == nil && os.SameFile(mine, named) {
			if err := f.Truncate(0); err == nil {
				fmt.Fprintf(f, "%d\n", os.Getpid())
			}
			return &lock{path: path, file: f}, nil
		}
		f.Close()
	}
	return nil, &LockedError{Name: name}
}

// release removes the lock file while it is still locked, so that nobody
// removes another's.
func (l *lock) release() {
	if l.file == nil {
		return
	}
	removeLocked(l)
	l.file = nil
}
