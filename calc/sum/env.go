package sum

import (
	"reflect"
	"slices"

	"github.com/expr-lang/expr/builtin"

	"ohmcall/calc/quantity"
	"ohmcall/calc/source"
)

// Value is what an expression or an argument amounts to: a quantity.Q, a
// bool, or a string for an argument that is a name or text.
type Value = any

// Kind is the kind of a value, known before anything runs.
type Kind uint8

// The kinds of value.
const (
	Number Kind = iota
	YesNo
	Text
)

// Env supplies what a sum may name besides the built-in functions. The
// notebook implements it; Scope is one ready made.
type Env interface {
	// Lookup is the value of a name.
	Lookup(name string) (quantity.Q, bool)
	// Func is a function that the host declares.
	Func(name string) (Func, bool)
	// Def is a function that the user defined.
	Def(name string) (Def, bool)
	// Names lists every name that the three above know, for hints.
	Names() []string
	// Spent is told what an evaluation cost, in steps of about two
	// nanoseconds: counted by what was compiled and run, not timed.
	Spent(steps int)
	// Note is told what there is to say of a sum beside its value, in a
	// sentence.
	Note(text string)
}

// Param is one parameter of a function.
type Param struct {
	Name string
	// Unit is the unit that a bare number takes, and that other values must
	// convert to; used by Formula.
	Unit string
	// Text marks a name or a text instead of a value: in ohm(A, B) the A and
	// B are names of points and are handed over as typed.
	Text bool
	// YesNo marks a condition.
	YesNo bool
	// Optional marks a parameter that may be left out, with all after it.
	Optional bool
	// Many marks a last parameter that may be repeated.
	Many bool
}

// Func is a function callable in a sum.
type Func struct {
	Name   string
	Params []Param
	Result Kind
	Help   string // one line
	// Example is a call of it that works, "" of one whose values a call must have.
	Example string
	// Call gets as many values as were typed, each of its parameter's kind.
	// An error should be a *source.Error; its columns are set by the caller.
	Call func(args []Value) (Value, error)
}

// param is the parameter that argument i belongs to; nil when there is none.
func (f *Func) param(i int) *Param {
	n := len(f.Params)
	switch {
	case i < n:
		return &f.Params[i]
	case n > 0 && f.Params[n-1].Many:
		return &f.Params[n-1]
	}
	return nil
}

// arity is the least and the greatest number of arguments; most is -1 when
// there is no limit but the text's length.
func (f *Func) arity() (least, most int) {
	least, most = len(f.Params), len(f.Params)
	for i, p := range f.Params {
		if p.Optional {
			least = min(least, i)
		}
		if p.Many {
			most = -1
		}
	}
	return least, most
}

// Usage is the call as help shows it: `cap(amps, volts, [hertz])`.
//
//go:noinline
func (f *Func) Usage() string {
	s := f.Name + "("
	for i, p := range f.Params {
		word := p.Name
		if p.Many {
			word += ", …"
		}
		if p.Optional {
			word = "[" + word + "]"
		}
		if i > 0 {
			word = ", " + word
		}
		s += word
	}
	return s + ")"
}

var (
	typeQuantity = []reflect.Type{reflect.TypeFor[func(...any) quantity.Q]()}
	typeYesNo    = []reflect.Type{reflect.TypeFor[func(...any) bool]()}
)

// builtin is f as expr wants it. The vetter has checked the arguments by the
// time that it runs.
func (f *Func) builtin() *builtin.Function {
	t := typeQuantity
	if f.Result == YesNo {
		t = typeYesNo
	}
	return &builtin.Function{Name: f.Name, Types: t, Func: func(args ...any) (any, error) {
		return f.Call(args)
	}}
}

// Scope is an Env of maps; the zero value is empty and ready.
type Scope struct {
	Values map[string]quantity.Q
	Funcs  map[string]Func
	Defs   map[string]Def
	Notes  []string // what was said of the sums
}

// Lookup implements Env.
func (s *Scope) Lookup(name string) (quantity.Q, bool) { q, ok := s.Values[name]; return q, ok }

// Func implements Env.
func (s *Scope) Func(name string) (Func, bool) { f, ok := s.Funcs[name]; return f, ok }

// Def implements Env.
func (s *Scope) Def(name string) (Def, bool) { d, ok := s.Defs[name]; return d, ok }

// Spent implements Env and counts nothing.
func (s *Scope) Spent(int) {}

// Note implements Env and keeps the sentence.
func (s *Scope) Note(text string) { s.Notes = append(s.Notes, text) }

// Names implements Env.
func (s *Scope) Names() []string {
	var list []string
	for n := range s.Values {
		list = append(list, n)
	}
	for n := range s.Funcs {
		list = append(list, n)
	}
	for n := range s.Defs {
		list = append(list, n)
	}
	slices.Sort(list)
	return list
}

// argError is a fault of one argument of a call.
type argError struct {
	index int
	err   *source.Error
}

// OfArgument marks argument i of a call as what an error is about.
func OfArgument(i int, err *source.Error) error { return &argError{i, err} }

func (e *argError) Error() string { return e.err.Error() }
func (e *argError) Unwrap() error { return e.err }
