// Package said reads the own words of client and technician. Words go in and
// statements come out: the kind of appliance and its complaint, work done or put
// off, a part renewed, a protective device taken out of its circuit, a reason to
// stop, an alarm. They raise cautions and marks for the supervisor and accuse
// nobody; what no list here holds is quiet. All its lists are common practice.
package said

import (
	"regexp"
	"slices"
	"strings"
	"sync"
	"sync/atomic"
)

// So much of one line is read: patterns are dear, and nobody writes more of one
// piece of work.
const (
	MostClauses = 32
	MostBytes   = 4000 // of a line
	LongClause  = 300  // bytes of a clause
)

// Lazily is a pattern that is made when it is first asked for. <who> and the like
// stand for the words in short.
//
//go:noinline
func Lazily(expr string) func() *regexp.Regexp {
	return sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(short().Replace(expr)) })
}

// pattern is the same without a closure, for tables and where there are many.
type pattern struct {
	expr string
	made atomic.Pointer[regexp.Regexp]
}

//go:noinline
func (p *pattern) get() *regexp.Regexp {
	if p.made.Load() == nil {
		p.made.Store(regexp.MustCompile(short().Replace(p.expr)))
	}
	return p.made.Load()
}

// short are the words that many patterns have, by what stands for them there.
var short = sync.OnceValue(func() *strings.Replacer {
	return strings.NewReplacer(
		`<who>`, `(client|cust|customer|cx|consumer|owner|homeowner|tenant|resident|landlord|landlady|he|she|they|who)`,
		`<it>`, `(unit|machine|appliance|fridge|freezer|refrigerator|dryer|washer|dishwasher|oven|range|it)`,
		`<left>`, `(?:it|the|unit|machine|appliance|fridge|freezer|refrigerator|dryer|washer|dishwasher|oven|range|switched|turned)`,
		`<part>`, `(?:part|device|kit|relay|overload|capacitor|cap|compressor|fan|motor|heater|element|board|pcb|control|sensor|thermistor|thermostat|valve|seal|gasket|switch|timer|belt|pump|fuse|cord|igniter|bearing|magnetron|module|contactor)`,
		`<trade>`, `(electrician|sparky|hvac( (tech\w*|contractor|company|firm))?|(gas|refrigeration|licen[sc]ed|approved) (tech\w*|contractor|person|engineer|firm|installer|mechanic)|gas ?fitter|plumber|builder|gas supplier|specialist|certified (person|tech\w*|man|firm)|sealed.system (tech\w*|man|firm))`,
		`<price>`, `(quote|quotation|estimate|est|price)`,
		`<the>`, `(the |a |its |an |this )?`,
		`<place>`, `((back|rear|front|top|bottom|lower|upper|access|side|service|kick|terminal|relay|burner|blower|evap\w*|cond\w*) )*`,
		`<unit>`, `(unit|machine|appliance|fridge|freezer|refrigerator|refrig|dryer|washer|dishwasher|oven|range|stove|cooker|ac|cabinet)`,
		`<cover>`, `(cover|panel|back|top|front|lid|kick ?plate|toe ?kick|plinth|grille?|screw|shroud)`,
		`<mend>`, `((replac|renew|swapp|exchang|chang|clean|tighten|seal|solder|braz|repair|mend|fix|clear|unblock|unclogg|adjust|straighten|rewir|recharg|evacuat|defrost|fre|lubricat|oil|greas|crimp|levell?|flush|descal|unjamm|fitt|install|reconnect|remov|pull)ed|clean|replace|fit|tighten|unblock)\b`, // words of work for certain
	)
})

// Has reports whether a text holds one of the words, which are in lower case.
func Has(text string, words []string) bool {
	text = strings.ToLower(text)
	for _, w := range words {
		if strings.Contains(text, w) {
			return true
		}
	}
	return false
}

var between = pattern{expr: `[,;:]|\.\s|\b(but|then|while|because)\b`}

// Clauses are the clauses of a text, in lower case.
func Clauses(text string) []string {
	text = strings.ToLower(text[:min(len(text), MostBytes)])
	if strings.Contains(text, "nt ") || strings.HasSuffix(text, "nt") {
		text = curt.get().ReplaceAllString(text, "${1}n't")
	}
	list := between.get().Split(text, MostClauses+1)
	if len(list) > MostClauses {
		list = list[:MostClauses]
	}
	for i := range list {
		list[i] = strings.TrimSpace(list[i])
		list[i] = list[i][:min(len(list[i]), LongClause)]
	}
	return slices.DeleteFunc(list, func(s string) bool { return s == "" })
}

