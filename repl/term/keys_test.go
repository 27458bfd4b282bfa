package term

import (
	"io"
	"strings"
	"testing"
)

// pieces hands out one piece at each read.
type pieces []string

func (p *pieces) Read(b []byte) (int, error) {
	if len(*p) == 0 {
		return 0, io.EOF
	}
	n := copy(b, (*p)[0])
	*p = (*p)[1:]
	return n, nil
}

func TestHomeAndEnd(t *testing.T) {
	for typed, want := range map[string]string{
		"abc\x1b[1~X":           "abc\x1b[1HX",
		"abc\x1b[7~X":           "abc\x1b[7HX",
		"\x1b[4~X\x1b[8~":       "\x1b[4FX\x1b[8F",
		"a\x1b|[1~X":            "a\x1b[1HX",
		"a\x1b[|4|~X":           "a\x1b[4FX",
		"\x1b[3~":               "\x1b[3~",
		"\x1b[1;5D":             "\x1b[1;5D",
		"\x1b[H\x1b[F\x1bOH":    "\x1b[H\x1b[F\x1bOH",
		"[1~ 1~ ~6.5":           "[1~ 1~ ~6.5",
		"ohm A B ~1\x1b[15~ ~4": "ohm A B ~1\x1b[15~ ~4",
	} {
		in := pieces(strings.Split(typed, "|"))
		k := &keys{input: newInput(&in)}
		got, err := io.ReadAll(k)
		k.stop()
		if string(got) != want || err != nil {
			t.Errorf("%q is %q, %v; want %q", typed, got, err, want)
		}
	}
}
