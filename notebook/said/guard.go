package said

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// outs are the ways in which a clause takes a device out, in tags: each step one of
// its tags, far with up to five words before it, near with up to two. The first go on
// into the next clause.
var outs = [][]tag{
	{takes, far | device, far | joined}, {device, near | takes, far | joined}, // took out the limit and joined its wires
	{weak, far | held, far | bound},                                    // held the door switch and taped it
	{device, near | takes, outOf, with | so},                           // limit stuck, clipped it out for now
	{bare},                                                             // bypassed it
	{bound, far | held},                                                // taped the lid switch
	{held, far | bound},                                                // the limit was linked
	{weak, far | device, far | closed}, {weak, far | kept, far | shut}, // held the contactor in
	{device | kept, far | weak, near | shut},             // the lid lock is held shut
	{held, far | with, near | grip | magnet | bit},       // fuse replaced with wire
	{bend, far | held, far | no | shut},                  // bent the limit so it never opens
	{shorts, far | theDev},                               // shorted the limit
	{shorts, outOf, far | held}, {shorts, outOf, toward}, //
	{shorts, across, far | device},                                                                                                                //
	{shorts, device, wiry},                                                                                                                        // shorted limit wires
	{device, far | shorts | joined, outOf},                                                                                                        //
	{runs, far | device, near | shorts},                                                                                                           // ran with the overload shorted
	{bit | clip | bond, near | across | there, near | held | wiry | fused},                                                                        // strap across the thermostat
	{bit, inside, near | device | fused | wiry}, {bit | clip, puts, inside, near | device}, {device, near | inside, bit}, {fused, near | of, bit}, // foil in the fuse
	{led | joined, far | device, outOf}, {wiry, instead, toward, wiry}, {led, across}, {led, near | across, near | held}, {led, far | mark, near | instead}, {mark, near | led, near | instead}, // wired round the switch
	{grip, across | toward, near | held}, {grip, held, near | shut}, {held, led, closed}, // tape over the door switch
	{puts, near | magnet, far | held}, {left, clip, near | toward, near | held}, {device, far | with, near | shorts, other}, // put a magnet on the lid switch
	{runs, far | instead, of, near | guarded}, {bit | grip | magnet | bond, near | instead, of, near | held}, // a wire in place of the fuse

	{without, near | guarded | earthed | covered},                                               // ran without overload
	{takes | left, far | held, far | circuit},                                                   // took the limit out of the circuit
	{device, takes, outOf | of, near | circuit},                                                 // overload cut out of line
	{joined, near | wiry, far | device},                                                         // joined the wires of the limit
	{joined, far | device, wiry},                                                                // twisted the limit wires
	{joined, near | across | outOf, near | device},                                              // spliced round the limit
	{device, near | wiry, near | joined},                                                        // limit wires together
	{puts, near | wiry, toward, wiry, far | device},                                             // put spade to spade on the limit
	{left, near | guarded, near | off | outOf},                                                  // left the overload off
	{left, near | device, near | takes | outOf},                                                 // left the limit disconnected
	{left, outOf, near | device},                                                                //
	{guarded, off, final | so}, {takes, far | guarded, near | runs, mark}, {guarded, left, off}, // overload left off
	{device, outOf, final}, {guarded, takes, outOf, final}, {device | fused, near | bit | clip | bond, across, final}, {device, left, outOf | takes}, // door switch out
	{undoes, near | held}, {held, near | undoes}, // disabled the lid lock
	{takes, near | earthed, wiry | toward | final},                                                                 // cut the earth pin
	{earthed, off | takes}, {earthed, wiry, off | takes}, {earthed, wiry, broken, off}, {earthed, wiry, left, off}, // earth wire off
	{covered, left, off}, {runs, near | covered, off}, // ran with the cover off
	{runs, near | with, near | device, near | takes | outOf}, // ran with the float disconnected
	{bigger, near | fused}, {fused, near | bigger}, {fused, with | toward, near | bigger},
	{two, wiry, adapter}, {two, adapter}, {three, toward, two}, // an adapter without earth
	{device, near | joined, joined}, // switch twisted together
	{instead, circuit},              // wired straight through
}

