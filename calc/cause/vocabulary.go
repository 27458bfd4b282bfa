package cause

import (
	"regexp"
	"slices"
	"strings"
	"sync"
)

// Fact is something that an entry of the notebook established: a finding that
// was typed or a reading that was judged.
type Fact struct {
	Code  string // a code of the vocabulary
	Entry int    // the number of the entry that it rests on
}

// Finding is one word of the vocabulary.
type Finding struct {
	Code     string   // lower-case words joined by dashes
	Words    []string // what a technician types after `saw`, the preferred form first; empty for a judged fact
	Help     string   // what the code means
	Excludes []string // codes that cannot be true at the same time; naming them on one side is enough
}

// Findings lists what can be typed after `saw`, in the order of the table.
func Findings() []Finding { return slices.Clone(seen()) }

// seen and judged are the rows of the vocabulary, read once.
var (
	seen   = sync.OnceValue(readSeen)
	judged = sync.OnceValue(func() []Finding { return findings(judgedRows) })
)

// readSeen reads the findings that are shared, then those of each cause.
func readSeen() []Finding {
	out := findings(seenRows)
	for _, table := range causeTables() {
		for i := range table {
			if o := table[i].Own; o != nil {
				out = append(out, findings(o.Seen)...)
			}
		}
	}
	return out
}

// findings reads rows of the vocabulary: code | what is typed | help | excludes.
func findings(rows string) []Finding {
	var out []Finding
	for row := range strings.Lines(rows) {
		f := strings.Split(strings.TrimSuffix(row, "\n"), "|")
		if strings.HasPrefix(row, "#") || len(f) != 4 {
			continue
		}
		typed := strings.TrimSpace(f[1])
		w := strings.Split(typed, ", ")
		if things, ok := strings.CutPrefix(typed, "joints of "); ok {
			w = joints(strings.Fields(things)...)
		} else if typed == "" {
			w = nil
		}
		out = append(out, Finding{strings.TrimSpace(f[0]), w, strings.TrimSpace(f[2]), strings.Fields(f[3])})
	}
	return out
}

// Lookup gives the vocabulary's entry for a code.
//
//go:noinline
func Lookup(code string) (Finding, bool) {
	i, ok := vocabulary().number[code]
	if !ok {
		return Finding{}, false
	}
	return vocabulary().terms[i], true
}

// plain names a code in words: what is typed for it, else the code without
// dashes.
func plain(code string) string {
	if f, ok := Lookup(code); ok && len(f.Words) > 0 {
		return f.Words[0]
	}
	return strings.ReplaceAll(code, "-", " ")
}

// FindFinding looks for a finding at the start of a text typed after `saw`.
// Dashes and spaces count alike, the longest wording wins, and what follows it
// is free text; but a text that goes on to deny what it named is no finding, nor
// is one that vouches and goes on to limit it. It gives the code and the words
// that matched.
func FindFinding(text string) (code, matched string, ok bool) {
	code, matched, by := begins(text)
	if code == "" || by != "" {
		return "", "", false
	}
	return code, matched, true
}

// Limited gives what the finding at the start of a text means and the word
// behind it that leaves nothing of it; "" when no word does.
func Limited(text string) (help, by string) {
	code, _, by := begins(text)
	if by == "" {
		by = undone(code, text)
	}
	if by == "" {
		return "", ""
	}
	f, _ := Lookup(code)
	return f.Help, by
}

// begins gives the finding at the start of a text, the words that name it, and
// the word behind them that denies or limits it.
func begins(text string) (code, phrase, by string) {
	words := wording(text)
	if code, phrase, by = vocabulary().begins(words); code == "" {
		code, phrase, by = vocabulary().begins(bare(words))
	}
	return code, phrase, by
}

// wording is a text cut into the words by which findings are known: the short ones
// of what has two.
func wording(text string) []string {
	words := Fold(text)
	out := words[:0]
	for i, w := range words {
		if short := shorter[w]; short != "" {
			w = short
		}
		if n := len(out) - 1; w == "not" && n >= 0 && out[n] == "does" {
			out[n] = "doesn't"
			continue
		}
		if n := len(out) - 1; n >= 0 && out[n] == "holds" && isHeat(w) && (i+1 == len(words) || !strings.Contains(ofOthers, " "+words[i+1]+" ")) {
			w = "temp"
		}
		out = append(out, w)
	}
	return out
}

