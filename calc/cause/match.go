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
// in the order of the phrase, with at most two words between.
func saysAll(text, phrase []string) bool {
	for from := range text {
		if follows(text[from:], phrase) {
			return true
		}
	}
	return false
}

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
			if strings.HasPrefix(text[i], p) {
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

// Missing lists what the complaint's call still needs after the facts.
func Missing(complaint string, facts []Fact) []Need {
	c, ok := ComplaintBy(complaint)
	if !ok {
		return nil
	}
	var known set
	for _, f := range facts {
		if n, ok := vocabulary.number[f.Code]; ok {
			known.add(n)
		}
	}
	var missing []Need
	for _, n := range c.Need {
		if !vocabulary.set(n.Any).meets(known) {
			missing = append(missing, n)
		}
	}
	return missing
}
