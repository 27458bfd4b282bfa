package call

import (
	"fmt"
	"math"
	"regexp"
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
		"cut the earth", "cut earth", "removed the ground", "cut the ground", "cut off the earth", "without overload", "without the overload",
		"bigger fuse", "larger fuse", "oversize fuse", "stronger fuse", "cover off", "cover left off", "without its cover", "taped the switch", "taped down"}
	sealedWork = []string{"purged", "vented", "vent the gas", "vent the charge", "vent refrigerant", "solder", "braz", "recharg", "charged with", "recover", "evacuat", "new compressor", "replaced compressor",
		"replaced the compressor", "cut the tube", "piercing", "access valve", "drier"}
)

// Words that put a protective device back, that renew a part, and of what
// belongs to a machine without being the machine.
var (
	restores = []string{"removed the bypass", "removed bypass", "bypass removed", "removed the jumper", "removed jumper", "jumper removed", "took the jumper",
		"took out the jumper", "jumper out", "bypass out", "back in circuit", "back in its circuit", "in circuit again", "restored", "reconnected", "put back",
		"limit back", "overload back", "thermostat back", "fuse back", "earth back", "ground back", "cover back"}
	renews      = []string{"replac", "new ", "changed", "swapped", "fitted", "installed", "exchanged"}
	accessories = []string{"relay", "device", "overload", "protector", "capacitor", " cap", "terminal", "cover", "plug", "wire", "lead", "mount", "bolt",
		"kit", "start", "ptc", "board", "pan", "line", "oil"}
	// protective are the devices that must be in their circuit, bridges what
	// takes them out.
	protective = []string{"overload", "protector", "limit", "thermostat", "fuse", "switch", "interlock", "earth", "ground", "cover"}
	bridges    = []string{"bypass", "jumper", "bridge"}
)

// undone tells work that was not done: ordered, quoted, not yet.
func undone(text string) bool { return notDone().MatchString(text) }

var notDone = sync.OnceValue(func() *regexp.Regexp {
	return regexp.MustCompile(`(?i)^(order|quot|recommend|advis|estimat|offer|told|explain|show|will|to |need|no |not )|\bnot (yet )?(replac|fit|chang|done|install|swap|repair)|\bnot yet\b|\byet to\b|\bto be (replac|fit|order|chang)|\bon order\b`)
})

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
var notSafe = sync.OnceValue(func() *regexp.Regexp {
	return regexp.MustCompile(`(?i)^(no|not|un ?safe)$|\bnot (yet|safe|dead|isolated|locked|unplugged|discharged|off|proved)\b|\b(still|is|are) (on|live|hot|plugged|energi[sz]ed|powered|charged)\b|\bpower( is)? on\b`)
})

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
