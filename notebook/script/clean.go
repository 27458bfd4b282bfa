package script

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"

	"ohmcall/calc/failpoint"
)

// MaxLine is the longest line that is taken, in bytes.
const MaxLine = 64 << 10

// Clean makes typed or stored text harmless to show and to store: every
// control character, bidirectional control, line separator, invisible mark
// and invalid byte is replaced by a visible name such as <U+202E> or <0xFF>,
// never deleted, so that tampering stays legible. Tabs become spaces and a
// trailing carriage return goes. Clean(Clean(s)) equals Clean(s).
func Clean(s string) string {
	s = strings.TrimRight(s, "\r\n")
	if failpoint.On(failpoint.NotCleaned) {
		return s
	}
	if !strings.ContainsFunc(s, hostile) && utf8.ValidString(s) {
		return s
	}
	var b strings.Builder
	for i := 0; i < len(s); {
		r, n := utf8.DecodeRuneInString(s[i:])
		switch {
		case r == utf8.RuneError && n == 1:
			fmt.Fprintf(&b, "<0x%02X>", s[i])
		case r == '\t':
			b.WriteByte(' ')
		case hostile(r):
			fmt.Fprintf(&b, "<U+%04X>", r)
		default:
			b.WriteRune(r)
		}
		i += n
	}
	return b.String()
}

// hostile tells runes that could steer a terminal, hide or reorder text:
// Trojan Source (CVE-2021-42574) for the bidirectional ones, CWE-150 for the
// controls.
func hostile(r rune) bool {
	switch {
	case r < 0x20, r >= 0x7F && r <= 0x9F:
		return true
	case r < 0x300:
		return r == 0xAD
	case r >= 0x200B && r <= 0x200F, r >= 0x2028 && r <= 0x202E, r >= 0x2060 && r <= 0x206F:
		return true
	case r == 0x061C, r == 0x180E, r == 0xFEFF, r >= 0xFFF9 && r <= 0xFFFB, r >= 0xE0000 && r <= 0xE0FFF:
		return true
	case r == 0x34F, r == 0x115F, r == 0x1160, r == 0x17B4, r == 0x17B5, r == 0x3164, r == 0xFFA0:
		return true // fillers that show as nothing
	case r&0xFFFE == 0xFFFE, r >= 0xFDD0 && r <= 0xFDEF:
		return true // Unicode noncharacters; XML refuses two of them
	case r == utf8.RuneError:
		return false
	}
	return unicode.Is(unicode.Cc, r)
}
