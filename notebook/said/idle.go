package said

import (
	"regexp"
	"slices"
	"strings"
)

// notDone tells a clause of work that was not done: ordered, quoted, wished for, not
// yet.
func notDone() *regexp.Regexp { return putOff.get() }

var putOff = pattern{expr: `
^(order|told|explain|show|will\b|to |need|no |not )
(not|\w*n.t) (be |been |get |have |yet |want )*<fit>
(not yet|yet to|on order)\b
to (be|have|get) (it |the |a |\w+ )?(replac|fit|order|chang|new\b|install|swap)
to (replace|fit|change|install|swap|exchange|renew)\b
(has|have|had) to\b
(must|should|would|could|cannot|can.t|may|might|ought|will)\b.{0,16}\b(be|get|have|need|<fit>)
(wants?|wanted|wish\w*|prefers?)\b
(declin|refus|reject)\w*
(discuss\w*|talked|spoke)\b
(quot|estimat)\w+
(recommend|advis|suggest|propos|offer)\w*
(order(ed|ing)|request\w*|reserv\w+)\b
(schedul\w+|booked|plan(s|ned)?)\b
(wait|arriv|deliver)\w*
com(es|ing) (on|next|in|by|tomorrow)\b
(price|mind)\b
(tomorrow|next (visit|week|time|month))\b
`}

// Verbs with which a clause begins that mends nothing: tests, looks, talk, waiting,
// making safe. Stems are followed by anything, regular ones by the ending of a verb.
const (
	stems    = "test check look inspect measur search listen watch show discharg unplug isolat "
	regulars = "diagnos verif confirm observ monitor witness examin assess evaluat identif determin discover notic smell suspect trac troubleshoot ohm megg meter clamp log photo photograph pic record document inform instruct educat demonstrat train consult email text messag phon research retriev locat disassembl dismantl assembl "
	endings  = " d ed ged ied ing s y e "
	plainly  = " waited tried felt noted read called drove found same still nothing none nobody saw heard amped timed snapped wrote contacted rang walked went arrived traveled travelled parked returned invoiced collected waived troubleshot loaded dried heated cooled tagged labeled labelled aired ventilated "
)

