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

// Lazily is a pattern that is made when it is first asked for.
//
//go:noinline
func Lazily(expr string) func() *regexp.Regexp {
	return sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(expr) })
}

// pattern is the same without a closure, for tables and where there are many.
type pattern struct {
	expr string
	made atomic.Pointer[regexp.Regexp]
}

//go:noinline
func (p *pattern) get() *regexp.Regexp {
	if p.made.Load() == nil {
		p.made.Store(regexp.MustCompile(p.expr))
	}
	return p.made.Load()
}

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
	list := between.get().Split(strings.ToLower(text[:min(len(text), MostBytes)]), MostClauses+1)
	if len(list) > MostClauses {
		list = list[:MostClauses]
	}
	for i := range list {
		list[i] = strings.TrimSpace(list[i])
		list[i] = list[i][:min(len(list[i]), LongClause)]
	}
	return slices.DeleteFunc(list, func(s string) bool { return s == "" })
}

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

// notWork tells a clause of what mends nothing: tests, looks, waiting, making
// safe and opening up.
var notWork = pattern{expr: `^(tagged|labell?ed|red.?tagged|aired|ventilated|opened (the |all )?(windows?|doors?)|(shut|closed|turned off|isolated) (off )?(the |its )?(gas|cock|valve|tap|water|supply)|(passed|referred|handed)( it| the (call|job|case|unit))?( on| over)? to)\b|^(nobody|no one|no work)\b|^(customer|client|owner|tenant) (not|is|was|has|had|did|does|will|would|says|said|wants|asked|called|agreed|away|gone|absent|declin|refus)|^(re-?)?(waited|tried|test|check|look|inspect|measur|search|listen|felt|watch|noted|read |show|called|drove|discharg|unplug|isolat|locked out|made safe|leak search|found |same\b|still\b|nothing\b)` +
	`|^(took|made) (a |the |some )?(photo|picture|reading|measurement|video)|^(switched|turned) (it |the |unit |power |breaker )*(off|on)\b|^let (it|the machine|the unit) (cool|rest|stand|settle|run|level)` +
	`|^(opened|removed|took off|pulled( out)?) (up )?(the )?(back|rear|front|top|access|kick)? ?(cover|panel|unit|fridge|refrigerator|freezer|machine|appliance|cabinet|relay|start device|overload|plug)s?$` +
	`|\b(for|to|as) (a |the )?test(ing)?\b`}

// Stated gives the clauses of a text that say what was mended: they neither put
// work off nor are of something else.
func Stated(text string) []string {
	return slices.DeleteFunc(Clauses(text), func(c string) bool {
		return notDone().MatchString(c) || notWork.get().MatchString(c) || onlyBridges(c) || states.get().MatchString(c) && !Works(c)
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

// Unmended gives the clauses of a text that do not begin with a word of mending.
func Unmended(text string) []string {
	return slices.DeleteFunc(Clauses(text), func(c string) bool { return mending.get().MatchString(c) })
}

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

var works = pattern{expr: `^(i |we )?(\w+ed|new|put|fit|set|cut|took|made|bent|rewound)\b`}
