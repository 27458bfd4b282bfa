//go:build linux

package reliability

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"time"

	"ohmcall/notebook/call"
)

// sizes is T12.
func sizes(w *watch, control string) {
	dir := w.dir()
	const head = "---\nohmcall: 1\nstate: \"open\"\nentries: 0\n---\n\n## Log\n\nThe call is open: the part above is as of entry 0, this log may hold more.\n\n```ohmcall\n"
	entries := func(n int, line func(i int) string) string {
		var b strings.Builder
		b.WriteString(head)
		for i := 1; i <= n; i++ {
			fmt.Fprintf(&b, "%d 2026-03-02T09:00:00+00:00 %s\n", i, line(i))
		}
		return b.String()
	}
	const most = 64 << 20
	fill := func(start, unit string) string {
		s := start + strings.Repeat(unit, (most-len(start))/len(unit))
		return s
	}
	lined := func(start, unit string, n int) string { return start + strings.Repeat(unit, n) }
	files := map[string]func() string{
		"line feeds": func() string { return fill(head, "\n") },
		"one line":   func() string { return fill(head+"1 2026-03-02T09:00:00+00:00 note ", "a") },
		"one remark": func() string { return fill("---\nohmcall: 1\n---\n", "a") + "\n\n## Log\n\n```ohmcall\n" },
		"no line":    func() string { return fill("---\nohmcall: 1\n", "a") },
		"replies": func() string {
			return lined(head+"1 2026-03-02T09:00:00+00:00 note a\n", "# "+strings.Repeat("r", 120)+"\n", 499_000)
		},
		"strays": func() string { return lined(head, strings.Repeat("x", 120)+"\n", 499_000) },
		"zeros":  func() string { return lined(head, strings.Repeat("\x00", 120)+"\n", 499_000) },
		"sections": func() string {
			return lined("---\nohmcall: 1\n---\n", "[ohmcall-begin]: #a\n[ohmcall-end]: #a \"x\"\n", 249_000) + "\n## Log\n\n```ohmcall\n"
		},
		"headings":       func() string { return lined("---\nohmcall: 1\n---\n", "\n## Log\n", 249_000) },
		"front matter":   func() string { return lined("---\nohmcall: 1\n", "missing: [\"a\"]\n", 499_000) },
		"notes":          func() string { return entries(50_000, func(i int) string { return "note a" }) },
		"too many notes": func() string { return entries(50_001, func(i int) string { return "note a" }) },
		"long notes": func() string {
			return entries(1000, func(i int) string { return "note " + strings.Repeat("y", 65_000) })
		},
		"long sums": func() string { return entries(50_000, func(i int) string { return strings.Repeat("1+", 200) + "1" }) },
		"one pair":  func() string { return entries(50_000, func(i int) string { return "ohm A B 3.4" }) },
		"many pins": func() string {
			return entries(50_000, func(i int) string { return fmt.Sprintf("ohm A%d B%d 3.4", i, i+1) })
		},
		"many machines": func() string { return entries(50_000, func(i int) string { return fmt.Sprintf("on m%d", i) }) },
		"shows": func() string {
			return entries(50_000, func(i int) string { return []string{"show readings", "volt line 118.2"}[i%2] })
		},
		"strikes": func() string {
			return entries(50_000, func(i int) string { return []string{"note a", fmt.Sprintf("strike %d \"x\"", i-1)}[i%2] })
		},
		"larger than read": func() string { return fill(head, "\n") + strings.Repeat("\n", 1000) },
		"definitions":      func() string { return entries(50_000, func(i int) string { return fmt.Sprintf("let x%d = %d", i, i) }) },
		"chained functions": func() string {
			return entries(200, func(i int) string { return fmt.Sprintf("def f%d(a) = %s", i, chain(i)) })
		},
	}
	if control != "" {
		name := filepath.Join(dir, "zero")
		w.must(os.WriteFile(name, []byte(fill(head, "\n")+fill("", "\n")), 0o600))
		w.must(os.Truncate(name, 300<<20))
		m := measureEnv(w, "read", control, name)
		bounded(w, "a file of 300 MB", m)
		return
	}
	for what, content := range files {
		name := filepath.Join(dir, "big.md")
		w.must(os.WriteFile(name, []byte(content()), 0o600))
		m := measure(w, program, "check", name)
		w.count("files", 1)
		bounded(w, what, m)
	}
	fifo := filepath.Join(dir, "fifo")
	w.must(syscall.Mkfifo(fifo, 0o600))
	for _, name := range []string{fifo, "/dev/zero", dir} {
		for _, argv := range [][]string{{"check", name}, {name}, {"run", name}} {
			m := measure(w, append([]string{program}, argv...)...)
			w.count("files", 1)
			if m.Seconds > 1 || m.Code == 0 || m.Out == "" {
				w.fault("%v: %+v", argv, m)
			}
		}
	}
}

func chain(i int) string {
	if i == 1 {
		return "a + 1"
	}
	return fmt.Sprintf("f%d(a) + f%d(a)", i-1, i-1)
}

// bounded holds a run to 2 s and 200 MB and to some words.
func bounded(w *watch, what string, m measured) {
	w.t.Logf("%s: %.2f s, %d MB, code %d: %.90s", what, m.Seconds, m.MB, m.Code, m.Out)
	if m.Seconds > 2 || m.MB > 200 || m.Code < 0 || m.Out == "" {
		w.fault("%s: %.2f s, %d MB, exit %d: %.200s", what, m.Seconds, m.MB, m.Code, m.Out)
	}
}

// measureEnv measures a helper of this binary.
func measureEnv(w *watch, mode, control string, args ...string) measured {
	self, err := os.Executable()
	w.must(err)
	env, err := exec.LookPath("env")
	w.must(err)
	return measure(w, append([]string{env, helperVar + "=" + mode, controlVar + "=" + control, self}, args...)...)
}

// hostileSums are expressions that ask for much.
func hostileSums() []string {
	list := []string{
		"let a=1..500; all(a, all(a, all(a, true)))", "1..1000000000", "map(1..100000, # * 2)", "filter(1..1000, # > 3)",
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

// bombs is T16.
func bombs(w *watch, control string) {
	if control != "" {
		m := measureEnv(w, "expr", control, hostileSums()[0])
		if m.Seconds > 0.5 {
			w.fault("%s took %.2f s", hostileSums()[0], m.Seconds)
		}
		return
	}
	c := call.New()
	at := time.Date(2026, 3, 2, 9, 0, 0, 0, time.UTC)
	for _, s := range hostileSums() {
		w.count("expressions", 1)
		for _, line := range []string{s, "let x = " + s, "expect " + s, "ohm A B (" + s + ")", "when " + s + ": note a", "def f(a) = " + s} {
			begun := time.Now()
			c.Apply(at, line)
			if took := time.Since(begun); took > 50*time.Millisecond {
				w.fault("%.60s took %v", line, took)
			}
		}
	}
	// Functions that double at each step.
	for i := 1; i < 60; i++ {
		begun := time.Now()
		c.Apply(at, fmt.Sprintf("def f%d(a) = %s", i, chain(i)))
		c.Apply(at, fmt.Sprintf("f%d(1)", i))
		if took := time.Since(begun); took > 100*time.Millisecond {
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
