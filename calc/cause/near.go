package cause

import (
	"slices"
	"sort"
	"strings"
	"sync"
)

// nearEnough is the share of words that a text and a finding's wording must
// have in common for the finding to be offered.
const nearEnough = 0.3

// states are words that many findings share: what they are said of has to be
// common too before a finding is offered. No guess is better than a bad one.
var states = codeSet("on", "off", "in", "at", "the", "a", "is", "it", "no", "not", "none", "of", "to", "and", "by", "with", "up",
	"loose", "burnt", "broken", "melted", "corroded", "charred", "warm", "hot", "cold", "cool", "dirty", "clean", "good", "bad", "sound",
	"stopped", "still", "dead", "runs", "running", "run", "starts", "start", "free", "stiff", "jammed", "stuck", "blocked", "clear", "open",
	"shut", "works", "tight", "right", "wrong", "low", "high", "normal", "heavy", "even", "partial", "fridge", "freezer", "short", "shorted", "turns", "worn", "torn", "leaks")

// Near gives the findings whose wording comes nearest to a text that is none of
// them, at most so many, the nearest first, in the form preferred.
func Near(text string, most int) []string {
	words := Fold(text)
	no, well, sound := tenor(words)
	type near struct {
		share float64
		words string
	}
	var found []near
	for i, f := range seen() {
		best := 0.0
		for _, p := range phrases()[i] {
			if x := share(words, p.words); x > best && (sound || p.denied == no) {
				best = x
			}
		}
		if (sound || well && !no) && !vocabulary().vouches(f.Code) {
			continue // the opposite of what was typed is never offered
		}
		if best >= nearEnough {
			found = append(found, near{best, f.Words[0]})
		}
	}
	sort.SliceStable(found, func(i, k int) bool { return found[i].share > found[k].share })
	var out []string
	for _, n := range found[:min(most, len(found))] {
		out = append(out, n.words)
	}
	return out
}

// phrase is a wording cut into words, and whether it says that something is not so.
type phrase struct {
	words  []string
	denied bool
}

// phrases are the wordings of each finding.
var phrases = sync.OnceValue(readPhrases)

func readPhrases() (all [][]phrase) {
	for _, f := range seen() {
		var of []phrase
		for _, w := range f.Words {
			words := Fold(w)
			denied, _, _ := tenor(words)
			of = append(of, phrase{words, denied})
		}
		all = append(all, of)
	}
	return all
}

// tenor tells whether words say that something is not so or stands, that something is
// as it should be, and that a fault is not there.
func tenor(words []string) (no, well, sound bool) {
	before := false
	for _, w := range words {
		sound = sound || before && tenors()["-"+w]
		before = denies[w]
		no, well = no || before || tenors()["!"+w], well || tenors()["+"+w]
	}
	return no, well, sound
}

// tenors are words by which something stands (!), is as it should be (+) or is faulty (-).
var tenors = codeSet("!dead", "!off", "!quit", "!still", "!fails", "!failed",
	"-torn", "-frozen", "-iced", "-blocked", "-plugged", "-leaking", "-dirty", "-loose", "-burnt", "-broken", "-stuck", "-jammed", "-worn", "-cracked", "-kinked", "-shorted", "-stiff", "-seized",
	"+good", "+fine", "+tight", "+clean", "+clear", "+free", "+dry", "+works", "+working", "+runs", "+running", "+started", "+starts", "+blowing", "+turning", "+spinning", "+normal")

// share is how many of the words of two texts are in both; 0 when those are
// only states.
func share(a, b []string) float64 {
	common, named := 0, false
	for _, w := range a {
		if slices.ContainsFunc(b, func(v string) bool { return akin(w, v) }) {
			common++
			named = named || !states()[w] && w != "started"
		}
	}
	if !named {
		return 0
	}
	return float64(common) / float64(len(a)+len(b)-common)
}

// akin tells two forms of a word, or one slip of the fingers in a longer one.
func akin(a, b string) bool {
	if a == b {
		return true
	}
	if len(a) > len(b) {
		a, b = b, a
	}
	return len(a) >= 4 && len(b)-len(a) <= 3 && strings.HasPrefix(b, a) || len(a) >= 5 && slip(a, b)
}

// slip tells whether b is a with one letter more or one other.
func slip(a, b string) bool {
	i := 0
	for i < len(a) && a[i] == b[i] {
		i++
	}
	switch len(b) - len(a) {
	case 0:
		return i < len(a) && a[i+1:] == b[i+1:]
	case 1:
		return a[i:] == b[i+1:]
	}
	return false
}
