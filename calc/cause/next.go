package cause

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
)

// advise chooses what to do next, in this order: settle contradictory
// readings, repeat what leaves nothing possible, part the causes that facts
// show, mend the one that is shown, and else do the test that parts best what
// is left.
func (w *weighing) advise() {
	r := w.result
	w.may = w.ready()
	left := w.reasons(w.left)
	var best *trial
	if left.count() > 1 {
		best = w.course(left)
		w.onCourse = best != nil
	}
	if best == nil {
		best = w.best(left)
	}
	if best == nil {
		best = w.whole(left)
	}
	if best == nil && left.count() > 1 {
		if w.again = w.undecided(); w.again != 0 {
			w.may = w.again
			best = w.best(left)
		}
	}
	if c, t := w.dispute(); t != nil && (t.Danger != Live || best == nil || best.Danger == Live) {
		r.Next, r.Repeat = t, true
		r.NextWhy = fmt.Sprintf("%s and %s cannot both be true: repeat it before going on", w.cite(c.A), w.cite(c.B))
		return
	}
	found, sure := w.found()
	switch {
	case r.Cured && found&w.shown == 0:
		r.NextWhy = "the complaint is not there now: " + w.citeSet(w.cured) + "; what is left can only be a fault that comes and goes"
	case r.Exhausted:
		w.exhausted()
	case found != 0:
		if t := w.best(found); !sure && t != nil {
			if first := w.insulationFirst(t); first != nil {
				r.Next, r.Repeat = first.Test, w.again != 0
				r.NextWhy = "before it is energised; then: " + t.Name
				return
			}
			w.propose(t, found)
			return
		}
		prefix := ""
		if found.count() > 1 {
			prefix = "more than one fault may be there; "
		}
		w.mend(found.first(), prefix)
	case best != nil:
		w.propose(best, left)
	case left.count() == 1:
		w.mend(left.first(), "")
	default:
		r.NextWhy = "no listed test parts what is left: " + w.names(left)
	}
}

// insulationFirst gives the look at the insulation that has to come before a
// test that energises the machine, nil when there was one or none is due.
func (w *weighing) insulationFirst(t *trial) *trial {
	if t.Danger != Live || !slices.Contains(t.Barred, "insulation-failed") {
		return nil
	}
	return w.readied("case-ohms")
}

// reasons leaves out the causes that only follow from another; when nothing
// else is there, those of them that a fact shows stay.
func (w *weighing) reasons(g group) group {
	own := g
	for i := range w.causes {
		if w.causes[i].Consequence {
			own &^= 1 << i
		}
	}
	if own == 0 {
		return g & w.shown
	}
	return own
}

// found gives the causes to mend. Sure are those that a fact of their own
// shows, or the last one left; causes that only follow from another one are
// not among them. When no cause is sure, found holds all that share a fact
// which shows one of them, so that they can be parted.
func (w *weighing) found() (found group, sure bool) {
	var supported, mendable group
	for i := range w.causes {
		s := &w.result.Standings[i]
		if s.State != Supported {
			continue
		}
		supported |= 1 << i
		if s.Last {
			return 1 << i, true
		}
		if s.Cause.Consequence {
			continue
		}
		mendable |= 1 << i
		own := w.causes[i].shownBy.and(w.settled)
		for j := range w.causes {
			if j != i && w.shown.has(j) {
				own = own.minus(w.causes[j].shownBy)
			}
		}
		if own != (set{}) {
			found |= 1 << i
		}
	}
	switch {
	case found != 0:
		return found, true
	case mendable != 0:
		return supported, false
	}
	return 0, false
}

// mend proposes the repair of cause i, or what has to be tested before it.
func (w *weighing) mend(i int, prefix string) {
	r, c := w.result, w.causes[i].Cause
	for _, code := range c.Before {
		t := w.readied(code)
		if t == nil {
			continue
		}
		if told := w.tells(t, w.left) &^ (1 << i); told != 0 {
			r.Next, r.Repeat = t.Test, w.again != 0
			r.NextWhy = fmt.Sprintf("%s%s is supported; before the repair this rules out %s", prefix, c.Name, w.names(told))
			return
		}
	}
	r.Repair = c
	defer w.beside()
	switch s := r.Standings[i]; {
	case s.Last:
		r.NextWhy = prefix + c.Name + " is the only cause left that fits: " + w.citeSet(w.causes[i].predicts)
	case s.State == Supported:
		r.NextWhy = prefix + c.Name + " is shown by " + w.citeSet(w.causes[i].shownBy)
	default:
		r.NextWhy = c.Name + " is the only cause left, though no finding speaks for it"
	}
}

