package call

import (
	"math"
	"slices"
	"strings"
	"time"

	"ohmcall/calc/cause"
	"ohmcall/notebook/record"
	"ohmcall/notebook/said"
)

// againBy is how the complaint came up again at an entry.
func (c *Call) againBy(entry int) string {
	if entry <= len(c.entries) && c.entries[entry-1].Kind == "saw" {
		return "seen"
	}
	return "told"
}

// coldWanted are the complaints of what should be cold.
var coldWanted = []string{"no-cool", "fridge-warm", "no-start", "hums-trips", "runs-always", said.ACWarm}

// unfed tells a finding by which nothing can run.
func unfed(code string) bool {
	return code == "leg-missing" || code == "outlet-dead" || code == "all-dead"
}

// complaintsTold are the complaint and what else the client's words for it may mean.
func (c *Call) complaintsTold() []string {
	list := []string{c.complaint()}
	for _, h := range c.appliance().Complaints {
		if h.Code != list[0] {
			list = append(list, h.Code)
		}
	}
	return list
}

//go:noinline
func cures(complaints []string, code string) bool {
	return slices.ContainsFunc(complaints, func(of string) bool { return cause.Cures(of, code) })
}

//go:noinline
func persists(complaints []string, code string) bool {
	return slices.ContainsFunc(complaints, func(of string) bool { return cause.Persists(of, code) })
}

// relapse notes that a text tells the complaint again, or another failure, once work
// was done.
func (c *Call) relapse(r *Reply, text string) {
	if len(c.mended) == 0 || text == "" {
		return
	}
	if text = c.ofThis(text); text == "" {
		return
	}
	fare, kept, rests := c.fares(text), c.kept(), said.Rests(text)
	if c.listedBad() {
		fare = said.Beside // it is gone when what was seen is
	}
	fails, outright, worse, now := fare == said.Fails, fare == said.Fails, false, said.Now(text)
	c.spend(2000 * len(now))
	complaints := c.complaintsTold()
	cold, hums := intersects(complaints, coldWanted), said.Has(c.last("fault"), []string{"hum", "buzz"})
	for _, t := range now {
		if kept.Eased(t.Clause, rests) {
			continue
		}
		var codes []string
		for _, code := range cause.Heard(t.Clause) {
			if code != "silent" || !c.seenRunning() {
				codes = append(codes, c.inAppliance(code))
			}
		}
		if cold && !hums && said.Hums(t.Clause) || !t.Fails && said.Thaws(t.Clause) {
			continue
		}
		outright = outright || t.Fails
		cures := slices.ContainsFunc(codes, func(code string) bool { return cures(complaints, code) })
		switch {
		case t.Fails, !cures && slices.ContainsFunc(codes, func(code string) bool { return persists(complaints, code) }),
			len(codes) == 0 && slices.ContainsFunc(cause.Hits(t.Clause), func(h cause.Hit) bool {
				return among(complaints, h.Code) && h.Phrase != "warm" && (!said.Denied(t.Clause) || said.Lacks(t.Clause, h.Phrase))
			}),
			cold && (said.Warms(t.Clause) || said.Warmed(t.Clause) && c.cameDown()), !cold && said.Cools(t.Clause), c.appliance().Air && said.Iced(t.Clause), slices.ContainsFunc(codes, unfed):
			fails = true
			c.spend(400 * len(t.Clause))
			worse = worse || !said.Waits(t.Clause)
		case cures:
			fails = fails && outright && !strings.Contains(t.Clause, "now") // and then it did
		}
	}
	if fare == said.Warm && !outright && (fails || c.cameDown() || c.result() == record.Proved) {
		c.warmed = append(c.warmed, c.entry)
		fails, worse = true, true
	}
	if fails {
		c.toldAgain(r)
		if e := c.endings[max(0, len(c.endings)-1):]; c.lastOf(c.relapsed, c.entry) == c.entry && len(e) > 0 && e[0].entry == c.entry && e[0].Result == record.Waits && !worse {
			c.unsupplied = append(c.unsupplied, c.entry)
		}
	}
}

// ofThis is what of a text is of how this machine does now: on the visit, what the client
// says that it was is of the time before.
func (c *Call) ofThis(text string) string {
	c.spend(400 * min(len(text), said.MostBytes))
	n := c.lastMended()
	return said.OfThis(text, c.last("unit"), n > 0 && (n > len(c.entries) || c.at.Sub(c.entries[n-1].At) < visit))
}

