package winding

import (
	"slices"
	"strings"

	"ohmcall/calc/measure"
)

// Sheet is what a nameplate or service sheet says of the two windings of a
// single-phase machine: its ohms within their tolerance, at the temperature
// for which the readings stand. A winding that it does not give is Over.
type Sheet struct{ Start, Run measure.Value }

// BySheet is what a sheet adds while the readings alone leave roles open.
type BySheet struct {
	Notes       []string // plain sentences, each resting on the sheet
	Contradicts bool     // no naming of the pins fits readings and sheet together
	// Roles are those on which all namings agree that fit the sheet. They rest
	// on the sheet and are never put among the settled ones.
	Roles map[string]Role
}

// compareSheet holds the readings of three pins, or of some pairs of them,
// against a sheet. It never settles a role: a wrong sheet, or one of another
// machine, would make it wrong. It is empty when there is nothing to add.
func compareSheet(in Input, res Result, s Sheet) BySheet {
	out := BySheet{}
	if res.Settled || s.Start.Over && s.Run.Over {
		return out
	}
	t := collect(in, &Result{})
	if len(t.pins) > 3 || t.known == 0 || t.open == t.known {
		return out
	}
	f := &sheetFit{t: t, s: s, leads: in.leads()}
	bare := f.fitting(&out)
	if len(t.pins) < 3 {
		return out
	}
	m := readMarks(in.Marks, &Result{})
	x := &three{t: t, m: m, in: in, res: &Result{}}
	fit := filter(x.allowed, f.naming)
	switch {
	case len(fit) == 0:
		out.Contradicts = true
		if !bare {
			out.Notes = append(out.Notes, "No way to name the pins fits the sheet: another sheet, heat, or a fault; read the pairs again first.")
		}
	case len(fit) < len(filter(x.allowed)):
		out.Roles = x.shared(fit)
		if len(fit) == 1 {
			would := "a finer range or a marking"
			if miss := t.missing(); len(miss) > 0 {
				would = miss[0].String()
			}
			out.Notes = append(out.Notes, "Resting on the sheet: "+named(out.Roles)+". The readings alone do not settle it; "+would+" would.")
			break
		}
		if len(fit) > 2 {
			break // too many to help
		}
		var ways []string
		for _, n := range fit {
			ways = append(ways, named(x.roles(n)))
		}
		out.Notes = append(out.Notes, "Resting on the sheet, these are left: "+strings.Join(ways, "; or ")+".")
	}
	return out
}

// sheetFit holds readings against a sheet.
type sheetFit struct {
	t     *table
	s     Sheet
	leads float64
}

// both is start and run in series, Over when one of them is not given.
func (f *sheetFit) both() measure.Value { return f.s.Start.Plus(f.s.Run) }

// agrees reports whether a reading may be a value of the sheet, with the probe
// leads in it; what the sheet does not give forbids nothing.
func (f *sheetFit) agrees(c cell, sheet measure.Value) bool {
	if !c.known || c.v.Over || sheet.Over {
		return true
	}
	v := c.v
	v.Lo -= f.leads
	return v.Agrees(sheet)
}

// naming reports whether every finite reading may be what the sheet says of n.
func (f *sheetFit) naming(n naming) bool {
	return f.agrees(f.t.cell(n.c, n.s), f.s.Start) && f.agrees(f.t.cell(n.c, n.r), f.s.Run) && f.agrees(f.t.cell(n.s, n.r), f.both())
}

// fitting says which value of the sheet each pair fits, and whether one fits
// none.
func (f *sheetFit) fitting(out *BySheet) (bare bool) {
	var says []string
	for i := range f.t.pins {
		for j := i + 1; j < len(f.t.pins); j++ {
			if !f.t.finite(i, j) {
				continue
			}
			var fits []string
			for _, w := range []struct {
				name string
				v    measure.Value
			}{{"start", f.s.Start}, {"run", f.s.Run}, {"start and run in series", f.both()}} {
				if !w.v.Over && f.agrees(f.t.cell(i, j), w.v) {
					fits = append(fits, w.name+" ("+number(w.v.X)+")")
				}
			}
			if len(fits) == 0 && !f.s.Start.Over && !f.s.Run.Over {
				bare = true
				says = append(says, f.t.says(i, j)+" fits neither start ("+number(f.s.Start.X)+"), run ("+number(f.s.Run.X)+
					") nor both in series ("+number(f.both().X)+")")
			} else if len(fits) > 0 {
				says = append(says, f.t.says(i, j)+" fits "+list(fits, "or"))
			}
		}
	}
	slices.Sort(says)
	if len(says) > 0 {
		out.Notes = append(out.Notes, "Against the sheet: "+strings.Join(says, "; ")+".")
	}
	if bare {
		out.Contradicts = true
		out.Notes = append(out.Notes, "That contradicts the sheet, unless it is another machine's or the winding was hot; read the pair again first.")
	}
	return bare
}