// quiets are words that are harmless beside each other: what the first step is
// counts for nothing.
var quiets = [][]tag{
	{bare | bond, other}, {bare | bond, wiry, other}, // bypass valve
	{bond, toward, other, other}, {bond, wiry, of, other}, // jumper on board JP1
	{bare | bond, far | three, wiry},                   // jumper for a 3-wire cord
	{bit, inside, instead, three},                      // bond strap in place of 3-wire
	{bond, closed, final},                              // bypass shut
	{other, bond},                                      // factory jumper
	{other, leap},                                      // needle jumped
	{without, near | guarded, faulty},                  // without the overload tripping
	{instead, circuit, near | other}, {instead, other}, // straight through hose
	{instead, toward, near | fused | part | other},                // wired direct to the breaker
	{other | mark, shorts, outOf},                                 // element shorted out
	{bare, no, final},                                             // bypassed nothing
	{leap, off | other}, {leap, shut, toward}, {leap, of, number}, // belt jumped off
	{leap, toward, number | two | three},                          // jumped to 240 V
	{broken, bit | bond}, {earthed, bond}, {earthed, bit, across}, // broken wire
	{wiry, other},                                                           // wire harness
	{bound, wiry}, {grip, across | toward, held, wiry}, {bound, held, wiry}, // taped the wires
	{bound, far | fixed, toward, near | other}, // taped the thermostat to the tube
	{fixed, far | bound, toward, near | other},
	{joined, near | fresh | toward}, // spliced in a new fuse
	{other, near | earthed},         // outlet's earth
}

// Guard is a clause by which a protective device was taken out of its circuit or
// put back.
type Guard struct {
	Entry   int
	Text    string // the whole line
	clause  string
	devices []string
	way     way
	passes  bool // what is wrong is that it passes more than it should
}

// way is how a clause is of a device.
type way int

const (
	out       way = iota
	unbridged     // what bridged it is off
	refitted      // the device itself is back
	renewed       // there is a new one
)

// takesOut reports whether a clause says that a device is out of its circuit.
func takesOut(clause string) bool { return goes(clause, outs) }

// goes reports whether a clause goes one of several ways.
//
//go:noinline
func goes(clause string, ways [][]tag) bool {
	var room [48]tag
	words := tagsOf(clause, room[:0])
	all := union(words)
	if all&fused != 0 && all&number != 0 && overfused(clause) {
		return true
	}
	if all&(bond|bare) != 0 && (all&held == 0 && onBoard.is(clause) || toRc.is(clause) && (all&held == 0 || !strings.Contains(clause, " w"))) || all&bare != 0 && all&guarded == 0 && rerun.is(clause) {
		return false
	}
	if all&fused != 0 && all&(bit|bigger) != 0 && suits.is(clause) {
		return false
	}
	if all&breaker != 0 && unprotected.is(clause) || all&there != 0 && coined.is(clause) ||
		all&no != 0 && all&(guarded|fixed) != 0 && unhooked.is(clause) {
		return true
	}
	if all&weak != 0 && all&(ofDoor|ofFlame) != 0 && all&(bound|grip|magnet|bit) == 0 && byHand.is(clause) || !mayBe(all, ways) || sought.is(clause) {
		return false
	}
	if all&bare != 0 && all&(held|fused|earthed|left) == 0 && !Has(clause, pressed) && toHarvest.is(clause) {
		return false
	}
	for _, way := range quiets {
		if at, _ := match(words, way); at >= 0 {
			hush(words, at, way)
		}
	}
	if all&held == 0 && all&piped != 0 {
		return false // past a filter
	}
	for _, way := range ways {
		if at, end := match(words, way); at >= 0 && !retracted(words, at, end) {
			return true
		}
	}
	return false
}

// onBoard tells a clause of a jumper by which a board is set or of a bypass of water, rerun one of a wire that a
// new one goes round.
var (
	onBoard = pattern{expr: `\bjump(ers?|ered|ed)\b.*\b(by|per|as|on|in) (the |its |their )?(\w+ )?(sheet|manual|diagram|plate|instructions?|booklet|label|print|schematic)\b|\bjumper (pin|cap|block|plug)s? (is |was |set |moved |left )*(to|on|at|in)\b|\bjumper [\w -]*\bfactory$|\bfactory (fitted|installed|set|made)\b|\b(from|by) (the )?factory\b|\b(dip|board) jumpers?\b|\b(zone|loop) by-?pass\b|\bby-?pass (loop|set|valved)\b`}
	toRc    = pattern{expr: `\br ?(to|-|&) ?(r[ch]|w( to call\b.*)?$)`}
	rerun   = pattern{expr: `\bby-?passed (the |an? |that |old |bad |broken |burnt |damaged |chewed )*(\w+ )?(wir\w+|cable|splice|run|joint|connection|line|harness|lead) (with|by|using) (a |an |some )?(new|fresh|good|proper)( \w+)* (wire|cable|run|lead|cord|line|harness)\b`}
)

