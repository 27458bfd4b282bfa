package call

import (
	"slices"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/notebook/said"
)

func findingWords() []string {
	var out []string
	for _, f := range cause.Findings() {
		out = append(out, f.Words[0])
	}
	return out
}

// liveFindings are seen only while the unit is under power.
var liveFindings = []string{"starts-and-runs"}

// placing begins a part of a finding that says where or when, and no other.
var placing = []string{"at", "by", "on", "in", "near", "with", "from", "after", "when", "while", "under", "behind"}

func applySaw(c *Call, a *args) (*Reply, error) {
	t := a.text("FINDING")
	codes := c.eased(c.sighted(t), t)
	live := false
	var asked []unread
	if len(c.unread) > 0 && slices.ContainsFunc(questions, func(q *question) bool { return intersects(codes, q.codes) }) {
		asked = c.toRead()
		codes = c.onlyAnswers(codes, t, asked)
	}
	if len(codes) == 0 {
		c.findings = append(c.findings, finding{c.entry, "", t})
	}
	for _, code := range codes {
		c.sight(code, t)
		if among(liveFindings, code) {
			c.live, live = append(c.live, c.entry), true
		}
	}
	c.worked(work{c.entry, c.at, "saw", t})
	mended := said.MendedAsFound(t)
	if len(codes) == 0 || len(c.alarmsIn(t, false)) > 0 {
		mended = ""
	}
	if mended != "" {
		c.worked(work{c.entry, c.at, "did", mended})
	}
	r := &Reply{}
	c.warnOfDanger(r, codes)
	c.warnOfWork(r, t)
	c.relapse(r, t)
	c.tellHeld(r, t)
	if len(codes) == 0 {
		if means, by := cause.Limited(c.fanWords(t)); by != "" {
			r.add(Plain, "Seen: "+t+". By the word “"+by+"” it is not taken as: "+means+".")
		} else {
			r.add(Plain, "Seen: "+t+". It is none of the listed findings, so it bears on no cause.")
		}
		c.shownGone(r, t)
		c.wonder(r, t)
		if _, by := cause.Limited(c.fanWords(t)); by != "" {
			return c.finish(r), nil
		}
		c.spend(40_000 + 100*len(t))
		near := cause.Near(t, 3)
		near = slices.DeleteFunc(near, func(words string) bool { return len(c.sighted(words)) == 0 })
		if fans := whichFan(t); fans != nil {
			near = fans
		}
		if noLeaks().MatchString(t) {
			near = c.leaksOf()
		}
		if len(near) > 0 {
			r.add(Ask, "Perhaps: saw "+strings.Join(near, ", saw ")+". help findings lists them all.")
		}
		return c.finish(r), nil
	}
	var seen []string
	for _, code := range codes {
		f, _ := cause.Lookup(code)
		seen = append(seen, f.Help)
	}
	r.add(Plain, "Seen: "+strings.Join(seen, "; ")+".").flag(codes...)
	c.answers(r, codes, asked)
	c.stands(r, codes)
	parts := strings.Split(c.fanWords(t), ",")
	if among(codes, "quits-glowing") {
		parts = nil // told by more than its words
	}
	if mended != "" && len(parts) > 0 {
		parts = parts[:len(parts)-1]
	}
	for _, part := range parts {
		part = strings.TrimSpace(part)
		if first, _, _ := strings.Cut(part, " "); part != "" && !among(codes, "complaint-gone") && !among(placing, first) && len(cause.FindFindings(part)) == 0 && len(c.alarmsIn(part, false)) == 0 {
			r.add(Plain, "Not a listed finding, so it bears on no cause: "+part+".")
		}
	}
	if among(codes, "gas-off") && c.shutForWork(c.entry) {
		r.add(Plain, "Taken as shut for the work, and so as no cause.")
	}
	if live && c.energisedAnyway(r) {
		c.defied = append(c.defied, c.entry)
	}
	if live || among(codes, "igniter-glows") || among(codes, "flame-lights") {
		c.sparking(r)
	}
	if intersects(codes, moods) {
		c.rejudge(r)
	}
	c.tellRattle(codes, r)
	c.tellSwollen(codes, r)
	if mended != "" {
		c.place(a, "did", mended)
		c.mend()
		c.warnOfOpened(r, mended)
		c.renew(r.add(Plain, "Done: "+mended+"."))
		return c.afterRepair(r, a.line.Body), nil
	}
	return c.finish(r), nil
}

