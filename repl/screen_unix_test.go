//go:build unix

package repl

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"reflect"
	"strings"
	"sync"
	"syscall"
	"testing"
	"time"

	"github.com/creack/pty"
	xterm "golang.org/x/term"

	"ohmcall/notebook"
	"ohmcall/notebook/journal"
	"ohmcall/notebook/page"
)

// childFile names the notebook of a test binary that was started to be the
// program at a terminal.
const childFile = "REPL_TEST_FILE"

// childDumb makes that terminal one that can only print.
const childDumb = "REPL_TEST_DUMB"

func TestMain(m *testing.M) {
	if name := os.Getenv(childFile); name != "" {
		os.Exit(child(name))
	}
	os.Exit(m.Run())
}

func child(name string) int {
	h := notebook.Host{FS: journal.Disk{}, Now: time.Now}
	n, err := notebook.Create(h, name)
	if err != nil {
		n, err = notebook.Open(h, name)
	}
	if err != nil {
		fmt.Fprintln(os.Stderr, err)
		return 1
	}
	dumb := os.Getenv(childDumb) != ""
	code := Run(Options{Notebook: n, In: os.Stdin, Out: os.Stdout, Err: os.Stderr, Terminal: !dumb, Dumb: dumb, Where: "the file",
		Scripts: func() []string { panic("no list of scripts") },
		Width:   func() int { w, _, _ := xterm.GetSize(1); return w },
		Height:  func() int { _, h, _ := xterm.GetSize(1); return h }})
	if err := n.Close(); err != nil {
		return 1
	}
	return code
}

// patience is how long a test waits for what must come.
const patience = 20 * time.Second

// screen is a terminal with the program in it.
type screen struct {
	t    *testing.T
	file string
	tty  *os.File // its master side
	cmd  *exec.Cmd
	was  *xterm.State

	mu   sync.Mutex
	out  bytes.Buffer
	seen int
	more chan struct{}
}

func start(t *testing.T, command ...string) *screen {
	t.Helper()
	s := &screen{t: t, file: filepath.Join(t.TempDir(), "call.md"), more: make(chan struct{}, 1)}
	exe, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	if len(command) == 0 {
		command = []string{exe}
	}
	s.cmd = exec.Command(command[0], command[1:]...)
	s.cmd.Env = append(os.Environ(), "TERM=xterm", "PS1=ready-", "EXE="+exe, "FILE="+s.file)
	if command[0] == exe {
		s.cmd.Env = append(s.cmd.Env, childFile+"="+s.file)
	}
	tty, slave, err := pty.Open()
	if err != nil {
		t.Fatal(err)
	}
	if err := pty.Setsize(tty, &pty.Winsize{Rows: 24, Cols: 80}); err != nil {
		t.Fatal(err)
	}
	s.tty = tty
	if s.was, err = xterm.GetState(int(tty.Fd())); err != nil {
		t.Fatal(err)
	}
	// Asking for the descriptor made reads block, also against Close.
	if err := syscall.SetNonblock(int(tty.Fd()), true); err != nil {
		t.Fatal(err)
	}
	s.cmd.Stdin, s.cmd.Stdout, s.cmd.Stderr = slave, slave, slave
	s.cmd.SysProcAttr = &syscall.SysProcAttr{Setsid: true, Setctty: true}
	if err := s.cmd.Start(); err != nil {
		t.Fatal(err)
	}
	slave.Close()
	t.Cleanup(func() {
		s.cmd.Process.Kill()
		tty.Close()
	})
	go s.listen()
	return s
}

func (s *screen) listen() {
	b := make([]byte, 4096)
	for {
		n, err := s.tty.Read(b)
		s.mu.Lock()
		s.out.Write(b[:n])
		s.mu.Unlock()
		select {
		case s.more <- struct{}{}:
		default:
		}
		if err != nil {
			return
		}
	}
}

// expect waits for text that was not seen before.
func (s *screen) expect(text string) {
	s.t.Helper()
	end := time.After(patience)
	for {
		s.mu.Lock()
		rest := s.out.String()[s.seen:]
		i := strings.Index(rest, text)
		if i >= 0 {
			s.seen += i + len(text)
		}
		s.mu.Unlock()
		if i >= 0 {
			return
		}
		select {
		case <-s.more:
		case <-end:
			s.t.Fatalf("%q does not come; the screen has %q", text, rest)
		}
	}
}

// drawn is all that came on the screen.
func (s *screen) drawn() string {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.out.String()
}

func (s *screen) send(keys string) {
	s.t.Helper()
	if _, err := s.tty.WriteString(keys); err != nil {
		s.t.Fatal(err)
	}
}

// ended waits for the program's end.
func (s *screen) ended() error {
	s.t.Helper()
	done := make(chan error, 1)
	go func() { done <- s.cmd.Wait() }()
	select {
	case err := <-done:
		return err
	case <-time.After(patience):
		s.t.Fatal("the program does not end")
		return nil
	}
}

// sane holds that the terminal is as it was found.
func (s *screen) sane() {
	s.t.Helper()
	now, err := xterm.GetState(int(s.tty.Fd()))
	if err != nil {
		s.t.Fatal(err)
	}
	if !reflect.DeepEqual(now, s.was) {
		s.t.Error("the terminal is not set back")
	}
}

// lines are those of the record.
func (s *screen) lines() []string {
	s.t.Helper()
	b, err := os.ReadFile(s.file)
	if err != nil {
		s.t.Fatal(err)
	}
	f, err := page.Read(b)
	if err != nil {
		s.t.Fatal(err)
	}
	var out []string
	for _, e := range f.Entries {
		out = append(out, e.Line)
	}
	return out
}

func (s *screen) holds(want ...string) {
	s.t.Helper()
	if got := s.lines(); strings.Join(got, "\n") != strings.Join(want, "\n") {
		s.t.Errorf("the record holds %q, want %q", got, want)
	}
}
