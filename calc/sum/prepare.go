package sum

import (
	"strconv"
	"strings"
	"unicode"

	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
)

// prepared is a text made fit for expr: literals are generated names, names
// of points and units are strings, and every place leads back to the source.
type prepared struct {
	source   []rune
	text     string
	segments []segment
	literals []literal
	names    []name           // each once, where it first stands
	calls    map[string]*Func // functions called
	kelvin   string           // the first literal such as 5K
	overUnit string           // the first of the kind of 3/4 uF
	radians  string           // an angle without a unit
	rate     string           // the /lb/F behind a value
	other    bool             // and there is more in it than times and lengths
}

type literal struct {
	name string
	q    quantity.Q
}

type name struct {
	text string
	col  int
	per  *quantity.Q // one of the unit that it is when it is no name
}

// segment says where a run of the prepared text comes from. A run that was
// generated stands for length runes of the source as one piece.
type segment struct {
	out, in, length int
	generated       bool
}

// frame is a parenthesis that is open.
type frame struct {
	at    int   // rune index
	call  *Func // nil when it only groups
	arg   int
	tight int  // where a comma stands between two digits, 0 for nowhere
	apart bool // a blank stands behind another
}

type preparer struct {
	*prepared
	out     strings.Builder
	outLen  int // runes written
	at      int
	frames  []frame
	ev      *evaluator
	whole   span // the last number without a unit
	value   span // the last literal, with the units behind slashes after it
	operand bool // a value stands before the current place
	newArg  bool // an argument begins here
}

// prepare is the gate before the parser. ev knows the declared functions.
func prepare(text string, ev *evaluator) (*prepared, error) {
	if len(text) > maxBytes {
		return nil, source.Errorf(1, 1+len([]rune(text)), "this sum is too long: at most %d characters", maxBytes)
	}
	p := preparer{prepared: &prepared{source: []rune(text)}, ev: ev}
	p.out.Grow(len(text) + 16)
	for p.at < len(p.source) {
		if err := p.step(); err != nil {
			return nil, err
		}
	}
	if n := len(p.frames); n > 0 {
		return nil, p.fault(p.frames[n-1].at, p.frames[n-1].at+1, "this bracket is not closed")
	}
	if strings.TrimSpace(text) == "" {
		return nil, whole(text, "there is nothing to work out")
	}
	p.text = p.out.String()
	return p.prepared, nil
}

//go:noinline
func (p *preparer) fault(from, to int, format string, args ...any) *source.Error {
	return source.Errorf(from+1, max(to, from+1)+1, format, args...)
}

// copy takes n runes over as they are.
//
//go:noinline
func (p *preparer) copy(n int) { p.replace(n, string(p.source[p.at:p.at+n]), false) }

// replace writes text for the next n runes of the source.
func (p *preparer) replace(n int, text string, generated bool) {
	if k := len(p.segments); generated || k == 0 || p.segments[k-1].generated {
		p.segments = append(p.segments, segment{p.outLen, p.at, n, generated})
	}
	p.out.WriteString(text)
	p.outLen += len([]rune(text))
	p.at += n
}

func letter(r rune) bool   { return unicode.IsLetter(r) }
func wordRune(r rune) bool { return letter(r) || r == '_' || r >= '0' && r <= '9' }

// peek is the rune k places on, 0 past the end.
func (p *preparer) peek(k int) rune {
	if p.at+k < len(p.source) {
		return p.source[p.at+k]
	}
	return 0
}

func (p *preparer) step() error {
	r := p.source[p.at]
	if r == ' ' || r == '\t' {
		p.copy(1)
		return nil
	}
	if p.newArg {
		p.newArg = false
		if f := p.frames[len(p.frames)-1]; r != ')' || f.arg > 0 {
			if param := f.call.param(f.arg); param != nil && param.Text {
				return p.point(param)
			}
		}
	}
	switch {
	case letter(r):
		return p.word()
	case r >= '0' && r <= '9' || r == '.' || r == '-' && !p.operand || r == '−' && !p.operand:
		return p.number()
	}
	return p.sign(r)
}

