package said

import "strings"

// finder looks for any of many words in one pass over a text: at each place those that
// begin with its two bytes are tried.
type finder struct {
	begins map[uint16][]string
	known  [1 << 10]uint64 // a bit for each two bytes that a word begins with
	signs  string          // words of one byte
}

func newFinder(lists ...[]string) *finder {
	f := &finder{begins: map[uint16][]string{}}
	for _, words := range lists {
		for _, w := range words {
			if len(w) == 1 {
				f.signs += w
				continue
			}
			k := pairAt(w, 0)
			f.begins[k] = append(f.begins[k], w)
			f.known[k/64] |= 1 << (k % 64)
		}
	}
	return f
}

func pairAt(s string, i int) uint16 { return uint16(s[i])<<8 | uint16(s[i+1]) }

// in reports whether a text in lower case holds one of the words.
func (f *finder) in(text string) bool {
	for i := 0; i+1 < len(text); i++ {
		k := pairAt(text, i)
		if f.known[k/64]&(1<<(k%64)) == 0 {
			continue
		}
		for _, w := range f.begins[k] {
			if strings.HasPrefix(text[i:], w) {
				return true
			}
		}
	}
	return f.signs != "" && strings.ContainsAny(text, f.signs)
}
