package call

import (
	"strings"
	"testing"
	"time"

	"ohmcall/calc/cause"
	"ohmcall/calc/caution"
)

var nine = time.Date(2026, 3, 2, 9, 0, 0, 0, time.UTC)

// started is a call with enough in it that every command has something to
// answer.
func started(t testing.TB) *Call {
	t.Helper()
	c := New()
	for _, l := range []string{
		"fault clicks and does not cool", "plate volts 115, hz 60, amps 1.2, lra 12, hp 1/6", "plate mfd start 88-108", "plate mfd run 12 5%",
		"ohm A B 3.45", "ohm A C 6.5", "ohm B C 2.5",
		`def sag(rest, load) = (rest - load) / rest * 100 "percent"`,
	} {
		must(t, c, l)
	}
	return c
}

func must(t testing.TB, c *Call, line string) Entry {
	t.Helper()
	e, err := c.Apply(nine, line)
	if err != nil {
		t.Fatalf("%s: %v", line, err)
	}
	return e
}

// TestCommandTable lets the table prove itself: every command is described,
// its examples parse, apply and answer, and its help shows them.
func TestCommandTable(t *testing.T) {
	groups := map[Group]bool{}
	for _, g := range Groups {
		groups[g] = true
	}
	for _, cmd := range Commands() {
		if cmd.Help == "" || len(cmd.Examples) == 0 || !groups[cmd.Group] {
			t.Errorf("%s is not described in full", cmd.Word)
		}
		if Find(cmd.Word) != cmd {
			t.Errorf("%s is not found by its word", cmd.Word)
		}
		for _, ex := range cmd.Examples {
			c := started(t)
			e := must(t, c, ex)
			if e.Kind != cmd.Word {
				t.Errorf("the example %q is a %s, not a %s", ex, e.Kind, cmd.Word)
			}
			if e.Reply == nil || len(e.Reply.Lines) == 0 && e.Reply.Table == nil {
				t.Errorf("the example %q is not answered", ex)
			}
			help := must(t, c, "help "+cmd.Word).Reply.Plain()
			if !strings.Contains(help, ex) || !strings.Contains(help, cmd.Usage()) {
				t.Errorf("help %s does not show %q", cmd.Word, ex)
			}
		}
	}
}

// TestHelpFitsAScreen holds help to 80 columns by 24 lines.
func TestHelpFitsAScreen(t *testing.T) {
	r := must(t, New(), "help").Reply
	if len(r.Lines) > 22 {
		t.Errorf("help has %d lines", len(r.Lines))
	}
	for _, l := range r.Lines {
		if n := len([]rune(l.Text)); n > 79 {
			t.Errorf("%d columns: %s", n, l.Text)
		}
	}
	for _, cmd := range Commands() {
		if !strings.Contains(r.Plain(), " "+cmd.Word) {
			t.Errorf("help does not name %s", cmd.Word)
		}
	}
}

// TestRefusedLineLeavesTheCall holds for many wrong lines that a refusal
// changes nothing, points into the line, and hints.
func TestRefusedLineLeavesTheCall(t *testing.T) {
	c := started(t)
	before := c.Record()
	n := c.Len()
	for _, line := range []string{
		"ohm", "ohm A B", "ohm A", "ohm 3.4", "ohm A A 3.4", "ohm A B C D 3.4", "ohm A B 3.4V", "ohm A B x", "ohm A B -3", "ohm A B 3.4, ", "ohm , A B 3",
		"volt", "mfd C1 -3", "temp freezer cold", "temp freezer -2V", "psi 3",
		"mark A", "mark A middle", "on", "plate", "plate volts", "plate colour red", "plate volts x", "plate start maybe",
		"client", "saw", "did", "part start device, 0", "part start device, x", "part a, 1, -2", "wire black", "wire black C",
		"meter", "meter ohm", "meter ohm 3", "meter ohm 1% 2 3", "meter gold 1%", "probes x", "probes 9", "probes -1", "units K", "limit 9X",
		"let", "let x", "let x =", "let ohm = 3", "let sqrt = 3", "let 3 = 4", "def f", "def f(a) =", "def sqrt(a) = a", "expect 3", `expect 3 "m"`, `expect 3 < "m"`,
		"keep nothing", "need", "need gold", "need saw gold", "when : need safe", "when 3: need safe", "when x safe", "when 1 < 2: ohm A B 3",
		"date", "date tomorrow", "date 2026-13-40 09:00", "why 99", "why nonsense", "show me", "choose wife", "worth age", "worth age x", "worth gold 3",
		"strike", "strike 1", "strike 99 x", "strike x y", "120V + 3ohm", "nonsense", "hello there", "3 +", "(", "1/0", "sqrt(-1)", "14:30", `note "unclosed`, `A ""`,
	} {
		_, err := c.Apply(nine, line)
		if err == nil {
			t.Errorf("%q was taken", line)
			continue
		}
		if c.Len() != n {
			t.Fatalf("%q was refused and left an entry", line)
		}
	}
	after := c.Record()
	if a, b := flat(before), flat(after); a != b {
		t.Errorf("refused lines changed the call:\n%s\n%s", a, b)
	}
}

// TestNearestCommand checks the hint for a slip of the fingers.
func TestNearestCommand(t *testing.T) {
	_, err := New().Apply(nine, "ohmm A B 3.4")
	if err == nil || !strings.Contains(err.Error(), "perhaps: ohm A B 3.4;") || !strings.Contains(err.Error(), "note ohmm A B 3.4") {
		t.Errorf("got %v", err)
	}
}

// TestCodesAreKnown holds the tables together: proofs name complaints, and
// every caution code that a cause's test names exists.
func TestCodesAreKnown(t *testing.T) {
	for _, p := range proofs {
		code := p.complaint
		if _, ok := cause.ComplaintBy(code); code != "" && !ok {
			t.Errorf("proofs names the complaint %q, which there is none of", code)
		}
	}
	for _, test := range cause.Tests() {
		for _, code := range test.Caution {
			if _, ok := caution.Text(code); !ok {
				t.Errorf("the test %s names the caution %q, which there is none of", test.Code, code)
			}
		}
	}
	for _, code := range courseFacts {
		if _, ok := cause.Lookup(code); !ok {
			t.Errorf("courses give the fact %q, which no cause knows", code)
		}
	}
}
