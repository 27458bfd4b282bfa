package cause

import (
	"slices"
	"strings"
)

// State is where a cause stands.
type State string

// The three states of a cause.
const (
	Open      State = "open"      // possible; nothing shows it and nothing rules it out
	Supported State = "supported" // shown by a fact, or the only one left that predicted what was found
	RuledOut  State = "ruled-out" // contradicted by a fact that nothing disputes
)

// Standing is a cause with what speaks for and against it, in entry order.
type Standing struct {
	Cause   *Cause
	State   State
	For     []Fact // facts that it predicts or that show it
	Against []Fact // facts that it cannot stand beside
	Last    bool   // supported because every other cause is ruled out
	Beside  bool   // ruled out as the reason for the complaint, yet a fact shows it: a fault to mend as well
}

// Contradiction is a pair of facts that cannot both be true, in entry order.
type Contradiction struct{ A, B Fact }

// Result is what the facts amount to.
type Result struct {
	Complaint      string // the code weighed; "" when none was given and none is opened by the facts
	Standings      []Standing
	Contradictions []Contradiction
	Exhausted      bool   // every cause is ruled out, but for those that only follow from another
	Cured          bool   // a fact says that the complaint is not there now
	Next           *Test  // the test to do next; nil when there is none
	Repeat         bool   // Next was done before and is to be repeated
	Repair         *Cause // the cause to mend now; nil while tests come first
	NextWhy        string // one sentence: why this is next
}

// Weigh says where each cause of a complaint stands after the facts, and what
// to do next. An empty complaint is taken from the earliest fact that opens
// one. Facts with codes outside the vocabulary count for nothing. The order of
// the facts does not matter.
//
// A fact that is part of a contradiction is disputed: it is listed beside the
// causes but neither rules out nor shows any of them until one of the two
// facts is struck or belongs to an earlier phase and is no longer passed. A
// weaker fact yields to a stronger one of its kind, see yields.
//
// Heard are findings that the customer told, see Heard: like the signs that were
// seen they say which causes to look into first, and they neither show nor rule
// out anything.
func Weigh(complaint string, facts []Fact, heard ...string) Result {
	if complaint == "" && len(facts) == 0 {
		return Result{} // as at every start, before the tables are made
	}
	var known, settled set
	var buf [64]item
	items := gather(buf[:0], facts, &known)
	p := tables().complaint[complaint]
	if p == nil && complaint == "" {
		p = opened(items)
		for i := 0; i < len(items) && p == nil; i++ {
			if strings.Contains(warmSigns, " "+items[i].Code+" ") {
				p = tables().complaint["no-cool"]
			}
		}
	}
	r := Result{}
	settled = known.minus(disputed(items, known, &r))
	for _, w := range vocabulary().weak {
		if w.stronger.meets(settled) {
			settled = settled.minus(w.fact)
		}
	}
	if p == nil {
		return r
	}
	r.Complaint = p.Code
	told := known
	for _, c := range heard {
		if n, ok := vocabulary().number[c]; ok {
			told.add(n)
		}
	}
	if signs := told.and(p.signs); signs != (set{}) {
		told = signs
	}
	w := weighing{plan: p, items: items, known: known, settled: settled, told: told, result: &r}
	for i := range facts {
		if facts[i].Code == Bridged {
			w.bridged = facts[i].Entry
		}
	}
	w.stand()
	w.advise()
	if slices.Contains(needCapacitors, p.Code) {
		w.standDead("no-start")
		if p.Code == "no-cool" || p.Code == "fridge-warm" {
			w.standDead("runs-always")
		}
	}
	return r
}

// deadByThemselves are causes that a judged fact of the same name shows where the
// complaint has them not among its own: in what needCapacitors lists a machine that has
// such a part does not work as it should without it, nor one in a room too hot for it.
var (
	deadByThemselves = []string{"run-cap-failed", "start-cap-failed", "room-hot"}
	needCapacitors   = []string{"trips-breaker", "no-dry", "no-cool", "fridge-warm", "hp-no-heat", "runs-always", "no-drain", "stops-early", "stops-mid", "wont-run"}
)

// standDead adds such causes where nothing rules them out, from the complaint that has them.
func (w *weighing) standDead(from string) {
	has := tables().complaint[from]
	for i := range has.causes {
		c := &has.causes[i]
		if slices.Contains(deadByThemselves, c.Code) && w.settled.has(vocabulary().number[c.Code]) && !c.contradicts.meets(w.settled) {
			_, facts := w.pick(nil, &c.fits)
			w.result.Standings = append(w.result.Standings, Standing{Cause: c.Cause, State: Supported, For: facts})
			if from == "no-start" || w.result.Next == nil { // a hot room alone is seldom all of it
				w.mendDead(c)
			}
		}
	}
}

// mendDead lets what is next follow from such a cause where no other is shown: what
// has to be looked at before its repair, then that.
func (w *weighing) mendDead(c *weighable) {
	r := w.result
	if found, _ := w.found(); r.Cured || r.Repair != nil || found != 0 || r.Repeat && !r.Exhausted {
		return
	}
	for _, code := range c.Before {
		t := tables().test[code]
		if done := vocabulary().set(code, slices.Concat(t.Outcomes, t.Vague)); !done.meets(w.settled) {
			r.Next, r.NextWhy = t, c.Name+" is supported; this comes before the repair"
			return
		}
	}
	r.Next, r.Repair, r.NextWhy = nil, c.Cause, c.Name+" is shown by "+w.citeSet(c.shownBy)
}

