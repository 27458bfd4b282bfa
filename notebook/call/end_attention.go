package call

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/calc/judge"
	"ohmcall/calc/sum"
	"ohmcall/calc/verdict"
	"ohmcall/calc/winding"
	"ohmcall/notebook/record"
	"ohmcall/notebook/said"
)

// alerts lists what a supervisor must see, the most dangerous first: what is
// unsafe, dangers told of, what was done to an appliance that is in doubt, what
// cannot be so, and what is missing. Each names the entry that it rests on.
func (c *Call) alerts(r *record.Record) []string {
	var out alertList
	add := out.add
	add("Unsafe", c.unsafe()...)
	for _, n := range c.broken {
		if c.alive(n) {
			add("Contradiction", c.entries[n-1].Line[len("note "):]+atEntry(n))
		}
	}
	add("In doubt", c.doubts()...)
	if as, n := c.leftAs(); n > 0 && len(c.unsafe()) == 0 && said.StateLeft(as) == said.TaggedOut {
		// What is tagged out may not be run before the tag is off: 29 CFR 1910.147(b) (from memory).
		add("In doubt", "left "+as+atEntry(n)+": not to be used while it is, and nothing here says what is unsafe")
	}
	add("In doubt", c.lined()...)
	now := c.weigh(math.MaxInt)
	for _, k := range now.Contradictions {
		add("Contradiction", strings.TrimPrefix(c.contradiction(k), contradicts)+"; read or look again, or strike the one that is wrong")
	}
	for _, s := range []string{c.exchanged(), c.againstLetters(c.mainMachine())} {
		if s != "" {
			add("Contradiction", s)
		}
	}
	if s := c.faultless(); s != "" {
		add("Contradiction", s)
	}
	for _, e := range c.expects {
		if s := c.inDoubt(e.from, e.worked); s != "" && c.alive(e.entry) {
			add("In doubt", e.meaning+atEntry(e.entry)+": "+s)
		} else if e.met == sum.No && c.alive(e.entry) {
			add("Expectation not met", e.meaning+atEntry(e.entry))
		} else if e.met == sum.Unsure && c.alive(e.entry) {
			add("In doubt", e.meaning+atEntry(e.entry)+": "+cmp.Or(e.why, tooClose))
		}
	}
	if m := c.machines[c.mainMachine()]; m != nil && m.result.Disputed {
		add("Contradiction", disputes+" ("+entryList(c.windingEntries(m.name))+"); settle which pin is common, or strike the one that is wrong")
	}
	for _, j := range c.jumps[max(0, len(c.jumps)-mostRenewals):] {
		if c.alive(j.entry) && c.alive(j.was) && phase(c.repairs(), j.entry) == phase(c.repairs(), j.was) {
			add("Contradiction", j.text)
		}
	}
	for _, n := range c.struckLate {
		c.spend(1)
		add("In doubt", "struck after the call had been closed: "+strings.TrimPrefix(c.entries[n-1].Line, "strike ")+atEntry(n))
	}
	if clash := c.wiresClash(); clash != "" {
		add("In doubt", "wiring: "+clash)
	} else {
		for _, t := range c.wirings() {
			for _, p := range t.Problems {
				if !strings.Contains(p, "no wire ") {
					add("In doubt", "wiring: "+p)
				}
			}
		}
	}
	for _, g := range c.untreated() {
		add("Not mended", g.told()+"; the work written down is for something else")
	}
	if n := c.leakLeft(); n > 0 {
		add("Not mended", leakSeen+atEntry(n))
	}
	add("Not mended", c.failedAlone()...)
	add("Work for what was ruled out", c.idle()...)
	add("Does not fit by its marking", c.misfits(0)...)
	add("To read", c.unreadWords()...)
	for _, w := range c.wanting() {
		if strings.HasPrefix(w.what, untreatedLead) {
			continue // it stands above
		}
		if w.asked != "" && !strings.Contains(w.what, "entr") {
			w.what += " (" + w.asked + ")"
		}
		add("Missing", w.what)
	}
	for i := 1; i < len(c.entries); i++ {
		if c.entries[i].At.Before(c.entries[i-1].At) {
			add("Note", fmt.Sprintf("the clock goes back at entry %d; entry numbers give the order", c.entries[i].N))
		}
	}
	add("Note", c.replacedSound()...)
	add("Note", c.didNotEnd()...)
	if c.reopened > 0 {
		add("Note", "it was closed and opened again (entry "+itoa(c.reopened)+")")
	}
	if c.redacted() {
		add("Note", "this is a copy: client and site were replaced by a mark")
	}
	return out
}

