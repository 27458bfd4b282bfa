package fleet

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
)

// keepBuffer is the largest file, in bytes, whose buffer is kept for the
// next one.
const keepBuffer = 1 << 20

// source is an open file.
type source interface {
	io.ReadCloser
	Stat() (fs.FileInfo, error)
}

type opener func(path string) (source, error)

func openFile(path string) (source, error) {
	f, err := os.OpenFile(path, openFlags, 0)
	if err != nil {
		return nil, err
	}
	return f, nil
}

// read reads a regular file of up to limit bytes into the worker's buffer.
func (w *worker) read(path string, limit int) ([]byte, error) {
	f, err := w.open(path)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	info, err := f.Stat()
	if err != nil {
		return nil, err
	}
	size := info.Size()
	switch {
	case !info.Mode().IsRegular():
		return nil, errors.New("not a regular file")
	case size > int64(limit):
		return nil, fmt.Errorf("larger than the %d MB that are read", limit>>20)
	}
	if size > keepBuffer {
		w.large.Lock()
		w.holds, w.own, w.buf = true, w.buf, w.large.buf
	}
	// One byte more, so that a file that has not grown ends in one read.
	want := int(size) + 1
	if cap(w.buf) < want {
		w.buf = make([]byte, 0, want+min(want/4, 64<<10))
	}
	buf := w.buf[:0]
	for {
		n, err := f.Read(buf[len(buf):cap(buf)])
		buf = buf[:len(buf)+n]
		switch {
		case err == io.EOF:
			w.buf = buf
			return buf, nil
		case err != nil:
			return nil, err
		case len(buf) > limit:
			return nil, fmt.Errorf("larger than the %d MB that are read", limit>>20)
		case len(buf) == cap(buf):
			buf = append(buf, 0)[:len(buf)]
		}
		// A file that has not grown is at its end now; asking again would
		// cost a system call for each of many thousand files.
		if int64(len(buf)) == size {
			w.buf = buf
			return buf, nil
		}
	}
}

// release lets go of a large file.
func (w *worker) release() {
	if w.holds {
		w.large.buf, w.buf, w.holds = w.buf, w.own, false
		w.large.Unlock()
	}
}
