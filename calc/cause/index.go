package cause

import (
	"math/bits"
	"slices"
	"strings"
	"sync"
)

// set is a set of codes of the vocabulary by their number.
type set [9]uint64

func (s *set) add(i int)      { s[i>>6] |= 1 << (i & 63) }
func (s *set) has(i int) bool { return s[i>>6]&(1<<(i&63)) != 0 }
func (s set) meets(o set) bool {
	return s[0]&o[0]|s[1]&o[1]|s[2]&o[2]|s[3]&o[3]|s[4]&o[4]|s[5]&o[5]|s[6]&o[6]|s[7]&o[7]|s[8]&o[8] != 0
}
func (s set) count() (n int) {
	for _, w := range s {
		n += bits.OnesCount64(w)
	}
	return n
}

//go:noinline
func (s set) and(o set) set {
	return set{s[0] & o[0], s[1] & o[1], s[2] & o[2], s[3] & o[3], s[4] & o[4], s[5] & o[5], s[6] & o[6], s[7] & o[7], s[8] & o[8]}
}

//go:noinline
func (s set) or(o set) set {
	return set{s[0] | o[0], s[1] | o[1], s[2] | o[2], s[3] | o[3], s[4] | o[4], s[5] | o[5], s[6] | o[6], s[7] | o[7], s[8] | o[8]}
}

//go:noinline
func (s set) minus(o set) set {
	return set{s[0] &^ o[0], s[1] &^ o[1], s[2] &^ o[2], s[3] &^ o[3], s[4] &^ o[4], s[5] &^ o[5], s[6] &^ o[6], s[7] &^ o[7], s[8] &^ o[8]}
}

// vocabulary is the index over seen and judged, built once.
var vocabulary = sync.OnceValue(buildVocabulary)

type lexicon struct {
	terms    []Finding
	number   map[string]int
	phrases  map[string]string // folded words of a finding to its code
	longest  int               // words in the longest phrase
	excludes []set             // by number, both directions
	weak     []weak            // facts that yield to others
	vouching func() *set       // the findings that vouch, made when first asked
}

// weak is a fact that counts for nothing beside any of the stronger ones.
type weak struct{ fact, stronger set }

func buildVocabulary() *lexicon {
	v := &lexicon{number: map[string]int{}, phrases: map[string]string{}}
	v.terms = append(append(v.terms, seen()...), judged()...)
	if len(v.terms) > len(set{})*64 {
		panic("cause: set is too small for the vocabulary")
	}
	for i, t := range v.terms {
		v.number[t.Code] = i
		for _, w := range t.Words {
			words := wording(w)
			v.phrases[strings.Join(words, " ")] = t.Code
			v.longest = max(v.longest, len(words))
		}
	}
	for other, code := range synonyms {
		v.number[other] = v.code("the synonym "+other, code)
	}
	for c, stronger := range yields {
		v.weak = append(v.weak, weak{v.set("yields", []string{c}), v.set("what yields, "+c+",", stronger)})
	}
	v.excludes = make([]set, len(v.terms))
	for i, t := range v.terms {
		for _, c := range t.Excludes {
			j := v.code(t.Code, c)
			v.excludes[i].add(j)
			v.excludes[j].add(i)
		}
	}
	v.vouching = sync.OnceValue(v.buildVouching)
	return v
}

// code gives the number of a code that a row of a table uses; a code that is not
// in the vocabulary is a fault of that row, found at start.
//
//go:noinline
func (v *lexicon) code(row, c string) int {
	i, ok := v.number[c]
	if !ok {
		panic("cause: " + row + " names " + c + ", which is not in the vocabulary (seen.go, judged.go, Own)")
	}
	return i
}

//go:noinline
func (v *lexicon) set(row string, codes []string) (s set) {
	for _, c := range codes {
		s.add(v.code(row, c))
	}
	return s
}

// group is a set of causes of one complaint by their place in its list.
type group uint32

func (g group) count() int     { return bits.OnesCount32(uint32(g)) }
func (g group) has(i int) bool { return g&(1<<i) != 0 }
func (g group) first() int     { return bits.TrailingZeros32(uint32(g)) }

