//go:build linux

package reliability

import (
	"errors"
	"fmt"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"syscall"
	"time"

	"ohmcall/notebook"
)

// strace finds the tracer. Where there is none (it is Linux only) the tests
// that need it are not run and say so; with RELIABILITY_STRACE set they fail.
func strace(w *watch) (string, bool) {
	path, err := exec.LookPath("strace")
	if err == nil {
		return path, true
	}
	if os.Getenv("RELIABILITY_STRACE") != "" {
		w.t.Fatal("strace is not installed, and RELIABILITY_STRACE demands the tests that need it")
	}
	w.t.Log("NOT RUN: strace is not installed; RELIABILITY_STRACE=1 makes that a failure")
	for _, f := range w.figures {
		w.count(f.what, f.want())
	}
	if w.control != "" {
		w.fault("not run")
	}
	return "", false
}

// traced runs a keeper under strace with ten lines and a close.
func traced(tracer string, c *exec.Cmd, options ...string) (acked []string, stderr string, err error) {
	argv := append([]string{"-f", "-qq"}, options...)
	argv = append(argv, c.Path)
	argv = append(argv, c.Args[1:]...)
	t := exec.Command(tracer, argv...)
	t.Env = append(c.Environ(), "GOMAXPROCS=1")
	t.Stdin = strings.NewReader(strings.Join(lines(10), "\n") + "\n")
	var errs strings.Builder
	t.Stderr = &errs
	out, err := t.Output()
	for _, a := range acks(out) {
		acked = append(acked, a.Line)
	}
	return acked, errs.String(), err
}

var traceLine = regexp.MustCompile(`^(?:\[pid\s+)?\d*\]?\s*(\w+)\((\d+)(?:<[^>]*>)?(?:, "((?:[^"\\]|\\.)*)")?.*= (-?\d+)`)

var logged = regexp.MustCompile(`(^|\\n)\d+ \d{4}-`)

// order is T3b: in the trace of a run, the reply to each entry is written only
// after a sync of the file that holds it has returned.
func order(w *watch) {
	tracer, ok := strace(w)
	if !ok {
		return
	}
	dir := w.dir()
	log := filepath.Join(dir, "trace")
	_, stderr, err := traced(tracer, keeper(filepath.Join(dir, "call.md")),
		"-o", log, "-s", "65536", "-e", "trace=write,fdatasync,fsync")
	if err != nil {
		w.fault("the run failed: %v %s", err, stderr)
	}
	content, err := os.ReadFile(log)
	w.must(err)
	written, synced := 0, 0 // entries
	for _, l := range strings.Split(string(content), "\n") {
		m := traceLine.FindStringSubmatch(l)
		if m == nil {
			continue
		}
		switch text := m[3]; {
		case m[1] == "fdatasync" && m[4] == "0":
			synced = written
		case m[1] == "write" && m[2] == "1" && strings.HasPrefix(text, `{\"n\":`):
			n, _ := strconv.Atoi(strings.TrimRight(text[len(`{\"n\":`):strings.Index(text, ",")], " "))
			w.count("replies", 1)
			if n > synced {
				w.fault("the reply to entry %d is written while %d are synced", n, synced)
			}
		case m[1] == "write" && m[2] != "1" && strings.HasPrefix(text, "---"):
			written = len(logged.FindAllString(text, -1)) // the whole file
		case m[1] == "write" && m[2] != "1" && logged.MatchString(text):
			written++
		}
	}
}

// calls counts the calls to the system of each kind in a whole run of ten
// entries: how far N goes at most.
func calls(w *watch, tracer string) map[string]int {
	dir := w.dir()
	log := filepath.Join(dir, "trace")
	_, stderr, err := traced(tracer, keeper(filepath.Join(dir, "call.md")), "-o", log, "-e", "trace="+strings.Join(touching, ","))
	if err != nil {
		w.fault("the run failed: %v %s", err, stderr)
	}
	content, err := os.ReadFile(log)
	w.must(err)
	out := map[string]int{}
	for line := range strings.Lines(string(content)) {
		for _, call := range touching {
			if strings.Contains(line, " "+call+"(") {
				out[call]++
			}
		}
	}
	return out
}

var (
	touching = []string{"write", "fdatasync", "fsync", "renameat", "ftruncate", "close", "unlinkat", "flock", "openat"}
	// exact are those of them that only the journal makes.
	exact = []string{"fdatasync", "fsync", "renameat", "ftruncate", "flock"}
)

// killEachCall is T4: the program is killed at the Nth call of each kind that
// touches the file, for every N.
func killEachCall(w *watch) {
	tracer, ok := strace(w)
	if !ok {
		return
	}
	due := calls(w, tracer)
	for _, call := range []string{"write", "fdatasync", "fsync", "renameat", "ftruncate", "close", "unlinkat"} {
		// strace counts N by thread, and the calls are spread over some: N goes
		// as far as the calls of all, and on until two runs in a row survive.
		survived := 0
		for n := 1; (survived < 2 || n <= due[call]) && !w.red(); n++ {
			name := filepath.Join(w.dir(), "call.md")
			acked, stderr, err := traced(tracer, keeper(name), "-o", os.DevNull,
				"-e", fmt.Sprintf("inject=%s:signal=KILL:when=%d", call, n))
			if err == nil {
				survived++
				continue
			}
			survived = 0
			w.count("kills", 1)
			if !notebook.Exists(name) {
				if len(acked) > 0 {
					w.fault("%s %d: the file is gone", call, n)
				}
				continue
			}
			have, err := stored(name)
			if err == nil {
				err = holds(acked, lines(10), have)
			}
			if err != nil {
				w.fault("killed at %s %d: %v %s", call, n, err, stderr)
			}
		}
	}
}

