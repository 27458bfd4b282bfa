package said

import (
	"slices"
	"strings"
	"sync"

	"ohmcall/calc/cause"
)

// Worry is how much a text speaks of danger that nothing else here understands.
type Worry int

// What is Feared names a danger or takes out what protects; what is Doubted has words of
// things that are dangerous when they are not as they should be.
const (
	Calm Worry = iota
	Doubted
	Feared
)

// Worries tells how much a text has of words of danger, or of a protective device and of
// what takes one out, in a clause that does not say that all is well. It is asked of
// what nothing else here understands: no list has all that people write, so who wrote it
// is asked and who reads the record is told (common practice throughout).
func Worries(text string) Worry {
	text = strings.ToLower(spelt(text[:min(len(text), MostBytes)]))
	whole := " " + text + " "
	if !worrying(whole, false) && wordsIn(text)&ofGuards == 0 {
		return Calm
	}
	renews, most := Has(text, renewalWords), Calm
	clauses := Clauses(cause.Calmed(text))
	mends := slices.ContainsFunc(clauses, mending.is)
	for _, clause := range clauses {
		// What is renewed in one clause does not put back what another takes out.
		c, of := " "+clause+" ", worriesFor(clause, renews && (Has(clause, renewalWords) || Has(clause, oldWords)))
		feared := worrying(c, true)
		if of == Calm && (!worrying(c, renews) || mends && !feared && (!renews || !mending.is(clause))) {
			continue
		}
		if !saysWell(clause) && !(Has(clause, wellWords) && alsoWell.is(clause)) && !Thaws(clause) && (feared || !(Has(clause, gaugeWords) && borne(clause)) && !saysBack(clause)) {
			most = max(most, Doubted, of)
			if feared && !mending.is(clause) {
				most = Feared
			}
		}
	}
	return most
}

// PutRight reports whether words of work name each thing, in clauses that mend, of which
// others say what may be a danger. Of what has too many amps a new one may be no better.
func PutRight(told, work string) bool {
	work = strings.ToLower(work[:min(len(work), MostBytes)])
	if !Has(work, mendWords) || cause.Partly(work) != "" {
		return false
	}
	told = strings.ToLower(told[:min(len(told), MostBytes)])
	mended := ""
	for _, c := range Stated(work) {
		if (mending.is(c) || renewing.is(c)) && !unheld.is(c) && !notYet.is(c) {
			mended += " " + strings.Join(thing.get().FindAllString(c, MostClauses), " ")
		}
	}
	mended = shortened.Replace(mended)
	for _, t := range thing.get().FindAllString(told, MostClauses) {
		t = shortened.Replace(t)
		if t = " " + strings.TrimSuffix(t, "s"); !strings.Contains(mended+" ", t+" ") && !strings.Contains(mended+" ", t+"s ") {
			return false
		}
	}
	return mended != "" && thing.is(told) && !(Has(told, fusing) && strings.ContainsAny(told, "0123456789"))
}

// shortened are things that are called by two names.
var shortened = strings.NewReplacer("capacitor", "cap", "compressor", "comp", "element", "elem", "switch", "sw", "overload", "ol")

// mendWords are those without one of which no work mends; thing tells what may be dangerous.
var (
	mendWords = []string{"new", "repl", "fit", "install", "swap", "chang", "mend", "fix", "repair", "clear", "clean", "tight", "put", "seal", "cut", "rewir", "splic", "crimp"}
	thing     = pattern{expr: `\b(wires?|wiring|leads?|cords?|cables?|conductors?|receptacles?|outlets?|sockets?|plugs?|pins?|prongs?|earth|grounds?|neutral|bond\w*|terminals?|junction|boxe?s?|spades?|lugs?|connectors?|(wire)?nuts?|splices?|fuses?|breakers?|brkrs?|bkrs?|contactors?|relays?|vents?|flue|chimney|ducts?|hood|exchanger|hx|cells?|flames?|burners?|gas|hose|flex|union|valves?|cock|welds?|strips?|panels?|covers?|doors?|lids?|latch|locks?|glass|handle|blades?|impeller|pulley|belts?|switch|sw|limits?|thermostat|tstat|overload|ol|interlocks?|monitor|rollout|lwco|eco|float|relief|t&p|tank|resistor|thermistor|sensor|probe|board|motor|element|elem|heater|guard|capacitor|cap|compressor|comp)\b`}
)