// curt are denials without their apostrophe.
var curt = pattern{expr: `\b(do|does|did|could|would|wo|ca|is|was|are|were|has|have)nt\b`}

// notDone tells a clause of work that was not done: ordered, quoted, wished
// for, not yet.
var notDone = sync.OnceValue(func() *regexp.Regexp {
	const works = `(replac|fit|chang|done|do\b|install|swap|repair|renew|exchang|get\b|buy|find|order)`
	return regexp.MustCompile(`^(order|told|explain|show|will\b|to |need|no |not )` +
		`|(\bnot|n.t) (be |been |get |have |yet |want )*` + works + `|\bnot yet\b|\byet to\b|\bon order\b|\bto (be|have|get) (it |the |a |\w+ )?(replac|fit|order|chang|new\b|install|swap)|\b(has|have|had) to\b` +
		`|\bto (replace|fit|change|install|swap|exchange|renew)\b` +
		`|\b(must|should|would|could|cannot|can.t|may|might|ought|will)\b.{0,16}\b(be|get|have|need|` + works + `)` +
		`|\b(wants?|wanted|wish\w*|prefers?|declin\w*|refus\w*|reject\w*|discuss\w*|talked|spoke|quot\w+|estimat\w+|recommend\w*|advis\w+|suggest\w*|propos\w+|offer\w*)\b` +
		`|\b(ordered|ordering|request\w*|reserv\w+|schedul\w+|booked|plan(s|ned)?|wait\w*|arriv\w+|com(es|ing) (on|next|in|by|tomorrow)|deliver\w*|price|mind|tomorrow|next (visit|week|time|month))\b`)
})

