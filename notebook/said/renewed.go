package said

import (
	"slices"
	"strings"

	"ohmcall/calc/cause"
)

var (
	renewing = pattern{expr: `\b(replaced|fitted|installed|swapped|exchanged|changed|chn?gd|renewed)\b|^(replac|fit|install|swap|exchang|chang|chn?gd|renew|new |put in |put (a |the )?new )`}
	joins    = pattern{expr: `\b(and|n|with|plus)\b|[&+/]`}
	whereOn  = pattern{expr: `\b(on|of|at|for|in|near|by|from|to|a?round) .*`}
)

// Renewals lists what a text says was replaced by new.
func Renewals(text string) []string {
	var out []string
	for _, c := range Stated(text) {
		if renewing.is(c) {
			for _, what := range joins.get().Split(c, MostClauses) {
				out = append(out, whereOn.get().ReplaceAllString(strings.TrimPrefix(what, "put in "), ""))
			}
		}
	}
	return out
}

// MendedAsFound is what a text that tells of a fault says was done for it in its last
// clause, with the fault's own words behind it; "" when it says nothing of that.
func MendedAsFound(text string) string {
	if !strings.Contains(text, ",") || !Has(text, donePlainly) {
		return ""
	}
	list := Clauses(text)
	if n := len(list) - 1; n > 0 && bareDone.get().MatchString(list[n]) {
		verb, _, _ := strings.Cut(bareDone.get().FindStringSubmatch(list[n])[1], " ")
		return verb + " " + strings.Join(list[:n], ", ")
	}
	return ""
}

var (
	donePlainly = []string{"replaced", "renewed", "repaired", "mended", "fixed", "swapped", "cleaned", "cleared", "tightened", "unblocked"}
	bareDone    = pattern{expr: `^(?:and |i |we |so )*((?:` + strings.Join(donePlainly, "|") + `)(?: (?:it|them|all|both|now|today|same))*)$`}
)

// accessories belong to a machine without being the machine.
var accessories = []string{"relay", "device", "overload", "protector", "capacitor", " cap", "terminal", "cover", "plug", "wire", "lead", "mount", "bolt",
	"kit", "start", "ptc", "board", "pan", "line", "oil"}

// Names reports whether a text names a machine or part itself, and not a
// device that belongs to it.
func Names(text, of string) bool {
	of = strings.ToLower(of)
	words := strings.FieldsFunc(of, func(r rune) bool { return r == '-' || isDigit(r) })
	if short := strings.Join(words, ""); len(short) < 3 {
		// M1 is in many words.
		return slices.Contains(strings.Fields(text), of) && !Has(text, accessories)
	}
	number := strings.TrimLeftFunc(of, func(r rune) bool { return !isDigit(r) })
	for _, w := range words {
		_, rest, ok := strings.Cut(text, strings.TrimSuffix(w, "or")) // compress and mot are enough
		if other := alike[w]; !ok && other != "" {
			_, rest, ok = strings.Cut(text, other)
		}
		if !ok {
			return false
		}
		rest = strings.TrimLeftFunc(rest, func(r rune) bool { return !isDigit(r) && r != ' ' })
		if n := leadingNumber(strings.TrimLeft(rest, " #")); n != "" && number != "" && n != number {
			return false
		}
	}
	return !Has(text, accessories)
}

// alike are two words for one part.
var alike = map[string]string{"heater": "element", "element": "heater"}

// leadingNumber is the number of one of several that a text begins with, "" when
// it begins with none; three digits are watts or volts.
func leadingNumber(text string) string {
	n := len(text) - len(strings.TrimLeftFunc(text, isDigit))
	if n > 2 {
		n = 0
	}
	return text[:n]
}

func isDigit(r rune) bool { return r >= '0' && r <= '9' }

// plainWords say of a thing that it was fitted, and not which it is.
var plainWords = Lazily(`^(replaced|fitted|installed|swapped|exchanged|changed|renewed|replac|fit|install|swap|exchang|chang|renew|put|in|new|the|a|an|its|old|same|failed|bad|i|we|for|out)$`)

// Fitted gives the things that a text says were replaced, each in its words that
// tell which it is; nil when it says anything besides.
func Fitted(text string) [][]string {
	for _, c := range Stated(text) {
		if !renewing.is(c) {
			return nil
		}
	}
	var out [][]string
	for _, what := range Renewals(text) {
		if Works(what) && !renewing.is(what) {
			return nil
		}
		words := slices.DeleteFunc(cause.Fold(what), func(w string) bool { return plainWords().MatchString(w) })
		if len(words) == 0 {
			return nil
		}
		out = append(out, words)
	}
	return out
}

// Burnt lists the things of which a line tells that they are burnt, each in its words;
// nil when it tells of smoke, a spark or a smell, which may come of another.
func Burnt(line string) [][]string {
	_, text, _ := strings.Cut(line, " ")
	if smoking.get().MatchString(text) {
		return nil
	}
	var out [][]string
	for _, c := range Clauses(text) {
		if a, b, _ := strings.Cut(c, " and "); browned.is(b) && !browned.is(a) {
			c = b
		}
		if !browned.get().MatchString(c) {
			continue // of another thing
		}
		words := slices.DeleteFunc(cause.Fold(whereOn.get().ReplaceAllString(c, "")), func(w string) bool {
			return plainWords().MatchString(w) || browned.get().MatchString(w)
		})
		if len(words) == 0 {
			return nil
		}
		out = append(out, words)
	}
	return out
}

// IsOf reports whether what was renewed is a thing by all of its words.
func IsOf(renewal string, thing []string) bool {
	words := strings.Join(cause.Fold(renewal), " ") + " "
	if len(thing) == 1 && thing[0] == "plug" && withPlug.is(words) {
		return true
	}
	return !slices.ContainsFunc(thing, func(w string) bool { return !strings.Contains(" "+words, " "+strings.TrimSuffix(w, "s")) })
}

var (
	// withPlug is a cord, whose plug is moulded on (common practice).
	withPlug = pattern{expr: `\b(cord|cordset|cord set)( (fitted|in|set|set fitted))? $`}
	smoking  = pattern{expr: `(?i)smo|spark|arc(s|ed|ing)\b|smell|odou?r|fire|flam|flash|glow|crackl|sizzl|fizz`}
	browned  = pattern{expr: `(?i)\b(burn|charr|melt|scorch|cook|fried|crispy|brown|black|discol|singe)\w*|^(is|was|are|looks?|all|badly|slightly|found|up|through)$`}
)
