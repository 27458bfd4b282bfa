package call

import (
	"cmp"
	"maps"
	"math"
	"slices"
	"strconv"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/calc/caution"
	"ohmcall/calc/failpoint"
	"ohmcall/calc/formula"
	"ohmcall/calc/repair"
	"ohmcall/calc/sum"
	"ohmcall/calc/verdict"
	"ohmcall/calc/winding"
)

func askCommands() []Command {
	return []Command{
		{
			Word: "roles", Group: Asks,
			Help:     "what the pins of the machine at hand are, with the readings that prove it",
			Examples: []string{"roles"},
			apply:    applyRoles,
		},
		{
			Word: "next", Group: Asks,
			Help:     "the next useful test, and why",
			Examples: []string{"next"},
			apply:    applyNext,
		},
		{
			Word: "why", Group: Asks,
			Params:   []Param{{Name: "ENTRY|CAUSE", Kind: Free, Optional: true, Words: func(c *Call) []string { return c.causeCodes() }}},
			Help:     "what an answer rests on, back to entries and sources",
			Doc:      "Alone it tells of the cause that the findings show, else of the last verdict.",
			Examples: []string{"why 3", "why start-device-failed", "why"},
			apply:    applyWhy,
		},
		{
			Word: "causes", Group: Asks,
			Help:     "which causes are open, supported or ruled out, and by which entries",
			Examples: []string{"causes"},
			apply:    applyCauses,
		},
		{
			Word: "missing", Group: Asks,
			Help:     "what a complete record of this call still wants",
			Examples: []string{"missing"},
			apply: func(c *Call, _ *args) (*Reply, error) {
				m := c.missing()
				if len(m) == 0 {
					return (&Reply{}).add(Good, "Nothing is missing."), nil
				}
				r := &Reply{}
				for _, s := range m {
					r.add(Ask, "Missing: "+s+".")
				}
				return r, nil
			},
		},
		{
			Word: "show", Group: Asks,
			Params:   []Param{{Name: "WHAT", Kind: Choice, Words: showWords, Optional: true}},
			Help:     "where the call stands; or its readings, verdicts, sums, parts, wiring, cautions or curve",
			Examples: []string{"show", "show readings"},
			apply:    applyShow,
		},
		{
			Word: "choose", Group: Asks,
			Params:   []Param{{Name: "PART", Kind: Choice, Words: func(*Call) []string { return []string{"start-kit", "run-cap", "start-cap"} }}},
			Help:     "what the part to fit must say on its own label",
			Examples: []string{"choose start-kit"},
			apply:    applyChoose,
		},
		{
			Word: "worth", Group: Asks,
			Params:   []Param{{Name: "KEY VALUE, …", Kind: Fields, Optional: true, Words: func(*Call) []string { return repair.Assume(true).Names() }}},
			Help:     "repair or replace: the sum over the years, with each assumption changeable",
			Doc:      worthDoc(),
			Examples: []string{"worth repair-cost 180, replacement-price 650, age 9"},
			apply:    applyWorth,
		},
		{
			Word: "help", Group: Asks, Screen: true,
			Params:   []Param{{Name: "WORD", Kind: Name, Optional: true, Words: helpWords}, {Name: "PART", Kind: Free, Optional: true, Words: formulaTopics}},
			Help:     "the commands, or one command, formula, function or page",
			Examples: []string{"help", "help ohm", "help cap_load", "help formulas capacitors"},
			apply:    applyHelp,
		},
	}
}

// roleOf is the role of a pin in words, "" when it is not known.
func roleOf(res *winding.Result, pin string) string {
	if role := string(res.Roles[pin]); role != "" || !res.Alike {
		return role
	}
	return "none"
}

// rolesTable shows a machine's pins in columns.
func rolesTable(m *machine) *Table {
	t := &Table{Head: []string{"Pin", "Role"}}
	for _, p := range m.result.Pins {
		t.Rows = append(t.Rows, []string{p, cmp.Or(roleOf(&m.result, p), "not known")})
	}
	return t
}

func applyRoles(c *Call, _ *args) (*Reply, error) {
	m := c.machines[c.machineAtHand()]
	if m == nil {
		return (&Reply{}).add(Ask, "No pins of "+c.machineAtHand()+" were read yet: ohm A B 3.4 takes the first pair down."), nil
	}
	r := &Reply{}
	for i, n := range m.result.Notes {
		tone := Plain
		if i == 0 {
			tone = toneOf(m.result)
		}
		r.add(tone, n)
	}
	r.Table = rolesTable(m)
	r.Windings = []Windings{windingsOf(m)}
	return r, nil
}

