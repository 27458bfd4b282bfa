package said

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
	"sync"

	"ohmcall/calc/cause"
)

// Alarm is a danger that words speak of.
type Alarm struct {
	Finding        string            // the code of what was found by these words
	quick          string            // words without one of which the rows are not looked at
	beside         string            // words of which one has to stand there too; none: quick is enough
	unless         func(string) bool // who else hears the same clause, and what takes that back
	said, harmless rows
	acts           rows                  // what was done that is the danger itself: no word of mending before it takes it back
	absent         bool                  // it is itself that something is not there, or not to be
	in             func(*Appliance) bool // in what it is a danger; nil: in all
}

// rows are wordings, a row each, made into one pattern when they are first asked for.
type rows struct {
	text string
	once sync.Once
	made *regexp.Regexp
}

// list are the rows, each as a pattern; none, nil.
func (r *rows) list() []string {
	if r.text == "" {
		return nil
	}
	list := strings.Split(inRows().Replace(r.text[1:len(r.text)-1]), "\n")
	for i, row := range list {
		if row[0] != '^' {
			list[i] = `\b` + row
		}
	}
	return list
}

//go:noinline
func (r *rows) match(clause string) bool {
	r.once.Do(func() {
		if list := r.list(); list != nil {
			r.made = regexp.MustCompile(strings.Join(list, "|"))
		}
	})
	return r.made != nil && r.made.MatchString(clause)
}

// undoing tells a clause that takes back what can hurt, or says that it was not so.
var undoing = pattern{expr: `^ ?(i |we )?(clear|replac|remov|unplug|unblock|open|free|mend|fix|correct|took|undid|renew|set right|found|no |not |did not|never)`}

// gone tells a clause of a danger that is no more, or never was.
var gone = pattern{expr: `\b(mended|repaired|fixed|cured|gone|cleared|tested (good|tight|ok)|no longer|no more|ruled out|any ?more|not|never|without|nothing|free of)\b|n't\b`}

// wordings are those of the findings of alarms, each with a space on both sides, and
// behind them the words without one of which each is not looked for, and those beside them.
var wordings = sync.OnceValue(func() [][]string {
	out := make([][]string, len(alarms), len(alarms)+len(alarms)+len(alarms))
	for i := range alarms {
		f, _ := cause.Lookup(alarms[i].Finding)
		for _, w := range f.Words {
			if alarms[i].in != nil || i >= len(inAny) {
				break // they are looked for once, in all
			}
			out[i] = append(out[i], plain(w))
		}
		out = append(out, strings.Split(alarms[i].quick, "|"))
	}
	for i := range alarms {
		out = append(out, strings.Split(alarms[i].beside, "|"))
	}
	return out
})

// fillers say nothing that a danger depends on.
var fillers = strings.Fields("the a an its it's is was are were has had have been now still very his their")

// typed are words as they are typed in a hurry, by those that the wordings have.
var typed = sync.OnceValue(func() map[string]string {
	return lexicon(`breaker brkr bkr|ground gnd grnd grd|overload ol|disconnect disco|junction jbox|with w|and n|switch sw|emergency emerg|element elem elems|terminal term|third 3rd|guard grille|detector det|interlock intlk interlk|reversed rev|transformer xfmr trafo|board pcb|cabinet cab|stick voltstick`)
})

// plain are the words of a clause that are no fillers, with a space on both sides.
func plain(clause string) string {
	out := " "
	for _, w := range cause.Fold(clause) {
		if full := typed()[w]; full != "" {
			w = full
		}
		if !slices.Contains(fillers, w) {
			out += w + " "
		}
	}
	return out
}

