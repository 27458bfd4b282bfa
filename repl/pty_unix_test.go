//go:build unix

package repl

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"reflect"
	"regexp"
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
	code := Run(Options{Notebook: n, In: os.Stdin, Out: os.Stdout, Err: os.Stderr, Terminal: true, Where: "the file",
		Width: func() int { w, _, _ := xterm.GetSize(1); return w }})
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

func TestTyping(t *testing.T) {
	s := start(t)
	s.expect("A new call, kept in the file")
	s.expect(prompt)
	s.send("ohm A B 3.45\r")
	s.expect("A–B 3.45 Ω")
	s.send("C 6.5\r")
	s.expect("A–C 6.5 Ω")
	s.send("\x04")
	s.expect("The call stays open in the file.")
	if err := s.ended(); err != nil {
		t.Error(err)
	}
	s.sane()
	s.holds("ohm A B 3.45", "ohm A C 6.5")
}

func TestTabFillsInWhatIsWanted(t *testing.T) {
	s := start(t)
	s.expect(prompt)
	s.send("ohm A B 3.45\r")
	s.expect("A–B 3.45 Ω")
	s.send("C 6.5\r")
	s.expect("Wanted next: B–C")
	s.send("\t")
	s.expect("ohm B C ")
	s.send("3.1\r")
	s.expect("B–C 3.1 Ω")
	s.send("strike ")
	s.expect("strike ")
	s.send("\t")
	s.expect("2  ohm A C 6.5")
	s.send("2 slip\r")
	s.expect("Struck entry 2")
	s.send("close\r")
	s.expect("The record is in the file.")
	if err := s.ended(); err != nil {
		t.Error(err)
	}
	s.holds("ohm A B 3.45", "ohm A C 6.5", "ohm B C 3.1", "strike 2 slip", "close")
}

func TestCtrlCCancelsTheLine(t *testing.T) {
	s := start(t)
	s.expect(prompt)
	s.send("ohm A B 9")
	s.expect("A B 9")
	s.send("\x03")
	s.expect("(cancelled)")
	s.send("note all the same\r")
	s.expect("Noted.")
	s.send("\x04")
	if err := s.ended(); err != nil {
		t.Error(err)
	}
	s.sane()
	s.holds("note all the same")
}

func TestRefusedLineIsOneKeyAway(t *testing.T) {
	s := start(t)
	s.expect(prompt)
	s.send("ohm A B 3.4x5\r")
	s.expect("not taken")
	s.send("\x1b[A")
	s.expect("ohm A B 3.4x5")
	s.send("\x7f\x7f\r")
	s.expect("A–B 3.4 Ω")
	s.send("\x04")
	s.ended()
	s.holds("ohm A B 3.4")
}

func TestPastedScriptLosesNothing(t *testing.T) {
	for _, end := range []string{"\r", "\n", "\r\n"} {
		s := start(t)
		s.expect(prompt)
		var want []string
		var script strings.Builder
		for i := 1; i <= 500; i++ {
			line := fmt.Sprintf("note line %d of a long paste, Ω and 日本 in it", i)
			want = append(want, line)
			script.WriteString(line + end)
		}
		s.send(script.String())
		for range want {
			s.expect("Noted.")
		}
		s.send("\x04")
		if err := s.ended(); err != nil {
			t.Error(err)
		}
		s.sane()
		s.holds(want...)
	}
}

func TestPastedTabsDoNoHarm(t *testing.T) {
	s := start(t)
	s.expect(prompt)
	s.send("\tohm\tA\tB\t3.45\r\t\tnote\tx\tend\r")
	s.expect("A–B 3.45 Ω")
	s.expect("Noted.")
	s.send("\x04")
	s.ended()
	s.holds(" ohm A B 3.45", "  note x end")
}

func TestPastedProseLeavesTheRecordClean(t *testing.T) {
	s := start(t)
	s.expect(prompt)
	s.send("Dear customer,\rwe came on Monday and found\rthe unit warm.\rnote this stays\rkind regards\r")
	s.expect("Noted.")
	s.expect("not taken")
	s.send("\x04")
	s.ended()
	s.holds("note this stays")
}

