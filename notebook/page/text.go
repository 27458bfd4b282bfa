package page

import (
	"strings"

	"github.com/rivo/uniseg"

	"ohmcall/calc/failpoint"
)

// escapeLine is Escape for a text that starts a line of its own, where a
// number, a dash or a hash would begin a list or a heading.
func escapeLine(s string) string {
	e := Escape(s)
	switch {
	case e == "":
		return e
	case strings.ContainsRune("#-+=", rune(e[0])):
		return `\` + e
	}
	digits := 0
	for digits < len(e) && e[digits] >= '0' && e[digits] <= '9' {
		digits++
	}
	if digits > 0 && digits < 10 && digits < len(e) && (e[digits] == '.' || e[digits] == ')') &&
		(digits+1 == len(e) || e[digits+1] == ' ') {
		return e[:digits] + `\` + e[digits:]
	}
	return e
}

// Escape makes text from people inert in Markdown: it can become no markup,
// HTML, table cell or link, and shows as it was typed. The text holds no line
// breaks and no controls; script.Clean has seen to that.
func Escape(s string) string {
	if failpoint.On(failpoint.NotEscaped) {
		return s
	}
	if !strings.ContainsAny(s, "\\`*_[]<>|~&$@:.") {
		return s
	}
	var b strings.Builder
	b.Grow(len(s) + 8)
	for i := 0; i < len(s); i++ {
		c := s[i]
		switch c {
		case '\\', '`', '*', '[', ']', '<', '>', '|', '&', '$', '@':
			b.WriteByte('\\')
		case '_':
			// Between letters it opens and closes nothing (CommonMark 0.31.2, 6.2;
			// from memory).
			if i == 0 || i+1 == len(s) || !alnum(s[i-1]) || !alnum(s[i+1]) {
				b.WriteByte('\\')
			}
		case '~':
			// Behind a space it closes nothing, and no other is left that could
			// close what it opens.
			if i > 0 && s[i-1] != ' ' || i+1 == len(s) || s[i+1] < '0' || s[i+1] > '9' {
				b.WriteByte('\\')
			}
		case '.':
			if strings.HasSuffix(strings.ToLower(s[:i]), "www") {
				b.WriteByte('\\')
			}
		case ':':
			if strings.HasPrefix(s[i:], "://") || schemeBefore(s[:i]) {
				b.WriteByte('\\')
			}
		}
		b.WriteByte(c)
	}
	return b.String()
}

func alnum(c byte) bool {
	return c >= '0' && c <= '9' || c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z'
}

// schemeBefore tells the schemes that become links without slashes.
func schemeBefore(s string) bool {
	l := strings.ToLower(s)
	return strings.HasSuffix(l, "mailto") || strings.HasSuffix(l, "xmpp")
}

// Width is how many columns a text takes on a screen.
func Width(s string) int {
	for i := 0; i < len(s); i++ {
		if s[i] >= 0x80 {
			return uniseg.StringWidth(s)
		}
	}
	return len(s)
}

func spaces(b *strings.Builder, n int) {
	for range n {
		b.WriteByte(' ')
	}
}

// Columns are aligned up to so wide, in tables of up to so many rows: one long
// text must not make every row as long.
const (
	widest      = 200
	mostAligned = 2000
)

// writeTable writes a GFM table whose columns align in the source too. Cells
// are escaped here.
func writeTable(b *strings.Builder, head []string, rows [][]string, right ...int) {
	aligned := widest
	if len(rows) > mostAligned {
		aligned = 0
	}
	cells := make([][]string, 0, len(rows)+1)
	widths := make([]int, len(head))
	all := make([]string, len(head)*(len(rows)+1))
	for n := range len(rows) + 1 {
		row := head
		if n > 0 {
			row = rows[n-1]
		}
		line := all[n*len(head) : (n+1)*len(head)]
		for i := range head {
			if i < len(row) {
				line[i] = Escape(row[i])
			}
			widths[i] = max(widths[i], min(Width(line[i]), aligned), 3)
		}
		cells = append(cells, line)
	}
	wide := 2
	for _, w := range widths {
		wide += w + 3
	}
	b.Grow(wide * (len(cells) + 1))
	isRight := make([]bool, len(head))
	for _, i := range right {
		isRight[i] = true
	}
	for n, line := range cells {
		for i, c := range line {
			b.WriteString("| ")
			pad := max(widths[i]-Width(c), 0)
			if isRight[i] {
				spaces(b, pad)
				b.WriteString(c)
			} else {
				b.WriteString(c)
				spaces(b, pad)
			}
			b.WriteByte(' ')
		}
		b.WriteString("|\n")
		if n > 0 {
			continue
		}
		for i := range line {
			if isRight[i] {
				b.WriteString("| " + strings.Repeat("-", widths[i]-1) + ": ")
			} else {
				b.WriteString("| " + strings.Repeat("-", widths[i]) + " ")
			}
		}
		b.WriteString("|\n")
	}
}
