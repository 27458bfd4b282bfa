//go:build linux

package reliability

import (
	"bytes"
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/text"

	"ohmcall/notebook"
	"ohmcall/notebook/call"
	"ohmcall/notebook/page"
	"ohmcall/notebook/script"
)

// mutate changes a text as accidents and enemies do.
func mutate(r *rand.Rand, b []byte) []byte {
	b = bytes.Clone(b)
	for range 1 + r.IntN(6) {
		if len(b) == 0 {
			return append(b, byte(r.IntN(256)))
		}
		i := r.IntN(len(b))
		j := min(len(b), i+1+r.IntN(40))
		switch r.IntN(7) {
		case 0:
			b[i] ^= 1 << r.IntN(8)
		case 1:
			b[i] = byte(r.IntN(256))
		case 2:
			b = append(b[:i], b[j:]...)
		case 3:
			b = append(b[:j], append(bytes.Clone(b[i:j]), b[j:]...)...)
		case 4: // a line twice, or elsewhere
			lines := bytes.SplitAfter(b, []byte("\n"))
			k, l := r.IntN(len(lines)), r.IntN(len(lines))
			lines[k] = append(bytes.Clone(lines[k]), lines[l]...)
			b = bytes.Join(lines, nil)
		case 5: // a line gone
			lines := bytes.SplitAfter(b, []byte("\n"))
			lines[r.IntN(len(lines))] = nil
			b = bytes.Join(lines, nil)
		default:
			b = b[:i]
		}
	}
	return b
}

// hold reads a file as every reader of ours does; a panic is a fault.
func hold(content []byte, whole bool) (err error) {
	defer func() {
		if p := recover(); p != nil {
			err = fmt.Errorf("panic: %v on %q", p, content)
		}
	}()
	page.Head(content)
	if _, err := page.Read(content); err != nil {
		return nil // refused in words
	}
	if !whole {
		return nil
	}
	notebook.Check(content)
	m := newPowerFS(map[string][]byte{"call.md": content})
	n, err := notebook.Open(m.host(), "call.md")
	if err != nil {
		return nil // refused in words, and left alone
	}
	if _, err := n.Do("note after all"); err != nil {
		return err
	}
	if err := n.Close(); err != nil {
		return err
	}
	if err := checks(m.now("call.md")); err != nil {
		return fmt.Errorf("mended: %w\n%q", err, content)
	}
	return nil
}

// mutations is T17.
func mutations(w *watch) {
	r := rand.New(rand.NewPCG(17, 17))
	seeds := fixtures(w, 8)
	for i := range w.due("mutations") {
		b := mutate(r, seeds[i%len(seeds)])
		if w.red() {
			return
		}
		w.count("mutations", 1)
		if err := hold(b, i%20 == 0); err != nil {
			w.fault("mutation %d: %v", i, err)
		}
		if line := b[:min(len(b), 200)]; i%4 == 0 {
			script.Parse(string(line))
		}
	}
	for i := range w.due("conversations") {
		w.count("conversations", 1)
		if err := converse(typedAtRandom(r)); err != nil {
			w.fault("conversation %d: %v", i, err)
		}
	}
}

// typedAtRandom makes the lines of a conversation out of the examples in the
// help, some of them mutated.
func typedAtRandom(r *rand.Rand) string {
	commands := call.Commands()
	var typed []string
	for range 3 + r.IntN(14) {
		c := commands[r.IntN(len(commands))]
		line := c.Examples[r.IntN(len(c.Examples))]
		switch r.IntN(5) {
		case 0:
			line = string(mutate(r, []byte(line)))
		case 1:
			line = []string{"14:30 ", "+40min ", "+9d ", "when 1 < 2: ", "  ", "+999999d "}[r.IntN(6)] + line
		case 2:
			line += []string{" ```", " # x", " |", " <b>", " \x1b[2J", " cold", ", 3", " \u202e"}[r.IntN(8)]
		}
		typed = append(typed, strings.ReplaceAll(line, "\n", " "))
	}
	return strings.Join(typed, "\n")
}

