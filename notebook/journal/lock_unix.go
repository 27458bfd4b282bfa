//go:build unix

package journal

import (
	"os"

	"golang.org/x/sys/unix"
)

const noFollow = unix.O_NOFOLLOW

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
