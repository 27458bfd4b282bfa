// Command ohmcall is a notebook for appliance and refrigeration repair calls.
package main

import "os"

func main() { os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }
