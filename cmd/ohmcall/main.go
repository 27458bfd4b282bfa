// Command ohmcall is a notebook for appliance and refrigeration repair calls.
package main

import (
	"os"
	"os/signal"
	"syscall"
)

func main() {
	// A reader of the replies that goes away must not cost the record.
	signal.Ignore(syscall.SIGPIPE)
	os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr))
}
