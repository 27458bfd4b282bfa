package call

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
	"sync"
)

// What is written down of work is read clause by clause: it states work as
// done, takes a protective device out of its circuit or puts it back. Such
// words raise a caution and a mark for the supervisor; they accuse nobody.
// What a list does not hold is quiet.

// So much of one line is read: patterns are dear, and nobody writes more of one
// piece of work.
const (
	mostClauses = 32
	mostWords   = 4000 // bytes of a line
	longClause  = 300  // bytes of a clause
)

var between = lazily(`[,;:]|\.\s|\b(but|then|while|because)\b`)

func clausesOf(text string) []string {
	list := between().Split(strings.ToLower(text[:min(len(text), mostWords)]), mostClauses+1)
	if len(list) > mostClauses {
		list = list[:mostClauses]
	}
	for i := range list {
		list[i] = strings.TrimSpace(list[i])
		list[i] = list[i][:min(len(list[i]), longClause)]
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
var notWork = lazily(`^(re-?)?(waited|tried|test|check|look|inspect|measur|search|listen|felt|watch|noted|read |show|called|drove|discharg|unplug|isolat|locked out|made safe|leak search|found |same\b|still\b|nothing\b)` +
	`|^(took|made) (a |the |some )?(photo|picture|reading|measurement|video)|^(switched|turned) (it |the |unit |power |breaker )*(off|on)\b|^let (it|the machine|the unit) (cool|rest|stand|settle|run|level)` +
	`|^(opened|removed|took off|pulled( out)?) (up )?(the )?(back|rear|front|top|access|kick)? ?(cover|panel|unit|fridge|refrigerator|freezer|machine|appliance|cabinet|relay|start device|overload|plug)s?$` +
	`|\b(for|to|as) (a |the )?test(ing)?\b`)

// stated gives the clauses of a text that say what was mended: they neither put
// work off nor are of something else.
func stated(text string) []string {
	return slices.DeleteFunc(clausesOf(text), func(c string) bool { return notDone().MatchString(c) || notWork().MatchString(c) })
}

// undone reports whether all of a text is of work that was not done.
func undone(text string) bool { return len(stated(text)) == 0 }

var (
	renewing = lazily(`\b(replaced|fitted|installed|swapped|exchanged|changed|renewed)\b|^(replac|fit|install|swap|exchang|chang|renew|new |put in )`)
	joins    = lazily(`\b(and|with|plus)\b|[&+/]`)
	whereOn  = lazily(`\b(on|of|at|for|in|near|by|from|to) .*`)
)

// renewals lists what a text says was replaced by new.
func renewals(text string) []string {
	var out []string
	for _, c := range stated(text) {
		if renewing().MatchString(c) {
			for _, what := range joins().Split(c, mostClauses) {
				out = append(out, whereOn().ReplaceAllString(strings.TrimPrefix(what, "put in "), ""))
			}
		}
	}
	return out
}

// accessories belong to a machine without being the machine.
var accessories = []string{"relay", "device", "overload", "protector", "capacitor", " cap", "terminal", "cover", "plug", "wire", "lead", "mount", "bolt",
	"kit", "start", "ptc", "board", "pan", "line", "oil"}

// isNamed reports whether a text names a machine or part itself, and not a
// device that belongs to it.
func isNamed(text, of string) bool {
	if of == "" {
		return false
	}
	for _, w := range strings.FieldsFunc(strings.ToLower(of), func(r rune) bool { return r == '-' || r >= '0' && r <= '9' }) {
		if !strings.Contains(text, strings.TrimSuffix(w, "or")) { // compress and mot are enough
			return false
		}
	}
	return !speaksOf(text, accessories)
}

var (
	// protective are the devices that must be in their circuit, bridges what
	// takes them out.
	protective = []string{"overload", "protector", "limit", "thermostat", "fuse", "switch", "interlock", "cut-out", "cutout", "thermal", "earth", "ground", "cover"}
	bridges    = []string{"bypass", "by-pass", "jumper", "bridge"}

	defeats = sync.OnceValue(func() *regexp.Regexp {
		const device = `(limit|fuse|thermostat|overload|protector|switch|interlock|cut-?out|thermal)`
		const pin = `(earth|ground)( (wire|lead|strap|bond|pin|prong))?`
		return regexp.MustCompile(`by-?pass|jumper|\bjumped\b|\bbridged\b|shorted out|defeat|linked out|\bwired? (around|past|across|over)\b|\b(foil|nail|coin|clip|paper ?clip|wire) (in|across|over) ` +
			`|\bshorted (the|a|its|out|across|over)\b.*` + device + `|\b(looped|strapped|wedged|linked|taped|tied|pinned)\b.{0,30}` + device +
			`|` + device + `.{0,30}\b(looped|strapped|wedged|linked|taped|tied|shorted out|(wires|leads) together|out of (the |its )?circuit)` +
			`|` + device + ` (\w+ )?(wires|leads) (\w+ )?together|\b(took|taken|left|put) (the |a |its |\w+ )?` + device + ` out of\b` +
			`|\b(removed|disconnected|cut|cut off|lifted|left off|took off|snipped|broke off) (the |its )?(earth|ground)\b( (wire|lead|strap|bond|pin|prong)|$)` +
			`|` + pin + ` (is |was )?(off|cut|cut off|removed|missing|lifted|disconnected)\b|cheater|(2|two)[- ](prong|pin) adapt|3 to 2\b|` + device + ` (is |was )?(left )?(off|out)$|left (the |its )?` + device + ` (off|out)\b` +
			`|straight through|\bshunt|\bfoil\b|paper ?clip|` + device + `.{0,20}\b(bypassed|jumpered)|removed (the )?` + device + ` and (twisted|joined|connected)` +
			`|without (the |its )?(overload|earth|ground|cover|limit|fuse)|\b(bigger|larger|oversized?|stronger|higher) (fuse|breaker)|(fuse|breaker) (for|with|to) (a |an )?(bigger|larger|stronger|higher)|cover (left )?off|taped (the switch|down|shut)`)
	})
	// harmless is what speaks of a bridge that there is not.
	harmless = lazily(`\b(no|not|never|nothing|n.t|none)\b.*(by-?pass|jumper|bridge|defeat)|(by-?pass|jumper|bridge)\w* (valve|tube|line|rectifier|(wire )?kit)`)
	restores = []string{"removed the bypass", "removed bypass", "bypass removed", "removed the jumper", "removed jumper", "jumper removed", "took the jumper",
		"took out the jumper", "jumper out", "bypass out", "back in circuit", "back in its circuit", "in circuit again", "restored", "reconnected", "put back", "put it back",
		"limit back", "overload back", "thermostat back", "fuse back", "switch back", "earth back", "ground back", "cover back", "back on", "back in"}
)

// guard is a clause by which a protective device was taken out of its circuit
// or put back.
type guard struct {
	work
	clause string
	back   bool
}

// dangerous are the words without which no clause takes a device out: looking
// for them is cheap.
var dangerous = []string{"pass", "jump", "bridge", "short", "defeat", "link", "wire", "foil", "nail", "coin", "clip", "loop", "strap", "wedg", "tape", "tied", "pinned",
	"together", "out", "off", "earth", "ground", "without", "fuse", "breaker", "cover", "cheat", "adapt", "3 to 2", "shunt", "straight"}

func takesOut(clause string) bool {
	return speaksOf(clause, dangerous) && (defeats().MatchString(clause) || overfused(clause)) && !harmless().MatchString(clause)
}

var exchanges = lazily(`\b(\d{1,3}) ?a(?:mp)?s? (?:fuse|breaker) (with|by|for|to|in place of|instead of) (?:a |an |the )?(\d{1,3}) ?a`)

// overfused reports whether a fuse or breaker gave way to one of more amps.
func overfused(clause string) bool {
	m := exchanges().FindStringSubmatch(clause)
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

// guards reads what a line says of protective devices.
func guards(w work) []guard {
	if text := w.text[:min(len(w.text), mostWords)]; !speaksOf(text, dangerous) && !speaksOf(text, restores) {
		return nil
	}
	var out []guard
	for _, c := range clausesOf(w.text) {
		before := len(out)
		for _, part := range strings.Split(c, " and ") {
			switch {
			case speaksOf(part, restores):
				out = append(out, guard{w, part, true})
			case takesOut(part):
				out = append(out, guard{w, part, false})
			}
		}
		if len(out) == before && takesOut(c) {
			out = append(out, guard{w, c, false})
		}
	}
	return out
}

// takenOut leaves of a series of guards what is still out of its circuit.
func takenOut(list []guard) []guard {
	var out []guard
	for _, g := range list {
		if g.back {
			out = slices.DeleteFunc(out, func(d guard) bool { return restored(d, g) })
		} else {
			out = append(out, g)
		}
	}
	return out
}

// restored reports whether a restoring is of the device that was out: it names
// it, or it takes out the bypass without naming any, or calls it "it" in the
// same line.
func restored(out, back guard) bool {
	named := false
	for _, d := range protective {
		if strings.Contains(back.clause, d) {
			named = true
			if strings.Contains(out.clause, d) {
				return true
			}
		}
	}
	return !named && (speaksOf(back.clause, bridges) && speaksOf(out.clause, bridges) ||
		out.entry == back.entry && speaksOf(" "+back.clause+" ", []string{" it "}))
}

// sealedWork are words of work on a sealed system; soldering is, unless it is
// of something electrical.
var (
	sealedWork = []string{"purged", "vented", "vent the gas", "vent the charge", "vent refrigerant", "braz", "recharg", "charged with", "recover", "evacuat", "new compressor", "replaced compressor",
		"replaced the compressor", "cut the tube", "piercing", "access valve", "drier"}
	electrical = []string{"wire", "lamp", "lead", "board", "terminal", "connector", "plug", "switch", "contact", "relay"}
)

func opensSystem(text string) bool {
	return speaksOf(text, sealedWork) || speaksOf(text, []string{"solder"}) && !speaksOf(text, electrical)
}
