package main

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"strings"

	"ohmcall/notebook/script"
)

// readLines cuts a stream into lines. A line over the limit is refused
// without holding more of it than the limit; what follows it is read on.
func readLines(r io.Reader) lineSource {
	b := bufio.NewReaderSize(r, script.MaxLine)
	first := true
	return func() (string, error) {
		part, err := b.ReadSlice('\n')
		if errors.Is(err, bufio.ErrBufferFull) {
			n := len(part)
			for errors.Is(err, bufio.ErrBufferFull) {
				part, err = b.ReadSlice('\n')
				n += len(part)
			}
			return "", fmt.Errorf("a line of %d bytes is longer than the %d that are taken", n, script.MaxLine)
		}
		if err != nil && len(part) == 0 {
			return "", err
		}
		line := strings.TrimRight(string(part), "\r\n")
		if first {
			line = strings.TrimPrefix(line, "\uFEFF")
			first = false
		}
		return line, nil
	}
}