// suits tells a clause of a fuse or breaker of the right size.
var suits = pattern{expr: `\b(right|fits?|rated|match\w*|correct|good|ok|suit\w*|proper)( size| amps)? (for|to|with) (the |its |this )?([\w-]+ )?(wir\w+|gauge|cable)\b|\b(no|not) (too big|bigger|larger|oversi\w+)\b`}

// unprotected tells a clause by which there is no breaker for leaks to earth any more,
// byHand one by which a hand is at the switch for as long as it takes.
var (
	unprotected = pattern{expr: `\b(?:cut|took|taken|snip\w*|chop\w*|removed|deleted|eliminated) (?:off |out )?(?:the |its |a )?(?:\w+ )?` + rcds + `\b` +
		`|\b` + rcds + onPlug + `(?: was| is)? (?:cut|chopped|snipped|removed|taken) ?(?:off|out|$)|\b` + rcds + onPlug + `(?: was| is)?(?: swapped| changed| replaced)? (?:for|with|by|to) (?:a |an |the )?(?:plain|standard|ordinary|regular|normal|cheap|old|[23]|two|three)\b|\b(?:to|on|in|into|at) (?:a |an |the )?non[- ]?` + rcds + `\b`}
	byHand = pattern{expr: `^(i |we )?(held|hold|holding|push|pushed|pushing|press|pressed|pressing)( in| down| up)? (the |its )?((door|lid) (interlock )?(micro)?switch(es)?|float( switch)?)( plunger| button| tab| lever| arm)?( in| closed| shut| down| up)*( (by|with) (my |a )?(hand|finger|thumb)s?)?( (to|for|while|and) .*)?$`}
)

// coined tells a clause of a coin behind what it names no more, unhooked one of a device
// that was never wired.
var (
	coined   = pattern{expr: `\b(put|stuck|placed|wedged|left|used|shoved|slid) (a |an |the |some )?(penny|pennies|nickels?|dimes?|coins?|quarters?|slugs?) (in )?behind( (it|them|there|that|the \w+|fuse)|$)`}
	unhooked = pattern{expr: `(\b(not|never)|n't)( been| yet| is| was)* (re)?(hooked|connected|wired|plugged)( back)?( up| in)?( yet| again)?$|(^|with )no (\w+ )?(overload|protector|limit|olp)( was| is)? (re)?(fitted|installed|put (back )?in|wired in|on it)$`}
)

// toHarvest tells a clause of the jumper that starts the harvest of an ice maker, which is
// its test.
var toHarvest = pattern{expr: `\b(harvest\w*|eject\w*|ice ?maker|mou?ld|test (points?|holes?|pins?|pads?))\b|\bjump\w* (at |from |across |points )*t( ?(and|to|&|-|/) ?h\b|$)`}

// pressed are short words for a switch of pressure.
var pressed = []string{" hp", " lp"}

const (
	rcds   = `(?:rcd|gfci|gfi|elcb|rcbo|afci|lcdi|alci)`
	onPlug = `(?: plug| cord| head| end| outlet)?`
)

// sought tells a clause of what was looked for, or off while it was read.
var sought = pattern{expr: `^(i |we )?(test|check|ohm|measur|meter)\w* .*\b(disconnected|unplugged|unhooked)$|\b(check|look|search|inspect)\w* (it |all |them )*for\b`}

var exchanges = pattern{expr: `\b(\d{1,3}) ?a(?:mp)?s? (?:fuse|breaker|bkr|brkr)s? (with|by|for|to|in place of|instead of) (?:a |an |the )?(\d{1,3}) ?a`}

// overfused reports whether a fuse or breaker gave way to one of more amps.
//
//go:noinline
func overfused(clause string) bool {
	m := exchanges.get().FindStringSubmatch(clause)
	if m == nil {
		return false
	}
	first, second := m[1], m[3]
	if strings.HasPrefix(m[2], "in") {
		first, second = second, first
	}
	was, _ := strconv.Atoi(first)
	is, _ := strconv.Atoi(second)
	return is > was
}

// TakesOut reports whether a line says that a protective device is out of its
// circuit: until one does, nothing need be read of what is put back.
func TakesOut(line string) bool {
	line = spelt(line)
	all := wordsIn(line)
	again := all&bond != 0 && all&takes != 0 && frees(strings.ToLower(line))
	if !again && !mayBe(all, outs) && all&(breaker|there) == 0 && (all&no == 0 || all&(guarded|fixed) == 0) && (all&fused == 0 || all&number == 0) {
		return false
	}
	before := ""
	return slices.ContainsFunc(Clauses(line), func(c string) bool {
		last := before
		before = c
		return again && resets(c) || takesOut(c) || slices.ContainsFunc(strings.Split(c, " and "), takesOut) || goesOn(last, c)
	})
}

