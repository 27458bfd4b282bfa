package term

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"os"
	"sync"

	"github.com/chzyer/readline"

	"ohmcall/notebook/script"
)

// Completer completes the line up to the cursor; list holds what to show when
// more than one completion is possible.
type Completer interface {
	Complete(head string) (text string, list []string)
}

// EditorOptions is what the line editor needs.
type EditorOptions struct {
	In       *os.File // a terminal
	Out      io.Writer
	Prompt   string // plain ASCII
	Width    func() int
	Complete Completer
	List     func(w io.Writer, words []string) // shows what Tab found
	History  []string                          // lines that the arrow keys recall
}

// editor reads lines on a terminal. The terminal is raw from the first line
// until Close, not only while a line is edited, so that what is typed or
// pasted meanwhile is neither drawn twice nor cut.
//
// A refused line is not put back on the prompt: it would swallow the next
// line of a paste. The up arrow brings it back.
type editor struct {
	o    EditorOptions
	keys *keys
	rl   *readline.Instance // nil until the first line is asked for

	mu  sync.Mutex
	was *readline.State // the terminal as it was found, nil when not raw
}

// NewEditor takes the terminal over. What is typed from then on waits there
// for the first ReadLine, which makes the line editor.
func NewEditor(o EditorOptions) (LineReader, error) {
	e := &editor{o: o}
	e.keys = &keys{input: newInput(o.In), suspend: e.suspend}
	if err := e.raw(); err != nil {
		return nil, err
	}
	return e, nil
}

// begin makes the line editor.
func (e *editor) begin() error {
	rl, err := readline.NewEx(&readline.Config{
		Prompt:                 e.o.Prompt,
		Stdin:                  io.NopCloser(e.keys),
		Stdout:                 e.o.Out,
		Stderr:                 e.o.Out,
		InterruptPrompt:        "  (" + ErrCancelled.Error() + ")",
		EOFPrompt:              "\n", // none
		AutoComplete:           silent{},
		Listener:               listener{e},
		Painter:                harmless{},
		DisableAutoSaveHistory: true,
		FuncGetWidth:           e.width,
		FuncIsTerminal:         func() bool { return true },
		FuncMakeRaw:            e.raw,
		FuncExitRaw:            func() error { return nil },
	})
	if err != nil {
		return err
	}
	e.rl = rl
	for _, line := range e.o.History {
		e.remember(line)
	}
	return nil
}

func (e *editor) ReadLine() (string, error) {
	if e.rl == nil {
		if err := e.begin(); err != nil {
			return "", err
		}
	}
	if line, ok := e.keys.takeLine(); ok {
		fmt.Fprintln(e.o.Out, e.o.Prompt+script.Clean(line))
		e.remember(line)
		return e.checked(line)
	}
	line, err := e.rl.Readline()
	switch {
	case errors.Is(err, readline.ErrInterrupt):
		return "", ErrCancelled
	case err != nil:
		return "", io.EOF
	case e.keys.over():
		// The editor sends off what is on the line when its input ends.
		return "", ErrCut
	}
	e.remember(line)
	return e.checked(line)
}

func (e *editor) checked(line string) (string, error) {
	if len(line) > script.MaxLine {
		return "", &TooLongError{len(line)}
	}
	return line, nil
}

// remember lets the arrow keys recall a line. It is cleaned, since it is
// drawn as it is.
func (e *editor) remember(line string) {
	if line = script.Clean(line); line != "" {
		e.rl.SaveHistory(line)
	}
}

func (e *editor) Pending() bool { return e.keys.waiting() || readable(e.o.In) }
func (e *editor) Stop()         { e.keys.stop() }

func (e *editor) Close() error {
	e.Stop()
	var err error
	if e.rl != nil {
		err = e.rl.Close()
	}
	return errors.Join(err, e.restore())
}

func (e *editor) width() int {
	if w := e.o.Width(); w > 0 {
		return w
	}
	return 80
}

func (e *editor) raw() error {
	e.mu.Lock()
	defer e.mu.Unlock()
	if e.was != nil {
		return nil
	}
	was, err := readline.MakeRaw(int(e.o.In.Fd()))
	if err == nil {
		e.was = was
	}
	return err
}

func (e *editor) restore() error {
	e.mu.Lock()
	defer e.mu.Unlock()
	if e.was == nil {
		return nil
	}
	err := readline.Restore(int(e.o.In.Fd()), e.was)
	e.was = nil
	return err
}

// suspend stops the program as the terminal's own Ctrl-Z would; the line
// being typed is there again afterwards.
func (e *editor) suspend() {
	e.restore()
	stopSelf()
	e.raw()
	e.rl.Refresh()
}

// silent completes nothing: Tab is the listener's.
type silent struct{}

func (silent) Do([]rune, int) ([][]rune, int) { return nil, 0 }

// harmless draws what could steer the screen as a mark; the line keeps it.
type harmless struct{}

func (harmless) Paint(line []rune, _ int) []rune {
	out := append([]rune(nil), line...)
	for i, r := range out {
		if r > 0x7E && script.Clean(string(r)) != string(r) {
			out[i] = '\uFFFD'
		}
	}
	return out
}

// listener completes on Tab. It can replace what is on the line, which the
// editor's own completion cannot.
type listener struct{ e *editor }

func (l listener) OnChange(line []rune, pos int, key rune) ([]rune, int, bool) {
	e := l.e
	if key != readline.CharTab || e.o.Complete == nil || e.rl == nil || e.rl.Operation.IsSearchMode() {
		return nil, 0, false
	}
	head := string(line[:pos])
	text, list, fault := l.complete(head)
	if fault != nil {
		fmt.Fprintf(e.rl.Stdout(), "ohmcall itself failed at completing this line (%v); it is as it was\n", fault)
	}
	if len(list) > 0 {
		var b bytes.Buffer
		e.o.List(&b, list)
		e.rl.Stdout().Write(b.Bytes()) // at once: the prompt is drawn anew after each write
	}
	if text == head {
		return nil, 0, false
	}
	r := []rune(script.Clean(text))
	return append(r, line[pos:]...), len(r), true
}

// complete completes a line; where that fails, the line stays as it is and is
// not lost with the program.
func (l listener) complete(head string) (text string, list []string, fault any) {
	defer func() {
		if fault = recover(); fault != nil {
			text, list = head, nil
		}
	}()
	text, list = l.e.o.Complete.Complete(head)
	return text, list, nil
}
