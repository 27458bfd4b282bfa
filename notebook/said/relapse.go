package said

import (
	"slices"
	"strings"
)

// Telling is a clause of how a machine does now, and whether it says outright that it
// fails.
type Telling struct {
	Clause string
	Fails  bool
}

// Now gives the clauses of a text that tell how a machine does now. What was, what may
// be, what is denied and what was mended is left out, unless it is still so.
func Now(text string) (now []Telling) {
	told := "" // the clauses so far
	list := Clauses(strings.ReplaceAll(text, "’", "'"))
	for i, clause := range list {
		told += clause + ", "
		if i+1 < len(list) && Has(list[i+1], []string{"no", "as it", "as exp", "usual", "nil", "0", "cycle"}) && takenBack.get().MatchString(list[i+1]) {
			continue
		}
		if i > 0 && Has(told, []string{"empties", "pit", "drains", "pumps"}) && rested.is(clause) {
			continue // a pump that has drained its pit
		}
		may := Has(clause, failing)
		if may && notHeld.get().MatchString(clause) && !Has(clause, []string{"before", "arriv"}) {
			now = append(now, Telling{clause, true})
			continue
		}
		if supposed.get().MatchString(clause) || !yet.get().MatchString(clause) && (past.get().MatchString(clause) || Has(told, []string{"complain", "before ", "on arrival", "neighbo"})) {
			continue
		}
		fails := may && (fail.get().MatchString(clause) || !Denied(clause) && trouble.get().MatchString(clause) || yet.get().MatchString(clause) && onceMore.get().MatchString(clause))
		if fails || !mending.get().MatchString(clause) {
			now = append(now, Telling{clause, fails})
		}
	}
	return now
}

// FailsAfter reports whether a text of work tells, behind it, that it did not help.
func FailsAfter(text string) bool {
	clauses := Clauses(text)
	last := -1
	for i, c := range clauses {
		if mending.get().MatchString(c) {
			last = i
		}
	}
	return last >= 0 && slices.ContainsFunc(Now(strings.Join(clauses[last+1:], ", ")), func(t Telling) bool { return t.Fails })
}

// rested tells a clause of what goes off, and no more.
var rested = pattern{expr: `^(and |it )*(shuts|turns|switches|kicks|cuts|goes|stops)( itself| off| by itself)*$`}

// takenBack tells a clause that says of the one before that it is none, or as it should.
var takenBack = pattern{expr: `^((that'?s |that is |it'?s |this is |which is |is )?(quite |all )?(normal|as it should|as expected|expected|usual)\b|cycle[sd] off\b|(none|nil|no|0|not any)( (seen|found|now))?$)`}

// failing are beginnings of words of which a clause that fails holds one.
var failing = []string{"quit", "stop", "die", "trip", "kick", "goes", "cut", "shut", "act", "same", "better", "change", "back", "part", "need", "not ", "n't", "repair", "again", "still", "only", "leak",
	"drip", "too ", "overheat", "exhaust", "vent", "leg", "shot", "toast", "kaput", "finish", "done for", "had it", "fried", "dead", "seiz", "burn", "ground", "gone", "fail", "wait", "tag", "meter", "throw", "show", "flash", "code", "wet", "damp", "soak", "barely", "hardly", "times", "intermit", "half the", "lock", "fro", "freez", "ice", "icing", "went", "stall", "no ", "los", "wrong", "made the", "made up"}

