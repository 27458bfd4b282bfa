//go:build unix

package journal

import (
	"os"
	"syscall"

	"golang.org/x/sys/unix"
)

const (
	noFollow = unix.O_NOFOLLOW
	// noWait keeps the opening of a pipe from waiting for its other end.
	noWait = unix.O_NONBLOCK
)

func tryLock(f *os.File) error {
	for {
		switch err := unix.Flock(int(f.Fd()), unix.LOCK_EX|unix.LOCK_NB); err {
		case nil:
			return nil
		case unix.EINTR:
		case unix.EWOULDBLOCK:
			return errHeld
		default:
			return os.NewSyscallError("flock", err)
		}
	}
}

func removeLocked(l *lock) {
	os.Remove(l.path)
	l.file.Close()
}

// keepGroup gives f the group of the file that bears the name, and reports
// whether it has it.
func keepGroup(f *os.File, name string) bool {
	old, err := os.Lstat(name)
	if err != nil {
		return true
	}
	made, err := f.Stat()
	if err != nil {
		return false
	}
	was, ok1 := old.Sys().(*syscall.Stat_t)
	is, ok2 := made.Sys().(*syscall.Stat_t)
	return ok1 && ok2 && (was.Gid == is.Gid || f.Chown(-1, int(was.Gid)) == nil)
}
