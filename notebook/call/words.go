package call

import (
	"fmt"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"sync"

	"ohmcall/calc/caution"
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

// lazily is a pattern that is made when it is first asked for.
//
//go:noinline
func lazily(expr string) func() *regexp.Regexp {
	return sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(expr) })
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

// atEntry names the entry that a text rests on.
//
//go:noinline
func atEntry(n int) string { return " (entry " + itoa(n) + ")" }

// alarm is a danger that words speak of, with the code of its caution.
type alarm struct {
	words []string
	code  string
}

var alarms = []alarm{
	{[]string{"shock", "tingl", "zapped", "bitten by", "live case", "live cabinet"}, caution.Shock},
	{[]string{"sparks", "sparked", "sparking", "arcing", "arced", "smoke", "smoking", "burning smell", "smell of burning", "burnt smell", "smells burnt", "smells of burning", "flames", "caught fire"}, caution.Smoke},
	{[]string{"gas smell", "smell of gas", "smells of gas", "smells gas", "smelled gas", "smell gas"}, caution.GasSmell},
}

// alarmed gives the cautions that the words of a line call for.
func (c *Call) alarmed(r *Reply, text string) {
	for _, a := range alarms {
		for _, w := range a.words {
			if speaksOf(text, []string{w}) && !speaksOf(text, []string{"no " + w}) {
				c.warn(r, a.code)
			}
		}
	}
}

// notSafe are words that are no statement that a unit was made safe.
var notSafe = lazily(`(?i)^(no|not|un ?safe)$|\bnot (yet|safe|dead|isolated|locked|unplugged|discharged|off|proved)\b|\b(still|is|are) (on|live|hot|plugged|energi[sz]ed|powered|charged)\b|\bpower( is)? on\b`)

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

// among reports whether a list holds a value.
//
//go:noinline
func among(list []string, s string) bool { return slices.Contains(list, s) }
