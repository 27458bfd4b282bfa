package repl

import (
	"flag"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"ohmcall/notebook"
	"ohmcall/notebook/call"
)

var update = flag.Bool("update", false, "write the .call files anew; look at each of them before keeping it")

// Keys that are no characters, as the .keys files write them.
const (
	tabKey       = "{tab}"
	upKey        = "{up}"
	backspaceKey = "{bs}"
)

// typist is a person at the prompt: a line, a completer, the lines before.
type typist struct {
	n       *notebook.Notebook
	k       *Completer
	history []string
}

func newTypist() *typist {
	at := time.Date(2026, 3, 2, 9, 0, 0, 0, time.UTC)
	n := notebook.New(notebook.Host{Now: func() time.Time { return at }})
	return &typist{n: n, k: &Completer{Call: n.Call}}
}

// keyIn types one line of a .keys file and Enter; it returns what the call
// stored for it and how many keys were pressed.
func (p *typist) keyIn(t *testing.T, keys string) (stored []string, strokes int) {
	t.Helper()
	line, back := "", len(p.history)
	for rest := keys; rest != ""; strokes++ {
		switch {
		case strings.HasPrefix(rest, tabKey):
			line, _ = p.k.Complete(line)
			rest = rest[len(tabKey):]
		case strings.HasPrefix(rest, upKey):
			back--
			line = p.history[back]
			rest = rest[len(upKey):]
		case strings.HasPrefix(rest, backspaceKey):
			_, n := utf8.DecodeLastRuneInString(line)
			line, rest = line[:len(line)-n], rest[len(backspaceKey):]
		default:
			_, n := utf8.DecodeRuneInString(rest)
			line, rest = line+rest[:n], rest[n:]
		}
	}
	strokes++ // Enter
	p.history = append(p.history, line)
	entries, err := p.n.Do(line)
	if err != nil {
		t.Fatalf("%q, typed as %q, is refused: %v", line, keys, err)
	}
	for _, e := range entries {
		stored = append(stored, e.Line)
	}
	return stored, strokes
}

// bareFacts is the length of what only the technician can know in a stored
// line: the line without its command word and without the commas, single
// spaces between its words. A sum is a fact whole; a command that says all by
// its word alone (safe, close, roles) is that word. This is what one would
// scribble on paper whose columns are headed with the command words.
func bareFacts(line string) int {
	words := strings.Fields(strings.ReplaceAll(line, ",", " "))
	if len(words) > 1 && commandWord(words[0]) {
		words = words[1:]
	}
	return utf8.RuneCountInString(strings.Join(words, " "))
}

func commandWord(s string) bool {
	return slices.ContainsFunc(commandWords(), func(w string) bool { return w == s })
}

// readingWords head the lines that hold readings.
var readingWords = []string{"ohm", "volt", "amp", "mfd", "temp", "watt", "psi"}

// TestKeystrokes types ten complete invented calls, with the completer and the
// expansion that the prompt uses, and holds
//
//   - that each gives exactly the lines of the .call file beside its keys,
//   - that all keystrokes (characters, Tab, Enter, arrows and corrections)
//     are at most 1.15 times the bare facts (see bareFacts) over the ten,
//   - that the median line with readings takes at most 12 keystrokes.
func TestKeystrokes(t *testing.T) {
	files, err := filepath.Glob("testdata/keys/*.keys")
	if err != nil || len(files) < 10 {
		t.Fatalf("%d calls, %v", len(files), err)
	}
	var strokes, facts, full int
	var readings []int
	for _, file := range files {
		keys := readLines(t, file)
		p := newTypist()
		var stored []string
		callStrokes, callFacts := 0, 0
		for _, k := range keys {
			lines, n := p.keyIn(t, k)
			stored = append(stored, lines...)
			callStrokes += n
			for _, l := range lines {
				callFacts += bareFacts(l)
				full += utf8.RuneCountInString(l) + 1
			}
			if len(lines) > 0 && slices.Contains(readingWords, strings.Fields(lines[0])[0]) {
				readings = append(readings, n)
			}
		}
		want := strings.TrimSuffix(file, ".keys") + ".call"
		if *update {
			if err := os.WriteFile(want, []byte(strings.Join(stored, "\n")+"\n"), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		if w := readLines(t, want); !slices.Equal(stored, w) {
			t.Errorf("%s gives\n%s\nwant\n%s", file, strings.Join(stored, "\n"), strings.Join(w, "\n"))
		}
		t.Logf("%-28s %4d keys %4d facts %.3f", filepath.Base(file), callStrokes, callFacts, float64(callStrokes)/float64(callFacts))
		strokes += callStrokes
		facts += callFacts
	}
	slices.Sort(readings)
	median := readings[len(readings)/2]
	ratio := float64(strokes) / float64(facts)
	t.Logf("all: %d keys, %d facts, ratio %.3f; %d reading lines, median %d keys; typed out in full %d keys", strokes, facts, ratio, len(readings), median, full)
	if ratio > 1.15 {
		t.Errorf("%d keystrokes for %d characters of facts: %.3f, at most 1.15", strokes, facts, ratio)
	}
	if median > 12 {
		t.Errorf("the median reading line takes %d keystrokes, at most 12", median)
	}
}

func readLines(t *testing.T, name string) []string {
	t.Helper()
	b, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	return notebook.ScriptLines(b)
}

func commandWords() []string {
	var out []string
	for _, c := range call.Commands() {
		out = append(out, c.Word)
	}
	return out
}
