package call

import (
	"strings"

	"ohmcall/notebook/script"
)

// RedactedMark stands where a personal text was.
const RedactedMark = "(redacted)"

// personal are the commands whose text names people or places.
var personal = []string{"client", "site"}

// Personal reports whether a command's text names people or places.
func Personal(word string) bool { return among(personal, word) }

// Redacted is a line with its personal text replaced by a mark; other lines
// come back as they are.
func Redacted(line string) string {
	l, err := script.Parse(line)
	if err != nil || l.Blank() || !Personal(l.Words[0].Text) {
		return line
	}
	_, col := l.Rest()
	return string([]rune(l.Text)[:col-1]) + RedactedMark
}

// redacted reports whether a personal text of this call was replaced.
func (c *Call) redacted() bool {
	for _, f := range c.fields {
		if f.value == RedactedMark && Personal(f.key) {
			return true
		}
	}
	return false
}

// Defines gives the name that a line defines.
func Defines(line string) (string, bool) {
	l, err := script.Parse(line)
	if err != nil || len(l.Words) < 2 || l.Guard != "" {
		return "", false
	}
	if w := l.Words[0].Text; w != "let" && w != "def" {
		return "", false
	}
	name := l.Words[1].Text
	if i := strings.IndexAny(name, "(="); i >= 0 {
		name = name[:i]
	}
	return name, name != ""
}
