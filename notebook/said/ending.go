package said

import (
	"regexp"
	"slices"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/notebook/record"
)

// Ending is a reason for which a call ends before its repair, with the words by
// which it is heard in what was done, noted or said while closing.
type Ending struct {
	Result string // of the record
	Hint   string // a close that says it, "" of a row with more words for the same
	how    hearing
	quick  []string // of which one must be there; nil: none need
	said   func() *regexp.Regexp
}

// hearing is when an ending is heard, and what it gives way to.
type hearing uint8

const (
	always  hearing = iota
	passing         // before closing it is none once something is read or seen
	offered         // before closing only where its text speaks of what was offered
	last            // only in what is said while closing
	weaker          // so, and it gives way to any other of the same line
	weakest         // so, and to weaker ones
)

// Passes reports whether an ending that was said before closing is none once work
// went on.
func (e *Ending) Passes() bool { return e.how == passing }

// Strongest gives of the endings of one line those that the others give way to.
func Strongest(list []*Ending) []*Ending {
	var out []*Ending
	for weak := weaker; weak <= weakest+1 && len(out) == 0; weak++ {
		for _, e := range list {
			if e.how < weak {
				out = append(out, e)
			}
		}
	}
	return out
}

// Endings are the reasons to stop.
var Endings = []Ending{
	{record.Declined, "close declined …", always, []string{"declin", "refus", "reject", "down", "want", "buy", "bought", "replac", "dear", "expensive", "against", "says no", "said no"}, Lazily(`^(it was )?(declin(ed?|es|ing)?` + ofTheOffer + `|(refus|reject)\w*( by| ((the|a|any) )?(repair|price|quote|offer|estimate|est|work|job|service)s?\b|$))|\band declin\w+` + ofTheOffer + `|\b<who> ((has|have|had|was|is|now|then) )*(declin|refus|reject)\w*` + ofTheOffer + `|\b<who> sa(ys|id) no to (it$|this$|that$|` + theOffer + `)|\b(repair|quote|price|offer|estimate|est) ((was|is|has been) )?(declin|refus|reject)\w*` +
		`|\bturn\w* ((the )?(repair|quote|offer|estimate|price) down|down (the |a |my |our )?(repair|quote|offer|estimate|price|job|work))\b|\b(does|did|do)(n.t| not) want (it |this )?(the )?(repair|mend|fix|to (repair|pay|go on|spend))` +
		`|\b<who> (\w+ )?(rather )?((will |wants? to |to )?(replaces?|replacing) (it\b|the <it>)|(buys?|bought|buying|will buy|wants? to buy)( ((an?|another) )?((new|used|second.?hand|different|replacement|whole) )*((new|used|second.?hand|different|replacement) (one|<it>)|one|another|new)\b|$)|(wants?|wanted|will get|gets?|getting) a new (one|machine|unit|fridge|freezer|refrigerator|dryer|washer|oven))\b|\btoo (dear|expensive)\b|\bagainst (the |a )?repair`)},
	{record.Declined, "", offered, []string{"down", "says no", "said no"}, Lazily(`\bturn\w* (it|this) down|\b<who> sa(ys|id) no( thanks?| thank you)?$`)},
	{record.Waits, "close waits for a part …", always, []string{"order", "wait", "await", "part"}, Lazily(`^(re)?order(ed|ing)?\b|\b(is|are|was|were|been|be|have|has|had|and|i|we) (re)?ordered\b|\b<part>s? (re)?ordered\b|\bon (back ?)?order\b|\bback.?ordered\b|\bwait(s|ing)? (for|on) (\w+ ){0,3}?(<part>s?|delivery)\b` +
		`|\bawait\w* (\w+ ){0,3}?<part>s?\b|\bparts? (is |are )?(not in stock|to come|coming|on (its|their|the) way)\b`)},
	{record.Waits, "", weakest, nil, Lazily(`\b(needs?|needed|requires?|must|will|have|has|going) to (order|get|source|buy|be ordered)\b|^(to|will|must) order\b|\b(needs?|requires?|wants) (\w+ ){0,3}?<part>s?\b|\b<part>s? (is |are )?(needed|required|req.?d|wanted)\b|^spo\b|\bno parts? on (the |my )?(truck|van)\b|\bwrong parts? (came|sent|arrived|delivered|shipped)\b|\bspecial order\b|\b<who> (is |to |will )?(buy|supply|source|provid|bring)(ing)? (\w+ ){0,2}parts?\b`)},
	{record.Undecided, "close waits for the client …", always, []string{"wait", "think", "decid", "approv", "authori", "go-ahead", "go ahead", "let me know", "let us know", "pending"}, Lazily(`\b<who> ((will|wants|has|must|needs|is|still|yet|to) )+(think(ing)?|decid(e|ing)|let (me|us) know)\b|\b(pending|a?wait(s|ing)?)( (for|on))? ((the|an?|her|his|their|home|warranty|insurance|<who>('?s)?) )*(approval|auth\w*|go.ahead|decision|answer|to (decide|approve|confirm|agree))\b|\b(approval|authori\w+) (is )?(needed|required)\b|\bawait\w* (the )?(insurance|warranty|po\b|purchase order)`)},
	{record.Undecided, "", passing, []string{"wait"}, Lazily(`\ba?wait(s|ing)?( (for|on))? (the |an? |her |his |their )?<who>\b`)},
	{record.Undecided, "", weaker, nil, Lazily(`\b<price>\b.{0,20}\b(given|gave|left|sent|emailed|provided|submitted|supplied)\b|\b(gave|give|left|sent|emailed|provided|submitted|supplied)\b.{0,20}\b<price>\b|^<price>( only)?$|^quoted\b|(\b<who> |^)(will|to|wants to) (call|ring|phone) (us |me )?back\b|\bget back to (us|me)\b`)},
	{record.PassedOn, "close passed on …", always, []string{"pass", "refer", "hand", "electrician", "sparky", "fitter", "plumber", "builder", "supplier", "specialist", "certified", "sealed", "hvac", "contractor", "gas tech", "gas eng", "refrigeration", "licen", "approved"}, Lazily(`^(passed|referred|handed)( (it|this|her|him|them|(the )?(call|job|unit|case|client|work|repair)))?( (on|over)( (for|as|today|now)\b|$)|( (on|over))? to\b)|\b(call|job|unit|case|it|client|and|is|was|been) (passed (on|over) to|referred to|handed (on|over) to)\b` +
		`|\b(needs?|requires?|call(ed)? in|to call|will call|get|job for|work for) ((an?|the|licen[sc]ed|qualified|registered) )*<trade>|\b<trade> (is |was )?(needed|required)\b`)},
	{record.PassedOn, "", last, nil, Lazily(`^<trade>$|\b<trade> (to attend|called|booked|advised)\b|^(called|rang|phoned|advised|recommend\w*) ((<who>|the|an?|to|get|call|licen[sc]ed|qualified) )*<trade>|\brefer (it )?(back )?to\b|\b(manufacturer|dealer|installer|warranty co\w*) to (attend|visit|call|repair)\b`)},
	{record.NotWorth, "close not worth repair …", always, []string{"worth", "beyond", "econom", "written off", "write", "advis", "recommend"}, Lazily(`\b(not|n.t) worth (the |a )?(it\b|repair|fix|mend|mone|spend|cost|new)\w*|\bbeyond (economic\w* |sensible |all )?repair|\b(un|not )econom\w+|\bwritten off\b|\bwrite.off\b` +
		`|\b(advis|recommend)\w* ((the|client|customer|owner|her|him|them|to) )*(replac\w* (of )?(the )?<it>|(buy |get )?a new (one|<it>))\b`)},
	{record.NotWorth, "", last, nil, Lazily(`\bber('?d)?\b|\bnot cost.effective\b|\b(scrap(ped)?|condemn(ed)?)\b|\b(parts?|board|pcb|model) ((is|are|no longer|now|been) )*(nla|available|discontinued|obsolete|made)\b|^nla\b|\bno parts? (is |are )?available\b|\btoo old to (repair|fix)|\bcheaper to replace\b|\bcosts? more than\b|^(rec|recommend\w*|advis\w*|suggest\w*|told (<who>) to) (new|replac\w*)( (the )?<it>)?$|^replace (the )?<it>$|^(told|advised) (<who> |her |him |them )(to )?(buy|get) (a )?new\b`)},
	{record.Declined, "", last, nil, Lazily(`^decl(in(e|ed|es|ing))?\b|\b<who> decl\b|\bgetting (a )?new( one| <it>)?$|\b<who> (is |to |will )?scrap\w*|\bwants? (a )?new (one|<it>) instead\b|\b(does|do|did)(n't| not) want to (spend|pay)\b`)},
	{record.NoFault, "close no fault found …", last, []string{"fault", "nothing", "works"}, Lazily(`\bno fault\b|\bnothing (was )?(wrong|found)\b|\bfound nothing\b|\bworks as it should\b`)},
	{record.NoFault, "", last, nil, Lazily(`\b(nff|nft|npf|ntf|cnd)\b|\bno (trouble|problem|issue|defect)s? (was |were )?(found|seen)\b|\b(couldn.?t|can.?t|cannot|unable to|not able to|did(n.?t| not)) (re-?produc|duplicat|replicat|re-?creat)\w*|\b(work|runn|operat|function|cool|heat)(s|ed|ing) ((ok|okay|fine|good|well|normal|normally|properly) )?((on|upon|at) (my |our )?arrival|when (i|we) (got|arrived|came))|\b(user|customer|client|operator) error\b|\b<who> fixed it (him|her|them)sel(f|ves)\b|\bnot a fault\b|\b(work|operat|function)(s|ing) (as (designed|intended|it should)|to spec\w*)\b|^(it is |is )?normal (operation|noise|sound)\b`)},
	{record.CalledOff, "close called off …", passing, []string{"home", "access", "reply", "answer", "cancel", "call", "show", "gone", "sold", "scrap", "thrown", "away", "schedul", "postpon"}, Lazily(`\b(nobody|no.?one|not) ((was|is) )?(at )?home\b|\bno access( (in)?to (the )?(property|premises|house|home|flat|apartment|building|site|<it>|room|basement|garage))?$|\bno reply( (at|to|from|on) (the )?(door|bell|phone|call|knock|<who>)|$)|\bno answer\b.{0,12}(door|bell|phone|call|knock|$)|^cancel\w*|\bcancel\w* (the |this )?(call|visit|appointment|job|order)\b|\b(visit|call|appointment|job) (was |is )?(cancel|re-?schedul|postpon)\w*|\bcall(ed)? (it )?off( (by|the (call|visit|job|repair))\b|$)|\bno.?show\b` +
		`|\b<who> (has )?(cancel|re-?schedul|postpon)\w*$|^(re-?schedul|postpon)\w*|\b((unit|machine|appliance|` + kin + `) ((is|was|already|now|unplugged and) )*gone$|<it> ((is|was|has been|had been|already|now|unplugged and) )*(sold|scrapped|thrown (away|out)|given away|taken away)\b)`)},
	{record.CalledOff, "", last, nil, Lazily(`\bno access\b|\bit (is |was |already )*gone$|^(carded|n/?a|canx|cx'?d|cxld?)$|\bre-?book\w*|\b(nobody|no.?one|not|wasn.?t|isn.?t) (in|there)$|\b(unable to|couldn.?t|can.?t|cannot) (gain |get )?(access|enter|in)\b|\brefus\w* (entry|access)\b|\bgate locked\b|\blocked gate\b|\bwrong (address|appliance)\b|\bduplicated? (call|booking|job)\b|\bdog (would|did)(n't| not) let\b|\b<who> (has|had) the keys?\b|\b<who> (was |is )?asleep\b|\bknocked\b.{0,20}\b(nobody|no.?one)\b`)},
	{record.Unfinished, "close to be continued …", weaker, nil, Lazily(`\b(to be continued|tbc|(to|will|need to|must) (return|come back|go back)|return with|return (trip|visit|call)|out(ta| of) time|had to leave|back (tmrw|tomorrow)|no time|not (finished|completed?)|(second|2nd|two|2|another|senior).?(man|men|person|people|tech\w*)|escalat\w*)\b|^((job|repair|work) )?(is )?(incomplete|unfinished)\b`)},
}

