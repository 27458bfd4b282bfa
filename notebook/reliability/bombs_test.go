//go:build linux

package reliability

import (
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"time"

	"golang.org/x/sys/unix"

	"ohmcall/notebook/call"
)

// loops is a sum that the evaluator's own limits let run for seconds.
const loops = "let a=1..500; all(a, all(a, all(a, true)))"

// hostileSums are expressions that ask for much.
func hostileSums() []string {
	nested := "1"
	for len(nested) < 490 {
		nested = "1<(" + nested + ")<1"
	}
	list := []string{
		loops, nested, "1(" + nested + ")", "sqrt(" + nested + ")", `A ""0`,
		"1..1000000000", "map(1..100000, # * 2)", "filter(1..1000, # > 3)",
		"reduce(1..1000, #acc + #)", `repeat("a", 1000000000)`, `"a" matches "(a+)+$"`, `"aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa!" matches "(a|aa)+$"`,
		"2 ^ 2 ^ 2 ^ 2 ^ 2 ^ 2", "9^9^9^9^9", "1e308 * 1e308", "1/0", "0/0", "-" + strings.Repeat("-", 400) + "1",
		strings.Repeat("(", 200) + "1" + strings.Repeat(")", 200), strings.Repeat("(", 500), strings.Repeat("!", 500) + "true",
		strings.Repeat("1+", 250) + "1", strings.Repeat("true?", 90) + "1" + strings.Repeat(":0", 90), strings.Repeat("[", 250) + strings.Repeat("]", 250),
		strings.Repeat("{a:", 150) + "1" + strings.Repeat("}", 150), "flatten([[[[1]]]])", "toJSON(1)", "fromJSON(\"[\")", "now()", "$env", "sum(1..100000000)",
		strings.Repeat("sqrt(", 90) + "2" + strings.Repeat(")", 90), "concat([1],[2])", "max(min(max(min(1))))", "get(1,2)", "len(1..100000000)",
		strings.Repeat("a.", 240) + "b", "`" + strings.Repeat("x", 400), "/* " + strings.Repeat("x", 400), "0x" + strings.Repeat("f", 400), strings.Repeat("9", 500),
		strings.Repeat("1", 60_000), strings.Repeat("(", 60_000), strings.Repeat("1V+", 20_000) + "1V",
	}
	return list
}

// worked is the processor time that a piece of work takes: the wall clock of a
// machine that is busy with other things says less.
func worked(work func()) time.Duration {
	runtime.LockOSThread()
	defer runtime.UnlockOSThread()
	before := threadTime()
	work()
	return threadTime() - before
}

func threadTime() time.Duration {
	var u unix.Rusage
	if err := unix.Getrusage(unix.RUSAGE_THREAD, &u); err != nil {
		panic(err)
	}
	return time.Duration(u.Utime.Nano() + u.Stime.Nano())
}

// bombs is T16.
func bombs(w *watch) {
	c := call.New()
	at := time.Date(2026, 3, 2, 9, 0, 0, 0, time.UTC)
	for _, s := range hostileSums() {
		w.count("expressions", 1)
		for _, line := range []string{s, "let x = " + s, "expect " + s, "ohm A B (" + s + ")", "when " + s + ": note a", "def f(a) = " + s} {
			if w.red() {
				return
			}
			took := worked(func() { c.Apply(at, line) })
			if took > 50*time.Millisecond {
				w.fault("%.60s took %v", line, took)
			}
		}
	}
	// Functions that double at each step.
	for i := 1; i < 60; i++ {
		took := worked(func() {
			c.Apply(at, fmt.Sprintf("def f%d(a) = %s", i, chain(i)))
			c.Apply(at, fmt.Sprintf("f%d(1)", i))
		})
		if took > 100*time.Millisecond {
			w.fault("f%d, doubling at each step, took %v", i, took)
		}
	}
	input := filepath.Join(w.dir(), "input")
	w.must(os.WriteFile(input, []byte(strings.Join(hostileSums(), "\n")), 0o600))
	m := measureIn(w, input, program, "run", "-")
	idle := measure(w, program, "--help")
	w.t.Logf("all in one run: %.2f s, %d MB; idle %d MB", m.Seconds, m.MB, idle.MB)
	if m.Seconds > 2 || m.MB > idle.MB+16 || m.Code < 0 {
		w.fault("all expressions in one run: %.2f s, %d MB (idle %d MB), exit %d", m.Seconds, m.MB, idle.MB, m.Code)
	}
}
