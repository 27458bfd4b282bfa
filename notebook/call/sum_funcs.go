package call

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/calc/formula"
	"ohmcall/calc/source"
	"ohmcall/calc/sum"
)

// callFunc is a function that asks about the call.
type callFunc struct {
	name, usage, help string
	make              func(*scope) sum.Func
}

var callFuncs []callFunc

func init() {
	callFuncs = []callFunc{
		{"plate", "plate(KEY, [NAME])", "a value of the plate of the machine at hand", plateFunc},
		{"seen", `seen("FINDING")`, "whether a finding or fact is established", seenFunc},
		{"has", `has("COMMAND …")`, "whether the call holds such an entry, as for need; with OL behind a reading, whether the last one there is open", hasFunc},
		{"is", `is(KEY, "WORDS")`, "whether a plate value or header field reads so", isFunc},
	}
}

func plateFunc(in *scope) sum.Func {
	c := in.c
	return sum.Func{Name: "plate", Params: []sum.Param{{Name: "KEY", Text: true}, {Name: "NAME", Text: true, Optional: true}},
		Help: "a value of the plate of the machine at hand",
		Call: func(args []sum.Value) (sum.Value, error) {
			key, _ := args[0].(string)
			name := ""
			if len(args) > 1 {
				name, _ = args[1].(string)
			}
			p, ok := c.plateHere(key, name)
			if !ok || !p.isQ {
				e := early("the plate holds no number for " + key)
				if k, n, two := strings.Cut(key, " "); two && name == "" {
					if _, ok := c.plateHere(k, n); ok {
						return nil, e.WithHint("a comma parts the key and its name: plate(%s, %s)", k, n)
					}
				}
				if named := c.namedOnPlate(key); named != "" {
					return nil, e.WithHint("it is named there: plate(%s, %s)", key, named)
				}
				return nil, e.WithHint("as in: plate volts 115")
			}
			in.rest(basis{entry: p.entry, asOf: c.entry, plate: p.id()})
			return p.q, nil
		}}
}

func seenFunc(in *scope) sum.Func {
	c := in.c
	return sum.Func{Name: "seen", Params: []sum.Param{{Name: "FINDING", Text: true}}, Result: sum.YesNo,
		Help: "whether a finding or fact is established",
		Call: func(args []sum.Value) (sum.Value, error) {
			s, _ := args[0].(string)
			if _, _, typed := cause.FindFinding(s); !typed {
				if _, known := cause.Lookup(s); !known {
					e := &source.Error{Msg: strconv.Quote(clip(s, 40)) + " is no finding that is known here"}
					if near := cause.Near(s, 1); len(near) > 0 {
						return nil, e.WithHint("perhaps %s; help findings lists them", near[0])
					}
					return nil, e.WithHint("help findings lists them")
				}
			}
			return c.established(s), nil
		}}
}

func hasFunc(in *scope) sum.Func {
	c := in.c
	return sum.Func{Name: "has", Params: []sum.Param{{Name: "WHAT", Text: true}}, Result: sum.YesNo,
		Help: "whether the call holds such an entry",
		Call: func(args []sum.Value) (sum.Value, error) {
			s, _ := args[0].(string)
			if words := strings.Fields(s); len(words) > 1 && isOver(words[len(words)-1]) && qualityOf(words[0]) != nil {
				r := c.lastAtPoints(qualityOf(words[0]), words[1:len(words)-1])
				if r == nil {
					return false, nil
				}
				in.rest(basis{entry: r.entry, asOf: math.MaxInt})
				return r.over, nil
			}
			met, err := c.holds(s)
			if err != nil {
				return nil, &source.Error{Msg: err.Error()}
			}
			return met, nil
		}}
}

func isFunc(in *scope) sum.Func {
	c := in.c
	return sum.Func{Name: "is", Params: []sum.Param{{Name: "KEY", Text: true}, {Name: "WORDS", Text: true}}, Result: sum.YesNo,
		Help: "whether a plate value or header field reads so",
		Call: func(args []sum.Value) (sum.Value, error) {
			key, _ := args[0].(string)
			want, _ := args[1].(string)
			got := c.last(key)
			if plateKeyOf(key) == nil && !slices.ContainsFunc(identityFields, func(f identityField) bool { return f.word == key }) {
				return nil, withNearest(&source.Error{Msg: strconv.Quote(clip(key, 40)) + " is on no plate and no field of a call"}, key, plateWords(nil))
			}
			if plateKeyOf(key) != nil {
				got = c.plateText(c.machineAtHand(), key)
				if got == "" {
					got = c.plateText("", key)
				}
			}
			if k := plateKeyOf(key); k != nil && k.word == "gas" {
				return formula.GasKey(got) == formula.GasKey(want), nil
			}
			return strings.EqualFold(got, want), nil
		}}
}