// theOffer is what is refused where a call ends by it: the repair, or what it costs.
const theOffer = `(([a-su-z]|t[a-np-z])[\w-]* ){0,3}(repair|quot|price|offer|estimate|est\b|work\b|job|part\b|replac|fix|cost|compressor)\w*\b`

// ofTheOffer goes on from a word of refusing to that, or to nothing that is refused: who
// declines to hold a lamp declines no repair.
const ofTheOffer = `( it\b.*| (as|due|because|for|so|after|today|now|by|on|again|and|with|left|at (this|that|the (price|cost)))\b.*| ?[-–—/(&+].*| ` + theOffer + `.*| to (have .*(repair|replac|fix|mend|done)\w*|go (ahead|on|any|further)|proceed|pay|spend|repair|fix|mend|replace|renew|continue|buy|approve|authori[sz]e|do (it|any|more|so))\b.*)?$`

// offers are words of an offer that is answered in another clause of the same text.
var offers = []string{"quot", "price", "estimat", "offer", "cost", "approv", "go ahead"}

// Stops gives the endings that a clause of a text tells of, said while closing or before.
func Stops(clause, text string, closing bool) []*Ending {
	var out []*Ending
	clause = strings.ReplaceAll(clause, "could not", "couldn't") // which did happen
	for i := range Endings {
		if e := &Endings[i]; (closing || e.how < last) && (e.quick == nil || Has(clause, e.quick)) && (closing || e.hears(text)) && !unsaid.get().MatchString(clause) && e.said().MatchString(clause) {
			out = append(out, e)
		}
	}
	return out
}