// doubtWords are those of what whoever goes through many calls must see besides
// what is unsafe or missing.
var doubtWords = []string{"In doubt", "Contradiction"}

// alertList is what needs attention, each line once.
type alertList []string

//go:noinline
func (l *alertList) add(word string, list ...string) {
	for _, s := range list {
		if s = word + ": " + s; !slices.Contains(*l, s) {
			*l = append(*l, s)
		}
	}
}

// unsafe lists the findings that make the unit unsafe as it stands.
func (c *Call) unsafe() []string {
	failed := slices.DeleteFunc(c.verdictsWith(barring...), func(j *judged) bool { return j.verdict.Word != verdict.Failed })
	out := told(failed, false)
	for _, a := range c.alarms() {
		out = append(out, a.text)
	}
	for _, w := range c.spoken {
		if c.alive(w.entry) {
			out = append(out, w.text+atEntry(w.entry))
		}
	}
	out = append(out, told(c.farOver(), false)...)
	if c.neutralPoor() != "" {
		out = append(out, "the neutral of its supply is poor or lost: "+c.neutralRead())
	}
	for _, text := range c.bridged() {
		out = append(out, "by its words a protective device may be out of its circuit, "+text)
	}
	as, n := c.leftAs()
	if said.StateLeft(as) != said.Running {
		return out
	}
	if c.lastShown(unmendable) > 0 {
		for _, g := range c.untreated() {
			if f := g.rests(); slices.ContainsFunc(f, c.canHurt) {
				out = append(out, g.told()+", not mended")
			}
		}
	}
	if len(out) > 0 {
		out = append([]string{"left running though it is unsafe" + atEntry(n)}, out...)
	}
	return out
}

// unmendable are findings of what can burn or shock where it is left so: of a connection
// that is burnt, no loose one.
var unmendable = []string{"connection-loose", "wire-at-metal", "heats-when-off"}

func (c *Call) canHurt(f cause.Fact) bool {
	return among(unmendable, f.Code) && (f.Code != unmendable[0] || f.Entry > 0 && f.Entry <= len(c.entries) && said.Has(c.entries[f.Entry-1].Line, burntWords))
}

var burntWords = []string{"burn", "char", "melt", "scorch", "black", "brown"}

// told says verdicts, with their word when asked, in a line each, those of several pins in one; what is said
// of the windings is left out where their pins say it.
func told(list []*judged, word bool) []string {
	var all, common []record.Verdict // as they are; as pins of other values have it in common
	pins := false
	for _, j := range list {
		pins = pins || strings.HasPrefix(j.verdict.Subject, "insulation ")
		v := record.Verdict{Subject: j.verdict.Subject, Word: string(j.verdict.Word), Text: j.verdict.Text, Entries: j.verdict.Entries}
		all = append(all, v)
		if _, rest, ok := strings.Cut(v.Text, " to the case, "); ok {
			v.Text = rest
		}
		common = append(common, v)
	}
	var out []string
	grouped := record.Grouped(all)
	if shorter := record.Grouped(common); len(shorter) < len(grouped) {
		grouped = shorter
	}
	for _, v := range grouped {
		if pins && strings.HasPrefix(v.Subject, "windings") {
			continue
		}
		text := v.Text
		if word {
			text = v.Word + ", " + text
		}
		out = append(out, v.Subject+": "+text+" ("+entryList(v.Entries)+")")
	}
	return out
}

