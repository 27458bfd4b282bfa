package call

import (
	"sort"
	"strings"

	"ohmcall/calc/judge"
	"ohmcall/calc/verdict"
)

// surgeKind is the kind of subject that judges the current at start.
const surgeKind = "surge"

// sawStart and sawNoStart are the findings that say what became of a start.
var (
	sawStart   = []string{"starts-and-runs", "starts-after-wait", "starts-on-other-outlet", "starts-with-test-device", "starts-with-kit"}
	sawNoStart = []string{"does-not-start", "clicks", "hums", "no-start-after-wait", "no-start-on-other-outlet", "no-start-with-test-device", "no-start-with-kit"}
)

// judgeSurge judges a start current by the plate and by what became of it.
func (c *Call) judgeSurge(name string, peak *reading, before int) verdict.Verdict {
	of := c.machineFor(name)
	in := judge.SurgeIn{Name: name, Peak: c.value(peak), LRA: c.plateNumber(of, "lra", "A"), Plate: c.plateNumber(of, "amps", "A"), Volts: c.voltsOf(of)}
	var by int
	in.Then, by = c.courseOf(name, peak, before)
	out := judge.Surge(in)
	if by > 0 && by != peak.entry {
		out.Entries = append(out.Entries, by)
	}
	return out
}

// courseOf is what became of a start current and the entry that says so: the
// next one after the peak, else the last before it, none from across a repair.
func (c *Call) courseOf(name string, peak *reading, before int) (then judge.Course, by int) {
	rep := c.repairs()
	take := func(entry int, t judge.Course) {
		if entry >= before || !c.alive(entry) || phase(rep, entry) != phase(rep, peak.entry) {
			return
		}
		later, known := entry >= peak.entry, by >= peak.entry
		if by == 0 || later && (!known || entry < by) || !later && !known && entry > by {
			then, by = t, entry
		}
	}
	runs := c.bySubject["amp\x00"+name]
	next := sort.Search(len(runs), func(i int) bool { return runs[i].entry >= peak.entry })
	for _, r := range runs[max(0, next-mostJudged):min(len(runs), next+mostJudged)] {
		if t := c.courseOfRun(name, r); t != judge.Unwatched {
			take(r.entry, t)
		}
	}
	if c.machineFor(name) != c.mainMachine() {
		return then, by
	}
	seen := func(codes []string, t judge.Course) {
		for _, code := range codes {
			at := c.seenAt[code]
			next := sort.SearchInts(at, peak.entry)
			for _, n := range at[max(0, next-mostJudged):min(len(at), next+mostJudged)] {
				take(n, t)
			}
		}
	}
	seen(sawNoStart, judge.NotStarted)
	seen(sawStart, judge.Started)
	return then, by
}

// courseOfRun is what a current read later says of the start: that it stayed or
// fell. No current says nothing: the machine may have been taken off.
func (c *Call) courseOfRun(name string, r *reading) judge.Course {
	switch v := c.judgeAmp(name, r); {
	case among(v.Fact, "amps-locked-rotor"):
		return judge.Stayed
	case among(v.Fact, "amps-sound"), among(v.Fact, "amps-high"), among(v.Fact, "amps-low"):
		return judge.Started
	}
	return judge.Unwatched
}

// tellSurges judges the start currents anew, now that more may be known of what
// became of them, and tells what has changed.
func (c *Call) tellSurges(reply *Reply) {
	for _, key := range c.subjects {
		kind, name, _ := strings.Cut(key, "\x00")
		if kind == "part" && strings.HasPrefix(name, "relay") && c.relayRead() {
			c.judge(kind, name) // what was read of its other half settles it
		}
		if kind != surgeKind {
			continue
		}
		was := c.judged[key]
		if was == nil {
			continue
		}
		word := was.verdict.Word
		if j, _ := c.judge(kind, name); j != nil && j.verdict.Word != word {
			c.tellVerdict(j, reply)
		}
	}
}
