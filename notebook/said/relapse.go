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
	for _, clause := range Clauses(strings.ReplaceAll(text, "’", "'")) {
		told += clause + ", "
		if held := notHeld.get(); Has(clause, failing) && held.MatchString(clause) && !Has(clause, []string{"before", "arriv"}) {
			now = append(now, Telling{clause, true})
			continue
		}
		if supposed.get().MatchString(clause) || !yet.get().MatchString(clause) && (past.get().MatchString(clause) || Has(told, []string{"complain", "before ", "on arrival", "neighbo"})) {
			continue
		}
		fails := Has(clause, failing) && (fail.get().MatchString(clause) || yet.get().MatchString(clause) && onceMore.get().MatchString(clause))
		if fails || !mending.get().MatchString(clause) {
			now = append(now, Telling{clause, fails})
		}
	}
	return now
}

// failing are beginnings of words of which a clause that fails holds one.
var failing = []string{"quit", "stop", "die", "trip", "cut", "shut", "act", "same", "better", "change", "back", "part", "need", "not ", "n't", "repair", "again", "still", "only", "leak", "drip", "no ", "too ", "shot", "toast", "kaput", "fried", "finish", "done for", "leg", "wait"}

var (
	fail = pattern{expr: `\bquits?\b( (again|after|on|mid\w*|heating|cooling|running|working|spinning)\b|$)|\b(stops|stopped) (again|after|heating|cooling|running|working|turning|spinning|mid\w*|half|early|dead|by itself)\b|^(it |<the><it> )?(stops|stopped)$|\b(it|<it>) (has |just )?(died|dies)\b|^died\b` +
		`|\b(trips|tripping)\b|\b(breaker|gfci|rcd|fuse|it|<it>) (has |have |just )?tripped\b|\bcuts (out|off)\b|\b(it|<it>) cut (out|off)\b|\bshuts (itself )?(off|down)\b|\bact(s|ing) up\b|\bsame (again|problem|fault|issue|trouble|complaint|as before|thing)\b|\bno better\b|\bno change( (in|at|after|yet|since)\b|$)|\bnot (any better|better|fixed|cured|mended|solved)\b` +
		`|\b(fault|problem|issue|trouble|noise|leak|it|code) (has |is |just )?(comes?|came) back\b|\b(fault|problem|issue|trouble|noise|leak) (is )?back\b|^(it |<the><it> )?(came|comes) back( again| on| already)?$|^(it |<the><it> )?(still )?(leaks|drips)( (water|again|badly|now|at|from|all|under|over|everywhere)\b.*)?$|^(still )?no (cool\w*|heat|spin|drain|start|power|hot water|flame|tumble|tumbling)( (again|now|at all|yet|still))*$|\btoo (hot|cold|warm|slow)( (again|now|still))*$|\b(comp|compressor|motor|<it>|pump|board|element|heater|sealed system) (is |has )?(shot|toast|kaput|fried|finished|done for|had it)\b|\b(wait(s|ing)? (for|on)|await(s|ing)|needs) ((a|the|another|new|more|one) )*(parts?|<part>)\b|\bwait(s|ing)? (for|on) (the |an? |her |his |their )?(gas (co\w*|supplier|fitter)|electrician|plumber|landlord|hvac\w*|supplier|specialist|builder)\b`}
	yet = pattern{expr: `\b(still|again|keeps|same)\b`}
	// onceMore tells what fails still or again.
	onceMore = pattern{expr: `\b(tripped|blew|blown|burn(t|ed) out|went out|fails|failed|dead|iced|icing|ices|froze|frozen|freez(es|ing) up|drips?|seized|locked up|leaks|leaking|leaked|stuck|doing (it|that|the same)|at it|problem|fault|trouble)\b.*\bagain\b` +
		`|\bstill (feels it|bites|dead|broken|bad|the same|noisy|leaks|leaking|iced|icing|stuck|tripping|humming|clicking|not (cold|cool\w*|heat\w*|work\w*|right|good|start\w*|run\w*|spin\w*|drain\w*|fill\w*|dry\w*|hot|warm)|\w*n't (cool|heat|work|start|run|spin|drain|fill|dry|turn|tumble))\b`}
	// notHeld tells that the repair did not.
	notHeld = pattern{expr: `\b(did|does|wo)(n't| not) (hold|last|help|cure)\b|\brepair (has )?(failed|not holding)\b|\b(have|need|will|going) to come back (with|for|to fit)\b|\bonly (gets|reaches|warms|heats|cools) |\bonly (one|a|1) leg\b|\blost (a|one) leg\b|\b(one|a) leg (is )?(lost|missing|dead|gone|out)\b|\b(did(n't| not)|not|n't) (do (a |the )?)?leak test(ed)?\b|\b(could|can)(n't|not| not) find (the |a |any )?leak\b|\bneeds? (a |an |the )?(plumber|electrician|gas (fitter|co|company)|hvac\w*|builder|specialist)\b`}
	past    = pattern{expr: `\b(did(n't| not)?|was|were|wasn't|had|been|used to|before|earlier|previous\w*|original\w*|old|said|reported|since|yesterday|ago|last (week|night|month|year|visit)|removed|because|due to|spoil(ed|t))\b`}
	// supposed tells what may be, what is denied and what stops as it should.
	supposed = pattern{expr: `\b(if|unless|until|whether|should|in case|may|might|could|would|no longer|no more|any ?more|how to|told to|test button|kettle|toaster|hair ?dryer|next door)\b|\b(no|not|n't|never|without|nor|nothing|zero|don't|doesn't|won't|didn't) ((\w+ly|a|single|nuisance|been|have|has) )*(trip|stop|quit|cut|shut|die|dying|act)|\btrips? to\b|\btrips (at|of) \d` +
		`|\b(cuts|shuts|trips|stops|clicks) (itself )?(out|off|down)? ?(at (its|set|the|\d)|on (temp|time|limit)|when)|\b(as it should|normal\w*|properly|correctly)\b|\b(leak|nois|drip|smell|rattl|squeal|vibrat|smok|alarm|beep)\w* (has |have |is |now )*(stop|quit|gone)|\b(client|customer|owner|i|we|power|heat|flame) (has |have )?c[ao]mes? back\b`}
)

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

// Denied reports whether a clause says of something that it is not there.
func Denied(clause string) bool { return isNone.get().MatchString(clause) }

var isNone = pattern{expr: `^(no|not|none|zero|never|without)\b|\b(no more|no longer|gone|fixed|cured|solved|none|any ?more)\b`}

// Warms reports whether a clause says that what should be cold is warm again.
func Warms(clause string) bool { return warms.get().MatchString(clause) }

var warms = pattern{expr: `^(still |it |now )*blow(s|ing)? (out )?(warm|hot)( air)?( again| now| still)*$|\b(warm|melt\w*|thaw\w*)\b.*\b(again|now)\b|\b(again|still|now|back) .*\bwarm\b`}
