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

// pattern is the same without a closure, for tables and where there are many. It is of
// one way of saying, or a table of them, a row each: a row begins where a word does.
type pattern struct {
	expr string
	made atomic.Pointer[regexp.Regexp]
}

//go:noinline
func (p *pattern) get() *regexp.Regexp {
	if p.made.Load() == nil {
		p.made.Store(regexp.MustCompile(strings.Join(p.rows(), "|")))
	}
	return p.made.Load()
}

// is reports whether a text is of it.
//
//go:noinline
func (p *pattern) is(text string) bool { return p.get().MatchString(text) }

// rows are the ways of saying, each as a pattern.
func (p *pattern) rows() []string {
	expr := short().Replace(p.expr)
	if expr[0] != '\n' {
		return []string{expr}
	}
	rows := strings.Split(expr[1:len(expr)-1], "\n")
	for i, row := range rows {
		if row[0] != '^' {
			rows[i] = `\b` + row
		}
	}
	return rows
}

// kin are machines that many patterns name, here once as they take room.
var kin = "fridge|freezer|refrigerator|dryer|washer|dishwasher|oven|range"

// short are the words that many patterns have, by what stands for them there.
var short = sync.OnceValue(func() *strings.Replacer {
	return strings.NewReplacer(
		`<who>`, `(client|cust|customer|cx|consumer|owner|homeowner|tenant|resident|landlord|landlady|he|she|they|who)`,
		`<it>`, `(unit|machine|appliance|`+kin+`|it)`,
		`<named>`, `(`+kin+`|dish ?washer|washing machine|ice ?maker|stove|cooktop|hob|microwave|furnace|boiler|water heater|heat pump|ac|dispos\w+)s?\b`,
		`<left>`, `(?:it|the|unit|machine|appliance|`+kin+`|switched|turned)`,
		`<part>`, `(?:part|device|kit|relay|overload|capacitor|cap|compressor|fan|motor|heater|element|board|pcb|control|sensor|thermistor|thermostat|valve|seal|gasket|switch|timer|belt|pump|fuse|cord|igniter|bearing|magnetron|module|contactor)`,
		`<trade>`, `(electrician|sparky|hvac( (tech\w*|contractor|company|firm))?|(gas|refrigeration|licen[sc]ed|approved) (tech\w*|contractor|person|engineer|firm|installer|mechanic)|gas ?fitter|plumber|builder|gas supplier|specialist|certified (person|tech\w*|man|firm)|sealed.system (tech\w*|man|firm))`,
		`<price>`, `(quote|quotation|estimate|est|price)`,
		`<the>`, `(the |a |its |an |this )?`,
		`<fit>`, `(replac|fit|chang|done|do\b|install|swap|repair|renew|exchang|get\b|buy|find|order)`,
		`<live>`, `(the )?(breaker|power|mains|water|gas|plug|cord|switch|disconnect|supply|tap)`,
		`<more>`, `( (kit|assy|assembly|new|oem|left|right|upper|lower|inner|outer|front|rear|brass|copper|\S*\d\S*))*`,
		`<subj>`, `((the|a|it|it's|is|now|still|again|just|also|then|and|that|but|unit|machine|appliance|outdoor|indoor|`+kin+`|stove|furnace|ac|comp\w*|drum|tub|fan|motor|burners?|elements?|pump|blower|broiler|bake|flame|pilot|heat|heater|door|lid|ice ?maker|air|water|client|customer|cust|owner|tenant|lady|she|he|says|calls|called|rang|phoned|texted|back) )*`,
		`<does>`, `((re-?)?start|run|heat|cool|spin|drain|fill|dry|light|ignite|glow|work|turn|agitat|tumbl|pump|freez|hold|latch|defrost|com(e|ing) on|kick|go|power|shut|switch|stop|respond)(s|ing)?( (on|off|in|out|up|over|down|at all|again|now|right|well|properly|anymore|yet|by itself|itself|temp\w*|pressure)\b|$)`,
		`<place>`, `((back|rear|front|top|bottom|lower|upper|access|side|service|kick|terminal|relay|burner|blower|evap\w*|cond\w*) )*`,
		`<unit>`, `(unit|machine|appliance|fridge|freezer|refrigerator|refrig|dryer|washer|dishwasher|oven|range|stove|cooker|ac|cabinet)`,
		`<where>`, `(on|in|up|out|again|together|(into |in )?(place|position)|(against|to|from) (the )?wall)`,
		`<cover>`, `(cover|panel|back|top|front|lid|kick ?plate|toe ?kick|plinth|grille?|screw|shroud)`,
		`<newly>`, `(?:new|replaced|renewed|re-?fitted|fitted|installed|put)`, `<isnew>`, `(?:replaced|renewed|re-?fitted|fitted|back|in place)\b`, `<now>`, `(?: (?:is|was|now|all))*`,
		`<tpr>`, `(?:relief(?: valve)?|(?:t ?& ?p|tpr|prv)(?: valve)?)`, `<plug>`, `(?:plug|cap|cork)`, `<wires>`, `(?:wire|whip|cord|cable|lead)s?`, `<antitip>`, `(?:anti[ -]?tip|tip(?:ping)? bracket)`,
		`<bridge>`, `(jumper|by-?pass|bridge|link|strap|shunt|clip|foil|tape|magnet|wedge|cheater|adapt[eo]r|tie|nail|coin)s?`,
		`<holder>`, `(?:magnet|zip ?tie|ty-?rap|tape|nail|wire ?nut|foil|copper|slug|penny|coin|stick|bungee|rubber band|clamp|wedge|paper ?clip)s?`,
		`<mach>`, `(comp\w*|cond\w*( fan)?|evap\w*( fan)?|(outdoor|outside|indoor|cooling|freezer|fridge) (fan|unit)|fans?( motor)?|blower|(water |circ\w* )?pump|unit|machine|ice ?maker|motor|system|ac|a/c|fridge|freezer|cooler|cabinet|it)`,
		`<goods>`, `(milk|butter|meat|food|fish|chicken|(ice ?)?cream|ice ?(pop|cube|lol\w*)s?|pop(sicle)?s|frozen (\w+ )?|veg\w*|grocer\w*|produce|beer|drinks?|bottles?|sodas?|juice|yog\w*|cheese|salad|lettuce|stuff|goods|contents|products?|stock|dairy|pizza|peas|fries|bread|dough|vaccines?|everything( in( the)? \w+)?|all)`,
		`<chilled>`, `(freezer|fridge|refrigerator|box|cooler|cabinet|case|compartment|section|walk-?in|reach-?in|unit|inside|drawer|temp\w*|shel\w+|it)`,
		`<rooms>`, `(house|home|(\w+ )?rooms?|bedrooms?|upstairs|downstairs|office|kitchen|store|shop|lounge|place|inside|indoors|apartment|flat|condo|floor|studio|attic|den|basement|it)`,
		`<being>`, `( (is|are|was|'?s|has|have|now|all|still|again|just|too|very|so|quite|a bit|pretty|really|back|come|comes|coming|came|out|feels?|turn\w*|went|gone|go|goes|going|get\w*|got|stays?|staying|been|be|already|half|partly|in the \w+|in \w+))*`,
		`<whom>`, `((the|our|my|his|her|their|this|a|an) )*(cust\w*|clients?|cx|consumer|owners?|home ?owner|tenants?|residents?|land(lord|lady)|lady|guy|man|woman|husband|wife|son|daughter|boss|manager|chef|cook|bar|bartender|staff|super|caretaker|neighbou?r|mr|mrs|he|she|they)`,
		`<said>`, `(rang|rung|rings|phon\w+|call(s|ed)|text(s|ed)?|e?mail(s|ed)|messag\w+|wrote|writes|says?|said|report(s|ed)?|complain(s|ed|ing)?|claims?|tells|told|states?|feels|thinks|noticed|notices|swears|found|finds|hears|heard|reckons|insists)`,
		`<there>`, `( (outside|outdoors?|inside|indoors?|on the roof|out there))?`,
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
	list := []string{text}
	if strings.ContainsAny(text, ",;:.") || Has(text, []string{"but", "then", "while", "because"}) {
		list = between.get().Split(text, MostClauses+1)
	}
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

// endsMended tells a clause that ends with work; onlySeen one that names a thing
// and its test, and mended the work in it.
var (
	endsMended = Lazily(`<mend>$`)
	onlySeen   = Lazily(`^(\w+ ){1,3}(checked|tested|verified|measured|inspected|confirmed|diagnosed|photographed|explained|taken|monitored|observed)( (ok|good|fine|out))?$`)
	mended     = Lazily(`\b(new\b|<mend>)`)
	alsoDone   = Lazily(`\band\b|[&+]`)
)

var praise = pattern{expr: `^(all |now |runs? |works? |it is |everything )*(fine|ok|okay|good|well|great|working|perfect)( now)?$|^no (problems?|trouble|faults?|issues?|errors?)$`}

// mendsNothing reports whether a clause is of nothing that mends, to its end.
func mendsNothing(c string) bool {
	if tidies(c) || praise.is(c) {
		return true
	}
	parts := alsoDone().Split(c, MostClauses)
	if !slices.ContainsFunc(parts, func(p string) bool { return !tidies(strings.TrimSpace(p)) }) {
		return true
	}
	if !idle(c) && !idle(strings.TrimSpace(parts[0])) {
		return onlySeen().MatchString(c) && !mended().MatchString(c)
	}
	for i, part := range parts {
		if part = strings.TrimSpace(part); i > 0 && Works(part) && !idle(part) {
			return false
		}
	}
	return !endsMended().MatchString(c)
}

// Stated gives the clauses of a text that say what was mended: they neither put
// work off nor are of something else, as what a test showed is.
func Stated(text string) []string {
	seen := false // the clause before is of what mends nothing
	return slices.DeleteFunc(Clauses(text), func(c string) bool {
		if notDone().MatchString(c) || onlyBridges(c) || states.is(c) && !Works(c) {
			return true
		}
		seen = mendsNothing(c) || seen && !Works(c) && !mended().MatchString(c)
		return seen
	})
}

// onlyBridges reports whether a clause is of a bridge put on or taken off, or of a
// device taken out of its circuit, and no more: that is no repair.
func onlyBridges(clause string) bool {
	whole := takesOut(clause)
	for _, part := range strings.Split(clause, " and ") {
		if renewing.is(part) || !bridging.is(part) && !(whole && (handles.is(part) || !mending.is(part) && takesOut(part))) {
			return false
		}
	}
	return true
}

// handles tells a clause of what is done to a device and its wires when it is taken out.
var handles = pattern{expr: `^(i |we )?(took|take|removed?|pulled|cut|snipped|unplugged|disconnected|left|joined|twisted|tied|wired|spliced|soldered|crimped|nutted|connected|shorted|ran|taped|held|jammed|wedged|put|stuck|disabled|defeated|eliminated|linked|strapped|wrapped|looped)\b`}

var bridging = pattern{expr: `^(i |we )?(jumper(ed)?|jumped|by-?passed|bridged)\b|^(removed?|took|take|pulled|lifted|disconnected)( off| out| away)? (the |both |all )?(\w+ ){0,3}(jumpers?|by-?pass|bridge|cheater|adapter|(test|clip) leads?)\b` +
	`|^(jumpers?|by-?pass|bridge|cheater|adapter)( wires?| leads?| cord)? (is |was |are |now )*(off|out|removed)\b`}

var mending = pattern{expr: `^(i |we )?(re(plac|new|pair|mad|fitt|wir|mov|seal|tight|terminat|connect)\w*|chang\w+|fitt?\w*|new|cut|clean\w*|tighten\w*|swapp\w*|install\w*|put|seal\w+|mended|fixed|clear\w+)\b`}

// states tells a clause of how something was found.
var states = pattern{expr: `\b(grounded|burnt( out)?|burned out|seized|shorted|failed|bad|dead|worn( out)?|broken|weak|leaking|stuck|tripped|locked up|jammed|blown|cracked|dirty|clogged|iced( up)?)$`}

// Undone reports whether all of a text is of work that was not done.
func Undone(text string) bool { return len(Stated(text)) == 0 }

// Tells reports whether a word, in the letters of no name, is one that goes on
// from a name to what it did or is.
func Tells(word string) bool { return tells.is(word) }

var tells = pattern{expr: `^(declin\w*|refus\w*|reject\w*|agree\w*|accept\w*|approv\w*|wants?|wanted|decid\w+|says|said|is|was|has|had|does|did|will|would|not|left|won.?t|can.?t|cannot|unplugged|tagged|runs|running|stopped|called|asked|paid|pays|gone|dead)$`}

// Works reports whether a clause begins with a word of work.
func Works(clause string) bool { return works.is(clause) }

var works = pattern{expr: `^(i |we )?(\w+ed|new|put|fit|set|cut|took|made|bent|rewound|blew|swept|hung|reset|got rid|thaw|clean|replace|tighten)\b`}