// nextStep is the next test as one line, "" when there is nothing to do.
func (c *Call) nextStep(r *cause.Result) string {
	left := c.untreated()
	switch {
	case c.alarmNext(false) != "":
		return c.alarmNext(false)
	case r.Next == nil && r.Repair == nil && c.alarmNext(true) != "":
		return c.alarmNext(true)
	case c.appliance().HighVolts && r.Repair == nil && (r.Next == nil || r.Next.Danger == cause.Live):
		return "nothing here judges the high-voltage side of a microwave oven: dead tests of plug, fuse, door switches and cut-outs only, the rest by who is trained and equipped for it"
	case len(c.repairs()) > 0 && c.grounds() != "":
		return "do not energise: " + c.grounds() + " stands; replace it or read it again"
	case c.drawsTooMuch() != "":
		return c.drawsTooMuch()
	case len(left) > 0 && !c.persists():
		rest := c.leftToMend(left)
		switch {
		case rest.Next != nil:
			return c.proposed(rest.Next)
		case rest.Repair != nil:
			return "mend: " + rest.Repair.Fix
		}
		return "mend what was found besides: " + left[0].name()
	case len(c.repairs()) > 0 && !c.persists():
		if m := c.proofMissing(); len(m) > 0 {
			return "prove the repair: " + m[0]
		}
		return ""
	case c.grounds() != "" && r.Repair == nil && (r.Next == nil || r.Next.Danger != cause.Dead):
		return "do not energise: " + c.grounds() + "; take the loads off one by one and read again until the path to the metal is gone"
	case c.settleInsulation() != "":
		return c.settleInsulation()
	case r.Repair == nil && c.caseFirst(r.Next) != "":
		return c.caseFirst(r.Next)
	case c.readAgain(r) != "":
		return c.readAgain(r)
	case r.Repair == nil && c.halfRelay() != "":
		return c.halfRelay()
	case r.Next != nil && r.Next.Code == "winding-ohms" && c.tooClose():
		return "read the three pairs again on a finer range with the leads zeroed (probes), or look for markings (mark A common)"
	case c.disputed():
		return "settle which pin is common first: " + disputes + "; look at it again and read the three pairs again, then strike the one that is wrong"
	case c.gapWide():
		return "read the three pairs again, contacts clean and leads zeroed: they do not add up, so one of them is wrong and the roles rest on it"
	case r.Next != nil && r.Next.Code == "winding-ohms" && c.pairWanted() != "":
		return c.pairWanted()
	case r.Next != nil:
		return c.proposed(r.Next)
	case r.Repair != nil:
		return "mend: " + r.Repair.Fix
	}
	for _, of := range c.machineNames() {
		if n := c.machines[of].result.Next; n != "" {
			return n
		}
	}
	return ""
}

// drawsTooMuch is the step when a machine that was mended runs and draws far more
// than its plate allows, "" when none does.
func (c *Call) drawsTooMuch() string {
	for _, j := range c.verdictsWith("amps-high", "amps-locked-rotor") {
		if n := lastEntry(j.verdict); len(c.repairs()) > 0 && n > c.lastMended() && j.verdict.Word == verdict.Failed {
			return "switch it off: " + j.verdict.Text + atEntry(n) + "; see whether the start device and its capacitor drop out, and what loads it"
		}
	}
	return ""
}

// pairWanted is the pair still to be read on a machine of which some were.
func (c *Call) pairWanted() string {
	of := c.mainMachine()
	m := c.machines[of]
	if m == nil || m.result.State != winding.Incomplete || len(windingProof(m.result)) == 0 {
		return ""
	}
	return c.onFirst(of) + m.result.Next
}

// onFirst is what to type before a line of a machine that is not at hand.
func (c *Call) onFirst(of string) string {
	if of == c.machineAtHand() {
		return ""
	}
	return "on " + of + ", then "
}

// readAgain asks for the pairs once more before anything rests on them: all of
// about zero, or a short that was read once with leads that were not zeroed.
func (c *Call) readAgain(r *cause.Result) string {
	of := c.mainMachine()
	m := c.machines[of]
	if m == nil {
		return ""
	}
	zero, again := m.result.State == winding.TooClose, c.readTwice(of)
	for _, now := range c.pairsOf(of, math.MaxInt) {
		if now.b != caseName {
			v := c.value(now)
			zero = zero && !v.Over && v.Lo <= 0
		}
	}
	switch {
	case zero:
		return "zero the leads (hold the probes together, then: probes 0.2), scrape the pins and read the three pairs again on the lowest range"
	case r.Repair != nil && r.Repair.Code == "winding-shorted" && m.result.State == winding.Shorted && !again && c.probes() == 0:
		return "before the machine is condemned: zero the leads (probes 0.2) and read the pairs again"
	}
	return ""
}

