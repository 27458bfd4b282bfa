package fleet

import (
	"cmp"
	"iter"
	"slices"
	"sort"
	"strconv"
	"strings"

	"ohmcall/notebook/record"
)

// clipText is how many bytes of one text a digest keeps: many hostile
// notebooks must not fill the memory.
const clipText = 400

// Row is one call of a digest.
type Row struct {
	ID         string   `json:"id"`
	Path       string   `json:"path"`
	Date       string   `json:"date"`
	Started    string   `json:"started"`
	Technician string   `json:"technician"`
	Client     string   `json:"client"`
	Unit       string   `json:"unit"`
	Model      string   `json:"model"`
	Serial     string   `json:"serial"`
	Machine    string   `json:"machine"`
	Complaint  string   `json:"complaint"`
	Kind       string   `json:"kind"`
	Cause      string   `json:"cause"`
	Result     string   `json:"result"`
	Left       string   `json:"left"`
	Minutes    int      `json:"minutes"`
	Cost       float64  `json:"cost"`
	Unpriced   int      `json:"unpriced"` // parts that the cost lacks
	Missing    []string `json:"missing"`
	Unsafe     []string `json:"unsafe"`
	Doubt      []string `json:"doubt"`
	Said       []string `json:"said"`
	Next       string   `json:"next"` // of an open call, the next useful step
	Parts      []string `json:"parts"`
	State      State    `json:"state"`
	Reason     string   `json:"reason"`
	*Follow
}

// Totals are the sums over the calls of a digest.
type Totals struct {
	Calls     int     `json:"calls"`
	Minutes   int     `json:"minutes"`
	Cost      float64 `json:"cost"`
	Unpriced  int     `json:"unpriced"` // parts without a price, which the cost lacks
	Proved    int     `json:"proved"`
	NotProved int     `json:"not_proved"`
	Unsafe    int     `json:"unsafe"` // with anything unsafe, whatever the result
	NoRepair  int     `json:"no_repair"`
	PassedOn  int     `json:"passed_on"`
	Declined  int     `json:"declined"`
	NotWorth  int     `json:"not_worth_repair"`
	NoFault   int     `json:"no_fault_found"`
	CalledOff int     `json:"called_off"`
	Waits     int     `json:"waits_for_a_part"`
	Undecided int     `json:"waits_for_the_client"`
	Unfin     int     `json:"unfinished"`
	Open      int     `json:"open"`    // not closed
	Changed   int     `json:"changed"` // not as closed
	CallBacks int     `json:"call_backs"`
	Returns   int     `json:"returns"`   // after a call that was to be gone on with
	MadeGood  int     `json:"made_good"` // of the unsafe ones, by a later call
}

// byResult are the sums of calls by their result, but for the unsafe ones,
// which have more than theirs.
//
//go:noinline
func (t *Totals) byResult() map[string]*int {
	return map[string]*int{record.NotProved: &t.NotProved, record.Waits: &t.Waits, record.Unfinished: &t.Unfin, record.NoRepair: &t.NoRepair,
		record.PassedOn: &t.PassedOn, record.Declined: &t.Declined, record.NotWorth: &t.NotWorth, record.Undecided: &t.Undecided, record.NoFault: &t.NoFault, record.CalledOff: &t.CalledOff, record.Proved: &t.Proved}
}

// PartUse is how often a part was used.
type PartUse struct {
	Name  string  `json:"name"`
	Count float64 `json:"count"`
	Calls int     `json:"calls"`
}

// Share is how often a cause was found for a kind of complaint.
type Share struct {
	Kind  string  `json:"kind"`  // complaint code
	Cause string  `json:"cause"` // "" when none was found
	Calls int     `json:"calls"`
	Of    int     `json:"of"` // calls with this kind of complaint
	Part  float64 `json:"share"`
}

// Problem is a file that was not counted.
type Problem struct {
	Path   string `json:"path"`
	State  State  `json:"state"`
	Reason string `json:"reason"`
}