// item is a fact with the number of its code.
type item struct {
	Fact
	n int
}

// gather sorts the known facts by entry and code and drops repetitions.
func gather(items []item, facts []Fact, known *set) []item {
	for _, f := range facts {
		if n, ok := vocabulary().number[f.Code]; ok {
			items = append(items, item{f, n})
			known.add(n)
		}
	}
	// The facts of a call come in the order of their entries: little is moved.
	for i := range items {
		for k := i; k > 0 && (items[k].Entry < items[k-1].Entry || items[k].Entry == items[k-1].Entry && items[k].n < items[k-1].n); k-- {
			items[k], items[k-1] = items[k-1], items[k]
		}
	}
	return slices.CompactFunc(items, func(a, b item) bool { return a.Entry == b.Entry && a.n == b.n })
}

// opened gives the complaint that the earliest fact opens.
func opened(items []item) *plan {
	for _, it := range items {
		for _, p := range tables().plans {
			if p.signs.has(it.n) {
				return p
			}
		}
	}
	return nil
}

// warmSigns are found in what runs and does not cool, and say so where nothing else
// is known of the complaint; after a repair they say nothing of how it does now.
const warmSigns = " temp-above frost-partial frost-none condenser-cold suction-low oil-stain leak-found "

// disputed records the contradictions among the facts and gives their codes.
func disputed(items []item, known set, r *Result) (d set) {
	for i, a := range items {
		if !vocabulary().excludes[a.n].meets(known) {
			continue
		}
		d.add(a.n)
		for _, b := range items[i+1:] {
			if vocabulary().excludes[a.n].has(b.n) {
				r.Contradictions = append(r.Contradictions, Contradiction{a.Fact, b.Fact})
			}
		}
	}
	return d
}

// weighing is one run of Weigh over one complaint.
type weighing struct {
	*plan
	items          []item
	known, settled set
	told           set // the signs of the complaint among what is known or was heard; all of it when no sign is
	result         *Result
	bridged        int    // until when a protective device was
	left, shown    group  // not ruled out; of these, shown by a fact
	may            uint64 // the tests that may be proposed, by their place
	onCourse       bool   // the test is proposed because of a course
	again          uint64 // of these, all that are to be repeated; 0 unless only such are left
}

// stand fills the standings.
func (w *weighing) stand() {
	r := w.result
	r.Standings = make([]Standing, len(w.causes))
	facts := make([]Fact, 0, 4*len(w.items))
	odd := w.known.has(vocabulary().number["windings-odd"])
	for i := range w.causes {
		c := &w.causes[i]
		s := &r.Standings[i]
		s.Cause, s.State = c.Cause, Open
		facts, s.For = w.pick(facts, &c.fits)
		facts, s.Against = w.pick(facts, &c.contradicts)
		if odd && c.Code == "winding-shorted" && len(s.Against) == 1 && s.Against[0].Code == "windings-sound" {
			s.Against = nil // windings that only fit each other do not clear it
		}
		switch {
		case len(s.Against) > 0 && c.contradicts.meets(w.settled) && (w.bridged == 0 || w.unbridged(s)):
			s.State = RuledOut
			continue
		case c.shownBy.meets(w.settled):
			s.State = Supported
			w.shown |= 1 << i
		}
		w.left |= 1 << i
	}
	w.markBeside()
	r.Cured = w.cured.meets(w.settled)
	g := w.reasons(w.left)
	r.Exhausted = g == 0 && !r.Cured
	if g.count() == 1 {
		i := g.first()
		if s := &r.Standings[i]; s.State == Open && w.causes[i].predicts.meets(w.settled) {
			s.State, s.Last = Supported, true
		}
	}
}

// bridgeable are the causes that are a protective device which lets nothing through.
const bridgeable = "limit-open limit-hot flame-sensor-open press-open switch-open fuse-open thermocouple-weak"

// Bridged is the code of what is no finding: a protective device was bridged until that
// entry. What ran past it until then says nothing of it.
const Bridged = "bridged"

// unbridged reports whether something speaks against a cause though a device was bridged.
//
//go:noinline
func (w *weighing) unbridged(s *Standing) bool {
	for i := range s.Against {
		if f := &s.Against[i]; f.Entry >= w.bridged || !Passing(f.Code) {
			return true
		}
	}
	return !strings.Contains(bridgeable, s.Cause.Code)
}

// markBeside marks the causes that are ruled out as the reason although a fact
// shows them that shows no supported cause.
func (w *weighing) markBeside() {
	unexplained := w.settled
	for i := range w.causes {
		if w.shown.has(i) {
			unexplained = unexplained.minus(w.causes[i].shownBy)
		}
	}
	for i := range w.causes {
		s := &w.result.Standings[i]
		s.Beside = s.State == RuledOut && w.causes[i].shownBy.meets(unexplained)
	}
}

// pick appends the facts of a set to the store and gives them as a slice
// of it that cannot grow into its neighbour.
func (w *weighing) pick(store []Fact, of *set) (rest, picked []Fact) {
	if !of.meets(w.known) {
		return store, nil
	}
	from := len(store)
	for k := range w.items {
		if of.has(w.items[k].n) {
			store = append(store, w.items[k].Fact)
		}
	}
	return store, store[from:len(store):len(store)]
}

// Codes gives the codes of the causes in a state, in the order of the table.
//
//go:noinline
func (r *Result) Codes(state State) []string {
	var codes []string
	for i := range r.Standings {
		if r.Standings[i].State == state {
			codes = append(codes, r.Standings[i].Cause.Code)
		}
	}
	return codes
}