// tooClose reports whether the pins of the machine that the call is about
// were all read and cannot be told apart.
func (c *Call) tooClose() bool {
	m := c.machines[c.mainMachine()]
	return m != nil && m.result.State == winding.TooClose
}

// wideGap is the gap, in percent of the highest pair, from which the readings
// are taken again before anything is wired by them: more than contacts and
// probe leads make (common practice).
const wideGap = 15

// gapWide reports whether the three pairs of the machine that the call is
// about miss their sum by far and none of them was read again.
func (c *Call) gapWide() bool {
	m := c.machines[c.mainMachine()]
	if m == nil || m.result.State != winding.DoesNotAddUp || m.result.Gap == nil || math.Abs(m.result.Gap.Percent) < wideGap {
		return false
	}
	return !c.readTwice(m.name) && !c.alike(m.name, math.MaxInt) // three like pairs are what they are
}

// readTwice reports whether a pair of a machine was read again, the case not
// among the pins.
func (c *Call) readTwice(of string) bool {
	since := c.renewedAt(of)
	return slices.ContainsFunc(c.keysOf(of), func(key string) bool {
		prev, now := c.last2(key)
		return prev != nil && prev.entry > since && now.b != caseName
	})
}

func (c *Call) machineNames() []string {
	names := map[string]bool{}
	c.spend(200 * len(c.machines))
	for of := range c.machines {
		names[of] = true
	}
	if failpoint.On(failpoint.MapOrder) {
		return slices.Collect(maps.Keys(names))
	}
	return sortedNames(names)
}

func applyNext(c *Call, _ *args) (*Reply, error) {
	r := c.weigh(math.MaxInt)
	reply := &Reply{}
	step := c.nextStep(&r)
	if step == "" {
		reply.add(Ask, "Nothing is left to test: "+cmp.Or(c.closingWord(), "write down the complaint with fault …")+".")
	} else {
		reply.add(Ask, "Next: "+step+".")
		// What was weighed belongs to the step that came of it only.
		weighed := r.Next != nil && step == c.proposed(r.Next) || r.Repair != nil && step == "mend: "+r.Repair.Fix
		if r.NextWhy != "" && weighed {
			reply.add(Plain, strings.ToUpper(r.NextWhy[:1])+r.NextWhy[1:]+endStop(r.NextWhy))
		}
		if r.Next != nil && weighed {
			if s := c.forecast(r.Next).sentence(); s != "" {
				reply.add(Plain, s)
			}
		}
		if left := c.untreated(); len(left) > 0 && !c.persists() {
			reply.add(Plain, "No work is written down for what was found: "+left[0].told()+".")
		}
		if len(c.repairs()) > 0 && c.persists() {
			reply.add(Plain, "The complaint was seen again after the repair: what the machine did before it, and what the repair was made for, count no more.")
		}
		if c.settleInsulation() != "" {
			c.warn(reply, caution.InsulationVolts)
		} else if r.Next != nil && weighed {
			for _, code := range r.Next.Caution {
				c.warn(reply, code)
			}
		}
	}
	reply.Causes = &Causes{Open: append(r.Codes(cause.Supported), r.Codes(cause.Open)...), RuledOut: r.Codes(cause.RuledOut), Next: step}
	return reply, nil
}

func (c *Call) closingWord() string {
	switch {
	case len(c.repairs()) > 0:
		return "close ends the call"
	case c.complaint() != "":
		return "no listed test parts what is left; causes shows it"
	case c.last("fault") != "":
		return "no listed complaint fits the words of fault; saw … tells what you find"
	}
	return ""
}

func (c *Call) causeCodes() []string {
	r := c.weigh(math.MaxInt)
	var out []string
	for i := range r.Standings {
		out = append(out, r.Standings[i].Cause.Code)
	}
	return out
}

func applyCauses(c *Call, _ *args) (*Reply, error) {
	r := c.weigh(math.MaxInt)
	if len(r.Standings) == 0 {
		return (&Reply{}).add(Ask, "No complaint to weigh causes for: fault clicks and does not cool, or saw …"), nil
	}
	reply := say(strconv.Itoa(len(r.Codes(cause.Supported))) + " supported, " + strconv.Itoa(len(r.Codes(cause.Open))) + " open, " +
		strconv.Itoa(len(r.Codes(cause.RuledOut))) + " ruled out.")
	t := &Table{Head: []string{"Cause", "Standing", "By entries"}}
	var out []string
	for _, state := range []cause.State{cause.Supported, cause.Open, cause.RuledOut} {
		for i := range r.Standings {
			switch s := &r.Standings[i]; {
			case s.State != state:
			case state == cause.RuledOut:
				out = append(out, s.Cause.Name+" ("+entriesWord(s.Against)+")")
			default:
				t.Rows = append(t.Rows, []string{s.Cause.Name, string(s.State), cmp.Or(factEntries(s.For), "none")})
			}
		}
	}
	if len(out) > 0 {
		reply.add(Plain, "Ruled out: "+strings.Join(out, "; ")+".")
	}
	for _, k := range r.Contradictions {
		reply.add(Warn, c.contradiction(k)+".")
	}
	if r.Exhausted {
		reply.add(Warn, "Every cause is ruled out: the findings cannot all be right.")
	}
	reply.Table = t
	reply.Causes = &Causes{Open: append(r.Codes(cause.Supported), r.Codes(cause.Open)...), RuledOut: r.Codes(cause.RuledOut), Next: c.nextStep(&r)}
	return reply, nil
}

