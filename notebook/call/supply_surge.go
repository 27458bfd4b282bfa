package call

import (
	"slices"
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
	if trip := c.tripOf(peak, before); trip != nil && (by < peak.entry || by > trip.entry) {
		return judge.Stayed, trip.entry
	}
	return then, by
}

// tripOf is the reading of the protector's opening that ended this attempt at a
// start: what is seen to start later is another.
func (c *Call) tripOf(peak *reading, before int) *reading {
	trips := c.bySubjectKind["trip"]
	next := sort.Search(len(trips), func(i int) bool { return trips[i].index > peak.index })
	for _, r := range trips[max(0, next-1):min(len(trips), next+1)] {
		if r.entry < before && c.alive(r.entry) && judge.TripsLocked(c.value(r)) && c.ampsBeside(r, before) == peak {
			return r
		}
	}
	return nil
}

// courseOfRun is what a current read later says of the start: that it stayed or
// fell. No current says nothing: the machine may have been taken off.
func (c *Call) courseOfRun(name string, r *reading) judge.Course {
	switch v := c.judgeAmp(name, r); {
	case among(v.Fact, "amps-locked-rotor"):
		return judge.Stayed
	case among(v.Fact, "amps-sound"), among(v.Fact, "amps-agree"), among(v.Fact, "amps-high"), among(v.Fact, "amps-low"):
		return judge.Started
	}
	return judge.Unwatched
}

// tellBeside judges anew what rests on readings of another subject, or on what
// was seen, now that there are more of them, and tells what has changed: the
// order in which they were written down is no fact.
func (c *Call) tellBeside(reply *Reply) {
	relay := func(family string) bool {
		return c.reads(func(r *reading) bool { return strings.HasPrefix(strings.ToLower(r.a), family) })
	}
	volts := c.reads(func(r *reading) bool { return r.quality.word == "volt" })
	amps := c.reads(func(r *reading) bool { return r.quality.word == "amp" })
	air := c.reads(func(r *reading) bool { return r.quality.word == "temp" })
	start := c.reads(func(r *reading) bool { return r.quality.word == "volt" && c.atMachine(r) && starting(r) })
	pins := c.reads(func(r *reading) bool { return r.quality.word == "ohm" && r.of == c.mainMachine() && r.b != "" })
	c.spend(2 * len(c.subjects))
	for _, key := range c.subjects {
		kind, name, _ := strings.Cut(key, "\x00")
		switch {
		case c.judged[key] == nil:
			continue
		case kind == surgeKind,
			c.judged[key].verdict.Word == "", // see resubject
			kind == "part" && strings.HasPrefix(name, "relay") && relay("relay"),
			kind == "part" && strings.HasPrefix(name, "potential") && relay("potential"),
			kind == "amp" && volts && isHeater(name),
			kind == "trip" && (amps || pins), // which say of which machine the amps are
			kind == "psi" && air,
			kind == "volt" && pins, // three like windings are fed by a drive
			kind == "supply" && start:
		default:
			continue
		}
		was := c.judged[key].verdict
		j, _ := c.judge(kind, name)
		switch {
		case j == nil:
		case kind == "part": // the whole of a relay, of which another part was read
			if !slices.Equal(j.verdict.Entries, was.Entries) && !c.reads(func(r *reading) bool { return strings.EqualFold(r.a, name) }) {
				c.tellVerdict(j, reply)
			}
		case j.verdict.Word != was.Word || kind != surgeKind && j.verdict.Text != was.Text:
			c.tellVerdict(j, reply)
		}
	}
}

// reads reports whether this entry holds a reading that fits.
func (c *Call) reads(fits func(*reading) bool) bool {
	for i := len(c.readings) - 1; i >= 0 && c.readings[i].entry == c.entry; i-- {
		if fits(c.readings[i]) {
			return true
		}
	}
	return false
}
