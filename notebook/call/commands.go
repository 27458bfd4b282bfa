package call

import (
	"sort"
	"strings"
	"sync"

	"ohmcall/calc/source"
	"ohmcall/notebook/script"
)

// Kind says what an argument is; parsing, usage, help and completion follow
// from it.
type Kind int

// The kinds of argument.
const (
	Text       Kind = iota // free text to the end of the line
	Name                   // one word of the user's own
	Choice                 // one word of a list
	Place                  // a pin, a machine or a place of measurement
	Readings               // points, value and conditions, several with commas
	Fields                 // `key value`, several with commas
	Expression             // a sum; a quoted text may follow it
	Quoted                 // a text in double quotes
	EntryRef               // the number of an entry
	Number                 // a plain number or percentage
	Definition             // name = sum, or name(a, b) = sum
	File                   // the name of a file
	Free                   // all remaining words
)

// Param is one argument of a command.
type Param struct {
	Name     string
	Kind     Kind
	Optional bool
	// Words lists what may stand here, for Choice, or what is offered, for
	// the other kinds. It may depend on the call.
	Words func(*Call) []string
}

// Group heads a part of the help screen.
type Group string

// The groups, in the order in which they are shown.
const (
	Reads   Group = "readings"
	Who     Group = "who and what"
	Work    Group = "seen and done"
	Meter   Group = "meter"
	Sums    Group = "sums"
	Scripts Group = "scripts"
	Asks    Group = "asking"
	Mends   Group = "mending and ending"
)

// Groups lists the groups in order.
var Groups = []Group{Reads, Who, Work, Meter, Sums, Scripts, Asks, Mends}

// Command is the one declaration of a command: parsing, dispatch, help,
// completion, error hints and the language page all derive from it.
type Command struct {
	Word     string
	Group    Group
	Params   []Param
	Help     string   // one line, shown in lists
	Doc      string   // what else there is to know; may be empty
	Examples []string // lines that can be pasted
	Screen   bool     // shown only: the line does not become an entry

	See   string // the page of help that lists what it knows, "" for none
	apply func(c *Call, a *args) (*Reply, error)
}

// Usage is the command's form: `ohm POINT [POINT] VALUE [CONDITION], …`.
func (c *Command) Usage() string {
	parts := []string{c.Word}
	for _, p := range c.Params {
		s := p.Name
		if p.Kind == Quoted {
			s = `"` + s + `"`
		}
		if p.Optional {
			s = "[" + s + "]"
		}
		parts = append(parts, s)
	}
	return strings.Join(parts, " ")
}

// lexicon holds the commands and what is derived from them. It is filled when
// first asked, by no initializer, since help reads what it is itself part of.
var lexicon struct {
	fill   sync.Once
	list   []*Command
	byWord map[string]*Command
	words  []string
}

func filled() {
	lexicon.fill.Do(func() {
		for _, list := range [][]Command{readingCommands(), identityCommands(), workCommands(), meterCommands(),
			sumCommands(), scriptCommands(), askCommands(), endCommands()} {
			install(list)
		}
	})
}

// install adds commands to the table and to what is derived from it.
func install(list []Command) {
	if lexicon.byWord == nil {
		lexicon.byWord = map[string]*Command{}
	}
	for i := range list {
		c := &list[i]
		lexicon.list = append(lexicon.list, c)
		lexicon.byWord[c.Word] = c
		lexicon.words = append(lexicon.words, c.Word)
	}
	sort.Strings(lexicon.words)
}

// Commands lists all commands in the order of the help.
func Commands() []*Command {
	filled()
	return lexicon.list
}

// commandWords lists their words in alphabetical order.
func commandWords() []string {
	filled()
	return lexicon.words
}

// Find returns the command of that word, nil when there is none.
//
//go:noinline
func Find(word string) *Command {
	filled()
	return lexicon.byWord[word]
}

// arg is one bound argument.
type arg struct {
	given bool
	word  script.Word   // the word, or the first of several
	text  string        // its text
	col   int           // where the text starts
	end   int           // one past its end
	words []script.Word // for Readings, Fields, Free
}

//go:noinline
func (a arg) errorf(format string, v ...any) *source.Error {
	return source.Errorf(a.col, a.end, format, v...)
}

// args are a statement's arguments, in the order of the parameters.
type args struct {
	cmd  *Command
	line *script.Line
	at   []arg
}

//go:noinline
func (a *args) get(name string) arg {
	for i := range a.cmd.Params {
		if a.cmd.Params[i].Name == name {
			return a.at[i]
		}
	}
	return arg{}
}

//go:noinline
func (a *args) has(name string) bool { return a.get(name).given }

