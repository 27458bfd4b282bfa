package said

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
	"sync"
)

var (
	defeats = sync.OnceValue(func() *regexp.Regexp {
		const device = `(limit|fuse|thermostat|overload|protector|switch|interlock|cut-?out|thermal)`
		const unset = `(limit|fuse|overload|protector|(lid|door) switch|interlock|cut-?out|thermal)` // a switch or thermostat may well be off
		const pin = `(earth|ground)( (wire|lead|strap|bond|pin|prong))?`
		return regexp.MustCompile(`by-?pass|jumper|\b(disabled|defeated) (the |its )?(\w+ )?(lock|` + device + `)|\bpenny\b|` + device + ` (is )?(held|kept) (shut |closed |in )?(with|by) (tape|wire|a)\b|\b(removed|took out|took) (the |its )?(\w+ )?(overload|limit|protector|interlock|thermal|fuse|cut-?out)( \w+)?( out)? (of|from) (the |its )?circuit|\btook out (the |its )?(\w+ )?` + device + ` and (joined|twisted|connected)|\bwithout (the |its )?thermal|\bleft (the |its )?(\w+ )?` + device + ` disconnected|\bjumped\b|\bbridged\b|shorted out|defeat|linked out|\bwired? (a?round|past|across|over)\b|\b(foil|nail|coin|clip|paper ?clip|wire) (in|across|over|round|around) (the |a |its )?(\w+ )?(terminals?|holder|contacts?|breaker|` + device + `)` +
			`|\bshorted (the|a|its|out|across|over)\b.*` + device + `|\b(looped|strapped|wedged|linked|taped|tied|pinned)\b.{0,30}` + device +
			`|` + device + `.{0,30}\b(looped|strapped|wedged|linked|taped|tied|shorted out|(wires|leads) together|out of (the |its )?circuit)` +
			`|` + device + ` (\w+ )?(wires|leads) (\w+ )?together|\b(took|taken|left|put) (the |a |its |\w+ )?` + device + ` out of\b` +
			`|\b(removed|disconnected|cut|cut off|lifted|left off|took off|snipped|broke off) (the |its )?(earth|ground)\b( (wire|lead|strap|bond|pin|prong)|$)` +
			`|` + pin + ` (is |was )?(off|cut|cut off|removed|missing|lifted|disconnected)\b|cheater|(2|two)[- ](prong|pin) adapt|unground\w* adapt|3 to 2\b|\b` + unset + ` (is |was )?(left )?off$|\bleft (the |its )?` + unset + ` off\b|` + device + ` (is |was )?(left )?out$|left (the |its )?` + device + ` out\b` +
			`|straight through|\bshunt|\bfoil (in|across|over|round|around|instead)\b.{0,20}` + device + `|` + device + `.{0,20}\bfoil\b|paper ?clip|` + device + `.{0,20}\b(bypassed|jumpered)|removed (the )?` + device + ` and (twisted|joined|connected)` +
			`|` + device + ` (with|by) (a |some |the )?((bit|piece|length) of )?(\w+ )?(wire|nail|bolt|solder|copper|link|coin)s?\b` +
			`|without (the |its )?(overload|earth|ground|cover|limit|fuse)|\b(bigger|larger|oversized?|stronger|higher) (fuse|breaker)|(fuse|breaker) (for|with|to) (a |an )?(bigger|larger|stronger|higher)|cover left off|\b(run\w*|left|power\w*) (it )?(with )?(the |its )?(\w+ )?cover off|taped (the switch|down|shut)`)
	})
	// harmless is what speaks of a bridge that there is not.
	harmless = pattern{expr: `\b(no|not|never|nothing|n.t|none)\b.*(by-?pass|jumper|bridge|defeat)`}
	inert    = pattern{expr: `\b(by-?pass|jumper|bridge)s? (valve|tube|line( of| to|$)|rectifier|(wire )?kit)|\b(by-?pass|jumper|bridg|jump|defeat)\w* (nothing|none)\b|(3|three).?wire|^(the |wall )*(outlet|receptacle|socket) (\w+ ){0,2}(ground|earth)`}
)

