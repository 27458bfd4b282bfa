package said

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
	"sync"
)

// fetter is a family of what holds a device out of its circuit.
type fetter struct {
	put   string // words of a clause that puts one on
	noun  string // a pattern of what is taken off
	clear string // how that is said
}

func (f *fetter) in(clause string) bool { return Has(clause, strings.Split(f.put, "|")) }

// fetters are the families: what takes one off takes off any of its own.
var fetters = []fetter{
	{"cheat|adapt|3 to 2", `cheaters?(?: cord| plug)?|adapt[eo]rs?`, "adapter off"},
	{"foil|nail|coin|penny|bolt|paper", `foil|nails?|coins?|penny|bolts?|paper ?clips?`, "foil out"},
	{binds + "|held|kept", `tapes?|wedges?|ties?|ty-?raps?|sticks?|clamps?|magnets?|props?|glue|(?:rubber )?bands?|strings?`, "tape off"},
	{"jump|pass|bridg|link|loop|strap|shunt|short|wire|together|joined|clip|lead|straight|direct",
		`jumpers?(?: wires?| leads?| cables?| clips?)?|by-?pass(?:es)?(?: wires?)?|bridges?(?: wires?)?|links?|straps?|shunts?|loops?|clips?|(?:clip|test|alligator) leads?|wires? (?:across|over|round|around|past)`, "jumper off"},
}

// inFuse is the family of what lies in a fuse's place, by its place among them (common practice).
const inFuse = 1

// binds are the words for what holds a device without a hand.
const binds = "tape|tied|wedg|pinned|clamp|magnet|stick|prop|glue|band|string"

// backs are the patterns of what was put back.
var backs = sync.OnceValue(func() (p struct{ names, unbridged, plainly, refitted, refit *regexp.Regexp }) {
	var each []string
	for _, f := range fetters {
		each = append(each, f.noun)
	}
	nouns := `(?:` + strings.Join(each, "|") + `)`
	fetter := `\b` + nouns
	device := `\b` + anyDevice() + `\b`
	between := `(?: (?:off|out|away|up|the|that|this|its|my|a|an|all|both|old|temporary|temp|test|two|of|wire|` + anyDevice() + `))*? `
	is := `(?: (?:is|was|are|were|came|now|all|both|has|have|had|been|again))*`
	p.names = regexp.MustCompile(`^(?:(?:the|its|a|an|both|of|new|from|on) )*(?:` + anyDevice() + ` ?)+$`)
	p.unbridged = regexp.MustCompile(`\b(?:removed|removing|took|taken|taking|pulled|yanked|snipped|tossed|ditched|lost|lifted|unclipped|unhooked|disconnected|undid|undone|stripped|peeled|unwound|unscrewed|withdrew|got rid of)` + between + nouns + `\b|\b(?:replaced|swapped|exchanged)` + between + nouns + ` (?:with|by|for)(?: (?:a|an|the|its|new|old|own|good|proper|right|correct|original|factory|spare|\d+ ?a(?:mps?)?))* ` + anyDevice() + `\b` +
		`|` + fetter + `(?: (?:on|at|across|from|over|of|to|for|the|its|test|` + anyDevice() + `))*?` + is + ` (?:off|out|away|gone|removed|thrown|tossed|ditched|yanked|snipped|binned|in (?:the )?(?:trash|bin|garbage)|taken|pulled|lifted|undone|disconnected|cut|unclipped|unhooked)\b` +
		`|\b(?:took|removed|cut) my (?:wire|lead)s?\b|\bun-?(?:jump|bridg|by-?pass|tap|link|strap|shunt)\w*|\buntied (?:the )?(?:float|switch|interlock|lock|latch)\b|` + fetter + ` no longer (?:on|in|there)\b|\bno (?:longer|more) (?:jump|bridg|by-?pass|tap|link)\w*|` + wiringBack.expr)
	p.plainly = regexp.MustCompile(`^(?:remove|take|pull|lift|cut|unclip|unhook|disconnect|undo|strip|peel)` + between + nouns + `\b`)
	p.refitted = regexp.MustCompile(`\bre-?(?:fitted|connected|installed|instated|stored|attached|mounted|assembled|inserted|wired|joined|seated|enabled|engaged)\b` +
		`|\bback (?:in|on|into|again)\b|\bput back\b|\bput\b.{0,30}\bback\b|\b(?:wired|connected|fitted|plugged|clipped|screwed|bolted|hooked)\b.{0,30}\b(?:back|again)\b` +
		`|` + device + `(?: wires?| leads?| pins?| straps?| prongs?)?` + is + ` (?:back|refitted|reconnected|restored|reinstated|in place|in (?:the |its )?circuit|on again|in again|connected)\b|\bin circuit again\b|\bcover` + is + ` on\b`)
	p.refit = regexp.MustCompile(`^(?:put .*\b(?:back|in|on)\b|re-?(?:fit|connect|install|instate|store|attach|mount|insert|wire|join|enable)\b)`)
	return p
})

