package said

import (
	"slices"
	"strings"
)

// givenUp reports whether a clause takes back that a device is in its circuit, or says
// that it does nothing there.
//
//go:noinline
func (g *Guard) givenUp(clause string) bool {
	if g.way == out {
		return false
	}
	if bridgedAnew.is(clause) || doesNothing.is(clause) {
		return true
	}
	if !useless.is(clause) || wasBad.is(clause) {
		return false
	}
	list := devicesOf(clause, false)
	return len(list) > 0 && (len(g.devices) == 0 || slices.ContainsFunc(list, func(now string) bool {
		return slices.ContainsFunc(g.devices, func(was string) bool { return isBack(was, now, false) })
	}))
}

// undone reports whether a clause says that what its line put right before is as it was
// again: the last state that is told counts.
//
//go:noinline
func (g *Guard) undone(clause string, before []string) bool {
	if g.way == out || !Has(clause, again) || neverAgain.is(clause) || strings.Contains(clause, "circuit") {
		return false
	}
	clause = earthWires.get().ReplaceAllString(clause, "$1 wire")
	named := len(devicesOf(clause, false)) > 0
	switch {
	case onAgain.is(clause), g.way == unbridged && !named && itAgain.is(clause), g.way != unbridged && offAgain.is(clause):
		return true
	}
	return !named && wireAgain.is(clause) && failed.is(strings.Join(before, ", "))
}

// again are words without one of which nothing is undone. onAgain tells a bridge that is
// on again, itAgain the same without its name, offAgain what came off again, and
// wireAgain what bridges where the new one failed.
var (
	again      = []string{"back", "again", "off", "over"}
	neverAgain = pattern{expr: `\b(not|never|told|if|advis\w*|no (more|longer))\b|\bdon't\b|\bdo(es)?n't (go|need|come)\b`}
	onAgain    = pattern{expr: `
<bridge>( wires?| leads?)? (is |was |were |went |goes |put |now |right |straight |all )*back (in|on|across|over|round|around|past|there|again)\b
<bridge>( wires?| leads?)? (is |was |were |went |goes |put |now )*(in|on|over|across|past)( it| there)? again\b
(wire|lead)s? (is |was |were |went |put |now )*back (across|over|round|around|past|togeth?er|togther)\b
(jump(er)?|bridg|by-?pass|link|short|loop)ed( it| them| that)? (over|back|again)\b
`}
	itAgain   = pattern{expr: `^(then |so |but |it |and |n |had to |has to |went |goes |is |was |put |stuck |popped |slapped |clipped |hooked |set |that |them |her |right |straight )*((back )(in|on|over|across)( it)?( again)?|(in|on|over|across)( it)? again)( (now|then|after\w*|today|(for|til|till|until) .*))?$`}
	offAgain  = pattern{expr: `^(then |but |it |and |so |n |they )*(((fell|came|comes|popped|blew|dropped|slid|falls) |(took|pulled|left|leaving) (it |them |that )?)(right |back |straight )*(off|out)\b|(back )?(off|out) again\b)`}
	wireAgain = pattern{expr: `\b(wire|lead)s? (is |was |put |went )*back (on|in)( it)?$`}
	failed    = pattern{expr: `\b(blew|blown|popp(ed|ing)|pops|tripp(ed|ing)|trips|bad|faulty|wrong|fail\w*|dead|no good)\b|\bwo?n't\b`}
)

// listed lists one more; apart, as it takes room wherever it stands.
//
//go:noinline
func listed(list []Guard, g *Guard) []Guard { return append(list, *g) }

// otherBridge tells a clause of a bridge that is put in, newOne of what may be one.
var (
	otherBridge = pattern{expr: `\b(put|fitt?ed|fit|made|used?|added|wired|soldered|crimped|twisted)\b.*\b(an?|another|some)( [\w-]+)? (jumper|wire|link|bridge|strap|(clip )?lead|nut|(piece|bit) of (wire|copper))\b|\b((long|short|bett|thick|fatt|neat|strong|heavi|tidi|tight|fresh)er|another|proper) one\b|\b(wire ?nut|clip|wire|link|lead|strap|splice) on$`}
	newOne      = pattern{expr: `\b(a |the )?(new|second|other|spare) one\b`}
)

