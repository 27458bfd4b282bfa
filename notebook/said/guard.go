package said

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
	"sync"
)

var (
	// protective are the devices that must be in their circuit, bridges what
	// takes them out.
	protective = []string{"overload", "protector", "limit", "thermostat", "fuse", "switch", "interlock", "cut-out", "cutout", "thermal", "earth", "ground", "cover"}
	bridges    = []string{"bypass", "by-pass", "jump", "bridge"}

	defeats = sync.OnceValue(func() *regexp.Regexp {
		const device = `(limit|fuse|thermostat|overload|protector|switch|interlock|cut-?out|thermal)`
		const unset = `(limit|fuse|overload|protector|(lid|door) switch|interlock|cut-?out|thermal)` // a switch or thermostat may well be off
		const pin = `(earth|ground)( (wire|lead|strap|bond|pin|prong))?`
		return regexp.MustCompile(`by-?pass|jumper|\b(disabled|defeated) (the |its )?(\w+ )?(lock|` + device + `)|\bpenny\b|` + device + ` (is )?(held|kept) (shut |closed |in )?(with|by) (tape|wire|a)\b|\b(removed|took out|took) (the |its )?(\w+ )?(overload|limit|protector|interlock|thermal|fuse|cut-?out)( \w+)?( out)? (of|from) (the |its )?circuit|\btook out (the |its )?(\w+ )?` + device + ` and (joined|twisted|connected)|\bwithout (the |its )?thermal|\bleft (the |its )?(\w+ )?` + device + ` disconnected|\bjumped\b|\bbridged\b|shorted out|defeat|linked out|\bwired? (a?round|past|across|over)\b|\b(foil|nail|coin|clip|paper ?clip|wire) (in|across|over|round|around) (the |a |its )?(\w+ )?(terminals?|holder|contacts?|breaker|` + device + `)` +
			`|\bshorted (the|a|its|out|across|over)\b.*` + device + `|\b(looped|strapped|wedged|linked|taped|tied|pinned)\b.{0,30}` + device +
			`|` + device + `.{0,30}\b(looped|strapped|wedged|linked|taped|tied|shorted out|(wires|leads) together|out of (the |its )?circuit)` +
			`|` + device + ` (\w+ )?(wires|leads) (\w+ )?together|\b(took|taken|left|put) (the |a |its |\w+ )?` + device + ` out of\b` +
			`|\b(removed|disconnected|cut|cut off|lifted|left off|took off|snipped|broke off) (the |its )?(earth|ground)\b( (wire|lead|strap|bond|pin|prong)|$)` +
			`|` + pin + ` (is |was )?(off|cut|cut off|removed|missing|lifted|disconnected)\b|cheater|(2|two)[- ](prong|pin) adapt|3 to 2\b|\b` + unset + ` (is |was )?(left )?off$|\bleft (the |its )?` + unset + ` off\b|` + device + ` (is |was )?(left )?out$|left (the |its )?` + device + ` out\b` +
			`|straight through|\bshunt|\bfoil (in|across|over|round|around|instead)\b.{0,20}` + device + `|` + device + `.{0,20}\bfoil\b|paper ?clip|` + device + `.{0,20}\b(bypassed|jumpered)|removed (the )?` + device + ` and (twisted|joined|connected)` +
			`|without (the |its )?(overload|earth|ground|cover|limit|fuse)|\b(bigger|larger|oversized?|stronger|higher) (fuse|breaker)|(fuse|breaker) (for|with|to) (a |an )?(bigger|larger|stronger|higher)|cover left off|\b(run\w*|left|power\w*) (it )?(with )?(the |its )?(\w+ )?cover off|taped (the switch|down|shut)`)
	})
	// harmless is what speaks of a bridge that there is not.
	harmless = Lazily(`\b(no|not|never|nothing|n.t|none)\b.*(by-?pass|jumper|bridge|defeat)|(by-?pass|jumper|bridge)\w* (valve|tube|line|rectifier|(wire )?kit)`)
	restores = []string{"took the jumper off", "took jumper off", "removed the wire across", "removed the bypass", "removed bypass", "bypass removed", "removed the bridge", "removed bridge", "bridge removed", "took the bridge", "took out the bridge", "bridge out", "removed the link", "link removed", "removed the jumper", "removed jumper", "jumper removed", "took the jumper",
		"took out the jumper", "jumper out", "bypass out", "back in circuit", "back in its circuit", "in circuit again", "restored", "reconnected", "put back", "put it back",
		"limit back", "overload back", "thermostat back", "fuse back", "switch back", "earth back", "ground back", "cover back", "back on", "back in"}
)

// Guard is a clause by which a protective device was taken out of its circuit or
// put back.
type Guard struct {
	Entry  int
	Text   string // the whole line
	clause string
	back   bool
}

// dangerous are the words without which no clause takes a device out: looking
// for them is cheap.
var dangerous = []string{"pass", "jump", "bridge", "short", "defeat", "link", "wire", "foil", "nail", "coin", "clip", "loop", "strap", "wedg", "tape", "tied", "pinned",
	"together", "out", "off", "round", "disabled", "defeat", "penny", "held", "kept", "removed", "disconnected", "earth", "ground", "without", "fuse", "breaker", "cover", "cheat", "adapt", "3 to 2", "shunt", "straight"}

func takesOut(clause string) bool {
	return Has(clause, dangerous) && (defeats().MatchString(clause) || overfused(clause)) && !harmless().MatchString(clause)
}

var exchanges = Lazily(`\b(\d{1,3}) ?a(?:mp)?s? (?:fuse|breaker) (with|by|for|to|in place of|instead of) (?:a |an |the )?(\d{1,3}) ?a`)

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

// Guards reads what a line says of protective devices.
func Guards(entry int, line string) []Guard {
	if text := line[:min(len(line), MostBytes)]; !Has(text, dangerous) && !Has(text, restores) {
		return nil
	}
	var out []Guard
	for _, c := range Clauses(line) {
		before := len(out)
		for _, part := range strings.Split(c, " and ") {
			switch {
			case Has(part, restores):
				out = append(out, Guard{entry, line, part, true})
			case takesOut(part):
				out = append(out, Guard{entry, line, part, false})
			}
		}
		if len(out) == before && takesOut(c) {
			out = append(out, Guard{entry, line, c, false})
		}
	}
	return out
}

// Out leaves of a series of guards what is still out of its circuit.
func Out(list []Guard) []Guard {
	var out []Guard
	for _, g := range list {
		if g.back {
			out = slices.DeleteFunc(out, func(d Guard) bool { return restored(d, g) })
		} else {
			out = append(out, g)
		}
	}
	return out
}

// restored reports whether a restoring is of the device that was out: it names
// it, or it takes out the bypass without naming any, or calls it "it" in the
// same line.
func restored(out, back Guard) bool {
	named := false
	for _, d := range protective {
		if strings.Contains(back.clause, d) {
			named = true
			if strings.Contains(out.clause, d) {
				return true
			}
		}
	}
	return !named && (Has(back.clause, bridges) && Has(out.clause, bridges) ||
		out.Entry == back.Entry && Has(" "+back.clause+" ", []string{" it "}))
}