// idles are other ways in which such a clause begins, and how it is of opening up, of
// putting back as it was, of clearing up.
var idles = pattern{expr: `
^n/a\b
^no (one|work)\b
^(customer|client|owner|tenant) (not|is|was|has|had|did|does|will|would)
^(customer|client|owner|tenant) (says|said|wants|asked|called|agreed|away|gone|absent|declin|refus)
^(re-?)?set (the |its )?(clock|time)\b
^(locked out|made safe|leak search|red.?tagged|amp clamp|picked up)\b
^(put|set|ran|started|forced|initiated) (it |unit |machine )?(into |in |through |thru )?(a )?(forced |manual |test )?defrost( cycle| mode)?$
^opened (the |all )?(windows?|doors?)\b
^(shut|closed|turned off) (off )?(the |its )?(gas|cock|valve|tap|water|supply)\b
^(passed|referred|handed)( it| the (call|job|case|unit))?( on| over)? to\b
^(took|made) (a |the |some )?(photo|pic|video|snap|reading|measurement|temp|note)
^(switched|turned) (it |the |unit |power |breaker )*(off|on)\b
^turned <the>power\b
^let (it|the machine|the unit) (cool|rest|stand|settle|run|level)
^(opened|removed|took off|pulled( out)?) (up )?(the )?<place>(panel|unit|fridge|refrigerator|freezer|machine|appliance|cabinet|relay|start device|overload|plug)s?$
^(took|put|pulled) (off|back|on|up|out|apart) <the><place>(<cover>|<unit>|drum)s?( on| off)?$
^(removed|opened|re-?fitted|re-?installed|lifted|closed|shut|undid|unscrewed|dropped) (up )?<the><place>(<cover>|it|<unit>)s?( up)?$
^(moved|put|pushed|slid|rolled|pulled|set|placed|took) (it |them |<the><unit> |<the><place><cover>s? )?(back|out|up|away|off|down|apart|aside|together)( <where>)*$
^strip\w* (it|<the><unit>)( down)?$
^plugged (it |<the><unit> )?back in\b
^power(ed)? (it |unit )?(back )?(up|on|off|down)\b
^(restor|reconnect|disconnect|cut|kill)\w* <the>(power|supply|mains|electric\w*)\b
^(clear|pull)\w* (the )?(error |fault )?codes?\b
^(enter\w*|put (it |unit )?in(to)?) \w+ mode\b
^(attach|hook|connect|put|fit|install)\w* (up )?(the )?(gauges|manifold|meter|clamp|probe|thermometer|(data )?logger)s?\b
^(put|placed|set|left) (a |the )?(probe|thermo\w+|meter|card|note)\b
^sent (the )?(photo|pic|email|mail|message|text|info|link|model)\b
^clean\w* up( (the |my )?(work ?)?(area|site|mess|floor|after\b.*))?$
^(set|packed|tidied|swept|mopped) up\b
^(empt|unload|drain|bail|mopp|clear)\w* (out )?<the>(water|food|dishes|clothes|tub|drum|freezer|fridge|load|laundry)( out| by hand| from .*)?$
^moved (the )?(food|boxes|stuff|things|clothes|furniture)\b
^(signed (in|out)|closed out|put on gloves)$
^washed (my |our )?(hands|up)\b
^(got|was|am) paid\b
^got (the |a )?(paid|payment|signature|check|cheque|cash|lunch|coffee)\b
^<live> (is |was )?(back )?(on|in)( again)?$
^left (the )?<who>\b
^(soap|leak|bubble)[ -]?test(ed)?\b
^((hot )?water|heat|power|cooling) (is |was )?(now )?(back|restored)( (on|to|in|for) .*)?$
^left (the |all |an? )?(old|bad|failed|spare|card|receipt|invoice|manual|note)\b
^left .*\b(with|for) (the )?<who>$
^(put|threw|tossed) (away |out )?(the |all )?(old|bad|failed) .*\b(scrap|trash|rubbish|garbage|bin|skip|dumpster|recycling|van|truck|away|out)$
^(threw|tossed|scrapped) (away |out |off )?(the |all )?(it|them|old|bad|failed)\b
^(tap|ti|clipp|zip.?ti|tuck|dress|strapp)ed (the |all )?(harness|loom|wir\w+|leads?|cables?) (back|up|down|away|aside|out|in place)\b
^(tap|ti|clipp|zip.?ti|tuck|dress|strapp)ed (the )?(harness|loom)$
^swap\w* .*\b(compare|see|check|diagnose)\b
^(swapp|fitt|put|install|plugg|hook)\w* (in |up |on )?(a |the )?test (relay|cord|device|cap|lamp|light|board)
(for|to|as) (a |the )?test(ing)?\b
`}

// partNames are names of parts that begin as such a clause does: a part's name is no
// verb.
var partNames = pattern{expr: `
^check (valve|ball)<more>$
^log board<more>$
^meter(ing)? (valve|device|tube)<more>$
^discharge (valve|line|hose|pump|muffler|sensor|thermostat|thermistor)<more>$
^isolat\w+ (valve|relay|switch|block)<more>$
^(photo|text|monitor\w*|smell|smoke) (eye|cell|sensor|board|module)<more>$
^trace heater<more>$
^clamp (ring|band|kit)<more>$
^felt (seal|strip|ring|pad|gasket|wick)<more>$
^inspection (cover|glass|lamp)<more>$
^test (port|button|switch)<more>$
^assembly\b
`}

// idle tells a clause that begins with what mends nothing.
func idle(clause string) bool {
	if partNames.is(clause) {
		return false
	}
	word := strings.TrimPrefix(clause, "re-")
	if end := strings.IndexFunc(word, func(r rune) bool { return (r < 'a' || r > 'z') && !isDigit(r) && r != '_' }); end >= 0 {
		word = word[:end]
	}
	return idleVerb(word) || idleVerb(strings.TrimPrefix(word, "re")) || idles.is(clause) || trying.only(strings.Fields(clause))
}

