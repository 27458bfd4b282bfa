package said

import (
	"regexp"
	"strings"

	"ohmcall/calc/cause"
	"ohmcall/notebook/record"
)

// Ending is a reason for which a call ends before its repair, with the words by
// which it is heard in what was done, noted or said while closing.
type Ending struct {
	Result string // of the record
	Hint   string // a close that says it
	last   bool   // heard only of what is said while closing
	quick  []string
	said   func() *regexp.Regexp
}

const (
	whoDecides = `(client|cust|customer|cx|owner|homeowner|tenant|landlord|landlady|he|she|they|who)`
	theUnit    = `(unit|machine|appliance|fridge|freezer|refrigerator|dryer|washer|dishwasher|oven|range|it)`
	leftThen   = `(?:it|the|unit|machine|appliance|fridge|freezer|refrigerator|dryer|washer|dishwasher|oven|range|switched|turned)`
	partName   = `(?:part|device|kit|relay|overload|capacitor|compressor|fan|motor|heater|element|board|control|sensor|thermostat|valve|seal|gasket|switch|timer|belt|pump|fuse|cord)`
	trades     = `(electrician|gas ?fitter|plumber|builder|gas supplier|specialist|certified (person|tech\w*|man|firm)|sealed.system (tech\w*|man|firm))`
	// turnsDown is followed by what is turned down, which must be the repair.
	turnsDown = `(declin|refus|reject)\w*( (it|to|as|due|because|for|so|at|on|after|today|now|by)\b.*| .*\b(repair|quote|price|offer|estimate|work|job|part|replac|fix|cost|compressor)\w*\b.*)?$`
)

// Endings are the reasons to stop.
var Endings = []Ending{
	{record.Declined, "close declined …", false, []string{"declin", "refus", "reject", "down", "want", "buy", "bought", "replac", "dear", "expensive", "against", "says no", "said no"}, Lazily(`^(it was )?(declin\w*|(refus|reject)\w*( by| the (repair|price|quote|offer)|$))|\band declin\w+|\b` + whoDecides + ` ((has|have|had|was|is|now|then) )*` + turnsDown + `|\b(repair|quote|price|offer|estimate) ((was|is|has been) )?(declin|refus|reject)\w*` +
		`|\bturn\w* (it|this|the (repair|quote|offer|price)) down|\b(does|did|do)(n.t| not) want (it |this )?(the )?(repair|mend|fix|to (repair|pay|go on|spend))|\b` + whoDecides + ` sa(ys|id) no\b` +
		`|\b` + whoDecides + ` (\w+ )?(rather )?((will |wants? to |to )?(replaces?|replacing) (it\b|the ` + theUnit + `)|buys?|bought|buying|will buy|wants? to buy|(wants?|wanted|will get|gets?|getting) a new (one|machine|unit|fridge|freezer|refrigerator|dryer|washer|oven))\b|\btoo (dear|expensive)\b|\bagainst (the |a )?repair`)},
	{record.Waits, "close waits for a part …", false, []string{"order", "wait", "await", "part"}, Lazily(`^(re)?order(ed|ing)?\b|\b(is|are|was|were|been|be|have|has|had|and|i|we) (re)?ordered\b|\b` + partName + `s? (re)?ordered\b|\bon (back ?)?order\b|\bback.?ordered\b|\bwait(s|ing)? (for|on) (\w+ ){0,3}?(` + partName + `s?|delivery)\b` +
		`|\bawait\w* (\w+ ){0,3}?parts?\b|\bparts? (is |are )?(not in stock|to come|coming|on (its|their|the) way)\b`)},
	{record.Undecided, "close waits for the client …", false, []string{"wait", "think", "decid", "approv", "go-ahead", "go ahead", "let me know", "let us know"}, Lazily(`\b` + whoDecides + ` ((will|wants|has|must|needs|is|still|yet|to) )+(think(ing)?|decid(e|ing)|let (me|us) know)\b|\b(a?wait(s|ing)?)( (for|on))? (the |an? |her |his |their )?(` + whoDecides + `\b|approval|go.ahead|decision|answer)`)},
	{record.PassedOn, "close passed on …", false, []string{"pass", "refer", "hand", "electrician", "fitter", "plumber", "builder", "supplier", "specialist", "certified", "sealed"}, Lazily(`^(passed|referred|handed)\b.{0,20}\b(on|over|to)\b|\b(call|job|unit|case|it|client|and|is|was|been) (passed (on|over) to|referred to|handed (on|over) to)\b` +
		`|\b(needs?|requires?|call(ed)? in|to call|will call|get|job for|work for) ((an?|the|licen[sc]ed|qualified|registered) )*` + trades)},
	{record.NotWorth, "close not worth repair …", false, []string{"worth", "beyond", "econom", "written off", "write", "advis", "recommend"}, Lazily(`\b(not|n.t) worth (the |a )?(it\b|repair|fix|mend|mone|spend|cost|new)\w*|\bbeyond (economic\w* |sensible |all )?repair|\b(un|not )econom\w+|\bwritten off\b|\bwrite.off\b` +
		`|\b(advis|recommend)\w* ((the|client|customer|owner|her|him|them|to) )*(replac\w* (of )?(the )?` + theUnit + `|(buy |get )?a new (one|` + theUnit + `))\b`)},
	{record.NoFault, "close no fault found …", true, []string{"fault", "nothing", "works"}, Lazily(`\bno fault\b|\bnothing (was )?(wrong|found)\b|\bfound nothing\b|\bworks as it should\b`)},
	{record.CalledOff, "close called off …", false, []string{"home", "access", "answer", "cancel", "call", "show", "gone", "sold", "scrap", "thrown", "away"}, Lazily(`\b(nobody|no.?one|not) ((was|is) )?(at )?home\b|\bno (access|reply)\b|\bno answer\b.{0,12}(door|bell|phone|call|knock|$)|^cancel\w*|\bcancel\w* (the |this )?(call|visit|appointment|job|order)\b|\b(visit|call|appointment|job) (was |is )?cancel\w*|\bcall(ed)? (it )?off\b|\bno.?show\b` +
		`|\b` + theUnit + ` ((is|was|has been|had been|already|now|unplugged and) )*(gone|sold|scrapped|thrown (away|out)|given away|taken away)\b`)},
}

