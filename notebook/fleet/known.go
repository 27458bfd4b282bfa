package fleet

import (
	"cmp"
	"context"
	"errors"
	"maps"
	"math"
	"path/filepath"
	"slices"
	"sort"
	"strconv"
	"strings"

	"ohmcall/notebook/record"
)

// Known is what many calls teach: the winding resistances of each model of
// compressor, and which causes stood behind a kind of complaint. It is not
// safe for concurrent use while calls are added.
type Known struct {
	Calls  int // calls added
	ohms   map[string]map[string][]float64
	names  map[string]string
	calls  map[string]int
	causes map[string]map[string]int
	parts  map[string]map[string]int // by model of machine or appliance
	visits map[string][]Visit        // by serial number
}

// Visit is an earlier call on an appliance.
type Visit struct {
	Header  record.Header
	Path    string
	unit    unit
	returns bool // another call is to be expected
}

// Told is what a call is to this one before it, as a digest tells it: "call-back
// after 9 days", "" when it is neither that nor a return.
func (v *Visit) Told(h *record.Header) string {
	now := day(h)
	n := int(now.Sub(day(&v.Header)).Hours() / 24)
	if m := manner(v.returns, n); m != "" && !now.IsZero() {
		return m + " after " + days(n)
	}
	return ""
}

// VisitOf is the last call known on a unit before one, or of all when that has no
// time: by its serial number, letter case, spaces and dashes aside, and by what
// else is known of it.
func (k *Known) VisitOf(h *record.Header) (last *Visit) {
	u := unitOf(h)
	list := k.visits[u.serial]
	for i := range list {
		v := &list[i]
		if v.unit.same(&u) && (h.Started == "" || v.Header.Started < h.Started) && (last == nil || v.Header.Started >= last.Header.Started) {
			last = v
		}
	}
	return last
}

// FollowedBy tells of the first call known on a unit after one, as a digest does:
// "call-back after 9 days", with its day; "" when there is none, or it is neither that
// nor a return.
func (k *Known) FollowedBy(h *record.Header) (on, told string) {
	v := Visit{Header: *h, unit: unitOf(h), returns: h.Returns()}
	var next *record.Header
	list := k.visits[v.unit.serial]
	for i := range list {
		if o := &list[i]; o.unit.same(&v.unit) && h.Started != "" && o.Header.Started > h.Started && (next == nil || o.Header.Started < next.Started) {
			next = &o.Header
		}
	}
	if next == nil {
		return "", ""
	}
	on, _, _ = strings.Cut(next.Started, "T")
	return on, v.Told(next)
}

// mostVisits is how many calls on one serial number are kept, the last by path.
const mostVisits = 20

func (k *Known) addVisit(h *record.Header, path string) {
	u := unitOf(h)
	if u.serial == "" {
		return
	}
	if k.visits == nil {
		k.visits = map[string][]Visit{}
	}
	list := k.visits[u.serial]
	for i := range list {
		if v := &list[i]; v.Header.Started == h.Started && v.unit.same(&u) {
			v.Path = path
			return
		}
	}
	if len(list) == mostVisits {
		list = list[1:]
	}
	k.visits[u.serial] = append(list, Visit{record.Header{Started: clip(h.Started), Complaint: clip(h.Complaint), Cause: clip(h.Cause), Result: clip(h.Result), Technician: clip(h.Technician)}, path, u, h.Returns()})
}

// Spread sums up the readings between two roles of one model.
type Spread struct {
	Between  string // "common-run", roles in the order of the alphabet
	Count    int
	Median   float64 // Ω
	Min, Max float64 // Ω
	// MAD is the median of the distances from the median, in Ω; one odd
	// reading does not widen it.
	MAD float64
}

// Model is what is known of one model of machine.
type Model struct {
	Name  string
	Calls int // that named the model, with readings or without
	Ohms  []Spread
}

// Add takes in a call's header.
func (k *Known) Add(h *record.Header) {
	if k.ohms == nil {
		k.ohms, k.names = map[string]map[string][]float64{}, map[string]string{}
		k.calls, k.causes = map[string]int{}, map[string]map[string]int{}
		k.parts = map[string]map[string]int{}
	}
	k.Calls++
	if h.Kind != "" {
		if k.causes[h.Kind] == nil {
			k.causes[h.Kind] = map[string]int{}
		}
		k.causes[h.Kind][clip(h.Cause)]++
	}
	k.addParts(h)
	id := key(h.Machine)
	if id == "" {
		return
	}
	k.calls[id]++
	if old, ok := k.names[id]; !ok || h.Machine < old {
		k.names[id] = h.Machine
	}
	for _, text := range h.Ohms {
		between, x, ok := parseOhms(text)
		if !ok {
			continue
		}
		if k.ohms[id] == nil {
			k.ohms[id] = map[string][]float64{}
		}
		k.ohms[id][between] = append(k.ohms[id][between], x)
	}
}

