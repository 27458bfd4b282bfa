//go:build linux

package reliability

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"syscall"
	"testing"
	"time"

	"golang.org/x/sys/unix"

	"ohmcall/notebook"
	"ohmcall/notebook/journal"
)

// helperVar chooses what the test binary does when it is started as a child.
const helperVar = "RELIABILITY_HELPER"

// program is the real ohmcall, built once.
var program string

func TestMain(m *testing.M) {
	if mode := os.Getenv(helperVar); mode != "" {
		os.Exit(helper(mode, os.Args[1:]))
	}
	os.Exit(run(m))
}

func run(m *testing.M) int {
	if program = os.Getenv(programVar); program != "" {
		return m.Run() // a broken build, started by its parent
	}
	dir, err := os.MkdirTemp("", "reliability")
	if err == nil {
		defer os.RemoveAll(dir)
		err = os.Chmod(dir, 0o755) // another user runs it too
	}
	if err == nil {
		built = dir
		program = filepath.Join(dir, "ohmcall")
		err = command("go", "build", "-o", program, "ohmcall/cmd/ohmcall")
	}
	if err != nil {
		fmt.Fprintln(os.Stderr, err)
		return 1
	}
	return m.Run()
}

// keeper is a command that reads lines and keeps them in the file.
func keeper(file string) *exec.Cmd {
	return exec.Command(program, "run", "-", "-o", file, "--json")
}

func helperCommand(mode string, args ...string) *exec.Cmd {
	self, err := os.Executable()
	if err != nil {
		self = os.Args[0]
	}
	c := exec.Command(self, args...)
	c.Env = append(os.Environ(), helperVar+"="+mode)
	return c
}

func helper(mode string, args []string) int {
	switch mode {
	case "full":
		return fullChild(args[0])
	case "digest":
		return digestChild(args[0])
	case "measure":
		return measureChild(args)
	case "limit":
		return limitChild(args)
	}
	return 2
}

// ack is the reply to a line, as far as the parent needs it.
type ack struct {
	N    int    `json:"n"`
	Line string `json:"line"`
	OK   bool   `json:"ok"`
}

// acks reads the replies given in an output; a torn last one was not given.
func acks(out []byte) []ack {
	var list []ack
	for _, line := range bytes.SplitAfter(out, []byte("\n")) {
		var a ack
		if bytes.HasSuffix(line, []byte("\n")) && json.Unmarshal(line, &a) == nil && a.OK {
			list = append(list, a)
		}
	}
	return list
}

// stored lists the lines of a file's entries after opening it as the program
// would.
func stored(name string) ([]string, error) {
	if !notebook.Exists(name) {
		return nil, nil // the first entry makes the file
	}
	n, err := notebook.Open(notebook.Host{FS: journal.Disk{}, Now: time.Now}, name)
	if err != nil {
		return nil, err
	}
	var lines []string
	for _, e := range n.Call().Entries() {
		lines = append(lines, e.Line)
	}
	return lines, n.Close()
}

// holds compares what a file holds with what was acknowledged and with what
// was typed: all of the first, nothing that is not of the second, in order,
// each once.
func holds(acked, typed, have []string) error {
	if len(have) < len(acked) {
		return fmt.Errorf("%d entries acknowledged, %d in the file", len(acked), len(have))
	}
	if len(have) > len(typed) {
		return fmt.Errorf("%d lines typed, %d in the file", len(typed), len(have))
	}
	for i, l := range have {
		if l != typed[i] {
			return fmt.Errorf("entry %d is %q, typed was %q", i+1, l, typed[i])
		}
	}
	for i, l := range acked {
		if l != have[i] {
			return fmt.Errorf("entry %d was acknowledged as %q, the file has %q", i+1, l, have[i])
		}
	}
	return nil
}

// lines are what is typed in the tests of durability: readings and notes, each
// of its own.
func lines(n int) []string {
	out := make([]string, n)
	for i := range out {
		switch i % 4 {
		case 0:
			out[i] = fmt.Sprintf("ohm A B %d.%02d", 3+i/400, i%400/4)
		case 1:
			out[i] = fmt.Sprintf("note line %d, the cabinet hums", i)
		case 2:
			out[i] = fmt.Sprintf("volt line %d.%d", 110+i%9, i%10)
		default:
			out[i] = fmt.Sprintf("note %d %s", i, strings.Repeat("long ", i%40))
		}
		out[i] = strings.TrimRight(out[i], " ")
	}
	return out
}

// measured is what running a command cost.
type measured struct {
	Seconds float64
	MB      int
	Code    int
	Out     string
}

// measure runs a command in a child of a small process, so that the memory
// counted is its own, and ends it after ten seconds.
func measure(w *watch, argv ...string) measured { return measureIn(w, "", argv...) }

// measureIn gives the command a file to read from.
func measureIn(w *watch, input string, argv ...string) measured {
	c := helperCommand("measure", argv...)
	c.Env = append(c.Env, "RELIABILITY_INPUT="+input)
	out, err := c.Output()
	var m measured
	if err == nil {
		err = json.Unmarshal(out, &m)
	}
	w.must(err)
	return m
}

func measureChild(argv []string) int {
	var out limited
	c := exec.Command(argv[0], argv[1:]...)
	c.Stdout, c.Stderr = &out, &out
	if in := os.Getenv("RELIABILITY_INPUT"); in != "" {
		f, err := os.Open(in)
		if err != nil {
			return 1
		}
		defer f.Close()
		c.Stdin = f
	}
	// What reads without end must not take the whole machine's memory with it.
	if err := unix.Setrlimit(unix.RLIMIT_AS, &unix.Rlimit{Cur: 2 << 30, Max: 2 << 30}); err != nil {
		return 1
	}
	// What works without end is stopped by the processors' time, what waits
	// without end by the clock, which a busy machine stretches.
	if err := unix.Setrlimit(unix.RLIMIT_CPU, &unix.Rlimit{Cur: 10, Max: 10}); err != nil {
		return 1
	}
	start := time.Now()
	if err := c.Start(); err != nil {
		return 1
	}
	stop := time.AfterFunc(30*time.Second, func() { c.Process.Kill() })
	c.Wait()
	stop.Stop()
	usage := c.ProcessState.SysUsage().(*syscall.Rusage)
	// On a machine that is busy with other things the wall clock says less
	// than the time of the processors does.
	worked := c.ProcessState.UserTime() + c.ProcessState.SystemTime()
	json.NewEncoder(os.Stdout).Encode(measured{min(time.Since(start), worked).Seconds(), int(usage.Maxrss >> 10), c.ProcessState.ExitCode(), out.b.String()})
	return 0
}

// limited keeps the beginning of an output.
type limited struct {
	mu sync.Mutex
	b  strings.Builder
}

func (l *limited) Write(p []byte) (int, error) {
	l.mu.Lock()
	defer l.mu.Unlock()
	if room := 4096 - l.b.Len(); room > 0 {
		l.b.Write(p[:min(room, len(p))])
	}
	return len(p), nil
}

// limitChild bounds the size of the files that may be written and becomes the
// command.
func limitChild(args []string) int {
	var bytes uint64
	fmt.Sscan(args[0], &bytes)
	limit := unix.Rlimit{Cur: bytes, Max: bytes}
	if err := unix.Setrlimit(unix.RLIMIT_FSIZE, &limit); err != nil {
		return 1
	}
	env := os.Environ()
	for i, v := range env {
		if strings.HasPrefix(v, helperVar+"=") {
			env[i] = helperVar + "="
		}
	}
	unix.Exec(args[1], args[1:], env)
	return 1
}