// Stops gives the endings that a clause tells of, said while closing or before.
func Stops(clause string, closing bool) []*Ending {
	var out []*Ending
	for i := range Endings {
		if e := &Endings[i]; (closing || !e.last) && Has(clause, e.quick) && !unsaid.get().MatchString(clause) && e.said().MatchString(clause) {
			out = append(out, e)
		}
	}
	return out
}

// unsaid tells a clause of what did not happen, or may, or happened years ago, and
// of what else is bought or dear.
var unsaid = pattern{expr: `\b(not|never|n.t) (been |be |have |to )?(declin|refus|reject|cancel|order|wait|call|pass|refer|hand)|\b(whether|if|unless|unsure|not sure|may|might|would|could|perhaps|maybe)\b` +
	`|\b(bought|replaced) (it|this|the ` + theUnit + `) (.{0,30} )?(used|second.?hand|last year|years? ago|(19|20)\d\d)\b|\bsold (to|by|as|with|new)\b` +
	`|\b(buys?|bought|buying) (the |an? |some |her |his |their )?(extended|extra|service|maintenance|warranty|insurance|filters?|food|parts?|spares?)\b|\b(heat|power|energy|electricity|gas|running it) (\w+ )?too (dear|expensive)`}

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
	{"off", []string{"off "}},
	{"taken away", []string{"taken", "workshop", "scrapped"}},
	{Running, []string{"running", "in use", "switched on", "turned on"}},
}

// StateLeft is the state that a text names, "" when it names none. What is said
// to be running before anything else is said of it is under power.
func StateLeft(text string) string {
	if word, rest, _ := strings.Cut(text, " "); strings.EqualFold(strings.TrimRight(word, ",;."), "on") && (rest == "" || word != strings.TrimRight(word, ",;.") || strings.HasPrefix(rest, "and ")) {
		return Running // left on, and what else there is to say
	}
	text = " " + strings.Join(cause.Fold(text), " ") + " "
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

// Left is what a clause says of how the unit was left, "" when it says nothing.
func Left(clause string) string {
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
var leftSaid = pattern{expr: `(?:\bleft (?:` + leftThen + ` )*|\b` + leftThen + ` (?:(?:was|is) )?left )((?:running|in use|unplugged|disconnected|(?:red.?)?tagged|locked out|isolated|do not use|not to be used|out of service|condemned|(?:switched |turned )off)\b.{0,60})`}