// unheld tells a clause of what was not put back: it is to be, or was forgotten.
var unheld = pattern{expr: `\b(not|never|no|nothing|forgot\w*|will|must|should|needs?|cannot|until|unless|if|when|remember|please|later|tomorrow|could|would|still|yet)\b|n't\b|\bto (be |remove|take|pull|put|refit|reconnect|restore|replace|install|come)`}

// notYet tells a clause of what is to come off or to go back once something else is, is
// only begun, or is not at hand.
var notYet = pattern{expr: `\b(after (the |a |my )?(client|customer|owner|tenant|landlord|lunch|dinner|break|parts?|new|deliver\w*|he|she|they|next)\b|once\b|as soon as|pending|back ?order|on order|order(ed)?$|out of stock|not? in stock` +
	`|(in|on|at|to) (the |my |our )?(pocket|corner|rack|drawer|garage|mail|counter|shelf|glove ?box|welder|truck|van|shop|stock|warehouse|store|car|cart|box|bag|hands?|supplier\w*|supply house)\b)|\?` +
	`|\b(mon|tues?|wed|weds|wednes|thurs?|fri|satur|sat|sun)(day)?\b|\b(tmrw?|tmw|2moro?w?|2morrow|tomor\w*)\b|\bnext (shift|visit|week|trip|time|day|month|call)\b|\b(approved|authori[sz]ed|ok'?d)$` +
	`|\b(when|til|till|until|after) (\w+ ){0,3}(parts?|in|here|comes?|gets?|arriv\w+|approv\w+|calls?|pays|ready|shows)\b` +
	`|\b(tried|trying|attempt\w*|began|started) (to|taking|removing|pulling|jumper)\b|\b(almost|nearly|partly|half) (got|had|took|off|out|removed|pulled|the)\b|\btemporar\w*|\bwhile (i|we) (was|were|am)\b` +
	`|\bneighbou?r\w*|\bnext door\b`}

// proposes tells a clause of what was offered or priced.
var proposes = pattern{expr: `\b(quot\w+|pric(ed|ing)|recomm?e?n?d?\w*|rec'?d|told|advis\w+|offer\w*|estimat\w*|suggest\w*|propos\w*|sold|bid)\b`}

// ownWork tells a clause that begins with what was done.
var ownWork = pattern{expr: `^(i |we |then |and |so )*(took|removed|pulled|cut|replaced|installed|fitted|put|swapped|changed|refitted|reconnected|restored)\b`}

// earthWires are no bridges, whatever they are called.
var earthWires = pattern{expr: `\b(earth|ground|bond|bonding) (strap|link|clip|loop|bridge)s?\b`}

// unbridges reports whether a clause says that what held a device out is off.
//
//go:noinline
func unbridges(clause string, work bool) bool {
	if notYet.is(clause) {
		return false
	}
	clause = earthWires.get().ReplaceAllString(clause, "$1 wire")
	at := backs().unbridged.FindStringIndex(clause)
	if at == nil && letGo.is(clause) && (letIt.is(clause) || len(devicesOf(clause, false)) > 0) {
		at = []int{0, len(clause)}
	}
	if at == nil && work {
		at = backs().plainly.FindStringIndex(clause)
	}
	if at == nil {
		return false
	}
	if kept, rest := beforeExcept(clause); kept != clause && len(devicesOf(kept, false)) == 0 && (len(devicesOf(rest, false)) > 0 || someLeft.is(rest)) {
		return false
	}
	if proposes.is(clause[:at[1]]) || resets(clause[at[1]:]) || bridgedOver.is(clause[at[1]:]) {
		return false
	}
	return !unheld.is(strings.Replace(clause[:at[1]], "no longer", "", 1)) && !notDone().MatchString(clause) && (strings.HasSuffix(clause, " away") || !inPlace.is(clause))
}

