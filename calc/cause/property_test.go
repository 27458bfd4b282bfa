package cause

import (
	"math/rand/v2"
	"reflect"
	"slices"
	"strings"
	"testing"
)

// randomFacts draws up to n facts that may well contradict each other.
func randomFacts(rng *rand.Rand, n int) []Fact {
	list := make([]Fact, rng.IntN(n+1))
	for i := range list {
		list[i] = Fact{Code: vocabulary().terms[rng.IntN(len(vocabulary().terms))].Code, Entry: 1 + rng.IntN(30)}
	}
	return list
}

func randomWeighings(t *testing.T, runs int, check func(c Complaint, facts []Fact, r Result)) {
	t.Helper()
	rng := rand.New(rand.NewPCG(1, 2))
	for range runs {
		c := complaints[rng.IntN(len(complaints))]
		f := randomFacts(rng, 14)
		check(c, f, Weigh(c.Code, f))
	}
}

func TestOrderDoesNotMatter(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 4))
	randomWeighings(t, 5000, func(c Complaint, f []Fact, r Result) {
		mixed := slices.Clone(f)
		rng.Shuffle(len(mixed), func(i, j int) { mixed[i], mixed[j] = mixed[j], mixed[i] })
		if again := Weigh(c.Code, mixed); !reflect.DeepEqual(r, again) {
			t.Fatalf("%s: %v and %v differ:\n%+v\n%+v", c.Code, f, mixed, r, again)
		}
	})
}

// disputedBy tells from the vocabulary alone whether another fact excludes f.
func disputedBy(f Fact, all []Fact) bool {
	a, _ := Lookup(f.Code)
	return slices.ContainsFunc(all, func(g Fact) bool {
		b, _ := Lookup(g.Code)
		return slices.Contains(a.Excludes, b.Code) || slices.Contains(b.Excludes, a.Code)
	})
}

// yielded tells whether an undisputed stronger fact is there.
func yielded(x Fact, all []Fact) bool {
	term, _ := Lookup(x.Code)
	return slices.ContainsFunc(all, func(g Fact) bool {
		return slices.Contains(yields[term.Code], g.Code) && !disputedBy(g, all)
	})
}

// The three states say what they claim, worked out again from the tables.
func TestStatesFollowFromTheTables(t *testing.T) {
	randomWeighings(t, 5000, func(c Complaint, f []Fact, r Result) {
		codes := slices.Clone(c.Causes)
		for _, dead := range []string{"start-cap-failed", "run-cap-failed", "room-hot"} {
			if dead == "room-hot" && !slices.Contains([]string{"no-cool", "fridge-warm"}, c.Code) {
				continue
			}
			k, _ := By(dead)
			is := func(x Fact) bool { return x.Code == dead && !disputedBy(x, f) && !yielded(x, f) }
			not := func(x Fact) bool {
				return slices.Contains(k.Contradicts, x.Code) && !disputedBy(x, f) && !yielded(x, f)
			}
			if slices.Contains(needCapacitors, c.Code) && slices.ContainsFunc(f, is) && !slices.ContainsFunc(f, not) {
				codes = append(codes, dead)
			}
		}
		if len(r.Standings) != len(codes) {
			t.Fatalf("%s: %d standings for %d causes", c.Code, len(r.Standings), len(codes))
		}
		for i, s := range r.Standings {
			if s.Cause.Code != codes[i] {
				t.Fatalf("%s: standing %d is %s", c.Code, i, s.Cause.Code)
			}
			against, shown := false, false
			for _, x := range f {
				if disputedBy(x, f) || yielded(x, f) {
					continue
				}
				term, _ := Lookup(x.Code)
				against = against || slices.Contains(s.Cause.Contradicts, term.Code)
				shown = shown || slices.Contains(s.Cause.ShownBy, term.Code)
			}
			if (s.State == RuledOut) != against {
				t.Fatalf("%s: %s is %s after %v", c.Code, s.Cause.Code, s.State, f)
			}
			if !against && shown != (s.State == Supported && !s.Last) {
				t.Fatalf("%s: %s is %s (last %v) after %v", c.Code, s.Cause.Code, s.State, s.Last, f)
			}
		}
	})
}

