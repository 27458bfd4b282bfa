package said

import (
	"slices"
	"strings"

	"ohmcall/calc/cause"
)

// oneClause keeps of the complaints that words name those that a single clause of
// them names, when there is any: "no spin, drains ok" says nothing of no drain.
func oneClause(words string, hits []cause.Hit) []cause.Hit {
	named := map[string]bool{}
	for _, part := range clauses.get().Split(words, MostClauses) {
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
	hits := complaintsIn(words, unit)
	if burnsOil(unit) {
		hits = slices.DeleteFunc(hits, func(h cause.Hit) bool { return h.Code == "no-heat" || slices.Contains(Burners, h.Code) })
	}
	return hits
}

// burnsOil tells what an oil burner heats, by what it is called: no causes of those are held.
func burnsOil(unit string) bool {
	return Has(unit, []string{"oil"}) && oilBurners.is(strings.ToLower(unit))
}

var oilBurners = pattern{expr: `\boil\b.{0,12}\b(furnace|boiler|burner|fired|(water )?heater)|\b(furnace|boiler|burner)\b.{0,12}\boil\b`}

func complaintsIn(words, unit string) []cause.Hit {
	words = spelt(words)
	hits := oneClause(words, cause.Hits(words))
	if words == "" {
		return hits
	}
	if noiseAlone(words) {
		hits = slices.DeleteFunc(hits, func(h cause.Hit) bool { return h.Code == MotorDead })
	}
	if i := slices.IndexFunc(hits, func(h cause.Hit) bool { return h.Code == "trips-breaker" }); i > 0 && Has(words, []string{"breaker", "gfci", "rcd", "fuse"}) {
		// What trips the breaker is looked for first: it may be an earth fault.
		return slices.Concat(hits[i:i+1], hits[:i], hits[i+1:])
	}
	if len(hits) > 0 && hits[0].Code == "no-cool" && Has(strings.ToLower(words+unit), []string{"fridge", "refrig", "fresh"}) {
		if phrase := soundFreezer.get().FindString(words); phrase != "" {
			k, _ := cause.ComplaintBy("fridge-warm")
			return append([]cause.Hit{{Complaint: k, Phrase: strings.TrimRight(phrase, ",;. ")}}, hits...)
		}
	}
	if hit, ok := taken(words, unit, hits); ok {
		hits = slices.DeleteFunc(hits, func(h cause.Hit) bool { return h.Code == hit.Code || hit.Code == NoWaves && h.Code == "no-heat" })
		return append([]cause.Hit{hit}, hits...)
	}
	if len(hits) > 0 && hits[0].Code == NoDrain {
		return hits
	}
	if hasNoCompressor(unit, words) {
		hits = ofMotor(hits, unit)
	}
	if Has(strings.ToLower(unit+" "+words), highVolts) {
		// What hums in it is its transformer.
		return slices.DeleteFunc(hits, func(h cause.Hit) bool { return h.Code == MotorDead })
	}
	drive := drives.get().FindString(words)
	if drive == "" || Has(drive, []string{"comp"}) || slices.ContainsFunc(hits, func(h cause.Hit) bool { return cause.KeepsNoCold(h.Code) }) {
		return hits
	}
	hits = slices.DeleteFunc(hits, func(h cause.Hit) bool { return h.Code == MotorDead })
	k, _ := cause.ComplaintBy(MotorDead)
	return append([]cause.Hit{{Complaint: k, Phrase: drive}}, hits...)
}

// ofMotor gives the complaints of words in an appliance without a compressor:
// what hums or does not start is its motor, what never stops does not end its work,
// and nothing in it keeps cold.
func ofMotor(hits []cause.Hit, unit string) []cause.Hit {
	motor, _ := cause.ComplaintBy(MotorDead)
	var out []cause.Hit
	for _, h := range hits {
		switch h.Code {
		case "hums-trips", "no-start", MotorDead:
			h.Complaint = motor
			if slices.ContainsFunc(out, func(o cause.Hit) bool { return o.Code == MotorDead }) {
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
var drives = pattern{expr: `(?i)\b(fan|pump|blower|drum)\b.*(\bhums?|(\bnot|n.t|\b(wo|do|does|is|did)nt) (turn|spin|run)|\bstuck\b|\bstands still)|\bno blower\b`}

// noises are the beginnings of words for a noise.
var noises = []string{"nois", "vibrat", "loud", "rattl", "squeal", "squeak", "grind", "bang", "shak", "knock", "rumbl", "roar"}

// noiseAlone reports whether words of a complaint speak of a noise and of nothing that
// does not work.
func noiseAlone(words string) bool {
	return Has(strings.ToLower(words), noises) && soleNoise.get().MatchString(words)
}

var soleNoise = pattern{expr: `(?i)^(\W*\b(the|it|is|its|very|too|a|lot|lots|of|makes?|making|motor|pump|drum|blower|comp\w*|fan|bearings?|runs?|running|and|in|at|on|when|while|start\w*|spin\w*|nois\w*|vibrat\w*|loud\w*|rattl\w*|sque\w*|grind\w*|bang\w*|shak\w*|knock\w*|rumbl\w*|roar\w*))+\W*$`}

// fine tells the part of a complaint that speaks of what works.
var fine = pattern{expr: `(?i)\b(ok|okay|fine|good|well|works?|working|normal|all right)\b`}

var soundFreezer = pattern{expr: `(?i)\bfreezer( part| side| section| comp\w*)?( is| stays?| still| seems)* (ok|okay|fine|good|cold|normal|all right|works|freez\w+)\b`}

var denied = pattern{expr: `(?i)\b(not|no|never|cannot|stopped|won.?t|doesn.?t|isn.?t|don.?t|dead|(high|low|medium) only|only (on|at))\b`}

// WorkingElement is the heater of which a complaint says that it works.
func WorkingElement(text string) string {
	for _, part := range clauses.get().Split(strings.ToLower(text), MostClauses) {
		if fine.get().MatchString(part) && !denied.get().MatchString(part) {
			if e := element.get().FindString(part); e != "" {
				return e
			}
		}
	}
	return ""
}

var clauses = pattern{expr: `[,;:]| but | and | while `}

// Troubled leaves out of a complaint what it says is all right, so that "fridge
// warm, freezer ok" is about the fridge.
func Troubled(text string) string {
	var out []string
	for _, part := range clauses.get().Split(text, -1) {
		if !fine.get().MatchString(part) || denied.get().MatchString(part) {
			out = append(out, strings.TrimSpace(part))
		}
	}
	return strings.Join(out, ", ")
}