// excepting is before what was not put back, allBut a denial at whose word no clause is
// to end, someLeft one of several that is left.
var (
	excepting = pattern{expr: `\b(without|w/?o|excep\w+|excluding|minus|less|save|bar|apart from|other than|aside from|besides|but for|leaving out)\b`}
	allBut    = Lazily(`\bbut (?:for )?((?:(?:the|its|a|one|on|at|that) )*(?:` + anyDevice() + `[ -]?)+(?:[,;.]|$))`)
	someLeft  = pattern{expr: `^ (for |the |that |on )*(one|two|it|this|that|last|other)\b`}
)

// beforeExcept cuts a clause where it begins to say what was not put back.
//
//go:noinline
func beforeExcept(clause string) (kept, rest string) {
	at := excepting.get().FindStringIndex(clause)
	if at == nil {
		return clause, ""
	}
	return clause[:at[0]], clause[at[1]:]
}

// wiringBack tells a clause by which wires are as they were.
var wiringBack = pattern{expr: `\b(?:wiring|wires)(?: (?:is|was|are|were|all|put|been))* (?:restored|reinstated)\b|\b(?:original|factory|proper|correct) (?:wiring|wires)(?: (?:is|was|are|were|all|put))* back\b` +
	`|\b(?:restored|reinstated|back to|returned to)(?: (?:all|the|its|to))* (?:original |factory |normal |proper |correct )?wiring(?: (?:to|at|on|of|as|in)\b|$)|\b(?:wiring|wires|wired)(?: (?:it|them|is|was|are|were|all|put))* back (?:to|as|how|like) (?:it|they|found|original|factory|normal)\b`}

// inPlace tells a clause in which the bridge takes a device's place.
var inPlace = pattern{expr: `^(link|loop|strap|shunt|clip)s? out\b|\bout of (the )?(loop|circuit|string)\b|\b(put|fitted|added|left|replaced .*with) (in |on )?(a |the |some )?(jumper|bypass|bridge|link|wire|foil|clip|strap)|\b(jumper|bridge|link|wire|foil) (is )?(in place|instead|left)\b`}

// refits reports whether a clause says that a device itself is back.
//
//go:noinline
func refits(clause string, work bool) bool {
	if unheld.is(clause) || notYet.is(clause) || fed.is(ofWater.Replace(clause)) {
		return false
	}
	return backs().refitted.MatchString(clause) || work && backs().refit.MatchString(clause)
}

// ofWater are devices that are named by what they watch.
var ofWater = strings.NewReplacer("water cut", "cut", "water level", "level", "water switch", "switch", "gas valve", "valve", "gas pressure", "pressure")

// fed tells a clause of what comes back by itself.
var fed = pattern{expr: `\b(power|gas|water|supply|volts|voltage|electricity)\b`}

// Out leaves of a series of guards what is still out of its circuit.
func Out(list []Guard) []Guard {
	var left, before []Guard // before a line
	entry := 0
	for i := range list {
		switch g := &list[i]; {
		case g.way == out:
			again := false // of what bridges a device that is out already, without naming it
			for j := range left {
				again = again || len(g.devices) == 0 && !strings.Contains(g.clause, "direct") && g.fetter() >= 0 && g.fetter() == left[j].fetter()
			}
			if !again {
				left = append(left, *g)
			}
		case len(left) > 0:
			if g.Entry != entry {
				entry, before = g.Entry, append(before[:0:0], left...)
			}
			left = g.beside(list, before).putBack(left)
		}
	}
	return left
}

// beside is what a clause takes off, of the device that its line says is new or back
// where that is out: a bridge that is off beside it is its own.
func (g *Guard) beside(list, before []Guard) *Guard {
	if g.way != unbridged || len(g.devices) > 0 || len(before) < 2 && (len(before) == 0 || len(before[0].devices) < 2) || manyBack.is(g.clause) || wiringBack.is(g.clause) {
		return g
	}
	of := *g
	for i := range list {
		if list[i].Entry == g.Entry && list[i].way != out {
			for _, now := range list[i].devices {
				if outBefore(before, now) {
					of.devices = append(of.devices, now)
				}
			}
		}
	}
	return &of
}

//go:noinline
func outBefore(before []Guard, now string) bool {
	for i := range before {
		for _, was := range before[i].devices {
			if isBack(was, now, false) {
				return true
			}
		}
	}
	return false
}