// ToldOut reports whether a client's words tell of a protective device that somebody took
// out: of what is out, off or missing they say that it fails.
func ToldOut(complaint string) bool {
	return slices.ContainsFunc(Clauses(complaint), func(c string) bool {
		return TakesOut(c) && (!fails.is(c) || byWhom.is(c))
	})
}

var (
	fails  = pattern{expr: `^(\w[\w-]* ){1,5}(out|off|in|missing|gone)$`}
	byWhom = pattern{expr: `\b(left|taken|took|they|he|she|man|tech\w*|somebody|someone|wire[sd]?|taped|tied|jump\w*|bridg\w*|by-?pass\w*)\b`}
)

// goesOn reports whether a clause joins the wires of what the one before took out, or
// binds what it held.
func goesOn(before, clause string) bool {
	return before != "" && wordsIn(clause)&(joined|bound|outOf) != 0 && goes(before+" "+clause, outs[:4])
}

// wordsIn are the tags of all words of a line, with what they may be in a clause.
func wordsIn(line string) (all tag) {
	eachWord(strings.ToLower(line[:min(len(line), MostBytes)]), func(_ string, t tag) { all |= t })
	if all&base != 0 {
		all |= bound | weak | bare | undoes | joined | takes | shorts
	}
	if all&device != 0 {
		all |= guarded | theDev
	}
	if all&ofFlame != 0 {
		all |= kept
	}
	if all&no != 0 {
		all |= without
	}
	if all&wiry != 0 && all&(across|number|three) != 0 {
		all |= earthed // the round pin, the third prong
	}
	return all
}

// Guards reads what a line says of protective devices. Of work that was done, a
// new device counts as its being back, and plain forms (remove, put) as done; ice tells a
// machine that makes ice.
func Guards(entry int, line string, work, ice bool) []Guard {
	typed := line
	line = spelt(line)
	all := wordsIn(line)
	if all&^(filler|theDev|with|toward|of|faulty|so|number) == 0 {
		return nil
	}
	var list []Guard
	var it, both []string // what the part before names, and where that is all it says
	last, text, offered := "", strings.ReplaceAll(line, " n ", " and "), false
	if Has(line, []string{" but "}) {
		text = allBut().ReplaceAllString(strings.ToLower(text), "except $1")
	}
	clauses := Clauses(text)
	for i, c := range clauses {
		before := len(list)
		c = thawed(c, ice)
		for _, part := range strings.Split(c, " and ") {
			is, said := wayOf(part, work)
			offered = (offered || proposes.is(part) && (len(devicesOf(part, false)) > 0 || Has(part, []string{"jumper", "bypass", "new "}))) && !ownWork.is(part)
			g := newGuard(entry, line, part, is)
			if said && is != out && halfway.is(strings.Join(clauses[i:], ", ")) {
				it = nil
				continue
			}
			if !said && len(g.devices) > 0 && backs().names.MatchString(part) {
				both = g.devices
			} else {
				if said && is == out && len(both) > 0 { // of the first of several the same is said
					first := newGuard(entry, line, part, out)
					first.devices = both
					list = listed(list, first)
				}
				both = nil
			}
			back := part
			if said && is != out {
				back, _ = beforeExcept(part)
			}
			if said && is == renewed {
				g.devices = devicesOf(strings.Join(Renewals(back), ", "), true)
				if atPlug.is(part) && !noPin.is(strings.ToLower(line)) {
					g.devices = append(g.devices, "pin")
				}
			}
			if said && is == refitted {
				g.devices = devicesOf(beside.get().ReplaceAllString(back, ""), false)
			}
			switch last := len(list) - 1; {
			case last >= 0 && list[last].way == unbridged && bridgesAgain(part, len(list[last].devices) > 0):
				list[last].way, list[last].devices, it = out, nil, nil
				continue
			case last >= 0 && list[last].undone(part, clauses[:i]):
				g.way, g.devices, g.clause = out, nil, part+", "+list[last].clause
				if list[last].way != unbridged && offAgain.is(part) {
					g.devices = list[last].devices
				}
				for ; last >= 0 && list[last].way != out; last-- {
					list = list[:last]
				}
				list, it = listed(list, g), g.devices
				continue
			case last >= 0 && list[last].givenUp(part):
				list, it = list[:last], nil
				continue
			case offered && said && is != out && !ownWork.is(part):
				continue
			case said:
				if len(g.devices) == 0 && back == part && ofIt.is(part) {
					g.devices = it
				}
			case last >= 0 && list[last].way == out && list[last].offBy(part): // the bridge just spoken of
				g.way, g.devices, g.clause = unbridged, list[last].devices, list[last].clause
			case last >= 0 && list[last].way == out && all&left == 0 && tookOut.is(list[last].clause) && tested.is(part):
				list, it = list[:last], nil // it was out to be read
				continue
			case last >= 0 && len(g.devices) > 0 && backs().names.MatchString(part): // the last of several of which the same is said
				g.way, g.clause, g.passes = list[last].way, list[last].clause, list[last].passes
			default:
				if strings.Contains(part, " ") { // a lone "cleaned" is of it
					it = nil
				}
				continue
			}
			list, it = listed(list, g), g.devices
		}
		if len(list) == before {
			if whole := last + " " + c; all&(joined|bound|outOf) != 0 && all&(takes|weak) != 0 && goesOn(last, c) {
				list, it = listed(list, newGuard(entry, line, whole, out)), nil
			} else if takesOut(c) {
				list, it = listed(list, newGuard(entry, line, c, out)), nil
			}
		}
		last = c
	}
	for i := range list {
		list[i].Text = typed // as it is quoted
	}
	return list
}

