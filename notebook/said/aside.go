package said

import "strings"

// OfThis is a text without what tells nothing of how this machine does now: what the
// client says of the time before the visit or of other people, and what is said of another
// machine that is named as such, up to where this one is named again (common practice
// throughout). What is said to be so still, again or now stays.
func OfThis(text, unit string, visiting bool) string {
	low := " " + strings.ToLower(text[:min(len(text), MostBytes)])
	own := 0
	if Has(low, elseWords) && sortsIn(low) != 0 && !anotherOne.is(strings.ToLower(unit)) {
		own = sortsIn(unit)
	}
	told := Has(low, tellWords)
	if own == 0 && !told {
		return text
	}
	var out []string
	of, list := false, Clauses(strings.TrimSpace(low))
	for i, c := range list {
		rest := reporter.get().ReplaceAllString(c, "")
		switch {
		case own != 0 && ofElse(rest, own):
			of = true
		case of && (present.is(c) || sortsIn(c)&own != 0):
			of = false
		}
		before := told && !present.is(c) && (rest != c || i > 0) && (longBefore.is(rest) || othersDid.is(rest) || visiting && wasOnly.is(rest) && !calledBack.is(low) ||
			whyCalled.is(rest) || i+1 < len(list) && whyCalled.is(list[i+1]))
		if !of && !before {
			out = append(out, c)
		}
	}
	if len(out) == len(list) {
		return text
	}
	return strings.Join(out, ", ")
}

var (
	tellWords = []string{"say", "said", "told", "tell", "claim", "think", "report"}
	elseWords = []string{" next", " back", "her ", "his ", "their ", "second ", "spare ", "garage", "basement", " has ", " have ", "look", " call", " ask", "neighbo", "mom", "mother"}

	// present tells a clause of what is so now, or came after the repair.
	present = pattern{expr: `\b(now|again|still|today|tonight|overnight|last night|this (morning|afternoon|evening|one|unit|machine)|here|since (the|your|my) (repair|visit|fix)|after (the|your|my|you|i)|yesterday)\b`}
	// calledBack tells that it was told later than on the visit.
	calledBack = pattern{expr: `\b(rang|rung|phoned|called|calls|texted|emailed|messaged|call.?back)\b`}
	longBefore = pattern{expr: `\b(was|were|had been|been|used to|did(n't| not)|would(n't| not)?)\b.*\bfor (\w+ ){0,2}(weeks?|months?|years?|ages)\b|\b(was|were|had been) \w+ (\w+ )?before (she|he|they) (called|rang)\b`}
	wasOnly    = pattern{expr: `^(\w+ ){0,3}(was|were|had been) (\w+ ?){1,3}$`}
	whyCalled  = pattern{expr: `^(and )?(that'?s|that is|that was|which is|this is|so) (why|when|what|the reason)?( |$)*(she|he|they|we|i|client|cust\w*|owner|tenant)( \w+)? (called|rang|phoned|booked|here|came|made)\b`}
	othersDid  = pattern{expr: `^((his|her|their|the|a|last|previous|first|other|some|old) )*(guy|tech\w*|man|company|repair\w*|fellow|outfit|brother|sons?|daughter|neighbou?r|husband|wife|kids?|children|grandkids|dog|cat)( \w+)? (over)?(charged|broke|tried|quoted|cost|bent|spilt|spilled|dropped|scratched|sold|lost|ripped|messed|took|fitted|wanted)\b`}
)

var (
	// onNext tells a clause of a machine that is to be seen to, or is the client's besides;
	// anotherOne one of another machine of any sort.
	onNext     = pattern{expr: `\b(back|come|coming|look\w*|call|ask\w*|return)\b.*\b(for|at|about|to) (the|an?|her|his|their|my|our) (\w+ )?<named>|\bnext (visit|time|week|month|job|call|stop|one)\b.*<named>|<named>( is| comes)? next\b|^((also|and|she|he|they) )*(her|his|their|has an?|have an?) (\w+ )?<named>`}
	anotherOne = pattern{expr: `\b(other|another|second|spare|garage|basement|neighbou?r'?s|mother'?s|mom'?s) (\w+ )?<named>`}
	// sorts are machines that people call by one another's name.
	sorts = [][]string{{" dishw"}, {" washer", " washing"}, {" dryer", "/dryer"}, {" fridge", " freezer", " refrig", " ice"}, {" oven", " range", " stove", " cooktop", " hob"}, {" microw"}, {" furnace", " boiler", " heat", " ac "}, {" dispos"}}
)

// sortsIn are the sorts of machines that a text names, a bit each.
//
//go:noinline
func sortsIn(text string) (list int) {
	text = " " + text + " "
	for i, s := range sorts {
		if Has(text, s) {
			list |= 1 << i
		}
	}
	return list
}

// ofElse reports whether a clause is of another machine than one of these sorts.
//
//go:noinline
func ofElse(clause string, unit int) bool {
	return anotherOne.is(clause) || onNext.is(clause) && sortsIn(clause)&unit == 0
}
