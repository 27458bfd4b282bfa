//go:build unix

package fleet

import (
	"os"
	"runtime"
	"syscall"
)

// peakMemory is the largest resident size that a process had, in MB.
func peakMemory(s *os.ProcessState) float64 {
	kb := float64(s.SysUsage().(*syscall.Rusage).Maxrss)
	if runtime.GOOS == "darwin" {
		kb /= 1024
	}
	return kb / 1024
}