func TestLinesBehindAPastedCloseStayInTheCall(t *testing.T) {
	s := start(t)
	s.expect(prompt)
	s.send("note one\rclose\rnote two\r")
	s.expect("Noted.")
	s.expect("Noted.")
	s.send("\x04")
	s.ended()
	s.holds("note one", "close", "note two")
}

func TestResize(t *testing.T) {
	s := start(t)
	s.expect(prompt)
	s.send("note before")
	s.expect("note before")
	if err := pty.Setsize(s.tty, &pty.Winsize{Rows: 20, Cols: 40}); err != nil {
		t.Fatal(err)
	}
	s.send(" and after, with a line that is longer than the new screen\r")
	s.expect("Noted.")
	s.send("ohm A B 3.4\r")
	s.expect("lock\r\n  it out and prove it")
	s.send("\x04")
	s.ended()
	s.sane()
	s.holds("note before and after, with a line that is longer than the new screen", "ohm A B 3.4")
}

func TestHangUpKeepsWhatWasAcknowledged(t *testing.T) {
	s := start(t)
	s.expect(prompt)
	s.send("ohm A B 3.45\r")
	s.expect("A–B 3.45 Ω")
	s.send("ohm A C 6")
	s.expect("A C 6")
	s.tty.Close()
	s.ended()
	s.holds("ohm A B 3.45")
	b, _ := os.ReadFile(s.file)
	if r, err := notebook.Check(b); err != nil || len(r.Faults) > 0 || r.Behind {
		t.Errorf("the file is not up to date: %v %+v", err, r)
	}
}

func TestTermination(t *testing.T) {
	for _, sig := range []syscall.Signal{syscall.SIGTERM, syscall.SIGHUP, syscall.SIGINT} {
		s := start(t)
		s.expect(prompt)
		s.send("ohm A B 3.45\r")
		s.expect("A–B 3.45 Ω")
		s.send("ohm A C 6")
		s.expect("A C 6")
		s.cmd.Process.Signal(sig)
		s.expect("not finished")
		if err := s.ended(); err != nil {
			t.Errorf("%v: %v", sig, err)
		}
		s.sane()
		s.holds("ohm A B 3.45")
	}
}

func TestSuspendAndGoOn(t *testing.T) {
	s := start(t, "/bin/sh", "-i")
	s.expect("ready-")
	s.send(childFile + "=$FILE $EXE\n")
	s.expect(prompt)
	s.send("ohm A B")
	s.expect("ohm A B")
	s.send("\x1a")
	s.expect("ready-")
	s.send("stty -a | grep -c -e '-icanon'\n")
	s.expect("\n0\r\n")
	s.send("fg\n")
	s.expect("call: ohm A B")
	s.send(" 3.45\r")
	s.expect("A–B 3.45 Ω")
	s.send("\x04")
	s.expect("stays open")
	s.expect("ready-")
	s.send("exit\n")
	s.ended()
	s.holds("ohm A B 3.45")
}

// ours are the control sequences that the line editor draws with; besides
// them it steps back over a space at the end of what it drew.
var ours = regexp.MustCompile("\x1b\\[[0-9;]*[ABCDHJKm]")

func TestHostileKeysAreNotDrawn(t *testing.T) {
	s := start(t)
	s.expect(prompt)
	s.send("note \x00a\u009b31m\x1b]0;title\x07b\x11\x1ec\u0090d\r")
	s.expect("Noted.")
	s.send("note x\rnote \x1b[31mred\u009b2J\x07\x08\x7f\u202e\rnote y\r")
	s.expect("Noted.")
	s.expect("Noted.")
	s.expect("Noted.")
	s.send("show log\r")
	s.expect("note y")
	s.send("strike \t")
	s.expect("note y")
	s.send("\x03\x04")
	s.ended()
	out := strings.ReplaceAll(ours.ReplaceAllString(s.out.String(), ""), " \b", "")
	for _, r := range out {
		if r < 0x20 && r != '\n' && r != '\r' && r != '\t' || r >= 0x7f && r < 0xA0 || r == 0x202e {
			t.Fatalf("%U is on the screen: %q", r, out)
		}
	}
	for _, l := range s.lines() {
		if strings.ContainsFunc(l, func(r rune) bool { return r < 0x20 || r >= 0x7f && r < 0xA0 }) {
			t.Errorf("the record holds %q", l)
		}
	}
}
