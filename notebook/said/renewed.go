package said

import (
	"strings"
)

var (
	renewing = Lazily(`\b(replaced|fitted|installed|swapped|exchanged|changed|renewed)\b|^(replac|fit|install|swap|exchang|chang|renew|new |put in )`)
	joins    = Lazily(`\b(and|with|plus)\b|[&+/]`)
	whereOn  = Lazily(`\b(on|of|at|for|in|near|by|from|to) .*`)
)

// Renewals lists what a text says was replaced by new.
func Renewals(text string) []string {
	var out []string
	for _, c := range Stated(text) {
		if renewing().MatchString(c) {
			for _, what := range joins().Split(c, MostClauses) {
				out = append(out, whereOn().ReplaceAllString(strings.TrimPrefix(what, "put in "), ""))
			}
		}
	}
	return out
}

// accessories belong to a machine without being the machine.
var accessories = []string{"relay", "device", "overload", "protector", "capacitor", " cap", "terminal", "cover", "plug", "wire", "lead", "mount", "bolt",
	"kit", "start", "ptc", "board", "pan", "line", "oil"}

// Names reports whether a text names a machine or part itself, and not a
// device that belongs to it.
func Names(text, of string) bool {
	if of == "" {
		return false
	}
	for _, w := range strings.FieldsFunc(strings.ToLower(of), func(r rune) bool { return r == '-' || r >= '0' && r <= '9' }) {
		if !strings.Contains(text, strings.TrimSuffix(w, "or")) { // compress and mot are enough
			return false
		}
	}
	return !Has(text, accessories)
}
