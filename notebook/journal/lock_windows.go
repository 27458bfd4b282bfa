package journal

import (
	"os"

	"golang.org/x/sys/windows"
)

const (
	noFollow = 0
	noWait   = 0
)

// The locked byte lies far past the text, so that others can read who holds it.
var lockedByte = windows.Overlapped{OffsetHigh: 1}

func tryLock(f *os.File) error {
	at := lockedByte
	err := windows.LockFileEx(windows.Handle(f.Fd()),
		windows.LOCKFILE_EXCLUSIVE_LOCK|windows.LOCKFILE_FAIL_IMMEDIATELY, 0, 1, 0, &at)
	if err == windows.ERROR_LOCK_VIOLATION {
		return errHeld
	}
	return err
}

// removeLocked closes first: an open file cannot be removed here, and a
// removal that fails because another has opened it is as good.
func removeLocked(l *lock) {
	l.file.Close()
	os.Remove(l.path)
}

// keepGroup has nothing to do here: a file takes its rights from its folder.
func keepGroup(*os.File, string) bool { return true }
