//go:build faults

package main

import (
	"net"
	"os"

	"ohmcall/calc/failpoint"
)

// A build with the tag breaks the guard that the environment names.
func init() {
	failpoint.Break(failpoint.Point(os.Getenv("OHMCALL_FAULT")))
	if failpoint.On(failpoint.Socket) {
		if c, err := net.Dial("udp", "127.0.0.1:9"); err == nil {
			c.Close()
		}
	}
}