// moods are findings by which readings count otherwise.
var moods = []string{"set-to-heat", "set-to-cool", "comp-hot", "comp-cold", "cycles-off"}

var noLeaks = said.Lazily(`(?i)^no (visible )?leaks?\b`)

// leaksOf are the findings that say of what kind of leak none was found: by a full
// search of the joints, or by what stays dry.
func (c *Call) leaksOf() []string {
	switch {
	case c.appliance().Gas:
		return []string{"no gas leak"}
	case c.appliance().Unsealed:
		return []string{"water line dry"}
	}
	return []string{"no leak found (a full search of all joints)", "water line dry"}
}

// sight notes a finding of the line at hand.
//
//go:noinline
func (c *Call) sight(code, text string) {
	c.findings = append(c.findings, finding{c.entry, code, text})
	if c.seenAt[code] == nil {
		c.seenCodes = append(c.seenCodes, code)
	}
	c.seenAt[code] = append(c.seenAt[code], c.entry)
}

// sighted gives the findings of what was typed after saw: those of the
// vocabulary, in this appliance, and the dangers that its words speak of.
func (c *Call) sighted(text string) []string {
	words := c.fanWords(text)
	if len(c.seenAt["smoke"]) > 0 && len(c.seenAt["gas-smell"]) == 0 && !among(c.appliance().Heard, "gas-smell") {
		words = noSmell().ReplaceAllString(words, "no burnt smell$1") // there was no other
	}
	codes := cause.FindFindings(words)
	if among(codes, "silent") { // what runs makes no noise, and is not silent
		if heard := cause.FindFindings(noNoise().ReplaceAllString(words, "$0 now")); slices.ContainsFunc(heard, runs) {
			codes = heard
		}
	}
	for i := range codes {
		codes[i] = c.testOf(c.inAppliance(codes[i]), text, []string{"gas "})
	}
	codes = slices.DeleteFunc(codes, func(code string) bool { return code == "" || code == "smoke" && c.appliance().Tame(text) })
	if a := c.appliance(); (a.HighVolts || c.onThreePhases()) && strings.Contains(strings.ToLower(text), "itself") {
		codes = slices.DeleteFunc(codes, func(code string) bool { return code == liveFindings[0] }) // nobody called it
	}
	if c.complaint() == said.GasQuits && said.Has(text, []string{"glow"}) && said.Has(text, unlit) {
		codes = append(slices.DeleteFunc(codes, func(code string) bool { return code == "igniter-glows" || code == "quits-glowing" }), "quits-glowing")
	}
	for _, a := range c.alarmsIn(text, false) {
		if f := c.inAppliance(a.Finding); !among(codes, f) && !among(codes, "no-"+f) {
			codes = append(codes, f)
		}
	}
	return codes
}

var noSmell = said.Lazily(`(?i)\bno (?:more )?smell((?: now| any ?more)?(?:,|$))`)

var noNoise = said.Lazily(`(?i)\b(?:no noise|quiet)\b`)

// seenRunning reports whether the entry at hand says that something runs.
func (c *Call) seenRunning() bool {
	for i := len(c.findings) - 1; i >= 0 && c.findings[i].entry == c.entry; i-- {
		if runs(c.findings[i].code) {
			return true
		}
	}
	return false
}

func runs(code string) bool {
	return strings.HasSuffix(code, "-runs") || among([]string{liveFindings[0], "drum-turns", "spins", "agitates", "drains"}, code)
}