// notWork tells a clause of what mends nothing: tests, looks, talk, waiting, making
// safe, opening up and putting back as it was.
var notWork = pattern{expr: `^(re-?)?set (the |its )?(clock|time)\b|^(loaded|dried|heated|cooled) |^(tagged|labell?ed|red.?tagged|aired|ventilated|opened (the |all )?(windows?|doors?)|(shut|closed|turned off|isolated) (off )?(the |its )?(gas|cock|valve|tap|water|supply)|(passed|referred|handed)( it| the (call|job|case|unit))?( on| over)? to)\b|^(nobody|no one|no work)\b|^(customer|client|owner|tenant) (not|is|was|has|had|did|does|will|would|says|said|wants|asked|called|agreed|away|gone|absent|declin|refus)|^(re-?)?(waited|tried|test|check|look|inspect|measur|search|listen|felt|watch|noted|read |show|called|drove|discharg|unplug|isolat|locked out|made safe|leak search|found |same\b|still\b|nothing\b|none\b|n/a\b)` +
	`|^(re-?)?(diagnos|verif|confirm|observ|monitor|witness|examin|assess|evaluat|identif|determin|discover|notic|smell|suspect|trac|troubleshoot|ohm|megg|meter|amp clamp|clamp|log|photo|photograph|pic|record|document|inform|instruct|educat|demonstrat|train|consult|email|text|messag|phon|research|retriev|locat|dis-?assembl|dismantl|assembl)(e?d|ged|ied|ing|s|y|e)?\b` +
	`|^(saw|heard|amped|timed|snapped|wrote|contacted|rang|walked|went|arrived|travell?ed|parked|returned|invoiced|collected|waived|picked up|troubleshot)\b` +
	`|^(took|made) (a |the |some )?(photo|pic|video|snap|reading|measurement|temp|note)|^(switched|turned) (it |the |unit |power |breaker )*(off|on)\b|^let (it|the machine|the unit) (cool|rest|stand|settle|run|level)` +
	`|^(opened|removed|took off|pulled( out)?) (up )?(the )?(back|rear|front|top|access|kick)? ?(cover|panel|unit|fridge|refrigerator|freezer|machine|appliance|cabinet|relay|start device|overload|plug)s?$` +
	`|^(re)?ran( (it|them|the|an?|one|two|both|all|full|complete|short|quick|long|empty|test|wash|dry|drying|bake|broil|self|service|diagnostics?|error|code|load|cycles?|modes?|tests?|program\w*|through|in|on|for|at|about|over|half|hours?|hrs?|h|min\w*|ok|fine|good|well|again|burners?|elements?|comp\w*|fans?|motors?|pump|heat|cool|high|low|speeds?|rinse|spin|drain|fill|\d+\w*|<unit>))*$` +
	`|^(moved|put|pushed|slid|rolled|pulled|set|placed|took) (it |them |<the><unit> |<the><place><cover>s? )?(back|out|up|away|off|down|apart|aside|together)( (on|in|up|out|again|together|(into |in )?(place|position)|(against|to|from) (the )?wall))*$` +
	`|^(took|put|pulled) (off|back|on|up|out|apart) <the><place>(<cover>|<unit>|drum)s?( on| off)?$|^(removed|opened|re-?fitted|re-?installed|lifted|closed|undid|unscrewed|dropped) (up )?<the><place>(<cover>|it|<unit>)s?( up)?$|^strip\w* (it|<the><unit>)( down)?$` +
	`|^(plugged (it |<the><unit> )?back in|power(ed)? (it |unit )?(back )?(up|on|off|down)|(restor|reconnect|disconnect|cut|kill)\w* <the>(power|supply|mains|electric\w*)|turned <the>power|(clear|pull)\w* (the )?(error |fault )?codes?|enter\w* \w+ mode|put (it |unit )?in(to)? \w+ mode|(attach|hook|connect|put|fit|install)\w* (up )?(the )?(gauges|manifold|meter|clamp|probe|thermometer|(data )?logger)s?|(put|placed|set|left) (a |the )?(probe|thermo\w+|meter|card|note)|sent (the )?(photo|pic|email|mail|message|text|info|link|model))\b` +
	`|^(clean\w* up( (the |my )?(work ?)?(area|site|mess|floor|after\b.*))?|(set|packed|tidied|swept|mopped) up\b.*|(empt|unload|drain|bail|mopp|clear)\w* (out )?<the>(water|food|dishes|clothes|tub|drum|freezer|fridge|load|laundry)( out| by hand| from .*)?|moved (the )?(food|boxes|stuff|things|clothes|furniture)\b.*|signed (in|out)|closed out|put on gloves)$` +
	`|^swap\w* .*\b(compare|see|check|diagnose)\b|^(swapp|fitt|put|install|plugg|hook)\w* (in |up |on )?(a |the )?test (relay|cord|device|cap|lamp|light|board)` +
	`|\b(for|to|as) (a |the )?test(ing)?\b`}

// endsMended tells a clause that ends with work; onlySeen one that names a thing
// and its test, and mended the work in it.
var (
	endsMended = Lazily(`<mend>$`)
	onlySeen   = Lazily(`^(\w+ ){1,3}(checked|tested|verified|measured|inspected|confirmed|diagnosed|photographed|explained|taken|monitored|observed)( (ok|good|fine|out))?$`)
	mended     = Lazily(`\b(new\b|<mend>)`)
	alsoDone   = Lazily(`\band\b|[&+]`)
)

// tidying are the verbs of cleaning up and of carrying, and what they are done to when
// they mend nothing; clears are done to anything that was taken out.
const (
	tidying = " hauled wiped mopped swept vacuumed hoovered tidied cleaned took takes taken put carried plugged cover panel lid "
	clears  = " coffee lunch chatted bagged binned dumped trashed boxed disposed "
	tidied  = " the a my all of and it them up down out away off back in on again over with me round around from to under behind floor floors cabinet site area mess place outside worktop counter kitchen bench room old failed part parts tools tool rubbish packaging box boxes trash garbage racks rack shelf shelves drawer drawers food sill oven client customer van truck sheet sheets dust unit machine cover covers panel panels lid access rear front top bottom side service screws "
)

func oneOf(list, word string) bool { return strings.Contains(list, " "+word+" ") }

