package fleet

import (
	"bufio"
	"bytes"
	"io"
)

// stream writes all tables to one writer as JSON Lines.
type stream struct {
	w   *bufio.Writer
	buf bytes.Buffer
	enc map[*Table]*encoder
}

// Stream is a sink that writes JSON Lines to w, each an object with the
// fields `table` and `row`. What is written cannot be taken back.
func Stream(w io.Writer) Sink { return &stream{w: bufio.NewWriter(w), enc: map[*Table]*encoder{}} }

func (s *stream) Begin(tables []*Table) error {
	for _, t := range tables {
		s.enc[t] = newEncoder(JSONL, t, -1)
	}
	return nil
}

func (s *stream) Row(t *Table, _ string, values []any) error {
	s.buf.Reset()
	s.buf.WriteString(`{"table":"` + t.Name + `","row":`)
	if err := s.enc[t].row(&s.buf, values); err != nil {
		return err
	}
	s.buf.Truncate(s.buf.Len() - 1)
	s.buf.WriteString("}\n")
	_, err := s.w.Write(s.buf.Bytes())
	return err
}

func (s *stream) Commit() error { return s.w.Flush() }

func (s *stream) Abort() {}
