package call

import (
	"cmp"
	"slices"

	"ohmcall/calc/cause"
	"ohmcall/notebook/said"
)

// complaint is the code of the complaint weighed.
func (c *Call) complaint() string {
	fault, unit := c.last("fault"), c.last("unit")
	if m := &c.matched; fault != m.fault || unit != m.unit {
		*m = matched{fault: fault, unit: unit, wired: hasNoOutlet(unit, fault), unsealed: hasNoCompressor(unit, fault),
			air: isKind(airUnits, cmp.Or(unit, fault)), gas: isKind(gasUnits, unit), electric: isKind(electricUnits, unit)}
		c.spend(16_000)
		if hits := complaintsOf(fault, unit); len(hits) > 0 {
			m.code = hits[0].Code
		}
	}
	if fault != "" && among(singlePhase, c.matched.code) && c.onThreePhases() {
		return threePhase
	}
	return c.matched.code
}

// singlePhase are the complaints of a machine that does not run, or of which the
// words say too little, which three phases tell apart.
var singlePhase = []string{"", "no-start", "hums-trips", motorDead}

// matched is the complaint that words name in an appliance.
type matched struct {
	fault, unit, code string
	wired             bool // see hasNoOutlet
	unsealed          bool // see hasNoCompressor
	air               bool // see airConditioner
	gas, electric     bool // said of what heats
}

// oneClause keeps of the complaints that words name those that a single clause of
// them names, when there is any: "no spin, drains ok" says nothing of no drain.
func oneClause(words string, hits []cause.Hit) []cause.Hit {
	named := map[string]bool{}
	for _, part := range clauses().Split(words, said.MostClauses) {
		for _, h := range cause.Hits(part) {
			named[h.Code] = true
		}
	}
	kept := slices.DeleteFunc(slices.Clone(hits), func(h cause.Hit) bool { return !named[h.Code] })
	if len(kept) == 0 {
		return hits
	}
	return kept
}

// complaintsOf gives the complaints that the customer's words name, the best
// first: what they mean in an appliance of that kind, and else a fan, pump or
// drum that stands is a motor's, unless the words speak of cold that is not kept.
func complaintsOf(words, unit string) []cause.Hit {
	hits := oneClause(words, cause.Hits(words))
	if words == "" {
		return hits
	}
	if hit, ok := taken(words, unit, hits); ok {
		hits = slices.DeleteFunc(hits, func(h cause.Hit) bool { return h.Code == hit.Code })
		return append([]cause.Hit{hit}, hits...)
	}
	if len(hits) > 0 && hits[0].Code == noDrain {
		return hits
	}
	if hasNoCompressor(unit, words) {
		hits = ofMotor(hits, unit)
	}
	drive := drives().FindString(words)
	if drive == "" || slices.ContainsFunc(hits, func(h cause.Hit) bool { return cause.KeepsNoCold(h.Code) }) {
		return hits
	}
	hits = slices.DeleteFunc(hits, func(h cause.Hit) bool { return h.Code == motorDead })
	k, _ := cause.ComplaintBy(motorDead)
	return append([]cause.Hit{{Complaint: k, Phrase: drive}}, hits...)
}

// motorDead is the complaint that is about a motor by itself.
const motorDead = "motor-dead"

// ofMotor gives the complaints of words in an appliance without a compressor:
// what hums or does not start is its motor, what never stops does not end its work,
// and nothing in it keeps cold.
func ofMotor(hits []cause.Hit, unit string) []cause.Hit {
	motor, _ := cause.ComplaintBy(motorDead)
	var out []cause.Hit
	for _, h := range hits {
		switch h.Code {
		case "hums-trips", "no-start", motorDead:
			h.Complaint = motor
			if slices.ContainsFunc(out, func(o cause.Hit) bool { return o.Code == motorDead }) {
				continue
			}
		case "leaks-ices":
			h.Complaint, _ = cause.ComplaintBy("leaks-water")
		case "runs-always":
			h.Complaint, _ = cause.ComplaintBy("never-ends")
		case "no-cool", "too-cold":
			if unit != "" {
				continue
			}
		}
		out = append(out, h)
	}
	return out
}

// drives tells a fan, pump or drum that hums or stands: a motor's complaint,
// not the compressor's.
var drives = said.Lazily(`(?i)\b(fan|pump|blower|drum)\b.*\b(hums?|(not|n.t) (turn|spin|run)|stuck|stands still)`)