// Alarms gives the dangers that a text speaks of, in an appliance; of work, clauses that
// begin with a word of mending tell of none.
func Alarms(text string, in *Appliance, work bool) []*Alarm {
	var out []*Alarm
	if text = strings.ToLower(spelt(text[:min(len(text), MostBytes)])); !anyAlarm().in(" " + text + " ") {
		return nil
	}
	if strings.Contains(text, "w/") {
		text = withs.Replace(text)
	}
	said := wordings()
	tame := in.Tame(text)
	clauses := Clauses(cause.Calmed(text))
	for n, clause := range clauses {
		mends := work && mending.is(clause)
		if none := noneOf.get(); none.MatchString(clause) || n+1 < len(clauses) && none.MatchString("checked? "+clauses[n+1]) && (looksFor.is(clause) || clauses[n+1] == "none") {
			continue
		}
		if (!mends || putting.is(clause)) && (oversized(clause) || exceeds(clauses[n:])) {
			out = append(out, &oversize)
		}
		clause = plain(clause)
		if n+1 < len(clauses) && Has(clauses[n+1], leavings) && leftSo.is(clauses[n+1]) {
			clause += "left "
		}
		for i := range alarms {
			a := &alarms[i]
			if tame && a.Finding == "smoke" || a.in != nil && !a.in(in) || !Has(clause, said[len(alarms)+i]) || a.beside != "" && !Has(clause, said[len(alarms)+len(alarms)+i]) || slices.Contains(out, a) {
				continue
			}
			if a.Finding == "co" && in != nil && in.Unit != "" && !in.Gas && !in.Furnace && (in.Electric || !in.Unsealed) && Has(clause, unwell) && !Has(text, ofFumes) {
				continue
			}
			told := clause
			if a.Finding == "called-unsafe" && strings.Contains(clause, "condemned") {
				if in != nil && !in.Gas && !in.Furnace && condemned.is(clause) && uneconomic.is(text) {
					continue
				}
				told = partCondemned.get().ReplaceAllString(clause, " ")
			}
			if a.unless != nil && a.unless(clause) {
				continue
			}
			if slices.ContainsFunc(strings.Split(clause, " and "), a.done) || !mends && a.spokenOf(told, said[i]) && !a.settled(" "+clauses[max(n-1, 0)]+clause, clauses[n+1:]) && !(n > 0 && wasSo.is(clauses[n]) && mending.is(clauses[n-1])) {
				out = append(out, a)
			}
		}
	}
	if len(out) == 1 && out[0].Finding == "co" && onlyRollout(text) {
		return nil // a device that is out, and no flame that did
	}
	return out
}

// unwell are signs of carbon monoxide that have other reasons where nothing burns, unless
// ofFumes are told of too (common practice).
var (
	unwell  = []string{"headache", "dizzy", "nausea", "sick"}
	ofFumes = []string{" co ", "co-", "co alarm", "co detect", "monoxide", "flue", "chimney", "exchanger", "fumes", "exhaust", "soot", "furnace", "boiler", "ppm"}
)

// condemned tells a clause that calls something condemned and no worse, and uneconomic
// says why what burns no gas is condemned where that is not worth its repair.
var condemned = pattern{expr: `^ ((sealed|whole|complete) )?((unit|machine|appliance|it|system) )?condemned ((as )?(not|un|beyond)[^,]*)?$`}
var uneconomic = pattern{expr: `\bsealed (unit|system)|not worth|n.t worth|\bdeclin|\brefus|econom|beyond .{0,10}repair|not repair|too (dear|old|expensive)|\bscrap|a new (one|unit)|\breplace (the )?(unit|machine|appliance)|\bparts? (nla|obsolete)|\bquot(e|ed|ing|ation)\b|\breplacement\b`}

// partCondemned is what is said of a part that is past its repair, and not of the whole.
var partCondemned = pattern{expr: `\bcondemned ((the|this|its|a|old|both|outdoor|indoor|start|run|drain|inverter|main) )*(comp\w*|sealed (system|unit)|evap\w*|condenser|coil|(\w+ )?(motor|fan|pump)|board|pcb|drum|tub|bearings?|transmission|gear ?box|windings?|timer|module)\b`}

