package fleet

import (
	"strconv"
	"strings"
)

// Cell makes a text safe in a CSV file: what a spreadsheet would take for a
// formula gets an apostrophe in front (CWE-1236; trigger characters by OWASP
// ASVS 1.2.10), and so does what it would take for a number and show as
// another text, such as the serial number 000123 or the sum 15 %. A number
// that it shows as it stands is left alone, or -12.5 would become a text.
func Cell(s string) string {
	number, percent := strings.CutSuffix(s, "%")
	switch {
	case s == "" || strictNumber(s) && shownAlike(s):
		return s
	case triggers(s) || strictNumber(s) || percent && strictNumber(strings.TrimRight(number, " ")):
		return "'" + s
	}
	return s
}

// digits is how many digits a spreadsheet keeps: those that every number of
// IEEE 754 double precision has.
const digits = 15

// shownAlike reports whether a spreadsheet shows a strict number as written.
func shownAlike(s string) bool {
	x, err := strconv.ParseFloat(s, 64)
	return err == nil && len(strings.Trim(s, "-.")) <= digits && strconv.FormatFloat(x, 'f', -1, 64) == s
}

// triggers looks at the first character that is no space, since some
// programs trim, and also at the full-width forms.
func triggers(s string) bool {
	switch s[0] {
	case '\t', '\r', '\n', 0:
		return true
	}
	s = strings.TrimLeft(s, " \u00a0\u3000")
	for _, p := range []string{"=", "+", "-", "@", "\t", "\r", "\n", "\x00", "＝", "＋", "－", "＠"} {
		if strings.HasPrefix(s, p) {
			return true
		}
	}
	return false
}

// strictNumber matches [+-]digits[.digits][e[+-]digits] and nothing else.
func strictNumber(s string) bool {
	s = unsigned(s)
	digits := func() bool {
		rest := strings.TrimLeft(s, "0123456789")
		some := len(rest) < len(s)
		s = rest
		return some
	}
	if !digits() {
		return false
	}
	if rest, ok := strings.CutPrefix(s, "."); ok {
		s = rest
		if !digits() {
			return false
		}
	}
	if s != "" && (s[0] == 'e' || s[0] == 'E') {
		s = unsigned(s[1:])
		if !digits() {
			return false
		}
	}
	return s == ""
}

func unsigned(s string) string {
	if s != "" && (s[0] == '-' || s[0] == '+') {
		return s[1:]
	}
	return s
}
