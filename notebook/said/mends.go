package said

import (
	"slices"
	"strings"

	"ohmcall/calc/cause"
)

// Words of which work has one that can mend a danger: any other was for something else.
// Smoke of what carries current is mended there.
var (
	ofFlue   = pattern{expr: `vent|flue|chimney|exchang|hx|cell|exhaust|pipe|burner|inducer|liner|gasket|furnace|boiler|combust|orifice|roll ?out|seal|draft|hood|damper|nest|soot|swe?ep|air|valve|gas|manifold|pressure|regulator|duct|water heater|cap|block|jumper|switch`}
	ofJoint  = pattern{expr: `gas |leak|valve|cock|union|flex|pipe|fitting|joint|connect|hose|regulat|nut|flare|orifice|tight|seal|tee|elbow|nipple|line|manifold|pilot|dope|tube`}
	oneJoint = pattern{expr: `union|flex|valve|cock|hose|pipe|regulator|flare|manifold`}
	// earthScrew is what holds an earth to the metal: broken, it may touch and bear no current.
	earthScrew = pattern{expr: `\b(screw|stud|bolt|nut|rivet|lug)s?\b`}
	ofEarth    = pattern{expr: `\b(earth|ground|gr?nd|bond|green|strap|screw|stud|bolt|rivet|lug)`}
	ofLid      = pattern{expr: `door|lid|switch|\bsw\b|interlock|latch|strike|lock|lever|actuator|hinge`}
	ofWiring   = pattern{expr: `wir|lead|cord|cable|terminal|spade|lug|connect|nut|splice|plug|outlet|recept|socket|harness|block|prong|strip|breaker|fuse|contactor|relay|switch|board|control|elem|heater|motor|junction|whip`}
)

// exchanger is what is never mended by a reading or by work beside it, newExchanger a
// new one or all that holds it; supply is what brings the current, of which a burnt piece
// is renewed with its own or the next.
var (
	exchanger    = pattern{expr: `\b(exchang\w*|hx)\b|\b(crack|hole|rust\w* through)\w*\b.*\b(cells?|furnace|boiler)\b|\bcells? (is |are )*(crack|rust)`}
	newExchanger = pattern{expr: `\b(?:new|replaced|renewed|swapped|swapd|exchanged|changed|installed|fitted|put in)(?: (?:the|a|an|its|new|in|whole|complete|entire|primary|secondary|heat|gas|cracked|bad|old|rusted|\S*\d\S*))* (?:exchangers?|hx|cells?|furnace|boiler|water heater|unit heater)(?: (?:assembly|assy|core|section|pack))?(?: (?:in|fitted|and|n|w|with|installed|under|from)\b|\s*[,;.&+]|$)|\b(?:exchanger|hx|cells?|furnace|boiler)<now> (?:replaced|renewed|new|changed|swapped)\b`}
	leakTests    = pattern{expr: `\b(gas )?leak[ -]?(re)?(test|check|search)\w*`}
	supply       = pattern{expr: `\b((plug|outlet|socket|cord|cable|terminal|wire|wiring|lead|connect[oe]r|lug|spade|block|strip|harness|junction|prong|pigtail|whip)s?\b|recept|re-?wir|(re-?)?(splic|crimp)|re-?termin)`}
	burning      = pattern{expr: `\b(burn|melt|scorch|charr|sing(e|ed)\b|brown|black|smok|spark|arc(s|ed|ing)?\b|cook|overheat|hot\b|fried|toast)\w*`}
)

// burntSupply reports whether what brings the current is told of as burnt.
//
//go:noinline
func burntSupply(told string) bool { return len(BurntSupplies(told)) > 0 }

// BurntSupplies are the clauses of a line that tell of such, each of a place.
func BurntSupplies(told string) (list []string) {
	for _, c := range Clauses(strings.ToLower(told)) {
		if burning.is(c) && supply.is(c) {
			list = append(list, c)
		}
	}
	return list
}

// SamePlace reports whether work or another clause names a thing of which one tells that it
// is burnt; a cord has its plug, and a wire is renewed by what ends it (common practice).
func SamePlace(burnt, text string) bool {
	text = strings.ToLower(text)
	list := burntThing.get().FindAllString(burnt, MostClauses)
	if slices.Contains(list, "plug") && !slices.Contains(list, "cord") {
		list = append(list, "cord")
	}
	return namesOne(list, text) || Has(strings.Join(list, " "), wireWords) && Has(text, wireWords)
}

var (
	burntThing = pattern{expr: `\b(?:(?:wire|wiring|lead|cord|cable|receptacle|outlet|socket|plug|prong|terminal|junction|spade|lug|connector|splice|whip|pigtail|harness|block|strip)s?|element|elem|heater|motor|thermostat|limit|breaker|contactor|relay|switch|timer|board|compressor|pump)\b`}
	wireWords  = []string{"wir", "lead", "splic", "crimp", "harness", "pigtail"}
)

// Remade reports whether a line of work mends the very thing that another tells of as a
// danger, and tells its own test behind that.
func Remade(finding, told, work string) bool {
	work = strings.ToLower(work[:min(len(work), MostBytes)])
	switch {
	case !ownTest.is(work) || makeshift.is(work) || !MendsIt(finding, told, work) || cause.Partly(work) != "":
		return false
	case finding == "smoke":
		return Mended(work) && quietNow.is(work) && (ofWiring.is(work) || moving.is(work))
	case finding != "co" || !Mended(work) && !flueOn.is(work):
		return false
	}
	told = strings.ToLower(told)
	shown := strings.Join(Shown(work), " ")
	monoxide := strings.Contains(shown, "no-co")
	draws := strings.Contains(shown, "no-spill") || drawsWell.is(work)
	switch {
	case exchanger.is(told):
		return monoxide
	case flueOff.is(told):
		return flueOn.is(work) && (monoxide || draws)
	}
	return monoxide && (draws || forMinutes.is(work))
}

