//go:build !unix

package main

import "os"

// resident is not known here.
func resident(*os.ProcessState) float64 { return 0 }