// doubts lists what the record does not show of the work's own safety, and
// what nobody has settled.
func (c *Call) doubts() []string {
	var out []string
	var defied []int
	for _, n := range c.defied {
		if c.alive(n) {
			defied = append(defied, n)
		}
	}
	if len(defied) > 0 {
		out = append(out, "energised while its insulation or earth path was failed or in doubt, "+entryList(defied))
	}
	if n := slices.DeleteFunc(slices.Clone(c.sparked), func(n int) bool { return !c.alive(n) }); len(n) > 0 {
		out = append(out, "under power while gas that can burn was found and not shown to be gone, "+entryList(n))
	}
	for _, u := range c.units {
		if c.alive(u.entry) && c.alive(u.was) {
			out = append(out, u.text)
		}
	}
	out = append(out, told(c.verdictsWith(inDoubt...), true)...)
	out = append(out, told(c.verdictsWith("earth-undecided", "neutral-poor", judge.BeyondCutOut), true)...)
	if n := c.undeadTests(); len(n) > 0 {
		out = append(out, "dead tests without a word that the unit was dead, "+entryList(n))
	}
	return out
}

// provings are what a record wants beside the point of a proof that brings it (common
// practice).
var provings = [][2]string{
	{"earth continuity", "earth from"}, {"running amps", "running amps"}, {"start observed", "the start seen"},
	{"heating observed", "the temperature it reaches"}, {"temperatures over time", "timed temperatures"},
	{"condenser fan seen", "the condenser fan seen to run"}, {"evaporator fan seen", "the evaporator fan seen to run"}, {"fan seen", "fan seen to run"},
	{"air it takes in and gives out", "the air split"}, {"filling seen", "that it fills"}, {"draining seen", "that it drains"},
	{"drain of its pan", "that it stays dry"}, {"the drum seen to turn", "the drum seen"}, {"the noise gone", "the noise gone"}, {"the wash seen", "that it washes clean"},
	{"ice made", "ice made"}, {"the end of a cycle seen", "the end of a cycle"}, {"flame seen", "a flame seen"},
	{"each door switch with the door open", "each door switch read"}, {"the monitor switch, door shut and open", "the monitor switch re"},
	{"volts of the three legs at the machine", "volts of the three legs"},
}

// provedBy gives the point of a proof that brings what a record wants too.
//
//go:noinline
func provedBy(need string) string {
	for _, p := range provings {
		if p[0] == need {
			return p[1]
		}
	}
	return ""
}

// missing lists what a complete record of this call still wants.
func (c *Call) missing() []string {
	var out []string
	for _, w := range c.wanting() {
		out = append(out, w.what)
	}
	return out
}

// want is one thing that a record still wants, with what asks for it: "" when
// that stands in its own words, or is nothing but the form of a record.
type want struct{ what, asked string }

// wantList gathers them.
type wantList []want

//go:noinline
func (l *wantList) add(what, asked string) { *l = append(*l, want{what, asked}) }

// untreatedLead begins what is missing of what was found and not mended.
const untreatedLead = "work for what was found: "

// lookedAt are findings of what is only looked at to part causes, and of no protective
// device, path of flue gas or measurement (common practice).
var lookedAt = []string{"starts-and-runs", "cond-fan-runs", "evap-fan-runs", "blower-runs", "frost-even", "outdoor-clear", "gasket-sound", "ice-arm-down", "fills"}