// isHeat reports whether a word is the temperature of an oven, ofOthers what is read of
// other things in such numbers.
func isHeat(w string) bool {
	w = strings.TrimRight(w, "fc")
	return len(w) == 3 && w >= "100" && w < "600"
}

const ofOthers = " psi psig micron microns v volts w watts bar kpa min minutes lbs "

var shorter = map[string]string{"compressor": "comp", "condenser": "cond", "evaporator": "evap", "capacitor": "cap", "burned": "burnt", "held": "holds", "clogged": "blocked", "won't": "doesn't", "isn't": "not"}

// bare is a text without the words that name nothing: the pump is still jammed.
func bare(words []string) []string {
	var out []string
	if n := slices.IndexFunc(words, func(w string) bool { return strings.Trim(w, "0123456789") != "" }); n > 0 && strings.HasPrefix(words[n], "pint") && strings.Trim(strings.Join(words[:n], ""), "0") != "" {
		words = words[n:] // how much it took out
	}
	for i, w := range words {
		if !fills()[w] && (w != "it" || len(out) > 0) && (w != "still" || i == len(words)-1) {
			out = append(out, w)
		}
	}
	return out
}

var fills = codeSet("the", "a", "an", "is", "are", "it's", "its", "again", "now", "very", "really", "quite", "totally", "completely")

func (v *lexicon) begins(words []string) (code, phrase, by string) {
	for n := min(len(words), v.longest); n > 0; n-- {
		phrase := strings.Join(words[:n], " ")
		c, known := v.phrases[phrase]
		if !known {
			continue
		}
		rest := words[n:]
		if c == "starts-and-runs" && len(rest) > 0 && hedges()[rest[0]] {
			return c, phrase, rest[0] // it starts, but not by itself
		}
		vouches, narrow := v.vouches(c), narrowed(c)
		for i, w := range rest {
			if i > 1 && strings.HasPrefix(w, "sec") && strings.Contains(inTime, " "+rest[i-2]+" ") {
				continue // how soon it is, which limits nothing
			}
			if denies[w] || vouches && limits()[w] || slices.Contains(narrow, w) {
				return c, phrase, w
			}
		}
		return c, phrase, ""
	}
	return "", "", ""
}

// vouches reports whether a finding says that something is as it should be, so
// that words which limit it leave nothing of it: it speaks against causes or
// proves a repair, and is neither a sign of a complaint nor shows a cause.
func (v *lexicon) vouches(code string) bool {
	return v.vouching().has(v.number[code])
}

// buildVouching derives which findings vouch from the tables of causes and
// complaints; what clears a danger does.
func (v *lexicon) buildVouching() *set {
	var against, fault set
	for _, table := range causeTables() {
		for i := range table {
			against = against.or(v.set(table[i].Code, table[i].Contradicts))
			fault = fault.or(v.set(table[i].Code, table[i].ShownBy))
		}
	}
	for i := range complaints {
		against = against.or(v.set(complaints[i].Code, complaints[i].Cured))
		fault = fault.or(v.set(complaints[i].Code, complaints[i].Signs))
	}
	for i, f := range v.terms {
		switch {
		case strings.HasPrefix(f.Code, "no-"):
			against.add(i)
		case strings.HasSuffix(f.Code, "-partial"), f.Code == "flame-drops-out":
			fault.add(i) // it is limited by itself
		}
	}
	against = against.minus(fault)
	return &against
}

// FindFindings looks for the findings of a text typed after `saw`: those parted
// by commas, and both fans at once. It gives their codes, each once; one that
// vouches gives way to one that it cannot stand beside: it starts, and cuts out.
func FindFindings(text string) []string {
	var out []string
	if strings.Contains(text, "leak") {
		text = Calmed(text) // what came of a test stands behind a comma
	}
	for _, part := range strings.Split(text, ",") {
		part = strings.TrimSpace(part)
		each := []string{part}
		if rest, both := strings.CutPrefix(strings.TrimPrefix(strings.ToLower(part), "both "), "fans "); both {
			if does, more, _ := strings.Cut(strings.TrimPrefix(rest, "are "), " "); slices.Contains([]string{"run", "running", "going", "on", "working", "turning", "spinning", "blowing"}, does) {
				rest = "runs " + more
			}
			each = []string{"cond-fan " + rest, "evap-fan " + rest}
		} else if a, b := halves(part); b != "" {
			each = []string{a, b}
		}
		for _, e := range each {
			if code, _, ok := FindFinding(e); ok && !slices.Contains(out, code) {
				out = append(out, code)
			}
		}
	}
	v, all := vocabulary(), slices.Clone(out)
	return slices.DeleteFunc(out, func(code string) bool {
		return undone(code, text) != "" || v.vouches(code) && slices.ContainsFunc(all, func(o string) bool { return !v.vouches(o) && v.excludes[v.number[code]].has(v.number[o]) })
	})
}

