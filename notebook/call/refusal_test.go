package call

import (
	"errors"
	"strings"
	"testing"

	"ohmcall/calc/source"
)

// TestRefusalsShowTheWay types lines behind others. Each is refused, leaves the
// call as it was, says what is wanted, and shows a line that is taken in its
// place; that is tried too, and so is each other line that its hint shows.
func TestRefusalsShowTheWay(t *testing.T) {
	rows := []struct{ before, line, says, shows string }{
		// Several entries are struck one by one.
		{"note a; note b", "undo 1-2", "one entry at a time", "strike 1 probe slipped"},
		{"note a; note b", "undo 1 2", "one entry at a time", "strike 1 probe slipped"},
		{"note a; note b", "undo 1,2", "one entry at a time", "strike 1 probe slipped"},
		{"note a; note b", "oops 1-2 wrong leads", "one entry at a time", "strike 1 probe slipped"},
		{"note a; note b", "undo 1 to 2", "one entry at a time", "strike 1 probe slipped"},
		{"note a; note b; note c", "strike 1, 2 and 3", "one entry at a time", "strike 1 probe slipped"},
		{"note a; note b", "strike 1 2", "one entry at a time", "strike 1 probe slipped"},
		{"", "undo 3", "no entry is there yet", ""},
	}
	for _, r := range rows {
		typed := func(line string) error {
			c := New()
			for _, l := range strings.Split(r.before, "; ") {
				if l != "" {
					must(t, c, c.Expand(l))
				}
			}
			was := c.Len()
			full := c.Expand(line)
			err := c.Doubtful(full)
			if err == nil {
				_, err = c.Apply(nine, full)
			}
			if err != nil && c.Len() != was {
				t.Errorf("after %q, %q is refused and leaves an entry", r.before, line)
			}
			return err
		}
		err := typed(r.line)
		if err == nil {
			t.Errorf("after %q, %q is taken", r.before, r.line)
			continue
		}
		if !strings.Contains(err.Error(), r.says) || !strings.Contains(err.Error(), r.shows) {
			t.Errorf("after %q, %q is refused: %v; want %q and %q", r.before, r.line, err, r.says, r.shows)
		}
		for _, l := range append(shownLines(hintOf(err)), r.shows) {
			if l == "" {
				continue
			}
			if err := typed(l); err != nil {
				t.Errorf("after %q, %q shows %q, which is refused: %v", r.before, r.line, l, err)
			}
		}
	}
}

// hintOf is the hint of a refusal, "" for none.
func hintOf(err error) string {
	var at *source.Error
	if errors.As(err, &at) {
		return at.Hint
	}
	return ""
}

// TestReasonsOfAStrike holds that numbers among the words of a reason stay part
// of it.
func TestReasonsOfAStrike(t *testing.T) {
	answers(t, [][2]string{
		{"note a; undo 1 118 V was of another outlet", "Struck entry 1 (note a): 118 V was of another outlet."},
		{"note a; strike 1 -2F was wrong", "-2F was wrong."},
		{"note a; strike 1 40", "Struck entry 1 (note a): 40."},
		{"note a; undo 1", "taken back"},
	})
}