// putBack leaves of what is out what a clause does not say is back. What names no
// device is of the last that was bridged; what says that several are off is of all.
//
//go:noinline
func (g *Guard) putBack(list []Guard) []Guard {
	all := manyBack.is(g.clause) || wiringBack.is(g.clause)
	found := "" // what was put back, so that of two alike one is left
	for i := len(list) - 1; i >= 0; i-- {
		d := &list[i]
		name := strings.Join(d.devices, ", ") + "."
		switch {
		case g.letsGo() && !d.byHand(), d.passes && !g.rightFor(d), g.way == unbridged && oneOff.is(g.clause) && manyBack.is(d.clause):
		case len(g.devices) > 0 && len(d.devices) > 0:
			var rest []string
			for _, was := range d.devices {
				back, plain := false, true
				for _, now := range g.devices {
					if isBack(was, now, g.way == renewed) || now == "pin" && strings.HasSuffix(was, "earth") && atPlug.is(d.clause) {
						back, plain = true, plain && !within(was, now)
					}
				}
				if back && (all || !plain || found == "" || found == was) {
					found = was
				} else {
					rest = append(rest, was)
				}
			}
			if d.devices = rest; len(rest) == 0 {
				d.way = g.way
			}
		case len(g.devices) > 0 && (len(list) > 1 || g.way != unbridged),
			len(g.devices) == 0 && !(g.way == unbridged && g.frees(d)),
			len(g.devices) == 0 && !all && found != "" && found != name:
		default:
			found, d.way = name, g.way
		}
	}
	return slices.DeleteFunc(list, func(d Guard) bool { return d.way != out })
}

// frees reports whether what a clause takes off is of the family that holds a device.
//
//go:noinline
func (g *Guard) frees(d *Guard) bool {
	for _, m := range places.get().FindAllStringSubmatch(g.clause, -1) {
		if len(d.devices) > 0 && !anywhere.is(m[1]) && !strings.Contains(d.clause, m[1]) {
			return false // it is off something else
		}
	}
	return d.fetter() >= 0 && (d.fetter() == g.taken() || g.letsGo() || d.fetter() == len(fetters)-1 && wiringBack.is(g.clause) || g.taken() == len(fetters)-1 && Has(g.clause, []string{"bypass", "by-pass", "bridge"}))
}

var (
	manyBack = pattern{expr: `jumpers|bypasses|bridges|links|straps|both|\ball\b|fuses|switches|limits`}
	oneOff   = pattern{expr: `\b(1|one) (\w+ )?(jumper|bypass|link|strap|bridge|wire|clip|tape)\b`}
	atPin    = pattern{expr: `\b(pin|prong)s?\b`}
	atPlug   = pattern{expr: `\b(pin|prong|plug|cord)`}
	places   = pattern{expr: `\b(?:from|off|at|on|across|over|of) (?:the |its |a )?(\w+)`}
	anywhere = pattern{expr: `^(again|now|after|before|and|then|end|once|test|circuit|terminals?|unit|machine|appliance|it|when|today|site|arrival|completion|finish\w*|from|off|at|all|both|them|good)$`}
)

// fetter is the family of what holds a device out, -1 when it is just left out.
//
//go:noinline
func (g *Guard) fetter() int {
	if g.OfEarth() || len(g.devices) == 1 && strings.HasSuffix(g.devices[0], "cover") || g.passes {
		return -1
	}
	return slices.IndexFunc(fetters, func(f fetter) bool { return f.in(g.clause) })
}

// BridgedUntil is the entry by which what bridges a device was off again, now while it
// is there, 0 when nothing was bridged.
func BridgedUntil(list []Guard, now int) int {
	last := len(list) - 1
	for ; last >= 0; last-- {
		if g := &list[last]; g.way == out && g.fetter() >= 0 {
			break
		}
	}
	if last < 0 {
		return 0
	}
	for i := last + 1; i < len(list); i++ {
		if list[i].way != out && len(Out(list[:i+1])) == 0 {
			return list[i].Entry
		}
	}
	return now
}

func newGuard(entry int, line, clause string, is way) *Guard {
	return &Guard{entry, line, clause, devicesOf(clause, false), is, overfused(clause) || larger.is(clause)}
}

var larger = pattern{expr: `\b(bigger|larger|over-?(sized?|rated|fused)|stronger|higher|too (big|large|high)|up(ped|rated|sized))\b`}

