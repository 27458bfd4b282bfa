package said

import (
	"slices"
	"strings"
)

// joints are the words for where gas may leak: of one joint of several, as what was
// worked on or tested; atJoint is where a test was, also by a door or on a floor.
const joints = `gas valve|burner valve|valve|stem|cock|shut-?off|meter|manifold|union|flare|drier|evap\w*|condens\w*|compressor|coil|connector|flex|regulator|tank|bottle|pilot|orifice|pipe|tee|elbow|nipple|txv|drip leg|hose|spud|process|capillary|cap tube`

var (
	jointWord = pattern{expr: `\b(?:` + joints + `)\b`}
	atJoint   = pattern{expr: `\b(?:at|on|near|around|by|behind|under|in|inside) (?:\w+ ){0,2}?(?:` + joints + `|comp|cond|suction|discharge|burner|flange|ignit[eo]r|electrode|thermocouple|door|window|knob|cooktop|cabinet|wall|floor|sink|kitchen|basement|garage|hall\w*)\b|\b(?:behind|under) (?:the )?(?:range|stove|oven|furnace|boiler|heater|dryer|unit|it)\b`}
	otherOne  = pattern{expr: `\b(?:other|another) (?:\w+ )?(?:joint|fitting|nut|connection|side|end|` + joints + `)\b`}
	// allJoints tells a test of the whole; byArea one that finds what leaks wherever it is,
	// soaped one that finds it at the joint that is wetted (common practice).
	allJoints = pattern{expr: `\b(?:all|every|each|whole|entire|rest of) (?:(?:of|the|gas|other|its|my|accessible|visible|line|set|pipe|new) )*(?:joints?|fittings?|connections?|unions?|lines?|pipes?|piping|pipework|train|system|circuit|runs?|valves?|house|machine|unit|range|way)\b|\b(?:everything|everywhere|anywhere|all over|all round|all around)\b|\b(?:soaped|soap(?:ed)? tested|sniffed|checked|tested|bubble tested) (?:them |it |both )?all\b|\ball (?:soaped|tested|checked|sniffed)\b|\bfrom (?:the )?(?:meter|cock|shut-?off) to\b`}
	byArea    = pattern{expr: `\bsniff\w*|\bdetector|\b(?:leak|pressure|nitro\w*|n2|gas) ?(?:re)?(?:test|check|search)|\bno gas (?:leaks?|smell)|\bpressure (?:holds|held)|\b(?:holds|held) (?:pressure|nitro\w*|vacuum)|\bmanometer|\bmeter (?:dial )?(?:still|stopped|does not|doesn't)`}
	soaped    = pattern{expr: `\bsoap|\bbubbl|\bsuds`}
	foundAt   = pattern{expr: `\b(?:found|was|were)\b.*\b(?:leak\w*|bubbl\w*|loose|crack\w*|split|weep\w*)\b|\bleaking\b`}
	smelt     = pattern{expr: `\b(?:gas|smell\w*|smelt|stink\w*|stank|odou?r|egg\w*|whiff|leak\w*|hiss\w*)\b`}
	// ways are words for one of two alike, with the other (common practice).
	ways = [][2]string{{"left", "right"}, {"right", "left"}, {"lh", "rh"}, {"rh", "lh"}, {"front", "rear"}, {"rear", "front"}, {"upper", "lower"}, {"lower", "upper"}, {"inlet", "outlet"}, {"outlet", "inlet"}}
)

// anyPlace are words of a place that do not tell one of several.
var anyPlace = []string{"at", "on", "near", "around", "by", "behind", "under", "in", "inside", "the", "a", "its", "gas", "new", "joint"}

// Placed reports whether a text tells where something is, by words for a joint or a place.
func Placed(text string) bool { return jointWord.is(text) || atJoint.is(text) }

// placesIn are the words for places in a text, a place each: those where something was,
// else what was worked on there.
func placesIn(text string, objects bool) []string {
	list := atJoint.get().FindAllString(text, MostClauses)
	if objects && !slices.ContainsFunc(list, jointWord.is) {
		list = append(list, jointWord.get().FindAllString(text, MostClauses)...)
	}
	return list
}