// tidies reports whether a clause is of cleaning up, of carrying, or of shutting what
// was open. Who cleans a unit may mend it; who names another thing does.
func tidies(c string) bool {
	words := strings.Fields(c)
	if len(words) == 0 || oneOf(clears, words[0]) {
		return len(words) > 0
	}
	if !oneOf(tidying, words[0]) || len(words) == 1 && !Has(c, []string{"mopped", "swept", "tidied", "hoovered", "vacuumed"}) || words[0] == "cleaned" && Has(c, []string{" it", "unit", "machine", "cover", "panel", "cabinet"}) {
		return false
	}
	if (words[0] == "took" || words[0] == "carried" || words[0] == "hauled") && Has(c, []string{" old "}) && !Has(c, []string{" and ", "new"}) {
		return true // with what it is called
	}
	return !slices.ContainsFunc(words[1:], func(w string) bool { return !oneOf(tidied, w) })
}

var praise = pattern{expr: `^(all |now |runs? |works? |it is |everything )*(fine|ok|okay|good|well|great|working|perfect)( now)?$|^no (problems?|trouble|faults?|issues?|errors?)$`}

// mendsNothing reports whether a clause is of nothing that mends, to its end.
func mendsNothing(c string) bool {
	if tidies(c) || praise.get().MatchString(c) {
		return true
	}
	parts := alsoDone().Split(c, MostClauses)
	if !notWork.get().MatchString(c) && !notWork.get().MatchString(strings.TrimSpace(parts[0])) {
		return onlySeen().MatchString(c) && !mended().MatchString(c)
	}
	for i, part := range parts {
		if part = strings.TrimSpace(part); i > 0 && Works(part) && !notWork.get().MatchString(part) {
			return false
		}
	}
	return !endsMended().MatchString(c)
}

// Stated gives the clauses of a text that say what was mended: they neither put
// work off nor are of something else.
func Stated(text string) []string {
	return slices.DeleteFunc(Clauses(text), func(c string) bool {
		return notDone().MatchString(c) || mendsNothing(c) || onlyBridges(c) || states.get().MatchString(c) && !Works(c)
	})
}

// onlyBridges reports whether a clause is of a bridge put on or taken off and no more:
// that is a test, and no repair.
func onlyBridges(clause string) bool {
	for _, part := range strings.Split(clause, " and ") {
		if !bridging.get().MatchString(part) {
			return false
		}
	}
	return true
}

var bridging = pattern{expr: `^(i |we )?(jumper(ed)?|jumped|by-?passed|bridged)\b|^(removed?|took|take|pulled|lifted|disconnected)( off| out| away)? (the |both |all )?(\w+ ){0,3}(jumpers?|by-?pass|bridge|cheater|adapter|(test|clip) leads?)\b` +
	`|^(jumpers?|by-?pass|bridge|cheater|adapter)( wires?| leads?| cord)? (is |was |are |now )*(off|out|removed)\b`}

var mending = pattern{expr: `^(i |we )?(re(plac|new|pair|mad|fitt|wir|mov|seal|tight|terminat|connect)\w*|chang\w+|fitt?\w*|new|cut|clean\w*|tighten\w*|swapp\w*|install\w*|put|seal\w+|mended|fixed|clear\w+)\b`}

// states tells a clause of how something was found.
var states = pattern{expr: `\b(grounded|burnt( out)?|burned out|seized|shorted|failed|bad|dead|worn( out)?|broken|weak|leaking|stuck|tripped|locked up|jammed|blown|cracked|dirty|clogged|iced( up)?)$`}

// Undone reports whether all of a text is of work that was not done.
func Undone(text string) bool { return len(Stated(text)) == 0 }

// Tells reports whether a word, in the letters of no name, is one that goes on
// from a name to what it did or is.
func Tells(word string) bool { return tells.get().MatchString(word) }

var tells = pattern{expr: `^(declin\w*|refus\w*|reject\w*|agree\w*|accept\w*|approv\w*|wants?|wanted|decid\w+|says|said|is|was|has|had|does|did|will|would|not|left|won.?t|can.?t|cannot|unplugged|tagged|runs|running|stopped|called|asked|paid|pays|gone|dead)$`}

// Works reports whether a clause begins with a word of work.
func Works(clause string) bool { return works.get().MatchString(clause) }

var works = pattern{expr: `^(i |we )?(\w+ed|new|put|fit|set|cut|took|made|bent|rewound|blew|swept|hung|reset|got rid|thaw|clean|replace|tighten)\b`}
