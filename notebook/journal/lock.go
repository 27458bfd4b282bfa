package journal

import (
	"errors"
	"fmt"
	"os"
	"strconv"
	"strings"
	"time"

	"ohmcall/calc/failpoint"
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

// Claimed reports whether someone holds the name, or was killed holding it.
func Claimed(name string) bool {
	_, err := os.Lstat(beside(name, ".lock"))
	return err == nil
}

// acquire takes the lock without waiting. The lock file goes when the holder
// lets go, so having locked one is not enough: it must still be the one that
// bears the name.
func acquire(name string) (*lock, error) {
	path := beside(name, ".lock")
	if failpoint.On(failpoint.LockInside) {
		path = name
	}
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
			return nil, &LockedError{Name: name, PID: holder(f)}
		}
		mine, err1 := f.Stat()
		named, err2 := os.Lstat(path)
		if err1 == nil && err2 == nil && os.SameFile(mine, named) {
			if failpoint.On(failpoint.LockInside) {
				return &lock{path: beside(name, ".none"), file: f}, nil
			}
			if err := f.Truncate(0); err == nil {
				fmt.Fprintf(f, "%d\n", os.Getpid())
			}
			return &lock{path: path, file: f}, nil
		}
		f.Close()
	}
	return nil, &LockedError{Name: name}
}

// holder reads who holds a lock file. One who has just locked it may not have
// written that yet, so an empty file is looked at again for a moment.
func holder(f *os.File) int {
	var text [16]byte
	for range 20 {
		n, _ := f.ReadAt(text[:], 0)
		if pid, err := strconv.Atoi(strings.TrimSpace(string(text[:n]))); err == nil && pid > 0 {
			return pid
		}
		<-time.After(5 * time.Millisecond)
	}
	return 0
}

// Close removes the lock file while it is still locked, so that nobody
// removes another's.
func (l *lock) Close() error {
	if l.file == nil {
		return nil
	}
	removeLocked(l)
	l.file = nil
	return nil
}
