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
		"melted melting leaks leaking leaked fumes flames arcing bypassed jumpered jumped jumper bridged defeated capped plugged exposed cracked disconnected rollout"
	miswords = " leak acing aring arming bridge brides caped cape cared capped carked chared expose flame flams fume hock hocks hocked sock socks socked " +
		"laking leaned leas leaing park parks parked parking spar spars spared sparing sell sells soke soaked soaking mell mells moke moking melting meting lugged " +
		"racked racing raced raking ringed tinge tinges tingle urned umped burnings ruining "
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

// spelt is a text with such slips put right; without any it is the text itself.
func spelt(text string) string {
	if strings.Contains(text, "by pass") {
		text = strings.ReplaceAll(text, "by pass", "bypass")
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
			if right := misspelt()[string(room[:n])]; right != "" {
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