// withs are with and without as they are often typed.
var withs = strings.NewReplacer("w/out", "without", "w/o", "without", "w/", "with ")

// settled reports whether the clauses behind one that tells of a danger take it back:
// what was mended since, what smelt or smoked long ago or as it should, and what can
// hurt whose place was then mended.
func (a *Alarm) settled(clause string, behind []string) bool {
	if len(behind) == 0 {
		return false
	}
	next, past := behind[0], longAgo.is(clause)
	if past && mendedSince.is(next) || a.Finding == "smoke" && (past && noMore.is(next) || asItShould.is(next)) {
		return true
	}
	if a.Finding == "gas-smell" && notHere.is(next) && nextDoor.is(clause) {
		return true
	}
	burnt := a.Finding == "smoke" && !Has(clause, alight) // which cleaning it does not mend
	mends := burnt || a.Finding == "hazard" || a.Finding == "earth-off"
	if mends && mendedIt.is(next) || a.Finding == "smoke" && wasElse.is(next) {
		return true
	}
	for _, c := range behind {
		back := !burnt && Has(c, backOn) && !unheld.is(c) && !notYet.is(c)
		if !mends || !back && (!mending.is(c) || burnt && !renewing.is(c)) {
			continue
		}
		for _, w := range strings.Fields(c) {
			if w == "it" || w == "them" || len(w) > 3 && strings.Contains(clause, " "+w) && !mending.is(w) {
				return true
			}
		}
	}
	return false
}

// alight are words of what burns, or may: what was only burnt is mended with its place.
var alight = []string{"smok", "smou", "smol", "spark", "smell", "odor", " arc", "fire", "flame", "flash", "crackl", "sizzl", "fizz", "glow"}

var (
	longAgo     = pattern{expr: `\b(last (year|month|week|summer|winter|spring|fall|autumn|visit)|(years?|months?|weeks?) (ago|back))\b`}
	mendedSince = pattern{expr: `\b(since|long since|was|were|been|got|then) (replaced|repaired|renewed|fixed|mended|cured|corrected)\b|^(replaced|repaired|fixed|mended) (since|then)\b`}
	noMore      = pattern{expr: `^(but )?(that'?s |that is |it'?s |it is )?(none|no more|nothing|gone|not) ?(now|since|again|any ?more|today)?\b`}
	asItShould  = pattern{expr: `^(this |that |which )?(is )?(quite |all )?(normal|as it should|usual|to be expected|expected)\b`}
)

var (
	// leftSo tells that what was just told of was left as it is, of which one of leavings
	// is; wasSo that it was, before it was mended.
	leftSo   = pattern{expr: `^((<who>|i|we) )?((said|says|told me|wants|wanted|asked) (me )?(to )?)?(left|leave|leaving|declin\w*|refus\w*)\b( (it|them|that|as|so|is|in|on|alone|for|now|there|like|until|today|off|out|open|repair|replacement|to)\b|$)|^(still |it )*?((runs|running|works|in use|used|runs? fine) (on|with) (it|them|that)|in use|used as is|left as is|re-?used|used again|put back( on| in| together)?|still (running|using|works|on))\b`}
	leavings = []string{"left", "leav", "declin", "refus", "run", "work", "use", "put back"}
	wasSo    = pattern{expr: `^((it|which|that|this) )?(was|were|had been)\b`}
	// wasElse tells that what was just told of came from something else; backOn that
	// what was off is on again.
	wasElse = pattern{expr: `^((it|that|this|smell) )?(was|were|is|from|came from|turned out( to be)?) (\w+ ){0,3}?(candle|incense|bbq|barbecue|grill|neighbou?r|spill|grease|food|toast|pizza|popcorn|cook|cigar|fireplace|wood ?stove|paint|dust)`}
	backOn  = []string{"back on", "back in", "guard on", "cover on", "covers on", "guards on", "panel on"}
	// mendedIt tells that what was just told of was mended, without naming it.
	mendedIt = pattern{expr: `^(i |we )?((replac|renew|repair|mend|fix|swapp|chang)\w+( (with|by|for))?|(put|fitt?ed|installed)( in| on)? (a )?new)( (it|them|a|an|the|new|one|ones|now|today|all|both|same))*$`}
	// A neighbour's smell of gas that is said not to be here.
	nextDoor = pattern{expr: `\b(neighbou?rs?|next door|across the (street|road|hall))\b`}
	notHere  = pattern{expr: `^(it'?s |it is )?not (here|ours|(in |at |from )?(our|this|her|his|their|the client'?s) (house|home|place|flat|apartment|unit|side)|from here|at this (house|address))\b`}
)

