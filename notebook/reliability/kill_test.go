//go:build linux

package reliability

import (
	"bufio"
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"math/rand/v2"
	"os/exec"
	"path/filepath"
	"sync"
	"syscall"
	"time"

	"ohmcall/notebook"
	"ohmcall/notebook/journal"
)

// session is a keeper at work, its ledger held here.
type session struct {
	cmd   *exec.Cmd
	in    io.WriteCloser
	mu    sync.Mutex
	acked []string
	done  chan struct{} // closed when all replies are read
	errs  bytes.Buffer
}

func start(w *watch, c *exec.Cmd) *session {
	s := &session{cmd: c, done: make(chan struct{})}
	var err error
	s.in, err = c.StdinPipe()
	w.must(err)
	out, err := c.StdoutPipe()
	w.must(err)
	c.Stderr = &s.errs
	w.must(c.Start())
	go func() {
		r := bufio.NewReader(out)
		for {
			line, err := r.ReadBytes('\n')
			if err != nil {
				close(s.done)
				return
			}
			var a ack
			if json.Unmarshal(line, &a) == nil && a.OK {
				s.mu.Lock()
				s.acked = append(s.acked, a.Line)
				s.mu.Unlock()
			}
		}
	}()
	return s
}

// killed waits for the end and reports whether it was the kill that made it.
func (s *session) killed() bool {
	<-s.done
	s.cmd.Wait()
	status, ok := s.cmd.ProcessState.Sys().(syscall.WaitStatus)
	return ok && status.Signaled() && status.Signal() == syscall.SIGKILL
}

// kill is T2: every session is killed at a random instant, some while they
// write entries, some while they bring the file up to date at the end.
func kill(w *watch) {
	want, wantClosing := w.due("kills"), w.due("kills while closing")
	r := rand.New(rand.NewPCG(2, 2))
	for round := 0; w.counts["kills"] < want || w.counts["kills while closing"] < wantClosing; round++ {
		if w.red() || round > 3*want {
			return
		}
		name := filepath.Join(w.dir(), "call.md")
		var before, typed []string
		for life := range 5 {
			closing := life%2 == 1
			acked, sent, dead := oneLife(w, name, r, closing, len(typed))
			typed = append(append([]string(nil), before...), sent...)
			if dead {
				w.count("kills", 1)
				if closing {
					w.count("kills while closing", 1)
				}
			}
			if !notebook.Exists(name) {
				if len(acked) > 0 {
					w.fault("the file is gone, %d entries were acknowledged", len(acked))
				}
				continue
			}
			have, err := stored(name)
			if err == nil {
				err = holds(append(append([]string(nil), before...), acked...), typed, have)
			}
			if err == nil {
				var content []byte
				if content, err = journal.Read(journal.Disk{}, name); err == nil {
					err = opensClean(content)
				}
			}
			if err != nil {
				w.fault("round %d, life %d: %v", round, life, err)
				return
			}
			before, typed = have, have
		}
	}
}

// opensClean holds a file after a kill to what may be wrong with it: nothing
// but a part above the log that is older than the log, and a torn tail.
func opensClean(content []byte) error {
	r, err := notebook.Check(content)
	if err != nil {
		return err
	}
	if len(r.Faults) > 0 {
		return fmt.Errorf("after a kill: %s", r.Faults[0])
	}
	return nil
}

func oneLife(w *watch, name string, r *rand.Rand, closing bool, from int) (acked, sent []string, dead bool) {
	s := start(w, keeper(name))
	all := lines(from + 400)[from:]
	if closing {
		all = all[:1+r.IntN(6)]
	}
	var mu sync.Mutex
	fed := make(chan struct{})
	go func() {
		defer close(fed)
		for _, l := range all {
			mu.Lock()
			sent = append(sent, l)
			mu.Unlock()
			if _, err := io.WriteString(s.in, l+"\n"); err != nil {
				return
			}
		}
		s.in.Close()
	}()
	wait := time.Duration(1+r.IntN(60_000)) * time.Microsecond
	if closing {
		// The end of the input is what it waits for; the rewrite follows.
		<-fed
		s.await(len(all))
		wait = time.Duration(r.IntN(1500)) * time.Microsecond
	} else if r.IntN(4) > 0 {
		s.await(1)
		wait /= 3
	}
	select {
	case <-time.After(wait):
	case <-s.done:
	}
	s.cmd.Process.Kill()
	dead = s.killed()
	<-fed
	return s.acked, sent, dead
}

// await waits for so many replies, or for the end.
func (s *session) await(n int) {
	for {
		s.mu.Lock()
		got := len(s.acked)
		s.mu.Unlock()
		if got >= n {
			return
		}
		select {
		case <-s.done:
			return
		case <-time.After(50 * time.Microsecond):
		}
	}
}