// A live test may be proposed only when no dead one tells anything about the
// reasons that are left; one that is forbidden may never be.
func TestNextIsTheSafestThatTells(t *testing.T) {
	live := 0
	randomWeighings(t, 20000, func(c Complaint, f []Fact, r Result) {
		if r.Next == nil {
			return
		}
		known := func(x Fact) bool { return slices.Contains(r.Next.Barred, x.Code) }
		if slices.ContainsFunc(f, known) {
			t.Fatalf("%s: %s is proposed after %v", c.Code, r.Next.Code, f)
		}
		done := append(slices.Clone(r.Next.Outcomes), r.Next.Vague...)
		if !r.Repeat && slices.ContainsFunc(f, func(x Fact) bool { return slices.Contains(done, x.Code) && !disputedBy(x, f) }) {
			t.Fatalf("%s: %s is proposed again after %v", c.Code, r.Next.Code, f)
		}
		if r.Next.Danger != Live || r.Exhausted || len(r.Contradictions) > 0 {
			return
		}
		live++
		if slices.Contains(r.Next.Barred, "insulation-failed") && slices.Contains(c.Causes, "winding-grounded") &&
			!slices.ContainsFunc(f, func(x Fact) bool { return strings.HasPrefix(x.Code, "insulation-") }) {
			t.Fatalf("%s: %s would energise a machine whose insulation nobody looked at, after %v", c.Code, r.Next.Code, f)
		}
		if onCourse(c.Code, r.Next, f) {
			return // TestCourses holds what has to come before it
		}
		reasons := slices.DeleteFunc(slices.Clone(r.Standings), func(s Standing) bool {
			return s.State == RuledOut || s.Cause.Consequence
		})
		if found := slices.DeleteFunc(slices.Clone(reasons), func(s Standing) bool { return s.State != Supported }); len(found) > 0 {
			return // what is shown is parted first; TestScenarios holds those
		}
		for _, x := range Tests() {
			done := append(slices.Clone(x.Outcomes), x.Vague...)
			if x.Danger == Live || len(x.On) > 0 && !slices.Contains(x.On, c.Code) || slices.ContainsFunc(f, func(y Fact) bool {
				return slices.Contains(done, y.Code) || slices.Contains(x.Barred, y.Code)
			}) || len(x.When) > 0 && !slices.ContainsFunc(f, func(y Fact) bool { return slices.Contains(x.When, y.Code) }) {
				continue
			}
			for _, o := range x.Outcomes {
				if disputedBy(Fact{Code: o}, f) {
					continue
				}
				out := 0
				for _, s := range reasons {
					if slices.Contains(s.Cause.Contradicts, o) {
						out++
					}
				}
				if out > 0 && out < len(reasons) {
					t.Fatalf("%s: live %s is proposed although %s tells, after %v", c.Code, r.Next.Code, x.Code, f)
				}
			}
		}
	})
	if live == 0 {
		t.Error("no live test was ever proposed: the check is empty")
	}
}

// A fact that contradicts nothing known never brings a ruled-out cause back.
func TestEliminationOnlyGrows(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 6))
	grown := 0
	randomWeighings(t, 5000, func(c Complaint, f []Fact, r Result) {
		x := Fact{Code: vocabulary().terms[rng.IntN(len(vocabulary().terms))].Code, Entry: 31}
		if disputedBy(x, f) || slices.ContainsFunc(f, func(g Fact) bool { return slices.Contains(yields[g.Code], x.Code) }) {
			return
		}
		grown++
		after := Weigh(c.Code, append(slices.Clone(f), x))
		for i := range r.Standings {
			if r.Standings[i].State == RuledOut && after.Standings[i].State != RuledOut {
				t.Fatalf("%s: %v brings %s back after %v", c.Code, x, r.Standings[i].Cause.Code, f)
			}
		}
	})
	if grown < 1000 {
		t.Errorf("only %d of 5000 runs could grow", grown)
	}
}

// Each cause of each complaint is taken as the truth and the proposals are
// followed with outcomes that it allows: it must never be ruled out, and the
// call must end with its repair.
func TestFollowingTheProposalsFindsTheCause(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 8))
	for _, p := range tables().plans {
		for i := range p.causes {
			truth := p.causes[i]
			if truth.Consequence {
				continue
			}
			for range 20 {
				r, f := followed(t, p, i, rng)
				if r.Repair == nil || r.Repair.Code != truth.Code {
					repair := "none"
					if r.Repair != nil {
						repair = r.Repair.Code
					}
					t.Errorf("%s: with %s the call ends with repair %s (%s), left %v, after %v", p.Code, truth.Code, repair, r.NextWhy,
						append(r.Codes(Supported), r.Codes(Open)...), f)
					break
				}
			}
		}
	}
}

// followed plays a call in which cause i of the plan is the truth.
func followed(t *testing.T, p *plan, i int, rng *rand.Rand) (Result, []Fact) {
	t.Helper()
	var f []Fact
	for step := 1; step < 60; step++ {
		r := Weigh(p.Code, f)
		if slices.Contains(r.Codes(RuledOut), p.causes[i].Code) {
			t.Fatalf("%s: %s is ruled out after %v", p.Code, p.causes[i].Code, f)
		}
		if r.Next == nil {
			return r, f
		}
		outcome := allowed(p, i, r.Next, f, rng)
		if outcome == "" {
			t.Errorf("%s: %s allows no outcome of %s after %v", p.Code, p.causes[i].Code, r.Next.Code, f)
			return r, f
		}
		f = append(f, Fact{Code: outcome, Entry: step})
	}
	t.Fatalf("%s: %s: no end after 60 steps: %v", p.Code, p.causes[i].Code, f)
	return Result{}, nil
}

// allowed draws an outcome of the test that the truth does not forbid: one
// that shows it if there is any, else one that shows no other cause.
func allowed(p *plan, i int, x *Test, f []Fact, rng *rand.Rand) string {
	var showing, neutral []string
	for _, o := range x.Outcomes {
		n := vocabulary().number[o]
		if p.causes[i].contradicts.has(n) || disputedBy(Fact{Code: o}, f) {
			continue
		}
		if p.cured.has(n) {
			continue
		}
		shows := slices.ContainsFunc(slices.Concat(causeTables()...), func(c Cause) bool { return !c.Consequence && slices.Contains(c.ShownBy, o) })
		switch {
		case p.causes[i].shownBy.has(n):
			showing = append(showing, o)
		case !shows:
			neutral = append(neutral, o)
		}
	}
	for _, list := range [][]string{showing, neutral} {
		if len(list) > 0 {
			return list[rng.IntN(len(list))]
		}
	}
	return ""
}
