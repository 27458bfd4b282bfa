package call

import (
	"regexp"
	"slices"
	"strings"

	"ohmcall/notebook/record"
)

// stop is a reason for which a call ends before its repair, with the words by
// which it is heard in what was done, noted or said while closing.
type stop struct {
	result string
	hint   string // a close that says it
	end    bool   // heard only of what is said while closing
	quick  []string
	said   func() *regexp.Regexp
}

const (
	whoDecides = `(client|customer|owner|tenant|landlord|he|she|they|who)`
	theUnit    = `(unit|machine|appliance|fridge|freezer|refrigerator|dryer|washer|dishwasher|oven|range|it)`
	leftThen   = `(?:it|the|unit|machine|appliance|fridge|freezer|refrigerator|dryer|washer|dishwasher|oven|range|switched|turned)`
)

var endings = []stop{
	{record.Declined, "close declined …", false, []string{"declin", "refus", "reject", "down", "want", "buy", "bought", "dear", "expensive", "against"}, lazily(`^(it was )?(declin\w*|(refus|reject)\w*( by| the (repair|price|quote|offer)|$))|\band declin\w+|\b` + whoDecides + ` ((has|have|had|was|is|now|then) )*(declin|refus|reject)\w*|\b(repair|quote|price|offer|estimate) ((was|is|has been) )?(declin|refus|reject)\w*` +
		`|\bturn\w* (it|this|the (repair|quote|offer|price)) down|\b(does|did|do)(n.t| not) want (it |this )?(the )?(repair|mend|fix|to (repair|pay|go on|spend))` +
		`|\b` + whoDecides + ` (\w+ )?(rather )?(buys?|bought|will buy|wants? to buy|(wants?|wanted|will get|gets?) a new (one|machine|unit|fridge|freezer|refrigerator|dryer|washer|oven))\b|\btoo (dear|expensive)\b|\bagainst (the |a )?repair`)},
	{record.Waits, "close waits for a part …", false, []string{"order", "wait", "await", "part"}, lazily(`^(re)?order(ed|ing)?\b|\b(is|are|was|were|been|be|have|has|had|and|i|we) (re)?ordered\b|\bon (back ?)?order\b|\bback.?ordered\b|\bwait(s|ing)? (for|on) (\w+ ){0,3}?(part|device|kit|relay|overload|capacitor|compressor|fan|motor|heater|element|board|control|sensor|thermostat|valve|seal|gasket|switch|timer|belt|pump|fuse|cord|delivery)s?\b` +
		`|\bawait\w* (\w+ ){0,3}?parts?\b|\bparts? (is |are )?(not in stock|to come|coming|on (its|their|the) way)\b`)},
	{record.PassedOn, "close passed on …", false, []string{"pass", "refer", "hand"}, lazily(`^(passed|referred|handed)\b.{0,20}\b(on|over|to)\b|\b(call|job|unit|case|it|client|and|is|was|been) (passed (on|over) to|referred to|handed (on|over) to)\b`)},
	{record.NoFault, "close no fault found …", true, []string{"fault", "nothing", "works"}, lazily(`\bno fault\b|\bnothing (was )?(wrong|found)\b|\bfound nothing\b|\bworks as it should\b`)},
	{record.CalledOff, "close called off …", false, []string{"home", "access", "answer", "cancel", "call", "show", "gone", "sold", "scrap", "thrown", "away"}, lazily(`\b(nobody|no.?one|not) ((was|is) )?(at )?home\b|\bno (access|reply)\b|\bno answer\b.{0,12}(door|bell|phone|call|knock|$)|^cancel\w*|\bcancel\w* (the |this )?(call|visit|appointment|job|order)\b|\b(visit|call|appointment|job) (was |is )?cancel\w*|\bcall(ed)? (it )?off\b|\bno.?show\b` +
		`|\b` + theUnit + ` ((is|was|has been|had been|already|now|unplugged and) )*(gone|sold|scrapped|thrown (away|out)|given away|taken away)\b`)},
}

// endingHints says what can stand behind close.
func endingHints() string {
	var out []string
	for _, e := range endings {
		out = append(out, e.hint)
	}
	return strings.Join(out, ", ")
}

// heardEnding is an ending with the entry that says it.
type heardEnding struct {
	*stop
	entry int
	text  string
}

// hearEnding notes what a text says of how the call ends and of how the unit
// was left.
func (c *Call) hearEnding(text string, closing bool) {
	c.spend(60 * min(len(text), mostWords))
	for _, clause := range clausesOf(text) {
		for i := range endings {
			if e := &endings[i]; (closing || !e.end) && speaksOf(clause, e.quick) && !unsaid().MatchString(clause) && e.said().MatchString(clause) {
				c.endings = append(c.endings, heardEnding{e, c.entry, text})
			}
		}
		if m := leftSaid().FindStringSubmatch(clause); m != nil {
			c.set("left", strings.TrimSpace(m[1]))
		}
	}
}