// number takes a literal. The minus before a temperature belongs to it.
func (p *preparer) number() error {
	lead := 0
	if r := p.peek(0); r == '-' || r == '−' {
		lead = 1
	}
	q, n, err := quantity.Scan(p.source[p.at+lead:])
	switch {
	case err != nil && lead > 0:
		p.replace(1, "-", false)
		return nil // the next step meets the literal itself
	case err != nil:
		return shifted(err, p.at)
	case n == 0 && lead > 0:
		p.replace(1, "-", false)
		return nil
	case n == 0:
		return p.fault(p.at, p.at+1, "a point is not expected here")
	case lead > 0:
		if q.Kind() == quantity.Plain {
			p.replace(1, "-", false)
			return nil
		}
		if q, err = quantity.Parse(string(p.source[p.at:p.at+1+n]), ""); err != nil {
			return shifted(err, p.at)
		}
	}
	if p.operand {
		return p.fault(p.at, p.at+lead+n, "an operator such as + or * is missing before %s", source.Short(string(p.source[p.at:p.at+lead+n])))
	}
	if r := p.peek(lead + n); r == '.' || wordRune(r) {
		return p.fault(p.at, p.at+lead+n+1, "this number is not understood")
	}
	if p.ev.strict && q.Unit().Quantity() == "length" {
		text := string(p.source[p.at : p.at+lead+n])
		if one, err := q.In(q.Unit().Symbol()); err == nil && one != 1 && strings.HasPrefix(strings.TrimLeft(string(p.source[p.at+lead+n:]), " "), "^") {
			p.ev.doubted = true
			return p.fault(p.at, p.at+lead+n, "the power can be of %s or of its unit alone", text)
		}
	}
	if p.ev.strict && q.Kind() == quantity.Point && q.SI() < 0 {
		p.ev.doubted = true
		return p.fault(p.at, p.at+lead+n, "nothing is colder than -459.67F, which is -273.15C")
	}
	if p.ev.strict && q.Symbol() == "inHg" && q.SI() > 0 {
		p.ev.doubted = true
		return p.fault(p.at, p.at+n, "inches of mercury on a gauge are a vacuum").WithHint("-10inHg is below the air, 10inHga is above a vacuum")
	}
	p.glance(lead + n)
	id := "_" + strconv.Itoa(len(p.literals))
	p.literals = append(p.literals, literal{id, q})
	p.value = span{p.at, p.at + lead + n}
	p.replace(lead+n, id, true)
	p.operand = true
	return nil
}

func shifted(err error, by int) error {
	if e, ok := err.(*source.Error); ok {
		return e.Shift(by)
	}
	return err
}

// operators of one or two signs that a sum may hold, longest first.
var signs = []string{"<=", ">=", "==", "!=", "&&", "||", "**", "+", "-", "*", "/", "^", "<", ">", "!", "?", ":"}

// typed are signs that people type for an operator.
var typed = map[rune]string{'×': "*", '·': "*", '÷': "/", '−': "-", '–': "-", '≤': "<=", '≥': ">=", '≠': "!="}

func (p *preparer) sign(r rune) error {
	switch r {
	case '(':
		p.open(nil)
		return nil
	case ')', ',':
		return p.closeOrComma(r)
	case '"', '\'':
		return p.quoted(r)
	case '%':
		return p.fault(p.at, p.at+1, "%% stands directly after a number, such as 5%%")
	}
	if s, ok := typed[r]; ok {
		p.replace(1, s, true)
		p.operand = false
		return nil
	}
	pair := string(r) + string(p.peek(1))
	switch pair {
	case "<>":
		return p.fault(p.at, p.at+2, "<> is not used in sums; != is unequal")
	case "//", "/*", "??", "?.", "::":
		return p.fault(p.at, p.at+2, "%s is not used in sums", pair)
	}
	for _, s := range signs {
		if strings.HasPrefix(pair, s) {
			p.copy(len(s))
			p.operand = false
			return nil
		}
	}
	if r == '$' || r == '€' || r == '£' {
		return p.fault(p.at, p.at+1, "money is a plain number in sums")
	}
	if r == '=' {
		return p.fault(p.at, p.at+1, "= does not compare").WithHint("== compares; let NAME = … names a value")
	}
	e := p.fault(p.at, p.at+1, "%q is not used in sums", string(r))
	if r == '±' {
		return e.WithHint("the doubt of a reading is its meter's; of numbers work out both ends: 10 - 1 and 10 + 1")
	}
	return e
}

func (p *preparer) open(call *Func) {
	p.frames = append(p.frames, frame{at: p.at, call: call})
	p.newArg = call != nil
	p.copy(1)
	p.operand = false
}

func (p *preparer) closeOrComma(r rune) error {
	n := len(p.frames)
	if n == 0 {
		if r == ')' {
			return p.fault(p.at, p.at+1, "this bracket was never opened")
		}
		return p.fault(p.at, p.at+1, "a comma stands only between a function's values")
	}
	top := &p.frames[n-1]
	if r == ')' {
		if p.ev.strict && top.tight > 0 && top.apart {
			p.ev.doubted = true
			return p.fault(top.tight, top.tight+1, "this comma can stand for a point or part two values")
		}
		p.frames = p.frames[:n-1]
		p.copy(1)
		p.operand = true
		return nil
	}
	if top.call == nil {
		return p.fault(p.at, p.at+1, "a comma stands only between a function's values")
	}
	if next := p.peek(1); next == ' ' {
		top.apart = true
	} else if last := p.source[p.at-1]; top.tight == 0 && last >= '0' && last <= '9' && next >= '0' && next <= '9' {
		if v := top.call.param(top.arg); v != nil && !v.Text {
			top.tight = p.at
		}
	}
	top.arg++
	p.newArg = true
	p.copy(1)
	p.operand = false
	return nil
}
