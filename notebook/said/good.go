package said

import (
	"slices"
	"strings"

	"ohmcall/calc/cause"
)

// made are the things that can hurt as they are told of, and how work says that they are
// right: relief valves, guards, covers, buttons that stop it, brackets against tipping, bare wires, fuses that are none.
var made = []struct{ of, good pattern }{
	{pattern{expr: `\b<tpr>`},
		pattern{expr: `\b<newly>(?: (?:the|a|its|new|temperature|pressure|safety))* <tpr>(?: (?:in|on|back|fitted|and|with|w|n|piped|made)\b|$)|\b<tpr><now> <isnew>`}},
	{pattern{expr: `\b<tpr>\b.*\b<plug>|\b<plug>\w* .*\b<tpr>\b`},
		pattern{expr: `\b<plug> (?:is |was |now )*(?:off|out|removed|gone)\b|\b(?:removed|took|pulled|unscrewed|cut) (?:the |its )?<plug>\b|\bun(?:plugg|capp|cork)ed (?:the )?<tpr>`}},
	{pattern{expr: `\bguard|\bgrill`},
		pattern{expr: `\b(?:new|replaced|renewed|re-?fitted|fitted|installed|bolted(?: back)?(?: on)?|screwed|put back|put)(?: (?:the|a|its|new|belt|fan|blade|pulley|chain|coupling|drive))* (?:guard|grille?)(?: (?:in|on|back|over|round)\b(?: shelf| order)?|$)|\b(?:guard|grille?)<now> (?:replaced|renewed|re-?fitted|fitted|back|in place|bolted (?:back )?on|on$)`}},
	{pattern{expr: `\bcovers?\b`},
		pattern{expr: `\b(?:new|fit|fitted|installed|put(?: on)?)(?: (?:the|a|its|new|term(?:inal)?|comp\w*|disc\w*|jbox|junction|box|elem\w*))* covers?(?: (?:in|on|back)\b|$)|\bcovers?<now> (?:<isnew>|on$|screwed (?:back )?on)`}},
	{pattern{expr: `\be[ -]?stop\b|\bstop button`},
		pattern{expr: `\b(?:e[ -]?stop|stop button)<now> (?:\w+ )?(?:stops|drops|works|kills)\b`}},
	{pattern{expr: `\banti[ -]?tip|\btip(ping)? bracket`},
		pattern{expr: `\b(?:new|installed|fitted|put in|put on|mounted|screwed (?:down|on))(?: (?:the|a|new))* <antitip>|\b(?:anti[ -]?tip(?: bracket| device| chain)?|tip(?:ping)? bracket)<now> (?:in|on|in place|back|fitted|installed|mounted)(?: place| floor| wall)?$`}},
	{pattern{expr: `\b(bare|exposed|frayed|rubbed|chafed|nicked)\b.*\b<wires>|\binsulation\b.*\b<wires>|\b<wires> (\w+ )?(bare|exposed|frayed|rubbed|chafed|nicked)`},
		pattern{expr: `\b(?:new|replaced|renewed|rewired|insulated|sleeved|heat ?shrunk)(?: (?:the|a|its|new|bare|hot|exposed|frayed))* <wires>(?: (?:in|on|fitted|and|n)\b|$)|\b(?:insulated|sleeved|heat ?shrunk) it\b`}},
	{pattern{expr: `\bslugs?\b|\bcopper (pipe|tube|tubing|bar)`},
		pattern{expr: `\b(?:correct|right|proper|rated) (?:size |sized )?fuses?(?: in| fitted|$)`}},
	{pattern{expr: dripsOn},
		pattern{expr: `\b(?:box|board|pcb|terminals?|wiring)(?:<now>| dried| blown| wiped| out)* (?:dry|dried)\b`}},
	{pattern{expr: `\bext(ension)? (cord|lead|cable)`},
		pattern{expr: `\b(?:ext(?:ension)? )?(?:cord|lead|cable) (?:is |was )*(?:gone|out|removed|thrown)\b|\b(?:removed|got rid of|took|tossed|binned|threw|scrapped)(?: the| out| away)* (?:ext(?:ension)? )?(?:cord|lead|cable)|\b(?:cord|lead|cable) binned\b|\bplugged (?:it )?(?:straight |str8 |direct(?:ly)? |in |back )*(?:in|into|to|in to) (?:the )?wall\b`}},
}