func applyWhy(c *Call, a *args) (*Reply, error) {
	p := a.get("ENTRY|CAUSE")
	if !p.given {
		return c.whyLast(), nil
	}
	if n, err := strconv.Atoi(p.text); err == nil {
		if n < 1 || n > len(c.entries) {
			return nil, p.errorf("there is no entry %d", n).WithHint("the call has %d entries", len(c.entries))
		}
		return c.whyEntry(n), nil
	}
	r := c.weigh(math.MaxInt)
	lines := cause.Why(p.text, r)
	if len(lines) == 0 {
		return nil, withNearest(p.errorf("%q is neither an entry nor a cause of this complaint", p.text), p.text, c.causeCodes())
	}
	reply := &Reply{}
	for _, l := range lines {
		reply.add(Plain, l)
	}
	return reply, nil
}

// whyLast tells of the cause to mend or the first that is supported, else of
// the entry of the last verdict.
func (c *Call) whyLast() *Reply {
	r := c.weigh(math.MaxInt)
	lead := append(r.Codes(cause.Supported), "")[0]
	if r.Repair != nil {
		lead = r.Repair.Code
	}
	reply, last := &Reply{}, 0
	c.spend(20 * len(c.subjects))
	for _, key := range c.subjects {
		if j := c.judged[key]; j != nil {
			for _, n := range j.verdict.Entries {
				last = max(last, n)
			}
		}
	}
	for _, l := range cause.Why(lead, r) {
		reply.add(Plain, l)
	}
	switch {
	case last == 0 && lead == "":
		return reply.add(Ask, "Nothing is judged and no cause is shown yet; why takes the number of an entry, or a cause that causes names.")
	case lead == "":
		return c.whyEntry(last)
	case last > 0:
		reply.add(Plain, "why "+itoa(last)+" tells what the last verdict rests on.")
	}
	return reply
}

// whyEntry tells what an entry said and what rests on it.
func (c *Call) whyEntry(n int) *Reply {
	e := c.entries[n-1]
	r := say("Entry " + itoa(n) + ": " + e.Line)
	if reason, gone := c.struck[n]; gone {
		r.add(Warn, "Struck: "+reason+".")
	}
	if e.Reply != nil {
		for _, l := range e.Reply.Lines {
			r.add(l.Tone, "  "+l.Text)
		}
	}
	for _, key := range c.subjects {
		j := c.judged[key]
		if j == nil {
			continue
		}
		for _, m := range j.verdict.Entries {
			if m == n {
				r.add(Plain, "Rests on it: "+j.verdict.Subject+", "+string(j.verdict.Word)+" ("+cmp.Or(j.verdict.Source, "common practice")+").")
				for _, also := range j.verdict.Also {
					r.add(Plain, "  "+also+endStop(also))
				}
				break
			}
		}
	}
	res := c.weigh(math.MaxInt)
	for i := range res.Standings {
		s := &res.Standings[i]
		for _, f := range append(append([]cause.Fact(nil), s.For...), s.Against...) {
			if f.Entry == n && s.State != cause.Open {
				r.add(Plain, "Bears on a cause: "+s.Cause.Name+", "+string(s.State)+".")
				break
			}
		}
	}
	return r
}

// helpWords are what help knows besides commands.
func helpWords(c *Call) []string {
	out := append(c.ownNames(), commandWords()...)
	for _, f := range formula.All() {
		out = append(out, f.Name)
	}
	for _, f := range sum.Functions() {
		out = append(out, f.Name)
	}
	for _, t := range topics {
		if Find(t.word) == nil {
			out = append(out, t.word)
		}
	}
	return out
}

// formulaTopics are the groups that help formulas can be narrowed to.
func formulaTopics(*Call) []string {
	var out []string
	for _, g := range formulaGroups() {
		out = append(out, g.name)
	}
	return out
}

func showWords(*Call) []string {
	return []string{"readings", "verdicts", "sums", "parts", "wiring", "cautions", "curve", "log"}
}