// fail and trouble tell what fails, trouble where nothing is denied.
var (
	fail = pattern{expr: `
quits?( (again|after|on|mid\w*|heating|cooling|running|working|spinning)\b|$)
(stops|stopped) (again|after|heating|cooling|running|working|turning|spinning|mid\w*|half|early|dead|by itself)\b
^(it |<the>(<it>|comp\w*) )?(stops|stopped)$
(it|<it>) (has |just )?(died|dies)\b
^died\b
(trips|tripping)\b
(breaker|gfci|rcd|fuse|it|<it>) (has |have |just )?tripped\b
^(it |<the><it> )?(has |just )*tripped <the>(breaker|fuse|gfci|rcd|overload|ol)( (again|when i left|after|overnight|at|later|within|once|twice)\b|$)
(will|going to) (soon |surely |only )?fail\b
cuts (out|off)\b
(it|<it>) cut (out|off)\b
shuts (itself )?(off|down)\b
act(s|ing) up\b
same (again|problem|fault|issue|trouble|complaint|as before|thing)\b
no better\b
no change( (in|at|after|yet|since)\b|$)
not (any better|better|fixed|cured|mended|solved)\b
(fault|problem|issue|trouble|noise|leak|it|code) (has |is |just )?(comes?|came) back\b
(fault|problem|issue|trouble|noise|leak|code) (is )?back\b
^(it |<the><it> )?(came|comes) back\b
(wait(s|ing)? (for|on)|await(s|ing)|needs) ((a|the|another|new|more|one) )*(parts?|<part>)\b
(wait(s|ing)? (for|on)|await(s|ing)) ((a|an|the|another|her|his|their) )*(<trade>|gas (co\w*|supplier)|power co|utility|landlord|supplier)
^<subj>(won't|can't|cannot|doesn't|does not|will not|isn't|is not|aren't|not) ((always|even|really) )?<does>
^<subj>(won't|can't|doesn't|does not|will not|not) (get|getting|go|going) ((up|down) )?(below|above|under|over|past|to|cold|hot|warm|cool)\b
kicks (out|off) on\b
^<subj>goes out\b
^<subj>no (water|air|heat|flame) (comes|coming)\b
^<subj>no (power|start|spin|drain|hot water|flame|tumbl\w+)( (again|now|at all|yet|after)\b|$)
`}
	trouble = pattern{expr: `
^<subj>(leaks|leaking|drips|dripping)( (again|now|still|bad|badly|water|oil|gas|a (bit|little|lot)|all over|everywhere|slightly|from|on|at|out|under)\b|$)
^<subj>((gets?|getting|runs?|running|blows?) )?((way|far|much|still|again|a bit) )*too (hot|cold|warm|slow|loud)( (again|now|for)\b|$)
^<subj>(overheats|overheating)\b
^<subj>(died|quit|stalled|locked up|seized|failed|tripped|froze|iced|burned|burnt|blew) (up |over |out |on |off |itself )*(again|after|within|on \w+ load|mid\w*|already)\b
^<subj>(has |just )*(died|stalled|locked up|seized up|went (out|off|dead|down))$
^<subj>(lost|loses|losing) (cooling|heat|cold|temp\w*|power|flame)\b
(freez(es|ing)|froze|frozen|frosts|frosted|ices|icing|iced) (up|over|solid)\b
(exhaust|vent)( temp\w*)?( at| is| now| up to| hits)* (19\d|[2-4]\d\d) ?(f|deg|°)
only one leg\b
(lost|lose|loses|losing) (a|one) leg\b
(a|one) leg (is |has )?(dead|out|lost|missing|gone|down)\b
(comp|<it>|sealed system|<part>)s? (finished|done for|had it|shot|toast|fried|kaput)\b
(comp|sealed system|<part>)s? (is|are|has) ((now|also|too) )*(dead|seized|burnt|burned|grounded|gone|failed|failing|finished|done for|had it|shot|toast|fried|kaput)\b
gas (is |was )?(still )?(off|shut|locked)( off)? (at|by) (the )?meter\b
^(red.?)?tagged( out| off)?$
(throws|throwing|shows|showing|flashes|flashing|displays|gives) ((an?|the|same|that) )*((error|fault) )?(codes?|errors?|faults?|[efh]-?\d+)\b
(code|error|fault|[ef]-?\d+) (is |has |just )*(again|returned|came up|comes up|pops up|popped up|showing)\b
(clothes|load|towels|laundry|dishes) (is |are |still |come out |came out )*(wet|damp|soaked|soaking)\b
(barely|hardly) (cool|heat|drain|spin|run|blow|dr(y|ies)|fill|any|works?)
(works|runs|heats|cools|starts|spins|drains) (only )?(sometimes|intermittent\w*|half the time)\b
^(intermittent|sometimes (it )?(won't|doesn't|quits|stops))\b
`}
	yet = pattern{expr: `\b(still|again|keeps|same)\b`}
	// onceMore tells what fails still or again.
	onceMore = pattern{expr: `
(tripped|blew|blown|burn(t|ed) out|went out|fails|failed|dead|iced|icing|froze|frozen|seized|locked (up|out)|leaks|leaking|leaked|stuck|doing (it|that|the same)|at it|problem|fault|trouble)\b.*\bagain\b
(nois\w*|loud|squeals?|squealing|squeaks?|squeaking|rattles?|rattling|bangs?|banging|grinds?|grinding|vibrates?|shakes?|shaking|walks|walking|thumps?|wet|damp|smells?|smokes?|sparks|beeps|beeping|off|quits?)( \w+){0,3} again\b
again( \w+){0,3} (noisy|loud|squeals|leaking|dead|out)\b
still (feels it|bites|dead|broken|bad|the same|noisy|loud|leaks|leaking|drips|dripping|iced|icing|frozen|stuck|tripping|trips|humming|clicking|wet|damp|grinds|grinding|squeals|squealing|rattles|rattling|bangs|banging|shakes|shaking|walks|walking|slow)\b
still (won't|not) <does>
still (not (cold|cool\w*|right|good|hot|warm)|no (power|cool\w*|heat|spin|drain|start|water|ice))
still \w*n't (cool|heat|work|start|run|spin|drain|fill|dry|turn|tumble)\b
keeps (on )?(tripping|stopping|quitting|cutting|shutting|blowing|freezing|icing|leaking|clicking|dying|running on|beeping)\b
`}
	// notHeld tells that the repair did not.
	notHeld = pattern{expr: `
(did|does|wo)(n't| not) (hold|last|help|cure)\b
repair (has )?(failed|not holding)\b
(have|need|will|going) to come back (with|for|to fit)\b
only (gets|reaches|warms|heats|cools)\b
(did(n't| not)|not|\w*n't) (do (a |the )?)?leak test(ed)?\b
(could|can)(n't|not| not) find (the |a |any )?leak\b
made (up )?(the |those )?(temp\w*|readings?|values)( up)?$
put <the>old (\w+ )?(one|<part>) back
^<the>old (\w+ )?(one|<part>) (is |was )?(re-?(fitt|install)ed|put back|back in)\b
^(<the>new (\w+ )?(one|<part>) (is |was )?)?not (yet )?(fitt|install)ed( yet)?$
new (\w+ )?(one|<part>) (is|was) (the )?wrong\b
needs? (a |an |the )?(plumber|electrician|gas (fitter|co|company)|hvac\w*|builder|specialist)\b
`}
	past = pattern{expr: `
(did(n't| not)?|was|were|wasn't|had|been|used to|before|earlier|previous\w*|original\w*|old|said|reported|since)\b
(yesterday|ago|last (week|night|month|year|visit)|removed|due to|spoil(ed|t)|threw|thrown|thawed|defrosted)\b
`}
	// supposed tells what may be, what is denied, what stops as it should and what another
	// thing does.
	supposed = pattern{expr: `
(leak.?(check|test|search)ed|no (heat|burn) (marks?|damage)|bypass plug)\b
(if|unless|until|whether|should|in case|may|might|could|would|no longer|no more|any ?more|how to|told to|kettle|toaster|hair ?dryer|next door)\b
(no|not|\w*n't|never|without|nor|nothing|zero|don't|doesn't|won't|didn't) ((\w+ly|a|single|nuisance|been|have|has) )*(trip|stop(s|ped|ping)\b|quit|cut|shuts|die|dying|act)
trips? to\b
trips (at|of) \d
(cuts?|shuts?|trips|stops|clicks) (itself )?(out|off|down)? ?(at (its|set|the|\d)|on (the )?(temp|time|limit|its|thermo|t?stat\b|set)|when)
(as it should|normal\w*|properly|correctly|by design|as designed|satisfied|as expected)\b
(leak|nois|drip|smell|rattl|squeal|vibrat|smok|alarm|beep)\w* (has |have |is |now )*(stop|quit|gone)
(client|customer|owner|i|we|power|heat|flame|she|he|lady) (has |have )?c[ao]mes? back\b
^(came|comes|went) back (after (\w+ )?(coffee|lunch|break|dinner|tea|an errand|parts?)|with|to|for|in|on|and)\b
(test button|trips and (re-?sets?|holds)|same circuit|(door|lid) (is )?open)\b
`}
)