// tables is the index over causes, tests and complaints, built once.
var tables = sync.OnceValue(buildTables)

type tableIndex struct {
	causes    []*Cause
	tests     []*Test
	cause     map[string]int
	test      map[string]*Test
	complaint map[string]*plan
	plans     []*plan
}

// plan is a complaint made ready for weighing.
type plan struct {
	*Complaint
	causes []weighable
	trials []trial
	ways   []way
	signs  set
	cured  set
	speaks set // every code that bears on one of the causes
}

type weighable struct {
	*Cause
	predicts, shownBy, contradicts set
	fits                           set // predicts and shownBy
}

// trial is a test seen from one complaint.
type trial struct {
	*Test
	outcomes, done, when, barred set
	codes                        []int   // the outcomes' numbers
	rulesOut, shows              []group // by outcome
}

func buildTables() *tableIndex {
	x := &tableIndex{cause: map[string]int{}, test: map[string]*Test{}, complaint: map[string]*plan{}}
	for _, table := range causeTables() {
		for i := range table {
			x.cause[table[i].Code] = len(x.causes)
			x.causes = append(x.causes, &table[i])
		}
	}
	for _, table := range testTables() {
		for i := range table {
			x.tests = append(x.tests, &table[i])
		}
	}
	for _, c := range x.causes {
		if c.Own != nil {
			x.tests = append(x.tests, &c.Own.Test)
		}
	}
	for _, t := range x.tests {
		x.test[t.Code] = t
	}
	for i := range complaints {
		p := x.plan(&complaints[i])
		x.plans = append(x.plans, p)
		x.complaint[p.Code] = p
	}
	return x
}

func (x *tableIndex) plan(c *Complaint) *plan {
	v := vocabulary()
	p := &plan{Complaint: c, signs: v.set(c.Code, c.Signs), cured: v.set(c.Code, c.Cured)}
	for _, code := range c.Causes {
		i, ok := x.cause[code]
		if !ok {
			panic("cause: complaint " + c.Code + " names the unknown cause " + code)
		}
		w := weighable{x.causes[i], v.set(code, x.causes[i].Predicts), v.set(code, x.causes[i].ShownBy), v.set(code, x.causes[i].Contradicts), set{}}
		for k := range w.fits {
			w.fits[k] = w.predicts[k] | w.shownBy[k]
		}
		p.causes = append(p.causes, w)
		for k := range p.speaks {
			p.speaks[k] |= w.fits[k] | w.contradicts[k]
		}
	}
	if len(p.causes) > 32 {
		panic("cause: group is too small for complaint " + c.Code)
	}
	for _, of := range x.tests {
		if t := x.trial(p, of); t != nil {
			p.trials = append(p.trials, *t)
		}
	}
	if len(p.trials) > 64 {
		panic("cause: too many tests bear on complaint " + c.Code)
	}
	p.ways = p.courses()
	return p
}

// trial gives the test seen from the complaint, nil when it says nothing
// about any of its causes.
func (x *tableIndex) trial(p *plan, t *Test) *trial {
	v := vocabulary()
	r := &trial{Test: t, outcomes: v.set(t.Code, t.Outcomes), when: v.set(t.Code, t.When), barred: v.set(t.Code, t.Barred)}
	r.done = v.set(t.Code, append(append([]string(nil), t.Outcomes...), t.Vague...))
	var bears group
	for _, o := range t.Outcomes {
		n := v.code(t.Code, o)
		var out, shows group
		for i := range p.causes {
			if p.causes[i].contradicts.has(n) {
				out |= 1 << i
			}
			if p.causes[i].shownBy.has(n) {
				shows |= 1 << i
			}
		}
		r.codes = append(r.codes, n)
		r.rulesOut = append(r.rulesOut, out)
		r.shows = append(r.shows, shows)
		bears |= out | shows
	}
	if bears == 0 || len(t.On) > 0 && !slices.Contains(t.On, p.Code) {
		return nil
	}
	return r
}