// unsaid tells a clause of what did not happen, or may.
var unsaid = lazily(`\b(not|never|n.t) (been |be |have |to )?(declin|refus|reject|cancel|order|wait|call|pass|refer|hand)|\b(whether|if|unless|unsure|not sure|may|might|would|could|perhaps|maybe)\b`)

// ending is why the call stops short of its repair, nil when nothing says so
// or work came after it. Of several the last counts.
func (c *Call) ending() *heardEnding {
	last := c.lastMended()
	for i := len(c.endings) - 1; i >= max(0, len(c.endings)-mostRenewals); i-- {
		if e := &c.endings[i]; e.entry >= last && c.alive(e.entry) {
			return e
		}
	}
	return nil
}

// awaited is the text that names the part that is waited for: the first that
// speaks of it since the last work.
func (c *Call) awaited() string {
	last := c.lastMended()
	for i := max(0, len(c.endings)-mostRenewals); i < len(c.endings); i++ {
		if e := &c.endings[i]; e.result == record.Waits && e.entry >= last && c.alive(e.entry) {
			return e.text + atEntry(e.entry)
		}
	}
	return ""
}

// lastMended is the last entry of work that counts, 0 when there is none.
func (c *Call) lastMended() int {
	for i := len(c.mended) - 1; i >= 0; i-- {
		if c.alive(c.mended[i]) {
			return c.mended[i]
		}
	}
	return 0
}

// stopped is the ending of a call in which nothing more is done: unrepaired, or
// half-way for want of a part.
func (c *Call) stopped() *heardEnding {
	e := c.ending()
	if e == nil || len(c.repairs()) > 0 && (e.result != record.Waits || len(c.proofMissing()) == 0) {
		return nil
	}
	return e
}

// leftState is a state in which a unit is left, with the words for it. Of
// several that a text names the first in the table counts.
type leftState struct {
	name  string
	words []string
}

var leftStates = []leftState{
	{"tagged out", []string{"tag", "locked out", "lock out", "labelled", "labeled"}},
	{"unplugged", []string{"unplug", "disconnected", "isolated", "plug out", "plug pulled"}},
	{"off", []string{"off"}},
	{"taken away", []string{"taken", "workshop", "scrapped"}},
	{"running", []string{"running", "in use", "switched on", "turned on"}},
}

func leftWords(*Call) []string {
	var out []string
	for _, s := range leftStates {
		out = append(out, s.name)
	}
	return out
}

func stateLeft(text string) string {
	i := slices.IndexFunc(leftStates, func(s leftState) bool { return speaksOf(text, s.words) })
	if i < 0 {
		return ""
	}
	return leftStates[i].name
}

// leftSaid tells a clause of how the unit was left.
var leftSaid = lazily(`(?:\bleft (?:` + leftThen + ` )*|\b` + leftThen + ` (?:(?:was|is) )?left )((?:running|in use|unplugged|disconnected|tagged|locked out|isolated|(?:switched |turned )off)\b.{0,60})`)

func leftCommand() Command {
	return Command{
		Word: "left", Group: Mends,
		Params:   []Param{{Name: "STATE", Kind: Text, Words: leftWords}},
		Help:     "how the unit is left: running, off, unplugged, tagged out or taken away",
		Doc:      "It is also heard in what is said while closing: close client declined, unit left unplugged.",
		Examples: []string{"left running", "left tagged out, key with the client"},
		apply: func(c *Call, a *args) (*Reply, error) {
			t := a.text("STATE")
			state := stateLeft(t)
			if state == "" || speaksOf(" "+t, []string{" not "}) {
				return nil, a.get("STATE").errorf("%q is no state in which a unit is left", clip(t, 40)).
					WithHint("one of: %s; and in your own words what else there is to say of it", strings.Join(leftWords(c), ", "))
			}
			c.set("left", t)
			r := say("Left: " + t + ".")
			if state == "running" && c.energisedAnyway(r) {
				c.defied = append(c.defied, c.entry)
			}
			return r, nil
		},
	}
}

// leftAs is how the unit was left at the end of the visit at hand, with the
// entry that says it; 0 when none does or work came after it.
func (c *Call) leftAs() (text string, entry int) {
	for i := len(c.fields) - 1; i >= 0; i-- {
		c.spend(1)
		f := c.fields[i]
		if f.key == "left" && c.alive(f.entry) && f.entry >= max(c.lastMended(), c.reopened) {
			return f.value, f.entry
		}
	}
	return "", 0
}

// leftMatters reports whether the record is not whole without how the unit was
// left: it is unsafe, or was touched and not repaired.
func (c *Call) leftMatters() bool {
	if _, n := c.leftAs(); n > 0 {
		return false
	}
	e := c.stopped()
	return len(c.unsafe()) > 0 || e != nil && e.result != record.NoFault && (e.result != record.CalledOff || c.touched())
}

// touched reports whether anything was read, seen or made safe.
func (c *Call) touched() bool { return len(c.readings)+len(c.findings)+len(c.dead) > 0 }
