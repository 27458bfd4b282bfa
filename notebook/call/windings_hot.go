package call

import (
	"math"
	"slices"

	"ohmcall/calc/cause"
	"ohmcall/calc/measure"
	"ohmcall/calc/winding"
)

// openStill is the step for what was read open on a machine that is hot: to wait and
// read it again, with what can be done dead until then; when it has been felt cold
// since, to read it; and when that is done, to decide. "" when nothing is open so.
func (c *Call) openStill(r *cause.Result) string {
	m := c.machines[c.mainMachine()]
	if m != nil && among(m.result.Facts, winding.FactOpenCold) {
		return "open though it is cold: look at its terminals and the leads outside, then replace it or decide; worth weighs that"
	}
	line := ""
	cold := c.lastOf(c.seenAt["comp-cold"], c.entry)
	if cold < c.lastOf(c.seenAt["comp-hot"], c.entry) {
		cold = 0
	}
	unsure := cold > 0 && !c.rested(cold)
	if m != nil && (m.result.State == winding.OverloadOpen || m.result.State == winding.OpenUnplaced && c.maybeDirect(m.name) == "") {
		pairs := slices.DeleteFunc(c.pairsOf(m.name, math.MaxInt), func(p *reading) bool { return !p.over || p.b == caseName })
		soon := !slices.ContainsFunc(pairs, func(p *reading) bool { return !readsCold(p) })
		unsure = unsure || soon
		for _, p := range pairs {
			if c.openOnHeat(p) || unsure && (soon || !readsCold(p)) {
				line += ", " + p.a + " " + p.b + " … cold"
			}
		}
	}
	parts := c.bySubjectKind["part"]
	for i := len(parts) - 1; i >= max(0, len(parts)-mostJudged) && line == ""; i-- {
		if p := parts[i]; c.alive(p.entry) && partOf(p.a) != nil && partOf(p.a).words[0] == "overload" {
			if !p.over || !c.openOnHeat(p) && !(unsure && !readsCold(p)) {
				return ""
			}
			line = ", " + p.a + " 0.4 cold"
		}
	}
	if line == "" {
		return ""
	}
	line = "ohm" + line[1:]
	switch {
	case unsure:
		return "leave it without power for " + itoa(coolMinutes) + " min or more and read again, for what opens inside does so before the shell is warm (had it none for long: note unplugged since …): " + line
	case cold > 0:
		return "read again what was open, now that it is cold: " + line
	}
	step := "let it cool below " + measure.CoolWords + ", which can take hours, and read again: " + line
	switch first := c.caseFirst(r.Next); {
	case first != "":
		step += "; until then: " + first
	case r.Next != nil && r.Next.Danger == cause.Dead && !among([]string{"cool-and-ohm", "overload-ohms"}, r.Next.Code):
		step += "; until then: " + c.proposed(r.Next)
	}
	return step
}

// coldFirst is the step where pins are open at a place that nothing tells, and nobody
// said how warm the machine is: cold parts what heat opened from what failed.
func (c *Call) coldFirst() string {
	m := c.machines[c.mainMachine()]
	if m == nil || m.result.State != winding.OpenUnplaced {
		return ""
	}
	line := ""
	for _, p := range c.pairsOf(m.name, math.MaxInt) {
		switch {
		case p.b != caseName && p.over && readsCold(p):
			return ""
		case p.b != caseName && p.over:
			line += ", " + p.a + " " + p.b + " … cold"
		}
	}
	return c.onFirst(m.name) + "read again what is open, below " + measure.CoolWords + ": ohm" + line[1:]
}

// openOnHeat tells what was read open when it was hot, by the word behind it or by
// the compressor's shell, in this phase of the call: heat may have opened it.
func (c *Call) openOnHeat(r *reading) bool {
	rep := c.repairs()
	if readsCold(r) || phase(rep, r.entry) < len(rep) {
		return false
	}
	hot := func(n int) bool {
		return c.alive(n) && phase(rep, n) == len(rep) && c.timePassed(min(n, r.entry), max(n, r.entry)) <= besideFor
	}
	seen := c.seenAt["comp-hot"]
	return r.cond.is("hot") || (r.b == "" || r.of == defaultMachine) && slices.ContainsFunc(seen[max(0, len(seen)-mostSeen):], hot)
}
