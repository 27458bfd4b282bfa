// Package script cuts a typed line into words with their places. It knows
// how a line is written (time, guard, words, quotes, parentheses, commas,
// comment) and nothing of what the words mean.
package script

import (
	"strings"
	"time"
	"unicode/utf8"

	"ohmcall/calc/source"
)

// Word is one word of a line.
type Word struct {
	Text     string // without its quotes
	Col, End int    // place in the line: runes from 1, End is one past
	Quoted   bool   // stood in double quotes
}

// Comma reports whether the word is a separating comma.
func (w Word) Comma() bool { return w.Text == "," && !w.Quoted }

// Errorf makes an error that points at the word.
//
//go:noinline
func (w Word) Errorf(format string, args ...any) *source.Error {
	return source.Errorf(w.Col, w.End, format, args...)
}

// Stamp is the time written before a line.
type Stamp struct {
	Set   bool
	After bool          // +40min: after the entry before
	Clock time.Duration // since midnight, or since the entry before
}

// Line is one line, cut up.
type Line struct {
	Text  string // the whole line, cleaned
	Stamp Stamp
	Guard string // the condition of `when CONDITION:`, "" when there is none
	// GuardCol is the column at which the condition starts.
	GuardCol int
	Body     string // what follows time and guard, comment still on it
	BodyCol  int    // its column
	Words    []Word // the words of the body, without its comment
	Comment  int    // the byte at which the body's comment starts, len(Body) when none
}

// Blank reports whether the line holds nothing but a comment or spaces.
func (l *Line) Blank() bool { return len(l.Words) == 0 }

// Rest is the body after its first word, to the end of the line, with its
// column: free text, in which `#` is a character like any other.
func (l *Line) Rest() (text string, col int) {
	first := l.Words[0]
	skip := first.End - l.BodyCol
	rest := l.Body
	for range skip {
		_, n := utf8.DecodeRuneInString(rest)
		rest = rest[n:]
	}
	rest, col = skipSpaces(rest, l.BodyCol+skip)
	return strings.TrimRight(rest, " "), col
}

// Expression is the body without its comment.
func (l *Line) Expression() string { return strings.TrimRight(l.Body[:l.Comment], " ") }

// Parse cuts up one line. Text must be a single line; it is cleaned first.
func Parse(text string) (*Line, error) {
	if len(text) > MaxLine {
		return nil, tooLong(text)
	}
	l := &Line{Text: strings.Trim(Clean(text), " ")}
	if len(l.Text) > MaxLine {
		// Names take more room than what they stand for. What is stored must be
		// taken again when it is replayed.
		return nil, tooLong(l.Text)
	}
	rest, col := l.Text, 1
	rest, col = skipSpaces(rest, col)
	if st, n := parseStamp(rest); n > 0 {
		l.Stamp = st
		rest, col = skipSpaces(rest[n:], col+n)
	}
	if rest, ok := strings.CutPrefix(rest, "when "); ok {
		i := guardEnd(rest)
		if i < 0 || strings.TrimSpace(rest[:i]) == "" {
			return nil, source.Errorf(col, col+4, "a guard is a condition and a colon").
				WithHint("write it as: when CONDITION: need …")
		}
		l.Guard, l.GuardCol = skipSpaces(rest[:i], col+5)
		l.Guard = strings.TrimRight(l.Guard, " ")
		l.Body, l.BodyCol = skipSpaces(rest[i+1:], col+5+runes(rest[:i+1]))
	} else {
		l.Body, l.BodyCol = rest, col
	}
	var err *source.Error
	l.Words, l.Comment, err = words(l.Body, l.BodyCol)
	if err != nil {
		return l, err
	}
	return l, nil
}

func tooLong(text string) *source.Error {
	return source.Errorf(0, 0, "the line is %d bytes long, at most %d are taken", len(text), MaxLine).
		WithHint("split it into several lines")
}

func runes(s string) int { return utf8.RuneCountInString(s) }

func skipSpaces(s string, col int) (string, int) {
	n := 0
	for n < len(s) && s[n] == ' ' {
		n++
	}
	return s[n:], col + n
}

