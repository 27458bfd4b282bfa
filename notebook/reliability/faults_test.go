//go:build linux && faults

package reliability

import (
	"os"

	"ohmcall/calc/failpoint"
)

func init() { failpoint.Break(failpoint.Point(os.Getenv(faultVar))) }
