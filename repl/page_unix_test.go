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
	s.expect("Enter shows them.")
	s.send("\r")
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

// What a fact is answered with stops at the screen when a caution is in it; the
// rest comes with the next line at the latest. Any other is never held back: the
// line is named again.
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
	shown = shown[strings.LastIndex(shown, "A case 0.2\r\n")+len("A case 0.2\r\n"):]
	if !strings.Contains(shown, "Caution: Disconnect every source") || strings.Count(shown, "\n") > 6 {
		t.Errorf("the caution has left the screen:\n%s", shown)
	}
	s.send("\r")
	s.expect("lines more: Enter shows them.")
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