// Digest is what many calls add up to. It does not depend on the order in
// which files were scanned.
type Digest struct {
	Rows     []Row // unsafe first, then as in record.Results, then by date and path
	Totals   Totals
	Seen     int       // calls in the scan, picked or not
	Parts    []PartUse // most used first
	Causes   []Share   // by kind, most frequent first
	Problems []Problem // files that were not counted, by path
	Foreign  int       // how many of them are simply no notebooks
}

// NewDigest adds up the calls of a scan that the filter picks.
func NewDigest(items iter.Seq[Item], f Filter) *Digest {
	d := &Digest{}
	g := gathered{same: texts{}}
	var full [][]Row // each as long as it is made: rows are large, and one slice that grows copies them often
	rows := make([]Row, 0, rowsAtOnce)
	items(func(it Item) bool {
		if !it.State.Counts() {
			d.Problems = append(d.Problems, Problem{it.Path, it.State, clip(it.Reason)})
			if it.State == Foreign {
				d.Foreign++
			}
			return true
		}
		d.Seen++
		var follow *Follow // nil when the filter leaves it out
		if f.Match(&it) {
			follow = &Follow{}
			if len(rows) == cap(rows) {
				full, rows = append(full, rows), make([]Row, 0, rowsAtOnce)
			}
			rows = append(rows, newRow(&it, g.same, follow))
		}
		g.add(&it, follow)
		return true
	})
	d.Rows = slices.Concat(append(full, rows)...)
	d.pick(g.compare(), f)
	order(d.Rows, func(a, b *Row) int {
		return cmp.Or(cmp.Compare(rank(a), rank(b)), strings.Compare(a.Started, b.Started), strings.Compare(a.Path, b.Path))
	})
	order(d.Problems, func(a, b *Problem) int { return strings.Compare(a.Path, b.Path) })
	d.add()
	return d
}

// rowsAtOnce is how many rows are made at a time.
const rowsAtOnce = 512

func newRow(it *Item, same texts, follow *Follow) Row {
	h := &it.Header
	return Row{
		ID: it.ID, Path: it.Path, Date: date(h), Started: clip(h.Started), Technician: same.clip(h.Technician), Client: same.clip(h.Client),
		Unit: same.clip(h.Unit), Model: same.clip(h.Model), Serial: clip(h.Serial), Machine: same.clip(h.Machine), Complaint: same.clip(h.Complaint),
		Kind: same.clip(h.Kind), Cause: same.clip(h.Cause), Result: same.clip(h.Result), Left: same.clip(h.Left), Minutes: h.Minutes, Cost: h.Cost, Unpriced: h.Unpriced,
		Missing: same.clipAll(h.Missing), Unsafe: same.clipAll(h.Unsafe), Doubt: same.clipAll(h.Doubt), Said: same.clipAll(h.Said), Next: same.clip(it.next), Parts: same.clipEach(h.Parts), State: it.State, Reason: same.clip(it.Reason),
		Follow: follow,
	}
}

// pick takes out the copies whose original is there, wherever in the scan it
// stands, and what the filter picks by the calls that follow on each other.
func (d *Digest) pick(out map[string]twin, f Filter) {
	for path, t := range out {
		d.Problems = append(d.Problems, Problem{path, t.State, t.Reason})
	}
	d.Seen -= len(out)
	n := 0
	for i := range d.Rows {
		if _, copied := out[d.Rows[i].Path]; !copied && f.follows(d.Rows[i].Follow) {
			d.Rows[n] = d.Rows[i]
			n++
		}
	}
	d.Rows = d.Rows[:n]
}

// rank puts what needs attention first: what is unsafe as far as anybody knows,
// then what was and was made good.
func rank(r *Row) int {
	switch {
	case len(r.Unsafe) > 0 && !r.MadeGood:
		return 0
	case len(r.Unsafe) > 0:
		return 1
	case len(r.Doubt) > 0:
		return 2 // with what is not proved
	}
	return 1 + record.ResultRank(r.Result)
}