// Denied reports whether a clause says of something that it is not there.
func Denied(clause string) bool { return isNone.get().MatchString(clause) }

var isNone = pattern{expr: `^(no|not|none|zero|never|without)\b|\b(no more|no longer|gone|fixed|cured|solved|none|any ?more)\b`}

// Warms reports whether a clause says that what should be cold is warm again.
func Warms(clause string) bool { return warms.get().MatchString(clause) }

var warms = pattern{expr: `
(warm|melt\w*|thaw\w*)\b.*\b(again|now)\b
(again|still|now|back) .*\bwarm\b
(blows?|blowing) (\w+ )?(warm|hot)\b
(gets?|getting|going) warm\b
(temp\w*|cabinet|box|fridge|freezer|\d+ ?[fc]?) .*(climbing|rising|going up|creeping up)\b
`}

// Warmed reports whether a clause says of what was cold that it is warm: by its word,
// or by a number that is warm in either unit (common practice).
func Warmed(clause string) bool { return Has(clause, cabinets) && warmed.get().MatchString(clause) }

var (
	cabinets = []string{"freezer", "fridge", "box", "cooler"}
	warmed   = pattern{expr: `^<the>((freezer|fridge|box|cooler)( (is|at|back|up|to|now|feels|gone|went))* (warm|4[5-9]|[5-9]\d)|freezer( (is|at|back|up|to|now))* [2-4]\d)( ?(°|deg\w*)? ?[fc])?( (again|now|today|overnight|this morning|when i left))?$`}
)