// guardEnd finds the colon that ends a condition: the first one outside
// quotes that is followed by a space or the end.
func guardEnd(s string) int {
	quoted := false
	for i := 0; i < len(s); i++ {
		switch {
		case s[i] == '"':
			quoted = !quoted
		case s[i] == ':' && !quoted && (i+1 == len(s) || s[i+1] == ' '):
			return i
		}
	}
	return -1
}

// words cuts the text at spaces and commas; a group in parentheses or quotes
// stays whole, and a # at the start of a word begins a comment.
func words(s string, col int) (out []Word, comment int, err *source.Error) {
	out = make([]Word, 0, 1+strings.Count(s, " ")+strings.Count(s, ","))
	i := 0
	step := func() {
		// What the words are cut at is ASCII; of other runes only the first
		// byte counts as a column.
		for i++; i < len(s) && s[i]&0xC0 == 0x80; i++ {
		}
		col++
	}
	for i < len(s) {
		switch s[i] {
		case ' ':
			step()
			continue
		case '#':
			return out, i, nil
		case ',':
			out = append(out, Word{Text: ",", Col: col, End: col + 1})
			step()
			continue
		}
		start, startCol := i, col
		if s[i] == '"' {
			step()
			for i < len(s) && s[i] != '"' {
				step()
			}
			if i == len(s) {
				return out, len(s), source.Errorf(startCol, startCol+1, "a quote is not closed").WithHint(`end the text with "`)
			}
			step()
			out = append(out, Word{Text: s[start+1 : i-1], Col: startCol, End: col, Quoted: true})
			continue
		}
		depth := 0
		quoted := false
		for i < len(s) && (depth > 0 || quoted || (s[i] != ' ' && s[i] != ',')) {
			switch s[i] {
			case '"':
				quoted = !quoted && depth > 0
			case '(':
				if !quoted {
					depth++
				}
			case ')':
				if !quoted && depth > 0 {
					depth--
				}
			}
			step()
		}
		out = append(out, Word{Text: s[start:i], Col: startCol, End: col})
	}
	return out, len(s), nil
}

// parseStamp reads `14:30`, `+40min`, `+2h`, `+90s` or `+1h30min` followed by
// a space, and returns how many bytes it took, 0 when there is none.
func parseStamp(s string) (Stamp, int) {
	end := strings.IndexByte(s, ' ')
	if end <= 0 {
		return Stamp{}, 0
	}
	w := s[:end]
	if w[0] == '+' {
		if d, ok := Duration(w[1:]); ok {
			return Stamp{Set: true, After: true, Clock: d}, end
		}
		return Stamp{}, 0
	}
	for _, layout := range []string{"15:04", "15:04:05"} {
		if len(w) != len(layout) {
			continue
		}
		if t, err := time.Parse(layout, w); err == nil {
			return Stamp{Set: true, Clock: t.Sub(time.Date(0, 1, 1, 0, 0, 0, 0, time.UTC))}, end
		}
	}
	return Stamp{}, 0
}

// Duration reads a length of time as it is typed: 40min, 2h, 90s, 1h30min,
// 3d. A number with another unit, or none, is refused.
func Duration(s string) (time.Duration, bool) {
	units := []struct {
		name string
		d    time.Duration
	}{{"min", time.Minute}, {"d", 24 * time.Hour}, {"h", time.Hour}, {"m", time.Minute}, {"s", time.Second}}
	var total time.Duration
	if s == "" || len(s) > 24 {
		return 0, false
	}
	for s != "" {
		n := 0
		for n < len(s) && s[n] >= '0' && s[n] <= '9' && n < 6 {
			n++
		}
		if n == 0 {
			return 0, false
		}
		var v time.Duration
		for _, c := range s[:n] {
			v = v*10 + time.Duration(c-'0')
		}
		s = s[n:]
		found := false
		for _, u := range units {
			if rest, ok := strings.CutPrefix(s, u.name); ok {
				total += v * u.d
				s, found = rest, true
				break
			}
		}
		if !found {
			return 0, false
		}
	}
	return total, true
}
