//go:build linux

package reliability

import (
	"bytes"
	"fmt"
	"strings"
	"unicode/utf8"

	"ohmcall/notebook"
)

// fields are the lines in which people write freely; %s is their text.
var fields = []string{
	"note %s", "client %s", "site %s", "unit %s", "model %s", "serial %s", "fault %s", "tech %s", "did %s", "safe %s",
	"saw %s", "part %s, 1, 2.50", "wire %s common", `strike 1 "%s"`, `expect 2 > 1 "%s"`, "close %s",
}

// points are code points that steer, hide or reorder text, and some that only
// look odd.
var points = []rune{0x2028, 0x2029, 0xFEFF, 0x202A, 0x202B, 0x202C, 0x202D, 0x202E, 0x2066, 0x2067, 0x2068, 0x2069, 0x200B, 0x200C,
	0x200D, 0x200E, 0x200F, 0x061C, 0x2060, 0x2061, 0x2064, 0x206A, 0x206F, 0x00AD, 0x180E, 0xFFF9, 0xFFFA, 0xFFFB, 0xE0001, 0xE0041,
	0xE007F, 0x0085, 0x009B, 0x009D, 0x0090, 0xFFFD, 0xFFFE, 0x1F600, 0x0301, 0x00A0, 0x3000}

// steers tells the runes that must not stand in a file or on a screen. It is
// written apart from the program's own list.
func steers(r rune) bool {
	switch {
	case r == '\n':
		return false
	case r < 0x20, r >= 0x7F && r < 0xA0, r == 0xAD, r == 0x61C, r == 0x180E, r == 0xFEFF:
		return true
	case r >= 0x200B && r <= 0x200F, r >= 0x2028 && r <= 0x202E, r >= 0x2060 && r <= 0x206F, r >= 0xFFF9 && r <= 0xFFFB, r >= 0xE0000 && r <= 0xE007F:
		return true
	}
	return false
}

// badText is T13.
func badText(w *watch) {
	var texts []string
	for b := range 256 {
		texts = append(texts, "a"+string([]byte{byte(b)})+"b")
	}
	for _, r := range points {
		texts = append(texts, "a"+string(r)+"b")
	}
	texts = append(texts, "a\rb", "a\r\nb", "\uFEFFa", "e"+strings.Repeat("\u0301", 1000), "\xed\xa0\x80", "\xc0\xaf", "\xf4\x90\x80\x80")
	for _, field := range fields[:4] {
		p := newPowerFS(nil)
		n, err := notebook.Create(p.host(), "call.md")
		w.must(err)
		for _, text := range texts {
			if w.red() {
				return
			}
			w.count("texts", 1)
			line := fmt.Sprintf(field, text)
			_, err := n.Do(line)
			if err != nil {
				w.fault("%q: %v", line, err)
				continue
			}
			stored := p.now("call.md")
			last := stored[max(0, len(stored)-8000):]
			if i := bytes.IndexFunc(last, steers); i >= 0 {
				w.fault("%q: a raw %q stands in the file", line, last[i:min(i+4, len(last))])
			}
			if !utf8.Valid(stored) {
				w.fault("%q: the file is not UTF-8", line)
			}
		}
		w.must(n.Close())
		content := p.now("call.md")
		if err := checks(content); err != nil {
			w.fault("%s: %v", field, err)
		}
		if i := bytes.IndexFunc(content, steers); i >= 0 {
			w.fault("%s: a raw %q stands in the file", field, content[i:i+4])
		}
	}
}