func idleVerb(word string) bool {
	return oneOf(plainly, word) ||
		anyStem(stems, word, func(string) bool { return true }) ||
		anyStem(regulars, word, func(rest string) bool { return rest == "" || oneOf(endings, rest) })
}

func anyStem(list, word string, goesOn func(rest string) bool) bool {
	for stem := range strings.SplitSeq(list, " ") {
		if rest, ok := strings.CutPrefix(word, stem); ok && stem != "" && goesOn(rest) {
			return true
		}
	}
	return false
}

func oneOf(list, word string) bool { return strings.Contains(list, " "+word+" ") }

// chore is work at which nothing is mended as long as it is done to nothing else.
type chore struct {
	verbs, things string
	alone         string // of the verbs, those that say enough
}

func (k *chore) only(words []string) bool {
	return len(words) > 0 && oneOf(k.verbs, words[0]) && (len(words) > 1 || oneOf(k.alone, words[0])) &&
		!slices.ContainsFunc(words[1:], func(w string) bool { return !oneOf(k.things, w) && !isDigit(rune(w[0])) })
}

var (
	tidying = chore{" hauled wiped mopped swept vacuumed tidied cleaned took takes taken put carried plugged cover panel lid ",
		" the a my all of and it them up down out away off back in on again over with me round around from to under behind floor floors cabinet site area mess place outside worktop counter kitchen bench room old failed part parts tools tool rubbish packaging box boxes trash garbage racks rack shelf shelves drawer drawers food sill oven client customer van truck sheet sheets dust unit machine cover covers panel panels lid access rear front top bottom side service screws ",
		" mopped swept tidied vacuumed "}
	sweeping = chore{" vacuumed swept mopped wiped ", " lint dust the all some it up from off under behind around floor floors unit machine cabinet room door sill fridge dryer ", ""}
	trying   = chore{" ran reran ",
		" it them the an a one two both all full complete short quick long empty test wash dry drying bake broil self service diagnostic diagnostics error code load cycle cycles mode modes test tests program programs programme through in on for at about over half hour hours hr hrs h min mins minute minutes ok fine good well again burner burners element elements comp compressor fan fans motor motors pump heat cool high low speed speeds rinse spin drain fill unit machine appliance fridge freezer refrigerator dryer washer dishwasher oven range stove cooker ac cabinet ",
		" ran reran "}
)

// Adjusts reports whether a text is of a setting or of how a machine stands, and of
// nothing that mends besides.
func Adjusts(text string) bool {
	list := Stated(text)
	return len(list) > 0 && !slices.ContainsFunc(list, func(c string) bool { return !adjusts.is(c) })
}

var adjusts = pattern{expr: `
^(re-?)?levell?(ed|ing)?\b
^(re-?)?set (the |its )?(\w+ )?(temp\w*|thermostat|stat|dial|control|knob|setting) (back )?(to|at|on|up|down)\b
^turned (the |its )?(\w+ )?(temp\w*|thermostat|stat|dial|control|knob|setting) (back )?(to|at|up|down)\b
`}

// clears are done to anything that was taken out.
const clears = " coffee lunch chatted bagged binned dumped trashed boxed disposed "

// tidies reports whether a clause is of clearing up, of carrying, or of shutting what
// was open. Who cleans a unit may mend it; who names another thing does.
func tidies(c string) bool {
	words := strings.Fields(c)
	switch {
	case len(words) == 0:
		return false
	case oneOf(clears, words[0]), oneOf(" took carried hauled ", words[0]) && Has(c, []string{" old "}) && !Has(c, []string{" and ", "new"}):
		return true // with what it is called
	case words[0] == "cleaned" && Has(c, []string{" it", "unit", "machine", "cover", "panel", "cabinet"}):
		return false
	}
	return tidying.only(words) || sweeping.only(words)
}