// add sums the rows up, in their order, so that sums of money round alike
// each time.
func (d *Digest) add() {
	t := &d.Totals
	parts, causes, kinds := map[string]*PartUse{}, map[[2]string]int{}, map[string]int{}
	for i := range d.Rows {
		r := &d.Rows[i]
		t.Calls++
		t.Minutes += r.Minutes
		t.Cost += r.Cost
		t.Unpriced += r.Unpriced
		count(&t.Unsafe, len(r.Unsafe) > 0)
		count(&t.MadeGood, r.MadeGood)
		for word, n := range t.byResult() {
			count(n, r.Result == word)
		}
		count(&t.Open, r.State == Open)
		count(&t.Changed, r.State == Changed)
		count(&t.CallBacks, r.CallBack != nil)
		count(&t.Returns, r.Return != nil)
		if r.Kind != "" {
			causes[[2]string{r.Kind, r.Cause}]++
			kinds[r.Kind]++
		}
		addParts(parts, r.Parts)
	}
	for _, p := range parts {
		d.Parts = append(d.Parts, *p)
	}
	order(d.Parts, func(a, b *PartUse) int {
		return cmp.Or(cmp.Compare(b.Count, a.Count), strings.Compare(a.Name, b.Name))
	})
	for k, n := range causes {
		d.Causes = append(d.Causes, Share{k[0], k[1], n, kinds[k[0]], float64(n) / float64(kinds[k[0]])})
	}
	order(d.Causes, func(a, b *Share) int {
		return cmp.Or(strings.Compare(a.Kind, b.Kind), cmp.Compare(b.Calls, a.Calls), strings.Compare(a.Cause, b.Cause))
	})
}

// addParts counts the parts of one call; the name shown is the first in the
// alphabet of those that differ in letter case only.
func addParts(parts map[string]*PartUse, texts []string) {
	seen := map[string]bool{}
	for _, text := range texts {
		n, name := parsePart(text)
		k := key(name)
		p := parts[k]
		if p == nil {
			p = &PartUse{Name: name}
			parts[k] = p
		}
		p.Name = min(p.Name, name)
		p.Count += n
		if !seen[k] {
			p.Calls++
		}
		seen[k] = true
	}
}

// parsePart reads "2 x start device"; a text without a count is one part.
func parsePart(text string) (float64, string) {
	if number, name, ok := strings.Cut(text, " x "); ok {
		if n, err := strconv.ParseFloat(number, 64); err == nil && n >= 0 && n <= 1e9 {
			return n, name
		}
	}
	return 1, text
}

// order sorts a list. It goes by sort.Slice, which is one code for all types:
// the generic one is 10 to 20 KB of the binary for each.
func order[T any](list []T, compare func(a, b *T) int) {
	sort.Slice(list, func(i, j int) bool { return compare(&list[i], &list[j]) < 0 })
}

//go:noinline
func count(n *int, yes bool) {
	if yes {
		*n++
	}
}

// key folds the spellings of a part, a model or a name that mean the same:
// letter case and spaces.
//
//go:noinline
func key(s string) string { return strings.ToLower(strings.Join(strings.Fields(s), " ")) }

//go:noinline
func clip(s string) string {
	if len(s) <= clipText {
		return s
	}
	return strings.Clone(strings.ToValidUTF8(s[:clipText], "")) + "…"
}

// texts holds each text of a digest once: most are said of many calls.
type texts map[string]string

//go:noinline
func (t texts) clip(s string) string {
	if old, ok := t[s]; ok {
		return old
	}
	s = clip(s)
	t[s] = s
	return s
}

// clipAll keeps the first twenty texts of a list and says how many it left
// out.
func (t texts) clipAll(list []string) []string {
	const most = 20
	if len(list) <= most {
		return t.clipEach(list)
	}
	return append(t.clipEach(list[:most]), "and "+strconv.Itoa(len(list)-most)+" more")
}

// clipEach keeps a thousand texts, more than the parts of any repair.
//
//go:noinline
func (t texts) clipEach(list []string) []string {
	out := make([]string, 0, len(list))
	for _, s := range list[:min(len(list), 1000)] {
		out = append(out, t.clip(s))
	}
	return out
}

// recordState says in words how a call's record stands when that needs
// saying, "" for a trusted one.
func (r *Row) recordState() string {
	if r.State == Trusted {
		return ""
	}
	return string(r.State) + ": " + r.Reason
}
