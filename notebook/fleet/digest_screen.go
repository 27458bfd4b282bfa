package fleet

import (
	"cmp"
	"slices"
	"sort"
	"strconv"
	"strings"
)

// How many things that a call lacks, has in doubt, or has unsafe are told of it on
// a screen, each whole; the other forms have all.
const (
	mostMissing = 2
	mostDoubt   = 3
	mostUnsafe  = 10
)

// Screen lays the digest out for a screen: the calls as a table that says of
// each the little that tells it from others, and the tables under it.
func (d *Digest) Screen() (calls TextTable, rest []TextTable) {
	calls = TextTable{Title: "Calls", Head: []string{"Date", "Min", "Result", "Client", "Unit", "Complaint and cause", "Missing or unsafe", "File"}}
	for i := range d.Rows {
		r := &d.Rows[i]
		calls.Rows = append(calls.Rows, []string{r.day(), strconv.Itoa(r.Minutes), join(append([]string{r.result()}, r.remarks()...)...), cmp.Or(r.Client, "-"), cmp.Or(r.what(), "-"),
			r.found(), cmp.Or(join(r.wants()...), "nothing"), r.safePath()})
	}
	return calls, filled(d.sumTables())
}

// Brief is a call in a few lines, for a screen that has no room for a table:
// first what tells it from others. Its file is to stand under them.
func (r *Row) Brief() []string {
	out := []string{r.day() + "  " + strings.TrimSuffix(r.result()+": "+join(r.Client, r.what()), ": ")}
	for _, s := range append(append([]string{r.found()}, r.wants()...), join(append(r.remarks(), strconv.Itoa(r.Minutes)+" min")...)) {
		if s != "" {
			out = append(out, "  "+s)
		}
	}
	return out
}

// wants is what is unsafe, in doubt or missing, and of an open call what comes
// next.
//
//go:noinline
func (r *Row) wants() []string {
	next := r.Next
	if next != "" {
		next = "next: " + next
	}
	return []string{few("unsafe: ", r.Unsafe, mostUnsafe), few("in doubt: ", r.Doubt, mostDoubt), few("missing: ", proofFirst(r.missing()), mostMissing), next}
}

// missing is what is missing besides what comes next, or an earth that is in doubt,
// which say the same.
func (r *Row) missing() []string {
	_, step, _ := strings.Cut(r.Next, ": ")
	step = "proof: " + step
	return slices.DeleteFunc(slices.Clone(r.Missing), func(s string) bool {
		start := strings.TrimSuffix(s, "…")
		return s == step || start != s && strings.HasPrefix(step, start) || slices.ContainsFunc(r.Doubt, func(d string) bool {
			return strings.HasPrefix(d, "earth: ") && strings.HasPrefix(s, "proof: earth ")
		})
	})
}

// found is the complaint and what was found behind it.
//
//go:noinline
func (r *Row) found() string {
	cause := "cause not found"
	if r.Cause != "" {
		cause = "cause: " + r.Cause
	}
	return cmp.Or(r.Complaint, "no complaint") + "; " + cause
}

// proofFirst puts what is missing of the proof before the rest.
func proofFirst(list []string) []string {
	out := slices.Clone(list)
	sort.SliceStable(out, func(i, k int) bool { return notProof(out[i]) < notProof(out[k]) })
	return out
}

func notProof(s string) int {
	if strings.HasPrefix(s, "proof") {
		return 0
	}
	return 1
}

// First names the files that are to be looked at first, "" when none is unsafe.
func (d *Digest) First() string {
	var still, mended []string
	for i := range d.Rows {
		switch r := &d.Rows[i]; {
		case r.MadeGood:
			mended = append(mended, r.safePath())
		case len(r.Unsafe) > 0:
			still = append(still, r.safePath())
		}
	}
	text := named("Unsafe, listed first: ", still)
	if s := named("Unsafe then, made good by a later call: ", mended); s != "" {
		text = strings.TrimLeft(text+" "+s, " ")
	}
	return text
}

// named is a sentence that names files, "" of none.
func named(lead string, names []string) string {
	if len(names) == 0 {
		return ""
	}
	more := ""
	if n := len(names) - mostFirst; n > 0 {
		names, more = names[:mostFirst], " and "+strconv.Itoa(n)+" more"
	}
	return lead + strings.Join(names, ", ") + more + "."
}

// mostFirst is how many files that line names.
const mostFirst = 5

// few tells the first of a list and how many more there are.
//
//go:noinline
func few(lead string, list []string, most int) string {
	if len(list) == 0 {
		return ""
	}
	text := lead + strings.Join(list[:min(len(list), most)], "; ")
	if n := len(list) - most; n > 0 {
		text += "; and " + strconv.Itoa(n) + " more"
	}
	return text
}
