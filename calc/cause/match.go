package cause

import (
	"slices"
	"sort"
	"strings"
)

// Hit is a complaint that a customer's words name, and the phrase by which.
type Hit struct {
	Complaint
	Phrase string
}

// telling are single words that name their complaint as surely as a phrase of
// three does; any other counts by its words, so that "not cold" says more of a
// freezer than the frost in it.
var telling = map[string]bool{"click": true, "hum": true, "buzz": true, "overload": true, "gfci": true, "rcd": true,
	"leak": true, "puddle": true, "drips": true, "shock": true, "tingl": true, "zaps": true, "drain pump": true}

// Hits gives the complaints that a customer's words name, with the phrases that
// name them, the best first; several mean that the words are ambiguous. Of complaints that are named alike the more
// specific, which is the earlier in the table, comes first. A motor comes last
// where the words say that something does not keep cold: its fan is then a
// cause and not the complaint.
func Hits(text string) []Hit {
	words := Fold(text)
	type scored struct {
		Hit
		score int
	}
	var found []scored
	cold, warm := false, false
	for _, c := range complaints {
		best := scored{Hit: Hit{Complaint: c}}
		for phrase := range strings.SplitSeq(c.Words, ", ") {
			p := Fold(phrase)
			weight := len(p)
			if telling[phrase] {
				weight = 3
			}
			if weight > best.score && saysAll(words, p) && (phrase != "dead" || strings.Contains(deadPart().ReplaceAllString(strings.Join(words, " "), ""), "dead")) {
				best.score, best.Phrase = weight, phrase
			}
		}
		if best.score > 0 {
			found = append(found, best)
			warm = warm || c.Code == "no-cool"
			cold = cold || slices.Contains(coldComplaints, c.Code)
		}
	}
	for i := range found {
		if cold && found[i].Code == "motor-dead" || warm && found[i].Code == "leaks-ices" {
			found[i].score = 0 // what is warm is told first: ice and water can come of the same
		}
	}
	sort.SliceStable(found, func(i, k int) bool { return found[i].score > found[k].score })
	var out []Hit
	for _, f := range found {
		out = append(out, f.Hit)
	}
	return out
}

// deadPart tells a part of what has power that is called dead: a fan, a lamp or one
// heater of several.
var deadPart = lazily(`\b(fan|lamp|light|bulb|display|keypad|pad|button|element|burner|bake|broil|broiler|grill|ring|zone|blower|pump|motor|igniter|clock|dispenser|maker|icemaker|valve|solenoid|convection|comp|compressor)s? ((is|are|was) )?(totally |completely )?dead\b|\bdead (fan|lamp|light|bulb|display|keypad|element|burner|blower|pump|motor|clock|broil|bake|comp)`)

// coldComplaints are those of an appliance that does not keep its cold.
var coldComplaints = []string{"no-cool", "fridge-warm", "too-cold", "runs-always", "leaks-ices"}

// KeepsNoCold reports whether a complaint is about the cold of an appliance.
func KeepsNoCold(code string) bool { return slices.Contains(coldComplaints, code) }

// saysAll reports whether each word of the phrase begins a word of the text,
// or is one where it is so short that it begins too many, in the order of the
// phrase, with at most two words between.
func saysAll(text, phrase []string) bool {
	for from := range text {
		if from > 0 && denies[text[from-1]] && len(phrase) == 1 && telling[phrase[0]] {
			continue // no buzz
		}
		if follows(text[from:], phrase) {
			return true
		}
	}
	return false
}

// whole holds the words of phrases that begin other words of a complaint.
var whole = map[string]bool{"no": true, "not": true}

func follows(text, phrase []string) bool {
	at := 0
	for k, p := range phrase {
		reach := len(text)
		if k == 0 {
			reach = min(1, len(text))
		} else {
			reach = min(reach, at+3)
		}
		hit := -1
		for i := at; i < reach; i++ {
			if text[i] == p || !whole[p] && strings.HasPrefix(text[i], p) {
				hit = i
				break
			}
		}
		if hit < 0 {
			return false
		}
		at = hit + 1
	}
	return true
}