// wanting lists what is missing, with what asks for it.
func (c *Call) wanting() []want {
	var list wantList
	add := list.add
	for _, f := range identityFields {
		if (f.word == "client" || f.word == "unit" || f.word == "fault") && c.last(f.word) == "" {
			add(f.help+" ("+f.word+")", "")
		}
	}
	for _, e := range c.waiting {
		if c.alive(e.entry) {
			add(e.meaning+": "+e.waits, "expect, entry "+itoa(e.entry))
		}
	}
	for i, n := range c.needs {
		c.spend(i)
		if !c.wanted(n) || slices.ContainsFunc(c.needs[:i], func(o need) bool { return o.what == n.what && c.wanted(o) }) {
			continue
		}
		if met, err := c.holds(n.what); err == nil && !met {
			add(n.what, "need, entry "+itoa(n.entry))
		}
	}
	e := c.stopped()
	if e == nil || e.Result == record.NoFault {
		complaint := "complaint, entry " + itoa(c.lastAt("fault"))
		facts := c.facts(math.MaxInt)
		if rep := c.repairs(); len(rep) > 0 {
			facts = append(c.facts(rep[0]), facts...)
		}
		condemned, proving, swapped, worksAgain := c.grounds() != "", "", c.onlySwapped() || c.onlyFreed(), false
		if len(c.repairs()) > 0 {
			worksAgain = c.mendedFound() && c.worksAgain(c.provedSince())
			for _, p := range c.proofList() {
				proving += p.what + "; "
			}
		}
		for _, n := range cause.Missing(c.kindFound(), facts) {
			if p := provedBy(n.What); p != "" && strings.Contains(proving, p) {
				continue // it is named once, as a point of the proof
			}
			if worksAgain && (intersects(n.Any, lookedAt) || among(n.Any, "airflow-clear") && c.appliance().Air) {
				continue // what would have told of other causes
			}
			if condemned && intersects(n.Any, energised) || among(n.Any, "breaker-holds") && c.heldSince() {
				continue
			}
			if swapped && (n.What == "each pin to case" || n.What == "shaft turned by hand" || strings.HasPrefix(n.What, "windings")) {
				continue
			}
			if among(n.Any, "limit-closed") && c.cookerMended() || among(n.Any, "earth-sound") && len(c.repairs()) > 0 && c.closedUp() {
				continue
			}
			if among(n.Any, "airflow-blocked") && c.clearedPath() || n.What == "lid or door switch" && startSeen(c, c.since()).held ||
				intersects(n.Any, heaterRead) && c.onlyWorkOn(feeders) || among(n.Any, "thermostat-opens") && c.openBurner() ||
				n.What == "running amps" && c.appliance().Unsealed && c.besideMotor() {
				continue // the path is cleared; no drum turns with its switch open; it lacked but its supply; no sensor sets it; its motor is as it was
			}
			if m := c.machines[c.mainMachine()]; m != nil && m.result.State == winding.TooClose && !m.result.Alike && strings.HasPrefix(n.What, "windings") {
				add("roles of the pins: the pairs are too close to tell; zero the leads, use a finer range, or find markings", complaint)
				continue
			}
			if m := c.machines[c.mainMachine()]; m != nil && m.result.State == winding.DoesNotAddUp && strings.HasPrefix(n.What, "windings") {
				n.What += " that add up"
				if m.result.Disputed {
					n.What = "which pin is common: " + disputes
				}
			}
			if j := c.judged[supplyKey]; j != nil && among(n.Any, "supply-sound") {
				n.What += ": " + j.verdict.Text
			}
			if c.appliance().OneFan {
				n.What = strings.TrimPrefix(n.What, "condenser ")
			}
			add(n.What, complaint)
		}
	}
	// Once said, however late, it is no longer missing; that it came late stays
	// under what needs attention.
	if n := c.undeadTests(); len(n) > 0 && c.lastOf(c.dead, c.entry) < n[len(n)-1] {
		add("that it was made safe before the dead tests of "+entryList(n)+" (safe)", "")
	}
	if e != nil && e.Result == record.Waits {
		add("the part: "+c.awaited(), "")
	}
	if c.leftMatters() {
		add("how the unit was left (left unplugged, …)", "")
	}
	for _, g := range c.untreated() {
		add(untreatedLead+g.told(), "")
	}
	for _, text := range c.bridged() {
		add("a protective device back in its circuit, "+text, "")
	}
	repaired := "repair, entry " + itoa(c.since())
	for _, p := range c.proofMissing() {
		if e != nil && e.Result == record.Waits && strings.HasPrefix(p, partAwaited) {
			continue // it stands above, by its name
		}
		add("proof: "+p, repaired)
	}
	return list
}

// clearedPath reports whether by the words of the work the path of air or water was
// cleaned: who did that has looked at it.
func (c *Call) clearedPath() bool {
	return slices.ContainsFunc(c.doneNow(), func(w doneWork) bool {
		c.spend(1000)
		return said.Has(w.text, cleaning) && (cause.Mends("airflow-blocked", w.text) || cause.Mends("coil-dirty", w.text))
	})
}

var cleaning = []string{"clean", "wash", "clear", "vacuum", "blew", "brush", "unblock", "unclog"}