// Waits reports whether a clause says that a part is waited for.
func Waits(clause string) bool {
	return slices.ContainsFunc(Stops(clause, clause, true), func(e *Ending) bool { return e.Result == record.Waits })
}

// hears reports whether an ending that is heard before closing is so in such a text.
func (e *Ending) hears(text string) bool {
	switch {
	case e.how == offered:
		return Has(text, offers)
	case e.how == passing && e.Result == record.CalledOff:
		return !comesBack().MatchString(strings.ToLower(text))
	}
	return true
}

// comesBack tells a text of who is out and comes soon.
var comesBack = Lazily(`\b(back|home|in|returns?|there) (at|by|in|around|about|after|before|within) (\d|noon|lunch|an? |half|one\b|two\b|ten\b)|\bback (soon|later|shortly|now)\b|\bwait(s|ed|ing)?\b`)

// unsaid tells a clause of what did not happen, or may, or happened years ago, and
// of what else is bought or dear.
var unsaid = pattern{expr: `\b(not|never|n.t) (been |be |have |to )?(declin|refus|reject|cancel|order|wait|call|pass|refer|hand|need|requir|work|runn|operat|function|cool|heat)|\bno (need|return)\b|\bno (\w+ )?parts? (is |are |was |were )?(needed|required)\b|\b(whether|if|unless|unsure|not sure|may|might|would|could|perhaps|maybe)\b` +
	`|\bno access to (the )?(back|rear|side|top|inside|panel|screw|compressor|board|motor|fan)|\b(refus|declin)\w* to (sign|talk|speak|move|leave|start|let|give|hold|help|show|say|answer|wait|come|be)\b|\b(nobody|no.?one|not) (at )?home (when|during|at (the|that) time|most|all|overnight|at night)\b|\bhanded .*\bto (the )?(client|cust\w*|cx|owner)\b|\bgone on\b|\bwait\w* (for|on) (\w+ ){1,4}?to (cool|stop|start|re-?start|run|drain|fill|warm|heat|re-?set|close|open|cycle|spin|finish|de-?frost|thaw|equal\w*|settle|level|dry|discharge)\b|\bold parts?\b|\b(passed|handed|referred)\b.{0,12}\b(message|invoice|receipt|keys?|manual|diagram|instructions?|remote|wiring|schematic|(tech|service|data) ?sheet|table|chart)\b|^order (number|no)\b|\bcancel (button|key|switch)\b` +
	`|\b(bought|replaced) (it|this|the <it>) (.{0,30} )?(used|second.?hand)\b|\b(bought|replaced)\b.*\b(last (year|month|week)|(years?|months?|weeks?) ago|(19|20)\d\d)\b|\bsold (to|by|as|with|new)\b` +
	`|\b(buys?|bought|buying) (the |an? |some |her |his |their )?(new |water |air )*(extended|extra|service|maintenance|warranty|insurance|filters?|food|parts?|spares?)\b|\b(heat|power|energy|electricity|gas|running it) (\w+ )?too (dear|expensive)`}

