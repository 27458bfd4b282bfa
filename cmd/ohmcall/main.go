// Command ohmcall is a notebook for appliance and refrigeration repair calls.
package main

import (
	"os"
	"runtime/debug"
)

// softMemory is where garbage is collected more eagerly, so that no file of
// the size that is taken needs more than 200 MB.
const softMemory = 140 << 20

// sparing is how much garbage in percent of what is in use may come together before it
// is collected: a call is small, and what a line asks for at its worst stays small too.
const sparing = 60

func main() {
	if os.Getenv("GOMEMLIMIT") == "" {
		debug.SetMemoryLimit(softMemory)
	}
	if os.Getenv("GOGC") == "" {
		debug.SetGCPercent(sparing)
	}
	os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr))
}
