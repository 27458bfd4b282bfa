package fleet

import "strings"

// Cell makes a text harmless in a CSV file: what a spreadsheet would take
// for a formula gets an apostrophe in front (CWE-1236; trigger characters by
// OWASP ASVS 1.2.10). A strict number is left alone, or -12.5 would become a
// text.
func Cell(s string) string {
	if s == "" || !triggers(s) || strictNumber(s) {
		return s
	}
	return "'" + s
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
