package call

import (
	"math"
	"ohmcall/calc/cause"
	"ohmcall/notebook/said"
	"slices"
	"strings"
)

// weigh says where the causes stand before an entry. The same facts are
// weighed once.
func (c *Call) weigh(before int) cause.Result {
	facts := c.facts(before)
	complaint := cause.Refine(c.complaint(), facts)
	if c.onThreePhases() && slices.ContainsFunc(facts, func(f cause.Fact) bool { return f.Code == "phase-lost" || f.Code == "leg-lost" }) {
		complaint = said.ThreePhase // whatever else it does, it lacks a leg
	}
	of := c.appliance()
	heard := of.Heard
	w := &c.weighed
	if !w.done || w.of != of || w.three != c.onThreePhases() || w.complaint != complaint || !slices.Equal(w.facts, facts) || !slices.Equal(w.heard, heard) {
		c.spend(20_000)
		*w = weighed{done: true, of: of, three: c.onThreePhases(), complaint: complaint, facts: facts, heard: heard, result: c.weigh0(complaint, facts, heard...)}
	}
	r := w.result
	c.lockedNext(&r, facts) // which rests on the plates too
	return r
}

// weigh0 weighs facts as they are. A machine on one phase has no two legs to swap,
// an air conditioner no drive unless it is called so, and nothing is said of either.
func (c *Call) weigh0(complaint string, facts []cause.Fact, heard ...string) cause.Result {
	facts = slices.Clip(facts)
	not := ""
	for _, n := range [...]struct {
		is        bool
		fact, not string
	}{
		{!c.onThreePhases(), "one-phase", "wrong-rotation"},
		{complaint == said.ThreePhase && !c.appliance().Unsealed, "sealed-motor", " motor-seized"},
		{complaint == said.GasQuits && !c.appliance().Blows(), "no-own-blower", " blower-failed"},
		{!c.pumpsDown(facts), "no-pump-down", " liquid-valve-shut"},
	} {
		if n.is {
			facts, not = append(facts, cause.Fact{Code: n.fact}), not+n.not
		}
	}
	if among(ofAir, complaint) && !slices.ContainsFunc(facts, func(f cause.Fact) bool {
		return f.Code == "driven" || f.Code == "windings-equal" || strings.HasPrefix(f.Code, "drive-")
	}) {
		facts, not = append(facts, cause.Fact{Code: "drive-none"}), not+" drive-fault"
	}
	if a := c.appliance(); a.Air && a.Wired { // it has neither cord nor heater, or they are not its own
		not += " cord-shorted cord-open heater-grounded"
	}
	if c.appliance().FanShared { // of one case: it has no transformer
		not += " control-volts-low"
	}
	r := cause.Weigh(complaint, facts, heard...)
	if r.Complaint == "no-cool" && complaint == "" && c.appliance().Air {
		return c.weigh0(said.ACWarm, facts, heard...)
	}
	kept := r.Standings[:0]
	for i := range r.Standings {
		if !strings.Contains(not, r.Standings[i].Cause.Code) {
			kept = append(kept, r.Standings[i])
		}
	}
	r.Standings = kept
	return r
}

// pumpsDown reports whether a machine may stop by a valve in its liquid line, as large
// cold rooms and cases do (common practice), or one was read or seen.
func (c *Call) pumpsDown(facts []cause.Fact) bool {
	for _, f := range facts {
		if strings.HasPrefix(f.Code, "liquid-") {
			return true
		}
	}
	a := c.appliance()
	return said.Has(a.Unit, withValve) || said.Has(a.Fault, withValve)
}

var withValve = []string{"walk-in", "walk in", "walkin", "pump", "rack", "solenoid"}

// weighed is the last weighing.
type weighed struct {
	done      bool
	three     bool // of a machine on three phases
	of        *said.Appliance
	told      bool // finish has told it
	complaint string
	facts     []cause.Fact
	heard     []string
	result    cause.Result
}

