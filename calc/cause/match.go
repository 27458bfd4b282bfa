package cause

import "strings"

// Match gives the complaints that a customer's words name, the most specific
// first; several mean that the words are ambiguous.
func Match(text string) []Complaint {
	words := fold(text)
	var found []Complaint
	for _, c := range complaints {
		for _, phrase := range c.Words {
			if saysAll(words, fold(phrase)) {
				found = append(found, c)
				break
			}
		}
	}
	return found
}

// saysAll reports whether each word of the phrase begins a word of the text,
// or is one where it is so short that it begins too many, in the order of the
// phrase, with at most two words between.
func saysAll(text, phrase []string) bool {
	for from := range text {
		if follows(text[from:], phrase) {
			return true
		}
	}
	return false
}

// whole holds the words of phrases that begin other words of a complaint.
var whole = map[string]bool{"no": true, "not": true}

func follows(text, phrase []string) bool {
	at := 0
	for k, p := range phrase {
		reach := len(text)
		if k == 0 {
			reach = min(1, len(text))
		} else {
			reach = min(reach, at+3)
		}
		hit := -1
		for i := at; i < reach; i++ {
			if text[i] == p || !whole[p] && strings.HasPrefix(text[i], p) {
				hit = i
				break
			}
		}
		if hit < 0 {
			return false
		}
		at = hit + 1
	}
	return true
}

// becomes names the complaint that another one turns out to be once a fact is
// known: a machine that did not start because its protector had opened on heat
// is one that cuts out, and what made the heat is looked for.
var becomes = map[string]struct{ fact, complaint string }{
	"no-start": {"protector-reset", "hums-trips"},
}

// Refine gives the complaint to weigh after the facts: the one given, or what
// the facts show it to be.
func Refine(complaint string, facts []Fact) string {
	b, ok := becomes[complaint]
	for i := range facts {
		if ok && facts[i].Code == b.fact {
			return b.complaint
		}
	}
	return complaint
}

// Missing lists what the complaint's call still needs after the facts.
func Missing(complaint string, facts []Fact) []Need {
	c, ok := ComplaintBy(complaint)
	if !ok {
		return nil
	}
	var known set
	for _, f := range facts {
		if n, ok := vocabulary().number[f.Code]; ok {
			known.add(n)
		}
	}
	var missing []Need
	for _, n := range c.Need {
		if !vocabulary().set(n.Any).meets(known) {
			missing = append(missing, n)
		}
	}
	return missing
}