//go:noinline
func (a *args) text(name string) string { return a.get(name).text }

// first is the argument of the first parameter.
func (a *args) first() arg { return a.at[0] }

// bind fits the words of a line to a command's parameters.
func (c *Call) bind(cmd *Command, l *script.Line) (*args, error) {
	a := &args{cmd: cmd, line: l, at: make([]arg, len(cmd.Params))}
	words := l.Words[1:]
	for i, p := range cmd.Params {
		if len(words) == 0 && p.Kind != Text {
			if p.Optional {
				continue
			}
			return nil, missing(cmd, l, p)
		}
		switch p.Kind {
		case Text:
			text, col := l.Rest()
			if i > 0 && len(words) > 0 {
				skip := words[0].Col - col
				r := []rune(text)
				text, col = string(r[min(skip, len(r)):]), words[0].Col
			} else if i > 0 {
				text = ""
			}
			if text == "" {
				if p.Optional {
					continue
				}
				return nil, missing(cmd, l, p)
			}
			text = unquote(text)
			a.at[i] = arg{given: true, text: text, col: col, end: col + len([]rune(text)), words: words}
			words = nil
		case Readings, Fields, Free:
			a.at[i] = span(words)
			words = nil
		case Expression, Definition:
			n := len(words)
			if n > 1 && words[n-1].Quoted && i+1 < len(cmd.Params) && cmd.Params[i+1].Kind == Quoted {
				n--
			}
			sp := span(words[:n])
			r := []rune(l.Text)
			sp.text = string(r[sp.col-1 : sp.end-1])
			a.at[i] = sp
			words = words[n:]
		default:
			w := words[0]
			if w.Comma() {
				return nil, w.Errorf("a comma stands where %s is wanted", p.Name).WithHint("%s", hint(cmd))
			}
			if p.Kind == Quoted && !w.Quoted {
				if p.Optional {
					continue
				}
				return nil, w.Errorf("%s must stand in double quotes", p.Name).WithHint("%s", hint(cmd))
			}
			if p.Kind == Choice {
				list := p.Words(c)
				if !among(list, w.Text) {
					if p.Optional && i+1 < len(cmd.Params) {
						continue
					}
					e := w.Errorf("%q is not one of %s", w.Text, strings.Join(list, ", "))
					if n := source.Nearest(w.Text, list); n != "" {
						e = e.WithHint("perhaps %s", n)
					}
					return nil, e
				}
			}
			a.at[i] = arg{given: true, word: w, text: w.Text, col: w.Col, end: w.End}
			words = words[1:]
		}
	}
	if len(words) > 0 {
		return nil, source.Errorf(words[0].Col, words[len(words)-1].End, "more than %s takes", cmd.Word).
			WithHint("%s", hint(cmd))
	}
	return a, nil
}

// span covers several words by one argument.
func span(words []script.Word) arg {
	first, last := words[0], words[len(words)-1]
	texts := make([]string, len(words))
	for i, w := range words {
		texts[i] = w.Text
	}
	return arg{given: true, word: first, text: strings.Join(texts, " "), col: first.Col, end: last.End, words: words}
}

// hint shows how the command is written.
func hint(cmd *Command) string {
	if len(cmd.Examples) == 0 {
		return cmd.Usage()
	}
	return "as in: " + cmd.Examples[0]
}

func missing(cmd *Command, l *script.Line, p Param) error {
	end := l.Words[len(l.Words)-1].End
	if cmd.Word == "strike" && len(l.Words) == 2 && onlyDigits(l.Words[1].Text) {
		return source.Errorf(end, end+1, "strike wants a reason").WithHint("as in: %s probe slipped", l.Body[:l.Comment])
	}
	return source.Errorf(end, end+1, "%s wants %s", cmd.Word, p.Name).WithHint("%s", hint(cmd))
}

// unquote takes the quotes off a text that is one quoted whole.
func unquote(s string) string {
	if len(s) >= 2 && s[0] == '"' && s[len(s)-1] == '"' && !strings.Contains(s[1:len(s)-1], `"`) {
		return s[1 : len(s)-1]
	}
	return s
}

// split divides words at the commas; an empty part is an error.
func split(words []script.Word) ([][]script.Word, error) {
	var parts [][]script.Word
	start := 0
	for i, w := range words {
		if w.Comma() {
			if i == start {
				return nil, w.Errorf("nothing stands before this comma")
			}
			parts = append(parts, words[start:i])
			start = i + 1
		}
	}
	if start == len(words) && start > 0 {
		w := words[len(words)-1]
		return nil, w.Errorf("nothing follows this comma")
	}
	return append(parts, words[start:]), nil
}
