package sum

import (
	"slices"
	"strings"
	"unicode"

	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
)

// word takes a name, a call, a keyword or a conversion.
func (p *preparer) word() error {
	n := 0
	for p.at+n < len(p.source) && wordRune(p.source[p.at+n]) {
		n++
	}
	text := string(p.source[p.at : p.at+n])
	switch text {
	case "and", "or", "not":
		p.copy(n)
		p.operand = false
		return nil
	case "true", "false":
		p.copy(n)
		p.operand = true
		return nil
	case "in":
		if !p.operand {
			return p.fault(p.at, p.at+n, "in stands between a value and a unit, such as 75F in degC")
		}
		p.copy(n)
		return p.unit()
	}
	if words[text] {
		e := p.fault(p.at, p.at+n, "%s is not used in sums", text)
		if text == "if" || text == "else" {
			e = e.WithHint("a choice is written: condition ? this : that")
		}
		return e
	}
	if p.operand {
		if p.whole.to > 0 && p.whole.to == p.at-1 && n > 1 && text != "of" && text != "to" {
			if _, _, err := quantity.Scan([]rune("1" + text)); err != nil {
				return shifted(err, p.at-1) // as it would be told without the blank
			}
		}
		return p.fault(p.at, p.at+n, "an operator such as + or * is missing before %s", source.Short(text))
	}
	after := n
	for p.peek(after) == ' ' {
		after++
	}
	if p.peek(after) == '(' {
		return p.call(text, n, after)
	}
	per, err := p.behindSlash(text, n)
	if err != nil {
		return err
	}
	if !slices.ContainsFunc(p.names, func(x name) bool { return x.text == text }) {
		p.names = append(p.names, name{text, p.at + 1, per})
	}
	p.copy(n)
	p.operand = true
	return nil
}

// behindSlash is one of a unit that stands directly behind a value and a slash, as
// the kWh of 0.31/kWh, or one of time or length behind a name; nil for what is a name
// alone. Of letters those that are rather names of values or pins are no units.
func (p *preparer) behindSlash(text string, n int) (*quantity.Q, error) {
	if p.at < 2 || p.source[p.at-1] != '/' {
		return nil, nil
	}
	behind, old := letter(p.source[p.at-2]), strings.Contains(" s sec min h hr day m ft ", " "+text+" ")
	value := p.value.to == p.at-1
	if !value && !(behind && old) || n == 1 && text != "h" && !(behind && strings.Contains("smgLJKF", text)) {
		return nil, nil
	}
	one, err := quantity.New(1, text)
	if err != nil {
		return nil, nil
	}
	if one.Kind() != quantity.Plain {
		one, _ = quantity.New(1, "1*"+text) // a degree or a psi more
	}
	if !value {
		return &one, nil
	}
	from := strings.TrimRight(string(p.source[:p.value.from]), " ")
	if p.ev.strict && strings.HasSuffix(from, "/") {
		p.ev.doubted = true
		return nil, p.fault(p.at-1, p.at+n, "this divides both by %s and by %s", string(p.source[p.value.from:p.at-1]), text)
	}
	p.rate += "/" + text
	p.other = p.other || !old
	p.value.to = p.at + n
	return &one, nil
}

func (p *preparer) call(text string, n, after int) error {
	f, err := p.ev.function(text)
	if e, ok := err.(*source.Error); ok {
		e = e.Shift(0)
		e.Col, e.End = p.at+1, p.at+n+1
		return e
	}
	if f == nil {
		e := p.fault(p.at, p.at+n, "there is no function named %q", source.Short(text))
		p.ev.work += nearWork
		near := source.Nearest(text, p.ev.names())
		for _, name := range p.ev.names() {
			if strings.HasPrefix(name, text+"_") {
				near = name
			}
		}
		if near != "" {
			return e.WithHint("did you mean %s?", near)
		}
		return e.WithHint("help lists the functions")
	}
	if p.calls == nil {
		p.calls = make(map[string]*Func, 4)
	}
	p.calls[text] = f
	p.copy(after)
	p.open(f)
	return nil
}