const dripsOn = `\b(leak|drip|weep|water|wet)\w*\b.*\b(box|board|pcb|terminals?|wiring)\b`

var (
	besides = []string{",", ";", " and ", "pipe", "line", "tube", "discharge"} // what more was told of stays
	// spoils tells what leaves it as it was, or does so again; harmlessly what does not.
	spoils = pattern{expr: `\b(again|still|leaks?|leaking|drips?|dripping|weeps|til|till|no (tube|pipe|discharge|drain)|stuck|seized|frozen|others?|another|temporar\w*|for now|loose|missing|bad)\b|\b<plug> (is |was |put |screwed )*(on|back|in)\b|\b(plug|capp|cork)ed (it|that|the)\b|\bput (it|that) back\b|\b(put|screwed|fitted|installed)( in)? (a |the )?(cap|plug|nipple|bushing)\b|n't\b|\bre-?(plug|capp|cork)ed\b`}
	// movedOn tells what is only moved, offAfter what came off again, or on.
	movedOn    = pattern{expr: `\b(moved|relocat\w*|shifted|tucked|re-?rout\w*)\b|\b(ran|run|laid|rout\w+|put|hid) (it |them )?(under|over|along|behind|across|through|thru|round|around|past|elsewhere)\b|\bout from\b|\bnow (in|on|under|over|along|behind|across|through|round|around)\b`}
	dripping   = pattern{expr: dripsOn} // of which what is dry was mended as well
	offAfter   = pattern{expr: `(^|[,;] |\b(n|and|then|so|but|it) )(put |went |stuck |screwed |is |was |came |fell |took |popped |blew |left )*(it |that |them |cap |plug |cork )?(back )?(on|in|over|off)( again)?([,;]|$| (after|til|cause|because|as|so|for|when)\b)`}
	harmlessly = pattern{expr: `\bno (more )?(leaks?|drips?)\b|\bdo(es)?n't (leak|drip)\w*`}
)

// MadeGood reports whether words of work say that the thing which another line tells of
// as what can hurt is new, or right, or that it is off.
//
//go:noinline
func MadeGood(told, work string) bool {
	told = strings.ReplaceAll(strings.ToLower(told), ", copper showing", "")
	if Has(told, besides) && !Has(told, []string{"copper"}) || strings.ContainsAny(told, ",;") || strings.Contains(told, "both ") || cause.Partly(work) != "" || halfway.is(strings.ToLower(work)) {
		return false
	}
	if dripping.is(told) && !Mended(work) {
		return false
	}
	if low := strings.ToLower(work); movedOn.is(low) || undoneBehind(told, low) {
		return false
	}
	if spoils.is(harmlessly.get().ReplaceAllString(strings.Join(Clauses(work), ", "), "")) {
		return false
	}
	return slices.ContainsFunc(Clauses(work), func(c string) bool {
		if unheld.is(c) || notYet.is(c) || proposes.is(c) || notDone().MatchString(c) || idle(c) && !strings.HasPrefix(c, "un") && !strings.HasSuffix(c, " plug") {
			return false
		}
		for i := range made {
			if made[i].of.is(told) && made[i].good.is(c) {
				return true
			}
		}
		return false
	})
}

// undoneBehind reports whether words of work say behind what they put right that it is as
// it was again: what was plugged by what goes back on, else by what is off.
func undoneBehind(told, work string) bool {
	for i := range made {
		if m := &made[i]; m.of.is(told) {
			if at := m.good.get().FindStringIndex(work); at != nil {
				behind := offAfter.get().FindString(work[at[1]:])
				return behind != "" && strings.Contains(behind, "off") != strings.Contains(m.of.expr, "<plug>")
			}
		}
	}
	return false
}