// saysBack reports whether a clause says that a device which it names is back.
func saysBack(clause string) bool {
	if !Has(clause, backWords) {
		return false
	}
	is, said := wayOf(clause, false)
	kept, _ := beforeExcept(clause)
	return said && (is == unbridged || is == refitted) && len(devicesOf(kept, false)) > 0
}

// renewalWords are of what is renewed or put back, backWords of what is back, gaugeWords
// of a wire's size, oldWords of what then came out.
var (
	renewalWords = []string{"new ", "replac", "fitted", "install", " back", "swapp", "chang"}
	backWords    = []string{" back", "restor", "refit", "reconn", "reinst"}
	gaugeWords   = []string{"gauge", "awg", " ga"}
	oldWords     = []string{"old ", "bad ", "failed", "blown", "burn", "open", "broken", "defective", "faulty", "dead"}
)

// worrying reports whether a text has words of danger; of what was mended or renewed
// those alone that no mending has.
func worrying(text string, mended bool) bool {
	return maybeWorry().in(text) && (!mended && Has(text, touchy) || slices.ContainsFunc(together, func(sets [][]string) bool {
		return !slices.ContainsFunc(sets, func(words []string) bool { return !Has(text, words) })
	}))
}

// maybeWorry are the words without one of which none are of danger (common practice).
var maybeWorry = sync.OnceValue(func() *finder {
	lists := [][]string{touchy}
	for _, sets := range together {
		lists = append(lists, sets[0])
	}
	return newFinder(lists...)
})

// touchy are things of which any word is worth a look, unless it says that all is well
// or that they are new.
var touchy = []string{" wire", " lead", " cord", " receptacle", " outlet", " plug", " pulled ol", " earth", " ground", " terminal", " junction", " gas", " vent", " flue", " duct", " weld", " spade",
	" cable", " strip", " conductor", " fuse", " breaker", " exchanger", " contactor", " hiss", " brown", " rust", " current", " stuck", " cover off", "panel off", "no cover", "without"}

// together are words of danger: one, or those that are when they stand together.
var together = [][][]string{
	{{" burnt", " burned", " burning", " melt", " charred", " scorch", " singed", " sparks", " sparked", " sparking", " arcs ", " arced", " arcing", " frayed", " chafe", " swell", " swollen", " bulg", " fume", " fire ", " shock", " adapter", " adaptor"}},
	{{" bare", " exposed", " cracked", " loose", " live ", " black", " warm", " hot ", " overheat"}, {" wire", " lead", " copper", " conductor", " cord", " plug", " outlet", " receptacle", " socket", " breaker", " panel", " terminal", " spade", " connector", " lug", " glass", " handle", " case", " cabinet"}},
	{{" headache", " dizzy", " nausea", " sick "}},
	{{" flame"}, {" high", " yellow", " orange", " lick", " out ", " loud"}},
	{{" prong"}, {" cut", " missing", " bent", " off ", " broke"}},
	{{" neutral"}, {" ground", " open", " lost", " tied", " off ", " float"}},
	{{" latch"}, {" not ", "n't ", " broke", " fail", " off ", " ajar"}},
	{{" blade", " impeller", " pulley"}, {" crack", " wobbl", " loose", " chip"}},
	{{" finger", " kid ", " kids ", " child", " toddler"}, {" open", " reach", " stick", " into", " back", " hot "}},
	{{" resistor"}, {" thermistor", " sensor", " ntc", " probe", " thermostat"}},
	{{" two phase", " 2 phase", " two leg", " 2 leg"}, {" ran ", " run ", " bump", " start"}},
	{{" tape", " ptfe"}, {" flare"}},
	{{" shatter", " shater", " shard", " jagged", " razor", " smashed", " trapped", " pops open", " flies open", " springs open"}},
	{{" bust", " broke", " snapp"}, {" latch", " spring", " hinge", " guard", " glass", " strap", " bracket"}},
	{{" lock"}, {" self ", "self in", "selves in", " kids in", " child in"}},
	{{" insul"}, {" cut", " gone ", " peel", " crumb", " nick", " chew", " split"}},
	{{" forgot", " couldn't find", " couldnt find"}, {" screw", " lug", " cover", " tighten", " retighten", " strap", " clamp", " bolt"}},
	{{" cover", " panel", " grille", " guard"}, {" not on ", " left off", " still off", " no screws"}},
	{{" harness"}, {" drum", " blade", " belt", " pulley", " edge"}},
	{{" cap ", " capacitor"}, {" still at", " sitting at", " still sitting", " still had", " bit me", " not bled", " held charge"}},
	{{" won't break", " wont break", " won't open", " wont open"}, {" disconnect", " disco ", " leg", " contactor", " breaker"}},
	{{" tank"}, {" empty", " dry "}, {" fired", " power", "ed on", " energi", " was on"}},
	{{" water", " leak"}, {" access cover", " access panel", " junction box"}},
	{{" door", " lid "}, {" open"}, {" run", " turn", " spin", " hot "}},
}

