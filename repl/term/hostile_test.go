package term

import (
	"errors"
	"fmt"
	"strings"
	"testing"
	"unicode/utf8"

	"ohmcall/calc/source"
	"ohmcall/notebook/call"
)

// payloads are texts that would steer a terminal: the control functions of
// ECMA-48 (from memory) in 7-bit and 8-bit form, and what is at home in
// common terminals.
func payloads() []string {
	out := []string{
		"\x1b[2J", "\x1b[H", "\x1b[31m", "\x1b[0;1;5m", "\x1b[?1049h", "\x1b[?25l", "\x1b[6n", "\x1b[c", "\x1b[>c", "\x1b[=c",
		"\x1b[10A", "\x1b[K", "\x1b[1P", "\x1b[5i", "\x1b[4i", "\x1b[!p", "\x1b[r", "\x1b[s\x1b[u", "\x1b[20t", "\x1b[21t", "\x1b[?2004h", "\x1b[200~rm\x1b[201~",
		"\x1b]0;title\x07", "\x1b]2;title\x1b\\", "\x1b]8;;http://x\x1b\\y\x1b]8;;\x1b\\", "\x1b]52;c;QQ==\x07", "\x1b]4;1;?\x07", "\x1b]10;?\x07", "\x1b]1337;x\x07", "\x1b]777;x\x07", "\x1b]P0000000",
		"\x1bP$q\"p\x1b\\", "\x1bP+q544e\x1b\\", "\x1b_Gx\x1b\\", "\x1b^x\x1b\\", "\x1bXx\x1b\\", "\x1bc", "\x1b7\x1b8", "\x1b(0", "\x1b#8", "\x1bM", "\x1bD", "\x1bE", "\x1bZ", "\x1bN", "\x1bO", "\x1b=", "\x1b>", "\x1b",
		"\u009b31m", "\u009d0;t\u009c", "\u0090q\u009c", "\u009fx\u009c", "\u009ex\u009c", "\u0098x\u009c", "\u0084\u0085\u008d",
		"\x9b31m", "\x9d0;t\x9c", "\x90q\x9c", "\x07", "\x08\x08\x08", "\x7f", "\x00", "\r", "a\rb", "a\nb", "\x0b\x0c", "\x0e\x0f", "\x05", "\x11\x13", "\x18\x1a",
		"\u202etxt", "\u2066a\u2069", "\u200b", "\u2028", "\ufeff", "\u0085",
	}
	for c := byte(0x80); c < 0xA0; c++ {
		out = append(out, string([]byte{c}), string(rune(c)))
	}
	return out
}

// raw finds a control byte or a C1 control that left as it came.
func raw(out string) (rune, bool) {
	for i := 0; i < len(out); i++ {
		if c := out[i]; c < 0x20 && c != '\n' || c == 0x7f {
			return rune(c), true
		}
	}
	for _, r := range out {
		if r >= 0x80 && r < 0xA0 {
			return r, true
		}
	}
	return utf8.RuneError, !utf8.ValidString(out)
}

func TestHostileTextNeverReachesTheScreenRaw(t *testing.T) {
	all := payloads()
	if len(all) < 60 {
		t.Fatalf("only %d payloads", len(all))
	}
	for _, s := range all {
		ways := map[string]func(p *Printer){
			"say":   func(p *Printer) { p.Say(call.Warn, s) },
			"split": func(p *Printer) { p.Say(call.Plain, "\x1b"); p.Say(call.Plain, "[31m"+s) },
			"entry": func(p *Printer) { p.Entry(call.Entry{Reply: &call.Reply{Lines: []call.Line{{Text: "x" + s}}}}) },
			"cell": func(p *Printer) {
				p.Reply(&call.Reply{Table: &call.Table{Head: []string{s, "b"}, Rows: [][]string{{"a", s}}}})
			},
			"line":    func(p *Printer) { p.Fault("ohm "+s, source.Errorf(1, 4, "no")) },
			"message": func(p *Printer) { p.Fault("x", source.Errorf(1, 2, "no %s", s).WithHint("try %s", s)) },
			"wrapped": func(p *Printer) { p.Fault("x", fmt.Errorf("%s: %w", s, source.Errorf(1, 2, "no"))) },
			"error":   func(p *Printer) { p.Fault(s, errors.New(s)) },
			"trouble": func(p *Printer) { p.Trouble(s) },
			"list":    func(p *Printer) { p.List([]string{s, "a"}) },
			"copy":    func(p *Printer) { p.Verbatim(s) },
		}
		for way, show := range ways {
			for _, w := range []int{0, 20, 80} {
				out := shown(Printer{Width: w}, show)
				if r, bad := raw(out); bad {
					t.Errorf("%s of %q lets %U through: %q", way, s, r, out)
				}
			}
		}
	}
}

// TestRawIsSeen is the control: text that is not cleaned is found.
func TestRawIsSeen(t *testing.T) {
	for _, s := range []string{"\x1b[2J", "\u009b31m", "\x9b31m", "\x07", "\x08", "\x7f", "\r"} {
		if _, bad := raw(s); !bad {
			t.Errorf("%q passes", s)
		}
	}
}

func TestKeysNeverDrawControls(t *testing.T) {
	for _, s := range payloads() {
		for _, c := range visible([]byte(s)) {
			if c < 0x20 && !strings.ContainsRune(editorKeys, rune(c)) {
				t.Errorf("%q lets %#x through", s, c)
			}
		}
		for _, r := range string(visible([]byte(s))) {
			if r >= 0x80 && r < 0xA0 {
				t.Errorf("%q lets %U through", s, r)
			}
		}
	}
}
