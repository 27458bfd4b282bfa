//go:build linux

package reliability

import (
	"bytes"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"syscall"
	"time"
	"unicode/utf8"

	"github.com/creack/pty"
	"golang.org/x/term"

	"ohmcall/notebook"
	"ohmcall/notebook/call"
)

// sequences are texts that steer a terminal.
func sequences() []string {
	list := []string{"\x1b[31m", "\x1b[2J", "\x1b[1;1H", "\x1b]0;title\a", "\x1b]8;;http://example.invalid\x1b\\x", "\x1b]52;c;cHduZWQ=\a",
		"\x1bP$q\"p\x1b\\", "\x1b_G\x1b\\", "\x1b^x\x1b\\", "\x1bXx\x1b\\", "\x1bc", "\x1b7", "\x1b8", "\x1b=", "\x1b>", "\x1b(0", "\x1b#8",
		"\x1b[?1049h", "\x1b[?25l", "\x1b[6n", "\x1b[c", "\x1b[5i", "\x1b[4i", "\x1b[20t", "\x1b[21t", "\x1b[200~x\x1b[201~", "\x1b", "\x1b\x1b[31m",
		"\a", "\b\b\bx", "\x7f", "\r", "\v", "\f", "\x0e", "\x0f", "\x05", "\x00", "\x1a", "\x18", "\x11", "\x13", "\u009b31m", "\u009d0;t\u009c",
		"\u0090q\u009c", "\u009f\u009c", "\u0085", "\u202ecod.exe", "\u2066x\u2069", "\u200ex", "\u2028x", "\ufeffx", "\xc2\x9b", "\x9b31m", "\x9d0;t\x9c",
		"\x90q\x9c", "\xff\xfe", "\x1b[31", "m\x1b", "\x1b[38;5;1m", "\uffffx", "\ufdd0x", "\U000e0100x"}
	for _, fin := range "ABCDEFGJKLMPSTX@fhlrsu" {
		// Further than any screen goes: what the program sends itself is not.
		list = append(list, fmt.Sprintf("\x1b[7777%c", fin))
	}
	return list
}

// tame reports the first byte of an output that could steer a terminal.
func tame(out []byte) error {
	for i := 0; i < len(out); {
		r, n := utf8.DecodeRune(out[i:])
		if r == utf8.RuneError && n == 1 || r != '\n' && steers(r) {
			return fmt.Errorf("%q at %d in %q", out[i:i+n], i, out[max(0, i-40):min(len(out), i+40)])
		}
		i += n
	}
	return nil
}

// escapes is T14.
func escapes(w *watch) {
	var typed []string
	seqs := sequences()
	for _, s := range seqs {
		w.count("payloads", 1)
		for _, c := range call.Commands() {
			typed = append(typed, c.Word+" x"+s+" 3.4 "+s)
			if long {
				typed = append(typed, c.Word+" "+s)
			}
		}
		typed = append(typed, s, "note "+s, s+"note", `note "`+s, "1 + "+s, "let x"+s+" = 1", "help "+s, "use "+s, "14:3"+s+" note")
	}
	w.count("lines", len(typed))
	dir, calls := w.quick(), 0
	// In calls that stay within their bounds, so that no line is refused unread.
	for lines := range slices.Chunk(typed, 1500) {
		input := strings.Join(lines, "\n")
		calls++
		runs := []*exec.Cmd{
			exec.Command(program, "run", "-"), exec.Command(program, "run", "-", "--json"), exec.Command(program, filepath.Join(dir, fmt.Sprintf("typed-%d.md", calls)))}
		for _, c := range runs {
			c.Env = append(c.Environ(), "NO_COLOR=1", "OHMCALL_DIR="+dir)
			c.Stdin = strings.NewReader(input)
			out, _ := c.CombinedOutput()
			if len(out) == 0 {
				w.fault("%v says nothing", c.Args)
			}
			if err := tame(out); err != nil {
				w.fault("%v: %v", c.Args[1:], err)
			}
			if strings.Contains(string(out), notebook.ErrFull.Error()) {
				w.fault("%v: the call was full before its lines were typed", c.Args[1:])
			}
		}
		throughTerminal(w, dir, input, calls)
		if w.red() {
			return
		}
	}
	hostilePages(w, dir, seqs)
	if w.red() {
		return
	}
	onTerminal(w, dir, seqs)
}

// hostilePages holds notebooks of strangers with raw sequences everywhere.
func hostilePages(w *watch, dir string, seqs []string) {
	for i, s := range seqs {
		if w.red() {
			return
		}
		w.count("pages", 1)
		name := filepath.Join(dir, fmt.Sprintf("hostile-%d.md", i))
		w.must(os.WriteFile(name, hostilePage(s), 0o600))
		for k, argv := range [][]string{{"check", name}, {"run", "-", "-o", name}, {name}} {
			if !long && k > 0 && i%3 != k {
				continue
			}
			c := exec.Command(program, argv...)
			c.Env = append(os.Environ(), "NO_COLOR=1", "OHMCALL_DIR="+dir)
			out, _ := c.CombinedOutput()
			if err := tame(out); err != nil {
				w.fault("%v on a page with %q: %v", argv[0], s, err)
			}
		}
		if i%8 == 0 || long {
			c := exec.Command(program, "check", filepath.Join(dir, "none"+strings.ReplaceAll(s, "\x00", "")))
			out, _ := c.CombinedOutput()
			if err := tame(out); err != nil {
				w.fault("check of a file named %q: %v", s, err)
			}
		}
	}
}

