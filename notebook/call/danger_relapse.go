package call

import (
	"math"
	"slices"
	"strings"

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
	fails, outright, worse, now := false, false, false, said.Now(text)
	c.spend(2000 * len(now))
	complaints := c.complaintsTold()
	cold, hums := intersects(complaints, coldWanted), said.Has(c.last("fault"), []string{"hum", "buzz"})
	for _, t := range now {
		var codes []string
		for _, code := range cause.Heard(t.Clause) {
			codes = append(codes, c.inAppliance(code))
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
	if fails {
		c.toldAgain(r)
		if e := c.endings[max(0, len(c.endings)-1):]; c.lastOf(c.relapsed, c.entry) == c.entry && len(e) > 0 && e[0].entry == c.entry && e[0].Result == record.Waits && !worse {
			c.unsupplied = append(c.unsupplied, c.entry)
		}
	}
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
		r.add(Warn, "Told as not mended: it is not proved until it is seen to be gone. If it is not so, strike "+itoa(c.entry)+".").flag("told-again")
	}
}
