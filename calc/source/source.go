// Package source says where in a typed line something is wrong.
//
// It knows nothing of meanings, terminals or files; every layer above reports
// its faults in this one shape, so that one function can draw the caret.
package source

import (
	"fmt"
	"strings"

	"github.com/agnivade/levenshtein"
)

// Error is a fault in one line of text.
type Error struct {
	// Col and End bound the faulty part: columns in runes, the first is 1,
	// End is one past the last. Col 0 means that the place is unknown.
	Col, End int
	// Msg says what was wrong: lower case, no full stop.
	Msg string
	// Hint says what would have worked; it may be empty.
	Hint string
	// Line is the line that the columns belong to, where that is not the one
	// that was typed.
	Line string
	// Early says that what is missing may still be written down.
	Early bool
}

// Error gives the message and, when there is one, the hint.
func (e *Error) Error() string {
	if e.Hint == "" {
		return e.Msg
	}
	return e.Msg + " (" + e.Hint + ")"
}

// Errorf makes an Error for the columns from col up to end.
//
//go:noinline
func Errorf(col, end int, format string, args ...any) *Error {
	return &Error{Col: col, End: end, Msg: fmt.Sprintf(format, args...)}
}

// WithHint returns a copy of e that carries the hint.
//
//go:noinline
func (e *Error) WithHint(format string, args ...any) *Error {
	c := *e
	c.Hint = fmt.Sprintf(format, args...)
	return &c
}

// Shift returns a copy of e moved n columns to the right; a fault without a
// place stays without one.
//
//go:noinline
func (e *Error) Shift(n int) *Error {
	c := *e
	if c.Col > 0 {
		c.Col += n
		c.End += n
	}
	return &c
}

// Short keeps a quoted word of a message short.
//
//go:noinline
func Short(s string) string {
	if r := []rune(s); len(r) > 24 {
		return string(r[:24]) + "…"
	}
	return s
}

// Nearest returns the candidate closest to word by edit distance, or "" when
// none is close enough to be a likely slip of the fingers: at most one edit
// for three letters, two for four to six, three for longer words. Of two as
// close, one with the same first letter is meant.
func Nearest(word string, candidates []string) string {
	limit := 1
	switch n := len([]rune(word)); {
	case n < 2, n > 64: // a slip is not that long, and the work grows with the square
		return ""
	case n > 6:
		limit = 3
	case n > 3:
		limit = 2
	}
	return nearest(word, candidates, limit)
}

// Slip returns the candidate that a word is one slip away from: a letter more, less
// or another, or two that changed places; two slips of more than six letters.
func Slip(word string, candidates []string) string {
	if n := len([]rune(word)); n < 3 || n > 64 {
		return ""
	} else if n > 6 {
		return nearest(word, candidates, 2)
	}
	return nearest(word, candidates, 1)
}

func nearest(word string, candidates []string, limit int) string {
	best, bestDistance := "", limit+1
	lower := strings.ToLower(word)
	for _, c := range candidates {
		d := levenshtein.ComputeDistance(lower, strings.ToLower(c))
		if d == 2 && swapped(lower, strings.ToLower(c)) {
			d = 1
		}
		if d < bestDistance || d == bestDistance && d <= limit && sameStart(lower, c) && !sameStart(lower, best) {
			best, bestDistance = c, d
		}
	}
	return best
}

// swapped reports whether two words differ in two neighbours that changed places.
func swapped(a, b string) bool {
	for i := range len(a) - 1 {
		if len(a) == len(b) && a[i] == b[i+1] && a[i+1] == b[i] && a[:i] == b[:i] && a[i+2:] == b[i+2:] {
			return true
		}
	}
	return false
}

func sameStart(lower, c string) bool { return c != "" && strings.ToLower(c)[0] == lower[0] }
