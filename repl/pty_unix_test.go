//go:build unix

package repl

import (
	"fmt"
	"os"
	"regexp"
	"strings"
	"syscall"
	"testing"

	"github.com/creack/pty"

	"ohmcall/notebook"
)

func TestTyping(t *testing.T) {
	s := start(t)
	s.expect("A new call, kept in the file")
	s.expect(prompt)
	s.send("ohm A B 3.45\r")
	s.expect("A–B 3.45 Ω")
	s.send("C 6.5\r")
	s.expect("A–C 6.5 Ω")
	s.send("\x04")
	s.expect("The call stays open in the file;")
	if err := s.ended(); err != nil {
		t.Error(err)
	}
	s.sane()
	s.holds("ohm A B 3.45", "ohm A C 6.5")
}

// TestTypedBeforeTheEditorIsThere types before there is a prompt, and at the
// prompt that stands before the line editor is made.
func TestTypedBeforeTheEditorIsThere(t *testing.T) {
	s := start(t)
	s.send("note typed early\r")
	s.expect(prompt)
	s.send("note typed at once\r")
	s.expect("Noted.")
	s.expect("Noted.")
	s.send("\x04")
	if err := s.ended(); err != nil {
		t.Error(err)
	}
	s.sane()
	s.holds("note typed early", "note typed at once")
}

// TestStoppedAtTheFirstPrompt stops the program before or while the line
// editor is made.
func TestStoppedAtTheFirstPrompt(t *testing.T) {
	for _, sig := range []syscall.Signal{syscall.SIGTERM, syscall.SIGHUP, syscall.SIGINT} {
		s := start(t)
		s.expect(prompt)
		s.cmd.Process.Signal(sig)
		if err := s.ended(); err != nil {
			t.Errorf("%v: %v", sig, err)
		}
		s.sane()
	}
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

// TestFaultOfCompletingLosesNothing: what is on the line stays there.
func TestFaultOfCompletingLosesNothing(t *testing.T) {
	s := start(t)
	s.expect(prompt)
	s.send("use mi\t")
	s.expect("failed at completing this line (no list of scripts)")
	s.send("ne.call\r")
	s.expect("mine.call")
	s.send("note all the same\r")
	s.expect("Noted.")
	s.send("\x04")
	if err := s.ended(); err != nil {
		t.Error(err)
	}
	s.sane()
	s.holds("note all the same")
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

// A terminal that can only print keeps the promise of Ctrl-C, and its arrow keys
// put nothing into a line.
func TestDumbTerminal(t *testing.T) {
	t.Setenv(childDumb, "1")
	s := start(t)
	s.expect(prompt)
	s.send("ohm A B 9")
	s.expect("A B 9")
	s.send("\x03")
	s.expect("(cancelled)")
	s.expect(prompt)
	s.send("note all\x1b[D\x1b[1;5C\x1bOA the same\n")
	s.expect("Noted.")
	s.send("\x04")
	s.expect("The call stays open")
	if err := s.ended(); err != nil {
		t.Error(err)
	}
	s.holds("note all the same")
	again := start(t)
	again.expect(prompt)
	again.cmd.Process.Signal(syscall.SIGTERM)
	if err := again.ended(); err != nil {
		t.Error(err)
	}
}

// What was not taken of a long paste is named when all of it is through.
func TestPasteSaysWhatWasNotTaken(t *testing.T) {
	s := start(t)
	s.expect(prompt)
	lines := []string{"frobnicate the first", "ohm A B 3.4x"}
	for i := range 20 {
		lines = append(lines, fmt.Sprintf("note line %d", i))
	}
	s.send(strings.Join(lines, "\r") + "\r")
	s.expect("Of these 22 lines 2 were not taken: frobnicate the first; ohm A B 3.4x")
	// Lines typed one by one are in sight.
	s.send("frobnicate\r")
	s.expect("not taken")
	s.expect(prompt)
	before := len(s.drawn())
	s.send("\x04")
	s.ended()
	if shown := s.drawn()[before:]; strings.Contains(shown, "Of these") {
		t.Errorf("one line is named again: %s", shown)
	}
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
	s.holds("ohm A B 3.45", "note x end")
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
	out := strings.ReplaceAll(ours.ReplaceAllString(s.drawn(), ""), " \b", "")
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

// After a closing that lacks it is asked how the unit was left, once; Enter leaves
// it at that.
func TestHowItWasLeftIsAsked(t *testing.T) {
	for _, x := range []struct{ then, says string }{
		{"left unplugged\r", "It belongs to the closing"},
		{"\r", "The record is in the file."},
		{"\x04", "The record is in the file."},
	} {
		s := start(t)
		s.expect(prompt)
		s.send("fault does not drain\r")
		s.expect(prompt)
		s.send("close waits for a part\r")
		s.expect("How is the unit left?")
		s.expect(prompt)
		s.send(x.then)
		s.expect(x.says)
		if err := s.ended(); err != nil {
			t.Error(err)
		}
		s.sane()
	}
}
