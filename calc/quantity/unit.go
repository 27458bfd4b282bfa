package quantity

import (
	"math"
	"slices"
	"sort"
	"strings"
	"sync"

	"ohmcall/calc/source"
)

// Unit is one way of writing a quantity, its prefix included. Units are
// never changed after they are made.
type Unit struct {
	symbol string
	ucum   string
	dim    Dim
	kind   Kind
	factor float64 // SI = value·factor + offset
	offset float64
	exp    int8
	decl   *decl // nil for a compound
}

// UnitHelp is one line of the table of units, for help and completion.
type UnitHelp struct {
	Symbols  []string // as they may be typed; the first is the one printed
	UCUM     string
	Prefixes string // letters that may stand before it
	Quantity string
	Help     string
}

// Units lists every unit declared, in the table's order.
func Units() []UnitHelp {
	list := make([]UnitHelp, 0, len(decls))
	for _, d := range decls {
		if d.symbols[0] != "" {
			list = append(list, UnitHelp{slices.Clone(d.symbols), d.ucum, d.prefixes, d.what, d.help})
		}
	}
	return list
}

// index is what is derived from the table of units.
type index struct {
	bySpelling map[string]*Unit // exactly as typed
	byFold     map[string]*Unit // lower case; nil where two units share it
	spellings  []string
	family     map[*decl][]*Unit // a declaration's units that printing may choose, by size
	firstOf    map[dimKind]*Unit
	// composed holds every unit that a carrier makes alone, squared, or with
	// a power of one partner; the first that reaches a dimension keeps it.
	composed map[dimKind]*Unit
}

// plain is the first declaration, the number without a unit.
var plain = &Unit{ucum: decls[0].ucum, factor: decls[0].factor, decl: &decls[0]}

// units is made when first asked for.
var units = sync.OnceValue(func() *index {
	x := &index{
		bySpelling: map[string]*Unit{}, byFold: map[string]*Unit{}, family: map[*decl][]*Unit{},
		firstOf: map[dimKind]*Unit{}, composed: map[dimKind]*Unit{},
	}
	for i := range decls {
		x.declare(&decls[i])
	}
	for i := 0; i < len(aliases); i += 2 {
		x.spell(aliases[i], x.bySpelling[aliases[i+1]])
	}
	for _, list := range x.family {
		sort.Slice(list, func(i, k int) bool { return list[i].exp < list[k].exp })
	}
	slices.Sort(x.spellings)
	x.compose()
	return x
})

type dimKind struct {
	dim  Dim
	kind Kind
}

func (x *index) declare(d *decl) {
	base := &Unit{d.symbols[0], d.ucum, d.dim, d.kind, d.factor, d.offset, 0, d}
	if d == plain.decl {
		base = plain
	}
	if !d.prefixed {
		for _, s := range d.symbols {
			x.spell(s, base)
		}
		x.family[d] = append(x.family[d], base)
	}
	first := base
	for _, p := range prefixes {
		if !strings.Contains(d.prefixes, p.ucum) {
			continue
		}
		u := *base
		u.symbol, u.ucum, u.exp = p.letters[0]+base.symbol, p.ucum+base.ucum, p.exp
		u.factor = base.factor * math.Pow10(int(p.exp))
		for _, l := range p.letters {
			for _, s := range d.symbols {
				x.spell(l+s, &u)
			}
		}
		if strings.Contains(d.auto, p.ucum) {
			x.family[d] = append(x.family[d], &u)
			first = &u
		}
	}
	if !d.prefixed {
		first = base
	}
	if k := (dimKind{d.dim, d.kind}); x.firstOf[k] == nil {
		x.firstOf[k] = first
	}
}

// spell enters one way of typing a unit. An earlier declaration keeps a
// spelling: mm is the millimetre.
func (x *index) spell(s string, u *Unit) {
	if x.bySpelling[s] != nil {
		return
	}
	x.bySpelling[s] = u
	if s != "" {
		x.spellings = append(x.spellings, s)
	}
	low := strings.ToLower(s)
	if other, seen := x.byFold[low]; seen && other != u {
		u = nil
	}
	x.byFold[low] = u
}

// unitNamed finds a unit as typed, forgiving its case where that is not
// ambiguous.
func unitNamed(s string) (*Unit, bool) {
	if u := units().bySpelling[s]; u != nil {
		return u, true
	}
	if len(s) == 1 && !strings.Contains("cfvawrl", s) {
		return nil, false
	}
	u := units().byFold[strings.ToLower(s)]
	return u, u != nil
}

// powers writes the powers that are printed as they are typed.
var powers = strings.NewReplacer("²", "^2", "³", "^3")

// joints are the signs between the symbols of a compound unit.
const joints = "*·./"

// ParseUnit finds the unit that text names: a symbol of the table, or symbols
// joined by `*`, `·`, `.` and `/` with whole powers, such as `ohm/ft`, `m^2`.
// Empty text is the plain number. The error is a *source.Error.
func ParseUnit(text string) (*Unit, error) {
	text = powers.Replace(text)
	if u, ok := unitNamed(text); ok {
		return u, nil
	}
	if !strings.ContainsAny(text, joints+"^") || len(text) > 60 {
		return nil, unknownUnit(text, 1)
	}
	c := compound{}
	sign, col := 1, 1
	for rest := text; ; {
		i := strings.IndexAny(rest, joints)
		word := rest
		if i >= 0 {
			word = rest[:i]
		}
		if err := c.take(word, sign, col); err != nil {
			return nil, err
		}
		if i < 0 {
			break
		}
		joint := []rune(rest[i:])[0]
		col += len([]rune(rest[:i])) + 1
		rest = rest[i+len(string(joint)):]
		sign = 1
		if joint == '/' {
			sign = -1
		}
	}
	return c.unit()
}

func unknownUnit(word string, col int) *source.Error {
	e := source.Errorf(col, col+max(1, len([]rune(word))), "%q is not a unit known here", source.Short(word))
	if word == "" {
		e = source.Errorf(col, col+1, "a unit is missing")
	}
	if near := source.Nearest(word, units().spellings); near != "" {
		return e.WithHint("did you mean %s?", near)
	}
	return e
}

// Symbol is the unit as printed; empty for the plain number.
func (u *Unit) Symbol() string { return u.symbol }

// UCUM is the unit's case-sensitive UCUM code; `1` for the plain number.
func (u *Unit) UCUM() string { return u.ucum }

// Quantity names what the unit measures, such as `resistance`; empty for a
// compound that has no name of its own.
func (u *Unit) Quantity() string {
	if u.decl != nil {
		return u.decl.what
	}
	return ""
}

// named says the unit in a message.
//
//go:noinline
func (u *Unit) named() string {
	if u.symbol == "" {
		return "a plain number"
	}
	return u.symbol
}

// difference is the unit in which two values of u differ.
func (u *Unit) difference() *Unit {
	if u.decl != nil && u.decl.diff != "" {
		return units().bySpelling[u.decl.diff]
	}
	return u
}
