package sum

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"ohmcall/calc/source"
)

// Def is a function that a user defined: `name(a, b) = body "help"`.
type Def struct {
	Name   string
	Params []string
	Body   string // the sum, as typed
	Help   string

	at int // runes before the body in the text it was parsed from
}

// What a definition may hold: parameters, and bytes of help.
const (
	maxParams = 9
	maxHelp   = 200
)

// defReader walks over the text of a definition.
type defReader struct {
	text []rune
	at   int
}

// ParseDef reads `name(a, b) = body` with an optional help text in double
// quotes after it. It does not look into the body: Check does. The error is
// a *source.Error with columns in text.
func ParseDef(text string) (Def, error) {
	r := defReader{text: []rune(text)}
	if len(text) > 8*maxBytes {
		return Def{}, whole(text, "this definition is too long")
	}
	for i, c := range r.text {
		if c == utf8.RuneError || unicode.IsControl(c) && c != '\t' {
			return Def{}, r.fault(i, i+1, "this sign cannot stand in a definition")
		}
	}
	var d Def
	var err error
	if d.Name, err = r.name("the definition's name"); err != nil {
		return d, err
	}
	if d.Params, err = r.params(); err != nil {
		return d, err
	}
	if err := r.take('='); err != nil {
		return d, err
	}
	r.blanks()
	d.at = r.at
	if d.Body, d.Help, err = r.body(); err != nil {
		return d, err
	}
	return d, nil
}

// String is the definition as ParseDef reads it.
func (d Def) String() string {
	s := d.Name + "(" + strings.Join(d.Params, ", ") + ") = " + d.Body
	if d.Help != "" {
		s += ` "` + d.Help + `"`
	}
	return s
}

func (r *defReader) fault(from, to int, format string, args ...any) *source.Error {
	return source.Errorf(from+1, max(to, from+1)+1, format, args...).
		WithHint("a definition is written: name(a, b) = a / b")
}

func (r *defReader) blanks() {
	for r.peek() == ' ' || r.peek() == '\t' {
		r.at++
	}
}

func (r *defReader) peek() rune {
	if r.at < len(r.text) {
		return r.text[r.at]
	}
	return 0
}

func (r *defReader) take(sign rune) error {
	r.blanks()
	if r.peek() != sign {
		return r.fault(r.at, r.at+1, "%q is missing here", string(sign))
	}
	r.at++
	return nil
}

func (r *defReader) name(what string) (string, error) {
	r.blanks()
	from := r.at
	for wordRune(r.peek()) && (r.at > from || letter(r.peek())) {
		r.at++
	}
	word := string(r.text[from:r.at])
	if word == "" {
		return "", r.fault(from, from+1, "%s is missing here", what)
	}
	if e := NameFault(word); e != nil {
		return "", e.Shift(from)
	}
	return word, nil
}

func (r *defReader) params() ([]string, error) {
	if err := r.take('('); err != nil {
		return nil, err
	}
	r.blanks()
	if r.peek() == ')' {
		r.at++
		return nil, nil
	}
	var list []string
	for {
		p, err := r.name("a parameter's name")
		from := r.at - len([]rune(p))
		switch {
		case err != nil:
			return nil, err
		case slices.Contains(list, p):
			return nil, r.fault(from, r.at, "the parameter %s stands twice", p)
		case len(list) == maxParams:
			return nil, r.fault(from, r.at, "there are more than %d parameters", maxParams)
		}
		list = append(list, p)
		r.blanks()
		if r.peek() != ',' {
			return list, r.take(')')
		}
		r.at++
	}
}

// body takes the sum and the help text after it: the first quote outside
// every bracket starts it.
func (r *defReader) body() (body, help string, err error) {
	depth := 0
	end := len(r.text)
	for i := r.at; i < end; i++ {
		switch r.text[i] {
		case '(':
			depth++
		case ')':
			depth--
		case '"':
			if depth == 0 {
				end = i
			}
		}
	}
	body = strings.TrimSpace(string(r.text[r.at:end]))
	if body == "" {
		return "", "", r.fault(r.at, end, "the sum is missing after the equals sign")
	}
	if len(body) > maxBytes {
		return "", "", r.fault(r.at, end, "this sum is too long: at most %d characters", maxBytes)
	}
	if end < len(r.text) {
		rest := strings.TrimSpace(string(r.text[end:]))
		help = strings.TrimSpace(strings.Trim(rest, `"`))
		if len(help) > maxHelp {
			return "", "", r.fault(end, len(r.text), "the help text is too long: at most %d characters", maxHelp)
		}
		if len(rest) < 2 || !strings.HasSuffix(rest, `"`) || strings.Contains(help, `"`) {
			return "", "", r.fault(end, len(r.text), "the help text is one text in double quotes at the end")
		}
	}
	return body, help, nil
}
