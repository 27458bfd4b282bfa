package term

import (
	"io"
	"sync"
)

// input reads a stream on demand, chunk by chunk, and can be stopped while a
// read is under way.
type input struct {
	r    io.Reader
	want chan struct{}
	got  chan chunk
	once sync.Once
	quit chan struct{}

	mu    sync.Mutex
	rest  []byte // of the last chunk, not yet handed out
	ended bool
}

type chunk struct {
	b   []byte
	err error
}

func newInput(r io.Reader) *input {
	in := &input{r: r, want: make(chan struct{}), got: make(chan chunk, 1), quit: make(chan struct{})}
	go in.loop()
	return in
}

func (in *input) loop() {
	for {
		select {
		case <-in.want:
		case <-in.quit:
			return
		}
		b := make([]byte, 4096)
		n, err := in.r.Read(b)
		in.got <- chunk{b[:n], err}
		if err != nil && n == 0 {
			return
		}
	}
}

func (in *input) stop() { in.once.Do(func() { close(in.quit) }) }

func (in *input) stopped() bool {
	select {
	case <-in.quit:
		return true
	default:
		return false
	}
}

// over reports whether the stream came to its end, or was stopped.
func (in *input) over() bool {
	in.mu.Lock()
	defer in.mu.Unlock()
	return in.ended
}

// fetch waits for the next chunk.
func (in *input) fetch() ([]byte, error) {
	if in.stopped() || in.over() {
		return nil, in.end()
	}
	select {
	case in.want <- struct{}{}:
	case <-in.quit:
		return nil, in.end()
	}
	select {
	case c := <-in.got:
		if len(c.b) > 0 {
			return c.b, nil
		}
		return nil, in.end()
	case <-in.quit:
		return nil, in.end()
	}
}

func (in *input) end() error {
	in.mu.Lock()
	in.ended = true
	in.mu.Unlock()
	return io.EOF
}

// Read implements io.Reader for the plain reader.
func (in *input) Read(p []byte) (int, error) {
	if len(in.rest) == 0 {
		b, err := in.fetch()
		if err != nil {
			return 0, err
		}
		in.rest = b
	}
	n := copy(p, in.rest)
	in.rest = in.rest[n:]
	return n, nil
}