// Cools reports whether a clause says that what should heat does not.
func Cools(clause string) bool { return Has(clause, coolQuick) && unheated.get().MatchString(clause) }

var (
	coolQuick = []string{"cold", "cool", "warm", "forever", "cycles", "hours", "climb", "takes "}
	unheated  = pattern{expr: `
(blows?|blowing) (\w+ )?(cold|cool)\b
(cold|cool) air\b
(stays?|staying|goes|gone|went|still|again) (stone )?cold\b
cold again\b
(barely|hardly|only luke|luke ?|not) ?warm\b
takes ([1-9]\d|[5-9]|over (a|an|\d+)) ?(m|min\w*|h|hours?) to (light|ignite|fire|start)\b
takes (forever|two cycles|2 cycles|3 cycles|hours)\b
`}
)

// Thaws reports whether a clause says that ice comes off a coil, as it should in a defrost.
func Thaws(clause string) bool {
	return Has(clause, icy) && thaws.get().MatchString(clause)
}

var thaws = pattern{expr: `\b(ice|frost)( is| was| now| all)* (melt|thaw|com|dropp|dripp|fall|slid)(s|ed|ing|es|ts)( away| clear)? ((off|from) (the )?(coils?|evap\w*|fins|heater)|(in|on|during) (a |the )?(\w+ )?defrost)\b`}

// Iced reports whether a clause says that there is ice on a coil or a line.
func Iced(clause string) bool {
	return Has(clause, icy) && !Denied(clause) && iced.get().MatchString(clause)
}

var icy = []string{"ice", "icing", "fro"}

var iced = pattern{expr: `
(ice|frost)( is)?( back)? on ((the|a) )?(\w+ )?(coils?|evap\w*|lines?|suction|fins)\b
(coils?|evap\w*|lines?|suction) (is |are )?((all|half|solid) )?(iced|icing|frozen|frosted|freezing)\b
`}

// Hums reports whether a clause says of a machine that it hums, and no more: so does
// one that runs.
func Hums(clause string) bool {
	return strings.Contains(clause, "hum") && hums.get().MatchString(clause)
}

var hums = pattern{expr: `^((the|it|<it>|comp\w*|is|now) )*(hums|humming)( (again|away|along|now|nicely|quietly|as before))*$`}

// Lacks reports whether a clause says outright that what a phrase says is not there is
// not, as "no cool" does and "no cool air lost" does not.
func Lacks(clause, phrase string) bool {
	rest, ok := strings.CutPrefix(clause, phrase)
	return ok && strings.HasPrefix(phrase, "no ") && lacks.get().MatchString(rest)
}

var lacks = pattern{expr: `^(ing)?( (again|at all|now|yet|still|after|from|since|here)\b.*| air)?$`}