// unit takes the unit after `in` and hands it to expr as a string.
func (p *preparer) unit() error {
	for p.peek(0) == ' ' {
		p.copy(1)
	}
	n := 0
	for p.at+n < len(p.source) && unitRune(p.source[p.at+n]) {
		n++
	}
	text := strings.TrimRight(string(p.source[p.at:p.at+n]), "*/·.^")
	_, err := quantity.ParseUnit(text)
	if text == "" || err != nil {
		// `x in kW*2`: the unit ends where the first word ends.
		first := strings.FieldsFunc(text, func(r rune) bool { return strings.ContainsRune("*/·.^", r) })
		if len(first) > 0 {
			if _, again := quantity.ParseUnit(first[0]); again == nil && first[0] != text {
				text, err = first[0], nil
			}
		}
		if text == "" {
			return p.fault(p.at, p.at+1, "a unit is missing after in").WithHint("such as 75F in degC")
		}
	}
	if err != nil {
		return shifted(err, p.at)
	}
	p.replace(len([]rune(text)), `"`+text+`"`, true)
	p.operand = true
	return nil
}

func unitRune(r rune) bool {
	return unicode.IsLetter(r) || strings.ContainsRune("°%*/·.^23²³", r)
}

// Lengths in runes of a name and of a text in quotes in a call.
const (
	maxPoint = 64
	maxText  = 200
)

// quoted takes a text in quotes.
func (p *preparer) quoted(quote rune) error {
	n := 1
	for p.peek(n) != quote {
		if p.at+n >= len(p.source) {
			return p.fault(p.at, p.at+1, "this quote is not closed")
		}
		n++
	}
	if len(p.frames) == 0 || p.operand {
		return p.fault(p.at, p.at+n+1, "a text stands only between a function's brackets")
	}
	text := string(p.source[p.at+1 : p.at+n])
	for i, r := range p.source[p.at+1 : p.at+n] {
		if i >= maxText {
			return p.fault(p.at, p.at+n+1, "this text is too long")
		}
		if !unicode.IsPrint(r) || r == '"' || r == '\\' || r == unicode.ReplacementChar {
			return p.fault(p.at+1+i, p.at+2+i, "%q cannot stand in a text", string(r))
		}
	}
	p.replace(n+1, `"`+text+`"`, true)
	p.operand = true
	return nil
}

// point takes an argument that is a name or a text, up to the comma or the
// bracket that ends it.
func (p *preparer) point(param *Param) error {
	if r := p.peek(0); r == '"' || r == '\'' {
		return p.quoted(r)
	}
	n := 0
	for p.at+n < len(p.source) && p.peek(n) != ',' && p.peek(n) != ')' {
		n++
	}
	text := strings.TrimRight(string(p.source[p.at:p.at+n]), " \t")
	if text == "" {
		return p.fault(p.at, p.at+1, "%s is missing here", param.Name)
	}
	if err := p.plainName(text, p.at); err != nil {
		return err.WithHint("the %s is a name: %s", param.Name, p.frames[len(p.frames)-1].call.Usage())
	}
	p.replace(len([]rune(text)), `"`+text+`"`, true)
	p.operand = true
	return nil
}

// plainName refuses what the name of a point does not need.
func (p *preparer) plainName(text string, at int) *source.Error {
	for i, r := range []rune(text) {
		if i >= maxPoint {
			return p.fault(at, at+i, "this name is too long")
		}
		if !unicode.IsLetter(r) && !unicode.IsDigit(r) && !strings.ContainsRune(" -_./+#°'", r) {
			return p.fault(at+i, at+i+1, "%q cannot stand in a name", string(r))
		}
	}
	return nil
}

// columns leads a place in the prepared text back to columns of the source.
func (p *prepared) columns(from, to int) (col, end int) {
	start, _ := p.origin(from)
	_, stop := p.origin(max(to-1, from))
	n := len(p.source)
	return min(start, n) + 1, max(min(stop, n), min(start, n)+1) + 1
}

// origin is the part of the source that one rune of the prepared text comes
// from.
func (p *prepared) origin(at int) (from, to int) {
	for i := len(p.segments) - 1; i >= 0; i-- {
		s := p.segments[i]
		if s.out > at {
			continue
		}
		if s.generated {
			return s.in, s.in + s.length
		}
		return s.in + at - s.out, s.in + at - s.out + 1
	}
	return 0, 1
}

// between is the source text between two columns.
func (p *prepared) between(col, end int) string {
	n := len(p.source)
	return string(p.source[min(max(col-1, 0), n):min(max(end-1, 0), n)])
}
