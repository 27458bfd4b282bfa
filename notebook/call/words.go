package call

import (
	"fmt"
	"math"
	"strconv"
	"strings"
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

// Words in what was done that speak of a danger. They raise a caution and a
// mark for the supervisor; they accuse nobody.
var (
	defeats = []string{"bypass", "jumper", "jumped", "bridged", "shorted out", "defeat", "removed the earth", "removed earth",
		"cut the earth", "cut earth", "removed the ground", "cut the ground", "cut off the earth", "without overload", "without the overload"}
	sealedWork = []string{"vented", "vent the gas", "vent the charge", "vent refrigerant", "solder", "braz", "recharg", "charged with", "recover", "evacuat", "new compressor", "replaced compressor",
		"replaced the compressor", "cut the tube", "piercing", "access valve", "drier"}
)

// speaksOf reports whether a text holds one of the words.
func speaksOf(text string, words []string) bool {
	text = strings.ToLower(text)
	for _, w := range words {
		if strings.Contains(text, w) {
			return true
		}
	}
	return false
}
