package call

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/calc/caution"
	"ohmcall/calc/verdict"
	"ohmcall/calc/winding"
	"ohmcall/notebook/said"
)

// barring are the facts that forbid to energise, inDoubt those that forbid it
// until an insulation tester has settled it.
var (
	barring = []string{"winding-grounded", "insulation-failed", "earth-continuity-failed", "heater-grounded"}
	inDoubt = []string{"insulation-suspect", "heater-insulation-suspect", "insulation-undecided", "heater-insulation-undecided"}
	suspect = []string{"insulation-suspect", "heater-insulation-suspect"}
)

// verdictsWith are the verdicts that carry one of the facts and stand: what was
// failed stays so until it is read again or its machine replaced, whatever
// else was mended.
func (c *Call) verdictsWith(facts ...string) []*judged {
	var out []*judged
	for _, key := range c.subjects {
		if j := c.judged[key]; j != nil && intersects(j.verdict.Fact, facts) && !c.replacedSince(key, j) {
			out = append(out, j)
		}
	}
	return out
}

// replacedSince reports whether the machine or part that a verdict is on was
// replaced after it.
func (c *Call) replacedSince(key string, j *judged) bool {
	return c.renewedAt(ownerOf(key)) > lastEntry(j.verdict)
}

// ownerOf is the machine or part that a subject is of.
//
//go:noinline
func ownerOf(key string) string {
	_, name, _ := strings.Cut(key, "\x00")
	of, pin, _ := strings.Cut(name, "\x00")
	return cmp.Or(of, pin) // a part named outright is read to the case by itself
}

// lastEntry is the latest entry that a verdict rests on; one that rests on none
// is not of anything that could be replaced.
//
//go:noinline
func lastEntry(v verdict.Verdict) int {
	if n := len(v.Entries); n > 0 {
		return v.Entries[n-1]
	}
	return math.MaxInt
}

// renewedAt is the last entry by which a machine or part was replaced, 0 when
// none was.
//
//go:noinline
func (c *Call) renewedAt(name string) int { return c.renewedBefore(name, math.MaxInt) }

// renewedBefore is renewedAt as it stood before an entry.
func (c *Call) renewedBefore(name string, before int) int {
	for i := len(c.renewed) - 1; i >= max(0, len(c.renewed)-mostRenewals); i-- {
		c.spend(200)
		if w := c.renewed[i]; w.entry < before && c.alive(w.entry) && !c.saidBefore(w.entry) && said.Names(w.text, name) {
			return c.workAt(w.entry)
		}
	}
	return 0
}

// mostRenewals is how far back a replacement is looked for.
const mostRenewals = 64

// NotAsClosed is noted before anything else goes into a file that was closed and
// changed since.
const NotAsClosed = "the file was not what had been closed when it was opened again: its log was changed or cut off"

// NotAsWritten is noted before anything else goes into an open file in which
// replies stand that this program does not give.
const NotAsWritten = "replies in the file were not those that its lines give when it was gone on with: it was changed by hand, or written by another version"

// HeadSpoke begins the note of what only the head of a damaged file told; where it
// told of danger, that stands until the note is struck.
const HeadSpoke = "the head of the file as it was found spoke of "

// ofTheFile is the kind of a note that the program writes about the file itself:
// nobody tells anything of the machine in it, so it is not listened to.
const ofTheFile = "file"

// kindOfNote is ofTheFile for a text that the program has written, else note.
func kindOfNote(text string) string {
	if text == NotAsClosed || text == NotAsWritten || strings.HasPrefix(text, HeadSpoke) {
		return ofTheFile
	}
	return "note"
}

// worked writes a line of work down.
func (c *Call) worked(w work) {
	c.works = append(c.works, w)
	switch {
	case w.kind != ofTheFile:
		c.heed(w)
	case !strings.HasPrefix(w.text, HeadSpoke):
		c.broken = append(c.broken, w.entry)
	case strings.HasPrefix(w.text, HeadSpoke+"unsafe"):
		c.spoken = append(c.spoken, w)
	}
	c.restTold(w)
}

