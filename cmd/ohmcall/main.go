// Command ohmcall is a notebook for appliance and refrigeration repair calls.
package main

import (
	"os"
	"runtime/debug"
)

// softMemory is where garbage is collected more eagerly, so that no file of
// the size that is taken needs more than 200 MB.
const softMemory = 140 << 20

func main() {
	if os.Getenv("GOMEMLIMIT") == "" {
		debug.SetMemoryLimit(softMemory)
	}
	os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr))
}
