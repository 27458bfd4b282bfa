package winding

import (
	"slices"
	"sort"
	"strings"

	"ohmcall/calc/measure"
)

// Limits that are not the meter's.
const (
	// windingBelow bounds what can be a winding of a compressor, in ohms
	// (common practice: windings read from under one to some hundred ohms).
	windingBelow = 1000
	// smallMotorBelow is the same for fans and small motors (common practice).
	smallMotorBelow = 10000
	// shortRatio is how many times a sound pair may exceed the one below it;
	// start to run is usually 3 to 5 (common practice), so 8 is generous.
	shortRatio = 8
	// leadsUpTo is the most that a pair of probe leads usually has, in ohms:
	// 0.2 to 0.5, Introduction to Digital Multimeter Accuracy.
	leadsUpTo = 0.5
	// nearlyEqual is the spread, as a share of the lowest, below which three
	// readings can hardly be start, run and both in series: in series the
	// highest would be twice the lowest or more (common practice).
	nearlyEqual = 0.10
)

// Infer says which lead is which and what the readings amount to. The result
// depends neither on the order of the readings of different pairs nor on the
// order of the names within a pair.
func Infer(in Input) Result {
	res := Result{Roles: map[string]Role{}, State: Incomplete, Notes: make([]string, 0, 10)}
	t := collect(in, &res)
	m := readMarks(in.Marks, &res)
	switch n := len(t.pins); {
	case kilohms(t, in.Kind, &res):
	case n < 2 || n == 2 && in.Leads != 2:
		fewPins(t, m, in, &res)
	case n == 2:
		oneWinding(t, in, &res)
	case n == 3 && in.Leads <= 3:
		inferThree(t, m, in, &res)
	default:
		inferNetwork(t, m, in, &res)
	}
	if in.Cold && (res.State == OverloadOpen || res.State == OpenUnplaced) {
		res.fact(FactOpenCold)
	}
	judgeCase(t, in.Kind, in.RatedVolts, &res)
	wantCase(t, &res)
	if in.Sheet != nil {
		res.Sheet = compareSheet(in, res, *in.Sheet)
		res.note(res.Sheet.Notes...)
	}
	for _, r := range res.Repeats {
		counts := "; the latest counts"
		if strings.HasSuffix(r.Pair.String(), "case") {
			counts = "" // a better reading to the case undoes no worse one
		}
		res.note("Read again: " + r.Pair.String() + " was " + reads(r.Was) + ", now " + reads(r.Now) + ": a jump beyond both limits" + counts + ".")
	}
	if in.Meter.Assumed && t.known > 0 {
		res.note("Assumed meter accuracy: " + number(in.Meter.Percent) + " % and " +
			number(in.Meter.Counts) + " counts (common practice); meter declares yours.")
	}
	return res
}

// cell is the latest reading of one pair.
type cell struct {
	v     measure.Value
	known bool
}

// table holds the latest reading of each pair.
type table struct {
	pins   []string
	at     []cell // len(pins) squared, symmetric
	toCase []cell
	tested []string // pins read to the case with an insulation tester
	known  int      // pairs read, the case aside
	open   int      // of those, open
}

//go:noinline
func (t *table) cell(i, j int) cell { return t.at[i*len(t.pins)+j] }

//go:noinline
func (t *table) v(i, j int) measure.Value { return t.at[i*len(t.pins)+j].v }
func (t *table) has(i, j int) bool        { return t.at[i*len(t.pins)+j].known }

//go:noinline
func (t *table) finite(i, j int) bool { c := t.cell(i, j); return c.known && !c.v.Over }

//go:noinline
func (t *table) pair(i, j int) Pair       { return Pair{t.pins[min(i, j)], t.pins[max(i, j)]} }
func (t *table) says(i, j int) string     { return t.pair(i, j).String() + " " + reads(t.v(i, j)) }
func (t *table) reading(i, j int) Reading { p := t.pair(i, j); return Reading{p[0], p[1], t.v(i, j)} }
func (t *table) index(pin string) int     { return slices.Index(t.pins, pin) }
func (t *table) set(i, j int, c cell)     { t.at[i*len(t.pins)+j], t.at[j*len(t.pins)+i] = c, c }