// mostHalves is at how many words a text is tried: nobody tells more in a breath
// (common practice).
const mostHalves = 4

// halves parts a text at the word behind which another finding stands, as in: igniter
// glows but no flame. Both sides have to be findings, and its beginning none that
// goes on over that word.
func halves(text string) (a, b string) {
	for _, m := range joint().FindAllStringSubmatchIndex(text, mostHalves) {
		before, after := text[:m[0]], text[max(m[2], m[4]):]
		_, left, ok := FindFinding(before)
		if _, _, also := FindFinding(after); !ok || !also {
			continue
		}
		if _, whole, ok := FindFinding(text); !ok || len(whole) <= len(left) {
			return before, after
		}
	}
	return "", ""
}

var joint = lazily(`(?i) (?:(?:but|and|then) (\w)|(no|not|does not|doesn'?t|won'?t) )`)

// Heard gives the findings that a customer's words name, each once, sorted.
// They are hearsay: see Weigh.
func Heard(text string) []string {
	words := wording(text)
	var out []string
	for i := 0; i < len(words); i++ {
		for n := min(len(words)-i, vocabulary().longest); n > 0; n-- {
			code, known := vocabulary().phrases[strings.Join(words[i:i+n], " ")]
			if !known {
				continue
			}
			if i == 0 || !denies[words[i-1]] {
				out = append(out, code)
			}
			i += n - 1
			break
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// denies holds the words that turn a finding into its opposite when they come
// after it.
var denies = map[string]bool{
	"no": true, "none": true, "not": true, "never": true, "without": true, "stopped": true,
	"gone": true, "isn't": true, "doesn't": true, "won't": true, "nor": true,
}

// limits are the words that leave nothing of a good finding when they come after
// it: it starts, but trips; tight, except one; runs backwards.
var limits = codeSet("but", "then", "except", "only", "sometimes", "occasionally", "intermittent", "intermittently", "erratic", "erratically", "barely", "hardly", "almost", "partly", "half",
	"slow", "slowly", "weak", "weakly", "stiff", "stiffly", "backward", "backwards", "reverse", "briefly", "until", "unless", "wobbles",
	"trips", "tripped", "stops", "stop", "stalls", "stalled", "cuts", "shuts", "drops", "dies", "hand", "push", "pushed", "lift", "lifted", "yet", "tries", "sec", "secs", "second", "seconds", "fan")

// inTime are the words that stand before how soon something is.
const inTime = " in within under "

// narrows are the words behind which a finding says something else: a flame that
// goes out after minutes is not one that is not sensed, a hum of what runs is none
// of what is stuck, and many a compressor knocks when it stops.
const narrows = `
flame-lights panel display flicker flickers dim blink blinks blinking flash flashing drum hood bulb lamp work works board
flame-drops-out minute minutes min mins hour hours while
breaker-holds off disconnected unplugged removed isolated
hums runs running
noisy shut shutdown shutoff well fine good great quietly nicely
heats-up element elements coil circuit relay light
cools-down coil coils
starts-and-runs amps current cap capacitor hot warm light lights water hard rough other out some most reluctantly eventually
level switch sensor control tube hose low high
cycles-off limit overload olp thermal breaker
dries cycles hours forever
fills drains constantly continuously
pump-runs free freely easily by
drains constantly continuously floor base bucket pan tray bowl outside
makes-ice walls wall frost coil evap back
tap-open floor ground counter board boards pcb control panel motor wire wires wiring harness terminal terminals connector connectors plug cord outlet socket shelf shelves glass window ceiling carpet
no-ice-made coil evap wall
leak-found sight glass
`

// narrowed are the words that make another of a finding.
func narrowed(code string) []string {
	_, words, _ := strings.Cut(narrows, "\n"+code+" ")
	words, _, _ = strings.Cut(words, "\n")
	return strings.Fields(words)
}

// hedges are the words behind which stands what a machine needs to start.
var hedges = codeSet("with", "only", "if", "when", "by", "once", "using", "on")

// Calmed is a text in lower case in which what holds the word of a danger and is
// none is put in other words.
func Calmed(text string) string {
	text = strings.ToLower(strings.ReplaceAll(text, "’", "'"))
	for i := range harmless {
		if h, in := &harmless[i], &inHarmless[i]; strings.Contains(text, h.holds) {
			in.Do(func() { in.is = regexp.MustCompile(h.is) })
			text = in.is.ReplaceAllString(text, h.plain)
		}
	}
	return text
}

// Fold cuts a text, calmed, into words; dashes, commas and other marks separate
// words, an apostrophe does not.
func Fold(text string) []string {
	words := strings.FieldsFunc(Calmed(text), func(r rune) bool {
		switch {
		case r >= 'a' && r <= 'z', r >= '0' && r <= '9', r == '\'', r > 127:
			return false
		}
		return true
	})
	for i, w := range words {
		if full, ok := clipped[w]; ok {
			words[i] = full
		}
	}
	return words
}

// feels and aDanger are how it is said that nobody felt one.
const (
	feels   = `(?:(?:got|gets?|getting|was|is|were|felt|feels?|feeling|smell\w*|had|has|ever|been|an?|any|the|electric) )+`
	aDanger = `(?:shock\w*|tingl\w*|zap\w*|jolt\w*|smoke|burning|gas|sparks?)(?: smell| leak)?\b`
)

// harmless are what nobody felt, a part of a suspension, glass, tests with smoke, and the spark and the
// flame that a burner is to have, each with words in which no danger is heard; and
// dangers of which one word would be heard as another thing, in words that are plain.
var harmless = [...]struct{ holds, is, plain string }{
	{"nobody", `\bnobody ` + feels + aDanger, "all is well"},
	{"no one", `\bno one ` + feels + aDanger, "all is well"},
	{"none of", `\bnone of (?:them|us) ` + feels + aDanger, "all is well"},
	{"deni", `\bdenie[sd] ` + feels + `?` + aDanger, "all is well"},
	{"neither", `\bneither (?:a )?` + aDanger + ` nor (?:a )?` + aDanger, "all is well"},
	{"shock", `\bshock.?absorb\w*|\bshock (?:mount|strut|spring|pad)s?\b|\b(?:suspension )?shocks (ok|good|fine|worn|bad|broken|leak|replaced|fitted|new)|\b(?:replaced|fitted|new|changed|renewed) (?:(?:all|both|the|two|four|\d) )*shocks\b`, "damper $1"},
	{"shock", `\bshock\w* (?:` + ofMoney + ` )*` + money, "surprise"},
	{"shock", money + ` (?:(?:gave|was|is|came|as|an?|bit|of|quite|big|to|for|her|him|them|me|us|the|owner|cust\w*|client) )*shock\w*`, "surprise"},
	{"in shock", `\bin shock(?: (?:about|over|since|at) .*|$|[,;.])`, "upset, "},
	{"smok", `\b` + people + ` (?:(?:will|would|wants?|went|goes|likes?|to|both|all|still|always|was|were|is|are|who|out|only|never) )*(?:smok(?:e|es|ing|ers?)\b|for a smoke\b)(?: (?:like a chimney|outside|inside|indoors|a lot|heavily))?`, "$1 rests"},
	{"smok", `\b(?:chain|heavy|non|ex)[- ]?smok\w+|\bsmoke (?:break|free)|\b(?:having|has|have|had|out for) a (?:quick )?smoke\b`, "rest"},
	{"smoke ", `\bsmoke (?:alarm|det\w*)s? [^,;.]{0,20}\b(?:batt\w*|chirp\w*|expired)(?: (?:chirp\w*|batt\w*|low|dead|flat))*`, "beeper"},
	{"burn", `\bburn(?:t|ed)(?: on| up)? (food|cheese|grease|popcorn|sugar|spills?|spillage|pizza|toast|cakes?|dinner|roast|meat|pie|crumbs|sauce|milk|fat|rice|bread)\b`, "overdone $1"},
	{"fire ", `\bfire (?:hall|station|house|brigade|engine|truck|pit|door|exit|drill|escape|place)\b`, "station"},
	{"smoke ", `\bsmoke (?:alarm|detector)s? [^,;.]{0,28}\b(?:when|whenever|if|while|during) .{0,16}(?:pre-?heat|bak|broil|roast|fry|grill|cook|toast|self.?clean)`, "beeper"},
	{"burn", `\bburn(?:ing|t) (lint|hair|cloth\w*|insulation|belt|motor|oil|wood|metal|type|sort|kind)( of)? (?:smell|odor)`, "burning smell $1"},
	{"rotten", `\bwater (?:(?:now|still|is|has|from|at|in|the|hot|taps?|shower|kitchen) )*(?:smell|stink|stank|reek)\w* (?:\w+ ){0,3}?rotten.?egg\w*|\brotten.?egg\w* (?:smell |odor )?(?:in|from|of|on|when) (?:(?:the|hot|her|my) )*(?:water(?:$| (?:run|on|tap|comes))|taps?\b|shower)`, "sulfur"},
	{"disco", `\bdisco(?:nnect)?(?: (?:switch|box|block|lugs?|is|was|looks|all|half))* (?:melt|burn|scorch|char)\w*|\b(?:melted|burnt|burned|scorched)(?: up)? disco(?:nnect)?\b`, "outlet burnt"},
	{"socket", `\b` + ofElement + ` sockets?` + browned, "terminal burnt"},
	{"recep", `\b` + ofElement + ` recep(?:tacle)?s?` + browned, "terminal burnt"},
	{"recep", `\brecep(?:tacle)? block` + browned, "terminal burnt"},
	{"gas leak", `\bgas leaks? ` + gasTest + `[ ,:-]*` + tightNow + butLeaks, "gas leak test good$1"},
	{"smoke ", `\bsmoke (?:(?:spot|number|no|test|reading|scale|is|was|at|of|reads?|came|out|with|a|the|pump|paper|bacharach)[. :=]+)+(?:0|zero|nil|none|trace|clean)\b(?:[^.\d]|$)`, "no smoke "},
	{"smoke", `\bsmoke (test|pencil|bomb|tube|match)`, "puff $1"},
	{"hose", switchHose + holed + "|" + holedFirst, "pressure switch hose cracked"},
	{"tub", switchHose + holed + "|" + holedFirst, "pressure switch hose cracked"},
	{"not connected", `\b(flue|chimney|vent pipe)( pipe)? (?:is |was )?not connected`, "$1 disconnected"},
	{"while", `\bwhile (?:the |its )?(door|lid)\b`, "with $1"},
	{"while", `\bwhile ((?:the )?(?:i|you|we|he|she|they|client|customer|someone) (?:open|pull|lift))`, "when $1"},
	{"while", `\b(door|lid) (?:opens|opened|unlocks|can be opened) while\b`, "$1 opens during"},
	{"smoke ", `\bsmoke (?:alarm|detector)s? (?:went off|goes off|going off|sounded|sounds)\b`, "smokes"},
	{"smells burnt", `\b(toast|food|bread) smells burnt`, "$1 overdone"},
	{"monoxide", `\bcarbon monoxide (alarm|detector|monitor)`, "co $1"},
	{"co ", `\b((?:buy|bought|get|fit|install|put in|put up|recommend|advis|suggest|sold|need|want|order|new|replac|supplied|missing|no|without|hung|mount)\w*(?: (?:a|an|the|new|working|another|their|to|buy|get|fit|have|client|in|up))*) co (?:alarm|detector|monitor)s?\b`, "$1 warner"},
	{"co ", `\bco (?:alarm|det\w*|monitor)s? ((?:is |was |are |has |have )*(?:new|works?|on (?:the )?(?:wall|ceiling)|in (?:the )?\w+ (?:works|ok|good|tested|fitted)|fine|good|ok|missing|fitted|installed|present|silent|quiet|in place|batt|\d+ y|not (?:fitted|sounding)|tested))`, "warner $1"},
	{"smoke", `\bsmoke (?:alarm|det\w*)s? (?:is |are )*((?:on|in|new|works?|tested|ok|good|fine|present)\b)`, "beeper $1"},
	{"smoke", `\bsmoked?((?: a bit| a little| some)*) (?:from|off) ((?:(?:a|the|some|burnt|old|his|her|food|grease) )*(?:spill|food|grease|pizza|crumbs|cheese|drippings))`, "puff$1 of $2"},
	{"no ", `\bno (?:signs?|evidence|traces?) of (?:any )?((?:arc|burn|spark|smok|scorch|melt|leak))`, "no $1"},
	{"smoked", `\bsmoked (glass|plastic)`, "dark $1"},
	{"spark", `\b(igniter|electrode|burner|pilot)s? (?:(?:still|only|keeps?|always) )*spark(?:s|ing)\b`, "$1 spark"},
	{"spark", `\bspark(?:s|ing) (at the (?:igniter|electrode|burner|pilot)|(?:but|and) (?:\w+ ){0,2}?(?:not|no|never|won'?t|doesn'?t) (?:light|flame|ignit|catch))`, "spark $1"},
	{"flames", `\b(blue|yellow|orange|lazy|small|low|burner|pilot) flames\b`, "$1 flame"},
	{"flames", `\bflames ((?:at|in|on) the burner)`, "flame $1"},
}

// people are who may smoke, money what one may be shocked at, and ofMoney the words between.
const (
	people  = `(cust\w*|client|owner|tenant|landlord|s?he|they|lady|guy|man|wife|husband|son|neighbou?rs?|guests?|people)`
	money   = `\b(?:bill|price|quote|quotation|cost|invoice|estimate|total|fee)s?\b`
	ofMoney = `(?:at|when|from|over|about|of|to|by|see\w*|saw|they|he|she|i|the|a|his|her|their|how|cust\w*|client|open\w*|read\w*|hear\w*|g[eo]t\w*|look\w*|told|it|for|my|our|power|electric\w*|gas|energy|water|repair|big|new|last)`
)

// What is burnt in the place where an element plugs in is a bad joint and no wall outlet.
const (
	ofElement = `(?:[lr][rfh]|(?:left|right|front|rear|back|big|small|large) (?:rear|front|burner|element)|elem(?:ent)?|burner|surface|coil|heater)(?:'?s)?`
	browned   = `(?: block)?(?: is| was| looks| found| all)* (?:(?:brown|burn|black|scorch|char|discol|melt)\w*)(?: (?:brown|black|up|out)\b)*`
)

// A test of a gas is no leak when it names none: gasTest is how it is said to be done, and
// tightNow what came of it.
const (
	gasTest  = `(?:(?:soap|bubble|sniffer|pressure|re) )*(?:re)?(?:(?:test|check|search)(?:ed|s|ing)?|soaped)\b`
	tightNow = `(?:(?:done|was|were|is|are|all|both|every|each|the|at|on|of|new|joints?|fittings?|connections?|unions?|valves?|flex|manifold|pipes?|lines?|hoses?|came|up|again|after|repair|w|with|by|using|and|soapy?|solution|water|spray|foam|detector|sniffer)[ ,:/-]+)*(?:(?:with|w/?|by) bubbles?[ ,:-]+)?` +
		`(?:good|ok|okay|tight|clean|clear|none|nil|negative|nothing|dry|pass(?:ed)?|zero|0|no (?:bubbles?|leaks?|signs?))\b`
	butLeaks = `(?:[^;]*(?:[^o]|[^n]o) (leak|bubbl|hiss|seep|weep|whiff|fail)\w*)?` // at another joint
)

// The hose by which a pressure switch feels the draft spills nothing when it is holed: it
// draws air in (common practice).
const (
	switchHose = `\b(?:rubber )?(?:(?:inducer|(?:pressure|vacuum|draft)(?: sw\w*)?|sensing)(?: (?:pressure|vacuum|sensing|rubber|sw\w*))* (?:hose|tub(?:e|ing)|line)s?|(?:hose|tub(?:e|ing)) (?:of|on|at|to|from)(?: the)? (?:inducer|pressure sw\w*)(?: (?:port|nipple|tap|barb))?)`
	holed      = `(?: (?:is|was|are|has|had|a|an|looks|badly|all|found|at|end|the))* (?:crack|split|torn|tear|hole|perish|rot|brittle|broken|pinhole|chafed|melted)\w*`
	holedFirst = `\b(?:crack(?:ed)?|split|torn|holed|perished|rotted|brittle|hole|pinhole)(?: (?:in|on|at|the|rubber))* (?:inducer|pressure(?: sw\w*)?|sensing) (?:hose|tub(?:e|ing))s?`
)

// inHarmless are their patterns, each made when it is first asked for.
var inHarmless [len(harmless)]struct {
	sync.Once
	is *regexp.Regexp
}

//go:noinline
func lazily(pattern string) func() *regexp.Regexp {
	return sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(pattern) })
}

// clipped are words as they are often typed, with the one that the tables have.
var clipped = map[string]string{"wont": "won't", "doesnt": "doesn't", "isnt": "isn't", "dont": "don't", "wouldnt": "won't", "wouldn't": "won't", "ok": "good", "okay": "good", "odour": "odor", "filthy": "dirty", "snapped": "broken", "ignitor": "igniter", "mtr": "motor", "tst": "test", "od": "outdoor", "hsi": "igniter", "lites": "lights", "lite": "light", "choked": "blocked", "w": "with", "hx": "heat exchanger"}
