package said

import (
	"slices"
	"strings"
)

// Words of which work has one that can mend a danger: any other was for something else.
// Smoke of what carries current is mended there.
var (
	ofFlue   = pattern{expr: `vent|flue|chimney|exchang|hx|cell|exhaust|pipe|burner|inducer|liner|gasket|furnace|boiler|combust|orifice|roll ?out|seal|draft|hood|damper|nest|soot|swe?ep|air|valve|gas|manifold|pressure|regulator|duct|water heater|cap|block|jumper|switch`}
	ofJoint  = pattern{expr: `gas |leak|valve|cock|union|flex|pipe|fitting|joint|connect|hose|regulat|nut|flare|orifice|tight|seal|tee|elbow|nipple|line|manifold|pilot|dope|tube`}
	oneJoint = pattern{expr: `union|flex|valve|cock|hose|pipe|regulator|flare|manifold`}
	ofLid    = pattern{expr: `door|lid|switch|\bsw\b|interlock|latch|strike|lock|lever|actuator|hinge`}
	ofWiring = pattern{expr: `wir|lead|cord|cable|terminal|spade|lug|connect|nut|splice|plug|outlet|recept|socket|harness|block|prong|strip|breaker|fuse|contactor|relay|switch|board|control|elem|heater|motor|junction|whip`}
)

// MendsIt reports whether work can be of a danger that another line tells of.
//
//go:noinline
func MendsIt(finding, told, work string) bool {
	told, work = strings.ToLower(told), strings.ToLower(work[:min(len(work), MostBytes)])
	switch {
	case halfway.is(work):
		return false
	case finding == "co":
		return ofFlue.is(work)
	case finding == "gas-leak":
		of, at := oneJoint.get().FindAllString(told, MostClauses), oneJoint.get().FindAllString(work, MostClauses)
		return ofJoint.is(work) && (len(of) == 0 || len(at) == 0 || Has(work, of))
	case finding == "runs-open":
		return ofLid.is(work)
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

// atJoint tells where a test of a leak was, by words that name one joint of several.
var atJoint = pattern{expr: `\b(?:at|on|near|around|by) (?:\w+ ){0,2}?(valve|cock|shut-?off|meter|manifold|union|flare|drier|evap\w*|cond\w*|compressor|comp|coil|connector|flex|regulator|tank|bottle|pilot|orifice|burner|pipe|tee|elbow|nipple|txv|suction|discharge|flange)\b`}

// Elsewhere reports whether a test was at places of which none is told of.
func Elsewhere(test, told string) bool {
	if strings.HasSuffix(test, " there") {
		of := oneJoint.get().FindAllString(strings.ToLower(told), MostClauses)
		return len(of) > 1 && strings.Count(strings.Join(of, " "), of[0]) < len(of) // at one of several
	}
	if !Has(test, []string{" at ", " on ", " near ", " around ", " by "}) {
		return false
	}
	test = strings.ToLower(test)
	told = strings.ToLower(told) + atJoint.get().ReplaceAllString(test, "")
	list := atJoint.get().FindAllString(test, MostClauses)
	for i, at := range list {
		list[i] = at[strings.LastIndexByte(at, ' ')+1:]
	}
	return len(list) > 0 && !Has(told, list)
}
