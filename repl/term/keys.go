package term

import (
	"bytes"
	"strings"
	"unicode/utf8"
)

// keys is what a terminal sends, made fit for the line editor. The editor
// takes every byte for a keystroke; here what was pasted is told from what
// was typed, since what was pasted comes in one piece:
//
//   - A tab inside a piece is a space, not a request to complete; but where
//     keys come late and together, a tab with a value behind it is a request.
//   - Whole lines at the front of what was pasted are taken as they are,
//     without being drawn character by character.
//   - Control characters that are no keys of the editor become a visible
//     mark, so that none is ever drawn; NUL, which it would take for the end,
//     is dropped.
//   - Ctrl-Z suspends.
//   - Home and End are what the editor knows as these, however a terminal sends them.
type keys struct {
	*input
	suspend func()
	lastCR  bool
	escape  byte // of a key's sequence so far: ESC, [, or its digit; 0 outside of one
}

const ctrlZ = 0x1A

// editorKeys are the control characters that the editor obeys.
const editorKeys = "\x01\x02\x03\x04\x05\x06\x07\x08\t\n\x0B\x0C\r\x0E\x10\x12\x13\x14\x15\x17\x19\x1B\x7F"

// Read hands out at most one line, so that what was pasted behind it is left
// for takeLine.
func (k *keys) Read(p []byte) (int, error) {
	k.mu.Lock()
	have := len(k.rest) > 0
	k.mu.Unlock()
	for !have {
		b, err := k.fetch()
		if err != nil {
			return 0, err
		}
		if len(b) == 1 && b[0] == ctrlZ {
			k.suspend()
			continue
		}
		k.mu.Lock()
		k.rest = k.oneEnd(k.homeAndEnd(spaced(b)))
		have = len(k.rest) > 0
		k.mu.Unlock()
	}
	k.mu.Lock()
	defer k.mu.Unlock()
	n := len(k.rest)
	if i := bytes.IndexByte(k.rest, '\n'); i >= 0 {
		n = i + 1
	}
	// A mark is longer than what it stands for.
	n = min(n, max(len(p)/3, 1))
	piece := visible(k.rest[:n])
	k.rest = k.rest[n:]
	return copy(p, piece), nil
}

// takeLine takes a whole line that was pasted, if one is there.
func (k *keys) takeLine() (string, bool) {
	k.mu.Lock()
	defer k.mu.Unlock()
	i := bytes.IndexByte(k.rest, '\n')
	if i < 0 || bytes.ContainsAny(k.rest[:i], "\t\x1B") {
		return "", false
	}
	line := string(k.rest[:i])
	k.rest = k.rest[i+1:]
	return line, true
}

// waiting reports whether something was read and not handed out.
func (k *keys) waiting() bool {
	k.mu.Lock()
	defer k.mu.Unlock()
	return len(k.rest) > 0
}

// oneEnd turns CR and CR LF into LF.
func (k *keys) oneEnd(b []byte) []byte {
	out := b[:0]
	for _, c := range b {
		after := k.lastCR
		k.lastCR = c == '\r'
		switch {
		case c == '\r':
			out = append(out, '\n')
		case c == '\n' && after:
		default:
			out = append(out, c)
		}
	}
	return out
}

// homeAndEnd writes the keys that the console, tmux (ESC [ 1 ~, ESC [ 4 ~) and others
// (7 and 8) send, which the editor drops, as ESC [ 1 H and ESC [ 4 F, which it obeys. A
// sequence may come in pieces.
func (k *keys) homeAndEnd(b []byte) []byte {
	for i, c := range b {
		was := k.escape
		k.escape = 0
		switch {
		case c == 0x1B, c == '[' && was == 0x1B, was == '[' && strings.IndexByte("1478", c) >= 0:
			k.escape = c
		case c == '~' && (was == '1' || was == '7'):
			b[i] = 'H'
		case c == '~' && (was == '4' || was == '8'):
			b[i] = 'F'
		}
	}
	return b
}

// spaced turns the tabs of what was pasted into spaces. A tab typed is the
// last of what came, and little came with it.
func spaced(b []byte) []byte {
	const typed = 64
	last := len(bytes.TrimRight(b, "\t"))
	if len(b) >= typed {
		last = len(b)
	}
	for i := range b[:last] {
		value := len(b) < typed && i+1 < last && strings.IndexByte("0123456789.~O", b[i+1]) >= 0
		if b[i] == '\t' && !(value && bytes.Count(b, []byte("\t")) == 1) {
			b[i] = ' '
		}
	}
	return b
}

// visible marks control characters that are no keys.
func visible(b []byte) []byte {
	out := make([]byte, 0, len(b))
	for i := 0; i < len(b); i++ {
		c := b[i]
		switch {
		case c == 0:
		case c < 0x20 && bytes.IndexByte([]byte(editorKeys), c) < 0:
			out = utf8.AppendRune(out, utf8.RuneError)
		case c == 0xC2 && i+1 < len(b) && b[i+1] >= 0x80 && b[i+1] <= 0x9F:
			out = utf8.AppendRune(out, utf8.RuneError)
			i++
		default:
			out = append(out, c)
		}
	}
	return out
}
