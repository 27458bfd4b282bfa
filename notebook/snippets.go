package notebook

import (
	"errors"
	"fmt"
	"strings"

	"ohmcall/calc/source"
	"ohmcall/notebook/call"
	"ohmcall/notebook/script"
)

// rehearse takes a file in on a copy of the call that is stored nowhere: where
// one line is refused, the whole file is, and the record is as it was.
func (n *Notebook) rehearse(text string) error {
	h := n.host
	if h.Keep != nil {
		h.Keep = func(string) error { return nil }
	}
	copied := &Notebook{host: h, call: n.upTo(n.call.Len()), cost: n.cost}
	name, uses := copied.usedFile(text)
	_, err := copied.take(text, 0, name, uses)
	var at *source.Error
	if errors.As(err, &at) && at.Line != "" {
		e := *at
		e.Msg += "; nothing of the file was taken"
		return &e
	}
	return err
}

// inFile says in which line of which file a fault is.
func inFile(name string, row int, line string, err error) error {
	var at *source.Error
	var unsaved *SaveError
	if errors.As(err, &unsaved) || errors.Is(err, ErrFull) {
		return fmt.Errorf("line %d of %s: %w", row, name, err)
	}
	if !errors.As(err, &at) {
		at = &source.Error{Msg: err.Error()}
	}
	e := *at
	e.Msg = fmt.Sprintf("line %d of %s: %s", row, script.Clean(name), at.Msg)
	if e.Line == "" {
		e.Line = strings.TrimSpace(script.Clean(line))
	}
	if row == 1 && e.Line == "---" {
		e.Hint = "a notebook is no script: keep NAME, typed in that call, puts a definition among your snippets, and each call takes it from there"
	}
	return &e
}

// ScriptLines cuts a script into its lines.
func ScriptLines(content []byte) []string {
	text := strings.TrimPrefix(string(content), "\uFEFF")
	text = strings.TrimSuffix(strings.ReplaceAll(text, "\r\n", "\n"), "\n")
	return strings.Split(text, "\n")
}

func (n *Notebook) usedFile(text string) (string, bool) {
	s, err := n.call.Parse(text)
	if err != nil || s.Kind() != "use" {
		return "", false
	}
	return s.Word(0), true
}

func (n *Notebook) script(name string) ([]byte, error) {
	if n.host.Script == nil {
		return nil, errors.New("no files can be used here")
	}
	return n.host.Script(name)
}

// keep puts what a line of keep names among the user's own snippets, before the
// line is written down: what is recorded as kept is kept.
func (n *Notebook) keep(text string) error {
	s, err := n.call.Parse(text)
	if err != nil || s.Kind() != "keep" {
		return nil // entering it says what is wrong
	}
	name := s.Word(0)
	if _, ok := n.call.DefinitionLine(name); !ok {
		return nil
	}
	if err := n.keepAll(name, map[string]bool{}); err != nil {
		return s.Line.Words[1].Errorf("%s is not kept: %v", name, err)
	}
	return nil
}

// keepAll keeps a definition, and before it those that it rests on.
func (n *Notebook) keepAll(name string, done map[string]bool) error {
	def, ok := n.call.DefinitionLine(name)
	if !ok || n.host.Keep == nil {
		return errors.New("there is nowhere to keep it")
	}
	if lack := n.call.Lacks(name); lack != "" {
		return errors.New("it rests on " + lack + ", which counts no more in this call")
	}
	done[name] = true
	for _, other := range n.call.Uses(name) {
		if !done[other] {
			if err := n.keepAll(other, done); err != nil {
				return err
			}
		}
	}
	return n.host.Keep(def)
}

// snippetsFor lists the lines that define what a line needs of the user's
// own snippets, in the order in which they must be entered. One that rests on
// another that is kept, where the call has a meaning of its own for that, is
// refused: it would come to something else than when it was kept.
func (n *Notebook) snippetsFor(text string) ([]string, error) {
	if len(n.host.Snippets) == 0 {
		return nil, nil
	}
	var out []string
	var fault error
	seen := map[string]bool{}
	var want func(text string)
	want = func(text string) {
		for _, name := range n.call.Unknown(text) {
			line, ok := n.host.Snippets[name]
			if !ok || seen[name] {
				continue
			}
			seen[name] = true
			for _, other := range n.call.Known(line) {
				have, _ := n.call.DefinitionLine(other)
				if kept, is := n.host.Snippets[other]; is && kept != have && fault == nil {
					fault = (&source.Error{Msg: name + " was kept with " + strings.TrimSpace(kept) + ", and here " + other + " is another"}).
						WithHint("give yours another name, or take the kept one: %s", kept)
				}
			}
			want(line)
			out = append(out, line)
		}
	}
	want(text)
	return out, fault
}

// onlyKept reports whether a word is the name of one of the user's own snippets
// that the call has not taken in.
func (n *Notebook) onlyKept(word string) bool {
	_, here := n.call.DefinitionLine(word)
	return n.host.Snippets[word] != "" && !here
}

// showKept answers help on a kept snippet from a copy of the call that takes it
// in: looking at it writes nothing down.
func (n *Notebook) showKept(text, name string) ([]call.Entry, error) {
	copied := &Notebook{host: n.host, call: n.upTo(n.call.Len()), cost: n.cost}
	if _, err := copied.do(n.host.Snippets[name], 0); err != nil {
		return nil, err
	}
	out, err := copied.do(text, 0)
	for i := range out {
		out[i].N = 0
	}
	return out, err
}