// becomes names the complaint that another one turns out to be once a fact is
// known: a machine that did not start because its protector had opened on heat
// is one that cuts out, and what made the heat is looked for; behind a breaker
// that was found tripped is the reason why it tripped; what has an igniter burns gas; what runs
// all the time and stays warm does not cool; what does not cool because its compressor does not run is a machine that does not start.
var becomes = []turn{
	{[]string{"no-start"}, []string{"protector-reset", "overload-reset"}, "hums-trips", nil},
	{[]string{"no-start", "no-power", "no-cool", "fridge-warm", "no-heat", "hp-no-heat", "ac-warm", "wont-run", "motor-dead"}, []string{"breaker-tripped"}, "trips-breaker", holding},
	{[]string{"no-heat"}, []string{"igniter-open", "igniter-conducts", "igniter-glows", "igniter-dark"}, "gas-no-heat", nil},
	{[]string{"gas-quits"}, []string{"blower-stopped"}, "no-blower", nil},
	{[]string{"gas-no-heat", "furnace-no-heat", "slow-dry"}, []string{"heat-lost"}, "gas-quits", nil},
	{[]string{"no-cool", "runs-always"}, []string{"phase-lost", "leg-lost", "phases-unbalanced", "single-phasing"}, "three-phase", nil},
	{[]string{"no-cool", "runs-always"}, []string{"freezer-cold"}, "fridge-warm", []string{"clicks", "hums", "silent", "does-not-start", "overload-reset"}},
	{[]string{"runs-always"}, []string{"temp-above"}, "no-cool", []string{"cycles-off", "freezes-food", "temp-at-target"}},
	{[]string{"ac-dead"}, []string{"cond-fan-runs", "hums", "cuts-out"}, "ac-warm", []string{"coil-open", "pole-open", "fuse-open", "drain-blocked"}},
	{[]string{"ac-warm"}, []string{"coil-open", "pole-open", "fuse-open"}, "ac-dead", runsNow},
	{[]string{"hp-no-heat"}, []string{"hums"}, "hums-trips", runsNow},
	{[]string{"hp-no-heat"}, []string{"does-not-start", "clicks"}, "no-start", runsNow},
	{[]string{"no-cool", "fridge-warm"}, []string{"overload-reset"}, "hums-trips", runsNow},
	{[]string{"no-cool", "fridge-warm"}, []string{"hums"}, "hums-trips", runsNow},
	{[]string{"no-cool", "fridge-warm"}, []string{"does-not-start", "clicks", "silent"}, "no-start", runsNow},
}

type turn struct {
	from, facts []string // of any of these complaints, by any of these facts
	complaint   string
	unless      []string // with any of these facts it stays what it was
}

// runsNow are facts that only a compressor that runs can give.
var runsNow = []string{"starts-and-runs", "runs-all-the-time", "cycles-off", "cools-slowly", "amps-sound", "amps-agree", "amps-low", "frost-even", "frost-heavy", "condenser-warm", "pressures-apart"}

// holding are facts that only an appliance whose breaker holds can give, if by one pole.
var holding = []string{"breaker-holds", "leg-missing", "drum-turns", "supply-sound", "supply-low", "supply-high", "outlet-works", "light-works", "starts-and-runs", "clicks", "hums", "heats-up"}

// Refine gives the complaint to weigh after the facts: the one given, or what
// the facts show it to be.
func Refine(complaint string, facts []Fact) string {
	for _, b := range becomes {
		has := func(code string) bool {
			return slices.ContainsFunc(facts, func(f Fact) bool { return f.Code == code })
		}
		if slices.Contains(b.from, complaint) && slices.ContainsFunc(b.facts, has) && !slices.ContainsFunc(b.unless, has) {
			return b.complaint
		}
	}
	return complaint
}

// Missing lists what the complaint's call still needs after the facts.
func Missing(complaint string, facts []Fact) []Need {
	c, ok := ComplaintBy(complaint)
	if !ok {
		return nil
	}
	var known set
	for _, f := range facts {
		if n, ok := vocabulary().number[f.Code]; ok {
			known.add(n)
		}
	}
	var missing []Need
	for _, n := range c.Need {
		if !vocabulary().set(n.What, n.Any).meets(known) {
			missing = append(missing, n)
		}
	}
	return missing
}