// Overrated reports whether each of several is out because it passes too much.
//
//go:noinline
func Overrated(list []Guard) bool {
	return !slices.ContainsFunc(list, func(g Guard) bool { return !g.passes })
}

// rightFor reports whether a clause tells of the right size for what passed too much:
// of fewer amps than were told of with it, and of no more than its wire bears, or by
// its words where no amps are told.
//
//go:noinline
func (g *Guard) rightFor(d *Guard) bool {
	text := strings.ToLower(d.Text)
	is, was := ampsIn(g.clause), ampsIn(text)
	if len(is) == 0 || len(was) == 0 {
		return rightSize.is(g.clause)
	}
	most := slices.Min(was)
	if len(was) == 1 && !strings.Contains(text, "from ") {
		most--
	}
	if bears := wireBears(text); bears > 0 {
		most = bears
	}
	return slices.Min(is) <= most
}

// wireBears is how many amps the wire of a clause may be fused for, 0 when it names none.
func wireBears(clause string) int {
	if m := gauges.get().FindStringSubmatch(clause); m != nil {
		size, _ := strconv.Atoi(m[1])
		return wireAmps[size]
	}
	return 0
}

// borne reports whether the wire of a clause bears the amps that are told with it.
func borne(clause string) bool {
	is, most := ampsIn(clause), wireBears(clause)
	return len(is) > 0 && most > 0 && slices.Max(is) <= most
}

// ampsIn are the amps of fuses that a clause tells of.
func ampsIn(clause string) (out []int) {
	for _, m := range amps.get().FindAllString(clause, MostClauses) {
		if n, err := strconv.Atoi(leadingNumber(m)); err == nil {
			out = append(out, n)
		}
	}
	return out
}

var (
	amps      = pattern{expr: `\b\d{1,2}( ?a(mps?)?\b| to \d|$)`}
	gauges    = pattern{expr: `#?\b(\d{1,2}) ?(?:ga|gauge|awg)\b`}
	rightSize = pattern{expr: `\b(correct|right|proper|small\w*|lower|rated|match\w*|specified|original|as (on|per|by) (the )?(plate|sheet|marking))\b`}
)

// taken is the family of what a clause takes off.
//
//go:noinline
func (g *Guard) taken() int {
	if i := slices.IndexFunc(fetterNouns(), func(p *regexp.Regexp) bool { return p.MatchString(g.clause) }); i >= 0 {
		return i
	}
	return slices.IndexFunc(fetters, func(f fetter) bool { return f.in(g.clause) })
}

var fetterNouns = sync.OnceValue(func() []*regexp.Regexp {
	var out []*regexp.Regexp
	for _, f := range fetters {
		out = append(out, regexp.MustCompile(`\b(?:`+f.noun+`)\b`))
	}
	return out
})

// Clears gives the work by whose words a guard counts as being back, with its
// device where others are out beside it.
func (g *Guard) Clears(others []Guard) string {
	name := ""
	if len(g.devices) > 0 {
		name = g.devices[0]
	}
	alone := true
	for i := range others {
		alone = alone && slices.Equal(others[i].devices, g.devices)
	}
	switch f := g.fetter(); {
	case g.passes:
		return "fitted correct " + name
	case name != "" && (f < 0 || fetters[f].clear == "tape off" && !strings.Contains(g.clause, "tap")):
		return name + " back"
	case f >= 0 && name == "" && fetters[f].clear == "tape off" && strings.Contains(g.clause, "clamp"):
		return "clamp off"
	case f == inFuse && (alone || name == "") && fetterNouns()[f].MatchString(g.clause):
		return fetterNouns()[f].FindString(g.clause) + " out"
	case f >= 0 && (alone || name == ""):
		return fetters[f].clear
	case f >= 0:
		return fetters[f].clear + " " + name
	}
	return "jumper off"
}

// AtPlug reports whether it is of the pin of a plug, from which no path of earth can be
// read while it is cut off.
func (g *Guard) AtPlug() bool { return atPin.is(g.clause) }

// OfEarth reports whether a guard is of an earth wire alone, which a reading from
// the plug's pin to the metal shows: with the neutral in its place that reads as well.
//
//go:noinline
func (g *Guard) OfEarth() bool {
	return !strings.Contains(g.clause, "neutral") && len(g.devices) == 1 && strings.HasSuffix(g.devices[0], "earth") && !fetters[0].in(g.clause)
}