// failSystem is T5b: the Nth sync or rename of the program fails, for every N,
// once and for ever.
func failSystem(w *watch) {
	tracer, ok := strace(w)
	if !ok {
		return
	}
	due := calls(w, tracer)
	codes := slices.Sorted(maps.Keys(causes))
	for _, call := range []string{"fdatasync", "fsync", "renameat"} {
		for n := 1; n <= due[call]; n++ {
			for k, often := range []string{"", "+"} {
				for i, code := range codes {
					if !long && i != (n+k)%len(codes) {
						continue
					}
					if w.red() {
						return
					}
					failOne(w, tracer, call, code, fmt.Sprint(n)+often)
				}
			}
		}
	}
}

func failOne(w *watch, tracer, call, code, n string) {
	dir := w.dir()
	name, log := filepath.Join(dir, "call.md"), filepath.Join(dir, "trace")
	acked, stderr, err := traced(tracer, keeper(name), "-o", log, "-y",
		"-e", "trace=fdatasync,fsync,renameat", "-e", fmt.Sprintf("inject=%s:error=%s:when=%s", call, code, n))
	trace, readErr := os.ReadFile(log)
	w.must(readErr)
	failed := strings.Count(string(trace), "(INJECTED)")
	if failed == 0 {
		return // N is counted by thread; no thread came to it
	}
	w.count("failures", 1)
	what := fmt.Sprintf("%s %s failing with %s", call, n, code)
	if err == nil {
		w.fault("%s: exit code 0", what)
	}
	if !strings.Contains(stderr, "call.md") || !strings.Contains(stderr, causes[code].Error()) {
		w.fault("%s: the message names not both file and cause: %s", what, stderr)
	}
	if call == "fdatasync" && failed > 1 {
		w.fault("%s: the sync was tried again, %d times in all", what, failed)
	}
	if !notebook.Exists(name) {
		if len(acked) > 0 {
			w.fault("%s: the file is gone", what)
		}
		return
	}
	have, err := stored(name)
	if err == nil {
		err = holds(acked, lines(10), have)
	}
	if err != nil {
		w.fault("%s: %v", what, err)
	}
	if strays := strays(dir); len(strays) > 0 {
		w.fault("%s: left behind: %v", what, strays)
	}
}

var causes = map[string]error{"EIO": syscall.EIO, "EDQUOT": syscall.EDQUOT, "ENOSPC": syscall.ENOSPC, "EROFS": syscall.EROFS}

// strays lists the hidden files of a folder.
func strays(dir string) []string {
	list, _ := filepath.Glob(filepath.Join(dir, ".*"))
	return list
}

// interrupt is T9: each call that can be interrupted is, once.
func interrupt(w *watch) {
	tracer, ok := strace(w)
	if !ok {
		return
	}
	due := calls(w, tracer)
	for _, call := range []string{"write", "fdatasync", "fsync", "flock", "renameat", "openat"} {
		last := due[call]
		if !long && !slices.Contains(exact, call) {
			last = min(last, 8)
		}
		for n := 1; n <= last && !w.red(); n++ {
			interruptOne(w, tracer, call, n)
		}
	}
	storm(w)
}

// storm sends a signal every millisecond while lines are typed.
func storm(w *watch) {
	name := filepath.Join(w.dir(), "call.md")
	s := start(w, keeper(name))
	stop := make(chan struct{})
	// Fewer lines than one call holds, over as long as the storm lasts.
	typed := lines(2000)
	pace := time.Duration(w.due("signals")) * time.Millisecond / time.Duration(len(typed))
	sent := 0
	go func() {
		defer close(stop)
		each := time.NewTicker(time.Millisecond)
		defer each.Stop()
		for range w.due("signals") {
			s.cmd.Process.Signal(syscall.SIGWINCH)
			<-each.C
		}
	}()
	beat := time.NewTicker(pace)
	defer beat.Stop()
	for more := true; more && sent < len(typed); sent++ {
		fmt.Fprintln(s.in, typed[sent])
		s.await(sent + 1)
		<-beat.C
		select {
		case <-stop:
			more = false
		default:
		}
	}
	<-stop
	s.in.Close()
	<-s.done
	err := s.cmd.Wait()
	w.count("signals", w.due("signals"))
	have, openErr := stored(name)
	if err := errors.Join(err, openErr, holds(typed[:sent], typed[:sent], have)); err != nil || len(s.acked) != sent {
		w.fault("a storm of signals: %d of %d acknowledged: %v %s", len(s.acked), sent, err, s.errs.String())
	}
}

func interruptOne(w *watch, tracer, call string, n int) {
	dir := w.dir()
	name, log := filepath.Join(dir, "call.md"), filepath.Join(dir, "trace")
	acked, stderr, err := traced(tracer, keeper(name), "-o", log,
		"-e", "trace="+call, "-e", fmt.Sprintf("inject=%s:error=EINTR:when=%d", call, n))
	trace, readErr := os.ReadFile(log)
	w.must(readErr)
	if !strings.Contains(string(trace), "(INJECTED)") {
		return
	}
	w.count("interruptions", 1)
	have, openErr := stored(name)
	if err := errors.Join(err, openErr, holds(lines(10), lines(10), have), holds(acked, lines(10), acked)); err != nil || len(acked) != 10 {
		w.fault("%s %d interrupted: %d of 10 acknowledged: %v %s", call, n, len(acked), err, stderr)
	}
}