// oversize is a fuse or breaker of more amps than what it feeds can carry.
var oversize = Alarm{Finding: "hazard"}

// putting tells a clause of a fuse or breaker put in, which is no mending of one too big.
var putting = pattern{expr: `^(i |we )?(put|fitt?ed|install\w*|new)\b`}

var fuses = []string{"fuse", "breaker", "bkr", "brkr"}

var fusedFor = pattern{expr: `\b(?:#?(\d{1,2}) ?(ga(?:uge)?|awg)(?: wire)? (?:on|to|for|with|at|fed by) (?:an? |the )?(\d{1,3}) ?a(?:mps?)? (?:fuse|breaker|bkr|brkr)s?)|\b(\d{1,3}) ?a(?:mps?)? (?:fuse|breaker|bkr|brkr)s? (?:is |was |are )?(where|on|should be|instead of|in an?|feeding|feeds|for) (?:an? |the )?#?(\d{1,3})( ?a\b| ?amp| ?awg| ?ga| wire)?|\b(?:fuse|breaker|bkr|brkr)s? (?:is )?(\d{1,3}) ?a(?:mps?)? (on) (?:an? |the )?#?(\d{1,3})( ?a\b| ?amp| ?awg| ?ga| wire)`}

// wireAmps is what protects a copper wire of a gauge at most (NEC 240.4(D), from memory).
var wireAmps = map[int]int{14: 15, 12: 20, 10: 30}

// oversized reports whether a clause tells of a fuse or breaker too big for what it
// stands for, or for the wire that it is on.
func oversized(clause string) bool {
	if !Has(clause, fuses) {
		return false
	}
	m := fusedFor.get().FindStringSubmatch(clause)
	if m == nil {
		return false
	}
	if m[1] != "" {
		size, _ := strconv.Atoi(m[1])
		return more(m[3], wireAmps[size])
	}
	m = m[3:]
	most, _ := strconv.Atoi(m[3] + m[7])
	switch unit := strings.TrimSpace(m[4] + m[8]); {
	case unit == "wire" || unit == "awg" || unit == "ga":
		most = wireAmps[most]
	case m[2] == "on" && unit == "" || m[2] == "instead of":
		return false
	}
	return more(m[1]+m[5], most)
}

// tooMany tells of amps and the gauge of a wire, or of those of a fuse and the most that a
// plate allows; limiting are words of which it has one.
var (
	tooMany = pattern{expr: `\b(\d{2,3}) ?a(?:mps?)?\b(?: \w+){0,3}? on (?:an? |the )?#?(\d\d)\b|(?:#(\d\d)|\b(\d\d)(?: ?ga(?:uge)?| ?awg|[-/][23]))\b(?: \w+){0,3}? (?:on|to|for|at|fed by) (?:an? |the )?(\d{2,3}) ?a(?:mps?)?\b` +
		`|(?:\b(\d{2,3}) ?a?(?:mps?)? (?:fuse|breaker|b?rkr)s?|(?:fuse|breaker|b?rkr)s? (?:is )?(\d{2,3}))\b[^\d]{0,40}(?:\b(?:plate|max\w*|mocp|mop|tag|says)\b[^\d]{0,20}(\d{2,3})|(\d{2,3}) ?a? (?:per|on|by) (?:the )?(?:tag|plate))\b`}
	limiting = []string{"#", "-2", "-3", "/2", "/3", " ga", "ga wire", "awg", "plate", "max", "mocp", "mop", "tag", "says"}
)