// beside adds the faults that are shown but do not explain the complaint.
func (w *weighing) beside() {
	for i := range w.result.Standings {
		if s := &w.result.Standings[i]; s.Beside && !s.Cause.Consequence {
			w.result.NextWhy += "; also shown, though not the reason: " + s.Cause.Name
		}
	}
}

// propose puts a test forward and says what it parts.
func (w *weighing) propose(t *trial, among group) {
	w.result.Next = t.Test
	w.result.Repeat = w.again != 0
	told := w.tells(t, among)
	switch {
	case w.again != 0:
		w.result.NextWhy = "it was read and could not tell: repeat it with a closer meter or a finer range, or give the plate's values; it speaks for or against " + w.names(told)
	case told == 0 && w.onCourse:
		w.result.NextWhy = "it comes first by common practice, and fits or does not fit " + w.names(among)
	case told == 0:
		w.result.NextWhy = "no test parts what is left; this one bears on all of it: " + w.names(among)
	case told == among:
		w.result.NextWhy = "it speaks for or against all that is left: " + w.names(told)
	default:
		w.result.NextWhy = "it speaks for or against " + w.names(told)
	}
	if t.Danger == Live && !w.onCourse {
		w.result.NextWhy += "; no dead test tells more"
	}
}

// ready marks the tests that may be proposed: not yet done, not forbidden and
// called for.
func (w *weighing) ready() (may uint64) {
	for k := range w.trials {
		t := &w.trials[k]
		if !t.done.meets(w.settled) && !t.barred.meets(w.known) && (len(t.When) == 0 || t.when.meets(w.known)) {
			may |= 1 << k
		}
	}
	return may
}

// undecided marks the tests that were made and settled nothing, as when a
// reading lay too near its limit.
func (w *weighing) undecided() (again uint64) {
	for k := range w.trials {
		t := &w.trials[k]
		if t.done.meets(w.settled) && !t.outcomes.meets(w.settled) && !t.barred.meets(w.known) {
			again |= 1 << k
		}
	}
	return again
}

// readied gives the test with a code when it may be proposed.
func (w *weighing) readied(code string) *trial {
	for k := range w.trials {
		if w.may&(1<<k) != 0 && w.trials[k].Code == code {
			return &w.trials[k]
		}
	}
	return nil
}

// best gives the test that parts the group at the smallest cost: twice the
// causes that it leaves in the worst case plus its effort. A live test is
// taken only when no other says anything about the group. Tests that bear on a
// cause which explains a sign of the complaint come before those that do not.
// Of equals the one wins that bears on a cause which explains more signs, then
// the safer one, then the earlier in the table.
func (w *weighing) best(g group) *trial {
	var best *trial
	var bestScore [5]int
	for k := range w.trials {
		if w.may&(1<<k) == 0 {
			continue
		}
		t := &w.trials[k]
		told := w.tells(t, g)
		if told == 0 {
			continue
		}
		explained := w.explained(told)
		score := [5]int{t.live(), 0, 2*w.worst(t, g) + t.Effort, -explained, int(t.Danger)}
		if explained == 0 {
			score[1] = 1
		}
		if best == nil || slices.Compare(score[:], bestScore[:]) < 0 {
			best, bestScore = t, score
		}
	}
	return best
}

// whole gives the test that bears on the group as a whole, the safest and
// cheapest, for when none parts it.
func (w *weighing) whole(g group) *trial {
	var best *trial
	for k := range w.trials {
		t := &w.trials[k]
		if w.may&(1<<k) == 0 || !w.bears(t, g) {
			continue
		}
		if best == nil || cmp.Or(cmp.Compare(t.live(), best.live()), cmp.Compare(t.Effort, best.Effort)) < 0 {
			best = t
		}
	}
	return best
}

// bears says whether some expected outcome rules out or shows the whole group.
func (w *weighing) bears(t *trial, g group) bool {
	for k, n := range t.codes {
		if !vocabulary().excludes[n].meets(w.settled) && (t.rulesOut[k]&g == g || t.shows[k]&g == g) {
			return g != 0
		}
	}
	return false
}