func hostilePage(s string) []byte {
	return []byte("---\nohmcall: 1\nstate: \"open\"\nentries: 2\nclient: \"" + s + "\"\n" + s + ": x\n---\n\n" + s + "\n\n[ohmcall-begin]: #" + s + "\nx" + s +
		"\n[ohmcall-end]: #" + s + " \"x\"\n\n## Log\n\nopen\n\n```ohmcall\n1 2026-03-02T09:00:00+00:00 note " + s + "\n# " + s +
		"\n2 2026-03-02T09:00:00+00:00 client " + s + "\n# Noted." + s + "\n" + s + " stray\n3 2026-03-02T09:00:00+00:00 note torn" + s)
}

// ours are the sequences that the line editor and the colours of the program
// itself may send.
var ours = regexp.MustCompile(`\x1b\[\d{0,3}(?:;\d{0,3})*[mKJABCDG]|\x1b\[\?(?:25|2004)[hl]|[\r\x08\a]`)

// throughTerminal sends the same lines through a terminal, where the line
// discipline changes no byte: as a script whose replies go there, and typed at
// a prompt that has no line editor.
func throughTerminal(w *watch, dir, input string, n int) {
	script := filepath.Join(dir, fmt.Sprintf("hostile-%d.call", n))
	w.must(os.WriteFile(script, []byte(input), 0o600))
	for _, argv := range [][]string{{"run", script}, {filepath.Join(dir, fmt.Sprintf("dumb-%d.md", n))}} {
		typed := ""
		master, tty, err := pty.Open()
		w.must(err)
		_, err = term.MakeRaw(int(tty.Fd()))
		w.must(err)
		c := exec.Command(program, argv...)
		c.Env = append(os.Environ(), "TERM=dumb", "OHMCALL_DIR="+dir)
		c.Stdin, c.Stdout, c.Stderr = tty, tty, tty
		c.SysProcAttr = &syscall.SysProcAttr{Setsid: true, Setctty: true}
		w.must(c.Start())
		tty.Close()
		var out bytes.Buffer
		read := make(chan struct{})
		go func() { io.Copy(&out, master); close(read) }()
		if argv[0] != "run" {
			// The prompt ends with a close, so those are left to the script.
			for line := range strings.Lines(input + "\n") {
				if !strings.HasPrefix(line, "close") {
					typed += line
				}
			}
			go io.WriteString(master, typed+"close\n")
		}
		stop := time.AfterFunc(60*time.Second, func() { c.Process.Kill() })
		err = c.Wait()
		if !stop.Stop() {
			w.fault("%v on a terminal does not end", argv[0])
		}
		<-read
		master.Close()
		w.count("lines on a terminal", strings.Count(input, "\n")+1)
		if out.Len() < len(input)/4 {
			w.fault("%v on a terminal says %d bytes only: %v", argv[0], out.Len(), err)
		}
		if err := tame(out.Bytes()); err != nil {
			w.fault("%v on a terminal: %v", argv[0], err)
		}
	}
}

// onTerminal opens a stranger's page at the prompt of a terminal.
func onTerminal(w *watch, dir string, seqs []string) {
	step := 10
	if long {
		step = 1
	}
	for i := 0; i < len(seqs); i += step {
		name := filepath.Join(dir, fmt.Sprintf("tty-%d.md", i))
		w.must(os.WriteFile(name, hostilePage(seqs[i]), 0o600))
		c := exec.Command(program, name)
		c.Env = append(os.Environ(), "TERM=xterm", "OHMCALL_DIR="+dir)
		tty, err := pty.StartWithSize(c, &pty.Winsize{Rows: 24, Cols: 80})
		w.must(err)
		var out bytes.Buffer
		read := make(chan struct{})
		go func() { io.Copy(&out, tty); close(read) }()
		io.WriteString(tty, "show readings\r\x04")
		stop := time.AfterFunc(5*time.Second, func() { c.Process.Kill() })
		c.Wait()
		stop.Stop()
		tty.Close()
		<-read
		if s := seqs[i]; len(s) > 1 && s[0] < 0x20 && !ours.MatchString(s) && bytes.Contains(out.Bytes(), []byte(s)) {
			w.fault("on a terminal %q comes through", s)
		}
		if err := tame(ours.ReplaceAll(out.Bytes(), nil)); err != nil {
			w.fault("on a terminal, a page with %q: %v", seqs[i], err)
		}
	}
}