// Elsewhere reports whether a test was at places of which none is told of, or is of work
// on such alone. What is only smelt, at no joint, may come from any: one that is wetted with
// soap does not tell of the others.
func Elsewhere(test, told string, smell bool) bool {
	test, told = strings.ToLower(test), strings.ToLower(told)
	if allJoints.is(test) {
		return false
	}
	if strings.HasSuffix(test, " there") {
		of := oneJoint.get().FindAllString(told, MostClauses)
		if len(of) > 1 && strings.Count(strings.Join(of, " "), of[0]) < len(of) {
			return true // at one of several
		}
	}
	if otherOne.is(test) && !otherOne.is(told) {
		return true
	}
	did := strings.HasPrefix(test, "did ")
	if smell && (byArea.is(test) && !atJoint.is(test) && !strings.HasSuffix(test, " there") || did && foundAt.is(test)) {
		return false
	}
	if smell {
		at := slices.DeleteFunc(Clauses(told), func(c string) bool { return !smelt.is(c) })
		told = strings.Join(at, ", ")
	}
	for _, w := range ways {
		if here, there := " "+w[0]+" ", " "+w[1]+" "; strings.Contains(test, here) && !strings.Contains(test, there) && strings.Contains(told, there) && !strings.Contains(told, here) {
			return true
		}
	}
	list := placesIn(test, did || soaped.is(test))
	if !smell && !did {
		// What was worked on with it counts as told where no joint is.
		if beside := atJoint.get().ReplaceAllString(test, ""); !Placed(told) || Has(beside, oneJoint.get().FindAllString(told, MostClauses)) && oneJoint.is(told) {
			told += " " + beside
		}
	}
	if !smell && did && !Placed(told) {
		return false
	}
	words := strings.Fields(strings.Join(list, " "))
	return len(list) > 0 && !namesOne(slices.DeleteFunc(words, func(w string) bool { return slices.Contains(anyPlace, w) }), told)
}

// namesOne reports whether a text names one of several things, in the singular or plural.
//
//go:noinline
func namesOne(things []string, text string) bool {
	for _, w := range things {
		if strings.Contains(text, strings.TrimSuffix(w, "s")) {
			return true
		}
	}
	return false
}

// NoSmokeAt reports whether a test of smoke was at places of which none is told of.
func NoSmokeAt(test, told string, _ bool) bool {
	told = strings.ReplaceAll(strings.ToLower(told), "heater", "element")
	list := smokeAt.get().FindAllString(strings.ReplaceAll(strings.ToLower(test), "heater", "element"), MostClauses)
	for i, at := range list {
		list[i] = at[strings.LastIndexByte(at, ' ')+1:]
	}
	return len(list) > 0 && !namesOne(list, told)
}

// smokeAt is where nothing smokes or smells burnt, by a thing of several.
var smokeAt = pattern{expr: `\b(?:at|from|by|near|on|in|inside|around|behind|off|out of) (?:\w+ ){0,2}?(wires?|wiring|leads?|cords?|outlets?|sockets?|receptacles?|plugs?|terminals?|block|boxe?s?|connectors?|harness|fuses?|panel|breakers?|disconnect|contactor|relays?|vents?|ducts?|hood|motors?|blower|fan|pump|belt|board|pcb|switch|timer|thermostat|element|elem|heaters?|compressor|transformer|capacitor|chimney|flue|outside|outdoors|attic|kitchen|hall\w*|basement|garage|neighbou?r\w*)\b`}

// AllHazards reports whether words of what can hurt no more are of all of it.
func AllHazards(line string) bool { return everyHazard.is(strings.ToLower(line)) }

var everyHazard = pattern{expr: `\b(?:no hazards?|hazards|all|both|every\w*|nothing|none)\b`}

// SameHazard reports whether a line tells again of what can hurt that another told of.
func SameHazard(before, again string) bool {
	_, a, _ := strings.Cut(strings.ToLower(before), " ")
	_, b, _ := strings.Cut(strings.ToLower(again), " ")
	of := thing.get().FindAllString(b, MostClauses)
	return a == b || justHazard.is(b) || len(of) > 0 && !slices.ContainsFunc(of, func(w string) bool { return !namesOne([]string{w}, a) })
}

var justHazard = pattern{expr: `^hazards?( (gone|still|stays|remains|there|not|until|when|again)\b.*)?$`}

// NamesHazard reports whether a line by which something is gone names what another tells of.
func NamesHazard(told, gone string) bool {
	return namesOne(thing.get().FindAllString(strings.ToLower(gone), MostClauses), strings.ToLower(told))
}