// heed notes what a line of work or a part says of mending, of renewing and of
// protection.
func (c *Call) heed(w work) {
	c.spend(400 * min(len(w.text), said.MostBytes))
	if said.NamesFire(w.text) {
		c.fires = append(c.fires, w.entry)
	}
	if said.NamesMild(w.text) {
		c.mild = append(c.mild, w.entry)
	}
	if w.kind == "part" || w.kind == "did" {
		c.spend(400 * min(len(w.text), said.MostBytes))
		if done := said.Stated(w.text); len(done) > 0 {
			c.spend(30_000)
			what := w
			what.text = strings.Join(done, ", ")
			c.done = append(c.done, doneWork{what, cause.MendsSomething(what.text)})
		}
		list := said.Renewals(w.text)
		if w.kind == "part" && !said.Undone(w.text) {
			list = []string{strings.ToLower(w.text)}
		}
		if f, ok := said.FittedCapacitor(w.text); ok && len(list) > 0 {
			c.capsFitted = append(c.capsFitted, fittedCap{f, w.entry})
		}
		for _, j := range said.Opened(w.text, w.kind == "part") {
			c.opened = append(c.opened, opening{j, w.entry})
		}
		for _, what := range list {
			if !said.MendsIt("", "", w.text) {
				break
			}
			c.renewed = append(c.renewed, work{w.entry, w.at, w.kind, what})
		}
	}
	if w.kind != "safe" {
		c.hearEnding(w.text, false)
	}
	if w.kind != "safe" && w.kind != "part" && (len(c.guarding) > 0 || said.TakesOut(w.text)) {
		c.guarding = append(c.guarding, said.Guards(w.entry, w.text, w.kind == "did", c.makesIce())...)
	}
}

// renew takes every machine that the line at hand says was replaced for a new
// one, of which nothing was read yet.
func (c *Call) renew(r *Reply) {
	for _, of := range c.machineNames() {
		m := c.machines[of]
		if c.saidBefore(c.entry) || c.renewedAt(of) != c.workAt(c.entry) || len(m.result.Pins) == 0 {
			continue
		}
		m.result = c.inferWindings(of, math.MaxInt)
		m.shown = m.result.Notes
		c.judgeWindings(of, m.result)
		for _, role := range []string{"start", "run"} {
			c.judge(windingKind, of+"\x00"+role)
		}
		r.add(Plain, "Taken as a new "+of+" from here on: what was read before is of the old one. Read or mark its pins, and each to the case before it is energised.").flag("machine-renewed")
	}
}

// grounds says what forbids to energise, "" when nothing does.
func (c *Call) grounds() string {
	for _, j := range c.verdictsWith(barring...) {
		if j.verdict.Word == verdict.Failed {
			return j.verdict.Subject + " " + string(j.verdict.Word) + " (" + entryList(j.verdict.Entries) + ")"
		}
	}
	return ""
}

// guardsBefore are the lines of protective devices before an entry that count.
func (c *Call) guardsBefore(before int) []said.Guard {
	list := c.guarding[max(0, len(c.guarding)-mostRenewals):]
	c.spend(500 * len(list))
	return slices.DeleteFunc(slices.Clone(list), func(g said.Guard) bool { return g.Entry >= before || !c.alive(g.Entry) })
}

// defeated are the lines by whose words a protective device is out of its
// circuit, as long as none after them says that it is back.
func (c *Call) defeated() []said.Guard {
	left := said.Out(c.guardsBefore(math.MaxInt))
	// An earth path that was read since is back, whatever was said of it.
	return slices.DeleteFunc(left, func(g said.Guard) bool {
		return g.OfEarth() && !g.AtPlug() && c.lastShown([]string{"earth-continuity-sound"}) > g.Entry
	})
}

