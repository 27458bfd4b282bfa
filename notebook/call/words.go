package call

import (
	"fmt"
	"math"
	"strconv"
)

func itoa(n int) string { return strconv.Itoa(n) }

// parsePositive reads a plain number that is not below zero.
func parsePositive(s string) (float64, error) {
	x, err := strconv.ParseFloat(s, 64)
	if err == nil && (x < 0 || math.IsInf(x, 0) || math.IsNaN(x)) {
		err = fmt.Errorf("%q is out of range", s)
	}
	return x, err
}

// money writes a sum of money in the notebook's own currency.
func money(x float64) string { return strconv.FormatFloat(x, 'f', 2, 64) }
