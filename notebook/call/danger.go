package call

import (
	"slices"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/calc/caution"
	"ohmcall/calc/verdict"
	"ohmcall/calc/winding"
)

// barring are the facts that forbid to energise, and the one that forbids it
// until an insulation tester has settled it.
var (
	barring = []string{"winding-grounded", "insulation-failed", "earth-continuity-failed", "heater-grounded"}
	inDoubt = "insulation-suspect"
)

// standing verdicts that carry one of the facts, of what the last repair left
// in place.
func (c *Call) verdictsWith(facts ...string) []*judged {
	var out []*judged
	for _, key := range c.subjects {
		j := c.judged[key]
		if j == nil || !intersects(j.verdict.Fact, facts) {
			continue
		}
		if n := len(j.verdict.Entries); n > 0 && j.verdict.Entries[n-1] < c.since() {
			continue
		}
		out = append(out, j)
	}
	return out
}

// unsafe lists the findings that make the unit unsafe as it stands.
func (c *Call) unsafe() []string {
	var out []string
	for _, j := range c.verdictsWith(barring...) {
		if j.verdict.Word == verdict.Failed {
			out = append(out, j.verdict.Subject+": "+j.verdict.Text)
		}
	}
	for _, w := range c.works {
		if w.kind == "did" && c.alive(w.entry) && speaksOf(w.text, defeats) {
			out = append(out, "by its words a protective device may be out of its circuit, entry "+itoa(w.entry)+": "+w.text)
		}
	}
	return out
}

// unproved lists what the record does not show of the work's own safety, and
// what nobody has settled.
func (c *Call) unproved() []string {
	var out []string
	for _, j := range c.verdictsWith(inDoubt) {
		out = append(out, j.verdict.Subject+": "+string(j.verdict.Word)+", "+j.verdict.Text)
	}
	var defied []int
	for _, n := range c.defied {
		if c.alive(n) {
			defied = append(defied, n)
		}
	}
	if len(defied) > 0 {
		out = append(out, "energised while its insulation was failed or in doubt, "+entryList(defied))
	}
	if n := c.undeadTests(); len(n) > 0 {
		out = append(out, "dead tests without a word that the unit was dead, "+entryList(n))
	}
	return out
}

// stateWords says of a machine what its windings are, and where its insulation
// is in doubt.
func (c *Call) stateWords(of string) string {
	s := string(c.machines[of].result.State)
	if s == string(winding.Sound) {
		s = "windings sound"
	}
	if pins := c.doubtful(of); len(pins) > 0 {
		s += ", insulation in doubt at " + strings.Join(pins, ", ")
	}
	return s
}

// doubtful names the pins of a machine whose insulation to the case is in
// doubt.
func (c *Call) doubtful(machine string) []string {
	var out []string
	for _, key := range c.subjects {
		kind, name, _ := strings.Cut(key, "\x00")
		j := c.judged[key]
		if kind != "case" || j == nil || !slices.Contains(j.verdict.Fact, inDoubt) {
			continue
		}
		if n := len(j.verdict.Entries); n > 0 && j.verdict.Entries[n-1] < c.since() {
			continue
		}
		if of, pin, _ := strings.Cut(name, "\x00"); of == machine {
			out = append(out, pin)
		}
	}
	return out
}

// settleInsulation is the step that comes before anything that energises,
// while the insulation is in doubt; "" when it is not.
func (c *Call) settleInsulation() string {
	pins := c.doubtful(c.mainMachine())
	if len(pins) == 0 {
		return ""
	}
	return "settle the insulation before anything is energised: terminals clean and dry, insulation tester from " + strings.Join(pins, ", ") +
		" to case (ohm " + pins[0] + " case … test 500V)"
}

// energisedAnyway warns when readings are of a machine that should not have
// been energised.
func (c *Call) energisedAnyway(reply *Reply) {
	for _, j := range append(c.verdictsWith(barring...), c.verdictsWith(inDoubt)...) {
		t, _ := caution.Text(caution.NeverEnergise)
		reply.add(Caution, "Caution: "+j.verdict.Subject+" is "+string(j.verdict.Word)+" ("+entryList(j.verdict.Entries)+"). "+t.Text).flag("caution-" + t.Code)
		if n := len(c.defied); n == 0 || c.defied[n-1] != c.entry {
			c.defied = append(c.defied, c.entry)
		}
		return
	}
}

// withoutCompressor are the complaints that are not of a sealed system.
var withoutCompressor = []string{"no-heat", "motor-dead"}

// atCompressor reports whether the work at hand may be at a compressor.
func (c *Call) atCompressor() bool {
	return kindOf(c.machineAtHand()) == winding.Compressor && !noCompressor().MatchString(c.last("unit")) &&
		!slices.Contains(withoutCompressor, cause.Refine(c.complaint(), nil))
}
