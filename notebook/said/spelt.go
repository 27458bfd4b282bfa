package said

import (
	"strings"
	"sync"
)

// alarmed are words of danger and of what takes a protective device out that are heard
// too with a letter left out or two exchanged, as they are typed in a hurry; miswords
// are words that such a slip would make and that are some of their own.
const (
	alarmWords = "shock shocks shocked tingle tingles smoke smoked smoking spark sparks sparked sparking smell smells smelled burning burned scorched charred " +
		"melted melting leaks leaking leaked fumes flames arcing bypassed jumpered jumped jumper bridged defeated capped plugged exposed cracked disconnected rollout " +
		"ground grounded earth earthed terminal terminals connector connectors interlock missing hanging together transformer exchanger insulation shattered"
	miswords = " leak acing aring arming bridge brides caped cape cared capped carked chared expose flame flams fume hock hocks hocked sock socks socked " +
		"laking leaned leas leaing park parks parked parking spar spars spared sparing sell sells soke soaked soaking mell mells moke moking melting meting lugged " +
		"racked racing raced raking ringed tinge tinges tingle urned umped burnings ruining " +
		"round rounded grounds heart hearted termial mising gather tether "
)

// misspelt gives for each such slip the word that it is; one of three letters is too
// short to tell (common practice).
var misspelt = sync.OnceValue(func() map[string]string {
	out := map[string]string{}
	words := strings.Fields(alarmWords)
	for _, w := range words {
		for i := range w {
			less := w[:i] + w[i+1:]
			if len(less) > 3 {
				out[less] = w
			}
			if i+1 < len(w) {
				out[w[:i]+w[i+1:i+2]+w[i:i+1]+w[i+2:]] = w
			}
		}
	}
	for _, w := range append(words, strings.Fields(miswords)...) {
		delete(out, w)
	}
	return out
})

// hurried gives the word that one in lower case is typed for in a hurry, "" when it may be
// itself: with such a slip, with -in for -ing, or with -d for -ed where no word ends so.
func hurried(w []byte) string {
	if right := misspelt()[string(w)]; right != "" {
		return right
	}
	before, last := w[len(w)-2], w[len(w)-1]
	switch {
	case len(w) < 5:
	case last == 'n' && before == 'i' && strings.IndexByte("aeou", w[len(w)-3]) < 0 && !strings.Contains(endIn, " "+string(w)+" "):
		return string(w) + "g"
	case last == 'd' && (strings.IndexByte("bcfgkmpstvxz", before) >= 0 || strings.IndexByte("lr", before) >= 0 && w[len(w)-3] == before || string(w[len(w)-3:]) == "erd"):
		if stem := string(w[:len(w)-1]); before != 'p' || !strings.ContainsRune("aeiou", rune(w[len(w)-3])) || strings.Contains(" tap pip wip scrap leap heap ", " "+stem+" ") {
			return stem + "ed"
		}
		return string(w[:len(w)-1]) + "ped" // swapd, strapd
	}
	return ""
}

// endIn are words that end so by themselves.
const endIn = " begin within basin cabin bobbin resin robin margin origin cousin muffin napkin pumpkin satin raisin toxin vitamin plugin builtin login admin hairpin clothespin insulin violin coffin gasolin "

// spelt is a text with such slips put right; without any it is the text itself.
func spelt(text string) string {
	if strings.Contains(text, "pass") {
		text = strings.ReplaceAll(text, "by pass", "bypass")
		text = strings.ReplaceAll(text, "hot gas bypass", "hot gas valve") // no bypass of a device
	}
	var out strings.Builder
	var room [16]byte
	done := 0
	for at := 0; at < len(text); {
		n := 0
		for at+n < len(text) && (text[at+n]|0x20 >= 'a' && text[at+n]|0x20 <= 'z') {
			if n < len(room) {
				room[n] = text[at+n] | 0x20
			}
			n++
		}
		if n > 3 && n <= len(room) {
			if right := hurried(room[:n]); right != "" {
				out.WriteString(text[done:at])
				out.WriteString(right)
				done = at + n
			}
		}
		at += n + 1
	}
	if done == 0 {
		return text
	}
	return out.String() + text[done:]
}
