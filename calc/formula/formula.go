// Package formula is the table of the trade's formulas: what each one takes
// and gives, in which units, where it holds, and who published it.
//
// A formula works on plain numbers in the units that its parameters declare;
// units, uncertainty and the typed notation belong to the packages above. Every
// formula is pure and smooth within its range, so that a caller may
// differentiate it numerically, and it answers an input outside its range with
// an error in words, never with NaN or an infinity.
package formula

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"sync"
)

// AnyUnit as the unit of a parameter takes a value in any unit; all such
// arguments of one call share one unit, and a result declared AnyUnit is in it.
const AnyUnit = "any"

// Formula is one entry of the table.
type Formula struct {
	Name     string
	Topic    string  // the heading it is listed under
	Params   []Param // in the order of the call
	Repeat   int     // the last Repeat parameters form a group that may repeat; 0 when none
	Groups   int     // how many of these groups a call needs at least
	Unit     string  // of the result; "" for a plain number, or AnyUnit
	Money    bool    // the result is a sum of money, told to the hundredth
	Help     string  // one line
	Equation string
	Valid    string // where it holds, and whether it refuses or warns outside
	Source   string
	Example  Example

	// Fn computes the result. It is called through Eval, which has checked
	// each number against its parameter's range.
	Fn func(Args) (float64, error)
	// Warn, if set, says why a result is given but should not be relied on;
	// "" when there is nothing to say.
	Warn func(Args) string
	// Say, if set, tells what the result means or rests on in words, for the
	// reply under the number.
	Say func(a Args, result float64) string
}

// Param is one parameter: a number in a unit, or one word of a closed list.
type Param struct {
	Name        string
	Unit        string // unit symbol; "" for a plain number, or AnyUnit
	Help        string
	In          Range    // the numbers it takes
	Words       []string // the words it takes; nil for a number
	Optional    bool     // may be left out; then Default or DefaultWord is used
	Default     float64  // in Unit
	DefaultWord string
}

// Range bounds the numbers a parameter takes; the zero Range takes every
// finite number.
type Range struct {
	Lo, Hi float64
	Above  bool // Lo itself is not taken
}

// Example is one worked call, run by a test.
type Example struct {
	Call string  // as typed
	Args []any   // the same in the declared units: float64 or string
	Want float64 // in the result's unit
	Tol  float64 // how far off the result may be
	Text string  // the example in a sentence
}

// Args holds a call's arguments by the position of their parameter, counting
// repeated groups on; Num is set where the parameter takes a number, Word where
// it takes a word.
type Args struct {
	Num  []float64
	Word []string
}

var (
	positive    = Range{Lo: 0, Hi: math.MaxFloat64, Above: true}
	notNegative = Range{Lo: 0, Hi: math.MaxFloat64}
)

// All gives every formula, in the order of the table.
func All() []Formula { return slices.Clone(table()) }

// Lookup finds a formula by its name.
func Lookup(name string) (*Formula, bool) {
	f, ok := index()[name]
	return f, ok
}

// table and index are made when first asked.
var (
	table = sync.OnceValue(func() []Formula {
		return slices.Concat(
			power,
			circuits,
			capacitors,
			reactances,
			motors,
			supplies,
			wires,
			windings,
			heaters,
			thermistors,
			lookups,
			platinum,
			saturation,
			lockedRotor,
			threePhase,
			energy,
			cooling,
			meters,
		)
	})
	index = sync.OnceValue(func() map[string]*Formula { return indexTable(table()) })
)

func indexTable(fs []Formula) map[string]*Formula {
	m := make(map[string]*Formula, len(fs))
	for i := range fs {
		m[fs[i].Name] = &fs[i]
	}
	return m
}

// arity is how many arguments a call may have; most is -1 when there is no
// upper limit.
func (f *Formula) arity() (least, most int) {
	for _, p := range f.Params {
		if !p.Optional {
			least++
		}
	}
	if f.Repeat > 0 {
		return least + (f.Groups-1)*f.Repeat, -1
	}
	return least, len(f.Params)
}

// At gives the parameter at a position of Args.
func (f *Formula) At(slot int) *Param {
	if n := len(f.Params); slot >= n {
		slot = n - f.Repeat + (slot-n)%f.Repeat
	}
	return &f.Params[slot]
}

// Match finds the position of each argument of a call from what is known
// before any is evaluated: how many there are and which are words. A word may
// follow at once where optional numbers before it are left out. The Args it
// returns hold the defaults and wait for the arguments at these positions.
func (f *Formula) Match(isWord []bool) (slots []int, blank Args, err error) {
	least, most := f.arity()
	n := len(isWord)
	if n < least || most >= 0 && n > most || f.Repeat > 0 && (n-least)%f.Repeat != 0 {
		return nil, Args{}, fmt.Errorf("%s takes %s, not %d", f.Name, f.countText(), n)
	}
	size := max(n, len(f.Params))
	blank = Args{Num: make([]float64, size), Word: make([]string, size)}
	for i, p := range f.Params {
		blank.Num[i], blank.Word[i] = p.Default, p.DefaultWord
	}
	slots = make([]int, n)
	slot := 0
	for i, word := range isWord {
		for slot < len(f.Params) && word && f.Params[slot].Words == nil && f.Params[slot].Optional {
			slot++
		}
		if slot >= size {
			return nil, Args{}, fmt.Errorf("%s takes %s in this order: %s", f.Name, f.countText(), f.Signature())
		}
		if p := f.At(slot); word != (p.Words != nil) {
			return nil, Args{}, p.kindError()
		}
		slots[i] = slot
		slot++
	}
	return slots, blank, nil
}

