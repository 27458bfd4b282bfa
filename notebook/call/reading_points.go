package call

import (
	"strings"

	"ohmcall/notebook/script"
)

// shells are what the metal shell is called among the points, earths what the
// conductor that leads there is.
var (
	shells = []string{caseName, "chassis", "shell", "frame", "body", "cabinet", "metal", "sheath", "housing", "casing", "dome"}
	earths = []string{"earth", "ground", "gnd", "grd", "pe"}
)

//go:noinline
func isShell(p string) bool {
	p = strings.ToLower(p)
	return among(shells, p) || among(earths, p)
}

// isMetal tells the shell and bare metal of it that is touched.
func isMetal(p string) bool {
	p = strings.ToLower(p)
	return among(shells, p) || among(bareMetal, p)
}

// toShell calls the shell by one name, whatever it was called: a pin to ground
// is a pin to the case. The earth conductor to the shell is the earth path.
func (r *reading) toShell() {
	switch {
	case r.quality.word == "volt" && r.b != "":
		if isMetal(r.a) {
			r.a, r.b = r.b, r.a
		}
		if isMetal(r.b) {
			r.b = caseName
			switch a := strings.ToLower(r.a); {
			case among(earths, a), a == "g" && (r.over || r.x > mostControl): // below it the fan's terminal of a thermostat
				r.a = "earth"
			case a == "n":
				r.a = "neutral"
			}
		}
		return
	case r.quality.word == "temp":
		return
	case r.quality.word != "ohm" || r.b == "":
		if strings.EqualFold(r.a, caseName) {
			r.a, r.b = r.b, r.a
		}
		return
	case isShell(r.a) && isShell(r.b):
		if among(earths, strings.ToLower(r.a)) != among(earths, strings.ToLower(r.b)) {
			r.a, r.b = "earth", ""
			return
		}
	case isShell(r.a):
		r.a, r.b = r.b, r.a
	}
	if isShell(r.b) {
		r.b = caseName
	}
}

// grounded are what stands on earth beside an appliance: against it volts on
// bare metal are felt.
var grounded = []string{"earth", "neutral", "pipe", "tap", "faucet", "sink", "radiator", "floor"}

// onMetal tells volts between the metal of the appliance and what stands on
// earth.
func (r *reading) onMetal() bool {
	return r.quality.word == "volt" && r.b == caseName && among(grounded, strings.ToLower(r.a))
}

// ofNeutral tells volts between the neutral conductor and earth; G is earth beside it.
func (r *reading) ofNeutral() bool {
	a, b := strings.ToLower(r.a), strings.ToLower(r.b)
	if b == "n" || b == "neutral" {
		a, b = b, a
	}
	return (a == "n" || a == "neutral") && (b == "g" || among(earths, b))
}

// isSupplyPoint tells the conductors of the supply by their names.
//
//go:noinline
func isSupplyPoint(p string) bool {
	switch strings.ToLower(p) {
	case "l", "n", "l1", "l2", "l3", "line", "live", "hot", "neutral":
		return true
	}
	return false
}

func pointWords(words []script.Word) string {
	out := make([]string, len(words))
	for i, w := range words {
		out[i] = w.Text
	}
	return strings.Join(out, " ")
}

// caseName is the metal shell among the points.
const caseName = "case"

// placeOf is where a reading without a place was taken in this appliance.
func (c *Call) placeOf(kind string) string {
	if kind == "amp" && c.appliance().Unsealed {
		return "line"
	}
	return defaultPlace(kind)
}

// defaultPlace is where a reading without a place was taken.
//
//go:noinline
func defaultPlace(kind string) string {
	switch kind {
	case "volt":
		return "line"
	case "amp":
		return "comp"
	case "watt":
		return "unit"
	case "trip":
		return "overload"
	}
	return ""
}
