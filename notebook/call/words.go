package call

import (
	"fmt"
	"math"
	"ohmcall/notebook/said"
	"slices"
	"strconv"
	"strings"
)

//go:noinline
func itoa(n int) string { return strconv.Itoa(n) }

// parsePositive reads a plain number that is not below zero.
func parsePositive(s string) (float64, error) {
	x, err := strconv.ParseFloat(s, 64)
	if err == nil && (x < 0 || math.IsInf(x, 0) || math.IsNaN(x)) {
		err = fmt.Errorf("%q is out of range", s)
	}
	return x, err
}

// entryList names entries in words.
func entryList(list []int) string {
	parts := make([]string, len(list))
	for i, n := range list {
		parts[i] = itoa(n)
	}
	if len(list) == 1 {
		return "entry " + parts[0]
	}
	return "entries " + strings.Join(parts, ", ")
}

// atEntry names the entry that a text rests on.
//
//go:noinline
func atEntry(n int) string { return " (entry " + itoa(n) + ")" }

// alarmed gives the cautions that the words of a line call for.
func (c *Call) alarmed(r *Reply, text string) {
	for _, a := range said.Alarms(text) {
		if c.inAppliance(a.Finding) == a.Finding {
			c.warn(r, a.Caution)
		}
	}
}

// among reports whether a list holds a value.
//
//go:noinline
func among(list []string, s string) bool { return slices.Contains(list, s) }