// exceeds reports whether amps are too many for the wire that they are told of with, or
// for what the plate allows a fuse or breaker.
//
//go:noinline
func exceeds(clauses []string) bool {
	text := strings.Join(clauses[:min(2, len(clauses))], ", ")
	if !Has(text, limiting) {
		return false
	}
	m := tooMany.get().FindStringSubmatch(text)
	if m == nil {
		return false
	}
	most, _ := strconv.Atoi(m[2] + m[3] + m[4] + m[8] + m[9])
	if m[8]+m[9] == "" {
		most = wireAmps[most]
	}
	return more(m[1]+m[5]+m[6]+m[7], most)
}

//go:noinline
func more(amps string, most int) bool {
	is, _ := strconv.Atoi(amps)
	return most > 0 && is > most
}

// noneOf tells a clause that asks and says no, looksFor one of what was looked for.
var (
	noneOf   = pattern{expr: `\?\s*(\w+ ){0,3}(no|none|nope|nil|negative|none found|nothing|0 ?ppm|zero|passed)$`}
	looksFor = pattern{expr: `\b(check\w*|test\w*|asked|looked|search\w*|any|afraid|worried|feared)\b|\?$`}
)

// spokenOf reports whether a clause speaks of the danger, by its pattern or by a
// wording of its finding, and does not say that it is none or no more.
func (a *Alarm) spokenOf(clause string, wordings []string) bool {
	said := a.said.match(clause)
	for i := 0; i < len(wordings) && !said; i++ {
		said = strings.Contains(clause, wordings[i]) && !strings.Contains(clause, " no"+wordings[i])
	}
	return said && !a.harmless.match(clause) && (a.absent || !gone.is(clause))
}

// done reports whether a clause tells of having made the danger.
func (a *Alarm) done(clause string) bool {
	return a.acts.match(clause) && !undoing.is(clause)
}

// anyAlarm are the words without one of which no danger is spoken of.
var anyAlarm = sync.OnceValue(func() *finder {
	out := append([]string{" ol ", "#", "gnd", "grnd", "grd", "disco ", "jbox", "e-stop", "grille", "brkr", "awg", "gauge", "ga wire"}, fuses...)
	for _, quick := range wordings()[len(alarms) : len(alarms)+len(alarms)] {
		out = append(out, quick...)
	}
	return newFinder(out)
})

// MadeSafe reports whether words begin with how a unit is made safe.
func MadeSafe(text string) bool { return madeSafe.is(text) && !NotSafe(text) }

var madeSafe = pattern{expr: `(?i)^(it |unit |power |plug )?(is |was )?(un ?plugged|isolated|locked (out|off)|tagged out|disconnected( it| the unit| power|$|,)|discharged|shut ?off|(switched|turned) off|killed (the )?power|pulled (the )?(plug|disconnect)|power (is )?off|plug (is )?(out|pulled))\b`}

// NotSafe reports whether words are no statement that a unit was made safe.
func NotSafe(text string) bool { return notSafe.is(text) }

var notSafe = pattern{expr: `(?i)^(no|not|un ?safe)$|\bnot (yet|safe|dead|isolated|locked|unplugged|discharged|off|proved)\b|\b(still|is|are) (on|live|hot|plugged|energi[sz]ed|powered|charged)\b|\bpower( is)? on\b`}

// Decides reports whether a text is of what the client wants to be done.
func Decides(text string) bool { return decides.is(text[:min(len(text), LongClause)]) }

var decides = pattern{expr: `(?i)\b(client|customer|owner|tenant|landlord)\b.{0,40}\b(declin|refus|agree|accept|approv|decid|want|chose|choos|prefer|goes|go ahead|buy|bought|will)|^declin`}
