// Package term is the terminal's side of the prompt: how replies and faults
// are shown, and how lines are read. It knows nothing of what they mean.
//
// Whatever comes from data is cleaned before it is written: the only control
// sequences that ever leave this package are its own colours and those of the
// line editor.
package term

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"strings"

	"ohmcall/calc/source"
	"ohmcall/notebook/call"
	"ohmcall/notebook/script"
)

// widest is how far text runs on a wide screen, in columns: longer lines are
// hard to follow with the eye.
const widest = 100

// Printer shows replies and faults. All that the program says at the prompt
// goes through it, so that it speaks with one voice:
//
//   - Replies are sentences. What is danger starts with "Caution:".
//   - A fault says what was wrong in lower case without a full stop, shows the
//     line with carets under the place, and then "hint:" with what would have
//     worked.
//   - Colour repeats what the words say; nothing is said by colour alone.
//
// Replies go to Out, trouble to Err.
type Printer struct {
	Out, Err io.Writer
	Width    int  // of the screen in columns; 0 does not wrap
	Color    bool // whether tones are coloured
}

// sgr are the colours of the tones.
var sgr = map[call.Tone]string{
	call.Good:    "32",
	call.Warn:    "33",
	call.Bad:     "31",
	call.Caution: "1;31",
	call.Ask:     "36",
}

// Entry shows what a line was answered with.
func (p *Printer) Entry(e call.Entry) { p.Reply(e.Reply) }

// Reply shows a reply: its lines, then its table.
func (p *Printer) Reply(r *call.Reply) {
	if r == nil {
		return
	}
	for _, l := range r.Lines {
		p.Say(l.Tone, l.Text)
	}
	if r.Table == nil || len(r.Table.Rows) == 0 {
		return
	}
	rows := cells(r.Table)
	widths, ok := columnWidths(rows, p.Width)
	if !ok {
		for _, row := range rows[1:] {
			p.Say(call.Plain, listed(rows[0], row))
		}
		return
	}
	// Only text is hard to follow when it is wide.
	for _, line := range tableLines(rows, widths, p.Width) {
		fmt.Fprintln(p.Out, line)
	}
}

// Say shows one line of text.
func (p *Printer) Say(tone call.Tone, text string) {
	if tone == call.Caution && !strings.HasPrefix(text, "Caution:") {
		text = "Caution: " + text
	}
	p.write(p.Out, tone, text)
}

// Fault shows why a line was refused. The line must be the one to which the
// columns of the error belong.
func (p *Printer) Fault(line string, err error) {
	var at *source.Error
	if !errors.As(err, &at) {
		p.write(p.Err, call.Bad, "not taken: "+oneLine(err.Error()))
		return
	}
	msg, own := at.Msg, err.Error() == at.Error()
	if !own {
		// Something stands around it: its columns belong to another line.
		msg = strings.Replace(err.Error(), at.Error(), at.Msg, 1)
	}
	p.write(p.Err, call.Bad, "not taken: "+oneLine(msg))
	if at.Line != "" {
		line, own = at.Line, true
	}
	if at.Line != "" && at.Col == 0 {
		fmt.Fprintln(p.Err, "  "+script.Clean(line))
	}
	if own && at.Col > 0 {
		shown, carets := pointAt(strings.TrimSpace(script.Clean(line)), at.Col, at.End, p.columns())
		fmt.Fprintln(p.Err, "  "+shown)
		fmt.Fprintln(p.Err, "  "+carets)
	}
	if at.Hint != "" {
		p.write(p.Err, call.Plain, "hint: "+oneLine(at.Hint))
	}
}

// Trouble says what went wrong outside of any line.
func (p *Printer) Trouble(text string) { p.write(p.Err, call.Bad, oneLine(text)) }

// AtOnce lets what is shown by f go out in one piece.
func (p *Printer) AtOnce(f func()) {
	out := p.Out
	var b bytes.Buffer
	p.Out = &b
	f()
	p.Out = out
	out.Write(b.Bytes())
}

// Verbatim shows a line as it is, to be copied: it is cleaned but not broken.
func (p *Printer) Verbatim(line string) { fmt.Fprintln(p.Err, script.Clean(line)) }

// List shows words in columns, in reading order.
func (p *Printer) List(items []string) {
	clean := make([]string, len(items))
	for i, s := range items {
		clean[i] = script.Clean(s)
	}
	for _, line := range columns(clean, p.columns()) {
		fmt.Fprintln(p.Out, line)
	}
}

func (p *Printer) columns() int {
	if p.Width > widest {
		return widest
	}
	return p.Width
}

func (p *Printer) write(w io.Writer, tone call.Tone, text string) {
	for _, line := range wrap(script.Clean(text), p.columns()) {
		if code := sgr[tone]; p.Color && code != "" && line != "" {
			line = "\x1b[" + code + "m" + line + "\x1b[0m"
		}
		fmt.Fprintln(w, line)
	}
}

// oneLine keeps a joined error on one line.
func oneLine(s string) string {
	return strings.ReplaceAll(strings.TrimRight(s, "\n"), "\n", "; ")
}