var (
	ownTest = pattern{expr: `\b(co|monoxide|spill\w*|drafts?|draws|no)\b`} // without one of which it tells none
	// makeshift tells work that is none for long, or that leaves some of it; unfixed a
	// flue that nothing holds.
	makeshift  = pattern{expr: `\b(tape[ds]?|taping|clamps?|loose|temporar\w*|for now|still|yet|less|but|watch|not sure|windows?|same|until|till?|smaller|some|furnace off|burner off|unplugged|switched off)\b`}
	unfixed    = pattern{expr: `\b(loose(ly)?|no screws|taped?|foil|bricks?|propp?(ed)?|cement|putty|epoxy)\b`}
	quietNow   = pattern{expr: `\b(no|without) (more )?(smok|spark|arcing|(burn\w*|hot|bad) smell|smell|odou?r)`}
	moving     = pattern{expr: `\b(belts?|bearings?|pulley|idler|rollers?|lint|vent|ducts?|pump|fan|blower|seal|igniter|clutch)\b`}
	flueOff    = pattern{expr: `\b(flue|vent|chimney|hood|exhaust)\b.*\b(off|disconnect\w*|hanging|loose|apart|fell|fallen|came|knocked|separated|down|gap)\b|\b(disconnect\w*|loose|fallen|separated|hanging) (\w+ )?(flue|vent|chimney)\b`}
	flueOn     = pattern{expr: `\b(flue|vent|chimney|hood|exhaust)\b.*\b(back|refitted|reconnected|reattached|renewed|replaced|screwed|secured|fitted|on)\b|\b(refitted|reconnected|re-?attached|new|renewed|replaced|resecured|reseated|screwed|screwd|secured|fitted)( the| its| back)* (\w+ )?(flue|vent|chimney|exhaust)\b`}
	otherGas   = pattern{expr: `(?i)\b(ranges?|cook(er|ers|top)|stoves?|ovens?|hobs?|furnace|boiler|(water|room|space|wall) heater|gas (dryer|heater|fire|grill|meter|line|pipe|cock)|fireplace|bbq|meter|kitchen|house|basement|cellar|garage|hall\w*|street|next door)\b`}
	ofMonoxide = pattern{expr: `(?i)\b(co|ppm|monoxide|flue|exchang\w*|hx|crack\w*|vent\w*|soot\w*|flames?|fire|chimney|smok\w*|spill\w*|burn\w*)\b`}
	drawsWell  = pattern{expr: `\b(mirror|match|smoke|draft|flue)( test)? (draws|draft\w*|good|ok|fine|clear|pulls)\b|\bdraws (fine|good|well|ok|right|up)\b|\bdrafts? (is |was |test )*(good|ok|fine)\b`}
	forMinutes = pattern{expr: `\b\d+ ?(m|mins?|minutes?|hrs?|hours?)\b|\bfull cycle\b`}
)

// OtherGas reports whether a line names another appliance that burns gas, or a place where
// that smells: of the house and not of a machine's refrigerant.
func OtherGas(line string) bool { return otherGas.is(line) }

// onlyRollout reports whether all that a text tells of a flame is that the switch against
// its rolling out is out of its circuit, or back.
func onlyRollout(text string) bool {
	if !Has(text, []string{"roll"}) || ofMonoxide.is(text) {
		return false
	}
	for _, c := range Clauses(spelt(text)) {
		if _, said := wayOf(c, true); said {
			return true
		}
	}
	return false
}

// MendsIt reports whether work can be of a danger that another line tells of.
//
//go:noinline
func MendsIt(finding, told, work string) bool {
	told, work = strings.ToLower(told), strings.ToLower(work[:min(len(work), MostBytes)])
	switch {
	case halfway.is(work):
		return false
	case finding == "co":
		return ofFlue.is(work) && (!exchanger.is(told) || newExchanger.is(strings.Join(Stated(work), ", "))) && (!flueOff.is(told) || !unfixed.is(work))
	case finding == "gas-leak":
		work = leakTests.get().ReplaceAllString(work, "")
		of, at := oneJoint.get().FindAllString(told, MostClauses), oneJoint.get().FindAllString(work, MostClauses)
		return ofJoint.is(work) && (len(of) == 0 || len(at) == 0 || Has(work, of))
	case finding == "leak-found":
		return refrigerantWork().MatchString(work) || !besideIt().MatchString(work)
	case finding == "earth-off" && earthScrew.is(told):
		return ofEarth.is(work)
	case finding == "runs-open":
		return ofLid.is(work)
	case finding == "smoke" && burntSupply(told):
		return supply.is(work)
	case finding == "smoke" && !ofWiring.is(work):
		of := thing.get().FindAllString(told, MostClauses)
		return !ofWiring.is(told) && (len(of) == 0 || Has(work, of))
	}
	return true
}

// LastsBut reports whether a line has one of several words in a clause other than those
// by which a protective device is out.
func LastsBut(line string, words []string) bool {
	return slices.ContainsFunc(Clauses(line), func(c string) bool { return Has(c, words) && !takesOut(c) })
}

// Mended reports whether a text that is no work says that something was mended.
func Mended(text string) bool {
	return slices.ContainsFunc(Stated(text), func(c string) bool { return mended().MatchString(c) && !unheld.is(c) && !notYet.is(c) })
}