// State is a state in which a unit is left, with the words for it. Of
// several that a text names the first in the table counts.
type State struct {
	Name  string
	words []string
}

// States of a unit left under power, and of one that nobody may use.
const (
	Running   = "running"
	TaggedOut = "tagged out"
)

// States are the states in which a unit is left.
var States = []State{
	{TaggedOut, []string{"tag", "locked out", "lock out", "labelled", "labeled", "do not use", "don't use", "not to be used", "not be used", "out of service", "condemned"}},
	{"unplugged", []string{"unplug", "disconnected", "isolated", "plug out", "plug pulled"}},
	{"off", []string{"off ", "out of use"}},
	{"taken away", []string{"taken", "workshop", "shop ", "depot", "scrapped"}},
	{Running, []string{"running", "in use", "in service", "switched on", "turned on", "powered on", "plugged in", "working", "cooling", "heating", "defrosting", "ready", "good to go", "with customer", "with the customer", "with owner", "with client"}},
}

// StateLeft is the state that a text names, "" when it names none. What is said
// to be running before anything else is said of it is under power.
func StateLeft(text string) string {
	if word, rest, _ := strings.Cut(text, " "); (strings.EqualFold(strings.TrimRight(word, ",;."), "on") || strings.EqualFold(strings.TrimRight(word, ",;."), "ok")) && (rest == "" || word != strings.TrimRight(word, ",;.") || strings.HasPrefix(rest, "and ")) {
		return Running // left on, and what else there is to say
	}
	text = " " + strings.Join(cause.Fold(text), " ") + " "
	text = gasShut().ReplaceAllString(text, " gas off ") // which leaves its plug where it was
	state, first, running := "", len(text), len(text)
	for i := len(States) - 1; i >= 0; i-- {
		for _, w := range States[i].words {
			switch at := strings.Index(text, " "+w); {
			case at < 0:
			case States[i].Name == Running:
				running = min(running, at)
			default:
				state, first = States[i].Name, min(first, at)
			}
		}
	}
	if running < first {
		return Running
	}
	return state
}

var gasShut = Lazily(` (gas (supply )?(isolated|disconnected)|isolated( the)? gas) `)

// NotLeft reports whether a text says in what state a unit was not left.
func NotLeft(text string) bool { return notLeft().MatchString(strings.ToLower(text)) }

var notLeft = Lazily(`\bnot (left |yet )?(running|in use|in service|on|off|unplugged|tagged|locked|isolated|switched|turned|powered|plugged|working|cooling|heating|taken)\b`)

// Left is what a clause says of how the unit was left, "" when it says nothing.
func Left(clause string) string {
	if !strings.Contains(clause, "left") {
		return ""
	}
	m := leftSaid.get().FindStringSubmatch(clause)
	if m == nil && clause == "left off" {
		return "off"
	}
	if m == nil {
		return ""
	}
	return strings.TrimSpace(m[1])
}

// leftSaid tells a clause of how the unit was left.
var leftSaid = pattern{expr: `(?:\bleft (?:<left> )*|\b<left> (?:(?:was|is) )?left )((?:running|in use|unplugged|disconnected|(?:red.?)?tagged|locked out|isolated|do not use|not to be used|out of service|condemned|(?:switched |turned )off)\b.{0,60})`}