// converse types lines into a new call and holds the file, after each, to
// what it must always be.
func converse(typed string) error {
	m := newPowerFS(nil)
	n, err := notebook.Create(m.host(), "call.md")
	if err != nil {
		return err
	}
	var acked []string
	for _, line := range strings.Split(typed, "\n") {
		before := n.Call().Len()
		entries, err := n.Do(line)
		for _, e := range entries {
			if e.N > 0 {
				acked = append(acked, e.Line)
			}
		}
		if err != nil && len(entries) == 0 && n.Call().Len() != before {
			return fmt.Errorf("%q was refused and counts: %w", line, err)
		}
		content := m.now("call.md")
		if len(acked) == 0 && content == nil {
			continue // the first entry makes the file
		}
		if err := valid(content); err != nil {
			return fmt.Errorf("after %q: %w", line, err)
		}
		if err := recorded(content, acked); err != nil {
			return fmt.Errorf("after %q: %w", line, err)
		}
	}
	if err := n.Close(); err != nil {
		return err
	}
	content := m.now("call.md")
	if len(acked) == 0 {
		if content != nil {
			return fmt.Errorf("nothing was taken and there is a file: %q", content)
		}
		return nil
	}
	if err := valid(content); err != nil {
		return fmt.Errorf("closed: %w", err)
	}
	if err := recorded(content, acked); err != nil {
		return fmt.Errorf("closed: %w", err)
	}
	if err := checks(content); err != nil {
		return fmt.Errorf("%w\nof %q", err, typed)
	}
	r, err := notebook.Check(content)
	if err != nil {
		return err
	}
	if again := page.Render(r.Record, nil); !bytes.Equal(again, content) {
		return fmt.Errorf("a replay writes other bytes: %s", firstDifference(again, content))
	}
	return nil
}

func firstDifference(a, b []byte) string {
	x, y := bytes.Split(a, []byte("\n")), bytes.Split(b, []byte("\n"))
	for i := range x {
		if i >= len(y) || !bytes.Equal(x[i], y[i]) {
			return fmt.Sprintf("line %d: %q", i+1, x[i])
		}
	}
	return "it is longer"
}

func recorded(content []byte, acked []string) error {
	f, err := page.Read(content)
	if err != nil {
		return err
	}
	var have []string
	for _, e := range f.Entries {
		have = append(have, e.Line)
	}
	return holds(acked, acked, have)
}

// valid holds a page to being Markdown with one log, which ends it.
func valid(content []byte) error {
	if !utf8.Valid(content) {
		return fmt.Errorf("the file is not UTF-8")
	}
	if i := bytes.IndexFunc(content, steers); i >= 0 {
		return fmt.Errorf("%q stands in the file", content[i:min(len(content), i+4)])
	}
	src := body(content)
	doc := gfm.Parser().Parse(text.NewReader(src))
	logs, last := 0, false
	for n := doc.FirstChild(); n != nil; n = n.NextSibling() {
		if n.Kind() == ast.KindHTMLBlock {
			return fmt.Errorf("there is HTML")
		}
		c, ok := n.(*ast.FencedCodeBlock)
		if ok && string(c.Language(src)) == "ohmcall" {
			logs++
			last = n.NextSibling() == nil
		}
	}
	if logs != 1 || !last {
		return fmt.Errorf("%d logs, last: %v", logs, last)
	}
	return nil
}

// FuzzPrompt types anything at the prompt.
func FuzzPrompt(f *testing.F) {
	r := rand.New(rand.NewPCG(1, 1))
	for range 20 {
		f.Add(typedAtRandom(r))
	}
	f.Fuzz(func(t *testing.T, typed string) {
		if len(typed) > 4000 {
			return
		}
		if err := converse(typed); err != nil {
			t.Fatal(err)
		}
	})
}

// FuzzNotebook opens anything as a notebook.
func FuzzNotebook(f *testing.F) {
	f.Add([]byte("---\nohmcall: 1\nstate: \"open\"\nentries: 0\n---\n\n## Log\n\nopen\n\n```ohmcall\n1 2026-03-02T09:00:00+00:00 note a\n# Noted.\n"))
	f.Add(hostilePage("x"))
	f.Fuzz(func(t *testing.T, content []byte) {
		if err := hold(content, true); err != nil {
			t.Fatal(err)
		}
	})
}