// explained counts the most signs of the complaint that any cause of the group
// predicts or is shown by.
func (w *weighing) explained(g group) int {
	n := 0
	for i := range w.causes {
		if g.has(i) {
			n = max(n, w.causes[i].fits.and(w.told).count())
		}
	}
	return n
}

// tells gives the causes of the group that some expected outcome parts from
// the rest: it rules them out or shows them, and not all of the group alike.
func (w *weighing) tells(t *trial, g group) (told group) {
	for k, n := range t.codes {
		if vocabulary().excludes[n].meets(w.settled) {
			continue
		}
		if out := t.rulesOut[k] & g; out != g || g.count() == 1 {
			told |= out
		}
		if shown := t.shows[k] & g; shown != g || g.count() == 1 {
			told |= shown
		}
	}
	return told
}

// worst counts the causes of the group that the least telling outcome leaves;
// outcomes that settled facts exclude are not expected.
func (w *weighing) worst(t *trial, g group) int {
	worst := 0
	for k, n := range t.codes {
		if vocabulary().excludes[n].meets(w.settled) {
			continue
		}
		left := g &^ t.rulesOut[k]
		if shown := t.shows[k] & left; shown != 0 {
			left = shown
		}
		worst = max(worst, left.count())
	}
	return worst
}

// dispute gives the first contradiction that bears on the complaint and the
// test that settles it, the safest first.
func (w *weighing) dispute() (Contradiction, *Test) {
	for _, c := range w.result.Contradictions {
		a, b := vocabulary().number[c.A.Code], vocabulary().number[c.B.Code]
		if !w.speaks.has(a) && !w.speaks.has(b) {
			continue
		}
		var best *Test
		for k := range w.trials {
			t := &w.trials[k]
			if (t.done.has(a) || t.done.has(b)) && !t.barred.meets(w.known) && (best == nil || t.Danger < best.Danger) {
				best = t.Test
			}
		}
		if best != nil {
			return c, best
		}
	}
	return Contradiction{}, nil
}

// exhausted names the reading to repeat: one that alone keeps some cause out,
// with the power off if there is such, and of those the one on which most
// eliminations rest.
func (w *weighing) exhausted() {
	var pick item
	var bestScore [4]int
	for _, it := range w.items {
		if !w.settled.has(it.n) {
			continue
		}
		t := w.repeat(it.n)
		alone, all := w.rests(it.n)
		score := [4]int{0, 0, -alone, -all}
		if alone == 0 {
			score[0] = 1
		}
		if t == nil || t.Danger == Live {
			score[1] = 1 // a finding that no test repeats comes with the live ones
		}
		if pick.Code == "" || slices.Compare(score[:], bestScore[:]) < 0 {
			pick, bestScore = it, score
			w.result.Next, w.result.Repeat = t, t != nil
		}
	}
	w.result.NextWhy = "nothing is left: the findings contradict each other or the cause is not on the list; repeat what most rests on, " + w.cite(pick.Fact)
}

// repeat gives the safest test that can establish the fact again.
func (w *weighing) repeat(n int) (best *Test) {
	for k := range w.trials {
		t := &w.trials[k]
		if t.outcomes.has(n) && !t.barred.meets(w.known) && (best == nil || t.Danger < best.Danger) {
			best = t.Test
		}
	}
	return best
}

// rests counts the causes that fact n rules out, and those that nothing else
// does.
func (w *weighing) rests(n int) (alone, all int) {
	var only set
	only.add(n)
	for i := range w.causes {
		if against := w.causes[i].contradicts.and(w.settled); against.has(n) {
			all++
			if against == only {
				alone++
			}
		}
	}
	return alone, all
}

// names lists causes in plain words, at most four by name.
func (w *weighing) names(g group) string {
	var names []string
	for i := range w.causes {
		if g.has(i) {
			names = append(names, w.causes[i].Name)
		}
	}
	if len(names) > 4 {
		return fmt.Sprintf("%s and %d more", strings.Join(names[:3], ", "), len(names)-3)
	}
	return strings.Join(names, ", ")
}

// cite names a fact and its entry.
func (w *weighing) cite(f Fact) string { return fmt.Sprintf("%s (entry %d)", plain(f.Code), f.Entry) }

// citeSet names the settled facts of a set.
func (w *weighing) citeSet(s set) string {
	var parts []string
	for _, it := range w.items {
		if s.has(it.n) && w.settled.has(it.n) {
			parts = append(parts, w.cite(it.Fact))
		}
	}
	return strings.Join(parts, ", ")
}
