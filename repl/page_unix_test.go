//go:build unix

package repl

import (
	"strings"
	"testing"

	"github.com/creack/pty"
)

// On a screen of 24 lines the answer to a question stops where the question
// would leave it, Enter alone goes on, and any other line drops the rest.
func TestLongAnswerStopsAtTheScreen(t *testing.T) {
	s := start(t)
	s.expect(prompt)
	before := len(s.drawn())
	s.send("help findings\r")
	s.expect("lines more: Enter shows them.")
	s.expect(prompt)
	if shown := s.drawn()[before:]; strings.Count(shown, "\n") > 23 {
		t.Errorf("the question has left the screen:\n%s", shown)
	}
	s.send("\r")
	s.expect("lines more: Enter shows them.")
	s.send("ohm A B 3.45\r")
	s.expect("A–B 3.45 Ω")
	before = len(s.drawn())
	s.send("\r")
	s.expect(prompt)
	s.send("quit\r")
	s.expect("The call stays open in the file;")
	if shown := s.drawn()[before:]; strings.Contains(shown, "more: Enter") {
		t.Errorf("the rest of an older answer is shown:\n%s", shown)
	}
	if err := s.ended(); err != nil {
		t.Error(err)
	}
	s.sane()
	s.holds("ohm A B 3.45")
}

// All of a long answer comes, screen by screen, each line once.
func TestLongAnswerIsShownWhole(t *testing.T) {
	s := start(t)
	s.expect(prompt)
	before := len(s.drawn())
	s.send("help parts\r")
	for range 2 {
		s.expect("Enter shows them.")
		s.send("\r")
	}
	s.expect("inlet-valve, water-valve:")
	s.send("\x04")
	s.ended()
	shown := s.drawn()[before:]
	for _, part := range []string{": the appliance's fuse", ": hot-surface igniter", "inlet-valve, water-valve:"} {
		if n := strings.Count(shown, part); n != 1 {
			t.Errorf("%q is shown %d times:\n%s", part, n, shown)
		}
	}
}

// What a fact is answered with is never held back. Where the screen is too small for
// it the cautions stand under it, and stop there at the screen; the rest of them comes
// with the next line at the latest. Without any the line is named again.
func TestLongReplyOfAFact(t *testing.T) {
	s := start(t)
	if err := pty.Setsize(s.tty, &pty.Winsize{Rows: 8, Cols: 60}); err != nil {
		t.Fatal(err)
	}
	s.expect(prompt)
	before := len(s.drawn())
	s.send("ohm A B 3.45, A case 0.2\r")
	s.expect("lines more: Enter shows them.")
	shown := s.drawn()[before:]
	reply, shown, _ := strings.Cut(shown[strings.LastIndex(shown, "A case 0.2\r\n"):], "Caution: ")
	if !strings.HasPrefix(shown, "Disconnect every source") || strings.Count(shown, "\n") > 6 || !strings.Contains(reply, "A–case") {
		t.Errorf("the caution has left the screen, or the reply does not stand before it:\n%s\n%s", reply, shown)
	}
	s.send("note still there\r")
	s.expect("stand to one side.")
	s.expect("Noted.")
	s.send("ohm A C 6.5\r")
	s.expect("lines answer: ohm A C 6.5")
	s.send("ohm B case 0.2\r")
	s.expect(prompt)
	s.send("exit\r")
	s.expect("The call stays open in the file;")
	s.ended()
}

// On the smallest of screens an ordinary reading and its caution are both seen.
func TestReplyBesideItsCaution(t *testing.T) {
	s := start(t)
	if err := pty.Setsize(s.tty, &pty.Winsize{Rows: 10, Cols: 40}); err != nil {
		t.Fatal(err)
	}
	s.expect(prompt)
	before := len(s.drawn())
	s.send("ohm A B 3.45\r")
	s.expect("before you read ohms.")
	s.expect(prompt)
	shown := s.drawn()[before:]
	if at := strings.Index(shown, "A–B 3.45"); at < 0 || strings.Contains(shown[at:], "more: Enter") || !strings.Contains(shown[at:], "Caution: ") && strings.Index(shown, "Caution: ") > at {
		t.Errorf("the reply is held back:\n%s", shown)
	}
	s.send("exit\r")
	s.ended()
}