// Eval computes the result for arguments that Match laid out. The error says
// which number is out of range, or why there is no result.
func (f *Formula) Eval(a Args) (float64, error) {
	for i, x := range a.Num {
		p := f.At(i)
		if p.Words != nil {
			if !slices.Contains(p.Words, a.Word[i]) {
				return 0, &ParamError{i, p.wordError(a.Word[i])}
			}
		} else if err := p.check(x); err != nil {
			return 0, &ParamError{i, err}
		}
	}
	y, err := f.Fn(a)
	if err != nil {
		return 0, err
	}
	if math.IsNaN(y) || math.IsInf(y, 0) {
		return 0, errors.New("these values are too large or too small to work with")
	}
	return y, nil
}

// ParamError is a fault of the argument at one position of Args.
type ParamError struct {
	Slot int
	Err  error
}

func (e *ParamError) Error() string { return e.Err.Error() }
func (e *ParamError) Unwrap() error { return e.Err }

// Call evaluates the formula for arguments given as float64, in the declared
// units, or string.
func (f *Formula) Call(args ...any) (float64, error) {
	a, err := f.Lay(args...)
	if err != nil {
		return 0, err
	}
	return f.Eval(a)
}

// Lay makes Args of arguments given as float64, in the declared units, or
// string.
func (f *Formula) Lay(args ...any) (Args, error) {
	isWord := make([]bool, len(args))
	for i, x := range args {
		_, isWord[i] = x.(string)
	}
	slots, a, err := f.Match(isWord)
	if err != nil {
		return Args{}, err
	}
	for i, slot := range slots {
		switch x := args[i].(type) {
		case float64:
			a.Num[slot] = x
		case string:
			if a.Word[slot], err = f.At(slot).pick(x); err != nil {
				return Args{}, err
			}
		default:
			return Args{}, fmt.Errorf("argument %d of %s is neither a number nor a word", i+1, f.Name)
		}
	}
	return a, nil
}

// pick finds a typed word in the parameter's list, whatever its case and
// hyphens, and gives it as the list writes it.
func (p *Param) pick(typed string) (string, error) {
	want := plainWord(typed)
	for _, w := range p.Words {
		if plain := plainWord(w); plain == want || want != "" && plain == "r"+want {
			return w, nil
		}
	}
	return "", p.wordError(typed)
}

func (p *Param) wordError(typed string) error {
	return fmt.Errorf("%s %q is not known: one of %s", p.Name, typed, strings.Join(p.Words, ", "))
}

var joiners = strings.NewReplacer("-", "", " ", "", "_", "")

// plainWord folds what people write differently: case, hyphens, blanks and
// the two spellings of aluminium.
func plainWord(s string) string {
	s = joiners.Replace(strings.ToLower(s))
	return strings.Replace(s, "aluminum", "aluminium", 1)
}

func (p *Param) kindError() error {
	if p.Words == nil {
		return fmt.Errorf("%s must be a number", p.Name)
	}
	return fmt.Errorf("%s must be a word in quotes: one of %s", p.Name, strings.Join(p.Words, ", "))
}

func (p *Param) check(x float64) error {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return fmt.Errorf("%s is not a finite number", p.Name)
	}
	r := p.In
	switch {
	case r == Range{}:
		return nil
	case x > r.Hi:
		most := p.format(r.Hi)
		if p.Unit == "%" && x <= 100*r.Hi {
			most += ": a percentage has its sign, as in " + strconv.FormatFloat(x/100, 'g', 6, 64) + "%"
		}
		return fmt.Errorf("%s must be at most %s", p.Name, most)
	case r.Above && x <= r.Lo:
		return fmt.Errorf("%s must be above %s", p.Name, p.format(r.Lo))
	case x < r.Lo:
		return fmt.Errorf("%s must be at least %s", p.Name, p.format(r.Lo))
	}
	return nil
}

func (p *Param) format(x float64) string {
	s := strconv.FormatFloat(x, 'g', -1, 64)
	if p.Unit == "" || p.Unit == AnyUnit {
		return s
	}
	return s + " " + p.Unit
}

func (f *Formula) countText() string {
	least, most := f.arity()
	switch {
	case most < 0 && f.Repeat > 1:
		return fmt.Sprintf("%d arguments and more in groups of %d", least, f.Repeat)
	case most < 0:
		return fmt.Sprintf("%d arguments or more", least)
	case least != most:
		return fmt.Sprintf("%d to %d arguments", least, most)
	case least == 1:
		return "1 argument"
	}
	return fmt.Sprintf("%d arguments", least)
}

// Signature is the call with its parameters' names, units and defaults, as
// help shows it.
func (f *Formula) Signature() string {
	parts := make([]string, 0, len(f.Params)+1)
	for _, p := range f.Params {
		s := p.Name
		if p.Unit != "" && p.Unit != AnyUnit {
			s += " " + p.Unit
		}
		if p.Optional {
			if p.Words != nil {
				s += " = " + strconv.Quote(p.DefaultWord)
			} else {
				s += " = " + strconv.FormatFloat(p.Default, 'g', -1, 64)
			}
		}
		parts = append(parts, s)
	}
	if f.Repeat > 0 {
		parts = append(parts, "…")
	}
	return f.Name + "(" + strings.Join(parts, ", ") + ")"
}