// bridgesAgain reports whether a clause says that another bridge took the place of the
// one just taken off; "a new one" is of the device where that was named.
//
//go:noinline
func bridgesAgain(clause string, named bool) bool {
	return otherBridge.is(clause) || bridgedOver.is(clause) || resets(clause) || !named && newOne.is(clause) && len(devicesOf(clause, false)) == 0
}

// frees reports whether words say that a bridge came off, whatever else they say.
//
//go:noinline
func frees(text string) bool { return backs().unbridged.MatchString(text) }

// resets reports whether a clause puts back what was just taken off, other than in its circuit.
//
//go:noinline
func resets(clause string) bool {
	return setAgain.is(clause) && !strings.Contains(clause, "circuit")
}

var (
	// setAgain tells a clause that puts back what was just taken off, bridgedOver one by
	// which something else holds the device or joins its wires.
	setAgain    = pattern{expr: `\b(put|stuck|stick|hooked|clipped|set|slapped|threw|shoved) (it|that|them|her|(the )?(jumper|tape|magnet|strap|clip|foil|cheater)s?) back\b|^(then |it |so |goes |went )*(put )?back on\b|^(then |so )*put back\b|\bre-?installed( it)?$|\bback (on|in) (til|till|until|after|for|cause|bc|so)\b`}
	bridgedOver = pattern{expr: `\b<holder> (is |was |now )*(on|in|instead|across|there|holding)\b|\b(us(ed|ing)|holding|held|stuck|put)( it)?( w| with| by| on| in)?( a| an| the)? <holder>\b` +
		`|\b(tied|nutted|twisted|joined|butted|spliced|crimped|soldered|wirenutted|married|bolted|screwed) (the |both |two |its )*(\w+ )?(wires?|leads?|ends?|spades?|them|it) together\b|\b(wires?|leads?|ends|spades) (\w+ )?(together|under (one|a|the same|same)|on one|wirenutted|nutted|tied|twisted|spliced|joined|butted|soldered)\b|^(soldered|joined|nutted|spliced|twisted|tied|crimped) (the |both |two |its )*(leads|wires|ends)$`}
	bridgedAnew = pattern{expr: `\b(tied|taped|wedged|strapped|bound) (it|them)( up| shut| down)? again\b|\bre-?(jump|tap(ed|ing)\b|by-?pass|bridg|strap|tied\b|wedg)\w*`}
	// doesNothing and useless tell of a device that does not do what it is for, which
	// wasBad are of the old one.
	doesNothing = pattern{expr: `^(but |it |still |that |ol |they )*(do(es)?n't|do not|does not|won't|will not|not) (work|trip|open|stop|kill|shut|cut|lock|drop|latch)\w*|^(but |it )*never (opens|trips|works|closes)\b|^(but |it |is )*wrong (\w+ )?(temp|one|size|part|rating)\b|\b(spins?|runs?|starts?|heats?|cooks?|tumbles?|turns|goes|fires) (\w+ )?(with |w )?(the )?(lid|door) (is )?(up|open|ajar)\b|^(but |it |is )*(no good|useless|(still )?loose( still)?|still (dead|bad|loose))$|\bno tube$`}
	useless     = pattern{expr: `\b(do(es)?n't|do not|does not|won't|will not|not|never) (\w+ )?(work|trip|open|stop|kill|shut|cut|lock|drop|latch)\w*|\b(dead|bad|stuck( closed| shut| on)?|shot|junk|no good|faulty|useless|loose|loose still)$|\bstuck closed\b`}
	wasBad      = pattern{expr: `\b(old|was|were|had|found|orig\w*)\b`}
	// noPin tells a line of a plug or cord without its earth.
	noPin = pattern{expr: `\b(2|two)[ -]?(prong|pin|wire|blade|conductor)|\b(no|without|w/?o) (\w+ ){0,2}(ground|earth|gnd|grnd|grd|green)\b|\b(ground|earth|gnd|grnd|grd|green)( wire| pin| prong| lead)? (is |was |still )*(not|left off|off|cut|loose|unhooked|open|missing|isn't|wasn't)\b`}
)
