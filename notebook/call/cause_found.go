package call

import (
	"cmp"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/notebook/script"
)

// mostFound is how many findings are told in words beside a cause; the rest
// are named by their entries.
const mostFound = 4

// foundBy says what a cause is inferred from: the entries' own words, in
// short, each with its number.
func (c *Call) foundBy(facts []cause.Fact) string {
	entries := entryNumbers(facts)
	var words []string
	for i, n := range entries {
		if i == mostFound && len(entries) > mostFound+1 {
			rest := make([]string, 0, len(entries)-i)
			for _, n := range entries[i:] {
				rest = append(rest, itoa(n))
			}
			return strings.Join(words, ", ") + "; more in entries " + strings.Join(rest, ", ")
		}
		head := ""
		if i == 0 {
			head = "entry "
		}
		words = append(words, c.inShort(n)+" ("+head+itoa(n)+")")
	}
	return strings.Join(words, ", ")
}

// inShort is what an entry tells, without its command where that adds
// nothing.
func (c *Call) inShort(n int) string {
	line := c.entries[n-1].Line
	l, err := script.Parse(line)
	if err != nil || l.Blank() {
		return clip(line, 48)
	}
	text := strings.TrimPrefix(l.Expression(), "ohm ")
	if l.Words[0].Text == "saw" {
		text, _ = l.Rest()
	}
	return clip(cmp.Or(text, line), 48)
}

// wantingWords counts the points of proof that are not shown; what needs
// attention names them.
func wantingWords(n int) string {
	if n == 1 {
		return "1 point of proof is wanting, see what needs attention"
	}
	return itoa(n) + " points of proof are wanting, see what needs attention"
}