// addParts counts the parts used on the models of a call.
func (k *Known) addParts(h *record.Header) {
	for _, model := range []string{h.Machine, h.Model} {
		id := key(model)
		if id == "" {
			continue
		}
		for _, p := range h.Parts {
			_, name, _ := strings.Cut(p, " x ")
			if name == "" {
				continue
			}
			if k.parts[id] == nil {
				k.parts[id] = map[string]int{}
			}
			k.parts[id][clip(name)]++
		}
	}
}

// Parts lists the parts used in earlier calls on a model of machine or
// appliance, the most frequent first.
func (k *Known) Parts(model string) []string {
	used := k.parts[key(model)]
	out := slices.Sorted(maps.Keys(used))
	sort.SliceStable(out, func(i, j int) bool { return used[out[i]] > used[out[j]] })
	return out
}

// Lookup tells what is known of a model, letter case and spaces aside.
func (k *Known) Lookup(model string) (Model, bool) {
	id := key(model)
	n := k.calls[id]
	if n == 0 {
		return Model{}, false
	}
	m := Model{Name: k.names[id], Calls: n}
	for between, list := range k.ohms[id] {
		m.Ohms = append(m.Ohms, spread(between, list))
	}
	order(m.Ohms, func(a, b *Spread) int { return strings.Compare(a.Between, b.Between) })
	return m, true
}

// Causes tells how often each cause was found for a kind of complaint, most
// frequent first; an empty cause stands for calls where none was found.
func (k *Known) Causes(kind string) []Share {
	of := 0
	for _, n := range k.causes[kind] {
		of += n
	}
	var out []Share
	for cause, n := range k.causes[kind] {
		out = append(out, Share{kind, cause, n, of, float64(n) / float64(of)})
	}
	order(out, func(a, b *Share) int {
		return cmp.Or(cmp.Compare(b.Calls, a.Calls), strings.Compare(a.Cause, b.Cause))
	})
	return out
}

// learnMost is the largest file that Learn reads, in bytes; a call has some ten
// thousand.
const learnMost = 1 << 20

// Learn goes through the closed notebooks below a folder. Only those teach
// whose log and front matter are what was closed, as for a digest, and a call
// teaches once, however many redacted copies there are. It ends early when ctx
// does. Files that are no notebooks are passed over.
func Learn(ctx context.Context, dir string) (*Known, error) {
	k := &Known{}
	var twins copies
	redacted, taught := map[string]record.Header{}, map[string]string{} // by path; the path of a log
	for it := range Scan([]string{dir}, Options{Workers: 1, most: learnMost}) {
		if err := ctx.Err(); err != nil {
			return k, err
		}
		switch {
		case it.State == Bad && (it.Path == filepath.Clean(dir) || it.Rel == ""):
			return k, errors.New(it.Reason)
		case !it.State.Counts():
			continue
		}
		twins.add(&it)
		if it.State != Trusted {
			continue
		}
		if it.trail.redacted {
			redacted[it.Path] = it.Header
			continue
		}
		log := string(it.sum[:])
		old := taught[log]
		if old == "" {
			k.Add(&it.Header)
		}
		if old == "" || original(&traced{path: it.Path}, &traced{path: old}) < 0 {
			taught[log] = it.Path
			k.addVisit(&it.Header, it.Path)
		}
	}
	out := twins.of()
	for _, path := range slices.Sorted(maps.Keys(redacted)) {
		if _, copied := out[path]; !copied {
			h := redacted[path]
			k.Add(&h)
			k.addVisit(&h, path)
		}
	}
	return k, nil
}

// parseOhms reads "start-common 4.1".
func parseOhms(text string) (between string, ohms float64, ok bool) {
	roles, value, ok := strings.Cut(strings.TrimSpace(text), " ")
	a, b, two := cutRoles(roles)
	value = strings.TrimSpace(strings.TrimSuffix(strings.TrimSpace(value), "Ω"))
	x, err := strconv.ParseFloat(value, 64)
	if !ok || !two || a == "" || b == "" || err != nil || !(x > 0) || math.IsInf(x, 0) {
		return "", 0, false
	}
	return min(a, b) + "-" + max(a, b), x, true
}

// cutRoles parts "medium-high-common" into its two roles, one of which may
// hold a hyphen itself.
func cutRoles(s string) (a, b string, ok bool) {
	for _, role := range []string{"medium-high", "medium-low"} {
		if rest, ok := strings.CutPrefix(s, role+"-"); ok {
			return role, rest, true
		}
	}
	return strings.Cut(s, "-")
}

func spread(between string, list []float64) Spread {
	s := Spread{Between: between, Count: len(list), Median: median(list), Min: slices.Min(list), Max: slices.Max(list)}
	away := make([]float64, len(list))
	for i, x := range list {
		away[i] = math.Abs(x - s.Median)
	}
	s.MAD = median(away)
	return s
}

// median does not change its argument, which must not be empty.
func median(list []float64) float64 {
	l := slices.Sorted(slices.Values(list))
	n := len(l)
	if n%2 == 1 {
		return l[n/2]
	}
	return l[n/2-1]/2 + l[n/2]/2
}
