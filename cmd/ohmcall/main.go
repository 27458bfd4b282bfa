// Command ohmcall is a notebook for appliance and refrigeration repair calls.
package main

import (
	"os"
	"runtime/debug"
)

// softMemory is where garbage is collected more eagerly, so that no file of
// the size that is taken needs more than 200 MB.
const softMemory = 140 << 20

// garbage is how much garbage in percent of what is in use may come together before it
// is collected: below softMemory there is room, and a digest takes a tenth less time.
const garbage = 200

func main() {
	if os.Getenv("GOMEMLIMIT") == "" {
		debug.SetMemoryLimit(softMemory)
	}
	if os.Getenv("GOGC") == "" {
		debug.SetGCPercent(garbage)
	}
	os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr))
}