// Guard is a clause by which a protective device was taken out of its circuit or
// put back.
type Guard struct {
	Entry   int
	Text    string // the whole line
	clause  string
	devices []string
	way     way
}

// way is how a clause is of a device.
type way int

const (
	out       way = iota
	unbridged     // what bridged it is off
	refitted      // the device itself is back
	renewed       // there is a new one
)

// dangerous are the words without which no clause takes a device out: looking
// for them is cheap.
var dangerous = sync.OnceValue(func() []string {
	return strings.Split("pass|jump|bridge|short|defeat|link|wire|foil|nail|coin|clip|loop|strap|wedg|tape|tied|pinned|together|out|off|round|disabled|penny|held|kept|removed|disconnected|earth|ground|without|fuse|breaker|cover|cheat|adapt|3 to 2|shunt|straight", "|")
})

//go:noinline
func takesOut(clause string) bool {
	return Has(clause, dangerous()) && (defeats().MatchString(clause) || overfused(clause)) && !harmless.get().MatchString(clause) && !inert.get().MatchString(clause)
}

var exchanges = pattern{expr: `\b(\d{1,3}) ?a(?:mp)?s? (?:fuse|breaker) (with|by|for|to|in place of|instead of) (?:a |an |the )?(\d{1,3}) ?a`}

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
	if !Has(line[:min(len(line), MostBytes)], dangerous()) {
		return false
	}
	return slices.ContainsFunc(Clauses(line), func(c string) bool {
		return takesOut(c) || slices.ContainsFunc(strings.Split(c, " and "), takesOut)
	})
}

// Guards reads what a line says of protective devices. Of work that was done, a
// new device counts as its being back, and plain forms (remove, put) as done.
func Guards(entry int, line string, work bool) []Guard {
	if text := line[:min(len(line), MostBytes)]; !Has(text, dangerous()) && !backs().bare.MatchString(strings.ToLower(text)) {
		return nil
	}
	var list []Guard
	var it []string // what the part before names
	for _, c := range Clauses(line) {
		before := len(list)
		for _, part := range strings.Split(c, " and ") {
			is, said := wayOf(part, work)
			g := Guard{entry, line, part, devicesOf(part, false), is}
			if said && is == renewed {
				g.devices = devicesOf(strings.Join(Renewals(part), ", "), true)
				if atPlug.get().MatchString(part) {
					g.devices = append(g.devices, "pin")
				}
			}
			if said && is == refitted {
				g.devices = devicesOf(beside.get().ReplaceAllString(part, ""), false)
			}
			switch last := len(list) - 1; {
			case said:
				if len(g.devices) == 0 && ofIt.get().MatchString(part) {
					g.devices = it
				}
			case last >= 0 && len(g.devices) > 0 && backs().names.MatchString(part): // the last of several of which the same is said
				g.way, g.clause = list[last].way, list[last].clause
			default:
				it = nil
				continue
			}
			list, it = append(list, g), g.devices
		}
		if len(list) == before && takesOut(c) {
			list, it = append(list, Guard{entry, line, c, devicesOf(c, false), out}), nil
		}
	}
	return list
}

// beside tells where a part is that is put back.
var beside = pattern{expr: `\b(at|near|beside|behind|by) .*`}

// ofIt tells a clause of what was spoken of just before it.
var ofIt = pattern{expr: `\bit\b|\bnew one\b|^(replaced|refitted|renewed|put back|put in again|reconnected|restored)( again)?$`}

// wayOf tells what a clause says of a protective device, false when nothing.
//
//go:noinline
func wayOf(clause string, work bool) (way, bool) {
	switch {
	case unbridges(clause, work):
		return unbridged, true
	case takesOut(clause):
		return out, true
	case refits(clause, work):
		return refitted, true
	case work && len(Renewals(clause)) > 0:
		return renewed, true
	}
	return 0, false
}