// well are words of which one says that nothing is wrong, or what was looked at, begun
// those by their beginning.
var (
	well = sync.OnceValue(func() map[string]bool {
		return wordSet("same ok okay quiet good fine normal sound tight clean cleaned blue steady passed properly gone explained warned told showed check checks checked test tests tested freely releases works double aired flammable")
	})
	begun = []string{"correct", "recommend", "quot", "advis"}
)

func wordSet(words string) map[string]bool {
	out := map[string]bool{}
	for w := range strings.FieldsSeq(words) {
		out[w] = true
	}
	return out
}

// saysWell reports whether a clause says that nothing is wrong, or of what was looked at.
func saysWell(clause string) bool {
	found := false
	for at := 0; at < len(clause) && !found; {
		n := 0
		for at+n < len(clause) && wordByte(clause[at+n]) {
			n++
		}
		w := clause[at : at+n]
		found = well()[w] || slices.ContainsFunc(begun, func(b string) bool { return strings.HasPrefix(w, b) })
		at += n + 1
	}
	return found || (strings.HasPrefix(clause, "no") || strings.HasPrefix(clause, "zero") || Has(clause, wellPhrases)) && allWell.is(clause)
}

func wordByte(b byte) bool {
	return b >= 'a' && b <= 'z' || b >= '0' && b <= '9' || b == '_'
}

// allWell tells such a clause in more than a word; each has one of wellPhrases or
// begins with no or zero.
var (
	allWell = pattern{expr: `^(not|none|nothing|zero)\b|^no (leak|spark|smell|smoke|gas|burn|melt|crack|scorch|arc|shock|arc|sign|damage|issue|problem|trouble|loose|hot|bubble|error|code|fault)` +
		`|\b(like for like|as marked|as it should|no longer|ruled out)\b|\bplugged( it| the \w+)?( back)? in\b|\b(breaker|power|gas|water|cock|valve)( is| was)?( turned| switched| shut)?( back)? (on|off)$|\boff at (the|its)\b|^(sticker|tag|label)s?( (is|was|hung|put|left|tied|taped))* (on|to|at) (the )?(plug|cord|breaker|disconnect|panel|switch|unit|meter)$|^(cord|lead)s?( (is|was))? (coiled|rolled|wrapped|hung|tied)( up)?$|\bto (read|test|check|reach|see|look)\b`}
	wellPhrases = []string{"like for", "as marked", "as it", "no longer", "ruled", "plugged", "off at", "sticker", "tag", "label", "cord", "lead", "to ", "breaker", "power", "gas", "water", "cock", "valve"}
)

// soundly are devices of which it is well that they are closed, or that they open.
const soundly = `(lid-switch|door-switch|limit|rollout|safet\w+|eco|tco|lwco|interlock|switch|sw|fuse|thermostat|tstat|cutout|float)(e?s)?`

