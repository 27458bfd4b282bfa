//go:build unix

package term

import (
	"os"
	"os/signal"
	"syscall"
	"time"

	"golang.org/x/sys/unix"
)

// stopSelf stops the process group, as the terminal driver does for Ctrl-Z,
// and returns when it goes on. Where nobody could wake it (an orphaned group)
// the system ignores the stop, and it returns after a moment.
func stopSelf() {
	again := make(chan os.Signal, 1)
	signal.Notify(again, syscall.SIGCONT)
	defer signal.Stop(again)
	if err := syscall.Kill(0, syscall.SIGTSTP); err != nil {
		return
	}
	select {
	case <-again:
	case <-time.After(300 * time.Millisecond):
	}
}

// readable reports whether a read would not wait.
func readable(f *os.File) bool {
	fds := []unix.PollFd{{Fd: int32(f.Fd()), Events: unix.POLLIN}}
	n, err := unix.Poll(fds, 0)
	return err == nil && n == 1 && fds[0].Revents&unix.POLLIN != 0
}
