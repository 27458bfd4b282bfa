package sheet

import (
	"bytes"
	"html"
	"unicode/utf8"

	"ohmcall/notebook/script"
)

// clean replaces every rune and byte that could steer, hide or reorder text
// by its visible name, as the notebook file does. It runs over the finished
// page, so that no field can be forgotten; the page's own markup has none.
func clean(doc []byte) []byte {
	var b bytes.Buffer
	b.Grow(len(doc))
	for len(doc) > 0 {
		r, n := utf8.DecodeRune(doc)
		switch one := string(doc[:n]); {
		case r == '\n' || r == '\t' || r >= ' ' && r < utf8.RuneSelf-1:
			b.WriteByte(doc[0])
		case r == '\r':
			b.WriteString("&lt;U+000D&gt;")
		default:
			if safe := script.Clean(one); safe != one {
				b.WriteString(html.EscapeString(safe))
			} else {
				b.WriteString(one)
			}
		}
		doc = doc[n:]
	}
	return b.Bytes()
}
