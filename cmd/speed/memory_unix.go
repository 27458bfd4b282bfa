//go:build unix

package main

import (
	"os"
	"runtime"
	"syscall"
)

// resident is the most memory that a program held, in MB.
func resident(s *os.ProcessState) float64 {
	u, ok := s.SysUsage().(*syscall.Rusage)
	if !ok {
		return 0
	}
	kb := float64(u.Maxrss)
	if runtime.GOOS == "darwin" {
		kb /= 1024
	}
	return kb / 1024
}