// collect sorts the pins, keeps the latest reading of each pair and finds the
// repeats that jumped.
func collect(in Input, res *Result) *table {
	t := &table{pins: make([]string, 0, 4), tested: in.Tested}
	add := func(pin string) {
		if pin != "" && !isCase(pin) && !slices.Contains(t.pins, pin) {
			t.pins = append(t.pins, pin)
		}
	}
	for _, r := range in.Readings {
		add(r.A)
		add(r.B)
	}
	for _, m := range in.Marks {
		add(m.Pin)
	}
	for _, p := range in.Pins {
		add(p)
	}
	sort.Strings(t.pins)
	n := len(t.pins)
	t.at, t.toCase = make([]cell, n*n), make([]cell, n)
	for _, r := range in.Readings {
		i, j := t.index(r.A), t.index(r.B)
		switch {
		case i == j: // a pin to itself, or the case to itself
			continue
		case i < 0 || j < 0:
			i = max(i, j)
			t.repeat(Pair{t.pins[i], Case}, t.toCase[i], r.V, res)
			t.toCase[i] = cell{r.V, true}
		default:
			t.repeat(t.pair(i, j), t.cell(i, j), r.V, res)
			t.set(i, j, cell{r.V, true})
		}
	}
	res.Proof = make([]Reading, 0, len(in.Readings))
	for i := range n {
		for j := i + 1; j < n; j++ {
			if !t.has(i, j) {
				continue
			}
			t.known++
			if t.v(i, j).Over {
				t.open++
			}
			res.Proof = append(res.Proof, t.reading(i, j))
		}
	}
	res.Pins = t.pins
	return t
}

func (t *table) repeat(p Pair, was cell, now measure.Value, res *Result) {
	if was.known && !was.v.Agrees(now) {
		res.Repeats = append(res.Repeats, Repeat{p, was.v, now})
	}
}

// missing lists the pairs not read yet in order of name.
func (t *table) missing() []Pair {
	var out []Pair
	for i := range t.pins {
		for j := i + 1; j < len(t.pins); j++ {
			if !t.has(i, j) {
				out = append(out, t.pair(i, j))
			}
		}
	}
	return out
}

// fewPins answers while fewer than three pins are known.
func fewPins(t *table, m marks, in Input, res *Result) {
	for pin, role := range m.role {
		res.Roles[pin] = role
	}
	switch {
	case t.known == 1:
		res.note("Recorded: " + t.says(0, 1) + ".")
		if t.v(0, 1).Over {
			res.note("Open so far: a winding or its protector may be open, or a probe had no contact.")
		}
		res.Next = "read " + t.pins[0] + " or " + t.pins[1] + " to the third pin"
		if (in.Kind == Fan || in.Kind == Motor) && in.Leads == 0 {
			// Small fans and pumps have one winding and two leads (common practice).
			res.Next = "plate leads 2 when it has no more than these two leads, else read " + t.pins[0] + " or " + t.pins[1] + " to the third"
		}
	case len(t.pins) == 2:
		res.note("No pair is read yet.")
		res.Wanted = t.missing()
		res.Next = "read " + t.pair(0, 1).String()
	default:
		res.note("No pair is read yet.")
		res.Next = "read two pins"
	}
	m.recall(res)
	res.note("Wanted next: " + res.Next + ".")
}

// oneWinding judges a machine that has two leads only.
func oneWinding(t *table, in Input, res *Result) {
	v := t.v(0, 1)
	switch {
	case t.known == 0:
		res.Wanted = t.missing()
		res.Next = "read " + t.pair(0, 1).String()
		res.note("Wanted next: " + res.Next + ".")
		return
	case v.Over:
		res.State = OpenWinding
		res.fact(FactOpen)
		res.note("The winding reads open: "+t.says(0, 1)+".",
			in.wait("a protector in series failed open, or winding or lead is open", "A protector in series reads open too: let it cool to below "+measure.CoolWords+" and read again."))
		return
	case v.X <= 0:
		res.State = Shorted
		res.fact(FactShorted)
		res.note("The winding reads zero: shorted, or too low for this range; zero the leads and read again.")
		return
	case v.Lo <= 0:
		res.State = TooClose
		res.note("The winding may be nothing at all: " + t.says(0, 1) + ". Zero the leads and read it again on a finer range.")
		return
	}
	res.State, res.Settled = Sound, true
	res.fact(FactSound)
	res.Windings = []Winding{{From: t.pins[0], To: t.pins[1], Name: "winding", Value: v}}
	res.note("One winding, not open: " + t.says(0, 1) + ". Compare it with the service sheet.")
}

// kilohms reports pairs that read too high for a winding.
func kilohms(t *table, kind Kind, res *Result) bool {
	limit := float64(windingBelow)
	if kind == Fan || kind == Motor {
		limit = smallMotorBelow
	}
	above := func(v measure.Value) bool { return !v.Over && v.X >= limit }
	if !slices.ContainsFunc(t.at, func(c cell) bool { return c.known && above(c.v) }) {
		return false
	}
	var high, low []string
	for i := range t.pins {
		for j := i + 1; j < len(t.pins); j++ {
			switch {
			case !t.finite(i, j):
			case above(t.v(i, j)):
				high = append(high, t.says(i, j))
			default:
				low = append(low, t.says(i, j))
			}
		}
	}
	res.State = NotAWinding
	res.fact(FactNotAWinding)
	res.note("Not a winding: "+list(high, "and")+". A winding of this kind reads below "+ohms(limit)+".",
		"Check the meter's range, that no fingers touch the probes, and that nothing else is connected.")
	if len(low) > 0 {
		res.note("Reads like a winding: " + list(low, "and") + "; the rest is judged when the high pair is read again.")
	}
	res.Wanted = t.missing()
	return true
}