// bridged lists the lines by which a protective device is out of its circuit,
// each once, with the words that say that it is back.
func (c *Call) bridged() []string {
	var out []string
	last := 0
	list := c.defeated()
	for _, g := range list {
		if g.Entry != last {
			last = g.Entry
			out = append(out, "entry "+itoa(last)+": "+g.Text+backBy(list, last))
		}
	}
	return out
}

// stateWords says of a machine what its windings are, and where its insulation
// is in doubt.
func (c *Call) stateWords(of string) string {
	s := windingState(c.machines[of].result.State)
	if c.machines[of].result.Disputed {
		s = disputes
	}
	if pins := c.doubtful(of); len(pins) > 0 {
		s += ", insulation in doubt at " + strings.Join(pins, ", ")
	}
	return s
}

func windingState(state winding.State) string {
	switch state {
	case winding.Sound:
		return "windings sound"
	case winding.DoesNotAddUp:
		return "readings do not add up"
	}
	return string(state)
}

// doubtful names the pins of a machine whose insulation to the case is in
// doubt.
func (c *Call) doubtful(machine string) []string {
	var out []string
	for _, key := range c.subjects {
		kind, name, _ := strings.Cut(key, "\x00")
		j := c.judged[key]
		if kind != "case" || j == nil || !intersects(j.verdict.Fact, inDoubt) || c.replacedSince(key, j) {
			continue
		}
		if of, pin, _ := strings.Cut(name, "\x00"); of == machine {
			out = append(out, pin)
		}
	}
	return out
}

// doubtfulHeaters names the heaters whose insulation to the sheath is in doubt.
func (c *Call) doubtfulHeaters() []string {
	var out []string
	for _, key := range c.subjects {
		kind, name, _ := strings.Cut(key, "\x00")
		if j := c.judged[key]; kind == "sheath" && j != nil && intersects(j.verdict.Fact, inDoubt) && !c.replacedSince(key, j) {
			out = append(out, name)
		}
	}
	return out
}

// caseFirst is the step that comes before anything that energises a machine
// whose pins were read but not all of them to the case; "" when none does.
func (c *Call) caseFirst(t *cause.Test) string {
	of := c.mainMachine()
	if t == nil || t.Danger == cause.Dead {
		return ""
	}
	left := c.notToCase(of, math.MaxInt)
	if len(left) == 0 {
		return ""
	}
	return "before anything is energised, read " + strings.Join(left, ", ") + " to the case (ohm " + left[0] + " case …)"
}

// settleInsulation is the step that comes before anything that energises,
// while the insulation is in doubt; "" when it is not.
func (c *Call) settleInsulation() string {
	pins := append(c.doubtful(c.mainMachine()), c.doubtfulHeaters()...)
	if len(pins) == 0 {
		return ""
	}
	return "settle the insulation before anything is energised: terminals clean and dry, insulation tester from " + strings.Join(pins, ", ") +
		" to case (ohm " + pins[0] + " case … test 500V)"
}

// energisedAnyway warns when a line is of a machine under power that should not
// be energised, and reports whether it did.
func (c *Call) energisedAnyway(reply *Reply) bool {
	why := append(c.verdictsWith(barring...), c.verdictsWith(suspect...)...)
	if len(why) == 0 {
		return false
	}
	v, t := why[0].verdict, cautionOf(caution.NeverEnergise)
	reply.add(Caution, "Caution: "+v.Subject+": "+string(v.Word)+" ("+entryList(v.Entries)+"). "+t.Text).flag("caution-" + t.Code)
	return true
}

func cautionOf(code string) caution.Caution {
	t, _ := caution.Text(code)
	return t
}

// unsealed are the complaints that are not of a sealed system.
var unsealed = []string{"no-heat", "motor-dead", said.NoDrain}

// atCompressor reports whether the work at hand may be at a compressor.
func (c *Call) atCompressor() bool {
	return kindOf(c.machineAtHand()) == winding.Compressor && !c.appliance().Unsealed &&
		!among(unsealed, c.complaint())
}
