//go:build !unix

package term

import "os"

// stopSelf does nothing: there is no job control here.
func stopSelf() {}

// readable cannot be told here.
func readable(*os.File) bool { return false }
