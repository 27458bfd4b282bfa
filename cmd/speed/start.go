package main

import (
	"bytes"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"time"

	"github.com/creack/pty"
)

const helloSource = `package main

import "fmt"

func main() { fmt.Println("a line") }
`

func build(dir, bin, hello string) error {
	src := filepath.Join(dir, "hello.go")
	if err := os.WriteFile(src, []byte(helloSource), 0o600); err != nil {
		return err
	}
	for _, b := range [][2]string{{hello, src}, {bin, "ohmcall/cmd/ohmcall"}} {
		c := exec.Command(".ci/build", b[0], b[1])
		if out, err := c.CombinedOutput(); err != nil {
			return fmt.Errorf("%w: %s", err, out)
		}
	}
	return nil
}

const starts = 40

// start compares the time to the first prompt with that of a program that
// only prints a line, both under a pseudo-terminal, taken in turns.
func start(dir, bin, hello string) ([]figure, error) {
	home := filepath.Join(dir, "start")
	if err := os.Mkdir(home, 0o700); err != nil {
		return nil, err
	}
	var ours, theirs, cpu []float64
	memory := 0.0
	for range starts {
		t, _, err := until(exec.Command(hello), "a line", "")
		if err != nil {
			return nil, err
		}
		theirs = append(theirs, t)
		c := exec.Command(bin, "--dir", home)
		t, state, err := until(c, "call: ", "\x04")
		if err != nil {
			return nil, err
		}
		ours = append(ours, t)
		cpu = append(cpu, float64((state.UserTime()+state.SystemTime()).Microseconds())/1000)
		memory = max(memory, resident(state))
	}
	info, err := os.Stat(bin)
	if err != nil {
		return nil, err
	}
	return []figure{
		atMost("start to first prompt, against a program that prints a line", 1.5, median(ours)/median(theirs), " times"),
		atMost("processor time of a start and an end", 12, median(cpu), " ms"),
		atMost("resident memory of a start", 30, memory, " MB"),
		atMost("static binary", 15, float64(info.Size())/(1<<20), " MiB"),
	}, nil
}

// until runs a program under a pseudo-terminal and gives the milliseconds
// until it shows a text; then it sends the ending and waits.
func until(c *exec.Cmd, text, ending string) (float64, *os.ProcessState, error) {
	began := time.Now()
	f, err := pty.StartWithSize(c, &pty.Winsize{Rows: 24, Cols: 80})
	if err != nil {
		return 0, nil, err
	}
	defer f.Close()
	var seen bytes.Buffer
	buf := make([]byte, 4096)
	var took float64
	for took == 0 {
		n, err := f.Read(buf)
		seen.Write(buf[:n])
		if bytes.Contains(seen.Bytes(), []byte(text)) {
			took = float64(time.Since(began).Microseconds()) / 1000
		} else if err != nil {
			return 0, nil, fmt.Errorf("%s ended without %q: %q", c.Path, text, seen.String())
		}
	}
	if ending != "" {
		if _, err := f.WriteString(ending); err != nil {
			return 0, nil, err
		}
	}
	io.Copy(io.Discard, f)
	err = c.Wait()
	return took, c.ProcessState, err
}

func median(xs []float64) float64 {
	s := slices.Clone(xs)
	slices.Sort(s)
	return s[len(s)/2]
}

func quantile(xs []float64, q float64) float64 {
	s := slices.Clone(xs)
	slices.Sort(s)
	return s[min(int(float64(len(s))*q), len(s)-1)]
}