// finish adds to a reply what has changed about the causes.
func (c *Call) finish(reply *Reply) *Reply {
	c.tellBeside(reply)
	r := c.weigh(math.MaxInt)
	if c.weighed.told && (len(c.mended) == 0 || c.persists()) && (r.Next != nil || r.Repair != nil) {
		return reply
	}
	c.weighed.told = true
	now := standing{kind: r.Complaint, open: r.Codes(cause.Open), supported: r.Codes(cause.Supported), ruledOut: r.Codes(cause.RuledOut)}
	now.next, now.beside, now.contradictions = c.nextStep(&r), besides(&r), r.Contradictions
	was := c.standing
	if slices.Equal(now.open, was.open) && slices.Equal(now.supported, was.supported) && slices.Equal(now.ruledOut, was.ruledOut) && now.next == was.next &&
		slices.Equal(now.contradictions, was.contradictions) && slices.Equal(now.beside, was.beside) {
		return reply
	}
	c.standing = now
	if k, ok := cause.ComplaintBy(now.kind); ok && now.kind != was.kind && now.kind != c.complaint() && c.last("fault") != "" {
		reply.add(Plain, "By what was found it is taken from here on as: "+k.Name+".")
	}
	reply.Causes = &Causes{Open: append(append([]string{}, now.supported...), now.open...), RuledOut: now.ruledOut, Next: now.next}
	if !slices.Equal(now.supported, was.supported) {
		for i := range r.Standings {
			s := &r.Standings[i]
			if s.Last && len(c.repairs()) > 0 && !c.persists() {
				continue // left over only because the mended part is sound now
			}
			if c.mendedSince(s) {
				continue
			}
			if s.State == cause.Supported && !among(was.supported, s.Cause.Code) {
				text := "Cause supported: " + s.Cause.Name + c.partsNamed(s) + " (" + entriesWord(s.For) + ")."
				if s.Cause.Consequence {
					text = "Found: " + s.Cause.Name + " (" + entriesWord(s.For) + "); it follows from another cause, which is still to be found."
				}
				reply.add(Warn, text)
				reply.flag("cause-" + s.Cause.Code)
			}
		}
	}
	for i := range r.Standings {
		if s := &r.Standings[i]; s.Beside && !s.Cause.Consequence && !among(was.beside, s.Cause.Code) && !c.treats(group{s}) && !c.mendedSince(s) {
			reply.add(Warn, "Shown, though it does not explain the complaint: "+s.Cause.Name+" ("+entriesWord(s.For)+"); mend it as well.")
		}
	}
	for _, k := range r.Contradictions {
		reply.flag("contradiction")
		if !slices.Contains(was.contradictions, k) {
			reply.add(Warn, c.contradiction(k)+".")
		}
	}
	if r.Exhausted {
		reply.flag("causes-exhausted")
	}
	return reply
}

// mendedSince reports whether work was done after all that speaks for a cause: it was
// told before, and nothing found it anew.
func (c *Call) mendedSince(s *cause.Standing) bool {
	rep := c.lastMended()
	return rep > 0 && slices.Max(append(entryNumbers(s.For), 0)) <= rep
}

// besides lists the causes that are no reason for the complaint and yet shown.
func besides(r *cause.Result) []string {
	var out []string
	for i := range r.Standings {
		if s := &r.Standings[i]; s.Beside && !s.Cause.Consequence {
			out = append(out, s.Cause.Code)
		}
	}
	return out
}

const contradicts = "These contradict each other: "

// contradiction says which two facts cannot both be true.
func (c *Call) contradiction(k cause.Contradiction) string {
	return contradicts + c.factText(k.A) + " and " + c.factText(k.B)
}

//go:noinline
func (c *Call) factText(f cause.Fact) string {
	v, _ := cause.Lookup(f.Code)
	return v.Help + " (entry " + itoa(f.Entry) + ")"
}

// entriesWord names the entries of facts in words.
func entriesWord(facts []cause.Fact) string {
	s := factEntries(facts)
	if strings.Contains(s, ",") {
		return "entries " + s
	}
	return "entry " + s
}

func factEntries(facts []cause.Fact) string {
	var parts []string
	for _, f := range facts {
		if s := itoa(f.Entry); !among(parts, s) {
			parts = append(parts, s)
		}
	}
	return strings.Join(parts, ", ")
}