// visit is how long one lasts at the most (common practice).
const visit = 8 * time.Hour

// listedBad reports whether the line at hand holds a finding by which the proof is lost.
func (c *Call) listedBad() bool {
	for i := len(c.findings) - 1; i >= 0 && c.findings[i].entry == c.entry; i-- {
		if f := &c.findings[i]; c.failsBeside(f) || f.code != "" && persists(c.complaintsTold(), f.code) {
			return true
		}
	}
	return false
}

// kept is what the machine is for, by which words of it are read.
func (c *Call) kept() said.Kept {
	list := c.complaintsTold()
	k := said.Kept{Cold: intersects(list, coldWanted), Ice: intersects(list, iceWanted), Rooms: c.appliance().Air}
	if n := len(c.bySubjectKind["temp"]); n > 0 {
		k.Celsius = c.bySubjectKind["temp"][n-1].q.UCUM() != "[degF]"
	}
	return k
}

// iceWanted are the complaints of what makes ice.
var iceWanted = []string{"no-ice", "poor-ice"}

// fares is what the words of the line at hand say of how the machine does.
func (c *Call) fares(text string) said.Fare {
	if c.faredAt != c.entry || c.faredText != text {
		c.faredAt, c.faredText, c.faredOf = c.entry, text, said.Beside
		if c.spend(4 * len(text)); said.OnMachine(text) {
			if text = c.ofThis(text); text == "" {
				return c.faredOf
			}
			c.spend(1600 * min(len(text), said.MostBytes))
			c.faredOf = c.kept().Fares(text)
		}
	}
	return c.faredOf
}

// eased gives what a text says after the work to what it is seen to be: a machine that
// rests does not fail to start, and a sound that was complained of and is there no more is
// the complaint gone, as is warmth that was told of where it is cold.
func (c *Call) eased(codes []string, text string) []string {
	if len(c.mended) == 0 {
		return codes
	}
	not := func(list ...string) bool {
		n := len(codes)
		codes = slices.DeleteFunc(codes, func(code string) bool { return among(list, code) })
		return len(codes) < n
	}
	if said.Rests(text) {
		if not("does-not-start", "silent", "cuts-out") {
			codes = append(codes, "cycles-off")
		}
		return codes
	}
	told := c.seenAgain()
	of := c.last("fault")
	if told > 0 {
		of = c.entries[told-1].Line
	}
	if sound := said.SoundWord(text); sound != "" {
		not("hums", "clicks", "noisy")
		if said.Has(of, []string{sound}) && (len(codes) == 0 || not("silent")) {
			codes = append(codes, "complaint-gone")
		}
	} else if len(codes) == 0 && told > 0 && slices.Contains(c.warmed, told) && c.fares(text) == said.Well {
		codes = append(codes, "complaint-gone")
	}
	return codes
}

// cameDown reports whether a course has proved the cold: before, what is warm is only on
// its way.
func (c *Call) cameDown() bool {
	curves := c.curves(c.since(), math.MaxInt)
	for i := range curves {
		if good(&curves[i]) {
			return true
		}
	}
	return false
}

// failedWork notes of work just written down that its line tells that it did not help.
func (c *Call) failedWork(r *Reply, text string) {
	if c.spend(2000); said.FailsAfter(text) {
		c.toldAgain(r)
	}
}

// toldAgain notes that the line at hand tells of something that is not mended.
func (c *Call) toldAgain(r *Reply) {
	if len(c.mended) == 0 || c.lastOf(c.relapsed, c.entry) == c.entry {
		return
	}
	c.relapsed = append(c.relapsed, c.entry)
	if n := len(c.closed); n == 0 || c.closed[n-1] < c.entry {
		r.add(Warn, "Told as not mended: it is not proved until it is seen to be gone ("+c.goneBy(c.entry)+"). If it is not so, strike "+itoa(c.entry)+".").flag("told-again")
	}
}

// goneBy are the words by which what was told at an entry is seen to be gone.
func (c *Call) goneBy(entry int) string {
	if slices.Contains(c.warmed, entry) && !c.appliance().Air {
		return "saw complaint gone, or a temperature that is right again"
	}
	return "saw complaint gone"
}

// coldAgain reports whether a course of temperatures that is proved ends after an entry.
func (c *Call) coldAgain(entry int) bool {
	curves := c.curves(c.since(), math.MaxInt)
	for i := range curves {
		if k := &curves[i]; good(k) && k.Points[len(k.Points)-1].Entry > entry {
			return true
		}
	}
	return false
}
