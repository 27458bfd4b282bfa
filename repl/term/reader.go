package term

import (
	"bufio"
	"bytes"
	"errors"
	"fmt"
	"io"
	"regexp"
	"sync"

	"ohmcall/notebook/script"
)

// LineReader gives line after line.
type LineReader interface {
	// ReadLine returns the next line without its end. Besides io.EOF it can
	// fail with ErrCancelled, ErrCut or a *TooLongError; after any of these
	// but io.EOF the next line can be read.
	ReadLine() (string, error)
	// Pending reports whether more input has come already.
	Pending() bool
	// Stop makes the ReadLine under way, and every later one, end; it may be
	// called from another goroutine.
	Stop()
	// Close leaves the terminal as it was found.
	Close() error
}

// ErrCancelled is returned when the line being typed was given up.
var ErrCancelled = errors.New("cancelled")

// ErrCut is returned when the input ended in the middle of a line: what there
// is of it was never sent off.
var ErrCut = errors.New("the input ended in the middle of a line")

// TooLongError is a line longer than a line may be; it was passed over.
type TooLongError struct{ Bytes int }

func (e *TooLongError) Error() string {
	return fmt.Sprintf("a line of %d bytes is longer than the %d that are taken", e.Bytes, script.MaxLine)
}

// plain reads lines from a stream that no line editor serves.
type plain struct {
	in     *input
	buf    *bufio.Reader
	prompt func()
	keys   bool // a person types, and keys that no editor serves send sequences
	first  bool
}

// NewPlain reads lines from a pipe, a file, or a terminal that can do nothing
// but print: then prompt is written before each line. All bytes of a line are
// kept, whatever they are; an end of line is LF or CR LF. From a terminal the
// sequences of arrow keys and the like are dropped.
func NewPlain(r io.Reader, w io.Writer, prompt string) LineReader {
	p := &plain{in: newInput(r), first: true, prompt: func() {}}
	if prompt != "" {
		p.prompt = func() { io.WriteString(w, prompt) }
		p.keys = true
	}
	p.buf = bufio.NewReaderSize(p.in, script.MaxLine+2)
	return p
}

func (p *plain) ReadLine() (string, error) {
	p.prompt()
	part, err := p.buf.ReadSlice('\n')
	n := len(part)
	for errors.Is(err, bufio.ErrBufferFull) {
		part, err = p.buf.ReadSlice('\n')
		n += len(part)
	}
	switch {
	case err != nil && p.in.stopped() && n > 0:
		return "", ErrCut
	case err != nil && n == 0:
		return "", io.EOF
	}
	line := bytes.TrimSuffix(bytes.TrimSuffix(part, []byte("\n")), []byte("\r"))
	if n > len(part) || len(line) > script.MaxLine {
		return "", &TooLongError{n}
	}
	if p.first {
		line = bytes.TrimPrefix(line, []byte("\uFEFF"))
		p.first = false
	}
	if p.keys {
		line = keySequences().ReplaceAll(line, nil)
	}
	return string(line), nil
}

// keySequences are what keys that are no characters send (ECMA-48 5.4 and 5.5,
// from memory).
var keySequences = sync.OnceValue(func() *regexp.Regexp {
	return regexp.MustCompile("\x1b(?:\\[[0-?]*[ -/]*[@-~]|O[ -~])?")
})

func (p *plain) Pending() bool { return p.buf.Buffered() > 0 }
func (p *plain) Stop()         { p.in.stop() }
func (p *plain) Close() error  { return nil }
