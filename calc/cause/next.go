package cause

import (
	"fmt"
	"strings"
)

// advise chooses what to do next, in this order: settle contradictory
// readings, repeat what leaves nothing possible, part the causes that facts
// show, mend the one that is shown, and else do the test that parts best what
// is left.
func (w *weighing) advise() {
	r := w.result
	best := w.best(w.left)
	if c, t := w.dispute(); t != nil && (t.Danger != Live || best == nil || best.Danger == Live) {
		r.Next, r.Repeat = t, true
		r.NextWhy = fmt.Sprintf("%s and %s cannot both be true: repeat it before going on", w.cite(c.A), w.cite(c.B))
		return
	}
	found, sure := w.found()
	switch {
	case r.Cured:
		r.NextWhy = "the complaint is not there now: " + w.citeSet(w.cured) + "; what is left can only be a fault that comes and goes"
	case r.Exhausted:
		w.exhausted()
	case found != 0:
		if t := w.best(found); !sure && t != nil && w.worst(t, found) < found.count() {
			w.propose(t, found)
			return
		}
		prefix := ""
		if found.count() > 1 {
			prefix = "more than one fault may be there; "
		}
		w.mend(found.first(), prefix)
	case best != nil:
		w.propose(best, w.left)
	case w.left.count() == 1:
		w.mend(w.left.first(), "")
	default:
		r.NextWhy = "no listed test parts what is left: " + w.names(w.left)
		for _, p := range w.Inseparable {
			if w.open(p.A) && w.open(p.B) {
				r.NextWhy += "; " + p.Why
			}
		}
	}
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
			return supported, true
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

func (w *weighing) open(code string) bool {
	for i := range w.causes {
		if w.causes[i].Code == code {
			return w.left.has(i)
		}
	}
	return false
}

// mend proposes the repair of cause i, or what has to be tested before it.
func (w *weighing) mend(i int, prefix string) {
	r, c := w.result, w.causes[i].Cause
	for _, code := range c.Before {
		for k := range w.trials {
			t := &w.trials[k]
			if t.Code != code || !w.useful(t) || w.tells(t, w.left) == 0 {
				continue
			}
			t = w.gate(t)
			r.Next = t.Test
			r.NextWhy = fmt.Sprintf("%s%s is supported; before the repair this rules out %s", prefix, c.Name, w.names(w.tells(t, w.left)&^(1<<i)))
			if w.tells(t, w.left)&^(1<<i) == 0 {
				r.NextWhy = fmt.Sprintf("%s%s is supported; this confirms it before the repair", prefix, c.Name)
			}
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
	gate := w.gate(t)
	w.result.Next = gate.Test
	told := w.tells(gate, among)
	switch {
	case gate != t:
		w.result.NextWhy = "comes before " + t.Name + ": " + w.names(w.tells(gate, w.left)) + " would forbid it"
	case told == among:
		w.result.NextWhy = "it bears on all that is left: " + w.names(told)
	default:
		w.result.NextWhy = fmt.Sprintf("it bears on %d of the %d causes left: %s", told.count(), among.count(), w.names(told))
	}
	if gate.Danger == Live {
		w.result.NextWhy += "; no dead test parts them further"
	}
}

// gate gives the first test that has to be done before t, or t itself.
func (w *weighing) gate(t *trial) *trial {
	for _, code := range t.First {
		for k := range w.trials {
			if g := &w.trials[k]; g.Code == code && w.useful(g) && w.tells(g, w.left) != 0 {
				return g
			}
		}
	}
	return t
}

// best gives the test with the smallest sum of effort and causes left in the
// worst case; a live test only when no other says anything about the group.
// Equals are taken the safest first, then in the order of the table.
func (w *weighing) best(g group) *trial {
	var best *trial
	var bestScore int
	for k := range w.trials {
		t := &w.trials[k]
		if !w.useful(t) || w.tells(t, g) == 0 {
			continue
		}
		score := 4*(w.worst(t, g)+t.Effort) + int(t.Danger)
		if t.Danger == Live {
			score += 1 << 16
		}
		if best == nil || score < bestScore {
			best, bestScore = t, score
		}
	}
	return best
}

// useful says whether a test may be proposed: not yet done, not forbidden and
// called for.
func (w *weighing) useful(t *trial) bool {
	return !t.done.meets(w.settled) && !t.barred.meets(w.known) && (len(t.When) == 0 || t.when.meets(w.known))
}

// tells gives the causes of the group on which some outcome bears.
func (w *weighing) tells(t *trial, g group) (told group) {
	for k, n := range t.codes {
		if vocabulary.excludes[n].meets(w.settled) {
			continue
		}
		told |= t.rulesOut[k] | t.shows[k]
	}
	return told & g
}

// worst counts the causes of the group that the least telling outcome leaves;
// outcomes that settled facts exclude are not expected.
func (w *weighing) worst(t *trial, g group) int {
	worst := 0
	for k, n := range t.codes {
		if vocabulary.excludes[n].meets(w.settled) {
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
		a, b := vocabulary.number[c.A.Code], vocabulary.number[c.B.Code]
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

// exhausted names the reading on which most eliminations rest alone.
func (w *weighing) exhausted() {
	var pick item
	bestAlone, bestAll := -1, -1
	for _, it := range w.items {
		if !w.settled.has(it.n) {
			continue
		}
		var only set
		only.add(it.n)
		alone, all := 0, 0
		for i := range w.causes {
			against := w.causes[i].contradicts.and(w.settled)
			if against.has(it.n) {
				all++
				if against == only {
					alone++
				}
			}
		}
		if alone > bestAlone || alone == bestAlone && all > bestAll {
			pick, bestAlone, bestAll = it, alone, all
		}
	}
	w.result.NextWhy = "nothing is left: the findings contradict each other or the cause is not on the list; repeat what most rests on, " + w.cite(pick.Fact)
	for k := range w.trials {
		t := &w.trials[k]
		if t.outcomes.has(pick.n) && !t.barred.meets(w.known) && (w.result.Next == nil || t.Danger < w.result.Next.Danger) {
			w.result.Next, w.result.Repeat = t.Test, true
		}
	}
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