// alsoWell does so in words of which each clause that it tells has one of wellWords.
var (
	alsoWell  = pattern{expr: `^(all )?(the )?(\w+ )?` + soundly + ` (all |\d |is |are )*(closed|in circuit|work|match|stock)$|\b` + soundly + ` (all )?(\d )?(opens?|closes|clicks?|makes|works)\b|\b(ol|overload)( heaters)? (trips|in auto|set (to|at)|match)|\bkills\b|\b(killed|switched off|turned off|shut off|flipped off) (the |our )?(breaker|power|main)|\bgas (co|company|board|man|men|guy|utility)( \w+)? (here|came|coming|in|changed|swap|due)|\bgas (bill|account)|\bmatch(es)? (the )?(plate|tag)|\breset (the |it|eco|breaker|limit)|\b(shelf|turntable|tray|jar) (glass )?(is |was )?crack|\bcracked (glass )?(shelf|turntable|tray|jar)|\bfire (ext|dept|department|marshal)|\b(old|bad) (\w+ )?(part|element|elem|relay|igniter) (was )?burnt|\b(no|not|never|nor) (a |any |been )?(smell|hiss|bubbl|smok|shock|spark|burn|scorch|melt|by-?pass|jump|bridg|crack|loose|hot|bare|exposed|fray|damage|extension|tripped|sign)\w*|\b(right (for|size)|new run)\b|\b(as|by|per) (on )?(the )?(plate|sheet|manual|tag|print)\b|\bshocked (at|by|how|to|we|they|that)\b|\b(stops|drops) (at once|the|when|out)\b|\b(moves|draws|drawn) (free|up and down|well)|\b(cuts|shuts|cycles|kicks) (out|off) (at|on) (\d|(the |its )?(thermostat|t-?stat|stat|control)\b)|\bold (\w+ )?cap(acitor)? (was |is )?(bulg|swell|swollen)|\b(watched|saw|see) (it|the (ice|frost)) (melt|thaw)|\b(ice|frost) (is |was |now )*(melt|thaw)\w*|\bin (a )?(manual|forced) defrost\b|\b(in place|there|present|intact|landed)$|\bclear of\b|\b(lid|door) gasket (is |was )?\w+|\bfuse( \w+)? (is |was )?(blown|open)$|\bcontactor (\w+ ){0,3}(pull(s|ed)? in|out)$|\b(fuse box|breaker label|vent hood|(fire|smoke) alarm) |\bout of (the )?(water|wet)\b|\bshuts (right )?off when\b|\bcap( top)? was (bulg|swoll|dom)|\beven (flame|all round)|\boff neutral\b|\b(mended|smooth)\b|\ball safet\w+ (are )?(back )?(in|closed|working)\b`}
	wellWords = []string{"click", "close", "makes", "gas ", "breaker", "power", "closed", "ol ", "overload", "circuit", "no ", "not ", "never ", "nor ", "work", "match", "open", "kills", "reset", "burnt", "crack", "fire ", "jumper", "tag", "print", "right", "new run", "plate", "sheet", "manual", "shocked", "stops", "drops", "moves", "draw", "even", "place", "there", "present", "intact", "landed", "clear of", "gasket", "fuse ", "contactor", "breaker label", "hood", "alarm", "out of", "was ", "cuts", "melt", "thaw", "defrost", "shuts", "cycles", "kicks", "bulg", "swell", "swoll", "neutral", "mended", "smooth", "safet"}
)

// ofGuards are devices that protect, or may; strong are ways of taking one out that need
// no more words, slack those that are ordinary where a new one is fitted.
const (
	ofGuards = guarded | fused | breaker | ofDoor | ofFlame | earthed | kept | fixed | device
	strong   = bit | clip | bond | grip | magnet | bound | bend | shorts | bare | undoes | joined | instead | base
	slack    = takes | off | outOf | without | wiry | led | weak | across
)

// worriesFor tells how much a clause is of a protective device or of earth and of what
// takes one out, or of amps of a fuse beside others.
func worriesFor(clause string, renews bool) Worry {
	if Has(clause, fusing) && (rated.is(clause) || another.is(clause) && !exchanges.is(clause)) {
		return Feared
	}
	var room [48]tag
	all := union(tagsOf(clause, room[:0]))
	switch {
	case all&ofGuards == 0:
		return Calm
	case all&strong != 0:
		return Feared
	case !renews && all&(guarded|slack) != 0:
		return Doubted
	}
	return Calm
}

// fusing are what has a rating in amps that another has to bear.
var fusing = []string{"fuse", "breaker", "brkr", "bkr", "slo", "plug", "cord"}

// another tells a fuse or breaker of so many amps put in, with nothing of what was there.
var another = pattern{expr: `\b(put|stuck)( in)?( an?)?( new)? \d+ ?a(mps?)? (\w+ )?(fuse|breaker|bkr|brkr)|\b(swapp|chang|replac|exchang|upgrad)ed (\w+ )*(fuse|breaker|bkr|brkr)s? (for|to|with|by) (an? )?(new )?\d+ ?a(mps?)?\b`}

// rated tells amps of a fuse beside those of something else.
var rated = pattern{expr: `\d+ ?a?\b.*\b(in place|instead|on|for|plate|max|says|should)\b.*\d|\b(on|at) (a |an )?\d+ ?a\b|\bfused (at|for|with)\b`}
