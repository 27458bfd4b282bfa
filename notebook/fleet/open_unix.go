//go:build unix

package fleet

import (
	"os"
	"syscall"
)

// openFlags keep a FIFO that took a file's name from holding the scan.
const openFlags = os.O_RDONLY | syscall.O_NONBLOCK