// unlit are words of a glow behind which nothing burns: where the heat comes and is lost,
// it was seen once it was hot (common practice).
var unlit = []string{"no flame", "no ignition", "no burner", "not light", "n't light", "nt light"}

// inAppliance is what a leak is of: a burner's of fuel gas, a machine's of its
// refrigerant; what runs with its door open sends out waves where it is an oven of
// them; what starts while its overload is out of the circuit does not do so by itself; a filter where water does not go out, or does not wash, is that of the water; a leg lost of three
// leaves two; the coil that is iced is the evaporator of what keeps cold; and a relay where no
// compressor is started is none of its, "", nor what lights where no gas burns, nor is a fan that is quiet where no noise is
// complained of, which may be a dead one.
func (c *Call) inAppliance(code string) string {
	a := c.appliance()
	switch {
	case code == "starts-and-runs" && len(c.guarding) > 0 && c.overloadOut():
		return "starts-bypassed"
	case code == "runs-open" && a.HighVolts:
		return "radiates"
	case code == "device-burnt" && c.complaint() == "too-hot":
		return "heat-welded"
	case (code == "device-burnt" || code == "oil-stain") && a.Unit != "" && a.Unsealed:
		return "" // a burner's oil is in its tank
	case code == "flame-lights" && a.Unit != "" && !a.Gas && (a.Electric || a.HighVolts || !a.Unsealed):
		return ""
	case code == "fans-quiet" && c.complaint() != "noisy-cold":
		return ""
	case code == "coil-iced" && !a.Air && !a.Unsealed && !a.OneFan && !among(ofAir, c.complaint()):
		return "frost-heavy"
	case code == "leg-missing" && c.onThreePhases():
		return "single-phasing"
	case code == "leak-found" && a.Unsealed && a.Gas:
		return "gas-leak"
	case code == "leak-not-found" && a.Unsealed && (a.Gas || a.Furnace):
		return "no-gas-leak"
	case code == "silent" && among([]string{"noisy", "noisy-cold", "noisy-fan"}, c.complaint()) && c.lastMended() > 0:
		return "quiet-now"
	case code == "fan-noisy" && c.complaint() == "noisy-fan":
		return "bearings-worn"
	case code == "hose-blocked" && among([]string{"draws-poorly", "slow-dry", "too-hot", "stops-early"}, c.complaint()), code == "condenser-dirty" && a.HeatPumpDryer:
		return "airflow-blocked"
	case code == "limit-open" && among([]string{said.MotorDead, "no-power"}, c.complaint()) && a.DirectDrive:
		return "cuts-out" // its reset is the motor's
	case c.complaint() == said.NoDrain && code == "airflow-blocked":
		return "hose-blocked"
	case c.complaint() == "no-clean" && code == "airflow-blocked":
		return "arms-blocked"
	case c.complaint() == said.NoDrain && code == "airflow-clear":
		return "hose-clear"
	case code == "gas-leak" && (a.Unit != "" && !a.Unsealed && !a.Gas || c.smellsOfCharge()):
		return "leak-found"
	case code == "no-gas-leak" && (a.Unit != "" && !a.Unsealed && !a.Gas && len(c.seenAt["gas-smell"]) == 0 && !among(a.Heard, "gas-smell") || c.smellsOfCharge() && c.smelt(true) == 0):
		return "leak-not-found"
	}
	return code
}

// testOf is a finding of a test of leaks: where fuel gas was smelt beside a machine that
// burns none, it is of the machine unless it has words of the other.
func (c *Call) testOf(code, text string, of []string) string {
	if a := c.appliance(); code == "no-gas-leak" && !a.Gas && !a.Furnace && c.smelt(true) > 0 && !said.Has(text, of) && !said.OtherGas(text) {
		return "leak-not-found"
	}
	return code
}

// ofAir are the complaints of air conditioners.
var ofAir = []string{said.ACWarm, said.ACDead, "ac-drips", said.NoHeatPump}
