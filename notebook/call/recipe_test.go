package call

import (
	"slices"
	"strings"
	"testing"
)

// TestRecipeCommand adds a command as a developer would: one entry of the
// table, and parsing, dispatch, help, hints and the language page have it.
func TestRecipeCommand(t *testing.T) {
	filled()
	before, words := slices.Clone(lexicon.list), slices.Clone(lexicon.words)
	defer func() {
		lexicon.list, lexicon.words = before, words
		delete(lexicon.byWord, "shout")
	}()
	install([]Command{{
		Word: "shout", Group: Work,
		Params:   []Param{{Name: "TEXT", Kind: Text}},
		Help:     "say it loudly",
		Examples: []string{"shout hello"},
		apply: func(c *Call, a *args) (*Reply, error) {
			c.worked(work{c.entry, c.at, "note", strings.ToUpper(a.text("TEXT"))})
			return say(strings.ToUpper(a.text("TEXT"))), nil
		},
	}})
	c := New()
	if got := must(t, c, "shout hello").Reply.Plain(); got != "HELLO" {
		t.Errorf("got %q", got)
	}
	if got := must(t, c, "help shout").Reply.Plain(); !strings.Contains(got, "say it loudly") {
		t.Errorf("help says %q", got)
	}
	if _, err := c.Apply(nine, "shout"); err == nil || !strings.Contains(err.Error(), "shout hello") {
		t.Errorf("a missing text gives %v", err)
	}
	if _, err := c.Apply(nine, "shuot hello"); err == nil || !strings.Contains(err.Error(), "perhaps: shout hello") {
		t.Errorf("a slip gives %v", err)
	}
	if got := Language(); !strings.Contains((&Reply{Lines: got.Lines}).Plain(), "shout TEXT") {
		t.Error("the language page does not have it")
	}
	if !strings.Contains(flat(c.Record().Work), "HELLO") {
		t.Error("the record does not have it")
	}
}