// beside tells where a part is that is put back.
var beside = pattern{expr: `\b(at|near|beside|behind|by) .*`}

// offBy reports whether a clause says that what was just told to hold a device is off:
// by its name, or as "it" where it had one. Of a limit that was bypassed "removed it"
// may be the limit itself.
func (g *Guard) offBy(clause string) bool {
	return wireOff.is(clause) || letIt.is(clause) && g.byHand() ||
		takenOff.is(clause) && toTest.is(g.clause) || itsOff.is(clause) &&
		slices.ContainsFunc(fetterNouns(), func(p *regexp.Regexp) bool { return p.MatchString(g.clause) })
}

var (
	itsOff  = pattern{expr: `^(i |we )?(then )?(removed|took|pulled|cut|lifted|peeled) (it|that|them|this)( back)?( off| out| away)?( again| after\w*| since| now)*$`}
	wireOff = pattern{expr: `^(wire|lead|clip)s? (was |is )?(removed|off|out|taken off)( after| again| since)*$`}
	// takenOff is of a bridge where that was for a test: a part is taken out.
	takenOff = pattern{expr: `^((and|then|all|it|that|is|was|been|now) )*(removed|(taken|took( it| them| that)?) (back )?off)( again| after\w*| since| now)*$`}
	toTest   = pattern{expr: `\b(to|for|as) (a |the )?(quick |short )?(test|check|try|see|diagnos|confirm|prove)`}
	letGo    = pattern{expr: `^(i |we |and |then )*(let (it |them )?go|released)\b`}
	letIt    = pattern{expr: `^(i |we |and |then )*(let (it |them )?go( of (it|them))?|released( it| them)?)( again| after\w*| since| now)*$`}
	// tookOut and tested are of a part that was out to be read.
	tookOut = pattern{expr: `^(i |we )?(took|pulled|had) [\w -]+ out$|^[\w -]+ (disconnected|unplugged|unhooked)$`}
	tested  = pattern{expr: `^(it |is |was )*(test(s|ed)?|ohm(s|ed)|reads?|checks|checked|measure[sd]|metered|rang|open|closed|bad|dead|good|ol|no continuity)\b`}
)

// byHand reports whether a hand alone held a device, which falls back when let go.
func (g *Guard) byHand() bool {
	return Has(g.clause, []string{"held", "hold", "push", "press"}) && !Has(g.Text, strings.Split(binds, "|"))
}

func (g *Guard) letsGo() bool { return g.way == unbridged && letGo.is(g.clause) }

// ofIt tells a clause of what was spoken of just before it.
var ofIt = pattern{expr: `\bit\b|\bnew one\b|^(replaced|refitted|renewed|put back|put in again|reconnected|restored)( again)?$|^((wired|put|fitted|connected|plugged) |is |now )*back (in|on)( (the )?circuit| again| now| as (made|it was|found|new))*$`}

// wayOf tells what a clause says of a protective device, false when nothing.
//
//go:noinline
func wayOf(clause string, work bool) (way, bool) {
	switch {
	case unbridges(clause, work):
		return unbridged, true
	case takesOut(clause), resets(clause) && frees(clause):
		return out, true
	case refits(clause, work):
		return refitted, true
	case work && !notYet.is(clause) && len(Renewals(clause)) > 0:
		return renewed, true
	}
	return 0, false
}
